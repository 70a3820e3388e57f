<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
    <context>
        <name>AboutDialog</name>
        <message>
            <source>A window for the pantry: plan, brew, watch and remember kombucha, jar by jar. It uses no network, unless you have it share a pantry on a server of yours. MIT licence; the typeface is Atkinson Hyperlegible Next under the SIL Open Font License.</source>
            <translation>Ein Fenster für die Vorratskammer: Kombucha planen, ansetzen, beobachten und festhalten, Glas für Glas. Es nutzt kein Netzwerk, außer du lässt es eine Vorratskammer auf einem Server von dir teilen. MIT-Lizenz; die Schrift ist Atkinson Hyperlegible Next unter der SIL Open Font License.</translation>
        </message>
        <message>
            <source>About brewdesk</source>
            <translation>Über brewdesk</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Python</source>
            <translation>Python</translation>
        </message>
        <message>
            <source>Qt</source>
            <translation>Qt</translation>
        </message>
        <message>
            <source>SQLite</source>
            <translation>SQLite</translation>
        </message>
        <message>
            <source>Version</source>
            <translation>Version</translation>
        </message>
        <message>
            <source>Your pantry</source>
            <translation>Deine Vorratskammer</translation>
        </message>
    </context>
    <context>
        <name>AcidChart</name>
        <message>
            <source>Acidity</source>
            <translation>Säure</translation>
        </message>
        <message>
            <source>Acidity over the days of the batch</source>
            <translation>Säure über die Tage des Ansatzes</translation>
        </message>
        <message>
            <source>Day {day} · {what}</source>
            <translation>Tag {day} · {what}</translation>
        </message>
        <message>
            <source>Day {day}, {date}</source>
            <translation>Tag {day}, {date}</translation>
        </message>
        <message>
            <source>More about the forecast</source>
            <translation>Mehr zur Vorhersage</translation>
        </message>
        <message>
            <source>No curve yet. It begins when the starter is in. Take a first pH then, and the forecast will show when to taste.</source>
            <translation>Noch keine Kurve. Sie beginnt, wenn der Starter drin ist. Miss dann den ersten pH; die Vorhersage zeigt, wann du probieren kannst.</translation>
        </message>
        <message>
            <source>No titratable acidity measured or forecast yet. Enter one with the next reading.</source>
            <translation>Noch keine titrierbare Säure gemessen oder vorhergesagt. Trage sie mit der nächsten Messung ein.</translation>
        </message>
        <message>
            <source>Show</source>
            <translation>Zeigen</translation>
        </message>
        <message>
            <source>Show all days</source>
            <translation>Alle Tage zeigen</translation>
        </message>
        <message>
            <source>The curve in words</source>
            <translation>Die Kurve in Worten</translation>
        </message>
        <message>
            <source>The same is said in words beside it and in the table of readings.</source>
            <translation>Dasselbe steht in Worten daneben und in der Tabelle der Messungen.</translation>
        </message>
        <message>
            <source>Titratable acidity, counted as acetic acid</source>
            <translation>Titrierbare Säure, als Essigsäure gerechnet</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d. MMM</translation>
        </message>
        <message>
            <source>ended</source>
            <translation>beendet</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>{place} · expected {mid} ({low} to {high})</source>
            <translation>{place} · erwartet {mid} ({low} bis {high})</translation>
        </message>
    </context>
    <context>
        <name>ActBar</name>
        <message>
            <source>Nothing to take back</source>
            <translation>Nichts rückgängig zu machen</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Rückgängig</translation>
        </message>
        <message>
            <source>Undo: {act}</source>
            <translation>Rückgängig: {act}</translation>
        </message>
    </context>
    <context>
        <name>Acts</name>
        <message>
            <source>Acidity {amount}</source>
            <translation>Säure {amount}</translation>
        </message>
        <message>
            <source>Brewing of {name} begun</source>
            <translation>Aufbrühen von {name} begonnen</translation>
        </message>
        <message>
            <source>Look “{found}”</source>
            <translation>Sichtprüfung „{found}“</translation>
        </message>
        <message>
            <source>New culture {name}</source>
            <translation>Neue Kultur {name}</translation>
        </message>
        <message>
            <source>New place {name} at {temperature}</source>
            <translation>Neuer Ort {name} mit {temperature}</translation>
        </message>
        <message>
            <source>New vessel {name}, {volume}</source>
            <translation>Neues Gefäß {name}, {volume}</translation>
        </message>
        <message>
            <source>Pellicle {number} mm</source>
            <translation>Häutchen {number} mm</translation>
        </message>
        <message>
            <source>Plan of {name} changed</source>
            <translation>Plan von {name} geändert</translation>
        </message>
        <message>
            <source>Plan of {name} given up</source>
            <translation>Plan von {name} aufgegeben</translation>
        </message>
        <message>
            <source>Redo: {act}</source>
            <translation>Wiederholen: {act}</translation>
        </message>
        <message>
            <source>Reminder “{reminder}” added</source>
            <translation>Erinnerung „{reminder}“ hinzugefügt</translation>
        </message>
        <message>
            <source>SG {amount}</source>
            <translation>SG {amount}</translation>
        </message>
        <message>
            <source>Taste “{taste}”</source>
            <translation>Geschmack „{taste}“</translation>
        </message>
        <message>
            <source>Undo: {act}</source>
            <translation>Rückgängig: {act}</translation>
        </message>
        <message>
            <source>pH {amount}</source>
            <translation>pH {amount}</translation>
        </message>
        <message>
            <source>{first} and {last}</source>
            <translation>{first} und {last}</translation>
        </message>
        <message>
            <source>{name} and its culture discarded: {reason}</source>
            <translation>{name} samt Kultur weggeworfen: {reason}</translation>
        </message>
        <message>
            <source>{name} back on the shelf</source>
            <translation>{name} wieder im Regal</translation>
        </message>
        <message>
            <source>{name} changed</source>
            <translation>{name} geändert</translation>
        </message>
        <message>
            <source>{name} changed, now at {temperature}</source>
            <translation>{name} geändert, jetzt bei {temperature}</translation>
        </message>
        <message>
            <source>{name} closed</source>
            <translation>{name} abgeschlossen</translation>
        </message>
        <message>
            <source>{name} covered and souring</source>
            <translation>{name} abgedeckt, säuert</translation>
        </message>
        <message>
            <source>{name} discarded: {reason}</source>
            <translation>{name} weggeworfen: {reason}</translation>
        </message>
        <message>
            <source>{name} drawn off from {vessel}</source>
            <translation>{name} aus {vessel} abgezogen</translation>
        </message>
        <message>
            <source>{name} drawn off from {vessel}: {reason}</source>
            <translation>{name} aus {vessel} abgezogen: {reason}</translation>
        </message>
        <message>
            <source>{name} entered as already souring, begun at {temperature}</source>
            <translation>{name} als schon säuernd eingetragen, begonnen bei {temperature}</translation>
        </message>
        <message>
            <source>{name} entered as already souring, begun at {temperature}: {reason}</source>
            <translation>{name} als schon säuernd eingetragen, begonnen bei {temperature}: {reason}</translation>
        </message>
        <message>
            <source>{name} entered as already souring, temperature not known: {reason}</source>
            <translation>{name} als schon säuernd eingetragen, Temperatur unbekannt: {reason}</translation>
        </message>
        <message>
            <source>{name} given away</source>
            <translation>{name} weggegeben</translation>
        </message>
        <message>
            <source>{name} is at work</source>
            <translation>{name} ist bei der Arbeit</translation>
        </message>
        <message>
            <source>{name} is forming</source>
            <translation>{name} bildet sich</translation>
        </message>
        <message>
            <source>{name} is resting</source>
            <translation>{name} ruht</translation>
        </message>
        <message>
            <source>{name} lost</source>
            <translation>{name} verloren</translation>
        </message>
        <message>
            <source>{name} planned, {volume} in {vessel}</source>
            <translation>{name} geplant, {volume} in {vessel}</translation>
        </message>
        <message>
            <source>{name} retired</source>
            <translation>{name} ausgemustert</translation>
        </message>
        <message>
            <source>{name} taken off the shelf</source>
            <translation>{name} aus dem Regal genommen</translation>
        </message>
        <message>
            <source>{name}: “{step}” begun</source>
            <translation>{name}: „{step}“ begonnen</translation>
        </message>
        <message>
            <source>{name}: “{step}” done</source>
            <translation>{name}: „{step}“ erledigt</translation>
        </message>
        <message>
            <source>{name}: “{step}” done at {temperature}</source>
            <translation>{name}: „{step}“ erledigt bei {temperature}</translation>
        </message>
        <message>
            <source>{name}: “{step}” done at {temperature}, in spite of the warning: {reason}</source>
            <translation>{name}: „{step}“ erledigt bei {temperature}, trotz der Warnung: {reason}</translation>
        </message>
        <message>
            <source>{name}: “{step}” done, in spite of the warning: {reason}</source>
            <translation>{name}: „{step}“ erledigt, trotz der Warnung: {reason}</translation>
        </message>
        <message>
            <source>{name}: “{step}” given {time} more</source>
            <translation>{name}: „{step}“ um {time} verlängert</translation>
        </message>
        <message>
            <source>{name}: “{step}” goes on</source>
            <translation>{name}: „{step}“ geht weiter</translation>
        </message>
        <message>
            <source>{name}: “{step}” paused</source>
            <translation>{name}: „{step}“ pausiert</translation>
        </message>
        <message>
            <source>{old_name} renamed {name}</source>
            <translation>{old_name} in {name} umbenannt</translation>
        </message>
        <message>
            <source>{old} on {vessel} corrected to {readings}</source>
            <translation>{old} zu {vessel} korrigiert auf {readings}</translation>
        </message>
        <message>
            <source>{readings} on {vessel}</source>
            <translation>{readings} zu {vessel}</translation>
        </message>
        <message>
            <source>{readings} on {vessel} corrected</source>
            <translation>{readings} zu {vessel} korrigiert</translation>
        </message>
        <message>
            <source>{readings} on {vessel} taken out</source>
            <translation>{readings} zu {vessel} herausgenommen</translation>
        </message>
        <message>
            <source>“{note}”</source>
            <translation>„{note}“</translation>
        </message>
        <message>
            <source>“{reminder}” done</source>
            <translation>„{reminder}“ erledigt</translation>
        </message>
        <message>
            <source>“{reminder}” put off</source>
            <translation>„{reminder}“ verschoben</translation>
        </message>
    </context>
    <context>
        <name>ActsDialog</name>
        <message>
            <source>Act</source>
            <translation>Befehl</translation>
        </message>
        <message>
            <source>Acts in grey are not for the jar that is chosen now.</source>
            <translation>Graue Befehle gelten nicht für das Glas, das jetzt gewählt ist.</translation>
        </message>
        <message>
            <source>Acts, their menus and their keys</source>
            <translation>Befehle, ihre Menüs und ihre Tasten</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Do it</source>
            <translation>Ausführen</translation>
        </message>
        <message>
            <source>Find an act</source>
            <translation>Befehl finden</translation>
        </message>
        <message>
            <source>Keys</source>
            <translation>Tasten</translation>
        </message>
        <message>
            <source>Menu</source>
            <translation>Menü</translation>
        </message>
        <message>
            <source>No act is called that.</source>
            <translation>So heißt kein Befehl.</translation>
        </message>
        <message>
            <source>Type what you want to do</source>
            <translation>Tippe, was du tun willst</translation>
        </message>
        <message>
            <source>What you want to do</source>
            <translation>Was du tun willst</translation>
        </message>
    </context>
    <context>
        <name>AdditionRow</name>
        <message>
            <source> %</source>
            <translation> %</translation>
        </message>
        <message>
            <source>Amount in all</source>
            <translation>Menge insgesamt</translation>
        </message>
        <message>
            <source>Its name</source>
            <translation>Sein Name</translation>
        </message>
        <message>
            <source>Shares as you typed them; a label knows best.</source>
            <translation>Anteile, wie du sie eingegeben hast; ein Etikett weiß es am besten.</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Etwas anderes</translation>
        </message>
        <message>
            <source>Sugar, at least</source>
            <translation>Zucker, mindestens</translation>
        </message>
        <message>
            <source>Sugar, at most</source>
            <translation>Zucker, höchstens</translation>
        </message>
        <message>
            <source>Take away</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>What goes in</source>
            <translation>Was hineinkommt</translation>
        </message>
        <message>
            <source>{name} (from the stores)</source>
            <translation>{name} (aus den Vorräten)</translation>
        </message>
    </context>
    <context>
        <name>Alarms</name>
        <message>
            <source>Time is up.</source>
            <translation>Die Zeit ist um.</translation>
        </message>
        <message>
            <source>Time is up: lift the tea out.</source>
            <translation>Die Zeit ist um: Nimm den Tee heraus.</translation>
        </message>
        <message>
            <source>Time is up: look whether all sugar is dissolved.</source>
            <translation>Die Zeit ist um: Sieh nach, ob aller Zucker gelöst ist.</translation>
        </message>
        <message>
            <source>Time is up: measure the temperature.</source>
            <translation>Die Zeit ist um: Miss die Temperatur.</translation>
        </message>
        <message>
            <source>Time is up: pour the water on the tea.</source>
            <translation>Die Zeit ist um: Gieß das Wasser auf den Tee.</translation>
        </message>
        <message>
            <source>{batch} in {vessel}</source>
            <translation>{batch} in {vessel}</translation>
        </message>
    </context>
    <context>
        <name>AlreadyInDialog</name>
        <message>
            <source>Already in the jar</source>
            <translation>Schon im Glas</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>How warm the tea was then</source>
            <translation>Wie warm der Tee da war</translation>
        </message>
        <message>
            <source>If you did not measure: why it goes in all the same</source>
            <translation>Falls du nicht gemessen hast: warum es trotzdem hineinkommt</translation>
        </message>
        <message>
            <source>It is souring</source>
            <translation>Er säuert</translation>
        </message>
        <message>
            <source>Reminders and forecast count from the moment starter or culture went in.</source>
            <translation>Erinnerungen und Vorhersage zählen ab dem Moment, in dem Starter oder Kultur hineinkam.</translation>
        </message>
        <message>
            <source>Starter and culture went in</source>
            <translation>Starter und Kultur kamen hinein</translation>
        </message>
        <message>
            <source>{name} is already in the jar</source>
            <translation>{name} ist schon im Glas</translation>
        </message>
    </context>
    <context>
        <name>AmountsPanel</name>
        <message>
            <source>Amounts</source>
            <translation>Mengen</translation>
        </message>
        <message>
            <source>Once mixed it has to cool: starter and culture may go in at {limit} or below.</source>
            <translation>Nach dem Mischen muss es abkühlen: Starter und Kultur dürfen bei {limit} oder darunter hinein.</translation>
        </message>
        <message>
            <source>Once mixed it should be cool enough: starter and culture may go in at {limit} or below. Take the temperature first.</source>
            <translation>Nach dem Mischen sollte es kühl genug sein: Starter und Kultur dürfen bei {limit} oder darunter hinein. Miss zuerst die Temperatur.</translation>
        </message>
        <message>
            <source>The start pH comes out between {low} and {high} about {times} times in 10. That is an estimate: measure it before you cover the vessel.</source>
            <translation>Der Start-pH liegt etwa {times}-mal von 10 zwischen {low} und {high}. Das ist eine Schätzung: Miss ihn, bevor du das Gefäß abdeckst.</translation>
        </message>
        <message>
            <source>Volumes are those at 20 °C. Weigh if you can: cups and spoons are good to about 5 %.</source>
            <translation>Volumen gelten bei 20 °C. Wiege, wenn du kannst: Tassen und Löffel sind auf etwa 5 % genau.</translation>
        </message>
        <message>
            <source>What to expect</source>
            <translation>Was zu erwarten ist</translation>
        </message>
        <message>
            <source>of it starter</source>
            <translation>davon Starter</translation>
        </message>
        <message>
            <source>once mixed, estimated</source>
            <translation>nach dem Mischen, geschätzt</translation>
        </message>
        <message>
            <source>start pH, estimated</source>
            <translation>Start-pH, geschätzt</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <translation>{percent} %</translation>
        </message>
    </context>
    <context>
        <name>AmountsTable</name>
        <message>
            <source>, about {measure}</source>
            <translation>, etwa {measure}</translation>
        </message>
        <message>
            <source>, {volume} mL</source>
            <translation>, {volume} mL</translation>
        </message>
        <message>
            <source>Kitchen measure</source>
            <translation>Küchenmaß</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>oz</source>
            <translation>oz</translation>
        </message>
        <message>
            <source>{part}: {grams} g, {ounces} oz</source>
            <translation>{part}: {grams} g, {ounces} oz</translation>
        </message>
    </context>
    <context>
        <name>AnswerPanel</name>
        <message>
            <source>Limits it was held against</source>
            <translation>Grenzen, an denen gemessen wurde</translation>
        </message>
        <message>
            <source>To bear in mind</source>
            <translation>Zu beachten</translation>
        </message>
        <message>
            <source>Where this comes from</source>
            <translation>Woher das kommt</translation>
        </message>
        <message>
            <source>{citation} ({standing})</source>
            <translation>{citation} ({standing})</translation>
        </message>
    </context>
    <context>
        <name>ArmEntries</name>
        <message>
            <source>One less</source>
            <translation>Eine weniger</translation>
        </message>
        <message>
            <source>One more level</source>
            <translation>Noch eine Stufe</translation>
        </message>
        <message>
            <source>The first level is what the others are compared with.</source>
            <translation>Mit der ersten Stufe werden die anderen verglichen.</translation>
        </message>
    </context>
    <context>
        <name>ArmEntry</name>
        <message>
            <source>Level {number}</source>
            <translation>Stufe {number}</translation>
        </message>
        <message>
            <source>Name of level {number}</source>
            <translation>Name der Stufe {number}</translation>
        </message>
        <message>
            <source>its name</source>
            <translation>ihr Name</translation>
        </message>
        <message>
            <source>percent</source>
            <translation>Prozent</translation>
        </message>
        <message>
            <source>{percent} % starter</source>
            <translation>{percent} % Starter</translation>
        </message>
    </context>
    <context>
        <name>ArmLegend</name>
        <message>
            <source>Legend: {names}</source>
            <translation>Legende: {names}</translation>
        </message>
    </context>
    <context>
        <name>AttachDialog</name>
        <message>
            <source>A batch brewed without the trial in mind often differs in more than one thing. What differs is listed on the trial's sheet.</source>
            <translation>Ein Ansatz, der nicht für den Versuch angesetzt wurde, unterscheidet sich oft in mehr als einem Punkt. Was abweicht, steht auf dem Blatt des Versuchs.</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Its level</source>
            <translation>Seine Stufe</translation>
        </message>
        <message>
            <source>Take a batch in</source>
            <translation>Ansatz aufnehmen</translation>
        </message>
        <message>
            <source>Take it in</source>
            <translation>Aufnehmen</translation>
        </message>
        <message>
            <source>There is no batch that could join.</source>
            <translation>Es gibt keinen Ansatz, der dazukommen könnte.</translation>
        </message>
    </context>
    <context>
        <name>Autostart</name>
        <message>
            <source>Reminders for your jars of kombucha</source>
            <translation>Erinnerungen für deine Kombucha-Gläser</translation>
        </message>
        <message>
            <source>Start quietly when I log in, so that reminders come</source>
            <translation>Beim Anmelden still starten, damit Erinnerungen kommen</translation>
        </message>
        <message>
            <source>The program lies in a folder whose name your desktop cannot start it from, so nothing was changed. Please move it to another folder.</source>
            <translation>Das Programm liegt in einem Ordner, aus dessen Namen dein Desktop es nicht starten kann; darum wurde nichts geändert. Bitte verschiebe es in einen anderen Ordner.</translation>
        </message>
        <message>
            <source>Your desktop's autostart folder may not be written to, so nothing was changed.</source>
            <translation>In den Autostart-Ordner deines Desktops darf nicht geschrieben werden; darum wurde nichts geändert.</translation>
        </message>
    </context>
    <context>
        <name>Background</name>
        <message>
            <source>Its icon is in the tray: a click on it brings the window back, and its menu ends the program. Reminders go on.</source>
            <translation>Das Symbol ist im Infobereich: Ein Klick darauf bringt das Fenster zurück, sein Menü beendet das Programm. Erinnerungen laufen weiter.</translation>
        </message>
        <message>
            <source>This desktop has no tray, so the window was made small instead of closed. Pantry &gt; Quit ends the program. Reminders go on.</source>
            <translation>Dieser Desktop hat keinen Infobereich, darum wurde das Fenster verkleinert statt geschlossen. Vorratskammer &gt; Beenden beendet das Programm. Erinnerungen laufen weiter.</translation>
        </message>
        <message>
            <source>brewdesk keeps running</source>
            <translation>brewdesk läuft weiter</translation>
        </message>
    </context>
    <context>
        <name>Backups</name>
        <message>
            <source>All {rows} rows could be read: nothing is lost. Only what is made anew from them was damaged.</source>
            <translation>Alle {rows} Zeilen ließen sich lesen: Nichts ist verloren. Beschädigt war nur, was aus ihnen neu erstellt wird.</translation>
        </message>
        <message>
            <source>Checked: sound. It holds {vessels} vessels, {cultures} cultures, {batches} batches, {bottlings} bottlings, {readings} readings and {photos} entries of photos.</source>
            <translation>Geprüft: unversehrt. Sie enthält {vessels} Gefäße, {cultures} Kulturen, {batches} Ansätze, {bottlings} Abfüllungen, {readings} Messungen und {photos} Foto-Einträge.</translation>
        </message>
        <message>
            <source>Copied to {folder}: {rows} rows and {photos} photos, {size}, all read back and found equal.</source>
            <translation>Nach {folder} kopiert: {rows} Zeilen und {photos} Fotos, {size}, alles zurückgelesen und für gleich befunden.</translation>
        </message>
        <message>
            <source>Going back would lose the one thing done since:
{named}</source>
            <translation>Beim Zurückgehen ginge das Einzige verloren, was seitdem getan wurde:
{named}</translation>
        </message>
        <message>
            <source>Going back would lose the {count} things done since, the last of them:
{named}</source>
            <translation>Beim Zurückgehen gingen die {count} Dinge verloren, die seitdem getan wurden, davon die letzten:
{named}</translation>
        </message>
        <message>
            <source>Going back would lose the {count} things done since:
{named}</source>
            <translation>Beim Zurückgehen gingen die {count} Dinge verloren, die seitdem getan wurden:
{named}</translation>
        </message>
        <message>
            <source>It is of another pantry, so what is here now cannot be compared with it: all of it would be replaced.</source>
            <translation>Sie gehört zu einer anderen Vorratskammer; was jetzt hier ist, lässt sich nicht mit ihr vergleichen: Alles würde ersetzt.</translation>
        </message>
        <message>
            <source>Its newest reading is of {when}.</source>
            <translation>Ihre neueste Messung ist von {when}.</translation>
        </message>
        <message>
            <source>None of the backups is sound any more. They stay where they are. What can still be read of the pantry itself can be rescued into a new file.</source>
            <translation>Keine der Sicherungen ist mehr unversehrt. Sie bleiben, wo sie sind. Was von der Vorratskammer selbst noch lesbar ist, kann in eine neue Datei gerettet werden.</translation>
        </message>
        <message>
            <source>Nothing was done since: going back would lose nothing.</source>
            <translation>Seitdem wurde nichts getan: Beim Zurückgehen ginge nichts verloren.</translation>
        </message>
        <message>
            <source>The day's backup could not be made, and there is no older one. {why}</source>
            <translation>Die Sicherung des Tages ließ sich nicht anlegen, und es gibt keine ältere. {why}</translation>
        </message>
        <message>
            <source>The day's backup could not be made. The last good one is of {when}, {age}. {why}</source>
            <translation>Die Sicherung des Tages ließ sich nicht anlegen. Die letzte gute ist von {when}, {age}. {why}</translation>
        </message>
        <message>
            <source>The last thing that was done in it: {when}, {age}.</source>
            <translation>Das Letzte, was darin getan wurde: {when}, {age}.</translation>
        </message>
        <message>
            <source>There is no backup yet. One is made each day on which something was done.</source>
            <translation>Es gibt noch keine Sicherung. An jedem Tag, an dem etwas getan wurde, wird eine angelegt.</translation>
        </message>
        <message>
            <source>There is no reading in it.</source>
            <translation>Sie enthält keine Messung.</translation>
        </message>
        <message>
            <source>This backup is not what was written any more, so it cannot be used. It stays where it is. Please choose another.</source>
            <translation>Diese Sicherung ist nicht mehr das, was geschrieben wurde, und daher nicht brauchbar. Sie bleibt, wo sie ist. Bitte wähle eine andere.</translation>
        </message>
        <message>
            <source>What was entered after {when} ({age}) is not in it.</source>
            <translation>Was nach {when} ({age}) eingetragen wurde, ist nicht darin.</translation>
        </message>
        <message>
            <source>acts in the history (for undoing)</source>
            <translation>Vorgänge im Verlauf (zum Rückgängigmachen)</translation>
        </message>
        <message>
            <source>asked for</source>
            <translation>auf Wunsch</translation>
        </message>
        <message>
            <source>batches</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>before going back to an older one</source>
            <translation>vor dem Zurückgehen auf eine ältere</translation>
        </message>
        <message>
            <source>before readings were brought in</source>
            <translation>vor dem Einlesen von Messungen</translation>
        </message>
        <message>
            <source>before the program brought the pantry up to date</source>
            <translation>bevor das Programm die Vorratskammer aktualisierte</translation>
        </message>
        <message>
            <source>bottlings</source>
            <translation>Abfüllungen</translation>
        </message>
        <message>
            <source>cultures</source>
            <translation>Kulturen</translation>
        </message>
        <message>
            <source>entries of photos</source>
            <translation>Foto-Einträge</translation>
        </message>
        <message>
            <source>made</source>
            <translation>angelegt</translation>
        </message>
        <message>
            <source>of the day</source>
            <translation>des Tages</translation>
        </message>
        <message>
            <source>pieces of temperature logs</source>
            <translation>Teile von Temperaturprotokollen</translation>
        </message>
        <message>
            <source>places</source>
            <translation>Orte</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>Messungen</translation>
        </message>
        <message>
            <source>reminders</source>
            <translation>Erinnerungen</translation>
        </message>
        <message>
            <source>settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>steps of run sheets</source>
            <translation>Schritte von Laufzetteln</translation>
        </message>
        <message>
            <source>today</source>
            <translation>heute</translation>
        </message>
        <message>
            <source>vessels</source>
            <translation>Gefäße</translation>
        </message>
        <message>
            <source>what acts were about</source>
            <translation>worum es bei Vorgängen ging</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>gestern</translation>
        </message>
        <message>
            <source>{days} days ago</source>
            <translation>vor {days} Tagen</translation>
        </message>
        <message>
            <source>{line} – DAMAGED</source>
            <translation>{line} – BESCHÄDIGT</translation>
        </message>
        <message>
            <source>{rows} rows could be read. Lost are these rows, and with them what belonged to them – {parts}.</source>
            <translation>{rows} Zeilen ließen sich lesen. Verloren sind diese Zeilen und mit ihnen, was dazugehörte – {parts}.</translation>
        </message>
        <message>
            <source>{what}: all, and how many is not known</source>
            <translation>{what}: alle, und wie viele, ist nicht bekannt</translation>
        </message>
        <message>
            <source>{what}: {count}</source>
            <translation>{what}: {count}</translation>
        </message>
        <message>
            <source>{when} – {why}</source>
            <translation>{when} – {why}</translation>
        </message>
    </context>
    <context>
        <name>BackupsDialog</name>
        <message>
            <source>Back up now</source>
            <translation>Jetzt sichern</translation>
        </message>
        <message>
            <source>Backed up as {file}.</source>
            <translation>Gesichert als {file}.</translation>
        </message>
        <message>
            <source>Backups</source>
            <translation>Sicherungen</translation>
        </message>
        <message>
            <source>Backups, the newest first</source>
            <translation>Sicherungen, die neueste zuerst</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Copy everything to a folder…</source>
            <translation>Alles in einen Ordner kopieren…</translation>
        </message>
        <message>
            <source>Go back now</source>
            <translation>Jetzt zurückgehen</translation>
        </message>
        <message>
            <source>Go back to this one…</source>
            <translation>Zu dieser zurückgehen…</translation>
        </message>
        <message>
            <source>Go back? What is here now is backed up first and then set aside; nothing is deleted. The window closes and opens again.</source>
            <translation>Zurückgehen? Was jetzt hier ist, wird zuerst gesichert und dann beiseitegelegt; nichts wird gelöscht. Das Fenster schließt und öffnet sich wieder.</translation>
        </message>
        <message>
            <source>Keep what is here</source>
            <translation>Behalten, was hier ist</translation>
        </message>
        <message>
            <source>One is made each day on which something was done: all of two days are kept, then one of each day, week and month. They hold the records, not the files of photos; a copy to a folder of your own holds both.</source>
            <translation>An jedem Tag, an dem etwas getan wurde, wird eine angelegt: Von zwei Tagen bleiben alle, danach je eine pro Tag, Woche und Monat. Sie enthalten die Einträge, nicht die Fotodateien; eine Kopie in einen eigenen Ordner enthält beides.</translation>
        </message>
        <message>
            <source>The backups are being checked…</source>
            <translation>Die Sicherungen werden geprüft…</translation>
        </message>
        <message>
            <source>This pantry is on a server that other desks may be using. To go back, close it at every desk and move the backup there with “brewdesk move-store”.</source>
            <translation>Diese Vorratskammer liegt auf einem Server, den vielleicht auch andere Arbeitsplätze nutzen. Zum Zurückgehen schließe sie an jedem Arbeitsplatz und bringe die Sicherung mit „brewdesk move-store“ dorthin.</translation>
        </message>
        <message>
            <source>What the chosen backup holds</source>
            <translation>Was die gewählte Sicherung enthält</translation>
        </message>
    </context>
    <context>
        <name>BagReader</name>
        <message>
            <source>bags/L</source>
            <translation>Beutel/L</translation>
        </message>
    </context>
    <context>
        <name>BalanceWords</name>
        <message>
            <source>Its pH goes from about {before} to {after}.</source>
            <translation>Der pH geht von etwa {before} auf {after}.</translation>
        </message>
        <message>
            <source>Without a pH of both, that of the blend is not known.</source>
            <translation>Ohne den pH von beiden ist der der Mischung nicht bekannt.</translation>
        </message>
        <message>
            <source>{name} holds {before}.</source>
            <translation>{name} enthält {before}.</translation>
        </message>
        <message>
            <source>{name}: {before} + {change} = {after}.</source>
            <translation>{name}: {before} + {change} = {after}.</translation>
        </message>
        <message>
            <source>{name}: {before} − {change} = {after}.</source>
            <translation>{name}: {before} − {change} = {after}.</translation>
        </message>
        <message>
            <source>{value} ({low} to {high})</source>
            <translation>{value} ({low} bis {high})</translation>
        </message>
    </context>
    <context>
        <name>BatchCurve</name>
        <message>
            <source>It is over; this is what was read until it ended.</source>
            <translation>Er ist vorbei; das wurde gemessen, bis er endete.</translation>
        </message>
        <message>
            <source>Neither pH nor acidity was read of this batch.</source>
            <translation>Von diesem Ansatz wurde weder pH noch Säure gemessen.</translation>
        </message>
    </context>
    <context>
        <name>BatchReadings</name>
        <message>
            <source>Nothing was read of this batch.</source>
            <translation>Von diesem Ansatz wurde nichts gemessen.</translation>
        </message>
        <message>
            <source>Readings, newest first</source>
            <translation>Messungen, neueste zuerst</translation>
        </message>
    </context>
    <context>
        <name>BatchReport</name>
        <message>
            <source>Amount</source>
            <translation>Menge</translation>
        </message>
        <message>
            <source>At</source>
            <translation>Bei</translation>
        </message>
        <message>
            <source>Batch report</source>
            <translation>Ansatzbericht</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Cold water</source>
            <translation>Kaltes Wasser</translation>
        </message>
        <message>
            <source>Culture in at most at</source>
            <translation>Kultur hinein bei höchstens</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Erledigt</translation>
        </message>
        <message>
            <source>Filled to</source>
            <translation>Gefüllt bis</translation>
        </message>
        <message>
            <source>Hot water</source>
            <translation>Heißes Wasser</translation>
        </message>
        <message>
            <source>In the maker's words</source>
            <translation>In eigenen Worten</translation>
        </message>
        <message>
            <source>It is over; this is what was read until it ended.</source>
            <translation>Er ist vorbei; das wurde gemessen, bis er endete.</translation>
        </message>
        <message>
            <source>Last pH</source>
            <translation>Letzter pH</translation>
        </message>
        <message>
            <source>Look: {found}</source>
            <translation>Sichtprüfung: {found}</translation>
        </message>
        <message>
            <source>Made from the maker's own entries; brewdesk cannot check them. Readings have their uncertainty, forecasts are no guarantee, and local rules come first.</source>
            <translation>Aus den eigenen Einträgen erstellt; brewdesk kann sie nicht prüfen. Messungen haben ihre Unsicherheit, Vorhersagen sind keine Garantie, und örtliche Regeln gehen vor.</translation>
        </message>
        <message>
            <source>No warning was overridden, and no look is entered.</source>
            <translation>Keine Warnung wurde übergangen, und keine Sichtprüfung ist eingetragen.</translation>
        </message>
        <message>
            <source>Nothing was read of this batch.</source>
            <translation>Von diesem Ansatz wurde nichts gemessen.</translation>
        </message>
        <message>
            <source>Only {shown} of {count} entries fit on one page. The process log and the HTML report have them all.</source>
            <translation>Nur {shown} von {count} Einträgen passen auf eine Seite. Prozessprotokoll und HTML-Bericht enthalten alle.</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Seite {page} von {pages}</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>Pellicle {number} mm</source>
            <translation>Häutchen {number} mm</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Messungen</translation>
        </message>
        <message>
            <source>Run sheet</source>
            <translation>Laufzettel</translation>
        </message>
        <message>
            <source>Safety log</source>
            <translation>Sicherheitsprotokoll</translation>
        </message>
        <message>
            <source>Start pH read</source>
            <translation>Start-pH gemessen</translation>
        </message>
        <message>
            <source>Start pH reckoned</source>
            <translation>Start-pH errechnet</translation>
        </message>
        <message>
            <source>Starter liquid</source>
            <translation>Ansatzflüssigkeit</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Schritt</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Taste: {taste}</source>
            <translation>Geschmack: {taste}</translation>
        </message>
        <message>
            <source>Tea ({kind})</source>
            <translation>Tee ({kind})</translation>
        </message>
        <message>
            <source>There is no run sheet of this batch.</source>
            <translation>Zu diesem Ansatz gibt es keinen Laufzettel.</translation>
        </message>
        <message>
            <source>Thinned out to {shown} of {count} rows, spread over the whole time, so that the report is one page. The curve has every pH; the HTML report has every row.</source>
            <translation>Auf {shown} von {count} Zeilen ausgedünnt, über die ganze Zeit verteilt, damit der Bericht eine Seite bleibt. Die Kurve enthält jeden pH, der HTML-Bericht jede Zeile.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>What was read so far; without a forecast.</source>
            <translation>Was bisher gemessen wurde; ohne Vorhersage.</translation>
        </message>
        <message>
            <source>What went in</source>
            <translation>Was hineinkam</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Worte</translation>
        </message>
        <message>
            <source>at most pH {limit} from day {day} on</source>
            <translation>höchstens pH {limit} ab Tag {day}</translation>
        </message>
        <message>
            <source>day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>pH of the starter</source>
            <translation>pH des Starters</translation>
        </message>
        <message>
            <source>{date}: {reason}</source>
            <translation>{date}: {reason}</translation>
        </message>
        <message>
            <source>{value} ({low} to {high})</source>
            <translation>{value} ({low} bis {high})</translation>
        </message>
    </context>
    <context>
        <name>BottleAdditions</name>
        <message>
            <source>Add fruit, juice, ginger, honey…</source>
            <translation>Frucht, Saft, Ingwer, Honig… zugeben</translation>
        </message>
        <message>
            <source>Take away addition {n}</source>
            <translation>Zugabe {n} entfernen</translation>
        </message>
    </context>
    <context>
        <name>BottleCard</name>
        <message>
            <source> bar</source>
            <translation> bar</translation>
        </message>
        <message>
            <source>A gauge shows</source>
            <translation>Manometer zeigt</translation>
        </message>
        <message>
            <source>Chill now</source>
            <translation>Jetzt kühlen</translation>
        </message>
        <message>
            <source>Conditioning</source>
            <translation>Nachgärung</translation>
        </message>
        <message>
            <source>Drunk up</source>
            <translation>Ausgetrunken</translation>
        </message>
        <message>
            <source>In the cold</source>
            <translation>In der Kälte</translation>
        </message>
        <message>
            <source>Look now</source>
            <translation>Jetzt nachsehen</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Mehr</translation>
        </message>
        <message>
            <source>Not looked at yet.</source>
            <translation>Noch nicht nachgesehen.</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Notieren</translation>
        </message>
        <message>
            <source>One opened was</source>
            <translation>Eine geöffnete war</translation>
        </message>
        <message>
            <source>Open the batch</source>
            <translation>Ansatz öffnen</translation>
        </message>
        <message>
            <source>Pour away</source>
            <translation>Weggießen</translation>
        </message>
        <message>
            <source>Pour away…</source>
            <translation>Weggießen…</translation>
        </message>
        <message>
            <source>Print labels…</source>
            <translation>Etiketten drucken…</translation>
        </message>
        <message>
            <source>Print the bottling sheet…</source>
            <translation>Abfüllblatt drucken…</translation>
        </message>
        <message>
            <source>Soon</source>
            <translation>Bald</translation>
        </message>
        <message>
            <source>The test bottle is</source>
            <translation>Die Testflasche ist</translation>
        </message>
        <message>
            <source>They are in the cold now</source>
            <translation>Sie sind jetzt in der Kälte</translation>
        </message>
        <message>
            <source>Vented all</source>
            <translation>Alle entlüftet</translation>
        </message>
        <message>
            <source>What the gauge shows</source>
            <translation>Was das Manometer zeigt</translation>
        </message>
        <message>
            <source>Why are they poured away?</source>
            <translation>Warum werden sie weggegossen?</translation>
        </message>
        <message>
            <source>chill by</source>
            <translation>kühlen bis</translation>
        </message>
        <message>
            <source>filled {when}</source>
            <translation>abgefüllt {when}</translation>
        </message>
        <message>
            <source>limit in the cold</source>
            <translation>Grenze in der Kälte</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>{left} of {count} bottles</source>
            <translation>{left} von {count} Flaschen</translation>
        </message>
        <message>
            <source>{name} {grams} g</source>
            <translation>{name} {grams} g</translation>
        </message>
        <message>
            <source>{name}: all were vented</source>
            <translation>{name}: alle wurden entlüftet</translation>
        </message>
        <message>
            <source>{name}: drunk up</source>
            <translation>{name}: ausgetrunken</translation>
        </message>
        <message>
            <source>{name}: more</source>
            <translation>{name}: mehr</translation>
        </message>
        <message>
            <source>{name}: note the gauge</source>
            <translation>{name}: Manometer ablesen</translation>
        </message>
        <message>
            <source>{name}: one opened was {opened}</source>
            <translation>{name}: eine geöffnete war {opened}</translation>
        </message>
        <message>
            <source>{name}: the test bottle is {feel}</source>
            <translation>{name}: Die Testflasche ist {feel}</translation>
        </message>
        <message>
            <source>{name}: they are in the cold now</source>
            <translation>{name}: Sie sind jetzt in der Kälte</translation>
        </message>
    </context>
    <context>
        <name>BottleFill</name>
        <message>
            <source>A warning stops this. Change the bottling, or write down your reason.</source>
            <translation>Eine Warnung hält das auf. Ändere die Abfüllung oder schreib deinen Grund auf.</translation>
        </message>
        <message>
            <source>Bottles are filled from a batch that is souring. Once one is in its window, it can be chosen here, or from its jar with “Bottle it”.</source>
            <translation>Flaschen werden aus einem säuernden Ansatz gefüllt. Sobald einer in seinem Fenster ist, kannst du ihn hier wählen, oder von seinem Glas aus mit „Abfüllen“.</translation>
        </message>
        <message>
            <source>Fill the bottles</source>
            <translation>Flaschen füllen</translation>
        </message>
        <message>
            <source>It is stopped. Your reason, to be kept with the bottling</source>
            <translation>Es ist aufgehalten. Dein Grund, der bei der Abfüllung bleibt</translation>
        </message>
        <message>
            <source>Not up to date: see the marked field.</source>
            <translation>Nicht aktuell: siehe das markierte Feld.</translation>
        </message>
        <message>
            <source>Nothing to bottle yet</source>
            <translation>Noch nichts abzufüllen</translation>
        </message>
        <message>
            <source>Print the sheet…</source>
            <translation>Blatt drucken…</translation>
        </message>
        <message>
            <source>Waiting for the marked field.</source>
            <translation>Wartet auf das markierte Feld.</translation>
        </message>
        <message>
            <source>What goes into each bottle, how the pressure may rise and by when to chill stands here as soon as there is a batch.</source>
            <translation>Was in jede Flasche kommt, wie der Druck steigen kann und bis wann zu kühlen ist, steht hier, sobald es einen Ansatz gibt.</translation>
        </message>
        <message>
            <source>Why fill them all the same?</source>
            <translation>Warum trotzdem füllen?</translation>
        </message>
    </context>
    <context>
        <name>BottleForm</name>
        <message>
            <source>At the warmest</source>
            <translation>Höchste Temperatur</translation>
        </message>
        <message>
            <source>Caps or corks from</source>
            <translation>Kappen, Korken aus</translation>
        </message>
        <message>
            <source>Drink to bottle</source>
            <translation>Abzufüllen</translation>
        </message>
        <message>
            <source>From which batch</source>
            <translation>Aus welchem Ansatz</translation>
        </message>
        <message>
            <source>How fizzy</source>
            <translation>Wie sprudelnd</translation>
        </message>
        <message>
            <source>In the jar, with its culture</source>
            <translation>Im Glas, bei seiner Kultur</translation>
        </message>
        <message>
            <source>Kept where</source>
            <translation>Wo aufbewahrt</translation>
        </message>
        <message>
            <source>More to set</source>
            <translation>Mehr einstellen</translation>
        </message>
        <message>
            <source>Name of the bottling</source>
            <translation>Name der Abfüllung</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Please give it a name.</source>
            <translation>Bitte gib einen Namen an.</translation>
        </message>
        <message>
            <source>Starter kept back</source>
            <translation>Starter zurückbehalten</translation>
        </message>
        <message>
            <source>Sugar from</source>
            <translation>Zucker aus</translation>
        </message>
        <message>
            <source>Sugar in all bottles</source>
            <translation>Zucker in allen Flaschen</translation>
        </message>
        <message>
            <source>Sugar left in the drink, at least</source>
            <translation>Restzucker im Getränk, mindestens</translation>
        </message>
        <message>
            <source>Sugar left in the drink, at most</source>
            <translation>Restzucker im Getränk, höchstens</translation>
        </message>
        <message>
            <source>The bottles</source>
            <translation>Die Flaschen</translation>
        </message>
        <message>
            <source>The drink</source>
            <translation>Das Getränk</translation>
        </message>
        <message>
            <source>The fizz</source>
            <translation>Die Kohlensäure</translation>
        </message>
        <message>
            <source>The jar is emptied, and the batch is over</source>
            <translation>Das Glas wird leer, der Ansatz ist vorbei</translation>
        </message>
        <message>
            <source>Usually, there</source>
            <translation>Dort gewöhnlich</translation>
        </message>
        <message>
            <source>Warmest the jar has been</source>
            <translation>Höchste Temp. des Glases</translation>
        </message>
        <message>
            <source>What goes in</source>
            <translation>Was hineinkommt</translation>
        </message>
        <message>
            <source>Where they stand</source>
            <translation>Wo sie stehen</translation>
        </message>
        <message>
            <source>Which sugar</source>
            <translation>Welcher Zucker</translation>
        </message>
        <message>
            <source>as forecast</source>
            <translation>wie vorhergesagt</translation>
        </message>
        <message>
            <source>as reckoned</source>
            <translation>wie errechnet</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keiner</translation>
        </message>
        <message>
            <source>what fits, less the starter</source>
            <translation>was passt, ohne den Starter</translation>
        </message>
    </context>
    <context>
        <name>BottleGroupRow</name>
        <message>
            <source> %</source>
            <translation> %</translation>
        </message>
        <message>
            <source> bar</source>
            <translation> bar</translation>
        </message>
        <message>
            <source>As their maker states it.</source>
            <translation>Wie der Hersteller sie angibt.</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Bottles from</source>
            <translation>Flaschen aus</translation>
        </message>
        <message>
            <source>Headspace</source>
            <translation>Kopfraum</translation>
        </message>
        <message>
            <source>Must not be put under pressure.</source>
            <translation>Darf nicht unter Druck gesetzt werden.</translation>
        </message>
        <message>
            <source>No rating known: a cautious one is taken.</source>
            <translation>Kein zulässiger Druck bekannt: Ein vorsichtiger wird angenommen.</translation>
        </message>
        <message>
            <source>Not from the stores</source>
            <translation>Nicht aus den Vorräten</translation>
        </message>
        <message>
            <source>Rating, over the air's</source>
            <translation>Zulässiger Überdruck</translation>
        </message>
        <message>
            <source>Take away</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Test bottle, to be felt daily</source>
            <translation>Testflasche, täglich zu drücken</translation>
        </message>
        <message>
            <source>Volume to the brim</source>
            <translation>Volumen bis zum Rand</translation>
        </message>
        <message>
            <source>What is known of them</source>
            <translation>Was bekannt ist</translation>
        </message>
        <message>
            <source>type it</source>
            <translation>eingeben</translation>
        </message>
    </context>
    <context>
        <name>BottleGroups</name>
        <message>
            <source>Add a test bottle</source>
            <translation>Testflasche hinzufügen</translation>
        </message>
        <message>
            <source>Add bottles</source>
            <translation>Flaschen hinzufügen</translation>
        </message>
        <message>
            <source>Bottles, row {n}</source>
            <translation>Flaschen, Zeile {n}</translation>
        </message>
        <message>
            <source>Take away row {n}</source>
            <translation>Zeile {n} entfernen</translation>
        </message>
    </context>
    <context>
        <name>BottleOutlook</name>
        <message>
            <source>+ {low} to {high} %</source>
            <translation>+ {low} bis {high} %</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>By the bottle</source>
            <translation>Je Flasche</translation>
        </message>
        <message>
            <source>Chill by {moment}: from then on one bottling in twenty may have passed {limit} on a warm day. More likely that would take until {likely}; feel the test bottle to know.</source>
            <translation>Kühle bis {moment}: Ab dann kann an einem warmen Tag eine von zwanzig Abfüllungen {limit} überschritten haben. Wahrscheinlicher dauert das bis {likely}; drück die Testflasche, um es zu wissen.</translation>
        </message>
        <message>
            <source>If nobody chilled and all the sugar fermented: {pressure} at the warmest, and {alcohol} % more alcohol.</source>
            <translation>Wenn niemand kühlte und aller Zucker vergärte: {pressure} bei größter Wärme und {alcohol} % mehr Alkohol.</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Grenze</translation>
        </message>
        <message>
            <source>Reckoned with {low} to {high} of sugar left in the drink.</source>
            <translation>Gerechnet mit {low} bis {high} Restzucker im Getränk.</translation>
        </message>
        <message>
            <source>Spoons</source>
            <translation>Löffel</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Sugar in all: {grams} g, {fizz} wanted.</source>
            <translation>Zucker insgesamt: {grams} g; gewünscht: {fizz}.</translation>
        </message>
        <message>
            <source>What would help</source>
            <translation>Was helfen würde</translation>
        </message>
        <message>
            <source>With this much sugar the bottles are not reckoned to reach their limit.</source>
            <translation>Mit so viel Zucker erreichen die Flaschen ihre Grenze rechnerisch nicht.</translation>
        </message>
        <message>
            <source>alcohol by volume, made in the bottle</source>
            <translation>Alkohol nach Volumen, in der Flasche entstanden</translation>
        </message>
        <message>
            <source>chill by</source>
            <translation>kühlen bis</translation>
        </message>
        <message>
            <source>chill by, at the latest</source>
            <translation>kühlen bis spätestens</translation>
        </message>
        <message>
            <source>never</source>
            <translation>nie</translation>
        </message>
        <message>
            <source>no deadline</source>
            <translation>keine Frist</translation>
        </message>
        <message>
            <source>no sugar</source>
            <translation>kein Zucker</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>over 8 bar</source>
            <translation>über 8 bar</translation>
        </message>
        <message>
            <source>sugar a bottle</source>
            <translation>Zucker je Flasche</translation>
        </message>
        <message>
            <source>sugar a bottle: {measure}</source>
            <translation>Zucker je Flasche: {measure}</translation>
        </message>
        <message>
            <source>to add: the drink has enough</source>
            <translation>nötig: Das Getränk hat genug</translation>
        </message>
        <message>
            <source>until it is as fizzy as that</source>
            <translation>bis es so sprudelt</translation>
        </message>
        <message>
            <source>{count} would stay empty.</source>
            <translation>Leer bleiben würden: {count}.</translation>
        </message>
        <message>
            <source>{count} × {volume}, {kind}</source>
            <translation>{count} × {volume}, {kind}</translation>
        </message>
        <message>
            <source>{drink} of drink, room for {room}.</source>
            <translation>{drink} Getränk, Platz für {room}.</translation>
        </message>
        <message>
            <source>{grams} g</source>
            <translation>{grams} g</translation>
        </message>
        <message>
            <source>{left} is left over; {count} more of the first kind would take it.</source>
            <translation>Übrig: {left}; dafür bräuchte es noch {count} von der ersten Art.</translation>
        </message>
        <message>
            <source>{limit}, assumed</source>
            <translation>{limit}, angenommen</translation>
        </message>
        <message>
            <source>{name} (test)</source>
            <translation>{name} (Test)</translation>
        </message>
    </context>
    <context>
        <name>BottlePage</name>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Bottles that stand</source>
            <translation>Stehende Flaschen</translation>
        </message>
        <message>
            <source>Bottles that stand, and filling bottles</source>
            <translation>Stehende Flaschen und Flaschen füllen</translation>
        </message>
        <message>
            <source>Fill bottles</source>
            <translation>Flaschen füllen</translation>
        </message>
    </context>
    <context>
        <name>BottleReminders</name>
        <message>
            <source>By then the pressure may be too high: this comes back {day} at {time} at the latest, until the bottles are chilled.</source>
            <translation>Bis dahin kann der Druck zu hoch sein: Das kommt spätestens am {day} um {time} wieder, bis die Flaschen gekühlt sind.</translation>
        </message>
        <message>
            <source>Calibrate the pH meter</source>
            <translation>pH-Meter kalibrieren</translation>
        </message>
        <message>
            <source>Chill one for some hours first, then open it slowly over the sink, under a cloth and away from your face. Write down whether it was too flat, right, or gushed; if it gushed, chill the others at once. It may hold more alcohol than the open jar did.</source>
            <translation>Kühle zuerst eine einige Stunden, dann öffne sie langsam über dem Spülbecken, unter einem Tuch und vom Gesicht weg. Schreib auf, ob sie zu schal war, richtig oder übergeschäumt ist; ist sie übergeschäumt, kühle die anderen sofort. Sie kann mehr Alkohol enthalten als das offene Glas.</translation>
        </message>
        <message>
            <source>Chill the bottles now</source>
            <translation>Flaschen jetzt kühlen</translation>
        </message>
        <message>
            <source>Chill the bottles soon</source>
            <translation>Flaschen bald kühlen</translation>
        </message>
        <message>
            <source>Cover your eyes and hands, do not shake, knock or open a warm bottle, and keep others away. The forecast is an estimate: if the test bottle is hard, chill them at once.</source>
            <translation>Schütze Augen und Hände; schüttle, stoße und öffne keine warme Flasche, und halte andere fern. Die Vorhersage ist eine Schätzung: Ist die Testflasche hart, kühle sie sofort.</translation>
        </message>
        <message>
            <source>Drink up the bottles</source>
            <translation>Flaschen austrinken</translation>
        </message>
        <message>
            <source>Even in the fridge sugar turns slowly into alcohol and pressure: open them with care.</source>
            <translation>Auch im Kühlschrank wird Zucker langsam zu Alkohol und Druck: Öffne sie vorsichtig.</translation>
        </message>
        <message>
            <source>Open one cold bottle</source>
            <translation>Eine kalte Flasche öffnen</translation>
        </message>
        <message>
            <source>Press the plastic test bottle, or read its gauge, and write down what you found. Hard means: chill all of them now. A glass bottle tells nothing by its feel and can burst; handle it gently, with your eyes covered.</source>
            <translation>Drück die Testflasche aus Plastik oder lies ihr Manometer ab, und schreib auf, was du gefunden hast. Hart heißt: jetzt alle kühlen. Eine Glasflasche verrät beim Anfassen nichts und kann bersten; fass sie sanft an, mit geschützten Augen.</translation>
        </message>
        <message>
            <source>Press the test bottle</source>
            <translation>Testflasche drücken</translation>
        </message>
        <message>
            <source>Put all of them into the fridge, and write down that you did: that ends this.</source>
            <translation>Stell alle in den Kühlschrank und schreib auf, dass du es getan hast: Damit ist das erledigt.</translation>
        </message>
        <message>
            <source>The pressure may be too high since {day} at {time}: a bottle can burst.</source>
            <translation>Der Druck kann seit {day}, {time}, zu hoch sein: Eine Flasche kann bersten.</translation>
        </message>
        <message>
            <source>The pressure may become too high from {day} at {time} on.</source>
            <translation>Der Druck kann ab {day}, {time}, zu hoch werden.</translation>
        </message>
        <message>
            <source>Throw out what smells wrong or has mold; when in doubt, throw it out.</source>
            <translation>Wirf weg, was falsch riecht oder Schimmel hat; im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Use fresh buffers, one of them near pH 4, and keep what you find: “Is my pH meter still good?” among the questions has a button for it. Until then mistrust readings near a limit: whether a brew is sour enough should not hang on an uncalibrated meter.</source>
            <translation>Nimm frische Pufferlösungen, eine davon nahe pH 4, und halte fest, was du findest: „Ist mein pH-Meter noch gut?“ unter den Fragen hat einen Knopf dafür. Misstraue bis dahin Messungen nahe einer Grenze: Ob ein Ansatz sauer genug ist, sollte nicht an einem unkalibrierten Messgerät hängen.</translation>
        </message>
        <message>
            <source>You wanted them used up by {day}.</source>
            <translation>Du wolltest sie bis {day} aufgebraucht haben.</translation>
        </message>
        <message>
            <source>{what}: {name}</source>
            <translation>{what}: {name}</translation>
        </message>
    </context>
    <context>
        <name>BottleStand</name>
        <message>
            <source>Fill bottles</source>
            <translation>Flaschen füllen</translation>
        </message>
        <message>
            <source>Filled bottles appear here: how much pressure they likely hold, by when to chill them, and what you felt and saw.</source>
            <translation>Gefüllte Flaschen erscheinen hier: wie viel Druck sie wohl haben, bis wann sie zu kühlen sind und was du gefühlt und gesehen hast.</translation>
        </message>
        <message>
            <source>No bottles stand</source>
            <translation>Keine Flaschen stehen</translation>
        </message>
        <message>
            <source>Working out how much pressure they hold, and by when to chill them…</source>
            <translation>Es wird berechnet, wie viel Druck sie haben und bis wann sie zu kühlen sind…</translation>
        </message>
    </context>
    <context>
        <name>BottleStock</name>
        <message>
            <source>Not from the stores</source>
            <translation>Nicht aus den Vorräten</translation>
        </message>
    </context>
    <context>
        <name>BottlingSheet</name>
        <message>
            <source>Alcohol made in the bottle</source>
            <translation>In der Flasche entstandener Alkohol</translation>
        </message>
        <message>
            <source>All figures are estimates. The pace of the yeasts is hardly known beforehand, and no bottle promises to hold.</source>
            <translation>Alle Zahlen sind Schätzungen. Wie schnell die Hefen arbeiten, ist vorher kaum bekannt, und keine Flasche verspricht zu halten.</translation>
        </message>
        <message>
            <source>At the warmest</source>
            <translation>Höchste Temperatur</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Bottling sheet</source>
            <translation>Abfüllblatt</translation>
        </message>
        <message>
            <source>Chill by, at the latest</source>
            <translation>Kühlen bis spätestens</translation>
        </message>
        <message>
            <source>Close and stand them in a box</source>
            <translation>Verschließen und in eine Kiste stellen</translation>
        </message>
        <message>
            <source>Count</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>Cut small and even: whole pieces gush when the bottle is opened.</source>
            <translation>Klein und gleichmäßig geschnitten: Ganze Stücke lassen die Flasche beim Öffnen überschäumen.</translation>
        </message>
        <message>
            <source>Feel the test bottle daily</source>
            <translation>Täglich die Testflasche drücken</translation>
        </message>
        <message>
            <source>Fill mL</source>
            <translation>mL füllen</translation>
        </message>
        <message>
            <source>Fill, leaving the headspace</source>
            <translation>Füllen, Kopfraum lassen</translation>
        </message>
        <message>
            <source>Glass under pressure can burst: eye protection, a crate or box with a lid, a towel over those you move.</source>
            <translation>Glas unter Druck kann bersten: Augenschutz, eine Kiste mit Deckel, ein Handtuch über Flaschen, die du bewegst.</translation>
        </message>
        <message>
            <source>Grams as above; weigh them, spoons are only about right.</source>
            <translation>Gramm wie oben; wiege sie, Löffel stimmen nur ungefähr.</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>Insgesamt</translation>
        </message>
        <message>
            <source>In the cold since:</source>
            <translation>In der Kälte seit:</translation>
        </message>
        <message>
            <source>It holds alcohol, more with every day. Not for children, in pregnancy, or where alcohol must be avoided.</source>
            <translation>Es enthält Alkohol, jeden Tag mehr. Nichts für Kinder, in der Schwangerschaft oder wo Alkohol zu meiden ist.</translation>
        </message>
        <message>
            <source>Kitchen measure, limit</source>
            <translation>Küchenmaß, Grenze</translation>
        </message>
        <message>
            <source>Look at every bottle</source>
            <translation>Jede Flasche ansehen</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Beachten</translation>
        </message>
        <message>
            <source>Never shake a bottle. Chill it through, then open it slowly, under a towel, over a sink, away from faces.</source>
            <translation>Schüttle nie eine Flasche. Kühle sie durch, dann öffne sie langsam, unter einem Handtuch, über einem Spülbecken, von Gesichtern weg.</translation>
        </message>
        <message>
            <source>No chip, no scratch, no crack. Clean, rinsed, and made for fizzy drinks.</source>
            <translation>Keine Macke, kein Kratzer, kein Sprung. Sauber, gespült und für Sprudelgetränke gemacht.</translation>
        </message>
        <message>
            <source>Rules and advice of the place where you live come before this sheet.</source>
            <translation>Regeln und Rat deines Wohnorts gehen diesem Blatt vor.</translation>
        </message>
        <message>
            <source>Share out what else goes in</source>
            <translation>Verteilen, was sonst hineinkommt</translation>
        </message>
        <message>
            <source>Soft: wait. Firm: chill one through and open it. Hard: chill all of them.</source>
            <translation>Weich: warten. Fest: eine durchkühlen und öffnen. Hart: alle kühlen.</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>Sugar g</source>
            <translation>Zucker g</translation>
        </message>
        <message>
            <source>Sugar into each bottle, or stirred into all of the drink</source>
            <translation>Zucker in jede Flasche oder ins ganze Getränk gerührt</translation>
        </message>
        <message>
            <source>Test bottle hard, or the chill-by time come: all bottles into the cold. Open none warm.</source>
            <translation>Testflasche hart oder Kühlzeit erreicht: alle Flaschen in die Kälte. Keine warm öffnen.</translation>
        </message>
        <message>
            <source>The same in every bottle, the test bottle too.</source>
            <translation>In jede Flasche dasselbe, auch in die Testflasche.</translation>
        </message>
        <message>
            <source>They stand at</source>
            <translation>Sie stehen bei</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>With a lid, away from sun and people.</source>
            <translation>Mit Deckel, fern von Sonne und Menschen.</translation>
        </message>
        <message>
            <source>at most {limit}</source>
            <translation>höchstens {limit}</translation>
        </message>
        <message>
            <source>no deadline</source>
            <translation>keine Frist</translation>
        </message>
        <message>
            <source>none</source>
            <translation>kein Druck</translation>
        </message>
        <message>
            <source>{low} to {high} %</source>
            <translation>{low} bis {high} %</translation>
        </message>
        <message>
            <source>{name} {grams} g</source>
            <translation>{name} {grams} g</translation>
        </message>
        <message>
            <source>{name}, test</source>
            <translation>{name}, Test</translation>
        </message>
        <message>
            <source>{volume} into {count} bottles, {fizz}</source>
            <translation>{volume} in {count} Flaschen, {fizz}</translation>
        </message>
    </context>
    <context>
        <name>Bottlings</name>
        <message>
            <source>Add less sugar, fill cooler, or use bottles with a higher rating.</source>
            <translation>Nimm weniger Zucker, fülle kühler ab oder nimm Flaschen mit höherem zulässigem Druck.</translation>
        </message>
        <message>
            <source>Agave syrup</source>
            <translation>Agavendicksaft</translation>
        </message>
        <message>
            <source>Apple juice</source>
            <translation>Apfelsaft</translation>
        </message>
        <message>
            <source>Apples</source>
            <translation>Äpfel</translation>
        </message>
        <message>
            <source>Apricots</source>
            <translation>Aprikosen</translation>
        </message>
        <message>
            <source>Blackberries</source>
            <translation>Brombeeren</translation>
        </message>
        <message>
            <source>Blueberries</source>
            <translation>Heidelbeeren</translation>
        </message>
        <message>
            <source>Bottles have cost people their eyes: when moved, when dropped, and by the flying cap.</source>
            <translation>Flaschen haben Menschen das Augenlicht gekostet: beim Bewegen, beim Fallen und durch den fliegenden Verschluss.</translation>
        </message>
        <message>
            <source>Brown sugar</source>
            <translation>Brauner Zucker</translation>
        </message>
        <message>
            <source>Chill by {moment} at the latest, sooner once it is right.</source>
            <translation>Kühle bis spätestens {moment}, früher, sobald es richtig ist.</translation>
        </message>
        <message>
            <source>Chill now: since {moment} lively yeasts could have reached the limit.</source>
            <translation>Jetzt kühlen: Seit {moment} könnten lebhafte Hefen die Grenze erreicht haben.</translation>
        </message>
        <message>
            <source>Chilling takes hours too: less than {least_hours} hours leave no time to save them.</source>
            <translation>Auch das Kühlen dauert Stunden: Weniger als {least_hours} Stunden lassen keine Zeit, sie zu retten.</translation>
        </message>
        <message>
            <source>Cold slows the yeasts and does not end them.</source>
            <translation>Kälte bremst die Hefen, sie stoppt sie nicht.</translation>
        </message>
        <message>
            <source>Cover them, wear eye protection, and open them one by one over a sink, slowly and under a towel. Keep what you do not drink in the coldest place. </source>
            <translation>Deck sie ab, trag Augenschutz und öffne sie einzeln über einem Spülbecken, langsam und unter einem Handtuch. Bewahre, was du nicht trinkst, am kältesten Platz auf. </translation>
        </message>
        <message>
            <source>Cranberry juice, unsweetened</source>
            <translation>Cranberrysaft, ungesüßt</translation>
        </message>
        <message>
            <source>Even in the cold they may have reached their limit by day {chill_by_days}.</source>
            <translation>Selbst in der Kälte können sie ihre Grenze bis Tag {chill_by_days} erreicht haben.</translation>
        </message>
        <message>
            <source>Figs</source>
            <translation>Feigen</translation>
        </message>
        <message>
            <source>Fill one plastic bottle made for fizzy drinks, and feel it daily.</source>
            <translation>Fülle eine Plastikflasche für Sprudelgetränke und drücke sie täglich.</translation>
        </message>
        <message>
            <source>Fill one plastic test bottle, and chill all of them once it is hard.</source>
            <translation>Fülle eine Testflasche aus Plastik und kühle alle, sobald sie hart ist.</translation>
        </message>
        <message>
            <source>Ginger root</source>
            <translation>Ingwerwurzel</translation>
        </message>
        <message>
            <source>Glass under pressure can burst without warning.</source>
            <translation>Glas unter Druck kann ohne Warnung bersten.</translation>
        </message>
        <message>
            <source>Grape juice</source>
            <translation>Traubensaft</translation>
        </message>
        <message>
            <source>Grapefruit</source>
            <translation>Grapefruit</translation>
        </message>
        <message>
            <source>Grapes</source>
            <translation>Trauben</translation>
        </message>
        <message>
            <source>Honey</source>
            <translation>Honig</translation>
        </message>
        <message>
            <source>How lively your yeasts are is hardly known beforehand. A plastic bottle shows it: soft, firm, hard.</source>
            <translation>Wie lebhaft deine Hefen sind, ist vorher kaum bekannt. Eine Plastikflasche zeigt es: weich, fest, hart.</translation>
        </message>
        <message>
            <source>If you know the rating, choose “Rated by its maker” and type it.</source>
            <translation>Wenn du den zulässigen Druck kennst, wähle „Herstellerangabe“ und gib ihn ein.</translation>
        </message>
        <message>
            <source>In the bottle, alcohol rises by {low_abv} to {high_abv} for this fizz, and up to {most_abv} if all the sugar ferments.</source>
            <translation>In der Flasche steigt der Alkohol um {low_abv} bis {high_abv} für diesen Sprudel und um bis zu {most_abv}, wenn aller Zucker vergärt.</translation>
        </message>
        <message>
            <source>In the cold it still rises slowly. Drink it before {until}.</source>
            <translation>In der Kälte steigt der Druck langsam weiter. Trink sie vor {until}.</translation>
        </message>
        <message>
            <source>Keep them cooler, no warmer than {temperature} °C, and chill sooner.</source>
            <translation>Halte sie kühler, nicht wärmer als {temperature} °C, und kühle früher.</translation>
        </message>
        <message>
            <source>Kiwi</source>
            <translation>Kiwi</translation>
        </message>
        <message>
            <source>Leave more headspace: at least 4 % of the bottle.</source>
            <translation>Lass mehr Kopfraum: mindestens 4 % der Flasche.</translation>
        </message>
        <message>
            <source>Lemon juice</source>
            <translation>Zitronensaft</translation>
        </message>
        <message>
            <source>Less fizz alone does not help with these bottles.</source>
            <translation>Weniger Sprudel allein hilft bei diesen Flaschen nicht.</translation>
        </message>
        <message>
            <source>Less fizz: up to {volumes} volumes, with no more sugar than that takes.</source>
            <translation>Weniger Sprudel: bis zu {volumes} Volumen, mit nicht mehr Zucker, als das braucht.</translation>
        </message>
        <message>
            <source>Likely {volumes}, at {bar}; it may be as much as {high}.</source>
            <translation>Wohl {volumes}, bei {bar}; es können bis zu {high} sein.</translation>
        </message>
        <message>
            <source>Mango</source>
            <translation>Mango</translation>
        </message>
        <message>
            <source>Maple syrup</source>
            <translation>Ahornsirup</translation>
        </message>
        <message>
            <source>No sugar is left that could bring them to their limit, as far as is known.</source>
            <translation>Soweit bekannt, ist kein Zucker mehr da, der sie an ihre Grenze bringen könnte.</translation>
        </message>
        <message>
            <source>Only a plastic bottle can be felt, and there is none among these.</source>
            <translation>Nur eine Plastikflasche lässt sich drücken, und unter diesen ist keine.</translation>
        </message>
        <message>
            <source>Orange juice</source>
            <translation>Orangensaft</translation>
        </message>
        <message>
            <source>Oranges</source>
            <translation>Orangen</translation>
        </message>
        <message>
            <source>Peaches</source>
            <translation>Pfirsiche</translation>
        </message>
        <message>
            <source>Pears</source>
            <translation>Birnen</translation>
        </message>
        <message>
            <source>Pineapple</source>
            <translation>Ananas</translation>
        </message>
        <message>
            <source>Pineapple juice</source>
            <translation>Ananassaft</translation>
        </message>
        <message>
            <source>Please enter at least one kind of bottles.</source>
            <translation>Bitte gib mindestens eine Art Flaschen ein.</translation>
        </message>
        <message>
            <source>Please say how it felt.</source>
            <translation>Bitte sag, wie sie sich anfühlte.</translation>
        </message>
        <message>
            <source>Please say how it was.</source>
            <translation>Bitte sag, wie sie war.</translation>
        </message>
        <message>
            <source>Please type the rating that their maker gives.</source>
            <translation>Bitte gib den zulässigen Druck laut Hersteller ein.</translation>
        </message>
        <message>
            <source>Please type what the gauge shows.</source>
            <translation>Bitte gib ein, was das Manometer zeigt.</translation>
        </message>
        <message>
            <source>Plums</source>
            <translation>Pflaumen</translation>
        </message>
        <message>
            <source>Pomegranate juice</source>
            <translation>Granatapfelsaft</translation>
        </message>
        <message>
            <source>Pomegranate seeds</source>
            <translation>Granatapfelkerne</translation>
        </message>
        <message>
            <source>Put all bottles in the cold now. Open none warm, and none to let gas out. </source>
            <translation>Bring jetzt alle Flaschen in die Kälte. Öffne keine warm und keine, um Gas abzulassen. </translation>
        </message>
        <message>
            <source>Raspberries</source>
            <translation>Himbeeren</translation>
        </message>
        <message>
            <source>Some of these bottles have no rating from their maker.</source>
            <translation>Für einige dieser Flaschen gibt der Hersteller keinen zulässigen Druck an.</translation>
        </message>
        <message>
            <source>Strawberries</source>
            <translation>Erdbeeren</translation>
        </message>
        <message>
            <source>Sweet cherries</source>
            <translation>Süßkirschen</translation>
        </message>
        <message>
            <source>Tell those who drink it. For children, in pregnancy and where alcohol must be avoided, leave it. </source>
            <translation>Sag es denen, die es trinken. Für Kinder, in der Schwangerschaft und wo Alkohol zu meiden ist: nicht trinken. </translation>
        </message>
        <message>
            <source>That comes on top of what is in the drink already. Some rules call a drink alcoholic from {threshold_abv}; bought kombuchas have been found well above.</source>
            <translation>Das kommt zu dem hinzu, was schon im Getränk ist. Manche Regeln nennen ein Getränk ab {threshold_abv} alkoholisch; gekaufte Kombuchas lagen schon weit darüber.</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>Die Menge</translation>
        </message>
        <message>
            <source>The amount to bottle</source>
            <translation>Die Menge zum Abfüllen</translation>
        </message>
        <message>
            <source>The bottles hold only {high}. Add bottles, or bottle less.</source>
            <translation>Die Flaschen fassen nur {high}. Nimm mehr Flaschen oder fülle weniger ab.</translation>
        </message>
        <message>
            <source>The fizz</source>
            <translation>Die Kohlensäure</translation>
        </message>
        <message>
            <source>The headspace</source>
            <translation>Der Kopfraum</translation>
        </message>
        <message>
            <source>The least share of sugar</source>
            <translation>Der kleinste Zuckeranteil</translation>
        </message>
        <message>
            <source>The least sugar left in the drink</source>
            <translation>Der kleinste Restzucker im Getränk</translation>
        </message>
        <message>
            <source>The most share of sugar</source>
            <translation>Der größte Zuckeranteil</translation>
        </message>
        <message>
            <source>The most sugar left in the drink</source>
            <translation>Der größte Restzucker im Getränk</translation>
        </message>
        <message>
            <source>The number of bottles</source>
            <translation>Die Anzahl der Flaschen</translation>
        </message>
        <message>
            <source>The pressure</source>
            <translation>Der Druck</translation>
        </message>
        <message>
            <source>The rating</source>
            <translation>Der zulässige Druck</translation>
        </message>
        <message>
            <source>The starter kept back</source>
            <translation>Der zurückbehaltene Starter</translation>
        </message>
        <message>
            <source>The sugar in all</source>
            <translation>Der Zucker insgesamt</translation>
        </message>
        <message>
            <source>The temperature of the cold</source>
            <translation>Die Temperatur der Kälte</translation>
        </message>
        <message>
            <source>The temperature of the jar</source>
            <translation>Die Temperatur des Glases</translation>
        </message>
        <message>
            <source>The test bottle was hard.</source>
            <translation>Die Testflasche war hart.</translation>
        </message>
        <message>
            <source>The warmest temperature</source>
            <translation>Die wärmste Temperatur</translation>
        </message>
        <message>
            <source>Then the glass ones hold as much, and it goes on rising while they stand warm.</source>
            <translation>Dann haben die aus Glas ebenso viel Druck, und er steigt weiter, solange sie warm stehen.</translation>
        </message>
        <message>
            <source>There are only {high} bottles left.</source>
            <translation>Es sind nur noch {high} Flaschen da.</translation>
        </message>
        <message>
            <source>There is a warning that stops this. Write down why you fill them all the same.</source>
            <translation>Eine Warnung hält das auf. Schreib auf, warum du sie trotzdem füllst.</translation>
        </message>
        <message>
            <source>There is no culture in this jar to keep it with. Keep it with a culture at rest, or leave the batch as it is.</source>
            <translation>In diesem Glas ist keine Kultur, bei der er bleiben könnte. Behalte ihn bei einer ruhenden Kultur oder lass den Ansatz, wie er ist.</translation>
        </message>
        <message>
            <source>There is no test bottle among them.</source>
            <translation>Es ist keine Testflasche darunter.</translation>
        </message>
        <message>
            <source>These bottles are gone already.</source>
            <translation>Diese Flaschen sind schon weg.</translation>
        </message>
        <message>
            <source>These bottles are not conditioning any more.</source>
            <translation>Diese Flaschen sind nicht mehr in Nachgärung.</translation>
        </message>
        <message>
            <source>These bottles may pass their limit within {hours} hours.</source>
            <translation>Diese Flaschen können ihre Grenze binnen {hours} Stunden überschreiten.</translation>
        </message>
        <message>
            <source>They are reckoned with a cautious {ceiling_bar}, our reading of the glass trade's figure for fizzy-drink glass. No one has promised that yours hold it.</source>
            <translation>Für sie wird mit vorsichtigen {ceiling_bar} gerechnet, unserer Lesart der Zahl der Glasbranche für Sprudelflaschen. Niemand hat versprochen, dass deine das halten.</translation>
        </message>
        <message>
            <source>This is before the bottles were filled.</source>
            <translation>Das liegt vor dem Füllen der Flaschen.</translation>
        </message>
        <message>
            <source>Use bottles with a higher rating from their maker.</source>
            <translation>Nimm Flaschen mit höherem zulässigem Druck laut Hersteller.</translation>
        </message>
        <message>
            <source>Use other bottles: sound glass or plastic made for fizzy drinks.</source>
            <translation>Nimm andere Flaschen: heiles Glas oder Plastik, gemacht für Sprudelgetränke.</translation>
        </message>
        <message>
            <source>Watermelon</source>
            <translation>Wassermelone</translation>
        </message>
        <message>
            <source>Wear eye protection. Stand the bottles in a crate or box with a lid, and lay a towel over those you move. Never shake one. Chill it through, then open it slowly over a sink, under a towel. </source>
            <translation>Trag Augenschutz. Stell die Flaschen in einen Kasten oder eine Kiste mit Deckel und leg ein Handtuch über die, die du bewegst. Schüttle nie eine. Kühle sie durch, dann öffne sie langsam über einem Spülbecken, unter einem Handtuch. </translation>
        </message>
        <message>
            <source>Where your local rules ask for more, follow them.</source>
            <translation>Wo deine örtlichen Regeln mehr verlangen, befolge sie.</translation>
        </message>
        <message>
            <source>White sugar</source>
            <translation>Weißer Zucker</translation>
        </message>
        <message>
            <source>about {days} days</source>
            <translation>etwa {days} Tage</translation>
        </message>
        <message>
            <source>gauge {bar}</source>
            <translation>Manometer {bar}</translation>
        </message>
        <message>
            <source>less than a day</source>
            <translation>weniger als ein Tag</translation>
        </message>
        <message>
            <source>note “{text}”</source>
            <translation>Notiz „{text}“</translation>
        </message>
        <message>
            <source>opened, {opened}</source>
            <translation>geöffnet, {opened}</translation>
        </message>
        <message>
            <source>over 8 bar</source>
            <translation>über 8 bar</translation>
        </message>
        <message>
            <source>test bottle {feel}</source>
            <translation>Testflasche {feel}</translation>
        </message>
        <message>
            <source>vented</source>
            <translation>entlüftet</translation>
        </message>
        <message>
            <source>{low} to {high} days</source>
            <translation>{low} bis {high} Tage</translation>
        </message>
        <message>
            <source>{name} chilled at {temperature}</source>
            <translation>{name} bei {temperature} gekühlt</translation>
        </message>
        <message>
            <source>{name} drunk up</source>
            <translation>{name} ausgetrunken</translation>
        </message>
        <message>
            <source>{name} poured away: {reason}</source>
            <translation>{name} weggegossen: {reason}</translation>
        </message>
        <message>
            <source>{name}: corrected to {check}</source>
            <translation>{name}: korrigiert auf {check}</translation>
        </message>
        <message>
            <source>{name}: {check}</source>
            <translation>{name}: {check}</translation>
        </message>
        <message>
            <source>{name}: {check} taken out</source>
            <translation>{name}: {check} herausgenommen</translation>
        </message>
        <message>
            <source>{name}: {volume} in {count} bottles</source>
            <translation>{name}: {volume} in {count} Flaschen</translation>
        </message>
        <message>
            <source>{name}: {volume} in {count} bottles, in spite of the warning: {reason}</source>
            <translation>{name}: {volume} in {count} Flaschen, trotz der Warnung: {reason}</translation>
        </message>
        <message>
            <source>{number} volumes, a gentle prickle</source>
            <translation>{number} Volumen, ein sanftes Prickeln</translation>
        </message>
        <message>
            <source>{number} volumes, fizzy as beer</source>
            <translation>{number} Volumen, sprudelnd wie Bier</translation>
        </message>
        <message>
            <source>{number} volumes, hardly fizzy</source>
            <translation>{number} Volumen, kaum sprudelnd</translation>
        </message>
        <message>
            <source>{number} volumes, lively as lemonade</source>
            <translation>{number} Volumen, lebhaft wie Limonade</translation>
        </message>
        <message>
            <source>{number} volumes, wild</source>
            <translation>{number} Volumen, wild</translation>
        </message>
    </context>
    <context>
        <name>Calendar</name>
        <message>
            <source>1 reminder is in the calendar file {path}.</source>
            <translation>1 Erinnerung ist in der Kalenderdatei {path}.</translation>
        </message>
        <message>
            <source>Best before</source>
            <translation>Mindestens haltbar bis</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Kalibrierung</translation>
        </message>
        <message>
            <source>Chilling bottles</source>
            <translation>Flaschen kühlen</translation>
        </message>
        <message>
            <source>Due in the pantry</source>
            <translation>Fällig in der Vorratskammer</translation>
        </message>
        <message>
            <source>Feeding</source>
            <translation>Füttern</translation>
        </message>
        <message>
            <source>Look for mold</source>
            <translation>Nach Schimmel sehen</translation>
        </message>
        <message>
            <source>Look for the film</source>
            <translation>Nach der Haut sehen</translation>
        </message>
        <message>
            <source>Nothing is open: the calendar file {path} is empty.</source>
            <translation>Nichts ist offen: Die Kalenderdatei {path} ist leer.</translation>
        </message>
        <message>
            <source>Own reminder</source>
            <translation>Eigene Erinnerung</translation>
        </message>
        <message>
            <source>Pressure check</source>
            <translation>Druckkontrolle</translation>
        </message>
        <message>
            <source>Tasting</source>
            <translation>Verkostung</translation>
        </message>
        <message>
            <source>Test bottle</source>
            <translation>Testflasche</translation>
        </message>
        <message>
            <source>The calendar file {path} could not be written; what stood there before still does. Please check that its folder is there and may be written to. The due list itself is not affected.</source>
            <translation>Die Kalenderdatei {path} ließ sich nicht schreiben; was vorher darin stand, steht noch da. Bitte prüfe, ob ihr Ordner da ist und beschrieben werden darf. Die Fälligkeitsliste selbst ist nicht betroffen.</translation>
        </message>
        <message>
            <source>The file {path} is no calendar, so it was left as it is. Please choose another name.</source>
            <translation>Die Datei {path} ist kein Kalender und blieb darum, wie sie war. Bitte wähle einen anderen Namen.</translation>
        </message>
        <message>
            <source>Topping up</source>
            <translation>Nachfüllen</translation>
        </message>
        <message>
            <source>pH check</source>
            <translation>pH-Kontrolle</translation>
        </message>
        <message>
            <source>{count} reminders are in the calendar file {path}.</source>
            <translation>{count} Erinnerungen sind in der Kalenderdatei {path}.</translation>
        </message>
        <message>
            <source>{what}: {name}</source>
            <translation>{what}: {name}</translation>
        </message>
    </context>
    <context>
        <name>CalendarDialog</name>
        <message>
            <source>Calendar file of the due list</source>
            <translation>Kalenderdatei der Fälligkeitsliste</translation>
        </message>
        <message>
            <source>Calendar files (*.ics)</source>
            <translation>Kalenderdateien (*.ics)</translation>
        </message>
    </context>
    <context>
        <name>CalendarPathEditor</name>
        <message>
            <source>Choose where the calendar file is kept</source>
            <translation>Wähle, wo die Kalenderdatei liegt</translation>
        </message>
        <message>
            <source>Choose…</source>
            <translation>Wählen…</translation>
        </message>
        <message>
            <source>Keep the calendar file up to date no longer</source>
            <translation>Die Kalenderdatei nicht mehr aktuell halten</translation>
        </message>
        <message>
            <source>No file is kept</source>
            <translation>Keine Datei wird geführt</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Stoppen</translation>
        </message>
    </context>
    <context>
        <name>CareActs</name>
        <message>
            <source>Caption of a photo of {name} changed</source>
            <translation>Bildunterschrift eines Fotos von {name} geändert</translation>
        </message>
        <message>
            <source>Photo of {name} added</source>
            <translation>Foto von {name} hinzugefügt</translation>
        </message>
        <message>
            <source>Photo of {name} removed</source>
            <translation>Foto von {name} entfernt</translation>
        </message>
        <message>
            <source>Temperatures of {name} from {file} taken out</source>
            <translation>Temperaturen von {name} aus {file} herausgenommen</translation>
        </message>
        <message>
            <source>pH {ph} of {name}</source>
            <translation>pH {ph} von {name}</translation>
        </message>
        <message>
            <source>{care}: {name}</source>
            <translation>{care}: {name}</translation>
        </message>
        <message>
            <source>{count} photos of {name} added</source>
            <translation>{count} Fotos von {name} hinzugefügt</translation>
        </message>
        <message>
            <source>{count} temperatures of {name} read from {file}</source>
            <translation>{count} Temperaturen von {name} aus {file} gelesen</translation>
        </message>
        <message>
            <source>{meter} calibrated</source>
            <translation>{meter} kalibriert</translation>
        </message>
        <message>
            <source>{meter} calibrated, slope {slope} %</source>
            <translation>{meter} kalibriert, Steilheit {slope} %</translation>
        </message>
        <message>
            <source>{name} cleared of suspicion</source>
            <translation>{name} vom Verdacht freigegeben</translation>
        </message>
        <message>
            <source>{name} fed with {volume}</source>
            <translation>{name} mit {volume} gefüttert</translation>
        </message>
        <message>
            <source>{name} given away</source>
            <translation>{name} weggegeben</translation>
        </message>
        <message>
            <source>{name} given to {to}</source>
            <translation>{name} weggegeben an {to}</translation>
        </message>
        <message>
            <source>{name} has grown</source>
            <translation>{name} ist gewachsen</translation>
        </message>
        <message>
            <source>{name} looked at: {found}</source>
            <translation>{name} angesehen: {found}</translation>
        </message>
        <message>
            <source>{name} lost: {reason}</source>
            <translation>{name} verloren: {reason}</translation>
        </message>
        <message>
            <source>{name} lost: {reason}; flagged with it: {flagged}</source>
            <translation>{name} verloren: {reason}; damit unter Verdacht: {flagged}</translation>
        </message>
        <message>
            <source>{name} moved to {vessel}</source>
            <translation>{name} umgesetzt in {vessel}</translation>
        </message>
        <message>
            <source>{name} poured over into {vessel}</source>
            <translation>{name} umgefüllt in {vessel}</translation>
        </message>
        <message>
            <source>{name} put to rest in {vessel}, {volume}</source>
            <translation>{name} zur Ruhe gesetzt in {vessel}, {volume}</translation>
        </message>
        <message>
            <source>{name} removed</source>
            <translation>{name} entfernt</translation>
        </message>
        <message>
            <source>{name} retired</source>
            <translation>{name} ausgemustert</translation>
        </message>
        <message>
            <source>{name} split from {parent}</source>
            <translation>{name} von {parent} abgeteilt</translation>
        </message>
        <message>
            <source>{name} split from {parent} into {vessel}</source>
            <translation>{name} von {parent} abgeteilt in {vessel}</translation>
        </message>
        <message>
            <source>{name} taken out of its vessel</source>
            <translation>{name} aus dem Gefäß genommen</translation>
        </message>
        <message>
            <source>{name} topped up with {volume}</source>
            <translation>{name} nachgefüllt mit {volume}</translation>
        </message>
        <message>
            <source>{name} topped up with {volume} of sweet tea</source>
            <translation>{name} nachgefüllt mit {volume} gesüßtem Tee</translation>
        </message>
        <message>
            <source>{name}: growing a culture in {vessel}</source>
            <translation>{name}: Eine Kultur wächst in {vessel}</translation>
        </message>
        <message>
            <source>{parents} merged into {name}</source>
            <translation>{parents} vereint zu {name}</translation>
        </message>
        <message>
            <source>{temperature} in {name}</source>
            <translation>{temperature} in {name}</translation>
        </message>
        <message>
            <source>{temperature} in {name} taken out</source>
            <translation>{temperature} in {name} herausgenommen</translation>
        </message>
        <message>
            <source>{volume} of starter lent by {name} to {to}</source>
            <translation>{volume} Starter von {name} an {to} abgegeben</translation>
        </message>
        <message>
            <source>{volume} of {name} drawn off</source>
            <translation>{volume} von {name} abgezogen</translation>
        </message>
        <message>
            <source>{volume} of {name} kept as starter with {to}</source>
            <translation>{volume} von {name} als Starter bei {to} aufgehoben</translation>
        </message>
        <message>
            <source>{volume} of {name} lost</source>
            <translation>{volume} von {name} verloren</translation>
        </message>
        <message>
            <source>{volume} of {name} poured into {into}</source>
            <translation>{volume} von {name} in {into} gegossen</translation>
        </message>
        <message>
            <source>{volume} of {name} taken as a sample</source>
            <translation>{volume} von {name} als Probe entnommen</translation>
        </message>
    </context>
    <context>
        <name>CareDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>In no vessel</source>
            <translation>In keinem Gefäß</translation>
        </message>
    </context>
    <context>
        <name>CarryDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Do it</source>
            <translation>Ausführen</translation>
        </message>
        <message>
            <source>How much</source>
            <translation>Wie viel</translation>
        </message>
        <message>
            <source>In which vessel</source>
            <translation>In welches Gefäß</translation>
        </message>
        <message>
            <source>Liquid it rests in (may stay empty)</source>
            <translation>Flüssigkeit, in der sie ruht (darf leer bleiben)</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Name of the daughter</source>
            <translation>Name der Tochter</translation>
        </message>
        <message>
            <source>One name for both cultures, if they shall be one (may stay empty)</source>
            <translation>Ein Name für beide Kulturen, falls sie eine werden sollen (darf leer bleiben)</translation>
        </message>
        <message>
            <source>There is no vessel for this now.</source>
            <translation>Dafür ist gerade kein Gefäß da.</translation>
        </message>
        <message>
            <source>Thickness of its pellicle</source>
            <translation>Dicke ihres Häutchens</translation>
        </message>
        <message>
            <source>What is meant</source>
            <translation>Was gemeint ist</translation>
        </message>
        <message>
            <source>Where to</source>
            <translation>Wohin</translation>
        </message>
        <message>
            <source>With which culture</source>
            <translation>Mit welcher Kultur</translation>
        </message>
        <message>
            <source>may stay empty</source>
            <translation>darf leer bleiben</translation>
        </message>
        <message>
            <source>{vessel} · {batch}</source>
            <translation>{vessel} · {batch}</translation>
        </message>
        <message>
            <source>{what}, into {target}</source>
            <translation>{what}, in {target}</translation>
        </message>
        <message>
            <source>{what}: {carried} to {target}</source>
            <translation>{what}: {carried} zu {target}</translation>
        </message>
    </context>
    <context>
        <name>ChartLegend</name>
        <message>
            <source>Legend: {entries}</source>
            <translation>Legende: {entries}</translation>
        </message>
    </context>
    <context>
        <name>ChoiceBar</name>
        <message>
            <source>{name}: {choice}</source>
            <translation>{name}: {choice}</translation>
        </message>
    </context>
    <context>
        <name>ClearDialog</name>
        <message>
            <source>Clear it</source>
            <translation>Freigeben</translation>
        </message>
        <message>
            <source>Clear {name} of suspicion</source>
            <translation>{name} vom Verdacht freigeben</translation>
        </message>
        <message>
            <source>No look can prove that there is no mold. Clear it only if you have watched it long enough and are sure; the program takes your word and keeps it.</source>
            <translation>Kein Blick kann beweisen, dass kein Schimmel da ist. Gib nur frei, wenn du lange genug beobachtet hast und sicher bist; das Programm verlässt sich auf dein Wort und bewahrt es auf.</translation>
        </message>
        <message>
            <source>Why you are sure</source>
            <translation>Warum du sicher bist</translation>
        </message>
    </context>
    <context>
        <name>ClosingDialog</name>
        <message>
            <source>A timer is running</source>
            <translation>Ein Timer läuft</translation>
        </message>
        <message>
            <source>Close all the same</source>
            <translation>Trotzdem schließen</translation>
        </message>
        <message>
            <source>Close while a timer is running?</source>
            <translation>Schließen, während ein Timer läuft?</translation>
        </message>
        <message>
            <source>It goes on while brewdesk is closed, but nothing will ring.</source>
            <translation>Er läuft weiter, während brewdesk geschlossen ist, aber nichts wird klingeln.</translation>
        </message>
        <message>
            <source>Keep it open</source>
            <translation>Offen lassen</translation>
        </message>
        <message>
            <source>Settings can keep brewdesk running in the tray instead.</source>
            <translation>Per Einstellung kann brewdesk stattdessen im Infobereich weiterlaufen.</translation>
        </message>
        <message>
            <source>{batch}: “{step}” ends at {time}.</source>
            <translation>{batch}: „{step}“ endet um {time}.</translation>
        </message>
    </context>
    <context>
        <name>CopyDialog</name>
        <message>
            <source>Choose a folder…</source>
            <translation>Ordner wählen…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Copy everything to a folder</source>
            <translation>Alles in einen Ordner kopieren</translation>
        </message>
        <message>
            <source>Open it in a window of its own</source>
            <translation>In eigenem Fenster öffnen</translation>
        </message>
        <message>
            <source>The pantry and the files of all its photos are copied into a new folder, on a memory stick for example. The copy is read back and compared, and can be opened as it is. The pantry itself stays as it is.

Photos go along unchanged, with whatever the camera wrote into them.</source>
            <translation>Die Vorratskammer und die Dateien aller ihrer Fotos werden in einen neuen Ordner kopiert, zum Beispiel auf einen USB-Stick. Die Kopie wird zurückgelesen und verglichen und lässt sich öffnen, wie sie ist. Die Vorratskammer selbst bleibt, wie sie ist.

Fotos kommen unverändert mit, samt allem, was die Kamera hineingeschrieben hat.</translation>
        </message>
        <message>
            <source>Where the copy is to be</source>
            <translation>Wohin die Kopie soll</translation>
        </message>
    </context>
    <context>
        <name>CostLegend</name>
        <message>
            <source>no price known</source>
            <translation>kein Preis bekannt</translation>
        </message>
    </context>
    <context>
        <name>CostPane</name>
        <message>
            <source> times</source>
            <translation> Mal</translation>
        </message>
        <message>
            <source>A bottle is filled so often</source>
            <translation>Eine Flasche wird gefüllt</translation>
        </message>
        <message>
            <source>A litre in the shop</source>
            <translation>Ein Liter im Laden</translation>
        </message>
        <message>
            <source>An assumption, until you say how often yours last.</source>
            <translation>Eine Annahme, bis du sagst, wie oft deine halten.</translation>
        </message>
        <message>
            <source>Batches begun in</source>
            <translation>Ansätze begonnen</translation>
        </message>
        <message>
            <source>Each filling costs this share of the bottle.</source>
            <translation>Jede Füllung kostet diesen Anteil der Flasche.</translation>
        </message>
        <message>
            <source>No batch was begun in this year. Once one is, its cost stands here.</source>
            <translation>In diesem Jahr wurde kein Ansatz begonnen. Sobald einer begonnen ist, stehen seine Kosten hier.</translation>
        </message>
        <message>
            <source>Not all is paid in {currency}, so nothing is compared.</source>
            <translation>Nicht alles ist in {currency} bezahlt, darum wird nichts verglichen.</translation>
        </message>
        <message>
            <source>Of the drink that yours takes the place of.</source>
            <translation>Für das Getränk, das deins ersetzt.</translation>
        </message>
        <message>
            <source>Of {all} batches, {count} gave nothing to drink yet; what they cost counts towards a litre only once some is drawn off.</source>
            <translation>Von {all} Ansätzen gaben {count} noch nichts zu trinken; ihre Kosten zählen je Liter erst, wenn etwas abgezogen ist.</translation>
        </message>
        <message>
            <source>Of {all} batches, {count} used something without a known price: sums with them are “at least”, savings “at most”.</source>
            <translation>Von {all} Ansätzen nutzten {count} etwas ohne bekannten Preis: Summen mit ihnen sind „mindestens“, Ersparnisse „höchstens“.</translation>
        </message>
        <message>
            <source>Save as a table (CSV)…</source>
            <translation>Als Tabelle (CSV) speichern…</translation>
        </message>
        <message>
            <source>Save the costs as a table</source>
            <translation>Kosten als Tabelle speichern</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Gespeichert als {file}</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <translation>Tabellen (*.csv)</translation>
        </message>
        <message>
            <source>Type what a litre costs in the shop to see what you saved.</source>
            <translation>Gib ein, was ein Liter im Laden kostet, um zu sehen, was du gespart hast.</translation>
        </message>
        <message>
            <source>What each batch cost</source>
            <translation>Was jeder Ansatz kostete</translation>
        </message>
        <message>
            <source>a litre</source>
            <translation>je Liter</translation>
        </message>
        <message>
            <source>costs-{year}.csv</source>
            <translation>kosten-{year}.csv</translation>
        </message>
        <message>
            <source>drunk or in bottles</source>
            <translation>getrunken oder in Flaschen</translation>
        </message>
        <message>
            <source>spent</source>
            <translation>ausgegeben</translation>
        </message>
        <message>
            <source>type it, in {currency}</source>
            <translation>eingeben, in {currency}</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>{file} ließ sich nicht schreiben. Wähle einen anderen Ordner.</translation>
        </message>
    </context>
    <context>
        <name>CostTable</name>
        <message>
            <source>A bottle</source>
            <translation>Je Flasche</translation>
        </message>
        <message>
            <source>A litre</source>
            <translation>Je Liter</translation>
        </message>
        <message>
            <source>All of it priced</source>
            <translation>Alles mit Preis</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Currency</source>
            <translation>Währung</translation>
        </message>
        <message>
            <source>Litres drunk</source>
            <translation>Liter getrunken</translation>
        </message>
        <message>
            <source>Saved against the shop</source>
            <translation>Gespart gegenüber Laden</translation>
        </message>
        <message>
            <source>Total</source>
            <translation>Gesamt</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
    </context>
    <context>
        <name>CostsModel</name>
        <message>
            <source>A bottle</source>
            <translation>Je Flasche</translation>
        </message>
        <message>
            <source>A litre</source>
            <translation>Je Liter</translation>
        </message>
        <message>
            <source>Against the shop</source>
            <translation>Gegenüber Laden</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Cost</source>
            <translation>Kosten</translation>
        </message>
        <message>
            <source>Drunk</source>
            <translation>Getrunken</translation>
        </message>
        <message>
            <source>What it is made of</source>
            <translation>Woraus es besteht</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>noch nicht</translation>
        </message>
    </context>
    <context>
        <name>CrashDialog</name>
        <message>
            <source>A mistake in the program</source>
            <translation>Ein Fehler im Programm</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Copy the text</source>
            <translation>Text kopieren</translation>
        </message>
        <message>
            <source>If you want to help to mend it, send this report to those who gave you the program. It is meant to hold nothing of your pantry, and neither your name nor that of your computer. Please look through it before you send it: this is the whole text, and nothing is sent by itself.</source>
            <translation>Wenn du helfen möchtest, ihn zu beheben, schick diesen Bericht an die, von denen du das Programm hast. Er soll nichts aus deiner Vorratskammer enthalten und weder deinen Namen noch den deines Computers. Bitte sieh ihn durch, bevor du ihn schickst: Das ist der ganze Text, und nichts wird von allein gesendet.</translation>
        </message>
        <message>
            <source>It could not be saved: {why}</source>
            <translation>Speichern nicht möglich: {why}</translation>
        </message>
        <message>
            <source>Save as a file…</source>
            <translation>Als Datei speichern…</translation>
        </message>
        <message>
            <source>Save the report</source>
            <translation>Bericht speichern</translation>
        </message>
        <message>
            <source>Saved as {path}.</source>
            <translation>Gespeichert als {path}.</translation>
        </message>
        <message>
            <source>Something went wrong in the program. What was saved before is safe, and the program goes on.</source>
            <translation>Im Programm ist etwas schiefgegangen. Was vorher gespeichert wurde, ist sicher, und das Programm läuft weiter.</translation>
        </message>
        <message>
            <source>The text is on the clipboard.</source>
            <translation>Der Text ist in der Zwischenablage.</translation>
        </message>
        <message>
            <source>The whole report</source>
            <translation>Der ganze Bericht</translation>
        </message>
        <message>
            <source>brewdesk broke down last time. Everything that was saved is here; what was only typed is not.</source>
            <translation>brewdesk ist beim letzten Mal abgestürzt. Alles Gespeicherte ist da; was nur eingetippt war, nicht.</translation>
        </message>
    </context>
    <context>
        <name>CultureActs</name>
        <message>
            <source>Carry over the shelf</source>
            <translation>Übers Regal tragen</translation>
        </message>
        <message>
            <source>Change…</source>
            <translation>Ändern…</translation>
        </message>
        <message>
            <source>Feed…</source>
            <translation>Füttern…</translation>
        </message>
        <message>
            <source>Give away…</source>
            <translation>Weggeben…</translation>
        </message>
        <message>
            <source>Hand-over card…</source>
            <translation>Begleitkarte…</translation>
        </message>
        <message>
            <source>It is lost…</source>
            <translation>Sie ist verloren…</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Nach Schimmel sehen…</translation>
        </message>
        <message>
            <source>Merge with others…</source>
            <translation>Mit anderen vereinen…</translation>
        </message>
        <message>
            <source>Move to another vessel…</source>
            <translation>In anderes Gefäß umsetzen…</translation>
        </message>
        <message>
            <source>Note the pH…</source>
            <translation>pH notieren…</translation>
        </message>
        <message>
            <source>Print a label…</source>
            <translation>Etikett drucken…</translation>
        </message>
        <message>
            <source>Put to rest…</source>
            <translation>Zur Ruhe setzen…</translation>
        </message>
        <message>
            <source>Retire</source>
            <translation>Ausmustern</translation>
        </message>
        <message>
            <source>Show its history</source>
            <translation>Ihren Verlauf zeigen</translation>
        </message>
        <message>
            <source>Split…</source>
            <translation>Teilen…</translation>
        </message>
        <message>
            <source>There is no vessel on the shelf yet that it could be carried to.</source>
            <translation>Im Regal steht noch kein Gefäß, in das sie getragen werden könnte.</translation>
        </message>
        <message>
            <source>Top up…</source>
            <translation>Nachfüllen…</translation>
        </message>
        <message>
            <source>Write a note…</source>
            <translation>Notiz schreiben…</translation>
        </message>
    </context>
    <context>
        <name>CultureDialog</name>
        <message>
            <source>A culture</source>
            <translation>Eine Kultur</translation>
        </message>
        <message>
            <source>Add a culture</source>
            <translation>Kultur hinzufügen</translation>
        </message>
        <message>
            <source>Born</source>
            <translation>Entstanden</translation>
        </message>
        <message>
            <source>Came as</source>
            <translation>Kam als</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Change a culture</source>
            <translation>Kultur ändern</translation>
        </message>
        <message>
            <source>In no vessel</source>
            <translation>In keinem Gefäß</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>None known</source>
            <translation>Keine bekannt</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Parent</source>
            <translation>Mutterkultur</translation>
        </message>
        <message>
            <source>Pellicle thickness</source>
            <translation>Dicke des Häutchens</translation>
        </message>
        <message>
            <source>Save the culture</source>
            <translation>Kultur speichern</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Zustand</translation>
        </message>
        <message>
            <source>Where it is</source>
            <translation>Wo sie ist</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
    </context>
    <context>
        <name>CultureEntry</name>
        <message>
            <source>&amp;Culture</source>
            <translation>&amp;Kultur</translation>
        </message>
        <message>
            <source>Add culture</source>
            <translation>Kultur hinzufügen</translation>
        </message>
        <message>
            <source>Give the culture a name.</source>
            <translation>Gib der Kultur einen Namen.</translation>
        </message>
        <message>
            <source>Name of the culture</source>
            <translation>Name der Kultur</translation>
        </message>
        <message>
            <source>New culture…</source>
            <translation>Neue Kultur…</translation>
        </message>
        <message>
            <source>Starter liquid only</source>
            <translation>Nur Ansatzflüssigkeit</translation>
        </message>
        <message>
            <source>Where it came from</source>
            <translation>Woher sie kam</translation>
        </message>
        <message>
            <source>may carry mold</source>
            <translation>kann Schimmel tragen</translation>
        </message>
        <message>
            <source>{name} – {state}</source>
            <translation>{name} – {state}</translation>
        </message>
    </context>
    <context>
        <name>CultureSheet</name>
        <message>
            <source>All about this culture</source>
            <translation>Alles über diese Kultur</translation>
        </message>
        <message>
            <source>Born</source>
            <translation>Entstanden</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>Pflege</translation>
        </message>
        <message>
            <source>Clear it…</source>
            <translation>Freigeben…</translation>
        </message>
        <message>
            <source>Daughters</source>
            <translation>Töchter</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Nicht mehr da</translation>
        </message>
        <message>
            <source>How its batches did</source>
            <translation>Wie ihre Ansätze gelangen</translation>
        </message>
        <message>
            <source>Last fed</source>
            <translation>Zuletzt gefüttert</translation>
        </message>
        <message>
            <source>More for this culture</source>
            <translation>Mehr für diese Kultur</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Jetzt</translation>
        </message>
        <message>
            <source>Parents</source>
            <translation>Mutterkulturen</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Häutchen</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Rests in</source>
            <translation>Ruht in</translation>
        </message>
        <message>
            <source>Show {name}</source>
            <translation>{name} zeigen</translation>
        </message>
        <message>
            <source>Throw it out…</source>
            <translation>Wegwerfen…</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Was geschah</translation>
        </message>
        <message>
            <source>What was noted: {reason}</source>
            <translation>Was notiert wurde: {reason}</translation>
        </message>
        <message>
            <source>{count} older entries</source>
            <translation>{count} ältere Einträge</translation>
        </message>
        <message>
            <source>{mm} mm</source>
            <translation>{mm} mm</translation>
        </message>
        <message>
            <source>{name} – {place}</source>
            <translation>{name} – {place}</translation>
        </message>
        <message>
            <source>{origin} · {generation} · {age}</source>
            <translation>{origin} · {generation} · {age}</translation>
        </message>
        <message>
            <source>{when}: {what}</source>
            <translation>{when}: {what}</translation>
        </message>
    </context>
    <context>
        <name>CultureVerdicts</name>
        <message>
            <source>A culture is in one place: whichever is brewed first takes it.</source>
            <translation>Eine Kultur ist an einem Ort: Was zuerst aufgebrüht wird, bekommt sie.</translation>
        </message>
        <message>
            <source>A plain, raw bottle is what usually works.</source>
            <translation>Eine schlichte, rohe Flasche klappt gewöhnlich.</translation>
        </message>
        <message>
            <source>At {at_c} a first film usually shows between day {first_days} and day {last_days}, and is solid in {solid_days} to {latest_days} days. These are kitchen experience, not measurements; cooler places take longer.</source>
            <translation>Bei {at_c} zeigt sich eine erste Haut gewöhnlich zwischen Tag {first_days} und Tag {last_days} und ist in {solid_days} bis {latest_days} Tagen fest. Das ist Küchenerfahrung, keine Messung; an kühleren Orten dauert es länger.</translation>
        </message>
        <message>
            <source>Cold, weak or too little raw liquid makes it slow. </source>
            <translation>Kalte, schwache oder zu wenig rohe Flüssigkeit macht es langsam. </translation>
        </message>
        <message>
            <source>Day {day}, and no film noted.</source>
            <translation>Tag {day}, und kein Film notiert.</translation>
        </message>
        <message>
            <source>Day {day}: a film of about {value_mm}.</source>
            <translation>Tag {day}: ein Film von etwa {value_mm}.</translation>
        </message>
        <message>
            <source>Day {day}: about {value_mm}, which is usually enough.</source>
            <translation>Tag {day}: etwa {value_mm}, das reicht gewöhnlich.</translation>
        </message>
        <message>
            <source>Day {day}: no film noted yet.</source>
            <translation>Tag {day}: noch kein Film notiert.</translation>
        </message>
        <message>
            <source>Day {day}: the film is still only about {value_mm}.</source>
            <translation>Tag {day}: Der Film ist erst etwa {value_mm} dick.</translation>
        </message>
        <message>
            <source>Do not drink from it or use it as starter or culture. When in doubt, throw it out. If you are sure that it is clean, clear it with your reason. Where your local rules ask for more, follow them.</source>
            <translation>Trink nicht davon und nimm es nicht als Starter oder Kultur. Im Zweifel wegwerfen. Wenn du sicher bist, dass es sauber ist, gib es mit deinem Grund frei. Wo deine örtlichen Regeln mehr verlangen, befolge sie.</translation>
        </message>
        <message>
            <source>Draw that batch off first, or split the culture.</source>
            <translation>Zieh jenen Ansatz zuerst ab oder teile die Kultur.</translation>
        </message>
        <message>
            <source>Follow the run sheet: raw liquid goes in only when the tea is cool.</source>
            <translation>Folge dem Laufzettel: Rohe Flüssigkeit kommt erst hinein, wenn der Tee kühl ist.</translation>
        </message>
        <message>
            <source>From a flavoured bottle a culture often does not grow.</source>
            <translation>Aus einer aromatisierten Flasche wächst oft keine Kultur.</translation>
        </message>
        <message>
            <source>From a pasteurised bottle nothing will grow.</source>
            <translation>Aus einer pasteurisierten Flasche wächst nichts.</translation>
        </message>
        <message>
            <source>Fruit, juice and oils hinder the film and bring other germs along.</source>
            <translation>Frucht, Saft und Öle hemmen den Film und bringen andere Keime mit.</translation>
        </message>
        <message>
            <source>Handle it gently all the same.</source>
            <translation>Behandle sie trotzdem sanft.</translation>
        </message>
        <message>
            <source>Heating has killed the culture. Sweet tea with dead kombucha in it goes moldy.</source>
            <translation>Erhitzen hat die Kultur getötet. Gesüßter Tee mit totem Kombucha darin schimmelt.</translation>
        </message>
        <message>
            <source>If it is one piece and clean, call it grown.</source>
            <translation>Wenn es ein Stück und sauber ist, erkläre sie für gewachsen.</translation>
        </message>
        <message>
            <source>It has not been mixed yet.</source>
            <translation>Es ist noch nicht gemischt.</translation>
        </message>
        <message>
            <source>It is as sour and as alive as you know it to be.</source>
            <translation>Er ist so sauer und lebendig, wie du ihn kennst.</translation>
        </message>
        <message>
            <source>It is not known whether the bottle is raw.</source>
            <translation>Es ist nicht bekannt, ob die Flasche roh ist.</translation>
        </message>
        <message>
            <source>It may carry mold: that was seen on it, or on something it shared liquid with.</source>
            <translation>Es kann Schimmel tragen: Er wurde darauf gesehen oder auf etwas, mit dem es Flüssigkeit geteilt hat.</translation>
        </message>
        <message>
            <source>Its yeasts and bacteria are alive; nobody can promise that they make a film.</source>
            <translation>Ihre Hefen und Bakterien leben; niemand kann versprechen, dass sie einen Film bilden.</translation>
        </message>
        <message>
            <source>Leave it still, covered with cloth, out of the sun.</source>
            <translation>Lass es ruhig stehen, mit Tuch bedeckt, nicht in der Sonne.</translation>
        </message>
        <message>
            <source>Look again in good light tomorrow. When in doubt, throw it out.</source>
            <translation>Sieh morgen bei gutem Licht noch einmal nach. Im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Look for a bottle that says raw and unpasteurised, without fruit or juice.</source>
            <translation>Such eine Flasche, auf der roh und unpasteurisiert steht, ohne Frucht oder Saft.</translation>
        </message>
        <message>
            <source>Makers usually call it grown at {low_mm} to {high_mm}.</source>
            <translation>Gewöhnlich gilt sie bei {low_mm} bis {high_mm} als gewachsen.</translation>
        </message>
        <message>
            <source>Makers usually wait for {low_mm} to {high_mm}; common practice, no rule.</source>
            <translation>Gewöhnlich wartet man auf {low_mm} bis {high_mm}; gängige Praxis, keine Regel.</translation>
        </message>
        <message>
            <source>Measure the pH and look for mold. If there is still nothing by day {latest_days}, start anew with another bottle.</source>
            <translation>Miss den pH und sieh nach Schimmel. Ist bis Tag {latest_days} noch nichts da, fang mit einer anderen Flasche neu an.</translation>
        </message>
        <message>
            <source>Mold can be there before it can be seen, and its threads and poisons reach further than its patch.</source>
            <translation>Schimmel kann da sein, bevor man ihn sieht, und seine Fäden und Gifte reichen weiter als sein Fleck.</translation>
        </message>
        <message>
            <source>Mold is dry or fuzzy and often coloured; a young film is wet and smooth.</source>
            <translation>Schimmel ist trocken oder pelzig und oft farbig; ein junger Film ist nass und glatt.</translation>
        </message>
        <message>
            <source>New films are thin, smooth and pale. </source>
            <translation>Neue Filme sind dünn, glatt und blass. </translation>
        </message>
        <message>
            <source>Pasteurised or filtered kombucha holds no living culture.</source>
            <translation>Pasteurisierter oder gefilterter Kombucha enthält keine lebende Kultur.</translation>
        </message>
        <message>
            <source>Perhaps the bottle was not raw, or the place is cold. </source>
            <translation>Vielleicht war die Flasche nicht roh, oder der Ort ist kalt. </translation>
        </message>
        <message>
            <source>Putting it in here takes it out of there.</source>
            <translation>Hier eingesetzt, kommt sie dort heraus.</translation>
        </message>
        <message>
            <source>Ripe starter of your own is a good beginning.</source>
            <translation>Reifer eigener Starter ist ein guter Anfang.</translation>
        </message>
        <message>
            <source>Shake the bottle gently: the sediment carries much of the life.</source>
            <translation>Schüttle die Flasche sanft: Im Bodensatz steckt viel vom Leben.</translation>
        </message>
        <message>
            <source>Split it first, or choose another.</source>
            <translation>Teile sie zuerst oder wähle eine andere.</translation>
        </message>
        <message>
            <source>Take it from a jar without any mold.</source>
            <translation>Nimm ihn aus einem Glas ganz ohne Schimmel.</translation>
        </message>
        <message>
            <source>The last look was not sure whether it is mold.</source>
            <translation>Die letzte Sichtprüfung war nicht sicher, ob es Schimmel ist.</translation>
        </message>
        <message>
            <source>This culture is at work in another vessel.</source>
            <translation>Diese Kultur ist in einem anderen Gefäß bei der Arbeit.</translation>
        </message>
        <message>
            <source>This culture is planned for another vessel already.</source>
            <translation>Diese Kultur ist schon für ein anderes Gefäß geplant.</translation>
        </message>
        <message>
            <source>Wait if it smells and looks clean; start anew if nothing moves for a week.</source>
            <translation>Warte, wenn es sauber riecht und aussieht; fang neu an, wenn sich eine Woche lang nichts tut.</translation>
        </message>
        <message>
            <source>You can call it grown all the same; handle it gently.</source>
            <translation>Du kannst sie trotzdem für gewachsen erklären; behandle sie sanft.</translation>
        </message>
        <message>
            <source>{value_mm} is a usual thickness for a new culture.</source>
            <translation>{value_mm} ist eine übliche Dicke für eine neue Kultur.</translation>
        </message>
        <message>
            <source>{value_mm} is thin for a new culture.</source>
            <translation>{value_mm} ist dünn für eine neue Kultur.</translation>
        </message>
    </context>
    <context>
        <name>Cultures</name>
        <message>
            <source>1 day old</source>
            <translation>1 Tag alt</translation>
        </message>
        <message>
            <source>Fed with {volume}</source>
            <translation>Gefüttert mit {volume}</translation>
        </message>
        <message>
            <source>Fed with {volume} of sweet tea, {sugar} of sugar in it</source>
            <translation>Gefüttert mit {volume} gesüßtem Tee, darin {sugar} Zucker</translation>
        </message>
        <message>
            <source>From {names}</source>
            <translation>Von {names}</translation>
        </message>
        <message>
            <source>Given to {to}</source>
            <translation>Gegeben an {to}</translation>
        </message>
        <message>
            <source>Grown from starter of {names}</source>
            <translation>Gewachsen aus Starter von {names}</translation>
        </message>
        <message>
            <source>In one batch no reading was as low as pH {ph}.</source>
            <translation>In einem Ansatz lag keine Messung so tief wie pH {ph}.</translation>
        </message>
        <message>
            <source>In {count} batches no reading was as low as pH {ph}.</source>
            <translation>In {count} Ansätzen lag keine Messung so tief wie pH {ph}.</translation>
        </message>
        <message>
            <source>Looked at: {found}</source>
            <translation>Angesehen: {found}</translation>
        </message>
        <message>
            <source>Merged from {names}</source>
            <translation>Vereint aus {names}</translation>
        </message>
        <message>
            <source>No batch has been brewed with it yet.</source>
            <translation>Noch kein Ansatz wurde mit ihr angesetzt.</translation>
        </message>
        <message>
            <source>Not noted</source>
            <translation>Nicht notiert</translation>
        </message>
        <message>
            <source>Now part of {name}</source>
            <translation>Jetzt Teil von {name}</translation>
        </message>
        <message>
            <source>One batch</source>
            <translation>Ein Ansatz</translation>
        </message>
        <message>
            <source>Put to rest in {volume}</source>
            <translation>Zur Ruhe gesetzt in {volume}</translation>
        </message>
        <message>
            <source>Split from {names}</source>
            <translation>Abgeteilt von {names}</translation>
        </message>
        <message>
            <source>Tasted: {parts}.</source>
            <translation>Probiert: {parts}.</translation>
        </message>
        <message>
            <source>That is too few to tell a habit.</source>
            <translation>Das sind zu wenige, um eine Gewohnheit zu erkennen.</translation>
        </message>
        <message>
            <source>Topped up with {volume}</source>
            <translation>Nachgefüllt mit {volume}</translation>
        </message>
        <message>
            <source>founder</source>
            <translation>Stammkultur</translation>
        </message>
        <message>
            <source>generation {number}</source>
            <translation>Generation {number}</translation>
        </message>
        <message>
            <source>less than a day old</source>
            <translation>weniger als einen Tag alt</translation>
        </message>
        <message>
            <source>may carry mold</source>
            <translation>kann Schimmel tragen</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>pH {ph} after about {days} days, by the readings of one batch.</source>
            <translation>pH {ph} nach etwa {days} Tagen, nach den Messungen eines Ansatzes.</translation>
        </message>
        <message>
            <source>pH {ph} after about {days} days, the median of {count} batches.</source>
            <translation>pH {ph} nach etwa {days} Tagen, der Median von {count} Ansätzen.</translation>
        </message>
        <message>
            <source>{count} batches</source>
            <translation>{count} Ansätze</translation>
        </message>
        <message>
            <source>{count} days old</source>
            <translation>{count} Tage alt</translation>
        </message>
        <message>
            <source>{count} drawn off</source>
            <translation>{count} abgezogen</translation>
        </message>
        <message>
            <source>{count} months old</source>
            <translation>{count} Monate alt</translation>
        </message>
        <message>
            <source>{count} souring</source>
            <translation>{count} säuern</translation>
        </message>
        <message>
            <source>{count} thrown away</source>
            <translation>{count} weggeworfen</translation>
        </message>
        <message>
            <source>{count} weeks old</source>
            <translation>{count} Wochen alt</translation>
        </message>
        <message>
            <source>{count}.</source>
            <translation>{count}.</translation>
        </message>
        <message>
            <source>{count}: {rest}.</source>
            <translation>{count}: {rest}.</translation>
        </message>
        <message>
            <source>{first} and {last}</source>
            <translation>{first} und {last}</translation>
        </message>
        <message>
            <source>{name} was thrown away on {day}: {reason}</source>
            <translation>{name} wurde am {day} weggeworfen: {reason}</translation>
        </message>
        <message>
            <source>{stated} when last noted; perhaps {low} to {high} now</source>
            <translation>{stated} bei der letzten Notiz; jetzt vielleicht {low} bis {high}</translation>
        </message>
        <message>
            <source>{state} in {vessel}</source>
            <translation>{state} in {vessel}</translation>
        </message>
        <message>
            <source>{taste}: {count}</source>
            <translation>{taste}: {count}</translation>
        </message>
        <message>
            <source>{volume} of starter taken</source>
            <translation>{volume} Starter entnommen</translation>
        </message>
        <message>
            <source>{what} – {words}</source>
            <translation>{what} – {words}</translation>
        </message>
    </context>
    <context>
        <name>CulturesPage</name>
        <message>
            <source>Add a culture I have…</source>
            <translation>Vorhandene Kultur eintragen…</translation>
        </message>
        <message>
            <source>Add a culture…</source>
            <translation>Kultur hinzufügen…</translation>
        </message>
        <message>
            <source>Add the pellicle or starter you have. If you have none, a bottle of raw, unflavoured kombucha grows one in two to three weeks: the program leads you through it.</source>
            <translation>Trag das Häutchen oder den Starter ein, den du hast. Hast du keinen, wächst aus einer Flasche rohem Kombucha ohne Aroma in zwei bis drei Wochen eine Kultur: Das Programm führt dich hindurch.</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Kulturen</translation>
        </message>
        <message>
            <source>Family of cultures</source>
            <translation>Familie der Kulturen</translation>
        </message>
        <message>
            <source>Grow from raw kombucha…</source>
            <translation>Aus rohem Kombucha ziehen…</translation>
        </message>
        <message>
            <source>Grow one from raw kombucha…</source>
            <translation>Eine aus rohem Kombucha ziehen…</translation>
        </message>
        <message>
            <source>Left goes to a parent, right to a daughter, up and down to those beside.</source>
            <translation>Links geht es zu einer Mutterkultur, rechts zu einer Tochter, auf und ab zu denen daneben.</translation>
        </message>
        <message>
            <source>No culture yet</source>
            <translation>Noch keine Kultur</translation>
        </message>
        <message>
            <source>{here} here</source>
            <translation>{here} hier</translation>
        </message>
        <message>
            <source>{here} here, {gone} gone</source>
            <translation>{here} hier, {gone} nicht mehr da</translation>
        </message>
    </context>
    <context>
        <name>CurvePlot</name>
        <message>
            <source>Picture of the course</source>
            <translation>Bild des Verlaufs</translation>
        </message>
    </context>
    <context>
        <name>CurveSpec</name>
        <message>
            <source>1 in 2 chance</source>
            <translation>1 von 2 Chancen</translation>
        </message>
        <message>
            <source>4 in 5 chance</source>
            <translation>4 von 5 Chancen</translation>
        </message>
        <message>
            <source>Titratable acidity in g/L, counted as acetic acid</source>
            <translation>Titrierbare Säure in g/L, als Essigsäure gerechnet</translation>
        </message>
        <message>
            <source>does not fit the others</source>
            <translation>passt nicht zu den anderen</translation>
        </message>
        <message>
            <source>most likely</source>
            <translation>am wahrscheinlichsten</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>pH over the days of the batch</source>
            <translation>pH über die Tage des Ansatzes</translation>
        </message>
        <message>
            <source>pH {ph}: do not drink below</source>
            <translation>pH {ph}: darunter nicht trinken</translation>
        </message>
        <message>
            <source>pH {ph}: to be reached by day {day}</source>
            <translation>pH {ph}: bis Tag {day} zu erreichen</translation>
        </message>
        <message>
            <source>read off a strip</source>
            <translation>vom Teststreifen abgelesen</translation>
        </message>
        <message>
            <source>reading ± uncertainty</source>
            <translation>Messung ± Unsicherheit</translation>
        </message>
        <message>
            <source>safety limit</source>
            <translation>Sicherheitsgrenze</translation>
        </message>
        <message>
            <source>tasting window</source>
            <translation>Probierfenster</translation>
        </message>
        <message>
            <source>what if</source>
            <translation>was wäre, wenn</translation>
        </message>
        <message>
            <source>your taste</source>
            <translation>dein Geschmack</translation>
        </message>
        <message>
            <source>your taste: pH {low} to {high}</source>
            <translation>dein Geschmack: pH {low} bis {high}</translation>
        </message>
    </context>
    <context>
        <name>DayAxis</name>
        <message>
            <source>day {day}</source>
            <translation>Tag {day}</translation>
        </message>
    </context>
    <context>
        <name>DayEdit</name>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
        <message>
            <source>known</source>
            <translation>bekannt</translation>
        </message>
    </context>
    <context>
        <name>Demo</name>
        <message>
            <source>A fuzzy spot on top: mold. All of it thrown away. (Invented)</source>
            <translation>Ein pelziger Fleck obenauf: Schimmel. Alles weggeworfen. (Erfunden)</translation>
        </message>
        <message>
            <source>A gift from somebody who had a piece of Ferry. Invented.</source>
            <translation>Ein Geschenk von jemandem, der ein Stück von Fähre hatte. Erfunden.</translation>
        </message>
        <message>
            <source>A raw, unflavoured bottle. Invented for the example pantry.</source>
            <translation>Eine rohe Flasche ohne Aroma. Erfunden für die Beispielkammer.</translation>
        </message>
        <message>
            <source>A thin, clear film all over. (Invented)</source>
            <translation>Ein dünner, klarer Film überall. (Erfunden)</translation>
        </message>
        <message>
            <source>A thin, pale film. (Invented)</source>
            <translation>Ein dünner, blasser Film. (Erfunden)</translation>
        </message>
        <message>
            <source>An invented shop</source>
            <translation>Ein erfundener Laden</translation>
        </message>
        <message>
            <source>Big flask</source>
            <translation>Große Flasche</translation>
        </message>
        <message>
            <source>Black leaf (invented)</source>
            <translation>Schwarzer Blatttee (erfunden)</translation>
        </message>
        <message>
            <source>Bought. Invented for the example pantry.</source>
            <translation>Gekauft. Erfunden für die Beispielkammer.</translation>
        </message>
        <message>
            <source>Dune</source>
            <translation>Düne</translation>
        </message>
        <message>
            <source>Earlier black {n}</source>
            <translation>Früherer Schwarztee {n}</translation>
        </message>
        <message>
            <source>Earlier green {n}</source>
            <translation>Früherer Grüntee {n}</translation>
        </message>
        <message>
            <source>Earlier herbs {n}</source>
            <translation>Frühere Kräuter {n}</translation>
        </message>
        <message>
            <source>Earlier oolong {n}</source>
            <translation>Früherer Oolong {n}</translation>
        </message>
        <message>
            <source>Earlier white {n}</source>
            <translation>Früherer Weißtee {n}</translation>
        </message>
        <message>
            <source>Elderberry juice (invented)</source>
            <translation>Holundersaft (erfunden)</translation>
        </message>
        <message>
            <source>Example cellar (invented)</source>
            <translation>Beispielkeller (erfunden)</translation>
        </message>
        <message>
            <source>Example kitchen (invented)</source>
            <translation>Beispielküche (erfunden)</translation>
        </message>
        <message>
            <source>Example pantry (invented)</source>
            <translation>Beispielkammer (erfunden)</translation>
        </message>
        <message>
            <source>Fell off the draining board. (Invented)</source>
            <translation>Vom Abtropfbrett gefallen. (Erfunden)</translation>
        </message>
        <message>
            <source>Ferry</source>
            <translation>Fähre</translation>
        </message>
        <message>
            <source>Forgotten behind the flour and dried out. (Invented)</source>
            <translation>Hinter dem Mehl vergessen und ausgetrocknet. (Erfunden)</translation>
        </message>
        <message>
            <source>Fruit flies got under the cloth. All of it thrown away. (Invented)</source>
            <translation>Fruchtfliegen kamen unter das Tuch. Alles weggeworfen. (Erfunden)</translation>
        </message>
        <message>
            <source>Ginger root</source>
            <translation>Ingwerwurzel</translation>
        </message>
        <message>
            <source>Ginger root (invented)</source>
            <translation>Ingwerwurzel (erfunden)</translation>
        </message>
        <message>
            <source>Gone like vinegar after a week in the warm. (Invented)</source>
            <translation>Nach einer Woche im Warmen wie Essig. (Erfunden)</translation>
        </message>
        <message>
            <source>Green leaf (invented)</source>
            <translation>Grüner Blatttee (erfunden)</translation>
        </message>
        <message>
            <source>Grey crock</source>
            <translation>Grauer Topf</translation>
        </message>
        <message>
            <source>Grown from a raw bottle. Invented for the example pantry.</source>
            <translation>Aus einer rohen Flasche gezogen. Erfunden für die Beispielkammer.</translation>
        </message>
        <message>
            <source>Harbour</source>
            <translation>Hafen</translation>
        </message>
        <message>
            <source>Invented for the example pantry.</source>
            <translation>Erfunden für die Beispielkammer.</translation>
        </message>
        <message>
            <source>Jetty</source>
            <translation>Steg</translation>
        </message>
        <message>
            <source>Lighthouse</source>
            <translation>Leuchtturm</translation>
        </message>
        <message>
            <source>Little jar</source>
            <translation>Kleines Glas</translation>
        </message>
        <message>
            <source>Marsh</source>
            <translation>Marsch</translation>
        </message>
        <message>
            <source>Oolong (invented)</source>
            <translation>Oolong (erfunden)</translation>
        </message>
        <message>
            <source>Plastic test bottles (invented)</source>
            <translation>Testflaschen aus Plastik (erfunden)</translation>
        </message>
        <message>
            <source>Reed</source>
            <translation>Schilf</translation>
        </message>
        <message>
            <source>Sandbar</source>
            <translation>Sandbank</translation>
        </message>
        <message>
            <source>Seed jar</source>
            <translation>Anzuchtglas</translation>
        </message>
        <message>
            <source>Skerry</source>
            <translation>Schäre</translation>
        </message>
        <message>
            <source>Smooth and wet all over. (Invented)</source>
            <translation>Glatt und nass überall. (Erfunden)</translation>
        </message>
        <message>
            <source>Split off Lighthouse. Invented for the example pantry.</source>
            <translation>Von Leuchtturm abgeteilt. Erfunden für die Beispielkammer.</translation>
        </message>
        <message>
            <source>Steel pot</source>
            <translation>Stahltopf</translation>
        </message>
        <message>
            <source>Store jar</source>
            <translation>Vorratsglas</translation>
        </message>
        <message>
            <source>Swing-top bottles, half a litre (invented)</source>
            <translation>Bügelflaschen, ein halber Liter (erfunden)</translation>
        </message>
        <message>
            <source>Tall jar</source>
            <translation>Hohes Glas</translation>
        </message>
        <message>
            <source>Tastes as we like it. (Invented)</source>
            <translation>Schmeckt, wie wir es mögen. (Erfunden)</translation>
        </message>
        <message>
            <source>White sugar (invented)</source>
            <translation>Weißer Zucker (erfunden)</translation>
        </message>
        <message>
            <source>a neighbour (invented)</source>
            <translation>jemand aus der Nachbarschaft (erfunden)</translation>
        </message>
        <message>
            <source>{name}, in bottles (invented)</source>
            <translation>{name}, in Flaschen (erfunden)</translation>
        </message>
        <message>
            <source>{place}-logger.csv (invented)</source>
            <translation>{place}-logger.csv (erfunden)</translation>
        </message>
    </context>
    <context>
        <name>DemoPhotos</name>
        <message>
            <source>A first skin (painted, invented)</source>
            <translation>Eine erste Haut (gemalt, erfunden)</translation>
        </message>
        <message>
            <source>Painted, invented: day {n}</source>
            <translation>Gemalt, erfunden: Tag {n}</translation>
        </message>
        <message>
            <source>Paler and even (painted, invented)</source>
            <translation>Blasser und gleichmäßig (gemalt, erfunden)</translation>
        </message>
        <message>
            <source>Thick, with a ridge and a bubble (painted, invented)</source>
            <translation>Dick, mit Grat und Blase (gemalt, erfunden)</translation>
        </message>
    </context>
    <context>
        <name>DemoTrial</name>
        <message>
            <source>Black tea</source>
            <translation>Schwarztee</translation>
        </message>
        <message>
            <source>Does green tea sour faster than black, and which is liked better?</source>
            <translation>Säuert grüner Tee schneller als schwarzer, und welcher schmeckt besser?</translation>
        </message>
        <message>
            <source>First taster (invented)</source>
            <translation>Erste Verkosterin (erfunden)</translation>
        </message>
        <message>
            <source>Green or black (invented)</source>
            <translation>Grün oder schwarz (erfunden)</translation>
        </message>
        <message>
            <source>Green seems quicker. Next time four jars of each. (Invented)</source>
            <translation>Grün scheint schneller. Nächstes Mal je vier Gläser. (Erfunden)</translation>
        </message>
        <message>
            <source>Green tea</source>
            <translation>Grüntee</translation>
        </message>
        <message>
            <source>Invented for the example pantry.</source>
            <translation>Erfunden für die Beispielkammer.</translation>
        </message>
        <message>
            <source>Second taster</source>
            <translation>Zweite Verkosterin</translation>
        </message>
        <message>
            <source>The trial is over. (Invented)</source>
            <translation>Der Versuch ist vorbei. (Erfunden)</translation>
        </message>
        <message>
            <source>Trial jar {number}</source>
            <translation>Versuchsglas {number}</translation>
        </message>
    </context>
    <context>
        <name>DeskLine</name>
        <message>
            <source>Connected again.</source>
            <translation>Wieder verbunden.</translation>
        </message>
        <message>
            <source>Not connected to the server: what you see may be out of date, and nothing can be saved until it answers. What you have typed stays where it is.</source>
            <translation>Nicht mit dem Server verbunden: Was du siehst, kann veraltet sein, und nichts lässt sich speichern, bis er antwortet. Was du eingegeben hast, bleibt, wo es ist.</translation>
        </message>
    </context>
    <context>
        <name>DocumentDialog</name>
        <message>
            <source>HTML files (*.html)</source>
            <translation>HTML-Dateien (*.html)</translation>
        </message>
        <message>
            <source>Save as HTML</source>
            <translation>Als HTML speichern</translation>
        </message>
        <message>
            <source>Save as HTML…</source>
            <translation>Als HTML speichern…</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Gespeichert als {file}</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>{file} ließ sich nicht schreiben. Wähle einen anderen Ordner.</translation>
        </message>
    </context>
    <context>
        <name>DotPlot</name>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
    </context>
    <context>
        <name>DrawDialog</name>
        <message>
            <source>&amp;Why</source>
            <translation>&amp;Warum</translation>
        </message>
        <message>
            <source>By the books: {left}.</source>
            <translation>Laut Büchern: {left}.</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Correct the books</source>
            <translation>Bücher korrigieren</translation>
        </message>
        <message>
            <source>Count the shelf</source>
            <translation>Bestand zählen</translation>
        </message>
        <message>
            <source>How &amp;much</source>
            <translation>Wie &amp;viel</translation>
        </message>
        <message>
            <source>How much there &amp;is</source>
            <translation>Wie viel &amp;da ist</translation>
        </message>
        <message>
            <source>In your &amp;words</source>
            <translation>In deinen Wo&amp;rten</translation>
        </message>
        <message>
            <source>Take it out</source>
            <translation>Entnehmen</translation>
        </message>
        <message>
            <source>Taken out</source>
            <translation>Entnommen</translation>
        </message>
    </context>
    <context>
        <name>DropGround</name>
        <message>
            <source>Choose pictures…</source>
            <translation>Bilder wählen…</translation>
        </message>
        <message>
            <source>Drop them here from your file manager or phone folder. A picture every few days, from above in good light, shows best how the film grows.</source>
            <translation>Zieh sie aus deinem Dateimanager oder Handyordner hierher. Ein Bild alle paar Tage, von oben bei gutem Licht, zeigt am besten, wie der Film wächst.</translation>
        </message>
        <message>
            <source>No photos of {name} yet</source>
            <translation>Noch keine Fotos von {name}</translation>
        </message>
        <message>
            <source>Paste</source>
            <translation>Einfügen</translation>
        </message>
    </context>
    <context>
        <name>Drops</name>
        <message>
            <source> · </source>
            <translation> · </translation>
        </message>
        <message>
            <source>A daughter of it goes into {target}; it stays where it is.</source>
            <translation>Eine Tochter davon kommt in {target}; sie selbst bleibt, wo sie ist.</translation>
        </message>
        <message>
            <source>A plan is opened for {target}, with this starter in it.</source>
            <translation>Ein Plan für {target} öffnet sich, mit diesem Starter darin.</translation>
        </message>
        <message>
            <source>All of it goes into {target}, and its culture with it.</source>
            <translation>Alles davon kommt in {target}, samt Kultur.</translation>
        </message>
        <message>
            <source>Both go on. Up to {most} fit.</source>
            <translation>Beide gehen weiter. Bis zu {most} passen hinein.</translation>
        </message>
        <message>
            <source>Bottle a batch, or draw it off, all or part of it</source>
            <translation>Einen Ansatz abfüllen oder abziehen, ganz oder zum Teil</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Bottles, sugar and fizz are worked out first, and the day to chill by.</source>
            <translation>Flaschen, Zucker und Kohlensäure werden zuerst berechnet, und bis wann zu kühlen ist.</translation>
        </message>
        <message>
            <source>Draw all of it off…</source>
            <translation>Alles abziehen…</translation>
        </message>
        <message>
            <source>Draw off part…</source>
            <translation>Teil abziehen…</translation>
        </message>
        <message>
            <source>Fill bottles…</source>
            <translation>Flaschen füllen…</translation>
        </message>
        <message>
            <source>It goes into {target} with what it rests in.</source>
            <translation>Sie kommt samt dem, worin sie ruht, in {target}.</translation>
        </message>
        <message>
            <source>It is in {target} already.</source>
            <translation>Schon in {target}.</translation>
        </message>
        <message>
            <source>It is not known whether {other} is cool enough yet. Measure it, and enter it on its run sheet.</source>
            <translation>Es ist nicht bekannt, ob {other} schon kühl genug ist. Miss und trag es auf dem Laufzettel ein.</translation>
        </message>
        <message>
            <source>It is poured to the culture that rests there. Up to {most} fit.</source>
            <translation>Er wird zu der Kultur gegossen, die dort ruht. Bis zu {most} passen hinein.</translation>
        </message>
        <message>
            <source>It rests in ripe kombucha, in a vessel you choose.</source>
            <translation>Sie ruht in reifem Kombucha, in einem Gefäß deiner Wahl.</translation>
        </message>
        <message>
            <source>Keep starter with it…</source>
            <translation>Starter dabei aufheben…</translation>
        </message>
        <message>
            <source>Lend starter…</source>
            <translation>Starter abgeben…</translation>
        </message>
        <message>
            <source>Let {carried} work in {other}</source>
            <translation>{carried} in {other} arbeiten lassen</translation>
        </message>
        <message>
            <source>Look at it closely and clear it first; when in doubt, throw it out.</source>
            <translation>Sieh zuerst genau hin und gib es frei; im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Move {carried} here</source>
            <translation>{carried} hierher umsetzen</translation>
        </message>
        <message>
            <source>No culture rests in a vessel with room for starter. Put one to rest first.</source>
            <translation>Keine Kultur ruht in einem Gefäß mit Platz für Starter. Setz zuerst eine zur Ruhe.</translation>
        </message>
        <message>
            <source>No vessel is free for it to rest in. Add one, or draw a batch off first.</source>
            <translation>Kein Gefäß ist frei, in dem sie ruhen könnte. Füg eins hinzu oder zieh zuerst einen Ansatz ab.</translation>
        </message>
        <message>
            <source>Pour all of it in…</source>
            <translation>Alles hineingießen…</translation>
        </message>
        <message>
            <source>Pour part of it in…</source>
            <translation>Teil hineingießen…</translation>
        </message>
        <message>
            <source>Pour {carried} over</source>
            <translation>{carried} umfüllen</translation>
        </message>
        <message>
            <source>Put a culture to rest, or keep starter with one</source>
            <translation>Eine Kultur zur Ruhe setzen oder Starter bei einer aufheben</translation>
        </message>
        <message>
            <source>Put {carried} in now</source>
            <translation>{carried} jetzt hineingeben</translation>
        </message>
        <message>
            <source>Put {carried} to rest…</source>
            <translation>{carried} zur Ruhe setzen…</translation>
        </message>
        <message>
            <source>Split {carried}…</source>
            <translation>{carried} teilen…</translation>
        </message>
        <message>
            <source>The batch ends; its culture rests in the jar.</source>
            <translation>Der Ansatz endet; seine Kultur ruht im Glas.</translation>
        </message>
        <message>
            <source>The culture does not go into {other} at this step. See its run sheet.</source>
            <translation>Die Kultur kommt bei diesem Schritt nicht in {other}. Siehe Laufzettel.</translation>
        </message>
        <message>
            <source>The plan takes it as its culture.</source>
            <translation>Der Plan nimmt sie als seine Kultur.</translation>
        </message>
        <message>
            <source>The rest sours on. There are {most}.</source>
            <translation>Der Rest säuert weiter. Es sind {most} da.</translation>
        </message>
        <message>
            <source>The step on the run sheet is ticked off.</source>
            <translation>Der Schritt auf dem Laufzettel wird abgehakt.</translation>
        </message>
        <message>
            <source>There is nothing left of {carried} to pour.</source>
            <translation>Von {carried} ist nichts mehr da, was sich gießen ließe.</translation>
        </message>
        <message>
            <source>There is nothing to put it down on here.</source>
            <translation>Hier gibt es nichts, worauf man es ablegen könnte.</translation>
        </message>
        <message>
            <source>This is no longer there.</source>
            <translation>Das ist nicht mehr da.</translation>
        </message>
        <message>
            <source>To rest</source>
            <translation>Zur Ruhe</translation>
        </message>
        <message>
            <source>{carried} ends with it; {other} goes on with both.</source>
            <translation>{carried} endet damit; {other} geht mit beidem weiter.</translation>
        </message>
        <message>
            <source>{carried} is a culture, not a drink. Drag its jar here to draw the batch off.</source>
            <translation>{carried} ist eine Kultur, kein Getränk. Zieh ihr Glas hierher, um den Ansatz abzuziehen.</translation>
        </message>
        <message>
            <source>{carried} is a plan: there is nothing to pour yet.</source>
            <translation>{carried} ist ein Plan: Es gibt noch nichts zu gießen.</translation>
        </message>
        <message>
            <source>{carried} is at work. It comes to rest when its batch is drawn off.</source>
            <translation>{carried} ist bei der Arbeit. Zur Ruhe kommt sie, wenn ihr Ansatz abgezogen wird.</translation>
        </message>
        <message>
            <source>{carried} is still being brewed. It can be poured once it is covered and sours.</source>
            <translation>{carried} wird noch aufgebrüht. Gießen geht, sobald abgedeckt ist und es säuert.</translation>
        </message>
        <message>
            <source>{carried} is still forming. Let it grow firm before you carry it.</source>
            <translation>{carried} bildet sich noch. Lass die Kultur fest werden, bevor du sie trägst.</translation>
        </message>
        <message>
            <source>{carried} may carry mold. </source>
            <translation>{carried} kann Schimmel tragen. </translation>
        </message>
        <message>
            <source>{carried} rests already. Drag it onto a vessel to move it.</source>
            <translation>{carried} ruht schon. Zieh sie auf ein Gefäß, um sie umzusetzen.</translation>
        </message>
        <message>
            <source>{name} picked up. Arrow keys go to where it shall be put, Enter puts it down, Escape gives up.</source>
            <translation>{name} aufgenommen. Pfeiltasten gehen zum Ziel, Eingabe legt ab, Escape bricht ab.</translation>
        </message>
        <message>
            <source>{other} in {target} may carry mold. </source>
            <translation>{other} in {target} kann Schimmel tragen. </translation>
        </message>
        <message>
            <source>{other} is being brewed for another culture.</source>
            <translation>{other} wird für eine andere Kultur aufgebrüht.</translation>
        </message>
        <message>
            <source>{other} is far too hot: anything live would die in it. Let it cool first.</source>
            <translation>{other} ist viel zu heiß: Alles Lebende würde darin sterben. Lass es erst abkühlen.</translation>
        </message>
        <message>
            <source>{other} is on its run sheet. Its starter goes in there, at its own step.</source>
            <translation>{other} ist auf dem Laufzettel. Der Starter kommt dort hinein, bei seinem eigenen Schritt.</translation>
        </message>
        <message>
            <source>{other} is planned with {carried} already, and there is no starter to lend.</source>
            <translation>{other} ist schon mit {carried} geplant, und es gibt keinen Starter abzugeben.</translation>
        </message>
        <message>
            <source>{other} is reckoned anew with this starter. There are {most}.</source>
            <translation>{other} wird mit diesem Starter neu gerechnet. Es sind {most} da.</translation>
        </message>
        <message>
            <source>{other} is souring in {target}. One batch at a time.</source>
            <translation>{other} säuert in {target}. Ein Ansatz zur Zeit.</translation>
        </message>
        <message>
            <source>{other} is still too hot for anything live. Let it cool first.</source>
            <translation>{other} ist noch zu heiß für alles Lebende. Lass es erst abkühlen.</translation>
        </message>
        <message>
            <source>{target} is full to the brim. Draw some of it off first.</source>
            <translation>{target} ist randvoll. Zieh zuerst etwas ab.</translation>
        </message>
        <message>
            <source>{target} is off the shelf. Put it back first.</source>
            <translation>{target} steht nicht im Regal. Stell es zuerst zurück.</translation>
        </message>
    </context>
    <context>
        <name>DueCard</name>
        <message>
            <source>Done</source>
            <translation>Erledigt</translation>
        </message>
        <message>
            <source>Done: {title}</source>
            <translation>Erledigt: {title}</translation>
        </message>
        <message>
            <source>In one hour, at {time}</source>
            <translation>In einer Stunde, um {time}</translation>
        </message>
        <message>
            <source>Later  ▾</source>
            <translation>Später  ▾</translation>
        </message>
        <message>
            <source>Open the bottles</source>
            <translation>Flaschen öffnen</translation>
        </message>
        <message>
            <source>Open the culture</source>
            <translation>Kultur öffnen</translation>
        </message>
        <message>
            <source>Open the jar</source>
            <translation>Glas öffnen</translation>
        </message>
        <message>
            <source>Open the stores</source>
            <translation>Vorräte öffnen</translation>
        </message>
        <message>
            <source>Remind me later: {title}</source>
            <translation>Später erinnern: {title}</translation>
        </message>
        <message>
            <source>This evening, {time}</source>
            <translation>Heute Abend, {time}</translation>
        </message>
        <message>
            <source>Tomorrow, {time}</source>
            <translation>Morgen, {time}</translation>
        </message>
        <message>
            <source>{what}: {{title}}</source>
            <translation>{what}: {{title}}</translation>
        </message>
    </context>
    <context>
        <name>DueList</name>
        <message>
            <source>1 is coming.</source>
            <translation>1 kommt noch.</translation>
        </message>
        <message>
            <source>1 thing is due.</source>
            <translation>1 Sache ist fällig.</translation>
        </message>
        <message>
            <source>Exit code: 0 nothing is due, 1 something is due, 2 trouble.</source>
            <translation>Rückgabewert: 0 nichts ist fällig, 1 etwas ist fällig, 2 Störung.</translation>
        </message>
        <message>
            <source>Invented pantry. {line}</source>
            <translation>Erfundene Vorratskammer. {line}</translation>
        </message>
        <message>
            <source>Nothing is coming.</source>
            <translation>Nichts kommt.</translation>
        </message>
        <message>
            <source>Nothing is due.</source>
            <translation>Nichts ist fällig.</translation>
        </message>
        <message>
            <source>Print what is due in your pantry, and what is coming, as the window last worked it out. Needs no display, works beside the open window, changes nothing.</source>
            <translation>Gibt aus, was in deiner Vorratskammer fällig ist und was kommt, wie das Fenster es zuletzt berechnet hat. Braucht keine Anzeige, läuft neben dem offenen Fenster, ändert nichts.</translation>
        </message>
        <message>
            <source>Something went wrong in the program; nothing was changed.</source>
            <translation>Im Programm ging etwas schief; nichts wurde geändert.</translation>
        </message>
        <message>
            <source>The file {path} is no pantry of this program.</source>
            <translation>Die Datei {path} ist keine Vorratskammer dieses Programms.</translation>
        </message>
        <message>
            <source>The last change to the pantry at {path} broke off. Open the window once: it puts that right.</source>
            <translation>Die letzte Änderung der Vorratskammer in {path} brach ab. Öffne einmal das Fenster: Es bringt das in Ordnung.</translation>
        </message>
        <message>
            <source>The pantry at {path} cannot be read. Please check its rights.</source>
            <translation>Die Vorratskammer in {path} lässt sich nicht lesen. Bitte prüfe ihre Rechte.</translation>
        </message>
        <message>
            <source>The pantry at {path} is being written to. Please try again in a moment.</source>
            <translation>In die Vorratskammer in {path} wird gerade geschrieben. Bitte versuch es gleich noch einmal.</translation>
        </message>
        <message>
            <source>The pantry at {path} is damaged. Open the window: it offers the latest backup.</source>
            <translation>Die Vorratskammer in {path} ist beschädigt. Öffne das Fenster: Es bietet die letzte Sicherung an.</translation>
        </message>
        <message>
            <source>The pantry at {path} was last used by a newer version. Please install that version.</source>
            <translation>Die Vorratskammer in {path} wurde zuletzt von einer neueren Version benutzt. Bitte installiere diese Version.</translation>
        </message>
        <message>
            <source>The pantry at {path} was last used by an older version. Open the window once: it brings the pantry up to date, after a backup.</source>
            <translation>Die Vorratskammer in {path} wurde zuletzt von einer älteren Version benutzt. Öffne einmal das Fenster: Es aktualisiert die Vorratskammer, nach einer Sicherung.</translation>
        </message>
        <message>
            <source>The pantry named by {path} lies on a server, and the part of the program that speaks with servers is not installed: install “brewdesk[desks]”.</source>
            <translation>Die Vorratskammer, die {path} nennt, liegt auf einem Server, und der Teil des Programms, der mit Servern spricht, ist nicht installiert: Installiere „brewdesk[desks]“.</translation>
        </message>
        <message>
            <source>The server named by {path} does not answer, or does not let this desk in.</source>
            <translation>Der Server, den {path} nennt, antwortet nicht oder lässt diesen Arbeitsplatz nicht ein.</translation>
        </message>
        <message>
            <source>There is no pantry at {path}. Open the window once, and it makes one.</source>
            <translation>In {path} ist keine Vorratskammer. Öffne einmal das Fenster, und es legt eine an.</translation>
        </message>
        <message>
            <source>coming</source>
            <translation>kommt</translation>
        </message>
        <message>
            <source>due</source>
            <translation>fällig</translation>
        </message>
        <message>
            <source>everything is kept below this folder</source>
            <translation>alles liegt unter diesem Ordner</translation>
        </message>
        <message>
            <source>leave out what is only coming</source>
            <translation>weglassen, was erst noch kommt</translation>
        </message>
        <message>
            <source>print JSON instead of columns</source>
            <translation>JSON statt Spalten ausgeben</translation>
        </message>
        <message>
            <source>print under each line what to do and to mind</source>
            <translation>unter jeder Zeile ausgeben, was zu tun und zu beachten ist</translation>
        </message>
        <message>
            <source>read the invented pantry</source>
            <translation>die erfundene Vorratskammer lesen</translation>
        </message>
        <message>
            <source>read this pantry file instead of your own</source>
            <translation>diese Vorratskammer-Datei statt der eigenen lesen</translation>
        </message>
        <message>
            <source>{count} are coming.</source>
            <translation>{count} kommen noch.</translation>
        </message>
        <message>
            <source>{count} things are due.</source>
            <translation>{count} Sachen sind fällig.</translation>
        </message>
        <message>
            <source>{title} ({span} late)</source>
            <translation>{title} ({span} überfällig)</translation>
        </message>
    </context>
    <context>
        <name>DuePage</name>
        <message>
            <source>Add a reminder of your own</source>
            <translation>Eigene Erinnerung hinzufügen</translation>
        </message>
        <message>
            <source>All that is due</source>
            <translation>Alles, was fällig ist</translation>
        </message>
        <message>
            <source>As a calendar file…</source>
            <translation>Als Kalenderdatei…</translation>
        </message>
        <message>
            <source>Coming days</source>
            <translation>Kommende Tage</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Fällig</translation>
        </message>
        <message>
            <source>Export the due list as a calendar file</source>
            <translation>Die Fälligkeitsliste als Kalenderdatei exportieren</translation>
        </message>
        <message>
            <source>Nothing is due. Reminders appear here by themselves once a batch is souring: to check its pH, to look for mold, and to taste it. You can add your own below.</source>
            <translation>Nichts ist fällig. Erinnerungen erscheinen hier von selbst, sobald ein Ansatz säuert: den pH prüfen, nach Schimmel sehen und probieren. Eigene kannst du unten hinzufügen.</translation>
        </message>
        <message>
            <source>Notices do not reach your desktop at present: look here, and listen for the chime.</source>
            <translation>Meldungen kommen derzeit nicht auf deinem Bildschirm an: Schau hier nach und achte auf den Ton.</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Jetzt</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Heute</translation>
        </message>
    </context>
    <context>
        <name>DueStrip</name>
        <message>
            <source>Nothing is due.</source>
            <translation>Nichts ist fällig.</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Jetzt</translation>
        </message>
        <message>
            <source>chill {name}</source>
            <translation>{name} kühlen</translation>
        </message>
        <message>
            <source>drink up {name}</source>
            <translation>{name} austrinken</translation>
        </message>
        <message>
            <source>feed {jar}</source>
            <translation>{jar} füttern</translation>
        </message>
        <message>
            <source>film on {jar}</source>
            <translation>Haut auf {jar}</translation>
        </message>
        <message>
            <source>look for mold on {jar}</source>
            <translation>{jar}: nach Schimmel sehen</translation>
        </message>
        <message>
            <source>open one of {name}</source>
            <translation>eine von {name} öffnen</translation>
        </message>
        <message>
            <source>pH of {jar}</source>
            <translation>pH von {jar}</translation>
        </message>
        <message>
            <source>press {name}</source>
            <translation>{name} drücken</translation>
        </message>
        <message>
            <source>taste {jar}</source>
            <translation>{jar} probieren</translation>
        </message>
        <message>
            <source>top up {jar}</source>
            <translation>{jar} nachfüllen</translation>
        </message>
    </context>
    <context>
        <name>EditTrialDialog</name>
        <message>
            <source>Change {name}</source>
            <translation>{name} ändern</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>What you want to know</source>
            <translation>Was du wissen willst</translation>
        </message>
    </context>
    <context>
        <name>EffectRow</name>
        <message>
            <source>{outcome}: {second} against {first}</source>
            <translation>{outcome}: {second} gegenüber {first}</translation>
        </message>
    </context>
    <context>
        <name>EmptyShelf</name>
        <message>
            <source>Add your first vessel</source>
            <translation>Erstes Gefäß hinzufügen</translation>
        </message>
        <message>
            <source>Look at an invented pantry</source>
            <translation>Erfundene Vorratskammer ansehen</translation>
        </message>
        <message>
            <source>Put up the first jar you want to brew in. A name and how much it holds are enough; the rest can wait.</source>
            <translation>Stell das erste Glas auf, in dem du ansetzen willst. Ein Name und wie viel es fasst genügen; der Rest kann warten.</translation>
        </message>
        <message>
            <source>The shelf is empty</source>
            <translation>Das Regal ist leer</translation>
        </message>
    </context>
    <context>
        <name>EndDialog</name>
        <message>
            <source>An accident</source>
            <translation>Ein Missgeschick</translation>
        </message>
        <message>
            <source>Another reason</source>
            <translation>Ein anderer Grund</translation>
        </message>
        <message>
            <source>Choose the reason</source>
            <translation>Wähle den Grund</translation>
        </message>
        <message>
            <source>Discard a batch</source>
            <translation>Ansatz wegwerfen</translation>
        </message>
        <message>
            <source>Discard all of it</source>
            <translation>Alles wegwerfen</translation>
        </message>
        <message>
            <source>Discard {name}?</source>
            <translation>{name} wegwerfen?</translation>
        </message>
        <message>
            <source>Draw a batch off</source>
            <translation>Ansatz abziehen</translation>
        </message>
        <message>
            <source>Draw it off</source>
            <translation>Abziehen</translation>
        </message>
        <message>
            <source>Draw {name} off?</source>
            <translation>{name} abziehen?</translation>
        </message>
        <message>
            <source>End the trial</source>
            <translation>Versuch beenden</translation>
        </message>
        <message>
            <source>End {name}</source>
            <translation>{name} beenden</translation>
        </message>
        <message>
            <source>Give it up</source>
            <translation>Aufgeben</translation>
        </message>
        <message>
            <source>Give {name} up</source>
            <translation>{name} aufgeben</translation>
        </message>
        <message>
            <source>In your own words</source>
            <translation>In eigenen Worten</translation>
        </message>
        <message>
            <source>In your own words (optional)</source>
            <translation>In eigenen Worten (freiwillig)</translation>
        </message>
        <message>
            <source>It smells or tastes wrong</source>
            <translation>Es riecht oder schmeckt falsch</translation>
        </message>
        <message>
            <source>Its batches go on as any others.</source>
            <translation>Seine Ansätze gehen weiter wie alle anderen.</translation>
        </message>
        <message>
            <source>Keep back enough of it as starter for the next jar, and chill what you drink. It holds some alcohol; how much is allowed to be given away is for local rules.</source>
            <translation>Behalte genug davon als Starter für das nächste Glas zurück und kühle, was du trinkst. Es enthält etwas Alkohol; wie viel weggegeben werden darf, bestimmen örtliche Regeln.</translation>
        </message>
        <message>
            <source>Keep it going</source>
            <translation>Weiterlaufen lassen</translation>
        </message>
        <message>
            <source>Left with the culture, as its liquid</source>
            <translation>Bleibt bei der Kultur, als ihre Flüssigkeit</translation>
        </message>
        <message>
            <source>Mold: fuzzy, dry or coloured spots</source>
            <translation>Schimmel: pelzige, trockene oder farbige Flecken</translation>
        </message>
        <message>
            <source>Not sour enough in time</source>
            <translation>Nicht rechtzeitig sauer genug</translation>
        </message>
        <message>
            <source>Please choose why.</source>
            <translation>Bitte wähle, warum.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Grund</translation>
        </message>
        <message>
            <source>The codes are opened with it.</source>
            <translation>Die Codes werden damit aufgedeckt.</translation>
        </message>
        <message>
            <source>The culture {culture} is marked as lost with it.</source>
            <translation>Die Kultur {culture} wird damit als verloren vermerkt.</translation>
        </message>
        <message>
            <source>Under suspicion, since they shared liquid with it: {names}.</source>
            <translation>Unter Verdacht, da sie Flüssigkeit damit geteilt haben: {names}.</translation>
        </message>
        <message>
            <source>What you conclude</source>
            <translation>Was du daraus schließt</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>With mold, everything goes: liquid, culture and cloth. Mold cannot be scooped off safely; when in doubt, throw it out. Wash and sanitise the vessel.</source>
            <translation>Bei Schimmel kommt alles weg: Flüssigkeit, Kultur und Tuch. Schimmel lässt sich nicht sicher abschöpfen; im Zweifel wegwerfen. Wasch und desinfiziere das Gefäß.</translation>
        </message>
        <message>
            <source>may stay empty</source>
            <translation>darf leer bleiben</translation>
        </message>
        <message>
            <source>{drawn} are drawn off, {kept} stay.</source>
            <translation>{drawn} werden abgezogen, {kept} bleiben.</translation>
        </message>
        <message>
            <source>{reason} – {words}</source>
            <translation>{reason} – {words}</translation>
        </message>
    </context>
    <context>
        <name>ExportDialog</name>
        <message>
            <source>Choose where…</source>
            <translation>Wählen, wohin…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Everything in this pantry goes into one file: vessels, cultures, batches, bottlings, readings, temperatures, the whole history, settings and photos, as open text that other programs can read and as tables for spreadsheets. What is in it is written down inside. The pantry itself stays as it is.

Photos go along unchanged, with whatever the camera wrote into them.</source>
            <translation>Alles in dieser Vorratskammer kommt in eine Datei: Gefäße, Kulturen, Ansätze, Abfüllungen, Messungen, Temperaturen, der ganze Verlauf, Einstellungen und Fotos, als offener Text, den andere Programme lesen können, und als Tabellen für Tabellenprogramme. Was darin ist, steht darin beschrieben. Die Vorratskammer selbst bleibt, wie sie ist.

Fotos kommen unverändert mit, samt allem, was die Kamera hineingeschrieben hat.</translation>
        </message>
        <message>
            <source>Export everything</source>
            <translation>Alles exportieren</translation>
        </message>
        <message>
            <source>Exports of a pantry (*{ending})</source>
            <translation>Exporte einer Vorratskammer (*{ending})</translation>
        </message>
    </context>
    <context>
        <name>Exports</name>
        <message>
            <source>A newer version of the program made this export. Please bring it in with that version.</source>
            <translation>Eine neuere Version des Programms hat diesen Export erstellt. Bitte lies ihn mit dieser Version ein.</translation>
        </message>
        <message>
            <source>A photo that an entry names is not in the archive. Nothing was brought in.</source>
            <translation>Ein Foto, das ein Eintrag nennt, ist nicht im Archiv. Nichts wurde eingelesen.</translation>
        </message>
        <message>
            <source>Acts in the history</source>
            <translation>Vorgänge im Verlauf</translation>
        </message>
        <message>
            <source>An entry breaks a rule of the pantry ({where}). Nothing was brought in.</source>
            <translation>Ein Eintrag bricht eine Regel der Vorratskammer ({where}). Nichts wurde eingelesen.</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Bottlings</source>
            <translation>Abfüllungen</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Kulturen</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Erstellt</translation>
        </message>
        <message>
            <source>Nothing can be written there. Please choose another folder.</source>
            <translation>Dorthin lässt sich nichts schreiben. Bitte wähle einen anderen Ordner.</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Messungen</translation>
        </message>
        <message>
            <source>Saved as {file}: {rows} rows and {photos} photos, {size}.</source>
            <translation>Gespeichert als {file}: {rows} Zeilen und {photos} Fotos, {size}.</translation>
        </message>
        <message>
            <source>Something stands there already, and nothing is ever written over. Please choose another name.</source>
            <translation>Dort steht schon etwas, und überschrieben wird nie. Bitte wähle einen anderen Namen.</translation>
        </message>
        <message>
            <source>Stopped. Nothing was kept.</source>
            <translation>Gestoppt. Nichts wurde behalten.</translation>
        </message>
        <message>
            <source>Tells of</source>
            <translation>Umfasst</translation>
        </message>
        <message>
            <source>The disk has not enough room. Nothing was kept; please free some space.</source>
            <translation>Der Platz auf dem Datenträger reicht nicht. Nichts wurde behalten; bitte schaffe etwas Platz.</translation>
        </message>
        <message>
            <source>The file of one photo is missing or damaged; its entry is there.</source>
            <translation>Die Datei eines Fotos fehlt oder ist beschädigt; sein Eintrag ist da.</translation>
        </message>
        <message>
            <source>The files of {count} photos are missing or damaged; their entries are there.</source>
            <translation>Die Dateien von {count} Fotos fehlen oder sind beschädigt; ihre Einträge sind da.</translation>
        </message>
        <message>
            <source>The new pantry is at {path}: {rows} rows and {photos} photos, all proven.</source>
            <translation>Die neue Vorratskammer ist in {path}: {rows} Zeilen und {photos} Fotos, alle geprüft.</translation>
        </message>
        <message>
            <source>There is no such folder. Please choose another.</source>
            <translation>Diesen Ordner gibt es nicht. Bitte wähle einen anderen.</translation>
        </message>
        <message>
            <source>This archive holds what no export holds ({where}). Nothing was brought in; it may have been made to do harm.</source>
            <translation>Dieses Archiv enthält, was kein Export enthält ({where}). Nichts wurde eingelesen; es ist vielleicht dazu gemacht, Schaden anzurichten.</translation>
        </message>
        <message>
            <source>This archive is larger than any export can be. Nothing was brought in.</source>
            <translation>Dieses Archiv ist größer, als ein Export sein kann. Nichts wurde eingelesen.</translation>
        </message>
        <message>
            <source>This export is damaged, as after a copy that broke off ({where}). Nothing was brought in; please use another copy of it.</source>
            <translation>Dieser Export ist beschädigt, wie nach einer abgebrochenen Kopie ({where}). Nichts wurde eingelesen; bitte nimm eine andere Kopie davon.</translation>
        </message>
        <message>
            <source>This file cannot be opened. Please check that it is still there.</source>
            <translation>Diese Datei lässt sich nicht öffnen. Bitte prüfe, ob sie noch da ist.</translation>
        </message>
        <message>
            <source>This is no export of a pantry. Please choose another file.</source>
            <translation>Das ist kein Export einer Vorratskammer. Bitte wähle eine andere Datei.</translation>
        </message>
        <message>
            <source>Vessels</source>
            <translation>Gefäße</translation>
        </message>
        <message>
            <source>brewdesk {version}</source>
            <translation>brewdesk {version}</translation>
        </message>
        <message>
            <source>the archive as a whole</source>
            <translation>das Archiv als Ganzes</translation>
        </message>
        <message>
            <source>{count} ({size})</source>
            <translation>{count} ({size})</translation>
        </message>
        <message>
            <source>{entry}, line {line}</source>
            <translation>{entry}, Zeile {line}</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <translation>{first} bis {last}</translation>
        </message>
    </context>
    <context>
        <name>FamilyView</name>
        <message>
            <source>May carry mold</source>
            <translation>Kann Schimmel tragen</translation>
        </message>
    </context>
    <context>
        <name>FeedDialog</name>
        <message>
            <source>Feed {name}</source>
            <translation>{name} füttern</translation>
        </message>
        <message>
            <source>Look for mold first. Pour in a little fresh sweet tea that has cooled to {limit} or below; hot tea kills the culture. Take some of the old liquid out if the jar gets too full.</source>
            <translation>Sieh zuerst nach Schimmel. Gieß etwas frischen gesüßten Tee hinein, der auf {limit} oder darunter abgekühlt ist; heißer Tee tötet die Kultur. Nimm etwas alte Flüssigkeit heraus, wenn das Glas zu voll wird.</translation>
        </message>
        <message>
            <source>Note the feeding</source>
            <translation>Fütterung notieren</translation>
        </message>
        <message>
            <source>Sugar in it</source>
            <translation>Zucker darin</translation>
        </message>
        <message>
            <source>Sweet tea</source>
            <translation>Gesüßter Tee</translation>
        </message>
    </context>
    <context>
        <name>Films</name>
        <message>
            <source>A first film was to be expected by {day}. If there is none, see that the jar stands warm and under a cloth that lets air in, and that the kombucha it began from was raw.</source>
            <translation>Eine erste Haut war bis {day} zu erwarten. Ist keine da, sieh nach, ob das Glas warm und unter einem luftdurchlässigen Tuch steht und ob der Kombucha, aus dem es begann, roh war.</translation>
        </message>
        <message>
            <source>Expected film: about {mm} mm by {day}.</source>
            <translation>Erwarteter Film: etwa {mm} mm bis {day}.</translation>
        </message>
        <message>
            <source>Expected film: up to {high} mm by {day}.</source>
            <translation>Erwarteter Film: bis zu {high} mm bis {day}.</translation>
        </message>
        <message>
            <source>Expected film: {low} to {high} mm by {day}.</source>
            <translation>Erwarteter Film: {low} bis {high} mm bis {day}.</translation>
        </message>
        <message>
            <source>First film expected about {day} ({low} to {high}).</source>
            <translation>Erste Haut etwa am {day} erwartet ({low} bis {high}).</translation>
        </message>
        <message>
            <source>{expected} Without one by {late}, something probably holds it back.</source>
            <translation>{expected} Ist bis {late} keine da, hält wohl etwas sie zurück.</translation>
        </message>
    </context>
    <context>
        <name>FindsList</name>
        <message>
            <source>What was found</source>
            <translation>Was gefunden wurde</translation>
        </message>
    </context>
    <context>
        <name>FindsModel</name>
        <message>
            <source>Found</source>
            <translation>Gefunden</translation>
        </message>
    </context>
    <context>
        <name>FizzPlot</name>
        <message>
            <source>Pressure by day</source>
            <translation>Druck nach Tagen</translation>
        </message>
        <message>
            <source>bar</source>
            <translation>bar</translation>
        </message>
        <message>
            <source>days in the bottle</source>
            <translation>Tage in der Flasche</translation>
        </message>
    </context>
    <context>
        <name>Forecasts</name>
        <message>
            <source>A culture grows in this jar: it is to keep, not to drink, so there is no tasting window. The curve shows how sour its liquid is reckoned to become. Measure it, and look for mold.</source>
            <translation>In diesem Glas wächst eine Kultur: Sie ist zum Behalten, nicht zum Trinken, darum gibt es kein Probierfenster. Die Kurve zeigt, wie sauer ihre Flüssigkeit voraussichtlich wird. Miss sie und sieh nach Schimmel.</translation>
        </message>
        <message>
            <source>Going by your tastings its sourness and its sweetness may never be right for you at once, so these days go by sourness alone.</source>
            <translation>Nach deinen Verkostungen sind Säure und Süße für dich vielleicht nie zugleich richtig, darum richten sich diese Tage allein nach der Säure.</translation>
        </message>
        <message>
            <source>Gravity {value}</source>
            <translation>Dichte {value}</translation>
        </message>
        <message>
            <source>How much acid the starter holds is assumed; a reading makes this sharper.</source>
            <translation>Wie viel Säure der Starter enthält, ist angenommen; eine Messung macht das genauer.</translation>
        </message>
        <message>
            <source>It has probably been {how} for you since {day}.</source>
            <translation>Für dich ist es wahrscheinlich seit {day} {how}.</translation>
        </message>
        <message>
            <source>It is {chance} that pH {ph} is reached by day {day}; only a reading shows whether it was.</source>
            <translation>Es ist {chance}, dass pH {ph} bis Tag {day} erreicht ist; nur eine Messung zeigt, ob es so war.</translation>
        </message>
        <message>
            <source>It rests on the recipe alone until there is a reading.</source>
            <translation>Sie beruht allein auf dem Rezept, bis es eine Messung gibt.</translation>
        </message>
        <message>
            <source>It will be sour enough before that, but probably still too sweet for you.</source>
            <translation>Sauer genug ist es schon vorher, aber für dich wahrscheinlich noch zu süß.</translation>
        </message>
        <message>
            <source>It will probably be {how} for you after {day} (between {low} and {high}).</source>
            <translation>Für dich ist es nach {day} (zwischen {low} und {high}) wahrscheinlich {how}.</translation>
        </message>
        <message>
            <source>It will probably be {how} for you after {day}, perhaps from {low} on.</source>
            <translation>Für dich ist es nach {day}, vielleicht schon ab {low}, wahrscheinlich {how}.</translation>
        </message>
        <message>
            <source>It will probably not be sour enough for you within {days} days.</source>
            <translation>Es wird für dich innerhalb von {days} Tagen wahrscheinlich nicht sauer genug.</translation>
        </message>
        <message>
            <source>Its temperature, vessel or age lies beyond the published courses, so trust it less.</source>
            <translation>Temperatur, Gefäß oder Alter liegen jenseits der veröffentlichten Verläufe, also vertrau der Vorhersage weniger.</translation>
        </message>
        <message>
            <source>No forecast can be made from this batch's amounts and readings. Please look whether one of them was mistyped.</source>
            <translation>Aus den Mengen und Messungen dieses Ansatzes lässt sich keine Vorhersage machen. Bitte sieh nach, ob etwas vertippt ist.</translation>
        </message>
        <message>
            <source>Several readings do not fit the others; please measure again.</source>
            <translation>Mehrere Messungen passen nicht zu den anderen; bitte miss noch einmal.</translation>
        </message>
        <message>
            <source>The chance that pH {ph} is reached by day {day} is about {percent} %; only a reading shows whether it was.</source>
            <translation>Die Chance, dass pH {ph} bis Tag {day} erreicht ist, beträgt etwa {percent} %; nur eine Messung zeigt, ob es so war.</translation>
        </message>
        <message>
            <source>The forecast is being worked out.</source>
            <translation>Die Vorhersage wird berechnet.</translation>
        </message>
        <message>
            <source>The readings are like no known course, so the bands are wide.</source>
            <translation>Die Messungen gleichen keinem bekannten Verlauf, darum sind die Bänder breit.</translation>
        </message>
        <message>
            <source>The tasting of {day} does not fit the other readings.</source>
            <translation>Die Verkostung vom {day} passt nicht zu den anderen Messungen.</translation>
        </message>
        <message>
            <source>The tasting window has probably been open since {day} (4 in 5 chance that it opened between {low} and {high}).</source>
            <translation>Das Probierfenster ist wahrscheinlich seit {day} offen (4 von 5 Chancen, dass es zwischen {low} und {high} begann).</translation>
        </message>
        <message>
            <source>Worth tasting from about {day} (4 in 5 chance that it begins between {low} and {high}).</source>
            <translation>Probieren lohnt sich ab etwa {day} (4 von 5 Chancen, dass das Fenster zwischen {low} und {high} beginnt).</translation>
        </message>
        <message>
            <source>Worth tasting from about {day}; it may begin on {low}, or much later.</source>
            <translation>Probieren lohnt sich ab etwa {day}; das Fenster kann am {low} beginnen oder viel später.</translation>
        </message>
        <message>
            <source>does not fit the other readings</source>
            <translation>passt nicht zu den anderen Messungen</translation>
        </message>
        <message>
            <source>hardly sweet enough</source>
            <translation>kaum noch süß genug</translation>
        </message>
        <message>
            <source>is hardly possible for kombucha</source>
            <translation>ist für Kombucha kaum möglich</translation>
        </message>
        <message>
            <source>is less sour</source>
            <translation>ist weniger sauer</translation>
        </message>
        <message>
            <source>is less sweet</source>
            <translation>ist weniger süß</translation>
        </message>
        <message>
            <source>is more sour</source>
            <translation>ist saurer</translation>
        </message>
        <message>
            <source>is sweeter</source>
            <translation>ist süßer</translation>
        </message>
        <message>
            <source>pH {value}</source>
            <translation>pH {value}</translation>
        </message>
        <message>
            <source>too sour</source>
            <translation>zu sauer</translation>
        </message>
        <message>
            <source>very likely</source>
            <translation>sehr wahrscheinlich</translation>
        </message>
        <message>
            <source>very unlikely</source>
            <translation>sehr unwahrscheinlich</translation>
        </message>
        <message>
            <source>{amount} ({method}), {day} at {time}</source>
            <translation>{amount} ({method}), {day} um {time}</translation>
        </message>
        <message>
            <source>{amount} acidity</source>
            <translation>{amount} Säure</translation>
        </message>
        <message>
            <source>{how} than the other readings let expect</source>
            <translation>{how}, als die anderen Messungen erwarten lassen</translation>
        </message>
        <message>
            <source>{how} than the readings before and after it</source>
            <translation>{how} als die Messungen davor und danach</translation>
        </message>
        <message>
            <source>{value} acidity</source>
            <translation>{value} Säure</translation>
        </message>
        <message>
            <source>{value} °Bx</source>
            <translation>{value} °Bx</translation>
        </message>
        <message>
            <source>{value} ± {sd}</source>
            <translation>{value} ± {sd}</translation>
        </message>
        <message>
            <source>{what} of {day} {why}: look for a slip, or measure again.</source>
            <translation>{what} vom {day} {why}: Such nach einem Versehen oder miss noch einmal.</translation>
        </message>
    </context>
    <context>
        <name>GiveDialog</name>
        <message>
            <source>Give it away</source>
            <translation>Weggeben</translation>
        </message>
        <message>
            <source>Give it with enough sour liquid to cover it, and only if you saw no mold. To keep one yourself, split it first and give the daughter away.</source>
            <translation>Gib sie mit genug saurer Flüssigkeit weg, dass sie bedeckt ist, und nur, wenn du keinen Schimmel gesehen hast. Um selbst eine zu behalten, teile sie zuerst und gib die Tochter weg.</translation>
        </message>
        <message>
            <source>Give {name} away</source>
            <translation>{name} weggeben</translation>
        </message>
        <message>
            <source>Then print a hand-over card</source>
            <translation>Danach eine Begleitkarte drucken</translation>
        </message>
        <message>
            <source>To whom (optional)</source>
            <translation>An wen (freiwillig)</translation>
        </message>
    </context>
    <context>
        <name>GrowDialog</name>
        <message>
            <source>A bottle, not known whether raw</source>
            <translation>Eine Flasche, unbekannt, ob roh</translation>
        </message>
        <message>
            <source>A pasteurised bottle</source>
            <translation>Eine pasteurisierte Flasche</translation>
        </message>
        <message>
            <source>A raw bottle with fruit or flavour</source>
            <translation>Eine rohe Flasche mit Frucht oder Aroma</translation>
        </message>
        <message>
            <source>A raw bottle, unflavoured</source>
            <translation>Eine rohe Flasche ohne Aroma</translation>
        </message>
        <message>
            <source>All together</source>
            <translation>Alles zusammen</translation>
        </message>
        <message>
            <source>Grow a culture from raw kombucha</source>
            <translation>Eine Kultur aus rohem Kombucha ziehen</translation>
        </message>
        <message>
            <source>Its pH, if you know</source>
            <translation>Ihr pH, falls bekannt</translation>
        </message>
        <message>
            <source>Name of the new culture</source>
            <translation>Name der neuen Kultur</translation>
        </message>
        <message>
            <source>No vessel is free. Put another on the shelf first.</source>
            <translation>Kein Gefäß ist frei. Stell zuerst ein weiteres ins Regal.</translation>
        </message>
        <message>
            <source>Plan it</source>
            <translation>Planen</translation>
        </message>
        <message>
            <source>Raw kombucha in fresh sweet tea grows a film of its own in two to three weeks, kept warm, still and under cloth. Usual is about {raw} in {tea} of sweet tea.</source>
            <translation>Roher Kombucha in frischem gesüßtem Tee bildet in zwei bis drei Wochen einen eigenen Film, warm, ruhig und unter Tuch gehalten. Üblich sind etwa {raw} in {tea} gesüßtem Tee.</translation>
        </message>
        <message>
            <source>Raw liquid from</source>
            <translation>Rohe Flüssigkeit aus</translation>
        </message>
        <message>
            <source>Raw liquid in it</source>
            <translation>Rohe Flüssigkeit darin</translation>
        </message>
        <message>
            <source>Starter of</source>
            <translation>Starter von</translation>
        </message>
        <message>
            <source>Starter of a culture of mine</source>
            <translation>Starter einer eigenen Kultur</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>Which one, in your words (optional)</source>
            <translation>Welche, in deinen Worten (freiwillig)</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>{water} of water, {tea} of tea, {sugar} of sugar, {raw} of raw liquid. It is reckoned to start at about pH {ph} ({low} to {high}): measure it. The run sheet leads through it and keeps the raw liquid out of hot tea.</source>
            <translation>{water} Wasser, {tea} Tee, {sugar} Zucker, {raw} rohe Flüssigkeit. Errechneter Start-pH etwa {ph} ({low} bis {high}): Miss ihn. Der Laufzettel führt hindurch und hält die rohe Flüssigkeit aus heißem Tee heraus.</translation>
        </message>
    </context>
    <context>
        <name>GrowLookDialog</name>
        <message>
            <source>Thickness of the film</source>
            <translation>Dicke des Films</translation>
        </message>
        <message>
            <source>no film yet</source>
            <translation>noch kein Film</translation>
        </message>
    </context>
    <context>
        <name>GrowPanel</name>
        <message>
            <source>Film expected from {first} to {last}, solid from {solid} to {latest}; assumed for about 25 °C.</source>
            <translation>Film erwartet vom {first} bis {last}, fest vom {solid} bis {latest}; angenommen für etwa 25 °C.</translation>
        </message>
        <message>
            <source>Film first noted on day {day}; {mm} mm at the last look.</source>
            <translation>Film zuerst an Tag {day} notiert; {mm} mm bei der letzten Sichtprüfung.</translation>
        </message>
        <message>
            <source>Go and mix it</source>
            <translation>Jetzt mischen</translation>
        </message>
        <message>
            <source>It has grown…</source>
            <translation>Sie ist gewachsen…</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Nach Schimmel sehen…</translation>
        </message>
        <message>
            <source>Show the jar</source>
            <translation>Glas zeigen</translation>
        </message>
    </context>
    <context>
        <name>GrownDialog</name>
        <message>
            <source>Call it grown</source>
            <translation>Für gewachsen erklären</translation>
        </message>
        <message>
            <source>It then rests in the liquid it grew in, which is its first starter. Call it grown when the film is one solid piece, without mold.</source>
            <translation>Sie ruht dann in der Flüssigkeit, in der sie wuchs; das ist ihr erster Starter. Erkläre sie für gewachsen, wenn der Film ein festes Stück ohne Schimmel ist.</translation>
        </message>
        <message>
            <source>Thickness of the pellicle</source>
            <translation>Dicke des Häutchens</translation>
        </message>
        <message>
            <source>{name} has grown</source>
            <translation>{name} ist gewachsen</translation>
        </message>
    </context>
    <context>
        <name>HandOver</name>
        <message>
            <source>A batch must be at pH {most} or below by day {day}; otherwise discard it. Measure it.</source>
            <translation>Ein Ansatz muss bis Tag {day} bei pH {most} oder darunter sein, sonst wirf ihn weg. Miss ihn.</translation>
        </message>
        <message>
            <source>Born</source>
            <translation>Entstanden</translation>
        </message>
        <message>
            <source>Dry, fuzzy or coloured spots on top are signs of mold: then throw out all of it, culture and liquid. When in doubt, throw it out.</source>
            <translation>Trockene, pelzige oder farbige Flecken obenauf sind Zeichen von Schimmel: Dann wirf alles weg, Kultur und Flüssigkeit. Im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Every {days} days or so, pour in some sweet tea: {tea} of tea and {sugar} of sugar in {volume} of water, cooled to {limit} or below.</source>
            <translation>Gieß etwa alle {days} Tage etwas gesüßten Tee hinein: {tea} Tee und {sugar} Zucker in {volume} Wasser, abgekühlt auf {limit} oder darunter.</translation>
        </message>
        <message>
            <source>Feed it, or brew with it, by</source>
            <translation>Füttern oder ansetzen bis</translation>
        </message>
        <message>
            <source>Home-made kombucha is alive and holds acid and some alcohol. Whoever is pregnant, ill or weak, and whoever cares for small children, should ask a doctor first.</source>
            <translation>Selbst gemachter Kombucha lebt und enthält Säure und etwas Alkohol. Wer schwanger, krank oder geschwächt ist oder kleine Kinder betreut, sollte zuerst ärztlichen Rat holen.</translation>
        </message>
        <message>
            <source>How to keep it</source>
            <translation>Wie du sie hältst</translation>
        </message>
        <message>
            <source>If it dries up, top it up with ripe, unflavoured kombucha.</source>
            <translation>Trocknet sie aus, füll mit reifem Kombucha ohne Aroma nach.</translation>
        </message>
        <message>
            <source>Keep it at room temperature, out of the sun, away from smoke and from fruit.</source>
            <translation>Halte sie bei Zimmertemperatur, nicht in der Sonne, fern von Rauch und Obst.</translation>
        </message>
        <message>
            <source>Keep it covered by its sour liquid, in glass, under a tightly woven cloth.</source>
            <translation>Halte sie von ihrer sauren Flüssigkeit bedeckt, in Glas, unter einem dicht gewebten Tuch.</translation>
        </message>
        <message>
            <source>Kitchen experience, not a guarantee. Local rules and advice come first.</source>
            <translation>Küchenerfahrung, keine Garantie. Örtliche Regeln und Rat gehen vor.</translation>
        </message>
        <message>
            <source>Kombucha culture, handed over</source>
            <translation>Kombucha-Kultur, weitergegeben</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Linie</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Beachten</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Häutchen</translation>
        </message>
        <message>
            <source>Rests in</source>
            <translation>Ruht in</translation>
        </message>
        <message>
            <source>The line goes back further.</source>
            <translation>Die Linie reicht weiter zurück.</translation>
        </message>
        <message>
            <source>To brew, use its liquid as starter, at least a tenth of the whole.</source>
            <translation>Nimm zum Ansetzen ihre Flüssigkeit als Starter, mindestens ein Zehntel des Ganzen.</translation>
        </message>
        <message>
            <source>Used to</source>
            <translation>Gewohnt an</translation>
        </message>
        <message>
            <source>Where it comes from</source>
            <translation>Woher sie kommt</translation>
        </message>
        <message>
            <source>about {mm} mm</source>
            <translation>etwa {mm} mm</translation>
        </message>
        <message>
            <source>ddd d MMM yyyy</source>
            <translation>ddd d. MMM yyyy</translation>
        </message>
        <message>
            <source>ripe kombucha that covers it</source>
            <translation>reifer Kombucha, der sie bedeckt</translation>
        </message>
        <message>
            <source>{name}: {origin}.</source>
            <translation>{name}: {origin}.</translation>
        </message>
        <message>
            <source>{origin}.</source>
            <translation>{origin}.</translation>
        </message>
        <message>
            <source>{volume} of ripe kombucha</source>
            <translation>{volume} reifer Kombucha</translation>
        </message>
    </context>
    <context>
        <name>HandOverDialog</name>
        <message>
            <source>Card A5</source>
            <translation>Karte A5</translation>
        </message>
        <message>
            <source>Card A6</source>
            <translation>Karte A6</translation>
        </message>
        <message>
            <source>Hand-over card</source>
            <translation>Begleitkarte</translation>
        </message>
        <message>
            <source>Save the card as PDF</source>
            <translation>Karte als PDF speichern</translation>
        </message>
        <message>
            <source>Size of the card</source>
            <translation>Größe der Karte</translation>
        </message>
    </context>
    <context>
        <name>HistoryFilters</name>
        <message>
            <source>Any culture</source>
            <translation>Alle Kulturen</translation>
        </message>
        <message>
            <source>Any place</source>
            <translation>Alle Orte</translation>
        </message>
        <message>
            <source>Any stage</source>
            <translation>Alle Phasen</translation>
        </message>
        <message>
            <source>Any tea</source>
            <translation>Alle Tees</translation>
        </message>
        <message>
            <source>Any time</source>
            <translation>Gesamte Zeit</translation>
        </message>
        <message>
            <source>Clear filters</source>
            <translation>Filter löschen</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Everything</source>
            <translation>Alles</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>From … to …</source>
            <translation>Von … bis …</translation>
        </message>
        <message>
            <source>Kind of thing</source>
            <translation>Art</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Stage of the batch</source>
            <translation>Phase des Ansatzes</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>The last 12 months</source>
            <translation>Die letzten 12 Monate</translation>
        </message>
        <message>
            <source>The last 30 days</source>
            <translation>Die letzten 30 Tage</translation>
        </message>
        <message>
            <source>The last 7 days</source>
            <translation>Die letzten 7 Tage</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
    </context>
    <context>
        <name>HistoryPage</name>
        <message>
            <source>Clear filters</source>
            <translation>Filter löschen</translation>
        </message>
        <message>
            <source>Find</source>
            <translation>Suchen</translation>
        </message>
        <message>
            <source>Find batches, jars, cultures, notes, anything</source>
            <translation>Ansätze, Gläser, Kulturen, Notizen, alles suchen</translation>
        </message>
        <message>
            <source>History</source>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>Look back</source>
            <translation>Rückblick</translation>
        </message>
        <message>
            <source>Looking through your records…</source>
            <translation>Deine Einträge werden durchgesehen…</translation>
        </message>
        <message>
            <source>Show more</source>
            <translation>Mehr zeigen</translation>
        </message>
        <message>
            <source>Words to find</source>
            <translation>Suchwörter</translation>
        </message>
    </context>
    <context>
        <name>HistoryPane</name>
        <message>
            <source>Choose something on the left: all that happened to it is told here.</source>
            <translation>Wähle links etwas: Alles, was damit geschah, wird hier erzählt.</translation>
        </message>
        <message>
            <source>Curve</source>
            <translation>Kurve</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Messungen</translation>
        </message>
        <message>
            <source>Recipe</source>
            <translation>Rezept</translation>
        </message>
        <message>
            <source>Show in Cultures</source>
            <translation>In Kulturen zeigen</translation>
        </message>
        <message>
            <source>Show its jar</source>
            <translation>Sein Glas zeigen</translation>
        </message>
        <message>
            <source>Show older lines</source>
            <translation>Ältere Zeilen zeigen</translation>
        </message>
        <message>
            <source>Show on the shelf</source>
            <translation>Im Regal zeigen</translation>
        </message>
        <message>
            <source>Show the places</source>
            <translation>Orte zeigen</translation>
        </message>
        <message>
            <source>Time line</source>
            <translation>Zeitleiste</translation>
        </message>
        <message>
            <source>Time line and records</source>
            <translation>Zeitleiste und Einträge</translation>
        </message>
    </context>
    <context>
        <name>ImportDialog</name>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>An export becomes a new pantry in a file of its own. The pantry that is open now stays as it is. Every entry is proven first: if anything is wrong, nothing is brought in.</source>
            <translation>Ein Export wird eine neue Vorratskammer in einer eigenen Datei. Die jetzt offene Vorratskammer bleibt, wie sie ist. Jeder Eintrag wird zuerst geprüft: Stimmt etwas nicht, wird nichts eingelesen.</translation>
        </message>
        <message>
            <source>Bring in an export</source>
            <translation>Export einlesen</translation>
        </message>
        <message>
            <source>Bring it in…</source>
            <translation>Einlesen…</translation>
        </message>
        <message>
            <source>Choose an export</source>
            <translation>Export wählen</translation>
        </message>
        <message>
            <source>Choose an export…</source>
            <translation>Export wählen…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Exports of a pantry (*{ending})</source>
            <translation>Exporte einer Vorratskammer (*{ending})</translation>
        </message>
        <message>
            <source>No file chosen yet.</source>
            <translation>Noch keine Datei gewählt.</translation>
        </message>
        <message>
            <source>Open it in a window of its own</source>
            <translation>In eigenem Fenster öffnen</translation>
        </message>
        <message>
            <source>Pantries (*{ending})</source>
            <translation>Vorratskammern (*{ending})</translation>
        </message>
        <message>
            <source>This pantry is invented, to look at only.</source>
            <translation>Diese Vorratskammer ist erfunden, nur zum Ansehen.</translation>
        </message>
        <message>
            <source>Where the new pantry is to be</source>
            <translation>Wohin die neue Vorratskammer soll</translation>
        </message>
    </context>
    <context>
        <name>Inside</name>
        <message>
            <source>lower</source>
            <translation>keep</translation>
        </message>
    </context>
    <context>
        <name>JarPhotos</name>
        <message>
            <source>Discard it…</source>
            <translation>Wegwerfen…</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Nach Schimmel sehen…</translation>
        </message>
        <message>
            <source>Not looked at yet</source>
            <translation>Noch nicht nachgesehen</translation>
        </message>
        <message>
            <source>What is mold, what is not: a guide with drawings.</source>
            <translation>Was Schimmel ist und was nicht: ein Führer mit Zeichnungen.</translation>
        </message>
        <message>
            <source>looked at {when}</source>
            <translation>nachgesehen {when}</translation>
        </message>
    </context>
    <context>
        <name>JarSheet</name>
        <message>
            <source>Add a reading</source>
            <translation>Messung hinzufügen</translation>
        </message>
        <message>
            <source>All about this jar</source>
            <translation>Alles über dieses Glas</translation>
        </message>
        <message>
            <source>Bottle it…</source>
            <translation>Abfüllen…</translation>
        </message>
        <message>
            <source>Carry the batch</source>
            <translation>Ansatz tragen</translation>
        </message>
        <message>
            <source>Carry the batch to…</source>
            <translation>Ansatz tragen zu…</translation>
        </message>
        <message>
            <source>Carry the culture</source>
            <translation>Kultur tragen</translation>
        </message>
        <message>
            <source>Carry the culture to…</source>
            <translation>Kultur tragen zu…</translation>
        </message>
        <message>
            <source>Change the plan…</source>
            <translation>Plan ändern…</translation>
        </message>
        <message>
            <source>Change the vessel…</source>
            <translation>Gefäß ändern…</translation>
        </message>
        <message>
            <source>Clear it of suspicion…</source>
            <translation>Vom Verdacht freigeben…</translation>
        </message>
        <message>
            <source>Curve</source>
            <translation>Kurve</translation>
        </message>
        <message>
            <source>Day {n}</source>
            <translation>Tag {n}</translation>
        </message>
        <message>
            <source>Discard it…</source>
            <translation>Wegwerfen…</translation>
        </message>
        <message>
            <source>Draw it off</source>
            <translation>Abziehen</translation>
        </message>
        <message>
            <source>Draw it off…</source>
            <translation>Abziehen…</translation>
        </message>
        <message>
            <source>Give the plan up</source>
            <translation>Plan aufgeben</translation>
        </message>
        <message>
            <source>It is already in the jar…</source>
            <translation>Es ist schon im Glas…</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Tagebuch</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Nach Schimmel sehen…</translation>
        </message>
        <message>
            <source>More for this jar</source>
            <translation>Mehr für dieses Glas</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Plan a batch</source>
            <translation>Ansatz planen</translation>
        </message>
        <message>
            <source>Print a label…</source>
            <translation>Etikett drucken…</translation>
        </message>
        <message>
            <source>Print the run sheet…</source>
            <translation>Laufzettel drucken…</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Messungen</translation>
        </message>
        <message>
            <source>Recipe</source>
            <translation>Rezept</translation>
        </message>
        <message>
            <source>Retire the vessel</source>
            <translation>Gefäß ausmustern</translation>
        </message>
        <message>
            <source>Run sheet</source>
            <translation>Laufzettel</translation>
        </message>
        <message>
            <source>Show the batch's history</source>
            <translation>Verlauf des Ansatzes zeigen</translation>
        </message>
        <message>
            <source>Show the culture</source>
            <translation>Kultur zeigen</translation>
        </message>
        <message>
            <source>Show the jar's history</source>
            <translation>Verlauf des Glases zeigen</translation>
        </message>
        <message>
            <source>Start brewing</source>
            <translation>Aufbrühen beginnen</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>next</source>
            <translation>als Nächstes</translation>
        </message>
        <message>
            <source>not read yet</source>
            <translation>noch nicht gemessen</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>pH –</source>
            <translation>pH –</translation>
        </message>
        <message>
            <source>since {when}</source>
            <translation>seit {when}</translation>
        </message>
    </context>
    <context>
        <name>JournalModel</name>
        <message>
            <source>What happened</source>
            <translation>Was geschah</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
    </context>
    <context>
        <name>JournalView</name>
        <message>
            <source>Journal, newest first</source>
            <translation>Tagebuch, neueste zuerst</translation>
        </message>
        <message>
            <source>Nothing has been written down yet. Whatever you do with this batch will be.</source>
            <translation>Noch ist nichts aufgeschrieben. Was du mit diesem Ansatz tust, kommt hierher.</translation>
        </message>
    </context>
    <context>
        <name>KeepCalibration</name>
        <message>
            <source>Keep this calibration</source>
            <translation>Diese Kalibrierung behalten</translation>
        </message>
        <message>
            <source>Kept for {meter}.</source>
            <translation>Behalten für {meter}.</translation>
        </message>
        <message>
            <source>Last kept: {meter}, {day}.</source>
            <translation>Zuletzt behalten: {meter}, {day}.</translation>
        </message>
        <message>
            <source>Name of the meter</source>
            <translation>Name des Messgeräts</translation>
        </message>
        <message>
            <source>None is kept yet. From then on the next one is asked for in time.</source>
            <translation>Noch keine ist behalten. Danach wirst du rechtzeitig nach der nächsten gefragt.</translation>
        </message>
        <message>
            <source>pH meter</source>
            <translation>pH-Meter</translation>
        </message>
    </context>
    <context>
        <name>LabelPicker</name>
        <message>
            <source>1 label in all.</source>
            <translation>Insgesamt 1 Etikett.</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Bottles filled lately are ticked for you.</source>
            <translation>Zuletzt gefüllte Flaschen sind für dich angekreuzt.</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Kulturen</translation>
        </message>
        <message>
            <source>Find by name</source>
            <translation>Nach Namen suchen</translation>
        </message>
        <message>
            <source>Jars</source>
            <translation>Gläser</translation>
        </message>
        <message>
            <source>Tick what is to get a label.</source>
            <translation>Kreuz an, was ein Etikett bekommen soll.</translation>
        </message>
        <message>
            <source>Untick all</source>
            <translation>Alle abwählen</translation>
        </message>
        <message>
            <source>What sours now is ticked for you.</source>
            <translation>Was jetzt säuert, ist für dich angekreuzt.</translation>
        </message>
        <message>
            <source>What to label</source>
            <translation>Was ein Etikett bekommt</translation>
        </message>
        <message>
            <source>{count} labels in all.</source>
            <translation>Insgesamt {count} Etiketten.</translation>
        </message>
    </context>
    <context>
        <name>LabelPicks</name>
        <message>
            <source>Copies</source>
            <translation>Anzahl</translation>
        </message>
        <message>
            <source>Label for</source>
            <translation>Etikett für</translation>
        </message>
        <message>
            <source>No label</source>
            <translation>Kein Etikett</translation>
        </message>
        <message>
            <source>Nothing in it</source>
            <translation>Nichts darin</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Zustand</translation>
        </message>
    </context>
    <context>
        <name>LabelPreview</name>
        <message>
            <source>Next page</source>
            <translation>Nächste Seite</translation>
        </message>
        <message>
            <source>Page width</source>
            <translation>Seitenbreite</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Seite {page} von {pages}</translation>
        </message>
        <message>
            <source>Preview of the labels</source>
            <translation>Vorschau der Etiketten</translation>
        </message>
        <message>
            <source>Previous page</source>
            <translation>Vorige Seite</translation>
        </message>
        <message>
            <source>Size of the preview</source>
            <translation>Größe der Vorschau</translation>
        </message>
        <message>
            <source>Whole page</source>
            <translation>Ganze Seite</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <translation>{percent} %</translation>
        </message>
    </context>
    <context>
        <name>LabelSheetBox</name>
        <message>
            <source>As it was</source>
            <translation>Wie es war</translation>
        </message>
        <message>
            <source>Change…</source>
            <translation>Ändern…</translation>
        </message>
        <message>
            <source>Click where the first label goes</source>
            <translation>Klicke, wo das erste Etikett hinsoll</translation>
        </message>
        <message>
            <source>Draw the outline of each label</source>
            <translation>Umriss jedes Etiketts zeichnen</translation>
        </message>
        <message>
            <source>Like {name}</source>
            <translation>Wie {name}</translation>
        </message>
        <message>
            <source>Measures of the sheet</source>
            <translation>Maße des Bogens</translation>
        </message>
        <message>
            <source>New sheet</source>
            <translation>Neuer Bogen</translation>
        </message>
        <message>
            <source>New sheet…</source>
            <translation>Neuer Bogen…</translation>
        </message>
        <message>
            <source>Print a test page…</source>
            <translation>Testseite drucken…</translation>
        </message>
        <message>
            <source>Printers shift and stretch a little. The test page, on plain paper, shows how much; Change… takes the correction. Print without “fit to page”.</source>
            <translation>Drucker verschieben und dehnen ein wenig. Die Testseite, auf normalem Papier, zeigt, wie viel; unter „Ändern…“ trägst du die Korrektur ein. Drucke ohne „An Seite anpassen“.</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Sheet or roll</source>
            <translation>Bogen oder Rolle</translation>
        </message>
    </context>
    <context>
        <name>LabelWords</name>
        <message>
            <source>As suits each</source>
            <translation>Wie es zu jedem passt</translation>
        </message>
        <message>
            <source>Back to what is recorded</source>
            <translation>Zurück zum Eingetragenen</translation>
        </message>
        <message>
            <source>Kind of label</source>
            <translation>Art des Etiketts</translation>
        </message>
        <message>
            <source>Ticks count for all labels, words for the one chosen above. The label says what you and your records say; it does not say that a drink is safe. Where you give or sell it, follow your local rules on labels.</source>
            <translation>Kreuze gelten für alle Etiketten, Worte für das oben gewählte. Das Etikett sagt, was du und deine Einträge sagen; es sagt nicht, dass ein Getränk sicher ist. Wo du es weggibst oder verkaufst, befolge deine örtlichen Regeln für Etiketten.</translation>
        </message>
        <message>
            <source>What is in it</source>
            <translation>Was darin ist</translation>
        </message>
        <message>
            <source>Words for</source>
            <translation>Worte für</translation>
        </message>
        <message>
            <source>You know; the program does not</source>
            <translation>Du weißt es; das Programm nicht</translation>
        </message>
    </context>
    <context>
        <name>Labels</name>
        <message>
            <source>, </source>
            <translation>, </translation>
        </message>
        <message>
            <source>1 bottle · {state}</source>
            <translation>1 Flasche · {state}</translation>
        </message>
        <message>
            <source>Alive; contains some alcohol and caffeine.</source>
            <translation>Lebt; enthält etwas Alkohol und Koffein.</translation>
        </message>
        <message>
            <source>Allergens</source>
            <translation>Allergene</translation>
        </message>
        <message>
            <source>Allergens: {text}</source>
            <translation>Allergene: {text}</translation>
        </message>
        <message>
            <source>Best before</source>
            <translation>Mindestens haltbar bis</translation>
        </message>
        <message>
            <source>Best before {text}</source>
            <translation>Mindestens haltbar bis {text}</translation>
        </message>
        <message>
            <source>Born {text}</source>
            <translation>Entstanden {text}</translation>
        </message>
        <message>
            <source>Both lines are 100 mm long if the printer prints true to size.</source>
            <translation>Beide Linien sind 100 mm lang, wenn der Drucker maßstabsgetreu druckt.</translation>
        </message>
        <message>
            <source>Bottle</source>
            <translation>Flasche</translation>
        </message>
        <message>
            <source>Chill by</source>
            <translation>Kühlen bis</translation>
        </message>
        <message>
            <source>Chill by {text}</source>
            <translation>Kühlen bis {text}</translation>
        </message>
        <message>
            <source>Contains some alcohol</source>
            <translation>Enthält etwas Alkohol</translation>
        </message>
        <message>
            <source>Contents under pressure</source>
            <translation>Inhalt steht unter Druck</translation>
        </message>
        <message>
            <source>Contents under pressure. Chill before opening; do not shake.</source>
            <translation>Inhalt steht unter Druck. Vor dem Öffnen kühlen; nicht schütteln.</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Do not use: may share mold</source>
            <translation>Nicht verwenden: kann Schimmel teilen</translation>
        </message>
        <message>
            <source>Feed by</source>
            <translation>Füttern bis</translation>
        </message>
        <message>
            <source>Feed by {text}</source>
            <translation>Füttern bis {text}</translation>
        </message>
        <message>
            <source>Filled {text}</source>
            <translation>Abgefüllt {text}</translation>
        </message>
        <message>
            <source>Gap between columns, mm</source>
            <translation>Abstand der Spalten, mm</translation>
        </message>
        <message>
            <source>Gap between rows, mm</source>
            <translation>Abstand der Zeilen, mm</translation>
        </message>
        <message>
            <source>Growing</source>
            <translation>Wächst</translation>
        </message>
        <message>
            <source>Height of a label, mm</source>
            <translation>Höhe eines Etiketts, mm</translation>
        </message>
        <message>
            <source>Height of the paper, mm</source>
            <translation>Höhe des Papiers, mm</translation>
        </message>
        <message>
            <source>Ingredients</source>
            <translation>Zutaten</translation>
        </message>
        <message>
            <source>Ingredients: {text}</source>
            <translation>Zutaten: {text}</translation>
        </message>
        <message>
            <source>Invented black tea 1</source>
            <translation>Erfundener Schwarztee 1</translation>
        </message>
        <message>
            <source>Invented culture</source>
            <translation>Erfundene Kultur</translation>
        </message>
        <message>
            <source>Invented culture at rest</source>
            <translation>Erfundene ruhende Kultur</translation>
        </message>
        <message>
            <source>Invented ginger 1</source>
            <translation>Erfundener Ingwer 1</translation>
        </message>
        <message>
            <source>Jar</source>
            <translation>Glas</translation>
        </message>
        <message>
            <source>Keep refrigerated</source>
            <translation>Gekühlt aufbewahren</translation>
        </message>
        <message>
            <source>Keep refrigerated, at {limit} or below.</source>
            <translation>Gekühlt aufbewahren, bei {limit} oder darunter.</translation>
        </message>
        <message>
            <source>Labels across</source>
            <translation>Etiketten nebeneinander</translation>
        </message>
        <message>
            <source>Labels down</source>
            <translation>Etiketten untereinander</translation>
        </message>
        <message>
            <source>Left edge to the first label, mm</source>
            <translation>Linker Rand bis zum ersten Etikett, mm</translation>
        </message>
        <message>
            <source>Length of a label, mm</source>
            <translation>Länge eines Etiketts, mm</translation>
        </message>
        <message>
            <source>Made on</source>
            <translation>Angesetzt am</translation>
        </message>
        <message>
            <source>Made {text}</source>
            <translation>Angesetzt {text}</translation>
        </message>
        <message>
            <source>Move everything down, mm</source>
            <translation>Alles nach unten rücken, mm</translation>
        </message>
        <message>
            <source>Move everything right, mm</source>
            <translation>Alles nach rechts rücken, mm</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Name</translation>
        </message>
        <message>
            <source>Name of the sheet</source>
            <translation>Name des Bogens</translation>
        </message>
        <message>
            <source>Please give the sheet a name.</source>
            <translation>Bitte gib dem Bogen einen Namen.</translation>
        </message>
        <message>
            <source>Please keep the name shorter.</source>
            <translation>Bitte wähle einen kürzeren Namen.</translation>
        </message>
        <message>
            <source>QR code</source>
            <translation>QR-Code</translation>
        </message>
        <message>
            <source>Radius of the corners, mm</source>
            <translation>Radius der Ecken, mm</translation>
        </message>
        <message>
            <source>Resting</source>
            <translation>Ruhend</translation>
        </message>
        <message>
            <source>Resting jar</source>
            <translation>Ruhendes Glas</translation>
        </message>
        <message>
            <source>Roll, {width} mm wide, labels {length} mm long</source>
            <translation>Rolle, {width} mm breit, Etiketten {length} mm lang</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muster</translation>
        </message>
        <message>
            <source>Souring</source>
            <translation>Säuert</translation>
        </message>
        <message>
            <source>Stage</source>
            <translation>Phase</translation>
        </message>
        <message>
            <source>Taste from</source>
            <translation>Probieren ab</translation>
        </message>
        <message>
            <source>Taste from {text}</source>
            <translation>Probieren ab {text}</translation>
        </message>
        <message>
            <source>Test page. Hold it behind a sheet of labels against the light: the frames are where the labels will be, with your corrections. The rulers are printed without any.</source>
            <translation>Testseite. Halte sie hinter einem Etikettenbogen gegen das Licht: Die Rahmen sind, wo die Etiketten sein werden, mit deinen Korrekturen. Die Lineale sind ohne Korrektur gedruckt.</translation>
        </message>
        <message>
            <source>The ruler across measures, mm</source>
            <translation>Das waagerechte Lineal misst, mm</translation>
        </message>
        <message>
            <source>The ruler down measures, mm</source>
            <translation>Das senkrechte Lineal misst, mm</translation>
        </message>
        <message>
            <source>There are {high} sheets already. Remove one first.</source>
            <translation>Es gibt schon {high} Bögen. Entferne zuerst einen.</translation>
        </message>
        <message>
            <source>This must lie between {low} and {high}.</source>
            <translation>Das muss zwischen {low} und {high} liegen.</translation>
        </message>
        <message>
            <source>Together the labels and gaps are {value} mm high; the paper leaves {high}.</source>
            <translation>Zusammen sind Etiketten und Abstände {value} mm hoch; das Papier lässt {high}.</translation>
        </message>
        <message>
            <source>Together the labels and gaps are {value} mm wide; the paper leaves {high}.</source>
            <translation>Zusammen sind Etiketten und Abstände {value} mm breit; das Papier lässt {high}.</translation>
        </message>
        <message>
            <source>True to size, the line across is {across} mm long and the line down {down} mm. Multiply what you measure by {times_across} and {times_down}.</source>
            <translation>Maßstabsgetreu ist die waagerechte Linie {across} mm lang und die senkrechte {down} mm. Multipliziere, was du misst, mit {times_across} und {times_down}.</translation>
        </message>
        <message>
            <source>Upper edge to the first label, mm</source>
            <translation>Oberer Rand bis zum ersten Etikett, mm</translation>
        </message>
        <message>
            <source>Water, live kombucha culture, sugar, black tea, ginger</source>
            <translation>Wasser, lebende Kombucha-Kultur, Zucker, schwarzer Tee, Ingwer</translation>
        </message>
        <message>
            <source>Width of a label, mm</source>
            <translation>Breite eines Etiketts, mm</translation>
        </message>
        <message>
            <source>Width of the paper, mm</source>
            <translation>Breite des Papiers, mm</translation>
        </message>
        <message>
            <source>Width of the roll, mm</source>
            <translation>Breite der Rolle, mm</translation>
        </message>
        <message>
            <source>black tea</source>
            <translation>schwarzer Tee</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
        <message>
            <source>green tea</source>
            <translation>grüner Tee</translation>
        </message>
        <message>
            <source>herbs</source>
            <translation>Kräuter</translation>
        </message>
        <message>
            <source>live kombucha culture</source>
            <translation>lebende Kombucha-Kultur</translation>
        </message>
        <message>
            <source>none known to its invented maker</source>
            <translation>dem erfundenen Hersteller keine bekannt</translation>
        </message>
        <message>
            <source>oolong tea</source>
            <translation>Oolong-Tee</translation>
        </message>
        <message>
            <source>sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>white tea</source>
            <translation>weißer Tee</translation>
        </message>
        <message>
            <source>{count} bottles · {state}</source>
            <translation>{count} Flaschen · {state}</translation>
        </message>
        <message>
            <source>{day}, {hour}</source>
            <translation>{day}, {hour}</translation>
        </message>
        <message>
            <source>{name} · {stage}</source>
            <translation>{name} · {stage}</translation>
        </message>
        <message>
            <source>{name}: the QR code is left out. It would be too small to be read.</source>
            <translation>{name}: Der QR-Code entfällt. Er wäre zu klein zum Lesen.</translation>
        </message>
        <message>
            <source>{name}: “{field}” is cut short. It does not fit on this label.</source>
            <translation>{name}: „{field}“ ist gekürzt. Es passt nicht auf dieses Etikett.</translation>
        </message>
        <message>
            <source>{name}: “{field}” is left out. There is no room for it.</source>
            <translation>{name}: „{field}“ entfällt. Dafür ist kein Platz.</translation>
        </message>
        <message>
            <source>{name}: “{field}” is longer than any label and was cut short.</source>
            <translation>{name}: „{field}“ ist länger als jedes Etikett und wurde gekürzt.</translation>
        </message>
        <message>
            <source>{paper}, {columns} × {rows}, {width} × {height} mm</source>
            <translation>{paper}, {columns} × {rows}, {width} × {height} mm</translation>
        </message>
    </context>
    <context>
        <name>LabelsPage</name>
        <message>
            <source>Add a vessel…</source>
            <translation>Gefäß hinzufügen…</translation>
        </message>
        <message>
            <source>And {count} more.</source>
            <translation>Und {count} weitere.</translation>
        </message>
        <message>
            <source>Label {name}</source>
            <translation>Etikett {name}</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiketten</translation>
        </message>
        <message>
            <source>Nothing is ticked yet. These are samples with invented words; they are not printed.</source>
            <translation>Noch ist nichts angekreuzt. Das sind Muster mit erfundenen Worten; sie werden nicht gedruckt.</translation>
        </message>
        <message>
            <source>Nothing to label yet</source>
            <translation>Noch nichts zu etikettieren</translation>
        </message>
        <message>
            <source>Once there is a jar, a batch or a culture, this page prints labels for it: with its dates, your own words and a code with its record's own number.</source>
            <translation>Sobald es ein Glas, einen Ansatz oder eine Kultur gibt, druckt diese Seite Etiketten dafür: mit den Daten, deinen eigenen Worten und einem Code mit der Nummer des Eintrags.</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>PDF-Dateien (*.pdf)</translation>
        </message>
        <message>
            <source>Print…</source>
            <translation>Drucken…</translation>
        </message>
        <message>
            <source>Save as PDF…</source>
            <translation>Als PDF speichern…</translation>
        </message>
        <message>
            <source>Save the labels as PDF</source>
            <translation>Etiketten als PDF speichern</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Gespeichert als {file}</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Bogen</translation>
        </message>
        <message>
            <source>The printer does not have the paper of this sheet. Choose another printer, or the labels will be in the wrong place.</source>
            <translation>Der Drucker hat das Papier dieses Bogens nicht. Wähle einen anderen Drucker, sonst sitzen die Etiketten falsch.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>What is labelled, its words, and the sheet</source>
            <translation>Was etikettiert wird, die Worte und der Bogen</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Worte</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>{file} ließ sich nicht schreiben. Wähle einen anderen Ordner.</translation>
        </message>
    </context>
    <context>
        <name>LeaveOutDialog</name>
        <message>
            <source>It counts in no result then; the reason stands in the report. Leave out what went wrong, such as mold or a spill, never what came out unexpectedly.</source>
            <translation>Es zählt dann in keinem Ergebnis; der Grund steht im Bericht. Lass weg, was schiefging, etwa Schimmel oder Verschüttetes, nie, was unerwartet ausfiel.</translation>
        </message>
        <message>
            <source>Leave it out</source>
            <translation>Weglassen</translation>
        </message>
        <message>
            <source>Leave {code} out</source>
            <translation>{code} weglassen</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
    </context>
    <context>
        <name>LiquidEntries</name>
        <message>
            <source>Draw off part of {name}</source>
            <translation>Teil von {name} abziehen</translation>
        </message>
        <message>
            <source>Draw off part…</source>
            <translation>Teil abziehen…</translation>
        </message>
        <message>
            <source>Keep starter back…</source>
            <translation>Starter zurückbehalten…</translation>
        </message>
        <message>
            <source>Keep starter of {name}</source>
            <translation>Starter von {name} aufheben</translation>
        </message>
        <message>
            <source>Pour over into another vessel…</source>
            <translation>In anderes Gefäß umfüllen…</translation>
        </message>
        <message>
            <source>Pour together with another batch…</source>
            <translation>Mit anderem Ansatz zusammengießen…</translation>
        </message>
        <message>
            <source>Pour {name} into another batch</source>
            <translation>{name} in anderen Ansatz gießen</translation>
        </message>
        <message>
            <source>Pour {name} over</source>
            <translation>{name} umfüllen</translation>
        </message>
        <message>
            <source>Top up…</source>
            <translation>Nachfüllen…</translation>
        </message>
    </context>
    <context>
        <name>Liquids</name>
        <message>
            <source>A batch cannot be poured into itself.</source>
            <translation>Ein Ansatz kann nicht in sich selbst gegossen werden.</translation>
        </message>
        <message>
            <source>Another culture has this name already. Please choose another name.</source>
            <translation>Eine andere Kultur hat schon diesen Namen. Bitte wähle einen anderen Namen.</translation>
        </message>
        <message>
            <source>It is in this vessel already.</source>
            <translation>Er ist schon in diesem Gefäß.</translation>
        </message>
        <message>
            <source>More than half of the jar would be fresh tea.</source>
            <translation>Mehr als die Hälfte des Glases wäre frischer Tee.</translation>
        </message>
        <message>
            <source>Only a batch that is souring can take in another one.</source>
            <translation>Nur ein säuernder Ansatz kann einen anderen aufnehmen.</translation>
        </message>
        <message>
            <source>Only a batch that is souring has liquid to draw, pour or lend.</source>
            <translation>Nur ein säuernder Ansatz hat Flüssigkeit zum Abziehen, Gießen oder Abgeben.</translation>
        </message>
        <message>
            <source>Only a culture that rests in liquid of its own can lend starter.</source>
            <translation>Nur eine Kultur, die in eigener Flüssigkeit ruht, kann Starter abgeben.</translation>
        </message>
        <message>
            <source>Please give an amount of at least a drop.</source>
            <translation>Bitte gib mindestens einen Tropfen an.</translation>
        </message>
        <message>
            <source>Pour in less, or draw some off first.</source>
            <translation>Gieß weniger hinein oder zieh zuerst etwas ab.</translation>
        </message>
        <message>
            <source>Pour in less, or let it sour for longer first, and measure after mixing.</source>
            <translation>Gieß weniger hinein oder lass es länger säuern, und miss nach dem Mischen.</translation>
        </message>
        <message>
            <source>Pour in less, or plan a new batch with this one as its starter.</source>
            <translation>Gieß weniger hinein oder plane einen neuen Ansatz mit diesem als Starter.</translation>
        </message>
        <message>
            <source>Poured into {name}</source>
            <translation>In {name} gegossen</translation>
        </message>
        <message>
            <source>So much at once thins the acid that protects it; {share} is as good as a new batch. That half is a cautious mark; common practice, no source.</source>
            <translation>So viel auf einmal verdünnt die Säure, die schützt; {share} ist so gut wie ein neuer Ansatz. Diese Hälfte ist eine vorsichtige Marke; gängige Praxis, ohne Quelle.</translation>
        </message>
        <message>
            <source>Starter can be lent to a plan or an empty vessel; this batch has been begun.</source>
            <translation>Starter kann an einen Plan oder ein leeres Gefäß abgegeben werden; dieser Ansatz ist schon begonnen.</translation>
        </message>
        <message>
            <source>Starter can only be kept where a culture rests in a vessel.</source>
            <translation>Starter lässt sich nur aufheben, wo eine Kultur in einem Gefäß ruht.</translation>
        </message>
        <message>
            <source>That does not fit: there is room for {high} to the brim.</source>
            <translation>Das passt nicht: Bis zum Rand ist Platz für {high}.</translation>
        </message>
        <message>
            <source>That is more than there is: {high}.</source>
            <translation>Das ist mehr, als da ist: {high}.</translation>
        </message>
        <message>
            <source>That makes {fill_l}, more than the {working_l} you usually fill in.</source>
            <translation>Das ergibt {fill_l}, mehr als die {working_l}, die du sonst einfüllst.</translation>
        </message>
        <message>
            <source>That would empty the jar: there are {high}. To take all of it, draw the batch off or pour it over.</source>
            <translation>Das würde das Glas leeren: Es sind {high} da. Um alles zu nehmen, zieh den Ansatz ab oder füll ihn um.</translation>
        </message>
        <message>
            <source>The culture needs air above it, and room to rise.</source>
            <translation>Die Kultur braucht Luft über sich und Platz zum Steigen.</translation>
        </message>
        <message>
            <source>The cultures join only if all of the batch is poured over.</source>
            <translation>Die Kulturen vereinen sich nur, wenn der ganze Ansatz umgefüllt wird.</translation>
        </message>
        <message>
            <source>The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful germs can grow in sweet tea.</source>
            <translation>Die Schätzung ist {ph}, aber es können bis zu {high} sein. Über {limit} können schädliche Keime in gesüßtem Tee wachsen.</translation>
        </message>
        <message>
            <source>There are no two different cultures at work in these jars.</source>
            <translation>In diesen Gläsern arbeiten keine zwei verschiedenen Kulturen.</translation>
        </message>
        <message>
            <source>There is no culture in this jar to keep it with. Lend it to a plan instead.</source>
            <translation>In diesem Glas ist keine Kultur, bei der er bleiben könnte. Gib ihn stattdessen an einen Plan ab.</translation>
        </message>
        <message>
            <source>This liquid may carry mold. It goes nowhere but down the drain, until you have looked and cleared it.</source>
            <translation>Diese Flüssigkeit kann Schimmel tragen. Sie kommt nur in den Ausguss, bis du nachgesehen und sie freigegeben hast.</translation>
        </message>
        <message>
            <source>To fill this vessel again you would need {volume} of starter.</source>
            <translation>Um dieses Gefäß wieder zu füllen, bräuchtest du {volume} Starter.</translation>
        </message>
        <message>
            <source>With this much fresh tea its pH may rise above {limit}.</source>
            <translation>Mit so viel frischem Tee kann der pH über {limit} steigen.</translation>
        </message>
        <message>
            <source>{plan}, which is planned next, wants {volume} of starter.</source>
            <translation>{plan}, als Nächstes geplant, braucht {volume} Starter.</translation>
        </message>
    </context>
    <context>
        <name>LocationDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Leave the camera data out?</source>
            <translation>Kameradaten weglassen?</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Kopie speichern</translation>
        </message>
        <message>
            <source>Save as it is</source>
            <translation>Unverändert speichern</translation>
        </message>
        <message>
            <source>Save without it</source>
            <translation>Ohne sie speichern</translation>
        </message>
    </context>
    <context>
        <name>LoggerChoices</name>
        <message>
            <source>&amp;Time</source>
            <translation>&amp;Zeit</translation>
        </message>
        <message>
            <source>Columns are parted by</source>
            <translation>Spalten sind getrennt durch</translation>
        </message>
        <message>
            <source>How the file is written</source>
            <translation>Wie die Datei geschrieben ist</translation>
        </message>
        <message>
            <source>Letters are written as</source>
            <translation>Zeichen sind geschrieben als</translation>
        </message>
        <message>
            <source>T&amp;emperature</source>
            <translation>T&amp;emperatur</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturen in</translation>
        </message>
        <message>
            <source>The logger's &amp;clock shows</source>
            <translation>Die &amp;Uhr des Loggers zeigt</translation>
        </message>
        <message>
            <source>Time of &amp;day, if apart</source>
            <translation>Uh&amp;rzeit, falls getrennt</translation>
        </message>
        <message>
            <source>your own time without summer time ({zone})</source>
            <translation>deine eigene Zeit ohne Sommerzeit ({zone})</translation>
        </message>
    </context>
    <context>
        <name>LoggerDialog</name>
        <message>
            <source>Choose the logger's file</source>
            <translation>Datei des Loggers wählen</translation>
        </message>
        <message>
            <source>Choose the table that your temperature logger exported: text with a time and a temperature in each row. How it is written is found out, and shown before anything is kept.</source>
            <translation>Wähle die Tabelle, die dein Temperatur-Logger exportiert hat: Text mit einer Zeit und einer Temperatur in jeder Zeile. Wie sie geschrieben ist, wird herausgefunden und gezeigt, bevor etwas behalten wird.</translation>
        </message>
        <message>
            <source>How much of the file has been read</source>
            <translation>Wie viel von der Datei gelesen ist</translation>
        </message>
        <message>
            <source>Please choose one.</source>
            <translation>Bitte wähle eins.</translation>
        </message>
        <message>
            <source>Read a logger's file</source>
            <translation>Logger-Datei einlesen</translation>
        </message>
        <message>
            <source>Read a logger's file for {name}</source>
            <translation>Logger-Datei für {name} einlesen</translation>
        </message>
        <message>
            <source>Rows left out ({count}), the first of them:</source>
            <translation>Weggelassene Zeilen ({count}), die ersten davon:</translation>
        </message>
        <message>
            <source>Rows that could not be read</source>
            <translation>Zeilen, die nicht lesbar waren</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Stoppen</translation>
        </message>
    </context>
    <context>
        <name>LoggerTable</name>
        <message>
            <source>Read as temperature</source>
            <translation>Als Temperatur gelesen</translation>
        </message>
        <message>
            <source>Read as time</source>
            <translation>Als Zeit gelesen</translation>
        </message>
        <message>
            <source>The first rows of the file</source>
            <translation>Die ersten Zeilen der Datei</translation>
        </message>
        <message>
            <source>day or month first?</source>
            <translation>Tag oder Monat zuerst?</translation>
        </message>
    </context>
    <context>
        <name>Loggers</name>
        <message>
            <source>Line {line}: {why}</source>
            <translation>Zeile {line}: {why}</translation>
        </message>
        <message>
            <source>Line {line}: {why} ({text})</source>
            <translation>Zeile {line}: {why} ({text})</translation>
        </message>
        <message>
            <source>No table of times and temperatures was found in this file. Please choose the logger's export as text (CSV).</source>
            <translation>In dieser Datei wurde keine Tabelle mit Zeiten und Temperaturen gefunden. Bitte wähle den Export des Loggers als Text (CSV).</translation>
        </message>
        <message>
            <source>Not one row could be read this way. Please check the columns and the dates.</source>
            <translation>So war keine einzige Zeile lesbar. Bitte prüfe die Spalten und die Datumsangaben.</translation>
        </message>
        <message>
            <source>One row could not be read and is left out.</source>
            <translation>Eine Zeile war nicht lesbar und wird weggelassen.</translation>
        </message>
        <message>
            <source>Stopped. Nothing was kept.</source>
            <translation>Gestoppt. Nichts wurde behalten.</translation>
        </message>
        <message>
            <source>The dates can be read in two ways. Please say whether the day or the month comes first.</source>
            <translation>Die Datumsangaben lassen sich auf zwei Arten lesen. Bitte sag, ob der Tag oder der Monat zuerst kommt.</translation>
        </message>
        <message>
            <source>This file cannot be opened. Please check that it is still there.</source>
            <translation>Diese Datei lässt sich nicht öffnen. Bitte prüfe, ob sie noch da ist.</translation>
        </message>
        <message>
            <source>This file has more than ten million rows. Please export a shorter time from the logger.</source>
            <translation>Diese Datei hat mehr als zehn Millionen Zeilen. Bitte exportiere eine kürzere Zeit aus dem Logger.</translation>
        </message>
        <message>
            <source>This file is empty. Please export it from the logger once more.</source>
            <translation>Diese Datei ist leer. Bitte exportiere sie noch einmal aus dem Logger.</translation>
        </message>
        <message>
            <source>Times that came more than once count once: {count}.</source>
            <translation>Zeiten, die mehrmals vorkamen, zählen einmal: {count}.</translation>
        </message>
        <message>
            <source>Times that summer time leaves out: {count}. They were moved on by the missing hour; perhaps the logger's clock does not follow summer time.</source>
            <translation>Zeiten, die durch die Sommerzeit entfallen: {count}. Sie wurden um die fehlende Stunde verschoben; vielleicht folgt die Uhr des Loggers der Sommerzeit nicht.</translation>
        </message>
        <message>
            <source>Times that the end of summer time repeats: {count}. The order of the rows says which is which.</source>
            <translation>Zeiten, die das Ende der Sommerzeit wiederholt: {count}. Die Reihenfolge der Zeilen sagt, welche welche ist.</translation>
        </message>
        <message>
            <source>no room is that cold or warm</source>
            <translation>so kalt oder warm ist kein Raum</translation>
        </message>
        <message>
            <source>the row has too few columns</source>
            <translation>die Zeile hat zu wenige Spalten</translation>
        </message>
        <message>
            <source>the row is empty</source>
            <translation>die Zeile ist leer</translation>
        </message>
        <message>
            <source>the temperature is no number</source>
            <translation>die Temperatur ist keine Zahl</translation>
        </message>
        <message>
            <source>the temperature is no number that can be measured</source>
            <translation>die Temperatur ist keine messbare Zahl</translation>
        </message>
        <message>
            <source>the time cannot be read</source>
            <translation>die Zeit ist nicht lesbar</translation>
        </message>
        <message>
            <source>the time is still to come</source>
            <translation>die Zeit liegt noch in der Zukunft</translation>
        </message>
        <message>
            <source>there is no such date</source>
            <translation>dieses Datum gibt es nicht</translation>
        </message>
        <message>
            <source>there is no such time of day</source>
            <translation>diese Uhrzeit gibt es nicht</translation>
        </message>
        <message>
            <source>there is no temperature</source>
            <translation>die Temperatur fehlt</translation>
        </message>
        <message>
            <source>{count} rows could not be read and are left out.</source>
            <translation>{count} Zeilen waren nicht lesbar und werden weggelassen.</translation>
        </message>
        <message>
            <source>{count} temperatures from {first} to {last}, between {least} and {most}, on average {mean}.</source>
            <translation>{count} Temperaturen vom {first} bis {last}, zwischen {least} und {most}, im Mittel {mean}.</translation>
        </message>
    </context>
    <context>
        <name>LookBack</name>
        <message>
            <source> (right: {low} to {high} % as a rule)</source>
            <translation> (richtig: in der Regel {low} bis {high} %)</translation>
        </message>
        <message>
            <source>, too few</source>
            <translation>, zu wenige</translation>
        </message>
        <message>
            <source>1 batch</source>
            <translation>1 Ansatz</translation>
        </message>
        <message>
            <source>1 loss is written down, with its reason below.</source>
            <translation>1 Verlust ist aufgeschrieben, mit seinem Grund unten.</translation>
        </message>
        <message>
            <source>; too few to say how it is as a rule</source>
            <translation>; zu wenige, um zu sagen, wie es in der Regel ist</translation>
        </message>
        <message>
            <source>Age of culture</source>
            <translation>Alter der Kultur</translation>
        </message>
        <message>
            <source>Between {first} and {second} no difference shows: {first} may be anything from {fast} days faster to {slow} days slower.</source>
            <translation>Zwischen {first} und {second} zeigt sich kein Unterschied: {first} kann zwischen {fast} Tagen schneller und {slow} Tagen langsamer sein.</translation>
        </message>
        <message>
            <source>Bottles were vented once.</source>
            <translation>Flaschen wurden einmal entlüftet.</translation>
        </message>
        <message>
            <source>Bottles were vented {count} times.</source>
            <translation>Flaschen wurden {count}-mal entlüftet.</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Culture {band} months old</source>
            <translation>Kultur {band} Monate alt</translation>
        </message>
        <message>
            <source>For the next one, {days} days is the better guess.</source>
            <translation>Für den nächsten sind {days} Tage die bessere Schätzung.</translation>
        </message>
        <message>
            <source>Founder</source>
            <translation>Stammkultur</translation>
        </message>
        <message>
            <source>Generation</source>
            <translation>Generation</translation>
        </message>
        <message>
            <source>Generation {n}</source>
            <translation>Generation {n}</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Monat</translation>
        </message>
        <message>
            <source>No culture</source>
            <translation>Keine Kultur</translation>
        </message>
        <message>
            <source>None of {batches} has come {what} yet.</source>
            <translation>{batches}: noch keiner kam {what}.</translation>
        </message>
        <message>
            <source>None of {batches} is drawn off yet.</source>
            <translation>{batches}: noch keiner ist abgezogen.</translation>
        </message>
        <message>
            <source>Not counted: {parts}.</source>
            <translation>Nicht gezählt: {parts}.</translation>
        </message>
        <message>
            <source>Of {count} bottles opened {right} were right, {under} too flat, {over} gushed</source>
            <translation>Von {count} geöffneten Flaschen waren {right} richtig, {under} zu schal, {over} schäumten über</translation>
        </message>
        <message>
            <source>Of {count} tastings {right} were just right, {under} too sweet, {over} too sour</source>
            <translation>Von {count} Verkostungen waren {right} genau richtig, {under} zu süß, {over} zu sauer</translation>
        </message>
        <message>
            <source>Part of it may be warmth: {cool} stood {degrees} cooler than {warm}.</source>
            <translation>Zum Teil kann es Wärme sein: {cool} stand {degrees} kühler als {warm}.</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Starter share</source>
            <translation>Starteranteil</translation>
        </message>
        <message>
            <source>Starter {band}</source>
            <translation>Starter {band}</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>That is too few to call it a difference: it takes {count} batches of each.</source>
            <translation>Das sind zu wenige für einen Unterschied: Es braucht je {count} Ansätze.</translation>
        </message>
        <message>
            <source>That is too few to say what the next one will take.</source>
            <translation>Das sind zu wenige, um zu sagen, wie lange der nächste braucht.</translation>
        </message>
        <message>
            <source>The median of many such batches lies above {low} ({percent} % sure).</source>
            <translation>Der Median vieler solcher Ansätze liegt über {low} Tagen ({percent} % sicher).</translation>
        </message>
        <message>
            <source>The median of many such batches lies between {low} and {high} days ({percent} % sure).</source>
            <translation>Der Median vieler solcher Ansätze liegt zwischen {low} und {high} Tagen ({percent} % sicher).</translation>
        </message>
        <message>
            <source>Too few to say more.</source>
            <translation>Zu wenige, um mehr zu sagen.</translation>
        </message>
        <message>
            <source>Warmth</source>
            <translation>Wärme</translation>
        </message>
        <message>
            <source>Whether {first} and {second} differ cannot be said yet.</source>
            <translation>Ob sich {first} und {second} unterscheiden, lässt sich noch nicht sagen.</translation>
        </message>
        <message>
            <source>Your batches took {spread} {what}.</source>
            <translation>Deine Ansätze brauchten {spread} {what}.</translation>
        </message>
        <message>
            <source>hardly any</source>
            <translation>fast keine</translation>
        </message>
        <message>
            <source>more than {days} days</source>
            <translation>mehr als {days} Tage</translation>
        </message>
        <message>
            <source>none there, of {count}</source>
            <translation>noch keiner von {count}</translation>
        </message>
        <message>
            <source>not there after {days} days</source>
            <translation>noch nicht so weit nach {days} Tagen</translation>
        </message>
        <message>
            <source>open</source>
            <translation>offen</translation>
        </message>
        <message>
            <source>over {days} days</source>
            <translation>über {days} Tage</translation>
        </message>
        <message>
            <source>to pH {ph}</source>
            <translation>bis pH {ph}</translation>
        </message>
        <message>
            <source>under {high}</source>
            <translation>unter {high}</translation>
        </message>
        <message>
            <source>until drawn off</source>
            <translation>bis zum Abziehen</translation>
        </message>
        <message>
            <source>{batches} begun</source>
            <translation>{batches} begonnen</translation>
        </message>
        <message>
            <source>{batches} in all: {parts}.</source>
            <translation>{batches} insgesamt: {parts}.</translation>
        </message>
        <message>
            <source>{celsius} as usual there</source>
            <translation>{celsius}, wie dort üblich</translation>
        </message>
        <message>
            <source>{count} batches</source>
            <translation>{count} Ansätze</translation>
        </message>
        <message>
            <source>{count} drawn off</source>
            <translation>{count} abgezogen</translation>
        </message>
        <message>
            <source>{count} losses are written down, with their reasons below.</source>
            <translation>{count} Verluste sind aufgeschrieben, mit ihren Gründen unten.</translation>
        </message>
        <message>
            <source>{count} more not there</source>
            <translation>{count} weitere noch nicht so weit</translation>
        </message>
        <message>
            <source>{count} not drawn off</source>
            <translation>{count} nicht abgezogen</translation>
        </message>
        <message>
            <source>{count} perhaps that sour from the start</source>
            <translation>{count} vielleicht von Anfang an so sauer</translation>
        </message>
        <message>
            <source>{count} still souring</source>
            <translation>{count} säuern noch</translation>
        </message>
        <message>
            <source>{count} thrown away</source>
            <translation>{count} weggeworfen</translation>
        </message>
        <message>
            <source>{count} without readings that tell</source>
            <translation>{count} ohne aussagekräftige Messungen</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} Tage</translation>
        </message>
        <message>
            <source>{days} days, read between day {early} and day {late}</source>
            <translation>{days} Tage, abgelesen zwischen Tag {early} und Tag {late}</translation>
        </message>
        <message>
            <source>{low} and more</source>
            <translation>{low} und mehr</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <translation>{low} bis {high}</translation>
        </message>
        <message>
            <source>{middle} · {batches}</source>
            <translation>{middle} · {batches}</translation>
        </message>
        <message>
            <source>{month}: {parts}</source>
            <translation>{month}: {parts}</translation>
        </message>
        <message>
            <source>{name} took {spread} {what}</source>
            <translation>{name} brauchte {spread} {what}</translation>
        </message>
        <message>
            <source>{name} {spread}</source>
            <translation>{name} {spread}</translation>
        </message>
        <message>
            <source>{name}: no batch tells.</source>
            <translation>{name}: Kein Ansatz sagt etwas aus.</translation>
        </message>
        <message>
            <source>{name}: none of {batches} is there yet.</source>
            <translation>{name}: {batches}, noch keiner so weit.</translation>
        </message>
        <message>
            <source>{name}: {spread}.</source>
            <translation>{name}: {spread}.</translation>
        </message>
        <message>
            <source>{share} %</source>
            <translation>{share} %</translation>
        </message>
        <message>
            <source>{slow} took longer than {fast}, by about {middle} days ({low} to {high}).</source>
            <translation>{slow} brauchte länger als {fast}, um etwa {middle} Tage ({low} bis {high}).</translation>
        </message>
        <message>
            <source>{slow} took longer than {fast}, by {low} days at least.</source>
            <translation>{slow} brauchte länger als {fast}, um mindestens {low} Tage.</translation>
        </message>
        <message>
            <source>{volume} drunk</source>
            <translation>{volume} getrunken</translation>
        </message>
        <message>
            <source>{volume} were drunk or given away.</source>
            <translation>{volume} wurden getrunken oder weggegeben.</translation>
        </message>
    </context>
    <context>
        <name>LookBackFilters</name>
        <message>
            <source>Any culture</source>
            <translation>Alle Kulturen</translation>
        </message>
        <message>
            <source>Any place</source>
            <translation>Alle Orte</translation>
        </message>
        <message>
            <source>Any tea</source>
            <translation>Alle Tees</translation>
        </message>
        <message>
            <source>Any time</source>
            <translation>Gesamte Zeit</translation>
        </message>
        <message>
            <source>By {what}</source>
            <translation>Nach {what}</translation>
        </message>
        <message>
            <source>Clear filters</source>
            <translation>Filter löschen</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Days counted</source>
            <translation>Gezählte Tage</translation>
        </message>
        <message>
            <source>Days {what}</source>
            <translation>Tage {what}</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Von</translation>
        </message>
        <message>
            <source>From … to …</source>
            <translation>Von … bis …</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Side by side by</source>
            <translation>Nebeneinander nach</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>The last 12 months</source>
            <translation>Die letzten 12 Monate</translation>
        </message>
        <message>
            <source>The last 3 months</source>
            <translation>Die letzten 3 Monate</translation>
        </message>
        <message>
            <source>The last 6 months</source>
            <translation>Die letzten 6 Monate</translation>
        </message>
        <message>
            <source>Time of the start</source>
            <translation>Zeit des Beginns</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Bis</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
    </context>
    <context>
        <name>LookBackPage</name>
        <message>
            <source>Clear filters</source>
            <translation>Filter löschen</translation>
        </message>
        <message>
            <source>Days {what}, by {factor}</source>
            <translation>Tage {what}, nach {factor}</translation>
        </message>
        <message>
            <source>Each dot is a batch; an open one is not there, or ended before. The line is the median, the band where the median of many such batches lies (nine times in ten; from five batches on). The diamond is the better guess for the next one: a small group's mean drawn towards that of all. Groups stand in no order of merit.</source>
            <translation>Jeder Punkt ist ein Ansatz; ein offener ist noch nicht so weit oder endete vorher. Der Strich ist der Median, das Band der Bereich, in dem der Median vieler solcher Ansätze liegt (neun von zehn Malen; ab fünf Ansätzen). Die Raute ist die bessere Schätzung für den nächsten: das Mittel einer kleinen Gruppe, zu dem aller hingezogen. Die Reihenfolge der Gruppen ist keine Wertung.</translation>
        </message>
        <message>
            <source>Gushed</source>
            <translation>Übergeschäumt</translation>
        </message>
        <message>
            <source>How bottles opened</source>
            <translation>Wie sich Flaschen öffneten</translation>
        </message>
        <message>
            <source>How it tasted</source>
            <translation>Wie es schmeckte</translation>
        </message>
        <message>
            <source>In short</source>
            <translation>Kurz gesagt</translation>
        </message>
        <message>
            <source>Just right</source>
            <translation>Genau richtig</translation>
        </message>
        <message>
            <source>Looking through your records…</source>
            <translation>Deine Einträge werden durchgesehen…</translation>
        </message>
        <message>
            <source>Losses</source>
            <translation>Verluste</translation>
        </message>
        <message>
            <source>Month by month</source>
            <translation>Monat für Monat</translation>
        </message>
        <message>
            <source>Months</source>
            <translation>Monate</translation>
        </message>
        <message>
            <source>No batch has readings that tell these days.</source>
            <translation>Kein Ansatz hat Messungen, die diese Tage zeigen.</translation>
        </message>
        <message>
            <source>No batch that has soured is like that: {filters}.</source>
            <translation>Kein Ansatz, der gesäuert hat, passt dazu: {filters}.</translation>
        </message>
        <message>
            <source>Nothing to look back at yet.

When your first batch sours and its pH is read a few times, its days appear here. Tastings, opened bottles, months and losses join as you note them. With five batches of a kind the page says how sure it is of their pace, and with five of two kinds whether they differ.</source>
            <translation>Noch kein Rückblick möglich.

Wenn dein erster Ansatz säuert und sein pH ein paarmal gemessen ist, erscheinen hier seine Tage. Verkostungen, geöffnete Flaschen, Monate und Verluste kommen dazu, wenn du sie notierst. Ab fünf Ansätzen einer Art sagt die Seite, wie sicher ihr Tempo ist, und ab fünf von zwei Arten, ob sie sich unterscheiden.</translation>
        </message>
        <message>
            <source>Press a dot, or walk with the arrows, to meet its batch.</source>
            <translation>Drück einen Punkt oder geh mit den Pfeiltasten, um seinen Ansatz zu sehen.</translation>
        </message>
        <message>
            <source>Print or save…</source>
            <translation>Drucken oder speichern…</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Richtig</translation>
        </message>
        <message>
            <source>Tea, culture, place and season change together in a pantry. What stands side by side here shows what was, not what it came from.</source>
            <translation>Tee, Kultur, Ort und Jahreszeit ändern sich in einer Vorratskammer gemeinsam. Was hier nebeneinandersteht, zeigt, was war, nicht, woher es kam.</translation>
        </message>
        <message>
            <source>Too flat</source>
            <translation>Zu schal</translation>
        </message>
        <message>
            <source>Too sour</source>
            <translation>Zu sauer</translation>
        </message>
        <message>
            <source>Too sweet</source>
            <translation>Zu süß</translation>
        </message>
    </context>
    <context>
        <name>LookBackReport</name>
        <message>
            <source>All batches</source>
            <translation>Alle Ansätze</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Cause</source>
            <translation>Ursache</translation>
        </message>
        <message>
            <source>Days {what}, by {factor}</source>
            <translation>Tage {what}, nach {factor}</translation>
        </message>
        <message>
            <source>Drunk</source>
            <translation>Getrunken</translation>
        </message>
        <message>
            <source>Each dot is a batch; a hollow one is not there, or ended before. The line is the median, the band where the median of many such batches lies (nine times in ten; from five batches on). Groups stand in no order of merit. Tea, culture, place and season change together: this shows what was, not what it came from.</source>
            <translation>Jeder Punkt ist ein Ansatz; ein hohler ist noch nicht so weit oder endete vorher. Der Strich ist der Median, das Band der Bereich, in dem der Median vieler solcher Ansätze liegt (neun von zehn Malen; ab fünf Ansätzen). Die Reihenfolge der Gruppen ist keine Wertung. Tee, Kultur, Ort und Jahreszeit ändern sich gemeinsam: Das zeigt, was war, nicht, woher es kam.</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Gruppe</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Gruppen</translation>
        </message>
        <message>
            <source>In your words</source>
            <translation>In deinen Worten</translation>
        </message>
        <message>
            <source>Look back</source>
            <translation>Rückblick</translation>
        </message>
        <message>
            <source>Losses</source>
            <translation>Verluste</translation>
        </message>
        <message>
            <source>Mean warmth</source>
            <translation>Mittlere Wärme</translation>
        </message>
        <message>
            <source>Median days</source>
            <translation>Median der Tage</translation>
        </message>
        <message>
            <source>Median lies</source>
            <translation>Median liegt bei</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Monat</translation>
        </message>
        <message>
            <source>Month by month</source>
            <translation>Monat für Monat</translation>
        </message>
        <message>
            <source>Next one</source>
            <translation>Nächster</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Seite {page} von {pages}</translation>
        </message>
        <message>
            <source>Range</source>
            <translation>Spanne</translation>
        </message>
        <message>
            <source>Right taste</source>
            <translation>Geschmack richtig</translation>
        </message>
        <message>
            <source>Warmth</source>
            <translation>Wärme</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>What usually helps (common practice, no source)</source>
            <translation>Was gewöhnlich hilft (gängige Praxis, ohne Quelle)</translation>
        </message>
        <message>
            <source>brewdesk – what was noted, as far as its numbers carry</source>
            <translation>brewdesk – was notiert wurde, so weit die Anzahl trägt</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>over {low}</source>
            <translation>über {low}</translation>
        </message>
        <message>
            <source>too few</source>
            <translation>zu wenige</translation>
        </message>
        <message>
            <source>{cause}: {help}</source>
            <translation>{cause}: {help}</translation>
        </message>
        <message>
            <source>{right} of {count}</source>
            <translation>{right} von {count}</translation>
        </message>
    </context>
    <context>
        <name>LookBackRows</name>
        <message>
            <source>Batches</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>Drunk, {unit}</source>
            <translation>Getrunken, {unit}</translation>
        </message>
        <message>
            <source>Mean {unit}</source>
            <translation>Mittel {unit}</translation>
        </message>
    </context>
    <context>
        <name>LookChecklist</name>
        <message>
            <source>Belongs to a healthy brew</source>
            <translation>Gehört zu einem gesunden Ansatz</translation>
        </message>
        <message>
            <source>Look in good light, from above and from the side, without stirring. Never taste to find out.</source>
            <translation>Sieh bei gutem Licht nach, von oben und von der Seite, ohne zu rühren. Probiere nie, um es herauszufinden.</translation>
        </message>
        <message>
            <source>Signs of mold: all of it goes</source>
            <translation>Zeichen von Schimmel: alles muss weg</translation>
        </message>
        <message>
            <source>Tick everything you see.</source>
            <translation>Kreuz alles an, was du siehst.</translation>
        </message>
    </context>
    <context>
        <name>LookDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>In your own words</source>
            <translation>In eigenen Worten</translation>
        </message>
        <message>
            <source>In your own words (optional)</source>
            <translation>In eigenen Worten (freiwillig)</translation>
        </message>
        <message>
            <source>Look for mold</source>
            <translation>Nach Schimmel sehen</translation>
        </message>
        <message>
            <source>Record it and discard…</source>
            <translation>Eintragen und wegwerfen…</translation>
        </message>
        <message>
            <source>Record this look</source>
            <translation>Sichtprüfung eintragen</translation>
        </message>
        <message>
            <source>What do you see on {name}?</source>
            <translation>Was siehst du auf {name}?</translation>
        </message>
        <message>
            <source>What you see</source>
            <translation>Was du siehst</translation>
        </message>
    </context>
    <context>
        <name>Looks</name>
        <message>
            <source>A dull patch like flour or felt, where all around it is wet.</source>
            <translation>Ein stumpfer Fleck wie Mehl oder Filz, wo ringsum alles nass ist.</translation>
        </message>
        <message>
            <source>A pale or tan skin, glossy, under or at the surface of the liquid.</source>
            <translation>Eine blasse oder hellbraune Haut, glänzend, unter oder an der Oberfläche der Flüssigkeit.</translation>
        </message>
        <message>
            <source>A young film over an old one, gaps, ridges, a pale new patch: wet all over.</source>
            <translation>Ein junger Film über einem alten, Lücken, Grate, ein blasser neuer Fleck: überall nass.</translation>
        </message>
        <message>
            <source>Brown strings hanging</source>
            <translation>Hängende braune Fäden</translation>
        </message>
        <message>
            <source>Bubbles under it</source>
            <translation>Blasen darunter</translation>
        </message>
        <message>
            <source>Clear or cloudy, with nothing on top: usual in the first days.</source>
            <translation>Klar oder trüb, mit nichts obenauf: in den ersten Tagen üblich.</translation>
        </message>
        <message>
            <source>Coloured, or like white powder</source>
            <translation>Farbig oder wie weißes Pulver</translation>
        </message>
        <message>
            <source>Discard all of it: drink, culture and cloth. Do not scoop it off, do not taste it, and keep no starter from it. Wash and sanitise the vessel.</source>
            <translation>Wirf alles weg: Getränk, Kultur und Tuch. Schöpf es nicht ab, probier es nicht und heb keinen Starter davon auf. Wasch und desinfiziere das Gefäß.</translation>
        </message>
        <message>
            <source>Discarding everything at any mold: Niagara Region (Ontario), kombucha best practices. How a healthy film looks: common practice, no source. Your local rules come first.</source>
            <translation>Alles wegwerfen bei jedem Schimmel: Niagara Region (Ontario), kombucha best practices. Wie ein gesunder Film aussieht: gängige Praxis, ohne Quelle. Deine örtlichen Regeln gehen vor.</translation>
        </message>
        <message>
            <source>Drawing: a dry cushion on top of the wet film.</source>
            <translation>Zeichnung: ein trockenes Polster auf dem nassen Film.</translation>
        </message>
        <message>
            <source>Drawing: a question mark on the film.</source>
            <translation>Zeichnung: ein Fragezeichen auf dem Film.</translation>
        </message>
        <message>
            <source>Drawing: a thin new film above an uneven old one with a hole.</source>
            <translation>Zeichnung: ein dünner neuer Film über einem unebenen alten mit einem Loch.</translation>
        </message>
        <message>
            <source>Drawing: an even, glossy film on the liquid.</source>
            <translation>Zeichnung: ein gleichmäßiger, glänzender Film auf der Flüssigkeit.</translation>
        </message>
        <message>
            <source>Drawing: brown threads hanging from the film into the liquid.</source>
            <translation>Zeichnung: braune Fäden, die vom Film in die Flüssigkeit hängen.</translation>
        </message>
        <message>
            <source>Drawing: bubbles below a film that they lift.</source>
            <translation>Zeichnung: Blasen unter einem Film, den sie anheben.</translation>
        </message>
        <message>
            <source>Drawing: liquid without a film.</source>
            <translation>Zeichnung: Flüssigkeit ohne Film.</translation>
        </message>
        <message>
            <source>Drawing: the film from above with spots in several colours.</source>
            <translation>Zeichnung: der Film von oben mit Flecken in mehreren Farben.</translation>
        </message>
        <message>
            <source>Drawing: tufts of hair standing on the film.</source>
            <translation>Zeichnung: Haarbüschel, die auf dem Film stehen.</translation>
        </message>
        <message>
            <source>Dry, standing above the liquid</source>
            <translation>Trocken, über der Flüssigkeit stehend</translation>
        </message>
        <message>
            <source>Fine hairs or a velvety patch, mostly round, on top of the film.</source>
            <translation>Feine Haare oder ein samtiger Fleck, meist rund, oben auf dem Film.</translation>
        </message>
        <message>
            <source>Fuzzy or hairy</source>
            <translation>Pelzig oder haarig</translation>
        </message>
        <message>
            <source>Gas of the yeast lifts the film or makes domes in it; they are wet.</source>
            <translation>Gas der Hefe hebt den Film oder bildet Kuppeln darin; sie sind nass.</translation>
        </message>
        <message>
            <source>Green, blue, black, pink or orange spots, or a white powder, seen from above.</source>
            <translation>Grüne, blaue, schwarze, rosa oder orange Flecken oder ein weißes Pulver, von oben gesehen.</translation>
        </message>
        <message>
            <source>I am not sure</source>
            <translation>Ich bin nicht sicher</translation>
        </message>
        <message>
            <source>Keep the jar apart, use nothing from it for another, and look again tomorrow; you will be reminded. When in doubt, throw it out.</source>
            <translation>Stell das Glas abseits, nimm nichts daraus für ein anderes und sieh morgen noch einmal nach; du wirst erinnert. Im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Mold was seen on it.</source>
            <translation>Schimmel wurde darauf gesehen.</translation>
        </message>
        <message>
            <source>New layers, holes, uneven thickness</source>
            <translation>Neue Schichten, Löcher, ungleiche Dicke</translation>
        </message>
        <message>
            <source>Not clear yet.</source>
            <translation>Noch nicht klar.</translation>
        </message>
        <message>
            <source>Nothing suspicious seen.</source>
            <translation>Nichts Verdächtiges gesehen.</translation>
        </message>
        <message>
            <source>Only liquid, no film yet</source>
            <translation>Nur Flüssigkeit, noch kein Film</translation>
        </message>
        <message>
            <source>That is no proof: mold can begin out of sight. Go on looking, and when in doubt, throw it out.</source>
            <translation>Das ist kein Beweis: Schimmel kann im Verborgenen beginnen. Sieh weiter nach, und im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>This looks like mold.</source>
            <translation>Das sieht nach Schimmel aus.</translation>
        </message>
        <message>
            <source>Wet and smooth, of the colour of the tea</source>
            <translation>Nass und glatt, in der Farbe des Tees</translation>
        </message>
        <message>
            <source>Yeast: soft brown threads or clouds below the film, always in the liquid.</source>
            <translation>Hefe: weiche braune Fäden oder Wolken unter dem Film, immer in der Flüssigkeit.</translation>
        </message>
        <message>
            <source>You see something that you cannot place. A day tells: mold grows, a film thickens.</source>
            <translation>Du siehst etwas, das du nicht einordnen kannst. Ein Tag zeigt es: Schimmel wächst, ein Film wird dicker.</translation>
        </message>
    </context>
    <context>
        <name>LoseDialog</name>
        <message>
            <source>It had mold, or may have had</source>
            <translation>Sie hatte Schimmel oder vielleicht Schimmel</translation>
        </message>
        <message>
            <source>Mark it as lost</source>
            <translation>Als verloren vermerken</translation>
        </message>
        <message>
            <source>Nothing else is put under suspicion.</source>
            <translation>Sonst kommt nichts unter Verdacht.</translation>
        </message>
        <message>
            <source>Nothing is known to have shared liquid with it since it was clean.</source>
            <translation>Soweit bekannt, hat nichts Flüssigkeit mit ihr geteilt, seit sie sauber war.</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Was geschah</translation>
        </message>
        <message>
            <source>With mold everything goes: pellicle, liquid and cloth. Wash the vessel with hot water and soap. When in doubt, throw it out.</source>
            <translation>Bei Schimmel kommt alles weg: Häutchen, Flüssigkeit und Tuch. Wasch das Gefäß mit heißem Wasser und Spülmittel. Im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>{names} shared liquid with it and come under suspicion. Look at each.</source>
            <translation>{names} haben Flüssigkeit mit ihr geteilt und kommen unter Verdacht. Sieh bei jeder nach.</translation>
        </message>
        <message>
            <source>{names} shared liquid with it and comes under suspicion. Look at it.</source>
            <translation>{names} hat Flüssigkeit mit ihr geteilt und kommt unter Verdacht. Sieh nach.</translation>
        </message>
        <message>
            <source>{name} is lost</source>
            <translation>{name} ist verloren</translation>
        </message>
    </context>
    <context>
        <name>LossList</name>
        <message>
            <source>Common practice, no source. The causes are read from your own words; what they do not name is left as it is.</source>
            <translation>Gängige Praxis, ohne Quelle. Die Ursachen sind aus deinen eigenen Worten gelesen; was sie nicht nennen, bleibt, wie es ist.</translation>
        </message>
        <message>
            <source>No reason was written down.</source>
            <translation>Kein Grund wurde aufgeschrieben.</translation>
        </message>
        <message>
            <source>Open the history: {what}</source>
            <translation>Verlauf öffnen: {what}</translation>
        </message>
        <message>
            <source>Show all {count} losses</source>
            <translation>Alle {count} Verluste zeigen</translation>
        </message>
        <message>
            <source>What usually helps</source>
            <translation>Was gewöhnlich hilft</translation>
        </message>
        <message>
            <source>{cause}: {help}</source>
            <translation>{cause}: {help}</translation>
        </message>
    </context>
    <context>
        <name>Losses</name>
        <message>
            <source>1 bottle</source>
            <translation>1 Flasche</translation>
        </message>
        <message>
            <source>A close-woven cloth under a tight band; paper or cheesecloth lets fruit flies in. With maggots in it, the batch and its culture go.</source>
            <translation>Ein dicht gewebtes Tuch unter straffem Band; Papier oder Käsetuch lässt Fruchtfliegen hinein. Mit Maden darin kommen Ansatz und Kultur weg.</translation>
        </message>
        <message>
            <source>Another reason</source>
            <translation>Ein anderer Grund</translation>
        </message>
        <message>
            <source>Batch {name}</source>
            <translation>Ansatz {name}</translation>
        </message>
        <message>
            <source>Begin to taste earlier, most of all in warm months, or stand the jar cooler. What is too sour to drink still makes strong starter.</source>
            <translation>Probiere früher, vor allem in warmen Monaten, oder stell das Glas kühler. Was zum Trinken zu sauer ist, gibt noch kräftigen Starter.</translation>
        </message>
        <message>
            <source>Bottle with less sugar, use bottles made for pressure, keep a soft test bottle, and chill them by the day the forecast names.</source>
            <translation>Nimm beim Abfüllen weniger Zucker, nimm druckfeste Flaschen, halte eine weiche Testflasche bereit und kühle sie bis zu dem Tag, den die Vorhersage nennt.</translation>
        </message>
        <message>
            <source>Bottles {name}</source>
            <translation>Flaschen {name}</translation>
        </message>
        <message>
            <source>Broken or spilt</source>
            <translation>Zerbrochen oder verschüttet</translation>
        </message>
        <message>
            <source>Culture {name}</source>
            <translation>Kultur {name}</translation>
        </message>
        <message>
            <source>Dried out or forgotten</source>
            <translation>Ausgetrocknet oder vergessen</translation>
        </message>
        <message>
            <source>Flies</source>
            <translation>Fliegen</translation>
        </message>
        <message>
            <source>Look at water and tea first: scented or oily teas and chlorine disturb a culture. When in doubt, throw it out.</source>
            <translation>Prüf zuerst Wasser und Tee: Aromatisierte oder ölige Tees und Chlor stören eine Kultur. Im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Mold</source>
            <translation>Schimmel</translation>
        </message>
        <message>
            <source>Resting cultures want liquid and a little sweet tea now and then; the reminders for feeding and topping up can be set in the settings.</source>
            <translation>Ruhende Kulturen wollen ab und zu Flüssigkeit und etwas gesüßten Tee; die Erinnerungen fürs Füttern und Nachfüllen lassen sich in den Einstellungen festlegen.</translation>
        </message>
        <message>
            <source>Smell or taste</source>
            <translation>Geruch oder Geschmack</translation>
        </message>
        <message>
            <source>Throw all of it away, liquid, culture and cloth, and clean the jar with boiling water. Next time begin sour enough (more or sourer starter), wet the top of the culture with starter, cover the jar at once, and keep it warm enough to sour within days.</source>
            <translation>Wirf alles weg, Flüssigkeit, Kultur und Tuch, und reinige das Glas mit kochendem Wasser. Beginne nächstes Mal sauer genug (mehr oder saurerer Starter), benetze die Kultur oben mit Starter, deck das Glas sofort ab und halte es warm genug, dass es binnen Tagen säuert.</translation>
        </message>
        <message>
            <source>Too much pressure</source>
            <translation>Zu viel Druck</translation>
        </message>
        <message>
            <source>Too sour</source>
            <translation>Zu sauer</translation>
        </message>
        <message>
            <source>Warm glass before hot tea goes in, carry full jars with both hands under them, and stand bottles in a box that would hold the splinters.</source>
            <translation>Wärme Glas an, bevor heißer Tee hineinkommt, trag volle Gläser mit beiden Händen darunter und stell Flaschen in eine Kiste, die Splitter aufhält.</translation>
        </message>
        <message>
            <source>{count} bottles</source>
            <translation>{count} Flaschen</translation>
        </message>
    </context>
    <context>
        <name>LotDialog</name>
        <message>
            <source>&amp;Bought on</source>
            <translation>&amp;Gekauft am</translation>
        </message>
        <message>
            <source>&amp;Price of all of it</source>
            <translation>&amp;Preis für alles</translation>
        </message>
        <message>
            <source>A purchase</source>
            <translation>Ein Einkauf</translation>
        </message>
        <message>
            <source>Best before</source>
            <translation>Mindestens haltbar bis</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Correct a purchase</source>
            <translation>Einkauf korrigieren</translation>
        </message>
        <message>
            <source>From whom</source>
            <translation>Von wem</translation>
        </message>
        <message>
            <source>How &amp;many</source>
            <translation>Wie &amp;viele</translation>
        </message>
        <message>
            <source>How &amp;much</source>
            <translation>Wie &amp;viel</translation>
        </message>
        <message>
            <source>Lot number on the pack</source>
            <translation>Losnummer der Packung</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Save the purchase</source>
            <translation>Einkauf speichern</translation>
        </message>
        <message>
            <source>not known; in {currency}</source>
            <translation>nicht bekannt; in {currency}</translation>
        </message>
    </context>
    <context>
        <name>MainWindow</name>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Wiederholen</translation>
        </message>
        <message>
            <source>&amp;Redo: {act}</source>
            <translation>&amp;Wiederholen: {act}</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Rückgängig</translation>
        </message>
        <message>
            <source>&amp;Undo: {act}</source>
            <translation>&amp;Rückgängig: {act}</translation>
        </message>
        <message>
            <source>Backed up to {path}</source>
            <translation>Gesichert in {path}</translation>
        </message>
        <message>
            <source>Invented pantry – brewdesk</source>
            <translation>Erfundene Vorratskammer – brewdesk</translation>
        </message>
        <message>
            <source>It is off the shelf. Pantry &gt; Retired vessels puts it back.</source>
            <translation>Es steht nicht im Regal. Vorratskammer &gt; Ausgemusterte Gefäße stellt es zurück.</translation>
        </message>
        <message>
            <source>Save what is open as a copy…</source>
            <translation>Das Geöffnete als Kopie speichern…</translation>
        </message>
        <message>
            <source>Something went wrong in the program ({what}). What was saved before is safe; the log file holds the details.</source>
            <translation>Im Programm ging etwas schief ({what}). Was vorher gespeichert wurde, ist sicher; die Protokolldatei enthält Einzelheiten.</translation>
        </message>
        <message>
            <source>The clock is right</source>
            <translation>Die Uhr stimmt</translation>
        </message>
        <message>
            <source>The computer's clock is earlier than your newest record. Reminders wait until it is right again; nothing is lost.</source>
            <translation>Die Uhr des Computers geht hinter deinem neuesten Eintrag. Erinnerungen warten, bis sie wieder stimmt; nichts ist verloren.</translation>
        </message>
    </context>
    <context>
        <name>Measures</name>
        <message>
            <source>Cold water</source>
            <translation>Kaltes Wasser</translation>
        </message>
        <message>
            <source>Hot water</source>
            <translation>Heißes Wasser</translation>
        </message>
        <message>
            <source>In the vessel</source>
            <translation>Im Gefäß</translation>
        </message>
        <message>
            <source>Starter liquid</source>
            <translation>Ansatzflüssigkeit</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Tea leaves</source>
            <translation>Teeblätter</translation>
        </message>
        <message>
            <source>Wet leaves, lifted out</source>
            <translation>Nasse Blätter, herausgenommen</translation>
        </message>
        <message>
            <source>{number} bag</source>
            <translation>{number} Beutel</translation>
        </message>
        <message>
            <source>{number} bags</source>
            <translation>{number} Beutel</translation>
        </message>
        <message>
            <source>{number} cup</source>
            <translation>{number} Tasse</translation>
        </message>
        <message>
            <source>{number} cups</source>
            <translation>{number} Tassen</translation>
        </message>
        <message>
            <source>{number} tablespoon</source>
            <translation>{number} Esslöffel</translation>
        </message>
        <message>
            <source>{number} tablespoons</source>
            <translation>{number} Esslöffel</translation>
        </message>
        <message>
            <source>{number} teaspoon</source>
            <translation>{number} Teelöffel</translation>
        </message>
        <message>
            <source>{number} teaspoons</source>
            <translation>{number} Teelöffel</translation>
        </message>
    </context>
    <context>
        <name>MergeDialog</name>
        <message>
            <source>Merge it with</source>
            <translation>Vereinen mit</translation>
        </message>
        <message>
            <source>Merge them</source>
            <translation>Vereinen</translation>
        </message>
        <message>
            <source>Merge {name} with others</source>
            <translation>{name} mit anderen vereinen</translation>
        </message>
        <message>
            <source>Name of the new culture</source>
            <translation>Name der neuen Kultur</translation>
        </message>
        <message>
            <source>There is no other culture here to merge it with.</source>
            <translation>Hier ist keine andere Kultur zum Vereinen.</translation>
        </message>
        <message>
            <source>They become one new culture and are themselves retired. If one of them carries mold, all of it will: look at each first.</source>
            <translation>Sie werden eine neue Kultur und selbst ausgemustert. Trägt eine davon Schimmel, dann alles: Sieh zuerst bei jeder nach.</translation>
        </message>
        <message>
            <source>Where it rests</source>
            <translation>Wo sie ruht</translation>
        </message>
    </context>
    <context>
        <name>MoveDialog</name>
        <message>
            <source>Move it</source>
            <translation>Umsetzen</translation>
        </message>
        <message>
            <source>Move {name}</source>
            <translation>{name} umsetzen</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Nach</translation>
        </message>
        <message>
            <source>What it rests in goes along. Into a batch it goes by planning one.</source>
            <translation>Worin sie ruht, kommt mit. In einen Ansatz kommt sie, indem du einen planst.</translation>
        </message>
    </context>
    <context>
        <name>MovingStore</name>
        <message>
            <source>Copy a pantry, with its photos, from its file into an empty database on a PostgreSQL server, or back into a new file. Every row is compared afterwards. What was copied stays where it is.</source>
            <translation>Kopiert eine Vorratskammer samt Fotos aus ihrer Datei in eine leere Datenbank auf einem PostgreSQL-Server oder zurück in eine neue Datei. Danach wird jede Zeile verglichen. Was kopiert wurde, bleibt, wo es ist.</translation>
        </message>
        <message>
            <source>Exit codes: 0 all of it arrived, 2 nothing was changed.</source>
            <translation>Rückgabewerte: 0 alles ist angekommen, 2 nichts wurde geändert.</translation>
        </message>
        <message>
            <source>One side has to be a file and the other a server, whose address may stand in {variable}.</source>
            <translation>Eine Seite muss eine Datei sein und die andere ein Server, dessen Adresse in {variable} stehen kann.</translation>
        </message>
        <message>
            <source>Start brewdesk without {variable}. The server's pantry stays as it was, and is now out of date: close the other desks.</source>
            <translation>Starte brewdesk ohne {variable}. Die Vorratskammer des Servers blieb, wie sie war, und ist jetzt veraltet: Schließe die anderen Arbeitsplätze.</translation>
        </message>
        <message>
            <source>Start every desk with {variable} set. The file stays as it was, and is now out of date: put it aside.</source>
            <translation>Starte jeden Arbeitsplatz mit gesetztem {variable}. Die Datei blieb, wie sie war, und ist jetzt veraltet: Leg sie beiseite.</translation>
        </message>
        <message>
            <source>The records arrived, but a photo could not be read or written. Please look whether the disk has room and the photos' folder may be read, remove what was made, and start again.</source>
            <translation>Die Einträge kamen an, aber ein Foto ließ sich nicht lesen oder schreiben. Bitte sieh nach, ob der Datenträger Platz hat und der Fotoordner gelesen werden darf, entferne das Erstellte und fang noch einmal an.</translation>
        </message>
        <message>
            <source>This pantry is open in a window. Please close it first; nothing was changed.</source>
            <translation>Diese Vorratskammer ist in einem Fenster offen. Bitte schließ es zuerst; nichts wurde geändert.</translation>
        </message>
        <message>
            <source>a new file, an address like postgresql+psycopg://name@host/database, or the word “server” for the address in {variable}</source>
            <translation>eine neue Datei, eine Adresse wie postgresql+psycopg://name@host/database oder das Wort „server“ für die Adresse in {variable}</translation>
        </message>
        <message>
            <source>the same, for what is copied; without it your own pantry, or the address in {variable}</source>
            <translation>ebenso, für das zu Kopierende; ohne Angabe deine eigene Vorratskammer oder die Adresse in {variable}</translation>
        </message>
        <message>
            <source>where your own pantry is looked for, and the identity of this desk</source>
            <translation>wo deine eigene Vorratskammer gesucht wird und die Kennung dieses Arbeitsplatzes</translation>
        </message>
        <message>
            <source>{missing} photos were missing before.</source>
            <translation>{missing} Fotos fehlten schon vorher.</translation>
        </message>
        <message>
            <source>{rows} rows and {photos} photos arrived and are the same as before.</source>
            <translation>{rows} Zeilen und {photos} Fotos kamen an und sind dieselben wie zuvor.</translation>
        </message>
    </context>
    <context>
        <name>NoteDialog</name>
        <message>
            <source>Keep the note</source>
            <translation>Notiz behalten</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Note on {name}</source>
            <translation>Notiz zu {name}</translation>
        </message>
    </context>
    <context>
        <name>NoticeBar</name>
        <message>
            <source>Dismiss</source>
            <translation>Ausblenden</translation>
        </message>
        <message>
            <source>Show</source>
            <translation>Zeigen</translation>
        </message>
    </context>
    <context>
        <name>Outlook</name>
        <message>
            <source>1 day</source>
            <translation>1 Tag</translation>
        </message>
        <message>
            <source>A Brix</source>
            <translation>Eine Brix-Messung</translation>
        </message>
        <message>
            <source>A gravity</source>
            <translation>Eine Dichtemessung</translation>
        </message>
        <message>
            <source>A pH</source>
            <translation>Eine pH-Messung</translation>
        </message>
        <message>
            <source>A tasting</source>
            <translation>Eine Verkostung</translation>
        </message>
        <message>
            <source>A temperature</source>
            <translation>Eine Temperaturmessung</translation>
        </message>
        <message>
            <source>A titration</source>
            <translation>Eine Titration</translation>
        </message>
        <message>
            <source>About {days} earlier than forecast.</source>
            <translation>Etwa {days} früher als vorhergesagt.</translation>
        </message>
        <message>
            <source>About {days} later than forecast.</source>
            <translation>Etwa {days} später als vorhergesagt.</translation>
        </message>
        <message>
            <source>As if it had begun so.</source>
            <translation>Als hätte es so begonnen.</translation>
        </message>
        <message>
            <source>Estimate for now: {parts}; only a laboratory can certify.</source>
            <translation>Schätzung für jetzt: {parts}; nur ein Labor kann das bescheinigen.</translation>
        </message>
        <message>
            <source>Hardly different from the forecast.</source>
            <translation>Kaum anders als vorhergesagt.</translation>
        </message>
        <message>
            <source>Since yesterday the window has moved earlier: {new} instead of {old}.</source>
            <translation>Seit gestern ist das Fenster nach vorn gerückt: {new} statt {old}.</translation>
        </message>
        <message>
            <source>Since yesterday the window has moved later: {new} instead of {old}.</source>
            <translation>Seit gestern ist das Fenster nach hinten gerückt: {new} statt {old}.</translation>
        </message>
        <message>
            <source>Since yesterday: no longer expected within {days} days; before, about {day}.</source>
            <translation>Seit gestern: nicht mehr innerhalb von {days} Tagen erwartet; vorher etwa {day}.</translation>
        </message>
        <message>
            <source>Since yesterday: sour enough about {day}; before, not within {days} days.</source>
            <translation>Seit gestern: sauer genug etwa am {day}; vorher nicht innerhalb von {days} Tagen.</translation>
        </message>
        <message>
            <source>Since yesterday: still about {day}, but surer by {days}.</source>
            <translation>Seit gestern: weiterhin etwa {day}, aber um {days} sicherer.</translation>
        </message>
        <message>
            <source>What if (dashed): from about {day} ({low} to {high}) to about {end}.</source>
            <translation>Was wäre, wenn (gestrichelt): von etwa {day} ({low} bis {high}) bis etwa {end}.</translation>
        </message>
        <message>
            <source>What if (dashed): from about {day} ({low} to {high}).</source>
            <translation>Was wäre, wenn (gestrichelt): ab etwa {day} ({low} bis {high}).</translation>
        </message>
        <message>
            <source>What if (dashed): probably not sour enough for you within {days} days.</source>
            <translation>Was wäre, wenn (gestrichelt): für dich wahrscheinlich innerhalb von {days} Tagen nicht sauer genug.</translation>
        </message>
        <message>
            <source>alcohol {mid} % vol (perhaps {high})</source>
            <translation>Alkohol {mid} % vol (vielleicht {high})</translation>
        </message>
        <message>
            <source>alcohol {mid} % vol ({low} to {high})</source>
            <translation>Alkohol {mid} % vol ({low} bis {high})</translation>
        </message>
        <message>
            <source>sugar {amount}</source>
            <translation>Zucker {amount}</translation>
        </message>
        <message>
            <source>{n} days</source>
            <translation>{n} Tage</translation>
        </message>
        <message>
            <source>{what} on {day} would narrow the window by about {days}.</source>
            <translation>{what} am {day} würde das Fenster um etwa {days} verengen.</translation>
        </message>
        <message>
            <source>{what} today would narrow the window by about {days}.</source>
            <translation>{what} heute würde das Fenster um etwa {days} verengen.</translation>
        </message>
    </context>
    <context>
        <name>OwnReminderForm</name>
        <message>
            <source>Add the reminder</source>
            <translation>Erinnerung hinzufügen</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Für</translation>
        </message>
        <message>
            <source>Please choose a time that is still to come.</source>
            <translation>Bitte wähle eine Zeit, die noch kommt.</translation>
        </message>
        <message>
            <source>Remind me to</source>
            <translation>Erinnere mich an</translation>
        </message>
        <message>
            <source>Wash the cloths, buy sugar …</source>
            <translation>Tücher waschen, Zucker kaufen …</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>no jar in particular</source>
            <translation>kein bestimmtes Glas</translation>
        </message>
    </context>
    <context>
        <name>Palate</name>
        <message>
            <source>1 tasting</source>
            <translation>1 Verkostung</translation>
        </message>
        <message>
            <source>Hardly sweet enough below about {driest} of sugar; the sugar is reckoned, so only what is surely below this narrows a window.</source>
            <translation>Kaum noch süß genug unter etwa {driest} Zucker; der Zucker ist errechnet, darum verengt nur, was sicher darunter liegt, ein Fenster.</translation>
        </message>
        <message>
            <source>In force after {count}: pH {first} down to {sour}.</source>
            <translation>Gilt nach {count}: pH {first} hinab bis {sour}.</translation>
        </message>
        <message>
            <source>No sip was too sour so far, so the lower end is a guess.</source>
            <translation>Bisher war kein Schluck zu sauer, darum ist das untere Ende geraten.</translation>
        </message>
        <message>
            <source>No sip was too sweet so far, so the upper end is a guess.</source>
            <translation>Bisher war kein Schluck zu süß, darum ist das obere Ende geraten.</translation>
        </message>
        <message>
            <source>Nothing is learnt yet: the two pH above hold. Enter a tasting with your readings, best with a pH of the same hour.</source>
            <translation>Noch ist nichts gelernt: Die zwei pH oben gelten. Trag mit deinen Messungen eine Verkostung ein, am besten mit einem pH derselben Stunde.</translation>
        </message>
        <message>
            <source>One tasting was read from the words of a note.</source>
            <translation>Eine Verkostung wurde aus den Worten einer Notiz gelesen.</translation>
        </message>
        <message>
            <source>So few move it little.</source>
            <translation>So wenige ändern kaum etwas.</translation>
        </message>
        <message>
            <source>They contradict one another, so the band stays wide.</source>
            <translation>Sie widersprechen einander, darum bleibt das Band breit.</translation>
        </message>
        <message>
            <source>Too sweet from about {sweetest} of sugar, hardly sweet enough below about {driest}; the sugar is reckoned, so only what is surely beyond this narrows a window.</source>
            <translation>Zu süß ab etwa {sweetest} Zucker, kaum noch süß genug unter etwa {driest}; der Zucker ist errechnet, darum verengt nur, was sicher jenseits davon liegt, ein Fenster.</translation>
        </message>
        <message>
            <source>Too sweet from about {sweetest} of sugar; the sugar is reckoned, so only what is surely above this narrows a window.</source>
            <translation>Zu süß ab etwa {sweetest} Zucker; der Zucker ist errechnet, darum verengt nur, was sicher darüber liegt, ein Fenster.</translation>
        </message>
        <message>
            <source>read as: {what}</source>
            <translation>gelesen als: {what}</translation>
        </message>
        <message>
            <source>right</source>
            <translation>richtig</translation>
        </message>
        <message>
            <source>too sour</source>
            <translation>zu sauer</translation>
        </message>
        <message>
            <source>too sweet</source>
            <translation>zu süß</translation>
        </message>
        <message>
            <source>{mid} ({low} to {high})</source>
            <translation>{mid} ({low} bis {high})</translation>
        </message>
        <message>
            <source>{n} tastings</source>
            <translation>{n} Verkostungen</translation>
        </message>
        <message>
            <source>{n} tastings were read from the words of notes.</source>
            <translation>{n} Verkostungen wurden aus den Worten von Notizen gelesen.</translation>
        </message>
    </context>
    <context>
        <name>PaperDialog</name>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>PDF-Dateien (*.pdf)</translation>
        </message>
        <message>
            <source>Paper size</source>
            <translation>Papiergröße</translation>
        </message>
        <message>
            <source>Print…</source>
            <translation>Drucken…</translation>
        </message>
        <message>
            <source>Save as PDF…</source>
            <translation>Als PDF speichern…</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Gespeichert als {file}</translation>
        </message>
        <message>
            <source>The page as it will be printed</source>
            <translation>Die Seite, wie sie gedruckt wird</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>{file} ließ sich nicht schreiben. Wähle einen anderen Ordner.</translation>
        </message>
    </context>
    <context>
        <name>PastDialog</name>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Curve</source>
            <translation>Kurve</translation>
        </message>
        <message>
            <source>It is over; this is what was read until it ended.</source>
            <translation>Er ist vorbei; das wurde gemessen, bis er endete.</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Tagebuch</translation>
        </message>
        <message>
            <source>Neither pH nor acidity was read of this batch.</source>
            <translation>Von diesem Ansatz wurde weder pH noch Säure gemessen.</translation>
        </message>
        <message>
            <source>No batch has ended yet. Once one is drawn off or discarded, it is kept here.</source>
            <translation>Noch ist kein Ansatz zu Ende. Sobald einer abgezogen oder weggeworfen ist, wird er hier aufbewahrt.</translation>
        </message>
        <message>
            <source>Past batches</source>
            <translation>Frühere Ansätze</translation>
        </message>
        <message>
            <source>Past batches, the last one first</source>
            <translation>Frühere Ansätze, der letzte zuerst</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Messungen</translation>
        </message>
        <message>
            <source>Records of this batch</source>
            <translation>Einträge dieses Ansatzes</translation>
        </message>
        <message>
            <source>begun {date}</source>
            <translation>begonnen {date}</translation>
        </message>
        <message>
            <source>{how} {date}</source>
            <translation>{how} {date}</translation>
        </message>
    </context>
    <context>
        <name>PhDialog</name>
        <message>
            <source>Measured with</source>
            <translation>Gemessen mit</translation>
        </message>
        <message>
            <source>Note the pH</source>
            <translation>pH notieren</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>pH of {name}</source>
            <translation>pH von {name}</translation>
        </message>
    </context>
    <context>
        <name>PhScale</name>
        <message>
            <source>No start pH yet</source>
            <translation>Noch kein Start-pH</translation>
        </message>
        <message>
            <source>by day {day}</source>
            <translation>bis Tag {day}</translation>
        </message>
        <message>
            <source>least to drink</source>
            <translation>Minimum zum Trinken</translation>
        </message>
        <message>
            <source>most to start at</source>
            <translation>Maximum zum Start</translation>
        </message>
    </context>
    <context>
        <name>PhotoCopies</name>
        <message>
            <source>Copied.</source>
            <translation>Kopiert.</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Kopie speichern</translation>
        </message>
        <message>
            <source>Saved a copy: {path}</source>
            <translation>Kopie gespeichert: {path}</translation>
        </message>
    </context>
    <context>
        <name>PhotoPane</name>
        <message>
            <source>Loading…</source>
            <translation>Wird geladen…</translation>
        </message>
        <message>
            <source>Newer photo</source>
            <translation>Neueres Foto</translation>
        </message>
        <message>
            <source>Older photo</source>
            <translation>Älteres Foto</translation>
        </message>
        <message>
            <source>Photo, {said}</source>
            <translation>Foto, {said}</translation>
        </message>
        <message>
            <source>{n} of {all}</source>
            <translation>{n} von {all}</translation>
        </message>
    </context>
    <context>
        <name>PhotoStrip</name>
        <message>
            <source>Add photos</source>
            <translation>Fotos hinzufügen</translation>
        </message>
        <message>
            <source>Add photos…</source>
            <translation>Fotos hinzufügen…</translation>
        </message>
        <message>
            <source>Adding…</source>
            <translation>Wird hinzugefügt…</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Caption and date…</source>
            <translation>Bildunterschrift und Datum…</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Kopieren</translation>
        </message>
        <message>
            <source>Let go to add it.</source>
            <translation>Loslassen, um es hinzuzufügen.</translation>
        </message>
        <message>
            <source>More for this photo</source>
            <translation>Mehr für dieses Foto</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Paste a picture</source>
            <translation>Bild einfügen</translation>
        </message>
        <message>
            <source>Photos, the newest first</source>
            <translation>Fotos, die neuesten zuerst</translation>
        </message>
        <message>
            <source>Pictures ({endings})</source>
            <translation>Bilder ({endings})</translation>
        </message>
        <message>
            <source>Save a copy as it is…</source>
            <translation>Unveränderte Kopie speichern…</translation>
        </message>
        <message>
            <source>Save a copy without camera data…</source>
            <translation>Kopie ohne Kameradaten speichern…</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Herausnehmen</translation>
        </message>
        <message>
            <source>Taken out. Undo brings it back.</source>
            <translation>Herausgenommen. Rückgängig bringt es zurück.</translation>
        </message>
        <message>
            <source>There is no picture on the clipboard.</source>
            <translation>In der Zwischenablage ist kein Bild.</translation>
        </message>
    </context>
    <context>
        <name>PhotoViewer</name>
        <message>
            <source>+</source>
            <translation>+</translation>
        </message>
        <message>
            <source>1 day between them</source>
            <translation>1 Tag liegt dazwischen</translation>
        </message>
        <message>
            <source>100 %</source>
            <translation>100 %</translation>
        </message>
        <message>
            <source>Both of the same day</source>
            <translation>Beide vom selben Tag</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Compare two</source>
            <translation>Zwei vergleichen</translation>
        </message>
        <message>
            <source>Fit</source>
            <translation>Einpassen</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Show every pixel</source>
            <translation>Jedes Pixel zeigen</translation>
        </message>
        <message>
            <source>Show one</source>
            <translation>Eins zeigen</translation>
        </message>
        <message>
            <source>Zoom in</source>
            <translation>Vergrößern</translation>
        </message>
        <message>
            <source>Zoom out</source>
            <translation>Verkleinern</translation>
        </message>
        <message>
            <source>{n} days between them</source>
            <translation>{n} Tage liegen dazwischen</translation>
        </message>
        <message>
            <source>{percent} %</source>
            <translation>{percent} %</translation>
        </message>
        <message>
            <source>−</source>
            <translation>−</translation>
        </message>
    </context>
    <context>
        <name>PhotoWordsDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Caption</source>
            <translation>Bildunterschrift</translation>
        </message>
        <message>
            <source>Caption and date</source>
            <translation>Bildunterschrift und Datum</translation>
        </message>
        <message>
            <source>Read from the camera or the file. Put it right if the clock was wrong.</source>
            <translation>Aus der Kamera oder der Datei gelesen. Berichtige es, falls die Uhr falsch ging.</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Aufgenommen</translation>
        </message>
        <message>
            <source>What is to be seen</source>
            <translation>Was zu sehen ist</translation>
        </message>
    </context>
    <context>
        <name>Photos</name>
        <message>
            <source>Cannot be read</source>
            <translation>Nicht lesbar</translation>
        </message>
        <message>
            <source>File damaged</source>
            <translation>Datei beschädigt</translation>
        </message>
        <message>
            <source>File missing</source>
            <translation>Datei fehlt</translation>
        </message>
        <message>
            <source>It has more than {count} million pixels; please make it smaller first.</source>
            <translation>Es hat mehr als {count} Millionen Pixel; bitte verkleinere es zuerst.</translation>
        </message>
        <message>
            <source>It is larger than {size} MB; please make it smaller first.</source>
            <translation>Es ist größer als {size} MB; bitte verkleinere es zuerst.</translation>
        </message>
        <message>
            <source>It is not a picture this program reads (JPEG, PNG, WebP, GIF, BMP or TIFF).</source>
            <translation>Es ist kein Bild, das dieses Programm liest (JPEG, PNG, WebP, GIF, BMP oder TIFF).</translation>
        </message>
        <message>
            <source>No more than {count} are added at once; please add the rest again.</source>
            <translation>Höchstens {count} werden auf einmal hinzugefügt; bitte füg den Rest noch einmal hinzu.</translation>
        </message>
        <message>
            <source>Not added either: {count} more.</source>
            <translation>Ebenfalls nicht hinzugefügt: {count} weitere.</translation>
        </message>
        <message>
            <source>Not added: “{name}”. {why}</source>
            <translation>Nicht hinzugefügt: „{name}“. {why}</translation>
        </message>
        <message>
            <source>One photo added.</source>
            <translation>Ein Foto hinzugefügt.</translation>
        </message>
        <message>
            <source>One was here already.</source>
            <translation>Eins war schon hier.</translation>
        </message>
        <message>
            <source>Photo of {name}, {when}</source>
            <translation>Foto von {name}, {when}</translation>
        </message>
        <message>
            <source>Saved a copy without camera data: {path}</source>
            <translation>Kopie ohne Kameradaten gespeichert: {path}</translation>
        </message>
        <message>
            <source>The copy could not be written there. Please choose another folder.</source>
            <translation>Die Kopie ließ sich dort nicht schreiben. Bitte wähle einen anderen Ordner.</translation>
        </message>
        <message>
            <source>The disk did not answer as it should. Please try again.</source>
            <translation>Der Datenträger hat nicht geantwortet, wie er sollte. Bitte versuch es noch einmal.</translation>
        </message>
        <message>
            <source>The disk is full. Please free some space and try again.</source>
            <translation>Der Datenträger ist voll. Bitte schaffe etwas Platz und versuch es noch einmal.</translation>
        </message>
        <message>
            <source>The file is not there, or not on this computer; please save it first.</source>
            <translation>Die Datei ist nicht da oder nicht auf diesem Computer; bitte speichere sie zuerst.</translation>
        </message>
        <message>
            <source>The file may not be read; please check its rights.</source>
            <translation>Die Datei darf nicht gelesen werden; bitte prüfe ihre Rechte.</translation>
        </message>
        <message>
            <source>The folder of the photos may not be written to. Please check its rights.</source>
            <translation>In den Fotoordner darf nicht geschrieben werden. Bitte prüfe seine Rechte.</translation>
        </message>
        <message>
            <source>The photo's file cannot be read. Please check the rights of the folder beside the pantry file.</source>
            <translation>Die Fotodatei lässt sich nicht lesen. Bitte prüfe die Rechte des Ordners neben der Vorratskammer-Datei.</translation>
        </message>
        <message>
            <source>The photo's file is no longer in its place beside the pantry file.</source>
            <translation>Die Fotodatei ist nicht mehr an ihrem Platz neben der Vorratskammer-Datei.</translation>
        </message>
        <message>
            <source>The photo's file is no longer in its place beside the pantry file. If you have the picture elsewhere, add it again: it finds its place by itself.</source>
            <translation>Die Fotodatei ist nicht mehr an ihrem Platz neben der Vorratskammer-Datei. Hast du das Bild anderswo, füg es noch einmal hinzu: Es findet seinen Platz von selbst.</translation>
        </message>
        <message>
            <source>The photo's file is no longer what was kept: it was changed or damaged.</source>
            <translation>Die Fotodatei ist nicht mehr das, was aufbewahrt wurde: Sie wurde geändert oder beschädigt.</translation>
        </message>
        <message>
            <source>The photo's file is no longer what was kept: it was changed or damaged. If you have the picture elsewhere, add it again: it finds its place by itself.</source>
            <translation>Die Fotodatei ist nicht mehr das, was aufbewahrt wurde: Sie wurde geändert oder beschädigt. Hast du das Bild anderswo, füg es noch einmal hinzu: Es findet seinen Platz von selbst.</translation>
        </message>
        <message>
            <source>The picture breaks off or cannot be read; please copy it anew.</source>
            <translation>Das Bild bricht ab oder lässt sich nicht lesen; bitte kopiere es neu.</translation>
        </message>
        <message>
            <source>This file says where it was taken. It stays in the file if you give it away.</source>
            <translation>In dieser Datei steht, wo sie aufgenommen wurde. Das bleibt in der Datei, wenn du sie weitergibst.</translation>
        </message>
        <message>
            <source>a picture</source>
            <translation>ein Bild</translation>
        </message>
        <message>
            <source>{count} photos added.</source>
            <translation>{count} Fotos hinzugefügt.</translation>
        </message>
        <message>
            <source>{count} were here already.</source>
            <translation>{count} waren schon hier.</translation>
        </message>
    </context>
    <context>
        <name>PlaceButton</name>
        <message>
            <source>Change the places and how warm they are</source>
            <translation>Orte ändern und wie warm sie sind</translation>
        </message>
        <message>
            <source>Places: {places}</source>
            <translation>Orte: {places}</translation>
        </message>
    </context>
    <context>
        <name>PlaceChart</name>
        <message>
            <source>All</source>
            <translation>Alles</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Tag</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Monat</translation>
        </message>
        <message>
            <source>Nothing was read or logged in this time. Enter a temperature below, or read a logger's file.</source>
            <translation>In dieser Zeit wurde nichts gemessen oder protokolliert. Trag unten eine Temperatur ein oder lies eine Logger-Datei ein.</translation>
        </message>
        <message>
            <source>Show</source>
            <translation>Zeigen</translation>
        </message>
        <message>
            <source>Show all</source>
            <translation>Alles zeigen</translation>
        </message>
        <message>
            <source>Temperature in {unit}</source>
            <translation>Temperatur in {unit}</translation>
        </message>
        <message>
            <source>Temperature of the place over time</source>
            <translation>Temperatur des Ortes im Lauf der Zeit</translation>
        </message>
        <message>
            <source>The course in words</source>
            <translation>Der Verlauf in Worten</translation>
        </message>
        <message>
            <source>The same is said in words below.</source>
            <translation>Dasselbe steht unten in Worten.</translation>
        </message>
        <message>
            <source>Week</source>
            <translation>Woche</translation>
        </message>
        <message>
            <source>a souring jar likes {low} to {high} {unit}</source>
            <translation>ein säuerndes Glas mag {low} bis {high} {unit}</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d. MMM</translation>
        </message>
        <message>
            <source>ddd</source>
            <translation>ddd</translation>
        </message>
        <message>
            <source>liked by a souring jar</source>
            <translation>mag ein säuerndes Glas</translation>
        </message>
        <message>
            <source>lowest to highest</source>
            <translation>tiefste bis höchste</translation>
        </message>
        <message>
            <source>mean of an hour</source>
            <translation>Mittel einer Stunde</translation>
        </message>
        <message>
            <source>mean of {count} hours</source>
            <translation>Mittel von {count} Stunden</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>read by you</source>
            <translation>von dir gemessen</translation>
        </message>
        <message>
            <source>set as usual</source>
            <translation>als üblich eingestellt</translation>
        </message>
        <message>
            <source>yyyy</source>
            <translation>yyyy</translation>
        </message>
        <message>
            <source>{when} · {mean} {unit} ({low} to {high})</source>
            <translation>{when} · {mean} {unit} ({low} bis {high})</translation>
        </message>
        <message>
            <source>{when} · {value} {unit}, read by you</source>
            <translation>{when} · {value} {unit}, von dir gemessen</translation>
        </message>
    </context>
    <context>
        <name>PlaceDialog</name>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>&amp;Usual temperature</source>
            <translation>&amp;Übliche Temperatur</translation>
        </message>
        <message>
            <source>Add a place</source>
            <translation>Ort hinzufügen</translation>
        </message>
        <message>
            <source>Batches planned for this place take its usual temperature. What is read or logged here, and what you read on a batch, counts more.</source>
            <translation>Für diesen Ort geplante Ansätze nehmen seine übliche Temperatur. Was hier gemessen oder protokolliert wird und was du am Ansatz misst, zählt mehr.</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Edit place</source>
            <translation>Ort bearbeiten</translation>
        </message>
        <message>
            <source>Please give it a name.</source>
            <translation>Bitte gib einen Namen an.</translation>
        </message>
        <message>
            <source>Save place</source>
            <translation>Ort speichern</translation>
        </message>
    </context>
    <context>
        <name>PlaceEntries</name>
        <message>
            <source>Take it out</source>
            <translation>Herausnehmen</translation>
        </message>
        <message>
            <source>Temperature or file</source>
            <translation>Temperatur oder Datei</translation>
        </message>
        <message>
            <source>Temperatures and files of this place</source>
            <translation>Temperaturen und Dateien dieses Ortes</translation>
        </message>
        <message>
            <source>What was read and logged</source>
            <translation>Was gemessen und protokolliert wurde</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
    </context>
    <context>
        <name>PlaceReadingForm</name>
        <message>
            <source>&amp;Read at</source>
            <translation>&amp;Gemessen um</translation>
        </message>
        <message>
            <source>&amp;Temperature now</source>
            <translation>&amp;Temperatur jetzt</translation>
        </message>
        <message>
            <source>Enter it</source>
            <translation>Eintragen</translation>
        </message>
        <message>
            <source>Entered.</source>
            <translation>Eingetragen.</translation>
        </message>
        <message>
            <source>Please type a temperature.</source>
            <translation>Bitte gib eine Temperatur ein.</translation>
        </message>
    </context>
    <context>
        <name>PlaceSheet</name>
        <message>
            <source>Edit {name}</source>
            <translation>{name} bearbeiten</translation>
        </message>
        <message>
            <source>Edit…</source>
            <translation>Bearbeiten…</translation>
        </message>
        <message>
            <source>Read a logger's file…</source>
            <translation>Logger-Datei einlesen…</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Entfernen</translation>
        </message>
        <message>
            <source>Remove {name}</source>
            <translation>{name} entfernen</translation>
        </message>
        <message>
            <source>Take it over</source>
            <translation>Übernehmen</translation>
        </message>
    </context>
    <context>
        <name>Places</name>
        <message>
            <source>By common practice a souring jar likes {low} to {high}.</source>
            <translation>Nach gängiger Praxis mag ein säuerndes Glas {low} bis {high}.</translation>
        </message>
        <message>
            <source>By the log of the last 30 days it was {mean} on average (days with a temperature: {days}). Set as usual is {usual}.</source>
            <translation>Laut Protokoll der letzten 30 Tage waren es im Mittel {mean} (Tage mit Temperatur: {days}). Als üblich eingestellt sind {usual}.</translation>
        </message>
        <message>
            <source>From {first} to {last} it was {low} to {high}, on average {mean}.</source>
            <translation>Vom {first} bis {last} waren es {low} bis {high}, im Mittel {mean}.</translation>
        </message>
        <message>
            <source>Here stand: {names}.</source>
            <translation>Hier stehen: {names}.</translation>
        </message>
        <message>
            <source>No vessel stands here.</source>
            <translation>Hier steht kein Gefäß.</translation>
        </message>
        <message>
            <source>Nothing was read or logged in this time.</source>
            <translation>In dieser Zeit wurde nichts gemessen oder protokolliert.</translation>
        </message>
        <message>
            <source>Usually {temperature}.</source>
            <translation>Üblich {temperature}.</translation>
        </message>
        <message>
            <source>usually {temperature}</source>
            <translation>üblich {temperature}</translation>
        </message>
        <message>
            <source>{temperature} · 1 vessel</source>
            <translation>{temperature} · 1 Gefäß</translation>
        </message>
        <message>
            <source>{temperature} · no vessel</source>
            <translation>{temperature} · kein Gefäß</translation>
        </message>
        <message>
            <source>{temperature} · {count} vessels</source>
            <translation>{temperature} · {count} Gefäße</translation>
        </message>
        <message>
            <source>{usual} Last logged {temperature}, {when}.</source>
            <translation>{usual} Zuletzt protokolliert {temperature}, {when}.</translation>
        </message>
        <message>
            <source>{usual} Last read {temperature}, {when}.</source>
            <translation>{usual} Zuletzt gemessen {temperature}, {when}.</translation>
        </message>
    </context>
    <context>
        <name>PlacesDialog</name>
        <message>
            <source>Add a place…</source>
            <translation>Ort hinzufügen…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>No place yet. Add the pantry, kitchen or cellar where your vessels stand: how warm it is there decides how fast a batch sours.</source>
            <translation>Noch kein Ort. Füg Vorratskammer, Küche oder Keller hinzu, wo deine Gefäße stehen: Wie warm es dort ist, bestimmt, wie schnell ein Ansatz säuert.</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>Orte</translation>
        </message>
        <message>
            <source>Where your vessels stand</source>
            <translation>Wo deine Gefäße stehen</translation>
        </message>
    </context>
    <context>
        <name>PlanFacts</name>
        <message>
            <source>Cold water</source>
            <translation>Kaltes Wasser</translation>
        </message>
        <message>
            <source>Fill</source>
            <translation>Füllmenge</translation>
        </message>
        <message>
            <source>Filled in use</source>
            <translation>Üblich gefüllt</translation>
        </message>
        <message>
            <source>Hot water</source>
            <translation>Heißes Wasser</translation>
        </message>
        <message>
            <source>Inner diameter</source>
            <translation>Innendurchmesser</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Note at the end</source>
            <translation>Notiz am Ende</translation>
        </message>
        <message>
            <source>Start pH</source>
            <translation>Start-pH</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Starter</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>To the brim</source>
            <translation>Bis zum Rand</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>Where it stands</source>
            <translation>Wo es steht</translation>
        </message>
        <message>
            <source>about {ph}, likely {low} to {high}</source>
            <translation>etwa {ph}, wohl {low} bis {high}</translation>
        </message>
        <message>
            <source>{mass} ({strength} of sweet tea)</source>
            <translation>{mass} ({strength} gesüßter Tee)</translation>
        </message>
        <message>
            <source>{mass} of {kind} (about {bags} bags of {bag})</source>
            <translation>{mass} {kind} (etwa {bags} Beutel zu {bag})</translation>
        </message>
        <message>
            <source>{shape}, {material}</source>
            <translation>{shape}, {material}</translation>
        </message>
    </context>
    <context>
        <name>PlanForm</name>
        <message>
            <source>&amp;Fill</source>
            <translation>&amp;Füllmenge</translation>
        </message>
        <message>
            <source>&amp;Name of the batch</source>
            <translation>&amp;Name des Ansatzes</translation>
        </message>
        <message>
            <source>&amp;Sugar in the sweet tea</source>
            <translation>&amp;Zucker im gesüßten Tee</translation>
        </message>
        <message>
            <source>&amp;Tea</source>
            <translation>&amp;Tee</translation>
        </message>
        <message>
            <source>&amp;Vessel</source>
            <translation>G&amp;efäß</translation>
        </message>
        <message>
            <source>Amount of starter</source>
            <translation>Startermenge</translation>
        </message>
        <message>
            <source>Cold water at</source>
            <translation>Kaltes Wasser mit</translation>
        </message>
        <message>
            <source>Culture and starter liquid</source>
            <translation>Kultur und Ansatzflüssigkeit</translation>
        </message>
        <message>
            <source>Exact: water, temperatures, own amounts</source>
            <translation>Genau: Wasser, Temperaturen, eigene Mengen</translation>
        </message>
        <message>
            <source>Give the batch a name.</source>
            <translation>Gib dem Ansatz einen Namen.</translation>
        </message>
        <message>
            <source>Hot water at</source>
            <translation>Heißes Wasser mit</translation>
        </message>
        <message>
            <source>Its acidity, if you know</source>
            <translation>Seine Säure, falls bekannt</translation>
        </message>
        <message>
            <source>Its pH, if you know</source>
            <translation>Sein pH, falls bekannt</translation>
        </message>
        <message>
            <source>Not tasted</source>
            <translation>Nicht probiert</translation>
        </message>
        <message>
            <source>Starter tastes</source>
            <translation>Starter schmeckt</translation>
        </message>
        <message>
            <source>Tea in one bag</source>
            <translation>Tee in einem Beutel</translation>
        </message>
        <message>
            <source>Tea st&amp;rength</source>
            <translation>&amp;Stärke des Tees</translation>
        </message>
        <message>
            <source>Temperature of the place</source>
            <translation>Temperatur des Ortes</translation>
        </message>
        <message>
            <source>Warmest for the culture</source>
            <translation>Höchstens für die Kultur</translation>
        </message>
        <message>
            <source>Water alkalinity</source>
            <translation>Wasser-Alkalinität</translation>
        </message>
        <message>
            <source>as reckoned</source>
            <translation>wie errechnet</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>p&amp;H to start at</source>
            <translation>Gewünschter Start-&amp;pH</translation>
        </message>
        <message>
            <source>{name} – {volume}</source>
            <translation>{name} – {volume}</translation>
        </message>
    </context>
    <context>
        <name>PlanPage</name>
        <message>
            <source>A batch needs something to stand in. A name and a volume are enough; everything else is filled in for you and can be changed.</source>
            <translation>Ein Ansatz braucht etwas, worin er steht. Ein Name und ein Volumen genügen; alles andere wird für dich ausgefüllt und lässt sich ändern.</translation>
        </message>
        <message>
            <source>Add a vessel…</source>
            <translation>Gefäß hinzufügen…</translation>
        </message>
        <message>
            <source>An empty jar</source>
            <translation>Ein leeres Glas</translation>
        </message>
        <message>
            <source>As soon as there is a vessel, what to weigh out stands here: water, tea, sugar and starter, to the gram.</source>
            <translation>Sobald es ein Gefäß gibt, steht hier, was abzuwiegen ist: Wasser, Tee, Zucker und Starter, aufs Gramm.</translation>
        </message>
        <message>
            <source>Change the plan of {name}</source>
            <translation>Plan von {name} ändern</translation>
        </message>
        <message>
            <source>Every vessel is in use. Add one, or end a batch first.</source>
            <translation>Jedes Gefäß ist in Gebrauch. Füg eins hinzu oder beende zuerst einen Ansatz.</translation>
        </message>
        <message>
            <source>First, a vessel</source>
            <translation>Zuerst ein Gefäß</translation>
        </message>
        <message>
            <source>Leave the plan as it was</source>
            <translation>Plan lassen, wie er war</translation>
        </message>
        <message>
            <source>Not up to date: see the marked field.</source>
            <translation>Nicht aktuell: siehe das markierte Feld.</translation>
        </message>
        <message>
            <source>Plan a batch</source>
            <translation>Ansatz planen</translation>
        </message>
        <message>
            <source>Plan and start brewing</source>
            <translation>Planen und aufbrühen</translation>
        </message>
        <message>
            <source>Plan it</source>
            <translation>Planen</translation>
        </message>
        <message>
            <source>Print run sheet…</source>
            <translation>Laufzettel drucken…</translation>
        </message>
        <message>
            <source>Save and start brewing</source>
            <translation>Speichern und aufbrühen</translation>
        </message>
        <message>
            <source>Save the plan</source>
            <translation>Plan speichern</translation>
        </message>
        <message>
            <source>Waiting for the marked field.</source>
            <translation>Wartet auf das markierte Feld.</translation>
        </message>
    </context>
    <context>
        <name>PlanStores</name>
        <message>
            <source>Not from the stores</source>
            <translation>Nicht aus den Vorräten</translation>
        </message>
        <message>
            <source>Sugar from</source>
            <translation>Zucker aus</translation>
        </message>
        <message>
            <source>Tea from</source>
            <translation>Tee aus</translation>
        </message>
    </context>
    <context>
        <name>PowerDialog</name>
        <message>
            <source>Compared by</source>
            <translation>Verglichen nach</translation>
        </message>
        <message>
            <source>Difference that matters to you</source>
            <translation>Unterschied, der dir wichtig ist</translation>
        </message>
        <message>
            <source>Difference that matters to you, {unit}</source>
            <translation>Unterschied, der dir wichtig ist, {unit}</translation>
        </message>
        <message>
            <source>From 2 to 1000 jars of each.</source>
            <translation>Von 2 bis 1000 Gläser je Stufe.</translation>
        </message>
        <message>
            <source>How far like jars lie apart</source>
            <translation>Wie weit gleiche Gläser auseinanderliegen</translation>
        </message>
        <message>
            <source>How far like jars lie apart, {unit}</source>
            <translation>Wie weit gleiche Gläser auseinanderliegen, {unit}</translation>
        </message>
        <message>
            <source>How many jars does it take to be sure?</source>
            <translation>Wie viele Gläser braucht es, um sicher zu sein?</translation>
        </message>
        <message>
            <source>How many jars?</source>
            <translation>Wie viele Gläser?</translation>
        </message>
        <message>
            <source>Jars of each at hand</source>
            <translation>Vorhandene Gläser je Stufe</translation>
        </message>
        <message>
            <source>Please type a number.</source>
            <translation>Bitte gib eine Zahl ein.</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
        <message>
            <source>mm</source>
            <translation>mm</translation>
        </message>
        <message>
            <source>points</source>
            <translation>Punkte</translation>
        </message>
    </context>
    <context>
        <name>PreviewTable</name>
        <message>
            <source>Column {number}</source>
            <translation>Spalte {number}</translation>
        </message>
        <message>
            <source>ddd d MMM yyyy</source>
            <translation>ddd d. MMM yyyy</translation>
        </message>
        <message>
            <source>{date}, {time}</source>
            <translation>{date}, {time}</translation>
        </message>
    </context>
    <context>
        <name>PrintLabels</name>
        <message>
            <source>Test page</source>
            <translation>Testseite</translation>
        </message>
    </context>
    <context>
        <name>Problems</name>
        <message>
            <source>A culture cannot be older than its parent.</source>
            <translation>Eine Kultur kann nicht älter sein als ihre Mutterkultur.</translation>
        </message>
        <message>
            <source>A shared pantry needs the part of the program that speaks with servers, and it is not installed. Please install “brewdesk[desks]” and start again.</source>
            <translation>Eine geteilte Vorratskammer braucht den Teil des Programms, der mit Servern spricht, und der ist nicht installiert. Bitte installiere „brewdesk[desks]“ und starte neu.</translation>
        </message>
        <message>
            <source>A vessel of this volume cannot have this diameter. Please check both, and their units.</source>
            <translation>Ein Gefäß mit diesem Volumen kann diesen Durchmesser nicht haben. Bitte prüfe beide und ihre Einheiten.</translation>
        </message>
        <message>
            <source>Another culture rests in this vessel. Move it first, or choose another vessel.</source>
            <translation>Eine andere Kultur ruht in diesem Gefäß. Setz sie zuerst um oder wähle ein anderes Gefäß.</translation>
        </message>
        <message>
            <source>Another desk changed {thing} a moment ago, so nothing was saved. Please look at what it is now, and try again.</source>
            <translation>Ein anderer Arbeitsplatz hat {thing} gerade geändert, darum wurde nichts gespeichert. Bitte sieh nach, wie es jetzt ist, und versuch es noch einmal.</translation>
        </message>
        <message>
            <source>Another one has this name already. Please choose another name.</source>
            <translation>Ein anderer Eintrag hat schon diesen Namen. Bitte wähle einen anderen Namen.</translation>
        </message>
        <message>
            <source>Another program is using the pantry file, so nothing was saved. Please close it and try again.</source>
            <translation>Ein anderes Programm nutzt die Vorratskammer-Datei, darum wurde nichts gespeichert. Bitte schließ es und versuch es noch einmal.</translation>
        </message>
        <message>
            <source>Brewing has begun, so the plan stands.</source>
            <translation>Das Aufbrühen hat begonnen, darum steht der Plan fest.</translation>
        </message>
        <message>
            <source>Choose at least one other culture to merge with.</source>
            <translation>Wähle mindestens eine andere Kultur zum Vereinen.</translation>
        </message>
        <message>
            <source>It is not at rest now.</source>
            <translation>Sie ruht gerade nicht.</translation>
        </message>
        <message>
            <source>It is not under suspicion.</source>
            <translation>Kein Verdacht liegt vor.</translation>
        </message>
        <message>
            <source>It is planned for {value}. Change or drop that plan first.</source>
            <translation>Sie ist für {value} geplant. Ändere oder verwirf zuerst jenen Plan.</translation>
        </message>
        <message>
            <source>It is still forming. Wait until it has grown.</source>
            <translation>Sie bildet sich noch. Warte, bis sie gewachsen ist.</translation>
        </message>
        <message>
            <source>It is there already.</source>
            <translation>Schon dort.</translation>
        </message>
        <message>
            <source>It may carry mold. Look at it closely and clear it first, with your reason; when in doubt, throw it out.</source>
            <translation>Es kann Schimmel tragen. Sieh zuerst genau hin und gib es mit deinem Grund frei; im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Neither starter nor culture is in yet. Tick that step off first, then cover the vessel.</source>
            <translation>Weder Starter noch Kultur ist drin. Hak zuerst jenen Schritt ab, dann deck das Gefäß ab.</translation>
        </message>
        <message>
            <source>No backup could be made, so nothing was changed.</source>
            <translation>Es ließ sich keine Sicherung anlegen, darum wurde nichts geändert.</translation>
        </message>
        <message>
            <source>No culture is growing in this batch.</source>
            <translation>In diesem Ansatz wächst keine Kultur.</translation>
        </message>
        <message>
            <source>Nothing can be read out of the damaged file any more. It was left as it is.</source>
            <translation>Aus der beschädigten Datei lässt sich nichts mehr lesen. Sie blieb, wie sie ist.</translation>
        </message>
        <message>
            <source>Only a batch that is souring can be drawn off.</source>
            <translation>Nur ein säuernder Ansatz kann abgezogen werden.</translation>
        </message>
        <message>
            <source>Only a batch that was drawn off can be closed.</source>
            <translation>Nur ein abgezogener Ansatz kann abgeschlossen werden.</translation>
        </message>
        <message>
            <source>Please choose a time that is still to come.</source>
            <translation>Bitte wähle eine Zeit, die noch kommt.</translation>
        </message>
        <message>
            <source>Please choose one of those offered.</source>
            <translation>Bitte wähle etwas aus dem Angebot.</translation>
        </message>
        <message>
            <source>Please enter at least one reading.</source>
            <translation>Bitte gib mindestens eine Messung ein.</translation>
        </message>
        <message>
            <source>Please fill this in.</source>
            <translation>Bitte fülle das aus.</translation>
        </message>
        <message>
            <source>Please give it a name.</source>
            <translation>Bitte gib einen Namen an.</translation>
        </message>
        <message>
            <source>Please keep it shorter.</source>
            <translation>Bitte fasse es kürzer.</translation>
        </message>
        <message>
            <source>Please type an amount.</source>
            <translation>Bitte gib eine Menge ein.</translation>
        </message>
        <message>
            <source>Please write down why.</source>
            <translation>Bitte schreib auf, warum.</translation>
        </message>
        <message>
            <source>Please write something.</source>
            <translation>Bitte schreib etwas.</translation>
        </message>
        <message>
            <source>Readings of several batches are kept one by one.</source>
            <translation>Messungen mehrerer Ansätze werden einzeln aufbewahrt.</translation>
        </message>
        <message>
            <source>Retired vessels belong here. Put them back on the shelf and give them another place first, then remove it.</source>
            <translation>Ausgemusterte Gefäße gehören hierher. Stell sie zuerst zurück ins Regal und gib ihnen einen anderen Ort, dann entferne ihn.</translation>
        </message>
        <message>
            <source>That does not fit: the vessel holds {high} to the brim.</source>
            <translation>Das passt nicht: Das Gefäß fasst {high} bis zum Rand.</translation>
        </message>
        <message>
            <source>The Brix reading</source>
            <translation>Die Brix-Messung</translation>
        </message>
        <message>
            <source>The address of the shared pantry cannot be read. It begins with “postgresql+psycopg://” and names a database. Please put it right and start again.</source>
            <translation>Die Adresse der geteilten Vorratskammer lässt sich nicht lesen. Sie beginnt mit „postgresql+psycopg://“ und nennt eine Datenbank. Bitte berichtige sie und starte neu.</translation>
        </message>
        <message>
            <source>The alkalinity of the water</source>
            <translation>Die Alkalinität des Wassers</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>Die Menge</translation>
        </message>
        <message>
            <source>The amount it rests in</source>
            <translation>Die Menge, in der sie ruht</translation>
        </message>
        <message>
            <source>The amount kept back</source>
            <translation>Die zurückbehaltene Menge</translation>
        </message>
        <message>
            <source>The amount of starter</source>
            <translation>Die Startermenge</translation>
        </message>
        <message>
            <source>The amount to make</source>
            <translation>Die herzustellende Menge</translation>
        </message>
        <message>
            <source>The database of the shared pantry does not keep text as UTF-8, so it would lose letters. Nothing was changed. Please make a database with that encoding.</source>
            <translation>Die Datenbank der geteilten Vorratskammer bewahrt Text nicht als UTF-8 auf und würde Zeichen verlieren. Nichts wurde geändert. Bitte leg eine Datenbank mit dieser Kodierung an.</translation>
        </message>
        <message>
            <source>The desk “{desk}” changed {thing} a moment ago, so nothing was saved. Please look at what it is now, and try again.</source>
            <translation>Der Arbeitsplatz „{desk}“ hat {thing} gerade geändert, darum wurde nichts gespeichert. Bitte sieh nach, wie es jetzt ist, und versuch es noch einmal.</translation>
        </message>
        <message>
            <source>The disk did not answer as it should, so nothing was saved. Please make sure that it is still connected, and try again.</source>
            <translation>Der Datenträger hat nicht geantwortet, wie er sollte, darum wurde nichts gespeichert. Bitte prüfe, ob er noch verbunden ist, und versuch es noch einmal.</translation>
        </message>
        <message>
            <source>The disk is full, so nothing was saved. Please free some space and try again.</source>
            <translation>Der Datenträger ist voll, darum wurde nichts gespeichert. Bitte schaffe etwas Platz und versuch es noch einmal.</translation>
        </message>
        <message>
            <source>The extra time</source>
            <translation>Die zusätzliche Zeit</translation>
        </message>
        <message>
            <source>The inner diameter</source>
            <translation>Der Innendurchmesser</translation>
        </message>
        <message>
            <source>The pH</source>
            <translation>Der pH</translation>
        </message>
        <message>
            <source>The pH at which you first taste</source>
            <translation>Der pH, bei dem du zuerst probierst</translation>
        </message>
        <message>
            <source>The pH for first tasting must be above the pH that is too sour for you.</source>
            <translation>Der pH fürs erste Probieren muss über dem pH liegen, der dir zu sauer ist.</translation>
        </message>
        <message>
            <source>The pH of the starter</source>
            <translation>Der pH des Starters</translation>
        </message>
        <message>
            <source>The pH that is too sour for you</source>
            <translation>Der pH, der dir zu sauer ist</translation>
        </message>
        <message>
            <source>The pH to start at</source>
            <translation>Der pH zum Start</translation>
        </message>
        <message>
            <source>The pantry could not be brought up to this version of the program. It was left as it was; a backup lies beside it.</source>
            <translation>Die Vorratskammer ließ sich nicht auf diese Programmversion bringen. Sie blieb, wie sie war; eine Sicherung liegt daneben.</translation>
        </message>
        <message>
            <source>The pantry file cannot be opened. Please check that it is in its place.</source>
            <translation>Die Vorratskammer-Datei lässt sich nicht öffnen. Bitte prüfe, ob sie an ihrem Platz ist.</translation>
        </message>
        <message>
            <source>The pantry file could not be used, so nothing was saved. Please try again.</source>
            <translation>Die Vorratskammer-Datei ließ sich nicht benutzen, darum wurde nichts gespeichert. Bitte versuch es noch einmal.</translation>
        </message>
        <message>
            <source>The pantry file is damaged and was left as it is. Your jars are not affected; please open the latest backup.</source>
            <translation>Die Vorratskammer-Datei ist beschädigt und blieb, wie sie ist. Deine Gläser sind nicht betroffen; bitte öffne die letzte Sicherung.</translation>
        </message>
        <message>
            <source>The pantry file is empty, as after a copy that broke off. Please open the latest backup.</source>
            <translation>Die Vorratskammer-Datei ist leer, wie nach einer abgebrochenen Kopie. Bitte öffne die letzte Sicherung.</translation>
        </message>
        <message>
            <source>The pantry file is no longer in its place, so nothing was saved. Please put it back, or open the latest backup.</source>
            <translation>Die Vorratskammer-Datei ist nicht mehr an ihrem Platz, darum wurde nichts gespeichert. Bitte leg sie zurück oder öffne die letzte Sicherung.</translation>
        </message>
        <message>
            <source>The pantry file may not be written to, so nothing was saved. Please check the rights of its folder.</source>
            <translation>In die Vorratskammer-Datei darf nicht geschrieben werden, darum wurde nichts gespeichert. Bitte prüfe die Rechte ihres Ordners.</translation>
        </message>
        <message>
            <source>The pantry file was replaced by another while the program was open, so nothing was saved. Please close the program and start it again.</source>
            <translation>Die Vorratskammer-Datei wurde durch eine andere ersetzt, während das Programm offen war, darum wurde nichts gespeichert. Bitte schließ das Programm und starte es neu.</translation>
        </message>
        <message>
            <source>The same temperatures are in this place's log already.</source>
            <translation>Dieselben Temperaturen sind schon im Protokoll dieses Ortes.</translation>
        </message>
        <message>
            <source>The server with your pantry does not answer, so nothing was saved. Please make sure that it is running and that this computer reaches it, and try again.</source>
            <translation>Der Server mit deiner Vorratskammer antwortet nicht, darum wurde nichts gespeichert. Bitte prüfe, ob er läuft und dieser Computer ihn erreicht, und versuch es noch einmal.</translation>
        </message>
        <message>
            <source>The server with your pantry does not let this desk in: the name, the password, the database or its rights are not as the server has them. Nothing was saved.</source>
            <translation>Der Server mit deiner Vorratskammer lässt diesen Arbeitsplatz nicht ein: Name, Passwort, Datenbank oder ihre Rechte sind nicht so, wie der Server sie kennt. Nichts wurde gespeichert.</translation>
        </message>
        <message>
            <source>The shared pantry was laid out by an older version that this one cannot bring up to date. It was left as it is. Please move it to a file with the older version, and back to the server with this one.</source>
            <translation>Die geteilte Vorratskammer wurde von einer älteren Version angelegt, die diese nicht aktualisieren kann. Sie blieb, wie sie ist. Bitte bring sie mit der älteren Version in eine Datei und mit dieser zurück auf den Server.</translation>
        </message>
        <message>
            <source>The size of the text</source>
            <translation>Die Größe der Schrift</translation>
        </message>
        <message>
            <source>The specific gravity</source>
            <translation>Die Dichte</translation>
        </message>
        <message>
            <source>The starter</source>
            <translation>Der Starter</translation>
        </message>
        <message>
            <source>The sugar</source>
            <translation>Der Zucker</translation>
        </message>
        <message>
            <source>The tea</source>
            <translation>Der Tee</translation>
        </message>
        <message>
            <source>The tea in one bag</source>
            <translation>Der Tee in einem Beutel</translation>
        </message>
        <message>
            <source>The temperature</source>
            <translation>Die Temperatur</translation>
        </message>
        <message>
            <source>The temperature of the cold water</source>
            <translation>Die Temperatur des kalten Wassers</translation>
        </message>
        <message>
            <source>The temperature of the hot water</source>
            <translation>Die Temperatur des heißen Wassers</translation>
        </message>
        <message>
            <source>The temperature of the place</source>
            <translation>Die Temperatur des Ortes</translation>
        </message>
        <message>
            <source>The thickness of the pellicle</source>
            <translation>Die Dicke des Häutchens</translation>
        </message>
        <message>
            <source>The titratable acidity</source>
            <translation>Die titrierbare Säure</translation>
        </message>
        <message>
            <source>The titratable acidity of the starter</source>
            <translation>Die titrierbare Säure des Starters</translation>
        </message>
        <message>
            <source>The uncertainty</source>
            <translation>Die Unsicherheit</translation>
        </message>
        <message>
            <source>The unit “{part}” is not known here.</source>
            <translation>Die Einheit „{part}“ ist hier nicht bekannt.</translation>
        </message>
        <message>
            <source>The volume to the brim</source>
            <translation>Das Volumen bis zum Rand</translation>
        </message>
        <message>
            <source>The warmest temperature for the culture</source>
            <translation>Die wärmste Temperatur für die Kultur</translation>
        </message>
        <message>
            <source>The working volume</source>
            <translation>Das Nutzvolumen</translation>
        </message>
        <message>
            <source>There are {low} in it now, so it must hold at least that much.</source>
            <translation>Es sind jetzt {low} darin, also muss es mindestens so viel fassen.</translation>
        </message>
        <message>
            <source>There is a batch in this vessel already.</source>
            <translation>In diesem Gefäß ist schon ein Ansatz.</translation>
        </message>
        <message>
            <source>There is a culture in this vessel. Move it first.</source>
            <translation>In diesem Gefäß ist eine Kultur. Setz sie zuerst um.</translation>
        </message>
        <message>
            <source>There is a pantry already where this one was to go. Nothing was changed there.</source>
            <translation>Wohin diese sollte, ist schon eine Vorratskammer. Dort wurde nichts geändert.</translation>
        </message>
        <message>
            <source>There is no number in “{text}”. Type it as in “3.8 L” or “3 1/2 cups”.</source>
            <translation>In „{text}“ ist keine Zahl. Gib sie ein wie in „3,8 L“ oder „3 1/2 cups“.</translation>
        </message>
        <message>
            <source>There is no pantry in this database yet, so there is nothing to move.</source>
            <translation>In dieser Datenbank ist noch keine Vorratskammer, also gibt es nichts umzuziehen.</translation>
        </message>
        <message>
            <source>There is no temperature in this file that can be read.</source>
            <translation>In dieser Datei ist keine lesbare Temperatur.</translation>
        </message>
        <message>
            <source>This batch has ended already.</source>
            <translation>Dieser Ansatz ist schon zu Ende.</translation>
        </message>
        <message>
            <source>This batch is not being brewed.</source>
            <translation>Dieser Ansatz wird nicht aufgebrüht.</translation>
        </message>
        <message>
            <source>This batch is only planned; there is nothing to see of it.</source>
            <translation>Dieser Ansatz ist erst geplant; von ihm ist noch nichts zu sehen.</translation>
        </message>
        <message>
            <source>This cannot be measured that way.</source>
            <translation>Das lässt sich so nicht messen.</translation>
        </message>
        <message>
            <source>This cannot be taken back any more, because something it touched has changed since.</source>
            <translation>Das lässt sich nicht mehr rückgängig machen, weil sich etwas Betroffenes seither geändert hat.</translation>
        </message>
        <message>
            <source>This culture is no longer there.</source>
            <translation>Diese Kultur ist nicht mehr da.</translation>
        </message>
        <message>
            <source>This does not fit with what is kept already, so nothing was saved.</source>
            <translation>Das passt nicht zu dem, was schon aufbewahrt ist, darum wurde nichts gespeichert.</translation>
        </message>
        <message>
            <source>This entry is no longer there. It may have been taken back meanwhile.</source>
            <translation>Dieser Eintrag ist nicht mehr da. Vielleicht wurde er inzwischen zurückgenommen.</translation>
        </message>
        <message>
            <source>This file is not a pantry of this program. It was left as it is. Please choose another.</source>
            <translation>Diese Datei ist keine Vorratskammer dieses Programms. Sie blieb, wie sie ist. Bitte wähle eine andere.</translation>
        </message>
        <message>
            <source>This is before the batch was begun. Please check the date and time.</source>
            <translation>Das liegt vor dem Beginn des Ansatzes. Bitte prüfe Datum und Uhrzeit.</translation>
        </message>
        <message>
            <source>This is before the culture was born. Please check the date.</source>
            <translation>Das liegt vor dem Entstehen der Kultur. Bitte prüfe das Datum.</translation>
        </message>
        <message>
            <source>This is not a number that can be measured.</source>
            <translation>Diese Zahl lässt sich nicht messen.</translation>
        </message>
        <message>
            <source>This name is too long for a label. Please shorten it.</source>
            <translation>Dieser Name ist zu lang für ein Etikett. Bitte kürze ihn.</translation>
        </message>
        <message>
            <source>This pantry was last used by a newer version of the program. Nothing in it was touched. Please install the newer version to open it.</source>
            <translation>Diese Vorratskammer wurde zuletzt von einer neueren Version des Programms benutzt. Nichts darin wurde angerührt. Bitte installiere die neuere Version, um sie zu öffnen.</translation>
        </message>
        <message>
            <source>This step is done already.</source>
            <translation>Dieser Schritt ist schon erledigt.</translation>
        </message>
        <message>
            <source>This step is not paused.</source>
            <translation>Dieser Schritt ist nicht pausiert.</translation>
        </message>
        <message>
            <source>This step is not under way.</source>
            <translation>Dieser Schritt läuft nicht.</translation>
        </message>
        <message>
            <source>This step was begun already.</source>
            <translation>Dieser Schritt wurde schon begonnen.</translation>
        </message>
        <message>
            <source>This time has not come yet. Please check the date and time.</source>
            <translation>Diese Zeit ist noch nicht gekommen. Bitte prüfe Datum und Uhrzeit.</translation>
        </message>
        <message>
            <source>This value</source>
            <translation>Dieser Wert</translation>
        </message>
        <message>
            <source>This vessel is off the shelf. Put it back first.</source>
            <translation>Dieses Gefäß steht nicht im Regal. Stell es zuerst zurück.</translation>
        </message>
        <message>
            <source>This vessel's material must not touch kombucha. Please choose another vessel.</source>
            <translation>Das Material dieses Gefäßes darf Kombucha nicht berühren. Bitte wähle ein anderes Gefäß.</translation>
        </message>
        <message>
            <source>Vessels stand here. Give them another place first (Edit vessel), then remove it.</source>
            <translation>Hier stehen Gefäße. Gib ihnen zuerst einen anderen Ort (Gefäß bearbeiten), dann entferne ihn.</translation>
        </message>
        <message>
            <source>these bottles</source>
            <translation>diese Flaschen</translation>
        </message>
        <message>
            <source>this batch</source>
            <translation>diesen Ansatz</translation>
        </message>
        <message>
            <source>this culture</source>
            <translation>diese Kultur</translation>
        </message>
        <message>
            <source>this jar</source>
            <translation>dieses Glas</translation>
        </message>
        <message>
            <source>this photo</source>
            <translation>dieses Foto</translation>
        </message>
        <message>
            <source>this place</source>
            <translation>diesen Ort</translation>
        </message>
        <message>
            <source>this reading</source>
            <translation>diese Messung</translation>
        </message>
        <message>
            <source>this reminder</source>
            <translation>diese Erinnerung</translation>
        </message>
        <message>
            <source>this step</source>
            <translation>diesen Schritt</translation>
        </message>
        <message>
            <source>what this is about</source>
            <translation>das, worum es geht,</translation>
        </message>
        <message>
            <source>{label} cannot be that. Please check it.</source>
            <translation>{label} kann nicht so sein. Bitte prüfe das.</translation>
        </message>
        <message>
            <source>{label} must be at least {low}.</source>
            <translation>{label} muss mindestens {low} sein.</translation>
        </message>
        <message>
            <source>{label} must be at most {high}.</source>
            <translation>{label} darf höchstens {high} sein.</translation>
        </message>
        <message>
            <source>{label} must lie between {low} and {high}.</source>
            <translation>{label} muss zwischen {low} und {high} liegen.</translation>
        </message>
        <message>
            <source>“{part}” can be read in more than one way. Type the number without grouping, as in “1500” or “1.5”.</source>
            <translation>„{part}“ lässt sich auf mehr als eine Art lesen. Gib die Zahl ohne Gruppierung ein, wie in „1500“ oder „1,5“.</translation>
        </message>
        <message>
            <source>“{part}” is a unit of something else.</source>
            <translation>„{part}“ ist eine Einheit für etwas anderes.</translation>
        </message>
        <message>
            <source>“{part}” is not a number that can be measured.</source>
            <translation>„{part}“ ist keine messbare Zahl.</translation>
        </message>
    </context>
    <context>
        <name>ProcessLog</name>
        <message>
            <source>At</source>
            <translation>Bei</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Batch or culture</source>
            <translation>Ansatz oder Kultur</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Batches under way in this time, when their pH was first read at or below {limit} (wanted by day {day}, counted from the starter), calibrations of the meter, warnings that were overridden with the reason given, looks and discards.</source>
            <translation>Ansätze, die in dieser Zeit liefen, wann ihr pH zuerst bei {limit} oder darunter gemessen wurde (gewünscht bis Tag {day}, gezählt ab dem Starter), Kalibrierungen des Messgeräts, mit Begründung übergangene Warnungen, Sichtprüfungen und Weggeworfenes.</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Buffers</source>
            <translation>Puffer</translation>
        </message>
        <message>
            <source>Calibrations</source>
            <translation>Kalibrierungen</translation>
        </message>
        <message>
            <source>Day to pH {limit}</source>
            <translation>Tag bis pH {limit}</translation>
        </message>
        <message>
            <source>Discards</source>
            <translation>Weggeworfenes</translation>
        </message>
        <message>
            <source>How it ended</source>
            <translation>Wie er endete</translation>
        </message>
        <message>
            <source>In the maker's words</source>
            <translation>In eigenen Worten</translation>
        </message>
        <message>
            <source>Invented data, to look at only.</source>
            <translation>Erfundene Daten, nur zum Ansehen.</translation>
        </message>
        <message>
            <source>Looks and suspicions</source>
            <translation>Sichtprüfungen und Verdacht</translation>
        </message>
        <message>
            <source>Made from the maker's own entries; brewdesk cannot check them, and entries can be corrected later. Local rules and licensed practice come first.</source>
            <translation>Aus den eigenen Einträgen erstellt; brewdesk kann sie nicht prüfen, und Einträge lassen sich später berichtigen. Örtliche Regeln und zugelassene Praxis gehen vor.</translation>
        </message>
        <message>
            <source>Meter</source>
            <translation>Messgerät</translation>
        </message>
        <message>
            <source>No batch was under way in this time.</source>
            <translation>In dieser Zeit lief kein Ansatz.</translation>
        </message>
        <message>
            <source>No calibration is entered for this time.</source>
            <translation>Für diese Zeit ist keine Kalibrierung eingetragen.</translation>
        </message>
        <message>
            <source>No look is entered.</source>
            <translation>Keine Sichtprüfung ist eingetragen.</translation>
        </message>
        <message>
            <source>No warning was overridden.</source>
            <translation>Keine Warnung wurde übergangen.</translation>
        </message>
        <message>
            <source>Nothing was discarded.</source>
            <translation>Nichts wurde weggeworfen.</translation>
        </message>
        <message>
            <source>Offset</source>
            <translation>Offset</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Seite {page} von {pages}</translation>
        </message>
        <message>
            <source>Process log</source>
            <translation>Prozessprotokoll</translation>
        </message>
        <message>
            <source>Slope</source>
            <translation>Steilheit</translation>
        </message>
        <message>
            <source>Start pH</source>
            <translation>Start-pH</translation>
        </message>
        <message>
            <source>Start pH: read within a day of the start. Day to pH {limit}: the day of the first reading that shows it; it may have been earlier. “Not shown” means that no reading shows it. ± is one standard uncertainty.</source>
            <translation>Start-pH: innerhalb eines Tages nach dem Start gemessen. Tag bis pH {limit}: der Tag der ersten Messung, die ihn zeigt; er kann früher erreicht worden sein. „Nicht gezeigt“ heißt, dass keine Messung ihn zeigt. ± ist eine Standardunsicherheit.</translation>
        </message>
        <message>
            <source>Verdict, words</source>
            <translation>Urteil, Worte</translation>
        </message>
        <message>
            <source>Vessel, culture</source>
            <translation>Gefäß, Kultur</translation>
        </message>
        <message>
            <source>Warnings overridden</source>
            <translation>Übergangene Warnungen</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>pH read then</source>
            <translation>pH dabei gemessen</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <translation>{first} bis {last}</translation>
        </message>
        <message>
            <source>{how} {date}</source>
            <translation>{how} {date}</translation>
        </message>
        <message>
            <source>{number} %</source>
            <translation>{number} %</translation>
        </message>
        <message>
            <source>{number} mV</source>
            <translation>{number} mV</translation>
        </message>
    </context>
    <context>
        <name>ProcessLogDialog</name>
        <message>
            <source>&amp;From</source>
            <translation>&amp;Von</translation>
        </message>
        <message>
            <source>&amp;To</source>
            <translation>&amp;Bis</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Erster Tag</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Letzter Tag</translation>
        </message>
        <message>
            <source>Process log</source>
            <translation>Prozessprotokoll</translation>
        </message>
        <message>
            <source>Show it</source>
            <translation>Anzeigen</translation>
        </message>
        <message>
            <source>The first day is after the last. Please change one of them.</source>
            <translation>Der erste Tag liegt nach dem letzten. Bitte ändere einen davon.</translation>
        </message>
        <message>
            <source>The log lists the batches of a span of time with their start pH and the day they were first read at or below pH 4.2, calibrations, overridden warnings with your reasons, looks and discards. It shows what was entered, no more.</source>
            <translation>Das Protokoll listet die Ansätze einer Zeitspanne mit ihrem Start-pH und dem Tag, an dem sie zuerst bei pH 4,2 oder darunter gemessen wurden, dazu Kalibrierungen, übergangene Warnungen mit deinen Gründen, Sichtprüfungen und Weggeworfenes. Es zeigt, was eingetragen wurde, nicht mehr.</translation>
        </message>
    </context>
    <context>
        <name>Program</name>
        <message>
            <source>A reminder will look like this</source>
            <translation>So sieht eine Erinnerung aus</translation>
        </message>
        <message>
            <source>If you can read this, notices reach your desktop.</source>
            <translation>Wenn du das lesen kannst, kommen Meldungen auf deinem Bildschirm an.</translation>
        </message>
    </context>
    <context>
        <name>ProgressDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>How much is done</source>
            <translation>Wie viel geschafft ist</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Stoppen</translation>
        </message>
    </context>
    <context>
        <name>QuantityEdit</name>
        <message>
            <source>= {amount}</source>
            <translation>= {amount}</translation>
        </message>
        <message>
            <source>Use {units}.</source>
            <translation>Nimm {units}.</translation>
        </message>
    </context>
    <context>
        <name>QuestionForm</name>
        <message>
            <source>Begin these entries anew</source>
            <translation>Eingaben zurücksetzen</translation>
        </message>
        <message>
            <source>may stay empty</source>
            <translation>darf leer bleiben</translation>
        </message>
    </context>
    <context>
        <name>QuestionList</name>
        <message>
            <source>Find a question</source>
            <translation>Frage suchen</translation>
        </message>
        <message>
            <source>No question holds these words.</source>
            <translation>Keine Frage enthält diese Wörter.</translation>
        </message>
        <message>
            <source>Questions</source>
            <translation>Fragen</translation>
        </message>
    </context>
    <context>
        <name>RangeBar</name>
        <message>
            <source>{ends}, {how}</source>
            <translation>{ends}, {how}</translation>
        </message>
    </context>
    <context>
        <name>ReadingDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Correct a reading</source>
            <translation>Messung korrigieren</translation>
        </message>
        <message>
            <source>Correct a reading: {what}</source>
            <translation>Messung korrigieren: {what}</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Taken with</source>
            <translation>Gemessen mit</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
    </context>
    <context>
        <name>ReadingFields</name>
        <message>
            <source>Guide…</source>
            <translation>Anleitung…</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Aussehen</translation>
        </message>
        <message>
            <source>Look for mold with a guide</source>
            <translation>Mit Anleitung nach Schimmel sehen</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Pellicle thickness</source>
            <translation>Dicke des Häutchens</translation>
        </message>
        <message>
            <source>SG</source>
            <translation>SG</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Sugar measured as</source>
            <translation>Zucker gemessen als</translation>
        </message>
        <message>
            <source>Taste</source>
            <translation>Geschmack</translation>
        </message>
        <message>
            <source>Temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>Titratable acidity</source>
            <translation>Titrierbare Säure</translation>
        </message>
        <message>
            <source>What you saw, smelled or did</source>
            <translation>Was du gesehen, gerochen oder getan hast</translation>
        </message>
        <message>
            <source>e.g. {number}</source>
            <translation>z. B. {number}</translation>
        </message>
        <message>
            <source>p&amp;H</source>
            <translation>p&amp;H</translation>
        </message>
        <message>
            <source>pH taken with</source>
            <translation>pH gemessen mit</translation>
        </message>
        <message>
            <source>°Bx</source>
            <translation>°Bx</translation>
        </message>
    </context>
    <context>
        <name>ReadingForm</name>
        <message>
            <source>Change it</source>
            <translation>Ändern</translation>
        </message>
        <message>
            <source>Ctrl+Enter saves from any field</source>
            <translation>Strg+Eingabe speichert aus jedem Feld</translation>
        </message>
        <message>
            <source>Nothing is filled in yet.</source>
            <translation>Noch ist nichts ausgefüllt.</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Save anyway</source>
            <translation>Trotzdem speichern</translation>
        </message>
        <message>
            <source>Save the readings</source>
            <translation>Messungen speichern</translation>
        </message>
        <message>
            <source>Saved: {what}</source>
            <translation>Gespeichert: {what}</translation>
        </message>
        <message>
            <source>Stays at this time until you press Now.</source>
            <translation>Bleibt bei dieser Zeit, bis du „Jetzt“ drückst.</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
    </context>
    <context>
        <name>ReadingPhotosDialog</name>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Photos of a reading</source>
            <translation>Fotos einer Messung</translation>
        </message>
    </context>
    <context>
        <name>ReadingsChoices</name>
        <message>
            <source>&amp;Date and time</source>
            <translation>&amp;Datum und Uhrzeit</translation>
        </message>
        <message>
            <source>&amp;Letters are written as</source>
            <translation>&amp;Zeichen sind geschrieben als</translation>
        </message>
        <message>
            <source>Columns are &amp;parted by</source>
            <translation>Spalten sind &amp;getrennt durch</translation>
        </message>
        <message>
            <source>Please choose one.</source>
            <translation>Bitte wähle eins.</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturen in</translation>
        </message>
        <message>
            <source>The times are &amp;in</source>
            <translation>Die Zeiten gelten &amp;in</translation>
        </message>
        <message>
            <source>Time of da&amp;y, if apart</source>
            <translation>&amp;Uhrzeit, falls getrennt</translation>
        </message>
        <message>
            <source>not in the table</source>
            <translation>nicht in der Tabelle</translation>
        </message>
    </context>
    <context>
        <name>ReadingsFile</name>
        <message>
            <source>Already there at the same time, and skipped: {count}.</source>
            <translation>Zur selben Zeit schon vorhanden und übersprungen: {count}.</translation>
        </message>
        <message>
            <source>Left out: {count}.</source>
            <translation>Ausgelassen: {count}.</translation>
        </message>
        <message>
            <source>Line {line}, {column}: {why} ({text})</source>
            <translation>Zeile {line}, {column}: {why} ({text})</translation>
        </message>
        <message>
            <source>More than 2000 readings at once are too many. Please split the file.</source>
            <translation>Mehr als 2000 Messungen auf einmal sind zu viel. Bitte teile die Datei auf.</translation>
        </message>
        <message>
            <source>New readings: {count}, from {first} to {last}.</source>
            <translation>Neue Messungen: {count}, von {first} bis {last}.</translation>
        </message>
        <message>
            <source>No table with a date and a number in each row was found in this file. Please save the table as CSV and choose that file.</source>
            <translation>In dieser Datei wurde keine Tabelle gefunden, die in jeder Zeile ein Datum und eine Zahl hat. Bitte speichere die Tabelle als CSV und wähle diese Datei.</translation>
        </message>
        <message>
            <source>Not one value could be read this way. Please check the columns and the dates.</source>
            <translation>So ließ sich kein einziger Wert lesen. Bitte prüfe die Spalten und die Datumsangaben.</translation>
        </message>
        <message>
            <source>Nothing new is in this file.</source>
            <translation>In dieser Datei ist nichts Neues.</translation>
        </message>
        <message>
            <source>One reading on {vessel} from {file}</source>
            <translation>Eine Messung zu {vessel} aus {file}</translation>
        </message>
        <message>
            <source>This file is empty. Please save the table as CSV once more.</source>
            <translation>Diese Datei ist leer. Bitte speichere die Tabelle noch einmal als CSV.</translation>
        </message>
        <message>
            <source>Times that summer time leaves out, moved on by an hour: {count}.</source>
            <translation>Zeiten, die es wegen der Sommerzeit nicht gibt, um eine Stunde vorgerückt: {count}.</translation>
        </message>
        <message>
            <source>Times that the end of summer time repeats: {count}.</source>
            <translation>Zeiten, die am Ende der Sommerzeit doppelt vorkommen: {count}.</translation>
        </message>
        <message>
            <source>Twice in the file at the same time, the first one counts: {count}.</source>
            <translation>Zur selben Zeit doppelt in der Datei, die erste zählt: {count}.</translation>
        </message>
        <message>
            <source>it is more than a day before the batch began</source>
            <translation>das ist mehr als einen Tag vor Beginn des Ansatzes</translation>
        </message>
        <message>
            <source>no reading is that low or high</source>
            <translation>so niedrig oder hoch ist keine Messung</translation>
        </message>
        <message>
            <source>the note is too long</source>
            <translation>die Notiz ist zu lang</translation>
        </message>
        <message>
            <source>the time is still to come</source>
            <translation>die Zeit liegt noch in der Zukunft</translation>
        </message>
        <message>
            <source>this is no amount that can be read</source>
            <translation>das lässt sich nicht als Menge lesen</translation>
        </message>
        <message>
            <source>{count} readings on {vessel} from {file}</source>
            <translation>{count} Messungen zu {vessel} aus {file}</translation>
        </message>
    </context>
    <context>
        <name>ReadingsFileDialog</name>
        <message>
            <source>Choose a table with a date and readings in each row, saved from your spreadsheet as CSV. You see how it is understood before anything is kept.</source>
            <translation>Wähle eine Tabelle mit Datum und Messungen in jeder Zeile, aus deiner Tabellenkalkulation als CSV gespeichert. Bevor etwas übernommen wird, siehst du, wie sie verstanden wird.</translation>
        </message>
        <message>
            <source>Choose the table</source>
            <translation>Tabelle wählen</translation>
        </message>
        <message>
            <source>Read in readings</source>
            <translation>Messungen einlesen</translation>
        </message>
        <message>
            <source>Read in readings of {name}</source>
            <translation>Messungen zu {name} einlesen</translation>
        </message>
        <message>
            <source>What was left out, and why</source>
            <translation>Was ausgelassen wurde, und warum</translation>
        </message>
        <message>
            <source>{count} more</source>
            <translation>{count} weitere</translation>
        </message>
    </context>
    <context>
        <name>ReadingsModel</name>
        <message>
            <source>Taken with</source>
            <translation>Gemessen mit</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Wert</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Was</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>{words} ({read_as})</source>
            <translation>{words} ({read_as})</translation>
        </message>
    </context>
    <context>
        <name>ReadingsTable</name>
        <message>
            <source>Read as</source>
            <translation>Gelesen als</translation>
        </message>
        <message>
            <source>Read as time</source>
            <translation>Als Zeit gelesen</translation>
        </message>
        <message>
            <source>The first rows, as they are understood</source>
            <translation>Die ersten Zeilen, so wie sie verstanden werden</translation>
        </message>
    </context>
    <context>
        <name>ReadingsView</name>
        <message>
            <source>Change…</source>
            <translation>Ändern…</translation>
        </message>
        <message>
            <source>No readings yet. Enter the first one above.</source>
            <translation>Noch keine Messungen. Gib oben die erste ein.</translation>
        </message>
        <message>
            <source>Photos…</source>
            <translation>Fotos…</translation>
        </message>
        <message>
            <source>Readings, newest first</source>
            <translation>Messungen, neueste zuerst</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Herausnehmen</translation>
        </message>
    </context>
    <context>
        <name>Reckoner</name>
        <message>
            <source>15 percent volume share liquid alkalinity hardness water</source>
            <translation>15 Prozent Volumen Anteil Flüssigkeit Alkalinität Härte Wasser</translation>
        </message>
        <message>
            <source>8 times in 10</source>
            <translation>in 8 von 10 Fällen</translation>
        </message>
        <message>
            <source>A bottle holds to the brim</source>
            <translation>Eine Flasche fasst randvoll</translation>
        </message>
        <message>
            <source>A bottle in the shop costs</source>
            <translation>Eine Flasche kostet im Laden</translation>
        </message>
        <message>
            <source>A brew is not quite the liquid that the formula was made for.</source>
            <translation>Ein Kombucha ist nicht ganz die Flüssigkeit, für die die Formel gemacht wurde.</translation>
        </message>
        <message>
            <source>A calibration liquid shows its printed pH at one temperature only.</source>
            <translation>Eine Kalibrierflüssigkeit zeigt ihren aufgedruckten pH nur bei einer Temperatur.</translation>
        </message>
        <message>
            <source>A gauge bottle among the others, held against what the bottles may be under.</source>
            <translation>Eine Manometerflasche unter den anderen, verglichen mit dem Druck, den die Flaschen haben dürfen.</translation>
        </message>
        <message>
            <source>A glass</source>
            <translation>Ein Glas</translation>
        </message>
        <message>
            <source>A higher mark must hold more than the one below it.</source>
            <translation>Eine höhere Marke muss mehr fassen als die darunter.</translation>
        </message>
        <message>
            <source>A litre costs</source>
            <translation>Ein Liter kostet</translation>
        </message>
        <message>
            <source>A litre is taken for a kilogram of water. Sugar is no acid and takes no part.</source>
            <translation>Ein Liter wird wie ein Kilogramm Wasser gerechnet. Zucker ist keine Säure und zählt nicht mit.</translation>
        </message>
        <message>
            <source>A reading while it sours, held against the day by which it has to be sour.</source>
            <translation>Eine Messung während der Säuerung, verglichen mit dem Tag, bis zu dem es sauer sein muss.</translation>
        </message>
        <message>
            <source>A refractometer shows {brix} more than there is sugar. A minus sign on the hydrometer means that it shows too little.</source>
            <translation>Ein Refraktometer zeigt {brix} mehr, als Zucker da ist. Ein Minus bei der Spindel heißt, dass sie zu wenig zeigt.</translation>
        </message>
        <message>
            <source>A thermometer decides, not this: measure before the culture goes in.</source>
            <translation>Das Thermometer entscheidet, nicht diese Rechnung: Miss, bevor die Kultur hineinkommt.</translation>
        </message>
        <message>
            <source>A verdict never says that a drink is safe. Where your local rules ask for more, follow them.</source>
            <translation>Kein Urteil hier sagt, dass ein Getränk sicher ist. Wo deine örtlichen Regeln mehr verlangen, halte dich an sie.</translation>
        </message>
        <message>
            <source>A volume in cups and spoons</source>
            <translation>Ein Volumen in Tassen und Löffeln</translation>
        </message>
        <message>
            <source>A weight of white sugar as a kitchen without scales has it.</source>
            <translation>Ein Gewicht weißer Zucker, wie es eine Küche ohne Waage misst.</translation>
        </message>
        <message>
            <source>ATC automatic cold warm sample</source>
            <translation>ATC automatisch kalt warm Probe</translation>
        </message>
        <message>
            <source>About</source>
            <translation>Etwa</translation>
        </message>
        <message>
            <source>About 2 g a bag is common practice; weigh ten of yours and divide.</source>
            <translation>Etwa 2 g je Beutel sind üblich; wiege zehn von deinen und teile.</translation>
        </message>
        <message>
            <source>About {ice}; for a little warmer or colder it takes {ice_low} to {ice_high}.</source>
            <translation>Etwa {ice}; für etwas wärmer oder kälter braucht es {ice_low} bis {ice_high}.</translation>
        </message>
        <message>
            <source>About {sugar}, anywhere from {sugar_low} to {sugar_high}: what is left in the drink is known badly. Look at the bottles, not at the calendar.</source>
            <translation>Etwa {sugar}, irgendwo zwischen {sugar_low} und {sugar_high}: Was im Getränk noch übrig ist, weiß man nur ungenau. Richte dich nach den Flaschen, nicht nach dem Kalender.</translation>
        </message>
        <message>
            <source>About {volume} should start it near pH {target_start_ph}; the doubts about starter, tea and water make it {volume_low} to {volume_high}.</source>
            <translation>Mit etwa {volume} dürfte es nahe pH {target_start_ph} beginnen; die Unsicherheiten bei Ansatzflüssigkeit, Tee und Wasser machen {volume_low} bis {volume_high} daraus.</translation>
        </message>
        <message>
            <source>About {wait} after the latest reading; between {wait_low} and {wait_high} 8 times in 10.</source>
            <translation>Etwa {wait} nach der letzten Messung; in 8 von 10 Fällen zwischen {wait_low} und {wait_high}.</translation>
        </message>
        <message>
            <source>Above the sea</source>
            <translation>Über dem Meer</translation>
        </message>
        <message>
            <source>Acetic acid</source>
            <translation>Essigsäure</translation>
        </message>
        <message>
            <source>Acid</source>
            <translation>Säure</translation>
        </message>
        <message>
            <source>Acid as acetic, by weight</source>
            <translation>Säure als Essigsäure, nach Gewicht</translation>
        </message>
        <message>
            <source>Acidity</source>
            <translation>Säure</translation>
        </message>
        <message>
            <source>Acidity and meter</source>
            <translation>Säure und Messgerät</translation>
        </message>
        <message>
            <source>Acidity formed</source>
            <translation>Gebildete Säure</translation>
        </message>
        <message>
            <source>Acidity in equivalents</source>
            <translation>Säure in Äquivalenten</translation>
        </message>
        <message>
            <source>Acidity, as acetic acid</source>
            <translation>Säure, als Essigsäure</translation>
        </message>
        <message>
            <source>Acidity, of the same pair</source>
            <translation>Säure, aus demselben Paar</translation>
        </message>
        <message>
            <source>Acidity, told as chosen</source>
            <translation>Säure, angegeben wie gewählt</translation>
        </message>
        <message>
            <source>Air in water</source>
            <translation>Luft in Wasser</translation>
        </message>
        <message>
            <source>Alcohol</source>
            <translation>Alkohol</translation>
        </message>
        <message>
            <source>Alcohol by volume</source>
            <translation>Alkohol nach Volumen</translation>
        </message>
        <message>
            <source>Alcohol from sugar, less what acid took</source>
            <translation>Alkohol aus Zucker, abzüglich dessen, was Säure wurde</translation>
        </message>
        <message>
            <source>Alcohol if all sugar ferments, at most</source>
            <translation>Alkohol, wenn aller Zucker vergärt, höchstens</translation>
        </message>
        <message>
            <source>Alcohol in it</source>
            <translation>Alkohol darin</translation>
        </message>
        <message>
            <source>Alcohol that comes with it</source>
            <translation>Alkohol, der dazukommt</translation>
        </message>
        <message>
            <source>Alcohol, at least</source>
            <translation>Alkohol, mindestens</translation>
        </message>
        <message>
            <source>Alcohol, at most</source>
            <translation>Alkohol, höchstens</translation>
        </message>
        <message>
            <source>Alcohol, by weight</source>
            <translation>Alkohol, nach Gewicht</translation>
        </message>
        <message>
            <source>Alcohol, likely</source>
            <translation>Alkohol, wahrscheinlich</translation>
        </message>
        <message>
            <source>Alkalinity of the water</source>
            <translation>Alkalinität des Wassers</translation>
        </message>
        <message>
            <source>Alkalinity of the water, if known</source>
            <translation>Alkalinität des Wassers, falls bekannt</translation>
        </message>
        <message>
            <source>Alkalinity reckoned with</source>
            <translation>Gerechnete Alkalinität</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Menge</translation>
        </message>
        <message>
            <source>Anything from {abv_low} to {abv_high} fits these figures. The upper end has all lost sugar turned to alcohol and none of it to acid.</source>
            <translation>Alles von {abv_low} bis {abv_high} passt zu diesen Zahlen. Beim oberen Ende ist aller verschwundene Zucker zu Alkohol geworden und keiner zu Säure.</translation>
        </message>
        <message>
            <source>As acetic acid to pH 8.1, as used everywhere here</source>
            <translation>Als Essigsäure bis pH 8,1, wie hier überall</translation>
        </message>
        <message>
            <source>Assumed pace of yeast in a closed bottle</source>
            <translation>Angenommenes Tempo der Hefe in der geschlossenen Flasche</translation>
        </message>
        <message>
            <source>At 20 °C it would show {brix}; the instrument's own doubt gives {brix_low} to {brix_high}.</source>
            <translation>Bei 20 °C würde es {brix} zeigen; die Unsicherheit des Geräts ergibt {brix_low} bis {brix_high}.</translation>
        </message>
        <message>
            <source>At 20 °C it would show {sg}; half a mark either way gives {sg_low} to {sg_high}.</source>
            <translation>Bei 20 °C würde sie {sg} zeigen; ein halber Teilstrich auf oder ab ergibt {sg_low} bis {sg_high}.</translation>
        </message>
        <message>
            <source>At most, in a litre</source>
            <translation>Höchstens, je Liter</translation>
        </message>
        <message>
            <source>At most, in volumes</source>
            <translation>Höchstens, in Volumen</translation>
        </message>
        <message>
            <source>At pH {other_ph} expect {other_ta_low} to {other_ta_high}: a small error of pH is a large one of acidity.</source>
            <translation>Bei pH {other_ph} erwarte {other_ta_low} bis {other_ta_high}: Ein kleiner Fehler beim pH ist ein großer bei der Säure.</translation>
        </message>
        <message>
            <source>At the earliest {wait} after the latest reading, perhaps not before {wait_high}: it was read while it steamed.</source>
            <translation>Frühestens {wait} nach der letzten Messung, vielleicht nicht vor {wait_high}: Es wurde gemessen, während es dampfte.</translation>
        </message>
        <message>
            <source>At {altitude_m} water boils at about {boiling}; the weather moves that a little.</source>
            <translation>In {altitude_m} Höhe kocht Wasser bei etwa {boiling}; das Wetter verschiebt das ein wenig.</translation>
        </message>
        <message>
            <source>At {other_ta_g_per_l} expect a pH between {other_ph_low} and {other_ph_high}, as long as tea, water and kinds of acid stay the same.</source>
            <translation>Bei {other_ta_g_per_l} erwarte einen pH zwischen {other_ph_low} und {other_ph_high}, solange Tee, Wasser und Art der Säuren gleich bleiben.</translation>
        </message>
        <message>
            <source>At {temperature_c} a fresh one has pH {ph}, give or take the bottle's own doubt.</source>
            <translation>Bei {temperature_c} hat ein frischer pH {ph}, plus oder minus die Unsicherheit der Flasche.</translation>
        </message>
        <message>
            <source>Bags weighed together</source>
            <translation>Zusammen gewogene Beutel</translation>
        </message>
        <message>
            <source>Balance of strong ions at the pH wanted</source>
            <translation>Bilanz der starken Ionen beim gewünschten pH</translation>
        </message>
        <message>
            <source>Between {abv_low} and {abv_high} about 8 times in 10, and not nearer: the two instruments were made for sugar water.</source>
            <translation>In etwa 8 von 10 Fällen zwischen {abv_low} und {abv_high}, genauer nicht: Die beiden Geräte wurden für Zuckerwasser gemacht.</translation>
        </message>
        <message>
            <source>Between {bag_low} and {bag_high}, as far as the scale can tell.</source>
            <translation>Zwischen {bag_low} und {bag_high}, soweit die Waage es anzeigen kann.</translation>
        </message>
        <message>
            <source>Between {caffeine_low} and {caffeine_high}; none is taken to be lost in souring.</source>
            <translation>Zwischen {caffeine_low} und {caffeine_high}; beim Säuern gilt nichts als verloren.</translation>
        </message>
        <message>
            <source>Bleach</source>
            <translation>Chlorbleiche</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Bottles and fizz</source>
            <translation>Flaschen und Kohlensäure</translation>
        </message>
        <message>
            <source>Brix correction reading ATC index</source>
            <translation>Brix Korrektur Messung ATC Brechungsindex</translation>
        </message>
        <message>
            <source>Brix in gravity and grams per litre</source>
            <translation>Brix in Dichte und Gramm je Liter</translation>
        </message>
        <message>
            <source>Buffer</source>
            <translation>Puffer</translation>
        </message>
        <message>
            <source>Buffers printed with the same pH may hold different salts: look at the bottle's own table first.</source>
            <translation>Puffer mit demselben aufgedruckten pH können verschiedene Salze enthalten: Sieh zuerst in die Tabelle auf der Flasche.</translation>
        </message>
        <message>
            <source>CO2 bar psi headspace warm trapped air</source>
            <translation>CO2 bar psi Kopfraum warm eingeschlossene Luft</translation>
        </message>
        <message>
            <source>CO2 volumes bar psi carbonation keg grams per litre</source>
            <translation>CO2 Volumen bar psi Karbonisierung Fass Gramm je Liter</translation>
        </message>
        <message>
            <source>CO2 volumes bar psi carbonation temperature</source>
            <translation>CO2 Volumen bar psi Karbonisierung Temperatur</translation>
        </message>
        <message>
            <source>Caffeine</source>
            <translation>Koffein</translation>
        </message>
        <message>
            <source>Caffeine in a litre</source>
            <translation>Koffein je Liter</translation>
        </message>
        <message>
            <source>Caffeine of tea leaf and how much is drawn out</source>
            <translation>Koffein der Teeblätter und wie viel davon ausgezogen wird</translation>
        </message>
        <message>
            <source>Caffeine that the leaf gives to a litre, from published contents.</source>
            <translation>Koffein, das die Blätter an einen Liter abgeben, nach veröffentlichten Gehalten.</translation>
        </message>
        <message>
            <source>Carbon dioxide for each litre</source>
            <translation>Kohlendioxid je Liter</translation>
        </message>
        <message>
            <source>Carbon dioxide in a litre</source>
            <translation>Kohlendioxid in einem Liter</translation>
        </message>
        <message>
            <source>Charge balance of the weak acids of tea and starter</source>
            <translation>Ladungsbilanz der schwachen Säuren von Tee und Ansatzflüssigkeit</translation>
        </message>
        <message>
            <source>Charge balance of weak acids, with assumed shares</source>
            <translation>Ladungsbilanz schwacher Säuren, mit angenommenen Anteilen</translation>
        </message>
        <message>
            <source>Charge balance with Davies activity coefficients</source>
            <translation>Ladungsbilanz mit Aktivitätskoeffizienten nach Davies</translation>
        </message>
        <message>
            <source>Chipped or scratched?</source>
            <translation>Angeschlagen oder verkratzt?</translation>
        </message>
        <message>
            <source>Chlorine in the water for rinsing clean vessels.</source>
            <translation>Chlor im Wasser zum Spülen sauberer Gefäße.</translation>
        </message>
        <message>
            <source>Chlorine over volume; published strength of a rinse</source>
            <translation>Chlor durch Volumen; veröffentlichte Stärke einer Spülung</translation>
        </message>
        <message>
            <source>Chlorine, from its label</source>
            <translation>Chlor, laut Etikett</translation>
        </message>
        <message>
            <source>Citric acid</source>
            <translation>Zitronensäure</translation>
        </message>
        <message>
            <source>Closed bottle with its air, and a drink that swells</source>
            <translation>Geschlossene Flasche mit ihrer Luft und ein Getränk, das sich ausdehnt</translation>
        </message>
        <message>
            <source>Cold water</source>
            <translation>Kaltes Wasser</translation>
        </message>
        <message>
            <source>Cold water at</source>
            <translation>Kaltes Wasser mit</translation>
        </message>
        <message>
            <source>Correct a hydrometer for temperature</source>
            <translation>Spindel nach Temperatur korrigieren</translation>
        </message>
        <message>
            <source>Correct a refractometer for temperature</source>
            <translation>Refraktometer nach Temperatur korrigieren</translation>
        </message>
        <message>
            <source>Corrects a reading by your last calibration and says what it is worth.</source>
            <translation>Korrigiert eine Messung mit deiner letzten Kalibrierung und sagt, was sie taugt.</translation>
        </message>
        <message>
            <source>Days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>Days in a closed bottle, as widely as the pace is unsure.</source>
            <translation>Tage in der geschlossenen Flasche, so weit gefasst, wie das Tempo unsicher ist.</translation>
        </message>
        <message>
            <source>Days in the cold</source>
            <translation>Tage in der Kälte</translation>
        </message>
        <message>
            <source>Days since bottling, if bottled</source>
            <translation>Tage seit der Abfüllung, falls abgefüllt</translation>
        </message>
        <message>
            <source>Days since the calibration</source>
            <translation>Tage seit der Kalibrierung</translation>
        </message>
        <message>
            <source>Days since the culture went in</source>
            <translation>Tage, seit die Kultur drin ist</translation>
        </message>
        <message>
            <source>Days since the starter went in</source>
            <translation>Tage, seit der Starter drin ist</translation>
        </message>
        <message>
            <source>Days since the starter went in.</source>
            <translation>Tage, seit die Ansatzflüssigkeit drin ist.</translation>
        </message>
        <message>
            <source>Days that the finished drink has been kept cold.</source>
            <translation>Tage, die das fertige Getränk kalt stand.</translation>
        </message>
        <message>
            <source>Days until it is fizzy</source>
            <translation>Tage, bis es sprudelt</translation>
        </message>
        <message>
            <source>Degrees Brix</source>
            <translation>Grad Brix</translation>
        </message>
        <message>
            <source>Degrees Brix, specific gravity, density and grams per litre of one solution.</source>
            <translation>Grad Brix, relative Dichte, Dichte und Gramm je Liter derselben Lösung.</translation>
        </message>
        <message>
            <source>Degrees Celsius it may be off by</source>
            <translation>Mögliche Abweichung in Grad Celsius</translation>
        </message>
        <message>
            <source>Density at 20 °C</source>
            <translation>Dichte bei 20 °C</translation>
        </message>
        <message>
            <source>Density of dilute alcohol and acid</source>
            <translation>Dichte von verdünntem Alkohol und verdünnter Säure</translation>
        </message>
        <message>
            <source>Density of sucrose solutions</source>
            <translation>Dichte von Zuckerlösungen</translation>
        </message>
        <message>
            <source>Diluted before, by</source>
            <translation>Vorher verdünnt, um</translation>
        </message>
        <message>
            <source>Does it compensate by itself?</source>
            <translation>Gleicht es selbst aus?</translation>
        </message>
        <message>
            <source>Does the meter compensate?</source>
            <translation>Gleicht das Messgerät aus?</translation>
        </message>
        <message>
            <source>Does this place suit a souring jar?</source>
            <translation>Passt dieser Ort für ein säuerndes Glas?</translation>
        </message>
        <message>
            <source>Drunk in a day</source>
            <translation>Am Tag getrunken</translation>
        </message>
        <message>
            <source>Each buffer can be used once only. Please choose another.</source>
            <translation>Jeder Puffer kann nur einmal vorkommen. Bitte wähle einen anderen.</translation>
        </message>
        <message>
            <source>Earliest day they could pass it</source>
            <translation>Frühester Tag, an dem sie darüber kämen</translation>
        </message>
        <message>
            <source>End point of the titration</source>
            <translation>Endpunkt der Titration</translation>
        </message>
        <message>
            <source>Energy</source>
            <translation>Energie</translation>
        </message>
        <message>
            <source>Energy to the gram of sugar, acid and alcohol</source>
            <translation>Energie je Gramm Zucker, Säure und Alkohol</translation>
        </message>
        <message>
            <source>Energy, sugar, acid, alcohol and caffeine of an amount, as ranges.</source>
            <translation>Energie, Zucker, Säure, Alkohol und Koffein einer Menge, als Bereiche.</translation>
        </message>
        <message>
            <source>Every limit this program uses, with where it comes from.</source>
            <translation>Jeder Grenzwert in diesem Programm, mit seiner Herkunft.</translation>
        </message>
        <message>
            <source>Every reading must be warmer than the room.</source>
            <translation>Jede Messung muss wärmer sein als der Raum.</translation>
        </message>
        <message>
            <source>Everything else</source>
            <translation>Alles andere</translation>
        </message>
        <message>
            <source>Expansion of glass and of sugar solution</source>
            <translation>Ausdehnung von Glas und Zuckerlösung</translation>
        </message>
        <message>
            <source>Expect {mixed_low} to {mixed_high}, with {left} of ice left in it.</source>
            <translation>Erwarte {mixed_low} bis {mixed_high}, mit {left} Eis, das noch übrig ist.</translation>
        </message>
        <message>
            <source>Expect {mixed_low} to {mixed_high}: vessel and losses on the way move it a little. A thermometer decides when the culture goes in.</source>
            <translation>Erwarte {mixed_low} bis {mixed_high}: Gefäß und Verluste unterwegs verschieben es ein wenig. Wann die Kultur hineinkommt, entscheidet das Thermometer.</translation>
        </message>
        <message>
            <source>Filled at</source>
            <translation>Abgefüllt bei</translation>
        </message>
        <message>
            <source>First buffer</source>
            <translation>Erster Puffer</translation>
        </message>
        <message>
            <source>Fizz wanted</source>
            <translation>Gewünschte Kohlensäure</translation>
        </message>
        <message>
            <source>For exactly this mixture the calculation gives pH {ph}; a meter in a real drink seldom agrees better than 0.15.</source>
            <translation>Für genau diese Mischung ergibt die Rechnung pH {ph}; ein Messgerät stimmt in einem echten Getränk selten besser als auf 0,15 damit überein.</translation>
        </message>
        <message>
            <source>For sugar in water. Once the culture works, acids and alcohol count in too and the reading is only apparent.</source>
            <translation>Für Zucker in Wasser. Sobald die Kultur arbeitet, zählen auch Säuren und Alkohol mit, und der Wert ist nur scheinbar.</translation>
        </message>
        <message>
            <source>For whom it is not</source>
            <translation>Für wen es nichts ist</translation>
        </message>
        <message>
            <source>Free chlorine</source>
            <translation>Freies Chlor</translation>
        </message>
        <message>
            <source>Fresh juice can bring in germs that souring does not undo.</source>
            <translation>Frischer Saft kann Keime mitbringen, die das Säuern nicht unschädlich macht.</translation>
        </message>
        <message>
            <source>From grams of each acid in a litre and the strong ions of tea, water or fruit.</source>
            <translation>Aus Gramm jeder Säure je Liter und den starken Ionen aus Tee, Wasser oder Obst.</translation>
        </message>
        <message>
            <source>From one colour of the strip to the next</source>
            <translation>Von einer Farbe des Streifens zur nächsten</translation>
        </message>
        <message>
            <source>From the lye a sample took up to its end point.</source>
            <translation>Aus der Lauge, die eine Probe bis zu ihrem Endpunkt verbraucht hat.</translation>
        </message>
        <message>
            <source>From the marks you measured, the height of any other amount.</source>
            <translation>Aus den Marken, die du gemessen hast, die Höhe jeder anderen Menge.</translation>
        </message>
        <message>
            <source>From two to four temperatures of the cooling pot, and that of the room.</source>
            <translation>Aus zwei bis vier Temperaturen des abkühlenden Topfes und der des Raumes.</translation>
        </message>
        <message>
            <source>From what you paid for packs and what you used of them, in your own money.</source>
            <translation>Aus dem, was du für Packungen gezahlt und davon verbraucht hast, in deiner Währung.</translation>
        </message>
        <message>
            <source>Fruit or juice</source>
            <translation>Obst oder Saft</translation>
        </message>
        <message>
            <source>Gas and alcohol from sugar</source>
            <translation>Gas und Alkohol aus Zucker</translation>
        </message>
        <message>
            <source>Gas driven out first?</source>
            <translation>Gas vorher ausgetrieben?</translation>
        </message>
        <message>
            <source>Gas shared between drink and headspace, with the air that was closed in.</source>
            <translation>Gas, verteilt auf Getränk und Kopfraum, mit der eingeschlossenen Luft.</translation>
        </message>
        <message>
            <source>Gluconic acid</source>
            <translation>Gluconsäure</translation>
        </message>
        <message>
            <source>Grades a starter by its pH, its titrated acidity or, failing both, its taste.</source>
            <translation>Beurteilt Ansatzflüssigkeit nach ihrem pH, ihrer titrierten Säure oder, wenn beides fehlt, nach ihrem Geschmack.</translation>
        </message>
        <message>
            <source>Grades and usual amounts</source>
            <translation>Stufen und übliche Mengen</translation>
        </message>
        <message>
            <source>Grams per litre in Brix and gravity</source>
            <translation>Gramm je Liter in Brix und Dichte</translation>
        </message>
        <message>
            <source>Gravity in Brix and grams per litre</source>
            <translation>Dichte in Brix und Gramm je Liter</translation>
        </message>
        <message>
            <source>Has it been souring for too long?</source>
            <translation>Säuert es schon zu lange?</translation>
        </message>
        <message>
            <source>Heat</source>
            <translation>Wärme</translation>
        </message>
        <message>
            <source>Heat content is kept</source>
            <translation>Der Wärmeinhalt bleibt erhalten</translation>
        </message>
        <message>
            <source>Heat content is kept, melting included</source>
            <translation>Der Wärmeinhalt bleibt erhalten, Schmelzen inbegriffen</translation>
        </message>
        <message>
            <source>Heated or pasteurised?</source>
            <translation>Erhitzt oder pasteurisiert?</translation>
        </message>
        <message>
            <source>Heating the drink in an open pot, and never in a closed bottle.</source>
            <translation>Das Getränk in einem offenen Topf erhitzen, niemals in einer geschlossenen Flasche.</translation>
        </message>
        <message>
            <source>Held against the most cautious published advice, and for whom it is not.</source>
            <translation>Verglichen mit dem vorsichtigsten veröffentlichten Rat, und für wen es nichts ist.</translation>
        </message>
        <message>
            <source>Herbs differ too much: some hold no caffeine, some a lot. No figure is given.</source>
            <translation>Kräuter sind zu verschieden: Manche enthalten kein Koffein, manche viel. Es wird keine Zahl genannt.</translation>
        </message>
        <message>
            <source>Holds to the brim</source>
            <translation>Fasst randvoll</translation>
        </message>
        <message>
            <source>Hot concentrate, cold water and ice: the temperature, or the ice that is left.</source>
            <translation>Heißes Konzentrat, kaltes Wasser und Eis: die Temperatur oder das Eis, das übrig bleibt.</translation>
        </message>
        <message>
            <source>Hot water at</source>
            <translation>Heißes Wasser mit</translation>
        </message>
        <message>
            <source>Hot water or tea</source>
            <translation>Heißes Wasser oder Tee</translation>
        </message>
        <message>
            <source>Hot water, at most</source>
            <translation>Heißes Wasser, höchstens</translation>
        </message>
        <message>
            <source>Hours in which it is lukewarm: germs can grow and nothing is sour yet.</source>
            <translation>Stunden, in denen es lauwarm ist: Keime können wachsen, und noch ist nichts sauer.</translation>
        </message>
        <message>
            <source>Household weights of sugar</source>
            <translation>Haushaltsgewichte von Zucker</translation>
        </message>
        <message>
            <source>How cold</source>
            <translation>Wie kalt</translation>
        </message>
        <message>
            <source>How cold does ice make it?</source>
            <translation>Wie kalt macht es Eis?</translation>
        </message>
        <message>
            <source>How far off a meter is that takes the liquid for another temperature.</source>
            <translation>Wie weit ein Messgerät danebenliegt, das eine falsche Temperatur der Flüssigkeit annimmt.</translation>
        </message>
        <message>
            <source>How fast yeast works</source>
            <translation>Wie schnell Hefe arbeitet</translation>
        </message>
        <message>
            <source>How fizzy is it at this pressure?</source>
            <translation>Wie viel Kohlensäure bei diesem Druck?</translation>
        </message>
        <message>
            <source>How high does it stand in the vessel?</source>
            <translation>Wie hoch steht es im Gefäß?</translation>
        </message>
        <message>
            <source>How hot</source>
            <translation>Wie heiß</translation>
        </message>
        <message>
            <source>How hot is boiling water up here?</source>
            <translation>Wie heiß ist kochendes Wasser hier oben?</translation>
        </message>
        <message>
            <source>How long does it keep in the cold?</source>
            <translation>Wie lange hält es sich in der Kälte?</translation>
        </message>
        <message>
            <source>How long does yeast need for this sugar?</source>
            <translation>Wie lange braucht Hefe für diesen Zucker?</translation>
        </message>
        <message>
            <source>How long may sweet tea stand without starter?</source>
            <translation>Wie lange darf gesüßter Tee ohne Starter stehen?</translation>
        </message>
        <message>
            <source>How many tea bags is that?</source>
            <translation>Wie viele Teebeutel sind das?</translation>
        </message>
        <message>
            <source>How much acid the starter holds is assumed: titrating it makes this sharper.</source>
            <translation>Wie viel Säure die Ansatzflüssigkeit enthält, ist angenommen: Titrieren macht das Ergebnis genauer.</translation>
        </message>
        <message>
            <source>How much alcohol, by hydrometer and refractometer?</source>
            <translation>Wie viel Alkohol, laut Spindel und Refraktometer?</translation>
        </message>
        <message>
            <source>How much alcohol, from the sugar that is gone?</source>
            <translation>Wie viel Alkohol, nach dem verschwundenen Zucker?</translation>
        </message>
        <message>
            <source>How much caffeine does the tea give?</source>
            <translation>Wie viel Koffein gibt der Tee ab?</translation>
        </message>
        <message>
            <source>How much gas is in it already?</source>
            <translation>Wie viel Gas ist schon darin?</translation>
        </message>
        <message>
            <source>How much ice cools it to where I want it?</source>
            <translation>Wie viel Eis kühlt es wie gewünscht?</translation>
        </message>
        <message>
            <source>How much is in it, by the ruler?</source>
            <translation>Wie viel ist darin, laut Lineal?</translation>
        </message>
        <message>
            <source>How much of it in a day?</source>
            <translation>Wie viel davon am Tag?</translation>
        </message>
        <message>
            <source>How much of the water may be hot?</source>
            <translation>Wie viel vom Wasser darf heiß sein?</translation>
        </message>
        <message>
            <source>How much room does sugar take?</source>
            <translation>Wie viel Platz braucht Zucker?</translation>
        </message>
        <message>
            <source>How much starter for a start pH?</source>
            <translation>Wie viel Starter für einen Start-pH?</translation>
        </message>
        <message>
            <source>How much sugar for fizz, and will the bottles stand it?</source>
            <translation>Wie viel Zucker für Kohlensäure, und halten die Flaschen das aus?</translation>
        </message>
        <message>
            <source>How strong is my bleach rinse?</source>
            <translation>Wie stark ist meine Bleichspülung?</translation>
        </message>
        <message>
            <source>How strong is my starter?</source>
            <translation>Wie stark ist mein Starter?</translation>
        </message>
        <message>
            <source>How sure is a pH reading?</source>
            <translation>Wie sicher ist eine pH-Messung?</translation>
        </message>
        <message>
            <source>How warm is hot and cold together?</source>
            <translation>Wie warm sind heiß und kalt zusammen?</translation>
        </message>
        <message>
            <source>Hydrometer, at 20 °C, gas driven out</source>
            <translation>Spindel, bei 20 °C, Gas ausgetrieben</translation>
        </message>
        <message>
            <source>Ice</source>
            <translation>Eis</translation>
        </message>
        <message>
            <source>Ice left</source>
            <translation>Eis übrig</translation>
        </message>
        <message>
            <source>Ideal slope at this temperature, for each pH</source>
            <translation>Ideale Steilheit bei dieser Temperatur, je pH</translation>
        </message>
        <message>
            <source>If all sugar ferments, at the warmest</source>
            <translation>Wenn aller Zucker vergärt, bei größter Wärme</translation>
        </message>
        <message>
            <source>In a closed bottle?</source>
            <translation>In geschlossener Flasche?</translation>
        </message>
        <message>
            <source>In a litre</source>
            <translation>In einem Liter</translation>
        </message>
        <message>
            <source>Is it cool enough for the culture?</source>
            <translation>Ist es kühl genug für die Kultur?</translation>
        </message>
        <message>
            <source>Is it hot enough to end fermenting?</source>
            <translation>Ist es heiß genug, um die Gärung zu beenden?</translation>
        </message>
        <message>
            <source>Is it kept cold enough?</source>
            <translation>Steht es kalt genug?</translation>
        </message>
        <message>
            <source>Is it sour enough to drink or bottle?</source>
            <translation>Ist es sauer genug zum Trinken oder Abfüllen?</translation>
        </message>
        <message>
            <source>Is my pH meter still good?</source>
            <translation>Ist mein pH-Meter noch gut?</translation>
        </message>
        <message>
            <source>Is this pH in time?</source>
            <translation>Kommt dieser pH rechtzeitig?</translation>
        </message>
        <message>
            <source>It comes out between pH {start_ph_low} and {start_ph_high} about 8 times in 10.</source>
            <translation>Es liegt in etwa 8 von 10 Fällen zwischen pH {start_ph_low} und {start_ph_high}.</translation>
        </message>
        <message>
            <source>It has stood for</source>
            <translation>Es steht schon</translation>
        </message>
        <message>
            <source>It holds up to {volumes}; a jar whose yeasts have calmed down may hold much less.</source>
            <translation>Es enthält bis zu {volumes}; ein Glas, dessen Hefen zur Ruhe gekommen sind, enthält vielleicht viel weniger.</translation>
        </message>
        <message>
            <source>It lies between pH {true_low} and {true_high} about 8 times in 10.</source>
            <translation>Er liegt in etwa 8 von 10 Fällen zwischen pH {true_low} und {true_high}.</translation>
        </message>
        <message>
            <source>It may be off by</source>
            <translation>Mögliche Abweichung</translation>
        </message>
        <message>
            <source>It never gets there in such a place: the wanted temperature must be above it.</source>
            <translation>An so einem Ort kommt es nie dorthin: Die gewünschte Temperatur muss über der des Ortes liegen.</translation>
        </message>
        <message>
            <source>It reads</source>
            <translation>Es zeigt</translation>
        </message>
        <message>
            <source>It rests on assumed figures alone, not on your own readings.</source>
            <translation>Es beruht nur auf angenommenen Zahlen, nicht auf deinen Messungen.</translation>
        </message>
        <message>
            <source>It shows</source>
            <translation>Es zeigt</translation>
        </message>
        <message>
            <source>It stands at</source>
            <translation>Es steht bei</translation>
        </message>
        <message>
            <source>It tastes</source>
            <translation>Es schmeckt</translation>
        </message>
        <message>
            <source>Its acidity</source>
            <translation>Säure darin</translation>
        </message>
        <message>
            <source>Its acidity is about {acidity}; from what you gave it may lie anywhere between {acidity_low} and {acidity_high}.</source>
            <translation>Die Säure liegt bei etwa {acidity}; nach deinen Angaben kann sie irgendwo zwischen {acidity_low} und {acidity_high} liegen.</translation>
        </message>
        <message>
            <source>Its acidity, if titrated</source>
            <translation>Säure darin, falls titriert</translation>
        </message>
        <message>
            <source>Its temperature</source>
            <translation>Temperatur darin</translation>
        </message>
        <message>
            <source>Label and cost</source>
            <translation>Etikett und Kosten</translation>
        </message>
        <message>
            <source>Lactic acid</source>
            <translation>Milchsäure</translation>
        </message>
        <message>
            <source>Last digit of the scale</source>
            <translation>Letzte Stelle der Waage</translation>
        </message>
        <message>
            <source>Latest reading</source>
            <translation>Letzte Messung</translation>
        </message>
        <message>
            <source>Least squares on the Nernst line, and its limits</source>
            <translation>Kleinste Quadrate zur Nernst-Geraden und ihre Grenzen</translation>
        </message>
        <message>
            <source>Left empty</source>
            <translation>Bleibt leer</translation>
        </message>
        <message>
            <source>Left in the drink</source>
            <translation>Im Getränk übrig</translation>
        </message>
        <message>
            <source>Left to the brim</source>
            <translation>Frei bis zum Rand</translation>
        </message>
        <message>
            <source>Level, headspace and surface of an amount in a vessel.</source>
            <translation>Füllstand, Kopfraum und Oberfläche einer Menge in einem Gefäß.</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Grenzwert</translation>
        </message>
        <message>
            <source>Limit to compare with</source>
            <translation>Grenzwert zum Vergleich</translation>
        </message>
        <message>
            <source>Limits and safety</source>
            <translation>Grenzwerte und Sicherheit</translation>
        </message>
        <message>
            <source>Limits for bottles</source>
            <translation>Grenzwerte für Flaschen</translation>
        </message>
        <message>
            <source>Limits for slope and offset</source>
            <translation>Grenzwerte für Steilheit und Nullpunkt</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Flüssigkeit</translation>
        </message>
        <message>
            <source>Liquid in it</source>
            <translation>Flüssigkeit darin</translation>
        </message>
        <message>
            <source>Lye that plain water took</source>
            <translation>Lauge, die reines Wasser nahm</translation>
        </message>
        <message>
            <source>Lye times its strength, over the sample</source>
            <translation>Lauge mal Stärke, durch die Probe</translation>
        </message>
        <message>
            <source>Lye used</source>
            <translation>Verbrauchte Lauge</translation>
        </message>
        <message>
            <source>Made for (printed on it)</source>
            <translation>Gemacht für (steht darauf)</translation>
        </message>
        <message>
            <source>Makers usually take (common practice)</source>
            <translation>Üblicherweise genommen (gängige Praxis)</translation>
        </message>
        <message>
            <source>Makers usually take of such a one</source>
            <translation>Davon üblicherweise genommen</translation>
        </message>
        <message>
            <source>Malic acid</source>
            <translation>Apfelsäure</translation>
        </message>
        <message>
            <source>Mark it at</source>
            <translation>Marke bei</translation>
        </message>
        <message>
            <source>Mark {n}: height</source>
            <translation>Marke {n}: Höhe</translation>
        </message>
        <message>
            <source>Mark {n}: holds</source>
            <translation>Marke {n}: fasst</translation>
        </message>
        <message>
            <source>Mass over the density of the solution</source>
            <translation>Masse durch die Dichte der Lösung</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>May this juice or fruit go in?</source>
            <translation>Darf dieser Saft oder dieses Obst hinein?</translation>
        </message>
        <message>
            <source>May this material touch it?</source>
            <translation>Darf dieses Material daran kommen?</translation>
        </message>
        <message>
            <source>Measure it once it is mixed: the figure is an estimate.</source>
            <translation>Miss nach dem Mischen: Die Zahl ist eine Schätzung.</translation>
        </message>
        <message>
            <source>Measure the pH once it is mixed: the figure is an estimate.</source>
            <translation>Miss den pH nach dem Mischen: Die Zahl ist eine Schätzung.</translation>
        </message>
        <message>
            <source>Millivolts</source>
            <translation>Millivolt</translation>
        </message>
        <message>
            <source>Mixed temperature</source>
            <translation>Mischtemperatur</translation>
        </message>
        <message>
            <source>Molar masses</source>
            <translation>Molare Massen</translation>
        </message>
        <message>
            <source>Monotone cubic through your marks</source>
            <translation>Monotone kubische Kurve durch deine Marken</translation>
        </message>
        <message>
            <source>Nearest whole number of bags</source>
            <translation>Nächste ganze Zahl von Beuteln</translation>
        </message>
        <message>
            <source>Neither sugar nor instruments can settle a legal limit: only a laboratory can. It also goes on rising in a closed bottle. Your local law decides.</source>
            <translation>Weder Zucker noch Geräte können über einen gesetzlichen Grenzwert entscheiden: Das kann nur ein Labor. In der geschlossenen Flasche steigt er auch weiter. Es gilt das Recht deines Landes.</translation>
        </message>
        <message>
            <source>Nernst line of the calibration, with the drift since</source>
            <translation>Nernst-Gerade der Kalibrierung, mit der Drift seither</translation>
        </message>
        <message>
            <source>Never mix bleach with acid, vinegar or kombucha: that sets chlorine gas free.</source>
            <translation>Mische Chlorbleiche nie mit Säure, Essig oder Kombucha: Das setzt Chlorgas frei.</translation>
        </message>
        <message>
            <source>Newton's law of cooling, with the room's temperature given</source>
            <translation>Newtons Abkühlungsgesetz, mit gegebener Raumtemperatur</translation>
        </message>
        <message>
            <source>No</source>
            <translation>Nein</translation>
        </message>
        <message>
            <source>No drink of this pH can hold so much acid. Please check both.</source>
            <translation>Kein Getränk mit diesem pH kann so viel Säure enthalten. Bitte prüfe beides.</translation>
        </message>
        <message>
            <source>No drink reads like this on both. Please measure both again.</source>
            <translation>Kein Getränk zeigt auf beiden solche Werte. Bitte miss beides noch einmal.</translation>
        </message>
        <message>
            <source>No figure promises that a bottle holds: glass ages and chips. Open one a day, and chill them all in time.</source>
            <translation>Keine Zahl verspricht, dass eine Flasche hält: Glas altert und bekommt Risse. Öffne jeden Tag eine und kühle alle rechtzeitig.</translation>
        </message>
        <message>
            <source>None</source>
            <translation>Keiner</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>Nicht bekannt</translation>
        </message>
        <message>
            <source>Of it sugar</source>
            <translation>Davon Zucker</translation>
        </message>
        <message>
            <source>Of it tea</source>
            <translation>Davon Tee</translation>
        </message>
        <message>
            <source>Offset at pH 7</source>
            <translation>Nullpunkt bei pH 7</translation>
        </message>
        <message>
            <source>On a gauge</source>
            <translation>Am Manometer</translation>
        </message>
        <message>
            <source>On target, at the warmest</source>
            <translation>Am Ziel, bei größter Wärme</translation>
        </message>
        <message>
            <source>Once it has settled, {gauge_pressure_bar} holds {volumes}, good to some 4 per cent. A bottle with trapped air holds less.</source>
            <translation>Im Gleichgewicht stehen {gauge_pressure_bar} für {volumes}, auf rund 4 Prozent genau. Eine Flasche mit eingeschlossener Luft enthält weniger.</translation>
        </message>
        <message>
            <source>One bag</source>
            <translation>Ein Beutel</translation>
        </message>
        <message>
            <source>One pair of readings of your own drink links the two; then either tells the other.</source>
            <translation>Ein Messpaar aus deinem Getränk verbindet beide; danach sagt eines das andere.</translation>
        </message>
        <message>
            <source>Open surface</source>
            <translation>Offene Oberfläche</translation>
        </message>
        <message>
            <source>Open surface, about</source>
            <translation>Offene Oberfläche, etwa</translation>
        </message>
        <message>
            <source>Paper and string are weighed too.</source>
            <translation>Papier und Faden werden mitgewogen.</translation>
        </message>
        <message>
            <source>Plain arithmetic with the figures you entered; it needs no source.</source>
            <translation>Einfache Rechnung mit deinen Eingaben; sie braucht keine Quelle.</translation>
        </message>
        <message>
            <source>Please choose one of those offered.</source>
            <translation>Bitte wähle etwas aus dem Angebot.</translation>
        </message>
        <message>
            <source>Please enter a whole number.</source>
            <translation>Bitte gib eine ganze Zahl ein.</translation>
        </message>
        <message>
            <source>Please enter at least two readings.</source>
            <translation>Bitte gib mindestens zwei Messungen ein.</translation>
        </message>
        <message>
            <source>Please enter the pressure for which the maker rates the bottle.</source>
            <translation>Bitte gib den Druck ein, für den der Hersteller die Flasche auslegt.</translation>
        </message>
        <message>
            <source>Please fill this in.</source>
            <translation>Bitte fülle das aus.</translation>
        </message>
        <message>
            <source>Pour in known amounts, mark the heights; any height between tells its volume.</source>
            <translation>Gieß bekannte Mengen ein, markiere die Höhen; jede Höhe dazwischen sagt dann ihr Volumen.</translation>
        </message>
        <message>
            <source>Pressure of air and water vapour</source>
            <translation>Druck von Luft und Wasserdampf</translation>
        </message>
        <message>
            <source>Price of the sugar</source>
            <translation>Preis des Zuckers</translation>
        </message>
        <message>
            <source>Price of the tea</source>
            <translation>Preis des Tees</translation>
        </message>
        <message>
            <source>Price over pack, times what was used, in exact decimals</source>
            <translation>Preis durch Packung mal Verbrauch, mit exakten Dezimalzahlen</translation>
        </message>
        <message>
            <source>Printed table, straight lines between its rows</source>
            <translation>Gedruckte Tabelle, zwischen den Zeilen Geraden</translation>
        </message>
        <message>
            <source>Published limits and advice</source>
            <translation>Veröffentlichte Grenzwerte und Ratschläge</translation>
        </message>
        <message>
            <source>Rated for, if rated</source>
            <translation>Ausgelegt für, falls angegeben</translation>
        </message>
        <message>
            <source>Ratio of the Nernst slopes</source>
            <translation>Verhältnis der Nernst-Steilheiten</translation>
        </message>
        <message>
            <source>Read from a paper strip?</source>
            <translation>Vom Papierstreifen abgelesen?</translation>
        </message>
        <message>
            <source>Read with</source>
            <translation>Gemessen mit</translation>
        </message>
        <message>
            <source>Reading {n}: minute</source>
            <translation>Messung {n}: Minute</translation>
        </message>
        <message>
            <source>Reading {n}: temperature</source>
            <translation>Messung {n}: Temperatur</translation>
        </message>
        <message>
            <source>Refraction of dilute alcohol and acid</source>
            <translation>Lichtbrechung von verdünntem Alkohol und verdünnter Säure</translation>
        </message>
        <message>
            <source>Refractive index of sugar solution by temperature</source>
            <translation>Brechungsindex von Zuckerlösung je nach Temperatur</translation>
        </message>
        <message>
            <source>Refractometer, in the same sample</source>
            <translation>Refraktometer, in derselben Probe</translation>
        </message>
        <message>
            <source>Room above it</source>
            <translation>Raum darüber</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Saturated under its own gas</source>
            <translation>Gesättigt unter seinem eigenen Gas</translation>
        </message>
        <message>
            <source>Saved against the shop</source>
            <translation>Gespart gegenüber Laden</translation>
        </message>
        <message>
            <source>Second buffer</source>
            <translation>Zweiter Puffer</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>Share of starter</source>
            <translation>Starteranteil</translation>
        </message>
        <message>
            <source>Share of the whole</source>
            <translation>Anteil am Ganzen</translation>
        </message>
        <message>
            <source>Shown in the first</source>
            <translation>Anzeige im ersten</translation>
        </message>
        <message>
            <source>Shown in the second</source>
            <translation>Anzeige im zweiten</translation>
        </message>
        <message>
            <source>Shown in the third</source>
            <translation>Anzeige im dritten</translation>
        </message>
        <message>
            <source>Slope and offset of the electrode from two or three buffers.</source>
            <translation>Steilheit und Nullpunkt der Elektrode aus zwei oder drei Puffern.</translation>
        </message>
        <message>
            <source>Slope, of the ideal electrode's</source>
            <translation>Steilheit, gemessen an der idealen</translation>
        </message>
        <message>
            <source>So that the mix ends at the temperature you want, without waiting.</source>
            <translation>Damit die Mischung ohne Warten die gewünschte Temperatur erreicht.</translation>
        </message>
        <message>
            <source>Solubility of carbon dioxide, with sugar and alcohol</source>
            <translation>Löslichkeit von Kohlendioxid, mit Zucker und Alkohol</translation>
        </message>
        <message>
            <source>Somewhere between {days_low} and {days_high}: only looking at the bottles tells.</source>
            <translation>Irgendwo zwischen {days_low} und {days_high}: Nur ein Blick auf die Flaschen sagt es.</translation>
        </message>
        <message>
            <source>Specific gravity 20/20</source>
            <translation>Relative Dichte 20/20</translation>
        </message>
        <message>
            <source>Specific gravity at 20 °C</source>
            <translation>Relative Dichte bei 20 °C</translation>
        </message>
        <message>
            <source>Standard atmosphere</source>
            <translation>Standardatmosphäre</translation>
        </message>
        <message>
            <source>Stands above the foot</source>
            <translation>Steht über dem Boden</translation>
        </message>
        <message>
            <source>Stands at</source>
            <translation>Steht bei</translation>
        </message>
        <message>
            <source>Start pH</source>
            <translation>Start-pH</translation>
        </message>
        <message>
            <source>Start pH with that much</source>
            <translation>Start-pH mit so viel</translation>
        </message>
        <message>
            <source>Starter in it</source>
            <translation>Starter darin</translation>
        </message>
        <message>
            <source>Starter to put in</source>
            <translation>Starter, der hineinkommt</translation>
        </message>
        <message>
            <source>Still to wait, from the latest reading</source>
            <translation>Noch zu warten, ab der letzten Messung</translation>
        </message>
        <message>
            <source>Straight lines between the points of the outline</source>
            <translation>Geraden zwischen den Punkten des Umrisses</translation>
        </message>
        <message>
            <source>Strength of the lye</source>
            <translation>Stärke der Lauge</translation>
        </message>
        <message>
            <source>Strong base that moves it by one pH</source>
            <translation>Starke Base, die den pH um eins verschiebt</translation>
        </message>
        <message>
            <source>Strong-ion excess</source>
            <translation>Überschuss starker Ionen</translation>
        </message>
        <message>
            <source>Strong-ion excess learnt from one pair, kept for the rest</source>
            <translation>Überschuss starker Ionen, aus einem Paar gelernt, für den Rest beibehalten</translation>
        </message>
        <message>
            <source>Strong-ion excess of the pair</source>
            <translation>Überschuss starker Ionen des Paars</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Sugar I add, if I know</source>
            <translation>Zugabe an Zucker, falls bekannt</translation>
        </message>
        <message>
            <source>Sugar at the start</source>
            <translation>Zucker am Anfang</translation>
        </message>
        <message>
            <source>Sugar in a litre</source>
            <translation>Zucker je Liter</translation>
        </message>
        <message>
            <source>Sugar in a litre at 20 °C</source>
            <translation>Zucker je Liter bei 20 °C</translation>
        </message>
        <message>
            <source>Sugar in cups and spoons</source>
            <translation>Zucker in Tassen und Löffeln</translation>
        </message>
        <message>
            <source>Sugar in the drink</source>
            <translation>Zucker im Getränk</translation>
        </message>
        <message>
            <source>Sugar in the fruit, at least</source>
            <translation>Zucker im Obst, mindestens</translation>
        </message>
        <message>
            <source>Sugar in the fruit, at most</source>
            <translation>Zucker im Obst, höchstens</translation>
        </message>
        <message>
            <source>Sugar in the sweet tea</source>
            <translation>Zucker im gesüßten Tee</translation>
        </message>
        <message>
            <source>Sugar left in the drink, fruit and added sugar are one and the same to the yeast.</source>
            <translation>Zucker aus dem Getränk, aus Obst und zugegebener Zucker sind für die Hefe ein und dasselbe.</translation>
        </message>
        <message>
            <source>Sugar left, at least</source>
            <translation>Restzucker, mindestens</translation>
        </message>
        <message>
            <source>Sugar left, at most</source>
            <translation>Restzucker, höchstens</translation>
        </message>
        <message>
            <source>Sugar left, likely</source>
            <translation>Restzucker, wahrscheinlich</translation>
        </message>
        <message>
            <source>Sugar raises both readings, alcohol raises one and lowers the other.</source>
            <translation>Zucker erhöht beide Messwerte, Alkohol erhöht den einen und senkt den anderen.</translation>
        </message>
        <message>
            <source>Sugar still in it, at least</source>
            <translation>Noch Zucker darin, mindestens</translation>
        </message>
        <message>
            <source>Sugar still in it, at most</source>
            <translation>Noch Zucker darin, höchstens</translation>
        </message>
        <message>
            <source>Sugar stirred in</source>
            <translation>Eingerührter Zucker</translation>
        </message>
        <message>
            <source>Sugar to add</source>
            <translation>Zucker zum Zugeben</translation>
        </message>
        <message>
            <source>Sugar to add to all of it</source>
            <translation>Zucker zum Zugeben, für alles</translation>
        </message>
        <message>
            <source>Sugar to add, the pressure it makes, and the worst case if nobody chills.</source>
            <translation>Zucker zum Zugeben, der Druck daraus und der schlimmste Fall, wenn niemand kühlt.</translation>
        </message>
        <message>
            <source>Sugar to ferment</source>
            <translation>Zucker zum Vergären</translation>
        </message>
        <message>
            <source>Sugar used</source>
            <translation>Verbrauchter Zucker</translation>
        </message>
        <message>
            <source>Sugar used up in a litre each day</source>
            <translation>Verbrauchter Zucker je Liter und Tag</translation>
        </message>
        <message>
            <source>Surface to volume</source>
            <translation>Oberfläche zu Volumen</translation>
        </message>
        <message>
            <source>Swelling of the drink</source>
            <translation>Ausdehnung des Getränks</translation>
        </message>
        <message>
            <source>TA NaOH sodium hydroxide phenolphthalein end point tartaric</source>
            <translation>Gesamtsäure NaOH Natronlauge Phenolphthalein Endpunkt Weinsäure</translation>
        </message>
        <message>
            <source>TA titratable paired relation convert</source>
            <translation>Gesamtsäure titrierbar Messpaar Beziehung umrechnen</translation>
        </message>
        <message>
            <source>Take up to {hot} of the water hot and the rest cold, and it should come out near {target_c}, give or take what vessel and losses do. Measure before the culture goes in.</source>
            <translation>Nimm bis zu {hot} vom Wasser heiß und den Rest kalt, dann sollte es nahe {target_c} herauskommen, plus oder minus das, was Gefäß und Verluste ausmachen. Miss, bevor die Kultur hineinkommt.</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>Tea and starter</source>
            <translation>Tee und Starter</translation>
        </message>
        <message>
            <source>Tea bags</source>
            <translation>Teebeutel</translation>
        </message>
        <message>
            <source>Tea in one bag</source>
            <translation>Tee in einem Beutel</translation>
        </message>
        <message>
            <source>Tea in the sweet tea</source>
            <translation>Tee im gesüßten Tee</translation>
        </message>
        <message>
            <source>Tea to a litre of drink</source>
            <translation>Tee je Liter Getränk</translation>
        </message>
        <message>
            <source>Tea used</source>
            <translation>Verbrauchter Tee</translation>
        </message>
        <message>
            <source>Tea wanted</source>
            <translation>Gewünschter Tee</translation>
        </message>
        <message>
            <source>Temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>Temperature of the bottle</source>
            <translation>Temperatur der Flasche</translation>
        </message>
        <message>
            <source>Temperature of the buffers</source>
            <translation>Temperatur der Puffer</translation>
        </message>
        <message>
            <source>Temperature of the drink</source>
            <translation>Temperatur des Getränks</translation>
        </message>
        <message>
            <source>Temperature of the ice</source>
            <translation>Temperatur des Eises</translation>
        </message>
        <message>
            <source>Temperature of the liquid</source>
            <translation>Temperatur der Flüssigkeit</translation>
        </message>
        <message>
            <source>Temperature of the room</source>
            <translation>Temperatur des Raumes</translation>
        </message>
        <message>
            <source>Temperature of the sugar</source>
            <translation>Temperatur des Zuckers</translation>
        </message>
        <message>
            <source>Temperature reached</source>
            <translation>Erreichte Temperatur</translation>
        </message>
        <message>
            <source>Temperature there</source>
            <translation>Temperatur dort</translation>
        </message>
        <message>
            <source>That is {bags} for {mass_g}.</source>
            <translation>Das sind {bags} für {mass_g}.</translation>
        </message>
        <message>
            <source>The acidity to tell the pH for</source>
            <translation>Säure, zu der der pH gesucht ist</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>Die Menge</translation>
        </message>
        <message>
            <source>The amount of starter that brings tea and starter together to a pH you want.</source>
            <translation>Die Menge Ansatzflüssigkeit, die Tee und Ansatzflüssigkeit zusammen auf einen gewünschten pH bringt.</translation>
        </message>
        <message>
            <source>The batch gives</source>
            <translation>Der Ansatz ergibt</translation>
        </message>
        <message>
            <source>The boiling point of water by altitude, in ordinary weather.</source>
            <translation>Der Siedepunkt von Wasser nach Höhe, bei gewöhnlichem Wetter.</translation>
        </message>
        <message>
            <source>The bottles stand at</source>
            <translation>Die Flaschen stehen bei</translation>
        </message>
        <message>
            <source>The buffers must lie at least one pH apart.</source>
            <translation>Die Puffer müssen mindestens ein pH auseinanderliegen.</translation>
        </message>
        <message>
            <source>The carbon dioxide in a drink that has settled under a gauge pressure.</source>
            <translation>Das Kohlendioxid in einem Getränk, das unter einem Überdruck zur Ruhe gekommen ist.</translation>
        </message>
        <message>
            <source>The doubt of a paper strip, or of a meter nobody calibrated.</source>
            <translation>Die Unsicherheit eines Papierstreifens oder eines Messgeräts, das niemand kalibriert hat.</translation>
        </message>
        <message>
            <source>The drink's pH</source>
            <translation>pH des Getränks</translation>
        </message>
        <message>
            <source>The electrode gives {slope} of the ideal slope and is {offset} off at pH 7.</source>
            <translation>Die Elektrode gibt {slope} der idealen Steilheit und liegt bei pH 7 um {offset} daneben.</translation>
        </message>
        <message>
            <source>The figure stays between nothing and all of the water: outside, no share of hot water gives that temperature.</source>
            <translation>Die Zahl bleibt zwischen nichts und allem Wasser: Außerhalb ergibt kein Anteil heißes Wasser diese Temperatur.</translation>
        </message>
        <message>
            <source>The gauge on a bottle shows this. Is it too much?</source>
            <translation>Das zeigt das Manometer einer Flasche. Ist es zu viel?</translation>
        </message>
        <message>
            <source>The gauge pressure over a drink that holds so many volumes of carbon dioxide.</source>
            <translation>Der Überdruck über einem Getränk, das so viele Volumen Kohlendioxid enthält.</translation>
        </message>
        <message>
            <source>The gauge shows</source>
            <translation>Das Manometer zeigt</translation>
        </message>
        <message>
            <source>The higher figure counts against the bottle: trapped air needs hours to days to dissolve.</source>
            <translation>Die höhere Zahl zählt gegen die Flasche: Eingeschlossene Luft braucht Stunden bis Tage, um sich zu lösen.</translation>
        </message>
        <message>
            <source>The highest mark holds</source>
            <translation>Die höchste Marke fasst</translation>
        </message>
        <message>
            <source>The hydrometer may be off by</source>
            <translation>Mögliche Abweichung der Spindel</translation>
        </message>
        <message>
            <source>The ice is water too: count it in, and use only ice that is good to drink.</source>
            <translation>Auch das Eis ist Wasser: Rechne es mit, und nimm nur Eis in Trinkwasserqualität.</translation>
        </message>
        <message>
            <source>The ice is water too: leave that much out of the cold water.</source>
            <translation>Auch das Eis ist Wasser: Lass so viel vom kalten Wasser weg.</translation>
        </message>
        <message>
            <source>The ice that brings hot tea to a temperature at once.</source>
            <translation>Das Eis, das heißen Tee sofort auf eine Temperatur bringt.</translation>
        </message>
        <message>
            <source>The least must be below the likely figure, the most above it.</source>
            <translation>Der kleinste Wert muss unter dem wahrscheinlichen liegen, der größte darüber.</translation>
        </message>
        <message>
            <source>The limit</source>
            <translation>Der Grenzwert</translation>
        </message>
        <message>
            <source>The limit you chose</source>
            <translation>Dein gewählter Grenzwert</translation>
        </message>
        <message>
            <source>The meter shows</source>
            <translation>Das Messgerät zeigt</translation>
        </message>
        <message>
            <source>The meter shows in the drink</source>
            <translation>Das Messgerät zeigt im Getränk</translation>
        </message>
        <message>
            <source>The meter takes it for</source>
            <translation>Angenommene Temperatur des Geräts</translation>
        </message>
        <message>
            <source>The more surface for its volume, the faster it sours. Neck and foot follow fixed proportions; for an odd vessel measure a table of your own.</source>
            <translation>Je mehr Oberfläche im Verhältnis zum Volumen, desto schneller säuert es. Hals und Fuß folgen festen Verhältnissen; für ein ungewöhnliches Gefäß miss eine eigene Tabelle aus.</translation>
        </message>
        <message>
            <source>The most carbon dioxide that an open jar holds before it is bottled.</source>
            <translation>Das meiste Kohlendioxid, das ein offenes Glas vor dem Abfüllen enthält.</translation>
        </message>
        <message>
            <source>The pH of a finished drink, with the doubt of the reading counted in.</source>
            <translation>Der pH eines fertigen Getränks, die Unsicherheit der Messung eingerechnet.</translation>
        </message>
        <message>
            <source>The pH of sweet tea and a given amount of starter, once they are mixed.</source>
            <translation>Der pH von gesüßtem Tee und einer gegebenen Menge Ansatzflüssigkeit nach dem Mischen.</translation>
        </message>
        <message>
            <source>The pH to tell the acidity for</source>
            <translation>pH, zu dem die Säure gesucht ist</translation>
        </message>
        <message>
            <source>The part of a Brix or gravity reading that is no sugar.</source>
            <translation>Der Teil einer Brix- oder Dichtemessung, der kein Zucker ist.</translation>
        </message>
        <message>
            <source>The pot has not cooled between the readings. Please check them.</source>
            <translation>Der Topf ist zwischen den Messungen nicht abgekühlt. Bitte prüfe sie.</translation>
        </message>
        <message>
            <source>The range that the lost sugar can have left behind.</source>
            <translation>Der Bereich, den der verschwundene Zucker hinterlassen haben kann.</translation>
        </message>
        <message>
            <source>The reading and its doubt together count.</source>
            <translation>Messung und Unsicherheit zählen zusammen.</translation>
        </message>
        <message>
            <source>The readings must be taken at different moments.</source>
            <translation>Die Messungen müssen zu verschiedenen Zeiten gemacht sein.</translation>
        </message>
        <message>
            <source>The refractometer may be off by</source>
            <translation>Mögliche Abweichung des Refraktometers</translation>
        </message>
        <message>
            <source>The rinse holds about {ppm}; a bottle of bleach loses strength with age.</source>
            <translation>Die Spülung enthält etwa {ppm}; Chlorbleiche verliert in der Flasche mit der Zeit an Stärke.</translation>
        </message>
        <message>
            <source>The same in kilojoules</source>
            <translation>Dasselbe in Kilojoule</translation>
        </message>
        <message>
            <source>The shop's bottle holds</source>
            <translation>Die Flasche aus dem Laden fasst</translation>
        </message>
        <message>
            <source>The starter's pH is assumed from its taste or acidity: measuring it makes this sharper.</source>
            <translation>Der pH der Ansatzflüssigkeit ist aus Geschmack oder Säure angenommen: Messen macht das Ergebnis genauer.</translation>
        </message>
        <message>
            <source>The strong-ion excess is what tea, water and fruit bring as potassium, sodium, calcium and magnesium, less chloride and sulfate. A ripe starter has some 4 meq/L; that is an assumption.</source>
            <translation>Der Überschuss starker Ionen ist das, was Tee, Wasser und Obst an Kalium, Natrium, Calcium und Magnesium mitbringen, abzüglich Chlorid und Sulfat. Eine reife Ansatzflüssigkeit hat rund 4 meq/L; das ist eine Annahme.</translation>
        </message>
        <message>
            <source>The sugar adds</source>
            <translation>Der Zucker bringt dazu</translation>
        </message>
        <message>
            <source>The sugar's pack holds</source>
            <translation>In der Zuckerpackung sind</translation>
        </message>
        <message>
            <source>The tea's pack holds</source>
            <translation>In der Teepackung sind</translation>
        </message>
        <message>
            <source>The temperature of the sweet tea, held against your own limit.</source>
            <translation>Die Temperatur des gesüßten Tees, verglichen mit deinem eigenen Grenzwert.</translation>
        </message>
        <message>
            <source>The temperature once hot tea, cold water and sugar are stirred together.</source>
            <translation>Die Temperatur, wenn heißer Tee, kaltes Wasser und Zucker verrührt sind.</translation>
        </message>
        <message>
            <source>The temperature where the finished drink stands.</source>
            <translation>Die Temperatur dort, wo das fertige Getränk steht.</translation>
        </message>
        <message>
            <source>The usual temperature of the place where it stands.</source>
            <translation>Die übliche Temperatur des Ortes, an dem es steht.</translation>
        </message>
        <message>
            <source>The voltage must fall as the pH rises. Are two readings swapped?</source>
            <translation>Die Spannung muss fallen, wenn der pH steigt. Sind zwei Messungen vertauscht?</translation>
        </message>
        <message>
            <source>The volume of water once sugar is dissolved in it.</source>
            <translation>Das Volumen von Wasser, wenn Zucker darin gelöst ist.</translation>
        </message>
        <message>
            <source>The volume up to a height above the foot.</source>
            <translation>Das Volumen bis zu einer Höhe über dem Boden.</translation>
        </message>
        <message>
            <source>The water alone</source>
            <translation>Das Wasser allein</translation>
        </message>
        <message>
            <source>The water's alkalinity is assumed; a test strip or the supplier's report tells it.</source>
            <translation>Die Alkalinität des Wassers ist angenommen; ein Teststreifen oder die Angaben des Versorgers verraten sie.</translation>
        </message>
        <message>
            <source>The whole batch</source>
            <translation>Der ganze Ansatz</translation>
        </message>
        <message>
            <source>There is nothing to note about that yet.</source>
            <translation>Dazu ist noch nichts zu sagen.</translation>
        </message>
        <message>
            <source>These are more than can be used.</source>
            <translation>Das sind mehr, als verwendet werden können.</translation>
        </message>
        <message>
            <source>These bottles must not pass</source>
            <translation>Diese Flaschen dürfen nicht überschreiten</translation>
        </message>
        <message>
            <source>They weigh</source>
            <translation>Sie wiegen</translation>
        </message>
        <message>
            <source>Third buffer, if any</source>
            <translation>Dritter Puffer, falls vorhanden</translation>
        </message>
        <message>
            <source>This bottle is not made for pressure, so there is no pressure it may be under. Please use bottles made for fizzy drinks.</source>
            <translation>Diese Flasche ist nicht für Druck gemacht, also gibt es keinen Druck, den sie haben darf. Bitte nimm Flaschen für Sprudelgetränke.</translation>
        </message>
        <message>
            <source>This cannot be. Please check it.</source>
            <translation>Das kann nicht sein. Bitte prüfe es.</translation>
        </message>
        <message>
            <source>This figure was not read as such in a source: see where it comes from.</source>
            <translation>Diese Zahl wurde so nicht in einer Quelle gelesen: Sieh nach, woher sie kommt.</translation>
        </message>
        <message>
            <source>This goes beyond what was measured, so trust it less.</source>
            <translation>Das geht über das Gemessene hinaus, also trau ihm weniger.</translation>
        </message>
        <message>
            <source>This is not a number that can be measured.</source>
            <translation>Diese Zahl lässt sich nicht messen.</translation>
        </message>
        <message>
            <source>This is what the chemistry takes. The planner never takes less than published advice does, so that the live culture is strong enough.</source>
            <translation>So viel braucht die Chemie. Der Planer nimmt nie weniger, als veröffentlichte Ratschläge es tun, damit die lebende Kultur stark genug ist.</translation>
        </message>
        <message>
            <source>This meter would be between pH {ph_low} and {ph_high} about 8 times in 10.</source>
            <translation>Dieses Messgerät läge in etwa 8 von 10 Fällen zwischen pH {ph_low} und {ph_high}.</translation>
        </message>
        <message>
            <source>This must be above nothing.</source>
            <translation>Das muss mehr als nichts sein.</translation>
        </message>
        <message>
            <source>This must be above {low}.</source>
            <translation>Das muss über {low} liegen.</translation>
        </message>
        <message>
            <source>This must be at most {high}.</source>
            <translation>Das darf höchstens {high} sein.</translation>
        </message>
        <message>
            <source>This must lie between {low} and {high}.</source>
            <translation>Das muss zwischen {low} und {high} liegen.</translation>
        </message>
        <message>
            <source>This starter is</source>
            <translation>Dieser Starter ist</translation>
        </message>
        <message>
            <source>This very figure was read in a source.</source>
            <translation>Genau diese Zahl wurde in einer Quelle gelesen.</translation>
        </message>
        <message>
            <source>Titratable acidity to pH 8.1, as acetic acid</source>
            <translation>Titrierbare Säure bis pH 8,1, als Essigsäure</translation>
        </message>
        <message>
            <source>Titratable acidity, as acetic acid</source>
            <translation>Titrierbare Säure, als Essigsäure</translation>
        </message>
        <message>
            <source>To bottle</source>
            <translation>Abzufüllen</translation>
        </message>
        <message>
            <source>To make, starter included</source>
            <translation>Herzustellen, mit Starter</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>Zusammen</translation>
        </message>
        <message>
            <source>Told as</source>
            <translation>Angegeben als</translation>
        </message>
        <message>
            <source>Too much on a hydrometer</source>
            <translation>Zu viel auf der Spindel</translation>
        </message>
        <message>
            <source>Too much on a refractometer</source>
            <translation>Zu viel auf dem Refraktometer</translation>
        </message>
        <message>
            <source>Two laboratories with good meters still differ by about 0.1.</source>
            <translation>Zwei Labore mit guten Messgeräten weichen immer noch um etwa 0,1 voneinander ab.</translation>
        </message>
        <message>
            <source>Two readings, two unknowns: sugar and alcohol</source>
            <translation>Zwei Messungen, zwei Unbekannte: Zucker und Alkohol</translation>
        </message>
        <message>
            <source>US cup, a sixteenth of a gallon of 231 cubic inches</source>
            <translation>US-Tasse, ein Sechzehntel einer Gallone von 231 Kubikzoll</translation>
        </message>
        <message>
            <source>US cups and spoons that add up to about an amount.</source>
            <translation>US-Tassen und -Löffel, die zusammen etwa eine Menge ergeben.</translation>
        </message>
        <message>
            <source>Up to {height_cm} it holds {volume}, if it is shaped as this program assumes.</source>
            <translation>Bis {height_cm} fasst es {volume}, wenn es die Form hat, die dieses Programm annimmt.</translation>
        </message>
        <message>
            <source>Usual doubt of such a reading</source>
            <translation>Übliche Unsicherheit einer solchen Messung</translation>
        </message>
        <message>
            <source>Vapour pressure of water</source>
            <translation>Dampfdruck von Wasser</translation>
        </message>
        <message>
            <source>Vessel and losses on the way are not known; the range allows for a little of both.</source>
            <translation>Gefäß und Verluste unterwegs sind nicht bekannt; der Bereich lässt für beides etwas Spielraum.</translation>
        </message>
        <message>
            <source>Vessels</source>
            <translation>Gefäße</translation>
        </message>
        <message>
            <source>Volume by my own marks</source>
            <translation>Volumen nach eigenen Marken</translation>
        </message>
        <message>
            <source>Volumes of carbon dioxide</source>
            <translation>Volumen Kohlendioxid</translation>
        </message>
        <message>
            <source>Wanted</source>
            <translation>Gewünscht</translation>
        </message>
        <message>
            <source>Wanted once mixed</source>
            <translation>Gewünscht nach dem Mischen</translation>
        </message>
        <message>
            <source>Warmest for the culture</source>
            <translation>Höchste Temperatur für die Kultur</translation>
        </message>
        <message>
            <source>Warmest since it last made gas</source>
            <translation>Höchste Temperatur seit der letzten Gasbildung</translation>
        </message>
        <message>
            <source>Warmest the open jar was</source>
            <translation>Höchste Temperatur des offenen Glases</translation>
        </message>
        <message>
            <source>Warmest they may get</source>
            <translation>Höchste Temperatur, die kommen kann</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Wasser</translation>
        </message>
        <message>
            <source>Water added in the titration glass is no dilution: only what was poured away counts.</source>
            <translation>Wasser, das ins Titrierglas dazukommt, verdünnt nicht: Nur was weggegossen wurde, zählt.</translation>
        </message>
        <message>
            <source>Water boils at</source>
            <translation>Wasser kocht bei</translation>
        </message>
        <message>
            <source>Water in all</source>
            <translation>Wasser insgesamt</translation>
        </message>
        <message>
            <source>Weigh several at once: a kitchen scale is too coarse for a single bag.</source>
            <translation>Wiege mehrere auf einmal: Für einen einzelnen Beutel ist eine Küchenwaage zu grob.</translation>
        </message>
        <message>
            <source>Weighing is better: how tightly a cup is filled changes it by a few per cent.</source>
            <translation>Wiegen ist besser: Wie dicht eine Tasse gefüllt ist, ändert es um ein paar Prozent.</translation>
        </message>
        <message>
            <source>Weight over count, one step of the scale either way</source>
            <translation>Gewicht durch Anzahl, einen Schritt der Waage auf oder ab</translation>
        </message>
        <message>
            <source>What acidity does my titration show?</source>
            <translation>Welche Säure zeigt meine Titration?</translation>
        </message>
        <message>
            <source>What acidity goes with a pH?</source>
            <translation>Welche Säure gehört zu einem pH?</translation>
        </message>
        <message>
            <source>What bottles may be put under</source>
            <translation>Wie viel Druck Flaschen haben dürfen</translation>
        </message>
        <message>
            <source>What do alcohol and acid add to a reading?</source>
            <translation>Was ändern Alkohol und Säure an einer Messung?</translation>
        </message>
        <message>
            <source>What does a glass hold?</source>
            <translation>Was enthält ein Glas?</translation>
        </message>
        <message>
            <source>What does a litre cost?</source>
            <translation>Was kostet ein Liter?</translation>
        </message>
        <message>
            <source>What does one of my tea bags hold?</source>
            <translation>Was enthält einer meiner Teebeutel?</translation>
        </message>
        <message>
            <source>What does temperature compensation do?</source>
            <translation>Was bewirkt der Temperaturausgleich?</translation>
        </message>
        <message>
            <source>What is the limit for…?</source>
            <translation>Welcher Grenzwert gilt für…?</translation>
        </message>
        <message>
            <source>What pH goes with an acidity?</source>
            <translation>Welcher pH gehört zu einer Säure?</translation>
        </message>
        <message>
            <source>What pH has a buffer at this temperature?</source>
            <translation>Welchen pH hat ein Puffer bei dieser Temperatur?</translation>
        </message>
        <message>
            <source>What pH has a mixture of acids?</source>
            <translation>Welchen pH hat eine Mischung von Säuren?</translation>
        </message>
        <message>
            <source>What pH is behind a raw reading?</source>
            <translation>Welcher pH steckt hinter einem Rohwert?</translation>
        </message>
        <message>
            <source>What pH will my blend start at?</source>
            <translation>Mit welchem pH beginnt meine Mischung?</translation>
        </message>
        <message>
            <source>What pressure for so much fizz?</source>
            <translation>Welcher Druck für so viel Kohlensäure?</translation>
        </message>
        <message>
            <source>What pressure is in the closed bottle?</source>
            <translation>Welcher Druck ist in der geschlossenen Flasche?</translation>
        </message>
        <message>
            <source>What sour liquid stands in for weeks.</source>
            <translation>Worin saure Flüssigkeit wochenlang steht.</translation>
        </message>
        <message>
            <source>What the floating glass would show at 20 °C, and what that means.</source>
            <translation>Was die Spindel bei 20 °C zeigen würde, und was das bedeutet.</translation>
        </message>
        <message>
            <source>What the instrument would show at 20 °C, and what that means.</source>
            <translation>Was das Gerät bei 20 °C zeigen würde, und was das bedeutet.</translation>
        </message>
        <message>
            <source>What the tea itself brings is assumed from few published figures.</source>
            <translation>Was der Tee selbst mitbringt, ist aus wenigen veröffentlichten Zahlen angenommen.</translation>
        </message>
        <message>
            <source>What was entered does not settle this, so no answer is given.</source>
            <translation>Das Eingegebene reicht nicht, um das zu entscheiden, also gibt es keine Antwort.</translation>
        </message>
        <message>
            <source>When is it cool enough for the culture?</source>
            <translation>Wann ist es kühl genug für die Kultur?</translation>
        </message>
        <message>
            <source>Where does my mark for an amount go?</source>
            <translation>Wohin kommt meine Marke für eine Menge?</translation>
        </message>
        <message>
            <source>Where your local rules ask for more, follow them.</source>
            <translation>Wo deine örtlichen Regeln mehr verlangen, befolge sie.</translation>
        </message>
        <message>
            <source>White sugar, about</source>
            <translation>Weißer Zucker, etwa</translation>
        </message>
        <message>
            <source>Whole bags nearest to a weight of tea, by the weight of your own bags.</source>
            <translation>Ganze Beutel, die einer Menge Tee am nächsten kommen, nach dem Gewicht deiner Beutel.</translation>
        </message>
        <message>
            <source>Why the surface matters</source>
            <translation>Warum die Oberfläche zählt</translation>
        </message>
        <message>
            <source>Widest inner diameter</source>
            <translation>Größter Innendurchmesser</translation>
        </message>
        <message>
            <source>With the usual doubts of drops, syringe and lye it lies between {told_low} and {told_high} about 8 times in 10.</source>
            <translation>Mit den üblichen Unsicherheiten von Tropfen, Spritze und Lauge liegt sie in etwa 8 von 10 Fällen zwischen {told_low} und {told_high}.</translation>
        </message>
        <message>
            <source>With two buffers the line goes through both: only a third one can show that something is wrong.</source>
            <translation>Bei zwei Puffern geht die Gerade durch beide: Erst ein dritter kann zeigen, dass etwas nicht stimmt.</translation>
        </message>
        <message>
            <source>Without any air. Below zero means that the drink would take up more gas from its own kind than the room's pressure gives.</source>
            <translation>Ganz ohne Luft. Unter null heißt, dass das Getränk mehr von seinem eigenen Gas aufnehmen würde, als der Druck des Raumes hergibt.</translation>
        </message>
        <message>
            <source>Without compensation it shows too much by</source>
            <translation>Ohne Ausgleich zeigt es zu viel um</translation>
        </message>
        <message>
            <source>Without compensation the reading is off by {error}; a minus sign means that it shows too little.</source>
            <translation>Ohne Ausgleich liegt die Messung um {error} daneben; ein Minus heißt, dass es zu wenig zeigt.</translation>
        </message>
        <message>
            <source>Worst buffer off the line, in pH</source>
            <translation>Größte Abweichung eines Puffers von der Geraden, in pH</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Ja</translation>
        </message>
        <message>
            <source>Your limit</source>
            <translation>Dein Grenzwert</translation>
        </message>
        <message>
            <source>altitude height mountain steep</source>
            <translation>Höhe Berg Meereshöhe Tee ziehen lassen</translation>
        </message>
        <message>
            <source>an assumption of this program</source>
            <translation>eine Annahme dieses Programms</translation>
        </message>
        <message>
            <source>blend acetic gluconic lactic malic citric vinegar charge balance</source>
            <translation>Mischung Essigsäure Gluconsäure Milchsäure Apfelsäure Zitronensäure Essig Ladungsbilanz</translation>
        </message>
        <message>
            <source>caffeine leaf black green tea</source>
            <translation>Koffein Teeblatt schwarz grün Tee</translation>
        </message>
        <message>
            <source>calibration electrode millivolt correct age drift</source>
            <translation>Kalibrierung Elektrode Millivolt korrigieren Alter Drift</translation>
        </message>
        <message>
            <source>calibration electrode slope offset nernst probe replace</source>
            <translation>Kalibrierung Elektrode Steilheit Nullpunkt Nernst Sonde ersetzen</translation>
        </message>
        <message>
            <source>calibration solution phthalate phosphate borate 4.01 7.00 6.86</source>
            <translation>Kalibrierlösung Phthalat Phosphat Borat 4,01 7,00 6,86 4.01 7.00 6.86</translation>
        </message>
        <message>
            <source>chill ice cubes melt quick cooling</source>
            <translation>kühlen Eiswürfel schmelzen schnell abkühlen</translation>
        </message>
        <message>
            <source>chill ice cubes quick cooling target</source>
            <translation>kühlen Eiswürfel schnell abkühlen Ziel</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>gängige Praxis, ohne Quelle</translation>
        </message>
        <message>
            <source>convert conversion plato sucrose density SG Brix grams per litre</source>
            <translation>umrechnen Umrechnung Plato Saccharose Dichte SG Brix Gramm je Liter</translation>
        </message>
        <message>
            <source>cooling curve wait time newton minutes safe</source>
            <translation>Abkühlkurve Wartezeit Newton Minuten sicher</translation>
        </message>
        <message>
            <source>days conditioning second fermentation speed</source>
            <translation>Tage Nachgärung zweite Gärung Tempo</translation>
        </message>
        <message>
            <source>deadline seven days slow safe discard</source>
            <translation>Frist sieben Tage langsam sicher wegwerfen</translation>
        </message>
        <message>
            <source>derived</source>
            <translation>abgeleitet</translation>
        </message>
        <message>
            <source>ethanol ABV legal limit 0.5 percent balance</source>
            <translation>Ethanol Alkoholgehalt gesetzlicher Grenzwert 0,5 Prozent Bilanz</translation>
        </message>
        <message>
            <source>ethanol ABV legal limit 0.5 percent paired gravity Brix</source>
            <translation>Ethanol Alkoholgehalt gesetzlicher Grenzwert 0,5 Prozent Messpaar Dichte Brix</translation>
        </message>
        <message>
            <source>ethanol apparent refractometer hydrometer effect</source>
            <translation>Ethanol scheinbar Refraktometer Spindel Aräometer Einfluss</translation>
        </message>
        <message>
            <source>fill table measured marks crock odd shape calibrate</source>
            <translation>Fülltabelle gemessene Marken Steinguttopf ungewöhnliche Form auslitern kalibrieren</translation>
        </message>
        <message>
            <source>fill table measured marks height ruler</source>
            <translation>Fülltabelle gemessene Marken Höhe Lineal</translation>
        </message>
        <message>
            <source>from memory, not confirmed</source>
            <translation>aus dem Gedächtnis, nicht bestätigt</translation>
        </message>
        <message>
            <source>fruit juice pasteurised second fermentation</source>
            <translation>Obst Frucht Saft pasteurisiert Nachgärung zweite Gärung</translation>
        </message>
        <message>
            <source>gravity SG correction reading</source>
            <translation>Dichte SG Korrektur Messung Aräometer</translation>
        </message>
        <message>
            <source>height headspace surface ratio air fill</source>
            <translation>Höhe Kopfraum Oberfläche Verhältnis Luft füllen</translation>
        </message>
        <message>
            <source>height volume measure level</source>
            <translation>Höhe Volumen messen Füllstand</translation>
        </message>
        <message>
            <source>hot cold share mixing target</source>
            <translation>heiß kalt Anteil mischen Ziel</translation>
        </message>
        <message>
            <source>kitchen measure cup tablespoon teaspoon</source>
            <translation>Küchenmaß Tasse Esslöffel Teelöffel</translation>
        </message>
        <message>
            <source>kitchen measure leaf count</source>
            <translation>Küchenmaß Blätter Anzahl</translation>
        </message>
        <message>
            <source>kitchen measure tablespoon teaspoon cup</source>
            <translation>Küchenmaß Esslöffel Teelöffel Tasse</translation>
        </message>
        <message>
            <source>least and most reckoned</source>
            <translation>kleinster und größter Wert gerechnet</translation>
        </message>
        <message>
            <source>mix blend estimate first day</source>
            <translation>mischen Mischung Schätzung erster Tag</translation>
        </message>
        <message>
            <source>mixing temperature blend concentrate</source>
            <translation>Mischtemperatur Mischung Konzentrat</translation>
        </message>
        <message>
            <source>never: too little sugar</source>
            <translation>nie: zu wenig Zucker</translation>
        </message>
        <message>
            <source>none</source>
            <translation>keine</translation>
        </message>
        <message>
            <source>not even with all the sugar</source>
            <translation>nicht einmal mit allem Zucker</translation>
        </message>
        <message>
            <source>nutrition label energy calories kcal sugar caffeine serving</source>
            <translation>Nährwerte Etikett Energie Kalorien kcal Zucker Koffein Portion</translation>
        </message>
        <message>
            <source>over 8 bar</source>
            <translation>über 8 bar</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>pH 4.2 limit</source>
            <translation>pH 4,2 4.2 Grenzwert</translation>
        </message>
        <message>
            <source>pH of the buffer</source>
            <translation>pH des Puffers</translation>
        </message>
        <message>
            <source>pH of the drink</source>
            <translation>pH des Getränks</translation>
        </message>
        <message>
            <source>pH of the end point</source>
            <translation>pH des Endpunkts</translation>
        </message>
        <message>
            <source>pH of the starter, if measured</source>
            <translation>pH des Starters, falls gemessen</translation>
        </message>
        <message>
            <source>pH to start at</source>
            <translation>Gewünschter Start-pH</translation>
        </message>
        <message>
            <source>pH, before it is calibrated</source>
            <translation>pH, noch nicht kalibriert</translation>
        </message>
        <message>
            <source>pH, of the pair you measured</source>
            <translation>pH, aus dem gemessenen Paar</translation>
        </message>
        <message>
            <source>pasteurise heat stop yeast</source>
            <translation>pasteurisieren erhitzen stoppen Hefe</translation>
        </message>
        <message>
            <source>pressure bar psi chill burst</source>
            <translation>Druck bar psi kühlen platzen</translation>
        </message>
        <message>
            <source>price money per bottle saved shop</source>
            <translation>Preis Geld je Flasche gespart Laden</translation>
        </message>
        <message>
            <source>priming second fermentation F2 fruit carbonation burst pressure</source>
            <translation>Flaschenzucker Nachgärung zweite Gärung F2 Obst Karbonisierung platzen Druck</translation>
        </message>
        <message>
            <source>read as others quote it</source>
            <translation>gelesen, wie andere sie zitieren</translation>
        </message>
        <message>
            <source>read in the source itself</source>
            <translation>in der Quelle selbst gelesen</translation>
        </message>
        <message>
            <source>refrigerator fridge temperature</source>
            <translation>Kühlschrank Temperatur</translation>
        </message>
        <message>
            <source>residual CO2 saturated bottling</source>
            <translation>restliches CO2 gesättigt abfüllen</translation>
        </message>
        <message>
            <source>safety limits table source</source>
            <translation>Sicherheit Grenzwerte Tabelle Quelle</translation>
        </message>
        <message>
            <source>sanitise sanitize clean bleach ppm</source>
            <translation>desinfizieren sauber Chlorbleiche ppm</translation>
        </message>
        <message>
            <source>serving amount drink pregnancy children</source>
            <translation>Portion Menge trinken Schwangerschaft Kinder</translation>
        </message>
        <message>
            <source>shelf life storage days</source>
            <translation>Haltbarkeit Lagerung Tage</translation>
        </message>
        <message>
            <source>strip paper uncertainty accuracy error</source>
            <translation>Streifen Papier Unsicherheit Genauigkeit Fehler</translation>
        </message>
        <message>
            <source>temperature room cold warm</source>
            <translation>Temperatur Raum kalt warm</translation>
        </message>
        <message>
            <source>temperature warm hot pellicle starter</source>
            <translation>Temperatur warm heiß Häutchen Starter</translation>
        </message>
        <message>
            <source>time days old vinegar</source>
            <translation>Zeit Tage alt Essig</translation>
        </message>
        <message>
            <source>time hours cooling tea germs</source>
            <translation>Zeit Stunden abkühlen Tee Keime</translation>
        </message>
        <message>
            <source>vessel lead glaze ceramic metal plastic wood crystal</source>
            <translation>Gefäß Blei Glasur Keramik Metall Kunststoff Holz Kristall</translation>
        </message>
        <message>
            <source>vinegary mild weak grade quality</source>
            <translation>essigsauer mild schwach Stufe Güte</translation>
        </message>
        <message>
            <source>volume added dissolve syrup</source>
            <translation>Volumen zugeben lösen Sirup</translation>
        </message>
        <message>
            <source>weigh scale leaf</source>
            <translation>wiegen Waage Blätter</translation>
        </message>
        <message>
            <source>without bound: no room is left</source>
            <translation>ohne Grenze: Es ist kein Raum mehr da</translation>
        </message>
        <message>
            <source>{asked_l} stands {height} above the foot.</source>
            <translation>{asked_l} stehen {height} über dem Boden.</translation>
        </message>
        <message>
            <source>{hours} h {minutes} min</source>
            <translation>{hours} h {minutes} min</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <translation>{low} bis {high}</translation>
        </message>
        <message>
            <source>{mass_g} of white sugar is about {spoons}, level, good to some 5 %.</source>
            <translation>{mass_g} weißer Zucker sind etwa {spoons}, gestrichen, auf rund 5 % genau.</translation>
        </message>
        <message>
            <source>{volume_low} to {volume_high}, with the doubt of ruler and measuring jug.</source>
            <translation>{volume_low} bis {volume_high}, mit der Unsicherheit von Lineal und Messbecher.</translation>
        </message>
        <message>
            <source>{volume_l} for {total} in all, {litre} a litre. Starter, culture and your time count as free.</source>
            <translation>{volume_l} für insgesamt {total}, {litre} je Liter. Starter, Kultur und deine Zeit zählen als kostenlos.</translation>
        </message>
        <message>
            <source>{volume_l} gives {kcal_low} to {kcal_high}. For your own information: a label for sale needs a laboratory.</source>
            <translation>{volume_l} ergeben {kcal_low} bis {kcal_high}. Nur zu deiner Information: Ein Etikett für den Verkauf braucht ein Labor.</translation>
        </message>
        <message>
            <source>{volume_l} is about {cups}, level.</source>
            <translation>{volume_l} sind etwa {cups}, gestrichen.</translation>
        </message>
        <message>
            <source>{volume_l} stands {height} high, {free} below the brim.</source>
            <translation>{volume_l} stehen {height} hoch, {free} unter dem Rand.</translation>
        </message>
        <message>
            <source>{volumes} at {temperature_c} stands under {gauge}, good to some 4 per cent.</source>
            <translation>{volumes} bei {temperature_c} stehen unter {gauge}, auf rund 4 Prozent genau.</translation>
        </message>
        <message>
            <source>{water} of water becomes {whole}.</source>
            <translation>{water} Wasser werden zu {whole}.</translation>
        </message>
        <message>
            <source>{what}: once settled</source>
            <translation>{what}: im Gleichgewicht</translation>
        </message>
        <message>
            <source>{what}: while air is trapped</source>
            <translation>{what}: mit eingeschlossener Luft</translation>
        </message>
    </context>
    <context>
        <name>ReckonerNames</name>
        <message>
            <source>Acetic acid</source>
            <translation>Essigsäure</translation>
        </message>
        <message>
            <source>Borate, 9.18 at 25 °C</source>
            <translation>Borat, 9,18 bei 25 °C</translation>
        </message>
        <message>
            <source>Citric acid</source>
            <translation>Zitronensäure</translation>
        </message>
        <message>
            <source>Citric acid with its water</source>
            <translation>Zitronensäure mit ihrem Wasser</translation>
        </message>
        <message>
            <source>Gluconic acid</source>
            <translation>Gluconsäure</translation>
        </message>
        <message>
            <source>Good</source>
            <translation>Gut</translation>
        </message>
        <message>
            <source>Lactic acid</source>
            <translation>Milchsäure</translation>
        </message>
        <message>
            <source>Malic acid</source>
            <translation>Apfelsäure</translation>
        </message>
        <message>
            <source>Mild</source>
            <translation>Mild</translation>
        </message>
        <message>
            <source>Not fit to use</source>
            <translation>Nicht brauchbar</translation>
        </message>
        <message>
            <source>Phosphate, 6.86 at 25 °C</source>
            <translation>Phosphat, 6,86 bei 25 °C</translation>
        </message>
        <message>
            <source>Phthalate, 4.01 at 25 °C</source>
            <translation>Phthalat, 4,01 bei 25 °C</translation>
        </message>
        <message>
            <source>Sulfuric acid</source>
            <translation>Schwefelsäure</translation>
        </message>
        <message>
            <source>Tartaric acid</source>
            <translation>Weinsäure</translation>
        </message>
        <message>
            <source>Technical buffer 10.01</source>
            <translation>Technischer Puffer 10,01</translation>
        </message>
        <message>
            <source>Technical buffer 4.00</source>
            <translation>Technischer Puffer 4,00</translation>
        </message>
        <message>
            <source>Technical buffer 7.00</source>
            <translation>Technischer Puffer 7,00</translation>
        </message>
        <message>
            <source>Vinegary</source>
            <translation>Essigsauer</translation>
        </message>
        <message>
            <source>Weak</source>
            <translation>Schwach</translation>
        </message>
    </context>
    <context>
        <name>ReckonerPage</name>
        <message>
            <source>Not up to date: see the marked entry.</source>
            <translation>Nicht aktuell: siehe markierte Eingabe.</translation>
        </message>
        <message>
            <source>Reckon</source>
            <translation>Rechnen</translation>
        </message>
        <message>
            <source>Waiting for the marked entry.</source>
            <translation>Wartet auf die markierte Eingabe.</translation>
        </message>
    </context>
    <context>
        <name>RecoveryDialog</name>
        <message>
            <source>A new pantry begins empty. Nothing of the old one will be in it; the old file is set aside, not deleted. Press the button once more to do it.</source>
            <translation>Eine neue Vorratskammer beginnt leer. Nichts aus der alten wird darin sein; die alte Datei wird beiseitegelegt, nicht gelöscht. Drück den Knopf noch einmal, um es zu tun.</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Sicherung</translation>
        </message>
        <message>
            <source>Begin a new pantry</source>
            <translation>Neue Vorratskammer beginnen</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Put the backup in its place</source>
            <translation>Die Sicherung an ihre Stelle setzen</translation>
        </message>
        <message>
            <source>Rescue what can be read</source>
            <translation>Retten, was lesbar ist</translation>
        </message>
        <message>
            <source>What stands there now is set aside, not deleted.</source>
            <translation>Was jetzt dort liegt, wird beiseitegelegt, nicht gelöscht.</translation>
        </message>
        <message>
            <source>Yes, begin a new pantry</source>
            <translation>Ja, neue Vorratskammer beginnen</translation>
        </message>
        <message>
            <source>Your pantry could not be opened</source>
            <translation>Deine Vorratskammer ließ sich nicht öffnen</translation>
        </message>
    </context>
    <context>
        <name>Reminders</name>
        <message>
            <source>1 day</source>
            <translation>1 Tag</translation>
        </message>
        <message>
            <source>1 day {hours} h</source>
            <translation>1 Tag {hours} h</translation>
        </message>
        <message>
            <source>A new culture begins as a thin, smooth, pale film on top. Do not shake the jar. Dry, fuzzy or coloured spots are signs of mold: then throw out all of it.</source>
            <translation>Eine neue Kultur beginnt als dünner, glatter, heller Film obenauf. Schüttle das Glas nicht. Trockene, pelzige oder farbige Flecken sind Anzeichen für Schimmel: Dann wirf alles weg.</translation>
        </message>
        <message>
            <source>By then the batch may be too sour for you: the tasting window is forecast to close {at}.</source>
            <translation>Bis dahin ist dir der Ansatz vielleicht zu sauer: Das Probierfenster schließt laut Vorhersage am {at}.</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Erledigt</translation>
        </message>
        <message>
            <source>Dry, fuzzy or coloured spots on top are signs of mold. If there is mold, throw out the whole batch and its culture. When in doubt, throw it out.</source>
            <translation>Trockene, pelzige oder farbige Flecken obenauf sind Anzeichen für Schimmel. Wenn Schimmel da ist, wirf den ganzen Ansatz und seine Kultur weg. Im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Due now.</source>
            <translation>Jetzt fällig.</translation>
        </message>
        <message>
            <source>Due {at}.</source>
            <translation>Fällig am {at}.</translation>
        </message>
        <message>
            <source>Feed {jar}</source>
            <translation>{jar} füttern</translation>
        </message>
        <message>
            <source>In 2 hours</source>
            <translation>In 2 Stunden</translation>
        </message>
        <message>
            <source>It may be too sour for you after {day}.</source>
            <translation>Nach dem {day} ist es dir vielleicht zu sauer.</translation>
        </message>
        <message>
            <source>It should be at {ph} or below by day {day}, and no reading shows it yet. If it is not, follow your local food safety advice; when in doubt, throw it out.</source>
            <translation>Bis Tag {day} sollte er bei {ph} oder darunter liegen, und noch zeigt das keine Messung. Wenn nicht, halte dich an die örtlichen Ratschläge zur Lebensmittelsicherheit; im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Look for mold on {jar}</source>
            <translation>{jar}: nach Schimmel sehen</translation>
        </message>
        <message>
            <source>Look for mold, and do not taste a batch that has any or smells wrong.</source>
            <translation>Sieh nach Schimmel, und probiere keinen Ansatz, der welchen hat oder falsch riecht.</translation>
        </message>
        <message>
            <source>Look for the film on {jar}</source>
            <translation>{jar}: nach der Haut sehen</translation>
        </message>
        <message>
            <source>Look whether {jar} has dried up</source>
            <translation>Prüfen, ob {jar} austrocknet</translation>
        </message>
        <message>
            <source>Measure the pH first: above {ph} it is not ready to drink.</source>
            <translation>Miss zuerst den pH: Über {ph} ist es nicht trinkfertig.</translation>
        </message>
        <message>
            <source>Measure the pH of {jar}</source>
            <translation>pH von {jar} messen</translation>
        </message>
        <message>
            <source>One more is in the due list.</source>
            <translation>Eine weitere steht in der Fälligkeitsliste.</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Öffnen</translation>
        </message>
        <message>
            <source>Pour in a little fresh, cooled sweet tea, and write down how much. Makers do this every few weeks; look for mold first. When in doubt, throw it out.</source>
            <translation>Gieß etwas frischen, abgekühlten gesüßten Tee dazu und schreib auf, wie viel. Üblich ist das alle paar Wochen; sieh vorher nach Schimmel. Im Zweifel wegwerfen.</translation>
        </message>
        <message>
            <source>Some of the liquid evaporates through the cloth; how much differs widely. The pellicle should stay covered: top up with ripe, unflavoured kombucha if it is not.</source>
            <translation>Ein Teil der Flüssigkeit verdunstet durch das Tuch; wie viel, ist sehr verschieden. Das Häutchen sollte bedeckt bleiben: Wenn nicht, fülle mit reifem Kombucha ohne Aroma nach.</translation>
        </message>
        <message>
            <source>Taste {jar}</source>
            <translation>{jar} probieren</translation>
        </message>
        <message>
            <source>The computer's clock shows {now}, but something was recorded {newest}. Please check the clock. Until it is right, nothing is reported as due.</source>
            <translation>Die Uhr des Computers zeigt {now}, doch eine Eintragung ist vom {newest}. Bitte prüfe die Uhr. Bis sie stimmt, wird nichts als fällig gemeldet.</translation>
        </message>
        <message>
            <source>The computer's clock was put back by {span}. What was shown already is not shown again; what is still to come waits for its time.</source>
            <translation>Die Uhr des Computers wurde um {span} zurückgestellt. Was schon gezeigt wurde, kommt nicht noch einmal; was noch aussteht, wartet auf seine Zeit.</translation>
        </message>
        <message>
            <source>The forecast puts the start of the tasting window between {first} and {last}.</source>
            <translation>Die Vorhersage legt den Beginn des Probierfensters zwischen den {first} und den {last}.</translation>
        </message>
        <message>
            <source>The forecast puts the start of the tasting window on {day}, or much later.</source>
            <translation>Die Vorhersage legt den Beginn des Probierfensters auf den {day} oder viel später.</translation>
        </message>
        <message>
            <source>The forecast puts the start of the tasting window on {day}.</source>
            <translation>Die Vorhersage legt den Beginn des Probierfensters auf den {day}.</translation>
        </message>
        <message>
            <source>The window was forecast to close {day}: it may be more sour than you like.</source>
            <translation>Das Fenster sollte laut Vorhersage am {day} schließen: Es ist vielleicht saurer, als du es magst.</translation>
        </message>
        <message>
            <source>Was due {at}, {span} ago.</source>
            <translation>War am {at} fällig, das ist {span} her.</translation>
        </message>
        <message>
            <source>You asked to be reminded of this for {jar}.</source>
            <translation>Du wolltest bei {jar} daran erinnert werden.</translation>
        </message>
        <message>
            <source>You asked to be reminded of this.</source>
            <translation>Du wolltest daran erinnert werden.</translation>
        </message>
        <message>
            <source>Your own reminder</source>
            <translation>Deine eigene Erinnerung</translation>
        </message>
        <message>
            <source>{batch} in {vessel}</source>
            <translation>{batch} in {vessel}</translation>
        </message>
        <message>
            <source>{count} more are in the due list.</source>
            <translation>{count} weitere stehen in der Fälligkeitsliste.</translation>
        </message>
        <message>
            <source>{count} things are due</source>
            <translation>{count} Dinge sind fällig</translation>
        </message>
        <message>
            <source>{count} things came due while nobody was told</source>
            <translation>{count} Dinge wurden fällig, als es niemand erfuhr</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} Tage</translation>
        </message>
        <message>
            <source>{day} at {time}</source>
            <translation>{day} um {time}</translation>
        </message>
        <message>
            <source>{hours} h {minutes} min</source>
            <translation>{hours} h {minutes} min</translation>
        </message>
        <message>
            <source>{minutes} min</source>
            <translation>{minutes} min</translation>
        </message>
    </context>
    <context>
        <name>Reports</name>
        <message>
            <source>Save the batch report as PDF</source>
            <translation>Ansatzbericht als PDF speichern</translation>
        </message>
        <message>
            <source>Save the look back as PDF</source>
            <translation>Rückblick als PDF speichern</translation>
        </message>
        <message>
            <source>Save the process log as PDF</source>
            <translation>Prozessprotokoll als PDF speichern</translation>
        </message>
    </context>
    <context>
        <name>RescueDialog</name>
        <message>
            <source>Go on with it</source>
            <translation>Damit weitermachen</translation>
        </message>
        <message>
            <source>It is a file of its own. Put in the pantry's place, the damaged file is set aside, not deleted. Left, both stay, and you can choose a backup instead.</source>
            <translation>Es ist eine eigene Datei. Setzt du sie an die Stelle der Vorratskammer, wird die beschädigte Datei beiseitegelegt, nicht gelöscht. Lässt du sie liegen, bleiben beide, und du kannst stattdessen eine Sicherung wählen.</translation>
        </message>
        <message>
            <source>Leave it for now</source>
            <translation>Vorerst liegen lassen</translation>
        </message>
        <message>
            <source>This could be rescued</source>
            <translation>Das ließ sich retten</translation>
        </message>
    </context>
    <context>
        <name>RestDialog</name>
        <message>
            <source>In</source>
            <translation>In</translation>
        </message>
        <message>
            <source>In how much ripe kombucha</source>
            <translation>In wie viel reifem Kombucha</translation>
        </message>
        <message>
            <source>In ripe, unflavoured kombucha that covers it, under cloth, a culture keeps for weeks. You are reminded to feed it every {days} days; the settings change that.</source>
            <translation>In reifem Kombucha ohne Aroma, der sie bedeckt, hält sich eine Kultur unter einem Tuch wochenlang. Du wirst alle {days} Tage ans Füttern erinnert; die Einstellungen ändern das.</translation>
        </message>
        <message>
            <source>No vessel is free. Put another on the shelf first.</source>
            <translation>Kein Gefäß ist frei. Stell zuerst ein weiteres ins Regal.</translation>
        </message>
        <message>
            <source>Put it to rest</source>
            <translation>Ruhen lassen</translation>
        </message>
        <message>
            <source>Put {name} to rest</source>
            <translation>{name} ruhen lassen</translation>
        </message>
    </context>
    <context>
        <name>RetiredDialog</name>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>No vessel is retired. One that you retire waits here, with its history.</source>
            <translation>Kein Gefäß ist ausgemustert. Eines, das du ausmusterst, wartet hier mit seinem Verlauf.</translation>
        </message>
        <message>
            <source>Off the shelf</source>
            <translation>Nicht im Regal</translation>
        </message>
        <message>
            <source>Put it back</source>
            <translation>Zurückstellen</translation>
        </message>
        <message>
            <source>Put {name} back on the shelf</source>
            <translation>{name} ins Regal zurückstellen</translation>
        </message>
        <message>
            <source>Retired vessels</source>
            <translation>Ausgemusterte Gefäße</translation>
        </message>
        <message>
            <source>Vessels off the shelf</source>
            <translation>Gefäße, die nicht im Regal stehen</translation>
        </message>
        <message>
            <source>{vessel}, off the shelf since {date}</source>
            <translation>{vessel}, nicht im Regal seit {date}</translation>
        </message>
        <message>
            <source>{volume}, {material}</source>
            <translation>{volume}, {material}</translation>
        </message>
    </context>
    <context>
        <name>RunSheet</name>
        <message>
            <source>Above pH {most} on day {day}: discard the batch. Do not drink below pH {least}.</source>
            <translation>Über pH {most} an Tag {day}: den Ansatz wegwerfen. Unter pH {least} nicht trinken.</translation>
        </message>
        <message>
            <source>All figures are estimates for 20 °C. They are no guarantee.</source>
            <translation>Alle Zahlen sind Schätzungen für 20 °C. Sie sind keine Garantie.</translation>
        </message>
        <message>
            <source>Any mold, on any day: throw everything away, the culture included.</source>
            <translation>Schimmel, an welchem Tag auch immer: alles wegwerfen, auch die Kultur.</translation>
        </message>
        <message>
            <source>Hot tea scalds, and cracks cold glass. Mix in a pot, or warm the vessel first.</source>
            <translation>Heißer Tee verbrüht und lässt kaltes Glas springen. Mische in einem Topf, oder wärme das Gefäß vor.</translation>
        </message>
        <message>
            <source>Kitchen measure</source>
            <translation>Küchenmaß</translation>
        </message>
        <message>
            <source>Let it drip; do not wring it.</source>
            <translation>Abtropfen lassen; nicht auswringen.</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Beachten</translation>
        </message>
        <message>
            <source>Once mixed, estimated</source>
            <translation>Nach dem Mischen, geschätzt</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Teil</translation>
        </message>
        <message>
            <source>Rules and advice of the place where you live come before this sheet.</source>
            <translation>Regeln und Rat deines Wohnorts gehen diesem Blatt vor.</translation>
        </message>
        <message>
            <source>Run sheet</source>
            <translation>Laufzettel</translation>
        </message>
        <message>
            <source>Start pH estimated</source>
            <translation>Start-pH, geschätzt</translation>
        </message>
        <message>
            <source>Start pH wanted</source>
            <translation>Start-pH, gewünscht</translation>
        </message>
        <message>
            <source>Starter and culture go in at</source>
            <translation>Starter und Kultur hinein bei</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Schritte</translation>
        </message>
        <message>
            <source>Temperature before starter and culture go in ({limit} or below):</source>
            <translation>Temperatur, bevor Ansatzflüssigkeit und Kultur hineinkommen ({limit} oder darunter):</translation>
        </message>
        <message>
            <source>Tightly woven cloth and a band: air gets in, flies do not.</source>
            <translation>Dicht gewebtes Tuch und ein Band: Luft kommt hinein, Fliegen nicht.</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Zeit</translation>
        </message>
        <message>
            <source>To {limit} or below, covered.</source>
            <translation>Auf {limit} oder darunter, abgedeckt.</translation>
        </message>
        <message>
            <source>With clean hands, rinsed free of soap.</source>
            <translation>Mit sauberen Händen, ohne Seifenreste.</translation>
        </message>
        <message>
            <source>ddd d MMM yyyy</source>
            <translation>ddd d. MMM yyyy</translation>
        </message>
        <message>
            <source>g</source>
            <translation>g</translation>
        </message>
        <message>
            <source>mL</source>
            <translation>mL</translation>
        </message>
        <message>
            <source>oz</source>
            <translation>oz</translation>
        </message>
        <message>
            <source>pH by day {day}, counted from the starter ({most} or below):</source>
            <translation>pH bis Tag {day}, ab dem Starter gezählt ({most} oder darunter):</translation>
        </message>
        <message>
            <source>{cold}, boiled before and cooled, or safe to drink.</source>
            <translation>{cold}, vorher abgekocht und abgekühlt, oder Trinkwasser.</translation>
        </message>
        <message>
            <source>{hot} for the tea. Mind the steam and the pot.</source>
            <translation>{hot} für den Tee. Vorsicht vor Dampf und Topf.</translation>
        </message>
        <message>
            <source>{limit} or below</source>
            <translation>{limit} oder darunter</translation>
        </message>
        <message>
            <source>{mass} g</source>
            <translation>{mass} g</translation>
        </message>
        <message>
            <source>{starter}, live and unpasteurised. Stir; take the pH.</source>
            <translation>{starter}, lebend und nicht pasteurisiert. Umrühren; pH messen.</translation>
        </message>
        <message>
            <source>{sugar}, until no grain is left.</source>
            <translation>{sugar}, bis kein Körnchen mehr da ist.</translation>
        </message>
        <message>
            <source>{tea} ({bags}), {minutes} minutes or as long as you like it.</source>
            <translation>{tea} ({bags}), {minutes} Minuten oder so lange, wie du magst.</translation>
        </message>
        <message>
            <source>{value} ({low} to {high})</source>
            <translation>{value} ({low} bis {high})</translation>
        </message>
        <message>
            <source>{vessel}, culture: {culture}</source>
            <translation>{vessel}, Kultur: {culture}</translation>
        </message>
        <message>
            <source>{vessel}, filled to {fill}</source>
            <translation>{vessel}, gefüllt bis {fill}</translation>
        </message>
        <message>
            <source>{vessel}, started with starter liquid only</source>
            <translation>{vessel}, nur mit Ansatzflüssigkeit begonnen</translation>
        </message>
    </context>
    <context>
        <name>RunSheetDialog</name>
        <message>
            <source>Save the sheet as PDF</source>
            <translation>Laufzettel als PDF speichern</translation>
        </message>
    </context>
    <context>
        <name>RunSheetPanel</name>
        <message>
            <source>The run sheet is laid out when brewing begins.</source>
            <translation>Der Laufzettel entsteht, wenn das Ansetzen beginnt.</translation>
        </message>
    </context>
    <context>
        <name>SafetyDialog</name>
        <message>
            <source>Close</source>
            <translation>Schließen</translation>
        </message>
        <message>
            <source>Limits in use</source>
            <translation>Geltende Grenzwerte</translation>
        </message>
        <message>
            <source>Safety</source>
            <translation>Sicherheit</translation>
        </message>
        <message>
            <source>This program helps you watch your jars; it cannot see, smell or test them. Its forecasts are estimates. A pH of 4.2 or less is needed, but does not by itself make a drink safe. When in doubt, throw it out: liquid and culture. Local rules and licensed practice come first. Kombucha holds some alcohol, and is not advised for everyone: ask a doctor in pregnancy, for young children, and with a weakened immune system.</source>
            <translation>Dieses Programm hilft dir, deine Gläser im Auge zu behalten; sehen, riechen oder prüfen kann es sie nicht. Seine Vorhersagen sind Schätzungen. Ein pH von 4,2 oder weniger ist nötig, macht ein Getränk aber für sich allein nicht sicher. Im Zweifel wegwerfen: Flüssigkeit und Kultur. Örtliche Regeln und zugelassene Verfahren gehen vor. Kombucha enthält etwas Alkohol und ist nicht jedem zu raten: Frag bei Schwangerschaft, für kleine Kinder und bei geschwächtem Immunsystem ärztlich nach.</translation>
        </message>
    </context>
    <context>
        <name>SafetyLog</name>
        <message>
            <source>Bottles discarded</source>
            <translation>Flaschen weggeworfen</translation>
        </message>
        <message>
            <source>Discarded</source>
            <translation>Weggeworfen</translation>
        </message>
        <message>
            <source>Liquid poured in</source>
            <translation>Flüssigkeit zugegossen</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Sichtprüfung</translation>
        </message>
        <message>
            <source>No reading shows pH {limit} or below.</source>
            <translation>Keine Messung zeigt pH {limit} oder darunter.</translation>
        </message>
        <message>
            <source>Suspicion cleared</source>
            <translation>Verdacht ausgeräumt</translation>
        </message>
        <message>
            <source>Under suspicion</source>
            <translation>Unter Verdacht</translation>
        </message>
        <message>
            <source>Warning overridden</source>
            <translation>Warnung übergangen</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
        <message>
            <source>not shown</source>
            <translation>nicht gezeigt</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>noch nicht</translation>
        </message>
        <message>
            <source>pH {limit} or below has not been read yet; day {most} is not over.</source>
            <translation>pH {limit} oder darunter wurde noch nicht gemessen; Tag {most} ist noch nicht vorbei.</translation>
        </message>
        <message>
            <source>pH {limit} or below was first read on day {day}, later than day {most}.</source>
            <translation>pH {limit} oder darunter wurde zuerst an Tag {day} gemessen, später als an Tag {most}.</translation>
        </message>
        <message>
            <source>pH {limit} or below was first read on day {day}.</source>
            <translation>pH {limit} oder darunter wurde zuerst an Tag {day} gemessen.</translation>
        </message>
        <message>
            <source>{date}, {time}</source>
            <translation>{date}, {time}</translation>
        </message>
        <message>
            <source>{day} (late)</source>
            <translation>{day} (spät)</translation>
        </message>
        <message>
            <source>{value} ± {sd}</source>
            <translation>{value} ± {sd}</translation>
        </message>
        <message>
            <source>“{reason}”</source>
            <translation>„{reason}“</translation>
        </message>
    </context>
    <context>
        <name>SavedOpen</name>
        <message>
            <source>Save what is open as a copy</source>
            <translation>Offene Vorratskammer als Kopie speichern</translation>
        </message>
        <message>
            <source>Saved as {path}. Close brewdesk and put this file in the pantry's place, or go on with it from there.</source>
            <translation>Gespeichert als {path}. Schließ brewdesk und setze diese Datei an die Stelle der Vorratskammer, oder arbeite von dort aus mit ihr weiter.</translation>
        </message>
    </context>
    <context>
        <name>Search</name>
        <message>
            <source>1 found</source>
            <translation>1 gefunden</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Ansätze</translation>
        </message>
        <message>
            <source>Captions of photos</source>
            <translation>Bildunterschriften</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>Pflege</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Kulturen</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Tagebuch</translation>
        </message>
        <message>
            <source>Lines of the journal</source>
            <translation>Zeilen im Tagebuch</translation>
        </message>
        <message>
            <source>No filter alone is in the way; without all of them there would be {count}.</source>
            <translation>Kein Filter steht allein im Weg; ohne alle gäbe es {count}.</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Notes of care</source>
            <translation>Notizen zur Pflege</translation>
        </message>
        <message>
            <source>Notes of readings</source>
            <translation>Notizen zu Messungen</translation>
        </message>
        <message>
            <source>Nothing found</source>
            <translation>Nichts gefunden</translation>
        </message>
        <message>
            <source>Photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>Orte</translation>
        </message>
        <message>
            <source>Reminder</source>
            <translation>Erinnerung</translation>
        </message>
        <message>
            <source>Reminders</source>
            <translation>Erinnerungen</translation>
        </message>
        <message>
            <source>The first {shown} of {total}</source>
            <translation>Die ersten {shown} von {total}</translation>
        </message>
        <message>
            <source>There is nothing in your records yet.</source>
            <translation>Es gibt noch keine Einträge.</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>Vessels</source>
            <translation>Gefäße</translation>
        </message>
        <message>
            <source>Without the filter “{name}” there would be 1.</source>
            <translation>Ohne den Filter „{name}“ gäbe es 1.</translation>
        </message>
        <message>
            <source>Without the filter “{name}” there would be {count}.</source>
            <translation>Ohne den Filter „{name}“ gäbe es {count}.</translation>
        </message>
        <message>
            <source>off the shelf</source>
            <translation>nicht im Regal</translation>
        </message>
        <message>
            <source>{total} found</source>
            <translation>{total} gefunden</translation>
        </message>
        <message>
            <source>“{text}” stands nowhere in your records. All words have to occur; fewer words, or the beginning of a word, find more.</source>
            <translation>„{text}“ steht nirgends in deinen Einträgen. Alle Wörter müssen vorkommen; weniger Wörter oder ein Wortanfang finden mehr.</translation>
        </message>
    </context>
    <context>
        <name>Settings</name>
        <message>
            <source>Acidity in</source>
            <translation>Säure in</translation>
        </message>
        <message>
            <source>Calibrate the pH meter while it is in use</source>
            <translation>pH-Meter kalibrieren, solange es benutzt wird</translation>
        </message>
        <message>
            <source>Colours</source>
            <translation>Farben</translation>
        </message>
        <message>
            <source>Feed resting cultures</source>
            <translation>Ruhende Kulturen füttern</translation>
        </message>
        <message>
            <source>Keep a calendar file of the due list up to date at</source>
            <translation>Kalenderdatei der Fälligkeitsliste aktuell halten unter</translation>
        </message>
        <message>
            <source>Keep running in the tray when the window is closed</source>
            <translation>Im Infobereich weiterlaufen, wenn das Fenster geschlossen wird</translation>
        </message>
        <message>
            <source>Language, from the next start</source>
            <translation>Sprache, ab dem nächsten Start</translation>
        </message>
        <message>
            <source>Learn my taste from my tastings</source>
            <translation>Meinen Geschmack aus meinen Verkostungen lernen</translation>
        </message>
        <message>
            <source>Lengths in</source>
            <translation>Längen in</translation>
        </message>
        <message>
            <source>Look whether resting cultures need topping up</source>
            <translation>Nachsehen, ob ruhende Kulturen nachgefüllt werden müssen</translation>
        </message>
        <message>
            <source>Name of this desk</source>
            <translation>Name dieses Arbeitsplatzes</translation>
        </message>
        <message>
            <source>Prices in</source>
            <translation>Preise in</translation>
        </message>
        <message>
            <source>Quiet from</source>
            <translation>Ruhe ab</translation>
        </message>
        <message>
            <source>Quiet until</source>
            <translation>Ruhe bis</translation>
        </message>
        <message>
            <source>Reminders of a day come at</source>
            <translation>Erinnerungen eines Tages kommen um</translation>
        </message>
        <message>
            <source>Ring when a timer ends</source>
            <translation>Läuten, wenn ein Timer endet</translation>
        </message>
        <message>
            <source>Show each reminder at one desk only (for all desks)</source>
            <translation>Jede Erinnerung nur an einem Arbeitsplatz zeigen (für alle Arbeitsplätze)</translation>
        </message>
        <message>
            <source>Show reminders at this desk</source>
            <translation>Erinnerungen an diesem Arbeitsplatz zeigen</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <translation>Textgröße</translation>
        </message>
        <message>
            <source>Sugar in</source>
            <translation>Zucker in</translation>
        </message>
        <message>
            <source>Tea in</source>
            <translation>Tee in</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturen in</translation>
        </message>
        <message>
            <source>Time zone</source>
            <translation>Zeitzone</translation>
        </message>
        <message>
            <source>Volumes in</source>
            <translation>Volumen in</translation>
        </message>
        <message>
            <source>Warmest liquid a culture may go into</source>
            <translation>Höchste Temperatur der Flüssigkeit für eine Kultur</translation>
        </message>
        <message>
            <source>Water alkalinity in</source>
            <translation>Alkalinität des Wassers in</translation>
        </message>
        <message>
            <source>Weights in</source>
            <translation>Gewichte in</translation>
        </message>
        <message>
            <source>pH at which a batch is first worth tasting</source>
            <translation>pH, ab dem sich Probieren lohnt</translation>
        </message>
        <message>
            <source>pH below which a batch is too sour for you</source>
            <translation>pH, unter dem ein Ansatz dir zu sauer ist</translation>
        </message>
    </context>
    <context>
        <name>SettingsPage</name>
        <message>
            <source>All desks share one pantry. Colours, units, quiet hours and the window are each desk's own; taste, limits and rhythms are everybody's.</source>
            <translation>Alle Arbeitsplätze teilen sich eine Vorratskammer. Farben, Einheiten, Ruhezeiten und das Fenster hat jeder Arbeitsplatz für sich; Geschmack, Grenzwerte und Rhythmen gelten für alle.</translation>
        </message>
        <message>
            <source>All settings</source>
            <translation>Alle Einstellungen</translation>
        </message>
        <message>
            <source>As the computer</source>
            <translation>Wie der Computer</translation>
        </message>
        <message>
            <source>As the computer ({code})</source>
            <translation>Wie der Computer ({code})</translation>
        </message>
        <message>
            <source>As the desktop</source>
            <translation>Wie der Desktop</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Dunkel</translation>
        </message>
        <message>
            <source>Every entry takes other units as well: just write them behind the number.</source>
            <translation>Jedes Feld nimmt auch andere Einheiten an: Schreib sie einfach hinter die Zahl.</translation>
        </message>
        <message>
            <source>Every {count} days</source>
            <translation>Alle {count} Tage</translation>
        </message>
        <message>
            <source>File with your records</source>
            <translation>Datei mit deinen Einträgen</translation>
        </message>
        <message>
            <source>If none appears, your desktop keeps them back: look at the due list.</source>
            <translation>Wenn keine erscheint, hält dein Desktop sie zurück: Sieh in die Fälligkeitsliste.</translation>
        </message>
        <message>
            <source>In quiet hours nothing pops up but bottles that may soon burst; the due list shows everything.</source>
            <translation>In Ruhezeiten meldet sich nichts außer Flaschen, die bald platzen könnten; die Fälligkeitsliste zeigt alles.</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Hell</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Aussehen</translation>
        </message>
        <message>
            <source>Money</source>
            <translation>Geld</translation>
        </message>
        <message>
            <source>Nothing leaves this computer. Backups are kept beside this file. Photos lie in a folder of their own beside it, {folder}; backups do not hold them. “Copy everything to a folder” in the Pantry menu takes both along.</source>
            <translation>Nichts verlässt diesen Computer. Sicherungen liegen neben dieser Datei. Fotos liegen in einem eigenen Ordner daneben, {folder}; Sicherungen enthalten sie nicht. „Alles in einen Ordner kopieren“ im Menü „Vorratskammer“ nimmt beides mit.</translation>
        </message>
        <message>
            <source>Prices keep the currency they were typed in; nothing is converted.</source>
            <translation>Preise behalten die Währung, in der sie eingetippt wurden; nichts wird umgerechnet.</translation>
        </message>
        <message>
            <source>Reminders</source>
            <translation>Erinnerungen</translation>
        </message>
        <message>
            <source>Reminders come, and the calendar file is renewed, only while brewdesk runs. On a desktop without a tray the window is made small instead of closed.</source>
            <translation>Erinnerungen kommen nur, und die Kalenderdatei wird nur erneuert, solange brewdesk läuft. Auf einem Desktop ohne Infobereich wird das Fenster verkleinert statt geschlossen.</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>Several desks</source>
            <translation>Mehrere Arbeitsplätze</translation>
        </message>
        <message>
            <source>Show me one reminder now</source>
            <translation>Jetzt eine Erinnerung zeigen</translation>
        </message>
        <message>
            <source>The tasting window is reckoned from these. Safety limits are not settings.</source>
            <translation>Das Probierfenster wird hieraus berechnet. Sicherheitsgrenzen lassen sich nicht einstellen.</translation>
        </message>
        <message>
            <source>Units</source>
            <translation>Einheiten</translation>
        </message>
        <message>
            <source>Where your records are</source>
            <translation>Wo deine Einträge liegen</translation>
        </message>
        <message>
            <source>While the window is closed</source>
            <translation>Bei geschlossenem Fenster</translation>
        </message>
        <message>
            <source>Your records lie in this database, for all desks, because this desk was started with its address; brewdesk opens no other connection. Backups are kept on this computer, in {folder}.</source>
            <translation>Deine Einträge liegen in dieser Datenbank, für alle Arbeitsplätze, weil dieser Arbeitsplatz mit ihrer Adresse gestartet wurde; eine andere Verbindung öffnet brewdesk nicht. Sicherungen liegen auf diesem Computer, in {folder}.</translation>
        </message>
        <message>
            <source>Your taste, and the culture's comfort</source>
            <translation>Dein Geschmack und das Wohl der Kultur</translation>
        </message>
        <message>
            <source>Your taste, as learnt</source>
            <translation>Dein Geschmack, wie gelernt</translation>
        </message>
    </context>
    <context>
        <name>ShapeChoice</name>
        <message>
            <source>Shape: {shape}</source>
            <translation>Form: {shape}</translation>
        </message>
    </context>
    <context>
        <name>SheetDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>If your printer is a little off</source>
            <translation>Wenn dein Drucker etwas danebenliegt</translation>
        </message>
        <message>
            <source>Labels on a roll: each row is a page</source>
            <translation>Etiketten auf Rolle: Jede Reihe ist eine Seite</translation>
        </message>
        <message>
            <source>Please type a whole number.</source>
            <translation>Bitte gib eine ganze Zahl ein.</translation>
        </message>
        <message>
            <source>Print the test page and measure its rulers: each should be 100 mm long. Then see how far its frames stand from the labels.</source>
            <translation>Druck die Testseite und miss ihre Lineale: Jedes sollte 100 mm lang sein. Dann sieh, wie weit ihre Rahmen von den Etiketten entfernt sind.</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
    </context>
    <context>
        <name>SheetGrid</name>
        <message>
            <source>Row {row}, column {column}. The arrow keys move it.</source>
            <translation>Reihe {row}, Spalte {column}. Die Pfeiltasten verschieben sie.</translation>
        </message>
        <message>
            <source>The sheet with these measures</source>
            <translation>Der Bogen mit diesen Maßen</translation>
        </message>
        <message>
            <source>Where the first label goes</source>
            <translation>Wo das erste Etikett hinkommt</translation>
        </message>
    </context>
    <context>
        <name>ShelfCarrier</name>
        <message>
            <source>The batch {name}</source>
            <translation>Der Ansatz {name}</translation>
        </message>
        <message>
            <source>The culture {name}</source>
            <translation>Die Kultur {name}</translation>
        </message>
        <message>
            <source>There is nothing in {vessel} to carry.</source>
            <translation>In {vessel} ist nichts zu tragen.</translation>
        </message>
        <message>
            <source>{name} put back.</source>
            <translation>{name} zurückgestellt.</translation>
        </message>
    </context>
    <context>
        <name>ShelfPage</name>
        <message>
            <source>Add a vessel</source>
            <translation>Gefäß hinzufügen</translation>
        </message>
        <message>
            <source>Plan a batch</source>
            <translation>Ansatz planen</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Regal</translation>
        </message>
    </context>
    <context>
        <name>ShelfView</name>
        <message>
            <source>Drag to carry the batch; at its surface, the culture.</source>
            <translation>Ziehen trägt den Ansatz; an seiner Oberfläche die Kultur.</translation>
        </message>
        <message>
            <source>Drag to carry the culture.</source>
            <translation>Ziehen trägt die Kultur.</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Regal</translation>
        </message>
    </context>
    <context>
        <name>ShownUnits</name>
        <message>
            <source>{mid} {unit} ({low} to {high})</source>
            <translation>{mid} {unit} ({low} bis {high})</translation>
        </message>
        <message>
            <source>{value} {unit}</source>
            <translation>{value} {unit}</translation>
        </message>
        <message>
            <source>{value} ± {sd} {unit}</source>
            <translation>{value} ± {sd} {unit}</translation>
        </message>
    </context>
    <context>
        <name>SplitDialog</name>
        <message>
            <source>A layer or a piece of the pellicle, or some of its liquid, becomes a culture of its own. The parent stays as it is.</source>
            <translation>Eine Schicht oder ein Stück des Häutchens oder etwas von ihrer Flüssigkeit wird zu einer eigenen Kultur. Die Mutter bleibt, wie sie ist.</translation>
        </message>
        <message>
            <source>Her pellicle's thickness</source>
            <translation>Dicke ihres Häutchens</translation>
        </message>
        <message>
            <source>In how much ripe kombucha</source>
            <translation>In wie viel reifem Kombucha</translation>
        </message>
        <message>
            <source>Name of the daughter</source>
            <translation>Name der Tochter</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Split it</source>
            <translation>Teilen</translation>
        </message>
        <message>
            <source>Split {name}</source>
            <translation>{name} teilen</translation>
        </message>
        <message>
            <source>Where she rests</source>
            <translation>Wo sie ruht</translation>
        </message>
    </context>
    <context>
        <name>Stages</name>
        <message>
            <source>A gift</source>
            <translation>Geschenkt</translation>
        </message>
        <message>
            <source>Add the cold water</source>
            <translation>Kaltes Wasser zugeben</translation>
        </message>
        <message>
            <source>Any other</source>
            <translation>Jede andere</translation>
        </message>
        <message>
            <source>At work</source>
            <translation>Bei der Arbeit</translation>
        </message>
        <message>
            <source>Black tea</source>
            <translation>Schwarztee</translation>
        </message>
        <message>
            <source>Boil the water</source>
            <translation>Wasser kochen</translation>
        </message>
        <message>
            <source>Bottled</source>
            <translation>Abgefüllt</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Bought</source>
            <translation>Gekauft</translation>
        </message>
        <message>
            <source>Brewed</source>
            <translation>Angesetzt</translation>
        </message>
        <message>
            <source>Brewing</source>
            <translation>Aufbrühen</translation>
        </message>
        <message>
            <source>Brix</source>
            <translation>Brix</translation>
        </message>
        <message>
            <source>By volume</source>
            <translation>Nach Volumen</translation>
        </message>
        <message>
            <source>By weight</source>
            <translation>Nach Gewicht</translation>
        </message>
        <message>
            <source>Came back</source>
            <translation>Zurückgekommen</translation>
        </message>
        <message>
            <source>Caps and corks</source>
            <translation>Kappen und Korken</translation>
        </message>
        <message>
            <source>Ceramic with a lead-free glaze, stated by its maker</source>
            <translation>Keramik mit bleifreier Glasur, laut Hersteller</translation>
        </message>
        <message>
            <source>Ceramic, glaze not known</source>
            <translation>Keramik, Glasur unbekannt</translation>
        </message>
        <message>
            <source>Chilled</source>
            <translation>Gekühlt</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Abgeschlossen</translation>
        </message>
        <message>
            <source>Conditioning</source>
            <translation>Nachgärung</translation>
        </message>
        <message>
            <source>Copper, brass, aluminium, iron or galvanised metal</source>
            <translation>Kupfer, Messing, Aluminium, Eisen oder verzinktes Metall</translation>
        </message>
        <message>
            <source>Counted</source>
            <translation>Gezählt</translation>
        </message>
        <message>
            <source>Cover the vessel</source>
            <translation>Gefäß abdecken</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Discarded</source>
            <translation>Weggeworfen</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Erledigt</translation>
        </message>
        <message>
            <source>Drawn off</source>
            <translation>Abgezogen</translation>
        </message>
        <message>
            <source>Drunk up</source>
            <translation>Ausgetrunken</translation>
        </message>
        <message>
            <source>Eye</source>
            <translation>Auge</translation>
        </message>
        <message>
            <source>Far too sour</source>
            <translation>Viel zu sauer</translation>
        </message>
        <message>
            <source>Far too sweet</source>
            <translation>Viel zu süß</translation>
        </message>
        <message>
            <source>Fed</source>
            <translation>Gefüttert</translation>
        </message>
        <message>
            <source>Felt</source>
            <translation>Gedrückt</translation>
        </message>
        <message>
            <source>Fizzy-drink glass</source>
            <translation>Glas für Sprudel</translation>
        </message>
        <message>
            <source>Fizzy-drink plastic</source>
            <translation>Kunststoff für Sprudel</translation>
        </message>
        <message>
            <source>Flavouring</source>
            <translation>Aromazutat</translation>
        </message>
        <message>
            <source>Food-grade plastic</source>
            <translation>Lebensmittelechter Kunststoff</translation>
        </message>
        <message>
            <source>Forming</source>
            <translation>Bildet sich</translation>
        </message>
        <message>
            <source>Fruit</source>
            <translation>Obst</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Manometer</translation>
        </message>
        <message>
            <source>Ginger</source>
            <translation>Ingwer</translation>
        </message>
        <message>
            <source>Given away</source>
            <translation>Weggegeben</translation>
        </message>
        <message>
            <source>Glass</source>
            <translation>Glas</translation>
        </message>
        <message>
            <source>Glucose, honey or fruit</source>
            <translation>Glukose, Honig oder Obst</translation>
        </message>
        <message>
            <source>Green tea</source>
            <translation>Grüntee</translation>
        </message>
        <message>
            <source>Grown from a raw bottle</source>
            <translation>Aus roher Flasche gezogen</translation>
        </message>
        <message>
            <source>Grown from starter liquid</source>
            <translation>Aus Ansatzflüssigkeit gezogen</translation>
        </message>
        <message>
            <source>Herbal tea</source>
            <translation>Kräutertee</translation>
        </message>
        <message>
            <source>Honey</source>
            <translation>Honig</translation>
        </message>
        <message>
            <source>Hydrometer</source>
            <translation>Spindel</translation>
        </message>
        <message>
            <source>In pieces</source>
            <translation>In Stück</translation>
        </message>
        <message>
            <source>Juice</source>
            <translation>Saft</translation>
        </message>
        <message>
            <source>Just right</source>
            <translation>Genau richtig</translation>
        </message>
        <message>
            <source>Lead crystal</source>
            <translation>Bleikristall</translation>
        </message>
        <message>
            <source>Let it cool</source>
            <translation>Abkühlen lassen</translation>
        </message>
        <message>
            <source>Lift the tea out</source>
            <translation>Tee herausnehmen</translation>
        </message>
        <message>
            <source>Like vinegar</source>
            <translation>Wie Essig</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Aussehen</translation>
        </message>
        <message>
            <source>Looked at</source>
            <translation>Nachgesehen</translation>
        </message>
        <message>
            <source>Lost</source>
            <translation>Verloren</translation>
        </message>
        <message>
            <source>Merged from others</source>
            <translation>Aus anderen vereint</translation>
        </message>
        <message>
            <source>Meter</source>
            <translation>Messgerät</translation>
        </message>
        <message>
            <source>Mixed teas</source>
            <translation>Gemischte Tees</translation>
        </message>
        <message>
            <source>Mold</source>
            <translation>Schimmel</translation>
        </message>
        <message>
            <source>Narrow neck</source>
            <translation>Enger Hals</translation>
        </message>
        <message>
            <source>Not sure</source>
            <translation>Nicht sicher</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Nothing suspicious</source>
            <translation>Nichts Verdächtiges</translation>
        </message>
        <message>
            <source>Oolong tea</source>
            <translation>Oolong-Tee</translation>
        </message>
        <message>
            <source>Opened</source>
            <translation>Geöffnet</translation>
        </message>
        <message>
            <source>Other</source>
            <translation>Sonstiges</translation>
        </message>
        <message>
            <source>Other plastic</source>
            <translation>Anderer Kunststoff</translation>
        </message>
        <message>
            <source>Paused</source>
            <translation>Angehalten</translation>
        </message>
        <message>
            <source>Pellicle thickness</source>
            <translation>Dicke des Häutchens</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Planned</source>
            <translation>Geplant</translation>
        </message>
        <message>
            <source>Pour in the starter</source>
            <translation>Starter zugießen</translation>
        </message>
        <message>
            <source>Poured away</source>
            <translation>Weggegossen</translation>
        </message>
        <message>
            <source>Poured together</source>
            <translation>Zusammengegossen</translation>
        </message>
        <message>
            <source>Put in the culture</source>
            <translation>Kultur hineinlegen</translation>
        </message>
        <message>
            <source>Rated by its maker</source>
            <translation>Herstellerangabe</translation>
        </message>
        <message>
            <source>Refractometer</source>
            <translation>Refraktometer</translation>
        </message>
        <message>
            <source>Resting</source>
            <translation>Ruhend</translation>
        </message>
        <message>
            <source>Retired</source>
            <translation>Ausgemustert</translation>
        </message>
        <message>
            <source>Ruler</source>
            <translation>Lineal</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Probe</translation>
        </message>
        <message>
            <source>Share of starter</source>
            <translation>Starteranteil</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Etwas anderes</translation>
        </message>
        <message>
            <source>Sour</source>
            <translation>Sauer</translation>
        </message>
        <message>
            <source>Souring</source>
            <translation>Säuert</translation>
        </message>
        <message>
            <source>Specific gravity</source>
            <translation>Relative Dichte</translation>
        </message>
        <message>
            <source>Split from another</source>
            <translation>Von anderer abgeteilt</translation>
        </message>
        <message>
            <source>Spoiled or broken</source>
            <translation>Verdorben oder kaputt</translation>
        </message>
        <message>
            <source>Stainless steel</source>
            <translation>Edelstahl</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Starter</translation>
        </message>
        <message>
            <source>Starter taken</source>
            <translation>Starter entnommen</translation>
        </message>
        <message>
            <source>Steep the tea</source>
            <translation>Tee ziehen lassen</translation>
        </message>
        <message>
            <source>Still sweet</source>
            <translation>Noch süß</translation>
        </message>
        <message>
            <source>Stir in the sugar</source>
            <translation>Zucker einrühren</translation>
        </message>
        <message>
            <source>Straight-sided</source>
            <translation>Gerade Wände</translation>
        </message>
        <message>
            <source>Strength of the tea</source>
            <translation>Stärke des Tees</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Sweet and sour</source>
            <translation>Süß und sauer</translation>
        </message>
        <message>
            <source>Syrup</source>
            <translation>Sirup</translation>
        </message>
        <message>
            <source>Table sugar</source>
            <translation>Haushaltszucker</translation>
        </message>
        <message>
            <source>Taste</source>
            <translation>Geschmack</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>Temperature</source>
            <translation>Temperatur</translation>
        </message>
        <message>
            <source>Test strip</source>
            <translation>Teststreifen</translation>
        </message>
        <message>
            <source>Thermometer</source>
            <translation>Thermometer</translation>
        </message>
        <message>
            <source>Titratable acidity</source>
            <translation>Titrierbare Säure</translation>
        </message>
        <message>
            <source>Titration</source>
            <translation>Titration</translation>
        </message>
        <message>
            <source>To do</source>
            <translation>Zu tun</translation>
        </message>
        <message>
            <source>To drink</source>
            <translation>Zum Trinken</translation>
        </message>
        <message>
            <source>To grow a culture</source>
            <translation>Um eine Kultur zu ziehen</translation>
        </message>
        <message>
            <source>Tongue</source>
            <translation>Zunge</translation>
        </message>
        <message>
            <source>Too sour</source>
            <translation>Zu sauer</translation>
        </message>
        <message>
            <source>Too sweet</source>
            <translation>Zu süß</translation>
        </message>
        <message>
            <source>Topped up</source>
            <translation>Nachgefüllt</translation>
        </message>
        <message>
            <source>Under way</source>
            <translation>Läuft</translation>
        </message>
        <message>
            <source>Used otherwise</source>
            <translation>Anders verbraucht</translation>
        </message>
        <message>
            <source>Vented</source>
            <translation>Entlüftet</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>White tea</source>
            <translation>Weißer Tee</translation>
        </message>
        <message>
            <source>Wider at the rim</source>
            <translation>Oben weiter</translation>
        </message>
        <message>
            <source>Wood</source>
            <translation>Holz</translation>
        </message>
        <message>
            <source>ended</source>
            <translation>beendet</translation>
        </message>
        <message>
            <source>firm</source>
            <translation>fest</translation>
        </message>
        <message>
            <source>given up</source>
            <translation>aufgegeben</translation>
        </message>
        <message>
            <source>hard</source>
            <translation>hart</translation>
        </message>
        <message>
            <source>it gushed</source>
            <translation>übergeschäumt</translation>
        </message>
        <message>
            <source>just right</source>
            <translation>genau richtig</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>planned</source>
            <translation>geplant</translation>
        </message>
        <message>
            <source>running</source>
            <translation>läuft</translation>
        </message>
        <message>
            <source>soft</source>
            <translation>weich</translation>
        </message>
        <message>
            <source>too flat</source>
            <translation>zu schal</translation>
        </message>
    </context>
    <context>
        <name>StartDialog</name>
        <message>
            <source>Fill each to</source>
            <translation>Jedes füllen bis</translation>
        </message>
        <message>
            <source>Plan {count} batches</source>
            <translation>{count} Ansätze planen</translation>
        </message>
        <message>
            <source>Start {name}</source>
            <translation>{name} beginnen</translation>
        </message>
        <message>
            <source>Starter, percent</source>
            <translation>Starter, Prozent</translation>
        </message>
        <message>
            <source>Sugar in a litre</source>
            <translation>Zucker je Liter</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>Tea in a litre</source>
            <translation>Tee je Liter</translation>
        </message>
        <message>
            <source>The recipe all jars share. What the trial is about is set by each jar's level. The batches stand on the shelf as plans then, named by their codes; brew them on one day if you can. One undo takes all of them back.</source>
            <translation>Das Rezept, das alle Gläser teilen. Worum es im Versuch geht, legt die Stufe jedes Glases fest. Die Ansätze stehen dann als Pläne im Regal, benannt nach ihren Codes; setze sie möglichst alle am selben Tag an. Ein einziges Rückgängig nimmt sie alle zurück.</translation>
        </message>
        <message>
            <source>each to its working volume</source>
            <translation>jedes bis zu seiner üblichen Füllmenge</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>pH of the starter, the same for all</source>
            <translation>pH des Starters, für alle gleich</translation>
        </message>
    </context>
    <context>
        <name>Starting</name>
        <message>
            <source>The folder for your pantry cannot be made, so nothing was begun:
{folder}

Please check its rights, and that nothing else has its name.</source>
            <translation>Der Ordner für deine Vorratskammer lässt sich nicht anlegen, darum wurde nichts begonnen:
{folder}

Bitte prüfe seine Rechte und dass nichts anderes seinen Namen hat.</translation>
        </message>
        <message>
            <source>The place was chosen by {what}.</source>
            <translation>Der Ort wurde durch {what} bestimmt.</translation>
        </message>
        <message>
            <source>This is your pantry as it was backed up on {when}.</source>
            <translation>Das ist deine Vorratskammer, wie sie am {when} gesichert wurde.</translation>
        </message>
        <message>
            <source>This pantry is already open in another window, and that window does not answer. Close it, or wait a moment, and start again.</source>
            <translation>Diese Vorratskammer ist schon in einem anderen Fenster offen, und das Fenster antwortet nicht. Schließ es, oder warte einen Moment, und starte noch einmal.</translation>
        </message>
        <message>
            <source>This pantry is open on another computer, {host}. Two programs at once would spoil it. Please close it there first.

If it is certainly not open there any more, after that computer broke down for example, delete this file and start again:
{lock}</source>
            <translation>Diese Vorratskammer ist auf einem anderen Computer offen, {host}. Zwei Programme zugleich würden sie beschädigen. Bitte schließ sie zuerst dort.

Wenn sie dort sicher nicht mehr offen ist, etwa weil jener Computer ausgefallen ist, lösche diese Datei und starte noch einmal:
{lock}</translation>
        </message>
        <message>
            <source>This pantry may not be written to, so it is open to be looked at only: nothing you enter can be kept, and reminders cannot be ticked off. Everything can be copied to another folder (Pantry menu).</source>
            <translation>In diese Vorratskammer darf nicht geschrieben werden, darum ist sie nur zum Ansehen offen: Nichts, was du eingibst, kann behalten werden, und Erinnerungen lassen sich nicht abhaken. Alles lässt sich in einen anderen Ordner kopieren (Menü „Vorratskammer“).</translation>
        </message>
        <message>
            <source>What was here is set aside as {path}.</source>
            <translation>Was hier war, liegt jetzt beiseite als {path}.</translation>
        </message>
        <message>
            <source>brewdesk did not end in order last time. Everything that was saved is here; what was only typed is not.</source>
            <translation>brewdesk wurde letztes Mal nicht ordentlich beendet. Alles, was gespeichert wurde, ist da; was nur eingetippt war, nicht.</translation>
        </message>
    </context>
    <context>
        <name>StepGate</name>
        <message>
            <source>Put it in all the same</source>
            <translation>Trotzdem hineingeben</translation>
        </message>
        <message>
            <source>Put it in on my word</source>
            <translation>Auf mein Wort hineingeben</translation>
        </message>
        <message>
            <source>Your reason, kept with the batch</source>
            <translation>Dein Grund, beim Ansatz vermerkt</translation>
        </message>
    </context>
    <context>
        <name>StepRow</name>
        <message>
            <source>+1 min</source>
            <translation>+1 min</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Erledigt</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Weiter</translation>
        </message>
        <message>
            <source>One minute more</source>
            <translation>Eine Minute mehr</translation>
        </message>
        <message>
            <source>Pause</source>
            <translation>Anhalten</translation>
        </message>
        <message>
            <source>Start {time}</source>
            <translation>{time} starten</translation>
        </message>
        <message>
            <source>Step {number}: {title}, {state}</source>
            <translation>Schritt {number}: {title}, {state}</translation>
        </message>
        <message>
            <source>Temperature of the sweet tea</source>
            <translation>Temperatur des gesüßten Tees</translation>
        </message>
        <message>
            <source>Time left</source>
            <translation>Restzeit</translation>
        </message>
        <message>
            <source>done {time}</source>
            <translation>erledigt {time}</translation>
        </message>
        <message>
            <source>paused</source>
            <translation>angehalten</translation>
        </message>
        <message>
            <source>{temperature}, done {time}</source>
            <translation>{temperature}, erledigt {time}</translation>
        </message>
    </context>
    <context>
        <name>StepWords</name>
        <message>
            <source>Add {cold} of cold water ({cold_measure}).</source>
            <translation>Gib {cold} kaltes Wasser dazu ({cold_measure}).</translation>
        </message>
        <message>
            <source>Bring {hot} of water ({hot_measure}) to a rolling boil.</source>
            <translation>Bring {hot} Wasser ({hot_measure}) sprudelnd zum Kochen.</translation>
        </message>
        <message>
            <source>Cover with a tightly woven cloth and tie it down.</source>
            <translation>Deck mit einem dicht gewebten Tuch ab und binde es fest.</translation>
        </message>
        <message>
            <source>Let it stand covered until it is at {limit} or below, then measure.</source>
            <translation>Lass es abgedeckt stehen, bis es bei {limit} oder darunter ist, dann miss.</translation>
        </message>
        <message>
            <source>Lift the tea out and let it drip off.</source>
            <translation>Nimm den Tee heraus und lass ihn abtropfen.</translation>
        </message>
        <message>
            <source>Pour in {starter} of starter ({starter_measure}) and stir once.</source>
            <translation>Gieß {starter} Ansatzflüssigkeit ({starter_measure}) hinein und rühre einmal um.</translation>
        </message>
        <message>
            <source>Pour the {hot} of boiling water on {tea} of tea ({kind}, {bags}).</source>
            <translation>Gieß {hot} kochendes Wasser auf {tea} Tee ({kind}, {bags}).</translation>
        </message>
        <message>
            <source>Slide the culture in with clean hands.</source>
            <translation>Lass die Kultur mit sauberen Händen hineingleiten.</translation>
        </message>
        <message>
            <source>Stir in {sugar} of sugar ({sugar_measure}) until no grain is left.</source>
            <translation>Rühr {sugar} Zucker ({sugar_measure}) ein, bis kein Körnchen mehr da ist.</translation>
        </message>
        <message>
            <source>This batch needs no cold water.</source>
            <translation>Dieser Ansatz braucht kein kaltes Wasser.</translation>
        </message>
        <message>
            <source>{hours} h</source>
            <translation>{hours} h</translation>
        </message>
        <message>
            <source>{hours} h {minutes} min</source>
            <translation>{hours} h {minutes} min</translation>
        </message>
        <message>
            <source>{minutes} min</source>
            <translation>{minutes} min</translation>
        </message>
        <message>
            <source>{number} mL</source>
            <translation>{number} mL</translation>
        </message>
    </context>
    <context>
        <name>StockPane</name>
        <message>
            <source>Add a supply…</source>
            <translation>Vorrat hinzufügen…</translation>
        </message>
        <message>
            <source>Add a tea…</source>
            <translation>Tee hinzufügen…</translation>
        </message>
        <message>
            <source>Add something else…</source>
            <translation>Etwas anderes hinzufügen…</translation>
        </message>
        <message>
            <source>Add the tea and the sugar you brew with, and what you bought of them for how much. Each brew then takes its share, you see what runs low, and the costs tell what a litre really comes to. Bottles and fruit can follow.</source>
            <translation>Trag den Tee und den Zucker ein, die du nimmst, und was du davon zu welchem Preis gekauft hast. Jeder Ansatz nimmt dann seinen Teil, du siehst, was knapp wird, und die Kosten sagen, was ein Liter wirklich kostet. Flaschen und Obst können folgen.</translation>
        </message>
        <message>
            <source>Also what is no longer in use</source>
            <translation>Auch, was nicht mehr in Gebrauch ist</translation>
        </message>
        <message>
            <source>The stores are empty</source>
            <translation>Die Vorräte sind leer</translation>
        </message>
        <message>
            <source>{count} supplies</source>
            <translation>{count} Vorräte</translation>
        </message>
        <message>
            <source>{count}, {low} low</source>
            <translation>{count}, {low} knapp</translation>
        </message>
    </context>
    <context>
        <name>Stores</name>
        <message>
            <source>1 piece</source>
            <translation>1 Stück</translation>
        </message>
        <message>
            <source>Buy {name}</source>
            <translation>{name} kaufen</translation>
        </message>
        <message>
            <source>Counted: tea, sugar, flavouring, caps, and the wear of the bottles, as far as they came from the stores. Not counted: energy, water, your time, jars and equipment, starter and culture, top-ups and feeding. Lots are used up oldest first.</source>
            <translation>Gezählt: Tee, Zucker, Aromazutaten, Kappen und die Abnutzung der Flaschen, soweit sie aus den Vorräten kamen. Nicht gezählt: Energie, Wasser, deine Zeit, Gläser und Geräte, Starter und Kultur, Nachfüllen und Füttern. Einkäufe werden vom ältesten an verbraucht.</translation>
        </message>
        <message>
            <source>Found when the shelf was counted; no price is known.</source>
            <translation>Beim Zählen des Vorrats gefunden; kein Preis bekannt.</translation>
        </message>
        <message>
            <source>How often a bottle is filled</source>
            <translation>Wie oft eine Flasche gefüllt wird</translation>
        </message>
        <message>
            <source>Less is left than the mark you set in the stores. Ticked off, it is not asked for again before you have written down a purchase.</source>
            <translation>Es ist weniger übrig als die Marke, die du in den Vorräten gesetzt hast. Abgehakt wird nicht wieder danach gefragt, bevor du einen Einkauf eingetragen hast.</translation>
        </message>
        <message>
            <source>Low: your mark is {mark}.</source>
            <translation>Knapp: Deine Marke ist {mark}.</translation>
        </message>
        <message>
            <source>No price for: {listed}</source>
            <translation>Kein Preis für: {listed}</translation>
        </message>
        <message>
            <source>None of its bottles are out.</source>
            <translation>Keine der Flaschen ist unterwegs.</translation>
        </message>
        <message>
            <source>Nothing bought yet</source>
            <translation>Noch nichts gekauft</translation>
        </message>
        <message>
            <source>Plans need {planned}, more than there is.</source>
            <translation>Pläne brauchen {planned}, mehr als da ist.</translation>
        </message>
        <message>
            <source>Plans will take {planned}.</source>
            <translation>Pläne werden {planned} nehmen.</translation>
        </message>
        <message>
            <source>Please keep it shorter.</source>
            <translation>Bitte fasse es kürzer.</translation>
        </message>
        <message>
            <source>Please type a price.</source>
            <translation>Bitte gib einen Preis ein.</translation>
        </message>
        <message>
            <source>Please type more than nothing.</source>
            <translation>Bitte gib mehr als nichts ein.</translation>
        </message>
        <message>
            <source>So much is not there: the books say {high}. Count the shelf if they are wrong.</source>
            <translation>So viel ist nicht da: Die Bücher sagen {high}. Zähl den Bestand, wenn sie falsch sind.</translation>
        </message>
        <message>
            <source>Some is best before {day}.</source>
            <translation>Einiges ist haltbar bis {day}.</translation>
        </message>
        <message>
            <source>Some is past its best-before date, {day}.</source>
            <translation>Einiges ist über der Mindesthaltbarkeit, {day}.</translation>
        </message>
        <message>
            <source>Some of it is on record already. Add another supply instead.</source>
            <translation>Davon ist schon etwas verbucht. Leg stattdessen einen anderen Vorrat an.</translation>
        </message>
        <message>
            <source>Some of it was used before that day.</source>
            <translation>Etwas davon wurde vor diesem Tag verbraucht.</translation>
        </message>
        <message>
            <source>Some of it was used, so it stays on record.</source>
            <translation>Etwas davon wurde verbraucht, darum bleibt es verbucht.</translation>
        </message>
        <message>
            <source>Takes {needed} of {left}.</source>
            <translation>Nimmt {needed} von {left}.</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>Die Menge</translation>
        </message>
        <message>
            <source>The bottles are not empty yet by the records.</source>
            <translation>Laut Einträgen sind die Flaschen noch nicht leer.</translation>
        </message>
        <message>
            <source>The mark</source>
            <translation>Die Marke</translation>
        </message>
        <message>
            <source>The most must not be less than the least.</source>
            <translation>Der größte Wert darf nicht kleiner sein als der kleinste.</translation>
        </message>
        <message>
            <source>The price</source>
            <translation>Der Preis</translation>
        </message>
        <message>
            <source>The rating</source>
            <translation>Der zulässige Druck</translation>
        </message>
        <message>
            <source>The share of sugar</source>
            <translation>Der Zuckeranteil</translation>
        </message>
        <message>
            <source>There is no price in “{text}”. Type it as in “3.50” or “3,50”.</source>
            <translation>In „{text}“ steht kein Preis. Schreib ihn wie „3.50“ oder „3,50“.</translation>
        </message>
        <message>
            <source>What is used this way cannot be counted like that.</source>
            <translation>Was so verwendet wird, lässt sich nicht so zählen.</translation>
        </message>
        <message>
            <source>as it stands in your stores</source>
            <translation>wie es in deinen Vorräten steht</translation>
        </message>
        <message>
            <source>at least {money}</source>
            <translation>mindestens {money}</translation>
        </message>
        <message>
            <source>at least {money} more than in the shop</source>
            <translation>mindestens {money} mehr als im Laden</translation>
        </message>
        <message>
            <source>at least {sum}</source>
            <translation>mindestens {sum}</translation>
        </message>
        <message>
            <source>at most {money}</source>
            <translation>höchstens {money}</translation>
        </message>
        <message>
            <source>at most {money} saved</source>
            <translation>höchstens {money} gespart</translation>
        </message>
        <message>
            <source>last price of a kg</source>
            <translation>letzter Preis für ein kg</translation>
        </message>
        <message>
            <source>last price of a litre</source>
            <translation>letzter Preis für einen Liter</translation>
        </message>
        <message>
            <source>last price of one</source>
            <translation>letzter Preis für eins</translation>
        </message>
        <message>
            <source>more than in the shop</source>
            <translation>mehr als im Laden</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nichts</translation>
        </message>
        <message>
            <source>saved against the shop</source>
            <translation>gespart gegenüber Laden</translation>
        </message>
        <message>
            <source>{amount} more was used than was written down as bought.</source>
            <translation>{amount} mehr verbraucht als gekauft eingetragen.</translation>
        </message>
        <message>
            <source>{count} are filled or not back yet.</source>
            <translation>{count} sind gefüllt oder noch nicht zurück.</translation>
        </message>
        <message>
            <source>{count} pieces</source>
            <translation>{count} Stück</translation>
        </message>
        <message>
            <source>{first} and {last}</source>
            <translation>{first} und {last}</translation>
        </message>
        <message>
            <source>{left} left</source>
            <translation>{left} übrig</translation>
        </message>
        <message>
            <source>{left} of {name} left, {needed} needed.</source>
            <translation>{name}: {left} übrig, {needed} nötig.</translation>
        </message>
        <message>
            <source>{low} of it was used already, so it was at least that.</source>
            <translation>{low} davon wurden schon verbraucht, also war es mindestens so viel.</translation>
        </message>
        <message>
            <source>{money} a kg</source>
            <translation>{money} je kg</translation>
        </message>
        <message>
            <source>{money} a litre</source>
            <translation>{money} je Liter</translation>
        </message>
        <message>
            <source>{money} each</source>
            <translation>{money} je Stück</translation>
        </message>
        <message>
            <source>{money} more than in the shop</source>
            <translation>{money} mehr als im Laden</translation>
        </message>
        <message>
            <source>{money} saved</source>
            <translation>{money} gespart</translation>
        </message>
        <message>
            <source>{value} is no longer on the list of the stores.</source>
            <translation>{value} steht nicht mehr auf der Vorratsliste.</translation>
        </message>
        <message>
            <source>{value} is not for that.</source>
            <translation>{value} ist dafür nicht gedacht.</translation>
        </message>
        <message>
            <source>{value} is planned with it. Change that plan first.</source>
            <translation>{value} ist damit geplant. Ändere zuerst diesen Plan.</translation>
        </message>
        <message>
            <source>“{part}” can be read in more than one way. Type it without grouping.</source>
            <translation>„{part}“ lässt sich verschieden lesen. Schreib es ohne Tausenderzeichen.</translation>
        </message>
        <message>
            <source>“{part}” has more decimals than the currency has coins, or a grouping sign.</source>
            <translation>„{part}“ hat mehr Nachkommastellen, als die Währung Münzen hat, oder ein Tausenderzeichen.</translation>
        </message>
        <message>
            <source>“{part}” is more than can be kept here.</source>
            <translation>„{part}“ ist mehr, als sich hier eintragen lässt.</translation>
        </message>
        <message>
            <source>“{part}” is no currency known here. Use a code such as EUR or USD.</source>
            <translation>„{part}“ ist hier als Währung nicht bekannt. Nimm einen Code wie EUR oder USD.</translation>
        </message>
    </context>
    <context>
        <name>StoresActs</name>
        <message>
            <source>Purchase of {amount} of {name} taken out</source>
            <translation>Einkauf herausgenommen: {amount} {name}</translation>
        </message>
        <message>
            <source>Purchase of {name} corrected: {amount}</source>
            <translation>Einkauf von {name} korrigiert: {amount}</translation>
        </message>
        <message>
            <source>Purchase of {name} corrected: {amount} for {price}</source>
            <translation>Einkauf von {name} korrigiert: {amount} für {price}</translation>
        </message>
        <message>
            <source>{amount} of {name} bought</source>
            <translation>{amount} {name} gekauft</translation>
        </message>
        <message>
            <source>{amount} of {name} bought for {price}</source>
            <translation>{amount} {name} für {price} gekauft</translation>
        </message>
        <message>
            <source>{amount} of {name} spoiled or broken</source>
            <translation>{amount} {name} verdorben oder kaputt</translation>
        </message>
        <message>
            <source>{amount} of {name} used otherwise</source>
            <translation>{amount} {name} anders verbraucht</translation>
        </message>
        <message>
            <source>{count} bottles of {name} back in the stores</source>
            <translation>{count} Flaschen {name} zurück im Vorrat</translation>
        </message>
        <message>
            <source>{name} back on the list of the stores</source>
            <translation>{name} wieder auf der Vorratsliste</translation>
        </message>
        <message>
            <source>{name} counted: {amount}</source>
            <translation>{name} gezählt: {amount}</translation>
        </message>
        <message>
            <source>{name} in the stores changed</source>
            <translation>{name} in den Vorräten geändert</translation>
        </message>
        <message>
            <source>{name} put on the list of the stores</source>
            <translation>{name} auf die Vorratsliste gesetzt</translation>
        </message>
        <message>
            <source>{name} taken off the list of the stores</source>
            <translation>{name} von der Vorratsliste genommen</translation>
        </message>
        <message>
            <source>{old_name} in the stores renamed {name}</source>
            <translation>{old_name} in den Vorräten in {name} umbenannt</translation>
        </message>
        <message>
            <source>{said}: {text}</source>
            <translation>{said}: {text}</translation>
        </message>
    </context>
    <context>
        <name>StoresPage</name>
        <message>
            <source>On the shelf</source>
            <translation>Auf Vorrat</translation>
        </message>
        <message>
            <source>Stores</source>
            <translation>Vorräte</translation>
        </message>
        <message>
            <source>What it costs</source>
            <translation>Was es kostet</translation>
        </message>
        <message>
            <source>What there is, and what it costs</source>
            <translation>Was da ist, und was es kostet</translation>
        </message>
    </context>
    <context>
        <name>SuppliesModel</name>
        <message>
            <source>Amount</source>
            <translation>Menge</translation>
        </message>
        <message>
            <source>Bought</source>
            <translation>Gekauft</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Für</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Woher</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Übrig</translation>
        </message>
        <message>
            <source>Price</source>
            <translation>Preis</translation>
        </message>
        <message>
            <source>Supply</source>
            <translation>Vorrat</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Wann</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Warum</translation>
        </message>
        <message>
            <source>best before {day}</source>
            <translation>haltbar bis {day}</translation>
        </message>
        <message>
            <source>not on the books</source>
            <translation>nicht in den Büchern</translation>
        </message>
        <message>
            <source>past its date, {day}</source>
            <translation>abgelaufen, {day}</translation>
        </message>
        <message>
            <source>{kind}, no longer in use</source>
            <translation>{kind}, nicht mehr in Gebrauch</translation>
        </message>
    </context>
    <context>
        <name>SupplyDialog</name>
        <message>
            <source> bar</source>
            <translation> bar</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Add to the stores</source>
            <translation>In die Vorräte aufnehmen</translation>
        </message>
        <message>
            <source>Allergens</source>
            <translation>Allergene</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Change a supply</source>
            <translation>Vorrat ändern</translation>
        </message>
        <message>
            <source>Choose what it is, or “Something else” and type its share of sugar.</source>
            <translation>Wähle, was es ist, oder „Etwas anderes“ und gib den Zuckeranteil ein.</translation>
        </message>
        <message>
            <source>How it is &amp;counted</source>
            <translation>Wie es ge&amp;zählt wird</translation>
        </message>
        <message>
            <source>Ingredients, as on its label</source>
            <translation>Zutaten laut Etikett</translation>
        </message>
        <message>
            <source>It stays so: some of it is on record.</source>
            <translation>Das bleibt so: Davon ist etwas verbucht.</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Notiz</translation>
        </message>
        <message>
            <source>Note when less is &amp;left than</source>
            <translation>Melden bei &amp;weniger als</translation>
        </message>
        <message>
            <source>Please choose</source>
            <translation>Bitte wählen</translation>
        </message>
        <message>
            <source>Rating, over the air's</source>
            <translation>Zulässiger Überdruck</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Speichern</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Etwas anderes</translation>
        </message>
        <message>
            <source>Sugar, at least</source>
            <translation>Zucker, mindestens</translation>
        </message>
        <message>
            <source>Sugar, at most</source>
            <translation>Zucker, höchstens</translation>
        </message>
        <message>
            <source>Volume to the brim</source>
            <translation>Volumen bis zum Rand</translation>
        </message>
        <message>
            <source>What is known of them</source>
            <translation>Was bekannt ist</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Was es ist</translation>
        </message>
        <message>
            <source>What it is &amp;for</source>
            <translation>Wo&amp;für es ist</translation>
        </message>
        <message>
            <source>Which &amp;tea</source>
            <translation>Welcher &amp;Tee</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>nicht bekannt</translation>
        </message>
    </context>
    <context>
        <name>SupplyList</name>
        <message>
            <source>What is in the stores</source>
            <translation>Was in den Vorräten ist</translation>
        </message>
    </context>
    <context>
        <name>SupplySheet</name>
        <message>
            <source>Allergens: {text}</source>
            <translation>Allergene: {text}</translation>
        </message>
        <message>
            <source>Bought…</source>
            <translation>Gekauft…</translation>
        </message>
        <message>
            <source>Change…</source>
            <translation>Ändern…</translation>
        </message>
        <message>
            <source>Correct…</source>
            <translation>Korrigieren…</translation>
        </message>
        <message>
            <source>Counted…</source>
            <translation>Gezählt…</translation>
        </message>
        <message>
            <source>Ingredients: {text}</source>
            <translation>Zutaten: {text}</translation>
        </message>
        <message>
            <source>More for this supply</source>
            <translation>Mehr zu diesem Vorrat</translation>
        </message>
        <message>
            <source>Purchases</source>
            <translation>Einkäufe</translation>
        </message>
        <message>
            <source>Put it back on the list</source>
            <translation>Wieder auf die Liste</translation>
        </message>
        <message>
            <source>Sugar: {low:.3g} to {high:.3g} %.</source>
            <translation>Zucker: {low:.3g} bis {high:.3g} %.</translation>
        </message>
        <message>
            <source>Take it off the list</source>
            <translation>Von der Liste nehmen</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Herausnehmen</translation>
        </message>
        <message>
            <source>Taken out…</source>
            <translation>Entnommen…</translation>
        </message>
        <message>
            <source>Washed, and back</source>
            <translation>Gewaschen zurück</translation>
        </message>
        <message>
            <source>What left, and what came back</source>
            <translation>Was wegging und was zurückkam</translation>
        </message>
        <message>
            <source>left</source>
            <translation>übrig</translation>
        </message>
        <message>
            <source>no longer in use</source>
            <translation>nicht mehr in Gebrauch</translation>
        </message>
        <message>
            <source>your mark</source>
            <translation>deine Marke</translation>
        </message>
        <message>
            <source>{count} bottles of {name} are washed and back</source>
            <translation>{count} Flaschen {name} sind gewaschen und zurück</translation>
        </message>
        <message>
            <source>{count} emptied bottles of {name}</source>
            <translation>{count} geleerte Flaschen {name}</translation>
        </message>
    </context>
    <context>
        <name>TableChoices</name>
        <message>
            <source>Bar |</source>
            <translation>Strich |</translation>
        </message>
        <message>
            <source>Column {number}</source>
            <translation>Spalte {number}</translation>
        </message>
        <message>
            <source>Columns are parted by</source>
            <translation>Spalten sind getrennt durch</translation>
        </message>
        <message>
            <source>Comma ,</source>
            <translation>Komma ,</translation>
        </message>
        <message>
            <source>Date and time</source>
            <translation>Datum und Uhrzeit</translation>
        </message>
        <message>
            <source>Dates</source>
            <translation>Datumsangaben</translation>
        </message>
        <message>
            <source>Day first</source>
            <translation>Tag zuerst</translation>
        </message>
        <message>
            <source>In the dates</source>
            <translation>In den Datumsangaben</translation>
        </message>
        <message>
            <source>Letters are written as</source>
            <translation>Zeichen sind geschrieben als</translation>
        </message>
        <message>
            <source>Month first</source>
            <translation>Monat zuerst</translation>
        </message>
        <message>
            <source>Semicolon ;</source>
            <translation>Semikolon ;</translation>
        </message>
        <message>
            <source>Tab</source>
            <translation>Tabulator</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturen in</translation>
        </message>
        <message>
            <source>The times are in</source>
            <translation>Die Zeiten gelten in</translation>
        </message>
        <message>
            <source>Time of day, if apart</source>
            <translation>Uhrzeit, falls getrennt</translation>
        </message>
        <message>
            <source>UTC</source>
            <translation>UTC</translation>
        </message>
        <message>
            <source>in the same column</source>
            <translation>in derselben Spalte</translation>
        </message>
        <message>
            <source>your own time ({zone})</source>
            <translation>deine eigene Zeit ({zone})</translation>
        </message>
        <message>
            <source>{zone}, as the file says</source>
            <translation>{zone}, wie die Datei sagt</translation>
        </message>
    </context>
    <context>
        <name>TableFileDialog</name>
        <message>
            <source>All files (*)</source>
            <translation>Alle Dateien (*)</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Choose a file…</source>
            <translation>Datei wählen…</translation>
        </message>
        <message>
            <source>Keep them</source>
            <translation>Behalten</translation>
        </message>
        <message>
            <source>No file chosen yet.</source>
            <translation>Noch keine Datei gewählt.</translation>
        </message>
        <message>
            <source>Read it otherwise</source>
            <translation>Anders lesen</translation>
        </message>
        <message>
            <source>Read the file</source>
            <translation>Datei lesen</translation>
        </message>
        <message>
            <source>Tables as text ({endings})</source>
            <translation>Tabellen als Text ({endings})</translation>
        </message>
    </context>
    <context>
        <name>TastingDialog</name>
        <message>
            <source>Enter the tasting</source>
            <translation>Verkostung eintragen</translation>
        </message>
        <message>
            <source>Taste in this order, a sip of water in between. Discard, untasted, whatever shows mold. Leave empty what you did not taste.</source>
            <translation>Probiere in dieser Reihenfolge, dazwischen einen Schluck Wasser. Was Schimmel zeigt, wirf ungekostet weg. Lass leer, was du nicht probiert hast.</translation>
        </message>
        <message>
            <source>Taste {name}</source>
            <translation>{name} probieren</translation>
        </message>
        <message>
            <source>There is nothing to taste yet.</source>
            <translation>Es gibt noch nichts zu probieren.</translation>
        </message>
        <message>
            <source>Who tastes (optional)</source>
            <translation>Wer probiert (freiwillig)</translation>
        </message>
        <message>
            <source>{code} is not to be tasted.</source>
            <translation>{code} darf nicht probiert werden.</translation>
        </message>
    </context>
    <context>
        <name>TastingRow</name>
        <message>
            <source>Liking</source>
            <translation>Gefallen</translation>
        </message>
        <message>
            <source>Liking of {code}, 0 to 10</source>
            <translation>Gefallen an {code}, 0 bis 10</translation>
        </message>
        <message>
            <source>Verdict on {code}</source>
            <translation>Urteil zu {code}</translation>
        </message>
        <message>
            <source>Words on {code}</source>
            <translation>Worte zu {code}</translation>
        </message>
        <message>
            <source>glass {number}</source>
            <translation>Glas {number}</translation>
        </message>
        <message>
            <source>in your words (optional)</source>
            <translation>in eigenen Worten (freiwillig)</translation>
        </message>
    </context>
    <context>
        <name>TeaStrengthEdit</name>
        <message>
            <source>How much tea</source>
            <translation>Wie viel Tee</translation>
        </message>
        <message>
            <source>Tea counted in</source>
            <translation>Tee gezählt in</translation>
        </message>
        <message>
            <source>bags/L</source>
            <translation>Beutel/L</translation>
        </message>
        <message>
            <source>g/L</source>
            <translation>g/L</translation>
        </message>
    </context>
    <context>
        <name>Timeline</name>
        <message>
            <source>1 line</source>
            <translation>1 Zeile</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Ansatz</translation>
        </message>
        <message>
            <source>Came due, not ticked off: {reminder}</source>
            <translation>Fällig geworden, nicht abgehakt: {reminder}</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>The newest {shown} of {total} lines</source>
            <translation>Die neuesten {shown} von {total} Zeilen</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Heute</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Gefäß</translation>
        </message>
        <message>
            <source>Yesterday</source>
            <translation>Gestern</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d. MMM yyyy</translation>
        </message>
        <message>
            <source>dddd d MMMM yyyy</source>
            <translation>dddd, d. MMMM yyyy</translation>
        </message>
        <message>
            <source>entered {when}</source>
            <translation>eingetragen {when}</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>{batch} poured over from {old} into {new}</source>
            <translation>{batch} von {old} in {new} umgefüllt</translation>
        </message>
        <message>
            <source>{count} temperatures in {file} end here</source>
            <translation>{count} Temperaturen in {file} enden hier</translation>
        </message>
        <message>
            <source>{name} came to be: {origin}</source>
            <translation>{name} ist entstanden: {origin}</translation>
        </message>
        <message>
            <source>{sentence}: {words}</source>
            <translation>{sentence}: {words}</translation>
        </message>
        <message>
            <source>{temperature} read</source>
            <translation>{temperature} gemessen</translation>
        </message>
        <message>
            <source>{total} lines</source>
            <translation>{total} Zeilen</translation>
        </message>
        <message>
            <source>{what}, {volume}</source>
            <translation>{what}, {volume}</translation>
        </message>
        <message>
            <source>“{words}”</source>
            <translation>„{words}“</translation>
        </message>
    </context>
    <context>
        <name>TimelineList</name>
        <message>
            <source>Time line, newest first</source>
            <translation>Zeitleiste, neueste zuerst</translation>
        </message>
    </context>
    <context>
        <name>TimelineModel</name>
        <message>
            <source>What happened</source>
            <translation>Was geschah</translation>
        </message>
    </context>
    <context>
        <name>TimerCard</name>
        <message>
            <source>Open the run sheet</source>
            <translation>Laufzettel öffnen</translation>
        </message>
        <message>
            <source>Open the run sheet of {batch}</source>
            <translation>Laufzettel von {batch} öffnen</translation>
        </message>
        <message>
            <source>Time left</source>
            <translation>Restzeit</translation>
        </message>
    </context>
    <context>
        <name>TopUpDialog</name>
        <message>
            <source>A guess without measuring: between {low} and {high} may have evaporated since it was last noted.</source>
            <translation>Geschätzt, ohne zu messen: Zwischen {low} und {high} könnten verdunstet sein, seit es zuletzt notiert wurde.</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>How much</source>
            <translation>Wie viel</translation>
        </message>
        <message>
            <source>How much sugar is left in it is not known yet.</source>
            <translation>Wie viel Zucker noch darin ist, ist noch nicht bekannt.</translation>
        </message>
        <message>
            <source>How much sweet tea</source>
            <translation>Wie viel gesüßter Tee</translation>
        </message>
        <message>
            <source>How much sweet tea, room for {room}</source>
            <translation>Wie viel gesüßter Tee, Platz für {room}</translation>
        </message>
        <message>
            <source>How warm it is now</source>
            <translation>Wie warm er jetzt ist</translation>
        </message>
        <message>
            <source>How warm it is now, at most {limit}</source>
            <translation>Wie warm er jetzt ist, höchstens {limit}</translation>
        </message>
        <message>
            <source>Leaf per litre of it</source>
            <translation>Teeblätter je Liter davon</translation>
        </message>
        <message>
            <source>No pH of it is known, so what it becomes is not known either.</source>
            <translation>Kein pH davon ist bekannt, also ist auch nicht bekannt, was daraus wird.</translation>
        </message>
        <message>
            <source>Note the topping up</source>
            <translation>Nachfüllen notieren</translation>
        </message>
        <message>
            <source>Pour it in</source>
            <translation>Zugießen</translation>
        </message>
        <message>
            <source>Sugar from about {before} to about {after}</source>
            <translation>Zucker von etwa {before} auf etwa {after}</translation>
        </message>
        <message>
            <source>Sugar per litre of it</source>
            <translation>Zucker je Liter davon</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>Top up</source>
            <translation>Nachfüllen</translation>
        </message>
        <message>
            <source>Top up {name}</source>
            <translation>{name} nachfüllen</translation>
        </message>
        <message>
            <source>Top up {name} with fresh sweet tea</source>
            <translation>{name} mit frischem gesüßtem Tee nachfüllen</translation>
        </message>
        <message>
            <source>Type an amount to see what it does.</source>
            <translation>Gib eine Menge ein, um zu sehen, was sie bewirkt.</translation>
        </message>
        <message>
            <source>Use ripe, unflavoured kombucha, so that the pellicle stays covered and sour.</source>
            <translation>Nimm reifen Kombucha ohne Aroma, damit das Häutchen bedeckt und sauer bleibt.</translation>
        </message>
        <message>
            <source>Why it goes in all the same</source>
            <translation>Warum er trotzdem hineinkommt</translation>
        </message>
        <message>
            <source>pH from about {before} to {after}</source>
            <translation>pH von etwa {before} auf {after}</translation>
        </message>
        <message>
            <source>{before} + {poured} = {after}, with {sugar} of sugar and {tea} of tea</source>
            <translation>{before} + {poured} = {after}, mit {sugar} Zucker und {tea} Tee</translation>
        </message>
    </context>
    <context>
        <name>Tray</name>
        <message>
            <source>Due: {title}</source>
            <translation>Fällig: {title}</translation>
        </message>
        <message>
            <source>Nothing to do</source>
            <translation>Nichts zu tun</translation>
        </message>
        <message>
            <source>Quit</source>
            <translation>Beenden</translation>
        </message>
        <message>
            <source>Show the shelf</source>
            <translation>Regal zeigen</translation>
        </message>
        <message>
            <source>brewdesk: 1 thing is due</source>
            <translation>brewdesk: 1 Sache ist fällig</translation>
        </message>
        <message>
            <source>brewdesk: nothing is due</source>
            <translation>brewdesk: nichts ist fällig</translation>
        </message>
        <message>
            <source>brewdesk: {count} things are due</source>
            <translation>brewdesk: {count} Sachen sind fällig</translation>
        </message>
        <message>
            <source>{when}: {title}</source>
            <translation>{when}: {title}</translation>
        </message>
    </context>
    <context>
        <name>TrayStrip</name>
        <message>
            <source>Give up</source>
            <translation>Aufgeben</translation>
        </message>
        <message>
            <source>Put it back where it was (Escape)</source>
            <translation>Zurück an seinen Platz (Escape)</translation>
        </message>
    </context>
    <context>
        <name>TrialActs</name>
        <message>
            <source>Codes of the trial {name} opened</source>
            <translation>Codes des Versuchs {name} aufgedeckt</translation>
        </message>
        <message>
            <source>Tasting of {code} in the trial {name} taken out</source>
            <translation>Verkostung von {code} im Versuch {name} herausgenommen</translation>
        </message>
        <message>
            <source>Trial {name} changed</source>
            <translation>Versuch {name} geändert</translation>
        </message>
        <message>
            <source>Trial {name} ended</source>
            <translation>Versuch {name} beendet</translation>
        </message>
        <message>
            <source>Trial {name} given up</source>
            <translation>Versuch {name} aufgegeben</translation>
        </message>
        <message>
            <source>Trial {name} planned, {jars} jars</source>
            <translation>Versuch {name} geplant, {jars} Gläser</translation>
        </message>
        <message>
            <source>Trial {name} started: {jars} batches planned</source>
            <translation>Versuch {name} begonnen: {jars} Ansätze geplant</translation>
        </message>
        <message>
            <source>Trial {old_name} renamed {name}</source>
            <translation>Versuch {old_name} in {name} umbenannt</translation>
        </message>
        <message>
            <source>{batch} taken into the trial {name}</source>
            <translation>{batch} in den Versuch {name} aufgenommen</translation>
        </message>
        <message>
            <source>{code} counted again in the trial {name}</source>
            <translation>{code} zählt wieder im Versuch {name}</translation>
        </message>
        <message>
            <source>{code} left out of the trial {name}: {reason}</source>
            <translation>{code} aus dem Versuch {name} weggelassen: {reason}</translation>
        </message>
        <message>
            <source>{jars} jars of the trial {name} tasted</source>
            <translation>{jars} Gläser des Versuchs {name} verkostet</translation>
        </message>
    </context>
    <context>
        <name>TrialChart</name>
        <message>
            <source>No pH was read yet. Once readings of the jars are entered on the shelf, their curves lie here over each other.</source>
            <translation>Noch wurde kein pH gemessen. Sobald im Regal Messungen der Gläser eingetragen sind, liegen ihre Kurven hier übereinander.</translation>
        </message>
        <message>
            <source>The table below has the same in figures.</source>
            <translation>Die Tabelle unten zeigt dasselbe in Zahlen.</translation>
        </message>
        <message>
            <source>pH by day since each jar began</source>
            <translation>pH nach Tagen seit Beginn jedes Glases</translation>
        </message>
        <message>
            <source>pH of the jars over time</source>
            <translation>pH der Gläser im Lauf der Zeit</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>{code} · day {day} · pH {ph}</source>
            <translation>{code} · Tag {day} · pH {ph}</translation>
        </message>
    </context>
    <context>
        <name>TrialDialog</name>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Choose at least one vessel for each level.</source>
            <translation>Wähle für jede Stufe mindestens ein Gefäß.</translation>
        </message>
        <message>
            <source>Draw lots and plan it</source>
            <translation>Losen und planen</translation>
        </message>
        <message>
            <source>I say myself which vessel gets which level</source>
            <translation>Ich sage selbst, welches Gefäß welche Stufe bekommt</translation>
        </message>
        <message>
            <source>Its levels</source>
            <translation>Seine Stufen</translation>
        </message>
        <message>
            <source>No vessel chosen: batches that there are already can be taken in later. What differs between them is listed then.</source>
            <translation>Kein Gefäß gewählt: Ansätze, die es schon gibt, lassen sich später aufnehmen. Was sie unterscheidet, wird dann aufgeführt.</translation>
        </message>
        <message>
            <source>One jar of a level cannot be told from the level itself. Take several of each, if you can.</source>
            <translation>Ein einzelnes Glas einer Stufe lässt sich nicht von der Stufe selbst unterscheiden. Nimm von jeder mehrere, wenn du kannst.</translation>
        </message>
        <message>
            <source>Plan a trial</source>
            <translation>Versuch planen</translation>
        </message>
        <message>
            <source>Taste blind: codes on jars and page until they are opened</source>
            <translation>Blind probieren: Codes auf Gläsern und Seite, bis sie aufgedeckt werden</translation>
        </message>
        <message>
            <source>The one thing in which the jars &amp;differ</source>
            <translation>Das Eine, worin sich die Gläser &amp;unterscheiden</translation>
        </message>
        <message>
            <source>Vessels, alike if possible</source>
            <translation>Gefäße, möglichst gleiche</translation>
        </message>
        <message>
            <source>What you want to &amp;know</source>
            <translation>Was du &amp;wissen willst</translation>
        </message>
        <message>
            <source>{jars} jars, dealt out evenly.</source>
            <translation>{jars} Gläser, gleichmäßig verteilt.</translation>
        </message>
        <message>
            <source>{jars} jars: an interval, but no more than a hint. From {count} of each on, a difference can be shown.</source>
            <translation>{jars} Gläser: ein Intervall, aber nicht mehr als ein Hinweis. Ab {count} von jeder Stufe lässt sich ein Unterschied zeigen.</translation>
        </message>
    </context>
    <context>
        <name>TrialJarsModel</name>
        <message>
            <source>Acidity</source>
            <translation>Säure</translation>
        </message>
        <message>
            <source>Code</source>
            <translation>Code</translation>
        </message>
        <message>
            <source>Jar</source>
            <translation>Glas</translation>
        </message>
        <message>
            <source>Level</source>
            <translation>Stufe</translation>
        </message>
        <message>
            <source>Liking</source>
            <translation>Gefallen</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Häutchen</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Zustand</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>verdeckt</translation>
        </message>
        <message>
            <source>left out: {reason}</source>
            <translation>weggelassen: {reason}</translation>
        </message>
        <message>
            <source>no batch yet</source>
            <translation>noch kein Ansatz</translation>
        </message>
        <message>
            <source>pH 3.2 passed</source>
            <translation>pH 3,2 erreicht</translation>
        </message>
        <message>
            <source>{mm} mm</source>
            <translation>{mm} mm</translation>
        </message>
    </context>
    <context>
        <name>TrialReport</name>
        <message>
            <source>Acidity</source>
            <translation>Säure</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Differences</source>
            <translation>Unterschiede</translation>
        </message>
        <message>
            <source>Each line is a single jar.</source>
            <translation>Jede Linie ist ein einzelnes Glas.</translation>
        </message>
        <message>
            <source>Jar</source>
            <translation>Glas</translation>
        </message>
        <message>
            <source>Jars</source>
            <translation>Gläser</translation>
        </message>
        <message>
            <source>Jars counted</source>
            <translation>Gezählte Gläser</translation>
        </message>
        <message>
            <source>Jars differ in</source>
            <translation>Unterschied der Gläser</translation>
        </message>
        <message>
            <source>Left out</source>
            <translation>Weggelassen</translation>
        </message>
        <message>
            <source>Level</source>
            <translation>Stufe</translation>
        </message>
        <message>
            <source>Liking</source>
            <translation>Gefallen</translation>
        </message>
        <message>
            <source>Made from the maker's own entries; brewdesk cannot check them. A trial at home tells of its own jars. It says nothing of safety; local rules come first.</source>
            <translation>Aus eigenen Einträgen erstellt; brewdesk kann sie nicht prüfen. Ein Versuch zu Hause sagt etwas über seine eigenen Gläser. Über Sicherheit sagt er nichts; örtliche Regeln gehen vor.</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Seite {page} von {pages}</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Häutchen</translation>
        </message>
        <message>
            <source>Tasted blind</source>
            <translation>Blind verkostet</translation>
        </message>
        <message>
            <source>Taster</source>
            <translation>Verkoster</translation>
        </message>
        <message>
            <source>Tastings</source>
            <translation>Verkostungen</translation>
        </message>
        <message>
            <source>The bar holds the difference in 95 of 100 such trials; where it crosses the line, there may be none.</source>
            <translation>Der Balken enthält den Unterschied in 95 von 100 solchen Versuchen; wo er die Linie kreuzt, gibt es vielleicht keinen.</translation>
        </message>
        <message>
            <source>The maker's conclusion</source>
            <translation>Eigene Schlussfolgerung</translation>
        </message>
        <message>
            <source>Thin lines are single jars, thick ones the mean of a level.</source>
            <translation>Dünne Linien sind einzelne Gläser, dicke das Mittel einer Stufe.</translation>
        </message>
        <message>
            <source>Trial report</source>
            <translation>Versuchsbericht</translation>
        </message>
        <message>
            <source>What else differs</source>
            <translation>Was sonst verschieden ist</translation>
        </message>
        <message>
            <source>What these jars show</source>
            <translation>Was diese Gläser zeigen</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Worte</translation>
        </message>
        <message>
            <source>day since each jar began</source>
            <translation>Tag seit Beginn jedes Glases</translation>
        </message>
        <message>
            <source>left out: {reason}</source>
            <translation>weggelassen: {reason}</translation>
        </message>
        <message>
            <source>no</source>
            <translation>nein</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>pH {ph} passed</source>
            <translation>pH {ph} erreicht</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>ja</translation>
        </message>
        <message>
            <source>{count} {arm}</source>
            <translation>{count} {arm}</translation>
        </message>
        <message>
            <source>{mm} mm</source>
            <translation>{mm} mm</translation>
        </message>
        <message>
            <source>{outcome}: {arm}</source>
            <translation>{outcome}: {arm}</translation>
        </message>
    </context>
    <context>
        <name>TrialReportDialog</name>
        <message>
            <source>PNG pictures (*.png)</source>
            <translation>PNG-Bilder (*.png)</translation>
        </message>
        <message>
            <source>SVG pictures (*.svg)</source>
            <translation>SVG-Bilder (*.svg)</translation>
        </message>
        <message>
            <source>Save as picture</source>
            <translation>Als Bild speichern</translation>
        </message>
        <message>
            <source>Save as picture…</source>
            <translation>Als Bild speichern…</translation>
        </message>
        <message>
            <source>Save the trial report as PDF</source>
            <translation>Versuchsbericht als PDF speichern</translation>
        </message>
        <message>
            <source>With names of jars and tasters</source>
            <translation>Mit Namen von Gläsern und Verkostern</translation>
        </message>
    </context>
    <context>
        <name>TrialSheet</name>
        <message>
            <source>Change name and question…</source>
            <translation>Name und Frage ändern…</translation>
        </message>
        <message>
            <source>Count it again</source>
            <translation>Wieder zählen</translation>
        </message>
        <message>
            <source>End…</source>
            <translation>Beenden…</translation>
        </message>
        <message>
            <source>Give the trial up…</source>
            <translation>Versuch aufgeben…</translation>
        </message>
        <message>
            <source>Go to the jar</source>
            <translation>Zum Glas</translation>
        </message>
        <message>
            <source>How far apart</source>
            <translation>Wie weit auseinander</translation>
        </message>
        <message>
            <source>Jars</source>
            <translation>Gläser</translation>
        </message>
        <message>
            <source>Jars of the trial</source>
            <translation>Gläser des Versuchs</translation>
        </message>
        <message>
            <source>Leave out…</source>
            <translation>Weglassen…</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Mehr</translation>
        </message>
        <message>
            <source>Open the codes</source>
            <translation>Codes aufdecken</translation>
        </message>
        <message>
            <source>Report…</source>
            <translation>Bericht…</translation>
        </message>
        <message>
            <source>Sheet of the trial</source>
            <translation>Blatt des Versuchs</translation>
        </message>
        <message>
            <source>Start…</source>
            <translation>Beginnen…</translation>
        </message>
        <message>
            <source>Take a batch in…</source>
            <translation>Ansatz aufnehmen…</translation>
        </message>
        <message>
            <source>Taste…</source>
            <translation>Probieren…</translation>
        </message>
        <message>
            <source>What else differs</source>
            <translation>Was sonst verschieden ist</translation>
        </message>
        <message>
            <source>Your conclusion: {words}</source>
            <translation>Deine Schlussfolgerung: {words}</translation>
        </message>
        <message>
            <source>codes closed</source>
            <translation>Codes verdeckt</translation>
        </message>
        <message>
            <source>since {date}</source>
            <translation>seit {date}</translation>
        </message>
        <message>
            <source>{count} jars</source>
            <translation>{count} Gläser</translation>
        </message>
        <message>
            <source>{state} {date}</source>
            <translation>{state} {date}</translation>
        </message>
    </context>
    <context>
        <name>Trials</name>
        <message>
            <source>1 of 100 trials</source>
            <translation>1 von 100 Versuchen</translation>
        </message>
        <message>
            <source>A level</source>
            <translation>Eine Stufe</translation>
        </message>
        <message>
            <source>A level must lie between {low} and {high}.</source>
            <translation>Eine Stufe muss zwischen {low} und {high} liegen.</translation>
        </message>
        <message>
            <source>A name of a level has at most {high} letters.</source>
            <translation>Der Name einer Stufe hat höchstens {high} Zeichen.</translation>
        </message>
        <message>
            <source>A trial compares at least two levels.</source>
            <translation>Ein Versuch vergleicht mindestens zwei Stufen.</translation>
        </message>
        <message>
            <source>A vessel can hold one jar of the trial only.</source>
            <translation>Ein Gefäß kann nur ein Glas des Versuchs aufnehmen.</translation>
        </message>
        <message>
            <source>At most {high} jars fit into one trial.</source>
            <translation>In einen Versuch passen höchstens {high} Gläser.</translation>
        </message>
        <message>
            <source>At most {high} letters fit here.</source>
            <translation>Hier passen höchstens {high} Zeichen hinein.</translation>
        </message>
        <message>
            <source>At most {high} levels fit into one trial.</source>
            <translation>In einen Versuch passen höchstens {high} Stufen.</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Begonnen</translation>
        </message>
        <message>
            <source>Beside {factor}, the levels differ in something else as a whole. What that does cannot be told from what {factor} does:</source>
            <translation>Nicht nur {factor} unterscheidet die Stufen, sondern durchweg noch etwas anderes. Was das bewirkt, lässt sich nicht von dem trennen, was {factor} bewirkt:</translation>
        </message>
        <message>
            <source>Chance alone does as much in {chance}, allowing for the {count} comparisons made.</source>
            <translation>Zufall allein bewirkt ebenso viel in {chance}, die {count} Vergleiche eingerechnet.</translation>
        </message>
        <message>
            <source>Chance alone does as much in {chance}.</source>
            <translation>Zufall allein bewirkt ebenso viel in {chance}.</translation>
        </message>
        <message>
            <source>Choose at least one vessel for each level.</source>
            <translation>Wähle für jede Stufe mindestens ein Gefäß.</translation>
        </message>
        <message>
            <source>Choose or type the level of each.</source>
            <translation>Wähle oder tippe für jede die Stufe.</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Kultur</translation>
        </message>
        <message>
            <source>Days to pH {ph}</source>
            <translation>Tage bis pH {ph}</translation>
        </message>
        <message>
            <source>Dealing the same jars out by lot parts them as far in {chance}.</source>
            <translation>Verlost man dieselben Gläser neu, trennt sie das ebenso weit in {chance}.</translation>
        </message>
        <message>
            <source>Does green tea sour faster than black? Two jars side by side cannot say: two jars of the same tea differ as well. Start several jars alike but for one thing, draw lots for which gets what, and taste them by code. The program lays the curves over each other and says what the jars show, with its doubt, and what they do not.</source>
            <translation>Säuert grüner Tee schneller als schwarzer? Zwei Gläser nebeneinander können es nicht sagen: Auch zwei Gläser mit demselben Tee sind verschieden. Beginne mehrere Gläser, die bis auf eines gleich sind, lose aus, welches was bekommt, und probiere sie nach Code. Das Programm legt die Kurven übereinander und sagt, was die Gläser zeigen, mit welcher Unsicherheit, und was nicht.</translation>
        </message>
        <message>
            <source>Every jar of this trial has its batch already.</source>
            <translation>Jedes Glas dieses Versuchs hat schon seinen Ansatz.</translation>
        </message>
        <message>
            <source>Filled to</source>
            <translation>Gefüllt bis</translation>
        </message>
        <message>
            <source>Give each level a name.</source>
            <translation>Gib jeder Stufe einen Namen.</translation>
        </message>
        <message>
            <source>Half of {arm} had by day {day}.</source>
            <translation>Die Hälfte von {arm} hatte das bis Tag {day}.</translation>
        </message>
        <message>
            <source>How far do like jars lie apart? No trial of yours tells it yet; the figure here is only a guess. Two or three jars of one kind would show it.</source>
            <translation>Wie weit liegen gleiche Gläser auseinander? Noch keiner deiner Versuche sagt es; die Zahl hier ist nur geraten. Zwei oder drei Gläser einer Sorte würden es zeigen.</translation>
        </message>
        <message>
            <source>It holds for these jars, this culture and this recipe. Intervals are of 95 %, and take jars of one kind to scatter evenly around their mean.</source>
            <translation>Es gilt für diese Gläser, diese Kultur und dieses Rezept. Intervalle umfassen 95 % und setzen voraus, dass Gläser einer Sorte gleichmäßig um ihr Mittel streuen.</translation>
        </message>
        <message>
            <source>It takes at least two jars of each that differ a little, to see how jars scatter.</source>
            <translation>Es braucht mindestens zwei Gläser von jeder Stufe, die sich ein wenig unterscheiden, um zu sehen, wie Gläser streuen.</translation>
        </message>
        <message>
            <source>Like jars of your trials scattered by {amount} ({count} jars).</source>
            <translation>Gleiche Gläser deiner Versuche streuten um {amount} ({count} Gläser).</translation>
        </message>
        <message>
            <source>Liking</source>
            <translation>Gefallen</translation>
        </message>
        <message>
            <source>Material of the vessel</source>
            <translation>Material des Gefäßes</translation>
        </message>
        <message>
            <source>More than a thousand jars of each: a difference of {gap} drowns in a scatter of {scatter}.</source>
            <translation>Mehr als tausend Gläser von jeder Stufe: {gap} Unterschied gehen in {scatter} Streuung unter.</translation>
        </message>
        <message>
            <source>No jar counts yet.</source>
            <translation>Noch zählt kein Glas.</translation>
        </message>
        <message>
            <source>Not measured in both</source>
            <translation>Nicht in beiden gemessen</translation>
        </message>
        <message>
            <source>Not settled either, though it stands out: {others}.</source>
            <translation>Ebenfalls nicht entschieden, obwohl es auffällt: {others}.</translation>
        </message>
        <message>
            <source>Not told apart</source>
            <translation>Nicht zu unterscheiden</translation>
        </message>
        <message>
            <source>Nothing can be compared yet: it needs readings of jars of each level.</source>
            <translation>Noch lässt sich nichts vergleichen: Es braucht Messungen von Gläsern jeder Stufe.</translation>
        </message>
        <message>
            <source>Nothing is settled: these jars do not tell the levels apart. That is no proof that there is no difference; it may be smaller than so few jars can show.</source>
            <translation>Nichts ist entschieden: Diese Gläser unterscheiden die Stufen nicht. Das beweist nicht, dass es keinen Unterschied gibt; er kann kleiner sein, als so wenige Gläser zeigen können.</translation>
        </message>
        <message>
            <source>One jar each</source>
            <translation>Je ein Glas</translation>
        </message>
        <message>
            <source>One jar each cannot tell {factor} from the jar.</source>
            <translation>Mit je einem Glas lässt sich nicht sagen, ob es {factor} war oder das Glas.</translation>
        </message>
        <message>
            <source>One jar each: the curves can be laid side by side, but nobody can say whether it was {factor} or the jar.</source>
            <translation>Je ein Glas: Die Kurven lassen sich nebeneinanderlegen, aber niemand kann sagen, ob es {factor} war oder das Glas.</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Ort</translation>
        </message>
        <message>
            <source>Points to it, not settled</source>
            <translation>Deutet darauf hin, nicht entschieden</translation>
        </message>
        <message>
            <source>Say for each vessel which level it gets.</source>
            <translation>Sag für jedes Gefäß, welche Stufe es bekommt.</translation>
        </message>
        <message>
            <source>Say something of at least one jar.</source>
            <translation>Sag etwas zu mindestens einem Glas.</translation>
        </message>
        <message>
            <source>Shape of the vessel</source>
            <translation>Form des Gefäßes</translation>
        </message>
        <message>
            <source>Share of starter</source>
            <translation>Starteranteil</translation>
        </message>
        <message>
            <source>Shown in these jars</source>
            <translation>In diesen Gläsern gezeigt</translation>
        </message>
        <message>
            <source>So far these jars do not tell them apart.</source>
            <translation>Bisher lassen sie sich mit diesen Gläsern nicht unterscheiden.</translation>
        </message>
        <message>
            <source>Strength of the tea</source>
            <translation>Stärke des Tees</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Zucker</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Tee</translation>
        </message>
        <message>
            <source>Temperature of the place</source>
            <translation>Temperatur des Ortes</translation>
        </message>
        <message>
            <source>That points to a difference, but does not settle it.</source>
            <translation>Das deutet auf einen Unterschied hin, entscheidet es aber nicht.</translation>
        </message>
        <message>
            <source>The codes are closed. Which jar is which, and how the levels compare, is shown when they are opened.</source>
            <translation>Die Codes sind verdeckt. Welches Glas welches ist und wie die Stufen abschneiden, zeigt sich, wenn sie aufgedeckt werden.</translation>
        </message>
        <message>
            <source>The codes of this trial are open already.</source>
            <translation>Die Codes dieses Versuchs sind schon aufgedeckt.</translation>
        </message>
        <message>
            <source>The conclusion has at most {high} letters.</source>
            <translation>Die Schlussfolgerung hat höchstens {high} Zeichen.</translation>
        </message>
        <message>
            <source>The difference</source>
            <translation>Der Unterschied</translation>
        </message>
        <message>
            <source>The jars differ in more than {factor}:</source>
            <translation>Nicht nur {factor} unterscheidet die Gläser:</translation>
        </message>
        <message>
            <source>The jars differ in nothing else that is entered.</source>
            <translation>Die Gläser unterscheiden sich in nichts anderem, was eingetragen ist.</translation>
        </message>
        <message>
            <source>The liking</source>
            <translation>Das Gefallen</translation>
        </message>
        <message>
            <source>The marks are too few for an interval; nothing follows from them yet.</source>
            <translation>Für ein Intervall sind es zu wenige Noten; noch folgt nichts daraus.</translation>
        </message>
        <message>
            <source>The pellicle of {second} was {gap} than that of {first} around day {day}</source>
            <translation>Das Häutchen von {second} war um Tag {day} {gap} als das von {first}</translation>
        </message>
        <message>
            <source>The plan of its batch was given up.</source>
            <translation>Der Plan des Ansatzes wurde aufgegeben.</translation>
        </message>
        <message>
            <source>The question has at most {high} letters.</source>
            <translation>Die Frage hat höchstens {high} Zeichen.</translation>
        </message>
        <message>
            <source>The scatter</source>
            <translation>Die Streuung</translation>
        </message>
        <message>
            <source>The share of starter, from 0 to 1,</source>
            <translation>Der Starteranteil, von 0 bis 1,</translation>
        </message>
        <message>
            <source>The taster's name has at most {high} letters.</source>
            <translation>Der Name des Verkosters hat höchstens {high} Zeichen.</translation>
        </message>
        <message>
            <source>The waits differ, also when jars not there yet are counted as watched.</source>
            <translation>Die Wartezeiten unterscheiden sich, auch wenn noch nicht fertige Gläser als beobachtet mitzählen.</translation>
        </message>
        <message>
            <source>These jars do not tell {second} from {first} in {outcome} ({jars}): the difference may be {range}. That is no proof that there is none.</source>
            <translation>Was {outcome} betrifft, unterscheiden diese Gläser {second} nicht von {first} ({jars}). Möglicher Unterschied: {range}. Das beweist nicht, dass es keinen gibt.</translation>
        </message>
        <message>
            <source>These jars point to it but do not settle it: {lead} ({jars}). The difference may be {range}.</source>
            <translation>Diese Gläser deuten darauf hin, entscheiden es aber nicht: {lead} ({jars}). Möglicher Unterschied: {range}.</translation>
        </message>
        <message>
            <source>Thickness of the pellicle</source>
            <translation>Dicke des Häutchens</translation>
        </message>
        <message>
            <source>This batch is in a trial already.</source>
            <translation>Dieser Ansatz ist schon in einem Versuch.</translation>
        </message>
        <message>
            <source>This jar belongs to another trial.</source>
            <translation>Dieses Glas gehört zu einem anderen Versuch.</translation>
        </message>
        <message>
            <source>This level belongs to another trial.</source>
            <translation>Diese Stufe gehört zu einem anderen Versuch.</translation>
        </message>
        <message>
            <source>This program calls a difference shown only from four jars of each on: with fewer, even the clearest order of the jars comes about by chance too often. With just four it asks besides that no jar of one kind lies among those of the other.</source>
            <translation>Dieses Programm nennt einen Unterschied erst ab vier Gläsern von jeder Stufe gezeigt: Bei weniger kommt selbst die klarste Reihenfolge der Gläser zu oft durch Zufall zustande. Bei genau vieren verlangt es außerdem, dass kein Glas der einen Sorte zwischen denen der anderen liegt.</translation>
        </message>
        <message>
            <source>This trial has ended. Undo brings it back.</source>
            <translation>Dieser Versuch ist beendet. Rückgängig holt ihn zurück.</translation>
        </message>
        <message>
            <source>Titratable acidity</source>
            <translation>Titrierbare Säure</translation>
        </message>
        <message>
            <source>Too few jars</source>
            <translation>Zu wenige Gläser</translation>
        </message>
        <message>
            <source>Two levels are the same. Give each its own name and level.</source>
            <translation>Zwei Stufen sind gleich. Gib jeder ihren eigenen Namen und Wert.</translation>
        </message>
        <message>
            <source>What grows a culture is no jar of a trial.</source>
            <translation>Was eine Kultur zieht, ist kein Glas eines Versuchs.</translation>
        </message>
        <message>
            <source>Whoever brews the jars knows what is in them: let somebody else pour, or taste by the codes alone. Warnings about a jar are always shown.</source>
            <translation>Wer die Gläser ansetzt, weiß, was darin ist: Lass jemand anderen einschenken, oder probiere nur nach den Codes. Warnungen zu einem Glas werden immer gezeigt.</translation>
        </message>
        <message>
            <source>Width of the vessel</source>
            <translation>Weite des Gefäßes</translation>
        </message>
        <message>
            <source>With so few jars even the clearest order comes about by chance in {chance}.</source>
            <translation>Bei so wenigen Gläsern kommt selbst die klarste Reihenfolge durch Zufall zustande, und zwar in {chance}.</translation>
        </message>
        <message>
            <source>With {count} comparisons made, one is apt to stand out by chance alone.</source>
            <translation>Bei {count} angestellten Vergleichen fällt leicht einer durch bloßen Zufall auf.</translation>
        </message>
        <message>
            <source>acidity</source>
            <translation>die Säure</translation>
        </message>
        <message>
            <source>anywhere from {low} to {high}</source>
            <translation>irgendwo von {low} bis {high}</translation>
        </message>
        <message>
            <source>before day {day}</source>
            <translation>vor Tag {day}</translation>
        </message>
        <message>
            <source>between {near} and {far}</source>
            <translation>zwischen {near} und {far}</translation>
        </message>
        <message>
            <source>day {day} ({low} to {high})</source>
            <translation>Tag {day} ({low} bis {high})</translation>
        </message>
        <message>
            <source>fewer than 1 of 100 trials</source>
            <translation>weniger als 1 von 100 Versuchen</translation>
        </message>
        <message>
            <source>liking</source>
            <translation>das Gefallen</translation>
        </message>
        <message>
            <source>no pH yet</source>
            <translation>noch kein pH</translation>
        </message>
        <message>
            <source>no reason given</source>
            <translation>kein Grund genannt</translation>
        </message>
        <message>
            <source>none, starter liquid only</source>
            <translation>keine, nur Ansatzflüssigkeit</translation>
        </message>
        <message>
            <source>not by day {day}</source>
            <translation>nicht bis Tag {day}</translation>
        </message>
        <message>
            <source>pH of the starter</source>
            <translation>pH des Starters</translation>
        </message>
        <message>
            <source>the culture</source>
            <translation>die Kultur</translation>
        </message>
        <message>
            <source>the kind of vessel</source>
            <translation>die Art des Gefäßes</translation>
        </message>
        <message>
            <source>the place</source>
            <translation>der Ort</translation>
        </message>
        <message>
            <source>the share of starter</source>
            <translation>der Starteranteil</translation>
        </message>
        <message>
            <source>the strength of the tea</source>
            <translation>die Stärke des Tees</translation>
        </message>
        <message>
            <source>the sugar</source>
            <translation>der Zucker</translation>
        </message>
        <message>
            <source>the tea</source>
            <translation>der Tee</translation>
        </message>
        <message>
            <source>the thickness of the pellicle</source>
            <translation>die Dicke des Häutchens</translation>
        </message>
        <message>
            <source>the time to pH {ph}</source>
            <translation>die Zeit bis pH {ph}</translation>
        </message>
        <message>
            <source>what was changed</source>
            <translation>die Änderung</translation>
        </message>
        <message>
            <source>{amount} earlier</source>
            <translation>{amount} früher</translation>
        </message>
        <message>
            <source>{amount} higher</source>
            <translation>{amount} höher</translation>
        </message>
        <message>
            <source>{amount} later</source>
            <translation>{amount} später</translation>
        </message>
        <message>
            <source>{amount} less acid</source>
            <translation>{amount} weniger sauer</translation>
        </message>
        <message>
            <source>{amount} lower</source>
            <translation>{amount} niedriger</translation>
        </message>
        <message>
            <source>{amount} more acid</source>
            <translation>{amount} saurer</translation>
        </message>
        <message>
            <source>{amount} thicker</source>
            <translation>{amount} dicker</translation>
        </message>
        <message>
            <source>{amount} thinner</source>
            <translation>{amount} dünner</translation>
        </message>
        <message>
            <source>{code} was discarded ({reason}). What was read of it still counts: leave it out, with the reason, if it went wrong.</source>
            <translation>{code} wurde weggeworfen ({reason}). Was daran gemessen wurde, zählt weiter: Lass es mit dem Grund weg, wenn es missraten ist.</translation>
        </message>
        <message>
            <source>{count} comparisons were made. Each is judged more strictly for it (Holm 1979); the intervals are drawn for each alone.</source>
            <translation>{count} Vergleiche wurden angestellt. Jeder wird dafür strenger beurteilt (Holm 1979); die Intervalle sind für jeden allein gezeichnet.</translation>
        </message>
        <message>
            <source>{count} of 100 trials</source>
            <translation>{count} von 100 Versuchen</translation>
        </message>
        <message>
            <source>{count} {mark}</source>
            <translation>{count} {mark}</translation>
        </message>
        <message>
            <source>{done_second} of {second_count} jars of {second} and {done_first} of {first_count} of {first} have passed pH {ph}; the others are still waited for.</source>
            <translation>{done_second} von {second_count} Gläsern von {second} und {done_first} von {first_count} von {first} haben pH {ph} erreicht; auf die anderen wird noch gewartet.</translation>
        </message>
        <message>
            <source>{jars} jars of each see it in {share} of 100 trials. The smallest difference that they see in 80 of 100 is {smallest}.</source>
            <translation>{jars} Gläser von jeder Stufe sehen ihn in {share} von 100 Versuchen. Der kleinste Unterschied, den sie in 80 von 100 sehen, ist {smallest}.</translation>
        </message>
        <message>
            <source>{jars} jars of each, {all} in all. Then at least {share} of 100 such trials see a difference of {gap}, if like jars scatter by {scatter} and if only this is compared.</source>
            <translation>{jars} Gläser von jeder Stufe, {all} insgesamt. Dann sehen mindestens {share} von 100 solchen Versuchen {gap} Unterschied, wenn gleiche Gläser um {scatter} streuen und nur das verglichen wird.</translation>
        </message>
        <message>
            <source>{jars}, compared within like vessels</source>
            <translation>{jars}, innerhalb gleicher Gefäße verglichen</translation>
        </message>
        <message>
            <source>{lead} ({jars}). The difference of such jars is likely to be {range}.</source>
            <translation>{lead} ({jars}). Wahrscheinlicher Unterschied solcher Gläser: {range}.</translation>
        </message>
        <message>
            <source>{number} %</source>
            <translation>{number} %</translation>
        </message>
        <message>
            <source>{number} days</source>
            <translation>{number} Tage</translation>
        </message>
        <message>
            <source>{number} mm</source>
            <translation>{number} mm</translation>
        </message>
        <message>
            <source>{number} points</source>
            <translation>{number} Punkte</translation>
        </message>
        <message>
            <source>{outcome} ({second})</source>
            <translation>{outcome} ({second})</translation>
        </message>
        <message>
            <source>{outcome}: not both jars are there yet. {cannot}</source>
            <translation>{outcome}: Noch sind nicht beide Gläser so weit. {cannot}</translation>
        </message>
        <message>
            <source>{outcome}: not measured yet in jars of both.</source>
            <translation>{outcome}: noch nicht in Gläsern von beiden gemessen.</translation>
        </message>
        <message>
            <source>{second} against {first} jars</source>
            <translation>{second} gegen {first} Gläser</translation>
        </message>
        <message>
            <source>{second} was marked {gap} than {first}</source>
            <translation>{second} wurde {gap} benotet als {first}</translation>
        </message>
        <message>
            <source>{second} was {gap} at pH {ph} than {first}</source>
            <translation>{second} war bei pH {ph} {gap} als {first}</translation>
        </message>
        <message>
            <source>{second} was {gap} than {first} around day {day}</source>
            <translation>{second} war um Tag {day} {gap} als {first}</translation>
        </message>
        <message>
            <source>{told}; by the forecast about day {day} ({low} to {high})</source>
            <translation>{told}; laut Vorhersage etwa Tag {day} ({low} bis {high})</translation>
        </message>
        <message>
            <source>{value}: {codes}</source>
            <translation>{value}: {codes}</translation>
        </message>
        <message>
            <source>{what} – {parts}</source>
            <translation>{what} – {parts}</translation>
        </message>
        <message>
            <source>{words}, from the reckoned start</source>
            <translation>{words}, ab dem errechneten Beginn</translation>
        </message>
    </context>
    <context>
        <name>TrialsPage</name>
        <message>
            <source>How many jars?</source>
            <translation>Wie viele Gläser?</translation>
        </message>
        <message>
            <source>No trial yet</source>
            <translation>Noch kein Versuch</translation>
        </message>
        <message>
            <source>Plan a trial…</source>
            <translation>Versuch planen…</translation>
        </message>
        <message>
            <source>Trials</source>
            <translation>Versuche</translation>
        </message>
        <message>
            <source>Trials, the newest first</source>
            <translation>Versuche, die neuesten zuerst</translation>
        </message>
        <message>
            <source>codes closed</source>
            <translation>Codes verdeckt</translation>
        </message>
    </context>
    <context>
        <name>VerdictCard</name>
        <message>
            <source>Careful</source>
            <translation>Vorsicht</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Hinweis</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Halt</translation>
        </message>
    </context>
    <context>
        <name>Verdicts</name>
        <message>
            <source>A chipped, scratched or cracked bottle must not be put under pressure.</source>
            <translation>Eine angeschlagene, verkratzte oder gesprungene Flasche darf nicht unter Druck gesetzt werden.</translation>
        </message>
        <message>
            <source>A drink that warms up swells. Below {least_share} it may squeeze what gas there is to a high pressure.</source>
            <translation>Ein Getränk, das warm wird, dehnt sich aus. Unter {least_share} kann es das wenige Gas zu hohem Druck zusammenpressen.</translation>
        </message>
        <message>
            <source>A drink without gas above it does not yield; any bottle then gives way.</source>
            <translation>Ein Getränk ohne Gas darüber gibt nicht nach; dann gibt jede Flasche nach.</translation>
        </message>
        <message>
            <source>A pellicle of {value_mm} would be unusual.</source>
            <translation>Ein Häutchen von {value_mm} wäre ungewöhnlich.</translation>
        </message>
        <message>
            <source>A strip that reads pH {ph} is not enough to go by.</source>
            <translation>Ein Streifen, der pH {ph} zeigt, reicht als Grundlage nicht.</translation>
        </message>
        <message>
            <source>A taste is no measurement.</source>
            <translation>Ein Geschmack ist keine Messung.</translation>
        </message>
        <message>
            <source>A test strip or the water supplier's report tells it.</source>
            <translation>Ein Teststreifen oder die Angaben des Wasserversorgers verraten sie.</translation>
        </message>
        <message>
            <source>Above {high_c} it sours fast and may taste harsh.</source>
            <translation>Über {high_c} säuert es schnell und schmeckt vielleicht streng.</translation>
        </message>
        <message>
            <source>Above {limit_c} it goes on fermenting: pressure, acid and alcohol rise.</source>
            <translation>Über {limit_c} gärt es weiter: Druck, Säure und Alkohol steigen.</translation>
        </message>
        <message>
            <source>Above {limit} a rule for sour foods asks for a meter; a strip is too coarse there. It is used here as a guide.</source>
            <translation>Über {limit} verlangt eine Regel für saure Lebensmittel ein Messgerät; ein Streifen ist dort zu grob. Sie dient hier als Richtschnur.</translation>
        </message>
        <message>
            <source>Above {most_share} much of the gas stays out of the drink, and much air is closed in.</source>
            <translation>Über {most_share} bleibt viel vom Gas außerhalb des Getränks, und viel Luft ist eingeschlossen.</translation>
        </message>
        <message>
            <source>Above {most} it does no harm, but it sours fast and leaves less sweet tea to ferment.</source>
            <translation>Über {most} schadet es nicht, säuert aber schnell und lässt weniger gesüßten Tee zum Vergären.</translation>
        </message>
        <message>
            <source>After about {limit_days} days it is often sourer than people should drink much of, and it holds more alcohol.</source>
            <translation>Nach etwa {limit_days} Tagen ist es oft saurer, als man viel davon trinken sollte, und es enthält mehr Alkohol.</translation>
        </message>
        <message>
            <source>After about {limit_days} days the acid can be too much to drink.</source>
            <translation>Nach etwa {limit_days} Tagen kann die Säure zum Trinken zu viel sein.</translation>
        </message>
        <message>
            <source>Aim for less fizz, chill early, and stand the bottles in a closed box. </source>
            <translation>Plane weniger Kohlensäure, kühle früh und stell die Flaschen in eine geschlossene Kiste. </translation>
        </message>
        <message>
            <source>Aim for less fizz, keep the bottles colder, or use bottles with a higher rating.</source>
            <translation>Plane weniger Kohlensäure, halte die Flaschen kälter oder nimm Flaschen mit höherem zulässigem Druck.</translation>
        </message>
        <message>
            <source>Alcohol may also rise further in the bottle.</source>
            <translation>Auch der Alkohol kann in der Flasche weiter steigen.</translation>
        </message>
        <message>
            <source>Alcohol was found to rise over two months, in the cold too. The mark is a cautious choice, not a published one.</source>
            <translation>Es wurde gefunden, dass der Alkohol über zwei Monate steigt, auch in der Kälte. Die Marke ist vorsichtig gewählt, nicht veröffentlicht.</translation>
        </message>
        <message>
            <source>Alcohol, acids and split sugar count in too, and no single instrument can tell them from sugar.</source>
            <translation>Alkohol, Säuren und gespaltener Zucker zählen mit, und kein einzelnes Gerät kann sie von Zucker unterscheiden.</translation>
        </message>
        <message>
            <source>As a starter that does no harm.</source>
            <translation>Als Ansatzflüssigkeit schadet das nicht.</translation>
        </message>
        <message>
            <source>At pH {ph} it is sourer than anybody should drink.</source>
            <translation>Mit pH {ph} ist es saurer, als irgendwer trinken sollte.</translation>
        </message>
        <message>
            <source>At pH {ph} this is no starter.</source>
            <translation>Mit pH {ph} ist das keine Ansatzflüssigkeit.</translation>
        </message>
        <message>
            <source>At the warmest, the drink would swell until the bottle is full.</source>
            <translation>Bei größter Wärme würde sich das Getränk ausdehnen, bis die Flasche voll ist.</translation>
        </message>
        <message>
            <source>At the warmest, this fizz could come to {highest_bar}, at {volumes} volumes.</source>
            <translation>Bei größter Wärme könnte diese Kohlensäure auf {highest_bar} kommen, bei {volumes} Volumen.</translation>
        </message>
        <message>
            <source>At the warmest, this fizz is reckoned to stay below {highest_bar}, at {volumes} volumes.</source>
            <translation>Bei größter Wärme bleibt diese Kohlensäure rechnerisch unter {highest_bar}, bei {volumes} Volumen.</translation>
        </message>
        <message>
            <source>At the warmest, this fizz would come to over 8 bar.</source>
            <translation>Bei größter Wärme käme diese Kohlensäure auf über 8 bar.</translation>
        </message>
        <message>
            <source>At {limit_c} or below it ferments and sours slowly, and most germs grow slowly too.</source>
            <translation>Bei {limit_c} oder darunter gärt und säuert es langsam, und auch die meisten Keime wachsen langsam.</translation>
        </message>
        <message>
            <source>At {temperature_c} it is too warm for starter and culture.</source>
            <translation>Bei {temperature_c} ist es zu warm für Ansatzflüssigkeit und Kultur.</translation>
        </message>
        <message>
            <source>At {temperature_c} the culture would be harmed.</source>
            <translation>Bei {temperature_c} würde die Kultur Schaden nehmen.</translation>
        </message>
        <message>
            <source>Before the culture has worked there is nearly nothing else in it that counts.</source>
            <translation>Bevor die Kultur gearbeitet hat, ist fast nichts anderes darin, das mitzählt.</translation>
        </message>
        <message>
            <source>Below {low_c} it sours slowly, and mold has more time to take hold.</source>
            <translation>Unter {low_c} säuert es langsam, und Schimmel hat mehr Zeit, sich festzusetzen.</translation>
        </message>
        <message>
            <source>Between {low_c} and {high_c} it sours at a usual pace.</source>
            <translation>Zwischen {low_c} und {high_c} säuert es im üblichen Tempo.</translation>
        </message>
        <message>
            <source>Bottles under pressure have cost people their eyes: when moved, when dropped, and by the flying cap.</source>
            <translation>Flaschen unter Druck haben Menschen das Augenlicht gekostet: beim Bewegen, beim Fallen und durch den fliegenden Verschluss.</translation>
        </message>
        <message>
            <source>Bring the drink to the meter's temperature, or tell the meter that of the drink.</source>
            <translation>Bring das Getränk auf die Temperatur des Messgeräts, oder stell am Messgerät die des Getränks ein.</translation>
        </message>
        <message>
            <source>By day {deadline_days} it has to be at {limit} or below for certain, and this reading does not settle it.</source>
            <translation>Bis Tag {deadline_days} muss er sicher bei {limit} oder darunter liegen, und diese Messung entscheidet das nicht.</translation>
        </message>
        <message>
            <source>By these figures it would be {height_cm} high and {inner_diameter_cm} wide.</source>
            <translation>Nach diesen Zahlen wäre es {height_cm} hoch und {inner_diameter_cm} weit.</translation>
        </message>
        <message>
            <source>Calibrate again before a reading that matters.</source>
            <translation>Kalibriere neu vor einer Messung, auf die es ankommt.</translation>
        </message>
        <message>
            <source>Calibrate before you rely on a reading.</source>
            <translation>Kalibriere, bevor du dich auf eine Messung verlässt.</translation>
        </message>
        <message>
            <source>Calibrate it on each day of use.</source>
            <translation>Kalibriere sie an jedem Tag, an dem du sie benutzt.</translation>
        </message>
        <message>
            <source>Calibrating on each day of use is common practice.</source>
            <translation>An jedem Tag der Benutzung zu kalibrieren, ist gängige Praxis.</translation>
        </message>
        <message>
            <source>Carbon dioxide would have been counted as acid.</source>
            <translation>Kohlendioxid wäre als Säure mitgezählt worden.</translation>
        </message>
        <message>
            <source>Ceramic is only as good as its maker's word.</source>
            <translation>Keramik ist nur so gut wie das Wort ihres Herstellers.</translation>
        </message>
        <message>
            <source>Chill in time. </source>
            <translation>Kühle rechtzeitig. </translation>
        </message>
        <message>
            <source>Chill one bottle through, open it with care, and chill the others once it is right.</source>
            <translation>Kühle eine Flasche durch, öffne sie vorsichtig, und kühle die anderen, sobald sie richtig ist.</translation>
        </message>
        <message>
            <source>Clean it, soak it, use fresh buffers and calibrate again; replace it if that does not help.</source>
            <translation>Reinige sie, wässere sie, nimm frische Puffer und kalibriere neu; ersetze sie, wenn das nicht hilft.</translation>
        </message>
        <message>
            <source>Compensation corrects the electrode's slope, and nothing else.</source>
            <translation>Der Ausgleich korrigiert die Steilheit der Elektrode, sonst nichts.</translation>
        </message>
        <message>
            <source>Consider softer water or a sourer starter. </source>
            <translation>Erwäge weicheres Wasser oder saurere Ansatzflüssigkeit. </translation>
        </message>
        <message>
            <source>Day {days} in the bottle: chill now.</source>
            <translation>Tag {days} in der Flasche: jetzt kühlen.</translation>
        </message>
        <message>
            <source>Day {days} in the bottle: it is likely not fizzy yet.</source>
            <translation>Tag {days} in der Flasche: Es sprudelt wahrscheinlich noch nicht.</translation>
        </message>
        <message>
            <source>Day {days} in the bottle: it may be fizzy enough.</source>
            <translation>Tag {days} in der Flasche: Es sprudelt vielleicht genug.</translation>
        </message>
        <message>
            <source>Decorative and square bottles and canning jars burst at pressures that a little sugar can make, and glass flies.</source>
            <translation>Zierflaschen, eckige Flaschen und Einmachgläser platzen bei einem Druck, den schon etwas Zucker erzeugen kann, und Glas fliegt.</translation>
        </message>
        <message>
            <source>Discard everything, wash the vessel with hot water and soap and let it dry. Take no culture over from it. </source>
            <translation>Wirf alles weg, wasche das Gefäß mit heißem Wasser und Seife und lass es trocknen. Übernimm keine Kultur daraus. </translation>
        </message>
        <message>
            <source>Discard it and brew it fresh. </source>
            <translation>Wirf es weg und setze es frisch an. </translation>
        </message>
        <message>
            <source>Do not drink it as it is; it makes strong starter. </source>
            <translation>Trink es nicht so, wie es ist; es gibt starke Ansatzflüssigkeit. </translation>
        </message>
        <message>
            <source>Do not drink or bottle it yet. Measure again, with a calibrated meter if you can. </source>
            <translation>Trink es noch nicht und füll es noch nicht ab. Miss noch einmal, möglichst mit einem kalibrierten Messgerät. </translation>
        </message>
        <message>
            <source>Do not go below the least share that published advice gives.</source>
            <translation>Geh nicht unter den kleinsten Anteil, den veröffentlichte Ratschläge nennen.</translation>
        </message>
        <message>
            <source>Do not serve it as it is. It makes strong starter. </source>
            <translation>Serviere es nicht so, wie es ist. Es gibt starke Ansatzflüssigkeit. </translation>
        </message>
        <message>
            <source>Do not serve it.</source>
            <translation>Serviere es nicht.</translation>
        </message>
        <message>
            <source>Drink less if you are new to it, and ask a doctor if you are in doubt.</source>
            <translation>Trink weniger, wenn du es nicht gewohnt bist, und frag im Zweifel ärztlich nach.</translation>
        </message>
        <message>
            <source>Drink less of it at once, or use less leaf next time.</source>
            <translation>Trink weniger auf einmal davon, oder nimm nächstes Mal weniger Tee.</translation>
        </message>
        <message>
            <source>Each {co2_g_per_l} of carbon dioxide adds {adds_g_per_l}.</source>
            <translation>Je {co2_g_per_l} Kohlendioxid kommen {adds_g_per_l} dazu.</translation>
        </message>
        <message>
            <source>Even lively yeasts would need longer, as far as their pace is known.</source>
            <translation>Selbst lebhafte Hefen bräuchten länger, soweit ihr Tempo bekannt ist.</translation>
        </message>
        <message>
            <source>Fill a little less.</source>
            <translation>Füll etwas weniger ein.</translation>
        </message>
        <message>
            <source>Fill a little more if you like.</source>
            <translation>Füll etwas mehr ein, wenn du magst.</translation>
        </message>
        <message>
            <source>Fill it at once, hot, into clean bottles that stand heat. </source>
            <translation>Füll es sofort heiß in saubere Flaschen, die Hitze vertragen. </translation>
        </message>
        <message>
            <source>Fill one plastic bottle too and feel it daily: hard means chill. </source>
            <translation>Füll auch eine Plastikflasche und drück sie täglich: Hart heißt kühlen. </translation>
        </message>
        <message>
            <source>Find a cooler place, or taste earlier.</source>
            <translation>Such einen kühleren Ort, oder probiere früher.</translation>
        </message>
        <message>
            <source>Find a warmer place, and take the pH early.</source>
            <translation>Such einen wärmeren Ort, und miss den pH früh.</translation>
        </message>
        <message>
            <source>Food-grade plastic will do.</source>
            <translation>Lebensmittelechter Kunststoff geht.</translation>
        </message>
        <message>
            <source>For healthy adults {once_mg} at once and {day_mg} a day raise no concern; in pregnancy it is {once_mg} a day.</source>
            <translation>Für gesunde Erwachsene sind {once_mg} auf einmal und {day_mg} am Tag unbedenklich; in der Schwangerschaft sind es {once_mg} am Tag.</translation>
        </message>
        <message>
            <source>Fresh juice or fruit can bring germs in again.</source>
            <translation>Frischer Saft oder frisches Obst kann wieder Keime hineinbringen.</translation>
        </message>
        <message>
            <source>From about {harm_c} upward its yeasts and bacteria die. The liquid would then stand sweet and unprotected.</source>
            <translation>Ab etwa {harm_c} sterben ihre Hefen und Bakterien. Die Flüssigkeit stünde dann süß und ungeschützt da.</translation>
        </message>
        <message>
            <source>From {limit_volumes} on little is left for a warm day or an old bottle.</source>
            <translation>Ab {limit_volumes} bleibt wenig Reserve für einen warmen Tag oder eine alte Flasche.</translation>
        </message>
        <message>
            <source>Gas in the sample counts as acid.</source>
            <translation>Gas in der Probe zählt als Säure.</translation>
        </message>
        <message>
            <source>Germs may have grown in it that souring does not undo.</source>
            <translation>Darin können Keime gewachsen sein, die das Säuern nicht unschädlich macht.</translation>
        </message>
        <message>
            <source>Glass breaks from its flaws, and every scratch weakens it.</source>
            <translation>Glas bricht an seinen Fehlstellen, und jeder Kratzer schwächt es.</translation>
        </message>
        <message>
            <source>Glass is a good choice.</source>
            <translation>Glas ist eine gute Wahl.</translation>
        </message>
        <message>
            <source>Guidance for home brewing asks for {limit} or less before it is drunk.</source>
            <translation>Leitlinien für den Hausgebrauch verlangen {limit} oder weniger, bevor es getrunken wird.</translation>
        </message>
        <message>
            <source>Hard water can take twice as much starter as soft water.</source>
            <translation>Hartes Wasser kann doppelt so viel Ansatzflüssigkeit brauchen wie weiches.</translation>
        </message>
        <message>
            <source>Heat it further, stir, and measure again. </source>
            <translation>Erhitze es weiter, rühre um und miss noch einmal. </translation>
        </message>
        <message>
            <source>Heated drink ferments no longer; its culture is gone too.</source>
            <translation>Ein erhitztes Getränk gärt nicht mehr; auch seine Kultur ist hin.</translation>
        </message>
        <message>
            <source>Herbal tea may not feed the culture.</source>
            <translation>Kräutertee nährt die Kultur vielleicht nicht.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_brix} to {high_brix}.</source>
            <translation>Hier liegt es kaum je außerhalb von {low_brix} bis {high_brix}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_c} to {high_c}.</source>
            <translation>Hier liegt es kaum je außerhalb von {low_c} bis {high_c}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_g_per_l} to {high_g_per_l}.</source>
            <translation>Hier liegt es kaum je außerhalb von {low_g_per_l} bis {high_g_per_l}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_mm} to {high_mm}.</source>
            <translation>Hier liegt es kaum je außerhalb von {low_mm} bis {high_mm}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_sg} to {high_sg}.</source>
            <translation>Hier liegt es kaum je außerhalb von {low_sg} bis {high_sg}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low} to {high}.</source>
            <translation>Hier liegt es kaum je außerhalb von {low} bis {high}.</translation>
        </message>
        <message>
            <source>How far an electrode has drifted by then is not known well.</source>
            <translation>Wie weit eine Elektrode bis dahin gedriftet ist, weiß man nicht genau.</translation>
        </message>
        <message>
            <source>If all the sugar fermented, the bottles could come to {highest_bar}.</source>
            <translation>Wenn aller Zucker vergärte, könnten die Flaschen auf {highest_bar} kommen.</translation>
        </message>
        <message>
            <source>If all the sugar fermented, the bottles would come to over 8 bar.</source>
            <translation>Wenn aller Zucker vergärte, kämen die Flaschen auf über 8 bar.</translation>
        </message>
        <message>
            <source>In trials, germs from juice lived on for two weeks in cold, sour kombucha.</source>
            <translation>In Versuchen lebten Keime aus Saft zwei Wochen in kaltem, saurem Kombucha weiter.</translation>
        </message>
        <message>
            <source>It also takes the longest to cool.</source>
            <translation>Es braucht auch am längsten zum Abkühlen.</translation>
        </message>
        <message>
            <source>It does not turn the pH of a cold drink into that of a warm one; in an acid drink the two hardly differ.</source>
            <translation>Er macht aus dem pH eines kalten Getränks nicht den eines warmen; in einem sauren Getränk unterscheiden sich die beiden kaum.</translation>
        </message>
        <message>
            <source>It goes on changing slowly, in the cold too; {limit_days} days are a cautious mark, not a published one.</source>
            <translation>Es verändert sich langsam weiter, auch in der Kälte; {limit_days} Tage sind eine vorsichtige Marke, keine veröffentlichte.</translation>
        </message>
        <message>
            <source>It has been kept for {days} days, longer than {limit_days}.</source>
            <translation>Es steht seit {days} Tagen, länger als {limit_days}.</translation>
        </message>
        <message>
            <source>It has been kept for {days} days.</source>
            <translation>Es steht seit {days} Tagen.</translation>
        </message>
        <message>
            <source>It has been souring for {day} days.</source>
            <translation>Es säuert seit {day} Tagen.</translation>
        </message>
        <message>
            <source>It holds up to about {high_mg} of caffeine.</source>
            <translation>Es enthält bis zu etwa {high_mg} Koffein.</translation>
        </message>
        <message>
            <source>It is advised against in pregnancy, for small children and with weak immunity. Ask a doctor if you take medicines or have to avoid alcohol. </source>
            <translation>In der Schwangerschaft, für kleine Kinder und bei schwacher Abwehr wird davon abgeraten. Frag ärztlich nach, wenn du Medikamente nimmst oder Alkohol meiden musst. </translation>
        </message>
        <message>
            <source>It is alive, sour, and holds caffeine and some alcohol.</source>
            <translation>Es lebt, ist sauer und enthält Koffein und etwas Alkohol.</translation>
        </message>
        <message>
            <source>It is day {day}, and no pH shows that the batch is sour enough.</source>
            <translation>Es ist Tag {day}, und kein pH zeigt, dass der Ansatz sauer genug ist.</translation>
        </message>
        <message>
            <source>It is dirty, dry or worn, or a buffer is not what its bottle says.</source>
            <translation>Sie ist schmutzig, trocken oder verbraucht, oder ein Puffer ist nicht das, was auf der Flasche steht.</translation>
        </message>
        <message>
            <source>It is not even as sour as a finished drink has to be, so it cannot protect a new batch.</source>
            <translation>Sie ist nicht einmal so sauer, wie ein fertiges Getränk sein muss, also kann sie einen neuen Ansatz nicht schützen.</translation>
        </message>
        <message>
            <source>It is not known whether the liquid is cool enough.</source>
            <translation>Es ist nicht bekannt, ob die Flüssigkeit kühl genug ist.</translation>
        </message>
        <message>
            <source>It is not sour enough for that, as far as it is known.</source>
            <translation>Dafür ist sie nicht sauer genug, soweit bekannt.</translation>
        </message>
        <message>
            <source>It is reckoned to come out at about {mixed_c}; your limit is {limit_c}.</source>
            <translation>Er kommt rechnerisch bei etwa {mixed_c} heraus; dein Grenzwert ist {limit_c}.</translation>
        </message>
        <message>
            <source>It is reckoned to start at about pH {ph}, above {wanted}.</source>
            <translation>Der Ansatz beginnt rechnerisch bei etwa pH {ph}, über {wanted}.</translation>
        </message>
        <message>
            <source>It is reckoned to start at about pH {ph}.</source>
            <translation>Der Ansatz beginnt rechnerisch bei etwa pH {ph}.</translation>
        </message>
        <message>
            <source>It is within what laboratories accept, but no longer like new.</source>
            <translation>Sie liegt in dem, was Labore hinnehmen, ist aber nicht mehr wie neu.</translation>
        </message>
        <message>
            <source>It lacks what tea leaves give, its sourness is less well known here, and some herbs hinder the culture.</source>
            <translation>Ihm fehlt, was Teeblätter geben, seine Säuerung ist hier weniger gut bekannt, und manche Kräuter hemmen die Kultur.</translation>
        </message>
        <message>
            <source>It likely holds less alcohol than the {threshold_abv} you chose.</source>
            <translation>Es enthält wahrscheinlich weniger Alkohol als die von dir gewählten {threshold_abv}.</translation>
        </message>
        <message>
            <source>It likely holds more alcohol than the {threshold_abv} you chose.</source>
            <translation>Es enthält wahrscheinlich mehr Alkohol als die von dir gewählten {threshold_abv}.</translation>
        </message>
        <message>
            <source>It may hold as much as {high_mg} of caffeine.</source>
            <translation>Es enthält vielleicht bis zu {high_mg} Koffein.</translation>
        </message>
        <message>
            <source>It may hold more alcohol than the {threshold_abv} you chose.</source>
            <translation>Es enthält vielleicht mehr Alkohol als die von dir gewählten {threshold_abv}.</translation>
        </message>
        <message>
            <source>It may start above pH {limit}.</source>
            <translation>Der Ansatz beginnt vielleicht über pH {limit}.</translation>
        </message>
        <message>
            <source>It scratches, and scratches are hard to clean; it may also give off a taste over weeks.</source>
            <translation>Er verkratzt, und Kratzer sind schwer zu reinigen; über Wochen gibt er vielleicht auch Geschmack ab.</translation>
        </message>
        <message>
            <source>It should be at {limit} or below by day {deadline_days}. A cold place or weak starter slows it.</source>
            <translation>Er sollte bis Tag {deadline_days} bei {limit} oder darunter liegen. Ein kalter Ort oder schwache Ansatzflüssigkeit bremst das.</translation>
        </message>
        <message>
            <source>It should have been sour enough by day {deadline_days}. Sweet, hardly sour liquid that stands for days lets harmful germs grow.</source>
            <translation>Bis Tag {deadline_days} hätte er sauer genug sein sollen. Süße, kaum saure Flüssigkeit, die tagelang steht, lässt schädliche Keime wachsen.</translation>
        </message>
        <message>
            <source>It still brings sugar, and may raise the pH.</source>
            <translation>Zucker bringt es trotzdem mit, und es kann den pH erhöhen.</translation>
        </message>
        <message>
            <source>It takes a lot of it to make sweet tea sour enough.</source>
            <translation>Es braucht viel davon, um gesüßten Tee sauer genug zu machen.</translation>
        </message>
        <message>
            <source>It would make the tea sour enough, but it brings fewer live cells.</source>
            <translation>Es würde den Tee sauer genug machen, bringt aber weniger lebende Zellen mit.</translation>
        </message>
        <message>
            <source>Its pores hold on to what lived in it before, mold included.</source>
            <translation>Seine Poren halten fest, was vorher darin lebte, auch Schimmel.</translation>
        </message>
        <message>
            <source>Its pressure climbs steeply with the heat, and hot glass bursts.</source>
            <translation>Ihr Druck steigt mit der Hitze steil an, und heißes Glas platzt.</translation>
        </message>
        <message>
            <source>Keep a second culture on real tea, and measure the pH more often.</source>
            <translation>Halte eine zweite Kultur auf echtem Tee, und miss den pH öfter.</translation>
        </message>
        <message>
            <source>Keep away until they are cold: cover them, cool the room, and do not move them warm. Wear goggles and gloves. </source>
            <translation>Bleib weg, bis sie kalt sind: Deck sie ab, kühle den Raum und beweg sie nicht warm. Trag Schutzbrille und Handschuhe. </translation>
        </message>
        <message>
            <source>Keep it there until it is drunk; fizz and alcohol still rise a little.</source>
            <translation>Lass es dort, bis es getrunken ist; Kohlensäure und Alkohol steigen noch etwas.</translation>
        </message>
        <message>
            <source>Keep the jar apart, use nothing from it for another, and look again tomorrow. When in doubt, throw it out. </source>
            <translation>Stell das Glas getrennt, nimm nichts daraus für ein anderes und sieh morgen noch einmal nach. Im Zweifel wegwerfen. </translation>
        </message>
        <message>
            <source>Keep the maker's written word that the glaze is free of lead and made for sour food. Without it, please use glass.</source>
            <translation>Bewahre die schriftliche Zusage des Herstellers auf, dass die Glasur bleifrei und für saure Lebensmittel gemacht ist. Ohne sie nimm bitte Glas.</translation>
        </message>
        <message>
            <source>Keep them cold, in a closed box, and do not shake them. Chill before you open one, and hold the cap away from faces. </source>
            <translation>Halte sie kalt, in einer geschlossenen Kiste, und schüttle sie nicht. Kühle, bevor du eine öffnest, und halte den Verschluss von Gesichtern weg. </translation>
        </message>
        <message>
            <source>Leave it and measure again in a day or two. Do not drink it yet.</source>
            <translation>Lass ihn stehen und miss in ein, zwei Tagen noch einmal. Trink noch nicht davon.</translation>
        </message>
        <message>
            <source>Leave more headspace, and fill nothing ice-cold to the brim.</source>
            <translation>Lass mehr Kopfraum, und füll nichts Eiskaltes randvoll ab.</translation>
        </message>
        <message>
            <source>Let it cool, covered, and measure before starter and culture go in. More cold water and less hot would shorten the wait.</source>
            <translation>Lass ihn abgedeckt abkühlen und miss, bevor Ansatzflüssigkeit und Kultur hineinkommen. Mehr kaltes und weniger heißes Wasser würde das Warten verkürzen.</translation>
        </message>
        <message>
            <source>Let it go flat and heat the drink in an open pot, or keep it cold instead.</source>
            <translation>Lass es schal werden und erhitze das Getränk in einem offenen Topf, oder halte es stattdessen kalt.</translation>
        </message>
        <message>
            <source>Let it sour further, or use another starter.</source>
            <translation>Lass sie weiter säuern, oder nimm eine andere Ansatzflüssigkeit.</translation>
        </message>
        <message>
            <source>Let the vessel dry in the air: what is left of it harms the culture.</source>
            <translation>Lass das Gefäß an der Luft trocknen: Was davon übrig bleibt, schadet der Kultur.</translation>
        </message>
        <message>
            <source>Liquid warmer than {limit_c} harms the culture, and it looks no different.</source>
            <translation>Flüssigkeit, die wärmer als {limit_c} ist, schadet der Kultur, und sie sieht nicht anders aus.</translation>
        </message>
        <message>
            <source>Little of it makes the tea sour, but little also brings few live cells.</source>
            <translation>Wenig davon macht den Tee sauer, aber wenig bringt auch wenige lebende Zellen mit.</translation>
        </message>
        <message>
            <source>Lively yeasts could have brought the bottles to their limit by day {chill_by_days}.</source>
            <translation>Lebhafte Hefen könnten die Flaschen bis Tag {chill_by_days} an ihre Grenze gebracht haben.</translation>
        </message>
        <message>
            <source>Look again tomorrow.</source>
            <translation>Sieh morgen wieder nach.</translation>
        </message>
        <message>
            <source>Look at the bottles daily all the same.</source>
            <translation>Sieh trotzdem täglich nach den Flaschen.</translation>
        </message>
        <message>
            <source>Look for rust now and then.</source>
            <translation>Sieh ab und zu nach Rost.</translation>
        </message>
        <message>
            <source>Lukewarm and sweet, it is a feast for germs; from {warn_hours} h on they may have begun to grow.</source>
            <translation>Lauwarm und süß ist er ein Festmahl für Keime; ab {warn_hours} h wachsen sie vielleicht schon.</translation>
        </message>
        <message>
            <source>Make less, or choose a larger vessel.</source>
            <translation>Mach weniger, oder wähle ein größeres Gefäß.</translation>
        </message>
        <message>
            <source>Makers of electrodes call such a slope good; that is from memory.</source>
            <translation>Hersteller von Elektroden nennen eine solche Steilheit gut; das ist aus dem Gedächtnis.</translation>
        </message>
        <message>
            <source>Makers usually need no more than an ordinary share of it; that is common practice, without a source.</source>
            <translation>Üblicherweise braucht man davon nicht mehr als den gewöhnlichen Anteil; das ist gängige Praxis, ohne Quelle.</translation>
        </message>
        <message>
            <source>Makers usually take a little more of such a one; that is common practice, without a source.</source>
            <translation>Üblicherweise nimmt man davon etwas mehr; das ist gängige Praxis, ohne Quelle.</translation>
        </message>
        <message>
            <source>Measure again after anything is added. </source>
            <translation>Miss noch einmal, nachdem etwas zugegeben wurde. </translation>
        </message>
        <message>
            <source>Measure again with a calibrated meter today. If it is above {limit}, or you cannot measure it better, discard it. </source>
            <translation>Miss heute noch einmal mit einem kalibrierten Messgerät. Liegt er über {limit}, oder kannst du ihn nicht besser messen, wirf den Ansatz weg. </translation>
        </message>
        <message>
            <source>Measure again, with a calibrated meter if you can. It has until day {deadline_days}.</source>
            <translation>Miss noch einmal, möglichst mit einem kalibrierten Messgerät. Er hat bis Tag {deadline_days} Zeit.</translation>
        </message>
        <message>
            <source>Measure beside the jar. If that is so, find a cooler place, or taste earlier.</source>
            <translation>Miss neben dem Glas. Wenn es stimmt, such einen kühleren Ort, oder probiere früher.</translation>
        </message>
        <message>
            <source>Measure beside the jar. If that is so, find a warmer place, and take the pH early.</source>
            <translation>Miss neben dem Glas. Wenn es stimmt, such einen wärmeren Ort, und miss den pH früh.</translation>
        </message>
        <message>
            <source>Measure both again before you rely on them.</source>
            <translation>Miss beides noch einmal, bevor du dich darauf verlässt.</translation>
        </message>
        <message>
            <source>Measure both again.</source>
            <translation>Miss beides noch einmal.</translation>
        </message>
        <message>
            <source>Measure both again. </source>
            <translation>Miss beides noch einmal. </translation>
        </message>
        <message>
            <source>Measure it after mixing if you can: the figure is an estimate.</source>
            <translation>Miss möglichst nach dem Mischen: Die Zahl ist eine Schätzung.</translation>
        </message>
        <message>
            <source>Measure the liquid and enter its temperature. If you have no thermometer, wait until the vessel feels cool to your hand, and write that down as your reason.</source>
            <translation>Miss die Flüssigkeit und gib ihre Temperatur ein. Wenn du kein Thermometer hast, warte, bis sich das Gefäß für deine Hand kühl anfühlt, und schreib das als deinen Grund auf.</translation>
        </message>
        <message>
            <source>Measure the pH after mixing.</source>
            <translation>Miss den pH nach dem Mischen.</translation>
        </message>
        <message>
            <source>Measure the pH afterwards: the same limit applies again.</source>
            <translation>Miss danach den pH: Derselbe Grenzwert gilt wieder.</translation>
        </message>
        <message>
            <source>Measure the pH once it is mixed.</source>
            <translation>Miss den pH, wenn gemischt ist.</translation>
        </message>
        <message>
            <source>Measure the pH today, before you taste. </source>
            <translation>Miss heute den pH, bevor du probierst. </translation>
        </message>
        <message>
            <source>Measure with a calibrated meter, or let it sour for longer.</source>
            <translation>Miss mit einem kalibrierten Messgerät, oder lass es länger säuern.</translation>
        </message>
        <message>
            <source>Mixed, the sweet tea will be too warm for the culture at first.</source>
            <translation>Gemischt ist der gesüßte Tee zunächst zu warm für die Kultur.</translation>
        </message>
        <message>
            <source>Mold can leave poisons in the liquid, and its threads reach further than its patch. Dry, fuzzy spots on top are mold; wet, brown strings below are yeast.</source>
            <translation>Schimmel kann Gifte in der Flüssigkeit hinterlassen, und seine Fäden reichen weiter als sein Fleck. Trockene, pelzige Flecken obenauf sind Schimmel; nasse, braune Fäden darunter sind Hefe.</translation>
        </message>
        <message>
            <source>Mold grows from day to day, a young film only thickens. A day tells them apart.</source>
            <translation>Schimmel wächst von Tag zu Tag, ein junger Film wird nur dicker. Ein Tag unterscheidet sie.</translation>
        </message>
        <message>
            <source>More or sourer starter would help. Measure after mixing.</source>
            <translation>Mehr oder saurere Ansatzflüssigkeit würde helfen. Miss nach dem Mischen.</translation>
        </message>
        <message>
            <source>More than {most_ph} off the line means that one of them is stale or mistaken.</source>
            <translation>Mehr als {most_ph} neben der Geraden heißt, dass einer davon alt oder verwechselt ist.</translation>
        </message>
        <message>
            <source>Move it into the refrigerator. </source>
            <translation>Stell es in den Kühlschrank. </translation>
        </message>
        <message>
            <source>Move it somewhere warmer, look closely for mold, and measure again tomorrow. Do not drink it yet.</source>
            <translation>Stell ihn wärmer, sieh genau nach Schimmel, und miss morgen noch einmal. Trink noch nicht davon.</translation>
        </message>
        <message>
            <source>Never heat a closed bottle that ferments.</source>
            <translation>Erhitze nie eine geschlossene Flasche, die gärt.</translation>
        </message>
        <message>
            <source>No buffer is as sour as the drink.</source>
            <translation>Kein Puffer ist so sauer wie das Getränk.</translation>
        </message>
        <message>
            <source>No pH was taken of this batch since it began.</source>
            <translation>Seit Beginn dieses Ansatzes wurde kein pH gemessen.</translation>
        </message>
        <message>
            <source>Not even this starter by itself reaches pH {target_ph}.</source>
            <translation>Nicht einmal diese Ansatzflüssigkeit allein erreicht pH {target_ph}.</translation>
        </message>
        <message>
            <source>On day {day} the pH is {ph}, still above {limit}.</source>
            <translation>An Tag {day} ist der pH {ph}, noch über {limit}.</translation>
        </message>
        <message>
            <source>On day {day} the pH reads {ph}, but the reading may be off by {sd}.</source>
            <translation>An Tag {day} zeigt der pH {ph}, aber die Messung kann um {sd} danebenliegen.</translation>
        </message>
        <message>
            <source>On day {day} the reading is only apparent.</source>
            <translation>An Tag {day} ist der Messwert nur scheinbar.</translation>
        </message>
        <message>
            <source>One of the two readings may be off, and then so is the reckoned start.</source>
            <translation>Eine der beiden Messungen liegt vielleicht daneben, und dann auch der errechnete Start.</translation>
        </message>
        <message>
            <source>One of the two readings may be off.</source>
            <translation>Eine der beiden Messungen liegt vielleicht daneben.</translation>
        </message>
        <message>
            <source>Only a laboratory can settle it. Before you give or sell it as a drink without alcohol, have it measured, and follow your local rules.</source>
            <translation>Nur ein Labor kann das entscheiden. Bevor du es als alkoholfreies Getränk weitergibst oder verkaufst, lass es messen und befolge deine örtlichen Regeln.</translation>
        </message>
        <message>
            <source>Only chilling in time stops it; cold slows the yeasts and does not end them.</source>
            <translation>Nur rechtzeitiges Kühlen hält das auf; Kälte bremst die Hefen, beendet sie aber nicht.</translation>
        </message>
        <message>
            <source>Open it cold and with care; look, smell and measure the pH before you taste. </source>
            <translation>Öffne es kalt und vorsichtig; sieh, riech und miss den pH, bevor du probierst. </translation>
        </message>
        <message>
            <source>Pasteurised juice or heated fruit is the better choice.</source>
            <translation>Pasteurisierter Saft oder erhitztes Obst ist die bessere Wahl.</translation>
        </message>
        <message>
            <source>Plastic that is not made for food is not safe here.</source>
            <translation>Kunststoff, der nicht für Lebensmittel gemacht ist, ist hier nicht sicher.</translation>
        </message>
        <message>
            <source>Please check both figures and their units.</source>
            <translation>Bitte prüfe beide Zahlen und ihre Einheiten.</translation>
        </message>
        <message>
            <source>Please check the figure and the instrument. It will be kept as you type it.</source>
            <translation>Bitte prüfe die Zahl und das Gerät. Sie wird so behalten, wie du sie eintippst.</translation>
        </message>
        <message>
            <source>Please discard it. Do not taste it, and start again with more or sourer starter. Where your local rules ask for more, follow them.</source>
            <translation>Bitte wirf ihn weg. Probiere ihn nicht, und beginne neu mit mehr oder saurerer Ansatzflüssigkeit. Wo deine örtlichen Regeln mehr verlangen, befolge sie.</translation>
        </message>
        <message>
            <source>Please use glass, or another vessel meant for sour food.</source>
            <translation>Bitte nimm Glas oder ein anderes Gefäß für saure Lebensmittel.</translation>
        </message>
        <message>
            <source>Pour slowly, into a vessel that stands heat: thick glass can crack.</source>
            <translation>Gieß langsam, in ein Gefäß, das Hitze verträgt: Dickes Glas kann springen.</translation>
        </message>
        <message>
            <source>Published guidance advises against drinking kombucha this sour.</source>
            <translation>Veröffentlichte Leitlinien raten davon ab, so sauren Kombucha zu trinken.</translation>
        </message>
        <message>
            <source>Published guidance asks for pH 4.2 or below within {deadline_days} days. Without a reading nobody can tell.</source>
            <translation>Veröffentlichte Leitlinien verlangen pH 4,2 oder darunter innerhalb von {deadline_days} Tagen. Ohne Messung kann das niemand wissen.</translation>
        </message>
        <message>
            <source>Published guidance asks for this within {deadline_days} days. It is needed, but it does not prove that a drink is safe.</source>
            <translation>Veröffentlichte Leitlinien verlangen das innerhalb von {deadline_days} Tagen. Es ist nötig, beweist aber nicht, dass ein Getränk sicher ist.</translation>
        </message>
        <message>
            <source>Published guidance asks for water of at least {least_c}: cooler water leaves more alive that came with the leaves.</source>
            <translation>Veröffentlichte Leitlinien verlangen Wasser von mindestens {least_c}: Kühleres Wasser lässt mehr von dem am Leben, was mit den Blättern kam.</translation>
        </message>
        <message>
            <source>Published guidance asks for {limit_c}, and the thermometer may be a little off.</source>
            <translation>Veröffentlichte Leitlinien verlangen {limit_c}, und das Thermometer kann etwas danebenliegen.</translation>
        </message>
        <message>
            <source>Published guidance for clean vessels is {limit_ppm}. More of it is left on the vessel, and it does not clean better.</source>
            <translation>Veröffentlichte Leitlinien nennen für saubere Gefäße {limit_ppm}. Von mehr bleibt mehr am Gefäß, und es reinigt nicht besser.</translation>
        </message>
        <message>
            <source>Published guidance for clean vessels is {limit_ppm}; bleach loses strength with age.</source>
            <translation>Veröffentlichte Leitlinien nennen für saubere Gefäße {limit_ppm}; Chlorbleiche verliert mit der Zeit an Stärke.</translation>
        </message>
        <message>
            <source>Published guidance uses about {least}. With less, the liquid stays sweet and unprotected for longer.</source>
            <translation>Veröffentlichte Leitlinien nehmen etwa {least}. Mit weniger bleibt die Flüssigkeit länger süß und ungeschützt.</translation>
        </message>
        <message>
            <source>Put all bottles in the cold now. Open none warm, and none to let gas out. </source>
            <translation>Stell jetzt alle Flaschen in die Kälte. Öffne keine warm und keine, um Gas abzulassen. </translation>
        </message>
        <message>
            <source>Put the starter in as soon as it is cool enough.</source>
            <translation>Gib die Ansatzflüssigkeit hinein, sobald er kühl genug ist.</translation>
        </message>
        <message>
            <source>SG {value_sg} would be unusual.</source>
            <translation>SG {value_sg} wäre ungewöhnlich.</translation>
        </message>
        <message>
            <source>Some glazes hold lead, which the acid draws out. Kombucha from such pots has poisoned people.</source>
            <translation>Manche Glasuren enthalten Blei, das die Säure herauslöst. Kombucha aus solchen Töpfen hat Menschen vergiftet.</translation>
        </message>
        <message>
            <source>Some health offices advise at most {limit_l} a day, after two grave cases whose cause was never proven; most name no amount.</source>
            <translation>Manche Gesundheitsämter raten zu höchstens {limit_l} am Tag, nach zwei schweren Fällen, deren Ursache nie bewiesen wurde; die meisten nennen keine Menge.</translation>
        </message>
        <message>
            <source>Some health offices advise at most {limit_l} a day; most name no amount.</source>
            <translation>Manche Gesundheitsämter raten zu höchstens {limit_l} am Tag; die meisten nennen keine Menge.</translation>
        </message>
        <message>
            <source>Something on the surface is not clear yet.</source>
            <translation>Etwas an der Oberfläche ist noch nicht klar.</translation>
        </message>
        <message>
            <source>Sort it out, and use a sound one.</source>
            <translation>Sortiere sie aus, und nimm eine heile.</translation>
        </message>
        <message>
            <source>Sour liquid dissolves copper, brass, aluminium, iron and zinc; the drink can make you ill and the culture suffers.</source>
            <translation>Saure Flüssigkeit löst Kupfer, Messing, Aluminium, Eisen und Zink; das Getränk kann dich krank machen, und die Kultur leidet.</translation>
        </message>
        <message>
            <source>Sour liquid takes nothing out of plain glass.</source>
            <translation>Saure Flüssigkeit löst nichts aus gewöhnlichem Glas.</translation>
        </message>
        <message>
            <source>Sour liquid that stands for weeks can draw things out of it.</source>
            <translation>Saure Flüssigkeit, die wochenlang steht, kann Stoffe daraus lösen.</translation>
        </message>
        <message>
            <source>Stainless steel is a good choice if it is made for sour food.</source>
            <translation>Edelstahl ist eine gute Wahl, wenn er für saure Lebensmittel gemacht ist.</translation>
        </message>
        <message>
            <source>Take a buffer near pH 4 as well.</source>
            <translation>Nimm auch einen Puffer nahe pH 4.</translation>
        </message>
        <message>
            <source>Take a reading first. </source>
            <translation>Miss zuerst. </translation>
        </message>
        <message>
            <source>Take the usual amount all the same.</source>
            <translation>Nimm trotzdem die übliche Menge.</translation>
        </message>
        <message>
            <source>Take the usual amount.</source>
            <translation>Nimm die übliche Menge.</translation>
        </message>
        <message>
            <source>Taste early.</source>
            <translation>Probiere früh.</translation>
        </message>
        <message>
            <source>Taste, measure and draw it off, or keep it as starter.</source>
            <translation>Probiere, miss und zieh ihn ab, oder behalte ihn als Ansatzflüssigkeit.</translation>
        </message>
        <message>
            <source>That is beyond what can be reckoned, and beyond {ceiling_bar}, the most for these bottles.</source>
            <translation>Das ist mehr, als sich rechnen lässt, und mehr als {ceiling_bar}, das Höchste für diese Flaschen.</translation>
        </message>
        <message>
            <source>That is close to {ceiling_bar}, the most for these bottles; a warm day or an old bottle takes up the rest.</source>
            <translation>Das ist nahe an {ceiling_bar}, dem Höchsten für diese Flaschen; ein warmer Tag oder eine alte Flasche zehrt den Rest auf.</translation>
        </message>
        <message>
            <source>That is common practice, without a source.</source>
            <translation>Das ist gängige Praxis, ohne Quelle.</translation>
        </message>
        <message>
            <source>That is needed, but it does not prove that a drink is safe.</source>
            <translation>Das ist nötig, beweist aber nicht, dass ein Getränk sicher ist.</translation>
        </message>
        <message>
            <source>That is no proof, and alcohol may still rise in the bottle.</source>
            <translation>Das ist kein Beweis, und der Alkohol kann in der Flasche noch steigen.</translation>
        </message>
        <message>
            <source>That is plenty of fizz. It must not pass {ceiling_bar}, and it goes on rising.</source>
            <translation>Das ist reichlich Kohlensäure. Es darf {ceiling_bar} nicht überschreiten, und es steigt weiter.</translation>
        </message>
        <message>
            <source>That is usual in the first days; it has until day {deadline_days}.</source>
            <translation>Das ist in den ersten Tagen üblich; er hat bis Tag {deadline_days} Zeit.</translation>
        </message>
        <message>
            <source>That is within the {warn_hours} h in which it should get its starter.</source>
            <translation>Das liegt innerhalb der {warn_hours} h, in denen er seine Ansatzflüssigkeit bekommen sollte.</translation>
        </message>
        <message>
            <source>The acid draws lead out of lead crystal and of many glazes. Kombucha from such pots has poisoned people.</source>
            <translation>Die Säure löst Blei aus Bleikristall und aus vielen Glasuren. Kombucha aus solchen Töpfen hat Menschen vergiftet.</translation>
        </message>
        <message>
            <source>The buffers disagree by {residual_ph} in pH.</source>
            <translation>Die Puffer weichen um {residual_ph} im pH voneinander ab.</translation>
        </message>
        <message>
            <source>The calibration is fresh.</source>
            <translation>Die Kalibrierung ist frisch.</translation>
        </message>
        <message>
            <source>The calibration is {age_days} days old, more than {old_days}.</source>
            <translation>Die Kalibrierung ist {age_days} Tage alt, mehr als {old_days}.</translation>
        </message>
        <message>
            <source>The calibration is {age_days} days old.</source>
            <translation>Die Kalibrierung ist {age_days} Tage alt.</translation>
        </message>
        <message>
            <source>The cold water goes in as it is.</source>
            <translation>Das kalte Wasser kommt hinein, wie es ist.</translation>
        </message>
        <message>
            <source>The culture needs air above it, and room to rise.</source>
            <translation>Die Kultur braucht Luft über sich und Platz zum Steigen.</translation>
        </message>
        <message>
            <source>The electrode drifts a little every day; the range allows for it.</source>
            <translation>Die Elektrode driftet jeden Tag ein wenig; der Bereich rechnet das ein.</translation>
        </message>
        <message>
            <source>The electrode is good: {slope_percent} of the ideal slope, {offset_mv} off.</source>
            <translation>Die Elektrode ist gut: {slope_percent} der idealen Steilheit, um {offset_mv} daneben.</translation>
        </message>
        <message>
            <source>The electrode is outside what laboratories accept: {slope_percent} of the ideal slope, {offset_mv} off.</source>
            <translation>Die Elektrode liegt außerhalb dessen, was Labore hinnehmen: {slope_percent} der idealen Steilheit, um {offset_mv} daneben.</translation>
        </message>
        <message>
            <source>The electrode is usable: {slope_percent} of the ideal slope, {offset_mv} off.</source>
            <translation>Die Elektrode ist brauchbar: {slope_percent} der idealen Steilheit, um {offset_mv} daneben.</translation>
        </message>
        <message>
            <source>The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful germs can grow in sweet tea.</source>
            <translation>Die Schätzung ist {ph}, aber es können bis zu {high} sein. Über {limit} können schädliche Keime in gesüßtem Tee wachsen.</translation>
        </message>
        <message>
            <source>The gas was driven out first, as it should be.</source>
            <translation>Das Gas wurde vorher ausgetrieben, wie es sein soll.</translation>
        </message>
        <message>
            <source>The gauge shows {gauge_bar}.</source>
            <translation>Das Manometer zeigt {gauge_bar}.</translation>
        </message>
        <message>
            <source>The glass trade advises against more than {largest_l}: the same pressure pulls harder on a wider wall.</source>
            <translation>Die Glasbranche rät von mehr als {largest_l} ab: Derselbe Druck zieht an einer weiteren Wand stärker.</translation>
        </message>
        <message>
            <source>The glass trade's figures, read with care, end below {limit_volumes}; one warm day would be enough.</source>
            <translation>Die Zahlen der Glasbranche enden, vorsichtig gelesen, unter {limit_volumes}; ein warmer Tag würde reichen.</translation>
        </message>
        <message>
            <source>The height follows from the volume to the brim and the inner diameter; few vessels look like this.</source>
            <translation>Die Höhe folgt aus dem Volumen bis zum Rand und dem Innendurchmesser; wenige Gefäße sehen so aus.</translation>
        </message>
        <message>
            <source>The latest temperature of its place, {temperature_c}, is cold for a culture.</source>
            <translation>Die letzte Temperatur des Ortes, {temperature_c}, ist kalt für eine Kultur.</translation>
        </message>
        <message>
            <source>The latest temperature of its place, {temperature_c}, is warm for a culture.</source>
            <translation>Die letzte Temperatur des Ortes, {temperature_c}, ist warm für eine Kultur.</translation>
        </message>
        <message>
            <source>The lowest has pH {lowest_ph}; below it the line is only continued.</source>
            <translation>Der niedrigste hat pH {lowest_ph}; darunter wird die Gerade nur verlängert.</translation>
        </message>
        <message>
            <source>The meter takes the liquid for warmer or colder than it is.</source>
            <translation>Das Messgerät hält die Flüssigkeit für wärmer oder kälter, als sie ist.</translation>
        </message>
        <message>
            <source>The pace is hardly known beforehand; it may take from {low_days} to {high_days} days.</source>
            <translation>Das Tempo ist vorher kaum bekannt; es kann {low_days} bis {high_days} Tage dauern.</translation>
        </message>
        <message>
            <source>The reading is that of sugar.</source>
            <translation>Der Messwert ist der von Zucker.</translation>
        </message>
        <message>
            <source>The sourer the start, the less time mold and other unwanted guests have. The estimate runs from {low} to {high}.</source>
            <translation>Je saurer der Start, desto weniger Zeit haben Schimmel und andere ungebetene Gäste. Die Schätzung reicht von {low} bis {high}.</translation>
        </message>
        <message>
            <source>The starter is still needed: it brings the live culture.</source>
            <translation>Die Ansatzflüssigkeit wird trotzdem gebraucht: Sie bringt die lebende Kultur mit.</translation>
        </message>
        <message>
            <source>The sweet tea has stood for {hours} h without starter.</source>
            <translation>Der gesüßte Tee steht seit {hours} h ohne Ansatzflüssigkeit.</translation>
        </message>
        <message>
            <source>The sweet tea has stood for {hours} h.</source>
            <translation>Der gesüßte Tee steht seit {hours} h.</translation>
        </message>
        <message>
            <source>The sweet tea stood {hours} h without starter, longer than {limit_hours} h.</source>
            <translation>Der gesüßte Tee stand {hours} h ohne Ansatzflüssigkeit, länger als {limit_hours} h.</translation>
        </message>
        <message>
            <source>The tea alone is already at pH {target_ph} or below.</source>
            <translation>Der Tee allein liegt schon bei pH {target_ph} oder darunter.</translation>
        </message>
        <message>
            <source>The two readings go together.</source>
            <translation>Die beiden Messungen passen zusammen.</translation>
        </message>
        <message>
            <source>The two readings hardly go together.</source>
            <translation>Die beiden Messungen passen kaum zusammen.</translation>
        </message>
        <message>
            <source>The usual kitchen grade stands the acid; scratched or cheap steel may rust.</source>
            <translation>Die übliche Küchenqualität verträgt die Säure; verkratzter oder billiger Stahl kann rosten.</translation>
        </message>
        <message>
            <source>The water's alkalinity is not known, so it is assumed.</source>
            <translation>Die Alkalinität des Wassers ist nicht bekannt, also ist sie angenommen.</translation>
        </message>
        <message>
            <source>The water's alkalinity or a weak starter asks for it.</source>
            <translation>Die Alkalinität des Wassers oder schwache Ansatzflüssigkeit verlangt es.</translation>
        </message>
        <message>
            <source>These bottles must not pass {ceiling_bar}.</source>
            <translation>Diese Flaschen dürfen {ceiling_bar} nicht überschreiten.</translation>
        </message>
        <message>
            <source>These bottles must not pass {ceiling_bar}. No bottle promises to hold even that: glass ages.</source>
            <translation>Diese Flaschen dürfen {ceiling_bar} nicht überschreiten. Keine Flasche verspricht, auch nur das zu halten: Glas altert.</translation>
        </message>
        <message>
            <source>These bottles must not pass {ceiling_bar}. The figure holds only if they are chilled in time, and it promises nothing about an old bottle.</source>
            <translation>Diese Flaschen dürfen {ceiling_bar} nicht überschreiten. Die Zahl gilt nur, wenn sie rechtzeitig gekühlt werden, und über eine alte Flasche verspricht sie nichts.</translation>
        </message>
        <message>
            <source>They must not pass {ceiling_bar}. </source>
            <translation>Sie dürfen {ceiling_bar} nicht überschreiten. </translation>
        </message>
        <message>
            <source>They must not pass {ceiling_bar}. Nearly every sweet kombucha could break nearly every bottle. </source>
            <translation>Sie dürfen {ceiling_bar} nicht überschreiten. Fast jeder süße Kombucha könnte fast jede Flasche sprengen. </translation>
        </message>
        <message>
            <source>They show {excess_meq_per_l} more strong cations than anions, which tea and water can give.</source>
            <translation>Sie zeigen {excess_meq_per_l} mehr starke Kationen als Anionen, was Tee und Wasser liefern können.</translation>
        </message>
        <message>
            <source>They show {excess_meq_per_l} of strong ions; tea and water usually give {low} to {high}. Another acid, or a reading that is off, may be behind it.</source>
            <translation>Sie zeigen {excess_meq_per_l} starke Ionen; Tee und Wasser liefern meist {low} bis {high}. Dahinter kann eine andere Säure stecken oder eine Messung, die danebenliegt.</translation>
        </message>
        <message>
            <source>This bottle is not made for pressure.</source>
            <translation>Diese Flasche ist nicht für Druck gemacht.</translation>
        </message>
        <message>
            <source>This drink is not for everyone.</source>
            <translation>Dieses Getränk ist nicht für jeden.</translation>
        </message>
        <message>
            <source>This is an estimate from {low_abv} to {high_abv}; neither sugar nor two simple instruments can tell such amounts apart. </source>
            <translation>Das ist eine Schätzung von {low_abv} bis {high_abv}; weder Zucker noch zwei einfache Geräte können solche Mengen auseinanderhalten. </translation>
        </message>
        <message>
            <source>This metal does not stand the acid.</source>
            <translation>Dieses Metall verträgt die Säure nicht.</translation>
        </message>
        <message>
            <source>This rinse holds about {chlorine_ppm} of chlorine, which is strong.</source>
            <translation>Diese Spülung enthält etwa {chlorine_ppm} Chlor, das ist stark.</translation>
        </message>
        <message>
            <source>This rinse holds about {chlorine_ppm} of chlorine.</source>
            <translation>Diese Spülung enthält etwa {chlorine_ppm} Chlor.</translation>
        </message>
        <message>
            <source>This starter is good: about {ta_g_per_l} of acid.</source>
            <translation>Diese Ansatzflüssigkeit ist gut: etwa {ta_g_per_l} Säure.</translation>
        </message>
        <message>
            <source>This starter is mild: about {ta_g_per_l} of acid.</source>
            <translation>Diese Ansatzflüssigkeit ist mild: etwa {ta_g_per_l} Säure.</translation>
        </message>
        <message>
            <source>This starter is vinegary: about {ta_g_per_l} of acid.</source>
            <translation>Diese Ansatzflüssigkeit ist essigsauer: etwa {ta_g_per_l} Säure.</translation>
        </message>
        <message>
            <source>This starter is weak: about {ta_g_per_l} of acid.</source>
            <translation>Diese Ansatzflüssigkeit ist schwach: etwa {ta_g_per_l} Säure.</translation>
        </message>
        <message>
            <source>This starter, as far as it is known, is not sour enough for the pH you asked for.</source>
            <translation>Diese Ansatzflüssigkeit ist, soweit bekannt, nicht sauer genug für den pH, den du wolltest.</translation>
        </message>
        <message>
            <source>This vessel may give off lead.</source>
            <translation>Dieses Gefäß gibt vielleicht Blei ab.</translation>
        </message>
        <message>
            <source>Tongues differ, and sugar hides acid. Neither pH nor acidity of this starter is known.</source>
            <translation>Zungen sind verschieden, und Zucker verdeckt Säure. Weder pH noch Säure dieser Ansatzflüssigkeit sind bekannt.</translation>
        </message>
        <message>
            <source>Treat every closed bottle as if it might burst.</source>
            <translation>Behandle jede geschlossene Flasche, als könnte sie platzen.</translation>
        </message>
        <message>
            <source>Use a sourer starter, or choose a higher pH to start at.</source>
            <translation>Nimm saurere Ansatzflüssigkeit, oder wähle einen höheren Start-pH.</translation>
        </message>
        <message>
            <source>Use bottles made for fizzy drinks, glass or plastic, or drink it flat.</source>
            <translation>Nimm Flaschen für Sprudelgetränke, aus Glas oder Kunststoff, oder trink es ohne Kohlensäure.</translation>
        </message>
        <message>
            <source>Use fresh buffers and calibrate again.</source>
            <translation>Nimm frische Puffer und kalibriere neu.</translation>
        </message>
        <message>
            <source>Use hotter water.</source>
            <translation>Nimm heißeres Wasser.</translation>
        </message>
        <message>
            <source>Use it only if it is made for sour food, and replace it once scratched.</source>
            <translation>Nimm ihn nur, wenn er für saure Lebensmittel gemacht ist, und ersetze ihn, sobald er verkratzt ist.</translation>
        </message>
        <message>
            <source>Use it to see how things move, not for how much sugar is left.</source>
            <translation>Sieh daran, wie sich etwas entwickelt, nicht, wie viel Zucker noch da ist.</translation>
        </message>
        <message>
            <source>Use less bleach, never mix it with acid, and rinse with good water. </source>
            <translation>Nimm weniger Chlorbleiche, mische sie nie mit Säure, und spüle mit gutem Wasser nach. </translation>
        </message>
        <message>
            <source>Use less sugar unless you know this recipe.</source>
            <translation>Nimm weniger Zucker, außer du kennst dieses Rezept.</translation>
        </message>
        <message>
            <source>Use less tea unless you know this recipe.</source>
            <translation>Nimm weniger Tee, außer du kennst dieses Rezept.</translation>
        </message>
        <message>
            <source>Use more of it, or let it sour further first. </source>
            <translation>Nimm mehr davon, oder lass sie erst weiter säuern. </translation>
        </message>
        <message>
            <source>Use more or sourer starter, and measure after mixing.</source>
            <translation>Nimm mehr oder saurere Ansatzflüssigkeit, und miss nach dem Mischen.</translation>
        </message>
        <message>
            <source>Use more starter. </source>
            <translation>Nimm mehr Ansatzflüssigkeit. </translation>
        </message>
        <message>
            <source>Use more sugar unless you know this recipe.</source>
            <translation>Nimm mehr Zucker, außer du kennst dieses Rezept.</translation>
        </message>
        <message>
            <source>Use more tea unless you know this recipe.</source>
            <translation>Nimm mehr Tee, außer du kennst dieses Rezept.</translation>
        </message>
        <message>
            <source>Use only a barrel made for drinks, and look for mold more often.</source>
            <translation>Nimm nur ein Fass, das für Getränke gemacht ist, und sieh öfter nach Schimmel.</translation>
        </message>
        <message>
            <source>Use pasteurised juice, or heat the fruit first. Measure the pH afterwards: the same limit applies again. </source>
            <translation>Nimm pasteurisierten Saft, oder erhitze das Obst vorher. Miss danach den pH: Derselbe Grenzwert gilt wieder. </translation>
        </message>
        <message>
            <source>Use smaller bottles, or plastic made for fizzy drinks.</source>
            <translation>Nimm kleinere Flaschen oder Kunststoff für Sprudelgetränke.</translation>
        </message>
        <message>
            <source>Use sourer starter, or more of it. </source>
            <translation>Nimm saurere Ansatzflüssigkeit oder mehr davon. </translation>
        </message>
        <message>
            <source>Use water that is good to drink, or boil it first and let it cool.</source>
            <translation>Nimm Trinkwasser, oder koch es vorher ab und lass es abkühlen.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. More of it stays in the drink, and more alcohol can form.</source>
            <translation>Übliche Rezepte haben {low} bis {high}. Mehr davon bleibt im Getränk, und mehr Alkohol kann entstehen.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. Strong tea is bitter and sours more slowly.</source>
            <translation>Übliche Rezepte haben {low} bis {high}. Starker Tee ist bitter und säuert langsamer.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. The culture also lives on what the leaves give.</source>
            <translation>Übliche Rezepte haben {low} bis {high}. Die Kultur lebt auch von dem, was die Blätter geben.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. The sugar feeds the culture; with too little it sours weakly.</source>
            <translation>Übliche Rezepte haben {low} bis {high}. Der Zucker nährt die Kultur; mit zu wenig säuert sie schwach.</translation>
        </message>
        <message>
            <source>Wait until it is at {limit_c} or below, then measure again.</source>
            <translation>Warte, bis es bei {limit_c} oder darunter ist, dann miss noch einmal.</translation>
        </message>
        <message>
            <source>Warm or stir the sample until it is flat, and titrate again.</source>
            <translation>Wärme oder rühre die Probe, bis sie schal ist, und titriere noch einmal.</translation>
        </message>
        <message>
            <source>Water at {hot_c} scalds.</source>
            <translation>Wasser mit {hot_c} verbrüht.</translation>
        </message>
        <message>
            <source>Whatever lives in it meets sweet tea before it is sour.</source>
            <translation>Was auch darin lebt, trifft auf gesüßten Tee, bevor er sauer ist.</translation>
        </message>
        <message>
            <source>Where your local rules ask for more, follow them.</source>
            <translation>Wo deine örtlichen Regeln mehr verlangen, befolge sie.</translation>
        </message>
        <message>
            <source>With its doubt that is above {ceiling_bar}, the most for these bottles.</source>
            <translation>Mit seiner Unsicherheit liegt das über {ceiling_bar}, dem Höchsten für diese Flaschen.</translation>
        </message>
        <message>
            <source>With mold, all of it has to go: drink, starter and culture.</source>
            <translation>Bei Schimmel muss alles weg: Getränk, Ansatzflüssigkeit und Kultur.</translation>
        </message>
        <message>
            <source>With that doubt it is not certain that it is sour enough.</source>
            <translation>Bei dieser Unsicherheit ist nicht gewiss, dass er sauer genug ist.</translation>
        </message>
        <message>
            <source>With the doubt of {sd} it may lie above {limit}, where harmful germs can grow. Sweet or fresh additions raise it.</source>
            <translation>Bei der Unsicherheit von {sd} kann er über {limit} liegen, wo schädliche Keime wachsen können. Süße oder frische Zugaben erhöhen ihn.</translation>
        </message>
        <message>
            <source>With the uncertainty it lies between {low} and {high}, which is below {limit}, where unwanted germs grow less easily.</source>
            <translation>Mit der Unsicherheit liegt er zwischen {low} und {high}, also unter {limit}, wo unerwünschte Keime weniger leicht wachsen.</translation>
        </message>
        <message>
            <source>With {share} starter it will start at about pH {ph}, not {target}.</source>
            <translation>Mit {share} Ansatzflüssigkeit beginnt es bei etwa pH {ph}, nicht {target}.</translation>
        </message>
        <message>
            <source>Without compensation this reading is off by {error_without_ph}.</source>
            <translation>Ohne Ausgleich liegt diese Messung um {error_without_ph} daneben.</translation>
        </message>
        <message>
            <source>Wood is hard to keep clean.</source>
            <translation>Holz ist schwer sauber zu halten.</translation>
        </message>
        <message>
            <source>Your limit is {limit_c}.</source>
            <translation>Dein Grenzwert ist {limit_c}.</translation>
        </message>
        <message>
            <source>Your limit is {limit_c}. Heat weakens the culture, and a weak culture sours too slowly to keep mold away.</source>
            <translation>Dein Grenzwert ist {limit_c}. Hitze schwächt die Kultur, und eine schwache Kultur säuert zu langsam, um Schimmel fernzuhalten.</translation>
        </message>
        <message>
            <source>pH {ph} and {ta_g_per_l} of acid do not go together in a usual starter.</source>
            <translation>pH {ph} und {ta_g_per_l} Säure passen in einer üblichen Ansatzflüssigkeit nicht zusammen.</translation>
        </message>
        <message>
            <source>pH {ph} does not show that the drink is sour enough.</source>
            <translation>pH {ph} zeigt nicht, dass das Getränk sauer genug ist.</translation>
        </message>
        <message>
            <source>pH {ph} is at {limit} or below, with the doubt of the reading counted in.</source>
            <translation>pH {ph} liegt bei {limit} oder darunter, die Unsicherheit der Messung eingerechnet.</translation>
        </message>
        <message>
            <source>pH {ph} is close to {limit}, and the reading may be off by {sd}.</source>
            <translation>pH {ph} liegt nahe bei {limit}, und die Messung kann um {sd} danebenliegen.</translation>
        </message>
        <message>
            <source>pH {ph} is very sour, below {limit}.</source>
            <translation>pH {ph} ist sehr sauer, unter {limit}.</translation>
        </message>
        <message>
            <source>pH {ph} is very sour: with the doubt of {sd} it may lie below {limit}.</source>
            <translation>pH {ph} ist sehr sauer: Bei der Unsicherheit von {sd} kann er unter {limit} liegen.</translation>
        </message>
        <message>
            <source>pH {ph} on day {day} is below {limit}, with the doubt of the reading counted in.</source>
            <translation>pH {ph} an Tag {day} liegt unter {limit}, die Unsicherheit der Messung eingerechnet.</translation>
        </message>
        <message>
            <source>pH {ph} on day {day} is late.</source>
            <translation>pH {ph} an Tag {day} ist spät.</translation>
        </message>
        <message>
            <source>pH {ph} on day {day} is still above {limit}.</source>
            <translation>pH {ph} an Tag {day} liegt noch über {limit}.</translation>
        </message>
        <message>
            <source>pH {value} would be unusual.</source>
            <translation>pH {value} wäre ungewöhnlich.</translation>
        </message>
        <message>
            <source>{bar} bar ({psi} psi)</source>
            <translation>{bar} bar ({psi} psi)</translation>
        </message>
        <message>
            <source>{brim_l} is large for glass under pressure.</source>
            <translation>{brim_l} ist viel für Glas unter Druck.</translation>
        </message>
        <message>
            <source>{drunk_l} a day is more than the most cautious advice.</source>
            <translation>{drunk_l} am Tag ist mehr, als der vorsichtigste Rat erlaubt.</translation>
        </message>
        <message>
            <source>{drunk_l} a day is within the most cautious advice.</source>
            <translation>{drunk_l} am Tag liegt innerhalb des vorsichtigsten Rats.</translation>
        </message>
        <message>
            <source>{fill_l} is more than the {working_l} you usually fill in.</source>
            <translation>{fill_l} ist mehr als die {working_l}, die du sonst einfüllst.</translation>
        </message>
        <message>
            <source>{g_per_l} of sugar is a lot.</source>
            <translation>{g_per_l} Zucker ist viel.</translation>
        </message>
        <message>
            <source>{g_per_l} of sugar is little.</source>
            <translation>{g_per_l} Zucker ist wenig.</translation>
        </message>
        <message>
            <source>{g_per_l} of tea is a lot.</source>
            <translation>{g_per_l} Tee ist viel.</translation>
        </message>
        <message>
            <source>{g_per_l} of tea is little.</source>
            <translation>{g_per_l} Tee ist wenig.</translation>
        </message>
        <message>
            <source>{hot_c} is cool for steeping.</source>
            <translation>{hot_c} ist kühl zum Ziehenlassen.</translation>
        </message>
        <message>
            <source>{number} %</source>
            <translation>{number} %</translation>
        </message>
        <message>
            <source>{number} mV</source>
            <translation>{number} mV</translation>
        </message>
        <message>
            <source>{number} mg</source>
            <translation>{number} mg</translation>
        </message>
        <message>
            <source>{number} mg/L</source>
            <translation>{number} mg/L</translation>
        </message>
        <message>
            <source>{number} mm</source>
            <translation>{number} mm</translation>
        </message>
        <message>
            <source>{share} is about what makers usually take.</source>
            <translation>{share} ist etwa so viel, wie üblich ist.</translation>
        </message>
        <message>
            <source>{share} is less than makers usually take.</source>
            <translation>{share} ist weniger, als üblich ist.</translation>
        </message>
        <message>
            <source>{share} is more than makers usually take.</source>
            <translation>{share} ist mehr, als üblich ist.</translation>
        </message>
        <message>
            <source>{share} of headspace is a lot.</source>
            <translation>{share} Kopfraum ist viel.</translation>
        </message>
        <message>
            <source>{share} of headspace is little.</source>
            <translation>{share} Kopfraum ist wenig.</translation>
        </message>
        <message>
            <source>{share} starter is a lot.</source>
            <translation>{share} Ansatzflüssigkeit ist viel.</translation>
        </message>
        <message>
            <source>{share} starter is little.</source>
            <translation>{share} Ansatzflüssigkeit ist wenig.</translation>
        </message>
        <message>
            <source>{temperature_c} is cold enough to keep it.</source>
            <translation>{temperature_c} ist kalt genug zum Aufbewahren.</translation>
        </message>
        <message>
            <source>{temperature_c} is cold for the culture.</source>
            <translation>{temperature_c} ist kalt für die Kultur.</translation>
        </message>
        <message>
            <source>{temperature_c} is cool enough for starter and culture.</source>
            <translation>{temperature_c} ist kühl genug für Ansatzflüssigkeit und Kultur.</translation>
        </message>
        <message>
            <source>{temperature_c} is too warm to keep it.</source>
            <translation>{temperature_c} ist zu warm zum Aufbewahren.</translation>
        </message>
        <message>
            <source>{temperature_c} is warm for the culture.</source>
            <translation>{temperature_c} ist warm für die Kultur.</translation>
        </message>
        <message>
            <source>{temperature_c} may not end the fermenting.</source>
            <translation>{temperature_c} beendet die Gärung vielleicht nicht.</translation>
        </message>
        <message>
            <source>{temperature_c} meets the published {limit_c}.</source>
            <translation>{temperature_c} erfüllt die veröffentlichten {limit_c}.</translation>
        </message>
        <message>
            <source>{temperature_c} suits the culture.</source>
            <translation>{temperature_c} passt für die Kultur.</translation>
        </message>
        <message>
            <source>{value_brix} would be unusual.</source>
            <translation>{value_brix} wäre ungewöhnlich.</translation>
        </message>
        <message>
            <source>{value_c} would be unusual.</source>
            <translation>{value_c} wäre ungewöhnlich.</translation>
        </message>
        <message>
            <source>{value_g_per_l} of acid would be unusual.</source>
            <translation>{value_g_per_l} Säure wäre ungewöhnlich.</translation>
        </message>
        <message>
            <source>{volumes} volumes are a lot of fizz for bottles of unknown rating.</source>
            <translation>{volumes} Volumen sind viel Kohlensäure für Flaschen mit unbekanntem zulässigem Druck.</translation>
        </message>
        <message>
            <source>{volumes} volumes are too much fizz for bottles of unknown rating.</source>
            <translation>{volumes} Volumen sind zu viel Kohlensäure für Flaschen mit unbekanntem zulässigem Druck.</translation>
        </message>
    </context>
    <context>
        <name>VesselDialog</name>
        <message>
            <source>&amp;Inner diameter</source>
            <translation>&amp;Innendurchmesser</translation>
        </message>
        <message>
            <source>&amp;Material</source>
            <translation>&amp;Material</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Name</translation>
        </message>
        <message>
            <source>Add a vessel</source>
            <translation>Gefäß hinzufügen</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Abbrechen</translation>
        </message>
        <message>
            <source>Edit vessel</source>
            <translation>Gefäß bearbeiten</translation>
        </message>
        <message>
            <source>Give a volume, and the vessel is drawn here.</source>
            <translation>Gib ein Volumen an, dann wird das Gefäß hier gezeichnet.</translation>
        </message>
        <message>
            <source>Give the vessel a name you will know it by.</source>
            <translation>Gib dem Gefäß einen Namen, an dem du es erkennst.</translation>
        </message>
        <message>
            <source>Holds up to the &amp;brim</source>
            <translation>Fasst bis zum &amp;Rand</translation>
        </message>
        <message>
            <source>Save vessel</source>
            <translation>Gefäß speichern</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Form</translation>
        </message>
        <message>
            <source>Tall jar</source>
            <translation>Hohes Glas</translation>
        </message>
        <message>
            <source>The diameter is a guess: measure it when you can.</source>
            <translation>Der Durchmesser ist geraten: Miss ihn, wenn du kannst.</translation>
        </message>
        <message>
            <source>These figures fit no vessel of this shape.</source>
            <translation>Diese Zahlen passen zu keinem Gefäß dieser Form.</translation>
        </message>
        <message>
            <source>Where it &amp;stands</source>
            <translation>Wo es &amp;steht</translation>
        </message>
        <message>
            <source>You &amp;fill it to</source>
            <translation>Du &amp;füllst es bis</translation>
        </message>
        <message>
            <source>{height} high inside, {width} at the widest.</source>
            <translation>Innen {height} hoch, {width} an der weitesten Stelle.</translation>
        </message>
    </context>
    <context>
        <name>VesselPicks</name>
        <message>
            <source>Level of {vessel}</source>
            <translation>Stufe von {vessel}</translation>
        </message>
        <message>
            <source>No vessel is free. You can plan the trial without, and take batches in later.</source>
            <translation>Kein Gefäß ist frei. Du kannst den Versuch ohne planen und Ansätze später aufnehmen.</translation>
        </message>
        <message>
            <source>{volume}, {width} wide</source>
            <translation>{volume}, {width} weit</translation>
        </message>
    </context>
    <context>
        <name>Vessels</name>
        <message>
            <source>Pantry</source>
            <translation>Vorratskammer</translation>
        </message>
    </context>
    <context>
        <name>WhatIfPanel</name>
        <message>
            <source>As it is</source>
            <translation>Wie es ist</translation>
        </message>
        <message>
            <source>Move a slider: the dashed line shows how it would go then.</source>
            <translation>Beweg einen Regler: Die gestrichelte Linie zeigt, wie es dann liefe.</translation>
        </message>
        <message>
            <source>See how it would go otherwise</source>
            <translation>Sehen, wie es anders liefe</translation>
        </message>
        <message>
            <source>The jar, from the start</source>
            <translation>Das Glas, von Anfang an</translation>
        </message>
        <message>
            <source>The place, from now on</source>
            <translation>Der Ort, von jetzt an</translation>
        </message>
        <message>
            <source>The starter, from the start</source>
            <translation>Der Starter, von Anfang an</translation>
        </message>
        <message>
            <source>What if, in words</source>
            <translation>„Was wäre, wenn“ in Worten</translation>
        </message>
        <message>
            <source>What if…</source>
            <translation>Was wäre, wenn…</translation>
        </message>
        <message>
            <source>{length} across</source>
            <translation>{length} weit</translation>
        </message>
        <message>
            <source>{share} % of the jar</source>
            <translation>{share} % des Glases</translation>
        </message>
    </context>
    <context>
        <name>WhenEdit</name>
        <message>
            <source>Now</source>
            <translation>Jetzt</translation>
        </message>
        <message>
            <source>Set the time to now</source>
            <translation>Zeit auf jetzt setzen</translation>
        </message>
        <message>
            <source>d MMM yyyy, HH:mm</source>
            <translation>d. MMM yyyy, HH:mm</translation>
        </message>
    </context>
    <context>
        <name>WindowFrame</name>
        <message>
            <source>Bottles</source>
            <translation>Flaschen</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Kulturen</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Fällig</translation>
        </message>
        <message>
            <source>History</source>
            <translation>Verlauf</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiketten</translation>
        </message>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Reckon</source>
            <translation>Rechnen</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Einstellungen</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Regal</translation>
        </message>
        <message>
            <source>Stores</source>
            <translation>Vorräte</translation>
        </message>
        <message>
            <source>This pantry is invented, to look around in. Its jars and readings are made up and kept in a file of their own.</source>
            <translation>Diese Vorratskammer ist erfunden, zum Umsehen. Ihre Gläser und Messungen sind ausgedacht und liegen in einer eigenen Datei.</translation>
        </message>
        <message>
            <source>Trials</source>
            <translation>Versuche</translation>
        </message>
    </context>
    <context>
        <name>_CopiesDelegate</name>
        <message>
            <source>Copies</source>
            <translation>Exemplare</translation>
        </message>
    </context>
    <context>
        <name>_StripLine</name>
        <message>
            <source>{title}, {when}. Opens the due list.</source>
            <translation>{title}, {when}. Öffnet die Fälligkeitsliste.</translation>
        </message>
        <message>
            <source>{when}: {what}</source>
            <translation>{when}: {what}</translation>
        </message>
    </context>
    <context>
        <name>actions</name>
        <message>
            <source>&amp;About brewdesk</source>
            <translation>&amp;Über brewdesk</translation>
        </message>
        <message>
            <source>&amp;Change the vessel…</source>
            <translation>Gefäß än&amp;dern…</translation>
        </message>
        <message>
            <source>&amp;Cultures</source>
            <translation>&amp;Kulturen</translation>
        </message>
        <message>
            <source>&amp;Draw it off…</source>
            <translation>A&amp;bziehen…</translation>
        </message>
        <message>
            <source>&amp;Due</source>
            <translation>&amp;Fällig</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>&amp;Bearbeiten</translation>
        </message>
        <message>
            <source>&amp;Find an act, and its keys…</source>
            <translation>&amp;Befehl finden, mit seinen Tasten…</translation>
        </message>
        <message>
            <source>&amp;Find in everything</source>
            <translation>Überall &amp;suchen</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>&amp;Hilfe</translation>
        </message>
        <message>
            <source>&amp;History</source>
            <translation>&amp;Verlauf</translation>
        </message>
        <message>
            <source>&amp;Jar</source>
            <translation>&amp;Glas</translation>
        </message>
        <message>
            <source>&amp;Keep starter back…</source>
            <translation>&amp;Starter zurückbehalten…</translation>
        </message>
        <message>
            <source>&amp;Labels</source>
            <translation>&amp;Etiketten</translation>
        </message>
        <message>
            <source>&amp;Pantry</source>
            <translation>&amp;Vorratskammer</translation>
        </message>
        <message>
            <source>&amp;Plan</source>
            <translation>&amp;Plan</translation>
        </message>
        <message>
            <source>&amp;Plan a batch…</source>
            <translation>Ansatz &amp;planen…</translation>
        </message>
        <message>
            <source>&amp;Print the run sheet…</source>
            <translation>&amp;Laufzettel drucken…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>B&amp;eenden</translation>
        </message>
        <message>
            <source>&amp;Reckon</source>
            <translation>&amp;Rechnen</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Wiederholen</translation>
        </message>
        <message>
            <source>&amp;Retired vessels…</source>
            <translation>Ausge&amp;musterte Gefäße…</translation>
        </message>
        <message>
            <source>&amp;Safety, and where the limits come from</source>
            <translation>&amp;Sicherheit, und woher die Grenzwerte kommen</translation>
        </message>
        <message>
            <source>&amp;Shelf</source>
            <translation>Re&amp;gal</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Rückgängig</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Ansicht</translation>
        </message>
        <message>
            <source>Add a &amp;culture…</source>
            <translation>&amp;Kultur hinzufügen…</translation>
        </message>
        <message>
            <source>Add a &amp;reading</source>
            <translation>&amp;Messung eintragen</translation>
        </message>
        <message>
            <source>Add a &amp;vessel…</source>
            <translation>&amp;Gefäß hinzufügen…</translation>
        </message>
        <message>
            <source>B&amp;atch report…</source>
            <translation>Ansatzberi&amp;cht…</translation>
        </message>
        <message>
            <source>B&amp;ottle it…</source>
            <translation>Ab&amp;füllen…</translation>
        </message>
        <message>
            <source>B&amp;ottles</source>
            <translation>F&amp;laschen</translation>
        </message>
        <message>
            <source>Bac&amp;kups…</source>
            <translation>&amp;Sicherungen…</translation>
        </message>
        <message>
            <source>Back up no&amp;w</source>
            <translation>&amp;Jetzt sichern</translation>
        </message>
        <message>
            <source>Bring in an expor&amp;t…</source>
            <translation>Export ein&amp;lesen…</translation>
        </message>
        <message>
            <source>Carr&amp;y</source>
            <translation>&amp;Tragen</translation>
        </message>
        <message>
            <source>Copy ever&amp;ything to a folder…</source>
            <translation>&amp;Alles in einen Ordner kopieren…</translation>
        </message>
        <message>
            <source>D&amp;iscard it…</source>
            <translation>&amp;Wegwerfen…</translation>
        </message>
        <message>
            <source>Draw off par&amp;t…</source>
            <translation>Te&amp;il abziehen…</translation>
        </message>
        <message>
            <source>Due list as a &amp;calendar file…</source>
            <translation>Fälligkeitsliste als Kalen&amp;derdatei…</translation>
        </message>
        <message>
            <source>E&amp;xport everything…</source>
            <translation>Alles e&amp;xportieren…</translation>
        </message>
        <message>
            <source>It is already in the &amp;jar…</source>
            <translation>Es ist schon im &amp;Glas…</translation>
        </message>
        <message>
            <source>Look &amp;back</source>
            <translation>Rückbli&amp;ck</translation>
        </message>
        <message>
            <source>Open the &amp;invented pantry</source>
            <translation>Er&amp;fundene Vorratskammer öffnen</translation>
        </message>
        <message>
            <source>P&amp;laces and how warm they are…</source>
            <translation>&amp;Orte und wie warm sie sind…</translation>
        </message>
        <message>
            <source>Past &amp;batches…</source>
            <translation>Frühere A&amp;nsätze…</translation>
        </message>
        <message>
            <source>Pour &amp;over into another vessel…</source>
            <translation>In anderes Gefäß &amp;umfüllen…</translation>
        </message>
        <message>
            <source>Pour to&amp;gether with another batch…</source>
            <translation>Mit anderem Ansatz &amp;zusammengießen…</translation>
        </message>
        <message>
            <source>Pr&amp;ocess log…</source>
            <translation>Pro&amp;zessprotokoll…</translation>
        </message>
        <message>
            <source>Print a &amp;label…</source>
            <translation>Eti&amp;kett drucken…</translation>
        </message>
        <message>
            <source>R&amp;etire the vessel</source>
            <translation>Gefäß ausmuste&amp;rn</translation>
        </message>
        <message>
            <source>Read in readi&amp;ngs…</source>
            <translation>Messungen &amp;einlesen…</translation>
        </message>
        <message>
            <source>Se&amp;ttings</source>
            <translation>E&amp;instellungen</translation>
        </message>
        <message>
            <source>Show its &amp;history</source>
            <translation>Seinen &amp;Verlauf zeigen</translation>
        </message>
        <message>
            <source>Start &amp;brewing</source>
            <translation>&amp;Ansetzen beginnen</translation>
        </message>
        <message>
            <source>Stor&amp;es</source>
            <translation>V&amp;orräte</translation>
        </message>
        <message>
            <source>T&amp;rials</source>
            <translation>Vers&amp;uche</translation>
        </message>
        <message>
            <source>Top &amp;up…</source>
            <translation>&amp;Nachfüllen…</translation>
        </message>
    </context>
    <context>
        <name>limits</name>
        <message>
            <source>% alcohol by volume</source>
            <translation>% vol Alkohol</translation>
        </message>
        <message>
            <source>A cautious choice of this program.</source>
            <translation>Vorsichtig gewählt von diesem Programm.</translation>
        </message>
        <message>
            <source>A place's temperature says something of today for</source>
            <translation>Die Temperatur eines Ortes sagt etwas über heute für</translation>
        </message>
        <message>
            <source>A souring jar's place, at least</source>
            <translation>Ort für ein säuerndes Glas, mindestens</translation>
        </message>
        <message>
            <source>A souring jar's place, at most</source>
            <translation>Ort für ein säuerndes Glas, höchstens</translation>
        </message>
        <message>
            <source>Accuracy that a pH meter for food should have</source>
            <translation>Genauigkeit, die ein pH-Meter für Lebensmittel haben sollte</translation>
        </message>
        <message>
            <source>Australia and New Zealand: brewed soft drink, at most</source>
            <translation>Australien und Neuseeland: gebrautes Erfrischungsgetränk, höchstens</translation>
        </message>
        <message>
            <source>Australia and New Zealand: strength is stated above</source>
            <translation>Australien und Neuseeland: Alkoholgehalt wird angegeben über</translation>
        </message>
        <message>
            <source>Bottle for fizzy drinks of unknown rating: pressure on a gauge, at most</source>
            <translation>Flasche für Sprudelgetränke, zulässiger Druck unbekannt: Druck am Manometer, höchstens</translation>
        </message>
        <message>
            <source>Bottle for fizzy drinks of unknown rating: volumes of carbon dioxide, below</source>
            <translation>Flasche für Sprudelgetränke, zulässiger Druck unbekannt: Volumen Kohlendioxid, unter</translation>
        </message>
        <message>
            <source>British Columbia and Ontario: controlled above</source>
            <translation>British Columbia und Ontario: reguliert über</translation>
        </message>
        <message>
            <source>Caffeine at once, and in a day of pregnancy, at most</source>
            <translation>Koffein auf einmal, und am Tag in der Schwangerschaft, höchstens</translation>
        </message>
        <message>
            <source>Caffeine in a day, adults, at most</source>
            <translation>Koffein am Tag, Erwachsene, höchstens</translation>
        </message>
        <message>
            <source>Called close to that fizz from</source>
            <translation>Gilt als nahe an dieser Kohlensäure ab</translation>
        </message>
        <message>
            <source>Called close to that pressure from</source>
            <translation>Gilt als nahe an diesem Druck ab</translation>
        </message>
        <message>
            <source>Called long when souring for</source>
            <translation>Gilt als lang, wenn es so lange säuert</translation>
        </message>
        <message>
            <source>Called over-long when souring for</source>
            <translation>Gilt als zu lang, wenn es so lange säuert</translation>
        </message>
        <message>
            <source>Called slow when not reached by</source>
            <translation>Gilt als langsam, wenn nicht erreicht bis</translation>
        </message>
        <message>
            <source>Canada, most provinces: controlled above</source>
            <translation>Kanada, die meisten Provinzen: reguliert über</translation>
        </message>
        <message>
            <source>Canada: strength is declared from</source>
            <translation>Kanada: Alkoholgehalt wird angegeben ab</translation>
        </message>
        <message>
            <source>Chlorine in water for rinsing vessels, at most</source>
            <translation>Chlor im Wasser zum Spülen von Gefäßen, höchstens</translation>
        </message>
        <message>
            <source>Cold storage of the drink, at most</source>
            <translation>Kaltlagerung des Getränks, höchstens</translation>
        </message>
        <message>
            <source>Common practice, without a source.</source>
            <translation>Gängige Praxis, ohne Quelle.</translation>
        </message>
        <message>
            <source>Derived from the figures named.</source>
            <translation>Abgeleitet aus den genannten Zahlen.</translation>
        </message>
        <message>
            <source>Drunk in a day, most cautious advice read</source>
            <translation>Am Tag getrunken, vorsichtigster gelesener Rat</translation>
        </message>
        <message>
            <source>European Union: strength is stated above</source>
            <translation>Europäische Union: Alkoholgehalt wird angegeben über</translation>
        </message>
        <message>
            <source>From memory, not confirmed.</source>
            <translation>Aus dem Gedächtnis, nicht bestätigt.</translation>
        </message>
        <message>
            <source>Glass for fizzy drinks: the trade's own figure, at most</source>
            <translation>Glas für Sprudelgetränke: Zahl der Branche, höchstens</translation>
        </message>
        <message>
            <source>Glass under pressure: size, at most</source>
            <translation>Glas unter Druck: Größe, höchstens</translation>
        </message>
        <message>
            <source>Headspace of a bottle, at least</source>
            <translation>Kopfraum einer Flasche, mindestens</translation>
        </message>
        <message>
            <source>Headspace of a bottle, called large above</source>
            <translation>Kopfraum einer Flasche, gilt als groß über</translation>
        </message>
        <message>
            <source>Headspace of a bottle, usual</source>
            <translation>Kopfraum einer Flasche, üblich</translation>
        </message>
        <message>
            <source>Heating to end fermenting, in an open pot, at least</source>
            <translation>Erhitzen, um die Gärung zu beenden, im offenen Topf, mindestens</translation>
        </message>
        <message>
            <source>Keeping the drink cold, at most</source>
            <translation>Getränk kalt aufbewahren, höchstens</translation>
        </message>
        <message>
            <source>Liquid a culture goes into, at most</source>
            <translation>Flüssigkeit, in die eine Kultur kommt, höchstens</translation>
        </message>
        <message>
            <source>Liquid that harms a culture, from</source>
            <translation>Flüssigkeit, die einer Kultur schadet, ab</translation>
        </message>
        <message>
            <source>Offset of a pH meter in the neutral buffer, at most</source>
            <translation>Nullpunkt eines pH-Meters im neutralen Puffer, höchstens</translation>
        </message>
        <message>
            <source>Rated bottle: careful from this part of its rating</source>
            <translation>Flasche mit zulässigem Druck: Vorsicht ab diesem Teil davon</translation>
        </message>
        <message>
            <source>Read in the source itself.</source>
            <translation>In der Quelle selbst gelesen.</translation>
        </message>
        <message>
            <source>Read only as others quote it.</source>
            <translation>Nur gelesen, wie andere es zitieren.</translation>
        </message>
        <message>
            <source>Share of starter, at least</source>
            <translation>Starteranteil, mindestens</translation>
        </message>
        <message>
            <source>Share of starter, at most</source>
            <translation>Starteranteil, höchstens</translation>
        </message>
        <message>
            <source>Share of starter, lowest advice read</source>
            <translation>Starteranteil, niedrigster gelesener Rat</translation>
        </message>
        <message>
            <source>Slope of a pH meter, at least</source>
            <translation>Steilheit eines pH-Meters, mindestens</translation>
        </message>
        <message>
            <source>Slope of a pH meter, at most</source>
            <translation>Steilheit eines pH-Meters, höchstens</translation>
        </message>
        <message>
            <source>Slope of a pH meter, called good from</source>
            <translation>Steilheit eines pH-Meters, gilt als gut ab</translation>
        </message>
        <message>
            <source>Slope of a pH meter, called good up to</source>
            <translation>Steilheit eines pH-Meters, gilt als gut bis</translation>
        </message>
        <message>
            <source>Steeping time</source>
            <translation>Ziehzeit</translation>
        </message>
        <message>
            <source>Sweet tea standing without starter: at most</source>
            <translation>Gesüßter Tee ohne Starter: höchstens</translation>
        </message>
        <message>
            <source>Sweet tea standing without starter: careful after</source>
            <translation>Gesüßter Tee ohne Starter: Vorsicht nach</translation>
        </message>
        <message>
            <source>Time to chill when a gauge shows</source>
            <translation>Zeit zu kühlen, wenn ein Manometer zeigt</translation>
        </message>
        <message>
            <source>Time to reach that pH</source>
            <translation>Zeit bis zu diesem pH</translation>
        </message>
        <message>
            <source>US fl oz</source>
            <translation>US fl oz</translation>
        </message>
        <message>
            <source>United Kingdom: called low alcohol, at most</source>
            <translation>Vereinigtes Königreich: gilt als alkoholarm, höchstens</translation>
        </message>
        <message>
            <source>United States: an alcohol beverage from, at any time</source>
            <translation>USA: alkoholisches Getränk ab, zu jeder Zeit</translation>
        </message>
        <message>
            <source>Water for steeping, at least</source>
            <translation>Wasser zum Aufgießen, mindestens</translation>
        </message>
        <message>
            <source>days</source>
            <translation>Tage</translation>
        </message>
        <message>
            <source>hours</source>
            <translation>Stunden</translation>
        </message>
        <message>
            <source>mg/L</source>
            <translation>mg/L</translation>
        </message>
        <message>
            <source>minutes</source>
            <translation>Minuten</translation>
        </message>
        <message>
            <source>pH of a finished drink, at least</source>
            <translation>pH eines fertigen Getränks, mindestens</translation>
        </message>
        <message>
            <source>pH of a finished drink, at most</source>
            <translation>pH eines fertigen Getränks, höchstens</translation>
        </message>
        <message>
            <source>pH of the blend at the start, at most</source>
            <translation>pH der Mischung am Start, höchstens</translation>
        </message>
        <message>
            <source>pH of the blend at the start, wanted</source>
            <translation>pH der Mischung am Start, gewünscht</translation>
        </message>
        <message>
            <source>pH strips are trusted up to</source>
            <translation>pH-Streifen gelten als verlässlich bis</translation>
        </message>
        <message>
            <source>volumes</source>
            <translation>Volumen</translation>
        </message>
    </context>
    <context>
        <name>moments</name>
        <message>
            <source>ddd d MMM</source>
            <translation>ddd d. MMM</translation>
        </message>
        <message>
            <source>on {date}</source>
            <translation>am {date}</translation>
        </message>
        <message>
            <source>since yesterday</source>
            <translation>seit gestern</translation>
        </message>
        <message>
            <source>since {date}</source>
            <translation>seit {date}</translation>
        </message>
        <message>
            <source>today {time}</source>
            <translation>heute {time}</translation>
        </message>
        <message>
            <source>tomorrow</source>
            <translation>morgen</translation>
        </message>
        <message>
            <source>{date}, {time}</source>
            <translation>{date}, {time}</translation>
        </message>
    </context>
    <context>
        <name>shelf</name>
        <message>
            <source>Being brewed</source>
            <translation>Wird angesetzt</translation>
        </message>
        <message>
            <source>Brew it next</source>
            <translation>Als Nächstes ansetzen</translation>
        </message>
        <message>
            <source>Check the pH</source>
            <translation>pH prüfen</translation>
        </message>
        <message>
            <source>Day {n}</source>
            <translation>Tag {n}</translation>
        </message>
        <message>
            <source>Draw it off</source>
            <translation>Abziehen</translation>
        </message>
        <message>
            <source>Drawn off</source>
            <translation>Abgezogen</translation>
        </message>
        <message>
            <source>Drawn off at pH {ph}</source>
            <translation>Abgezogen bei pH {ph}</translation>
        </message>
        <message>
            <source>Empty · {volume}</source>
            <translation>Leer · {volume}</translation>
        </message>
        <message>
            <source>Feed it</source>
            <translation>Füttern</translation>
        </message>
        <message>
            <source>Follow the run sheet</source>
            <translation>Laufzettel folgen</translation>
        </message>
        <message>
            <source>Look for dryness</source>
            <translation>Auf Austrocknen prüfen</translation>
        </message>
        <message>
            <source>Look for mold</source>
            <translation>Nach Schimmel sehen</translation>
        </message>
        <message>
            <source>Look for the film</source>
            <translation>Nach der Haut sehen</translation>
        </message>
        <message>
            <source>May carry mold</source>
            <translation>Kann Schimmel tragen</translation>
        </message>
        <message>
            <source>Mold was seen</source>
            <translation>Schimmel gesehen</translation>
        </message>
        <message>
            <source>Planned</source>
            <translation>Geplant</translation>
        </message>
        <message>
            <source>Ready for a batch</source>
            <translation>Bereit für einen Ansatz</translation>
        </message>
        <message>
            <source>Taste it</source>
            <translation>Probieren</translation>
        </message>
        <message>
            <source>Your reminder</source>
            <translation>Deine Erinnerung</translation>
        </message>
        <message>
            <source>needs attention</source>
            <translation>braucht Zuwendung</translation>
        </message>
        <message>
            <source>no pH yet</source>
            <translation>noch kein pH</translation>
        </message>
        <message>
            <source>now</source>
            <translation>jetzt</translation>
        </message>
        <message>
            <source>pH about {ph}</source>
            <translation>pH etwa {ph}</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>pellicle {mm} mm</source>
            <translation>Häutchen {mm} mm</translation>
        </message>
        <message>
            <source>time is up</source>
            <translation>Zeit ist um</translation>
        </message>
        <message>
            <source>timer until {time}</source>
            <translation>Timer bis {time}</translation>
        </message>
        <message>
            <source>{culture} at rest</source>
            <translation>{culture} ruht</translation>
        </message>
        <message>
            <source>{name} · {code}</source>
            <translation>{name} · {code}</translation>
        </message>
        <message>
            <source>{what} {when}</source>
            <translation>{what} {when}</translation>
        </message>
    </context>
</TS>
