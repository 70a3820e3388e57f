<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AboutDialog</name>
    <message>
        <source>A window for the pantry: plan, brew, watch and remember kombucha, jar by jar. It uses no network, unless you have it share a pantry on a server of yours. MIT licence; the typeface is Atkinson Hyperlegible Next under the SIL Open Font License.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About brewdesk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Python</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Qt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SQLite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Version</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your pantry</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AcidChart</name>
    <message>
        <source>Acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity over the days of the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {day} · {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {day}, {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More about the forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No curve yet. It begins when the starter is in. Take a first pH then, and the forecast will show when to taste.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No titratable acidity measured or forecast yet. Enter one with the next reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The curve in words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same is said in words beside it and in the table of readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titratable acidity, counted as acetic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place} · expected {mid} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ActBar</name>
    <message>
        <source>Nothing to take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: {act}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Acts</name>
    <message>
        <source>Acidity {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brewing of {name} begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look “{found}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New culture {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New place {name} at {temperature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New vessel {name}, {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle {number} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan of {name} changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan of {name} given up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo: {act}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminder “{reminder}” added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SG {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste “{taste}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo: {act}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} and its culture discarded: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} back on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} changed, now at {temperature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} covered and souring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} discarded: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} drawn off from {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} drawn off from {vessel}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} entered as already souring, begun at {temperature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} entered as already souring, begun at {temperature}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} entered as already souring, temperature not known: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is at work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is forming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is resting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} planned, {volume} in {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} retired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} taken off the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” done at {temperature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” done at {temperature}, in spite of the warning: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” done, in spite of the warning: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” given {time} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{step}” paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{old_name} renamed {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{old} on {vessel} corrected to {readings}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{readings} on {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{readings} on {vessel} corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{readings} on {vessel} taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{note}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{reminder}” done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{reminder}” put off</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AdditionRow</name>
    <message>
        <source> %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shares as you typed them; a label knows best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} (from the stores)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Alarms</name>
    <message>
        <source>Time is up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time is up: lift the tea out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time is up: look whether all sugar is dissolved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time is up: measure the temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time is up: pour the water on the tea.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batch} in {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AlreadyInDialog</name>
    <message>
        <source>Already in the jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How warm the tea was then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you did not measure: why it goes in all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is souring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders and forecast count from the moment starter or culture went in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter and culture went in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is already in the jar</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AmountsPanel</name>
    <message>
        <source>Amounts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once mixed it has to cool: starter and culture may go in at {limit} or below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once mixed it should be cool enough: starter and culture may go in at {limit} or below. Take the temperature first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start pH comes out between {low} and {high} about {times} times in 10. That is an estimate: measure it before you cover the vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volumes are those at 20 °C. Weigh if you can: cups and spoons are good to about 5&#xa0;%.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of it starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once mixed, estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start pH, estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AmountsTable</name>
    <message>
        <source>, about {measure}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, {volume} mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{part}: {grams} g, {ounces} oz</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AnswerPanel</name>
    <message>
        <source>Limits it was held against</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To bear in mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where this comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{citation} ({standing})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ArmEntries</name>
    <message>
        <source>One less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first level is what the others are compared with.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ArmEntry</name>
    <message>
        <source>Level {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of level {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % starter</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ArmLegend</name>
    <message>
        <source>Legend: {names}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AttachDialog</name>
    <message>
        <source>A batch brewed without the trial in mind often differs in more than one thing. What differs is listed on the trial&apos;s sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a batch in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no batch that could join.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Autostart</name>
    <message>
        <source>Reminders for your jars of kombucha</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start quietly when I log in, so that reminders come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program lies in a folder whose name your desktop cannot start it from, so nothing was changed. Please move it to another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your desktop&apos;s autostart folder may not be written to, so nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Background</name>
    <message>
        <source>Its icon is in the tray: a click on it brings the window back, and its menu ends the program. Reminders go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This desktop has no tray, so the window was made small instead of closed. Pantry &gt; Quit ends the program. Reminders go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk keeps running</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Backups</name>
    <message>
        <source>All {rows} rows could be read: nothing is lost. Only what is made anew from them was damaged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checked: sound. It holds {vessels} vessels, {cultures} cultures, {batches} batches, {bottlings} bottlings, {readings} readings and {photos} entries of photos.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copied to {folder}: {rows} rows and {photos} photos, {size}, all read back and found equal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going back would lose the one thing done since:
{named}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going back would lose the {count} things done since, the last of them:
{named}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going back would lose the {count} things done since:
{named}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is of another pantry, so what is here now cannot be compared with it: all of it would be replaced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its newest reading is of {when}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of the backups is sound any more. They stay where they are. What can still be read of the pantry itself can be rescued into a new file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was done since: going back would lose nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day&apos;s backup could not be made, and there is no older one. {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day&apos;s backup could not be made. The last good one is of {when}, {age}. {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last thing that was done in it: {when}, {age}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no backup yet. One is made each day on which something was done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no reading in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This backup is not what was written any more, so it cannot be used. It stays where it is. Please choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was entered after {when} ({age}) is not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acts in the history (for undoing)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before going back to an older one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before readings were brought in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before the program brought the pantry up to date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottlings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entries of photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pieces of temperature logs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reminders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps of run sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what acts were about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} days ago</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{line} – DAMAGED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{rows} rows could be read. Lost are these rows, and with them what belonged to them – {parts}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: all, and how many is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{when} – {why}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BackupsDialog</name>
    <message>
        <source>Back up now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backed up as {file}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups, the newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy everything to a folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to this one…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back? What is here now is backed up first and then set aside; nothing is deleted. The window closes and opens again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep what is here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One is made each day on which something was done: all of two days are kept, then one of each day, week and month. They hold the records, not the files of photos; a copy to a folder of your own holds both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The backups are being checked…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry is on a server that other desks may be using. To go back, close it at every desk and move the backup there with “brewdesk move-store”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the chosen backup holds</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BagReader</name>
    <message>
        <source>bags/L</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BalanceWords</name>
    <message>
        <source>Its pH goes from about {before} to {after}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a pH of both, that of the blend is not known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} holds {before}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {before} + {change} = {after}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {before} − {change} = {after}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BatchCurve</name>
    <message>
        <source>It is over; this is what was read until it ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neither pH nor acidity was read of this batch.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BatchReadings</name>
    <message>
        <source>Nothing was read of this batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings, newest first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BatchReport</name>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture in at most at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the maker&apos;s words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is over; this is what was read until it ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look: {found}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made from the maker&apos;s own entries; brewdesk cannot check them. Readings have their uncertainty, forecasts are no guarantee, and local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No warning was overridden, and no look is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was read of this batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {shown} of {count} entries fit on one page. The process log and the HTML report have them all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page {page} of {pages}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle {number} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste: {taste}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea ({kind})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no run sheet of this batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thinned out to {shown} of {count} rows, spread over the whole time, so that the report is one page. The curve has every pH; the HTML report has every row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was read so far; without a forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What went in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most pH {limit} from day {day} on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{date}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleAdditions</name>
    <message>
        <source>Add fruit, juice, ginger, honey…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take away addition {n}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleCard</name>
    <message>
        <source>Chill now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditioning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not looked at yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour away…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the bottling sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are in the cold now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why are they poured away?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chill by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filled {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit in the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{left} of {count} bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} {grams} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: all were vented</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: drunk up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: note the gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: one opened was {opened}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: the test bottle is {feel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: they are in the cold now</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleFill</name>
    <message>
        <source>A warning stops this. Change the bottling, or write down your reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles are filled from a batch that is souring. Once one is in its window, it can be chosen here, or from its jar with “Bottle it”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill the bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is stopped. Your reason, to be kept with the bottling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not up to date: see the marked field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to bottle yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for the marked field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What goes into each bottle, how the pressure may rise and by when to chill stands here as soon as there is a batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why fill them all the same?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleForm</name>
    <message>
        <source>In the jar, with its culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please give it a name.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleGroupRow</name>
    <message>
        <source> %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As their maker states it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must not be put under pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No rating known: a cautious one is taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not from the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test bottle, to be felt daily</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleGroups</name>
    <message>
        <source>Add a test bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles, row {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take away row {n}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleOutlook</name>
    <message>
        <source>By the bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chill by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no deadline</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottlePage</name>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles that stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles that stand, and filling bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill bottles</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleReminders</name>
    <message>
        <source>By then the pressure may be too high: this comes back {day} at {time} at the latest, until the bottles are chilled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate the pH meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill one for some hours first, then open it slowly over the sink, under a cloth and away from your face. Write down whether it was too flat, right, or gushed; if it gushed, chill the others at once. It may hold more alcohol than the open jar did.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill the bottles now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill the bottles soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover your eyes and hands, do not shake, knock or open a warm bottle, and keep others away. The forecast is an estimate: if the test bottle is hard, chill them at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drink up the bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even in the fridge sugar turns slowly into alcohol and pressure: open them with care.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open one cold bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the plastic test bottle, or read its gauge, and write down what you found. Hard means: chill all of them now. A glass bottle tells nothing by its feel and can burst; handle it gently, with your eyes covered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the test bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put all of them into the fridge, and write down that you did: that ends this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure may be too high since {day} at {time}: a bottle can burst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure may become too high from {day} at {time} on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw out what smells wrong or has mold; when in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use fresh buffers, one of them near pH 4, and keep what you find: “Is my pH meter still good?” among the questions has a button for it. Until then mistrust readings near a limit: whether a brew is sour enough should not hang on an uncalibrated meter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You wanted them used up by {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottleStand</name>
    <message>
        <source>Fill bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled bottles appear here: how much pressure they likely hold, by when to chill them, and what you felt and saw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bottles stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working out how much pressure they hold, and by when to chill them…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BottlingSheet</name>
    <message>
        <source>Alcohol made in the bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All figures are estimates. The pace of the yeasts is hardly known beforehand, and no bottle promises to hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the warmest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottling sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill by, at the latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close and stand them in a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut small and even: whole pieces gush when the bottle is opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feel the test bottle daily</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill, leaving the headspace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass under pressure can burst: eye protection, a crate or box with a lid, a towel over those you move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grams as above; weigh them, spoons are only about right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the cold since:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds alcohol, more with every day. Not for children, in pregnancy, or where alcohol must be avoided.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen measure, limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at every bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never shake a bottle. Chill it through, then open it slowly, under a towel, over a sink, away from faces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No chip, no scratch, no crack. Clean, rinsed, and made for fizzy drinks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules and advice of the place where you live come before this sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share out what else goes in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soft: wait. Firm: chill one through and open it. Hard: chill all of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar into each bottle, or stirred into all of the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test bottle hard, or the chill-by time come: all bottles into the cold. Open none warm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same in every bottle, the test bottle too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They stand at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a lid, away from sun and people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most {limit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no deadline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} to {high} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} {grams} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} into {count} bottles, {fizz}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Bottlings</name>
    <message>
        <source>Add less sugar, fill cooler, or use bottles with a higher rating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Agave syrup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apple juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apples</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Apricots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blackberries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blueberries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles have cost people their eyes: when moved, when dropped, and by the flying cap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brown sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill by {moment} at the latest, sooner once it is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill now: since {moment} lively yeasts could have reached the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chilling takes hours too: less than {least_hours} hours leave no time to save them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold slows the yeasts and does not end them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover them, wear eye protection, and open them one by one over a sink, slowly and under a towel. Keep what you do not drink in the coldest place. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cranberry juice, unsweetened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even in the cold they may have reached their limit by day {chill_by_days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill one plastic bottle made for fizzy drinks, and feel it daily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill one plastic test bottle, and chill all of them once it is hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ginger root</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass under pressure can burst without warning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grape juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grapefruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grapes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Honey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How lively your yeasts are is hardly known beforehand. A plastic bottle shows it: soft, firm, hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you know the rating, choose “Rated by its maker” and type it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the bottle, alcohol rises by {low_abv} to {high_abv} for this fizz, and up to {most_abv} if all the sugar ferments.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the cold it still rises slowly. Drink it before {until}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep them cooler, no warmer than {temperature} °C, and chill sooner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kiwi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave more headspace: at least 4 % of the bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lemon juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less fizz alone does not help with these bottles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less fizz: up to {volumes} volumes, with no more sugar than that takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely {volumes}, at {bar}; it may be as much as {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mango</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sugar is left that could bring them to their limit, as far as is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a plastic bottle can be felt, and there is none among these.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orange juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oranges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peaches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pineapple</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pineapple juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please enter at least one kind of bottles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please say how it felt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please say how it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type the rating that their maker gives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type what the gauge shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plums</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pomegranate juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pomegranate seeds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put all bottles in the cold now. Open none warm, and none to let gas out. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raspberries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of these bottles have no rating from their maker.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strawberries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweet cherries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell those who drink it. For children, in pregnancy and where alcohol must be avoided, leave it. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That comes on top of what is in the drink already. Some rules call a drink alcoholic from {threshold_abv}; bought kombuchas have been found well above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount to bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bottles hold only {high}. Add bottles, or bottle less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fizz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The headspace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least share of sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least sugar left in the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The most share of sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The most sugar left in the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The number of bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The starter kept back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sugar in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of the jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The test bottle was hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warmest temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then the glass ones hold as much, and it goes on rising while they stand warm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are only {high} bottles left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a warning that stops this. Write down why you fill them all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no culture in this jar to keep it with. Keep it with a culture at rest, or leave the batch as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no test bottle among them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These bottles are gone already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These bottles are not conditioning any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These bottles may pass their limit within {hours} hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are reckoned with a cautious {ceiling_bar}, our reading of the glass trade&apos;s figure for fizzy-drink glass. No one has promised that yours hold it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is before the bottles were filled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use bottles with a higher rating from their maker.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use other bottles: sound glass or plastic made for fizzy drinks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watermelon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wear eye protection. Stand the bottles in a crate or box with a lid, and lay a towel over those you move. Never shake one. Chill it through, then open it slowly over a sink, under a towel. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where your local rules ask for more, follow them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gauge {bar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note “{text}”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opened, {opened}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 8 bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>test bottle {feel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vented</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} to {high} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} chilled at {temperature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} drunk up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} poured away: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: corrected to {check}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {check}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {check} taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {volume} in {count} bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {volume} in {count} bottles, in spite of the warning: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} volumes, a gentle prickle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} volumes, fizzy as beer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} volumes, hardly fizzy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} volumes, lively as lemonade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} volumes, wild</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Calendar</name>
    <message>
        <source>1 reminder is in the calendar file {path}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chilling bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due in the pantry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for the film</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is open: the calendar file {path} is empty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own reminder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calendar file {path} could not be written; what stood there before still does. Please check that its folder is there and may be written to. The due list itself is not affected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file {path} is no calendar, so it was left as it is. Please choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Topping up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} reminders are in the calendar file {path}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalendarDialog</name>
    <message>
        <source>Calendar file of the due list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendar files (*.ics)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CalendarPathEditor</name>
    <message>
        <source>Choose where the calendar file is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the calendar file up to date no longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No file is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CareActs</name>
    <message>
        <source>Caption of a photo of {name} changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo of {name} added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo of {name} removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures of {name} from {file} taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{care}: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} photos of {name} added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} temperatures of {name} read from {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{meter} calibrated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{meter} calibrated, slope {slope} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} cleared of suspicion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} fed with {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} given to {to}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has grown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} looked at: {found}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} lost: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} lost: {reason}; flagged with it: {flagged}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} moved to {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} poured over into {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} put to rest in {vessel}, {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} removed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} retired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} split from {parent}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} split from {parent} into {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} taken out of its vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} topped up with {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} topped up with {volume} of sweet tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: growing a culture in {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{parents} merged into {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature} in {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature} in {name} taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of starter lent by {name} to {to}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of {name} drawn off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of {name} kept as starter with {to}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of {name} lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of {name} poured into {into}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of {name} taken as a sample</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CareDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In no vessel</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CarryDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In which vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid it rests in (may stay empty)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the daughter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One name for both cultures, if they shall be one (may stay empty)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no vessel for this now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness of its pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is meant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With which culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessel} · {batch}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}, into {target}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: {carried} to {target}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChartLegend</name>
    <message>
        <source>Legend: {entries}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChoiceBar</name>
    <message>
        <source>{name}: {choice}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClearDialog</name>
    <message>
        <source>Clear it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear {name} of suspicion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No look can prove that there is no mold. Clear it only if you have watched it long enough and are sure; the program takes your word and keeps it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why you are sure</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClosingDialog</name>
    <message>
        <source>A timer is running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close while a timer is running?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes on while brewdesk is closed, but nothing will ring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings can keep brewdesk running in the tray instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batch}: “{step}” ends at {time}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CopyDialog</name>
    <message>
        <source>Choose a folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy everything to a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it in a window of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry and the files of all its photos are copied into a new folder, on a memory stick for example. The copy is read back and compared, and can be opened as it is. The pantry itself stays as it is.

Photos go along unchanged, with whatever the camera wrote into them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the copy is to be</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CostLegend</name>
    <message>
        <source>no price known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CostPane</name>
    <message>
        <source> times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An assumption, until you say how often yours last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each filling costs this share of the bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch was begun in this year. Once one is, its cost stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not all is paid in {currency}, so nothing is compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the drink that yours takes the place of.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of {all} batches, {count} gave nothing to drink yet; what they cost counts towards a litre only once some is drawn off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of {all} batches, {count} used something without a known price: sums with them are “at least”, savings “at most”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as a table (CSV)…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the costs as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what a litre costs in the shop to see what you saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What each batch cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>costs-{year}.csv</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drunk or in bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type it, in {currency}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} could not be written. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CostTable</name>
    <message>
        <source>A bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it priced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Litres drunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved against the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CostsModel</name>
    <message>
        <source>A bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Against the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CrashDialog</name>
    <message>
        <source>A mistake in the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you want to help to mend it, send this report to those who gave you the program. It is meant to hold nothing of your pantry, and neither your name nor that of your computer. Please look through it before you send it: this is the whole text, and nothing is sent by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It could not be saved: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {path}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something went wrong in the program. What was saved before is safe, and the program goes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The text is on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk broke down last time. Everything that was saved is here; what was only typed is not.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CultureActs</name>
    <message>
        <source>Carry over the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give away…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand-over card…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is lost…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Merge with others…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move to another vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note the pH…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print a label…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put to rest…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show its history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no vessel on the shelf yet that it could be carried to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top up…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a note…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CultureDialog</name>
    <message>
        <source>A culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In no vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CultureEntry</name>
    <message>
        <source>&amp;Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the culture a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New culture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter liquid only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it came from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may carry mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} – {state}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CultureSheet</name>
    <message>
        <source>All about this culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Daughters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How its batches did</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last fed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More for this culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rests in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw it out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was noted: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} older entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} – {place}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{origin} · {generation} · {age}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{when}: {what}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CultureVerdicts</name>
    <message>
        <source>A culture is in one place: whichever is brewed first takes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plain, raw bottle is what usually works.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {at_c} a first film usually shows between day {first_days} and day {last_days}, and is solid in {solid_days} to {latest_days} days. These are kitchen experience, not measurements; cooler places take longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold, weak or too little raw liquid makes it slow. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {day}, and no film noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {day}: a film of about {value_mm}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {day}: about {value_mm}, which is usually enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {day}: no film noted yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {day}: the film is still only about {value_mm}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not drink from it or use it as starter or culture. When in doubt, throw it out. If you are sure that it is clean, clear it with your reason. Where your local rules ask for more, follow them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw that batch off first, or split the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the run sheet: raw liquid goes in only when the tea is cool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a flavoured bottle a culture often does not grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From a pasteurised bottle nothing will grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fruit, juice and oils hinder the film and bring other germs along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle it gently all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heating has killed the culture. Sweet tea with dead kombucha in it goes moldy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it is one piece and clean, call it grown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has not been mixed yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is as sour and as alive as you know it to be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not known whether the bottle is raw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may carry mold: that was seen on it, or on something it shared liquid with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its yeasts and bacteria are alive; nobody can promise that they make a film.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it still, covered with cloth, out of the sun.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again in good light tomorrow. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for a bottle that says raw and unpasteurised, without fruit or juice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makers usually call it grown at {low_mm} to {high_mm}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makers usually wait for {low_mm} to {high_mm}; common practice, no rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH and look for mold. If there is still nothing by day {latest_days}, start anew with another bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold can be there before it can be seen, and its threads and poisons reach further than its patch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold is dry or fuzzy and often coloured; a young film is wet and smooth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New films are thin, smooth and pale. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pasteurised or filtered kombucha holds no living culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Perhaps the bottle was not raw, or the place is cold. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Putting it in here takes it out of there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ripe starter of your own is a good beginning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shake the bottle gently: the sediment carries much of the life.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split it first, or choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it from a jar without any mold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last look was not sure whether it is mold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This culture is at work in another vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This culture is planned for another vessel already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait if it smells and looks clean; start anew if nothing moves for a week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can call it grown all the same; handle it gently.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value_mm} is a usual thickness for a new culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value_mm} is thin for a new culture.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Cultures</name>
    <message>
        <source>1 day old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fed with {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fed with {volume} of sweet tea, {sugar} of sugar in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given to {to}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grown from starter of {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In one batch no reading was as low as pH {ph}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In {count} batches no reading was as low as pH {ph}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at: {found}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Merged from {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch has been brewed with it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now part of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put to rest in {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split from {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasted: {parts}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is too few to tell a habit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Topped up with {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>founder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>generation {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than a day old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may carry mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} after about {days} days, by the readings of one batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} after about {days} days, the median of {count} batches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} days old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} drawn off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} months old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} souring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} thrown away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} weeks old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count}: {rest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} was thrown away on {day}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stated} when last noted; perhaps {low} to {high} now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{state} in {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{taste}: {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of starter taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} – {words}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CulturesPage</name>
    <message>
        <source>Add a culture I have…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a culture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the pellicle or starter you have. If you have none, a bottle of raw, unflavoured kombucha grows one in two to three weeks: the program leads you through it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family of cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grow from raw kombucha…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grow one from raw kombucha…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left goes to a parent, right to a daughter, up and down to those beside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No culture yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{here} here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{here} here, {gone} gone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CurvePlot</name>
    <message>
        <source>Picture of the course</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CurveSpec</name>
    <message>
        <source>1 in 2 chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 in 5 chance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titratable acidity in g/L, counted as acetic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not fit the others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH over the days of the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}: do not drink below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}: to be reached by day {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read off a strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading ± uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safety limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tasting window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your taste: pH {low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayAxis</name>
    <message>
        <source>day {day}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayEdit</name>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Demo</name>
    <message>
        <source>A fuzzy spot on top: mold. All of it thrown away. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gift from somebody who had a piece of Ferry. Invented.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A raw, unflavoured bottle. Invented for the example pantry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thin, clear film all over. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thin, pale film. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An invented shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Big flask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black leaf (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought. Invented for the example pantry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dune</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier black {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier green {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier herbs {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier oolong {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier white {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elderberry juice (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Example cellar (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Example kitchen (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Example pantry (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fell off the draining board. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ferry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forgotten behind the flour and dried out. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fruit flies got under the cloth. All of it thrown away. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ginger root</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ginger root (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone like vinegar after a week in the warm. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green leaf (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grey crock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grown from a raw bottle. Invented for the example pantry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Harbour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented for the example pantry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jetty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lighthouse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Little jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marsh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oolong (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plastic test bottles (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sandbar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seed jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skerry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smooth and wet all over. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split off Lighthouse. Invented for the example pantry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steel pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Store jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swing-top bottles, half a litre (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tall jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tastes as we like it. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White sugar (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a neighbour (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, in bottles (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{place}-logger.csv (invented)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DemoPhotos</name>
    <message>
        <source>A first skin (painted, invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Painted, invented: day {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paler and even (painted, invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thick, with a ridge and a bubble (painted, invented)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DemoTrial</name>
    <message>
        <source>Black tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does green tea sour faster than black, and which is liked better?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First taster (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green or black (invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green seems quicker. Next time four jars of each. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented for the example pantry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second taster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trial is over. (Invented)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial jar {number}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskLine</name>
    <message>
        <source>Connected again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not connected to the server: what you see may be out of date, and nothing can be saved until it answers. What you have typed stays where it is.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DocumentDialog</name>
    <message>
        <source>HTML files (*.html)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as HTML</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as HTML…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} could not be written. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DotPlot</name>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DropGround</name>
    <message>
        <source>Choose pictures…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop them here from your file manager or phone folder. A picture every few days, from above in good light, shows best how the film grows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photos of {name} yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Drops</name>
    <message>
        <source> · </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A daughter of it goes into {target}; it stays where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plan is opened for {target}, with this starter in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it goes into {target}, and its culture with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both go on. Up to {most} fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle a batch, or draw it off, all or part of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles, sugar and fizz are worked out first, and the day to chill by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw all of it off…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw off part…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill bottles…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes into {target} with what it rests in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is in {target} already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not known whether {other} is cool enough yet. Measure it, and enter it on its run sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is poured to the culture that rests there. Up to {most} fit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It rests in ripe kombucha, in a vessel you choose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep starter with it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lend starter…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let {carried} work in {other}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at it closely and clear it first; when in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {carried} here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No culture rests in a vessel with room for starter. Put one to rest first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel is free for it to rest in. Add one, or draw a batch off first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour all of it in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour part of it in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour {carried} over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a culture to rest, or keep starter with one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {carried} in now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {carried} to rest…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split {carried}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The batch ends; its culture rests in the jar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The culture does not go into {other} at this step. See its run sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan takes it as its culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rest sours on. There are {most}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step on the run sheet is ticked off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing left of {carried} to pour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to put it down on here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no longer there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} ends with it; {other} goes on with both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} is a culture, not a drink. Drag its jar here to draw the batch off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} is a plan: there is nothing to pour yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} is at work. It comes to rest when its batch is drawn off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} is still being brewed. It can be poured once it is covered and sours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} is still forming. Let it grow firm before you carry it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} may carry mold. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{carried} rests already. Drag it onto a vessel to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} picked up. Arrow keys go to where it shall be put, Enter puts it down, Escape gives up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} in {target} may carry mold. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} is being brewed for another culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} is far too hot: anything live would die in it. Let it cool first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} is on its run sheet. Its starter goes in there, at its own step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} is planned with {carried} already, and there is no starter to lend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} is reckoned anew with this starter. There are {most}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} is souring in {target}. One batch at a time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{other} is still too hot for anything live. Let it cool first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{target} is full to the brim. Draw some of it off first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{target} is off the shelf. Put it back first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DueCard</name>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In one hour, at {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later  ▾</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remind me later: {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This evening, {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tomorrow, {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: {{title}}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DueList</name>
    <message>
        <source>1 is coming.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 thing is due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exit code: 0 nothing is due, 1 something is due, 2 trouble.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented pantry. {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is coming.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print what is due in your pantry, and what is coming, as the window last worked it out. Needs no display, works beside the open window, changes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something went wrong in the program; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file {path} is no pantry of this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last change to the pantry at {path} broke off. Open the window once: it puts that right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry at {path} cannot be read. Please check its rights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry at {path} is being written to. Please try again in a moment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry at {path} is damaged. Open the window: it offers the latest backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry at {path} was last used by a newer version. Please install that version.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry at {path} was last used by an older version. Open the window once: it brings the pantry up to date, after a backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry named by {path} lies on a server, and the part of the program that speaks with servers is not installed: install “brewdesk[desks]”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The server named by {path} does not answer, or does not let this desk in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no pantry at {path}. Open the window once, and it makes one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>everything is kept below this folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave out what is only coming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print JSON instead of columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print under each line what to do and to mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read the invented pantry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read this pantry file instead of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} are coming.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} things are due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{title} ({span} late)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DuePage</name>
    <message>
        <source>Add a reminder of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that is due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a calendar file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coming days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export the due list as a calendar file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is due. Reminders appear here by themselves once a batch is souring: to check its pH, to look for mold, and to taste it. You can add your own below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notices do not reach your desktop at present: look here, and listen for the chime.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DueStrip</name>
    <message>
        <source>Nothing is due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chill {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drink up {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feed {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>film on {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look for mold on {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open one of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>press {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taste {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top up {jar}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EditTrialDialog</name>
    <message>
        <source>Change {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you want to know</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EffectRow</name>
    <message>
        <source>{outcome}: {second} against {first}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EmptyShelf</name>
    <message>
        <source>Add your first vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at an invented pantry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put up the first jar you want to brew in. A name and how much it holds are enough; the rest can wait.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shelf is empty</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EndDialog</name>
    <message>
        <source>An accident</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard {name}?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw a batch off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw {name} off?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {name} up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your own words (optional)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It smells or tastes wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its batches go on as any others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep back enough of it as starter for the next jar, and chill what you drink. It holds some alcohol; how much is allowed to be given away is for local rules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it going</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left with the culture, as its liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold: fuzzy, dry or coloured spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sour enough in time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The codes are opened with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The culture {culture} is marked as lost with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under suspicion, since they shared liquid with it: {names}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you conclude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With mold, everything goes: liquid, culture and cloth. Mold cannot be scooped off safely; when in doubt, throw it out. Wash and sanitise the vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{drawn} are drawn off, {kept} stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{reason} – {words}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExportDialog</name>
    <message>
        <source>Choose where…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything in this pantry goes into one file: vessels, cultures, batches, bottlings, readings, temperatures, the whole history, settings and photos, as open text that other programs can read and as tables for spreadsheets. What is in it is written down inside. The pantry itself stays as it is.

Photos go along unchanged, with whatever the camera wrote into them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exports of a pantry (*{ending})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Exports</name>
    <message>
        <source>A newer version of the program made this export. Please bring it in with that version.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A photo that an entry names is not in the archive. Nothing was brought in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acts in the history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An entry breaks a rule of the pantry ({where}). Nothing was brought in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottlings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be written there. Please choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {file}: {rows} rows and {photos} photos, {size}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something stands there already, and nothing is ever written over. Please choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Nothing was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tells of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk has not enough room. Nothing was kept; please free some space.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file of one photo is missing or damaged; its entry is there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The files of {count} photos are missing or damaged; their entries are there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new pantry is at {path}: {rows} rows and {photos} photos, all proven.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such folder. Please choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This archive holds what no export holds ({where}). Nothing was brought in; it may have been made to do harm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This archive is larger than any export can be. Nothing was brought in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This export is damaged, as after a copy that broke off ({where}). Nothing was brought in; please use another copy of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file cannot be opened. Please check that it is still there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is no export of a pantry. Please choose another file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk {version}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the archive as a whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} ({size})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{entry}, line {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FamilyView</name>
    <message>
        <source>May carry mold</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FeedDialog</name>
    <message>
        <source>Feed {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold first. Pour in a little fresh sweet tea that has cooled to {limit} or below; hot tea kills the culture. Take some of the old liquid out if the jar gets too full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note the feeding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweet tea</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Films</name>
    <message>
        <source>A first film was to be expected by {day}. If there is none, see that the jar stands warm and under a cloth that lets air in, and that the kombucha it began from was raw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected film: about {mm} mm by {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected film: up to {high} mm by {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expected film: {low} to {high} mm by {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First film expected about {day} ({low} to {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{expected} Without one by {late}, something probably holds it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindsList</name>
    <message>
        <source>What was found</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FindsModel</name>
    <message>
        <source>Found</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FizzPlot</name>
    <message>
        <source>Pressure by day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days in the bottle</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Forecasts</name>
    <message>
        <source>A culture grows in this jar: it is to keep, not to drink, so there is no tasting window. The curve shows how sour its liquid is reckoned to become. Measure it, and look for mold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going by your tastings its sourness and its sweetness may never be right for you at once, so these days go by sourness alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gravity {value}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much acid the starter holds is assumed; a reading makes this sharper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has probably been {how} for you since {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is {chance} that pH {ph} is reached by day {day}; only a reading shows whether it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It rests on the recipe alone until there is a reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It will be sour enough before that, but probably still too sweet for you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It will probably be {how} for you after {day} (between {low} and {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It will probably be {how} for you after {day}, perhaps from {low} on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It will probably not be sour enough for you within {days} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its temperature, vessel or age lies beyond the published courses, so trust it less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No forecast can be made from this batch&apos;s amounts and readings. Please look whether one of them was mistyped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several readings do not fit the others; please measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chance that pH {ph} is reached by day {day} is about {percent} %; only a reading shows whether it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The forecast is being worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings are like no known course, so the bands are wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tasting of {day} does not fit the other readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tasting window has probably been open since {day} (4 in 5 chance that it opened between {low} and {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worth tasting from about {day} (4 in 5 chance that it begins between {low} and {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worth tasting from about {day}; it may begin on {low}, or much later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not fit the other readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardly sweet enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is hardly possible for kombucha</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is less sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is less sweet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is more sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is sweeter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {value}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very unlikely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} ({method}), {day} at {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{how} than the other readings let expect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{how} than the readings before and after it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} °Bx</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} ± {sd}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} of {day} {why}: look for a slip, or measure again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GiveDialog</name>
    <message>
        <source>Give it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it with enough sour liquid to cover it, and only if you saw no mold. To keep one yourself, split it first and give the daughter away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {name} away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then print a hand-over card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To whom (optional)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GrowDialog</name>
    <message>
        <source>A bottle, not known whether raw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pasteurised bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A raw bottle with fruit or flavour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A raw bottle, unflavoured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grow a culture from raw kombucha</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its pH, if you know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the new culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel is free. Put another on the shelf first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw kombucha in fresh sweet tea grows a film of its own in two to three weeks, kept warm, still and under cloth. Usual is about {raw} in {tea} of sweet tea.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw liquid from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Raw liquid in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter of a culture of mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which one, in your words (optional)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{water} of water, {tea} of tea, {sugar} of sugar, {raw} of raw liquid. It is reckoned to start at about pH {ph} ({low} to {high}): measure it. The run sheet leads through it and keeps the raw liquid out of hot tea.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GrowLookDialog</name>
    <message>
        <source>Thickness of the film</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no film yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GrowPanel</name>
    <message>
        <source>Film expected from {first} to {last}, solid from {solid} to {latest}; assumed for about 25 °C.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Film first noted on day {day}; {mm} mm at the last look.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go and mix it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has grown…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the jar</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GrownDialog</name>
    <message>
        <source>Call it grown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It then rests in the liquid it grew in, which is its first starter. Call it grown when the film is one solid piece, without mold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness of the pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has grown</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HandOver</name>
    <message>
        <source>A batch must be at pH {most} or below by day {day}; otherwise discard it. Measure it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry, fuzzy or coloured spots on top are signs of mold: then throw out all of it, culture and liquid. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every {days} days or so, pour in some sweet tea: {tea} of tea and {sugar} of sugar in {volume} of water, cooled to {limit} or below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed it, or brew with it, by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Home-made kombucha is alive and holds acid and some alcohol. Whoever is pregnant, ill or weak, and whoever cares for small children, should ask a doctor first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If it dries up, top it up with ripe, unflavoured kombucha.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it at room temperature, out of the sun, away from smoke and from fruit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it covered by its sour liquid, in glass, under a tightly woven cloth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen experience, not a guarantee. Local rules and advice come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kombucha culture, handed over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rests in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line goes back further.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To brew, use its liquid as starter, at least a tenth of the whole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ripe kombucha that covers it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {origin}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{origin}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} of ripe kombucha</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HandOverDialog</name>
    <message>
        <source>Card A5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card A6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand-over card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the card as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the card</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HistoryFilters</name>
    <message>
        <source>Any culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From … to …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of thing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage of the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last 12 months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last 30 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last 7 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HistoryPage</name>
    <message>
        <source>Clear filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find batches, jars, cultures, notes, anything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking through your records…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words to find</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HistoryPane</name>
    <message>
        <source>Choose something on the left: all that happened to it is told here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show in Cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show its jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show older lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time line and records</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportDialog</name>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An export becomes a new pantry in a file of its own. The pantry that is open now stays as it is. Every entry is proven first: if anything is wrong, nothing is brought in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring in an export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring it in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose an export…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exports of a pantry (*{ending})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No file chosen yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it in a window of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pantries (*{ending})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry is invented, to look at only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the new pantry is to be</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Inside</name>
    <message>
        <source>lower</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JarPhotos</name>
    <message>
        <source>Discard it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not looked at yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is mold, what is not: a guide with drawings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked at {when}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JarSheet</name>
    <message>
        <source>Add a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All about this jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry the batch to…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry the culture to…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the plan…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear it of suspicion…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it off…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the plan up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is already in the jar…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More for this jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print a label…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the run sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retire the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the batch&apos;s history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the jar&apos;s history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start brewing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH –</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since {when}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JournalModel</name>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JournalView</name>
    <message>
        <source>Journal, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has been written down yet. Whatever you do with this batch will be.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeepCalibration</name>
    <message>
        <source>Keep this calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept for {meter}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last kept: {meter}, {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None is kept yet. From then on the next one is asked for in time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH meter</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabelPicker</name>
    <message>
        <source>1 label in all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles filled lately are ticked for you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find by name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what is to get a label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Untick all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What sours now is ticked for you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} labels in all.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabelPicks</name>
    <message>
        <source>Copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabelPreview</name>
    <message>
        <source>Next page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page {page} of {pages}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview of the labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabelSheetBox</name>
    <message>
        <source>As it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click where the first label goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the outline of each label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Like {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measures of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print a test page…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printers shift and stretch a little. The test page, on plain paper, shows how much; Change… takes the correction. Print without “fit to page”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet or roll</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabelWords</name>
    <message>
        <source>As suits each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to what is recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ticks count for all labels, words for the one chosen above. The label says what you and your records say; it does not say that a drink is safe. Where you give or sell it, follow your local rules on labels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You know; the program does not</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Labels</name>
    <message>
        <source>, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 bottle · {state}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alive; contains some alcohol and caffeine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergens: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best before {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both lines are 100 mm long if the printer prints true to size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill by {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contains some alcohol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents under pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents under pressure. Chill before opening; do not shake.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not use: may share mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed by {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap between columns, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap between rows, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Growing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of a label, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of the paper, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredients: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented black tea 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented culture at rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented ginger 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep refrigerated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep refrigerated, at {limit} or below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left edge to the first label, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length of a label, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move everything down, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move everything right, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please give the sheet a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please keep the name shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>QR code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Radius of the corners, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resting jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roll, {width} mm wide, labels {length} mm long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Souring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste from {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test page. Hold it behind a sheet of labels against the light: the frames are where the labels will be, with your corrections. The rulers are printed without any.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ruler across measures, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ruler down measures, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are {high} sheets already. Remove one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This must lie between {low} and {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Together the labels and gaps are {value} mm high; the paper leaves {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Together the labels and gaps are {value} mm wide; the paper leaves {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>True to size, the line across is {across} mm long and the line down {down} mm. Multiply what you measure by {times_across} and {times_down}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper edge to the first label, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water, live kombucha culture, sugar, black tea, ginger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of a label, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the paper, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the roll, mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>black tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>herbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>live kombucha culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none known to its invented maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oolong tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bottles · {state}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day}, {hour}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} · {stage}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: the QR code is left out. It would be too small to be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{field}” is cut short. It does not fit on this label.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{field}” is left out. There is no room for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: “{field}” is longer than any label and was cut short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{paper}, {columns} × {rows}, {width} × {height} mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LabelsPage</name>
    <message>
        <source>Add a vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {count} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is ticked yet. These are samples with invented words; they are not printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to label yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once there is a jar, a batch or a culture, this page prints labels for it: with its dates, your own words and a code with its record&apos;s own number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the labels as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer does not have the paper of this sheet. Choose another printer, or the labels will be in the wrong place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is labelled, its words, and the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} could not be written. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LeaveOutDialog</name>
    <message>
        <source>It counts in no result then; the reason stands in the report. Leave out what went wrong, such as mold or a spill, never what came out unexpectedly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave {code} out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LiquidEntries</name>
    <message>
        <source>Draw off part of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw off part…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep starter back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep starter of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour over into another vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour together with another batch…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour {name} into another batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour {name} over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top up…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Liquids</name>
    <message>
        <source>A batch cannot be poured into itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another culture has this name already. Please choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is in this vessel already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than half of the jar would be fresh tea.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a batch that is souring can take in another one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a batch that is souring has liquid to draw, pour or lend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a culture that rests in liquid of its own can lend starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please give an amount of at least a drop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in less, or draw some off first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in less, or let it sour for longer first, and measure after mixing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in less, or plan a new batch with this one as its starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poured into {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So much at once thins the acid that protects it; {share} is as good as a new batch. That half is a cautious mark; common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter can be lent to a plan or an empty vessel; this batch has been begun.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter can only be kept where a culture rests in a vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That does not fit: there is room for {high} to the brim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is more than there is: {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That makes {fill_l}, more than the {working_l} you usually fill in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That would empty the jar: there are {high}. To take all of it, draw the batch off or pour it over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The culture needs air above it, and room to rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cultures join only if all of the batch is poured over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful germs can grow in sweet tea.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no two different cultures at work in these jars.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no culture in this jar to keep it with. Lend it to a plan instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This liquid may carry mold. It goes nowhere but down the drain, until you have looked and cleared it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To fill this vessel again you would need {volume} of starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With this much fresh tea its pH may rise above {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{plan}, which is planned next, wants {volume} of starter.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LocationDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the camera data out?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save without it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoggerChoices</name>
    <message>
        <source>&amp;Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns are parted by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the file is written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters are written as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;emperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logger&apos;s &amp;clock shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of &amp;day, if apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your own time without summer time ({zone})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoggerDialog</name>
    <message>
        <source>Choose the logger&apos;s file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the table that your temperature logger exported: text with a time and a temperature in each row. How it is written is found out, and shown before anything is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the file has been read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read a logger&apos;s file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read a logger&apos;s file for {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows left out ({count}), the first of them:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rows that could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoggerTable</name>
    <message>
        <source>Read as temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read as time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first rows of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day or month first?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Loggers</name>
    <message>
        <source>Line {line}: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {line}: {why} ({text})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No table of times and temperatures was found in this file. Please choose the logger&apos;s export as text (CSV).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not one row could be read this way. Please check the columns and the dates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One row could not be read and is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped. Nothing was kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dates can be read in two ways. Please say whether the day or the month comes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file cannot be opened. Please check that it is still there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file has more than ten million rows. Please export a shorter time from the logger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is empty. Please export it from the logger once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times that came more than once count once: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times that summer time leaves out: {count}. They were moved on by the missing hour; perhaps the logger&apos;s clock does not follow summer time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times that the end of summer time repeats: {count}. The order of the rows says which is which.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no room is that cold or warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row has too few columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the temperature is no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the temperature is no number that can be measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time is still to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such time of day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} rows could not be read and are left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} temperatures from {first} to {last}, between {least} and {most}, on average {mean}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookBack</name>
    <message>
        <source> (right: {low} to {high} % as a rule)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, too few</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 loss is written down, with its reason below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; too few to say how it is as a rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Age of culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between {first} and {second} no difference shows: {first} may be anything from {fast} days faster to {slow} days slower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles were vented once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles were vented {count} times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture {band} months old</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For the next one, {days} days is the better guess.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Founder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Generation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Generation {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of {batches} has come {what} yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of {batches} is drawn off yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not counted: {parts}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of {count} bottles opened {right} were right, {under} too flat, {over} gushed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of {count} tastings {right} were just right, {under} too sweet, {over} too sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part of it may be warmth: {cool} stood {degrees} cooler than {warm}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter {band}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is too few to call it a difference: it takes {count} batches of each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is too few to say what the next one will take.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The median of many such batches lies above {low} ({percent} % sure).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The median of many such batches lies between {low} and {high} days ({percent} % sure).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few to say more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether {first} and {second} differ cannot be said yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your batches took {spread} {what}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardly any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than {days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none there, of {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not there after {days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over {days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until drawn off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batches} begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batches} in all: {parts}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{celsius} as usual there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} drawn off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} losses are written down, with their reasons below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} more not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} not drawn off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} perhaps that sour from the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} still souring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} thrown away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} without readings that tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} days, read between day {early} and day {late}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} and more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{middle} · {batches}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{month}: {parts}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} took {spread} {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} {spread}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: no batch tells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: none of {batches} is there yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {spread}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{slow} took longer than {fast}, by about {middle} days ({low} to {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{slow} took longer than {fast}, by {low} days at least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} drunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume} were drunk or given away.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookBackFilters</name>
    <message>
        <source>Any culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From … to …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side by side by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last 12 months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last 3 months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last 6 months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookBackPage</name>
    <message>
        <source>Clear filters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days {what}, by {factor}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each dot is a batch; an open one is not there, or ended before. The line is the median, the band where the median of many such batches lies (nine times in ten; from five batches on). The diamond is the better guess for the next one: a small group&apos;s mean drawn towards that of all. Groups stand in no order of merit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gushed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How bottles opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it tasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Just right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking through your records…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Months</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch has readings that tell these days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch that has soured is like that: {filters}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to look back at yet.

When your first batch sours and its pH is read a few times, its days appear here. Tastings, opened bottles, months and losses join as you note them. With five batches of a kind the page says how sure it is of their pace, and with five of two kinds whether they differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press a dot, or walk with the arrows, to meet its batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print or save…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea, culture, place and season change together in a pantry. What stands side by side here shows what was, not what it came from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too sweet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookBackReport</name>
    <message>
        <source>All batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days {what}, by {factor}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each dot is a batch; a hollow one is not there, or ended before. The line is the median, the band where the median of many such batches lies (nine times in ten; from five batches on). Groups stand in no order of merit. Tea, culture, place and season change together: this shows what was, not what it came from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean warmth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Median days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Median lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month by month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page {page} of {pages}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What usually helps (common practice, no source)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk – what was noted, as far as its numbers carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over {low}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too few</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cause}: {help}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{right} of {count}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookBackRows</name>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk, {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mean {unit}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookChecklist</name>
    <message>
        <source>Belongs to a healthy brew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look in good light, from above and from the side, without stirring. Never taste to find out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs of mold: all of it goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick everything you see.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LookDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your own words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In your own words (optional)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record it and discard…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record this look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What do you see on {name}?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you see</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Looks</name>
    <message>
        <source>A dull patch like flour or felt, where all around it is wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pale or tan skin, glossy, under or at the surface of the liquid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A young film over an old one, gaps, ridges, a pale new patch: wet all over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brown strings hanging</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bubbles under it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear or cloudy, with nothing on top: usual in the first days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coloured, or like white powder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard all of it: drink, culture and cloth. Do not scoop it off, do not taste it, and keep no starter from it. Wash and sanitise the vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discarding everything at any mold: Niagara Region (Ontario), kombucha best practices. How a healthy film looks: common practice, no source. Your local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: a dry cushion on top of the wet film.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: a question mark on the film.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: a thin new film above an uneven old one with a hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: an even, glossy film on the liquid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: brown threads hanging from the film into the liquid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: bubbles below a film that they lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: liquid without a film.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: the film from above with spots in several colours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing: tufts of hair standing on the film.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry, standing above the liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fine hairs or a velvety patch, mostly round, on top of the film.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuzzy or hairy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas of the yeast lifts the film or makes domes in it; they are wet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green, blue, black, pink or orange spots, or a white powder, seen from above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I am not sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the jar apart, use nothing from it for another, and look again tomorrow; you will be reminded. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold was seen on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New layers, holes, uneven thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not clear yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing suspicious seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only liquid, no film yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no proof: mold can begin out of sight. Go on looking, and when in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This looks like mold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet and smooth, of the colour of the tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yeast: soft brown threads or clouds below the film, always in the liquid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You see something that you cannot place. A day tells: mold grows, a film thickens.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoseDialog</name>
    <message>
        <source>It had mold, or may have had</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark it as lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing else is put under suspicion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is known to have shared liquid with it since it was clean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With mold everything goes: pellicle, liquid and cloth. Wash the vessel with hot water and soap. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} shared liquid with it and come under suspicion. Look at each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} shared liquid with it and comes under suspicion. Look at it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is lost</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LossList</name>
    <message>
        <source>Common practice, no source. The causes are read from your own words; what they do not name is left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reason was written down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the history: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all {count} losses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What usually helps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cause}: {help}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Losses</name>
    <message>
        <source>1 bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A close-woven cloth under a tight band; paper or cheesecloth lets fruit flies in. With maggots in it, the batch and its culture go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin to taste earlier, most of all in warm months, or stand the jar cooler. What is too sour to drink still makes strong starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle with less sugar, use bottles made for pressure, keep a soft test bottle, and chill them by the day the forecast names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Broken or spilt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dried out or forgotten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at water and tea first: scented or oily teas and chlorine disturb a culture. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resting cultures want liquid and a little sweet tea now and then; the reminders for feeding and topping up can be set in the settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smell or taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Throw all of it away, liquid, culture and cloth, and clean the jar with boiling water. Next time begin sour enough (more or sourer starter), wet the top of the culture with starter, cover the jar at once, and keep it warm enough to sour within days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too much pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm glass before hot tea goes in, carry full jars with both hands under them, and stand bottles in a box that would hold the splinters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bottles</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LotDialog</name>
    <message>
        <source>A purchase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct a purchase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the purchase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known; in {currency}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo: {act}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo: {act}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backed up to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented pantry – brewdesk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is off the shelf. Pantry &gt; Retired vessels puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save what is open as a copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something went wrong in the program ({what}). What was saved before is safe; the log file holds the details.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock is right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The computer&apos;s clock is earlier than your newest record. Reminders wait until it is right again; nothing is lost.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Measures</name>
    <message>
        <source>Cold water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet leaves, lifted out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} cup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} cups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} tablespoon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} tablespoons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} teaspoon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} teaspoons</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MergeDialog</name>
    <message>
        <source>Merge it with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Merge them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Merge {name} with others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the new culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no other culture here to merge it with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They become one new culture and are themselves retired. If one of them carries mold, all of it will: look at each first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it rests</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MoveDialog</name>
    <message>
        <source>Move it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it rests in goes along. Into a batch it goes by planning one.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MovingStore</name>
    <message>
        <source>Copy a pantry, with its photos, from its file into an empty database on a PostgreSQL server, or back into a new file. Every row is compared afterwards. What was copied stays where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exit codes: 0 all of it arrived, 2 nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One side has to be a file and the other a server, whose address may stand in {variable}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start brewdesk without {variable}. The server&apos;s pantry stays as it was, and is now out of date: close the other desks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start every desk with {variable} set. The file stays as it was, and is now out of date: put it aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The records arrived, but a photo could not be read or written. Please look whether the disk has room and the photos&apos; folder may be read, remove what was made, and start again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry is open in a window. Please close it first; nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new file, an address like postgresql+psycopg://name@host/database, or the word “server” for the address in {variable}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the same, for what is copied; without it your own pantry, or the address in {variable}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where your own pantry is looked for, and the identity of this desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{missing} photos were missing before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{rows} rows and {photos} photos arrived and are the same as before.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoteDialog</name>
    <message>
        <source>Keep the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note on {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoticeBar</name>
    <message>
        <source>Dismiss</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Outlook</name>
    <message>
        <source>1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A Brix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gravity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tasting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A titration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {days} earlier than forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {days} later than forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As if it had begun so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimate for now: {parts}; only a laboratory can certify.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardly different from the forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since yesterday the window has moved earlier: {new} instead of {old}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since yesterday the window has moved later: {new} instead of {old}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since yesterday: no longer expected within {days} days; before, about {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since yesterday: sour enough about {day}; before, not within {days} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since yesterday: still about {day}, but surer by {days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if (dashed): from about {day} ({low} to {high}) to about {end}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if (dashed): from about {day} ({low} to {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if (dashed): probably not sour enough for you within {days} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alcohol {mid} % vol (perhaps {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alcohol {mid} % vol ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sugar {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} on {day} would narrow the window by about {days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} today would narrow the window by about {days}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OwnReminderForm</name>
    <message>
        <source>Add the reminder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose a time that is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remind me to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wash the cloths, buy sugar …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no jar in particular</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Palate</name>
    <message>
        <source>1 tasting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardly sweet enough below about {driest} of sugar; the sugar is reckoned, so only what is surely below this narrows a window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In force after {count}: pH {first} down to {sour}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sip was too sour so far, so the lower end is a guess.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sip was too sweet so far, so the upper end is a guess.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is learnt yet: the two pH above hold. Enter a tasting with your readings, best with a pH of the same hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One tasting was read from the words of a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So few move it little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They contradict one another, so the band stays wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too sweet from about {sweetest} of sugar, hardly sweet enough below about {driest}; the sugar is reckoned, so only what is surely beyond this narrows a window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too sweet from about {sweetest} of sugar; the sugar is reckoned, so only what is surely above this narrows a window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read as: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too sweet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mid} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} tastings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} tastings were read from the words of notes.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaperDialog</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The page as it will be printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} could not be written. Choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastDialog</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is over; this is what was read until it ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neither pH nor acidity was read of this batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch has ended yet. Once one is drawn off or discarded, it is kept here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past batches, the last one first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Records of this batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begun {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{how} {date}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhDialog</name>
    <message>
        <source>Measured with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note the pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhScale</name>
    <message>
        <source>No start pH yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by day {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least to drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most to start at</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoCopies</name>
    <message>
        <source>Copied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved a copy: {path}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoPane</name>
    <message>
        <source>Loading…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Newer photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Older photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo, {said}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} of {all}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoStrip</name>
    <message>
        <source>Add photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add photos…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Adding…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caption and date…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let go to add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More for this photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos, the newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures ({endings})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a copy as it is…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save a copy without camera data…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken out. Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no picture on the clipboard.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoViewer</name>
    <message>
        <source>+</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 day between them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both of the same day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show every pixel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{n} days between them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>−</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhotoWordsDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caption</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caption and date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read from the camera or the file. Put it right if the clock was wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is to be seen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Photos</name>
    <message>
        <source>Cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has more than {count} million pixels; please make it smaller first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is larger than {size} MB; please make it smaller first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not a picture this program reads (JPEG, PNG, WebP, GIF, BMP or TIFF).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No more than {count} are added at once; please add the rest again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not added either: {count} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not added: “{name}”. {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One photo added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One was here already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo of {name}, {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved a copy without camera data: {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy could not be written there. Please choose another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk did not answer as it should. Please try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk is full. Please free some space and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file is not there, or not on this computer; please save it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file may not be read; please check its rights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder of the photos may not be written to. Please check its rights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo&apos;s file cannot be read. Please check the rights of the folder beside the pantry file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo&apos;s file is no longer in its place beside the pantry file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo&apos;s file is no longer in its place beside the pantry file. If you have the picture elsewhere, add it again: it finds its place by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo&apos;s file is no longer what was kept: it was changed or damaged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The photo&apos;s file is no longer what was kept: it was changed or damaged. If you have the picture elsewhere, add it again: it finds its place by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The picture breaks off or cannot be read; please copy it anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file says where it was taken. It stays in the file if you give it away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} photos added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} were here already.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceButton</name>
    <message>
        <source>Change the places and how warm they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places: {places}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceChart</name>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was read or logged in this time. Enter a temperature below, or read a logger&apos;s file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature in {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the place over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course in words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same is said in words below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a souring jar likes {low} to {high} {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>liked by a souring jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowest to highest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of an hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of {count} hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read by you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set as usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{when} · {mean} {unit} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{when} · {value} {unit}, read by you</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceDialog</name>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Usual temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches planned for this place take its usual temperature. What is read or logged here, and what you read on a batch, counts more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please give it a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save place</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceEntries</name>
    <message>
        <source>Take it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature or file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures and files of this place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was read and logged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceReadingForm</name>
    <message>
        <source>&amp;Read at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Temperature now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type a temperature.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlaceSheet</name>
    <message>
        <source>Edit {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read a logger&apos;s file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it over</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Places</name>
    <message>
        <source>By common practice a souring jar likes {low} to {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the log of the last 30 days it was {mean} on average (days with a temperature: {days}). Set as usual is {usual}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {first} to {last} it was {low} to {high}, on average {mean}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here stand: {names}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was read or logged in this time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usually {temperature}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usually {temperature}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature} · 1 vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature} · no vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature} · {count} vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{usual} Last logged {temperature}, {when}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{usual} Last read {temperature}, {when}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlacesDialog</name>
    <message>
        <source>Add a place…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No place yet. Add the pantry, kitchen or cellar where your vessels stand: how warm it is there decides how fast a batch sours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where your vessels stand</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanFacts</name>
    <message>
        <source>Cold water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inner diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {ph}, likely {low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass} ({strength} of sweet tea)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass} of {kind} (about {bags} bags of {bag})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{shape}, {material}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanForm</name>
    <message>
        <source>Culture and starter liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exact: water, temperatures, own amounts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the batch a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not tasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} – {volume}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanPage</name>
    <message>
        <source>A batch needs something to stand in. A name and a volume are enough; everything else is filled in for you and can be changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An empty jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As soon as there is a vessel, what to weigh out stands here: water, tea, sugar and starter, to the gram.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the plan of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every vessel is in use. Add one, or end a batch first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First, a vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the plan as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not up to date: see the marked field.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan and start brewing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print run sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save and start brewing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for the marked field.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanStores</name>
    <message>
        <source>Not from the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea from</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PowerDialog</name>
    <message>
        <source>Compared by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference that matters to you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference that matters to you, {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From 2 to 1000 jars of each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far like jars lie apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far like jars lie apart, {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many jars does it take to be sure?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many jars?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars of each at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type a number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PreviewTable</name>
    <message>
        <source>Column {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{date}, {time}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PrintLabels</name>
    <message>
        <source>Test page</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Problems</name>
    <message>
        <source>A culture cannot be older than its parent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A shared pantry needs the part of the program that speaks with servers, and it is not installed. Please install “brewdesk[desks]” and start again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vessel of this volume cannot have this diameter. Please check both, and their units.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another culture rests in this vessel. Move it first, or choose another vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another desk changed {thing} a moment ago, so nothing was saved. Please look at what it is now, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another one has this name already. Please choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another program is using the pantry file, so nothing was saved. Please close it and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brewing has begun, so the plan stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose at least one other culture to merge with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not at rest now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not under suspicion.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is planned for {value}. Change or drop that plan first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is still forming. Wait until it has grown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may carry mold. Look at it closely and clear it first, with your reason; when in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neither starter nor culture is in yet. Tick that step off first, then cover the vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No backup could be made, so nothing was changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No culture is growing in this batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be read out of the damaged file any more. It was left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a batch that is souring can be drawn off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a batch that was drawn off can be closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose a time that is still to come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose one of those offered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please enter at least one reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please fill this in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please give it a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please keep it shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type an amount.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please write down why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please write something.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings of several batches are kept one by one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retired vessels belong here. Put them back on the shelf and give them another place first, then remove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That does not fit: the vessel holds {high} to the brim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The Brix reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The address of the shared pantry cannot be read. It begins with “postgresql+psycopg://” and names a database. Please put it right and start again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The alkalinity of the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount it rests in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount kept back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount of starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount to make</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The database of the shared pantry does not keep text as UTF-8, so it would lose letters. Nothing was changed. Please make a database with that encoding.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The desk “{desk}” changed {thing} a moment ago, so nothing was saved. Please look at what it is now, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk did not answer as it should, so nothing was saved. Please make sure that it is still connected, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk is full, so nothing was saved. Please free some space and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The extra time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The inner diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH at which you first taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH for first tasting must be above the pH that is too sour for you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH of the starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH that is too sour for you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH to start at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry could not be brought up to this version of the program. It was left as it was; a backup lies beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry file cannot be opened. Please check that it is in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry file could not be used, so nothing was saved. Please try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry file is damaged and was left as it is. Your jars are not affected; please open the latest backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry file is empty, as after a copy that broke off. Please open the latest backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry file is no longer in its place, so nothing was saved. Please put it back, or open the latest backup.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry file may not be written to, so nothing was saved. Please check the rights of its folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pantry file was replaced by another while the program was open, so nothing was saved. Please close the program and start it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same temperatures are in this place&apos;s log already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The server with your pantry does not answer, so nothing was saved. Please make sure that it is running and that this computer reaches it, and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The server with your pantry does not let this desk in: the name, the password, the database or its rights are not as the server has them. Nothing was saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shared pantry was laid out by an older version that this one cannot bring up to date. It was left as it is. Please move it to a file with the older version, and back to the server with this one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The size of the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The specific gravity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tea in one bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of the cold water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of the hot water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The thickness of the pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The titratable acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The titratable acidity of the starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The uncertainty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unit “{part}” is not known here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The volume to the brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The warmest temperature for the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The working volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are {low} in it now, so it must hold at least that much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a batch in this vessel already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a culture in this vessel. Move it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a pantry already where this one was to go. Nothing was changed there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no number in “{text}”. Type it as in “3.8 L” or “3 1/2 cups”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no pantry in this database yet, so there is nothing to move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no temperature in this file that can be read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This batch has ended already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This batch is not being brewed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This batch is only planned; there is nothing to see of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be measured that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be taken back any more, because something it touched has changed since.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This culture is no longer there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This does not fit with what is kept already, so nothing was saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This entry is no longer there. It may have been taken back meanwhile.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is not a pantry of this program. It was left as it is. Please choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is before the batch was begun. Please check the date and time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is before the culture was born. Please check the date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a number that can be measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This name is too long for a label. Please shorten it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry was last used by a newer version of the program. Nothing in it was touched. Please install the newer version to open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step is done already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step is not paused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step is not under way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step was begun already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This time has not come yet. Please check the date and time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This vessel is off the shelf. Put it back first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This vessel&apos;s material must not touch kombucha. Please choose another vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels stand here. Give them another place first (Edit vessel), then remove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>these bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this reminder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what this is about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label} cannot be that. Please check it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label} must be at least {low}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label} must be at most {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label} must lie between {low} and {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” can be read in more than one way. Type the number without grouping, as in “1500” or “1.5”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is a unit of something else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is not a number that can be measured.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProcessLog</name>
    <message>
        <source>At</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch or culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches under way in this time, when their pH was first read at or below {limit} (wanted by day {day}, counted from the starter), calibrations of the meter, warnings that were overridden with the reason given, looks and discards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buffers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day to pH {limit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the maker&apos;s words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Invented data, to look at only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looks and suspicions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made from the maker&apos;s own entries; brewdesk cannot check them, and entries can be corrected later. Local rules and licensed practice come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No batch was under way in this time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No calibration is entered for this time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No look is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No warning was overridden.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was discarded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page {page} of {pages}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Process log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH: read within a day of the start. Day to pH {limit}: the day of the first reading that shows it; it may have been earlier. “Not shown” means that no reading shows it. ± is one standard uncertainty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict, words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel, culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warnings overridden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH read then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{how} {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} mV</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProcessLogDialog</name>
    <message>
        <source>&amp;From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Process log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first day is after the last. Please change one of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The log lists the batches of a span of time with their start pH and the day they were first read at or below pH 4.2, calibrations, overridden warnings with your reasons, looks and discards. It shows what was entered, no more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Program</name>
    <message>
        <source>A reminder will look like this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you can read this, notices reach your desktop.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgressDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QuantityEdit</name>
    <message>
        <source>= {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use {units}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QuestionForm</name>
    <message>
        <source>Begin these entries anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may stay empty</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>QuestionList</name>
    <message>
        <source>Find a question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No question holds these words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RangeBar</name>
    <message>
        <source>{ends}, {how}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct a reading: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingFields</name>
    <message>
        <source>Guide…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold with a guide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar measured as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titratable acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you saw, smelled or did</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>e.g. {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>p&amp;H</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH taken with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°Bx</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingForm</name>
    <message>
        <source>Change it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Enter saves from any field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is filled in yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save anyway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stays at this time until you press Now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingPhotosDialog</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos of a reading</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsChoices</name>
    <message>
        <source>&amp;Date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Letters are written as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns are &amp;parted by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The times are &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of da&amp;y, if apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in the table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsFile</name>
    <message>
        <source>Already there at the same time, and skipped: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {line}, {column}: {why} ({text})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than 2000 readings at once are too many. Please split the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New readings: {count}, from {first} to {last}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No table with a date and a number in each row was found in this file. Please save the table as CSV and choose that file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not one value could be read this way. Please check the columns and the dates.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing new is in this file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One reading on {vessel} from {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This file is empty. Please save the table as CSV once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times that summer time leaves out, moved on by an hour: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times that the end of summer time repeats: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Twice in the file at the same time, the first one counts: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is more than a day before the batch began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reading is that low or high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the note is too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time is still to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is no amount that can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} readings on {vessel} from {file}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsFileDialog</name>
    <message>
        <source>Choose a table with a date and readings in each row, saved from your spreadsheet as CSV. You see how it is understood before anything is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read in readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read in readings of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was left out, and why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsModel</name>
    <message>
        <source>Taken with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{words} ({read_as})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsTable</name>
    <message>
        <source>Read as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read as time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first rows, as they are understood</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReadingsView</name>
    <message>
        <source>Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No readings yet. Enter the first one above.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photos…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings, newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Reckoner</name>
    <message>
        <source>15 percent volume share liquid alkalinity hardness water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 times in 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bottle holds to the brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bottle in the shop costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A brew is not quite the liquid that the formula was made for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A calibration liquid shows its printed pH at one temperature only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A gauge bottle among the others, held against what the bottles may be under.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A glass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A higher mark must hold more than the one below it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A litre costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A litre is taken for a kilogram of water. Sugar is no acid and takes no part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading while it sours, held against the day by which it has to be sour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A refractometer shows {brix} more than there is sugar. A minus sign on the hydrometer means that it shows too little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A thermometer decides, not this: measure before the culture goes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A verdict never says that a drink is safe. Where your local rules ask for more, follow them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A volume in cups and spoons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A weight of white sugar as a kitchen without scales has it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ATC automatic cold warm sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About 2 g a bag is common practice; weigh ten of yours and divide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {ice}; for a little warmer or colder it takes {ice_low} to {ice_high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {sugar}, anywhere from {sugar_low} to {sugar_high}: what is left in the drink is known badly. Look at the bottles, not at the calendar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {volume} should start it near pH {target_start_ph}; the doubts about starter, tea and water make it {volume_low} to {volume_high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {wait} after the latest reading; between {wait_low} and {wait_high} 8 times in 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above the sea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acetic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acid as acetic, by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity and meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity formed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity in equivalents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity, as acetic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity, of the same pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acidity, told as chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air in water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol by volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol from sugar, less what acid took</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol if all sugar ferments, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol that comes with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol, by weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alkalinity of the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alkalinity of the water, if known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alkalinity reckoned with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anything from {abv_low} to {abv_high} fits these figures. The upper end has all lost sugar turned to alcohol and none of it to acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As acetic acid to pH 8.1, as used everywhere here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assumed pace of yeast in a closed bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At 20 °C it would show {brix}; the instrument&apos;s own doubt gives {brix_low} to {brix_high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At 20 °C it would show {sg}; half a mark either way gives {sg_low} to {sg_high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most, in a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most, in volumes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At pH {other_ph} expect {other_ta_low} to {other_ta_high}: a small error of pH is a large one of acidity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the earliest {wait} after the latest reading, perhaps not before {wait_high}: it was read while it steamed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {altitude_m} water boils at about {boiling}; the weather moves that a little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {other_ta_g_per_l} expect a pH between {other_ph_low} and {other_ph_high}, as long as tea, water and kinds of acid stay the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {temperature_c} a fresh one has pH {ph}, give or take the bottle&apos;s own doubt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags weighed together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Balance of strong ions at the pH wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between {abv_low} and {abv_high} about 8 times in 10, and not nearer: the two instruments were made for sugar water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between {bag_low} and {bag_high}, as far as the scale can tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between {caffeine_low} and {caffeine_high}; none is taken to be lost in souring.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles and fizz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brix correction reading ATC index</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brix in gravity and grams per litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buffer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buffers printed with the same pH may hold different salts: look at the bottle&apos;s own table first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CO2 bar psi headspace warm trapped air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CO2 volumes bar psi carbonation keg grams per litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CO2 volumes bar psi carbonation temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine in a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine of tea leaf and how much is drawn out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine that the leaf gives to a litre, from published contents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbon dioxide for each litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbon dioxide in a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge balance of the weak acids of tea and starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge balance of weak acids, with assumed shares</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Charge balance with Davies activity coefficients</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chipped or scratched?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine in the water for rinsing clean vessels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine over volume; published strength of a rinse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine, from its label</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Citric acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed bottle with its air, and a drink that swells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold water at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct a hydrometer for temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct a refractometer for temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrects a reading by your last calibration and says what it is worth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days in a closed bottle, as widely as the pace is unsure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days in the cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days since bottling, if bottled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days since the calibration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days since the culture went in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days since the starter went in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days since the starter went in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days that the finished drink has been kept cold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days until it is fizzy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees Brix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees Brix, specific gravity, density and grams per litre of one solution.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Degrees Celsius it may be off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density at 20 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density of dilute alcohol and acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Density of sucrose solutions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diluted before, by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does it compensate by itself?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does the meter compensate?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does this place suit a souring jar?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk in a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each buffer can be used once only. Please choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earliest day they could pass it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End point of the titration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy to the gram of sugar, acid and alcohol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy, sugar, acid, alcohol and caffeine of an amount, as ranges.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every limit this program uses, with where it comes from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every reading must be warmer than the room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expansion of glass and of sugar solution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expect {mixed_low} to {mixed_high}, with {left} of ice left in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expect {mixed_low} to {mixed_high}: vessel and losses on the way move it a little. A thermometer decides when the culture goes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First buffer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fizz wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For exactly this mixture the calculation gives pH {ph}; a meter in a real drink seldom agrees better than 0.15.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For sugar in water. Once the culture works, acids and alcohol count in too and the reading is only apparent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For whom it is not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free chlorine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fresh juice can bring in germs that souring does not undo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From grams of each acid in a litre and the strong ions of tea, water or fruit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From one colour of the strip to the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the lye a sample took up to its end point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the marks you measured, the height of any other amount.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From two to four temperatures of the cooling pot, and that of the room.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From what you paid for packs and what you used of them, in your own money.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fruit or juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas and alcohol from sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas driven out first?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas shared between drink and headspace, with the air that was closed in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gluconic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grades a starter by its pH, its titrated acidity or, failing both, its taste.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grades and usual amounts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grams per litre in Brix and gravity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gravity in Brix and grams per litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has it been souring for too long?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat content is kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat content is kept, melting included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heated or pasteurised?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heating the drink in an open pot, and never in a closed bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held against the most cautious published advice, and for whom it is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Herbs differ too much: some hold no caffeine, some a lot. No figure is given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds to the brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot concentrate, cold water and ice: the temperature, or the ice that is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot water at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot water or tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot water, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours in which it is lukewarm: germs can grow and nothing is sour yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Household weights of sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How cold does ice make it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far off a meter is that takes the liquid for another temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fast yeast works</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fizzy is it at this pressure?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How high does it stand in the vessel?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How hot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How hot is boiling water up here?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long does it keep in the cold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long does yeast need for this sugar?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long may sweet tea stand without starter?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many tea bags is that?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much acid the starter holds is assumed: titrating it makes this sharper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much alcohol, by hydrometer and refractometer?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much alcohol, from the sugar that is gone?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much caffeine does the tea give?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much gas is in it already?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much ice cools it to where I want it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much is in it, by the ruler?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of it in a day?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the water may be hot?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much room does sugar take?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much starter for a start pH?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much sugar for fizz, and will the bottles stand it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How strong is my bleach rinse?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How strong is my starter?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure is a pH reading?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How warm is hot and cold together?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hydrometer, at 20 °C, gas driven out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ice left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ideal slope at this temperature, for each pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If all sugar ferments, at the warmest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a closed bottle?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is it cool enough for the culture?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is it hot enough to end fermenting?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is it kept cold enough?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is it sour enough to drink or bottle?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is my pH meter still good?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is this pH in time?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It comes out between pH {start_ph_low} and {start_ph_high} about 8 times in 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has stood for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds up to {volumes}; a jar whose yeasts have calmed down may hold much less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It lies between pH {true_low} and {true_high} about 8 times in 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may be off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It never gets there in such a place: the wanted temperature must be above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It reads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It rests on assumed figures alone, not on your own readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It tastes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its acidity is about {acidity}; from what you gave it may lie anywhere between {acidity_low} and {acidity_high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its acidity, if titrated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label and cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lactic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last digit of the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least squares on the Nernst line, and its limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left in the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left to the brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level, headspace and surface of an amount in a vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limit to compare with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits and safety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits for bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits for slope and offset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lye that plain water took</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lye times its strength, over the sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lye used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made for (printed on it)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makers usually take (common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makers usually take of such a one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Malic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark it at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark {n}: height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark {n}: holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mass over the density of the solution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May this juice or fruit go in?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May this material touch it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure it once it is mixed: the figure is an estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH once it is mixed: the figure is an estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Millivolts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixed temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Molar masses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monotone cubic through your marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest whole number of bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Neither sugar nor instruments can settle a legal limit: only a laboratory can. It also goes on rising in a closed bottle. Your local law decides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nernst line of the calibration, with the drift since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never mix bleach with acid, vinegar or kombucha: that sets chlorine gas free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Newton&apos;s law of cooling, with the room&apos;s temperature given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No drink of this pH can hold so much acid. Please check both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No drink reads like this on both. Please measure both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No figure promises that a bottle holds: glass ages and chips. Open one a day, and chill them all in time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of it sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of it tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset at pH 7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On target, at the warmest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once it has settled, {gauge_pressure_bar} holds {volumes}, good to some 4 per cent. A bottle with trapped air holds less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One pair of readings of your own drink links the two; then either tells the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open surface, about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper and string are weighed too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain arithmetic with the figures you entered; it needs no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose one of those offered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please enter a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please enter at least two readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please enter the pressure for which the maker rates the bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please fill this in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in known amounts, mark the heights; any height between tells its volume.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure of air and water vapour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of the sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of the tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price over pack, times what was used, in exact decimals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed table, straight lines between its rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published limits and advice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated for, if rated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratio of the Nernst slopes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read from a paper strip?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {n}: minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {n}: temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refraction of dilute alcohol and acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refractive index of sugar solution by temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refractometer, in the same sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturated under its own gas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved against the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Second buffer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown in the first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown in the second</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown in the third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope and offset of the electrode from two or three buffers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope, of the ideal electrode&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So that the mix ends at the temperature you want, without waiting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solubility of carbon dioxide, with sugar and alcohol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somewhere between {days_low} and {days_high}: only looking at the bottles tells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specific gravity 20/20</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specific gravity at 20 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standard atmosphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands above the foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH with that much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter to put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still to wait, from the latest reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight lines between the points of the outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength of the lye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong base that moves it by one pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong-ion excess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong-ion excess learnt from one pair, kept for the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong-ion excess of the pair</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar I add, if I know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in a litre at 20 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in cups and spoons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in the fruit, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in the fruit, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in the sweet tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar left in the drink, fruit and added sugar are one and the same to the yeast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar left, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar left, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar left, likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar raises both readings, alcohol raises one and lowers the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar still in it, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar still in it, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar stirred in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar to add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar to add to all of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar to add, the pressure it makes, and the worst case if nobody chills.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar to ferment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar used up in a litre each day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface to volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swelling of the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TA NaOH sodium hydroxide phenolphthalein end point tartaric</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TA titratable paired relation convert</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take up to {hot} of the water hot and the rest cold, and it should come out near {target_c}, give or take what vessel and losses do. Measure before the culture goes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea and starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea in one bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea in the sweet tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea to a litre of drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the buffers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the ice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is {bags} for {mass_g}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The acidity to tell the pH for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount of starter that brings tea and starter together to a pH you want.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The batch gives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The boiling point of water by altitude, in ordinary weather.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bottles stand at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The buffers must lie at least one pH apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The carbon dioxide in a drink that has settled under a gauge pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The doubt of a paper strip, or of a meter nobody calibrated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drink&apos;s pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The electrode gives {slope} of the ideal slope and is {offset} off at pH 7.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The figure stays between nothing and all of the water: outside, no share of hot water gives that temperature.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gauge on a bottle shows this. Is it too much?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gauge pressure over a drink that holds so many volumes of carbon dioxide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gauge shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The higher figure counts against the bottle: trapped air needs hours to days to dissolve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The highest mark holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hydrometer may be off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ice is water too: count it in, and use only ice that is good to drink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ice is water too: leave that much out of the cold water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The ice that brings hot tea to a temperature at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least must be below the likely figure, the most above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limit you chose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meter shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meter shows in the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meter takes it for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The more surface for its volume, the faster it sours. Neck and foot follow fixed proportions; for an odd vessel measure a table of your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The most carbon dioxide that an open jar holds before it is bottled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH of a finished drink, with the doubt of the reading counted in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH of sweet tea and a given amount of starter, once they are mixed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pH to tell the acidity for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part of a Brix or gravity reading that is no sugar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pot has not cooled between the readings. Please check them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The range that the lost sugar can have left behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reading and its doubt together count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The readings must be taken at different moments.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The refractometer may be off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rinse holds about {ppm}; a bottle of bleach loses strength with age.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same in kilojoules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shop&apos;s bottle holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The starter&apos;s pH is assumed from its taste or acidity: measuring it makes this sharper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The strong-ion excess is what tea, water and fruit bring as potassium, sodium, calcium and magnesium, less chloride and sulfate. A ripe starter has some 4 meq/L; that is an assumption.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sugar adds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sugar&apos;s pack holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tea&apos;s pack holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature of the sweet tea, held against your own limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature once hot tea, cold water and sugar are stirred together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The temperature where the finished drink stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The usual temperature of the place where it stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The voltage must fall as the pH rises. Are two readings swapped?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The volume of water once sugar is dissolved in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The volume up to a height above the foot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water&apos;s alkalinity is assumed; a test strip or the supplier&apos;s report tells it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to note about that yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These are more than can be used.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These bottles must not pass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They weigh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Third buffer, if any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bottle is not made for pressure, so there is no pressure it may be under. Please use bottles made for fizzy drinks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cannot be. Please check it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This figure was not read as such in a source: see where it comes from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This goes beyond what was measured, so trust it less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is not a number that can be measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is what the chemistry takes. The planner never takes less than published advice does, so that the live culture is strong enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This meter would be between pH {ph_low} and {ph_high} about 8 times in 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This must be above nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This must be above {low}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This must be at most {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This must lie between {low} and {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This starter is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This very figure was read in a source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titratable acidity to pH 8.1, as acetic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titratable acidity, as acetic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To make, starter included</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Told as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too much on a hydrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too much on a refractometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two laboratories with good meters still differ by about 0.1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two readings, two unknowns: sugar and alcohol</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US cup, a sixteenth of a gallon of 231 cubic inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US cups and spoons that add up to about an amount.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to {height_cm} it holds {volume}, if it is shaped as this program assumes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual doubt of such a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vapour pressure of water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel and losses on the way are not known; the range allows for a little of both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume by my own marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volumes of carbon dioxide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wanted once mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest for the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest since it last made gas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest the open jar was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest they may get</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water added in the titration glass is no dilution: only what was poured away counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water boils at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh several at once: a kitchen scale is too coarse for a single bag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighing is better: how tightly a cup is filled changes it by a few per cent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight over count, one step of the scale either way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What acidity does my titration show?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What acidity goes with a pH?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What bottles may be put under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What do alcohol and acid add to a reading?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does a glass hold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does a litre cost?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does one of my tea bags hold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does temperature compensation do?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is the limit for…?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What pH goes with an acidity?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What pH has a buffer at this temperature?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What pH has a mixture of acids?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What pH is behind a raw reading?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What pH will my blend start at?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What pressure for so much fizz?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What pressure is in the closed bottle?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What sour liquid stands in for weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the floating glass would show at 20 °C, and what that means.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the instrument would show at 20 °C, and what that means.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the tea itself brings is assumed from few published figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was entered does not settle this, so no answer is given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When is it cool enough for the culture?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where does my mark for an amount go?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where your local rules ask for more, follow them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White sugar, about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole bags nearest to a weight of tea, by the weight of your own bags.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why the surface matters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widest inner diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the usual doubts of drops, syringe and lye it lies between {told_low} and {told_high} about 8 times in 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With two buffers the line goes through both: only a third one can show that something is wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without any air. Below zero means that the drink would take up more gas from its own kind than the room&apos;s pressure gives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without compensation it shows too much by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without compensation the reading is off by {error}; a minus sign means that it shows too little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Worst buffer off the line, in pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>altitude height mountain steep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an assumption of this program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blend acetic gluconic lactic malic citric vinegar charge balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>caffeine leaf black green tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration electrode millivolt correct age drift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration electrode slope offset nernst probe replace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibration solution phthalate phosphate borate 4.01 7.00 6.86</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chill ice cubes melt quick cooling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chill ice cubes quick cooling target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>convert conversion plato sucrose density SG Brix grams per litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cooling curve wait time newton minutes safe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days conditioning second fermentation speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deadline seven days slow safe discard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>derived</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethanol ABV legal limit 0.5 percent balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethanol ABV legal limit 0.5 percent paired gravity Brix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ethanol apparent refractometer hydrometer effect</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill table measured marks crock odd shape calibrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fill table measured marks height ruler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory, not confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fruit juice pasteurised second fermentation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gravity SG correction reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height headspace surface ratio air fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height volume measure level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hot cold share mixing target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kitchen measure cup tablespoon teaspoon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kitchen measure leaf count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kitchen measure tablespoon teaspoon cup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least and most reckoned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mix blend estimate first day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixing temperature blend concentrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never: too little sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not even with all the sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nutrition label energy calories kcal sugar caffeine serving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 8 bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH 4.2 limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the buffer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the end point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the starter, if measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH to start at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH, before it is calibrated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH, of the pair you measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pasteurise heat stop yeast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure bar psi chill burst</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>price money per bottle saved shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>priming second fermentation F2 fruit carbonation burst pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read as others quote it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read in the source itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refrigerator fridge temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>residual CO2 saturated bottling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safety limits table source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sanitise sanitize clean bleach ppm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>serving amount drink pregnancy children</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shelf life storage days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strip paper uncertainty accuracy error</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature room cold warm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature warm hot pellicle starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time days old vinegar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time hours cooling tea germs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel lead glaze ceramic metal plastic wood crystal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vinegary mild weak grade quality</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume added dissolve syrup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weigh scale leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without bound: no room is left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{asked_l} stands {height} above the foot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hours} h {minutes} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass_g} of white sugar is about {spoons}, level, good to some 5 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_low} to {volume_high}, with the doubt of ruler and measuring jug.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_l} for {total} in all, {litre} a litre. Starter, culture and your time count as free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_l} gives {kcal_low} to {kcal_high}. For your own information: a label for sale needs a laboratory.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_l} is about {cups}, level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume_l} stands {height} high, {free} below the brim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volumes} at {temperature_c} stands under {gauge}, good to some 4 per cent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{water} of water becomes {whole}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: once settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}: while air is trapped</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReckonerNames</name>
    <message>
        <source>Acetic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Borate, 9.18 at 25 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Citric acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Citric acid with its water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gluconic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lactic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Malic acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mild</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not fit to use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phosphate, 6.86 at 25 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phthalate, 4.01 at 25 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sulfuric acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tartaric acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Technical buffer 10.01</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Technical buffer 4.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Technical buffer 7.00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vinegary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weak</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReckonerPage</name>
    <message>
        <source>Not up to date: see the marked entry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waiting for the marked entry.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RecoveryDialog</name>
    <message>
        <source>A new pantry begins empty. Nothing of the old one will be in it; the old file is set aside, not deleted. Press the button once more to do it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin a new pantry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the backup in its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rescue what can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands there now is set aside, not deleted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, begin a new pantry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your pantry could not be opened</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Reminders</name>
    <message>
        <source>1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 day {hours} h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new culture begins as a thin, smooth, pale film on top. Do not shake the jar. Dry, fuzzy or coloured spots are signs of mold: then throw out all of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By then the batch may be too sour for you: the tasting window is forecast to close {at}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry, fuzzy or coloured spots on top are signs of mold. If there is mold, throw out the whole batch and its culture. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due {at}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In 2 hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may be too sour for you after {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It should be at {ph} or below by day {day}, and no reading shows it yet. If it is not, follow your local food safety advice; when in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold on {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold, and do not taste a batch that has any or smells wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for the film on {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look whether {jar} has dried up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH first: above {ph} it is not ready to drink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH of {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more is in the due list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in a little fresh, cooled sweet tea, and write down how much. Makers do this every few weeks; look for mold first. When in doubt, throw it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of the liquid evaporates through the cloth; how much differs widely. The pellicle should stay covered: top up with ripe, unflavoured kombucha if it is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste {jar}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The computer&apos;s clock shows {now}, but something was recorded {newest}. Please check the clock. Until it is right, nothing is reported as due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The computer&apos;s clock was put back by {span}. What was shown already is not shown again; what is still to come waits for its time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The forecast puts the start of the tasting window between {first} and {last}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The forecast puts the start of the tasting window on {day}, or much later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The forecast puts the start of the tasting window on {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The window was forecast to close {day}: it may be more sour than you like.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Was due {at}, {span} ago.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You asked to be reminded of this for {jar}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You asked to be reminded of this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own reminder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batch} in {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} more are in the due list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} things are due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} things came due while nobody was told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} at {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hours} h {minutes} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{minutes} min</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Reports</name>
    <message>
        <source>Save the batch report as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the look back as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the process log as PDF</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RescueDialog</name>
    <message>
        <source>Go on with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is a file of its own. Put in the pantry&apos;s place, the damaged file is set aside, not deleted. Left, both stay, and you can choose a backup instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it for now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This could be rescued</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RestDialog</name>
    <message>
        <source>In</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In how much ripe kombucha</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In ripe, unflavoured kombucha that covers it, under cloth, a culture keeps for weeks. You are reminded to feed it every {days} days; the settings change that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel is free. Put another on the shelf first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it to rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {name} to rest</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RetiredDialog</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel is retired. One that you retire waits here, with its history.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Off the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put {name} back on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retired vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels off the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessel}, off the shelf since {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume}, {material}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunSheet</name>
    <message>
        <source>Above pH {most} on day {day}: discard the batch. Do not drink below pH {least}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All figures are estimates for 20 °C. They are no guarantee.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any mold, on any day: throw everything away, the culture included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot tea scalds, and cracks cold glass. Mix in a pot, or warm the vessel first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it drip; do not wring it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once mixed, estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules and advice of the place where you live come before this sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH estimated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start pH wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter and culture go in at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature before starter and culture go in ({limit} or below):</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tightly woven cloth and a band: air gets in, flies do not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To {limit} or below, covered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With clean hands, rinsed free of soap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH by day {day}, counted from the starter ({most} or below):</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{cold}, boiled before and cooled, or safe to drink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hot} for the tea. Mind the steam and the pot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{limit} or below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mass} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{starter}, live and unpasteurised. Stir; take the pH.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sugar}, until no grain is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{tea} ({bags}), {minutes} minutes or as long as you like it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessel}, culture: {culture}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessel}, filled to {fill}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{vessel}, started with starter liquid only</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunSheetDialog</name>
    <message>
        <source>Save the sheet as PDF</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunSheetPanel</name>
    <message>
        <source>The run sheet is laid out when brewing begins.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SafetyDialog</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This program helps you watch your jars; it cannot see, smell or test them. Its forecasts are estimates. A pH of 4.2 or less is needed, but does not by itself make a drink safe. When in doubt, throw it out: liquid and culture. Local rules and licensed practice come first. Kombucha holds some alcohol, and is not advised for everyone: ask a doctor in pregnancy, for young children, and with a weakened immune system.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SafetyLog</name>
    <message>
        <source>Bottles discarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid poured in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No reading shows pH {limit} or below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suspicion cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under suspicion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warning overridden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {limit} or below has not been read yet; day {most} is not over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {limit} or below was first read on day {day}, later than day {most}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {limit} or below was first read on day {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{date}, {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} (late)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} ± {sd}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{reason}”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SavedOpen</name>
    <message>
        <source>Save what is open as a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved as {path}. Close brewdesk and put this file in the pantry&apos;s place, or go on with it from there.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Search</name>
    <message>
        <source>1 found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Captions of photos</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines of the journal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No filter alone is in the way; without all of them there would be {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes of care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes of readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first {shown} of {total}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing in your records yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without the filter “{name}” there would be 1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without the filter “{name}” there would be {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{total} found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{text}” stands nowhere in your records. All words have to occur; fewer words, or the beginning of a word, find more.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>Acidity in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate the pH meter while it is in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed resting cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep a calendar file of the due list up to date at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep running in the tray when the window is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language, from the next start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Learn my taste from my tastings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengths in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look whether resting cultures need topping up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of this desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prices in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quiet from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quiet until</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders of a day come at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ring when a timer ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show each reminder at one desk only (for all desks)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show reminders at this desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volumes in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest liquid a culture may go into</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water alkalinity in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH at which a batch is first worth tasting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH below which a batch is too sour for you</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SettingsPage</name>
    <message>
        <source>All desks share one pantry. Colours, units, quiet hours and the window are each desk&apos;s own; taste, limits and rhythms are everybody&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the computer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the computer ({code})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every entry takes other units as well: just write them behind the number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every {count} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>File with your records</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If none appears, your desktop keeps them back: look at the due list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In quiet hours nothing pops up but bottles that may soon burst; the due list shows everything.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Money</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing leaves this computer. Backups are kept beside this file. Photos lie in a folder of their own beside it, {folder}; backups do not hold them. “Copy everything to a folder” in the Pantry menu takes both along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prices keep the currency they were typed in; nothing is converted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reminders come, and the calendar file is renewed, only while brewdesk runs. On a desktop without a tray the window is made small instead of closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several desks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show me one reminder now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tasting window is reckoned from these. Safety limits are not settings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where your records are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While the window is closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your records lie in this database, for all desks, because this desk was started with its address; brewdesk opens no other connection. Backups are kept on this computer, in {folder}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your taste, and the culture&apos;s comfort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your taste, as learnt</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShapeChoice</name>
    <message>
        <source>Shape: {shape}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetDialog</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If your printer is a little off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels on a roll: each row is a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type a whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the test page and measure its rulers: each should be 100 mm long. Then see how far its frames stand from the labels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetGrid</name>
    <message>
        <source>Row {row}, column {column}. The arrow keys move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet with these measures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the first label goes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShelfCarrier</name>
    <message>
        <source>The batch {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The culture {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing in {vessel} to carry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} put back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShelfPage</name>
    <message>
        <source>Add a vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShelfView</name>
    <message>
        <source>Drag to carry the batch; at its surface, the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to carry the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShownUnits</name>
    <message>
        <source>{mid} {unit} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} ± {sd} {unit}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SplitDialog</name>
    <message>
        <source>A layer or a piece of the pellicle, or some of its liquid, becomes a culture of its own. The parent stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Her pellicle&apos;s thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In how much ripe kombucha</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the daughter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where she rests</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Stages</name>
    <message>
        <source>A gift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the cold water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boil the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brewing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brix</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caps and corks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceramic with a lead-free glaze, stated by its maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceramic, glaze not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chilled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Conditioning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copper, brass, aluminium, iron or galvanised metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discarded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far too sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Far too sweet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Felt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fizzy-drink glass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fizzy-drink plastic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flavouring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food-grade plastic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forming</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ginger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glucose, honey or fruit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Green tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grown from a raw bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grown from starter liquid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Herbal tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Honey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hydrometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Just right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead crystal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it cool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift the tea out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Like vinegar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Merged from others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixed teas</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow neck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing suspicious</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Oolong tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other plastic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in the starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poured away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poured together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated by its maker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refractometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Resting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Retired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ruler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Souring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split from another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spoiled or broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stainless steel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steep the tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still sweet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stir in the sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight-sided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength of the tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweet and sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Syrup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thermometer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titratable acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To grow a culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tongue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too sour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too sweet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Topped up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vented</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wider at the rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>firm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>given up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it gushed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>just right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too flat</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StartDialog</name>
    <message>
        <source>Fill each to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan {count} batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starter, percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar in a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea in a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recipe all jars share. What the trial is about is set by each jar&apos;s level. The batches stand on the shelf as plans then, named by their codes; brew them on one day if you can. One undo takes all of them back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each to its working volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the starter, the same for all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Starting</name>
    <message>
        <source>The folder for your pantry cannot be made, so nothing was begun:
{folder}

Please check its rights, and that nothing else has its name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place was chosen by {what}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is your pantry as it was backed up on {when}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry is already open in another window, and that window does not answer. Close it, or wait a moment, and start again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry is open on another computer, {host}. Two programs at once would spoil it. Please close it there first.

If it is certainly not open there any more, after that computer broke down for example, delete this file and start again:
{lock}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry may not be written to, so it is open to be looked at only: nothing you enter can be kept, and reminders cannot be ticked off. Everything can be copied to another folder (Pantry menu).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was here is set aside as {path}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk did not end in order last time. Everything that was saved is here; what was only typed is not.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepGate</name>
    <message>
        <source>Put it in all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it in on my word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your reason, kept with the batch</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepRow</name>
    <message>
        <source>+1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One minute more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step {number}: {title}, {state}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the sweet tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature}, done {time}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepWords</name>
    <message>
        <source>Add {cold} of cold water ({cold_measure}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring {hot} of water ({hot_measure}) to a rolling boil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover with a tightly woven cloth and tie it down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it stand covered until it is at {limit} or below, then measure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift the tea out and let it drip off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour in {starter} of starter ({starter_measure}) and stir once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour the {hot} of boiling water on {tea} of tea ({kind}, {bags}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide the culture in with clean hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stir in {sugar} of sugar ({sugar_measure}) until no grain is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This batch needs no cold water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hours} h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hours} h {minutes} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{minutes} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} mL</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StockPane</name>
    <message>
        <source>Add a supply…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a tea…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add something else…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the tea and the sugar you brew with, and what you bought of them for how much. Each brew then takes its share, you see what runs low, and the costs tell what a litre really comes to. Bottles and fruit can follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also what is no longer in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stores are empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} supplies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count}, {low} low</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Stores</name>
    <message>
        <source>1 piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted: tea, sugar, flavouring, caps, and the wear of the bottles, as far as they came from the stores. Not counted: energy, water, your time, jars and equipment, starter and culture, top-ups and feeding. Lots are used up oldest first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found when the shelf was counted; no price is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often a bottle is filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less is left than the mark you set in the stores. Ticked off, it is not asked for again before you have written down a purchase.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low: your mark is {mark}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No price for: {listed}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of its bottles are out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing bought yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans need {planned}, more than there is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plans will take {planned}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please keep it shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type a price.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please type more than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So much is not there: the books say {high}. Count the shelf if they are wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some is best before {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some is past its best-before date, {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of it is on record already. Add another supply instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of it was used before that day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of it was used, so it stays on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes {needed} of {left}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bottles are not empty yet by the records.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The most must not be less than the least.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no price in “{text}”. Type it as in “3.50” or “3,50”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is used this way cannot be counted like that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it stands in your stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {money}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {money} more than in the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {sum}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most {money}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most {money} saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last price of a kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last price of a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last price of one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than in the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved against the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} more was used than was written down as bought.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} are filled or not back yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{left} left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{left} of {name} left, {needed} needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{low} of it was used already, so it was at least that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{money} a kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{money} a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{money} each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{money} more than in the shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{money} saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} is no longer on the list of the stores.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} is not for that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} is planned with it. Change that plan first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” can be read in more than one way. Type it without grouping.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” has more decimals than the currency has coins, or a grouping sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is more than can be kept here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{part}” is no currency known here. Use a code such as EUR or USD.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StoresActs</name>
    <message>
        <source>Purchase of {amount} of {name} taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Purchase of {name} corrected: {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Purchase of {name} corrected: {amount} for {price}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} of {name} bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} of {name} bought for {price}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} of {name} spoiled or broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} of {name} used otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bottles of {name} back in the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} back on the list of the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} counted: {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} in the stores changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} put on the list of the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} taken off the list of the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{old_name} in the stores renamed {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{said}: {text}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StoresPage</name>
    <message>
        <source>On the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What there is, and what it costs</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SuppliesModel</name>
    <message>
        <source>Amount</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best before {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not on the books</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past its date, {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{kind}, no longer in use</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SupplyDialog</name>
    <message>
        <source> bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add to the stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose what it is, or “Something else” and type its share of sugar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stays so: some of it is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please choose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SupplyList</name>
    <message>
        <source>What is in the stores</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SupplySheet</name>
    <message>
        <source>Allergens: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bought…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredients: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More for this supply</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Purchases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it back on the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar: {low:.3g} to {high:.3g} %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washed, and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What left, and what came back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} bottles of {name} are washed and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} emptied bottles of {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TableChoices</name>
    <message>
        <source>Bar |</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Columns are parted by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comma ,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters are written as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Month first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Semicolon ;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperatures in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The times are in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of day, if apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UTC</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the same column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>your own time ({zone})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{zone}, as the file says</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TableFileDialog</name>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No file chosen yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read it otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables as text ({endings})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TastingDialog</name>
    <message>
        <source>Enter the tasting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste in this order, a sip of water in between. Discard, untasted, whatever shows mold. Leave empty what you did not taste.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to taste yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who tastes (optional)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{code} is not to be tasted.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TastingRow</name>
    <message>
        <source>Liking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liking of {code}, 0 to 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict on {code}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words on {code}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glass {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in your words (optional)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TeaStrengthEdit</name>
    <message>
        <source>How much tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea counted in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bags/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g/L</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Timeline</name>
    <message>
        <source>1 line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Came due, not ticked off: {reminder}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The newest {shown} of {total} lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entered {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batch} poured over from {old} into {new}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} temperatures in {file} end here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} came to be: {origin}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sentence}: {words}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature} read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{total} lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}, {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{words}”</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TimelineList</name>
    <message>
        <source>Time line, newest first</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TimelineModel</name>
    <message>
        <source>What happened</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TimerCard</name>
    <message>
        <source>Open the run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the run sheet of {batch}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time left</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TopUpDialog</name>
    <message>
        <source>A guess without measuring: between {low} and {high} may have evaporated since it was last noted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much sugar is left in it is not known yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much sweet tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much sweet tea, room for {room}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How warm it is now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How warm it is now, at most {limit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaf per litre of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pH of it is known, so what it becomes is not known either.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note the topping up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar from about {before} to about {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar per litre of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top up {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top up {name} with fresh sweet tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type an amount to see what it does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use ripe, unflavoured kombucha, so that the pellicle stays covered and sour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it goes in all the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH from about {before} to {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{before} + {poured} = {after}, with {sugar} of sugar and {tea} of tea</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Tray</name>
    <message>
        <source>Due: {title}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk: 1 thing is due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk: nothing is due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brewdesk: {count} things are due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{when}: {title}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrayStrip</name>
    <message>
        <source>Give up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it back where it was (Escape)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialActs</name>
    <message>
        <source>Codes of the trial {name} opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasting of {code} in the trial {name} taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial {name} changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial {name} ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial {name} given up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial {name} planned, {jars} jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial {name} started: {jars} batches planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial {old_name} renamed {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{batch} taken into the trial {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{code} counted again in the trial {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{code} left out of the trial {name}: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{jars} jars of the trial {name} tasted</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialChart</name>
    <message>
        <source>No pH was read yet. Once readings of the jars are entered on the shelf, their curves lie here over each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table below has the same in figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH by day since each jar began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the jars over time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{code} · day {day} · pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialDialog</name>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose at least one vessel for each level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw lots and plan it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I say myself which vessel gets which level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel chosen: batches that there are already can be taken in later. What differs between them is listed then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One jar of a level cannot be told from the level itself. Take several of each, if you can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste blind: codes on jars and page until they are opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The one thing in which the jars &amp;differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vessels, alike if possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you want to &amp;know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{jars} jars, dealt out evenly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{jars} jars: an interval, but no more than a hint. From {count} of each on, a difference can be shown.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialJarsModel</name>
    <message>
        <source>Acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Code</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no batch yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH 3.2 passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialLabels</name>
    <message>
        <source>begun {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>labelled {date}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialReport</name>
    <message>
        <source>Acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Differences</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each line is a single jar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars differ in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made from the maker&apos;s own entries; brewdesk cannot check them. A trial at home tells of its own jars. It says nothing of safety; local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page {page} of {pages}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasted blind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tastings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bar holds the difference in 95 of 100 such trials; where it crosses the line, there may be none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The maker&apos;s conclusion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thin lines are single jars, thick ones the mean of a level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What else differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What these jars show</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day since each jar began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} passed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} {arm}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{outcome}: {arm}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialReportDialog</name>
    <message>
        <source>PNG pictures (*.png)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SVG pictures (*.svg)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the trial report as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With names of jars and tasters</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialSheet</name>
    <message>
        <source>Change name and question…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count it again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the trial up…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars of the trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the codes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet of the trial</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a batch in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What else differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your conclusion: {words}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>codes closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{state} {date}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Trials</name>
    <message>
        <source>1 of 100 trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level must lie between {low} and {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A name of a level has at most {high} letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trial compares at least two levels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A vessel can hold one jar of the trial only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {high} jars fit into one trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {high} letters fit here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {high} levels fit into one trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begun</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside {factor}, the levels differ in something else as a whole. What that does cannot be told from what {factor} does:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance alone does as much in {chance}, allowing for the {count} comparisons made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chance alone does as much in {chance}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose at least one vessel for each level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose or type the level of each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days to pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dealing the same jars out by lot parts them as far in {chance}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does green tea sour faster than black? Two jars side by side cannot say: two jars of the same tea differ as well. Start several jars alike but for one thing, draw lots for which gets what, and taste them by code. The program lays the curves over each other and says what the jars show, with its doubt, and what they do not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every jar of this trial has its batch already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give each level a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half of {arm} had by day {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far do like jars lie apart? No trial of yours tells it yet; the figure here is only a guess. Two or three jars of one kind would show it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds for these jars, this culture and this recipe. Intervals are of 95 %, and take jars of one kind to scatter evenly around their mean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It takes at least two jars of each that differ a little, to see how jars scatter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Like jars of your trials scattered by {amount} ({count} jars).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Material of the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than a thousand jars of each: a difference of {gap} drowns in a scatter of {scatter}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No jar counts yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not measured in both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not settled either, though it stands out: {others}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not told apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing can be compared yet: it needs readings of jars of each level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is settled: these jars do not tell the levels apart. That is no proof that there is no difference; it may be smaller than so few jars can show.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One jar each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One jar each cannot tell {factor} from the jar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One jar each: the curves can be laid side by side, but nobody can say whether it was {factor} or the jar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points to it, not settled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say for each vessel which level it gets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say something of at least one jar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape of the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shown in these jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So far these jars do not tell them apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength of the tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature of the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That points to a difference, but does not settle it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The codes are closed. Which jar is which, and how the levels compare, is shown when they are opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The codes of this trial are open already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The conclusion has at most {high} letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The jars differ in more than {factor}:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The jars differ in nothing else that is entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The liking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The marks are too few for an interval; nothing follows from them yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pellicle of {second} was {gap} than that of {first} around day {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan of its batch was given up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The question has at most {high} letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The scatter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of starter, from 0 to 1,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The taster&apos;s name has at most {high} letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The waits differ, also when jars not there yet are counted as watched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These jars do not tell {second} from {first} in {outcome} ({jars}): the difference may be {range}. That is no proof that there is none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These jars point to it but do not settle it: {lead} ({jars}). The difference may be {range}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness of the pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This batch is in a trial already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This jar belongs to another trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This level belongs to another trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This program calls a difference shown only from four jars of each on: with fewer, even the clearest order of the jars comes about by chance too often. With just four it asks besides that no jar of one kind lies among those of the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This trial has ended. Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Titratable acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two levels are the same. Give each its own name and level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What grows a culture is no jar of a trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever brews the jars knows what is in them: let somebody else pour, or taste by the codes alone. Warnings about a jar are always shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With so few jars even the clearest order comes about by chance in {chance}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {count} comparisons made, one is apt to stand out by chance alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>anywhere from {low} to {high}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before day {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between {near} and {far}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day {day} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewer than 1 of 100 trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>liking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pH yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, starter liquid only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not by day {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the culture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the kind of vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the share of starter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the strength of the tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tea</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the thickness of the pellicle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the time to pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} higher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} less acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} more acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} thicker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} thinner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{code} was discarded ({reason}). What was read of it still counts: leave it out, with the reason, if it went wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} comparisons were made. Each is judged more strictly for it (Holm 1979); the intervals are drawn for each alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} of 100 trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} {mark}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done_second} of {second_count} jars of {second} and {done_first} of {first_count} of {first} have passed pH {ph}; the others are still waited for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{jars} jars of each see it in {share} of 100 trials. The smallest difference that they see in 80 of 100 is {smallest}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{jars} jars of each, {all} in all. Then at least {share} of 100 such trials see a difference of {gap}, if like jars scatter by {scatter} and if only this is compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{jars}, compared within like vessels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lead} ({jars}). The difference of such jars is likely to be {range}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{outcome} ({second})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{outcome}: not both jars are there yet. {cannot}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{outcome}: not measured yet in jars of both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{second} against {first} jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{second} was marked {gap} than {first}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{second} was {gap} at pH {ph} than {first}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{second} was {gap} than {first} around day {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{told}; by the forecast about day {day} ({low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value}: {codes}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} – {parts}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{words}, from the reckoned start</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrialsPage</name>
    <message>
        <source>How many jars?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trial yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a trial…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials, the newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>codes closed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VerdictCard</name>
    <message>
        <source>Careful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Verdicts</name>
    <message>
        <source>A chipped, scratched or cracked bottle must not be put under pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drink that warms up swells. Below {least_share} it may squeeze what gas there is to a high pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drink without gas above it does not yield; any bottle then gives way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pellicle of {value_mm} would be unusual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A strip that reads pH {ph} is not enough to go by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A taste is no measurement.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A test strip or the water supplier&apos;s report tells it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above {high_c} it sours fast and may taste harsh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above {limit_c} it goes on fermenting: pressure, acid and alcohol rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above {limit} a rule for sour foods asks for a meter; a strip is too coarse there. It is used here as a guide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above {most_share} much of the gas stays out of the drink, and much air is closed in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above {most} it does no harm, but it sours fast and leaves less sweet tea to ferment.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After about {limit_days} days it is often sourer than people should drink much of, and it holds more alcohol.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After about {limit_days} days the acid can be too much to drink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim for less fizz, chill early, and stand the bottles in a closed box. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aim for less fizz, keep the bottles colder, or use bottles with a higher rating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol may also rise further in the bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol was found to rise over two months, in the cold too. The mark is a cautious choice, not a published one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alcohol, acids and split sugar count in too, and no single instrument can tell them from sugar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a starter that does no harm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At pH {ph} it is sourer than anybody should drink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At pH {ph} this is no starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the warmest, the drink would swell until the bottle is full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the warmest, this fizz could come to {highest_bar}, at {volumes} volumes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the warmest, this fizz is reckoned to stay below {highest_bar}, at {volumes} volumes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the warmest, this fizz would come to over 8 bar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {limit_c} or below it ferments and sours slowly, and most germs grow slowly too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {temperature_c} it is too warm for starter and culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {temperature_c} the culture would be harmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the culture has worked there is nearly nothing else in it that counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below {low_c} it sours slowly, and mold has more time to take hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between {low_c} and {high_c} it sours at a usual pace.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles under pressure have cost people their eyes: when moved, when dropped, and by the flying cap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the drink to the meter&apos;s temperature, or tell the meter that of the drink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By day {deadline_days} it has to be at {limit} or below for certain, and this reading does not settle it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By these figures it would be {height_cm} high and {inner_diameter_cm} wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate again before a reading that matters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate before you rely on a reading.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrate it on each day of use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calibrating on each day of use is common practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbon dioxide would have been counted as acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ceramic is only as good as its maker&apos;s word.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill in time. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chill one bottle through, open it with care, and chill the others once it is right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean it, soak it, use fresh buffers and calibrate again; replace it if that does not help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compensation corrects the electrode&apos;s slope, and nothing else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consider softer water or a sourer starter. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {days} in the bottle: chill now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {days} in the bottle: it is likely not fizzy yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {days} in the bottle: it may be fizzy enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decorative and square bottles and canning jars burst at pressures that a little sugar can make, and glass flies.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard everything, wash the vessel with hot water and soap and let it dry. Take no culture over from it. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discard it and brew it fresh. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not drink it as it is; it makes strong starter. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not drink or bottle it yet. Measure again, with a calibrated meter if you can. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not go below the least share that published advice gives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not serve it as it is. It makes strong starter. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not serve it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drink less if you are new to it, and ask a doctor if you are in doubt.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drink less of it at once, or use less leaf next time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each {co2_g_per_l} of carbon dioxide adds {adds_g_per_l}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even lively yeasts would need longer, as far as their pace is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill a little less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill a little more if you like.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill it at once, hot, into clean bottles that stand heat. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill one plastic bottle too and feel it daily: hard means chill. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a cooler place, or taste earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a warmer place, and take the pH early.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food-grade plastic will do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For healthy adults {once_mg} at once and {day_mg} a day raise no concern; in pregnancy it is {once_mg} a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fresh juice or fruit can bring germs in again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From about {harm_c} upward its yeasts and bacteria die. The liquid would then stand sweet and unprotected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {limit_volumes} on little is left for a warm day or an old bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gas in the sample counts as acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Germs may have grown in it that souring does not undo.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass breaks from its flaws, and every scratch weakens it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass is a good choice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guidance for home brewing asks for {limit} or less before it is drunk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard water can take twice as much starter as soft water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat it further, stir, and measure again. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heated drink ferments no longer; its culture is gone too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Herbal tea may not feed the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here it hardly ever lies outside {low_brix} to {high_brix}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here it hardly ever lies outside {low_c} to {high_c}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here it hardly ever lies outside {low_g_per_l} to {high_g_per_l}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here it hardly ever lies outside {low_mm} to {high_mm}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here it hardly ever lies outside {low_sg} to {high_sg}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here it hardly ever lies outside {low} to {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far an electrode has drifted by then is not known well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If all the sugar fermented, the bottles could come to {highest_bar}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If all the sugar fermented, the bottles would come to over 8 bar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In trials, germs from juice lived on for two weeks in cold, sour kombucha.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It also takes the longest to cool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not turn the pH of a cold drink into that of a warm one; in an acid drink the two hardly differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It goes on changing slowly, in the cold too; {limit_days} days are a cautious mark, not a published one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has been kept for {days} days, longer than {limit_days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has been kept for {days} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has been souring for {day} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds up to about {high_mg} of caffeine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is advised against in pregnancy, for small children and with weak immunity. Ask a doctor if you take medicines or have to avoid alcohol. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is alive, sour, and holds caffeine and some alcohol.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is day {day}, and no pH shows that the batch is sour enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is dirty, dry or worn, or a buffer is not what its bottle says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not even as sour as a finished drink has to be, so it cannot protect a new batch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not known whether the liquid is cool enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is not sour enough for that, as far as it is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is reckoned to come out at about {mixed_c}; your limit is {limit_c}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is reckoned to start at about pH {ph}, above {wanted}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is reckoned to start at about pH {ph}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is within what laboratories accept, but no longer like new.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It lacks what tea leaves give, its sourness is less well known here, and some herbs hinder the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It likely holds less alcohol than the {threshold_abv} you chose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It likely holds more alcohol than the {threshold_abv} you chose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may hold as much as {high_mg} of caffeine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may hold more alcohol than the {threshold_abv} you chose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It may start above pH {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It scratches, and scratches are hard to clean; it may also give off a taste over weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It should be at {limit} or below by day {deadline_days}. A cold place or weak starter slows it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It should have been sour enough by day {deadline_days}. Sweet, hardly sour liquid that stands for days lets harmful germs grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It still brings sugar, and may raise the pH.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It takes a lot of it to make sweet tea sour enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would make the tea sour enough, but it brings fewer live cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its pores hold on to what lived in it before, mold included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its pressure climbs steeply with the heat, and hot glass bursts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep a second culture on real tea, and measure the pH more often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep away until they are cold: cover them, cool the room, and do not move them warm. Wear goggles and gloves. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it there until it is drunk; fizz and alcohol still rise a little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the jar apart, use nothing from it for another, and look again tomorrow. When in doubt, throw it out. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the maker&apos;s written word that the glaze is free of lead and made for sour food. Without it, please use glass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep them cold, in a closed box, and do not shake them. Chill before you open one, and hold the cap away from faces. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it and measure again in a day or two. Do not drink it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave more headspace, and fill nothing ice-cold to the brim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it cool, covered, and measure before starter and culture go in. More cold water and less hot would shorten the wait.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it go flat and heat the drink in an open pot, or keep it cold instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let it sour further, or use another starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the vessel dry in the air: what is left of it harms the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid warmer than {limit_c} harms the culture, and it looks no different.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Little of it makes the tea sour, but little also brings few live cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lively yeasts could have brought the bottles to their limit by day {chill_by_days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look again tomorrow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the bottles daily all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for rust now and then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lukewarm and sweet, it is a feast for germs; from {warn_hours} h on they may have begun to grow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make less, or choose a larger vessel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makers of electrodes call such a slope good; that is from memory.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makers usually need no more than an ordinary share of it; that is common practice, without a source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makers usually take a little more of such a one; that is common practice, without a source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again after anything is added. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again with a calibrated meter today. If it is above {limit}, or you cannot measure it better, discard it. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure again, with a calibrated meter if you can. It has until day {deadline_days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure beside the jar. If that is so, find a cooler place, or taste earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure beside the jar. If that is so, find a warmer place, and take the pH early.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure both again before you rely on them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure both again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure both again. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure it after mixing if you can: the figure is an estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the liquid and enter its temperature. If you have no thermometer, wait until the vessel feels cool to your hand, and write that down as your reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH after mixing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH afterwards: the same limit applies again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH once it is mixed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure the pH today, before you taste. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure with a calibrated meter, or let it sour for longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mixed, the sweet tea will be too warm for the culture at first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold can leave poisons in the liquid, and its threads reach further than its patch. Dry, fuzzy spots on top are mold; wet, brown strings below are yeast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold grows from day to day, a young film only thickens. A day tells them apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More or sourer starter would help. Measure after mixing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than {most_ph} off the line means that one of them is stale or mistaken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move it into the refrigerator. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move it somewhere warmer, look closely for mold, and measure again tomorrow. Do not drink it yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never heat a closed bottle that ferments.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No buffer is as sour as the drink.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pH was taken of this batch since it began.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not even this starter by itself reaches pH {target_ph}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On day {day} the pH is {ph}, still above {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On day {day} the pH reads {ph}, but the reading may be off by {sd}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On day {day} the reading is only apparent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of the two readings may be off, and then so is the reckoned start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One of the two readings may be off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a laboratory can settle it. Before you give or sell it as a drink without alcohol, have it measured, and follow your local rules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only chilling in time stops it; cold slows the yeasts and does not end them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it cold and with care; look, smell and measure the pH before you taste. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pasteurised juice or heated fruit is the better choice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plastic that is not made for food is not safe here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please check both figures and their units.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please check the figure and the instrument. It will be kept as you type it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please discard it. Do not taste it, and start again with more or sourer starter. Where your local rules ask for more, follow them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Please use glass, or another vessel meant for sour food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour slowly, into a vessel that stands heat: thick glass can crack.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance advises against drinking kombucha this sour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance asks for pH 4.2 or below within {deadline_days} days. Without a reading nobody can tell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance asks for this within {deadline_days} days. It is needed, but it does not prove that a drink is safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance asks for water of at least {least_c}: cooler water leaves more alive that came with the leaves.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance asks for {limit_c}, and the thermometer may be a little off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance for clean vessels is {limit_ppm}. More of it is left on the vessel, and it does not clean better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance for clean vessels is {limit_ppm}; bleach loses strength with age.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published guidance uses about {least}. With less, the liquid stays sweet and unprotected for longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put all bottles in the cold now. Open none warm, and none to let gas out. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put the starter in as soon as it is cool enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SG {value_sg} would be unusual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some glazes hold lead, which the acid draws out. Kombucha from such pots has poisoned people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some health offices advise at most {limit_l} a day, after two grave cases whose cause was never proven; most name no amount.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some health offices advise at most {limit_l} a day; most name no amount.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something on the surface is not clear yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sort it out, and use a sound one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sour liquid dissolves copper, brass, aluminium, iron and zinc; the drink can make you ill and the culture suffers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sour liquid takes nothing out of plain glass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sour liquid that stands for weeks can draw things out of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stainless steel is a good choice if it is made for sour food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a buffer near pH 4 as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a reading first. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the usual amount all the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the usual amount.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste early.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste, measure and draw it off, or keep it as starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is beyond what can be reckoned, and beyond {ceiling_bar}, the most for these bottles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is close to {ceiling_bar}, the most for these bottles; a warm day or an old bottle takes up the rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is common practice, without a source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is needed, but it does not prove that a drink is safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no proof, and alcohol may still rise in the bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is plenty of fizz. It must not pass {ceiling_bar}, and it goes on rising.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is usual in the first days; it has until day {deadline_days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is within the {warn_hours} h in which it should get its starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The acid draws lead out of lead crystal and of many glazes. Kombucha from such pots has poisoned people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The buffers disagree by {residual_ph} in pH.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calibration is fresh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calibration is {age_days} days old, more than {old_days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The calibration is {age_days} days old.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cold water goes in as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The culture needs air above it, and room to rise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The electrode drifts a little every day; the range allows for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The electrode is good: {slope_percent} of the ideal slope, {offset_mv} off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The electrode is outside what laboratories accept: {slope_percent} of the ideal slope, {offset_mv} off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The electrode is usable: {slope_percent} of the ideal slope, {offset_mv} off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful germs can grow in sweet tea.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gas was driven out first, as it should be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gauge shows {gauge_bar}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The glass trade advises against more than {largest_l}: the same pressure pulls harder on a wider wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The glass trade&apos;s figures, read with care, end below {limit_volumes}; one warm day would be enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The height follows from the volume to the brim and the inner diameter; few vessels look like this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest temperature of its place, {temperature_c}, is cold for a culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest temperature of its place, {temperature_c}, is warm for a culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lowest has pH {lowest_ph}; below it the line is only continued.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The meter takes the liquid for warmer or colder than it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pace is hardly known beforehand; it may take from {low_days} to {high_days} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The reading is that of sugar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sourer the start, the less time mold and other unwanted guests have. The estimate runs from {low} to {high}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The starter is still needed: it brings the live culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sweet tea has stood for {hours} h without starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sweet tea has stood for {hours} h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sweet tea stood {hours} h without starter, longer than {limit_hours} h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tea alone is already at pH {target_ph} or below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two readings go together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two readings hardly go together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The usual kitchen grade stands the acid; scratched or cheap steel may rust.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water&apos;s alkalinity is not known, so it is assumed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The water&apos;s alkalinity or a weak starter asks for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These bottles must not pass {ceiling_bar}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These bottles must not pass {ceiling_bar}. No bottle promises to hold even that: glass ages.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These bottles must not pass {ceiling_bar}. The figure holds only if they are chilled in time, and it promises nothing about an old bottle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They must not pass {ceiling_bar}. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They must not pass {ceiling_bar}. Nearly every sweet kombucha could break nearly every bottle. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They show {excess_meq_per_l} more strong cations than anions, which tea and water can give.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They show {excess_meq_per_l} of strong ions; tea and water usually give {low} to {high}. Another acid, or a reading that is off, may be behind it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This bottle is not made for pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This drink is not for everyone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is an estimate from {low_abv} to {high_abv}; neither sugar nor two simple instruments can tell such amounts apart. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This metal does not stand the acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This rinse holds about {chlorine_ppm} of chlorine, which is strong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This rinse holds about {chlorine_ppm} of chlorine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This starter is good: about {ta_g_per_l} of acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This starter is mild: about {ta_g_per_l} of acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This starter is vinegary: about {ta_g_per_l} of acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This starter is weak: about {ta_g_per_l} of acid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This starter, as far as it is known, is not sour enough for the pH you asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This vessel may give off lead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tongues differ, and sugar hides acid. Neither pH nor acidity of this starter is known.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Treat every closed bottle as if it might burst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a sourer starter, or choose a higher pH to start at.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use bottles made for fizzy drinks, glass or plastic, or drink it flat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use fresh buffers and calibrate again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use hotter water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it only if it is made for sour food, and replace it once scratched.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use it to see how things move, not for how much sugar is left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use less bleach, never mix it with acid, and rinse with good water. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use less sugar unless you know this recipe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use less tea unless you know this recipe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use more of it, or let it sour further first. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use more or sourer starter, and measure after mixing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use more starter. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use more sugar unless you know this recipe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use more tea unless you know this recipe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use only a barrel made for drinks, and look for mold more often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use pasteurised juice, or heat the fruit first. Measure the pH afterwards: the same limit applies again. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use smaller bottles, or plastic made for fizzy drinks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use sourer starter, or more of it. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use water that is good to drink, or boil it first and let it cool.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual recipes have {low} to {high}. More of it stays in the drink, and more alcohol can form.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual recipes have {low} to {high}. Strong tea is bitter and sours more slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual recipes have {low} to {high}. The culture also lives on what the leaves give.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual recipes have {low} to {high}. The sugar feeds the culture; with too little it sours weakly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait until it is at {limit_c} or below, then measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm or stir the sample until it is flat, and titrate again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water at {hot_c} scalds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whatever lives in it meets sweet tea before it is sour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where your local rules ask for more, follow them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With its doubt that is above {ceiling_bar}, the most for these bottles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With mold, all of it has to go: drink, starter and culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With that doubt it is not certain that it is sour enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the doubt of {sd} it may lie above {limit}, where harmful germs can grow. Sweet or fresh additions raise it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the uncertainty it lies between {low} and {high}, which is below {limit}, where unwanted germs grow less easily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With {share} starter it will start at about pH {ph}, not {target}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without compensation this reading is off by {error_without_ph}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood is hard to keep clean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your limit is {limit_c}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your limit is {limit_c}. Heat weakens the culture, and a weak culture sours too slowly to keep mold away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} and {ta_g_per_l} of acid do not go together in a usual starter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} does not show that the drink is sour enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} is at {limit} or below, with the doubt of the reading counted in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} is close to {limit}, and the reading may be off by {sd}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} is very sour, below {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} is very sour: with the doubt of {sd} it may lie below {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} on day {day} is below {limit}, with the doubt of the reading counted in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} on day {day} is late.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph} on day {day} is still above {limit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {value} would be unusual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bar} bar ({psi} psi)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{brim_l} is large for glass under pressure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{drunk_l} a day is more than the most cautious advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{drunk_l} a day is within the most cautious advice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{fill_l} is more than the {working_l} you usually fill in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{g_per_l} of sugar is a lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{g_per_l} of sugar is little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{g_per_l} of tea is a lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{g_per_l} of tea is little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hot_c} is cool for steeping.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} mV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} mg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} mg/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{number} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} is about what makers usually take.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} is less than makers usually take.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} is more than makers usually take.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} of headspace is a lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} of headspace is little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} starter is a lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} starter is little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} is cold enough to keep it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} is cold for the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} is cool enough for starter and culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} is too warm to keep it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} is warm for the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} may not end the fermenting.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} meets the published {limit_c}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{temperature_c} suits the culture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value_brix} would be unusual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value_c} would be unusual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value_g_per_l} of acid would be unusual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volumes} volumes are a lot of fizz for bottles of unknown rating.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volumes} volumes are too much fizz for bottles of unknown rating.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VesselDialog</name>
    <message>
        <source>&amp;Inner diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Material</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give a volume, and the vessel is drawn here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the vessel a name you will know it by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds up to the &amp;brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tall jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The diameter is a guess: measure it when you can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These figures fit no vessel of this shape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it &amp;stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You &amp;fill it to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{height} high inside, {width} at the widest.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>VesselPicks</name>
    <message>
        <source>Level of {vessel}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No vessel is free. You can plan the trial without, and take batches in later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{volume}, {width} wide</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Vessels</name>
    <message>
        <source>Pantry</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WhatIfPanel</name>
    <message>
        <source>As it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a slider: the dashed line shows how it would go then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See how it would go otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The jar, from the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place, from now on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The starter, from the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if, in words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{length} across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{share} % of the jar</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WhenEdit</name>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the time to now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>d MMM yyyy, HH:mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WindowFrame</name>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stores</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This pantry is invented, to look around in. Its jars and readings are made up and kept in a file of their own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trials</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_CopiesDelegate</name>
    <message>
        <source>Copies</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_StripLine</name>
    <message>
        <source>{title}, {when}. Opens the due list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{when}: {what}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>actions</name>
    <message>
        <source>&amp;About brewdesk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change the vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cultures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Draw it off…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find in everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;History</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep starter back…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pantry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan a batch…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print the run sheet…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Reckon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Retired vessels…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Safety, and where the limits come from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;culture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B&amp;atch report…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B&amp;ottle it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B&amp;ottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bac&amp;kups…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up no&amp;w</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring in an expor&amp;t…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carr&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy ever&amp;ything to a folder…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;iscard it…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw off par&amp;t…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due list as a &amp;calendar file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;xport everything…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is already in the &amp;jar…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look &amp;back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;invented pantry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;laces and how warm they are…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past &amp;batches…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour &amp;over into another vessel…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pour to&amp;gether with another batch…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pr&amp;ocess log…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print a &amp;label…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R&amp;etire the vessel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read in readi&amp;ngs…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Se&amp;ttings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show its &amp;history</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start &amp;brewing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stor&amp;es</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;rials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top &amp;up…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>limits</name>
    <message>
        <source>% alcohol by volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cautious choice of this program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place&apos;s temperature says something of today for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A souring jar&apos;s place, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A souring jar&apos;s place, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Accuracy that a pH meter for food should have</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Australia and New Zealand: brewed soft drink, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Australia and New Zealand: strength is stated above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle for fizzy drinks of unknown rating: pressure on a gauge, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottle for fizzy drinks of unknown rating: volumes of carbon dioxide, below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>British Columbia and Ontario: controlled above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine at once, and in a day of pregnancy, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine in a day, adults, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called close to that fizz from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called close to that pressure from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called long when souring for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called over-long when souring for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Called slow when not reached by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canada, most provinces: controlled above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canada: strength is declared from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chlorine in water for rinsing vessels, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cold storage of the drink, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, without a source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Derived from the figures named.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk in a day, most cautious advice read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>European Union: strength is stated above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From memory, not confirmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass for fizzy drinks: the trade&apos;s own figure, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glass under pressure: size, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Headspace of a bottle, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Headspace of a bottle, called large above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Headspace of a bottle, usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heating to end fermenting, in an open pot, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeping the drink cold, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid a culture goes into, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Liquid that harms a culture, from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Offset of a pH meter in the neutral buffer, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rated bottle: careful from this part of its rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read in the source itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read only as others quote it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of starter, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of starter, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of starter, lowest advice read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of a pH meter, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of a pH meter, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of a pH meter, called good from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slope of a pH meter, called good up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steeping time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweet tea standing without starter: at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweet tea standing without starter: careful after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time to chill when a gauge shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time to reach that pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US fl oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>United Kingdom: called low alcohol, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>United States: an alcohol beverage from, at any time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water for steeping, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mg/L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of a finished drink, at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of a finished drink, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the blend at the start, at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH of the blend at the start, wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH strips are trusted up to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volumes</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>moments</name>
    <message>
        <source>ddd d MMM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since yesterday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since {date}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{date}, {time}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>shelf</name>
    <message>
        <source>Being brewed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brew it next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {n}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw it off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawn off at pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty · {volume}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feed it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for dryness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for the film</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May carry mold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mold was seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready for a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taste it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your reminder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs attention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pH yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH about {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH {ph}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pellicle {mm} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time is up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timer until {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{culture} at rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} · {code}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} {when}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
