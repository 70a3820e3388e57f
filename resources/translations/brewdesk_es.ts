<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
    <context>
        <name>AboutDialog</name>
        <message>
            <source>A window for the pantry: plan, brew, watch and remember kombucha, jar by jar. It uses no network, unless you have it share a pantry on a server of yours. MIT licence; the typeface is Atkinson Hyperlegible Next under the SIL Open Font License.</source>
            <translation>Una ventana a la despensa: planifica, prepara, vigila y recuerda tu kombucha, frasco a frasco. No usa la red, a menos que le hagas compartir una despensa en un servidor tuyo. Licencia MIT; la tipografía es Atkinson Hyperlegible Next, con la SIL Open Font License.</translation>
        </message>
        <message>
            <source>About brewdesk</source>
            <translation>Acerca de brewdesk</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
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
            <translation>Versión</translation>
        </message>
        <message>
            <source>Your pantry</source>
            <translation>Tu despensa</translation>
        </message>
    </context>
    <context>
        <name>AcidChart</name>
        <message>
            <source>Acidity</source>
            <translation>Acidez</translation>
        </message>
        <message>
            <source>Acidity over the days of the batch</source>
            <translation>Acidez a lo largo de los días del lote</translation>
        </message>
        <message>
            <source>Day {day} · {what}</source>
            <translation>Día {day} · {what}</translation>
        </message>
        <message>
            <source>Day {day}, {date}</source>
            <translation>Día {day}, {date}</translation>
        </message>
        <message>
            <source>More about the forecast</source>
            <translation>Más sobre el pronóstico</translation>
        </message>
        <message>
            <source>No curve yet. It begins when the starter is in. Take a first pH then, and the forecast will show when to taste.</source>
            <translation>Aún no hay curva. Empieza cuando el iniciador está dentro. Mide entonces un primer pH, y el pronóstico mostrará cuándo catar.</translation>
        </message>
        <message>
            <source>No titratable acidity measured or forecast yet. Enter one with the next reading.</source>
            <translation>Aún no hay acidez titulable medida ni pronosticada. Anota una con la próxima lectura.</translation>
        </message>
        <message>
            <source>Show</source>
            <translation>Mostrar</translation>
        </message>
        <message>
            <source>Show all days</source>
            <translation>Ver todos los días</translation>
        </message>
        <message>
            <source>The curve in words</source>
            <translation>La curva en palabras</translation>
        </message>
        <message>
            <source>The same is said in words beside it and in the table of readings.</source>
            <translation>Lo mismo se dice en palabras al lado y en la tabla de lecturas.</translation>
        </message>
        <message>
            <source>Titratable acidity, counted as acetic acid</source>
            <translation>Acidez titulable, expresada como ácido acético</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d MMM</translation>
        </message>
        <message>
            <source>ended</source>
            <translation>terminado</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>{place} · expected {mid} ({low} to {high})</source>
            <translation>{place} · se espera {mid} ({low} a {high})</translation>
        </message>
    </context>
    <context>
        <name>ActBar</name>
        <message>
            <source>Nothing to take back</source>
            <translation>Nada que deshacer</translation>
        </message>
        <message>
            <source>Undo</source>
            <translation>Deshacer</translation>
        </message>
        <message>
            <source>Undo: {act}</source>
            <translation>Deshacer: {act}</translation>
        </message>
    </context>
    <context>
        <name>Acts</name>
        <message>
            <source>Acidity {amount}</source>
            <translation>Acidez {amount}</translation>
        </message>
        <message>
            <source>Brewing of {name} begun</source>
            <translation>Preparación de {name} empezada</translation>
        </message>
        <message>
            <source>Look “{found}”</source>
            <translation>Revisión «{found}»</translation>
        </message>
        <message>
            <source>New culture {name}</source>
            <translation>Nuevo cultivo {name}</translation>
        </message>
        <message>
            <source>New place {name} at {temperature}</source>
            <translation>Nuevo lugar {name} a {temperature}</translation>
        </message>
        <message>
            <source>New vessel {name}, {volume}</source>
            <translation>Nuevo recipiente {name}, {volume}</translation>
        </message>
        <message>
            <source>Pellicle {number} mm</source>
            <translation>Película {number} mm</translation>
        </message>
        <message>
            <source>Plan of {name} changed</source>
            <translation>Plan de {name} cambiado</translation>
        </message>
        <message>
            <source>Plan of {name} given up</source>
            <translation>Plan de {name} abandonado</translation>
        </message>
        <message>
            <source>Redo: {act}</source>
            <translation>Rehacer: {act}</translation>
        </message>
        <message>
            <source>Reminder “{reminder}” added</source>
            <translation>Recordatorio «{reminder}» añadido</translation>
        </message>
        <message>
            <source>SG {amount}</source>
            <translation>SG {amount}</translation>
        </message>
        <message>
            <source>Taste “{taste}”</source>
            <translation>Sabor «{taste}»</translation>
        </message>
        <message>
            <source>Undo: {act}</source>
            <translation>Deshacer: {act}</translation>
        </message>
        <message>
            <source>pH {amount}</source>
            <translation>pH {amount}</translation>
        </message>
        <message>
            <source>{first} and {last}</source>
            <translation>{first} y {last}</translation>
        </message>
        <message>
            <source>{name} and its culture discarded: {reason}</source>
            <translation>{name} y su cultivo desechados: {reason}</translation>
        </message>
        <message>
            <source>{name} back on the shelf</source>
            <translation>{name} de vuelta en el estante</translation>
        </message>
        <message>
            <source>{name} changed</source>
            <translation>{name} cambiado</translation>
        </message>
        <message>
            <source>{name} changed, now at {temperature}</source>
            <translation>{name} cambiado, ahora a {temperature}</translation>
        </message>
        <message>
            <source>{name} closed</source>
            <translation>{name} cerrado</translation>
        </message>
        <message>
            <source>{name} covered and souring</source>
            <translation>{name} tapado y en acidificación</translation>
        </message>
        <message>
            <source>{name} discarded: {reason}</source>
            <translation>{name} desechado: {reason}</translation>
        </message>
        <message>
            <source>{name} drawn off from {vessel}</source>
            <translation>{name} extraído de {vessel}</translation>
        </message>
        <message>
            <source>{name} drawn off from {vessel}: {reason}</source>
            <translation>{name} extraído de {vessel}: {reason}</translation>
        </message>
        <message>
            <source>{name} entered as already souring, begun at {temperature}</source>
            <translation>{name} anotado como ya en acidificación, empezado a {temperature}</translation>
        </message>
        <message>
            <source>{name} entered as already souring, begun at {temperature}: {reason}</source>
            <translation>{name} anotado como ya en acidificación, empezado a {temperature}: {reason}</translation>
        </message>
        <message>
            <source>{name} entered as already souring, temperature not known: {reason}</source>
            <translation>{name} anotado como ya en acidificación, temperatura desconocida: {reason}</translation>
        </message>
        <message>
            <source>{name} given away</source>
            <translation>{name} regalado</translation>
        </message>
        <message>
            <source>{name} is at work</source>
            <translation>{name} está trabajando</translation>
        </message>
        <message>
            <source>{name} is forming</source>
            <translation>{name} se está formando</translation>
        </message>
        <message>
            <source>{name} is resting</source>
            <translation>{name} está en reposo</translation>
        </message>
        <message>
            <source>{name} lost</source>
            <translation>{name} perdido</translation>
        </message>
        <message>
            <source>{name} planned, {volume} in {vessel}</source>
            <translation>{name} planificado, {volume} en {vessel}</translation>
        </message>
        <message>
            <source>{name} retired</source>
            <translation>{name} retirado</translation>
        </message>
        <message>
            <source>{name} taken off the shelf</source>
            <translation>{name} quitado del estante</translation>
        </message>
        <message>
            <source>{name}: “{step}” begun</source>
            <translation>{name}: «{step}» empezado</translation>
        </message>
        <message>
            <source>{name}: “{step}” done</source>
            <translation>{name}: «{step}» hecho</translation>
        </message>
        <message>
            <source>{name}: “{step}” done at {temperature}</source>
            <translation>{name}: «{step}» hecho a {temperature}</translation>
        </message>
        <message>
            <source>{name}: “{step}” done at {temperature}, in spite of the warning: {reason}</source>
            <translation>{name}: «{step}» hecho a {temperature}, a pesar de la advertencia: {reason}</translation>
        </message>
        <message>
            <source>{name}: “{step}” done, in spite of the warning: {reason}</source>
            <translation>{name}: «{step}» hecho, a pesar de la advertencia: {reason}</translation>
        </message>
        <message>
            <source>{name}: “{step}” given {time} more</source>
            <translation>{name}: «{step}» alargado {time}</translation>
        </message>
        <message>
            <source>{name}: “{step}” goes on</source>
            <translation>{name}: «{step}» continúa</translation>
        </message>
        <message>
            <source>{name}: “{step}” paused</source>
            <translation>{name}: «{step}» en pausa</translation>
        </message>
        <message>
            <source>{old_name} renamed {name}</source>
            <translation>{old_name} renombrado {name}</translation>
        </message>
        <message>
            <source>{old} on {vessel} corrected to {readings}</source>
            <translation>{old} en {vessel} corregido a {readings}</translation>
        </message>
        <message>
            <source>{readings} on {vessel}</source>
            <translation>{readings} en {vessel}</translation>
        </message>
        <message>
            <source>{readings} on {vessel} corrected</source>
            <translation>{readings} en {vessel}, corregido</translation>
        </message>
        <message>
            <source>{readings} on {vessel} taken out</source>
            <translation>{readings} en {vessel}, quitado</translation>
        </message>
        <message>
            <source>“{note}”</source>
            <translation>«{note}»</translation>
        </message>
        <message>
            <source>“{reminder}” done</source>
            <translation>«{reminder}» hecho</translation>
        </message>
        <message>
            <source>“{reminder}” put off</source>
            <translation>«{reminder}» pospuesto</translation>
        </message>
    </context>
    <context>
        <name>ActsDialog</name>
        <message>
            <source>Act</source>
            <translation>Acción</translation>
        </message>
        <message>
            <source>Acts in grey are not for the jar that is chosen now.</source>
            <translation>Las acciones en gris no sirven para el frasco elegido ahora.</translation>
        </message>
        <message>
            <source>Acts, their menus and their keys</source>
            <translation>Acciones, sus menús y sus teclas</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Do it</source>
            <translation>Hacerlo</translation>
        </message>
        <message>
            <source>Find an act</source>
            <translation>Buscar una acción</translation>
        </message>
        <message>
            <source>Keys</source>
            <translation>Teclas</translation>
        </message>
        <message>
            <source>Menu</source>
            <translation>Menú</translation>
        </message>
        <message>
            <source>No act is called that.</source>
            <translation>Ninguna acción se llama así.</translation>
        </message>
        <message>
            <source>Type what you want to do</source>
            <translation>Escribe lo que quieres hacer</translation>
        </message>
        <message>
            <source>What you want to do</source>
            <translation>Lo que quieres hacer</translation>
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
            <translation>Cantidad en total</translation>
        </message>
        <message>
            <source>Its name</source>
            <translation>Su nombre</translation>
        </message>
        <message>
            <source>Shares as you typed them; a label knows best.</source>
            <translation>Porcentajes tal como los escribiste; la etiqueta sabe más.</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Otra cosa</translation>
        </message>
        <message>
            <source>Sugar, at least</source>
            <translation>Azúcar, como mínimo</translation>
        </message>
        <message>
            <source>Sugar, at most</source>
            <translation>Azúcar, como máximo</translation>
        </message>
        <message>
            <source>Take away</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>What goes in</source>
            <translation>Qué va dentro</translation>
        </message>
        <message>
            <source>{name} (from the stores)</source>
            <translation>{name} (de las existencias)</translation>
        </message>
    </context>
    <context>
        <name>Alarms</name>
        <message>
            <source>Time is up.</source>
            <translation>Se acabó el tiempo.</translation>
        </message>
        <message>
            <source>Time is up: lift the tea out.</source>
            <translation>Se acabó el tiempo: saca el té.</translation>
        </message>
        <message>
            <source>Time is up: look whether all sugar is dissolved.</source>
            <translation>Se acabó el tiempo: mira si todo el azúcar está disuelto.</translation>
        </message>
        <message>
            <source>Time is up: measure the temperature.</source>
            <translation>Se acabó el tiempo: mide la temperatura.</translation>
        </message>
        <message>
            <source>Time is up: pour the water on the tea.</source>
            <translation>Se acabó el tiempo: vierte el agua sobre el té.</translation>
        </message>
        <message>
            <source>{batch} in {vessel}</source>
            <translation>{batch} en {vessel}</translation>
        </message>
    </context>
    <context>
        <name>AlreadyInDialog</name>
        <message>
            <source>Already in the jar</source>
            <translation>Ya en el frasco</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>How warm the tea was then</source>
            <translation>Temperatura del té entonces</translation>
        </message>
        <message>
            <source>If you did not measure: why it goes in all the same</source>
            <translation>Si no lo mediste: por qué va dentro de todos modos</translation>
        </message>
        <message>
            <source>It is souring</source>
            <translation>Se está acidificando</translation>
        </message>
        <message>
            <source>Reminders and forecast count from the moment starter or culture went in.</source>
            <translation>Los recordatorios y el pronóstico cuentan desde el momento en que entró el iniciador o el cultivo.</translation>
        </message>
        <message>
            <source>Starter and culture went in</source>
            <translation>Entraron el iniciador y el cultivo</translation>
        </message>
        <message>
            <source>{name} is already in the jar</source>
            <translation>{name} ya está en el frasco</translation>
        </message>
    </context>
    <context>
        <name>AmountsPanel</name>
        <message>
            <source>Amounts</source>
            <translation>Cantidades</translation>
        </message>
        <message>
            <source>Once mixed it has to cool: starter and culture may go in at {limit} or below.</source>
            <translation>Una vez mezclado, tiene que enfriarse: el iniciador y el cultivo pueden entrar a {limit} o menos.</translation>
        </message>
        <message>
            <source>Once mixed it should be cool enough: starter and culture may go in at {limit} or below. Take the temperature first.</source>
            <translation>Una vez mezclado, debería estar lo bastante frío: el iniciador y el cultivo pueden entrar a {limit} o menos. Mide antes la temperatura.</translation>
        </message>
        <message>
            <source>The start pH comes out between {low} and {high} about {times} times in 10. That is an estimate: measure it before you cover the vessel.</source>
            <translation>El pH inicial queda entre {low} y {high} en unas {times} de cada 10 veces. Es una estimación: mídelo antes de tapar el recipiente.</translation>
        </message>
        <message>
            <source>Volumes are those at 20 °C. Weigh if you can: cups and spoons are good to about 5 %.</source>
            <translation>Los volúmenes son a 20 °C. Pesa si puedes: las tazas y cucharas aciertan con un margen de alrededor del 5 %.</translation>
        </message>
        <message>
            <source>What to expect</source>
            <translation>Qué esperar</translation>
        </message>
        <message>
            <source>of it starter</source>
            <translation>de ello iniciador</translation>
        </message>
        <message>
            <source>once mixed, estimated</source>
            <translation>una vez mezclado, estimado</translation>
        </message>
        <message>
            <source>start pH, estimated</source>
            <translation>pH inicial, estimado</translation>
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
            <translation>, cerca de {measure}</translation>
        </message>
        <message>
            <source>, {volume} mL</source>
            <translation>, {volume} mL</translation>
        </message>
        <message>
            <source>Kitchen measure</source>
            <translation>Medida de cocina</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Componente</translation>
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
            <translation>Límites con los que se comparó</translation>
        </message>
        <message>
            <source>To bear in mind</source>
            <translation>Para tener en cuenta</translation>
        </message>
        <message>
            <source>Where this comes from</source>
            <translation>De dónde viene esto</translation>
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
            <translation>Uno menos</translation>
        </message>
        <message>
            <source>One more level</source>
            <translation>Un nivel más</translation>
        </message>
        <message>
            <source>The first level is what the others are compared with.</source>
            <translation>El primer nivel es con el que se comparan los demás.</translation>
        </message>
    </context>
    <context>
        <name>ArmEntry</name>
        <message>
            <source>Level {number}</source>
            <translation>Nivel {number}</translation>
        </message>
        <message>
            <source>Name of level {number}</source>
            <translation>Nombre del nivel {number}</translation>
        </message>
        <message>
            <source>its name</source>
            <translation>su nombre</translation>
        </message>
        <message>
            <source>percent</source>
            <translation>por ciento</translation>
        </message>
        <message>
            <source>{percent} % starter</source>
            <translation>{percent} % de iniciador</translation>
        </message>
    </context>
    <context>
        <name>ArmLegend</name>
        <message>
            <source>Legend: {names}</source>
            <translation>Leyenda: {names}</translation>
        </message>
    </context>
    <context>
        <name>AttachDialog</name>
        <message>
            <source>A batch brewed without the trial in mind often differs in more than one thing. What differs is listed on the trial's sheet.</source>
            <translation>Un lote preparado sin pensar en el ensayo suele diferir en más de una cosa. Lo que difiere figura en la hoja del ensayo.</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Its level</source>
            <translation>Su nivel</translation>
        </message>
        <message>
            <source>Take a batch in</source>
            <translation>Incluir un lote</translation>
        </message>
        <message>
            <source>Take it in</source>
            <translation>Incluirlo</translation>
        </message>
        <message>
            <source>There is no batch that could join.</source>
            <translation>No hay ningún lote que pueda unirse.</translation>
        </message>
    </context>
    <context>
        <name>Autostart</name>
        <message>
            <source>Reminders for your jars of kombucha</source>
            <translation>Recordatorios para tus frascos de kombucha</translation>
        </message>
        <message>
            <source>Start quietly when I log in, so that reminders come</source>
            <translation>Arrancar en segundo plano al iniciar sesión, para que lleguen los recordatorios</translation>
        </message>
        <message>
            <source>The program lies in a folder whose name your desktop cannot start it from, so nothing was changed. Please move it to another folder.</source>
            <translation>El programa está en una carpeta cuyo nombre impide que tu escritorio lo inicie, así que no se cambió nada. Muévelo a otra carpeta.</translation>
        </message>
        <message>
            <source>Your desktop's autostart folder may not be written to, so nothing was changed.</source>
            <translation>No se puede escribir en la carpeta de inicio automático de tu escritorio, así que no se cambió nada.</translation>
        </message>
    </context>
    <context>
        <name>Background</name>
        <message>
            <source>Its icon is in the tray: a click on it brings the window back, and its menu ends the program. Reminders go on.</source>
            <translation>Su icono está en la bandeja: un clic en él trae de vuelta la ventana, y su menú cierra el programa. Los recordatorios siguen.</translation>
        </message>
        <message>
            <source>This desktop has no tray, so the window was made small instead of closed. Pantry &gt; Quit ends the program. Reminders go on.</source>
            <translation>Este escritorio no tiene bandeja, así que la ventana se minimizó en vez de cerrarse. Despensa &gt; Salir cierra el programa. Los recordatorios siguen.</translation>
        </message>
        <message>
            <source>brewdesk keeps running</source>
            <translation>brewdesk sigue funcionando</translation>
        </message>
    </context>
    <context>
        <name>Backups</name>
        <message>
            <source>All {rows} rows could be read: nothing is lost. Only what is made anew from them was damaged.</source>
            <translation>Se pudieron leer las {rows} filas: no se ha perdido nada. Solo se dañó lo que se vuelve a crear a partir de ellas.</translation>
        </message>
        <message>
            <source>Checked: sound. It holds {vessels} vessels, {cultures} cultures, {batches} batches, {bottlings} bottlings, {readings} readings and {photos} entries of photos.</source>
            <translation>Comprobada: está bien. Contiene {vessels} recipientes, {cultures} cultivos, {batches} lotes, {bottlings} embotellados, {readings} lecturas y {photos} entradas de fotos.</translation>
        </message>
        <message>
            <source>Copied to {folder}: {rows} rows and {photos} photos, {size}, all read back and found equal.</source>
            <translation>Copiado en {folder}: {rows} filas y {photos} fotos, {size}, todo releído y comprobado igual.</translation>
        </message>
        <message>
            <source>Going back would lose the one thing done since:
{named}</source>
            <translation>Volver atrás perdería lo único hecho desde entonces:
{named}</translation>
        </message>
        <message>
            <source>Going back would lose the {count} things done since, the last of them:
{named}</source>
            <translation>Volver atrás perdería las {count} cosas hechas desde entonces, las últimas:
{named}</translation>
        </message>
        <message>
            <source>Going back would lose the {count} things done since:
{named}</source>
            <translation>Volver atrás perdería las {count} cosas hechas desde entonces:
{named}</translation>
        </message>
        <message>
            <source>It is of another pantry, so what is here now cannot be compared with it: all of it would be replaced.</source>
            <translation>Es de otra despensa, así que lo que hay aquí ahora no se puede comparar con ella: se reemplazaría todo.</translation>
        </message>
        <message>
            <source>Its newest reading is of {when}.</source>
            <translation>Su lectura más reciente es del {when}.</translation>
        </message>
        <message>
            <source>None of the backups is sound any more. They stay where they are. What can still be read of the pantry itself can be rescued into a new file.</source>
            <translation>Ninguna de las copias de seguridad está bien ya. Se quedan donde están. Lo que aún se pueda leer de la propia despensa se puede rescatar en un archivo nuevo.</translation>
        </message>
        <message>
            <source>Nothing was done since: going back would lose nothing.</source>
            <translation>No se ha hecho nada desde entonces: volver atrás no perdería nada.</translation>
        </message>
        <message>
            <source>The day's backup could not be made, and there is no older one. {why}</source>
            <translation>No se pudo hacer la copia de seguridad del día, y no hay ninguna anterior. {why}</translation>
        </message>
        <message>
            <source>The day's backup could not be made. The last good one is of {when}, {age}. {why}</source>
            <translation>No se pudo hacer la copia de seguridad del día. La última buena es del {when}, {age}. {why}</translation>
        </message>
        <message>
            <source>The last thing that was done in it: {when}, {age}.</source>
            <translation>Lo último que se hizo en ella: {when}, {age}.</translation>
        </message>
        <message>
            <source>There is no backup yet. One is made each day on which something was done.</source>
            <translation>Aún no hay ninguna copia de seguridad. Se hace una cada día en que se hizo algo.</translation>
        </message>
        <message>
            <source>There is no reading in it.</source>
            <translation>No contiene ninguna lectura.</translation>
        </message>
        <message>
            <source>This backup is not what was written any more, so it cannot be used. It stays where it is. Please choose another.</source>
            <translation>Esta copia de seguridad ya no es lo que se escribió, así que no se puede usar. Se queda donde está. Elige otra.</translation>
        </message>
        <message>
            <source>What was entered after {when} ({age}) is not in it.</source>
            <translation>Lo anotado después del {when} ({age}) no está en ella.</translation>
        </message>
        <message>
            <source>acts in the history (for undoing)</source>
            <translation>acciones del historial (para deshacer)</translation>
        </message>
        <message>
            <source>asked for</source>
            <translation>a petición</translation>
        </message>
        <message>
            <source>batches</source>
            <translation>lotes</translation>
        </message>
        <message>
            <source>before going back to an older one</source>
            <translation>antes de volver a una anterior</translation>
        </message>
        <message>
            <source>before readings were brought in</source>
            <translation>antes de incorporar lecturas</translation>
        </message>
        <message>
            <source>before the program brought the pantry up to date</source>
            <translation>antes de que el programa actualizara la despensa</translation>
        </message>
        <message>
            <source>bottlings</source>
            <translation>embotellados</translation>
        </message>
        <message>
            <source>cultures</source>
            <translation>cultivos</translation>
        </message>
        <message>
            <source>entries of photos</source>
            <translation>entradas de fotos</translation>
        </message>
        <message>
            <source>made</source>
            <translation>hecha</translation>
        </message>
        <message>
            <source>of the day</source>
            <translation>del día</translation>
        </message>
        <message>
            <source>pieces of temperature logs</source>
            <translation>partes de registros de temperatura</translation>
        </message>
        <message>
            <source>places</source>
            <translation>lugares</translation>
        </message>
        <message>
            <source>readings</source>
            <translation>lecturas</translation>
        </message>
        <message>
            <source>reminders</source>
            <translation>recordatorios</translation>
        </message>
        <message>
            <source>settings</source>
            <translation>ajustes</translation>
        </message>
        <message>
            <source>steps of run sheets</source>
            <translation>pasos de hojas de trabajo</translation>
        </message>
        <message>
            <source>today</source>
            <translation>hoy</translation>
        </message>
        <message>
            <source>vessels</source>
            <translation>recipientes</translation>
        </message>
        <message>
            <source>what acts were about</source>
            <translation>a qué se referían las acciones</translation>
        </message>
        <message>
            <source>yesterday</source>
            <translation>ayer</translation>
        </message>
        <message>
            <source>{days} days ago</source>
            <translation>hace {days} días</translation>
        </message>
        <message>
            <source>{line} – DAMAGED</source>
            <translation>{line} – DAÑADA</translation>
        </message>
        <message>
            <source>{rows} rows could be read. Lost are these rows, and with them what belonged to them – {parts}.</source>
            <translation>Se pudieron leer {rows} filas. Se perdieron estas filas y, con ellas, lo que les pertenecía – {parts}.</translation>
        </message>
        <message>
            <source>{what}: all, and how many is not known</source>
            <translation>{what}: todo, y no se sabe cuánto</translation>
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
            <translation>Hacer copia ahora</translation>
        </message>
        <message>
            <source>Backed up as {file}.</source>
            <translation>Copia guardada como {file}.</translation>
        </message>
        <message>
            <source>Backups</source>
            <translation>Copias de seguridad</translation>
        </message>
        <message>
            <source>Backups, the newest first</source>
            <translation>Copias de seguridad, primero las más recientes</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Copy everything to a folder…</source>
            <translation>Copiar todo a una carpeta…</translation>
        </message>
        <message>
            <source>Go back now</source>
            <translation>Volver ahora</translation>
        </message>
        <message>
            <source>Go back to this one…</source>
            <translation>Volver a esta…</translation>
        </message>
        <message>
            <source>Go back? What is here now is backed up first and then set aside; nothing is deleted. The window closes and opens again.</source>
            <translation>¿Volver atrás? De lo que hay aquí ahora se hace antes una copia de seguridad y luego se aparta; no se borra nada. La ventana se cierra y se abre de nuevo.</translation>
        </message>
        <message>
            <source>Keep what is here</source>
            <translation>Conservar lo que hay</translation>
        </message>
        <message>
            <source>One is made each day on which something was done: all of two days are kept, then one of each day, week and month. They hold the records, not the files of photos; a copy to a folder of your own holds both.</source>
            <translation>Se hace una cada día en que se hizo algo: se guardan todas las de dos días, luego una de cada día, semana y mes. Contienen los registros, no los archivos de fotos; una copia en una carpeta tuya contiene ambos.</translation>
        </message>
        <message>
            <source>The backups are being checked…</source>
            <translation>Se están comprobando las copias de seguridad…</translation>
        </message>
        <message>
            <source>This pantry is on a server that other desks may be using. To go back, close it at every desk and move the backup there with “brewdesk move-store”.</source>
            <translation>Esta despensa está en un servidor que otros puestos pueden estar usando. Para volver atrás, ciérrala en todos los puestos y lleva allí la copia de seguridad con «brewdesk move-store».</translation>
        </message>
        <message>
            <source>What the chosen backup holds</source>
            <translation>Qué contiene la copia elegida</translation>
        </message>
    </context>
    <context>
        <name>BagReader</name>
        <message>
            <source>bags/L</source>
            <translation>bolsitas/L</translation>
        </message>
    </context>
    <context>
        <name>BalanceWords</name>
        <message>
            <source>Its pH goes from about {before} to {after}.</source>
            <translation>Su pH pasa de cerca de {before} a {after}.</translation>
        </message>
        <message>
            <source>Without a pH of both, that of the blend is not known.</source>
            <translation>Sin el pH de ambos, no se conoce el de la mezcla.</translation>
        </message>
        <message>
            <source>{name} holds {before}.</source>
            <translation>{name} contiene {before}.</translation>
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
            <translation>{value} ({low} a {high})</translation>
        </message>
    </context>
    <context>
        <name>BatchCurve</name>
        <message>
            <source>It is over; this is what was read until it ended.</source>
            <translation>Ha terminado; esto es lo que se leyó hasta el final.</translation>
        </message>
        <message>
            <source>Neither pH nor acidity was read of this batch.</source>
            <translation>De este lote no se leyó ni pH ni acidez.</translation>
        </message>
    </context>
    <context>
        <name>BatchReadings</name>
        <message>
            <source>Nothing was read of this batch.</source>
            <translation>De este lote no se leyó nada.</translation>
        </message>
        <message>
            <source>Readings, newest first</source>
            <translation>Lecturas, primero las más recientes</translation>
        </message>
    </context>
    <context>
        <name>BatchReport</name>
        <message>
            <source>Amount</source>
            <translation>Cantidad</translation>
        </message>
        <message>
            <source>At</source>
            <translation>Temp.</translation>
        </message>
        <message>
            <source>Batch report</source>
            <translation>Informe del lote</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Empezado</translation>
        </message>
        <message>
            <source>Cold water</source>
            <translation>Agua fría</translation>
        </message>
        <message>
            <source>Culture in at most at</source>
            <translation>Cultivo dentro como máximo a</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Filled to</source>
            <translation>Llenado hasta</translation>
        </message>
        <message>
            <source>Hot water</source>
            <translation>Agua caliente</translation>
        </message>
        <message>
            <source>In the maker's words</source>
            <translation>En palabras de quien lo hizo</translation>
        </message>
        <message>
            <source>It is over; this is what was read until it ended.</source>
            <translation>Ha terminado; esto es lo que se leyó hasta el final.</translation>
        </message>
        <message>
            <source>Last pH</source>
            <translation>Último pH</translation>
        </message>
        <message>
            <source>Look: {found}</source>
            <translation>Revisión: {found}</translation>
        </message>
        <message>
            <source>Made from the maker's own entries; brewdesk cannot check them. Readings have their uncertainty, forecasts are no guarantee, and local rules come first.</source>
            <translation>Hecho a partir de lo que anotó quien lo preparó; brewdesk no puede comprobarlo. Las lecturas tienen su incertidumbre, los pronósticos no son garantía y las normas locales van primero.</translation>
        </message>
        <message>
            <source>No warning was overridden, and no look is entered.</source>
            <translation>No se pasó por alto ninguna advertencia, y no hay ninguna revisión anotada.</translation>
        </message>
        <message>
            <source>Nothing was read of this batch.</source>
            <translation>De este lote no se leyó nada.</translation>
        </message>
        <message>
            <source>Only {shown} of {count} entries fit on one page. The process log and the HTML report have them all.</source>
            <translation>En una página caben solo {shown} de {count} entradas. El registro del proceso y el informe HTML las tienen todas.</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Página {page} de {pages}</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Componente</translation>
        </message>
        <message>
            <source>Pellicle {number} mm</source>
            <translation>Película {number} mm</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>Run sheet</source>
            <translation>Hoja de trabajo</translation>
        </message>
        <message>
            <source>Safety log</source>
            <translation>Registro de seguridad</translation>
        </message>
        <message>
            <source>Start pH read</source>
            <translation>pH inicial leído</translation>
        </message>
        <message>
            <source>Start pH reckoned</source>
            <translation>pH inicial calculado</translation>
        </message>
        <message>
            <source>Starter liquid</source>
            <translation>Líquido iniciador</translation>
        </message>
        <message>
            <source>Step</source>
            <translation>Paso</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Taste: {taste}</source>
            <translation>Sabor: {taste}</translation>
        </message>
        <message>
            <source>Tea ({kind})</source>
            <translation>Té ({kind})</translation>
        </message>
        <message>
            <source>There is no run sheet of this batch.</source>
            <translation>Este lote no tiene hoja de trabajo.</translation>
        </message>
        <message>
            <source>Thinned out to {shown} of {count} rows, spread over the whole time, so that the report is one page. The curve has every pH; the HTML report has every row.</source>
            <translation>Reducido a {shown} de {count} filas, repartidas por todo el tiempo, para que el informe ocupe una página. La curva tiene cada pH; el informe HTML tiene cada fila.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>What was read so far; without a forecast.</source>
            <translation>Lo leído hasta ahora; sin pronóstico.</translation>
        </message>
        <message>
            <source>What went in</source>
            <translation>Qué se puso dentro</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Palabras</translation>
        </message>
        <message>
            <source>at most pH {limit} from day {day} on</source>
            <translation>como máximo pH {limit} desde el día {day}</translation>
        </message>
        <message>
            <source>day</source>
            <translation>día</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>pH of the starter</source>
            <translation>pH del iniciador</translation>
        </message>
        <message>
            <source>{date}: {reason}</source>
            <translation>{date}: {reason}</translation>
        </message>
        <message>
            <source>{value} ({low} to {high})</source>
            <translation>{value} ({low} a {high})</translation>
        </message>
    </context>
    <context>
        <name>BottleAdditions</name>
        <message>
            <source>Add fruit, juice, ginger, honey…</source>
            <translation>Añadir fruta, jugo, jengibre, miel…</translation>
        </message>
        <message>
            <source>Take away addition {n}</source>
            <translation>Quitar el añadido {n}</translation>
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
            <translation>Un manómetro marca</translation>
        </message>
        <message>
            <source>Chill now</source>
            <translation>Enfriar ya</translation>
        </message>
        <message>
            <source>Conditioning</source>
            <translation>Segunda fermentación</translation>
        </message>
        <message>
            <source>Drunk up</source>
            <translation>Todo bebido</translation>
        </message>
        <message>
            <source>In the cold</source>
            <translation>En frío</translation>
        </message>
        <message>
            <source>Look now</source>
            <translation>Revisar ahora</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Más</translation>
        </message>
        <message>
            <source>Not looked at yet.</source>
            <translation>Aún sin revisar.</translation>
        </message>
        <message>
            <source>Note it</source>
            <translation>Anotarlo</translation>
        </message>
        <message>
            <source>One opened was</source>
            <translation>Al abrir una</translation>
        </message>
        <message>
            <source>Open the batch</source>
            <translation>Abrir el lote</translation>
        </message>
        <message>
            <source>Pour away</source>
            <translation>Tirar</translation>
        </message>
        <message>
            <source>Pour away…</source>
            <translation>Tirar…</translation>
        </message>
        <message>
            <source>Print labels…</source>
            <translation>Imprimir etiquetas…</translation>
        </message>
        <message>
            <source>Print the bottling sheet…</source>
            <translation>Imprimir la hoja de embotellado…</translation>
        </message>
        <message>
            <source>Soon</source>
            <translation>Pronto</translation>
        </message>
        <message>
            <source>The test bottle is</source>
            <translation>La botella de prueba está</translation>
        </message>
        <message>
            <source>They are in the cold now</source>
            <translation>Ya están en frío</translation>
        </message>
        <message>
            <source>Vented all</source>
            <translation>Presión liberada (todas)</translation>
        </message>
        <message>
            <source>What the gauge shows</source>
            <translation>Lo que marca el manómetro</translation>
        </message>
        <message>
            <source>Why are they poured away?</source>
            <translation>¿Por qué se tiran?</translation>
        </message>
        <message>
            <source>chill by</source>
            <translation>enfriar antes de</translation>
        </message>
        <message>
            <source>filled {when}</source>
            <translation>llenadas {when}</translation>
        </message>
        <message>
            <source>limit in the cold</source>
            <translation>límite en frío</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>{left} of {count} bottles</source>
            <translation>{left} de {count} botellas</translation>
        </message>
        <message>
            <source>{name} {grams} g</source>
            <translation>{name} {grams} g</translation>
        </message>
        <message>
            <source>{name}: all were vented</source>
            <translation>{name}: se liberó la presión de todas</translation>
        </message>
        <message>
            <source>{name}: drunk up</source>
            <translation>{name}: todo bebido</translation>
        </message>
        <message>
            <source>{name}: more</source>
            <translation>{name}: más</translation>
        </message>
        <message>
            <source>{name}: note the gauge</source>
            <translation>{name}: anotar el manómetro</translation>
        </message>
        <message>
            <source>{name}: one opened was {opened}</source>
            <translation>{name}: una abierta: {opened}</translation>
        </message>
        <message>
            <source>{name}: the test bottle is {feel}</source>
            <translation>{name}: botella de prueba: {feel}</translation>
        </message>
        <message>
            <source>{name}: they are in the cold now</source>
            <translation>{name}: ya están en frío</translation>
        </message>
    </context>
    <context>
        <name>BottleFill</name>
        <message>
            <source>A warning stops this. Change the bottling, or write down your reason.</source>
            <translation>Una advertencia lo impide. Cambia el embotellado o escribe tu motivo.</translation>
        </message>
        <message>
            <source>Bottles are filled from a batch that is souring. Once one is in its window, it can be chosen here, or from its jar with “Bottle it”.</source>
            <translation>Las botellas se llenan de un lote en acidificación. Cuando uno está en su ventana, se puede elegir aquí, o desde su frasco con «Embotellar».</translation>
        </message>
        <message>
            <source>Fill the bottles</source>
            <translation>Llenar las botellas</translation>
        </message>
        <message>
            <source>It is stopped. Your reason, to be kept with the bottling</source>
            <translation>Está detenido. Tu motivo, que se guardará con el embotellado</translation>
        </message>
        <message>
            <source>Not up to date: see the marked field.</source>
            <translation>Sin actualizar: mira el campo marcado.</translation>
        </message>
        <message>
            <source>Nothing to bottle yet</source>
            <translation>Aún no hay nada que embotellar</translation>
        </message>
        <message>
            <source>Print the sheet…</source>
            <translation>Imprimir la hoja…</translation>
        </message>
        <message>
            <source>Waiting for the marked field.</source>
            <translation>A la espera del campo marcado.</translation>
        </message>
        <message>
            <source>What goes into each bottle, how the pressure may rise and by when to chill stands here as soon as there is a batch.</source>
            <translation>Qué va en cada botella, cómo puede subir la presión y antes de cuándo enfriar aparece aquí en cuanto haya un lote.</translation>
        </message>
        <message>
            <source>Why fill them all the same?</source>
            <translation>¿Por qué llenarlas de todos modos?</translation>
        </message>
    </context>
    <context>
        <name>BottleForm</name>
        <message>
            <source>At the warmest</source>
            <translation>Como máximo a</translation>
        </message>
        <message>
            <source>Caps or corks from</source>
            <translation>Tapas o corchos de</translation>
        </message>
        <message>
            <source>Drink to bottle</source>
            <translation>Bebida a embotellar</translation>
        </message>
        <message>
            <source>From which batch</source>
            <translation>De qué lote</translation>
        </message>
        <message>
            <source>How fizzy</source>
            <translation>Cuánto gas</translation>
        </message>
        <message>
            <source>In the jar, with its culture</source>
            <translation>En el frasco, con su cultivo</translation>
        </message>
        <message>
            <source>Kept where</source>
            <translation>Dónde se guarda</translation>
        </message>
        <message>
            <source>More to set</source>
            <translation>Más ajustes</translation>
        </message>
        <message>
            <source>Name of the bottling</source>
            <translation>Nombre del embotellado</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Please give it a name.</source>
            <translation>Ponle un nombre.</translation>
        </message>
        <message>
            <source>Starter kept back</source>
            <translation>Iniciador reservado</translation>
        </message>
        <message>
            <source>Sugar from</source>
            <translation>Azúcar de</translation>
        </message>
        <message>
            <source>Sugar in all bottles</source>
            <translation>Azúcar total en botellas</translation>
        </message>
        <message>
            <source>Sugar left in the drink, at least</source>
            <translation>Azúcar restante, como mínimo</translation>
        </message>
        <message>
            <source>Sugar left in the drink, at most</source>
            <translation>Azúcar restante, como máximo</translation>
        </message>
        <message>
            <source>The bottles</source>
            <translation>Las botellas</translation>
        </message>
        <message>
            <source>The drink</source>
            <translation>La bebida</translation>
        </message>
        <message>
            <source>The fizz</source>
            <translation>El gas</translation>
        </message>
        <message>
            <source>The jar is emptied, and the batch is over</source>
            <translation>El frasco se vacía y el lote termina</translation>
        </message>
        <message>
            <source>Usually, there</source>
            <translation>Allí, normalmente</translation>
        </message>
        <message>
            <source>Warmest the jar has been</source>
            <translation>Máxima que tuvo el frasco</translation>
        </message>
        <message>
            <source>What goes in</source>
            <translation>Qué va dentro</translation>
        </message>
        <message>
            <source>Where they stand</source>
            <translation>Dónde están</translation>
        </message>
        <message>
            <source>Which sugar</source>
            <translation>Qué azúcar</translation>
        </message>
        <message>
            <source>as forecast</source>
            <translation>según el pronóstico</translation>
        </message>
        <message>
            <source>as reckoned</source>
            <translation>según el cálculo</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>what fits, less the starter</source>
            <translation>lo que cabe, sin el iniciador</translation>
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
            <translation>Según indica su fabricante.</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Bottles from</source>
            <translation>Botellas de</translation>
        </message>
        <message>
            <source>Headspace</source>
            <translation>Espacio de cabeza</translation>
        </message>
        <message>
            <source>Must not be put under pressure.</source>
            <translation>No debe someterse a presión.</translation>
        </message>
        <message>
            <source>No rating known: a cautious one is taken.</source>
            <translation>Sin límite conocido: se toma uno prudente.</translation>
        </message>
        <message>
            <source>Not from the stores</source>
            <translation>No de las existencias</translation>
        </message>
        <message>
            <source>Rating, over the air's</source>
            <translation>Límite manométrico</translation>
        </message>
        <message>
            <source>Take away</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Test bottle, to be felt daily</source>
            <translation>Botella de prueba, para palpar a diario</translation>
        </message>
        <message>
            <source>Volume to the brim</source>
            <translation>Volumen hasta el borde</translation>
        </message>
        <message>
            <source>What is known of them</source>
            <translation>Qué se sabe de ellas</translation>
        </message>
        <message>
            <source>type it</source>
            <translation>escríbelo</translation>
        </message>
    </context>
    <context>
        <name>BottleGroups</name>
        <message>
            <source>Add a test bottle</source>
            <translation>Añadir botella de prueba</translation>
        </message>
        <message>
            <source>Add bottles</source>
            <translation>Añadir botellas</translation>
        </message>
        <message>
            <source>Bottles, row {n}</source>
            <translation>Botellas, fila {n}</translation>
        </message>
        <message>
            <source>Take away row {n}</source>
            <translation>Quitar la fila {n}</translation>
        </message>
    </context>
    <context>
        <name>BottleOutlook</name>
        <message>
            <source>+ {low} to {high} %</source>
            <translation>+ {low} a {high} %</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>By the bottle</source>
            <translation>Por botella</translation>
        </message>
        <message>
            <source>Chill by {moment}: from then on one bottling in twenty may have passed {limit} on a warm day. More likely that would take until {likely}; feel the test bottle to know.</source>
            <translation>Enfría a más tardar el {moment}: desde entonces, uno de cada veinte embotellados puede haber superado {limit} en un día cálido. Es más probable que eso tarde hasta el {likely}; palpa la botella de prueba para saberlo.</translation>
        </message>
        <message>
            <source>If nobody chilled and all the sugar fermented: {pressure} at the warmest, and {alcohol} % more alcohol.</source>
            <translation>Si nadie enfriara y fermentara todo el azúcar: {pressure} a la temperatura más alta y {alcohol} % más de alcohol.</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Límite</translation>
        </message>
        <message>
            <source>Reckoned with {low} to {high} of sugar left in the drink.</source>
            <translation>Calculado con {low} a {high} de azúcar restante en la bebida.</translation>
        </message>
        <message>
            <source>Spoons</source>
            <translation>Cucharas</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Sugar in all: {grams} g, {fizz} wanted.</source>
            <translation>Azúcar en total: {grams} g; gas deseado: {fizz}.</translation>
        </message>
        <message>
            <source>What would help</source>
            <translation>Qué ayudaría</translation>
        </message>
        <message>
            <source>With this much sugar the bottles are not reckoned to reach their limit.</source>
            <translation>Con esta cantidad de azúcar, según el cálculo, las botellas no llegan a su límite.</translation>
        </message>
        <message>
            <source>alcohol by volume, made in the bottle</source>
            <translation>alcohol en volumen, formado en la botella</translation>
        </message>
        <message>
            <source>chill by</source>
            <translation>enfriar antes de</translation>
        </message>
        <message>
            <source>chill by, at the latest</source>
            <translation>enfriar, a más tardar</translation>
        </message>
        <message>
            <source>never</source>
            <translation>nunca</translation>
        </message>
        <message>
            <source>no deadline</source>
            <translation>sin plazo</translation>
        </message>
        <message>
            <source>no sugar</source>
            <translation>sin azúcar</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>over 8 bar</source>
            <translation>más de 8 bar</translation>
        </message>
        <message>
            <source>sugar a bottle</source>
            <translation>azúcar por botella</translation>
        </message>
        <message>
            <source>sugar a bottle: {measure}</source>
            <translation>azúcar por botella: {measure}</translation>
        </message>
        <message>
            <source>to add: the drink has enough</source>
            <translation>añadido: la bebida tiene suficiente</translation>
        </message>
        <message>
            <source>until it is as fizzy as that</source>
            <translation>hasta tener ese gas</translation>
        </message>
        <message>
            <source>{count} would stay empty.</source>
            <translation>Quedarían vacías: {count}.</translation>
        </message>
        <message>
            <source>{count} × {volume}, {kind}</source>
            <translation>{count} × {volume}, {kind}</translation>
        </message>
        <message>
            <source>{drink} of drink, room for {room}.</source>
            <translation>{drink} de bebida, sitio para {room}.</translation>
        </message>
        <message>
            <source>{grams} g</source>
            <translation>{grams} g</translation>
        </message>
        <message>
            <source>{left} is left over; {count} more of the first kind would take it.</source>
            <translation>Sobra: {left}; cabría en {count} más del primer tipo.</translation>
        </message>
        <message>
            <source>{limit}, assumed</source>
            <translation>{limit}, supuesto</translation>
        </message>
        <message>
            <source>{name} (test)</source>
            <translation>{name} (prueba)</translation>
        </message>
    </context>
    <context>
        <name>BottlePage</name>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Bottles that stand</source>
            <translation>Botellas guardadas</translation>
        </message>
        <message>
            <source>Bottles that stand, and filling bottles</source>
            <translation>Botellas guardadas y llenado de botellas</translation>
        </message>
        <message>
            <source>Fill bottles</source>
            <translation>Llenar botellas</translation>
        </message>
    </context>
    <context>
        <name>BottleReminders</name>
        <message>
            <source>By then the pressure may be too high: this comes back {day} at {time} at the latest, until the bottles are chilled.</source>
            <translation>Para entonces la presión puede ser demasiado alta: esto vuelve a más tardar el {day} a las {time}, hasta que las botellas estén enfriadas.</translation>
        </message>
        <message>
            <source>Calibrate the pH meter</source>
            <translation>Calibrar el medidor de pH</translation>
        </message>
        <message>
            <source>Chill one for some hours first, then open it slowly over the sink, under a cloth and away from your face. Write down whether it was too flat, right, or gushed; if it gushed, chill the others at once. It may hold more alcohol than the open jar did.</source>
            <translation>Enfría una primero durante unas horas y ábrela despacio sobre el fregadero, bajo un paño y lejos de tu cara. Anota si le faltaba gas, estaba bien o se desbordó; si se desbordó, enfría las demás enseguida. Puede contener más alcohol que el frasco abierto.</translation>
        </message>
        <message>
            <source>Chill the bottles now</source>
            <translation>Enfriar las botellas ya</translation>
        </message>
        <message>
            <source>Chill the bottles soon</source>
            <translation>Enfriar pronto las botellas</translation>
        </message>
        <message>
            <source>Cover your eyes and hands, do not shake, knock or open a warm bottle, and keep others away. The forecast is an estimate: if the test bottle is hard, chill them at once.</source>
            <translation>Protégete los ojos y las manos, no agites, golpees ni abras una botella caliente y mantén lejos a los demás. El pronóstico es una estimación: si la botella de prueba está dura, enfríalas enseguida.</translation>
        </message>
        <message>
            <source>Drink up the bottles</source>
            <translation>Terminar de beber las botellas</translation>
        </message>
        <message>
            <source>Even in the fridge sugar turns slowly into alcohol and pressure: open them with care.</source>
            <translation>Incluso en la nevera el azúcar se convierte despacio en alcohol y presión: ábrelas con cuidado.</translation>
        </message>
        <message>
            <source>Open one cold bottle</source>
            <translation>Abrir una botella fría</translation>
        </message>
        <message>
            <source>Press the plastic test bottle, or read its gauge, and write down what you found. Hard means: chill all of them now. A glass bottle tells nothing by its feel and can burst; handle it gently, with your eyes covered.</source>
            <translation>Aprieta la botella de plástico de prueba, o lee su manómetro, y anota lo que encontraste. Dura significa: enfríalas todas ya. Una botella de vidrio no dice nada al palparla y puede estallar; trátala con suavidad y con los ojos protegidos.</translation>
        </message>
        <message>
            <source>Press the test bottle</source>
            <translation>Apretar la botella de prueba</translation>
        </message>
        <message>
            <source>Put all of them into the fridge, and write down that you did: that ends this.</source>
            <translation>Mételas todas en la nevera y anota que lo hiciste: con eso termina.</translation>
        </message>
        <message>
            <source>The pressure may be too high since {day} at {time}: a bottle can burst.</source>
            <translation>La presión puede ser demasiado alta desde el {day} a las {time}: una botella puede estallar.</translation>
        </message>
        <message>
            <source>The pressure may become too high from {day} at {time} on.</source>
            <translation>La presión puede llegar a ser demasiado alta desde el {day} a las {time}.</translation>
        </message>
        <message>
            <source>Throw out what smells wrong or has mold; when in doubt, throw it out.</source>
            <translation>Desecha lo que huela mal o tenga moho; ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Use fresh buffers, one of them near pH 4, and keep what you find: “Is my pH meter still good?” among the questions has a button for it. Until then mistrust readings near a limit: whether a brew is sour enough should not hang on an uncalibrated meter.</source>
            <translation>Usa soluciones tampón recientes, una de ellas cerca de pH 4, y guarda lo que encuentres: «¿Sigue bien mi medidor de pH?», entre las preguntas, tiene un botón para ello. Hasta entonces, desconfía de las lecturas cercanas a un límite: que una preparación sea lo bastante ácida no debería depender de un medidor sin calibrar.</translation>
        </message>
        <message>
            <source>You wanted them used up by {day}.</source>
            <translation>Las querías terminar antes del {day}.</translation>
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
            <translation>Llenar botellas</translation>
        </message>
        <message>
            <source>Filled bottles appear here: how much pressure they likely hold, by when to chill them, and what you felt and saw.</source>
            <translation>Las botellas llenas aparecen aquí: cuánta presión tienen probablemente, antes de cuándo enfriarlas, y qué palpaste y viste.</translation>
        </message>
        <message>
            <source>No bottles stand</source>
            <translation>No hay botellas guardadas</translation>
        </message>
        <message>
            <source>Working out how much pressure they hold, and by when to chill them…</source>
            <translation>Calculando cuánta presión tienen y antes de cuándo enfriarlas…</translation>
        </message>
    </context>
    <context>
        <name>BottleStock</name>
        <message>
            <source>Not from the stores</source>
            <translation>No de las existencias</translation>
        </message>
    </context>
    <context>
        <name>BottlingSheet</name>
        <message>
            <source>Alcohol made in the bottle</source>
            <translation>Alcohol formado en la botella</translation>
        </message>
        <message>
            <source>All figures are estimates. The pace of the yeasts is hardly known beforehand, and no bottle promises to hold.</source>
            <translation>Todas las cifras son estimaciones. El ritmo de las levaduras apenas se conoce de antemano, y ninguna botella garantiza que aguante.</translation>
        </message>
        <message>
            <source>At the warmest</source>
            <translation>Como máximo a</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Bottling sheet</source>
            <translation>Hoja de embotellado</translation>
        </message>
        <message>
            <source>Chill by, at the latest</source>
            <translation>Enfriar, a más tardar</translation>
        </message>
        <message>
            <source>Close and stand them in a box</source>
            <translation>Cerrarlas y ponerlas en una caja</translation>
        </message>
        <message>
            <source>Count</source>
            <translation>Número</translation>
        </message>
        <message>
            <source>Cut small and even: whole pieces gush when the bottle is opened.</source>
            <translation>Corta en trozos pequeños y parejos: los trozos enteros hacen que se desborde al abrir la botella.</translation>
        </message>
        <message>
            <source>Feel the test bottle daily</source>
            <translation>Palpar la botella de prueba a diario</translation>
        </message>
        <message>
            <source>Fill mL</source>
            <translation>Llenado, mL</translation>
        </message>
        <message>
            <source>Fill, leaving the headspace</source>
            <translation>Llenar, dejando el espacio de cabeza</translation>
        </message>
        <message>
            <source>Glass under pressure can burst: eye protection, a crate or box with a lid, a towel over those you move.</source>
            <translation>El vidrio bajo presión puede estallar: protección ocular, un cajón o caja con tapa, una toalla sobre las que muevas.</translation>
        </message>
        <message>
            <source>Grams as above; weigh them, spoons are only about right.</source>
            <translation>Los gramos de arriba; pésalos, las cucharas solo aciertan a medias.</translation>
        </message>
        <message>
            <source>In all</source>
            <translation>En total</translation>
        </message>
        <message>
            <source>In the cold since:</source>
            <translation>En frío desde:</translation>
        </message>
        <message>
            <source>It holds alcohol, more with every day. Not for children, in pregnancy, or where alcohol must be avoided.</source>
            <translation>Contiene alcohol, cada día más. No es para niños, ni en el embarazo, ni donde haya que evitar el alcohol.</translation>
        </message>
        <message>
            <source>Kitchen measure, limit</source>
            <translation>Medida de cocina, límite</translation>
        </message>
        <message>
            <source>Look at every bottle</source>
            <translation>Mirar cada botella</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Atención</translation>
        </message>
        <message>
            <source>Never shake a bottle. Chill it through, then open it slowly, under a towel, over a sink, away from faces.</source>
            <translation>No agites nunca una botella. Enfríala del todo y ábrela despacio, bajo una toalla, sobre un fregadero, lejos de las caras.</translation>
        </message>
        <message>
            <source>No chip, no scratch, no crack. Clean, rinsed, and made for fizzy drinks.</source>
            <translation>Sin mellas, rayas ni grietas. Limpias, enjuagadas y hechas para bebidas con gas.</translation>
        </message>
        <message>
            <source>Rules and advice of the place where you live come before this sheet.</source>
            <translation>Las normas y consejos del lugar donde vives van antes que esta hoja.</translation>
        </message>
        <message>
            <source>Share out what else goes in</source>
            <translation>Repartir lo demás que va dentro</translation>
        </message>
        <message>
            <source>Soft: wait. Firm: chill one through and open it. Hard: chill all of them.</source>
            <translation>Blanda: espera. Firme: enfría una del todo y ábrela. Dura: enfríalas todas.</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>Sugar g</source>
            <translation>Azúcar g</translation>
        </message>
        <message>
            <source>Sugar into each bottle, or stirred into all of the drink</source>
            <translation>Azúcar en cada botella, o disuelto en toda la bebida</translation>
        </message>
        <message>
            <source>Test bottle hard, or the chill-by time come: all bottles into the cold. Open none warm.</source>
            <translation>Botella de prueba dura, o llegada la hora de enfriar: todas las botellas al frío. No abras ninguna caliente.</translation>
        </message>
        <message>
            <source>The same in every bottle, the test bottle too.</source>
            <translation>Lo mismo en cada botella, también en la de prueba.</translation>
        </message>
        <message>
            <source>They stand at</source>
            <translation>Están a</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Hora</translation>
        </message>
        <message>
            <source>With a lid, away from sun and people.</source>
            <translation>Con tapa, lejos del sol y de las personas.</translation>
        </message>
        <message>
            <source>at most {limit}</source>
            <translation>como máximo {limit}</translation>
        </message>
        <message>
            <source>no deadline</source>
            <translation>sin plazo</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>{low} to {high} %</source>
            <translation>{low} a {high} %</translation>
        </message>
        <message>
            <source>{name} {grams} g</source>
            <translation>{name} {grams} g</translation>
        </message>
        <message>
            <source>{name}, test</source>
            <translation>{name}, prueba</translation>
        </message>
        <message>
            <source>{volume} into {count} bottles, {fizz}</source>
            <translation>{volume} en {count} botellas, {fizz}</translation>
        </message>
    </context>
    <context>
        <name>Bottlings</name>
        <message>
            <source>Add less sugar, fill cooler, or use bottles with a higher rating.</source>
            <translation>Añade menos azúcar, llena más en frío o usa botellas con un límite mayor.</translation>
        </message>
        <message>
            <source>Agave syrup</source>
            <translation>Sirope de agave</translation>
        </message>
        <message>
            <source>Apple juice</source>
            <translation>Jugo de manzana</translation>
        </message>
        <message>
            <source>Apples</source>
            <translation>Manzanas</translation>
        </message>
        <message>
            <source>Apricots</source>
            <translation>Albaricoques</translation>
        </message>
        <message>
            <source>Blackberries</source>
            <translation>Moras</translation>
        </message>
        <message>
            <source>Blueberries</source>
            <translation>Arándanos</translation>
        </message>
        <message>
            <source>Bottles have cost people their eyes: when moved, when dropped, and by the flying cap.</source>
            <translation>Hay quien ha perdido un ojo por una botella: al moverla, al caerse y por el tapón que sale volando.</translation>
        </message>
        <message>
            <source>Brown sugar</source>
            <translation>Azúcar moreno</translation>
        </message>
        <message>
            <source>Chill by {moment} at the latest, sooner once it is right.</source>
            <translation>Enfría a más tardar el {moment}, antes si ya está bien.</translation>
        </message>
        <message>
            <source>Chill now: since {moment} lively yeasts could have reached the limit.</source>
            <translation>Enfría ya: desde el {moment} unas levaduras vivas podrían haber alcanzado el límite.</translation>
        </message>
        <message>
            <source>Chilling takes hours too: less than {least_hours} hours leave no time to save them.</source>
            <translation>Enfriar también lleva horas: menos de {least_hours} horas no dejan tiempo para salvarlas.</translation>
        </message>
        <message>
            <source>Cold slows the yeasts and does not end them.</source>
            <translation>El frío frena las levaduras, pero no las para.</translation>
        </message>
        <message>
            <source>Cover them, wear eye protection, and open them one by one over a sink, slowly and under a towel. Keep what you do not drink in the coldest place. </source>
            <translation>Cúbrelas, lleva protección ocular y ábrelas una por una sobre un fregadero, despacio y bajo una toalla. Guarda lo que no bebas en el lugar más frío. </translation>
        </message>
        <message>
            <source>Cranberry juice, unsweetened</source>
            <translation>Jugo de arándano rojo, sin azúcar</translation>
        </message>
        <message>
            <source>Even in the cold they may have reached their limit by day {chill_by_days}.</source>
            <translation>Incluso en frío pueden haber alcanzado su límite para el día {chill_by_days}.</translation>
        </message>
        <message>
            <source>Figs</source>
            <translation>Higos</translation>
        </message>
        <message>
            <source>Fill one plastic bottle made for fizzy drinks, and feel it daily.</source>
            <translation>Llena una botella de plástico hecha para bebidas con gas y pálpala a diario.</translation>
        </message>
        <message>
            <source>Fill one plastic test bottle, and chill all of them once it is hard.</source>
            <translation>Llena una botella de prueba de plástico y enfríalas todas cuando esté dura.</translation>
        </message>
        <message>
            <source>Ginger root</source>
            <translation>Raíz de jengibre</translation>
        </message>
        <message>
            <source>Glass under pressure can burst without warning.</source>
            <translation>El vidrio bajo presión puede estallar sin aviso.</translation>
        </message>
        <message>
            <source>Grape juice</source>
            <translation>Jugo de uva</translation>
        </message>
        <message>
            <source>Grapefruit</source>
            <translation>Pomelo</translation>
        </message>
        <message>
            <source>Grapes</source>
            <translation>Uvas</translation>
        </message>
        <message>
            <source>Honey</source>
            <translation>Miel</translation>
        </message>
        <message>
            <source>How lively your yeasts are is hardly known beforehand. A plastic bottle shows it: soft, firm, hard.</source>
            <translation>Lo vivas que son tus levaduras apenas se sabe de antemano. Una botella de plástico lo muestra: blanda, firme, dura.</translation>
        </message>
        <message>
            <source>If you know the rating, choose “Rated by its maker” and type it.</source>
            <translation>Si conoces el límite, elige «Indicada por su fabricante» y escríbelo.</translation>
        </message>
        <message>
            <source>In the bottle, alcohol rises by {low_abv} to {high_abv} for this fizz, and up to {most_abv} if all the sugar ferments.</source>
            <translation>En la botella, el alcohol sube de {low_abv} a {high_abv} con este gas, y hasta {most_abv} si fermenta todo el azúcar.</translation>
        </message>
        <message>
            <source>In the cold it still rises slowly. Drink it before {until}.</source>
            <translation>En frío sigue subiendo despacio. Bébelo antes del {until}.</translation>
        </message>
        <message>
            <source>Keep them cooler, no warmer than {temperature} °C, and chill sooner.</source>
            <translation>Mantenlas más frescas, a no más de {temperature} °C, y enfría antes.</translation>
        </message>
        <message>
            <source>Kiwi</source>
            <translation>Kiwi</translation>
        </message>
        <message>
            <source>Leave more headspace: at least 4 % of the bottle.</source>
            <translation>Deja más espacio de cabeza: al menos el 4 % de la botella.</translation>
        </message>
        <message>
            <source>Lemon juice</source>
            <translation>Jugo de limón</translation>
        </message>
        <message>
            <source>Less fizz alone does not help with these bottles.</source>
            <translation>Menos gas, por sí solo, no ayuda con estas botellas.</translation>
        </message>
        <message>
            <source>Less fizz: up to {volumes} volumes, with no more sugar than that takes.</source>
            <translation>Menos gas: hasta {volumes} volúmenes, sin más azúcar del que eso requiere.</translation>
        </message>
        <message>
            <source>Likely {volumes}, at {bar}; it may be as much as {high}.</source>
            <translation>Probablemente {volumes}, a {bar}; puede llegar hasta {high}.</translation>
        </message>
        <message>
            <source>Mango</source>
            <translation>Mango</translation>
        </message>
        <message>
            <source>Maple syrup</source>
            <translation>Jarabe de arce</translation>
        </message>
        <message>
            <source>No sugar is left that could bring them to their limit, as far as is known.</source>
            <translation>Hasta donde se sabe, no queda azúcar que pueda llevarlas a su límite.</translation>
        </message>
        <message>
            <source>Only a plastic bottle can be felt, and there is none among these.</source>
            <translation>Solo se puede palpar una botella de plástico, y no hay ninguna entre estas.</translation>
        </message>
        <message>
            <source>Orange juice</source>
            <translation>Jugo de naranja</translation>
        </message>
        <message>
            <source>Oranges</source>
            <translation>Naranjas</translation>
        </message>
        <message>
            <source>Peaches</source>
            <translation>Melocotones</translation>
        </message>
        <message>
            <source>Pears</source>
            <translation>Peras</translation>
        </message>
        <message>
            <source>Pineapple</source>
            <translation>Piña</translation>
        </message>
        <message>
            <source>Pineapple juice</source>
            <translation>Jugo de piña</translation>
        </message>
        <message>
            <source>Please enter at least one kind of bottles.</source>
            <translation>Indica al menos un tipo de botellas.</translation>
        </message>
        <message>
            <source>Please say how it felt.</source>
            <translation>Indica cómo estaba al palparla.</translation>
        </message>
        <message>
            <source>Please say how it was.</source>
            <translation>Indica cómo estaba.</translation>
        </message>
        <message>
            <source>Please type the rating that their maker gives.</source>
            <translation>Escribe el límite que indica su fabricante.</translation>
        </message>
        <message>
            <source>Please type what the gauge shows.</source>
            <translation>Escribe lo que marca el manómetro.</translation>
        </message>
        <message>
            <source>Plums</source>
            <translation>Ciruelas</translation>
        </message>
        <message>
            <source>Pomegranate juice</source>
            <translation>Jugo de granada</translation>
        </message>
        <message>
            <source>Pomegranate seeds</source>
            <translation>Granos de granada</translation>
        </message>
        <message>
            <source>Put all bottles in the cold now. Open none warm, and none to let gas out. </source>
            <translation>Pon ahora todas las botellas en frío. No abras ninguna caliente, ni ninguna para dejar salir gas. </translation>
        </message>
        <message>
            <source>Raspberries</source>
            <translation>Frambuesas</translation>
        </message>
        <message>
            <source>Some of these bottles have no rating from their maker.</source>
            <translation>Algunas de estas botellas no tienen un límite indicado por su fabricante.</translation>
        </message>
        <message>
            <source>Strawberries</source>
            <translation>Fresas</translation>
        </message>
        <message>
            <source>Sweet cherries</source>
            <translation>Cerezas dulces</translation>
        </message>
        <message>
            <source>Tell those who drink it. For children, in pregnancy and where alcohol must be avoided, leave it. </source>
            <translation>Díselo a quienes lo beban. No es para niños, ni en el embarazo, ni donde haya que evitar el alcohol. </translation>
        </message>
        <message>
            <source>That comes on top of what is in the drink already. Some rules call a drink alcoholic from {threshold_abv}; bought kombuchas have been found well above.</source>
            <translation>Se suma a lo que ya hay en la bebida. Algunas normas consideran alcohólica una bebida a partir de {threshold_abv}; se han encontrado kombuchas compradas muy por encima.</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>La cantidad</translation>
        </message>
        <message>
            <source>The amount to bottle</source>
            <translation>La cantidad que se embotella</translation>
        </message>
        <message>
            <source>The bottles hold only {high}. Add bottles, or bottle less.</source>
            <translation>En las botellas caben solo {high}. Añade botellas o embotella menos.</translation>
        </message>
        <message>
            <source>The fizz</source>
            <translation>El gas</translation>
        </message>
        <message>
            <source>The headspace</source>
            <translation>El espacio de cabeza</translation>
        </message>
        <message>
            <source>The least share of sugar</source>
            <translation>La proporción mínima de azúcar</translation>
        </message>
        <message>
            <source>The least sugar left in the drink</source>
            <translation>El mínimo de azúcar que queda en la bebida</translation>
        </message>
        <message>
            <source>The most share of sugar</source>
            <translation>La proporción máxima de azúcar</translation>
        </message>
        <message>
            <source>The most sugar left in the drink</source>
            <translation>El máximo de azúcar que queda en la bebida</translation>
        </message>
        <message>
            <source>The number of bottles</source>
            <translation>El número de botellas</translation>
        </message>
        <message>
            <source>The pressure</source>
            <translation>La presión</translation>
        </message>
        <message>
            <source>The rating</source>
            <translation>El límite de presión</translation>
        </message>
        <message>
            <source>The starter kept back</source>
            <translation>El iniciador reservado</translation>
        </message>
        <message>
            <source>The sugar in all</source>
            <translation>El azúcar en total</translation>
        </message>
        <message>
            <source>The temperature of the cold</source>
            <translation>La temperatura del frío</translation>
        </message>
        <message>
            <source>The temperature of the jar</source>
            <translation>La temperatura del frasco</translation>
        </message>
        <message>
            <source>The test bottle was hard.</source>
            <translation>La botella de prueba estaba dura.</translation>
        </message>
        <message>
            <source>The warmest temperature</source>
            <translation>La temperatura más alta</translation>
        </message>
        <message>
            <source>Then the glass ones hold as much, and it goes on rising while they stand warm.</source>
            <translation>Entonces las de vidrio tienen la misma, y sigue subiendo mientras estén en caliente.</translation>
        </message>
        <message>
            <source>There are only {high} bottles left.</source>
            <translation>Solo quedan {high} botellas.</translation>
        </message>
        <message>
            <source>There is a warning that stops this. Write down why you fill them all the same.</source>
            <translation>Hay una advertencia que lo impide. Escribe por qué las llenas de todos modos.</translation>
        </message>
        <message>
            <source>There is no culture in this jar to keep it with. Keep it with a culture at rest, or leave the batch as it is.</source>
            <translation>En este frasco no hay un cultivo con el que guardarlo. Guárdalo con un cultivo en reposo, o deja el lote como está.</translation>
        </message>
        <message>
            <source>There is no test bottle among them.</source>
            <translation>No hay ninguna botella de prueba entre ellas.</translation>
        </message>
        <message>
            <source>These bottles are gone already.</source>
            <translation>Estas botellas ya no están.</translation>
        </message>
        <message>
            <source>These bottles are not conditioning any more.</source>
            <translation>Estas botellas ya no están en segunda fermentación.</translation>
        </message>
        <message>
            <source>These bottles may pass their limit within {hours} hours.</source>
            <translation>Estas botellas pueden pasar su límite en menos de {hours} horas.</translation>
        </message>
        <message>
            <source>They are reckoned with a cautious {ceiling_bar}, our reading of the glass trade's figure for fizzy-drink glass. No one has promised that yours hold it.</source>
            <translation>Se calculan con un valor prudente de {ceiling_bar}, nuestra lectura de la cifra del sector para vidrio de bebidas con gas. Nadie ha garantizado que las tuyas lo aguanten.</translation>
        </message>
        <message>
            <source>This is before the bottles were filled.</source>
            <translation>Esto es antes de que se llenaran las botellas.</translation>
        </message>
        <message>
            <source>Use bottles with a higher rating from their maker.</source>
            <translation>Usa botellas cuyo fabricante indique un límite mayor.</translation>
        </message>
        <message>
            <source>Use other bottles: sound glass or plastic made for fizzy drinks.</source>
            <translation>Usa otras botellas: vidrio en buen estado o plástico hecho para bebidas con gas.</translation>
        </message>
        <message>
            <source>Watermelon</source>
            <translation>Sandía</translation>
        </message>
        <message>
            <source>Wear eye protection. Stand the bottles in a crate or box with a lid, and lay a towel over those you move. Never shake one. Chill it through, then open it slowly over a sink, under a towel. </source>
            <translation>Lleva protección ocular. Pon las botellas en un cajón o caja con tapa y coloca una toalla sobre las que muevas. No agites nunca ninguna. Enfríala del todo y ábrela despacio sobre un fregadero, bajo una toalla. </translation>
        </message>
        <message>
            <source>Where your local rules ask for more, follow them.</source>
            <translation>Donde tus normas locales pidan más, síguelas.</translation>
        </message>
        <message>
            <source>White sugar</source>
            <translation>Azúcar blanco</translation>
        </message>
        <message>
            <source>about {days} days</source>
            <translation>unos {days} días</translation>
        </message>
        <message>
            <source>gauge {bar}</source>
            <translation>manómetro {bar}</translation>
        </message>
        <message>
            <source>less than a day</source>
            <translation>menos de un día</translation>
        </message>
        <message>
            <source>note “{text}”</source>
            <translation>nota «{text}»</translation>
        </message>
        <message>
            <source>opened, {opened}</source>
            <translation>abierta, {opened}</translation>
        </message>
        <message>
            <source>over 8 bar</source>
            <translation>más de 8 bar</translation>
        </message>
        <message>
            <source>test bottle {feel}</source>
            <translation>botella de prueba: {feel}</translation>
        </message>
        <message>
            <source>vented</source>
            <translation>presión liberada</translation>
        </message>
        <message>
            <source>{low} to {high} days</source>
            <translation>{low} a {high} días</translation>
        </message>
        <message>
            <source>{name} chilled at {temperature}</source>
            <translation>{name}: enfriado a {temperature}</translation>
        </message>
        <message>
            <source>{name} drunk up</source>
            <translation>{name}: todo bebido</translation>
        </message>
        <message>
            <source>{name} poured away: {reason}</source>
            <translation>{name}: tirado: {reason}</translation>
        </message>
        <message>
            <source>{name}: corrected to {check}</source>
            <translation>{name}: corregido a {check}</translation>
        </message>
        <message>
            <source>{name}: {check}</source>
            <translation>{name}: {check}</translation>
        </message>
        <message>
            <source>{name}: {check} taken out</source>
            <translation>{name}: {check}, quitado</translation>
        </message>
        <message>
            <source>{name}: {volume} in {count} bottles</source>
            <translation>{name}: {volume} en {count} botellas</translation>
        </message>
        <message>
            <source>{name}: {volume} in {count} bottles, in spite of the warning: {reason}</source>
            <translation>{name}: {volume} en {count} botellas, a pesar de la advertencia: {reason}</translation>
        </message>
        <message>
            <source>{number} volumes, a gentle prickle</source>
            <translation>{number} volúmenes, un cosquilleo suave</translation>
        </message>
        <message>
            <source>{number} volumes, fizzy as beer</source>
            <translation>{number} volúmenes, con gas como la cerveza</translation>
        </message>
        <message>
            <source>{number} volumes, hardly fizzy</source>
            <translation>{number} volúmenes, apenas gas</translation>
        </message>
        <message>
            <source>{number} volumes, lively as lemonade</source>
            <translation>{number} volúmenes, vivo como una gaseosa</translation>
        </message>
        <message>
            <source>{number} volumes, wild</source>
            <translation>{number} volúmenes, desbocado</translation>
        </message>
    </context>
    <context>
        <name>Calendar</name>
        <message>
            <source>1 reminder is in the calendar file {path}.</source>
            <translation>En el archivo de calendario {path} hay 1 recordatorio.</translation>
        </message>
        <message>
            <source>Best before</source>
            <translation>Consumo preferente</translation>
        </message>
        <message>
            <source>Calibration</source>
            <translation>Calibración</translation>
        </message>
        <message>
            <source>Chilling bottles</source>
            <translation>Enfriar botellas</translation>
        </message>
        <message>
            <source>Due in the pantry</source>
            <translation>Pendiente en la despensa</translation>
        </message>
        <message>
            <source>Feeding</source>
            <translation>Alimentación</translation>
        </message>
        <message>
            <source>Look for mold</source>
            <translation>Buscar moho</translation>
        </message>
        <message>
            <source>Look for the film</source>
            <translation>Buscar la película</translation>
        </message>
        <message>
            <source>Nothing is open: the calendar file {path} is empty.</source>
            <translation>No hay nada pendiente: el archivo de calendario {path} está vacío.</translation>
        </message>
        <message>
            <source>Own reminder</source>
            <translation>Recordatorio propio</translation>
        </message>
        <message>
            <source>Pressure check</source>
            <translation>Control de presión</translation>
        </message>
        <message>
            <source>Tasting</source>
            <translation>Cata</translation>
        </message>
        <message>
            <source>Test bottle</source>
            <translation>Botella de prueba</translation>
        </message>
        <message>
            <source>The calendar file {path} could not be written; what stood there before still does. Please check that its folder is there and may be written to. The due list itself is not affected.</source>
            <translation>No se pudo escribir el archivo de calendario {path}; lo que había antes sigue ahí. Comprueba que su carpeta exista y que se pueda escribir en ella. La lista de pendientes no se ve afectada.</translation>
        </message>
        <message>
            <source>The file {path} is no calendar, so it was left as it is. Please choose another name.</source>
            <translation>El archivo {path} no es un calendario, así que se dejó como estaba. Elige otro nombre.</translation>
        </message>
        <message>
            <source>Topping up</source>
            <translation>Relleno</translation>
        </message>
        <message>
            <source>pH check</source>
            <translation>Control del pH</translation>
        </message>
        <message>
            <source>{count} reminders are in the calendar file {path}.</source>
            <translation>En el archivo de calendario {path} hay {count} recordatorios.</translation>
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
            <translation>Archivo de calendario de los pendientes</translation>
        </message>
        <message>
            <source>Calendar files (*.ics)</source>
            <translation>Archivos de calendario (*.ics)</translation>
        </message>
    </context>
    <context>
        <name>CalendarPathEditor</name>
        <message>
            <source>Choose where the calendar file is kept</source>
            <translation>Elige dónde se guarda el archivo de calendario</translation>
        </message>
        <message>
            <source>Choose…</source>
            <translation>Elegir…</translation>
        </message>
        <message>
            <source>Keep the calendar file up to date no longer</source>
            <translation>Dejar de actualizar el archivo de calendario</translation>
        </message>
        <message>
            <source>No file is kept</source>
            <translation>No se guarda ningún archivo</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Detener</translation>
        </message>
    </context>
    <context>
        <name>CareActs</name>
        <message>
            <source>Caption of a photo of {name} changed</source>
            <translation>Pie de una foto de {name} cambiado</translation>
        </message>
        <message>
            <source>Photo of {name} added</source>
            <translation>Foto de {name} añadida</translation>
        </message>
        <message>
            <source>Photo of {name} removed</source>
            <translation>Foto de {name} quitada</translation>
        </message>
        <message>
            <source>Temperatures of {name} from {file} taken out</source>
            <translation>Temperaturas de {name} de {file} quitadas</translation>
        </message>
        <message>
            <source>pH {ph} of {name}</source>
            <translation>pH {ph} de {name}</translation>
        </message>
        <message>
            <source>{care}: {name}</source>
            <translation>{care}: {name}</translation>
        </message>
        <message>
            <source>{count} photos of {name} added</source>
            <translation>{count} fotos de {name} añadidas</translation>
        </message>
        <message>
            <source>{count} temperatures of {name} read from {file}</source>
            <translation>{count} temperaturas de {name} leídas de {file}</translation>
        </message>
        <message>
            <source>{meter} calibrated</source>
            <translation>{meter} calibrado</translation>
        </message>
        <message>
            <source>{meter} calibrated, slope {slope} %</source>
            <translation>{meter} calibrado, pendiente {slope} %</translation>
        </message>
        <message>
            <source>{name} cleared of suspicion</source>
            <translation>{name} libre de sospecha</translation>
        </message>
        <message>
            <source>{name} fed with {volume}</source>
            <translation>{name} alimentado con {volume}</translation>
        </message>
        <message>
            <source>{name} given away</source>
            <translation>{name} regalado</translation>
        </message>
        <message>
            <source>{name} given to {to}</source>
            <translation>{name} regalado a {to}</translation>
        </message>
        <message>
            <source>{name} has grown</source>
            <translation>{name} ha crecido</translation>
        </message>
        <message>
            <source>{name} looked at: {found}</source>
            <translation>{name} revisado: {found}</translation>
        </message>
        <message>
            <source>{name} lost: {reason}</source>
            <translation>{name} perdido: {reason}</translation>
        </message>
        <message>
            <source>{name} lost: {reason}; flagged with it: {flagged}</source>
            <translation>{name} perdido: {reason}; marcados con él: {flagged}</translation>
        </message>
        <message>
            <source>{name} moved to {vessel}</source>
            <translation>{name} trasladado a {vessel}</translation>
        </message>
        <message>
            <source>{name} poured over into {vessel}</source>
            <translation>{name} trasvasado a {vessel}</translation>
        </message>
        <message>
            <source>{name} put to rest in {vessel}, {volume}</source>
            <translation>{name} puesto en reposo en {vessel}, {volume}</translation>
        </message>
        <message>
            <source>{name} removed</source>
            <translation>{name} quitado</translation>
        </message>
        <message>
            <source>{name} retired</source>
            <translation>{name} retirado</translation>
        </message>
        <message>
            <source>{name} split from {parent}</source>
            <translation>{name} separado de {parent}</translation>
        </message>
        <message>
            <source>{name} split from {parent} into {vessel}</source>
            <translation>{name} separado de {parent} en {vessel}</translation>
        </message>
        <message>
            <source>{name} taken out of its vessel</source>
            <translation>{name} sacado de su recipiente</translation>
        </message>
        <message>
            <source>{name} topped up with {volume}</source>
            <translation>{name} rellenado con {volume}</translation>
        </message>
        <message>
            <source>{name} topped up with {volume} of sweet tea</source>
            <translation>{name} rellenado con {volume} de té azucarado</translation>
        </message>
        <message>
            <source>{name}: growing a culture in {vessel}</source>
            <translation>{name}: un cultivo crece en {vessel}</translation>
        </message>
        <message>
            <source>{parents} merged into {name}</source>
            <translation>{parents} unidos en {name}</translation>
        </message>
        <message>
            <source>{temperature} in {name}</source>
            <translation>{temperature} en {name}</translation>
        </message>
        <message>
            <source>{temperature} in {name} taken out</source>
            <translation>{temperature} en {name}, quitado</translation>
        </message>
        <message>
            <source>{volume} of starter lent by {name} to {to}</source>
            <translation>{volume} de iniciador prestados por {name} a {to}</translation>
        </message>
        <message>
            <source>{volume} of {name} drawn off</source>
            <translation>{volume} de {name} extraídos</translation>
        </message>
        <message>
            <source>{volume} of {name} kept as starter with {to}</source>
            <translation>{volume} de {name} guardados como iniciador con {to}</translation>
        </message>
        <message>
            <source>{volume} of {name} lost</source>
            <translation>{volume} de {name} perdidos</translation>
        </message>
        <message>
            <source>{volume} of {name} poured into {into}</source>
            <translation>{volume} de {name} vertidos en {into}</translation>
        </message>
        <message>
            <source>{volume} of {name} taken as a sample</source>
            <translation>{volume} de {name} tomados como muestra</translation>
        </message>
    </context>
    <context>
        <name>CareDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>In no vessel</source>
            <translation>En ningún recipiente</translation>
        </message>
    </context>
    <context>
        <name>CarryDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Do it</source>
            <translation>Hacerlo</translation>
        </message>
        <message>
            <source>How much</source>
            <translation>Cuánto</translation>
        </message>
        <message>
            <source>In which vessel</source>
            <translation>En qué recipiente</translation>
        </message>
        <message>
            <source>Liquid it rests in (may stay empty)</source>
            <translation>Líquido en el que reposa (puede quedar vacío)</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Name of the daughter</source>
            <translation>Nombre del cultivo hijo</translation>
        </message>
        <message>
            <source>One name for both cultures, if they shall be one (may stay empty)</source>
            <translation>Un nombre para ambos cultivos, si han de ser uno (puede quedar vacío)</translation>
        </message>
        <message>
            <source>There is no vessel for this now.</source>
            <translation>Ahora no hay recipiente para esto.</translation>
        </message>
        <message>
            <source>Thickness of its pellicle</source>
            <translation>Grosor de su película</translation>
        </message>
        <message>
            <source>What is meant</source>
            <translation>Qué se quiere hacer</translation>
        </message>
        <message>
            <source>Where to</source>
            <translation>Adónde</translation>
        </message>
        <message>
            <source>With which culture</source>
            <translation>Con qué cultivo</translation>
        </message>
        <message>
            <source>may stay empty</source>
            <translation>puede quedar vacío</translation>
        </message>
        <message>
            <source>{vessel} · {batch}</source>
            <translation>{vessel} · {batch}</translation>
        </message>
        <message>
            <source>{what}, into {target}</source>
            <translation>{what}, a {target}</translation>
        </message>
        <message>
            <source>{what}: {carried} to {target}</source>
            <translation>{what}: {carried} a {target}</translation>
        </message>
    </context>
    <context>
        <name>ChartLegend</name>
        <message>
            <source>Legend: {entries}</source>
            <translation>Leyenda: {entries}</translation>
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
            <translation>Liberar</translation>
        </message>
        <message>
            <source>Clear {name} of suspicion</source>
            <translation>Liberar {name} de sospecha</translation>
        </message>
        <message>
            <source>No look can prove that there is no mold. Clear it only if you have watched it long enough and are sure; the program takes your word and keeps it.</source>
            <translation>Ninguna revisión puede demostrar que no haya moho. Libéralo solo si lo has vigilado el tiempo suficiente y tienes la certeza; el programa acepta tu palabra y la guarda.</translation>
        </message>
        <message>
            <source>Why you are sure</source>
            <translation>Por qué es seguro</translation>
        </message>
    </context>
    <context>
        <name>ClosingDialog</name>
        <message>
            <source>A timer is running</source>
            <translation>Hay un temporizador en marcha</translation>
        </message>
        <message>
            <source>Close all the same</source>
            <translation>Cerrar de todos modos</translation>
        </message>
        <message>
            <source>Close while a timer is running?</source>
            <translation>¿Cerrar con un temporizador en marcha?</translation>
        </message>
        <message>
            <source>It goes on while brewdesk is closed, but nothing will ring.</source>
            <translation>Sigue mientras brewdesk está cerrado, pero no sonará nada.</translation>
        </message>
        <message>
            <source>Keep it open</source>
            <translation>Dejarlo abierto</translation>
        </message>
        <message>
            <source>Settings can keep brewdesk running in the tray instead.</source>
            <translation>En Ajustes puedes hacer que brewdesk siga en la bandeja.</translation>
        </message>
        <message>
            <source>{batch}: “{step}” ends at {time}.</source>
            <translation>{batch}: «{step}» termina a las {time}.</translation>
        </message>
    </context>
    <context>
        <name>CopyDialog</name>
        <message>
            <source>Choose a folder…</source>
            <translation>Elegir carpeta…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Copy everything to a folder</source>
            <translation>Copiar todo a una carpeta</translation>
        </message>
        <message>
            <source>Open it in a window of its own</source>
            <translation>Abrirla en una ventana propia</translation>
        </message>
        <message>
            <source>The pantry and the files of all its photos are copied into a new folder, on a memory stick for example. The copy is read back and compared, and can be opened as it is. The pantry itself stays as it is.

Photos go along unchanged, with whatever the camera wrote into them.</source>
            <translation>La despensa y los archivos de todas sus fotos se copian en una carpeta nueva, por ejemplo en una memoria USB. La copia se relee y se compara, y se puede abrir tal cual. La propia despensa queda como está.

Las fotos van sin cambios, con todo lo que la cámara escribió en ellas.</translation>
        </message>
        <message>
            <source>Where the copy is to be</source>
            <translation>Dónde irá la copia</translation>
        </message>
    </context>
    <context>
        <name>CostLegend</name>
        <message>
            <source>no price known</source>
            <translation>sin precio conocido</translation>
        </message>
    </context>
    <context>
        <name>CostPane</name>
        <message>
            <source> times</source>
            <translation> veces</translation>
        </message>
        <message>
            <source>A bottle is filled so often</source>
            <translation>Una botella se llena</translation>
        </message>
        <message>
            <source>A litre in the shop</source>
            <translation>Un litro en la tienda</translation>
        </message>
        <message>
            <source>An assumption, until you say how often yours last.</source>
            <translation>Una suposición, hasta que digas cuántos usos duran las tuyas.</translation>
        </message>
        <message>
            <source>Batches begun in</source>
            <translation>Lotes empezados en</translation>
        </message>
        <message>
            <source>Each filling costs this share of the bottle.</source>
            <translation>Cada llenado cuesta esta parte de la botella.</translation>
        </message>
        <message>
            <source>No batch was begun in this year. Once one is, its cost stands here.</source>
            <translation>Este año no se empezó ningún lote. Cuando empiece uno, su coste aparecerá aquí.</translation>
        </message>
        <message>
            <source>Not all is paid in {currency}, so nothing is compared.</source>
            <translation>No todo se pagó en {currency}, así que no se compara nada.</translation>
        </message>
        <message>
            <source>Of the drink that yours takes the place of.</source>
            <translation>De la bebida a la que sustituye la tuya.</translation>
        </message>
        <message>
            <source>Of {all} batches, {count} gave nothing to drink yet; what they cost counts towards a litre only once some is drawn off.</source>
            <translation>De {all} lotes, {count} aún no dieron nada que beber; lo que cuestan cuenta por litro solo cuando se extraiga algo.</translation>
        </message>
        <message>
            <source>Of {all} batches, {count} used something without a known price: sums with them are “at least”, savings “at most”.</source>
            <translation>De {all} lotes, {count} usaron algo sin precio conocido: las sumas con ellos son «al menos», los ahorros «como máximo».</translation>
        </message>
        <message>
            <source>Save as a table (CSV)…</source>
            <translation>Guardar como tabla (CSV)…</translation>
        </message>
        <message>
            <source>Save the costs as a table</source>
            <translation>Guardar los costes como tabla</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Guardado como {file}</translation>
        </message>
        <message>
            <source>Tables (*.csv)</source>
            <translation>Tablas (*.csv)</translation>
        </message>
        <message>
            <source>Type what a litre costs in the shop to see what you saved.</source>
            <translation>Escribe lo que cuesta un litro en la tienda para ver cuánto ahorraste.</translation>
        </message>
        <message>
            <source>What each batch cost</source>
            <translation>Qué costó cada lote</translation>
        </message>
        <message>
            <source>a litre</source>
            <translation>por litro</translation>
        </message>
        <message>
            <source>costs-{year}.csv</source>
            <translation>costes-{year}.csv</translation>
        </message>
        <message>
            <source>drunk or in bottles</source>
            <translation>bebido o en botellas</translation>
        </message>
        <message>
            <source>spent</source>
            <translation>gastado</translation>
        </message>
        <message>
            <source>type it, in {currency}</source>
            <translation>escríbelo, en {currency}</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>No se pudo escribir {file}. Elige otra carpeta.</translation>
        </message>
    </context>
    <context>
        <name>CostTable</name>
        <message>
            <source>A bottle</source>
            <translation>Por botella</translation>
        </message>
        <message>
            <source>A litre</source>
            <translation>Por litro</translation>
        </message>
        <message>
            <source>All of it priced</source>
            <translation>Todo con precio</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Empezado</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Currency</source>
            <translation>Moneda</translation>
        </message>
        <message>
            <source>Litres drunk</source>
            <translation>Litros bebidos</translation>
        </message>
        <message>
            <source>Saved against the shop</source>
            <translation>Ahorro frente a la tienda</translation>
        </message>
        <message>
            <source>Total</source>
            <translation>Total</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
        </message>
    </context>
    <context>
        <name>CostsModel</name>
        <message>
            <source>A bottle</source>
            <translation>Por botella</translation>
        </message>
        <message>
            <source>A litre</source>
            <translation>Por litro</translation>
        </message>
        <message>
            <source>Against the shop</source>
            <translation>Frente a la tienda</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Empezado</translation>
        </message>
        <message>
            <source>Cost</source>
            <translation>Coste</translation>
        </message>
        <message>
            <source>Drunk</source>
            <translation>Bebido</translation>
        </message>
        <message>
            <source>What it is made of</source>
            <translation>De qué se compone</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>aún no</translation>
        </message>
    </context>
    <context>
        <name>CrashDialog</name>
        <message>
            <source>A mistake in the program</source>
            <translation>Un error en el programa</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Copy the text</source>
            <translation>Copiar el texto</translation>
        </message>
        <message>
            <source>If you want to help to mend it, send this report to those who gave you the program. It is meant to hold nothing of your pantry, and neither your name nor that of your computer. Please look through it before you send it: this is the whole text, and nothing is sent by itself.</source>
            <translation>Si quieres ayudar a corregirlo, envía este informe a quienes te dieron el programa. No debería contener nada de tu despensa, ni tu nombre ni el de tu ordenador. Revísalo antes de enviarlo: este es el texto completo y nada se envía solo.</translation>
        </message>
        <message>
            <source>It could not be saved: {why}</source>
            <translation>No se pudo guardar: {why}</translation>
        </message>
        <message>
            <source>Save as a file…</source>
            <translation>Guardar como archivo…</translation>
        </message>
        <message>
            <source>Save the report</source>
            <translation>Guardar el informe</translation>
        </message>
        <message>
            <source>Saved as {path}.</source>
            <translation>Guardado como {path}.</translation>
        </message>
        <message>
            <source>Something went wrong in the program. What was saved before is safe, and the program goes on.</source>
            <translation>Algo salió mal en el programa. Lo que se guardó antes está a salvo, y el programa sigue.</translation>
        </message>
        <message>
            <source>The text is on the clipboard.</source>
            <translation>El texto está en el portapapeles.</translation>
        </message>
        <message>
            <source>The whole report</source>
            <translation>El informe completo</translation>
        </message>
        <message>
            <source>brewdesk broke down last time. Everything that was saved is here; what was only typed is not.</source>
            <translation>brewdesk se cerró de golpe la última vez. Todo lo guardado está aquí; lo que solo estaba escrito, no.</translation>
        </message>
    </context>
    <context>
        <name>CultureActs</name>
        <message>
            <source>Carry over the shelf</source>
            <translation>Llevar por el estante</translation>
        </message>
        <message>
            <source>Change…</source>
            <translation>Cambiar…</translation>
        </message>
        <message>
            <source>Feed…</source>
            <translation>Alimentar…</translation>
        </message>
        <message>
            <source>Give away…</source>
            <translation>Regalar…</translation>
        </message>
        <message>
            <source>Hand-over card…</source>
            <translation>Tarjeta de entrega…</translation>
        </message>
        <message>
            <source>It is lost…</source>
            <translation>Se ha perdido…</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Buscar moho…</translation>
        </message>
        <message>
            <source>Merge with others…</source>
            <translation>Unir con otros…</translation>
        </message>
        <message>
            <source>Move to another vessel…</source>
            <translation>Pasar a otro recipiente…</translation>
        </message>
        <message>
            <source>Note the pH…</source>
            <translation>Anotar el pH…</translation>
        </message>
        <message>
            <source>Print a label…</source>
            <translation>Imprimir etiqueta…</translation>
        </message>
        <message>
            <source>Put to rest…</source>
            <translation>Poner en reposo…</translation>
        </message>
        <message>
            <source>Retire</source>
            <translation>Retirar</translation>
        </message>
        <message>
            <source>Show its history</source>
            <translation>Mostrar su historial</translation>
        </message>
        <message>
            <source>Split…</source>
            <translation>Dividir…</translation>
        </message>
        <message>
            <source>There is no vessel on the shelf yet that it could be carried to.</source>
            <translation>Aún no hay en el estante un recipiente al que llevarlo.</translation>
        </message>
        <message>
            <source>Top up…</source>
            <translation>Rellenar…</translation>
        </message>
        <message>
            <source>Write a note…</source>
            <translation>Escribir una nota…</translation>
        </message>
    </context>
    <context>
        <name>CultureDialog</name>
        <message>
            <source>A culture</source>
            <translation>Un cultivo</translation>
        </message>
        <message>
            <source>Add a culture</source>
            <translation>Añadir un cultivo</translation>
        </message>
        <message>
            <source>Born</source>
            <translation>Nacido</translation>
        </message>
        <message>
            <source>Came as</source>
            <translation>Llegó como</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Change a culture</source>
            <translation>Cambiar un cultivo</translation>
        </message>
        <message>
            <source>In no vessel</source>
            <translation>En ningún recipiente</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>None known</source>
            <translation>Ninguno conocido</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Parent</source>
            <translation>Progenitor</translation>
        </message>
        <message>
            <source>Pellicle thickness</source>
            <translation>Grosor de la película</translation>
        </message>
        <message>
            <source>Save the culture</source>
            <translation>Guardar el cultivo</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>Where it is</source>
            <translation>Dónde está</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d MMM yyyy</translation>
        </message>
    </context>
    <context>
        <name>CultureEntry</name>
        <message>
            <source>&amp;Culture</source>
            <translation>&amp;Cultivo</translation>
        </message>
        <message>
            <source>Add culture</source>
            <translation>Añadir cultivo</translation>
        </message>
        <message>
            <source>Give the culture a name.</source>
            <translation>Ponle un nombre al cultivo.</translation>
        </message>
        <message>
            <source>Name of the culture</source>
            <translation>Nombre del cultivo</translation>
        </message>
        <message>
            <source>New culture…</source>
            <translation>Nuevo cultivo…</translation>
        </message>
        <message>
            <source>Starter liquid only</source>
            <translation>Solo líquido iniciador</translation>
        </message>
        <message>
            <source>Where it came from</source>
            <translation>De dónde viene</translation>
        </message>
        <message>
            <source>may carry mold</source>
            <translation>puede tener moho</translation>
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
            <translation>Todo sobre este cultivo</translation>
        </message>
        <message>
            <source>Born</source>
            <translation>Nacido</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>Cuidados</translation>
        </message>
        <message>
            <source>Clear it…</source>
            <translation>Liberar…</translation>
        </message>
        <message>
            <source>Daughters</source>
            <translation>Cultivos hijos</translation>
        </message>
        <message>
            <source>Gone</source>
            <translation>Terminado</translation>
        </message>
        <message>
            <source>How its batches did</source>
            <translation>Cómo salieron sus lotes</translation>
        </message>
        <message>
            <source>Last fed</source>
            <translation>Última alimentación</translation>
        </message>
        <message>
            <source>More for this culture</source>
            <translation>Más para este cultivo</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Ahora</translation>
        </message>
        <message>
            <source>Parents</source>
            <translation>Progenitores</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Película</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Rests in</source>
            <translation>Reposa en</translation>
        </message>
        <message>
            <source>Show {name}</source>
            <translation>Mostrar {name}</translation>
        </message>
        <message>
            <source>Throw it out…</source>
            <translation>Desechar…</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Qué pasó</translation>
        </message>
        <message>
            <source>What was noted: {reason}</source>
            <translation>Lo que se anotó: {reason}</translation>
        </message>
        <message>
            <source>{count} older entries</source>
            <translation>{count} entradas anteriores</translation>
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
            <translation>Un cultivo está en un solo sitio: se lo lleva lo que se prepare primero.</translation>
        </message>
        <message>
            <source>A plain, raw bottle is what usually works.</source>
            <translation>Una botella cruda y sin sabores es lo que suele funcionar.</translation>
        </message>
        <message>
            <source>At {at_c} a first film usually shows between day {first_days} and day {last_days}, and is solid in {solid_days} to {latest_days} days. These are kitchen experience, not measurements; cooler places take longer.</source>
            <translation>A {at_c}, una primera película suele verse entre el día {first_days} y el día {last_days}, y es sólida en {solid_days} a {latest_days} días. Es experiencia de cocina, no mediciones; en lugares más fríos tarda más.</translation>
        </message>
        <message>
            <source>Cold, weak or too little raw liquid makes it slow. </source>
            <translation>El frío, un líquido crudo débil o demasiado escaso la retrasan. </translation>
        </message>
        <message>
            <source>Day {day}, and no film noted.</source>
            <translation>Día {day}, y ninguna película anotada.</translation>
        </message>
        <message>
            <source>Day {day}: a film of about {value_mm}.</source>
            <translation>Día {day}: una película de cerca de {value_mm}.</translation>
        </message>
        <message>
            <source>Day {day}: about {value_mm}, which is usually enough.</source>
            <translation>Día {day}: cerca de {value_mm}, lo que suele bastar.</translation>
        </message>
        <message>
            <source>Day {day}: no film noted yet.</source>
            <translation>Día {day}: aún no hay película anotada.</translation>
        </message>
        <message>
            <source>Day {day}: the film is still only about {value_mm}.</source>
            <translation>Día {day}: la película aún tiene solo cerca de {value_mm}.</translation>
        </message>
        <message>
            <source>Do not drink from it or use it as starter or culture. When in doubt, throw it out. If you are sure that it is clean, clear it with your reason. Where your local rules ask for more, follow them.</source>
            <translation>No bebas de él ni lo uses como iniciador o cultivo. Ante la duda, deséchalo. Si tienes la certeza de que está limpio, libéralo con tu motivo. Donde tus normas locales pidan más, síguelas.</translation>
        </message>
        <message>
            <source>Draw that batch off first, or split the culture.</source>
            <translation>Extrae antes ese lote, o divide el cultivo.</translation>
        </message>
        <message>
            <source>Follow the run sheet: raw liquid goes in only when the tea is cool.</source>
            <translation>Sigue la hoja de trabajo: el líquido crudo entra solo cuando el té está frío.</translation>
        </message>
        <message>
            <source>From a flavoured bottle a culture often does not grow.</source>
            <translation>De una botella con sabores a menudo no crece ningún cultivo.</translation>
        </message>
        <message>
            <source>From a pasteurised bottle nothing will grow.</source>
            <translation>De una botella pasteurizada no crecerá nada.</translation>
        </message>
        <message>
            <source>Fruit, juice and oils hinder the film and bring other germs along.</source>
            <translation>La fruta, el jugo y los aceites estorban a la película y traen otros gérmenes.</translation>
        </message>
        <message>
            <source>Handle it gently all the same.</source>
            <translation>Trátalo con suavidad de todos modos.</translation>
        </message>
        <message>
            <source>Heating has killed the culture. Sweet tea with dead kombucha in it goes moldy.</source>
            <translation>El calor ha matado el cultivo. El té azucarado con kombucha muerta dentro se enmohece.</translation>
        </message>
        <message>
            <source>If it is one piece and clean, call it grown.</source>
            <translation>Si es de una pieza y está limpio, dalo por crecido.</translation>
        </message>
        <message>
            <source>It has not been mixed yet.</source>
            <translation>Aún no se ha mezclado.</translation>
        </message>
        <message>
            <source>It is as sour and as alive as you know it to be.</source>
            <translation>Es tan ácido y está tan vivo como tú lo conoces.</translation>
        </message>
        <message>
            <source>It is not known whether the bottle is raw.</source>
            <translation>No se sabe si la botella es cruda.</translation>
        </message>
        <message>
            <source>It may carry mold: that was seen on it, or on something it shared liquid with.</source>
            <translation>Puede tener moho: se vio en él o en algo con lo que compartió líquido.</translation>
        </message>
        <message>
            <source>Its yeasts and bacteria are alive; nobody can promise that they make a film.</source>
            <translation>Sus levaduras y bacterias están vivas; nadie puede garantizar que formen una película.</translation>
        </message>
        <message>
            <source>Leave it still, covered with cloth, out of the sun.</source>
            <translation>Déjalo quieto, tapado con un paño, lejos del sol.</translation>
        </message>
        <message>
            <source>Look again in good light tomorrow. When in doubt, throw it out.</source>
            <translation>Vuelve a mirar mañana con buena luz. Ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Look for a bottle that says raw and unpasteurised, without fruit or juice.</source>
            <translation>Busca una botella que diga cruda y sin pasteurizar, sin fruta ni jugo.</translation>
        </message>
        <message>
            <source>Makers usually call it grown at {low_mm} to {high_mm}.</source>
            <translation>Suele darse por crecido con {low_mm} a {high_mm}.</translation>
        </message>
        <message>
            <source>Makers usually wait for {low_mm} to {high_mm}; common practice, no rule.</source>
            <translation>Se suele esperar a {low_mm} a {high_mm}; práctica habitual, no una regla.</translation>
        </message>
        <message>
            <source>Measure the pH and look for mold. If there is still nothing by day {latest_days}, start anew with another bottle.</source>
            <translation>Mide el pH y busca moho. Si para el día {latest_days} sigue sin haber nada, empieza de nuevo con otra botella.</translation>
        </message>
        <message>
            <source>Mold can be there before it can be seen, and its threads and poisons reach further than its patch.</source>
            <translation>El moho puede estar antes de que se vea, y sus hilos y toxinas llegan más lejos que su mancha.</translation>
        </message>
        <message>
            <source>Mold is dry or fuzzy and often coloured; a young film is wet and smooth.</source>
            <translation>El moho es seco o peludo y a menudo de color; una película joven es húmeda y lisa.</translation>
        </message>
        <message>
            <source>New films are thin, smooth and pale. </source>
            <translation>Las películas nuevas son finas, lisas y pálidas. </translation>
        </message>
        <message>
            <source>Pasteurised or filtered kombucha holds no living culture.</source>
            <translation>La kombucha pasteurizada o filtrada no contiene ningún cultivo vivo.</translation>
        </message>
        <message>
            <source>Perhaps the bottle was not raw, or the place is cold. </source>
            <translation>Quizá la botella no era cruda, o el lugar es frío. </translation>
        </message>
        <message>
            <source>Putting it in here takes it out of there.</source>
            <translation>Al ponerlo aquí se saca de allí.</translation>
        </message>
        <message>
            <source>Ripe starter of your own is a good beginning.</source>
            <translation>Un iniciador propio y maduro es un buen comienzo.</translation>
        </message>
        <message>
            <source>Shake the bottle gently: the sediment carries much of the life.</source>
            <translation>Agita la botella con suavidad: el sedimento lleva gran parte de la vida.</translation>
        </message>
        <message>
            <source>Split it first, or choose another.</source>
            <translation>Divídelo antes, o elige otro.</translation>
        </message>
        <message>
            <source>Take it from a jar without any mold.</source>
            <translation>Tómalo de un frasco sin nada de moho.</translation>
        </message>
        <message>
            <source>The last look was not sure whether it is mold.</source>
            <translation>La última revisión no dejó claro si es moho.</translation>
        </message>
        <message>
            <source>This culture is at work in another vessel.</source>
            <translation>Este cultivo está trabajando en otro recipiente.</translation>
        </message>
        <message>
            <source>This culture is planned for another vessel already.</source>
            <translation>Este cultivo ya está planificado para otro recipiente.</translation>
        </message>
        <message>
            <source>Wait if it smells and looks clean; start anew if nothing moves for a week.</source>
            <translation>Espera si huele bien y se ve limpio; empieza de nuevo si nada se mueve en una semana.</translation>
        </message>
        <message>
            <source>You can call it grown all the same; handle it gently.</source>
            <translation>Puedes darlo por crecido de todos modos; trátalo con suavidad.</translation>
        </message>
        <message>
            <source>{value_mm} is a usual thickness for a new culture.</source>
            <translation>{value_mm} es un grosor habitual para un cultivo nuevo.</translation>
        </message>
        <message>
            <source>{value_mm} is thin for a new culture.</source>
            <translation>{value_mm} es fino para un cultivo nuevo.</translation>
        </message>
    </context>
    <context>
        <name>Cultures</name>
        <message>
            <source>1 day old</source>
            <translation>1 día de edad</translation>
        </message>
        <message>
            <source>Fed with {volume}</source>
            <translation>Alimentado con {volume}</translation>
        </message>
        <message>
            <source>Fed with {volume} of sweet tea, {sugar} of sugar in it</source>
            <translation>Alimentado con {volume} de té azucarado, con {sugar} de azúcar</translation>
        </message>
        <message>
            <source>From {names}</source>
            <translation>De {names}</translation>
        </message>
        <message>
            <source>Given to {to}</source>
            <translation>Regalado a {to}</translation>
        </message>
        <message>
            <source>Grown from starter of {names}</source>
            <translation>Crecido del iniciador de {names}</translation>
        </message>
        <message>
            <source>In one batch no reading was as low as pH {ph}.</source>
            <translation>En un lote, ninguna lectura llegó a bajar a pH {ph}.</translation>
        </message>
        <message>
            <source>In {count} batches no reading was as low as pH {ph}.</source>
            <translation>En {count} lotes, ninguna lectura llegó a bajar a pH {ph}.</translation>
        </message>
        <message>
            <source>Looked at: {found}</source>
            <translation>Revisado: {found}</translation>
        </message>
        <message>
            <source>Merged from {names}</source>
            <translation>Unión de {names}</translation>
        </message>
        <message>
            <source>No batch has been brewed with it yet.</source>
            <translation>Aún no se ha preparado ningún lote con él.</translation>
        </message>
        <message>
            <source>Not noted</source>
            <translation>Sin anotar</translation>
        </message>
        <message>
            <source>Now part of {name}</source>
            <translation>Ahora parte de {name}</translation>
        </message>
        <message>
            <source>One batch</source>
            <translation>Un lote</translation>
        </message>
        <message>
            <source>Put to rest in {volume}</source>
            <translation>Puesto en reposo en {volume}</translation>
        </message>
        <message>
            <source>Split from {names}</source>
            <translation>Separado de {names}</translation>
        </message>
        <message>
            <source>Tasted: {parts}.</source>
            <translation>Catado: {parts}.</translation>
        </message>
        <message>
            <source>That is too few to tell a habit.</source>
            <translation>Son muy pocos para hablar de costumbre.</translation>
        </message>
        <message>
            <source>Topped up with {volume}</source>
            <translation>Rellenado con {volume}</translation>
        </message>
        <message>
            <source>founder</source>
            <translation>fundador</translation>
        </message>
        <message>
            <source>generation {number}</source>
            <translation>generación {number}</translation>
        </message>
        <message>
            <source>less than a day old</source>
            <translation>menos de un día de edad</translation>
        </message>
        <message>
            <source>may carry mold</source>
            <translation>puede tener moho</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>pH {ph} after about {days} days, by the readings of one batch.</source>
            <translation>pH {ph} tras unos {days} días, según las lecturas de un lote.</translation>
        </message>
        <message>
            <source>pH {ph} after about {days} days, the median of {count} batches.</source>
            <translation>pH {ph} tras unos {days} días, la mediana de {count} lotes.</translation>
        </message>
        <message>
            <source>{count} batches</source>
            <translation>{count} lotes</translation>
        </message>
        <message>
            <source>{count} days old</source>
            <translation>{count} días de edad</translation>
        </message>
        <message>
            <source>{count} drawn off</source>
            <translation>{count} extraídos</translation>
        </message>
        <message>
            <source>{count} months old</source>
            <translation>{count} meses de edad</translation>
        </message>
        <message>
            <source>{count} souring</source>
            <translation>{count} en acidificación</translation>
        </message>
        <message>
            <source>{count} thrown away</source>
            <translation>{count} desechados</translation>
        </message>
        <message>
            <source>{count} weeks old</source>
            <translation>{count} semanas de edad</translation>
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
            <translation>{first} y {last}</translation>
        </message>
        <message>
            <source>{name} was thrown away on {day}: {reason}</source>
            <translation>{name} se desechó el {day}: {reason}</translation>
        </message>
        <message>
            <source>{stated} when last noted; perhaps {low} to {high} now</source>
            <translation>{stated} en la última anotación; quizá {low} a {high} ahora</translation>
        </message>
        <message>
            <source>{state} in {vessel}</source>
            <translation>{state} en {vessel}</translation>
        </message>
        <message>
            <source>{taste}: {count}</source>
            <translation>{taste}: {count}</translation>
        </message>
        <message>
            <source>{volume} of starter taken</source>
            <translation>{volume} de iniciador tomados</translation>
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
            <translation>Añadir un cultivo que tengo…</translation>
        </message>
        <message>
            <source>Add a culture…</source>
            <translation>Añadir un cultivo…</translation>
        </message>
        <message>
            <source>Add the pellicle or starter you have. If you have none, a bottle of raw, unflavoured kombucha grows one in two to three weeks: the program leads you through it.</source>
            <translation>Añade la película o el iniciador que tengas. Si no tienes, de una botella de kombucha cruda y sin sabores crece uno en dos a tres semanas: el programa te guía.</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Cultivos</translation>
        </message>
        <message>
            <source>Family of cultures</source>
            <translation>Familia de cultivos</translation>
        </message>
        <message>
            <source>Grow from raw kombucha…</source>
            <translation>Cultivar de kombucha cruda…</translation>
        </message>
        <message>
            <source>Grow one from raw kombucha…</source>
            <translation>Cultivar uno de kombucha cruda…</translation>
        </message>
        <message>
            <source>Left goes to a parent, right to a daughter, up and down to those beside.</source>
            <translation>Izquierda va a un progenitor, derecha a un cultivo hijo, arriba y abajo a los de al lado.</translation>
        </message>
        <message>
            <source>No culture yet</source>
            <translation>Aún no hay cultivos</translation>
        </message>
        <message>
            <source>{here} here</source>
            <translation>{here} aquí</translation>
        </message>
        <message>
            <source>{here} here, {gone} gone</source>
            <translation>{here} aquí, {gone} ya no</translation>
        </message>
    </context>
    <context>
        <name>CurvePlot</name>
        <message>
            <source>Picture of the course</source>
            <translation>Imagen del curso</translation>
        </message>
    </context>
    <context>
        <name>CurveSpec</name>
        <message>
            <source>1 in 2 chance</source>
            <translation>probabilidad 1 de 2</translation>
        </message>
        <message>
            <source>4 in 5 chance</source>
            <translation>probabilidad 4 de 5</translation>
        </message>
        <message>
            <source>Titratable acidity in g/L, counted as acetic acid</source>
            <translation>Acidez titulable en g/L, expresada como ácido acético</translation>
        </message>
        <message>
            <source>does not fit the others</source>
            <translation>no encaja con las demás</translation>
        </message>
        <message>
            <source>most likely</source>
            <translation>lo más probable</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>pH over the days of the batch</source>
            <translation>pH a lo largo de los días del lote</translation>
        </message>
        <message>
            <source>pH {ph}: do not drink below</source>
            <translation>pH {ph}: por debajo, no beber</translation>
        </message>
        <message>
            <source>pH {ph}: to be reached by day {day}</source>
            <translation>pH {ph}: a alcanzar para el día {day}</translation>
        </message>
        <message>
            <source>read off a strip</source>
            <translation>leído en una tira</translation>
        </message>
        <message>
            <source>reading ± uncertainty</source>
            <translation>lectura ± incertidumbre</translation>
        </message>
        <message>
            <source>safety limit</source>
            <translation>límite de seguridad</translation>
        </message>
        <message>
            <source>tasting window</source>
            <translation>ventana de cata</translation>
        </message>
        <message>
            <source>what if</source>
            <translation>y si</translation>
        </message>
        <message>
            <source>your taste</source>
            <translation>tu gusto</translation>
        </message>
        <message>
            <source>your taste: pH {low} to {high}</source>
            <translation>tu gusto: pH {low} a {high}</translation>
        </message>
    </context>
    <context>
        <name>DayAxis</name>
        <message>
            <source>day {day}</source>
            <translation>día {day}</translation>
        </message>
    </context>
    <context>
        <name>DayEdit</name>
        <message>
            <source>d MMM yyyy</source>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>known</source>
            <translation>conocido</translation>
        </message>
    </context>
    <context>
        <name>Demo</name>
        <message>
            <source>A fuzzy spot on top: mold. All of it thrown away. (Invented)</source>
            <translation>Una mancha peluda encima: moho. Todo desechado. (Inventado)</translation>
        </message>
        <message>
            <source>A gift from somebody who had a piece of Ferry. Invented.</source>
            <translation>Un regalo de alguien que tenía un trozo de Ferri. Inventado.</translation>
        </message>
        <message>
            <source>A raw, unflavoured bottle. Invented for the example pantry.</source>
            <translation>Una botella cruda y sin sabores. Inventada para la despensa de ejemplo.</translation>
        </message>
        <message>
            <source>A thin, clear film all over. (Invented)</source>
            <translation>Una película fina y clara por todas partes. (Inventado)</translation>
        </message>
        <message>
            <source>A thin, pale film. (Invented)</source>
            <translation>Una película fina y pálida. (Inventado)</translation>
        </message>
        <message>
            <source>An invented shop</source>
            <translation>Una tienda inventada</translation>
        </message>
        <message>
            <source>Big flask</source>
            <translation>Garrafa grande</translation>
        </message>
        <message>
            <source>Black leaf (invented)</source>
            <translation>Hoja negra (inventada)</translation>
        </message>
        <message>
            <source>Bought. Invented for the example pantry.</source>
            <translation>Comprado. Inventado para la despensa de ejemplo.</translation>
        </message>
        <message>
            <source>Dune</source>
            <translation>Duna</translation>
        </message>
        <message>
            <source>Earlier black {n}</source>
            <translation>Negro anterior {n}</translation>
        </message>
        <message>
            <source>Earlier green {n}</source>
            <translation>Verde anterior {n}</translation>
        </message>
        <message>
            <source>Earlier herbs {n}</source>
            <translation>Hierbas anterior {n}</translation>
        </message>
        <message>
            <source>Earlier oolong {n}</source>
            <translation>Oolong anterior {n}</translation>
        </message>
        <message>
            <source>Earlier white {n}</source>
            <translation>Blanco anterior {n}</translation>
        </message>
        <message>
            <source>Elderberry juice (invented)</source>
            <translation>Jugo de saúco (inventado)</translation>
        </message>
        <message>
            <source>Example cellar (invented)</source>
            <translation>Bodega de ejemplo (inventada)</translation>
        </message>
        <message>
            <source>Example kitchen (invented)</source>
            <translation>Cocina de ejemplo (inventada)</translation>
        </message>
        <message>
            <source>Example pantry (invented)</source>
            <translation>Despensa de ejemplo (inventada)</translation>
        </message>
        <message>
            <source>Fell off the draining board. (Invented)</source>
            <translation>Se cayó del escurreplatos. (Inventado)</translation>
        </message>
        <message>
            <source>Ferry</source>
            <translation>Ferri</translation>
        </message>
        <message>
            <source>Forgotten behind the flour and dried out. (Invented)</source>
            <translation>Olvidado detrás de la harina y reseco. (Inventado)</translation>
        </message>
        <message>
            <source>Fruit flies got under the cloth. All of it thrown away. (Invented)</source>
            <translation>Entraron moscas de la fruta bajo el paño. Todo desechado. (Inventado)</translation>
        </message>
        <message>
            <source>Ginger root</source>
            <translation>Raíz de jengibre</translation>
        </message>
        <message>
            <source>Ginger root (invented)</source>
            <translation>Raíz de jengibre (inventada)</translation>
        </message>
        <message>
            <source>Gone like vinegar after a week in the warm. (Invented)</source>
            <translation>Quedó como vinagre tras una semana al calor. (Inventado)</translation>
        </message>
        <message>
            <source>Green leaf (invented)</source>
            <translation>Hoja verde (inventada)</translation>
        </message>
        <message>
            <source>Grey crock</source>
            <translation>Tinaja gris</translation>
        </message>
        <message>
            <source>Grown from a raw bottle. Invented for the example pantry.</source>
            <translation>Crecido de una botella cruda. Inventado para la despensa de ejemplo.</translation>
        </message>
        <message>
            <source>Harbour</source>
            <translation>Puerto</translation>
        </message>
        <message>
            <source>Invented for the example pantry.</source>
            <translation>Inventado para la despensa de ejemplo.</translation>
        </message>
        <message>
            <source>Jetty</source>
            <translation>Muelle</translation>
        </message>
        <message>
            <source>Lighthouse</source>
            <translation>Faro</translation>
        </message>
        <message>
            <source>Little jar</source>
            <translation>Frasco pequeño</translation>
        </message>
        <message>
            <source>Marsh</source>
            <translation>Marisma</translation>
        </message>
        <message>
            <source>Oolong (invented)</source>
            <translation>Oolong (inventado)</translation>
        </message>
        <message>
            <source>Plastic test bottles (invented)</source>
            <translation>Botellas de prueba de plástico (inventadas)</translation>
        </message>
        <message>
            <source>Reed</source>
            <translation>Junco</translation>
        </message>
        <message>
            <source>Sandbar</source>
            <translation>Banco de arena</translation>
        </message>
        <message>
            <source>Seed jar</source>
            <translation>Frasco semilla</translation>
        </message>
        <message>
            <source>Skerry</source>
            <translation>Islote</translation>
        </message>
        <message>
            <source>Smooth and wet all over. (Invented)</source>
            <translation>Liso y húmedo por todas partes. (Inventado)</translation>
        </message>
        <message>
            <source>Split off Lighthouse. Invented for the example pantry.</source>
            <translation>Separado de Faro. Inventado para la despensa de ejemplo.</translation>
        </message>
        <message>
            <source>Steel pot</source>
            <translation>Olla de acero</translation>
        </message>
        <message>
            <source>Store jar</source>
            <translation>Frasco de reserva</translation>
        </message>
        <message>
            <source>Swing-top bottles, half a litre (invented)</source>
            <translation>Botellas de tapón mecánico, medio litro (inventadas)</translation>
        </message>
        <message>
            <source>Tall jar</source>
            <translation>Frasco alto</translation>
        </message>
        <message>
            <source>Tastes as we like it. (Invented)</source>
            <translation>Sabe como nos gusta. (Inventado)</translation>
        </message>
        <message>
            <source>White sugar (invented)</source>
            <translation>Azúcar blanco (inventado)</translation>
        </message>
        <message>
            <source>a neighbour (invented)</source>
            <translation>un vecino (inventado)</translation>
        </message>
        <message>
            <source>{name}, in bottles (invented)</source>
            <translation>{name}, en botellas (inventado)</translation>
        </message>
        <message>
            <source>{place}-logger.csv (invented)</source>
            <translation>registrador-{place}.csv (inventado)</translation>
        </message>
    </context>
    <context>
        <name>DemoPhotos</name>
        <message>
            <source>A first skin (painted, invented)</source>
            <translation>Una primera piel (pintada, inventada)</translation>
        </message>
        <message>
            <source>Painted, invented: day {n}</source>
            <translation>Pintado, inventado: día {n}</translation>
        </message>
        <message>
            <source>Paler and even (painted, invented)</source>
            <translation>Más pálida y pareja (pintada, inventada)</translation>
        </message>
        <message>
            <source>Thick, with a ridge and a bubble (painted, invented)</source>
            <translation>Gruesa, con una arruga y una burbuja (pintada, inventada)</translation>
        </message>
    </context>
    <context>
        <name>DemoTrial</name>
        <message>
            <source>Black tea</source>
            <translation>Té negro</translation>
        </message>
        <message>
            <source>Does green tea sour faster than black, and which is liked better?</source>
            <translation>¿Se acidifica el té verde más rápido que el negro, y cuál gusta más?</translation>
        </message>
        <message>
            <source>First taster (invented)</source>
            <translation>Primer catador (inventado)</translation>
        </message>
        <message>
            <source>Green or black (invented)</source>
            <translation>Verde o negro (inventado)</translation>
        </message>
        <message>
            <source>Green seems quicker. Next time four jars of each. (Invented)</source>
            <translation>El verde parece más rápido. La próxima vez, cuatro frascos de cada uno. (Inventado)</translation>
        </message>
        <message>
            <source>Green tea</source>
            <translation>Té verde</translation>
        </message>
        <message>
            <source>Invented for the example pantry.</source>
            <translation>Inventado para la despensa de ejemplo.</translation>
        </message>
        <message>
            <source>Second taster</source>
            <translation>Segundo catador</translation>
        </message>
        <message>
            <source>The trial is over. (Invented)</source>
            <translation>El ensayo ha terminado. (Inventado)</translation>
        </message>
        <message>
            <source>Trial jar {number}</source>
            <translation>Frasco de ensayo {number}</translation>
        </message>
    </context>
    <context>
        <name>DeskLine</name>
        <message>
            <source>Connected again.</source>
            <translation>Conectado de nuevo.</translation>
        </message>
        <message>
            <source>Not connected to the server: what you see may be out of date, and nothing can be saved until it answers. What you have typed stays where it is.</source>
            <translation>Sin conexión con el servidor: lo que ves puede estar desactualizado, y no se puede guardar nada hasta que responda. Lo que has escrito se queda donde está.</translation>
        </message>
    </context>
    <context>
        <name>DocumentDialog</name>
        <message>
            <source>HTML files (*.html)</source>
            <translation>Archivos HTML (*.html)</translation>
        </message>
        <message>
            <source>Save as HTML</source>
            <translation>Guardar como HTML</translation>
        </message>
        <message>
            <source>Save as HTML…</source>
            <translation>Guardar como HTML…</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Guardado como {file}</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>No se pudo escribir {file}. Elige otra carpeta.</translation>
        </message>
    </context>
    <context>
        <name>DotPlot</name>
        <message>
            <source>days</source>
            <translation>días</translation>
        </message>
    </context>
    <context>
        <name>DrawDialog</name>
        <message>
            <source>&amp;Why</source>
            <translation>&amp;Por qué</translation>
        </message>
        <message>
            <source>By the books: {left}.</source>
            <translation>Según los registros: {left}.</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Correct the books</source>
            <translation>Corregir los registros</translation>
        </message>
        <message>
            <source>Count the shelf</source>
            <translation>Contar el estante</translation>
        </message>
        <message>
            <source>How &amp;much</source>
            <translation>&amp;Cuánto</translation>
        </message>
        <message>
            <source>How much there &amp;is</source>
            <translation>Cuánto &amp;hay</translation>
        </message>
        <message>
            <source>In your &amp;words</source>
            <translation>En &amp;tus palabras</translation>
        </message>
        <message>
            <source>Take it out</source>
            <translation>Sacarlo</translation>
        </message>
        <message>
            <source>Taken out</source>
            <translation>Sacado</translation>
        </message>
    </context>
    <context>
        <name>DropGround</name>
        <message>
            <source>Choose pictures…</source>
            <translation>Elegir imágenes…</translation>
        </message>
        <message>
            <source>Drop them here from your file manager or phone folder. A picture every few days, from above in good light, shows best how the film grows.</source>
            <translation>Suéltalas aquí desde tu gestor de archivos o la carpeta del teléfono. Una imagen cada pocos días, desde arriba y con buena luz, muestra mejor cómo crece la película.</translation>
        </message>
        <message>
            <source>No photos of {name} yet</source>
            <translation>Aún no hay fotos de {name}</translation>
        </message>
        <message>
            <source>Paste</source>
            <translation>Pegar</translation>
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
            <translation>Un cultivo hijo va a {target}; él se queda donde está.</translation>
        </message>
        <message>
            <source>A plan is opened for {target}, with this starter in it.</source>
            <translation>Se abre un plan para {target}, con este iniciador dentro.</translation>
        </message>
        <message>
            <source>All of it goes into {target}, and its culture with it.</source>
            <translation>Todo va a {target}, y su cultivo con ello.</translation>
        </message>
        <message>
            <source>Both go on. Up to {most} fit.</source>
            <translation>Ambos siguen. Caben hasta {most}.</translation>
        </message>
        <message>
            <source>Bottle a batch, or draw it off, all or part of it</source>
            <translation>Embotella un lote o extráelo, todo o en parte</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Bottles, sugar and fizz are worked out first, and the day to chill by.</source>
            <translation>Primero se calculan botellas, azúcar y gas, y el día límite para enfriar.</translation>
        </message>
        <message>
            <source>Draw all of it off…</source>
            <translation>Extraerlo todo…</translation>
        </message>
        <message>
            <source>Draw off part…</source>
            <translation>Extraer una parte…</translation>
        </message>
        <message>
            <source>Fill bottles…</source>
            <translation>Llenar botellas…</translation>
        </message>
        <message>
            <source>It goes into {target} with what it rests in.</source>
            <translation>Va a {target} con aquello en lo que reposa.</translation>
        </message>
        <message>
            <source>It is in {target} already.</source>
            <translation>Ya está en {target}.</translation>
        </message>
        <message>
            <source>It is not known whether {other} is cool enough yet. Measure it, and enter it on its run sheet.</source>
            <translation>Aún no se sabe si {other} está lo bastante frío. Mídelo y anótalo en su hoja de trabajo.</translation>
        </message>
        <message>
            <source>It is poured to the culture that rests there. Up to {most} fit.</source>
            <translation>Se vierte con el cultivo que reposa allí. Caben hasta {most}.</translation>
        </message>
        <message>
            <source>It rests in ripe kombucha, in a vessel you choose.</source>
            <translation>Reposa en kombucha madura, en un recipiente que elijas.</translation>
        </message>
        <message>
            <source>Keep starter with it…</source>
            <translation>Guardar iniciador con él…</translation>
        </message>
        <message>
            <source>Lend starter…</source>
            <translation>Prestar iniciador…</translation>
        </message>
        <message>
            <source>Let {carried} work in {other}</source>
            <translation>Poner {carried} a trabajar en {other}</translation>
        </message>
        <message>
            <source>Look at it closely and clear it first; when in doubt, throw it out.</source>
            <translation>Míralo antes de cerca y libéralo; ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Move {carried} here</source>
            <translation>Mover {carried} aquí</translation>
        </message>
        <message>
            <source>No culture rests in a vessel with room for starter. Put one to rest first.</source>
            <translation>Ningún cultivo reposa en un recipiente con espacio para iniciador. Pon antes uno en reposo.</translation>
        </message>
        <message>
            <source>No vessel is free for it to rest in. Add one, or draw a batch off first.</source>
            <translation>No hay recipiente libre para que repose. Añade uno, o extrae antes un lote.</translation>
        </message>
        <message>
            <source>Pour all of it in…</source>
            <translation>Verterlo todo…</translation>
        </message>
        <message>
            <source>Pour part of it in…</source>
            <translation>Verter una parte…</translation>
        </message>
        <message>
            <source>Pour {carried} over</source>
            <translation>Trasvasar {carried}</translation>
        </message>
        <message>
            <source>Put a culture to rest, or keep starter with one</source>
            <translation>Pon un cultivo en reposo, o guarda iniciador con uno</translation>
        </message>
        <message>
            <source>Put {carried} in now</source>
            <translation>Meter {carried} ahora</translation>
        </message>
        <message>
            <source>Put {carried} to rest…</source>
            <translation>Poner {carried} en reposo…</translation>
        </message>
        <message>
            <source>Split {carried}…</source>
            <translation>Dividir {carried}…</translation>
        </message>
        <message>
            <source>The batch ends; its culture rests in the jar.</source>
            <translation>El lote termina; su cultivo reposa en el frasco.</translation>
        </message>
        <message>
            <source>The culture does not go into {other} at this step. See its run sheet.</source>
            <translation>El cultivo no entra en {other} en este paso. Mira su hoja de trabajo.</translation>
        </message>
        <message>
            <source>The plan takes it as its culture.</source>
            <translation>El plan lo toma como su cultivo.</translation>
        </message>
        <message>
            <source>The rest sours on. There are {most}.</source>
            <translation>El resto sigue acidificándose. Hay {most}.</translation>
        </message>
        <message>
            <source>The step on the run sheet is ticked off.</source>
            <translation>El paso de la hoja de trabajo queda marcado.</translation>
        </message>
        <message>
            <source>There is nothing left of {carried} to pour.</source>
            <translation>No queda nada de {carried} que verter.</translation>
        </message>
        <message>
            <source>There is nothing to put it down on here.</source>
            <translation>Aquí no hay dónde dejarlo.</translation>
        </message>
        <message>
            <source>This is no longer there.</source>
            <translation>Esto ya no está.</translation>
        </message>
        <message>
            <source>To rest</source>
            <translation>A reposo</translation>
        </message>
        <message>
            <source>{carried} ends with it; {other} goes on with both.</source>
            <translation>{carried} termina así; {other} sigue con ambos.</translation>
        </message>
        <message>
            <source>{carried} is a culture, not a drink. Drag its jar here to draw the batch off.</source>
            <translation>{carried} es un cultivo, no una bebida. Arrastra su frasco aquí para extraer el lote.</translation>
        </message>
        <message>
            <source>{carried} is a plan: there is nothing to pour yet.</source>
            <translation>{carried} es un plan: aún no hay nada que verter.</translation>
        </message>
        <message>
            <source>{carried} is at work. It comes to rest when its batch is drawn off.</source>
            <translation>{carried} está trabajando. Pasa a reposo cuando se extrae su lote.</translation>
        </message>
        <message>
            <source>{carried} is still being brewed. It can be poured once it is covered and sours.</source>
            <translation>{carried} aún se está preparando. Se puede verter cuando esté tapado y acidificándose.</translation>
        </message>
        <message>
            <source>{carried} is still forming. Let it grow firm before you carry it.</source>
            <translation>{carried} aún se está formando. Deja que se ponga firme antes de llevarlo.</translation>
        </message>
        <message>
            <source>{carried} may carry mold. </source>
            <translation>{carried} puede tener moho. </translation>
        </message>
        <message>
            <source>{carried} rests already. Drag it onto a vessel to move it.</source>
            <translation>{carried} ya está en reposo. Arrástralo a un recipiente para moverlo.</translation>
        </message>
        <message>
            <source>{name} picked up. Arrow keys go to where it shall be put, Enter puts it down, Escape gives up.</source>
            <translation>{name} en la mano. Las flechas van adonde se ha de poner, Intro lo deja, Escape lo cancela.</translation>
        </message>
        <message>
            <source>{other} in {target} may carry mold. </source>
            <translation>{other} en {target} puede tener moho. </translation>
        </message>
        <message>
            <source>{other} is being brewed for another culture.</source>
            <translation>{other} se está preparando para otro cultivo.</translation>
        </message>
        <message>
            <source>{other} is far too hot: anything live would die in it. Let it cool first.</source>
            <translation>{other} está demasiado caliente: cualquier cosa viva moriría dentro. Déjalo enfriar antes.</translation>
        </message>
        <message>
            <source>{other} is on its run sheet. Its starter goes in there, at its own step.</source>
            <translation>{other} está en su hoja de trabajo. Su iniciador entra ahí, en su propio paso.</translation>
        </message>
        <message>
            <source>{other} is planned with {carried} already, and there is no starter to lend.</source>
            <translation>{other} ya está planificado con {carried}, y no hay iniciador que prestar.</translation>
        </message>
        <message>
            <source>{other} is reckoned anew with this starter. There are {most}.</source>
            <translation>{other} se vuelve a calcular con este iniciador. Hay {most}.</translation>
        </message>
        <message>
            <source>{other} is souring in {target}. One batch at a time.</source>
            <translation>{other} se está acidificando en {target}. Un lote a la vez.</translation>
        </message>
        <message>
            <source>{other} is still too hot for anything live. Let it cool first.</source>
            <translation>{other} aún está demasiado caliente para cualquier cosa viva. Déjalo enfriar antes.</translation>
        </message>
        <message>
            <source>{target} is full to the brim. Draw some of it off first.</source>
            <translation>{target} está lleno hasta el borde. Extrae antes un poco.</translation>
        </message>
        <message>
            <source>{target} is off the shelf. Put it back first.</source>
            <translation>{target} está fuera del estante. Devuélvelo antes.</translation>
        </message>
    </context>
    <context>
        <name>DueCard</name>
        <message>
            <source>Done</source>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Done: {title}</source>
            <translation>Hecho: {title}</translation>
        </message>
        <message>
            <source>In one hour, at {time}</source>
            <translation>En una hora, a las {time}</translation>
        </message>
        <message>
            <source>Later  ▾</source>
            <translation>Más tarde  ▾</translation>
        </message>
        <message>
            <source>Open the bottles</source>
            <translation>Abrir las botellas</translation>
        </message>
        <message>
            <source>Open the culture</source>
            <translation>Abrir el cultivo</translation>
        </message>
        <message>
            <source>Open the jar</source>
            <translation>Abrir el frasco</translation>
        </message>
        <message>
            <source>Open the stores</source>
            <translation>Abrir existencias</translation>
        </message>
        <message>
            <source>Remind me later: {title}</source>
            <translation>Posponer: {title}</translation>
        </message>
        <message>
            <source>This evening, {time}</source>
            <translation>Esta tarde, {time}</translation>
        </message>
        <message>
            <source>Tomorrow, {time}</source>
            <translation>Mañana, {time}</translation>
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
            <translation>Hay 1 próximo.</translation>
        </message>
        <message>
            <source>1 thing is due.</source>
            <translation>Hay 1 pendiente.</translation>
        </message>
        <message>
            <source>Exit code: 0 nothing is due, 1 something is due, 2 trouble.</source>
            <translation>Código de salida: 0 nada pendiente, 1 algo pendiente, 2 problema.</translation>
        </message>
        <message>
            <source>Invented pantry. {line}</source>
            <translation>Despensa inventada. {line}</translation>
        </message>
        <message>
            <source>Nothing is coming.</source>
            <translation>No hay nada próximo.</translation>
        </message>
        <message>
            <source>Nothing is due.</source>
            <translation>No hay nada pendiente.</translation>
        </message>
        <message>
            <source>Print what is due in your pantry, and what is coming, as the window last worked it out. Needs no display, works beside the open window, changes nothing.</source>
            <translation>Muestra lo pendiente en tu despensa y lo próximo, según lo calculó la ventana por última vez. No necesita pantalla, funciona junto a la ventana abierta y no cambia nada.</translation>
        </message>
        <message>
            <source>Something went wrong in the program; nothing was changed.</source>
            <translation>Algo falló en el programa; no se cambió nada.</translation>
        </message>
        <message>
            <source>The file {path} is no pantry of this program.</source>
            <translation>El archivo {path} no es una despensa de este programa.</translation>
        </message>
        <message>
            <source>The last change to the pantry at {path} broke off. Open the window once: it puts that right.</source>
            <translation>El último cambio en la despensa de {path} se interrumpió. Abre la ventana una vez: eso lo arregla.</translation>
        </message>
        <message>
            <source>The pantry at {path} cannot be read. Please check its rights.</source>
            <translation>No se puede leer la despensa de {path}. Comprueba sus permisos.</translation>
        </message>
        <message>
            <source>The pantry at {path} is being written to. Please try again in a moment.</source>
            <translation>Se está escribiendo en la despensa de {path}. Inténtalo de nuevo en un momento.</translation>
        </message>
        <message>
            <source>The pantry at {path} is damaged. Open the window: it offers the latest backup.</source>
            <translation>La despensa de {path} está dañada. Abre la ventana: ofrece la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The pantry at {path} was last used by a newer version. Please install that version.</source>
            <translation>La despensa de {path} se usó por última vez con una versión más nueva. Instala esa versión.</translation>
        </message>
        <message>
            <source>The pantry at {path} was last used by an older version. Open the window once: it brings the pantry up to date, after a backup.</source>
            <translation>La despensa de {path} se usó por última vez con una versión anterior. Abre la ventana una vez: actualiza la despensa, tras una copia de seguridad.</translation>
        </message>
        <message>
            <source>The pantry named by {path} lies on a server, and the part of the program that speaks with servers is not installed: install “brewdesk[desks]”.</source>
            <translation>La despensa que indica {path} está en un servidor, y la parte del programa que habla con servidores no está instalada: instala «brewdesk[desks]».</translation>
        </message>
        <message>
            <source>The server named by {path} does not answer, or does not let this desk in.</source>
            <translation>El servidor que indica {path} no responde o no deja entrar a este puesto.</translation>
        </message>
        <message>
            <source>There is no pantry at {path}. Open the window once, and it makes one.</source>
            <translation>No hay ninguna despensa en {path}. Abre la ventana una vez y creará una.</translation>
        </message>
        <message>
            <source>coming</source>
            <translation>próximo</translation>
        </message>
        <message>
            <source>due</source>
            <translation>pendiente</translation>
        </message>
        <message>
            <source>everything is kept below this folder</source>
            <translation>todo se guarda dentro de esta carpeta</translation>
        </message>
        <message>
            <source>leave out what is only coming</source>
            <translation>omitir lo que solo está próximo</translation>
        </message>
        <message>
            <source>print JSON instead of columns</source>
            <translation>mostrar JSON en vez de columnas</translation>
        </message>
        <message>
            <source>print under each line what to do and to mind</source>
            <translation>mostrar bajo cada línea qué hacer y qué tener en cuenta</translation>
        </message>
        <message>
            <source>read the invented pantry</source>
            <translation>leer la despensa inventada</translation>
        </message>
        <message>
            <source>read this pantry file instead of your own</source>
            <translation>leer este archivo de despensa en vez del tuyo</translation>
        </message>
        <message>
            <source>{count} are coming.</source>
            <translation>Hay {count} próximos.</translation>
        </message>
        <message>
            <source>{count} things are due.</source>
            <translation>Hay {count} pendientes.</translation>
        </message>
        <message>
            <source>{title} ({span} late)</source>
            <translation>{title} ({span} de retraso)</translation>
        </message>
    </context>
    <context>
        <name>DuePage</name>
        <message>
            <source>Add a reminder of your own</source>
            <translation>Añadir un recordatorio propio</translation>
        </message>
        <message>
            <source>All that is due</source>
            <translation>Todo lo pendiente</translation>
        </message>
        <message>
            <source>As a calendar file…</source>
            <translation>Como archivo de calendario…</translation>
        </message>
        <message>
            <source>Coming days</source>
            <translation>Próximos días</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Pendiente</translation>
        </message>
        <message>
            <source>Export the due list as a calendar file</source>
            <translation>Exportar los pendientes como archivo de calendario</translation>
        </message>
        <message>
            <source>Nothing is due. Reminders appear here by themselves once a batch is souring: to check its pH, to look for mold, and to taste it. You can add your own below.</source>
            <translation>No hay nada pendiente. Los recordatorios aparecen aquí solos en cuanto un lote se acidifica: para controlar su pH, buscar moho y catarlo. Abajo puedes añadir los tuyos.</translation>
        </message>
        <message>
            <source>Notices do not reach your desktop at present: look here, and listen for the chime.</source>
            <translation>Ahora mismo los avisos no llegan a tu escritorio: mira aquí y atiende al timbre.</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Ahora</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Hoy</translation>
        </message>
    </context>
    <context>
        <name>DueStrip</name>
        <message>
            <source>Nothing is due.</source>
            <translation>No hay nada pendiente.</translation>
        </message>
        <message>
            <source>Now</source>
            <translation>Ahora</translation>
        </message>
        <message>
            <source>chill {name}</source>
            <translation>enfriar {name}</translation>
        </message>
        <message>
            <source>drink up {name}</source>
            <translation>terminar {name}</translation>
        </message>
        <message>
            <source>feed {jar}</source>
            <translation>alimentar {jar}</translation>
        </message>
        <message>
            <source>film on {jar}</source>
            <translation>película en {jar}</translation>
        </message>
        <message>
            <source>look for mold on {jar}</source>
            <translation>buscar moho en {jar}</translation>
        </message>
        <message>
            <source>open one of {name}</source>
            <translation>abrir una de {name}</translation>
        </message>
        <message>
            <source>pH of {jar}</source>
            <translation>pH de {jar}</translation>
        </message>
        <message>
            <source>press {name}</source>
            <translation>apretar {name}</translation>
        </message>
        <message>
            <source>taste {jar}</source>
            <translation>catar {jar}</translation>
        </message>
        <message>
            <source>top up {jar}</source>
            <translation>rellenar {jar}</translation>
        </message>
    </context>
    <context>
        <name>EditTrialDialog</name>
        <message>
            <source>Change {name}</source>
            <translation>Cambiar {name}</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>What you want to know</source>
            <translation>Qué quieres saber</translation>
        </message>
    </context>
    <context>
        <name>EffectRow</name>
        <message>
            <source>{outcome}: {second} against {first}</source>
            <translation>{outcome}: {second} frente a {first}</translation>
        </message>
    </context>
    <context>
        <name>EmptyShelf</name>
        <message>
            <source>Add your first vessel</source>
            <translation>Añade tu primer recipiente</translation>
        </message>
        <message>
            <source>Look at an invented pantry</source>
            <translation>Ver una despensa inventada</translation>
        </message>
        <message>
            <source>Put up the first jar you want to brew in. A name and how much it holds are enough; the rest can wait.</source>
            <translation>Coloca el primer frasco en el que quieras preparar. Basta con un nombre y cuánto cabe; el resto puede esperar.</translation>
        </message>
        <message>
            <source>The shelf is empty</source>
            <translation>El estante está vacío</translation>
        </message>
    </context>
    <context>
        <name>EndDialog</name>
        <message>
            <source>An accident</source>
            <translation>Un accidente</translation>
        </message>
        <message>
            <source>Another reason</source>
            <translation>Otro motivo</translation>
        </message>
        <message>
            <source>Choose the reason</source>
            <translation>Elige el motivo</translation>
        </message>
        <message>
            <source>Discard a batch</source>
            <translation>Desechar un lote</translation>
        </message>
        <message>
            <source>Discard all of it</source>
            <translation>Desecharlo todo</translation>
        </message>
        <message>
            <source>Discard {name}?</source>
            <translation>¿Desechar {name}?</translation>
        </message>
        <message>
            <source>Draw a batch off</source>
            <translation>Extraer un lote</translation>
        </message>
        <message>
            <source>Draw it off</source>
            <translation>Extraerlo</translation>
        </message>
        <message>
            <source>Draw {name} off?</source>
            <translation>¿Extraer {name}?</translation>
        </message>
        <message>
            <source>End the trial</source>
            <translation>Terminar el ensayo</translation>
        </message>
        <message>
            <source>End {name}</source>
            <translation>Terminar {name}</translation>
        </message>
        <message>
            <source>Give it up</source>
            <translation>Abandonarlo</translation>
        </message>
        <message>
            <source>Give {name} up</source>
            <translation>Abandonar {name}</translation>
        </message>
        <message>
            <source>In your own words</source>
            <translation>En tus propias palabras</translation>
        </message>
        <message>
            <source>In your own words (optional)</source>
            <translation>En tus propias palabras (opcional)</translation>
        </message>
        <message>
            <source>It smells or tastes wrong</source>
            <translation>Huele o sabe mal</translation>
        </message>
        <message>
            <source>Its batches go on as any others.</source>
            <translation>Sus lotes siguen como cualquier otro.</translation>
        </message>
        <message>
            <source>Keep back enough of it as starter for the next jar, and chill what you drink. It holds some alcohol; how much is allowed to be given away is for local rules.</source>
            <translation>Reserva suficiente como iniciador para el próximo frasco y enfría lo que bebas. Contiene algo de alcohol; cuánto se permite regalar lo dicen las normas locales.</translation>
        </message>
        <message>
            <source>Keep it going</source>
            <translation>Seguir con ello</translation>
        </message>
        <message>
            <source>Left with the culture, as its liquid</source>
            <translation>Queda con el cultivo, como su líquido</translation>
        </message>
        <message>
            <source>Mold: fuzzy, dry or coloured spots</source>
            <translation>Moho: manchas peludas, secas o de color</translation>
        </message>
        <message>
            <source>Not sour enough in time</source>
            <translation>No lo bastante ácido a tiempo</translation>
        </message>
        <message>
            <source>Please choose why.</source>
            <translation>Elige por qué.</translation>
        </message>
        <message>
            <source>Reason</source>
            <translation>Motivo</translation>
        </message>
        <message>
            <source>The codes are opened with it.</source>
            <translation>Con ello se abren los códigos.</translation>
        </message>
        <message>
            <source>The culture {culture} is marked as lost with it.</source>
            <translation>El cultivo {culture} se marca como perdido con él.</translation>
        </message>
        <message>
            <source>Under suspicion, since they shared liquid with it: {names}.</source>
            <translation>Bajo sospecha, porque compartieron líquido con él: {names}.</translation>
        </message>
        <message>
            <source>What you conclude</source>
            <translation>Tu conclusión</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Por qué</translation>
        </message>
        <message>
            <source>With mold, everything goes: liquid, culture and cloth. Mold cannot be scooped off safely; when in doubt, throw it out. Wash and sanitise the vessel.</source>
            <translation>Con moho se va todo: líquido, cultivo y paño. El moho no se puede retirar de forma segura; ante la duda, deséchalo. Lava y desinfecta el recipiente.</translation>
        </message>
        <message>
            <source>may stay empty</source>
            <translation>puede quedar vacío</translation>
        </message>
        <message>
            <source>{drawn} are drawn off, {kept} stay.</source>
            <translation>Se extraen {drawn}, quedan {kept}.</translation>
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
            <translation>Elegir dónde…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Everything in this pantry goes into one file: vessels, cultures, batches, bottlings, readings, temperatures, the whole history, settings and photos, as open text that other programs can read and as tables for spreadsheets. What is in it is written down inside. The pantry itself stays as it is.

Photos go along unchanged, with whatever the camera wrote into them.</source>
            <translation>Todo lo de esta despensa va a un solo archivo: recipientes, cultivos, lotes, embotellados, lecturas, temperaturas, todo el historial, ajustes y fotos, como texto abierto que otros programas pueden leer y como tablas para hojas de cálculo. Su contenido se describe dentro. La propia despensa queda como está.

Las fotos van sin cambios, con todo lo que la cámara escribió en ellas.</translation>
        </message>
        <message>
            <source>Export everything</source>
            <translation>Exportar todo</translation>
        </message>
        <message>
            <source>Exports of a pantry (*{ending})</source>
            <translation>Exportaciones de una despensa (*{ending})</translation>
        </message>
    </context>
    <context>
        <name>Exports</name>
        <message>
            <source>A newer version of the program made this export. Please bring it in with that version.</source>
            <translation>Esta exportación la hizo una versión más nueva del programa. Incorpórala con esa versión.</translation>
        </message>
        <message>
            <source>A photo that an entry names is not in the archive. Nothing was brought in.</source>
            <translation>Una foto que nombra una entrada no está en el archivo. No se incorporó nada.</translation>
        </message>
        <message>
            <source>Acts in the history</source>
            <translation>Acciones del historial</translation>
        </message>
        <message>
            <source>An entry breaks a rule of the pantry ({where}). Nothing was brought in.</source>
            <translation>Una entrada incumple una regla de la despensa ({where}). No se incorporó nada.</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Bottlings</source>
            <translation>Embotellados</translation>
        </message>
        <message>
            <source>By</source>
            <translation>Con</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Cultivos</translation>
        </message>
        <message>
            <source>Made</source>
            <translation>Creado</translation>
        </message>
        <message>
            <source>Nothing can be written there. Please choose another folder.</source>
            <translation>No se puede escribir ahí. Elige otra carpeta.</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>Saved as {file}: {rows} rows and {photos} photos, {size}.</source>
            <translation>Guardado como {file}: {rows} filas y {photos} fotos, {size}.</translation>
        </message>
        <message>
            <source>Something stands there already, and nothing is ever written over. Please choose another name.</source>
            <translation>Ahí ya hay algo, y nunca se sobrescribe nada. Elige otro nombre.</translation>
        </message>
        <message>
            <source>Stopped. Nothing was kept.</source>
            <translation>Detenido. No se guardó nada.</translation>
        </message>
        <message>
            <source>Tells of</source>
            <translation>Abarca</translation>
        </message>
        <message>
            <source>The disk has not enough room. Nothing was kept; please free some space.</source>
            <translation>No hay suficiente espacio en el disco. No se guardó nada; libera algo de espacio.</translation>
        </message>
        <message>
            <source>The file of one photo is missing or damaged; its entry is there.</source>
            <translation>Falta el archivo de una foto o está dañado; su entrada está.</translation>
        </message>
        <message>
            <source>The files of {count} photos are missing or damaged; their entries are there.</source>
            <translation>Faltan los archivos de {count} fotos o están dañados; sus entradas están.</translation>
        </message>
        <message>
            <source>The new pantry is at {path}: {rows} rows and {photos} photos, all proven.</source>
            <translation>La nueva despensa está en {path}: {rows} filas y {photos} fotos, todo comprobado.</translation>
        </message>
        <message>
            <source>There is no such folder. Please choose another.</source>
            <translation>No existe esa carpeta. Elige otra.</translation>
        </message>
        <message>
            <source>This archive holds what no export holds ({where}). Nothing was brought in; it may have been made to do harm.</source>
            <translation>Este archivo contiene lo que ninguna exportación contiene ({where}). No se incorporó nada; puede haberse creado para hacer daño.</translation>
        </message>
        <message>
            <source>This archive is larger than any export can be. Nothing was brought in.</source>
            <translation>Este archivo es más grande de lo que puede ser una exportación. No se incorporó nada.</translation>
        </message>
        <message>
            <source>This export is damaged, as after a copy that broke off ({where}). Nothing was brought in; please use another copy of it.</source>
            <translation>Esta exportación está dañada, como tras una copia interrumpida ({where}). No se incorporó nada; usa otra copia de ella.</translation>
        </message>
        <message>
            <source>This file cannot be opened. Please check that it is still there.</source>
            <translation>No se puede abrir este archivo. Comprueba que siga ahí.</translation>
        </message>
        <message>
            <source>This is no export of a pantry. Please choose another file.</source>
            <translation>Esto no es una exportación de una despensa. Elige otro archivo.</translation>
        </message>
        <message>
            <source>Vessels</source>
            <translation>Recipientes</translation>
        </message>
        <message>
            <source>brewdesk {version}</source>
            <translation>brewdesk {version}</translation>
        </message>
        <message>
            <source>the archive as a whole</source>
            <translation>el archivo en su conjunto</translation>
        </message>
        <message>
            <source>{count} ({size})</source>
            <translation>{count} ({size})</translation>
        </message>
        <message>
            <source>{entry}, line {line}</source>
            <translation>{entry}, línea {line}</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <translation>{first} a {last}</translation>
        </message>
    </context>
    <context>
        <name>FamilyView</name>
        <message>
            <source>May carry mold</source>
            <translation>Puede tener moho</translation>
        </message>
    </context>
    <context>
        <name>FeedDialog</name>
        <message>
            <source>Feed {name}</source>
            <translation>Alimentar {name}</translation>
        </message>
        <message>
            <source>Look for mold first. Pour in a little fresh sweet tea that has cooled to {limit} or below; hot tea kills the culture. Take some of the old liquid out if the jar gets too full.</source>
            <translation>Busca antes moho. Vierte un poco de té azucarado recién hecho que se haya enfriado a {limit} o menos; el té caliente mata el cultivo. Saca algo del líquido viejo si el frasco se llena demasiado.</translation>
        </message>
        <message>
            <source>Note the feeding</source>
            <translation>Anotar la alimentación</translation>
        </message>
        <message>
            <source>Sugar in it</source>
            <translation>Azúcar que lleva</translation>
        </message>
        <message>
            <source>Sweet tea</source>
            <translation>Té azucarado</translation>
        </message>
    </context>
    <context>
        <name>Films</name>
        <message>
            <source>A first film was to be expected by {day}. If there is none, see that the jar stands warm and under a cloth that lets air in, and that the kombucha it began from was raw.</source>
            <translation>Una primera película era de esperar para el {day}. Si no hay ninguna, comprueba que el frasco esté en un sitio cálido y bajo un paño que deje pasar el aire, y que la kombucha de la que partió fuera cruda.</translation>
        </message>
        <message>
            <source>Expected film: about {mm} mm by {day}.</source>
            <translation>Película esperada: cerca de {mm} mm para el {day}.</translation>
        </message>
        <message>
            <source>Expected film: up to {high} mm by {day}.</source>
            <translation>Película esperada: hasta {high} mm para el {day}.</translation>
        </message>
        <message>
            <source>Expected film: {low} to {high} mm by {day}.</source>
            <translation>Película esperada: {low} a {high} mm para el {day}.</translation>
        </message>
        <message>
            <source>First film expected about {day} ({low} to {high}).</source>
            <translation>Primera película esperada hacia el {day} ({low} a {high}).</translation>
        </message>
        <message>
            <source>{expected} Without one by {late}, something probably holds it back.</source>
            <translation>{expected} Si para el {late} no hay ninguna, probablemente algo la frena.</translation>
        </message>
    </context>
    <context>
        <name>FindsList</name>
        <message>
            <source>What was found</source>
            <translation>Lo encontrado</translation>
        </message>
    </context>
    <context>
        <name>FindsModel</name>
        <message>
            <source>Found</source>
            <translation>Encontrado</translation>
        </message>
    </context>
    <context>
        <name>FizzPlot</name>
        <message>
            <source>Pressure by day</source>
            <translation>Presión por día</translation>
        </message>
        <message>
            <source>bar</source>
            <translation>bar</translation>
        </message>
        <message>
            <source>days in the bottle</source>
            <translation>días en la botella</translation>
        </message>
    </context>
    <context>
        <name>Forecasts</name>
        <message>
            <source>A culture grows in this jar: it is to keep, not to drink, so there is no tasting window. The curve shows how sour its liquid is reckoned to become. Measure it, and look for mold.</source>
            <translation>En este frasco crece un cultivo: es para guardar, no para beber, así que no hay ventana de cata. La curva muestra lo ácido que se calcula que llegará a ser su líquido. Mídelo y busca moho.</translation>
        </message>
        <message>
            <source>Going by your tastings its sourness and its sweetness may never be right for you at once, so these days go by sourness alone.</source>
            <translation>Según tus catas, puede que su acidez y su dulzor nunca estén bien para ti a la vez, así que estos días siguen solo la acidez.</translation>
        </message>
        <message>
            <source>Gravity {value}</source>
            <translation>Densidad {value}</translation>
        </message>
        <message>
            <source>How much acid the starter holds is assumed; a reading makes this sharper.</source>
            <translation>Cuánto ácido contiene el iniciador es una suposición; una lectura lo precisa.</translation>
        </message>
        <message>
            <source>It has probably been {how} for you since {day}.</source>
            <translation>Probablemente es {how} para ti desde el {day}.</translation>
        </message>
        <message>
            <source>It is {chance} that pH {ph} is reached by day {day}; only a reading shows whether it was.</source>
            <translation>Es {chance} que se alcance pH {ph} para el día {day}; solo una lectura muestra si fue así.</translation>
        </message>
        <message>
            <source>It rests on the recipe alone until there is a reading.</source>
            <translation>Se basa solo en la receta hasta que haya una lectura.</translation>
        </message>
        <message>
            <source>It will be sour enough before that, but probably still too sweet for you.</source>
            <translation>Antes de eso será lo bastante ácido, pero probablemente aún demasiado dulce para ti.</translation>
        </message>
        <message>
            <source>It will probably be {how} for you after {day} (between {low} and {high}).</source>
            <translation>Probablemente será {how} para ti después del {day} (entre el {low} y el {high}).</translation>
        </message>
        <message>
            <source>It will probably be {how} for you after {day}, perhaps from {low} on.</source>
            <translation>Probablemente será {how} para ti después del {day}, quizá ya desde el {low}.</translation>
        </message>
        <message>
            <source>It will probably not be sour enough for you within {days} days.</source>
            <translation>Probablemente no será lo bastante ácido para ti en {days} días.</translation>
        </message>
        <message>
            <source>Its temperature, vessel or age lies beyond the published courses, so trust it less.</source>
            <translation>Su temperatura, recipiente o edad queda fuera de los cursos publicados, así que confía menos en él.</translation>
        </message>
        <message>
            <source>No forecast can be made from this batch's amounts and readings. Please look whether one of them was mistyped.</source>
            <translation>No se puede hacer un pronóstico con las cantidades y lecturas de este lote. Mira si alguna se escribió mal.</translation>
        </message>
        <message>
            <source>Several readings do not fit the others; please measure again.</source>
            <translation>Varias lecturas no encajan con las demás; mide de nuevo.</translation>
        </message>
        <message>
            <source>The chance that pH {ph} is reached by day {day} is about {percent} %; only a reading shows whether it was.</source>
            <translation>La probabilidad de que se alcance pH {ph} para el día {day} es de cerca del {percent} %; solo una lectura muestra si fue así.</translation>
        </message>
        <message>
            <source>The forecast is being worked out.</source>
            <translation>El pronóstico se está calculando.</translation>
        </message>
        <message>
            <source>The readings are like no known course, so the bands are wide.</source>
            <translation>Las lecturas no se parecen a ningún curso conocido, así que las bandas son anchas.</translation>
        </message>
        <message>
            <source>The tasting of {day} does not fit the other readings.</source>
            <translation>La cata del {day} no encaja con las demás lecturas.</translation>
        </message>
        <message>
            <source>The tasting window has probably been open since {day} (4 in 5 chance that it opened between {low} and {high}).</source>
            <translation>La ventana de cata probablemente está abierta desde el {day} (probabilidad 4 de 5 de que se abriera entre el {low} y el {high}).</translation>
        </message>
        <message>
            <source>Worth tasting from about {day} (4 in 5 chance that it begins between {low} and {high}).</source>
            <translation>Vale la pena catar desde cerca del {day} (probabilidad 4 de 5 de que empiece entre el {low} y el {high}).</translation>
        </message>
        <message>
            <source>Worth tasting from about {day}; it may begin on {low}, or much later.</source>
            <translation>Vale la pena catar desde cerca del {day}; puede empezar el {low}, o mucho más tarde.</translation>
        </message>
        <message>
            <source>does not fit the other readings</source>
            <translation>no encaja con las demás lecturas</translation>
        </message>
        <message>
            <source>hardly sweet enough</source>
            <translation>apenas lo bastante dulce</translation>
        </message>
        <message>
            <source>is hardly possible for kombucha</source>
            <translation>apenas es posible en kombucha</translation>
        </message>
        <message>
            <source>is less sour</source>
            <translation>indica menos acidez</translation>
        </message>
        <message>
            <source>is less sweet</source>
            <translation>indica menos dulzor</translation>
        </message>
        <message>
            <source>is more sour</source>
            <translation>indica más acidez</translation>
        </message>
        <message>
            <source>is sweeter</source>
            <translation>indica más dulzor</translation>
        </message>
        <message>
            <source>pH {value}</source>
            <translation>pH {value}</translation>
        </message>
        <message>
            <source>too sour</source>
            <translation>demasiado ácido</translation>
        </message>
        <message>
            <source>very likely</source>
            <translation>muy probable</translation>
        </message>
        <message>
            <source>very unlikely</source>
            <translation>muy improbable</translation>
        </message>
        <message>
            <source>{amount} ({method}), {day} at {time}</source>
            <translation>{amount} ({method}), {day} a las {time}</translation>
        </message>
        <message>
            <source>{amount} acidity</source>
            <translation>{amount} de acidez</translation>
        </message>
        <message>
            <source>{how} than the other readings let expect</source>
            <translation>{how} de lo que hacen esperar las demás lecturas</translation>
        </message>
        <message>
            <source>{how} than the readings before and after it</source>
            <translation>{how} que las lecturas de antes y después</translation>
        </message>
        <message>
            <source>{value} acidity</source>
            <translation>{value} de acidez</translation>
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
            <translation>{what} del {day} {why}: busca un error o mide de nuevo.</translation>
        </message>
    </context>
    <context>
        <name>GiveDialog</name>
        <message>
            <source>Give it away</source>
            <translation>Regalarlo</translation>
        </message>
        <message>
            <source>Give it with enough sour liquid to cover it, and only if you saw no mold. To keep one yourself, split it first and give the daughter away.</source>
            <translation>Dalo con suficiente líquido ácido para cubrirlo, y solo si no viste moho. Para quedarte uno, divídelo antes y regala el cultivo hijo.</translation>
        </message>
        <message>
            <source>Give {name} away</source>
            <translation>Regalar {name}</translation>
        </message>
        <message>
            <source>Then print a hand-over card</source>
            <translation>Imprimir después una tarjeta de entrega</translation>
        </message>
        <message>
            <source>To whom (optional)</source>
            <translation>A quién (opcional)</translation>
        </message>
    </context>
    <context>
        <name>GrowDialog</name>
        <message>
            <source>A bottle, not known whether raw</source>
            <translation>Una botella, no se sabe si cruda</translation>
        </message>
        <message>
            <source>A pasteurised bottle</source>
            <translation>Una botella pasteurizada</translation>
        </message>
        <message>
            <source>A raw bottle with fruit or flavour</source>
            <translation>Una botella cruda con fruta o sabor</translation>
        </message>
        <message>
            <source>A raw bottle, unflavoured</source>
            <translation>Una botella cruda, sin sabores</translation>
        </message>
        <message>
            <source>All together</source>
            <translation>Todo junto</translation>
        </message>
        <message>
            <source>Grow a culture from raw kombucha</source>
            <translation>Cultivar de kombucha cruda</translation>
        </message>
        <message>
            <source>Its pH, if you know</source>
            <translation>Su pH, si lo sabes</translation>
        </message>
        <message>
            <source>Name of the new culture</source>
            <translation>Nombre del nuevo cultivo</translation>
        </message>
        <message>
            <source>No vessel is free. Put another on the shelf first.</source>
            <translation>No hay recipiente libre. Pon antes otro en el estante.</translation>
        </message>
        <message>
            <source>Plan it</source>
            <translation>Planificarlo</translation>
        </message>
        <message>
            <source>Raw kombucha in fresh sweet tea grows a film of its own in two to three weeks, kept warm, still and under cloth. Usual is about {raw} in {tea} of sweet tea.</source>
            <translation>La kombucha cruda en té azucarado recién hecho forma su propia película en dos a tres semanas, si está caliente, quieta y bajo un paño. Lo habitual es cerca de {raw} en {tea} de té azucarado.</translation>
        </message>
        <message>
            <source>Raw liquid from</source>
            <translation>Líquido crudo de</translation>
        </message>
        <message>
            <source>Raw liquid in it</source>
            <translation>Líquido crudo que lleva</translation>
        </message>
        <message>
            <source>Starter of</source>
            <translation>Iniciador de</translation>
        </message>
        <message>
            <source>Starter of a culture of mine</source>
            <translation>Iniciador de un cultivo mío</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Recipiente</translation>
        </message>
        <message>
            <source>Which one, in your words (optional)</source>
            <translation>Cuál, en tus palabras (opcional)</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>desconocido</translation>
        </message>
        <message>
            <source>{water} of water, {tea} of tea, {sugar} of sugar, {raw} of raw liquid. It is reckoned to start at about pH {ph} ({low} to {high}): measure it. The run sheet leads through it and keeps the raw liquid out of hot tea.</source>
            <translation>{water} de agua, {tea} de té, {sugar} de azúcar, {raw} de líquido crudo. Se calcula que empezará hacia pH {ph} ({low} a {high}): mídelo. La hoja de trabajo te guía y mantiene el líquido crudo fuera del té caliente.</translation>
        </message>
    </context>
    <context>
        <name>GrowLookDialog</name>
        <message>
            <source>Thickness of the film</source>
            <translation>Grosor de la película</translation>
        </message>
        <message>
            <source>no film yet</source>
            <translation>aún sin película</translation>
        </message>
    </context>
    <context>
        <name>GrowPanel</name>
        <message>
            <source>Film expected from {first} to {last}, solid from {solid} to {latest}; assumed for about 25 °C.</source>
            <translation>Película esperada del {first} al {last}, sólida del {solid} al {latest}; suponiendo unos 25 °C.</translation>
        </message>
        <message>
            <source>Film first noted on day {day}; {mm} mm at the last look.</source>
            <translation>Película anotada por primera vez el día {day}; {mm} mm en la última revisión.</translation>
        </message>
        <message>
            <source>Go and mix it</source>
            <translation>Ir a mezclarlo</translation>
        </message>
        <message>
            <source>It has grown…</source>
            <translation>Ya ha crecido…</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Buscar moho…</translation>
        </message>
        <message>
            <source>Show the jar</source>
            <translation>Mostrar el frasco</translation>
        </message>
    </context>
    <context>
        <name>GrownDialog</name>
        <message>
            <source>Call it grown</source>
            <translation>Darlo por crecido</translation>
        </message>
        <message>
            <source>It then rests in the liquid it grew in, which is its first starter. Call it grown when the film is one solid piece, without mold.</source>
            <translation>Después reposa en el líquido en el que creció, que es su primer iniciador. Dalo por crecido cuando la película sea una pieza sólida, sin moho.</translation>
        </message>
        <message>
            <source>Thickness of the pellicle</source>
            <translation>Grosor de la película</translation>
        </message>
        <message>
            <source>{name} has grown</source>
            <translation>{name} ha crecido</translation>
        </message>
    </context>
    <context>
        <name>HandOver</name>
        <message>
            <source>A batch must be at pH {most} or below by day {day}; otherwise discard it. Measure it.</source>
            <translation>Un lote debe estar a pH {most} o menos para el día {day}; si no, deséchalo. Mídelo.</translation>
        </message>
        <message>
            <source>Born</source>
            <translation>Nacido</translation>
        </message>
        <message>
            <source>Dry, fuzzy or coloured spots on top are signs of mold: then throw out all of it, culture and liquid. When in doubt, throw it out.</source>
            <translation>Las manchas secas, peludas o de color encima son señales de moho: entonces deséchalo todo, cultivo y líquido. Ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Every {days} days or so, pour in some sweet tea: {tea} of tea and {sugar} of sugar in {volume} of water, cooled to {limit} or below.</source>
            <translation>Cada {days} días más o menos, vierte un poco de té azucarado: {tea} de té y {sugar} de azúcar en {volume} de agua, enfriado a {limit} o menos.</translation>
        </message>
        <message>
            <source>Feed it, or brew with it, by</source>
            <translation>Alimentar, o preparar con él, antes de</translation>
        </message>
        <message>
            <source>Home-made kombucha is alive and holds acid and some alcohol. Whoever is pregnant, ill or weak, and whoever cares for small children, should ask a doctor first.</source>
            <translation>La kombucha casera está viva y contiene ácido y algo de alcohol. Las personas embarazadas, enfermas o débiles, y quienes cuiden de niños pequeños, deberían consultar antes con un médico.</translation>
        </message>
        <message>
            <source>How to keep it</source>
            <translation>Cómo guardarlo</translation>
        </message>
        <message>
            <source>If it dries up, top it up with ripe, unflavoured kombucha.</source>
            <translation>Si se seca, rellénalo con kombucha madura y sin sabores.</translation>
        </message>
        <message>
            <source>Keep it at room temperature, out of the sun, away from smoke and from fruit.</source>
            <translation>Guárdalo a temperatura ambiente, lejos del sol, del humo y de la fruta.</translation>
        </message>
        <message>
            <source>Keep it covered by its sour liquid, in glass, under a tightly woven cloth.</source>
            <translation>Mantenlo cubierto por su líquido ácido, en vidrio, bajo un paño de tejido tupido.</translation>
        </message>
        <message>
            <source>Kitchen experience, not a guarantee. Local rules and advice come first.</source>
            <translation>Experiencia de cocina, no una garantía. Las normas y consejos locales van primero.</translation>
        </message>
        <message>
            <source>Kombucha culture, handed over</source>
            <translation>Cultivo de kombucha, entregado</translation>
        </message>
        <message>
            <source>Line</source>
            <translation>Linaje</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Atención</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Película</translation>
        </message>
        <message>
            <source>Rests in</source>
            <translation>Reposa en</translation>
        </message>
        <message>
            <source>The line goes back further.</source>
            <translation>El linaje se remonta más atrás.</translation>
        </message>
        <message>
            <source>To brew, use its liquid as starter, at least a tenth of the whole.</source>
            <translation>Para preparar, usa su líquido como iniciador, al menos una décima parte del total.</translation>
        </message>
        <message>
            <source>Used to</source>
            <translation>Acostumbrado a</translation>
        </message>
        <message>
            <source>Where it comes from</source>
            <translation>De dónde viene</translation>
        </message>
        <message>
            <source>about {mm} mm</source>
            <translation>cerca de {mm} mm</translation>
        </message>
        <message>
            <source>ddd d MMM yyyy</source>
            <translation>ddd d MMM yyyy</translation>
        </message>
        <message>
            <source>ripe kombucha that covers it</source>
            <translation>kombucha madura que lo cubra</translation>
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
            <translation>{volume} de kombucha madura</translation>
        </message>
    </context>
    <context>
        <name>HandOverDialog</name>
        <message>
            <source>Card A5</source>
            <translation>Tarjeta A5</translation>
        </message>
        <message>
            <source>Card A6</source>
            <translation>Tarjeta A6</translation>
        </message>
        <message>
            <source>Hand-over card</source>
            <translation>Tarjeta de entrega</translation>
        </message>
        <message>
            <source>Save the card as PDF</source>
            <translation>Guardar la tarjeta como PDF</translation>
        </message>
        <message>
            <source>Size of the card</source>
            <translation>Tamaño de la tarjeta</translation>
        </message>
    </context>
    <context>
        <name>HistoryFilters</name>
        <message>
            <source>Any culture</source>
            <translation>Cualquier cultivo</translation>
        </message>
        <message>
            <source>Any place</source>
            <translation>Cualquier lugar</translation>
        </message>
        <message>
            <source>Any stage</source>
            <translation>Cualquier fase</translation>
        </message>
        <message>
            <source>Any tea</source>
            <translation>Cualquier té</translation>
        </message>
        <message>
            <source>Any time</source>
            <translation>Cualquier momento</translation>
        </message>
        <message>
            <source>Clear filters</source>
            <translation>Quitar filtros</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Everything</source>
            <translation>Todo</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>From … to …</source>
            <translation>Desde … hasta …</translation>
        </message>
        <message>
            <source>Kind of thing</source>
            <translation>Tipo de cosa</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>Stage of the batch</source>
            <translation>Fase del lote</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>The last 12 months</source>
            <translation>Los últimos 12 meses</translation>
        </message>
        <message>
            <source>The last 30 days</source>
            <translation>Los últimos 30 días</translation>
        </message>
        <message>
            <source>The last 7 days</source>
            <translation>Los últimos 7 días</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Hora</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Hasta</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d MMM yyyy</translation>
        </message>
    </context>
    <context>
        <name>HistoryPage</name>
        <message>
            <source>Clear filters</source>
            <translation>Quitar filtros</translation>
        </message>
        <message>
            <source>Find</source>
            <translation>Buscar</translation>
        </message>
        <message>
            <source>Find batches, jars, cultures, notes, anything</source>
            <translation>Busca lotes, frascos, cultivos, notas, lo que sea</translation>
        </message>
        <message>
            <source>History</source>
            <translation>Historial</translation>
        </message>
        <message>
            <source>Look back</source>
            <translation>Balance</translation>
        </message>
        <message>
            <source>Looking through your records…</source>
            <translation>Buscando en tus registros…</translation>
        </message>
        <message>
            <source>Show more</source>
            <translation>Mostrar más</translation>
        </message>
        <message>
            <source>Words to find</source>
            <translation>Palabras a buscar</translation>
        </message>
    </context>
    <context>
        <name>HistoryPane</name>
        <message>
            <source>Choose something on the left: all that happened to it is told here.</source>
            <translation>Elige algo a la izquierda: aquí se cuenta todo lo que le pasó.</translation>
        </message>
        <message>
            <source>Curve</source>
            <translation>Curva</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>Recipe</source>
            <translation>Receta</translation>
        </message>
        <message>
            <source>Show in Cultures</source>
            <translation>Mostrar en Cultivos</translation>
        </message>
        <message>
            <source>Show its jar</source>
            <translation>Mostrar su frasco</translation>
        </message>
        <message>
            <source>Show older lines</source>
            <translation>Ver líneas anteriores</translation>
        </message>
        <message>
            <source>Show on the shelf</source>
            <translation>Mostrar en el estante</translation>
        </message>
        <message>
            <source>Show the places</source>
            <translation>Mostrar los lugares</translation>
        </message>
        <message>
            <source>Time line</source>
            <translation>Cronología</translation>
        </message>
        <message>
            <source>Time line and records</source>
            <translation>Cronología y registros</translation>
        </message>
    </context>
    <context>
        <name>ImportDialog</name>
        <message>
            <source>All files (*)</source>
            <translation>Todos los archivos (*)</translation>
        </message>
        <message>
            <source>An export becomes a new pantry in a file of its own. The pantry that is open now stays as it is. Every entry is proven first: if anything is wrong, nothing is brought in.</source>
            <translation>Una exportación se convierte en una despensa nueva en un archivo propio. La despensa abierta ahora queda como está. Primero se comprueba cada entrada: si algo está mal, no se incorpora nada.</translation>
        </message>
        <message>
            <source>Bring in an export</source>
            <translation>Incorporar una exportación</translation>
        </message>
        <message>
            <source>Bring it in…</source>
            <translation>Incorporarla…</translation>
        </message>
        <message>
            <source>Choose an export</source>
            <translation>Elige una exportación</translation>
        </message>
        <message>
            <source>Choose an export…</source>
            <translation>Elegir exportación…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Exports of a pantry (*{ending})</source>
            <translation>Exportaciones de una despensa (*{ending})</translation>
        </message>
        <message>
            <source>No file chosen yet.</source>
            <translation>Ningún archivo elegido.</translation>
        </message>
        <message>
            <source>Open it in a window of its own</source>
            <translation>Abrirla en una ventana propia</translation>
        </message>
        <message>
            <source>Pantries (*{ending})</source>
            <translation>Despensas (*{ending})</translation>
        </message>
        <message>
            <source>This pantry is invented, to look at only.</source>
            <translation>Esta despensa es inventada, solo para mirar.</translation>
        </message>
        <message>
            <source>Where the new pantry is to be</source>
            <translation>Dónde irá la nueva despensa</translation>
        </message>
    </context>
    <context>
        <name>Inside</name>
        <message>
            <source>lower</source>
            <translation>lower</translation>
        </message>
    </context>
    <context>
        <name>JarPhotos</name>
        <message>
            <source>Discard it…</source>
            <translation>Desechar…</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Buscar moho…</translation>
        </message>
        <message>
            <source>Not looked at yet</source>
            <translation>Aún sin revisar</translation>
        </message>
        <message>
            <source>What is mold, what is not: a guide with drawings.</source>
            <translation>Qué es moho y qué no: una guía con dibujos.</translation>
        </message>
        <message>
            <source>looked at {when}</source>
            <translation>revisado {when}</translation>
        </message>
    </context>
    <context>
        <name>JarSheet</name>
        <message>
            <source>Add a reading</source>
            <translation>Añadir lectura</translation>
        </message>
        <message>
            <source>All about this jar</source>
            <translation>Todo sobre este frasco</translation>
        </message>
        <message>
            <source>Bottle it…</source>
            <translation>Embotellar…</translation>
        </message>
        <message>
            <source>Carry the batch</source>
            <translation>Llevar el lote</translation>
        </message>
        <message>
            <source>Carry the batch to…</source>
            <translation>Llevar el lote a…</translation>
        </message>
        <message>
            <source>Carry the culture</source>
            <translation>Llevar el cultivo</translation>
        </message>
        <message>
            <source>Carry the culture to…</source>
            <translation>Llevar el cultivo a…</translation>
        </message>
        <message>
            <source>Change the plan…</source>
            <translation>Cambiar el plan…</translation>
        </message>
        <message>
            <source>Change the vessel…</source>
            <translation>Cambiar el recipiente…</translation>
        </message>
        <message>
            <source>Clear it of suspicion…</source>
            <translation>Liberar de sospecha…</translation>
        </message>
        <message>
            <source>Curve</source>
            <translation>Curva</translation>
        </message>
        <message>
            <source>Day {n}</source>
            <translation>Día {n}</translation>
        </message>
        <message>
            <source>Discard it…</source>
            <translation>Desechar…</translation>
        </message>
        <message>
            <source>Draw it off</source>
            <translation>Extraerlo</translation>
        </message>
        <message>
            <source>Draw it off…</source>
            <translation>Extraer…</translation>
        </message>
        <message>
            <source>Give the plan up</source>
            <translation>Abandonar el plan</translation>
        </message>
        <message>
            <source>It is already in the jar…</source>
            <translation>Ya está en el frasco…</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Diario</translation>
        </message>
        <message>
            <source>Look for mold…</source>
            <translation>Buscar moho…</translation>
        </message>
        <message>
            <source>More for this jar</source>
            <translation>Más para este frasco</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Plan a batch</source>
            <translation>Planificar un lote</translation>
        </message>
        <message>
            <source>Print a label…</source>
            <translation>Imprimir etiqueta…</translation>
        </message>
        <message>
            <source>Print the run sheet…</source>
            <translation>Imprimir hoja de trabajo…</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>Recipe</source>
            <translation>Receta</translation>
        </message>
        <message>
            <source>Retire the vessel</source>
            <translation>Retirar el recipiente</translation>
        </message>
        <message>
            <source>Run sheet</source>
            <translation>Hoja de trabajo</translation>
        </message>
        <message>
            <source>Show the batch's history</source>
            <translation>Mostrar historial del lote</translation>
        </message>
        <message>
            <source>Show the culture</source>
            <translation>Mostrar el cultivo</translation>
        </message>
        <message>
            <source>Show the jar's history</source>
            <translation>Mostrar historial del frasco</translation>
        </message>
        <message>
            <source>Start brewing</source>
            <translation>Empezar a preparar</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Recipiente</translation>
        </message>
        <message>
            <source>next</source>
            <translation>siguiente</translation>
        </message>
        <message>
            <source>not read yet</source>
            <translation>aún sin leer</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
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
            <translation>desde {when}</translation>
        </message>
    </context>
    <context>
        <name>JournalModel</name>
        <message>
            <source>What happened</source>
            <translation>Qué pasó</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
    </context>
    <context>
        <name>JournalView</name>
        <message>
            <source>Journal, newest first</source>
            <translation>Diario, primero lo más reciente</translation>
        </message>
        <message>
            <source>Nothing has been written down yet. Whatever you do with this batch will be.</source>
            <translation>Aún no hay nada escrito. Lo estará todo lo que hagas con este lote.</translation>
        </message>
    </context>
    <context>
        <name>KeepCalibration</name>
        <message>
            <source>Keep this calibration</source>
            <translation>Guardar esta calibración</translation>
        </message>
        <message>
            <source>Kept for {meter}.</source>
            <translation>Guardada para {meter}.</translation>
        </message>
        <message>
            <source>Last kept: {meter}, {day}.</source>
            <translation>Última guardada: {meter}, {day}.</translation>
        </message>
        <message>
            <source>Name of the meter</source>
            <translation>Nombre del medidor</translation>
        </message>
        <message>
            <source>None is kept yet. From then on the next one is asked for in time.</source>
            <translation>Aún no hay ninguna guardada. A partir de entonces se pide la siguiente a tiempo.</translation>
        </message>
        <message>
            <source>pH meter</source>
            <translation>Medidor de pH</translation>
        </message>
    </context>
    <context>
        <name>LabelPicker</name>
        <message>
            <source>1 label in all.</source>
            <translation>1 etiqueta en total.</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Bottles filled lately are ticked for you.</source>
            <translation>Las botellas llenadas hace poco ya están marcadas.</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Cultivos</translation>
        </message>
        <message>
            <source>Find by name</source>
            <translation>Buscar por nombre</translation>
        </message>
        <message>
            <source>Jars</source>
            <translation>Frascos</translation>
        </message>
        <message>
            <source>Tick what is to get a label.</source>
            <translation>Marca lo que llevará etiqueta.</translation>
        </message>
        <message>
            <source>Untick all</source>
            <translation>Desmarcar todo</translation>
        </message>
        <message>
            <source>What sours now is ticked for you.</source>
            <translation>Lo que ahora se acidifica ya está marcado.</translation>
        </message>
        <message>
            <source>What to label</source>
            <translation>Qué etiquetar</translation>
        </message>
        <message>
            <source>{count} labels in all.</source>
            <translation>{count} etiquetas en total.</translation>
        </message>
    </context>
    <context>
        <name>LabelPicks</name>
        <message>
            <source>Copies</source>
            <translation>Copias</translation>
        </message>
        <message>
            <source>Label for</source>
            <translation>Etiqueta para</translation>
        </message>
        <message>
            <source>No label</source>
            <translation>Sin etiqueta</translation>
        </message>
        <message>
            <source>Nothing in it</source>
            <translation>Vacío</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
    </context>
    <context>
        <name>LabelPreview</name>
        <message>
            <source>Next page</source>
            <translation>Página siguiente</translation>
        </message>
        <message>
            <source>Page width</source>
            <translation>Ancho de página</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Página {page} de {pages}</translation>
        </message>
        <message>
            <source>Preview of the labels</source>
            <translation>Vista previa de las etiquetas</translation>
        </message>
        <message>
            <source>Previous page</source>
            <translation>Página anterior</translation>
        </message>
        <message>
            <source>Size of the preview</source>
            <translation>Tamaño de la vista previa</translation>
        </message>
        <message>
            <source>Whole page</source>
            <translation>Página completa</translation>
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
            <translation>Como era</translation>
        </message>
        <message>
            <source>Change…</source>
            <translation>Cambiar…</translation>
        </message>
        <message>
            <source>Click where the first label goes</source>
            <translation>Haz clic donde va la primera etiqueta</translation>
        </message>
        <message>
            <source>Draw the outline of each label</source>
            <translation>Dibujar el contorno de cada etiqueta</translation>
        </message>
        <message>
            <source>Like {name}</source>
            <translation>Como {name}</translation>
        </message>
        <message>
            <source>Measures of the sheet</source>
            <translation>Medidas de la hoja</translation>
        </message>
        <message>
            <source>New sheet</source>
            <translation>Nueva hoja</translation>
        </message>
        <message>
            <source>New sheet…</source>
            <translation>Nueva hoja…</translation>
        </message>
        <message>
            <source>Print a test page…</source>
            <translation>Imprimir página de prueba…</translation>
        </message>
        <message>
            <source>Printers shift and stretch a little. The test page, on plain paper, shows how much; Change… takes the correction. Print without “fit to page”.</source>
            <translation>Las impresoras desplazan y estiran un poco. La página de prueba, en papel normal, muestra cuánto; en Cambiar… se pone la corrección. Imprime sin «ajustar a la página».</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Eliminar</translation>
        </message>
        <message>
            <source>Sheet or roll</source>
            <translation>Hoja o rollo</translation>
        </message>
    </context>
    <context>
        <name>LabelWords</name>
        <message>
            <source>As suits each</source>
            <translation>Según cada una</translation>
        </message>
        <message>
            <source>Back to what is recorded</source>
            <translation>Volver a lo registrado</translation>
        </message>
        <message>
            <source>Kind of label</source>
            <translation>Tipo de etiqueta</translation>
        </message>
        <message>
            <source>Ticks count for all labels, words for the one chosen above. The label says what you and your records say; it does not say that a drink is safe. Where you give or sell it, follow your local rules on labels.</source>
            <translation>Las marcas valen para todas las etiquetas; las palabras, para la elegida arriba. La etiqueta dice lo que dicen tú y tus registros; no dice que una bebida sea segura. Donde la regales o vendas, sigue tus normas locales de etiquetado.</translation>
        </message>
        <message>
            <source>What is in it</source>
            <translation>Qué contiene</translation>
        </message>
        <message>
            <source>Words for</source>
            <translation>Palabras para</translation>
        </message>
        <message>
            <source>You know; the program does not</source>
            <translation>Tú lo sabes; el programa no</translation>
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
            <translation>1 botella · {state}</translation>
        </message>
        <message>
            <source>Alive; contains some alcohol and caffeine.</source>
            <translation>Vivo; contiene algo de alcohol y cafeína.</translation>
        </message>
        <message>
            <source>Allergens</source>
            <translation>Alérgenos</translation>
        </message>
        <message>
            <source>Allergens: {text}</source>
            <translation>Alérgenos: {text}</translation>
        </message>
        <message>
            <source>Best before</source>
            <translation>Consumo preferente</translation>
        </message>
        <message>
            <source>Best before {text}</source>
            <translation>Consumo preferente: {text}</translation>
        </message>
        <message>
            <source>Born {text}</source>
            <translation>Nacido: {text}</translation>
        </message>
        <message>
            <source>Both lines are 100 mm long if the printer prints true to size.</source>
            <translation>Ambas líneas miden 100 mm si la impresora imprime a tamaño real.</translation>
        </message>
        <message>
            <source>Bottle</source>
            <translation>Botella</translation>
        </message>
        <message>
            <source>Chill by</source>
            <translation>Enfriar antes de</translation>
        </message>
        <message>
            <source>Chill by {text}</source>
            <translation>Enfriar antes de: {text}</translation>
        </message>
        <message>
            <source>Contains some alcohol</source>
            <translation>Contiene algo de alcohol</translation>
        </message>
        <message>
            <source>Contents under pressure</source>
            <translation>Contenido a presión</translation>
        </message>
        <message>
            <source>Contents under pressure. Chill before opening; do not shake.</source>
            <translation>Contenido a presión. Enfriar antes de abrir; no agitar.</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Do not use: may share mold</source>
            <translation>No usar: puede compartir moho</translation>
        </message>
        <message>
            <source>Feed by</source>
            <translation>Alimentar antes de</translation>
        </message>
        <message>
            <source>Feed by {text}</source>
            <translation>Alimentar antes de: {text}</translation>
        </message>
        <message>
            <source>Filled {text}</source>
            <translation>Llenado: {text}</translation>
        </message>
        <message>
            <source>Gap between columns, mm</source>
            <translation>Espacio entre columnas, mm</translation>
        </message>
        <message>
            <source>Gap between rows, mm</source>
            <translation>Espacio entre filas, mm</translation>
        </message>
        <message>
            <source>Growing</source>
            <translation>En crecimiento</translation>
        </message>
        <message>
            <source>Height of a label, mm</source>
            <translation>Alto de una etiqueta, mm</translation>
        </message>
        <message>
            <source>Height of the paper, mm</source>
            <translation>Alto del papel, mm</translation>
        </message>
        <message>
            <source>Ingredients</source>
            <translation>Ingredientes</translation>
        </message>
        <message>
            <source>Ingredients: {text}</source>
            <translation>Ingredientes: {text}</translation>
        </message>
        <message>
            <source>Invented black tea 1</source>
            <translation>Té negro inventado 1</translation>
        </message>
        <message>
            <source>Invented culture</source>
            <translation>Cultivo inventado</translation>
        </message>
        <message>
            <source>Invented culture at rest</source>
            <translation>Cultivo inventado en reposo</translation>
        </message>
        <message>
            <source>Invented ginger 1</source>
            <translation>Jengibre inventado 1</translation>
        </message>
        <message>
            <source>Jar</source>
            <translation>Frasco</translation>
        </message>
        <message>
            <source>Keep refrigerated</source>
            <translation>Conservar en frío</translation>
        </message>
        <message>
            <source>Keep refrigerated, at {limit} or below.</source>
            <translation>Conservar en frío, a {limit} o menos.</translation>
        </message>
        <message>
            <source>Labels across</source>
            <translation>Etiquetas a lo ancho</translation>
        </message>
        <message>
            <source>Labels down</source>
            <translation>Etiquetas a lo alto</translation>
        </message>
        <message>
            <source>Left edge to the first label, mm</source>
            <translation>Borde izquierdo a primera etiqueta, mm</translation>
        </message>
        <message>
            <source>Length of a label, mm</source>
            <translation>Largo de una etiqueta, mm</translation>
        </message>
        <message>
            <source>Made on</source>
            <translation>Hecho el</translation>
        </message>
        <message>
            <source>Made {text}</source>
            <translation>Hecho: {text}</translation>
        </message>
        <message>
            <source>Move everything down, mm</source>
            <translation>Mover todo abajo, mm</translation>
        </message>
        <message>
            <source>Move everything right, mm</source>
            <translation>Mover todo a la derecha, mm</translation>
        </message>
        <message>
            <source>Name</source>
            <translation>Nombre</translation>
        </message>
        <message>
            <source>Name of the sheet</source>
            <translation>Nombre de la hoja</translation>
        </message>
        <message>
            <source>Please give the sheet a name.</source>
            <translation>Ponle un nombre a la hoja.</translation>
        </message>
        <message>
            <source>Please keep the name shorter.</source>
            <translation>Acorta el nombre.</translation>
        </message>
        <message>
            <source>QR code</source>
            <translation>Código QR</translation>
        </message>
        <message>
            <source>Radius of the corners, mm</source>
            <translation>Radio de las esquinas, mm</translation>
        </message>
        <message>
            <source>Resting</source>
            <translation>En reposo</translation>
        </message>
        <message>
            <source>Resting jar</source>
            <translation>Frasco en reposo</translation>
        </message>
        <message>
            <source>Roll, {width} mm wide, labels {length} mm long</source>
            <translation>Rollo, {width} mm de ancho, etiquetas de {length} mm de largo</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Souring</source>
            <translation>Acidificación</translation>
        </message>
        <message>
            <source>Stage</source>
            <translation>Fase</translation>
        </message>
        <message>
            <source>Taste from</source>
            <translation>Catar desde</translation>
        </message>
        <message>
            <source>Taste from {text}</source>
            <translation>Catar desde: {text}</translation>
        </message>
        <message>
            <source>Test page. Hold it behind a sheet of labels against the light: the frames are where the labels will be, with your corrections. The rulers are printed without any.</source>
            <translation>Página de prueba. Ponla detrás de una hoja de etiquetas a contraluz: los marcos están donde irán las etiquetas, con tus correcciones. Las reglas se imprimen sin ninguna.</translation>
        </message>
        <message>
            <source>The ruler across measures, mm</source>
            <translation>La regla horizontal mide, mm</translation>
        </message>
        <message>
            <source>The ruler down measures, mm</source>
            <translation>La regla vertical mide, mm</translation>
        </message>
        <message>
            <source>There are {high} sheets already. Remove one first.</source>
            <translation>Ya hay {high} hojas. Elimina antes una.</translation>
        </message>
        <message>
            <source>This must lie between {low} and {high}.</source>
            <translation>Debe estar entre {low} y {high}.</translation>
        </message>
        <message>
            <source>Together the labels and gaps are {value} mm high; the paper leaves {high}.</source>
            <translation>Juntos, etiquetas y espacios miden {value} mm de alto; el papel deja {high}.</translation>
        </message>
        <message>
            <source>Together the labels and gaps are {value} mm wide; the paper leaves {high}.</source>
            <translation>Juntos, etiquetas y espacios miden {value} mm de ancho; el papel deja {high}.</translation>
        </message>
        <message>
            <source>True to size, the line across is {across} mm long and the line down {down} mm. Multiply what you measure by {times_across} and {times_down}.</source>
            <translation>A tamaño real, la línea horizontal mide {across} mm y la vertical {down} mm. Multiplica lo que midas por {times_across} y {times_down}.</translation>
        </message>
        <message>
            <source>Upper edge to the first label, mm</source>
            <translation>Borde superior a primera etiqueta, mm</translation>
        </message>
        <message>
            <source>Water, live kombucha culture, sugar, black tea, ginger</source>
            <translation>Agua, cultivo vivo de kombucha, azúcar, té negro, jengibre</translation>
        </message>
        <message>
            <source>Width of a label, mm</source>
            <translation>Ancho de una etiqueta, mm</translation>
        </message>
        <message>
            <source>Width of the paper, mm</source>
            <translation>Ancho del papel, mm</translation>
        </message>
        <message>
            <source>Width of the roll, mm</source>
            <translation>Ancho del rollo, mm</translation>
        </message>
        <message>
            <source>black tea</source>
            <translation>té negro</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>green tea</source>
            <translation>té verde</translation>
        </message>
        <message>
            <source>herbs</source>
            <translation>hierbas</translation>
        </message>
        <message>
            <source>live kombucha culture</source>
            <translation>cultivo vivo de kombucha</translation>
        </message>
        <message>
            <source>none known to its invented maker</source>
            <translation>ninguno que conozca quien lo inventó</translation>
        </message>
        <message>
            <source>oolong tea</source>
            <translation>té oolong</translation>
        </message>
        <message>
            <source>sugar</source>
            <translation>azúcar</translation>
        </message>
        <message>
            <source>tea</source>
            <translation>té</translation>
        </message>
        <message>
            <source>water</source>
            <translation>agua</translation>
        </message>
        <message>
            <source>white tea</source>
            <translation>té blanco</translation>
        </message>
        <message>
            <source>{count} bottles · {state}</source>
            <translation>{count} botellas · {state}</translation>
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
            <translation>{name}: se omite el código QR. Sería demasiado pequeño para leerse.</translation>
        </message>
        <message>
            <source>{name}: “{field}” is cut short. It does not fit on this label.</source>
            <translation>{name}: «{field}» se acorta. No cabe en esta etiqueta.</translation>
        </message>
        <message>
            <source>{name}: “{field}” is left out. There is no room for it.</source>
            <translation>{name}: «{field}» se omite. No hay espacio.</translation>
        </message>
        <message>
            <source>{name}: “{field}” is longer than any label and was cut short.</source>
            <translation>{name}: «{field}» es más largo que cualquier etiqueta y se acortó.</translation>
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
            <translation>Añadir un recipiente…</translation>
        </message>
        <message>
            <source>And {count} more.</source>
            <translation>Y {count} más.</translation>
        </message>
        <message>
            <source>Label {name}</source>
            <translation>Etiquetar {name}</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiquetas</translation>
        </message>
        <message>
            <source>Nothing is ticked yet. These are samples with invented words; they are not printed.</source>
            <translation>Aún no hay nada marcado. Estas son muestras con palabras inventadas; no se imprimen.</translation>
        </message>
        <message>
            <source>Nothing to label yet</source>
            <translation>Aún no hay nada que etiquetar</translation>
        </message>
        <message>
            <source>Once there is a jar, a batch or a culture, this page prints labels for it: with its dates, your own words and a code with its record's own number.</source>
            <translation>En cuanto haya un frasco, un lote o un cultivo, esta página imprime sus etiquetas: con sus fechas, tus propias palabras y un código con el número propio de su registro.</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>Archivos PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Print…</source>
            <translation>Imprimir…</translation>
        </message>
        <message>
            <source>Save as PDF…</source>
            <translation>Guardar como PDF…</translation>
        </message>
        <message>
            <source>Save the labels as PDF</source>
            <translation>Guardar las etiquetas como PDF</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Guardado como {file}</translation>
        </message>
        <message>
            <source>Sheet</source>
            <translation>Hoja</translation>
        </message>
        <message>
            <source>The printer does not have the paper of this sheet. Choose another printer, or the labels will be in the wrong place.</source>
            <translation>La impresora no tiene el papel de esta hoja. Elige otra impresora, o las etiquetas quedarán fuera de sitio.</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>What is labelled, its words, and the sheet</source>
            <translation>Qué se etiqueta, sus palabras y la hoja</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Palabras</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>No se pudo escribir {file}. Elige otra carpeta.</translation>
        </message>
    </context>
    <context>
        <name>LeaveOutDialog</name>
        <message>
            <source>It counts in no result then; the reason stands in the report. Leave out what went wrong, such as mold or a spill, never what came out unexpectedly.</source>
            <translation>Así no cuenta en ningún resultado; el motivo figura en el informe. Excluye lo que salió mal, como moho o un derrame, nunca lo que salió de forma inesperada.</translation>
        </message>
        <message>
            <source>Leave it out</source>
            <translation>Excluirlo</translation>
        </message>
        <message>
            <source>Leave {code} out</source>
            <translation>Excluir {code}</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Por qué</translation>
        </message>
    </context>
    <context>
        <name>LiquidEntries</name>
        <message>
            <source>Draw off part of {name}</source>
            <translation>Extraer una parte de {name}</translation>
        </message>
        <message>
            <source>Draw off part…</source>
            <translation>Extraer una parte…</translation>
        </message>
        <message>
            <source>Keep starter back…</source>
            <translation>Reservar iniciador…</translation>
        </message>
        <message>
            <source>Keep starter of {name}</source>
            <translation>Reservar iniciador de {name}</translation>
        </message>
        <message>
            <source>Pour over into another vessel…</source>
            <translation>Trasvasar a otro recipiente…</translation>
        </message>
        <message>
            <source>Pour together with another batch…</source>
            <translation>Juntar con otro lote…</translation>
        </message>
        <message>
            <source>Pour {name} into another batch</source>
            <translation>Verter {name} en otro lote</translation>
        </message>
        <message>
            <source>Pour {name} over</source>
            <translation>Trasvasar {name}</translation>
        </message>
        <message>
            <source>Top up…</source>
            <translation>Rellenar…</translation>
        </message>
    </context>
    <context>
        <name>Liquids</name>
        <message>
            <source>A batch cannot be poured into itself.</source>
            <translation>Un lote no se puede verter en sí mismo.</translation>
        </message>
        <message>
            <source>Another culture has this name already. Please choose another name.</source>
            <translation>Otro cultivo ya tiene este nombre. Elige otro nombre.</translation>
        </message>
        <message>
            <source>It is in this vessel already.</source>
            <translation>Ya está en este recipiente.</translation>
        </message>
        <message>
            <source>More than half of the jar would be fresh tea.</source>
            <translation>Más de la mitad del frasco sería té fresco.</translation>
        </message>
        <message>
            <source>Only a batch that is souring can take in another one.</source>
            <translation>Solo un lote en acidificación puede recibir otro.</translation>
        </message>
        <message>
            <source>Only a batch that is souring has liquid to draw, pour or lend.</source>
            <translation>Solo un lote en acidificación tiene líquido que extraer, verter o prestar.</translation>
        </message>
        <message>
            <source>Only a culture that rests in liquid of its own can lend starter.</source>
            <translation>Solo un cultivo que reposa en líquido propio puede prestar iniciador.</translation>
        </message>
        <message>
            <source>Please give an amount of at least a drop.</source>
            <translation>Indica una cantidad de al menos una gota.</translation>
        </message>
        <message>
            <source>Pour in less, or draw some off first.</source>
            <translation>Vierte menos, o extrae antes un poco.</translation>
        </message>
        <message>
            <source>Pour in less, or let it sour for longer first, and measure after mixing.</source>
            <translation>Vierte menos, o deja que se acidifique antes más tiempo, y mide después de mezclar.</translation>
        </message>
        <message>
            <source>Pour in less, or plan a new batch with this one as its starter.</source>
            <translation>Vierte menos, o planifica un lote nuevo con este como iniciador.</translation>
        </message>
        <message>
            <source>Poured into {name}</source>
            <translation>Vertido en {name}</translation>
        </message>
        <message>
            <source>So much at once thins the acid that protects it; {share} is as good as a new batch. That half is a cautious mark; common practice, no source.</source>
            <translation>Tanto de una vez diluye el ácido que lo protege; {share} es como un lote nuevo. Esa mitad es una marca prudente; práctica habitual, sin fuente.</translation>
        </message>
        <message>
            <source>Starter can be lent to a plan or an empty vessel; this batch has been begun.</source>
            <translation>El iniciador se puede prestar a un plan o a un recipiente vacío; este lote ya se empezó.</translation>
        </message>
        <message>
            <source>Starter can only be kept where a culture rests in a vessel.</source>
            <translation>El iniciador solo se puede guardar donde un cultivo reposa en un recipiente.</translation>
        </message>
        <message>
            <source>That does not fit: there is room for {high} to the brim.</source>
            <translation>No cabe: hay sitio para {high} hasta el borde.</translation>
        </message>
        <message>
            <source>That is more than there is: {high}.</source>
            <translation>Es más de lo que hay: {high}.</translation>
        </message>
        <message>
            <source>That makes {fill_l}, more than the {working_l} you usually fill in.</source>
            <translation>Eso da {fill_l}, más que los {working_l} que sueles llenar.</translation>
        </message>
        <message>
            <source>That would empty the jar: there are {high}. To take all of it, draw the batch off or pour it over.</source>
            <translation>Eso vaciaría el frasco: hay {high}. Para tomarlo todo, extrae el lote o trasvásalo.</translation>
        </message>
        <message>
            <source>The culture needs air above it, and room to rise.</source>
            <translation>El cultivo necesita aire por encima y sitio para subir.</translation>
        </message>
        <message>
            <source>The cultures join only if all of the batch is poured over.</source>
            <translation>Los cultivos se unen solo si se vierte todo el lote.</translation>
        </message>
        <message>
            <source>The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful germs can grow in sweet tea.</source>
            <translation>La estimación es {ph}, pero puede llegar hasta {high}. Por encima de {limit} pueden crecer gérmenes dañinos en el té azucarado.</translation>
        </message>
        <message>
            <source>There are no two different cultures at work in these jars.</source>
            <translation>En estos frascos no trabajan dos cultivos distintos.</translation>
        </message>
        <message>
            <source>There is no culture in this jar to keep it with. Lend it to a plan instead.</source>
            <translation>En este frasco no hay un cultivo con el que guardarlo. Préstalo a un plan en su lugar.</translation>
        </message>
        <message>
            <source>This liquid may carry mold. It goes nowhere but down the drain, until you have looked and cleared it.</source>
            <translation>Este líquido puede tener moho. No va a ningún sitio salvo al desagüe, hasta que lo hayas revisado y liberado.</translation>
        </message>
        <message>
            <source>To fill this vessel again you would need {volume} of starter.</source>
            <translation>Para volver a llenar este recipiente necesitarías {volume} de iniciador.</translation>
        </message>
        <message>
            <source>With this much fresh tea its pH may rise above {limit}.</source>
            <translation>Con tanto té fresco, su pH puede subir por encima de {limit}.</translation>
        </message>
        <message>
            <source>{plan}, which is planned next, wants {volume} of starter.</source>
            <translation>{plan}, lo siguiente planificado, necesita {volume} de iniciador.</translation>
        </message>
    </context>
    <context>
        <name>LocationDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Leave the camera data out?</source>
            <translation>¿Quitar los datos de la cámara?</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Guardar una copia</translation>
        </message>
        <message>
            <source>Save as it is</source>
            <translation>Guardar tal cual</translation>
        </message>
        <message>
            <source>Save without it</source>
            <translation>Guardar sin ellos</translation>
        </message>
    </context>
    <context>
        <name>LoggerChoices</name>
        <message>
            <source>&amp;Time</source>
            <translation>&amp;Hora</translation>
        </message>
        <message>
            <source>Columns are parted by</source>
            <translation>Columnas separadas por</translation>
        </message>
        <message>
            <source>How the file is written</source>
            <translation>Cómo está escrito el archivo</translation>
        </message>
        <message>
            <source>Letters are written as</source>
            <translation>Codificación del texto</translation>
        </message>
        <message>
            <source>T&amp;emperature</source>
            <translation>T&amp;emperatura</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturas en</translation>
        </message>
        <message>
            <source>The logger's &amp;clock shows</source>
            <translation>El &amp;reloj del registrador marca</translation>
        </message>
        <message>
            <source>Time of &amp;day, if apart</source>
            <translation>Hora del &amp;día, si va aparte</translation>
        </message>
        <message>
            <source>your own time without summer time ({zone})</source>
            <translation>tu propia hora sin horario de verano ({zone})</translation>
        </message>
    </context>
    <context>
        <name>LoggerDialog</name>
        <message>
            <source>Choose the logger's file</source>
            <translation>Elige el archivo del registrador</translation>
        </message>
        <message>
            <source>Choose the table that your temperature logger exported: text with a time and a temperature in each row. How it is written is found out, and shown before anything is kept.</source>
            <translation>Elige la tabla que exportó tu registrador de temperatura: texto con una hora y una temperatura en cada fila. Cómo está escrita se averigua y se muestra antes de guardar nada.</translation>
        </message>
        <message>
            <source>How much of the file has been read</source>
            <translation>Cuánto del archivo se ha leído</translation>
        </message>
        <message>
            <source>Please choose one.</source>
            <translation>Elige una opción.</translation>
        </message>
        <message>
            <source>Read a logger's file</source>
            <translation>Leer el archivo de un registrador</translation>
        </message>
        <message>
            <source>Read a logger's file for {name}</source>
            <translation>Leer el archivo de un registrador para {name}</translation>
        </message>
        <message>
            <source>Rows left out ({count}), the first of them:</source>
            <translation>Filas omitidas ({count}), las primeras:</translation>
        </message>
        <message>
            <source>Rows that could not be read</source>
            <translation>Filas que no se pudieron leer</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Detener</translation>
        </message>
    </context>
    <context>
        <name>LoggerTable</name>
        <message>
            <source>Read as temperature</source>
            <translation>Leído como temperatura</translation>
        </message>
        <message>
            <source>Read as time</source>
            <translation>Leído como hora</translation>
        </message>
        <message>
            <source>The first rows of the file</source>
            <translation>Las primeras filas del archivo</translation>
        </message>
        <message>
            <source>day or month first?</source>
            <translation>¿día o mes primero?</translation>
        </message>
    </context>
    <context>
        <name>Loggers</name>
        <message>
            <source>Line {line}: {why}</source>
            <translation>Línea {line}: {why}</translation>
        </message>
        <message>
            <source>Line {line}: {why} ({text})</source>
            <translation>Línea {line}: {why} ({text})</translation>
        </message>
        <message>
            <source>No table of times and temperatures was found in this file. Please choose the logger's export as text (CSV).</source>
            <translation>No se encontró en este archivo ninguna tabla de horas y temperaturas. Elige la exportación del registrador como texto (CSV).</translation>
        </message>
        <message>
            <source>Not one row could be read this way. Please check the columns and the dates.</source>
            <translation>Así no se pudo leer ni una fila. Comprueba las columnas y las fechas.</translation>
        </message>
        <message>
            <source>One row could not be read and is left out.</source>
            <translation>Una fila no se pudo leer y se omite.</translation>
        </message>
        <message>
            <source>Stopped. Nothing was kept.</source>
            <translation>Detenido. No se guardó nada.</translation>
        </message>
        <message>
            <source>The dates can be read in two ways. Please say whether the day or the month comes first.</source>
            <translation>Las fechas se pueden leer de dos maneras. Indica si va primero el día o el mes.</translation>
        </message>
        <message>
            <source>This file cannot be opened. Please check that it is still there.</source>
            <translation>No se puede abrir este archivo. Comprueba que siga ahí.</translation>
        </message>
        <message>
            <source>This file has more than ten million rows. Please export a shorter time from the logger.</source>
            <translation>Este archivo tiene más de diez millones de filas. Exporta del registrador un tiempo más corto.</translation>
        </message>
        <message>
            <source>This file is empty. Please export it from the logger once more.</source>
            <translation>Este archivo está vacío. Expórtalo del registrador otra vez.</translation>
        </message>
        <message>
            <source>Times that came more than once count once: {count}.</source>
            <translation>Las horas que venían más de una vez cuentan una vez: {count}.</translation>
        </message>
        <message>
            <source>Times that summer time leaves out: {count}. They were moved on by the missing hour; perhaps the logger's clock does not follow summer time.</source>
            <translation>Horas que el horario de verano omite: {count}. Se adelantaron la hora que falta; quizá el reloj del registrador no sigue el horario de verano.</translation>
        </message>
        <message>
            <source>Times that the end of summer time repeats: {count}. The order of the rows says which is which.</source>
            <translation>Horas que el fin del horario de verano repite: {count}. El orden de las filas dice cuál es cuál.</translation>
        </message>
        <message>
            <source>no room is that cold or warm</source>
            <translation>ningún espacio es tan frío o caliente</translation>
        </message>
        <message>
            <source>the row has too few columns</source>
            <translation>la fila tiene muy pocas columnas</translation>
        </message>
        <message>
            <source>the row is empty</source>
            <translation>la fila está vacía</translation>
        </message>
        <message>
            <source>the temperature is no number</source>
            <translation>la temperatura no es un número</translation>
        </message>
        <message>
            <source>the temperature is no number that can be measured</source>
            <translation>la temperatura no es un número que se pueda medir</translation>
        </message>
        <message>
            <source>the time cannot be read</source>
            <translation>la hora no se puede leer</translation>
        </message>
        <message>
            <source>the time is still to come</source>
            <translation>la hora aún está por llegar</translation>
        </message>
        <message>
            <source>there is no such date</source>
            <translation>esa fecha no existe</translation>
        </message>
        <message>
            <source>there is no such time of day</source>
            <translation>esa hora del día no existe</translation>
        </message>
        <message>
            <source>there is no temperature</source>
            <translation>no hay temperatura</translation>
        </message>
        <message>
            <source>{count} rows could not be read and are left out.</source>
            <translation>{count} filas no se pudieron leer y se omiten.</translation>
        </message>
        <message>
            <source>{count} temperatures from {first} to {last}, between {least} and {most}, on average {mean}.</source>
            <translation>{count} temperaturas del {first} al {last}, entre {least} y {most}, en promedio {mean}.</translation>
        </message>
    </context>
    <context>
        <name>LookBack</name>
        <message>
            <source> (right: {low} to {high} % as a rule)</source>
            <translation> (bien: {low} a {high} % por lo general)</translation>
        </message>
        <message>
            <source>, too few</source>
            <translation>, muy pocos</translation>
        </message>
        <message>
            <source>1 batch</source>
            <translation>1 lote</translation>
        </message>
        <message>
            <source>1 loss is written down, with its reason below.</source>
            <translation>1 pérdida está anotada, con su motivo abajo.</translation>
        </message>
        <message>
            <source>; too few to say how it is as a rule</source>
            <translation>; muy pocas para decir cómo es por lo general</translation>
        </message>
        <message>
            <source>Age of culture</source>
            <translation>Edad del cultivo</translation>
        </message>
        <message>
            <source>Between {first} and {second} no difference shows: {first} may be anything from {fast} days faster to {slow} days slower.</source>
            <translation>Entre {first} y {second} no se ve diferencia: {first} puede ir desde {fast} días más rápido hasta {slow} días más lento.</translation>
        </message>
        <message>
            <source>Bottles were vented once.</source>
            <translation>Se liberó la presión de botellas una vez.</translation>
        </message>
        <message>
            <source>Bottles were vented {count} times.</source>
            <translation>Se liberó la presión de botellas {count} veces.</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Culture {band} months old</source>
            <translation>Cultivo de {band} meses</translation>
        </message>
        <message>
            <source>For the next one, {days} days is the better guess.</source>
            <translation>Para el próximo, {days} días es la mejor conjetura.</translation>
        </message>
        <message>
            <source>Founder</source>
            <translation>Fundador</translation>
        </message>
        <message>
            <source>Generation</source>
            <translation>Generación</translation>
        </message>
        <message>
            <source>Generation {n}</source>
            <translation>Generación {n}</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Mes</translation>
        </message>
        <message>
            <source>No culture</source>
            <translation>Sin cultivo</translation>
        </message>
        <message>
            <source>None of {batches} has come {what} yet.</source>
            <translation>Ninguno de {batches} ha llegado {what} todavía.</translation>
        </message>
        <message>
            <source>None of {batches} is drawn off yet.</source>
            <translation>Ninguno de {batches} se ha extraído todavía.</translation>
        </message>
        <message>
            <source>Not counted: {parts}.</source>
            <translation>Sin contar: {parts}.</translation>
        </message>
        <message>
            <source>Of {count} bottles opened {right} were right, {under} too flat, {over} gushed</source>
            <translation>De {count} botellas abiertas, {right} estaban bien, {under} con poco gas, {over} se desbordaron</translation>
        </message>
        <message>
            <source>Of {count} tastings {right} were just right, {under} too sweet, {over} too sour</source>
            <translation>De {count} catas, {right} justo bien, {under} demasiado dulce, {over} demasiado ácido</translation>
        </message>
        <message>
            <source>Part of it may be warmth: {cool} stood {degrees} cooler than {warm}.</source>
            <translation>Parte puede ser el calor: {cool} estuvo {degrees} más frío que {warm}.</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>Starter share</source>
            <translation>Proporción de iniciador</translation>
        </message>
        <message>
            <source>Starter {band}</source>
            <translation>Iniciador {band}</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>That is too few to call it a difference: it takes {count} batches of each.</source>
            <translation>Son muy pocos para llamarlo diferencia: hacen falta {count} lotes de cada uno.</translation>
        </message>
        <message>
            <source>That is too few to say what the next one will take.</source>
            <translation>Son muy pocos para decir cuánto tardará el próximo.</translation>
        </message>
        <message>
            <source>The median of many such batches lies above {low} ({percent} % sure).</source>
            <translation>La mediana de muchos lotes así está por encima de {low} (seguro al {percent} %).</translation>
        </message>
        <message>
            <source>The median of many such batches lies between {low} and {high} days ({percent} % sure).</source>
            <translation>La mediana de muchos lotes así está entre {low} y {high} días (seguro al {percent} %).</translation>
        </message>
        <message>
            <source>Too few to say more.</source>
            <translation>Muy pocos para decir más.</translation>
        </message>
        <message>
            <source>Warmth</source>
            <translation>Calor</translation>
        </message>
        <message>
            <source>Whether {first} and {second} differ cannot be said yet.</source>
            <translation>Aún no se puede decir si {first} y {second} difieren.</translation>
        </message>
        <message>
            <source>Your batches took {spread} {what}.</source>
            <translation>Tus lotes tardaron {spread} {what}.</translation>
        </message>
        <message>
            <source>hardly any</source>
            <translation>casi 0</translation>
        </message>
        <message>
            <source>more than {days} days</source>
            <translation>más de {days} días</translation>
        </message>
        <message>
            <source>none there, of {count}</source>
            <translation>ninguno ha llegado, de {count}</translation>
        </message>
        <message>
            <source>not there after {days} days</source>
            <translation>sin llegar tras {days} días</translation>
        </message>
        <message>
            <source>open</source>
            <translation>abierto</translation>
        </message>
        <message>
            <source>over {days} days</source>
            <translation>más de {days} días</translation>
        </message>
        <message>
            <source>to pH {ph}</source>
            <translation>hasta pH {ph}</translation>
        </message>
        <message>
            <source>under {high}</source>
            <translation>menos de {high}</translation>
        </message>
        <message>
            <source>until drawn off</source>
            <translation>hasta extraerlo</translation>
        </message>
        <message>
            <source>{batches} begun</source>
            <translation>inicio de {batches}</translation>
        </message>
        <message>
            <source>{batches} in all: {parts}.</source>
            <translation>{batches} en total: {parts}.</translation>
        </message>
        <message>
            <source>{celsius} as usual there</source>
            <translation>{celsius} como es habitual allí</translation>
        </message>
        <message>
            <source>{count} batches</source>
            <translation>{count} lotes</translation>
        </message>
        <message>
            <source>{count} drawn off</source>
            <translation>{count} extraídos</translation>
        </message>
        <message>
            <source>{count} losses are written down, with their reasons below.</source>
            <translation>{count} pérdidas están anotadas, con sus motivos abajo.</translation>
        </message>
        <message>
            <source>{count} more not there</source>
            <translation>{count} más sin llegar</translation>
        </message>
        <message>
            <source>{count} not drawn off</source>
            <translation>{count} sin extraer</translation>
        </message>
        <message>
            <source>{count} perhaps that sour from the start</source>
            <translation>{count} quizá así de ácidos desde el principio</translation>
        </message>
        <message>
            <source>{count} still souring</source>
            <translation>{count} aún en acidificación</translation>
        </message>
        <message>
            <source>{count} thrown away</source>
            <translation>{count} desechados</translation>
        </message>
        <message>
            <source>{count} without readings that tell</source>
            <translation>{count} sin lecturas que lo digan</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} días</translation>
        </message>
        <message>
            <source>{days} days, read between day {early} and day {late}</source>
            <translation>{days} días, leído entre el día {early} y el día {late}</translation>
        </message>
        <message>
            <source>{low} and more</source>
            <translation>{low} o más</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <translation>{low} a {high}</translation>
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
            <translation>{name} tardó {spread} {what}</translation>
        </message>
        <message>
            <source>{name} {spread}</source>
            <translation>{name} {spread}</translation>
        </message>
        <message>
            <source>{name}: no batch tells.</source>
            <translation>{name}: ningún lote lo dice.</translation>
        </message>
        <message>
            <source>{name}: none of {batches} is there yet.</source>
            <translation>{name}: ninguno de {batches} ha llegado aún.</translation>
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
            <translation>{slow} tardó más que {fast}, cerca de {middle} días ({low} a {high}).</translation>
        </message>
        <message>
            <source>{slow} took longer than {fast}, by {low} days at least.</source>
            <translation>{slow} tardó más que {fast}, al menos {low} días.</translation>
        </message>
        <message>
            <source>{volume} drunk</source>
            <translation>{volume} bebidos</translation>
        </message>
        <message>
            <source>{volume} were drunk or given away.</source>
            <translation>{volume} se bebieron o regalaron.</translation>
        </message>
    </context>
    <context>
        <name>LookBackFilters</name>
        <message>
            <source>Any culture</source>
            <translation>Cualquier cultivo</translation>
        </message>
        <message>
            <source>Any place</source>
            <translation>Cualquier lugar</translation>
        </message>
        <message>
            <source>Any tea</source>
            <translation>Cualquier té</translation>
        </message>
        <message>
            <source>Any time</source>
            <translation>Cualquier momento</translation>
        </message>
        <message>
            <source>By {what}</source>
            <translation>Por {what}</translation>
        </message>
        <message>
            <source>Clear filters</source>
            <translation>Quitar filtros</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Days counted</source>
            <translation>Días contados</translation>
        </message>
        <message>
            <source>Days {what}</source>
            <translation>Días {what}</translation>
        </message>
        <message>
            <source>From</source>
            <translation>Desde</translation>
        </message>
        <message>
            <source>From … to …</source>
            <translation>Desde … hasta …</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>Side by side by</source>
            <translation>Comparar</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>The last 12 months</source>
            <translation>Los últimos 12 meses</translation>
        </message>
        <message>
            <source>The last 3 months</source>
            <translation>Los últimos 3 meses</translation>
        </message>
        <message>
            <source>The last 6 months</source>
            <translation>Los últimos 6 meses</translation>
        </message>
        <message>
            <source>Time of the start</source>
            <translation>Momento de inicio</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Hasta</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d MMM yyyy</translation>
        </message>
    </context>
    <context>
        <name>LookBackPage</name>
        <message>
            <source>Clear filters</source>
            <translation>Quitar filtros</translation>
        </message>
        <message>
            <source>Days {what}, by {factor}</source>
            <translation>Días {what}, por {factor}</translation>
        </message>
        <message>
            <source>Each dot is a batch; an open one is not there, or ended before. The line is the median, the band where the median of many such batches lies (nine times in ten; from five batches on). The diamond is the better guess for the next one: a small group's mean drawn towards that of all. Groups stand in no order of merit.</source>
            <translation>Cada punto es un lote; uno abierto no ha llegado, o terminó antes. La línea es la mediana; la banda, donde está la mediana de muchos lotes así (nueve de cada diez veces; desde cinco lotes). El rombo es la mejor conjetura para el próximo: la media de un grupo pequeño, acercada a la de todos. Los grupos no van en orden de mérito.</translation>
        </message>
        <message>
            <source>Gushed</source>
            <translation>Se desbordó</translation>
        </message>
        <message>
            <source>How bottles opened</source>
            <translation>Cómo se abrieron las botellas</translation>
        </message>
        <message>
            <source>How it tasted</source>
            <translation>Cómo sabía</translation>
        </message>
        <message>
            <source>In short</source>
            <translation>En breve</translation>
        </message>
        <message>
            <source>Just right</source>
            <translation>Justo bien</translation>
        </message>
        <message>
            <source>Looking through your records…</source>
            <translation>Buscando en tus registros…</translation>
        </message>
        <message>
            <source>Losses</source>
            <translation>Pérdidas</translation>
        </message>
        <message>
            <source>Month by month</source>
            <translation>Mes a mes</translation>
        </message>
        <message>
            <source>Months</source>
            <translation>Meses</translation>
        </message>
        <message>
            <source>No batch has readings that tell these days.</source>
            <translation>Ningún lote tiene lecturas que digan estos días.</translation>
        </message>
        <message>
            <source>No batch that has soured is like that: {filters}.</source>
            <translation>Ningún lote que se haya acidificado es así: {filters}.</translation>
        </message>
        <message>
            <source>Nothing to look back at yet.

When your first batch sours and its pH is read a few times, its days appear here. Tastings, opened bottles, months and losses join as you note them. With five batches of a kind the page says how sure it is of their pace, and with five of two kinds whether they differ.</source>
            <translation>Aún no hay nada a lo que mirar atrás.

Cuando tu primer lote se acidifique y se lea su pH unas cuantas veces, sus días aparecen aquí. Las catas, botellas abiertas, meses y pérdidas se suman a medida que los anotas. Con cinco lotes de un tipo, la página dice lo segura que está de su ritmo, y con cinco de dos tipos, si difieren.</translation>
        </message>
        <message>
            <source>Press a dot, or walk with the arrows, to meet its batch.</source>
            <translation>Pulsa un punto, o recórrelos con las flechas, para ver su lote.</translation>
        </message>
        <message>
            <source>Print or save…</source>
            <translation>Imprimir o guardar…</translation>
        </message>
        <message>
            <source>Right</source>
            <translation>Bien</translation>
        </message>
        <message>
            <source>Tea, culture, place and season change together in a pantry. What stands side by side here shows what was, not what it came from.</source>
            <translation>En una despensa, té, cultivo, lugar y estación cambian juntos. Lo que aquí está lado a lado muestra lo que fue, no de qué vino.</translation>
        </message>
        <message>
            <source>Too flat</source>
            <translation>Con poco gas</translation>
        </message>
        <message>
            <source>Too sour</source>
            <translation>Demasiado ácido</translation>
        </message>
        <message>
            <source>Too sweet</source>
            <translation>Demasiado dulce</translation>
        </message>
    </context>
    <context>
        <name>LookBackReport</name>
        <message>
            <source>All batches</source>
            <translation>Todos los lotes</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Empezado</translation>
        </message>
        <message>
            <source>Cause</source>
            <translation>Causa</translation>
        </message>
        <message>
            <source>Days {what}, by {factor}</source>
            <translation>Días {what}, por {factor}</translation>
        </message>
        <message>
            <source>Drunk</source>
            <translation>Bebido</translation>
        </message>
        <message>
            <source>Each dot is a batch; a hollow one is not there, or ended before. The line is the median, the band where the median of many such batches lies (nine times in ten; from five batches on). Groups stand in no order of merit. Tea, culture, place and season change together: this shows what was, not what it came from.</source>
            <translation>Cada punto es un lote; uno hueco no ha llegado, o terminó antes. La línea es la mediana; la banda, donde está la mediana de muchos lotes así (nueve de cada diez veces; desde cinco lotes). Los grupos no van en orden de mérito. Té, cultivo, lugar y estación cambian juntos: esto muestra lo que fue, no de qué vino.</translation>
        </message>
        <message>
            <source>Group</source>
            <translation>Grupo</translation>
        </message>
        <message>
            <source>Groups</source>
            <translation>Grupos</translation>
        </message>
        <message>
            <source>In your words</source>
            <translation>En tus palabras</translation>
        </message>
        <message>
            <source>Look back</source>
            <translation>Balance</translation>
        </message>
        <message>
            <source>Losses</source>
            <translation>Pérdidas</translation>
        </message>
        <message>
            <source>Mean warmth</source>
            <translation>Calor medio</translation>
        </message>
        <message>
            <source>Median days</source>
            <translation>Mediana, días</translation>
        </message>
        <message>
            <source>Median lies</source>
            <translation>Mediana entre</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Mes</translation>
        </message>
        <message>
            <source>Month by month</source>
            <translation>Mes a mes</translation>
        </message>
        <message>
            <source>Next one</source>
            <translation>El próximo</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Página {page} de {pages}</translation>
        </message>
        <message>
            <source>Range</source>
            <translation>Intervalo</translation>
        </message>
        <message>
            <source>Right taste</source>
            <translation>Sabor justo</translation>
        </message>
        <message>
            <source>Warmth</source>
            <translation>Calor</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>What usually helps (common practice, no source)</source>
            <translation>Qué suele ayudar (práctica habitual, sin fuente)</translation>
        </message>
        <message>
            <source>brewdesk – what was noted, as far as its numbers carry</source>
            <translation>brewdesk – lo anotado, hasta donde llegan sus números</translation>
        </message>
        <message>
            <source>days</source>
            <translation>días</translation>
        </message>
        <message>
            <source>over {low}</source>
            <translation>más de {low}</translation>
        </message>
        <message>
            <source>too few</source>
            <translation>muy pocos</translation>
        </message>
        <message>
            <source>{cause}: {help}</source>
            <translation>{cause}: {help}</translation>
        </message>
        <message>
            <source>{right} of {count}</source>
            <translation>{right} de {count}</translation>
        </message>
    </context>
    <context>
        <name>LookBackRows</name>
        <message>
            <source>Batches</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Days</source>
            <translation>Días</translation>
        </message>
        <message>
            <source>Drunk, {unit}</source>
            <translation>Bebido, {unit}</translation>
        </message>
        <message>
            <source>Mean {unit}</source>
            <translation>Media {unit}</translation>
        </message>
    </context>
    <context>
        <name>LookChecklist</name>
        <message>
            <source>Belongs to a healthy brew</source>
            <translation>Propio de un cultivo sano</translation>
        </message>
        <message>
            <source>Look in good light, from above and from the side, without stirring. Never taste to find out.</source>
            <translation>Mira con buena luz, desde arriba y de lado, sin remover. Nunca pruebes para averiguarlo.</translation>
        </message>
        <message>
            <source>Signs of mold: all of it goes</source>
            <translation>Señales de moho: se va todo</translation>
        </message>
        <message>
            <source>Tick everything you see.</source>
            <translation>Marca todo lo que veas.</translation>
        </message>
    </context>
    <context>
        <name>LookDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>In your own words</source>
            <translation>En tus propias palabras</translation>
        </message>
        <message>
            <source>In your own words (optional)</source>
            <translation>En tus propias palabras (opcional)</translation>
        </message>
        <message>
            <source>Look for mold</source>
            <translation>Buscar moho</translation>
        </message>
        <message>
            <source>Record it and discard…</source>
            <translation>Anotarla y desechar…</translation>
        </message>
        <message>
            <source>Record this look</source>
            <translation>Anotar esta revisión</translation>
        </message>
        <message>
            <source>What do you see on {name}?</source>
            <translation>¿Qué ves en {name}?</translation>
        </message>
        <message>
            <source>What you see</source>
            <translation>Qué ves</translation>
        </message>
    </context>
    <context>
        <name>Looks</name>
        <message>
            <source>A dull patch like flour or felt, where all around it is wet.</source>
            <translation>Una mancha mate como harina o fieltro, donde alrededor todo está húmedo.</translation>
        </message>
        <message>
            <source>A pale or tan skin, glossy, under or at the surface of the liquid.</source>
            <translation>Una piel pálida o tostada, brillante, bajo la superficie del líquido o en ella.</translation>
        </message>
        <message>
            <source>A young film over an old one, gaps, ridges, a pale new patch: wet all over.</source>
            <translation>Una película joven sobre una vieja, huecos, arrugas, una zona nueva y pálida: todo húmedo.</translation>
        </message>
        <message>
            <source>Brown strings hanging</source>
            <translation>Cuelgan hilos marrones</translation>
        </message>
        <message>
            <source>Bubbles under it</source>
            <translation>Burbujas debajo</translation>
        </message>
        <message>
            <source>Clear or cloudy, with nothing on top: usual in the first days.</source>
            <translation>Claro o turbio, sin nada encima: habitual en los primeros días.</translation>
        </message>
        <message>
            <source>Coloured, or like white powder</source>
            <translation>De color, o como polvo blanco</translation>
        </message>
        <message>
            <source>Discard all of it: drink, culture and cloth. Do not scoop it off, do not taste it, and keep no starter from it. Wash and sanitise the vessel.</source>
            <translation>Deséchalo todo: bebida, cultivo y paño. No lo retires a cucharadas, no lo pruebes y no guardes iniciador de él. Lava y desinfecta el recipiente.</translation>
        </message>
        <message>
            <source>Discarding everything at any mold: Niagara Region (Ontario), kombucha best practices. How a healthy film looks: common practice, no source. Your local rules come first.</source>
            <translation>Desechar todo ante cualquier moho: Niagara Region (Ontario), buenas prácticas de kombucha. Cómo se ve una película sana: práctica habitual, sin fuente. Tus normas locales van primero.</translation>
        </message>
        <message>
            <source>Drawing: a dry cushion on top of the wet film.</source>
            <translation>Dibujo: un cojín seco sobre la película húmeda.</translation>
        </message>
        <message>
            <source>Drawing: a question mark on the film.</source>
            <translation>Dibujo: un signo de interrogación sobre la película.</translation>
        </message>
        <message>
            <source>Drawing: a thin new film above an uneven old one with a hole.</source>
            <translation>Dibujo: una película nueva y fina sobre una vieja irregular con un agujero.</translation>
        </message>
        <message>
            <source>Drawing: an even, glossy film on the liquid.</source>
            <translation>Dibujo: una película pareja y brillante sobre el líquido.</translation>
        </message>
        <message>
            <source>Drawing: brown threads hanging from the film into the liquid.</source>
            <translation>Dibujo: hilos marrones que cuelgan de la película en el líquido.</translation>
        </message>
        <message>
            <source>Drawing: bubbles below a film that they lift.</source>
            <translation>Dibujo: burbujas bajo una película que levantan.</translation>
        </message>
        <message>
            <source>Drawing: liquid without a film.</source>
            <translation>Dibujo: líquido sin película.</translation>
        </message>
        <message>
            <source>Drawing: the film from above with spots in several colours.</source>
            <translation>Dibujo: la película desde arriba con manchas de varios colores.</translation>
        </message>
        <message>
            <source>Drawing: tufts of hair standing on the film.</source>
            <translation>Dibujo: mechones de pelo de pie sobre la película.</translation>
        </message>
        <message>
            <source>Dry, standing above the liquid</source>
            <translation>Seco, sobresale del líquido</translation>
        </message>
        <message>
            <source>Fine hairs or a velvety patch, mostly round, on top of the film.</source>
            <translation>Pelos finos o una mancha aterciopelada, casi siempre redonda, sobre la película.</translation>
        </message>
        <message>
            <source>Fuzzy or hairy</source>
            <translation>Peludo o velloso</translation>
        </message>
        <message>
            <source>Gas of the yeast lifts the film or makes domes in it; they are wet.</source>
            <translation>El gas de la levadura levanta la película o forma cúpulas en ella; están húmedas.</translation>
        </message>
        <message>
            <source>Green, blue, black, pink or orange spots, or a white powder, seen from above.</source>
            <translation>Manchas verdes, azules, negras, rosas o naranjas, o un polvo blanco, vistas desde arriba.</translation>
        </message>
        <message>
            <source>I am not sure</source>
            <translation>No lo sé con certeza</translation>
        </message>
        <message>
            <source>Keep the jar apart, use nothing from it for another, and look again tomorrow; you will be reminded. When in doubt, throw it out.</source>
            <translation>Aparta el frasco, no uses nada de él para otro y mira de nuevo mañana; se te recordará. Ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Mold was seen on it.</source>
            <translation>Se vio moho en él.</translation>
        </message>
        <message>
            <source>New layers, holes, uneven thickness</source>
            <translation>Capas nuevas, agujeros, grosor desigual</translation>
        </message>
        <message>
            <source>Not clear yet.</source>
            <translation>Aún no está claro.</translation>
        </message>
        <message>
            <source>Nothing suspicious seen.</source>
            <translation>No se ve nada sospechoso.</translation>
        </message>
        <message>
            <source>Only liquid, no film yet</source>
            <translation>Solo líquido, aún sin película</translation>
        </message>
        <message>
            <source>That is no proof: mold can begin out of sight. Go on looking, and when in doubt, throw it out.</source>
            <translation>Eso no es una prueba: el moho puede empezar donde no se ve. Sigue mirando y, ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>This looks like mold.</source>
            <translation>Esto parece moho.</translation>
        </message>
        <message>
            <source>Wet and smooth, of the colour of the tea</source>
            <translation>Húmeda y lisa, del color del té</translation>
        </message>
        <message>
            <source>Yeast: soft brown threads or clouds below the film, always in the liquid.</source>
            <translation>Levadura: hilos o nubes marrones y blandos bajo la película, siempre en el líquido.</translation>
        </message>
        <message>
            <source>You see something that you cannot place. A day tells: mold grows, a film thickens.</source>
            <translation>Ves algo que no sabes qué es. Un día lo dirá: el moho crece, una película engorda.</translation>
        </message>
    </context>
    <context>
        <name>LoseDialog</name>
        <message>
            <source>It had mold, or may have had</source>
            <translation>Tenía moho, o quizá lo tenía</translation>
        </message>
        <message>
            <source>Mark it as lost</source>
            <translation>Marcar como perdido</translation>
        </message>
        <message>
            <source>Nothing else is put under suspicion.</source>
            <translation>Nada más queda bajo sospecha.</translation>
        </message>
        <message>
            <source>Nothing is known to have shared liquid with it since it was clean.</source>
            <translation>No se sabe de nada que compartiera líquido con él desde que estaba limpio.</translation>
        </message>
        <message>
            <source>What happened</source>
            <translation>Qué pasó</translation>
        </message>
        <message>
            <source>With mold everything goes: pellicle, liquid and cloth. Wash the vessel with hot water and soap. When in doubt, throw it out.</source>
            <translation>Con moho se va todo: película, líquido y paño. Lava el recipiente con agua caliente y jabón. Ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>{names} shared liquid with it and come under suspicion. Look at each.</source>
            <translation>{names} compartieron líquido con él y quedan bajo sospecha. Revisa cada uno.</translation>
        </message>
        <message>
            <source>{names} shared liquid with it and comes under suspicion. Look at it.</source>
            <translation>{names} compartió líquido con él y queda bajo sospecha. Revísalo.</translation>
        </message>
        <message>
            <source>{name} is lost</source>
            <translation>{name} se ha perdido</translation>
        </message>
    </context>
    <context>
        <name>LossList</name>
        <message>
            <source>Common practice, no source. The causes are read from your own words; what they do not name is left as it is.</source>
            <translation>Práctica común, sin fuente. Las causas se leen de tus propias palabras; lo que no nombran se deja como está.</translation>
        </message>
        <message>
            <source>No reason was written down.</source>
            <translation>No se escribió ningún motivo.</translation>
        </message>
        <message>
            <source>Open the history: {what}</source>
            <translation>Abrir el historial: {what}</translation>
        </message>
        <message>
            <source>Show all {count} losses</source>
            <translation>Mostrar las {count} pérdidas</translation>
        </message>
        <message>
            <source>What usually helps</source>
            <translation>Qué suele ayudar</translation>
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
            <translation>1 botella</translation>
        </message>
        <message>
            <source>A close-woven cloth under a tight band; paper or cheesecloth lets fruit flies in. With maggots in it, the batch and its culture go.</source>
            <translation>Un paño de tejido tupido bajo una goma ajustada; el papel o la estopilla dejan entrar moscas de la fruta. Si hay larvas dentro, se van el lote y su cultivo.</translation>
        </message>
        <message>
            <source>Another reason</source>
            <translation>Otro motivo</translation>
        </message>
        <message>
            <source>Batch {name}</source>
            <translation>Lote {name}</translation>
        </message>
        <message>
            <source>Begin to taste earlier, most of all in warm months, or stand the jar cooler. What is too sour to drink still makes strong starter.</source>
            <translation>Empieza a catar antes, sobre todo en los meses cálidos, o pon el frasco en un sitio más fresco. Lo demasiado ácido para beber sigue siendo un iniciador fuerte.</translation>
        </message>
        <message>
            <source>Bottle with less sugar, use bottles made for pressure, keep a soft test bottle, and chill them by the day the forecast names.</source>
            <translation>Embotella con menos azúcar, usa botellas hechas para la presión, ten una botella de prueba blanda y enfríalas antes del día que indica el pronóstico.</translation>
        </message>
        <message>
            <source>Bottles {name}</source>
            <translation>Botellas {name}</translation>
        </message>
        <message>
            <source>Broken or spilt</source>
            <translation>Roto o derramado</translation>
        </message>
        <message>
            <source>Culture {name}</source>
            <translation>Cultivo {name}</translation>
        </message>
        <message>
            <source>Dried out or forgotten</source>
            <translation>Seco u olvidado</translation>
        </message>
        <message>
            <source>Flies</source>
            <translation>Moscas</translation>
        </message>
        <message>
            <source>Look at water and tea first: scented or oily teas and chlorine disturb a culture. When in doubt, throw it out.</source>
            <translation>Mira antes el agua y el té: los tés aromatizados o aceitosos y el cloro perturban un cultivo. Ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Mold</source>
            <translation>Moho</translation>
        </message>
        <message>
            <source>Resting cultures want liquid and a little sweet tea now and then; the reminders for feeding and topping up can be set in the settings.</source>
            <translation>Los cultivos en reposo necesitan líquido y un poco de té azucarado de vez en cuando; los recordatorios para alimentar y rellenar se pueden configurar en los ajustes.</translation>
        </message>
        <message>
            <source>Smell or taste</source>
            <translation>Olor o sabor</translation>
        </message>
        <message>
            <source>Throw all of it away, liquid, culture and cloth, and clean the jar with boiling water. Next time begin sour enough (more or sourer starter), wet the top of the culture with starter, cover the jar at once, and keep it warm enough to sour within days.</source>
            <translation>Deséchalo todo, líquido, cultivo y paño, y limpia el frasco con agua hirviendo. La próxima vez, empieza lo bastante ácido (más iniciador o más ácido), moja la parte superior del cultivo con iniciador, tapa el frasco enseguida y mantenlo lo bastante caliente para que se acidifique en unos días.</translation>
        </message>
        <message>
            <source>Too much pressure</source>
            <translation>Demasiada presión</translation>
        </message>
        <message>
            <source>Too sour</source>
            <translation>Demasiado ácido</translation>
        </message>
        <message>
            <source>Warm glass before hot tea goes in, carry full jars with both hands under them, and stand bottles in a box that would hold the splinters.</source>
            <translation>Templa el vidrio antes de echar té caliente, lleva los frascos llenos con ambas manos debajo y pon las botellas en una caja que retenga los trozos.</translation>
        </message>
        <message>
            <source>{count} bottles</source>
            <translation>{count} botellas</translation>
        </message>
    </context>
    <context>
        <name>LotDialog</name>
        <message>
            <source>&amp;Bought on</source>
            <translation>&amp;Comprado el</translation>
        </message>
        <message>
            <source>&amp;Price of all of it</source>
            <translation>&amp;Precio de todo</translation>
        </message>
        <message>
            <source>A purchase</source>
            <translation>Una compra</translation>
        </message>
        <message>
            <source>Best before</source>
            <translation>Consumo preferente</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Correct a purchase</source>
            <translation>Corregir una compra</translation>
        </message>
        <message>
            <source>From whom</source>
            <translation>De quién</translation>
        </message>
        <message>
            <source>How &amp;many</source>
            <translation>C&amp;uántos</translation>
        </message>
        <message>
            <source>How &amp;much</source>
            <translation>C&amp;uánto</translation>
        </message>
        <message>
            <source>Lot number on the pack</source>
            <translation>Núm. de lote del envase</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Save the purchase</source>
            <translation>Guardar la compra</translation>
        </message>
        <message>
            <source>not known; in {currency}</source>
            <translation>desconocido; en {currency}</translation>
        </message>
    </context>
    <context>
        <name>MainWindow</name>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Rehacer</translation>
        </message>
        <message>
            <source>&amp;Redo: {act}</source>
            <translation>&amp;Rehacer: {act}</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Deshacer</translation>
        </message>
        <message>
            <source>&amp;Undo: {act}</source>
            <translation>&amp;Deshacer: {act}</translation>
        </message>
        <message>
            <source>Backed up to {path}</source>
            <translation>Copia de seguridad en {path}</translation>
        </message>
        <message>
            <source>Invented pantry – brewdesk</source>
            <translation>Despensa inventada – brewdesk</translation>
        </message>
        <message>
            <source>It is off the shelf. Pantry &gt; Retired vessels puts it back.</source>
            <translation>Está fuera del estante. Despensa &gt; Recipientes retirados lo devuelve.</translation>
        </message>
        <message>
            <source>Save what is open as a copy…</source>
            <translation>Guardar lo abierto como copia…</translation>
        </message>
        <message>
            <source>Something went wrong in the program ({what}). What was saved before is safe; the log file holds the details.</source>
            <translation>Algo falló en el programa ({what}). Lo guardado antes está a salvo; el archivo de registro tiene los detalles.</translation>
        </message>
        <message>
            <source>The clock is right</source>
            <translation>El reloj está bien</translation>
        </message>
        <message>
            <source>The computer's clock is earlier than your newest record. Reminders wait until it is right again; nothing is lost.</source>
            <translation>El reloj del equipo va por detrás de tu registro más reciente. Los recordatorios esperan hasta que vuelva a estar bien; no se pierde nada.</translation>
        </message>
    </context>
    <context>
        <name>Measures</name>
        <message>
            <source>Cold water</source>
            <translation>Agua fría</translation>
        </message>
        <message>
            <source>Hot water</source>
            <translation>Agua caliente</translation>
        </message>
        <message>
            <source>In the vessel</source>
            <translation>En el recipiente</translation>
        </message>
        <message>
            <source>Starter liquid</source>
            <translation>Líquido iniciador</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Tea leaves</source>
            <translation>Hojas de té</translation>
        </message>
        <message>
            <source>Wet leaves, lifted out</source>
            <translation>Hojas mojadas, retiradas</translation>
        </message>
        <message>
            <source>{number} bag</source>
            <translation>{number} bolsita</translation>
        </message>
        <message>
            <source>{number} bags</source>
            <translation>{number} bolsitas</translation>
        </message>
        <message>
            <source>{number} cup</source>
            <translation>{number} taza</translation>
        </message>
        <message>
            <source>{number} cups</source>
            <translation>{number} tazas</translation>
        </message>
        <message>
            <source>{number} tablespoon</source>
            <translation>{number} cucharada</translation>
        </message>
        <message>
            <source>{number} tablespoons</source>
            <translation>{number} cucharadas</translation>
        </message>
        <message>
            <source>{number} teaspoon</source>
            <translation>{number} cucharadita</translation>
        </message>
        <message>
            <source>{number} teaspoons</source>
            <translation>{number} cucharaditas</translation>
        </message>
    </context>
    <context>
        <name>MergeDialog</name>
        <message>
            <source>Merge it with</source>
            <translation>Unirlo con</translation>
        </message>
        <message>
            <source>Merge them</source>
            <translation>Unirlos</translation>
        </message>
        <message>
            <source>Merge {name} with others</source>
            <translation>Unir {name} con otros</translation>
        </message>
        <message>
            <source>Name of the new culture</source>
            <translation>Nombre del nuevo cultivo</translation>
        </message>
        <message>
            <source>There is no other culture here to merge it with.</source>
            <translation>Aquí no hay otro cultivo con el que unirlo.</translation>
        </message>
        <message>
            <source>They become one new culture and are themselves retired. If one of them carries mold, all of it will: look at each first.</source>
            <translation>Se convierten en un nuevo cultivo y ellos quedan retirados. Si uno de ellos tiene moho, lo tendrá todo: revisa antes cada uno.</translation>
        </message>
        <message>
            <source>Where it rests</source>
            <translation>Dónde reposa</translation>
        </message>
    </context>
    <context>
        <name>MoveDialog</name>
        <message>
            <source>Move it</source>
            <translation>Moverlo</translation>
        </message>
        <message>
            <source>Move {name}</source>
            <translation>Mover {name}</translation>
        </message>
        <message>
            <source>To</source>
            <translation>Hasta</translation>
        </message>
        <message>
            <source>What it rests in goes along. Into a batch it goes by planning one.</source>
            <translation>Aquello en lo que reposa va con él. A un lote va planificando uno.</translation>
        </message>
    </context>
    <context>
        <name>MovingStore</name>
        <message>
            <source>Copy a pantry, with its photos, from its file into an empty database on a PostgreSQL server, or back into a new file. Every row is compared afterwards. What was copied stays where it is.</source>
            <translation>Copia una despensa, con sus fotos, de su archivo a una base de datos vacía en un servidor PostgreSQL, o de vuelta a un archivo nuevo. Después se compara cada fila. Lo copiado se queda donde está.</translation>
        </message>
        <message>
            <source>Exit codes: 0 all of it arrived, 2 nothing was changed.</source>
            <translation>Códigos de salida: 0 llegó todo, 2 no se cambió nada.</translation>
        </message>
        <message>
            <source>One side has to be a file and the other a server, whose address may stand in {variable}.</source>
            <translation>Un lado tiene que ser un archivo y el otro un servidor, cuya dirección puede estar en {variable}.</translation>
        </message>
        <message>
            <source>Start brewdesk without {variable}. The server's pantry stays as it was, and is now out of date: close the other desks.</source>
            <translation>Inicia brewdesk sin {variable}. La despensa del servidor queda como estaba y ahora está desactualizada: cierra los demás puestos.</translation>
        </message>
        <message>
            <source>Start every desk with {variable} set. The file stays as it was, and is now out of date: put it aside.</source>
            <translation>Inicia cada puesto con {variable} definida. El archivo queda como estaba y ahora está desactualizado: apártalo.</translation>
        </message>
        <message>
            <source>The records arrived, but a photo could not be read or written. Please look whether the disk has room and the photos' folder may be read, remove what was made, and start again.</source>
            <translation>Los registros llegaron, pero una foto no se pudo leer o escribir. Mira si el disco tiene espacio y si se puede leer la carpeta de las fotos, elimina lo creado y empieza de nuevo.</translation>
        </message>
        <message>
            <source>This pantry is open in a window. Please close it first; nothing was changed.</source>
            <translation>Esta despensa está abierta en una ventana. Ciérrala antes; no se cambió nada.</translation>
        </message>
        <message>
            <source>a new file, an address like postgresql+psycopg://name@host/database, or the word “server” for the address in {variable}</source>
            <translation>un archivo nuevo, una dirección como postgresql+psycopg://name@host/database, o la palabra «server» para la dirección de {variable}</translation>
        </message>
        <message>
            <source>the same, for what is copied; without it your own pantry, or the address in {variable}</source>
            <translation>lo mismo, para lo que se copia; sin ello, tu propia despensa o la dirección de {variable}</translation>
        </message>
        <message>
            <source>where your own pantry is looked for, and the identity of this desk</source>
            <translation>dónde se busca tu propia despensa, y la identidad de este puesto</translation>
        </message>
        <message>
            <source>{missing} photos were missing before.</source>
            <translation>{missing} fotos ya faltaban antes.</translation>
        </message>
        <message>
            <source>{rows} rows and {photos} photos arrived and are the same as before.</source>
            <translation>{rows} filas y {photos} fotos llegaron y son iguales que antes.</translation>
        </message>
    </context>
    <context>
        <name>NoteDialog</name>
        <message>
            <source>Keep the note</source>
            <translation>Guardar la nota</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Note on {name}</source>
            <translation>Nota sobre {name}</translation>
        </message>
    </context>
    <context>
        <name>NoticeBar</name>
        <message>
            <source>Dismiss</source>
            <translation>Descartar</translation>
        </message>
        <message>
            <source>Show</source>
            <translation>Mostrar</translation>
        </message>
    </context>
    <context>
        <name>Outlook</name>
        <message>
            <source>1 day</source>
            <translation>1 día</translation>
        </message>
        <message>
            <source>A Brix</source>
            <translation>Un Brix</translation>
        </message>
        <message>
            <source>A gravity</source>
            <translation>Una densidad</translation>
        </message>
        <message>
            <source>A pH</source>
            <translation>Un pH</translation>
        </message>
        <message>
            <source>A tasting</source>
            <translation>Una cata</translation>
        </message>
        <message>
            <source>A temperature</source>
            <translation>Una temperatura</translation>
        </message>
        <message>
            <source>A titration</source>
            <translation>Una titulación</translation>
        </message>
        <message>
            <source>About {days} earlier than forecast.</source>
            <translation>Cerca de {days} antes de lo pronosticado.</translation>
        </message>
        <message>
            <source>About {days} later than forecast.</source>
            <translation>Cerca de {days} después de lo pronosticado.</translation>
        </message>
        <message>
            <source>As if it had begun so.</source>
            <translation>Como si hubiera empezado así.</translation>
        </message>
        <message>
            <source>Estimate for now: {parts}; only a laboratory can certify.</source>
            <translation>Estimación para ahora: {parts}; solo un laboratorio puede certificarlo.</translation>
        </message>
        <message>
            <source>Hardly different from the forecast.</source>
            <translation>Apenas difiere del pronóstico.</translation>
        </message>
        <message>
            <source>Since yesterday the window has moved earlier: {new} instead of {old}.</source>
            <translation>Desde ayer la ventana se ha adelantado: {new} en vez de {old}.</translation>
        </message>
        <message>
            <source>Since yesterday the window has moved later: {new} instead of {old}.</source>
            <translation>Desde ayer la ventana se ha retrasado: {new} en vez de {old}.</translation>
        </message>
        <message>
            <source>Since yesterday: no longer expected within {days} days; before, about {day}.</source>
            <translation>Desde ayer: ya no se espera en {days} días; antes, hacia el {day}.</translation>
        </message>
        <message>
            <source>Since yesterday: sour enough about {day}; before, not within {days} days.</source>
            <translation>Desde ayer: lo bastante ácido hacia el {day}; antes, no en {days} días.</translation>
        </message>
        <message>
            <source>Since yesterday: still about {day}, but surer by {days}.</source>
            <translation>Desde ayer: aún hacia el {day}, pero {days} más seguro.</translation>
        </message>
        <message>
            <source>What if (dashed): from about {day} ({low} to {high}) to about {end}.</source>
            <translation>Y si (a trazos): desde cerca del {day} ({low} a {high}) hasta cerca del {end}.</translation>
        </message>
        <message>
            <source>What if (dashed): from about {day} ({low} to {high}).</source>
            <translation>Y si (a trazos): desde cerca del {day} ({low} a {high}).</translation>
        </message>
        <message>
            <source>What if (dashed): probably not sour enough for you within {days} days.</source>
            <translation>Y si (a trazos): probablemente no lo bastante ácido para ti en {days} días.</translation>
        </message>
        <message>
            <source>alcohol {mid} % vol (perhaps {high})</source>
            <translation>alcohol {mid} % vol (quizá {high})</translation>
        </message>
        <message>
            <source>alcohol {mid} % vol ({low} to {high})</source>
            <translation>alcohol {mid} % vol ({low} a {high})</translation>
        </message>
        <message>
            <source>sugar {amount}</source>
            <translation>azúcar {amount}</translation>
        </message>
        <message>
            <source>{n} days</source>
            <translation>{n} días</translation>
        </message>
        <message>
            <source>{what} on {day} would narrow the window by about {days}.</source>
            <translation>{what} el {day} estrecharía la ventana en cerca de {days}.</translation>
        </message>
        <message>
            <source>{what} today would narrow the window by about {days}.</source>
            <translation>{what} hoy estrecharía la ventana en cerca de {days}.</translation>
        </message>
    </context>
    <context>
        <name>OwnReminderForm</name>
        <message>
            <source>Add the reminder</source>
            <translation>Añadir el recordatorio</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Para</translation>
        </message>
        <message>
            <source>Please choose a time that is still to come.</source>
            <translation>Elige una hora que aún esté por llegar.</translation>
        </message>
        <message>
            <source>Remind me to</source>
            <translation>Recordarme</translation>
        </message>
        <message>
            <source>Wash the cloths, buy sugar …</source>
            <translation>Lavar los paños, comprar azúcar …</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>no jar in particular</source>
            <translation>ningún frasco en particular</translation>
        </message>
    </context>
    <context>
        <name>Palate</name>
        <message>
            <source>1 tasting</source>
            <translation>1 cata</translation>
        </message>
        <message>
            <source>Hardly sweet enough below about {driest} of sugar; the sugar is reckoned, so only what is surely below this narrows a window.</source>
            <translation>Apenas lo bastante dulce por debajo de cerca de {driest} de azúcar; el azúcar se calcula, así que solo lo que seguro está por debajo estrecha una ventana.</translation>
        </message>
        <message>
            <source>In force after {count}: pH {first} down to {sour}.</source>
            <translation>Vigente tras {count}: pH {first} hasta {sour}.</translation>
        </message>
        <message>
            <source>No sip was too sour so far, so the lower end is a guess.</source>
            <translation>Hasta ahora ningún sorbo fue demasiado ácido, así que el extremo inferior es una conjetura.</translation>
        </message>
        <message>
            <source>No sip was too sweet so far, so the upper end is a guess.</source>
            <translation>Hasta ahora ningún sorbo fue demasiado dulce, así que el extremo superior es una conjetura.</translation>
        </message>
        <message>
            <source>Nothing is learnt yet: the two pH above hold. Enter a tasting with your readings, best with a pH of the same hour.</source>
            <translation>Aún no se ha aprendido nada: valen los dos pH de arriba. Anota una cata con tus lecturas, mejor con un pH de la misma hora.</translation>
        </message>
        <message>
            <source>One tasting was read from the words of a note.</source>
            <translation>Una cata se leyó de las palabras de una nota.</translation>
        </message>
        <message>
            <source>So few move it little.</source>
            <translation>Tan pocas lo mueven poco.</translation>
        </message>
        <message>
            <source>They contradict one another, so the band stays wide.</source>
            <translation>Se contradicen, así que la banda sigue ancha.</translation>
        </message>
        <message>
            <source>Too sweet from about {sweetest} of sugar, hardly sweet enough below about {driest}; the sugar is reckoned, so only what is surely beyond this narrows a window.</source>
            <translation>Demasiado dulce desde cerca de {sweetest} de azúcar, apenas lo bastante dulce por debajo de cerca de {driest}; el azúcar se calcula, así que solo lo que seguro está fuera de ahí estrecha una ventana.</translation>
        </message>
        <message>
            <source>Too sweet from about {sweetest} of sugar; the sugar is reckoned, so only what is surely above this narrows a window.</source>
            <translation>Demasiado dulce desde cerca de {sweetest} de azúcar; el azúcar se calcula, así que solo lo que seguro está por encima estrecha una ventana.</translation>
        </message>
        <message>
            <source>read as: {what}</source>
            <translation>leído como: {what}</translation>
        </message>
        <message>
            <source>right</source>
            <translation>bien</translation>
        </message>
        <message>
            <source>too sour</source>
            <translation>demasiado ácido</translation>
        </message>
        <message>
            <source>too sweet</source>
            <translation>demasiado dulce</translation>
        </message>
        <message>
            <source>{mid} ({low} to {high})</source>
            <translation>{mid} ({low} a {high})</translation>
        </message>
        <message>
            <source>{n} tastings</source>
            <translation>{n} catas</translation>
        </message>
        <message>
            <source>{n} tastings were read from the words of notes.</source>
            <translation>{n} catas se leyeron de las palabras de notas.</translation>
        </message>
    </context>
    <context>
        <name>PaperDialog</name>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>PDF files (*.pdf)</source>
            <translation>Archivos PDF (*.pdf)</translation>
        </message>
        <message>
            <source>Paper size</source>
            <translation>Tamaño del papel</translation>
        </message>
        <message>
            <source>Print…</source>
            <translation>Imprimir…</translation>
        </message>
        <message>
            <source>Save as PDF…</source>
            <translation>Guardar como PDF…</translation>
        </message>
        <message>
            <source>Saved as {file}</source>
            <translation>Guardado como {file}</translation>
        </message>
        <message>
            <source>The page as it will be printed</source>
            <translation>La página tal como se imprimirá</translation>
        </message>
        <message>
            <source>{file} could not be written. Choose another folder.</source>
            <translation>No se pudo escribir {file}. Elige otra carpeta.</translation>
        </message>
    </context>
    <context>
        <name>PastDialog</name>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Curve</source>
            <translation>Curva</translation>
        </message>
        <message>
            <source>It is over; this is what was read until it ended.</source>
            <translation>Ha terminado; esto es lo que se leyó hasta el final.</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Diario</translation>
        </message>
        <message>
            <source>Neither pH nor acidity was read of this batch.</source>
            <translation>De este lote no se leyó ni pH ni acidez.</translation>
        </message>
        <message>
            <source>No batch has ended yet. Once one is drawn off or discarded, it is kept here.</source>
            <translation>Aún no ha terminado ningún lote. Cuando se extrae o desecha uno, se guarda aquí.</translation>
        </message>
        <message>
            <source>Past batches</source>
            <translation>Lotes pasados</translation>
        </message>
        <message>
            <source>Past batches, the last one first</source>
            <translation>Lotes pasados, primero el último</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Readings</source>
            <translation>Lecturas</translation>
        </message>
        <message>
            <source>Records of this batch</source>
            <translation>Registros de este lote</translation>
        </message>
        <message>
            <source>begun {date}</source>
            <translation>empezado {date}</translation>
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
            <translation>Medido con</translation>
        </message>
        <message>
            <source>Note the pH</source>
            <translation>Anotar el pH</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>pH of {name}</source>
            <translation>pH de {name}</translation>
        </message>
    </context>
    <context>
        <name>PhScale</name>
        <message>
            <source>No start pH yet</source>
            <translation>Aún sin pH inicial</translation>
        </message>
        <message>
            <source>by day {day}</source>
            <translation>para el día {day}</translation>
        </message>
        <message>
            <source>least to drink</source>
            <translation>mínimo para beber</translation>
        </message>
        <message>
            <source>most to start at</source>
            <translation>máximo al empezar</translation>
        </message>
    </context>
    <context>
        <name>PhotoCopies</name>
        <message>
            <source>Copied.</source>
            <translation>Copiado.</translation>
        </message>
        <message>
            <source>Save a copy</source>
            <translation>Guardar una copia</translation>
        </message>
        <message>
            <source>Saved a copy: {path}</source>
            <translation>Copia guardada: {path}</translation>
        </message>
    </context>
    <context>
        <name>PhotoPane</name>
        <message>
            <source>Loading…</source>
            <translation>Cargando…</translation>
        </message>
        <message>
            <source>Newer photo</source>
            <translation>Foto más reciente</translation>
        </message>
        <message>
            <source>Older photo</source>
            <translation>Foto anterior</translation>
        </message>
        <message>
            <source>Photo, {said}</source>
            <translation>Foto, {said}</translation>
        </message>
        <message>
            <source>{n} of {all}</source>
            <translation>{n} de {all}</translation>
        </message>
    </context>
    <context>
        <name>PhotoStrip</name>
        <message>
            <source>Add photos</source>
            <translation>Añadir fotos</translation>
        </message>
        <message>
            <source>Add photos…</source>
            <translation>Añadir fotos…</translation>
        </message>
        <message>
            <source>Adding…</source>
            <translation>Añadiendo…</translation>
        </message>
        <message>
            <source>All files (*)</source>
            <translation>Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Caption and date…</source>
            <translation>Pie y fecha…</translation>
        </message>
        <message>
            <source>Copy</source>
            <translation>Copiar</translation>
        </message>
        <message>
            <source>Let go to add it.</source>
            <translation>Suelta para añadirla.</translation>
        </message>
        <message>
            <source>More for this photo</source>
            <translation>Más para esta foto</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Abrir</translation>
        </message>
        <message>
            <source>Paste a picture</source>
            <translation>Pegar una imagen</translation>
        </message>
        <message>
            <source>Photos, the newest first</source>
            <translation>Fotos, primero las más recientes</translation>
        </message>
        <message>
            <source>Pictures ({endings})</source>
            <translation>Imágenes ({endings})</translation>
        </message>
        <message>
            <source>Save a copy as it is…</source>
            <translation>Guardar una copia tal cual…</translation>
        </message>
        <message>
            <source>Save a copy without camera data…</source>
            <translation>Guardar una copia sin datos de la cámara…</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Taken out. Undo brings it back.</source>
            <translation>Quitado. Deshacer lo trae de vuelta.</translation>
        </message>
        <message>
            <source>There is no picture on the clipboard.</source>
            <translation>No hay ninguna imagen en el portapapeles.</translation>
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
            <translation>1 día entre ellas</translation>
        </message>
        <message>
            <source>100 %</source>
            <translation>100 %</translation>
        </message>
        <message>
            <source>Both of the same day</source>
            <translation>Ambas del mismo día</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Compare two</source>
            <translation>Comparar dos</translation>
        </message>
        <message>
            <source>Fit</source>
            <translation>Ajustar</translation>
        </message>
        <message>
            <source>Photos</source>
            <translation>Fotos</translation>
        </message>
        <message>
            <source>Show every pixel</source>
            <translation>Mostrar cada píxel</translation>
        </message>
        <message>
            <source>Show one</source>
            <translation>Mostrar una</translation>
        </message>
        <message>
            <source>Zoom in</source>
            <translation>Acercar</translation>
        </message>
        <message>
            <source>Zoom out</source>
            <translation>Alejar</translation>
        </message>
        <message>
            <source>{n} days between them</source>
            <translation>{n} días entre ellas</translation>
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
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Caption</source>
            <translation>Pie de foto</translation>
        </message>
        <message>
            <source>Caption and date</source>
            <translation>Pie de foto y fecha</translation>
        </message>
        <message>
            <source>Read from the camera or the file. Put it right if the clock was wrong.</source>
            <translation>Leído de la cámara o del archivo. Corrígelo si el reloj estaba mal.</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Taken</source>
            <translation>Tomada</translation>
        </message>
        <message>
            <source>What is to be seen</source>
            <translation>Qué se ve</translation>
        </message>
    </context>
    <context>
        <name>Photos</name>
        <message>
            <source>Cannot be read</source>
            <translation>No se puede leer</translation>
        </message>
        <message>
            <source>File damaged</source>
            <translation>Archivo dañado</translation>
        </message>
        <message>
            <source>File missing</source>
            <translation>Falta el archivo</translation>
        </message>
        <message>
            <source>It has more than {count} million pixels; please make it smaller first.</source>
            <translation>Tiene más de {count} millones de píxeles; redúcela antes.</translation>
        </message>
        <message>
            <source>It is larger than {size} MB; please make it smaller first.</source>
            <translation>Ocupa más de {size} MB; redúcela antes.</translation>
        </message>
        <message>
            <source>It is not a picture this program reads (JPEG, PNG, WebP, GIF, BMP or TIFF).</source>
            <translation>No es una imagen que este programa lea (JPEG, PNG, WebP, GIF, BMP o TIFF).</translation>
        </message>
        <message>
            <source>No more than {count} are added at once; please add the rest again.</source>
            <translation>No se añaden más de {count} a la vez; añade el resto después.</translation>
        </message>
        <message>
            <source>Not added either: {count} more.</source>
            <translation>Tampoco se añadieron: {count} más.</translation>
        </message>
        <message>
            <source>Not added: “{name}”. {why}</source>
            <translation>No se añadió: «{name}». {why}</translation>
        </message>
        <message>
            <source>One photo added.</source>
            <translation>Una foto añadida.</translation>
        </message>
        <message>
            <source>One was here already.</source>
            <translation>Una ya estaba aquí.</translation>
        </message>
        <message>
            <source>Photo of {name}, {when}</source>
            <translation>Foto de {name}, {when}</translation>
        </message>
        <message>
            <source>Saved a copy without camera data: {path}</source>
            <translation>Copia guardada sin datos de la cámara: {path}</translation>
        </message>
        <message>
            <source>The copy could not be written there. Please choose another folder.</source>
            <translation>No se pudo escribir ahí la copia. Elige otra carpeta.</translation>
        </message>
        <message>
            <source>The disk did not answer as it should. Please try again.</source>
            <translation>El disco no respondió como debía. Inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>The disk is full. Please free some space and try again.</source>
            <translation>El disco está lleno. Libera algo de espacio e inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>The file is not there, or not on this computer; please save it first.</source>
            <translation>El archivo no está, o no está en este equipo; guárdalo antes.</translation>
        </message>
        <message>
            <source>The file may not be read; please check its rights.</source>
            <translation>El archivo no se puede leer; comprueba sus permisos.</translation>
        </message>
        <message>
            <source>The folder of the photos may not be written to. Please check its rights.</source>
            <translation>No se puede escribir en la carpeta de las fotos. Comprueba sus permisos.</translation>
        </message>
        <message>
            <source>The photo's file cannot be read. Please check the rights of the folder beside the pantry file.</source>
            <translation>El archivo de la foto no se puede leer. Comprueba los permisos de la carpeta junto al archivo de la despensa.</translation>
        </message>
        <message>
            <source>The photo's file is no longer in its place beside the pantry file.</source>
            <translation>El archivo de la foto ya no está en su sitio junto al archivo de la despensa.</translation>
        </message>
        <message>
            <source>The photo's file is no longer in its place beside the pantry file. If you have the picture elsewhere, add it again: it finds its place by itself.</source>
            <translation>El archivo de la foto ya no está en su sitio junto al archivo de la despensa. Si tienes la imagen en otra parte, añádela de nuevo: encuentra su sitio sola.</translation>
        </message>
        <message>
            <source>The photo's file is no longer what was kept: it was changed or damaged.</source>
            <translation>El archivo de la foto ya no es lo que se guardó: se cambió o se dañó.</translation>
        </message>
        <message>
            <source>The photo's file is no longer what was kept: it was changed or damaged. If you have the picture elsewhere, add it again: it finds its place by itself.</source>
            <translation>El archivo de la foto ya no es lo que se guardó: se cambió o se dañó. Si tienes la imagen en otra parte, añádela de nuevo: encuentra su sitio sola.</translation>
        </message>
        <message>
            <source>The picture breaks off or cannot be read; please copy it anew.</source>
            <translation>La imagen está cortada o no se puede leer; cópiala de nuevo.</translation>
        </message>
        <message>
            <source>This file says where it was taken. It stays in the file if you give it away.</source>
            <translation>Este archivo dice dónde se tomó. Eso sigue en el archivo si lo das a otra persona.</translation>
        </message>
        <message>
            <source>a picture</source>
            <translation>una imagen</translation>
        </message>
        <message>
            <source>{count} photos added.</source>
            <translation>{count} fotos añadidas.</translation>
        </message>
        <message>
            <source>{count} were here already.</source>
            <translation>{count} ya estaban aquí.</translation>
        </message>
    </context>
    <context>
        <name>PlaceButton</name>
        <message>
            <source>Change the places and how warm they are</source>
            <translation>Cambia los lugares y lo cálidos que son</translation>
        </message>
        <message>
            <source>Places: {places}</source>
            <translation>Lugares: {places}</translation>
        </message>
    </context>
    <context>
        <name>PlaceChart</name>
        <message>
            <source>All</source>
            <translation>Todo</translation>
        </message>
        <message>
            <source>Day</source>
            <translation>Día</translation>
        </message>
        <message>
            <source>Month</source>
            <translation>Mes</translation>
        </message>
        <message>
            <source>Nothing was read or logged in this time. Enter a temperature below, or read a logger's file.</source>
            <translation>En este tiempo no se leyó ni registró nada. Anota abajo una temperatura, o lee el archivo de un registrador.</translation>
        </message>
        <message>
            <source>Show</source>
            <translation>Mostrar</translation>
        </message>
        <message>
            <source>Show all</source>
            <translation>Mostrar todo</translation>
        </message>
        <message>
            <source>Temperature in {unit}</source>
            <translation>Temperatura en {unit}</translation>
        </message>
        <message>
            <source>Temperature of the place over time</source>
            <translation>Temperatura del lugar a lo largo del tiempo</translation>
        </message>
        <message>
            <source>The course in words</source>
            <translation>El curso en palabras</translation>
        </message>
        <message>
            <source>The same is said in words below.</source>
            <translation>Lo mismo se dice abajo en palabras.</translation>
        </message>
        <message>
            <source>Week</source>
            <translation>Semana</translation>
        </message>
        <message>
            <source>a souring jar likes {low} to {high} {unit}</source>
            <translation>a un frasco en acidificación le gustan de {low} a {high} {unit}</translation>
        </message>
        <message>
            <source>d MMM</source>
            <translation>d MMM</translation>
        </message>
        <message>
            <source>ddd</source>
            <translation>ddd</translation>
        </message>
        <message>
            <source>liked by a souring jar</source>
            <translation>bueno al acidificar</translation>
        </message>
        <message>
            <source>lowest to highest</source>
            <translation>mínima a máxima</translation>
        </message>
        <message>
            <source>mean of an hour</source>
            <translation>media de una hora</translation>
        </message>
        <message>
            <source>mean of {count} hours</source>
            <translation>media de {count} horas</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>read by you</source>
            <translation>leído por ti</translation>
        </message>
        <message>
            <source>set as usual</source>
            <translation>fijado como habitual</translation>
        </message>
        <message>
            <source>yyyy</source>
            <translation>yyyy</translation>
        </message>
        <message>
            <source>{when} · {mean} {unit} ({low} to {high})</source>
            <translation>{when} · {mean} {unit} ({low} a {high})</translation>
        </message>
        <message>
            <source>{when} · {value} {unit}, read by you</source>
            <translation>{when} · {value} {unit}, leído por ti</translation>
        </message>
    </context>
    <context>
        <name>PlaceDialog</name>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>&amp;Usual temperature</source>
            <translation>Temperatura &amp;habitual</translation>
        </message>
        <message>
            <source>Add a place</source>
            <translation>Añadir un lugar</translation>
        </message>
        <message>
            <source>Batches planned for this place take its usual temperature. What is read or logged here, and what you read on a batch, counts more.</source>
            <translation>Los lotes planificados para este lugar toman su temperatura habitual. Lo que se lee o registra aquí, y lo que lees en un lote, cuenta más.</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Edit place</source>
            <translation>Editar lugar</translation>
        </message>
        <message>
            <source>Please give it a name.</source>
            <translation>Ponle un nombre.</translation>
        </message>
        <message>
            <source>Save place</source>
            <translation>Guardar lugar</translation>
        </message>
    </context>
    <context>
        <name>PlaceEntries</name>
        <message>
            <source>Take it out</source>
            <translation>Quitarlo</translation>
        </message>
        <message>
            <source>Temperature or file</source>
            <translation>Temperatura o archivo</translation>
        </message>
        <message>
            <source>Temperatures and files of this place</source>
            <translation>Temperaturas y archivos de este lugar</translation>
        </message>
        <message>
            <source>What was read and logged</source>
            <translation>Lo leído y registrado</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
    </context>
    <context>
        <name>PlaceReadingForm</name>
        <message>
            <source>&amp;Read at</source>
            <translation>&amp;Leída el</translation>
        </message>
        <message>
            <source>&amp;Temperature now</source>
            <translation>&amp;Temperatura ahora</translation>
        </message>
        <message>
            <source>Enter it</source>
            <translation>Anotarla</translation>
        </message>
        <message>
            <source>Entered.</source>
            <translation>Anotada.</translation>
        </message>
        <message>
            <source>Please type a temperature.</source>
            <translation>Escribe una temperatura.</translation>
        </message>
    </context>
    <context>
        <name>PlaceSheet</name>
        <message>
            <source>Edit {name}</source>
            <translation>Editar {name}</translation>
        </message>
        <message>
            <source>Edit…</source>
            <translation>Editar…</translation>
        </message>
        <message>
            <source>Read a logger's file…</source>
            <translation>Leer archivo de registrador…</translation>
        </message>
        <message>
            <source>Remove</source>
            <translation>Eliminar</translation>
        </message>
        <message>
            <source>Remove {name}</source>
            <translation>Eliminar {name}</translation>
        </message>
        <message>
            <source>Take it over</source>
            <translation>Adoptarla</translation>
        </message>
    </context>
    <context>
        <name>Places</name>
        <message>
            <source>By common practice a souring jar likes {low} to {high}.</source>
            <translation>Según la práctica habitual, a un frasco en acidificación le gustan de {low} a {high}.</translation>
        </message>
        <message>
            <source>By the log of the last 30 days it was {mean} on average (days with a temperature: {days}). Set as usual is {usual}.</source>
            <translation>Según el registro de los últimos 30 días, estuvo a {mean} en promedio (días con temperatura: {days}). Fijado como habitual: {usual}.</translation>
        </message>
        <message>
            <source>From {first} to {last} it was {low} to {high}, on average {mean}.</source>
            <translation>Del {first} al {last} estuvo entre {low} y {high}, en promedio {mean}.</translation>
        </message>
        <message>
            <source>Here stand: {names}.</source>
            <translation>Aquí están: {names}.</translation>
        </message>
        <message>
            <source>No vessel stands here.</source>
            <translation>Aquí no hay ningún recipiente.</translation>
        </message>
        <message>
            <source>Nothing was read or logged in this time.</source>
            <translation>En este tiempo no se leyó ni registró nada.</translation>
        </message>
        <message>
            <source>Usually {temperature}.</source>
            <translation>Habitual: {temperature}.</translation>
        </message>
        <message>
            <source>usually {temperature}</source>
            <translation>habitual: {temperature}</translation>
        </message>
        <message>
            <source>{temperature} · 1 vessel</source>
            <translation>{temperature} · 1 recipiente</translation>
        </message>
        <message>
            <source>{temperature} · no vessel</source>
            <translation>{temperature} · ningún recipiente</translation>
        </message>
        <message>
            <source>{temperature} · {count} vessels</source>
            <translation>{temperature} · {count} recipientes</translation>
        </message>
        <message>
            <source>{usual} Last logged {temperature}, {when}.</source>
            <translation>{usual} Último registro {temperature}, {when}.</translation>
        </message>
        <message>
            <source>{usual} Last read {temperature}, {when}.</source>
            <translation>{usual} Última lectura {temperature}, {when}.</translation>
        </message>
    </context>
    <context>
        <name>PlacesDialog</name>
        <message>
            <source>Add a place…</source>
            <translation>Añadir un lugar…</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>No place yet. Add the pantry, kitchen or cellar where your vessels stand: how warm it is there decides how fast a batch sours.</source>
            <translation>Aún no hay lugares. Añade la despensa, cocina o bodega donde están tus recipientes: lo cálida que sea decide lo rápido que se acidifica un lote.</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>Lugares</translation>
        </message>
        <message>
            <source>Where your vessels stand</source>
            <translation>Dónde están tus recipientes</translation>
        </message>
    </context>
    <context>
        <name>PlanFacts</name>
        <message>
            <source>Cold water</source>
            <translation>Agua fría</translation>
        </message>
        <message>
            <source>Fill</source>
            <translation>Llenado</translation>
        </message>
        <message>
            <source>Filled in use</source>
            <translation>Llenado habitual</translation>
        </message>
        <message>
            <source>Hot water</source>
            <translation>Agua caliente</translation>
        </message>
        <message>
            <source>Inner diameter</source>
            <translation>Diámetro interior</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Note at the end</source>
            <translation>Nota al final</translation>
        </message>
        <message>
            <source>Start pH</source>
            <translation>pH inicial</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Iniciador</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>To the brim</source>
            <translation>Hasta el borde</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Recipiente</translation>
        </message>
        <message>
            <source>Where it stands</source>
            <translation>Dónde está</translation>
        </message>
        <message>
            <source>about {ph}, likely {low} to {high}</source>
            <translation>cerca de {ph}, probable {low} a {high}</translation>
        </message>
        <message>
            <source>{mass} ({strength} of sweet tea)</source>
            <translation>{mass} ({strength} de té azucarado)</translation>
        </message>
        <message>
            <source>{mass} of {kind} (about {bags} bags of {bag})</source>
            <translation>{mass} de {kind} (unas {bags} bolsitas de {bag})</translation>
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
            <translation>&amp;Llenado</translation>
        </message>
        <message>
            <source>&amp;Name of the batch</source>
            <translation>&amp;Nombre del lote</translation>
        </message>
        <message>
            <source>&amp;Sugar in the sweet tea</source>
            <translation>&amp;Azúcar en el té azucarado</translation>
        </message>
        <message>
            <source>&amp;Tea</source>
            <translation>&amp;Té</translation>
        </message>
        <message>
            <source>&amp;Vessel</source>
            <translation>&amp;Recipiente</translation>
        </message>
        <message>
            <source>Amount of starter</source>
            <translation>Cantidad de iniciador</translation>
        </message>
        <message>
            <source>Cold water at</source>
            <translation>Agua fría a</translation>
        </message>
        <message>
            <source>Culture and starter liquid</source>
            <translation>Cultivo y líquido iniciador</translation>
        </message>
        <message>
            <source>Exact: water, temperatures, own amounts</source>
            <translation>Exacto: agua, temperaturas, cantidades propias</translation>
        </message>
        <message>
            <source>Give the batch a name.</source>
            <translation>Ponle un nombre al lote.</translation>
        </message>
        <message>
            <source>Hot water at</source>
            <translation>Agua caliente a</translation>
        </message>
        <message>
            <source>Its acidity, if you know</source>
            <translation>Su acidez, si la sabes</translation>
        </message>
        <message>
            <source>Its pH, if you know</source>
            <translation>Su pH, si lo sabes</translation>
        </message>
        <message>
            <source>Not tasted</source>
            <translation>Sin catar</translation>
        </message>
        <message>
            <source>Starter tastes</source>
            <translation>El iniciador sabe</translation>
        </message>
        <message>
            <source>Tea in one bag</source>
            <translation>Té en una bolsita</translation>
        </message>
        <message>
            <source>Tea st&amp;rength</source>
            <translation>&amp;Fuerza del té</translation>
        </message>
        <message>
            <source>Temperature of the place</source>
            <translation>Temperatura del lugar</translation>
        </message>
        <message>
            <source>Warmest for the culture</source>
            <translation>Máxima para el cultivo</translation>
        </message>
        <message>
            <source>Water alkalinity</source>
            <translation>Alcalinidad del agua</translation>
        </message>
        <message>
            <source>as reckoned</source>
            <translation>según el cálculo</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>desconocido</translation>
        </message>
        <message>
            <source>p&amp;H to start at</source>
            <translation>p&amp;H con el que empezar</translation>
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
            <translation>Un lote necesita dónde estar. Bastan un nombre y un volumen; todo lo demás se rellena por ti y se puede cambiar.</translation>
        </message>
        <message>
            <source>Add a vessel…</source>
            <translation>Añadir un recipiente…</translation>
        </message>
        <message>
            <source>An empty jar</source>
            <translation>Un frasco vacío</translation>
        </message>
        <message>
            <source>As soon as there is a vessel, what to weigh out stands here: water, tea, sugar and starter, to the gram.</source>
            <translation>En cuanto haya un recipiente, aquí aparece lo que hay que pesar: agua, té, azúcar e iniciador, al gramo.</translation>
        </message>
        <message>
            <source>Change the plan of {name}</source>
            <translation>Cambiar el plan de {name}</translation>
        </message>
        <message>
            <source>Every vessel is in use. Add one, or end a batch first.</source>
            <translation>Todos los recipientes están en uso. Añade uno, o termina antes un lote.</translation>
        </message>
        <message>
            <source>First, a vessel</source>
            <translation>Primero, un recipiente</translation>
        </message>
        <message>
            <source>Leave the plan as it was</source>
            <translation>Dejar el plan como estaba</translation>
        </message>
        <message>
            <source>Not up to date: see the marked field.</source>
            <translation>Sin actualizar: mira el campo marcado.</translation>
        </message>
        <message>
            <source>Plan a batch</source>
            <translation>Planificar un lote</translation>
        </message>
        <message>
            <source>Plan and start brewing</source>
            <translation>Planificar y empezar</translation>
        </message>
        <message>
            <source>Plan it</source>
            <translation>Planificarlo</translation>
        </message>
        <message>
            <source>Print run sheet…</source>
            <translation>Imprimir hoja de trabajo…</translation>
        </message>
        <message>
            <source>Save and start brewing</source>
            <translation>Guardar y empezar</translation>
        </message>
        <message>
            <source>Save the plan</source>
            <translation>Guardar el plan</translation>
        </message>
        <message>
            <source>Waiting for the marked field.</source>
            <translation>A la espera del campo marcado.</translation>
        </message>
    </context>
    <context>
        <name>PlanStores</name>
        <message>
            <source>Not from the stores</source>
            <translation>No de las existencias</translation>
        </message>
        <message>
            <source>Sugar from</source>
            <translation>Azúcar de</translation>
        </message>
        <message>
            <source>Tea from</source>
            <translation>Té de</translation>
        </message>
    </context>
    <context>
        <name>PowerDialog</name>
        <message>
            <source>Compared by</source>
            <translation>Comparado por</translation>
        </message>
        <message>
            <source>Difference that matters to you</source>
            <translation>Diferencia que te importa</translation>
        </message>
        <message>
            <source>Difference that matters to you, {unit}</source>
            <translation>Diferencia que te importa, {unit}</translation>
        </message>
        <message>
            <source>From 2 to 1000 jars of each.</source>
            <translation>De 2 a 1000 frascos de cada uno.</translation>
        </message>
        <message>
            <source>How far like jars lie apart</source>
            <translation>Cuánto difieren frascos iguales</translation>
        </message>
        <message>
            <source>How far like jars lie apart, {unit}</source>
            <translation>Cuánto difieren frascos iguales, {unit}</translation>
        </message>
        <message>
            <source>How many jars does it take to be sure?</source>
            <translation>¿Cuántos frascos hacen falta para tener seguridad?</translation>
        </message>
        <message>
            <source>How many jars?</source>
            <translation>¿Cuántos frascos?</translation>
        </message>
        <message>
            <source>Jars of each at hand</source>
            <translation>Frascos disponibles de cada uno</translation>
        </message>
        <message>
            <source>Please type a number.</source>
            <translation>Escribe un número.</translation>
        </message>
        <message>
            <source>days</source>
            <translation>días</translation>
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
            <translation>puntos</translation>
        </message>
    </context>
    <context>
        <name>PreviewTable</name>
        <message>
            <source>Column {number}</source>
            <translation>Columna {number}</translation>
        </message>
        <message>
            <source>ddd d MMM yyyy</source>
            <translation>ddd d MMM yyyy</translation>
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
            <translation>Página de prueba</translation>
        </message>
    </context>
    <context>
        <name>Problems</name>
        <message>
            <source>A culture cannot be older than its parent.</source>
            <translation>Un cultivo no puede ser más viejo que su progenitor.</translation>
        </message>
        <message>
            <source>A shared pantry needs the part of the program that speaks with servers, and it is not installed. Please install “brewdesk[desks]” and start again.</source>
            <translation>Una despensa compartida necesita la parte del programa que habla con servidores, y no está instalada. Instala «brewdesk[desks]» e inicia de nuevo.</translation>
        </message>
        <message>
            <source>A vessel of this volume cannot have this diameter. Please check both, and their units.</source>
            <translation>Un recipiente de este volumen no puede tener este diámetro. Comprueba ambos, y sus unidades.</translation>
        </message>
        <message>
            <source>Another culture rests in this vessel. Move it first, or choose another vessel.</source>
            <translation>Otro cultivo reposa en este recipiente. Muévelo antes, o elige otro recipiente.</translation>
        </message>
        <message>
            <source>Another desk changed {thing} a moment ago, so nothing was saved. Please look at what it is now, and try again.</source>
            <translation>Otro puesto cambió {thing} hace un momento, así que no se guardó nada. Mira cómo está ahora e inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>Another one has this name already. Please choose another name.</source>
            <translation>Ya hay otro con este nombre. Elige otro nombre.</translation>
        </message>
        <message>
            <source>Another program is using the pantry file, so nothing was saved. Please close it and try again.</source>
            <translation>Otro programa está usando el archivo de la despensa, así que no se guardó nada. Ciérralo e inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>Brewing has begun, so the plan stands.</source>
            <translation>La preparación ha empezado, así que el plan queda fijo.</translation>
        </message>
        <message>
            <source>Choose at least one other culture to merge with.</source>
            <translation>Elige al menos otro cultivo con el que unirlo.</translation>
        </message>
        <message>
            <source>It is not at rest now.</source>
            <translation>Ahora no está en reposo.</translation>
        </message>
        <message>
            <source>It is not under suspicion.</source>
            <translation>No está bajo sospecha.</translation>
        </message>
        <message>
            <source>It is planned for {value}. Change or drop that plan first.</source>
            <translation>Está planificado para {value}. Cambia o abandona antes ese plan.</translation>
        </message>
        <message>
            <source>It is still forming. Wait until it has grown.</source>
            <translation>Aún se está formando. Espera hasta que haya crecido.</translation>
        </message>
        <message>
            <source>It is there already.</source>
            <translation>Ya está ahí.</translation>
        </message>
        <message>
            <source>It may carry mold. Look at it closely and clear it first, with your reason; when in doubt, throw it out.</source>
            <translation>Puede tener moho. Míralo antes de cerca y libéralo, con tu motivo; ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Neither starter nor culture is in yet. Tick that step off first, then cover the vessel.</source>
            <translation>Aún no ha entrado ni iniciador ni cultivo. Marca antes ese paso y después tapa el recipiente.</translation>
        </message>
        <message>
            <source>No backup could be made, so nothing was changed.</source>
            <translation>No se pudo hacer ninguna copia de seguridad, así que no se cambió nada.</translation>
        </message>
        <message>
            <source>No culture is growing in this batch.</source>
            <translation>En este lote no crece ningún cultivo.</translation>
        </message>
        <message>
            <source>Nothing can be read out of the damaged file any more. It was left as it is.</source>
            <translation>Del archivo dañado ya no se puede leer nada. Se dejó como está.</translation>
        </message>
        <message>
            <source>Only a batch that is souring can be drawn off.</source>
            <translation>Solo se puede extraer un lote en acidificación.</translation>
        </message>
        <message>
            <source>Only a batch that was drawn off can be closed.</source>
            <translation>Solo se puede cerrar un lote que se extrajo.</translation>
        </message>
        <message>
            <source>Please choose a time that is still to come.</source>
            <translation>Elige una hora que aún esté por llegar.</translation>
        </message>
        <message>
            <source>Please choose one of those offered.</source>
            <translation>Elige una de las que se ofrecen.</translation>
        </message>
        <message>
            <source>Please enter at least one reading.</source>
            <translation>Anota al menos una lectura.</translation>
        </message>
        <message>
            <source>Please fill this in.</source>
            <translation>Rellena este campo.</translation>
        </message>
        <message>
            <source>Please give it a name.</source>
            <translation>Ponle un nombre.</translation>
        </message>
        <message>
            <source>Please keep it shorter.</source>
            <translation>Acórtalo.</translation>
        </message>
        <message>
            <source>Please type an amount.</source>
            <translation>Escribe una cantidad.</translation>
        </message>
        <message>
            <source>Please write down why.</source>
            <translation>Escribe por qué.</translation>
        </message>
        <message>
            <source>Please write something.</source>
            <translation>Escribe algo.</translation>
        </message>
        <message>
            <source>Readings of several batches are kept one by one.</source>
            <translation>Las lecturas de varios lotes se guardan una por una.</translation>
        </message>
        <message>
            <source>Retired vessels belong here. Put them back on the shelf and give them another place first, then remove it.</source>
            <translation>Aquí hay recipientes retirados. Devuélvelos antes al estante y dales otro lugar; después, elimínalo.</translation>
        </message>
        <message>
            <source>That does not fit: the vessel holds {high} to the brim.</source>
            <translation>No cabe: en el recipiente caben {high} hasta el borde.</translation>
        </message>
        <message>
            <source>The Brix reading</source>
            <translation>La lectura Brix</translation>
        </message>
        <message>
            <source>The address of the shared pantry cannot be read. It begins with “postgresql+psycopg://” and names a database. Please put it right and start again.</source>
            <translation>No se puede leer la dirección de la despensa compartida. Empieza por «postgresql+psycopg://» y nombra una base de datos. Corrígela e inicia de nuevo.</translation>
        </message>
        <message>
            <source>The alkalinity of the water</source>
            <translation>La alcalinidad del agua</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>La cantidad</translation>
        </message>
        <message>
            <source>The amount it rests in</source>
            <translation>La cantidad en la que reposa</translation>
        </message>
        <message>
            <source>The amount kept back</source>
            <translation>La cantidad reservada</translation>
        </message>
        <message>
            <source>The amount of starter</source>
            <translation>La cantidad de iniciador</translation>
        </message>
        <message>
            <source>The amount to make</source>
            <translation>La cantidad que se prepara</translation>
        </message>
        <message>
            <source>The database of the shared pantry does not keep text as UTF-8, so it would lose letters. Nothing was changed. Please make a database with that encoding.</source>
            <translation>La base de datos de la despensa compartida no guarda el texto como UTF-8, así que perdería letras. No se cambió nada. Crea una base de datos con esa codificación.</translation>
        </message>
        <message>
            <source>The desk “{desk}” changed {thing} a moment ago, so nothing was saved. Please look at what it is now, and try again.</source>
            <translation>El puesto «{desk}» cambió {thing} hace un momento, así que no se guardó nada. Mira cómo está ahora e inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>The disk did not answer as it should, so nothing was saved. Please make sure that it is still connected, and try again.</source>
            <translation>El disco no respondió como debía, así que no se guardó nada. Comprueba que siga conectado e inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>The disk is full, so nothing was saved. Please free some space and try again.</source>
            <translation>El disco está lleno, así que no se guardó nada. Libera algo de espacio e inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>The extra time</source>
            <translation>El tiempo adicional</translation>
        </message>
        <message>
            <source>The inner diameter</source>
            <translation>El diámetro interior</translation>
        </message>
        <message>
            <source>The pH</source>
            <translation>El pH</translation>
        </message>
        <message>
            <source>The pH at which you first taste</source>
            <translation>El pH al que catas por primera vez</translation>
        </message>
        <message>
            <source>The pH for first tasting must be above the pH that is too sour for you.</source>
            <translation>El pH de la primera cata debe estar por encima del pH que es demasiado ácido para ti.</translation>
        </message>
        <message>
            <source>The pH of the starter</source>
            <translation>El pH del iniciador</translation>
        </message>
        <message>
            <source>The pH that is too sour for you</source>
            <translation>El pH que es demasiado ácido para ti</translation>
        </message>
        <message>
            <source>The pH to start at</source>
            <translation>El pH al empezar</translation>
        </message>
        <message>
            <source>The pantry could not be brought up to this version of the program. It was left as it was; a backup lies beside it.</source>
            <translation>La despensa no se pudo actualizar a esta versión del programa. Se dejó como estaba; junto a ella hay una copia de seguridad.</translation>
        </message>
        <message>
            <source>The pantry file cannot be opened. Please check that it is in its place.</source>
            <translation>El archivo de la despensa no se puede abrir. Comprueba que esté en su sitio.</translation>
        </message>
        <message>
            <source>The pantry file could not be used, so nothing was saved. Please try again.</source>
            <translation>El archivo de la despensa no se pudo usar, así que no se guardó nada. Inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>The pantry file is damaged and was left as it is. Your jars are not affected; please open the latest backup.</source>
            <translation>El archivo de la despensa está dañado y se dejó como está. Tus frascos no se ven afectados; abre la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The pantry file is empty, as after a copy that broke off. Please open the latest backup.</source>
            <translation>El archivo de la despensa está vacío, como tras una copia interrumpida. Abre la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The pantry file is no longer in its place, so nothing was saved. Please put it back, or open the latest backup.</source>
            <translation>El archivo de la despensa ya no está en su sitio, así que no se guardó nada. Devuélvelo, o abre la última copia de seguridad.</translation>
        </message>
        <message>
            <source>The pantry file may not be written to, so nothing was saved. Please check the rights of its folder.</source>
            <translation>No se puede escribir en el archivo de la despensa, así que no se guardó nada. Comprueba los permisos de su carpeta.</translation>
        </message>
        <message>
            <source>The pantry file was replaced by another while the program was open, so nothing was saved. Please close the program and start it again.</source>
            <translation>El archivo de la despensa se reemplazó por otro mientras el programa estaba abierto, así que no se guardó nada. Cierra el programa e inícialo de nuevo.</translation>
        </message>
        <message>
            <source>The same temperatures are in this place's log already.</source>
            <translation>Las mismas temperaturas ya están en el registro de este lugar.</translation>
        </message>
        <message>
            <source>The server with your pantry does not answer, so nothing was saved. Please make sure that it is running and that this computer reaches it, and try again.</source>
            <translation>El servidor con tu despensa no responde, así que no se guardó nada. Comprueba que esté en marcha y que este equipo llegue a él, e inténtalo de nuevo.</translation>
        </message>
        <message>
            <source>The server with your pantry does not let this desk in: the name, the password, the database or its rights are not as the server has them. Nothing was saved.</source>
            <translation>El servidor con tu despensa no deja entrar a este puesto: el nombre, la contraseña, la base de datos o sus permisos no son como los tiene el servidor. No se guardó nada.</translation>
        </message>
        <message>
            <source>The shared pantry was laid out by an older version that this one cannot bring up to date. It was left as it is. Please move it to a file with the older version, and back to the server with this one.</source>
            <translation>La despensa compartida la creó una versión anterior que esta no puede actualizar. Se dejó como está. Llévala a un archivo con la versión anterior, y de vuelta al servidor con esta.</translation>
        </message>
        <message>
            <source>The size of the text</source>
            <translation>El tamaño del texto</translation>
        </message>
        <message>
            <source>The specific gravity</source>
            <translation>La densidad relativa</translation>
        </message>
        <message>
            <source>The starter</source>
            <translation>El iniciador</translation>
        </message>
        <message>
            <source>The sugar</source>
            <translation>El azúcar</translation>
        </message>
        <message>
            <source>The tea</source>
            <translation>El té</translation>
        </message>
        <message>
            <source>The tea in one bag</source>
            <translation>El té de una bolsita</translation>
        </message>
        <message>
            <source>The temperature</source>
            <translation>La temperatura</translation>
        </message>
        <message>
            <source>The temperature of the cold water</source>
            <translation>La temperatura del agua fría</translation>
        </message>
        <message>
            <source>The temperature of the hot water</source>
            <translation>La temperatura del agua caliente</translation>
        </message>
        <message>
            <source>The temperature of the place</source>
            <translation>La temperatura del lugar</translation>
        </message>
        <message>
            <source>The thickness of the pellicle</source>
            <translation>El grosor de la película</translation>
        </message>
        <message>
            <source>The titratable acidity</source>
            <translation>La acidez titulable</translation>
        </message>
        <message>
            <source>The titratable acidity of the starter</source>
            <translation>La acidez titulable del iniciador</translation>
        </message>
        <message>
            <source>The uncertainty</source>
            <translation>La incertidumbre</translation>
        </message>
        <message>
            <source>The unit “{part}” is not known here.</source>
            <translation>La unidad «{part}» no se conoce aquí.</translation>
        </message>
        <message>
            <source>The volume to the brim</source>
            <translation>El volumen hasta el borde</translation>
        </message>
        <message>
            <source>The warmest temperature for the culture</source>
            <translation>La temperatura máxima para el cultivo</translation>
        </message>
        <message>
            <source>The working volume</source>
            <translation>El volumen de trabajo</translation>
        </message>
        <message>
            <source>There are {low} in it now, so it must hold at least that much.</source>
            <translation>Ahora contiene {low}, así que debe caber al menos eso.</translation>
        </message>
        <message>
            <source>There is a batch in this vessel already.</source>
            <translation>Ya hay un lote en este recipiente.</translation>
        </message>
        <message>
            <source>There is a culture in this vessel. Move it first.</source>
            <translation>Hay un cultivo en este recipiente. Muévelo antes.</translation>
        </message>
        <message>
            <source>There is a pantry already where this one was to go. Nothing was changed there.</source>
            <translation>Ya hay una despensa donde iba a ir esta. Allí no se cambió nada.</translation>
        </message>
        <message>
            <source>There is no number in “{text}”. Type it as in “3.8 L” or “3 1/2 cups”.</source>
            <translation>No hay ningún número en «{text}». Escríbelo como en «3.8 L» o «3 1/2 cups».</translation>
        </message>
        <message>
            <source>There is no pantry in this database yet, so there is nothing to move.</source>
            <translation>Aún no hay ninguna despensa en esta base de datos, así que no hay nada que trasladar.</translation>
        </message>
        <message>
            <source>There is no temperature in this file that can be read.</source>
            <translation>En este archivo no hay ninguna temperatura que se pueda leer.</translation>
        </message>
        <message>
            <source>This batch has ended already.</source>
            <translation>Este lote ya ha terminado.</translation>
        </message>
        <message>
            <source>This batch is not being brewed.</source>
            <translation>Este lote no se está preparando.</translation>
        </message>
        <message>
            <source>This batch is only planned; there is nothing to see of it.</source>
            <translation>Este lote solo está planificado; no hay nada que ver de él.</translation>
        </message>
        <message>
            <source>This cannot be measured that way.</source>
            <translation>Esto no se puede medir así.</translation>
        </message>
        <message>
            <source>This cannot be taken back any more, because something it touched has changed since.</source>
            <translation>Esto ya no se puede deshacer, porque algo que tocó ha cambiado desde entonces.</translation>
        </message>
        <message>
            <source>This culture is no longer there.</source>
            <translation>Este cultivo ya no está.</translation>
        </message>
        <message>
            <source>This does not fit with what is kept already, so nothing was saved.</source>
            <translation>Esto no encaja con lo que ya está guardado, así que no se guardó nada.</translation>
        </message>
        <message>
            <source>This entry is no longer there. It may have been taken back meanwhile.</source>
            <translation>Esta entrada ya no está. Quizá se deshizo mientras tanto.</translation>
        </message>
        <message>
            <source>This file is not a pantry of this program. It was left as it is. Please choose another.</source>
            <translation>Este archivo no es una despensa de este programa. Se dejó como está. Elige otro.</translation>
        </message>
        <message>
            <source>This is before the batch was begun. Please check the date and time.</source>
            <translation>Esto es antes de que se empezara el lote. Comprueba la fecha y la hora.</translation>
        </message>
        <message>
            <source>This is before the culture was born. Please check the date.</source>
            <translation>Esto es antes de que naciera el cultivo. Comprueba la fecha.</translation>
        </message>
        <message>
            <source>This is not a number that can be measured.</source>
            <translation>Este no es un número que se pueda medir.</translation>
        </message>
        <message>
            <source>This name is too long for a label. Please shorten it.</source>
            <translation>Este nombre es demasiado largo para una etiqueta. Acórtalo.</translation>
        </message>
        <message>
            <source>This pantry was last used by a newer version of the program. Nothing in it was touched. Please install the newer version to open it.</source>
            <translation>Esta despensa se usó por última vez con una versión más nueva del programa. No se tocó nada en ella. Instala la versión más nueva para abrirla.</translation>
        </message>
        <message>
            <source>This step is done already.</source>
            <translation>Este paso ya está hecho.</translation>
        </message>
        <message>
            <source>This step is not paused.</source>
            <translation>Este paso no está en pausa.</translation>
        </message>
        <message>
            <source>This step is not under way.</source>
            <translation>Este paso no está en marcha.</translation>
        </message>
        <message>
            <source>This step was begun already.</source>
            <translation>Este paso ya se empezó.</translation>
        </message>
        <message>
            <source>This time has not come yet. Please check the date and time.</source>
            <translation>Esta hora aún no ha llegado. Comprueba la fecha y la hora.</translation>
        </message>
        <message>
            <source>This value</source>
            <translation>Este valor</translation>
        </message>
        <message>
            <source>This vessel is off the shelf. Put it back first.</source>
            <translation>Este recipiente está fuera del estante. Devuélvelo antes.</translation>
        </message>
        <message>
            <source>This vessel's material must not touch kombucha. Please choose another vessel.</source>
            <translation>El material de este recipiente no debe tocar la kombucha. Elige otro recipiente.</translation>
        </message>
        <message>
            <source>Vessels stand here. Give them another place first (Edit vessel), then remove it.</source>
            <translation>Aquí hay recipientes. Dales antes otro lugar (Editar recipiente) y después elimínalo.</translation>
        </message>
        <message>
            <source>these bottles</source>
            <translation>estas botellas</translation>
        </message>
        <message>
            <source>this batch</source>
            <translation>este lote</translation>
        </message>
        <message>
            <source>this culture</source>
            <translation>este cultivo</translation>
        </message>
        <message>
            <source>this jar</source>
            <translation>este frasco</translation>
        </message>
        <message>
            <source>this photo</source>
            <translation>esta foto</translation>
        </message>
        <message>
            <source>this place</source>
            <translation>este lugar</translation>
        </message>
        <message>
            <source>this reading</source>
            <translation>esta lectura</translation>
        </message>
        <message>
            <source>this reminder</source>
            <translation>este recordatorio</translation>
        </message>
        <message>
            <source>this step</source>
            <translation>este paso</translation>
        </message>
        <message>
            <source>what this is about</source>
            <translation>aquello de lo que se trata</translation>
        </message>
        <message>
            <source>{label} cannot be that. Please check it.</source>
            <translation>{label}: ese valor no es posible. Compruébalo.</translation>
        </message>
        <message>
            <source>{label} must be at least {low}.</source>
            <translation>{label} debe ser al menos {low}.</translation>
        </message>
        <message>
            <source>{label} must be at most {high}.</source>
            <translation>{label} debe ser como máximo {high}.</translation>
        </message>
        <message>
            <source>{label} must lie between {low} and {high}.</source>
            <translation>{label} debe estar entre {low} y {high}.</translation>
        </message>
        <message>
            <source>“{part}” can be read in more than one way. Type the number without grouping, as in “1500” or “1.5”.</source>
            <translation>«{part}» se puede leer de más de una manera. Escribe el número sin separar los miles, como en «1500» o «1.5».</translation>
        </message>
        <message>
            <source>“{part}” is a unit of something else.</source>
            <translation>«{part}» es una unidad de otra cosa.</translation>
        </message>
        <message>
            <source>“{part}” is not a number that can be measured.</source>
            <translation>«{part}» no es un número que se pueda medir.</translation>
        </message>
    </context>
    <context>
        <name>ProcessLog</name>
        <message>
            <source>At</source>
            <translation>Temp.</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Batch or culture</source>
            <translation>Lote o cultivo</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Batches under way in this time, when their pH was first read at or below {limit} (wanted by day {day}, counted from the starter), calibrations of the meter, warnings that were overridden with the reason given, looks and discards.</source>
            <translation>Lotes en curso en este tiempo, cuándo se leyó por primera vez su pH a {limit} o menos (exigido para el día {day}, contado desde el iniciador), calibraciones del medidor, advertencias que se pasaron por alto con el motivo dado, revisiones y desechos.</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Empezado</translation>
        </message>
        <message>
            <source>Buffers</source>
            <translation>Tampones</translation>
        </message>
        <message>
            <source>Calibrations</source>
            <translation>Calibraciones</translation>
        </message>
        <message>
            <source>Day to pH {limit}</source>
            <translation>Día hasta pH {limit}</translation>
        </message>
        <message>
            <source>Discards</source>
            <translation>Desechos</translation>
        </message>
        <message>
            <source>How it ended</source>
            <translation>Cómo terminó</translation>
        </message>
        <message>
            <source>In the maker's words</source>
            <translation>En palabras de quien lo hizo</translation>
        </message>
        <message>
            <source>Invented data, to look at only.</source>
            <translation>Datos inventados, solo para mirar.</translation>
        </message>
        <message>
            <source>Looks and suspicions</source>
            <translation>Revisiones y sospechas</translation>
        </message>
        <message>
            <source>Made from the maker's own entries; brewdesk cannot check them, and entries can be corrected later. Local rules and licensed practice come first.</source>
            <translation>Hecho a partir de lo que anotó quien lo preparó; brewdesk no puede comprobarlo, y las entradas se pueden corregir después. Las normas locales y la práctica autorizada van primero.</translation>
        </message>
        <message>
            <source>Meter</source>
            <translation>Medidor</translation>
        </message>
        <message>
            <source>No batch was under way in this time.</source>
            <translation>En este tiempo no había ningún lote en curso.</translation>
        </message>
        <message>
            <source>No calibration is entered for this time.</source>
            <translation>No hay ninguna calibración anotada para este tiempo.</translation>
        </message>
        <message>
            <source>No look is entered.</source>
            <translation>No hay ninguna revisión anotada.</translation>
        </message>
        <message>
            <source>No warning was overridden.</source>
            <translation>No se pasó por alto ninguna advertencia.</translation>
        </message>
        <message>
            <source>Nothing was discarded.</source>
            <translation>No se desechó nada.</translation>
        </message>
        <message>
            <source>Offset</source>
            <translation>Desfase</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Página {page} de {pages}</translation>
        </message>
        <message>
            <source>Process log</source>
            <translation>Registro del proceso</translation>
        </message>
        <message>
            <source>Slope</source>
            <translation>Pendiente</translation>
        </message>
        <message>
            <source>Start pH</source>
            <translation>pH inicial</translation>
        </message>
        <message>
            <source>Start pH: read within a day of the start. Day to pH {limit}: the day of the first reading that shows it; it may have been earlier. “Not shown” means that no reading shows it. ± is one standard uncertainty.</source>
            <translation>pH inicial: leído en el plazo de un día desde el inicio. Día hasta pH {limit}: el día de la primera lectura que lo muestra; puede haber sido antes. «No mostrado» significa que ninguna lectura lo muestra. ± es una incertidumbre típica.</translation>
        </message>
        <message>
            <source>Verdict, words</source>
            <translation>Veredicto, palabras</translation>
        </message>
        <message>
            <source>Vessel, culture</source>
            <translation>Recipiente, cultivo</translation>
        </message>
        <message>
            <source>Warnings overridden</source>
            <translation>Advertencias pasadas por alto</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>pH read then</source>
            <translation>pH leído entonces</translation>
        </message>
        <message>
            <source>{first} to {last}</source>
            <translation>{first} a {last}</translation>
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
            <translation>&amp;Desde</translation>
        </message>
        <message>
            <source>&amp;To</source>
            <translation>&amp;Hasta</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>First day</source>
            <translation>Primer día</translation>
        </message>
        <message>
            <source>Last day</source>
            <translation>Último día</translation>
        </message>
        <message>
            <source>Process log</source>
            <translation>Registro del proceso</translation>
        </message>
        <message>
            <source>Show it</source>
            <translation>Mostrarlo</translation>
        </message>
        <message>
            <source>The first day is after the last. Please change one of them.</source>
            <translation>El primer día es posterior al último. Cambia uno de los dos.</translation>
        </message>
        <message>
            <source>The log lists the batches of a span of time with their start pH and the day they were first read at or below pH 4.2, calibrations, overridden warnings with your reasons, looks and discards. It shows what was entered, no more.</source>
            <translation>El registro enumera los lotes de un intervalo de tiempo con su pH inicial y el día en que se leyeron por primera vez a pH 4.2 o menos, calibraciones, advertencias pasadas por alto con tus motivos, revisiones y desechos. Muestra lo anotado, nada más.</translation>
        </message>
    </context>
    <context>
        <name>Program</name>
        <message>
            <source>A reminder will look like this</source>
            <translation>Así se verá un recordatorio</translation>
        </message>
        <message>
            <source>If you can read this, notices reach your desktop.</source>
            <translation>Si puedes leer esto, los avisos llegan a tu escritorio.</translation>
        </message>
    </context>
    <context>
        <name>ProgressDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>How much is done</source>
            <translation>Cuánto está hecho</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Detener</translation>
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
            <translation>Usa {units}.</translation>
        </message>
    </context>
    <context>
        <name>QuestionForm</name>
        <message>
            <source>Begin these entries anew</source>
            <translation>Empezar de nuevo estos datos</translation>
        </message>
        <message>
            <source>may stay empty</source>
            <translation>puede quedar vacío</translation>
        </message>
    </context>
    <context>
        <name>QuestionList</name>
        <message>
            <source>Find a question</source>
            <translation>Buscar una pregunta</translation>
        </message>
        <message>
            <source>No question holds these words.</source>
            <translation>Ninguna pregunta contiene estas palabras.</translation>
        </message>
        <message>
            <source>Questions</source>
            <translation>Preguntas</translation>
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
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Correct a reading</source>
            <translation>Corregir una lectura</translation>
        </message>
        <message>
            <source>Correct a reading: {what}</source>
            <translation>Corregir una lectura: {what}</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Taken with</source>
            <translation>Tomada con</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
    </context>
    <context>
        <name>ReadingFields</name>
        <message>
            <source>Guide…</source>
            <translation>Guía…</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>Look for mold with a guide</source>
            <translation>Buscar moho con una guía</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Pellicle thickness</source>
            <translation>Grosor de la película</translation>
        </message>
        <message>
            <source>SG</source>
            <translation>SG</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Sugar measured as</source>
            <translation>Azúcar medido como</translation>
        </message>
        <message>
            <source>Taste</source>
            <translation>Sabor</translation>
        </message>
        <message>
            <source>Temperature</source>
            <translation>Temperatura</translation>
        </message>
        <message>
            <source>Titratable acidity</source>
            <translation>Acidez titulable</translation>
        </message>
        <message>
            <source>What you saw, smelled or did</source>
            <translation>Lo que viste, oliste o hiciste</translation>
        </message>
        <message>
            <source>e.g. {number}</source>
            <translation>p. ej. {number}</translation>
        </message>
        <message>
            <source>p&amp;H</source>
            <translation>p&amp;H</translation>
        </message>
        <message>
            <source>pH taken with</source>
            <translation>pH tomado con</translation>
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
            <translation>Cambiarlo</translation>
        </message>
        <message>
            <source>Ctrl+Enter saves from any field</source>
            <translation>Ctrl+Intro guarda desde cualquier campo</translation>
        </message>
        <message>
            <source>Nothing is filled in yet.</source>
            <translation>Aún no hay nada anotado.</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Save anyway</source>
            <translation>Guardar de todos modos</translation>
        </message>
        <message>
            <source>Save the readings</source>
            <translation>Guardar las lecturas</translation>
        </message>
        <message>
            <source>Saved: {what}</source>
            <translation>Guardado: {what}</translation>
        </message>
        <message>
            <source>Stays at this time until you press Now.</source>
            <translation>Se queda en esta hora hasta que pulses Ahora.</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
    </context>
    <context>
        <name>ReadingPhotosDialog</name>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Photos of a reading</source>
            <translation>Fotos de una lectura</translation>
        </message>
    </context>
    <context>
        <name>ReadingsChoices</name>
        <message>
            <source>&amp;Date and time</source>
            <translation>&amp;Fecha y hora</translation>
        </message>
        <message>
            <source>&amp;Letters are written as</source>
            <translation>Codificación del te&amp;xto</translation>
        </message>
        <message>
            <source>Columns are &amp;parted by</source>
            <translation>Columnas &amp;separadas por</translation>
        </message>
        <message>
            <source>Please choose one.</source>
            <translation>Elige una opción.</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturas en</translation>
        </message>
        <message>
            <source>The times are &amp;in</source>
            <translation>Las &amp;horas están en</translation>
        </message>
        <message>
            <source>Time of da&amp;y, if apart</source>
            <translation>Hora del &amp;día, si va aparte</translation>
        </message>
        <message>
            <source>not in the table</source>
            <translation>no está en la tabla</translation>
        </message>
    </context>
    <context>
        <name>ReadingsFile</name>
        <message>
            <source>Already there at the same time, and skipped: {count}.</source>
            <translation>Ya estaban a la misma hora y se saltaron: {count}.</translation>
        </message>
        <message>
            <source>Left out: {count}.</source>
            <translation>Omitidas: {count}.</translation>
        </message>
        <message>
            <source>Line {line}, {column}: {why} ({text})</source>
            <translation>Línea {line}, {column}: {why} ({text})</translation>
        </message>
        <message>
            <source>More than 2000 readings at once are too many. Please split the file.</source>
            <translation>Más de 2000 lecturas a la vez son demasiadas. Divide el archivo.</translation>
        </message>
        <message>
            <source>New readings: {count}, from {first} to {last}.</source>
            <translation>Lecturas nuevas: {count}, de {first} a {last}.</translation>
        </message>
        <message>
            <source>No table with a date and a number in each row was found in this file. Please save the table as CSV and choose that file.</source>
            <translation>En este archivo no se encontró ninguna tabla con una fecha y un número en cada fila. Guarda la tabla como CSV y elige ese archivo.</translation>
        </message>
        <message>
            <source>Not one value could be read this way. Please check the columns and the dates.</source>
            <translation>Así no se pudo leer ni un solo valor. Comprueba las columnas y las fechas.</translation>
        </message>
        <message>
            <source>Nothing new is in this file.</source>
            <translation>Este archivo no contiene nada nuevo.</translation>
        </message>
        <message>
            <source>One reading on {vessel} from {file}</source>
            <translation>Una lectura en {vessel} de {file}</translation>
        </message>
        <message>
            <source>This file is empty. Please save the table as CSV once more.</source>
            <translation>Este archivo está vacío. Vuelve a guardar la tabla como CSV.</translation>
        </message>
        <message>
            <source>Times that summer time leaves out, moved on by an hour: {count}.</source>
            <translation>Horas que el horario de verano se salta, adelantadas una hora: {count}.</translation>
        </message>
        <message>
            <source>Times that the end of summer time repeats: {count}.</source>
            <translation>Horas que se repiten al acabar el horario de verano: {count}.</translation>
        </message>
        <message>
            <source>Twice in the file at the same time, the first one counts: {count}.</source>
            <translation>Dos veces en el archivo a la misma hora, cuenta la primera: {count}.</translation>
        </message>
        <message>
            <source>it is more than a day before the batch began</source>
            <translation>es más de un día antes de que empezara el lote</translation>
        </message>
        <message>
            <source>no reading is that low or high</source>
            <translation>ninguna lectura es tan baja o alta</translation>
        </message>
        <message>
            <source>the note is too long</source>
            <translation>la nota es demasiado larga</translation>
        </message>
        <message>
            <source>the time is still to come</source>
            <translation>la hora aún está por llegar</translation>
        </message>
        <message>
            <source>this is no amount that can be read</source>
            <translation>no es una cantidad que se pueda leer</translation>
        </message>
        <message>
            <source>{count} readings on {vessel} from {file}</source>
            <translation>{count} lecturas en {vessel} de {file}</translation>
        </message>
    </context>
    <context>
        <name>ReadingsFileDialog</name>
        <message>
            <source>Choose a table with a date and readings in each row, saved from your spreadsheet as CSV. You see how it is understood before anything is kept.</source>
            <translation>Elige una tabla con una fecha y lecturas en cada fila, guardada como CSV desde tu hoja de cálculo. Verás cómo se entiende antes de que se guarde nada.</translation>
        </message>
        <message>
            <source>Choose the table</source>
            <translation>Elegir la tabla</translation>
        </message>
        <message>
            <source>Read in readings</source>
            <translation>Importar lecturas</translation>
        </message>
        <message>
            <source>Read in readings of {name}</source>
            <translation>Importar lecturas de {name}</translation>
        </message>
        <message>
            <source>What was left out, and why</source>
            <translation>Qué se omitió y por qué</translation>
        </message>
        <message>
            <source>{count} more</source>
            <translation>{count} más</translation>
        </message>
    </context>
    <context>
        <name>ReadingsModel</name>
        <message>
            <source>Taken with</source>
            <translation>Tomada con</translation>
        </message>
        <message>
            <source>Value</source>
            <translation>Valor</translation>
        </message>
        <message>
            <source>What</source>
            <translation>Qué</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
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
            <translation>Leído como</translation>
        </message>
        <message>
            <source>Read as time</source>
            <translation>Leído como hora</translation>
        </message>
        <message>
            <source>The first rows, as they are understood</source>
            <translation>Las primeras filas, tal como se entienden</translation>
        </message>
    </context>
    <context>
        <name>ReadingsView</name>
        <message>
            <source>Change…</source>
            <translation>Cambiar…</translation>
        </message>
        <message>
            <source>No readings yet. Enter the first one above.</source>
            <translation>Aún no hay lecturas. Anota arriba la primera.</translation>
        </message>
        <message>
            <source>Photos…</source>
            <translation>Fotos…</translation>
        </message>
        <message>
            <source>Readings, newest first</source>
            <translation>Lecturas, primero las más recientes</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Quitar</translation>
        </message>
    </context>
    <context>
        <name>Reckoner</name>
        <message>
            <source>15 percent volume share liquid alkalinity hardness water</source>
            <translation>15 por ciento proporción volumen líquido alcalinidad dureza agua</translation>
        </message>
        <message>
            <source>8 times in 10</source>
            <translation>8 de cada 10 veces</translation>
        </message>
        <message>
            <source>A bottle holds to the brim</source>
            <translation>Una botella contiene hasta el borde</translation>
        </message>
        <message>
            <source>A bottle in the shop costs</source>
            <translation>Una botella en la tienda cuesta</translation>
        </message>
        <message>
            <source>A brew is not quite the liquid that the formula was made for.</source>
            <translation>Una preparación no es exactamente el líquido para el que se hizo la fórmula.</translation>
        </message>
        <message>
            <source>A calibration liquid shows its printed pH at one temperature only.</source>
            <translation>Un líquido de calibración muestra el pH impreso solo a una temperatura.</translation>
        </message>
        <message>
            <source>A gauge bottle among the others, held against what the bottles may be under.</source>
            <translation>Una botella con manómetro entre las demás, comparada con lo que las botellas pueden soportar.</translation>
        </message>
        <message>
            <source>A glass</source>
            <translation>Un vaso</translation>
        </message>
        <message>
            <source>A higher mark must hold more than the one below it.</source>
            <translation>Una marca más alta debe contener más que la de debajo.</translation>
        </message>
        <message>
            <source>A litre costs</source>
            <translation>Un litro cuesta</translation>
        </message>
        <message>
            <source>A litre is taken for a kilogram of water. Sugar is no acid and takes no part.</source>
            <translation>Un litro se toma como un kilogramo de agua. El azúcar no es un ácido y no interviene.</translation>
        </message>
        <message>
            <source>A reading while it sours, held against the day by which it has to be sour.</source>
            <translation>Una lectura durante la acidificación, comparada con el día en que ya tiene que estar ácido.</translation>
        </message>
        <message>
            <source>A refractometer shows {brix} more than there is sugar. A minus sign on the hydrometer means that it shows too little.</source>
            <translation>Un refractómetro muestra {brix} más que el azúcar que hay. Un signo menos en el densímetro significa que muestra de menos.</translation>
        </message>
        <message>
            <source>A thermometer decides, not this: measure before the culture goes in.</source>
            <translation>Decide un termómetro, no esto: mide antes de que entre el cultivo.</translation>
        </message>
        <message>
            <source>A verdict never says that a drink is safe. Where your local rules ask for more, follow them.</source>
            <translation>Un dictamen nunca dice que una bebida sea segura. Donde tus normas locales pidan más, síguelas.</translation>
        </message>
        <message>
            <source>A volume in cups and spoons</source>
            <translation>Un volumen en tazas y cucharas</translation>
        </message>
        <message>
            <source>A weight of white sugar as a kitchen without scales has it.</source>
            <translation>Un peso de azúcar blanco como lo tiene una cocina sin balanza.</translation>
        </message>
        <message>
            <source>ATC automatic cold warm sample</source>
            <translation>ATC automático frío caliente muestra</translation>
        </message>
        <message>
            <source>About</source>
            <translation>Cerca de</translation>
        </message>
        <message>
            <source>About 2 g a bag is common practice; weigh ten of yours and divide.</source>
            <translation>Unos 2 g por bolsita es la práctica habitual; pesa diez de las tuyas y divide.</translation>
        </message>
        <message>
            <source>About {ice}; for a little warmer or colder it takes {ice_low} to {ice_high}.</source>
            <translation>Cerca de {ice}; para un poco más caliente o más frío hacen falta de {ice_low} a {ice_high}.</translation>
        </message>
        <message>
            <source>About {sugar}, anywhere from {sugar_low} to {sugar_high}: what is left in the drink is known badly. Look at the bottles, not at the calendar.</source>
            <translation>Cerca de {sugar}, quizá entre {sugar_low} y {sugar_high}: lo que queda en la bebida se conoce mal. Mira las botellas, no el calendario.</translation>
        </message>
        <message>
            <source>About {volume} should start it near pH {target_start_ph}; the doubts about starter, tea and water make it {volume_low} to {volume_high}.</source>
            <translation>Cerca de {volume} debería hacerlo empezar cerca de pH {target_start_ph}; las dudas sobre iniciador, té y agua lo dejan entre {volume_low} y {volume_high}.</translation>
        </message>
        <message>
            <source>About {wait} after the latest reading; between {wait_low} and {wait_high} 8 times in 10.</source>
            <translation>Cerca de {wait} tras la última lectura; entre {wait_low} y {wait_high} 8 de cada 10 veces.</translation>
        </message>
        <message>
            <source>Above the sea</source>
            <translation>Sobre el nivel del mar</translation>
        </message>
        <message>
            <source>Acetic acid</source>
            <translation>Ácido acético</translation>
        </message>
        <message>
            <source>Acid</source>
            <translation>Ácido</translation>
        </message>
        <message>
            <source>Acid as acetic, by weight</source>
            <translation>Ácido como acético, en peso</translation>
        </message>
        <message>
            <source>Acidity</source>
            <translation>Acidez</translation>
        </message>
        <message>
            <source>Acidity and meter</source>
            <translation>Acidez y medidor</translation>
        </message>
        <message>
            <source>Acidity formed</source>
            <translation>Acidez formada</translation>
        </message>
        <message>
            <source>Acidity in equivalents</source>
            <translation>Acidez en equivalentes</translation>
        </message>
        <message>
            <source>Acidity, as acetic acid</source>
            <translation>Acidez, como ácido acético</translation>
        </message>
        <message>
            <source>Acidity, of the same pair</source>
            <translation>Acidez, del mismo par</translation>
        </message>
        <message>
            <source>Acidity, told as chosen</source>
            <translation>Acidez, expresada como se eligió</translation>
        </message>
        <message>
            <source>Air in water</source>
            <translation>Aire en el agua</translation>
        </message>
        <message>
            <source>Alcohol</source>
            <translation>Alcohol</translation>
        </message>
        <message>
            <source>Alcohol by volume</source>
            <translation>Alcohol en volumen</translation>
        </message>
        <message>
            <source>Alcohol from sugar, less what acid took</source>
            <translation>Alcohol del azúcar, menos lo que se llevó el ácido</translation>
        </message>
        <message>
            <source>Alcohol if all sugar ferments, at most</source>
            <translation>Alcohol si fermenta todo el azúcar, como máximo</translation>
        </message>
        <message>
            <source>Alcohol in it</source>
            <translation>Alcohol que contiene</translation>
        </message>
        <message>
            <source>Alcohol that comes with it</source>
            <translation>Alcohol que lo acompaña</translation>
        </message>
        <message>
            <source>Alcohol, at least</source>
            <translation>Alcohol, como mínimo</translation>
        </message>
        <message>
            <source>Alcohol, at most</source>
            <translation>Alcohol, como máximo</translation>
        </message>
        <message>
            <source>Alcohol, by weight</source>
            <translation>Alcohol, en peso</translation>
        </message>
        <message>
            <source>Alcohol, likely</source>
            <translation>Alcohol, probable</translation>
        </message>
        <message>
            <source>Alkalinity of the water</source>
            <translation>Alcalinidad del agua</translation>
        </message>
        <message>
            <source>Alkalinity of the water, if known</source>
            <translation>Alcalinidad del agua, si se conoce</translation>
        </message>
        <message>
            <source>Alkalinity reckoned with</source>
            <translation>Alcalinidad usada en el cálculo</translation>
        </message>
        <message>
            <source>Amount</source>
            <translation>Cantidad</translation>
        </message>
        <message>
            <source>Anything from {abv_low} to {abv_high} fits these figures. The upper end has all lost sugar turned to alcohol and none of it to acid.</source>
            <translation>Todo lo que va de {abv_low} a {abv_high} encaja con estas cifras. El extremo superior supone que todo el azúcar perdido pasó a alcohol y nada a ácido.</translation>
        </message>
        <message>
            <source>As acetic acid to pH 8.1, as used everywhere here</source>
            <translation>Como ácido acético hasta pH 8.1, como en todo el programa</translation>
        </message>
        <message>
            <source>Assumed pace of yeast in a closed bottle</source>
            <translation>Ritmo supuesto de la levadura en botella cerrada</translation>
        </message>
        <message>
            <source>At 20 °C it would show {brix}; the instrument's own doubt gives {brix_low} to {brix_high}.</source>
            <translation>A 20 °C mostraría {brix}; la duda del propio instrumento da de {brix_low} a {brix_high}.</translation>
        </message>
        <message>
            <source>At 20 °C it would show {sg}; half a mark either way gives {sg_low} to {sg_high}.</source>
            <translation>A 20 °C mostraría {sg}; media división arriba o abajo da de {sg_low} a {sg_high}.</translation>
        </message>
        <message>
            <source>At most, in a litre</source>
            <translation>Como máximo, en un litro</translation>
        </message>
        <message>
            <source>At most, in volumes</source>
            <translation>Como máximo, en volúmenes</translation>
        </message>
        <message>
            <source>At pH {other_ph} expect {other_ta_low} to {other_ta_high}: a small error of pH is a large one of acidity.</source>
            <translation>A pH {other_ph} espera de {other_ta_low} a {other_ta_high}: un error pequeño de pH es uno grande de acidez.</translation>
        </message>
        <message>
            <source>At the earliest {wait} after the latest reading, perhaps not before {wait_high}: it was read while it steamed.</source>
            <translation>Como pronto {wait} tras la última lectura, quizá no antes de {wait_high}: se leyó mientras humeaba.</translation>
        </message>
        <message>
            <source>At {altitude_m} water boils at about {boiling}; the weather moves that a little.</source>
            <translation>A {altitude_m} el agua hierve a cerca de {boiling}; el tiempo que haga lo mueve un poco.</translation>
        </message>
        <message>
            <source>At {other_ta_g_per_l} expect a pH between {other_ph_low} and {other_ph_high}, as long as tea, water and kinds of acid stay the same.</source>
            <translation>Con {other_ta_g_per_l} espera un pH entre {other_ph_low} y {other_ph_high}, mientras té, agua y tipos de ácido sean los mismos.</translation>
        </message>
        <message>
            <source>At {temperature_c} a fresh one has pH {ph}, give or take the bottle's own doubt.</source>
            <translation>A {temperature_c} uno fresco tiene pH {ph}, con el margen de duda del propio frasco.</translation>
        </message>
        <message>
            <source>Bags weighed together</source>
            <translation>Bolsitas pesadas juntas</translation>
        </message>
        <message>
            <source>Balance of strong ions at the pH wanted</source>
            <translation>Balance de iones fuertes al pH deseado</translation>
        </message>
        <message>
            <source>Between {abv_low} and {abv_high} about 8 times in 10, and not nearer: the two instruments were made for sugar water.</source>
            <translation>Entre {abv_low} y {abv_high} cerca de 8 de cada 10 veces, y no más exacto: los dos instrumentos se hicieron para agua con azúcar.</translation>
        </message>
        <message>
            <source>Between {bag_low} and {bag_high}, as far as the scale can tell.</source>
            <translation>Entre {bag_low} y {bag_high}, hasta donde la balanza puede decir.</translation>
        </message>
        <message>
            <source>Between {caffeine_low} and {caffeine_high}; none is taken to be lost in souring.</source>
            <translation>Entre {caffeine_low} y {caffeine_high}; se supone que nada se pierde al acidificar.</translation>
        </message>
        <message>
            <source>Bleach</source>
            <translation>Lejía</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Bottles and fizz</source>
            <translation>Botellas y gas</translation>
        </message>
        <message>
            <source>Brix correction reading ATC index</source>
            <translation>Brix corrección lectura ATC índice</translation>
        </message>
        <message>
            <source>Brix in gravity and grams per litre</source>
            <translation>Brix en densidad y gramos por litro</translation>
        </message>
        <message>
            <source>Buffer</source>
            <translation>Tampón</translation>
        </message>
        <message>
            <source>Buffers printed with the same pH may hold different salts: look at the bottle's own table first.</source>
            <translation>Tampones con el mismo pH impreso pueden llevar sales distintas: mira antes la tabla de su propio frasco.</translation>
        </message>
        <message>
            <source>CO2 bar psi headspace warm trapped air</source>
            <translation>CO2 bar psi espacio de cabeza caliente aire atrapado</translation>
        </message>
        <message>
            <source>CO2 volumes bar psi carbonation keg grams per litre</source>
            <translation>CO2 volúmenes bar psi carbonatación barril gramos por litro</translation>
        </message>
        <message>
            <source>CO2 volumes bar psi carbonation temperature</source>
            <translation>CO2 volúmenes bar psi carbonatación temperatura</translation>
        </message>
        <message>
            <source>Caffeine</source>
            <translation>Cafeína</translation>
        </message>
        <message>
            <source>Caffeine in a litre</source>
            <translation>Cafeína en un litro</translation>
        </message>
        <message>
            <source>Caffeine of tea leaf and how much is drawn out</source>
            <translation>Cafeína de la hoja de té y cuánta se extrae</translation>
        </message>
        <message>
            <source>Caffeine that the leaf gives to a litre, from published contents.</source>
            <translation>Cafeína que la hoja da a un litro, según contenidos publicados.</translation>
        </message>
        <message>
            <source>Carbon dioxide for each litre</source>
            <translation>Dióxido de carbono por cada litro</translation>
        </message>
        <message>
            <source>Carbon dioxide in a litre</source>
            <translation>Dióxido de carbono en un litro</translation>
        </message>
        <message>
            <source>Charge balance of the weak acids of tea and starter</source>
            <translation>Balance de cargas de los ácidos débiles de té e iniciador</translation>
        </message>
        <message>
            <source>Charge balance of weak acids, with assumed shares</source>
            <translation>Balance de cargas de ácidos débiles, con proporciones supuestas</translation>
        </message>
        <message>
            <source>Charge balance with Davies activity coefficients</source>
            <translation>Balance de cargas con coeficientes de actividad de Davies</translation>
        </message>
        <message>
            <source>Chipped or scratched?</source>
            <translation>¿Desportillada o rayada?</translation>
        </message>
        <message>
            <source>Chlorine in the water for rinsing clean vessels.</source>
            <translation>Cloro en el agua para enjuagar recipientes limpios.</translation>
        </message>
        <message>
            <source>Chlorine over volume; published strength of a rinse</source>
            <translation>Cloro entre volumen; concentración publicada de un enjuague</translation>
        </message>
        <message>
            <source>Chlorine, from its label</source>
            <translation>Cloro, según su etiqueta</translation>
        </message>
        <message>
            <source>Citric acid</source>
            <translation>Ácido cítrico</translation>
        </message>
        <message>
            <source>Closed bottle with its air, and a drink that swells</source>
            <translation>Botella cerrada con su aire, y una bebida que se dilata</translation>
        </message>
        <message>
            <source>Cold water</source>
            <translation>Agua fría</translation>
        </message>
        <message>
            <source>Cold water at</source>
            <translation>Agua fría a</translation>
        </message>
        <message>
            <source>Correct a hydrometer for temperature</source>
            <translation>Corregir un densímetro por temperatura</translation>
        </message>
        <message>
            <source>Correct a refractometer for temperature</source>
            <translation>Corregir un refractómetro por temperatura</translation>
        </message>
        <message>
            <source>Corrects a reading by your last calibration and says what it is worth.</source>
            <translation>Corrige una lectura con tu última calibración y dice lo que vale.</translation>
        </message>
        <message>
            <source>Days</source>
            <translation>Días</translation>
        </message>
        <message>
            <source>Days in a closed bottle, as widely as the pace is unsure.</source>
            <translation>Días en botella cerrada, con un margen tan amplio como incierto es el ritmo.</translation>
        </message>
        <message>
            <source>Days in the cold</source>
            <translation>Días en frío</translation>
        </message>
        <message>
            <source>Days since bottling, if bottled</source>
            <translation>Días desde el embotellado, si está embotellado</translation>
        </message>
        <message>
            <source>Days since the calibration</source>
            <translation>Días desde la calibración</translation>
        </message>
        <message>
            <source>Days since the culture went in</source>
            <translation>Días desde que entró el cultivo</translation>
        </message>
        <message>
            <source>Days since the starter went in</source>
            <translation>Días desde que entró el iniciador</translation>
        </message>
        <message>
            <source>Days since the starter went in.</source>
            <translation>Días desde que entró el iniciador.</translation>
        </message>
        <message>
            <source>Days that the finished drink has been kept cold.</source>
            <translation>Días que la bebida terminada lleva en frío.</translation>
        </message>
        <message>
            <source>Days until it is fizzy</source>
            <translation>Días hasta que tenga gas</translation>
        </message>
        <message>
            <source>Degrees Brix</source>
            <translation>Grados Brix</translation>
        </message>
        <message>
            <source>Degrees Brix, specific gravity, density and grams per litre of one solution.</source>
            <translation>Grados Brix, densidad relativa, densidad y gramos por litro de una misma solución.</translation>
        </message>
        <message>
            <source>Degrees Celsius it may be off by</source>
            <translation>Grados Celsius que puede desviarse</translation>
        </message>
        <message>
            <source>Density at 20 °C</source>
            <translation>Densidad a 20 °C</translation>
        </message>
        <message>
            <source>Density of dilute alcohol and acid</source>
            <translation>Densidad del alcohol y ácido diluidos</translation>
        </message>
        <message>
            <source>Density of sucrose solutions</source>
            <translation>Densidad de soluciones de sacarosa</translation>
        </message>
        <message>
            <source>Diluted before, by</source>
            <translation>Diluido antes, por</translation>
        </message>
        <message>
            <source>Does it compensate by itself?</source>
            <translation>¿Compensa por sí mismo?</translation>
        </message>
        <message>
            <source>Does the meter compensate?</source>
            <translation>¿Compensa el medidor?</translation>
        </message>
        <message>
            <source>Does this place suit a souring jar?</source>
            <translation>¿Es este lugar apto para un frasco en acidificación?</translation>
        </message>
        <message>
            <source>Drunk in a day</source>
            <translation>Bebido en un día</translation>
        </message>
        <message>
            <source>Each buffer can be used once only. Please choose another.</source>
            <translation>Cada tampón solo se puede usar una vez. Elige otro.</translation>
        </message>
        <message>
            <source>Earliest day they could pass it</source>
            <translation>Primer día en que podrían superarlo</translation>
        </message>
        <message>
            <source>End point of the titration</source>
            <translation>Punto final de la titulación</translation>
        </message>
        <message>
            <source>Energy</source>
            <translation>Energía</translation>
        </message>
        <message>
            <source>Energy to the gram of sugar, acid and alcohol</source>
            <translation>Energía por gramo de azúcar, ácido y alcohol</translation>
        </message>
        <message>
            <source>Energy, sugar, acid, alcohol and caffeine of an amount, as ranges.</source>
            <translation>Energía, azúcar, ácido, alcohol y cafeína de una cantidad, como intervalos.</translation>
        </message>
        <message>
            <source>Every limit this program uses, with where it comes from.</source>
            <translation>Todos los límites que usa este programa, con su procedencia.</translation>
        </message>
        <message>
            <source>Every reading must be warmer than the room.</source>
            <translation>Cada lectura debe ser más caliente que la habitación.</translation>
        </message>
        <message>
            <source>Everything else</source>
            <translation>Todo lo demás</translation>
        </message>
        <message>
            <source>Expansion of glass and of sugar solution</source>
            <translation>Dilatación del vidrio y de la solución de azúcar</translation>
        </message>
        <message>
            <source>Expect {mixed_low} to {mixed_high}, with {left} of ice left in it.</source>
            <translation>Espera de {mixed_low} a {mixed_high}, con {left} de hielo aún dentro.</translation>
        </message>
        <message>
            <source>Expect {mixed_low} to {mixed_high}: vessel and losses on the way move it a little. A thermometer decides when the culture goes in.</source>
            <translation>Espera de {mixed_low} a {mixed_high}: el recipiente y las pérdidas por el camino lo mueven un poco. Un termómetro decide cuándo entra el cultivo.</translation>
        </message>
        <message>
            <source>Filled at</source>
            <translation>Llenada a</translation>
        </message>
        <message>
            <source>First buffer</source>
            <translation>Primer tampón</translation>
        </message>
        <message>
            <source>Fizz wanted</source>
            <translation>Gas deseado</translation>
        </message>
        <message>
            <source>For exactly this mixture the calculation gives pH {ph}; a meter in a real drink seldom agrees better than 0.15.</source>
            <translation>Para esta mezcla exacta el cálculo da pH {ph}; un medidor en una bebida real rara vez coincide mejor que 0.15.</translation>
        </message>
        <message>
            <source>For sugar in water. Once the culture works, acids and alcohol count in too and the reading is only apparent.</source>
            <translation>Para azúcar en agua. En cuanto el cultivo trabaja, también cuentan ácidos y alcohol, y la lectura es solo aparente.</translation>
        </message>
        <message>
            <source>For whom it is not</source>
            <translation>Para quién no es</translation>
        </message>
        <message>
            <source>Free chlorine</source>
            <translation>Cloro libre</translation>
        </message>
        <message>
            <source>Fresh juice can bring in germs that souring does not undo.</source>
            <translation>El jugo fresco puede traer gérmenes que la acidificación no elimina.</translation>
        </message>
        <message>
            <source>From grams of each acid in a litre and the strong ions of tea, water or fruit.</source>
            <translation>A partir de los gramos de cada ácido por litro y los iones fuertes de té, agua o fruta.</translation>
        </message>
        <message>
            <source>From one colour of the strip to the next</source>
            <translation>De un color de la tira al siguiente</translation>
        </message>
        <message>
            <source>From the lye a sample took up to its end point.</source>
            <translation>A partir de la sosa que consumió una muestra hasta su punto final.</translation>
        </message>
        <message>
            <source>From the marks you measured, the height of any other amount.</source>
            <translation>A partir de las marcas que mediste, la altura de cualquier otra cantidad.</translation>
        </message>
        <message>
            <source>From two to four temperatures of the cooling pot, and that of the room.</source>
            <translation>A partir de dos a cuatro temperaturas de la olla que se enfría, y la de la habitación.</translation>
        </message>
        <message>
            <source>From what you paid for packs and what you used of them, in your own money.</source>
            <translation>A partir de lo que pagaste por los paquetes y lo que usaste de ellos, en tu propia moneda.</translation>
        </message>
        <message>
            <source>Fruit or juice</source>
            <translation>Fruta o jugo</translation>
        </message>
        <message>
            <source>Gas and alcohol from sugar</source>
            <translation>Gas y alcohol a partir del azúcar</translation>
        </message>
        <message>
            <source>Gas driven out first?</source>
            <translation>¿Gas eliminado antes?</translation>
        </message>
        <message>
            <source>Gas shared between drink and headspace, with the air that was closed in.</source>
            <translation>Gas repartido entre bebida y espacio de cabeza, con el aire que quedó encerrado.</translation>
        </message>
        <message>
            <source>Gluconic acid</source>
            <translation>Ácido glucónico</translation>
        </message>
        <message>
            <source>Grades a starter by its pH, its titrated acidity or, failing both, its taste.</source>
            <translation>Clasifica un iniciador por su pH, su acidez titulada o, a falta de ambos, su sabor.</translation>
        </message>
        <message>
            <source>Grades and usual amounts</source>
            <translation>Grados y cantidades habituales</translation>
        </message>
        <message>
            <source>Grams per litre in Brix and gravity</source>
            <translation>Gramos por litro en Brix y densidad</translation>
        </message>
        <message>
            <source>Gravity in Brix and grams per litre</source>
            <translation>Densidad en Brix y gramos por litro</translation>
        </message>
        <message>
            <source>Has it been souring for too long?</source>
            <translation>¿Lleva demasiado tiempo acidificándose?</translation>
        </message>
        <message>
            <source>Heat</source>
            <translation>Calor</translation>
        </message>
        <message>
            <source>Heat content is kept</source>
            <translation>El contenido de calor se conserva</translation>
        </message>
        <message>
            <source>Heat content is kept, melting included</source>
            <translation>El contenido de calor se conserva, fusión incluida</translation>
        </message>
        <message>
            <source>Heated or pasteurised?</source>
            <translation>¿Calentado o pasteurizado?</translation>
        </message>
        <message>
            <source>Heating the drink in an open pot, and never in a closed bottle.</source>
            <translation>Calentar la bebida en una olla abierta, nunca en una botella cerrada.</translation>
        </message>
        <message>
            <source>Held against the most cautious published advice, and for whom it is not.</source>
            <translation>Comparado con el consejo publicado más prudente, y para quién no es.</translation>
        </message>
        <message>
            <source>Herbs differ too much: some hold no caffeine, some a lot. No figure is given.</source>
            <translation>Las hierbas son demasiado distintas: unas no llevan cafeína, otras mucha. No se da ninguna cifra.</translation>
        </message>
        <message>
            <source>Holds to the brim</source>
            <translation>Contiene hasta el borde</translation>
        </message>
        <message>
            <source>Hot concentrate, cold water and ice: the temperature, or the ice that is left.</source>
            <translation>Concentrado caliente, agua fría y hielo: la temperatura, o el hielo que queda.</translation>
        </message>
        <message>
            <source>Hot water at</source>
            <translation>Agua caliente a</translation>
        </message>
        <message>
            <source>Hot water or tea</source>
            <translation>Agua o té caliente</translation>
        </message>
        <message>
            <source>Hot water, at most</source>
            <translation>Agua caliente, como máximo</translation>
        </message>
        <message>
            <source>Hours in which it is lukewarm: germs can grow and nothing is sour yet.</source>
            <translation>Horas en que está tibio: pueden crecer gérmenes y aún no hay nada ácido.</translation>
        </message>
        <message>
            <source>Household weights of sugar</source>
            <translation>Pesos caseros del azúcar</translation>
        </message>
        <message>
            <source>How cold</source>
            <translation>Temperatura fría</translation>
        </message>
        <message>
            <source>How cold does ice make it?</source>
            <translation>¿Cuánto enfría el hielo?</translation>
        </message>
        <message>
            <source>How far off a meter is that takes the liquid for another temperature.</source>
            <translation>Cuánto se desvía un medidor que cree que el líquido está a otra temperatura.</translation>
        </message>
        <message>
            <source>How fast yeast works</source>
            <translation>Lo rápido que trabaja la levadura</translation>
        </message>
        <message>
            <source>How fizzy is it at this pressure?</source>
            <translation>¿Cuánto gas tiene a esta presión?</translation>
        </message>
        <message>
            <source>How high does it stand in the vessel?</source>
            <translation>¿A qué altura llega en el recipiente?</translation>
        </message>
        <message>
            <source>How hot</source>
            <translation>Temperatura caliente</translation>
        </message>
        <message>
            <source>How hot is boiling water up here?</source>
            <translation>¿A cuánto hierve el agua aquí arriba?</translation>
        </message>
        <message>
            <source>How long does it keep in the cold?</source>
            <translation>¿Cuánto se conserva en frío?</translation>
        </message>
        <message>
            <source>How long does yeast need for this sugar?</source>
            <translation>¿Cuánto necesita la levadura para este azúcar?</translation>
        </message>
        <message>
            <source>How long may sweet tea stand without starter?</source>
            <translation>¿Cuánto puede estar el té azucarado sin iniciador?</translation>
        </message>
        <message>
            <source>How many tea bags is that?</source>
            <translation>¿Cuántas bolsitas de té son?</translation>
        </message>
        <message>
            <source>How much acid the starter holds is assumed: titrating it makes this sharper.</source>
            <translation>Cuánto ácido lleva el iniciador es una suposición: titularlo lo hace más preciso.</translation>
        </message>
        <message>
            <source>How much alcohol, by hydrometer and refractometer?</source>
            <translation>¿Cuánto alcohol, según densímetro y refractómetro?</translation>
        </message>
        <message>
            <source>How much alcohol, from the sugar that is gone?</source>
            <translation>¿Cuánto alcohol, según el azúcar que falta?</translation>
        </message>
        <message>
            <source>How much caffeine does the tea give?</source>
            <translation>¿Cuánta cafeína da el té?</translation>
        </message>
        <message>
            <source>How much gas is in it already?</source>
            <translation>¿Cuánto gas contiene ya?</translation>
        </message>
        <message>
            <source>How much ice cools it to where I want it?</source>
            <translation>¿Cuánto hielo lo enfría hasta donde quiero?</translation>
        </message>
        <message>
            <source>How much is in it, by the ruler?</source>
            <translation>¿Cuánto contiene, según la regla?</translation>
        </message>
        <message>
            <source>How much of it in a day?</source>
            <translation>¿Cuánto en un día?</translation>
        </message>
        <message>
            <source>How much of the water may be hot?</source>
            <translation>¿Cuánta del agua puede ser caliente?</translation>
        </message>
        <message>
            <source>How much room does sugar take?</source>
            <translation>¿Cuánto sitio ocupa el azúcar?</translation>
        </message>
        <message>
            <source>How much starter for a start pH?</source>
            <translation>¿Cuánto iniciador para un pH inicial?</translation>
        </message>
        <message>
            <source>How much sugar for fizz, and will the bottles stand it?</source>
            <translation>¿Cuánto azúcar para el gas, y lo aguantarán las botellas?</translation>
        </message>
        <message>
            <source>How strong is my bleach rinse?</source>
            <translation>¿Qué fuerza tiene mi enjuague con lejía?</translation>
        </message>
        <message>
            <source>How strong is my starter?</source>
            <translation>¿Qué fuerza tiene mi iniciador?</translation>
        </message>
        <message>
            <source>How sure is a pH reading?</source>
            <translation>¿Cuánto hay que fiarse de una lectura de pH?</translation>
        </message>
        <message>
            <source>How warm is hot and cold together?</source>
            <translation>¿A qué temperatura quedan caliente y frío juntos?</translation>
        </message>
        <message>
            <source>Hydrometer, at 20 °C, gas driven out</source>
            <translation>Densímetro, a 20 °C, sin gas</translation>
        </message>
        <message>
            <source>Ice</source>
            <translation>Hielo</translation>
        </message>
        <message>
            <source>Ice left</source>
            <translation>Hielo restante</translation>
        </message>
        <message>
            <source>Ideal slope at this temperature, for each pH</source>
            <translation>Pendiente ideal a esta temperatura, para cada pH</translation>
        </message>
        <message>
            <source>If all sugar ferments, at the warmest</source>
            <translation>Si fermenta todo el azúcar, a la temperatura más alta</translation>
        </message>
        <message>
            <source>In a closed bottle?</source>
            <translation>¿En botella cerrada?</translation>
        </message>
        <message>
            <source>In a litre</source>
            <translation>En un litro</translation>
        </message>
        <message>
            <source>Is it cool enough for the culture?</source>
            <translation>¿Está lo bastante frío para el cultivo?</translation>
        </message>
        <message>
            <source>Is it hot enough to end fermenting?</source>
            <translation>¿Está lo bastante caliente para parar la fermentación?</translation>
        </message>
        <message>
            <source>Is it kept cold enough?</source>
            <translation>¿Se guarda lo bastante frío?</translation>
        </message>
        <message>
            <source>Is it sour enough to drink or bottle?</source>
            <translation>¿Está lo bastante ácido para beber o embotellar?</translation>
        </message>
        <message>
            <source>Is my pH meter still good?</source>
            <translation>¿Sigue bien mi medidor de pH?</translation>
        </message>
        <message>
            <source>Is this pH in time?</source>
            <translation>¿Llega este pH a tiempo?</translation>
        </message>
        <message>
            <source>It comes out between pH {start_ph_low} and {start_ph_high} about 8 times in 10.</source>
            <translation>Queda entre pH {start_ph_low} y {start_ph_high} cerca de 8 de cada 10 veces.</translation>
        </message>
        <message>
            <source>It has stood for</source>
            <translation>Lleva en espera</translation>
        </message>
        <message>
            <source>It holds up to {volumes}; a jar whose yeasts have calmed down may hold much less.</source>
            <translation>Retiene hasta {volumes}; un frasco con las levaduras ya calmadas puede retener mucho menos.</translation>
        </message>
        <message>
            <source>It lies between pH {true_low} and {true_high} about 8 times in 10.</source>
            <translation>Está entre pH {true_low} y {true_high} cerca de 8 de cada 10 veces.</translation>
        </message>
        <message>
            <source>It may be off by</source>
            <translation>Puede desviarse</translation>
        </message>
        <message>
            <source>It never gets there in such a place: the wanted temperature must be above it.</source>
            <translation>En un lugar así nunca llega: la temperatura deseada debe ser más alta que la del lugar.</translation>
        </message>
        <message>
            <source>It reads</source>
            <translation>Marca</translation>
        </message>
        <message>
            <source>It rests on assumed figures alone, not on your own readings.</source>
            <translation>Se basa solo en cifras supuestas, no en tus propias lecturas.</translation>
        </message>
        <message>
            <source>It shows</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>It stands at</source>
            <translation>Llega a</translation>
        </message>
        <message>
            <source>It tastes</source>
            <translation>Sabe</translation>
        </message>
        <message>
            <source>Its acidity</source>
            <translation>Su acidez</translation>
        </message>
        <message>
            <source>Its acidity is about {acidity}; from what you gave it may lie anywhere between {acidity_low} and {acidity_high}.</source>
            <translation>Su acidez es de cerca de {acidity}; por lo que indicaste puede estar entre {acidity_low} y {acidity_high}.</translation>
        </message>
        <message>
            <source>Its acidity, if titrated</source>
            <translation>Su acidez, si está titulada</translation>
        </message>
        <message>
            <source>Its temperature</source>
            <translation>Su temperatura</translation>
        </message>
        <message>
            <source>Label and cost</source>
            <translation>Etiqueta y coste</translation>
        </message>
        <message>
            <source>Lactic acid</source>
            <translation>Ácido láctico</translation>
        </message>
        <message>
            <source>Last digit of the scale</source>
            <translation>Última cifra de la balanza</translation>
        </message>
        <message>
            <source>Latest reading</source>
            <translation>Última lectura</translation>
        </message>
        <message>
            <source>Least squares on the Nernst line, and its limits</source>
            <translation>Mínimos cuadrados sobre la recta de Nernst, y sus límites</translation>
        </message>
        <message>
            <source>Left empty</source>
            <translation>Se deja vacío</translation>
        </message>
        <message>
            <source>Left in the drink</source>
            <translation>Queda en la bebida</translation>
        </message>
        <message>
            <source>Left to the brim</source>
            <translation>Queda hasta el borde</translation>
        </message>
        <message>
            <source>Level, headspace and surface of an amount in a vessel.</source>
            <translation>Nivel, espacio de cabeza y superficie de una cantidad en un recipiente.</translation>
        </message>
        <message>
            <source>Limit</source>
            <translation>Límite</translation>
        </message>
        <message>
            <source>Limit to compare with</source>
            <translation>Límite con el que comparar</translation>
        </message>
        <message>
            <source>Limits and safety</source>
            <translation>Límites y seguridad</translation>
        </message>
        <message>
            <source>Limits for bottles</source>
            <translation>Límites para botellas</translation>
        </message>
        <message>
            <source>Limits for slope and offset</source>
            <translation>Límites de pendiente y desfase</translation>
        </message>
        <message>
            <source>Liquid</source>
            <translation>Líquido</translation>
        </message>
        <message>
            <source>Liquid in it</source>
            <translation>Líquido que contiene</translation>
        </message>
        <message>
            <source>Lye that plain water took</source>
            <translation>Sosa que consumió el agua sola</translation>
        </message>
        <message>
            <source>Lye times its strength, over the sample</source>
            <translation>Sosa por su concentración, entre la muestra</translation>
        </message>
        <message>
            <source>Lye used</source>
            <translation>Sosa usada</translation>
        </message>
        <message>
            <source>Made for (printed on it)</source>
            <translation>Hecho para (impreso en él)</translation>
        </message>
        <message>
            <source>Makers usually take (common practice)</source>
            <translation>Se suele tomar (práctica habitual)</translation>
        </message>
        <message>
            <source>Makers usually take of such a one</source>
            <translation>De uno así se suele tomar</translation>
        </message>
        <message>
            <source>Malic acid</source>
            <translation>Ácido málico</translation>
        </message>
        <message>
            <source>Mark it at</source>
            <translation>Márcalo a</translation>
        </message>
        <message>
            <source>Mark {n}: height</source>
            <translation>Marca {n}: altura</translation>
        </message>
        <message>
            <source>Mark {n}: holds</source>
            <translation>Marca {n}: contiene</translation>
        </message>
        <message>
            <source>Mass over the density of the solution</source>
            <translation>Masa entre la densidad de la solución</translation>
        </message>
        <message>
            <source>Material</source>
            <translation>Material</translation>
        </message>
        <message>
            <source>May this juice or fruit go in?</source>
            <translation>¿Puede entrar este jugo o esta fruta?</translation>
        </message>
        <message>
            <source>May this material touch it?</source>
            <translation>¿Puede tocarlo este material?</translation>
        </message>
        <message>
            <source>Measure it once it is mixed: the figure is an estimate.</source>
            <translation>Mídelo una vez mezclado: la cifra es una estimación.</translation>
        </message>
        <message>
            <source>Measure the pH once it is mixed: the figure is an estimate.</source>
            <translation>Mide el pH una vez mezclado: la cifra es una estimación.</translation>
        </message>
        <message>
            <source>Millivolts</source>
            <translation>Milivoltios</translation>
        </message>
        <message>
            <source>Mixed temperature</source>
            <translation>Temperatura de la mezcla</translation>
        </message>
        <message>
            <source>Molar masses</source>
            <translation>Masas molares</translation>
        </message>
        <message>
            <source>Monotone cubic through your marks</source>
            <translation>Cúbica monótona por tus marcas</translation>
        </message>
        <message>
            <source>Nearest whole number of bags</source>
            <translation>Número entero de bolsitas más cercano</translation>
        </message>
        <message>
            <source>Neither sugar nor instruments can settle a legal limit: only a laboratory can. It also goes on rising in a closed bottle. Your local law decides.</source>
            <translation>Ni el azúcar ni los instrumentos pueden resolver un límite legal: solo un laboratorio. Además, sigue subiendo en una botella cerrada. Decide la ley de tu lugar.</translation>
        </message>
        <message>
            <source>Nernst line of the calibration, with the drift since</source>
            <translation>Recta de Nernst de la calibración, con la deriva desde entonces</translation>
        </message>
        <message>
            <source>Never mix bleach with acid, vinegar or kombucha: that sets chlorine gas free.</source>
            <translation>Nunca mezcles lejía con ácido, vinagre o kombucha: libera gas cloro.</translation>
        </message>
        <message>
            <source>Newton's law of cooling, with the room's temperature given</source>
            <translation>Ley de enfriamiento de Newton, con la temperatura de la habitación dada</translation>
        </message>
        <message>
            <source>No</source>
            <translation>No</translation>
        </message>
        <message>
            <source>No drink of this pH can hold so much acid. Please check both.</source>
            <translation>Ninguna bebida con este pH puede llevar tanto ácido. Comprueba ambos.</translation>
        </message>
        <message>
            <source>No drink reads like this on both. Please measure both again.</source>
            <translation>Ninguna bebida da estas lecturas en los dos. Vuelve a medir ambas.</translation>
        </message>
        <message>
            <source>No figure promises that a bottle holds: glass ages and chips. Open one a day, and chill them all in time.</source>
            <translation>Ninguna cifra garantiza que una botella aguante: el vidrio envejece y se desportilla. Abre una al día y enfríalas todas a tiempo.</translation>
        </message>
        <message>
            <source>None</source>
            <translation>Ninguno</translation>
        </message>
        <message>
            <source>Not known</source>
            <translation>No se sabe</translation>
        </message>
        <message>
            <source>Of it sugar</source>
            <translation>De ello azúcar</translation>
        </message>
        <message>
            <source>Of it tea</source>
            <translation>De ello té</translation>
        </message>
        <message>
            <source>Offset at pH 7</source>
            <translation>Desfase a pH 7</translation>
        </message>
        <message>
            <source>On a gauge</source>
            <translation>En un manómetro</translation>
        </message>
        <message>
            <source>On target, at the warmest</source>
            <translation>Según lo previsto, a la temperatura más alta</translation>
        </message>
        <message>
            <source>Once it has settled, {gauge_pressure_bar} holds {volumes}, good to some 4 per cent. A bottle with trapped air holds less.</source>
            <translation>Una vez asentado, {gauge_pressure_bar} retienen {volumes}, con un margen de un 4 por ciento. Una botella con aire atrapado retiene menos.</translation>
        </message>
        <message>
            <source>One bag</source>
            <translation>Una bolsita</translation>
        </message>
        <message>
            <source>One pair of readings of your own drink links the two; then either tells the other.</source>
            <translation>Un par de lecturas de tu propia bebida enlaza las dos; luego cualquiera dice la otra.</translation>
        </message>
        <message>
            <source>Open surface</source>
            <translation>Superficie libre</translation>
        </message>
        <message>
            <source>Open surface, about</source>
            <translation>Superficie libre, cerca de</translation>
        </message>
        <message>
            <source>Paper and string are weighed too.</source>
            <translation>Papel e hilo también se pesan.</translation>
        </message>
        <message>
            <source>Plain arithmetic with the figures you entered; it needs no source.</source>
            <translation>Simple aritmética con las cifras que indicaste; no necesita fuente.</translation>
        </message>
        <message>
            <source>Please choose one of those offered.</source>
            <translation>Elige una de las que se ofrecen.</translation>
        </message>
        <message>
            <source>Please enter a whole number.</source>
            <translation>Indica un número entero.</translation>
        </message>
        <message>
            <source>Please enter at least two readings.</source>
            <translation>Indica al menos dos lecturas.</translation>
        </message>
        <message>
            <source>Please enter the pressure for which the maker rates the bottle.</source>
            <translation>Indica la presión que el fabricante admite para la botella.</translation>
        </message>
        <message>
            <source>Please fill this in.</source>
            <translation>Rellena este campo.</translation>
        </message>
        <message>
            <source>Pour in known amounts, mark the heights; any height between tells its volume.</source>
            <translation>Vierte cantidades conocidas y marca las alturas; cualquier altura intermedia dice su volumen.</translation>
        </message>
        <message>
            <source>Pressure of air and water vapour</source>
            <translation>Presión del aire y del vapor de agua</translation>
        </message>
        <message>
            <source>Price of the sugar</source>
            <translation>Precio del azúcar</translation>
        </message>
        <message>
            <source>Price of the tea</source>
            <translation>Precio del té</translation>
        </message>
        <message>
            <source>Price over pack, times what was used, in exact decimals</source>
            <translation>Precio entre paquete, por lo usado, en decimales exactos</translation>
        </message>
        <message>
            <source>Printed table, straight lines between its rows</source>
            <translation>Tabla impresa, líneas rectas entre sus filas</translation>
        </message>
        <message>
            <source>Published limits and advice</source>
            <translation>Límites y consejos publicados</translation>
        </message>
        <message>
            <source>Rated for, if rated</source>
            <translation>Límite de presión, si lo tiene</translation>
        </message>
        <message>
            <source>Ratio of the Nernst slopes</source>
            <translation>Razón de las pendientes de Nernst</translation>
        </message>
        <message>
            <source>Read from a paper strip?</source>
            <translation>¿Leído en una tira de papel?</translation>
        </message>
        <message>
            <source>Read with</source>
            <translation>Leído con</translation>
        </message>
        <message>
            <source>Reading {n}: minute</source>
            <translation>Lectura {n}: minuto</translation>
        </message>
        <message>
            <source>Reading {n}: temperature</source>
            <translation>Lectura {n}: temperatura</translation>
        </message>
        <message>
            <source>Refraction of dilute alcohol and acid</source>
            <translation>Refracción del alcohol y ácido diluidos</translation>
        </message>
        <message>
            <source>Refractive index of sugar solution by temperature</source>
            <translation>Índice de refracción de la solución de azúcar según la temperatura</translation>
        </message>
        <message>
            <source>Refractometer, in the same sample</source>
            <translation>Refractómetro, en la misma muestra</translation>
        </message>
        <message>
            <source>Room above it</source>
            <translation>Espacio encima</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Saturated under its own gas</source>
            <translation>Saturado bajo su propio gas</translation>
        </message>
        <message>
            <source>Saved against the shop</source>
            <translation>Ahorro frente a la tienda</translation>
        </message>
        <message>
            <source>Second buffer</source>
            <translation>Segundo tampón</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Forma</translation>
        </message>
        <message>
            <source>Share of starter</source>
            <translation>Proporción de iniciador</translation>
        </message>
        <message>
            <source>Share of the whole</source>
            <translation>Proporción del total</translation>
        </message>
        <message>
            <source>Shown in the first</source>
            <translation>Mostrado en el primero</translation>
        </message>
        <message>
            <source>Shown in the second</source>
            <translation>Mostrado en el segundo</translation>
        </message>
        <message>
            <source>Shown in the third</source>
            <translation>Mostrado en el tercero</translation>
        </message>
        <message>
            <source>Slope and offset of the electrode from two or three buffers.</source>
            <translation>Pendiente y desfase del electrodo a partir de dos o tres tampones.</translation>
        </message>
        <message>
            <source>Slope, of the ideal electrode's</source>
            <translation>Pendiente, respecto a la del electrodo ideal</translation>
        </message>
        <message>
            <source>So that the mix ends at the temperature you want, without waiting.</source>
            <translation>Para que la mezcla acabe a la temperatura que quieres, sin esperar.</translation>
        </message>
        <message>
            <source>Solubility of carbon dioxide, with sugar and alcohol</source>
            <translation>Solubilidad del dióxido de carbono, con azúcar y alcohol</translation>
        </message>
        <message>
            <source>Somewhere between {days_low} and {days_high}: only looking at the bottles tells.</source>
            <translation>En algún punto entre {days_low} y {days_high}: solo mirar las botellas lo dice.</translation>
        </message>
        <message>
            <source>Specific gravity 20/20</source>
            <translation>Densidad relativa 20/20</translation>
        </message>
        <message>
            <source>Specific gravity at 20 °C</source>
            <translation>Densidad relativa a 20 °C</translation>
        </message>
        <message>
            <source>Standard atmosphere</source>
            <translation>Atmósfera estándar</translation>
        </message>
        <message>
            <source>Stands above the foot</source>
            <translation>Altura sobre la base</translation>
        </message>
        <message>
            <source>Stands at</source>
            <translation>Llega a</translation>
        </message>
        <message>
            <source>Start pH</source>
            <translation>pH inicial</translation>
        </message>
        <message>
            <source>Start pH with that much</source>
            <translation>pH inicial con esa cantidad</translation>
        </message>
        <message>
            <source>Starter in it</source>
            <translation>Iniciador que contiene</translation>
        </message>
        <message>
            <source>Starter to put in</source>
            <translation>Iniciador que poner</translation>
        </message>
        <message>
            <source>Still to wait, from the latest reading</source>
            <translation>Espera restante, desde la última lectura</translation>
        </message>
        <message>
            <source>Straight lines between the points of the outline</source>
            <translation>Líneas rectas entre los puntos del contorno</translation>
        </message>
        <message>
            <source>Strength of the lye</source>
            <translation>Concentración de la sosa</translation>
        </message>
        <message>
            <source>Strong base that moves it by one pH</source>
            <translation>Base fuerte que lo mueve un pH</translation>
        </message>
        <message>
            <source>Strong-ion excess</source>
            <translation>Exceso de iones fuertes</translation>
        </message>
        <message>
            <source>Strong-ion excess learnt from one pair, kept for the rest</source>
            <translation>Exceso de iones fuertes aprendido de un par, conservado para el resto</translation>
        </message>
        <message>
            <source>Strong-ion excess of the pair</source>
            <translation>Exceso de iones fuertes del par</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Sugar I add, if I know</source>
            <translation>Azúcar que añado, si lo sé</translation>
        </message>
        <message>
            <source>Sugar at the start</source>
            <translation>Azúcar al principio</translation>
        </message>
        <message>
            <source>Sugar in a litre</source>
            <translation>Azúcar en un litro</translation>
        </message>
        <message>
            <source>Sugar in a litre at 20 °C</source>
            <translation>Azúcar en un litro a 20 °C</translation>
        </message>
        <message>
            <source>Sugar in cups and spoons</source>
            <translation>Azúcar en tazas y cucharas</translation>
        </message>
        <message>
            <source>Sugar in the drink</source>
            <translation>Azúcar en la bebida</translation>
        </message>
        <message>
            <source>Sugar in the fruit, at least</source>
            <translation>Azúcar en la fruta, como mínimo</translation>
        </message>
        <message>
            <source>Sugar in the fruit, at most</source>
            <translation>Azúcar en la fruta, como máximo</translation>
        </message>
        <message>
            <source>Sugar in the sweet tea</source>
            <translation>Azúcar en el té azucarado</translation>
        </message>
        <message>
            <source>Sugar left in the drink, fruit and added sugar are one and the same to the yeast.</source>
            <translation>Para la levadura es lo mismo el azúcar que queda en la bebida, el de la fruta y el añadido.</translation>
        </message>
        <message>
            <source>Sugar left, at least</source>
            <translation>Azúcar restante, como mínimo</translation>
        </message>
        <message>
            <source>Sugar left, at most</source>
            <translation>Azúcar restante, como máximo</translation>
        </message>
        <message>
            <source>Sugar left, likely</source>
            <translation>Azúcar restante, probable</translation>
        </message>
        <message>
            <source>Sugar raises both readings, alcohol raises one and lowers the other.</source>
            <translation>El azúcar sube ambas lecturas; el alcohol sube una y baja la otra.</translation>
        </message>
        <message>
            <source>Sugar still in it, at least</source>
            <translation>Azúcar que aún contiene, como mínimo</translation>
        </message>
        <message>
            <source>Sugar still in it, at most</source>
            <translation>Azúcar que aún contiene, como máximo</translation>
        </message>
        <message>
            <source>Sugar stirred in</source>
            <translation>Azúcar disuelto</translation>
        </message>
        <message>
            <source>Sugar to add</source>
            <translation>Azúcar que añadir</translation>
        </message>
        <message>
            <source>Sugar to add to all of it</source>
            <translation>Azúcar que añadir al total</translation>
        </message>
        <message>
            <source>Sugar to add, the pressure it makes, and the worst case if nobody chills.</source>
            <translation>El azúcar que añadir, la presión que crea y el peor caso si nadie enfría.</translation>
        </message>
        <message>
            <source>Sugar to ferment</source>
            <translation>Azúcar para fermentar</translation>
        </message>
        <message>
            <source>Sugar used</source>
            <translation>Azúcar usado</translation>
        </message>
        <message>
            <source>Sugar used up in a litre each day</source>
            <translation>Azúcar consumido en un litro cada día</translation>
        </message>
        <message>
            <source>Surface to volume</source>
            <translation>Superficie por volumen</translation>
        </message>
        <message>
            <source>Swelling of the drink</source>
            <translation>Dilatación de la bebida</translation>
        </message>
        <message>
            <source>TA NaOH sodium hydroxide phenolphthalein end point tartaric</source>
            <translation>acidez titulable NaOH hidróxido sódico sosa fenolftaleína punto final tartárico</translation>
        </message>
        <message>
            <source>TA titratable paired relation convert</source>
            <translation>acidez titulable par relación convertir</translation>
        </message>
        <message>
            <source>Take up to {hot} of the water hot and the rest cold, and it should come out near {target_c}, give or take what vessel and losses do. Measure before the culture goes in.</source>
            <translation>Usa hasta {hot} del agua caliente y el resto fría, y debería quedar cerca de {target_c}, con el margen que den el recipiente y las pérdidas. Mide antes de que entre el cultivo.</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>Tea and starter</source>
            <translation>Té e iniciador</translation>
        </message>
        <message>
            <source>Tea bags</source>
            <translation>Bolsitas de té</translation>
        </message>
        <message>
            <source>Tea in one bag</source>
            <translation>Té en una bolsita</translation>
        </message>
        <message>
            <source>Tea in the sweet tea</source>
            <translation>Té en el té azucarado</translation>
        </message>
        <message>
            <source>Tea to a litre of drink</source>
            <translation>Té por litro de bebida</translation>
        </message>
        <message>
            <source>Tea used</source>
            <translation>Té usado</translation>
        </message>
        <message>
            <source>Tea wanted</source>
            <translation>Té deseado</translation>
        </message>
        <message>
            <source>Temperature</source>
            <translation>Temperatura</translation>
        </message>
        <message>
            <source>Temperature of the bottle</source>
            <translation>Temperatura de la botella</translation>
        </message>
        <message>
            <source>Temperature of the buffers</source>
            <translation>Temperatura de los tampones</translation>
        </message>
        <message>
            <source>Temperature of the drink</source>
            <translation>Temperatura de la bebida</translation>
        </message>
        <message>
            <source>Temperature of the ice</source>
            <translation>Temperatura del hielo</translation>
        </message>
        <message>
            <source>Temperature of the liquid</source>
            <translation>Temperatura del líquido</translation>
        </message>
        <message>
            <source>Temperature of the room</source>
            <translation>Temperatura de la habitación</translation>
        </message>
        <message>
            <source>Temperature of the sugar</source>
            <translation>Temperatura del azúcar</translation>
        </message>
        <message>
            <source>Temperature reached</source>
            <translation>Temperatura alcanzada</translation>
        </message>
        <message>
            <source>Temperature there</source>
            <translation>Temperatura allí</translation>
        </message>
        <message>
            <source>That is {bags} for {mass_g}.</source>
            <translation>Son {bags} para {mass_g}.</translation>
        </message>
        <message>
            <source>The acidity to tell the pH for</source>
            <translation>La acidez para la que decir el pH</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>La cantidad</translation>
        </message>
        <message>
            <source>The amount of starter that brings tea and starter together to a pH you want.</source>
            <translation>La cantidad de iniciador que lleva té e iniciador juntos al pH que quieres.</translation>
        </message>
        <message>
            <source>The batch gives</source>
            <translation>El lote da</translation>
        </message>
        <message>
            <source>The boiling point of water by altitude, in ordinary weather.</source>
            <translation>El punto de ebullición del agua según la altitud, con tiempo normal.</translation>
        </message>
        <message>
            <source>The bottles stand at</source>
            <translation>Las botellas están a</translation>
        </message>
        <message>
            <source>The buffers must lie at least one pH apart.</source>
            <translation>Los tampones deben distar al menos un pH.</translation>
        </message>
        <message>
            <source>The carbon dioxide in a drink that has settled under a gauge pressure.</source>
            <translation>El dióxido de carbono de una bebida asentada bajo una presión manométrica.</translation>
        </message>
        <message>
            <source>The doubt of a paper strip, or of a meter nobody calibrated.</source>
            <translation>La duda de una tira de papel, o de un medidor que nadie calibró.</translation>
        </message>
        <message>
            <source>The drink's pH</source>
            <translation>El pH de la bebida</translation>
        </message>
        <message>
            <source>The electrode gives {slope} of the ideal slope and is {offset} off at pH 7.</source>
            <translation>El electrodo da {slope} de la pendiente ideal y se desvía {offset} a pH 7.</translation>
        </message>
        <message>
            <source>The figure stays between nothing and all of the water: outside, no share of hot water gives that temperature.</source>
            <translation>La cifra queda entre nada y toda el agua: fuera de ahí, ninguna proporción de agua caliente da esa temperatura.</translation>
        </message>
        <message>
            <source>The gauge on a bottle shows this. Is it too much?</source>
            <translation>El manómetro de una botella muestra esto. ¿Es demasiado?</translation>
        </message>
        <message>
            <source>The gauge pressure over a drink that holds so many volumes of carbon dioxide.</source>
            <translation>La presión manométrica sobre una bebida que retiene tantos volúmenes de dióxido de carbono.</translation>
        </message>
        <message>
            <source>The gauge shows</source>
            <translation>El manómetro muestra</translation>
        </message>
        <message>
            <source>The higher figure counts against the bottle: trapped air needs hours to days to dissolve.</source>
            <translation>La cifra más alta cuenta contra la botella: el aire atrapado tarda de horas a días en disolverse.</translation>
        </message>
        <message>
            <source>The highest mark holds</source>
            <translation>La marca más alta contiene</translation>
        </message>
        <message>
            <source>The hydrometer may be off by</source>
            <translation>El densímetro puede desviarse</translation>
        </message>
        <message>
            <source>The ice is water too: count it in, and use only ice that is good to drink.</source>
            <translation>El hielo también es agua: cuéntalo, y usa solo hielo apto para beber.</translation>
        </message>
        <message>
            <source>The ice is water too: leave that much out of the cold water.</source>
            <translation>El hielo también es agua: quita esa cantidad del agua fría.</translation>
        </message>
        <message>
            <source>The ice that brings hot tea to a temperature at once.</source>
            <translation>El hielo que lleva el té caliente a una temperatura de inmediato.</translation>
        </message>
        <message>
            <source>The least must be below the likely figure, the most above it.</source>
            <translation>El mínimo debe estar por debajo de la cifra probable, y el máximo por encima.</translation>
        </message>
        <message>
            <source>The limit</source>
            <translation>El límite</translation>
        </message>
        <message>
            <source>The limit you chose</source>
            <translation>El límite que elegiste</translation>
        </message>
        <message>
            <source>The meter shows</source>
            <translation>El medidor muestra</translation>
        </message>
        <message>
            <source>The meter shows in the drink</source>
            <translation>El medidor muestra en la bebida</translation>
        </message>
        <message>
            <source>The meter takes it for</source>
            <translation>El medidor la toma por</translation>
        </message>
        <message>
            <source>The more surface for its volume, the faster it sours. Neck and foot follow fixed proportions; for an odd vessel measure a table of your own.</source>
            <translation>Cuanta más superficie por volumen, más rápido se acidifica. Cuello y base siguen proporciones fijas; para un recipiente raro, mide tu propia tabla.</translation>
        </message>
        <message>
            <source>The most carbon dioxide that an open jar holds before it is bottled.</source>
            <translation>El máximo de dióxido de carbono que retiene un frasco abierto antes del embotellado.</translation>
        </message>
        <message>
            <source>The pH of a finished drink, with the doubt of the reading counted in.</source>
            <translation>El pH de una bebida terminada, con la duda de la lectura incluida.</translation>
        </message>
        <message>
            <source>The pH of sweet tea and a given amount of starter, once they are mixed.</source>
            <translation>El pH del té azucarado y una cantidad dada de iniciador, una vez mezclados.</translation>
        </message>
        <message>
            <source>The pH to tell the acidity for</source>
            <translation>El pH para el que decir la acidez</translation>
        </message>
        <message>
            <source>The part of a Brix or gravity reading that is no sugar.</source>
            <translation>La parte de una lectura de Brix o densidad que no es azúcar.</translation>
        </message>
        <message>
            <source>The pot has not cooled between the readings. Please check them.</source>
            <translation>La olla no se ha enfriado entre las lecturas. Compruébalas.</translation>
        </message>
        <message>
            <source>The range that the lost sugar can have left behind.</source>
            <translation>El intervalo que el azúcar perdido puede haber dejado.</translation>
        </message>
        <message>
            <source>The reading and its doubt together count.</source>
            <translation>La lectura y su duda cuentan juntas.</translation>
        </message>
        <message>
            <source>The readings must be taken at different moments.</source>
            <translation>Las lecturas deben tomarse en momentos distintos.</translation>
        </message>
        <message>
            <source>The refractometer may be off by</source>
            <translation>El refractómetro puede desviarse</translation>
        </message>
        <message>
            <source>The rinse holds about {ppm}; a bottle of bleach loses strength with age.</source>
            <translation>El enjuague lleva cerca de {ppm}; un envase de lejía pierde fuerza con el tiempo.</translation>
        </message>
        <message>
            <source>The same in kilojoules</source>
            <translation>Lo mismo en kilojulios</translation>
        </message>
        <message>
            <source>The shop's bottle holds</source>
            <translation>La botella de la tienda contiene</translation>
        </message>
        <message>
            <source>The starter's pH is assumed from its taste or acidity: measuring it makes this sharper.</source>
            <translation>El pH del iniciador se supone por su sabor o acidez: medirlo lo hace más preciso.</translation>
        </message>
        <message>
            <source>The strong-ion excess is what tea, water and fruit bring as potassium, sodium, calcium and magnesium, less chloride and sulfate. A ripe starter has some 4 meq/L; that is an assumption.</source>
            <translation>El exceso de iones fuertes es lo que té, agua y fruta aportan como potasio, sodio, calcio y magnesio, menos cloruro y sulfato. Un iniciador maduro tiene unos 4 meq/L; es una suposición.</translation>
        </message>
        <message>
            <source>The sugar adds</source>
            <translation>El azúcar añade</translation>
        </message>
        <message>
            <source>The sugar's pack holds</source>
            <translation>El paquete de azúcar contiene</translation>
        </message>
        <message>
            <source>The tea's pack holds</source>
            <translation>El paquete de té contiene</translation>
        </message>
        <message>
            <source>The temperature of the sweet tea, held against your own limit.</source>
            <translation>La temperatura del té azucarado, comparada con tu propio límite.</translation>
        </message>
        <message>
            <source>The temperature once hot tea, cold water and sugar are stirred together.</source>
            <translation>La temperatura una vez mezclados té caliente, agua fría y azúcar.</translation>
        </message>
        <message>
            <source>The temperature where the finished drink stands.</source>
            <translation>La temperatura donde está la bebida terminada.</translation>
        </message>
        <message>
            <source>The usual temperature of the place where it stands.</source>
            <translation>La temperatura habitual del lugar donde está.</translation>
        </message>
        <message>
            <source>The voltage must fall as the pH rises. Are two readings swapped?</source>
            <translation>El voltaje debe bajar al subir el pH. ¿Hay dos lecturas intercambiadas?</translation>
        </message>
        <message>
            <source>The volume of water once sugar is dissolved in it.</source>
            <translation>El volumen del agua con azúcar disuelto en ella.</translation>
        </message>
        <message>
            <source>The volume up to a height above the foot.</source>
            <translation>El volumen hasta una altura sobre la base.</translation>
        </message>
        <message>
            <source>The water alone</source>
            <translation>El agua sola</translation>
        </message>
        <message>
            <source>The water's alkalinity is assumed; a test strip or the supplier's report tells it.</source>
            <translation>La alcalinidad del agua se supone; una tira de prueba o el informe del proveedor la dice.</translation>
        </message>
        <message>
            <source>The whole batch</source>
            <translation>Todo el lote</translation>
        </message>
        <message>
            <source>There is nothing to note about that yet.</source>
            <translation>Aún no hay nada que anotar sobre eso.</translation>
        </message>
        <message>
            <source>These are more than can be used.</source>
            <translation>Son más de las que se pueden usar.</translation>
        </message>
        <message>
            <source>These bottles must not pass</source>
            <translation>Estas botellas no deben pasar de</translation>
        </message>
        <message>
            <source>They weigh</source>
            <translation>Pesan</translation>
        </message>
        <message>
            <source>Third buffer, if any</source>
            <translation>Tercer tampón, si lo hay</translation>
        </message>
        <message>
            <source>This bottle is not made for pressure, so there is no pressure it may be under. Please use bottles made for fizzy drinks.</source>
            <translation>Esta botella no está hecha para presión, así que no hay ninguna presión que pueda soportar. Usa botellas hechas para bebidas con gas.</translation>
        </message>
        <message>
            <source>This cannot be. Please check it.</source>
            <translation>Esto no puede ser. Compruébalo.</translation>
        </message>
        <message>
            <source>This figure was not read as such in a source: see where it comes from.</source>
            <translation>Esta cifra no se leyó tal cual en una fuente: mira de dónde viene.</translation>
        </message>
        <message>
            <source>This goes beyond what was measured, so trust it less.</source>
            <translation>Esto va más allá de lo medido, así que fíate menos.</translation>
        </message>
        <message>
            <source>This is not a number that can be measured.</source>
            <translation>Este no es un número que se pueda medir.</translation>
        </message>
        <message>
            <source>This is what the chemistry takes. The planner never takes less than published advice does, so that the live culture is strong enough.</source>
            <translation>Esto es lo que exige la química. El planificador nunca toma menos de lo que aconsejan las publicaciones, para que el cultivo vivo sea lo bastante fuerte.</translation>
        </message>
        <message>
            <source>This meter would be between pH {ph_low} and {ph_high} about 8 times in 10.</source>
            <translation>Este medidor estaría entre pH {ph_low} y {ph_high} cerca de 8 de cada 10 veces.</translation>
        </message>
        <message>
            <source>This must be above nothing.</source>
            <translation>Debe ser mayor que cero.</translation>
        </message>
        <message>
            <source>This must be above {low}.</source>
            <translation>Debe ser mayor que {low}.</translation>
        </message>
        <message>
            <source>This must be at most {high}.</source>
            <translation>Debe ser como máximo {high}.</translation>
        </message>
        <message>
            <source>This must lie between {low} and {high}.</source>
            <translation>Debe estar entre {low} y {high}.</translation>
        </message>
        <message>
            <source>This starter is</source>
            <translation>Este iniciador es</translation>
        </message>
        <message>
            <source>This very figure was read in a source.</source>
            <translation>Esta misma cifra se leyó en una fuente.</translation>
        </message>
        <message>
            <source>Titratable acidity to pH 8.1, as acetic acid</source>
            <translation>Acidez titulable hasta pH 8.1, como ácido acético</translation>
        </message>
        <message>
            <source>Titratable acidity, as acetic acid</source>
            <translation>Acidez titulable, como ácido acético</translation>
        </message>
        <message>
            <source>To bottle</source>
            <translation>Por embotellar</translation>
        </message>
        <message>
            <source>To make, starter included</source>
            <translation>Por preparar, iniciador incluido</translation>
        </message>
        <message>
            <source>Together</source>
            <translation>En conjunto</translation>
        </message>
        <message>
            <source>Told as</source>
            <translation>Expresada como</translation>
        </message>
        <message>
            <source>Too much on a hydrometer</source>
            <translation>De más en un densímetro</translation>
        </message>
        <message>
            <source>Too much on a refractometer</source>
            <translation>De más en un refractómetro</translation>
        </message>
        <message>
            <source>Two laboratories with good meters still differ by about 0.1.</source>
            <translation>Dos laboratorios con buenos medidores aún difieren en cerca de 0.1.</translation>
        </message>
        <message>
            <source>Two readings, two unknowns: sugar and alcohol</source>
            <translation>Dos lecturas, dos incógnitas: azúcar y alcohol</translation>
        </message>
        <message>
            <source>US cup, a sixteenth of a gallon of 231 cubic inches</source>
            <translation>Taza de EE. UU., un dieciseisavo de un galón de 231 pulgadas cúbicas</translation>
        </message>
        <message>
            <source>US cups and spoons that add up to about an amount.</source>
            <translation>Tazas y cucharas de EE. UU. que suman cerca de una cantidad.</translation>
        </message>
        <message>
            <source>Up to {height_cm} it holds {volume}, if it is shaped as this program assumes.</source>
            <translation>Hasta {height_cm} contiene {volume}, si tiene la forma que supone este programa.</translation>
        </message>
        <message>
            <source>Usual doubt of such a reading</source>
            <translation>Duda habitual de una lectura así</translation>
        </message>
        <message>
            <source>Vapour pressure of water</source>
            <translation>Presión de vapor del agua</translation>
        </message>
        <message>
            <source>Vessel and losses on the way are not known; the range allows for a little of both.</source>
            <translation>El recipiente y las pérdidas por el camino no se conocen; el intervalo deja un poco para ambos.</translation>
        </message>
        <message>
            <source>Vessels</source>
            <translation>Recipientes</translation>
        </message>
        <message>
            <source>Volume by my own marks</source>
            <translation>Volumen según mis propias marcas</translation>
        </message>
        <message>
            <source>Volumes of carbon dioxide</source>
            <translation>Volúmenes de dióxido de carbono</translation>
        </message>
        <message>
            <source>Wanted</source>
            <translation>Deseada</translation>
        </message>
        <message>
            <source>Wanted once mixed</source>
            <translation>Deseada una vez mezclado</translation>
        </message>
        <message>
            <source>Warmest for the culture</source>
            <translation>Máxima para el cultivo</translation>
        </message>
        <message>
            <source>Warmest since it last made gas</source>
            <translation>Temperatura máxima desde que dejó de hacer gas</translation>
        </message>
        <message>
            <source>Warmest the open jar was</source>
            <translation>Temperatura máxima del frasco abierto</translation>
        </message>
        <message>
            <source>Warmest they may get</source>
            <translation>Temperatura máxima que pueden alcanzar</translation>
        </message>
        <message>
            <source>Water</source>
            <translation>Agua</translation>
        </message>
        <message>
            <source>Water added in the titration glass is no dilution: only what was poured away counts.</source>
            <translation>El agua añadida en el vaso de titulación no diluye: solo cuenta lo que se tiró.</translation>
        </message>
        <message>
            <source>Water boils at</source>
            <translation>El agua hierve a</translation>
        </message>
        <message>
            <source>Water in all</source>
            <translation>Agua en total</translation>
        </message>
        <message>
            <source>Weigh several at once: a kitchen scale is too coarse for a single bag.</source>
            <translation>Pesa varias a la vez: una balanza de cocina es demasiado imprecisa para una sola bolsita.</translation>
        </message>
        <message>
            <source>Weighing is better: how tightly a cup is filled changes it by a few per cent.</source>
            <translation>Pesar es mejor: lo apretada que esté la taza lo cambia en un pequeño porcentaje.</translation>
        </message>
        <message>
            <source>Weight over count, one step of the scale either way</source>
            <translation>Peso entre número, una división de la balanza arriba o abajo</translation>
        </message>
        <message>
            <source>What acidity does my titration show?</source>
            <translation>¿Qué acidez da mi titulación?</translation>
        </message>
        <message>
            <source>What acidity goes with a pH?</source>
            <translation>¿Qué acidez corresponde a un pH?</translation>
        </message>
        <message>
            <source>What bottles may be put under</source>
            <translation>Qué presión pueden soportar las botellas</translation>
        </message>
        <message>
            <source>What do alcohol and acid add to a reading?</source>
            <translation>¿Qué añaden alcohol y ácido a una lectura?</translation>
        </message>
        <message>
            <source>What does a glass hold?</source>
            <translation>¿Qué contiene un vaso?</translation>
        </message>
        <message>
            <source>What does a litre cost?</source>
            <translation>¿Qué cuesta un litro?</translation>
        </message>
        <message>
            <source>What does one of my tea bags hold?</source>
            <translation>¿Qué contiene una de mis bolsitas de té?</translation>
        </message>
        <message>
            <source>What does temperature compensation do?</source>
            <translation>¿Qué hace la compensación de temperatura?</translation>
        </message>
        <message>
            <source>What is the limit for…?</source>
            <translation>¿Cuál es el límite de…?</translation>
        </message>
        <message>
            <source>What pH goes with an acidity?</source>
            <translation>¿Qué pH corresponde a una acidez?</translation>
        </message>
        <message>
            <source>What pH has a buffer at this temperature?</source>
            <translation>¿Qué pH tiene un tampón a esta temperatura?</translation>
        </message>
        <message>
            <source>What pH has a mixture of acids?</source>
            <translation>¿Qué pH tiene una mezcla de ácidos?</translation>
        </message>
        <message>
            <source>What pH is behind a raw reading?</source>
            <translation>¿Qué pH hay detrás de una lectura en bruto?</translation>
        </message>
        <message>
            <source>What pH will my blend start at?</source>
            <translation>¿Con qué pH empezará mi mezcla?</translation>
        </message>
        <message>
            <source>What pressure for so much fizz?</source>
            <translation>¿Qué presión para tanto gas?</translation>
        </message>
        <message>
            <source>What pressure is in the closed bottle?</source>
            <translation>¿Qué presión hay en la botella cerrada?</translation>
        </message>
        <message>
            <source>What sour liquid stands in for weeks.</source>
            <translation>En qué está durante semanas un líquido ácido.</translation>
        </message>
        <message>
            <source>What the floating glass would show at 20 °C, and what that means.</source>
            <translation>Lo que mostraría el densímetro a 20 °C, y lo que eso significa.</translation>
        </message>
        <message>
            <source>What the instrument would show at 20 °C, and what that means.</source>
            <translation>Lo que mostraría el instrumento a 20 °C, y lo que eso significa.</translation>
        </message>
        <message>
            <source>What the tea itself brings is assumed from few published figures.</source>
            <translation>Lo que aporta el té en sí se supone a partir de pocas cifras publicadas.</translation>
        </message>
        <message>
            <source>What was entered does not settle this, so no answer is given.</source>
            <translation>Lo que indicaste no lo aclara, así que no se da respuesta.</translation>
        </message>
        <message>
            <source>When is it cool enough for the culture?</source>
            <translation>¿Cuándo estará lo bastante frío para el cultivo?</translation>
        </message>
        <message>
            <source>Where does my mark for an amount go?</source>
            <translation>¿Dónde va mi marca para una cantidad?</translation>
        </message>
        <message>
            <source>Where your local rules ask for more, follow them.</source>
            <translation>Donde tus normas locales pidan más, síguelas.</translation>
        </message>
        <message>
            <source>White sugar, about</source>
            <translation>Azúcar blanco, cerca de</translation>
        </message>
        <message>
            <source>Whole bags nearest to a weight of tea, by the weight of your own bags.</source>
            <translation>Bolsitas enteras más cercanas a un peso de té, según el peso de tus propias bolsitas.</translation>
        </message>
        <message>
            <source>Why the surface matters</source>
            <translation>Por qué importa la superficie</translation>
        </message>
        <message>
            <source>Widest inner diameter</source>
            <translation>Mayor diámetro interior</translation>
        </message>
        <message>
            <source>With the usual doubts of drops, syringe and lye it lies between {told_low} and {told_high} about 8 times in 10.</source>
            <translation>Con las dudas habituales de gotas, jeringa y sosa está entre {told_low} y {told_high} cerca de 8 de cada 10 veces.</translation>
        </message>
        <message>
            <source>With two buffers the line goes through both: only a third one can show that something is wrong.</source>
            <translation>Con dos tampones la recta pasa por ambos: solo un tercero puede mostrar que algo va mal.</translation>
        </message>
        <message>
            <source>Without any air. Below zero means that the drink would take up more gas from its own kind than the room's pressure gives.</source>
            <translation>Sin nada de aire. Por debajo de cero significa que la bebida absorbería más gas del suyo que el que da la presión de la habitación.</translation>
        </message>
        <message>
            <source>Without compensation it shows too much by</source>
            <translation>Sin compensación muestra de más</translation>
        </message>
        <message>
            <source>Without compensation the reading is off by {error}; a minus sign means that it shows too little.</source>
            <translation>Sin compensación la lectura se desvía {error}; un signo menos significa que muestra de menos.</translation>
        </message>
        <message>
            <source>Worst buffer off the line, in pH</source>
            <translation>Peor tampón fuera de la recta, en pH</translation>
        </message>
        <message>
            <source>Yes</source>
            <translation>Sí</translation>
        </message>
        <message>
            <source>Your limit</source>
            <translation>Tu límite</translation>
        </message>
        <message>
            <source>altitude height mountain steep</source>
            <translation>altitud altura montaña infusionar</translation>
        </message>
        <message>
            <source>an assumption of this program</source>
            <translation>una suposición de este programa</translation>
        </message>
        <message>
            <source>blend acetic gluconic lactic malic citric vinegar charge balance</source>
            <translation>mezcla acético glucónico láctico málico cítrico vinagre balance de cargas</translation>
        </message>
        <message>
            <source>caffeine leaf black green tea</source>
            <translation>cafeína hoja té negro verde</translation>
        </message>
        <message>
            <source>calibration electrode millivolt correct age drift</source>
            <translation>calibración electrodo milivoltio corregir edad deriva</translation>
        </message>
        <message>
            <source>calibration electrode slope offset nernst probe replace</source>
            <translation>calibración electrodo pendiente desfase nernst sonda cambiar</translation>
        </message>
        <message>
            <source>calibration solution phthalate phosphate borate 4.01 7.00 6.86</source>
            <translation>calibración solución ftalato fosfato borato 4.01 7.00 6.86</translation>
        </message>
        <message>
            <source>chill ice cubes melt quick cooling</source>
            <translation>enfriar hielo cubitos derretir enfriamiento rápido</translation>
        </message>
        <message>
            <source>chill ice cubes quick cooling target</source>
            <translation>enfriar hielo cubitos enfriamiento rápido objetivo</translation>
        </message>
        <message>
            <source>common practice, no source</source>
            <translation>práctica habitual, sin fuente</translation>
        </message>
        <message>
            <source>convert conversion plato sucrose density SG Brix grams per litre</source>
            <translation>convertir conversión plato sacarosa densidad SG Brix gramos por litro</translation>
        </message>
        <message>
            <source>cooling curve wait time newton minutes safe</source>
            <translation>enfriamiento curva espera tiempo newton minutos seguro</translation>
        </message>
        <message>
            <source>days conditioning second fermentation speed</source>
            <translation>días segunda fermentación velocidad</translation>
        </message>
        <message>
            <source>deadline seven days slow safe discard</source>
            <translation>plazo siete días lento seguro desechar</translation>
        </message>
        <message>
            <source>derived</source>
            <translation>derivado</translation>
        </message>
        <message>
            <source>ethanol ABV legal limit 0.5 percent balance</source>
            <translation>etanol ABV límite legal 0.5 por ciento balance</translation>
        </message>
        <message>
            <source>ethanol ABV legal limit 0.5 percent paired gravity Brix</source>
            <translation>etanol ABV límite legal 0.5 por ciento par densidad Brix</translation>
        </message>
        <message>
            <source>ethanol apparent refractometer hydrometer effect</source>
            <translation>etanol aparente refractómetro densímetro efecto</translation>
        </message>
        <message>
            <source>fill table measured marks crock odd shape calibrate</source>
            <translation>llenar tabla medido marcas tinaja forma rara calibrar</translation>
        </message>
        <message>
            <source>fill table measured marks height ruler</source>
            <translation>llenar tabla medido marcas altura regla</translation>
        </message>
        <message>
            <source>from memory, not confirmed</source>
            <translation>de memoria, sin confirmar</translation>
        </message>
        <message>
            <source>fruit juice pasteurised second fermentation</source>
            <translation>fruta jugo pasteurizado segunda fermentación</translation>
        </message>
        <message>
            <source>gravity SG correction reading</source>
            <translation>densidad SG corrección lectura</translation>
        </message>
        <message>
            <source>height headspace surface ratio air fill</source>
            <translation>altura espacio de cabeza superficie relación aire llenado</translation>
        </message>
        <message>
            <source>height volume measure level</source>
            <translation>altura volumen medir nivel</translation>
        </message>
        <message>
            <source>hot cold share mixing target</source>
            <translation>caliente frío proporción mezclar objetivo</translation>
        </message>
        <message>
            <source>kitchen measure cup tablespoon teaspoon</source>
            <translation>cocina medida taza cuchara cucharadita</translation>
        </message>
        <message>
            <source>kitchen measure leaf count</source>
            <translation>cocina medida hoja número</translation>
        </message>
        <message>
            <source>kitchen measure tablespoon teaspoon cup</source>
            <translation>cocina medida cuchara cucharadita taza</translation>
        </message>
        <message>
            <source>least and most reckoned</source>
            <translation>mínimo y máximo calculados</translation>
        </message>
        <message>
            <source>mix blend estimate first day</source>
            <translation>mezcla estimación primer día</translation>
        </message>
        <message>
            <source>mixing temperature blend concentrate</source>
            <translation>mezcla temperatura mezclar concentrado</translation>
        </message>
        <message>
            <source>never: too little sugar</source>
            <translation>nunca: muy poco azúcar</translation>
        </message>
        <message>
            <source>none</source>
            <translation>ninguno</translation>
        </message>
        <message>
            <source>not even with all the sugar</source>
            <translation>ni siquiera con todo el azúcar</translation>
        </message>
        <message>
            <source>nutrition label energy calories kcal sugar caffeine serving</source>
            <translation>nutrición etiqueta energía calorías kcal azúcar cafeína ración</translation>
        </message>
        <message>
            <source>over 8 bar</source>
            <translation>más de 8 bar</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>pH 4.2 limit</source>
            <translation>pH 4.2 límite</translation>
        </message>
        <message>
            <source>pH of the buffer</source>
            <translation>pH del tampón</translation>
        </message>
        <message>
            <source>pH of the drink</source>
            <translation>pH de la bebida</translation>
        </message>
        <message>
            <source>pH of the end point</source>
            <translation>pH del punto final</translation>
        </message>
        <message>
            <source>pH of the starter, if measured</source>
            <translation>pH del iniciador, si está medido</translation>
        </message>
        <message>
            <source>pH to start at</source>
            <translation>pH con el que empezar</translation>
        </message>
        <message>
            <source>pH, before it is calibrated</source>
            <translation>pH, antes de calibrarlo</translation>
        </message>
        <message>
            <source>pH, of the pair you measured</source>
            <translation>pH, del par que mediste</translation>
        </message>
        <message>
            <source>pasteurise heat stop yeast</source>
            <translation>pasteurizar calor parar levadura</translation>
        </message>
        <message>
            <source>pressure bar psi chill burst</source>
            <translation>presión bar psi enfriar reventar</translation>
        </message>
        <message>
            <source>price money per bottle saved shop</source>
            <translation>precio dinero por botella ahorro tienda</translation>
        </message>
        <message>
            <source>priming second fermentation F2 fruit carbonation burst pressure</source>
            <translation>azúcar segunda fermentación F2 fruta carbonatación reventar presión</translation>
        </message>
        <message>
            <source>read as others quote it</source>
            <translation>leído según lo citan otros</translation>
        </message>
        <message>
            <source>read in the source itself</source>
            <translation>leído en la propia fuente</translation>
        </message>
        <message>
            <source>refrigerator fridge temperature</source>
            <translation>refrigerador nevera frigorífico temperatura</translation>
        </message>
        <message>
            <source>residual CO2 saturated bottling</source>
            <translation>CO2 residual saturado embotellado</translation>
        </message>
        <message>
            <source>safety limits table source</source>
            <translation>seguridad límites tabla fuente</translation>
        </message>
        <message>
            <source>sanitise sanitize clean bleach ppm</source>
            <translation>desinfectar limpiar lejía ppm</translation>
        </message>
        <message>
            <source>serving amount drink pregnancy children</source>
            <translation>ración cantidad beber embarazo niños</translation>
        </message>
        <message>
            <source>shelf life storage days</source>
            <translation>conservación almacenamiento días</translation>
        </message>
        <message>
            <source>strip paper uncertainty accuracy error</source>
            <translation>tira papel incertidumbre exactitud error</translation>
        </message>
        <message>
            <source>temperature room cold warm</source>
            <translation>temperatura habitación frío cálido</translation>
        </message>
        <message>
            <source>temperature warm hot pellicle starter</source>
            <translation>temperatura cálido caliente película iniciador</translation>
        </message>
        <message>
            <source>time days old vinegar</source>
            <translation>tiempo días viejo vinagre</translation>
        </message>
        <message>
            <source>time hours cooling tea germs</source>
            <translation>tiempo horas enfriamiento té gérmenes</translation>
        </message>
        <message>
            <source>vessel lead glaze ceramic metal plastic wood crystal</source>
            <translation>recipiente plomo esmalte cerámica metal plástico madera cristal</translation>
        </message>
        <message>
            <source>vinegary mild weak grade quality</source>
            <translation>avinagrado suave débil grado calidad</translation>
        </message>
        <message>
            <source>volume added dissolve syrup</source>
            <translation>volumen añadido disolver jarabe</translation>
        </message>
        <message>
            <source>weigh scale leaf</source>
            <translation>pesar balanza hoja</translation>
        </message>
        <message>
            <source>without bound: no room is left</source>
            <translation>sin tope: no queda espacio</translation>
        </message>
        <message>
            <source>{asked_l} stands {height} above the foot.</source>
            <translation>{asked_l} llegan a {height} sobre la base.</translation>
        </message>
        <message>
            <source>{hours} h {minutes} min</source>
            <translation>{hours} h {minutes} min</translation>
        </message>
        <message>
            <source>{low} to {high}</source>
            <translation>{low} a {high}</translation>
        </message>
        <message>
            <source>{mass_g} of white sugar is about {spoons}, level, good to some 5 %.</source>
            <translation>{mass_g} de azúcar blanco son cerca de {spoons}, al ras, con un margen de un 5 %.</translation>
        </message>
        <message>
            <source>{volume_low} to {volume_high}, with the doubt of ruler and measuring jug.</source>
            <translation>{volume_low} a {volume_high}, con la duda de regla y jarra medidora.</translation>
        </message>
        <message>
            <source>{volume_l} for {total} in all, {litre} a litre. Starter, culture and your time count as free.</source>
            <translation>{volume_l} por {total} en total, {litre} el litro. Iniciador, cultivo y tu tiempo cuentan como gratis.</translation>
        </message>
        <message>
            <source>{volume_l} gives {kcal_low} to {kcal_high}. For your own information: a label for sale needs a laboratory.</source>
            <translation>{volume_l} dan de {kcal_low} a {kcal_high}. Para tu propia información: una etiqueta para la venta requiere un laboratorio.</translation>
        </message>
        <message>
            <source>{volume_l} is about {cups}, level.</source>
            <translation>{volume_l} son cerca de {cups}, al ras.</translation>
        </message>
        <message>
            <source>{volume_l} stands {height} high, {free} below the brim.</source>
            <translation>{volume_l} llegan a {height} de altura, {free} por debajo del borde.</translation>
        </message>
        <message>
            <source>{volumes} at {temperature_c} stands under {gauge}, good to some 4 per cent.</source>
            <translation>{volumes} a {temperature_c} están bajo {gauge}, con un margen de un 4 por ciento.</translation>
        </message>
        <message>
            <source>{water} of water becomes {whole}.</source>
            <translation>{water} de agua pasan a ser {whole}.</translation>
        </message>
        <message>
            <source>{what}: once settled</source>
            <translation>{what}: una vez asentado</translation>
        </message>
        <message>
            <source>{what}: while air is trapped</source>
            <translation>{what}: con aire atrapado</translation>
        </message>
    </context>
    <context>
        <name>ReckonerNames</name>
        <message>
            <source>Acetic acid</source>
            <translation>Ácido acético</translation>
        </message>
        <message>
            <source>Borate, 9.18 at 25 °C</source>
            <translation>Borato, 9.18 a 25 °C</translation>
        </message>
        <message>
            <source>Citric acid</source>
            <translation>Ácido cítrico</translation>
        </message>
        <message>
            <source>Citric acid with its water</source>
            <translation>Ácido cítrico con su agua</translation>
        </message>
        <message>
            <source>Gluconic acid</source>
            <translation>Ácido glucónico</translation>
        </message>
        <message>
            <source>Good</source>
            <translation>Bueno</translation>
        </message>
        <message>
            <source>Lactic acid</source>
            <translation>Ácido láctico</translation>
        </message>
        <message>
            <source>Malic acid</source>
            <translation>Ácido málico</translation>
        </message>
        <message>
            <source>Mild</source>
            <translation>Suave</translation>
        </message>
        <message>
            <source>Not fit to use</source>
            <translation>No apto para usar</translation>
        </message>
        <message>
            <source>Phosphate, 6.86 at 25 °C</source>
            <translation>Fosfato, 6.86 a 25 °C</translation>
        </message>
        <message>
            <source>Phthalate, 4.01 at 25 °C</source>
            <translation>Ftalato, 4.01 a 25 °C</translation>
        </message>
        <message>
            <source>Sulfuric acid</source>
            <translation>Ácido sulfúrico</translation>
        </message>
        <message>
            <source>Tartaric acid</source>
            <translation>Ácido tartárico</translation>
        </message>
        <message>
            <source>Technical buffer 10.01</source>
            <translation>Tampón técnico 10.01</translation>
        </message>
        <message>
            <source>Technical buffer 4.00</source>
            <translation>Tampón técnico 4.00</translation>
        </message>
        <message>
            <source>Technical buffer 7.00</source>
            <translation>Tampón técnico 7.00</translation>
        </message>
        <message>
            <source>Vinegary</source>
            <translation>Avinagrado</translation>
        </message>
        <message>
            <source>Weak</source>
            <translation>Débil</translation>
        </message>
    </context>
    <context>
        <name>ReckonerPage</name>
        <message>
            <source>Not up to date: see the marked entry.</source>
            <translation>Sin actualizar: mira el dato marcado.</translation>
        </message>
        <message>
            <source>Reckon</source>
            <translation>Cálculo</translation>
        </message>
        <message>
            <source>Waiting for the marked entry.</source>
            <translation>A la espera del dato marcado.</translation>
        </message>
    </context>
    <context>
        <name>RecoveryDialog</name>
        <message>
            <source>A new pantry begins empty. Nothing of the old one will be in it; the old file is set aside, not deleted. Press the button once more to do it.</source>
            <translation>Una despensa nueva empieza vacía. No tendrá nada de la antigua; el archivo antiguo se aparta, no se borra. Pulsa el botón otra vez para hacerlo.</translation>
        </message>
        <message>
            <source>Backup</source>
            <translation>Copia de seguridad</translation>
        </message>
        <message>
            <source>Begin a new pantry</source>
            <translation>Empezar una despensa nueva</translation>
        </message>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Put the backup in its place</source>
            <translation>Poner la copia en su lugar</translation>
        </message>
        <message>
            <source>Rescue what can be read</source>
            <translation>Rescatar lo que se pueda leer</translation>
        </message>
        <message>
            <source>What stands there now is set aside, not deleted.</source>
            <translation>Lo que hay ahora ahí se aparta, no se borra.</translation>
        </message>
        <message>
            <source>Yes, begin a new pantry</source>
            <translation>Sí, empezar una despensa nueva</translation>
        </message>
        <message>
            <source>Your pantry could not be opened</source>
            <translation>No se pudo abrir tu despensa</translation>
        </message>
    </context>
    <context>
        <name>Reminders</name>
        <message>
            <source>1 day</source>
            <translation>1 día</translation>
        </message>
        <message>
            <source>1 day {hours} h</source>
            <translation>1 día {hours} h</translation>
        </message>
        <message>
            <source>A new culture begins as a thin, smooth, pale film on top. Do not shake the jar. Dry, fuzzy or coloured spots are signs of mold: then throw out all of it.</source>
            <translation>Un cultivo nuevo empieza como una película fina, lisa y pálida arriba. No agites el frasco. Las manchas secas, peludas o de color son señales de moho: en ese caso, deséchalo todo.</translation>
        </message>
        <message>
            <source>By then the batch may be too sour for you: the tasting window is forecast to close {at}.</source>
            <translation>Para entonces el lote puede estar demasiado ácido para ti: se prevé que la ventana de cata se cierre el {at}.</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Dry, fuzzy or coloured spots on top are signs of mold. If there is mold, throw out the whole batch and its culture. When in doubt, throw it out.</source>
            <translation>Las manchas secas, peludas o de color arriba son señales de moho. Si hay moho, desecha todo el lote y su cultivo. Ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Due now.</source>
            <translation>Pendiente ahora.</translation>
        </message>
        <message>
            <source>Due {at}.</source>
            <translation>Pendiente: {at}.</translation>
        </message>
        <message>
            <source>Feed {jar}</source>
            <translation>Alimentar {jar}</translation>
        </message>
        <message>
            <source>In 2 hours</source>
            <translation>En 2 horas</translation>
        </message>
        <message>
            <source>It may be too sour for you after {day}.</source>
            <translation>Puede estar demasiado ácido para ti después del {day}.</translation>
        </message>
        <message>
            <source>It should be at {ph} or below by day {day}, and no reading shows it yet. If it is not, follow your local food safety advice; when in doubt, throw it out.</source>
            <translation>Debería estar a {ph} o menos para el día {day}, y aún ninguna lectura lo muestra. Si no lo está, sigue los consejos locales de seguridad alimentaria; ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Look for mold on {jar}</source>
            <translation>Buscar moho en {jar}</translation>
        </message>
        <message>
            <source>Look for mold, and do not taste a batch that has any or smells wrong.</source>
            <translation>Busca moho, y no pruebes un lote que lo tenga o huela mal.</translation>
        </message>
        <message>
            <source>Look for the film on {jar}</source>
            <translation>Buscar la película en {jar}</translation>
        </message>
        <message>
            <source>Look whether {jar} has dried up</source>
            <translation>Mirar si {jar} se ha secado</translation>
        </message>
        <message>
            <source>Measure the pH first: above {ph} it is not ready to drink.</source>
            <translation>Mide antes el pH: por encima de {ph} no está listo para beber.</translation>
        </message>
        <message>
            <source>Measure the pH of {jar}</source>
            <translation>Medir el pH de {jar}</translation>
        </message>
        <message>
            <source>One more is in the due list.</source>
            <translation>Hay uno más en la lista de pendientes.</translation>
        </message>
        <message>
            <source>Open</source>
            <translation>Abrir</translation>
        </message>
        <message>
            <source>Pour in a little fresh, cooled sweet tea, and write down how much. Makers do this every few weeks; look for mold first. When in doubt, throw it out.</source>
            <translation>Vierte un poco de té azucarado fresco y enfriado, y anota cuánto. Se suele hacer cada pocas semanas; antes busca moho. Ante la duda, deséchalo.</translation>
        </message>
        <message>
            <source>Some of the liquid evaporates through the cloth; how much differs widely. The pellicle should stay covered: top up with ripe, unflavoured kombucha if it is not.</source>
            <translation>Parte del líquido se evapora a través de la tela; cuánto, varía mucho. La película debe quedar cubierta: si no lo está, rellena con kombucha madura y sin sabores.</translation>
        </message>
        <message>
            <source>Taste {jar}</source>
            <translation>Catar {jar}</translation>
        </message>
        <message>
            <source>The computer's clock shows {now}, but something was recorded {newest}. Please check the clock. Until it is right, nothing is reported as due.</source>
            <translation>El reloj del equipo marca {now}, pero algo se registró el {newest}. Comprueba el reloj. Hasta que esté bien, nada se muestra como pendiente.</translation>
        </message>
        <message>
            <source>The computer's clock was put back by {span}. What was shown already is not shown again; what is still to come waits for its time.</source>
            <translation>El reloj del equipo se atrasó {span}. Lo que ya se mostró no se repite; lo que aún falta espera su momento.</translation>
        </message>
        <message>
            <source>The forecast puts the start of the tasting window between {first} and {last}.</source>
            <translation>El pronóstico sitúa el inicio de la ventana de cata entre el {first} y el {last}.</translation>
        </message>
        <message>
            <source>The forecast puts the start of the tasting window on {day}, or much later.</source>
            <translation>El pronóstico sitúa el inicio de la ventana de cata el {day}, o mucho más tarde.</translation>
        </message>
        <message>
            <source>The forecast puts the start of the tasting window on {day}.</source>
            <translation>El pronóstico sitúa el inicio de la ventana de cata el {day}.</translation>
        </message>
        <message>
            <source>The window was forecast to close {day}: it may be more sour than you like.</source>
            <translation>Se preveía que la ventana se cerrara el {day}: puede estar más ácido de lo que te gusta.</translation>
        </message>
        <message>
            <source>Was due {at}, {span} ago.</source>
            <translation>Estaba pendiente el {at}, hace {span}.</translation>
        </message>
        <message>
            <source>You asked to be reminded of this for {jar}.</source>
            <translation>Pediste que se te recordara esto para {jar}.</translation>
        </message>
        <message>
            <source>You asked to be reminded of this.</source>
            <translation>Pediste que se te recordara esto.</translation>
        </message>
        <message>
            <source>Your own reminder</source>
            <translation>Tu propio recordatorio</translation>
        </message>
        <message>
            <source>{batch} in {vessel}</source>
            <translation>{batch} en {vessel}</translation>
        </message>
        <message>
            <source>{count} more are in the due list.</source>
            <translation>Hay {count} más en la lista de pendientes.</translation>
        </message>
        <message>
            <source>{count} things are due</source>
            <translation>{count} pendientes</translation>
        </message>
        <message>
            <source>{count} things came due while nobody was told</source>
            <translation>{count} vencieron mientras nadie recibía avisos</translation>
        </message>
        <message>
            <source>{days} days</source>
            <translation>{days} días</translation>
        </message>
        <message>
            <source>{day} at {time}</source>
            <translation>{day} a las {time}</translation>
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
            <translation>Guardar el informe del lote como PDF</translation>
        </message>
        <message>
            <source>Save the look back as PDF</source>
            <translation>Guardar el balance como PDF</translation>
        </message>
        <message>
            <source>Save the process log as PDF</source>
            <translation>Guardar el registro del proceso como PDF</translation>
        </message>
    </context>
    <context>
        <name>RescueDialog</name>
        <message>
            <source>Go on with it</source>
            <translation>Seguir con él</translation>
        </message>
        <message>
            <source>It is a file of its own. Put in the pantry's place, the damaged file is set aside, not deleted. Left, both stay, and you can choose a backup instead.</source>
            <translation>Es un archivo aparte. Si lo pones en el lugar de la despensa, el archivo dañado se aparta, no se borra. Si lo dejas, quedan ambos, y puedes elegir en su lugar una copia de seguridad.</translation>
        </message>
        <message>
            <source>Leave it for now</source>
            <translation>Dejarlo por ahora</translation>
        </message>
        <message>
            <source>This could be rescued</source>
            <translation>Esto se pudo rescatar</translation>
        </message>
    </context>
    <context>
        <name>RestDialog</name>
        <message>
            <source>In</source>
            <translation>En</translation>
        </message>
        <message>
            <source>In how much ripe kombucha</source>
            <translation>En cuánta kombucha madura</translation>
        </message>
        <message>
            <source>In ripe, unflavoured kombucha that covers it, under cloth, a culture keeps for weeks. You are reminded to feed it every {days} days; the settings change that.</source>
            <translation>En kombucha madura y sin sabores que lo cubra, bajo una tela, un cultivo se conserva semanas. Se te recuerda alimentarlo cada {days} días; puedes cambiarlo en los ajustes.</translation>
        </message>
        <message>
            <source>No vessel is free. Put another on the shelf first.</source>
            <translation>No hay recipiente libre. Pon antes otro en el estante.</translation>
        </message>
        <message>
            <source>Put it to rest</source>
            <translation>Ponerlo en reposo</translation>
        </message>
        <message>
            <source>Put {name} to rest</source>
            <translation>Poner {name} en reposo</translation>
        </message>
    </context>
    <context>
        <name>RetiredDialog</name>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>No vessel is retired. One that you retire waits here, with its history.</source>
            <translation>No hay recipientes retirados. El que retires espera aquí, con su historial.</translation>
        </message>
        <message>
            <source>Off the shelf</source>
            <translation>Fuera del estante</translation>
        </message>
        <message>
            <source>Put it back</source>
            <translation>Devolverlo</translation>
        </message>
        <message>
            <source>Put {name} back on the shelf</source>
            <translation>Devolver {name} al estante</translation>
        </message>
        <message>
            <source>Retired vessels</source>
            <translation>Recipientes retirados</translation>
        </message>
        <message>
            <source>Vessels off the shelf</source>
            <translation>Recipientes fuera del estante</translation>
        </message>
        <message>
            <source>{vessel}, off the shelf since {date}</source>
            <translation>{vessel}, fuera del estante desde el {date}</translation>
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
            <translation>Por encima de pH {most} el día {day}: desecha el lote. No bebas por debajo de pH {least}.</translation>
        </message>
        <message>
            <source>All figures are estimates for 20 °C. They are no guarantee.</source>
            <translation>Todas las cifras son estimaciones para 20 °C. No son ninguna garantía.</translation>
        </message>
        <message>
            <source>Any mold, on any day: throw everything away, the culture included.</source>
            <translation>Cualquier moho, cualquier día: deséchalo todo, cultivo incluido.</translation>
        </message>
        <message>
            <source>Hot tea scalds, and cracks cold glass. Mix in a pot, or warm the vessel first.</source>
            <translation>El té caliente quema y agrieta el vidrio frío. Mezcla en una olla o calienta antes el recipiente.</translation>
        </message>
        <message>
            <source>Kitchen measure</source>
            <translation>Medida de cocina</translation>
        </message>
        <message>
            <source>Let it drip; do not wring it.</source>
            <translation>Deja que gotee; no lo escurras.</translation>
        </message>
        <message>
            <source>Mind</source>
            <translation>Atención</translation>
        </message>
        <message>
            <source>Once mixed, estimated</source>
            <translation>Una vez mezclado, estimado</translation>
        </message>
        <message>
            <source>Part</source>
            <translation>Componente</translation>
        </message>
        <message>
            <source>Rules and advice of the place where you live come before this sheet.</source>
            <translation>Las normas y consejos del lugar donde vives van antes que esta hoja.</translation>
        </message>
        <message>
            <source>Run sheet</source>
            <translation>Hoja de trabajo</translation>
        </message>
        <message>
            <source>Start pH estimated</source>
            <translation>pH inicial estimado</translation>
        </message>
        <message>
            <source>Start pH wanted</source>
            <translation>pH inicial deseado</translation>
        </message>
        <message>
            <source>Starter and culture go in at</source>
            <translation>Iniciador y cultivo entran a</translation>
        </message>
        <message>
            <source>Steps</source>
            <translation>Pasos</translation>
        </message>
        <message>
            <source>Temperature before starter and culture go in ({limit} or below):</source>
            <translation>Temperatura antes de que entren iniciador y cultivo ({limit} o menos):</translation>
        </message>
        <message>
            <source>Tightly woven cloth and a band: air gets in, flies do not.</source>
            <translation>Tela de trama cerrada y una banda: entra aire, moscas no.</translation>
        </message>
        <message>
            <source>Time</source>
            <translation>Hora</translation>
        </message>
        <message>
            <source>To {limit} or below, covered.</source>
            <translation>A {limit} o menos, tapado.</translation>
        </message>
        <message>
            <source>With clean hands, rinsed free of soap.</source>
            <translation>Con las manos limpias y sin restos de jabón.</translation>
        </message>
        <message>
            <source>ddd d MMM yyyy</source>
            <translation>ddd d MMM yyyy</translation>
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
            <translation>pH para el día {day}, contado desde el iniciador ({most} o menos):</translation>
        </message>
        <message>
            <source>{cold}, boiled before and cooled, or safe to drink.</source>
            <translation>{cold}, hervida antes y enfriada, o apta para beber.</translation>
        </message>
        <message>
            <source>{hot} for the tea. Mind the steam and the pot.</source>
            <translation>{hot} para el té. Cuidado con el vapor y la olla.</translation>
        </message>
        <message>
            <source>{limit} or below</source>
            <translation>{limit} o menos</translation>
        </message>
        <message>
            <source>{mass} g</source>
            <translation>{mass} g</translation>
        </message>
        <message>
            <source>{starter}, live and unpasteurised. Stir; take the pH.</source>
            <translation>{starter}, vivo y sin pasteurizar. Remueve; mide el pH.</translation>
        </message>
        <message>
            <source>{sugar}, until no grain is left.</source>
            <translation>{sugar}, hasta que no quede ni un grano.</translation>
        </message>
        <message>
            <source>{tea} ({bags}), {minutes} minutes or as long as you like it.</source>
            <translation>{tea} ({bags}), {minutes} minutos o lo que te guste.</translation>
        </message>
        <message>
            <source>{value} ({low} to {high})</source>
            <translation>{value} ({low} a {high})</translation>
        </message>
        <message>
            <source>{vessel}, culture: {culture}</source>
            <translation>{vessel}, cultivo: {culture}</translation>
        </message>
        <message>
            <source>{vessel}, filled to {fill}</source>
            <translation>{vessel}, lleno hasta {fill}</translation>
        </message>
        <message>
            <source>{vessel}, started with starter liquid only</source>
            <translation>{vessel}, empezado solo con líquido iniciador</translation>
        </message>
    </context>
    <context>
        <name>RunSheetDialog</name>
        <message>
            <source>Save the sheet as PDF</source>
            <translation>Guardar la hoja como PDF</translation>
        </message>
    </context>
    <context>
        <name>RunSheetPanel</name>
        <message>
            <source>The run sheet is laid out when brewing begins.</source>
            <translation>La hoja de trabajo se prepara al empezar la preparación.</translation>
        </message>
    </context>
    <context>
        <name>SafetyDialog</name>
        <message>
            <source>Close</source>
            <translation>Cerrar</translation>
        </message>
        <message>
            <source>Limits in use</source>
            <translation>Límites en uso</translation>
        </message>
        <message>
            <source>Safety</source>
            <translation>Seguridad</translation>
        </message>
        <message>
            <source>This program helps you watch your jars; it cannot see, smell or test them. Its forecasts are estimates. A pH of 4.2 or less is needed, but does not by itself make a drink safe. When in doubt, throw it out: liquid and culture. Local rules and licensed practice come first. Kombucha holds some alcohol, and is not advised for everyone: ask a doctor in pregnancy, for young children, and with a weakened immune system.</source>
            <translation>Este programa te ayuda a vigilar tus frascos; no puede verlos, olerlos ni analizarlos. Sus pronósticos son estimaciones. Hace falta un pH de 4.2 o menos, pero eso por sí solo no hace segura una bebida. Ante la duda, deséchalo: líquido y cultivo. Las normas locales y la práctica autorizada van primero. La kombucha contiene algo de alcohol y no se aconseja a todo el mundo: consulta a un médico en el embarazo, para niños pequeños y con las defensas bajas.</translation>
        </message>
    </context>
    <context>
        <name>SafetyLog</name>
        <message>
            <source>Bottles discarded</source>
            <translation>Botellas desechadas</translation>
        </message>
        <message>
            <source>Discarded</source>
            <translation>Desechado</translation>
        </message>
        <message>
            <source>Liquid poured in</source>
            <translation>Líquido vertido</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>No reading shows pH {limit} or below.</source>
            <translation>Ninguna lectura muestra pH {limit} o menos.</translation>
        </message>
        <message>
            <source>Suspicion cleared</source>
            <translation>Sospecha descartada</translation>
        </message>
        <message>
            <source>Under suspicion</source>
            <translation>Bajo sospecha</translation>
        </message>
        <message>
            <source>Warning overridden</source>
            <translation>Advertencia pasada por alto</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>not shown</source>
            <translation>no mostrado</translation>
        </message>
        <message>
            <source>not yet</source>
            <translation>aún no</translation>
        </message>
        <message>
            <source>pH {limit} or below has not been read yet; day {most} is not over.</source>
            <translation>Aún no se ha leído pH {limit} o menos; el día {most} no ha terminado.</translation>
        </message>
        <message>
            <source>pH {limit} or below was first read on day {day}, later than day {most}.</source>
            <translation>pH {limit} o menos se leyó por primera vez el día {day}, más tarde que el día {most}.</translation>
        </message>
        <message>
            <source>pH {limit} or below was first read on day {day}.</source>
            <translation>pH {limit} o menos se leyó por primera vez el día {day}.</translation>
        </message>
        <message>
            <source>{date}, {time}</source>
            <translation>{date}, {time}</translation>
        </message>
        <message>
            <source>{day} (late)</source>
            <translation>{day} (tarde)</translation>
        </message>
        <message>
            <source>{value} ± {sd}</source>
            <translation>{value} ± {sd}</translation>
        </message>
        <message>
            <source>“{reason}”</source>
            <translation>«{reason}»</translation>
        </message>
    </context>
    <context>
        <name>SavedOpen</name>
        <message>
            <source>Save what is open as a copy</source>
            <translation>Guardar lo abierto como copia</translation>
        </message>
        <message>
            <source>Saved as {path}. Close brewdesk and put this file in the pantry's place, or go on with it from there.</source>
            <translation>Guardado como {path}. Cierra brewdesk y pon este archivo en el lugar de la despensa, o sigue con él desde ahí.</translation>
        </message>
    </context>
    <context>
        <name>Search</name>
        <message>
            <source>1 found</source>
            <translation>1 encontrado</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Batches</source>
            <translation>Lotes</translation>
        </message>
        <message>
            <source>Captions of photos</source>
            <translation>Pies de foto</translation>
        </message>
        <message>
            <source>Care</source>
            <translation>Cuidados</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Cultivos</translation>
        </message>
        <message>
            <source>Journal</source>
            <translation>Diario</translation>
        </message>
        <message>
            <source>Lines of the journal</source>
            <translation>Líneas del diario</translation>
        </message>
        <message>
            <source>No filter alone is in the way; without all of them there would be {count}.</source>
            <translation>Ningún filtro por sí solo lo impide; sin todos ellos habría {count}.</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Notes of care</source>
            <translation>Notas de cuidados</translation>
        </message>
        <message>
            <source>Notes of readings</source>
            <translation>Notas de lecturas</translation>
        </message>
        <message>
            <source>Nothing found</source>
            <translation>Nada encontrado</translation>
        </message>
        <message>
            <source>Photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>Places</source>
            <translation>Lugares</translation>
        </message>
        <message>
            <source>Reminder</source>
            <translation>Recordatorio</translation>
        </message>
        <message>
            <source>Reminders</source>
            <translation>Recordatorios</translation>
        </message>
        <message>
            <source>The first {shown} of {total}</source>
            <translation>Los primeros {shown} de {total}</translation>
        </message>
        <message>
            <source>There is nothing in your records yet.</source>
            <translation>Aún no hay nada en tus registros.</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Recipiente</translation>
        </message>
        <message>
            <source>Vessels</source>
            <translation>Recipientes</translation>
        </message>
        <message>
            <source>Without the filter “{name}” there would be 1.</source>
            <translation>Sin el filtro «{name}» habría 1.</translation>
        </message>
        <message>
            <source>Without the filter “{name}” there would be {count}.</source>
            <translation>Sin el filtro «{name}» habría {count}.</translation>
        </message>
        <message>
            <source>off the shelf</source>
            <translation>fuera del estante</translation>
        </message>
        <message>
            <source>{total} found</source>
            <translation>{total} encontrados</translation>
        </message>
        <message>
            <source>“{text}” stands nowhere in your records. All words have to occur; fewer words, or the beginning of a word, find more.</source>
            <translation>«{text}» no aparece en tus registros. Deben aparecer todas las palabras; con menos palabras, o el comienzo de una, se encuentra más.</translation>
        </message>
    </context>
    <context>
        <name>Settings</name>
        <message>
            <source>Acidity in</source>
            <translation>Acidez en</translation>
        </message>
        <message>
            <source>Calibrate the pH meter while it is in use</source>
            <translation>Calibrar el medidor de pH mientras está en uso</translation>
        </message>
        <message>
            <source>Colours</source>
            <translation>Colores</translation>
        </message>
        <message>
            <source>Feed resting cultures</source>
            <translation>Alimentar los cultivos en reposo</translation>
        </message>
        <message>
            <source>Keep a calendar file of the due list up to date at</source>
            <translation>Mantener al día un archivo de calendario de los pendientes en</translation>
        </message>
        <message>
            <source>Keep running in the tray when the window is closed</source>
            <translation>Seguir en la bandeja al cerrar la ventana</translation>
        </message>
        <message>
            <source>Language, from the next start</source>
            <translation>Idioma, desde el próximo inicio</translation>
        </message>
        <message>
            <source>Learn my taste from my tastings</source>
            <translation>Aprender mi gusto de mis catas</translation>
        </message>
        <message>
            <source>Lengths in</source>
            <translation>Longitudes en</translation>
        </message>
        <message>
            <source>Look whether resting cultures need topping up</source>
            <translation>Mirar si hay que rellenar los cultivos en reposo</translation>
        </message>
        <message>
            <source>Name of this desk</source>
            <translation>Nombre de este puesto</translation>
        </message>
        <message>
            <source>Prices in</source>
            <translation>Precios en</translation>
        </message>
        <message>
            <source>Quiet from</source>
            <translation>Silencio desde</translation>
        </message>
        <message>
            <source>Quiet until</source>
            <translation>Silencio hasta</translation>
        </message>
        <message>
            <source>Reminders of a day come at</source>
            <translation>Los recordatorios de un día llegan a las</translation>
        </message>
        <message>
            <source>Ring when a timer ends</source>
            <translation>Sonar cuando acaba un temporizador</translation>
        </message>
        <message>
            <source>Show each reminder at one desk only (for all desks)</source>
            <translation>Mostrar cada recordatorio en un solo puesto (para todos los puestos)</translation>
        </message>
        <message>
            <source>Show reminders at this desk</source>
            <translation>Mostrar recordatorios en este puesto</translation>
        </message>
        <message>
            <source>Size of the text</source>
            <translation>Tamaño del texto</translation>
        </message>
        <message>
            <source>Sugar in</source>
            <translation>Azúcar en</translation>
        </message>
        <message>
            <source>Tea in</source>
            <translation>Té en</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturas en</translation>
        </message>
        <message>
            <source>Time zone</source>
            <translation>Zona horaria</translation>
        </message>
        <message>
            <source>Volumes in</source>
            <translation>Volúmenes en</translation>
        </message>
        <message>
            <source>Warmest liquid a culture may go into</source>
            <translation>Temperatura máxima del líquido en que puede entrar un cultivo</translation>
        </message>
        <message>
            <source>Water alkalinity in</source>
            <translation>Alcalinidad del agua en</translation>
        </message>
        <message>
            <source>Weights in</source>
            <translation>Pesos en</translation>
        </message>
        <message>
            <source>pH at which a batch is first worth tasting</source>
            <translation>pH con el que merece la pena empezar a catar un lote</translation>
        </message>
        <message>
            <source>pH below which a batch is too sour for you</source>
            <translation>pH por debajo del cual un lote es demasiado ácido para ti</translation>
        </message>
    </context>
    <context>
        <name>SettingsPage</name>
        <message>
            <source>All desks share one pantry. Colours, units, quiet hours and the window are each desk's own; taste, limits and rhythms are everybody's.</source>
            <translation>Todos los puestos comparten una despensa. Colores, unidades, horas de silencio y ventana son de cada puesto; gusto, límites y ritmos son de todos.</translation>
        </message>
        <message>
            <source>All settings</source>
            <translation>Todos los ajustes</translation>
        </message>
        <message>
            <source>As the computer</source>
            <translation>Como el equipo</translation>
        </message>
        <message>
            <source>As the computer ({code})</source>
            <translation>Como el equipo ({code})</translation>
        </message>
        <message>
            <source>As the desktop</source>
            <translation>Como el escritorio</translation>
        </message>
        <message>
            <source>Dark</source>
            <translation>Oscuro</translation>
        </message>
        <message>
            <source>Every entry takes other units as well: just write them behind the number.</source>
            <translation>Todos los campos aceptan también otras unidades: solo escríbelas tras el número.</translation>
        </message>
        <message>
            <source>Every {count} days</source>
            <translation>Cada {count} días</translation>
        </message>
        <message>
            <source>File with your records</source>
            <translation>Archivo con tus registros</translation>
        </message>
        <message>
            <source>If none appears, your desktop keeps them back: look at the due list.</source>
            <translation>Si no aparece ninguno, tu escritorio los retiene: mira la lista de pendientes.</translation>
        </message>
        <message>
            <source>In quiet hours nothing pops up but bottles that may soon burst; the due list shows everything.</source>
            <translation>En las horas de silencio solo aparecen avisos de botellas que pronto pueden estallar; la lista de pendientes lo muestra todo.</translation>
        </message>
        <message>
            <source>Light</source>
            <translation>Claro</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>Money</source>
            <translation>Dinero</translation>
        </message>
        <message>
            <source>Nothing leaves this computer. Backups are kept beside this file. Photos lie in a folder of their own beside it, {folder}; backups do not hold them. “Copy everything to a folder” in the Pantry menu takes both along.</source>
            <translation>Nada sale de este equipo. Las copias de seguridad se guardan junto a este archivo. Las fotos están en su propia carpeta junto a él, {folder}; las copias de seguridad no las contienen. «Copiar todo a una carpeta», en el menú Despensa, se lleva ambas cosas.</translation>
        </message>
        <message>
            <source>Prices keep the currency they were typed in; nothing is converted.</source>
            <translation>Los precios conservan la moneda en que se escribieron; nada se convierte.</translation>
        </message>
        <message>
            <source>Reminders</source>
            <translation>Recordatorios</translation>
        </message>
        <message>
            <source>Reminders come, and the calendar file is renewed, only while brewdesk runs. On a desktop without a tray the window is made small instead of closed.</source>
            <translation>Los recordatorios llegan, y el archivo de calendario se renueva, solo mientras brewdesk funciona. En un escritorio sin bandeja, la ventana se minimiza en vez de cerrarse.</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Ajustes</translation>
        </message>
        <message>
            <source>Several desks</source>
            <translation>Varios puestos</translation>
        </message>
        <message>
            <source>Show me one reminder now</source>
            <translation>Mostrarme un recordatorio ahora</translation>
        </message>
        <message>
            <source>The tasting window is reckoned from these. Safety limits are not settings.</source>
            <translation>La ventana de cata se calcula con estos. Los límites de seguridad no son ajustes.</translation>
        </message>
        <message>
            <source>Units</source>
            <translation>Unidades</translation>
        </message>
        <message>
            <source>Where your records are</source>
            <translation>Dónde están tus registros</translation>
        </message>
        <message>
            <source>While the window is closed</source>
            <translation>Mientras la ventana está cerrada</translation>
        </message>
        <message>
            <source>Your records lie in this database, for all desks, because this desk was started with its address; brewdesk opens no other connection. Backups are kept on this computer, in {folder}.</source>
            <translation>Tus registros están en esta base de datos, para todos los puestos, porque este puesto se inició con su dirección; brewdesk no abre ninguna otra conexión. Las copias de seguridad se guardan en este equipo, en {folder}.</translation>
        </message>
        <message>
            <source>Your taste, and the culture's comfort</source>
            <translation>Tu gusto, y el bienestar del cultivo</translation>
        </message>
        <message>
            <source>Your taste, as learnt</source>
            <translation>Tu gusto, según lo aprendido</translation>
        </message>
    </context>
    <context>
        <name>ShapeChoice</name>
        <message>
            <source>Shape: {shape}</source>
            <translation>Forma: {shape}</translation>
        </message>
    </context>
    <context>
        <name>SheetDialog</name>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>If your printer is a little off</source>
            <translation>Si tu impresora se desvía un poco</translation>
        </message>
        <message>
            <source>Labels on a roll: each row is a page</source>
            <translation>Etiquetas en rollo: cada fila es una página</translation>
        </message>
        <message>
            <source>Please type a whole number.</source>
            <translation>Escribe un número entero.</translation>
        </message>
        <message>
            <source>Print the test page and measure its rulers: each should be 100 mm long. Then see how far its frames stand from the labels.</source>
            <translation>Imprime la página de prueba y mide sus reglas: cada una debería medir 100 mm. Luego mira cuánto se apartan sus marcos de las etiquetas.</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
    </context>
    <context>
        <name>SheetGrid</name>
        <message>
            <source>Row {row}, column {column}. The arrow keys move it.</source>
            <translation>Fila {row}, columna {column}. Las flechas del teclado la mueven.</translation>
        </message>
        <message>
            <source>The sheet with these measures</source>
            <translation>La hoja con estas medidas</translation>
        </message>
        <message>
            <source>Where the first label goes</source>
            <translation>Dónde va la primera etiqueta</translation>
        </message>
    </context>
    <context>
        <name>ShelfCarrier</name>
        <message>
            <source>The batch {name}</source>
            <translation>El lote {name}</translation>
        </message>
        <message>
            <source>The culture {name}</source>
            <translation>El cultivo {name}</translation>
        </message>
        <message>
            <source>There is nothing in {vessel} to carry.</source>
            <translation>No hay nada que llevar en {vessel}.</translation>
        </message>
        <message>
            <source>{name} put back.</source>
            <translation>{name} devuelto.</translation>
        </message>
    </context>
    <context>
        <name>ShelfPage</name>
        <message>
            <source>Add a vessel</source>
            <translation>Añadir un recipiente</translation>
        </message>
        <message>
            <source>Plan a batch</source>
            <translation>Planificar un lote</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Estante</translation>
        </message>
    </context>
    <context>
        <name>ShelfView</name>
        <message>
            <source>Drag to carry the batch; at its surface, the culture.</source>
            <translation>Arrastra para llevar el lote; por su superficie, el cultivo.</translation>
        </message>
        <message>
            <source>Drag to carry the culture.</source>
            <translation>Arrastra para llevar el cultivo.</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Estante</translation>
        </message>
    </context>
    <context>
        <name>ShownUnits</name>
        <message>
            <source>{mid} {unit} ({low} to {high})</source>
            <translation>{mid} {unit} ({low} a {high})</translation>
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
            <translation>Una capa o un trozo de la película, o parte de su líquido, pasa a ser un cultivo propio. El progenitor queda como está.</translation>
        </message>
        <message>
            <source>Her pellicle's thickness</source>
            <translation>Grosor de su película</translation>
        </message>
        <message>
            <source>In how much ripe kombucha</source>
            <translation>En cuánta kombucha madura</translation>
        </message>
        <message>
            <source>Name of the daughter</source>
            <translation>Nombre del cultivo hijo</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Split it</source>
            <translation>Dividirlo</translation>
        </message>
        <message>
            <source>Split {name}</source>
            <translation>Dividir {name}</translation>
        </message>
        <message>
            <source>Where she rests</source>
            <translation>Dónde reposa</translation>
        </message>
    </context>
    <context>
        <name>Stages</name>
        <message>
            <source>A gift</source>
            <translation>Un regalo</translation>
        </message>
        <message>
            <source>Add the cold water</source>
            <translation>Añadir el agua fría</translation>
        </message>
        <message>
            <source>Any other</source>
            <translation>Cualquier otra</translation>
        </message>
        <message>
            <source>At work</source>
            <translation>Trabajando</translation>
        </message>
        <message>
            <source>Black tea</source>
            <translation>Té negro</translation>
        </message>
        <message>
            <source>Boil the water</source>
            <translation>Hervir el agua</translation>
        </message>
        <message>
            <source>Bottled</source>
            <translation>Embotellado</translation>
        </message>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Bought</source>
            <translation>Comprado</translation>
        </message>
        <message>
            <source>Brewed</source>
            <translation>Preparado</translation>
        </message>
        <message>
            <source>Brewing</source>
            <translation>Preparación</translation>
        </message>
        <message>
            <source>Brix</source>
            <translation>Brix</translation>
        </message>
        <message>
            <source>By volume</source>
            <translation>Por volumen</translation>
        </message>
        <message>
            <source>By weight</source>
            <translation>Por peso</translation>
        </message>
        <message>
            <source>Came back</source>
            <translation>Devuelto</translation>
        </message>
        <message>
            <source>Caps and corks</source>
            <translation>Tapas y corchos</translation>
        </message>
        <message>
            <source>Ceramic with a lead-free glaze, stated by its maker</source>
            <translation>Cerámica con esmalte sin plomo, según su fabricante</translation>
        </message>
        <message>
            <source>Ceramic, glaze not known</source>
            <translation>Cerámica, esmalte desconocido</translation>
        </message>
        <message>
            <source>Chilled</source>
            <translation>Enfriado</translation>
        </message>
        <message>
            <source>Closed</source>
            <translation>Cerrado</translation>
        </message>
        <message>
            <source>Conditioning</source>
            <translation>Segunda fermentación</translation>
        </message>
        <message>
            <source>Copper, brass, aluminium, iron or galvanised metal</source>
            <translation>Cobre, latón, aluminio, hierro o metal galvanizado</translation>
        </message>
        <message>
            <source>Counted</source>
            <translation>Contado</translation>
        </message>
        <message>
            <source>Cover the vessel</source>
            <translation>Cubrir el recipiente</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Discarded</source>
            <translation>Desechado</translation>
        </message>
        <message>
            <source>Done</source>
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Drawn off</source>
            <translation>Extraído</translation>
        </message>
        <message>
            <source>Drunk up</source>
            <translation>Todo bebido</translation>
        </message>
        <message>
            <source>Eye</source>
            <translation>Ojo</translation>
        </message>
        <message>
            <source>Far too sour</source>
            <translation>Extremadamente ácido</translation>
        </message>
        <message>
            <source>Far too sweet</source>
            <translation>Extremadamente dulce</translation>
        </message>
        <message>
            <source>Fed</source>
            <translation>Alimentado</translation>
        </message>
        <message>
            <source>Felt</source>
            <translation>Palpada</translation>
        </message>
        <message>
            <source>Fizzy-drink glass</source>
            <translation>Vidrio para bebida con gas</translation>
        </message>
        <message>
            <source>Fizzy-drink plastic</source>
            <translation>Plástico para bebida con gas</translation>
        </message>
        <message>
            <source>Flavouring</source>
            <translation>Saborizante</translation>
        </message>
        <message>
            <source>Food-grade plastic</source>
            <translation>Plástico alimentario</translation>
        </message>
        <message>
            <source>Forming</source>
            <translation>Formándose</translation>
        </message>
        <message>
            <source>Fruit</source>
            <translation>Fruta</translation>
        </message>
        <message>
            <source>Gauge</source>
            <translation>Manómetro</translation>
        </message>
        <message>
            <source>Ginger</source>
            <translation>Jengibre</translation>
        </message>
        <message>
            <source>Given away</source>
            <translation>Regalado</translation>
        </message>
        <message>
            <source>Glass</source>
            <translation>Vidrio</translation>
        </message>
        <message>
            <source>Glucose, honey or fruit</source>
            <translation>Glucosa, miel o fruta</translation>
        </message>
        <message>
            <source>Green tea</source>
            <translation>Té verde</translation>
        </message>
        <message>
            <source>Grown from a raw bottle</source>
            <translation>Crecido de una botella cruda</translation>
        </message>
        <message>
            <source>Grown from starter liquid</source>
            <translation>Crecido de líquido iniciador</translation>
        </message>
        <message>
            <source>Herbal tea</source>
            <translation>Infusión de hierbas</translation>
        </message>
        <message>
            <source>Honey</source>
            <translation>Miel</translation>
        </message>
        <message>
            <source>Hydrometer</source>
            <translation>Densímetro</translation>
        </message>
        <message>
            <source>In pieces</source>
            <translation>En piezas</translation>
        </message>
        <message>
            <source>Juice</source>
            <translation>Jugo</translation>
        </message>
        <message>
            <source>Just right</source>
            <translation>Justo bien</translation>
        </message>
        <message>
            <source>Lead crystal</source>
            <translation>Cristal de plomo</translation>
        </message>
        <message>
            <source>Let it cool</source>
            <translation>Dejar enfriar</translation>
        </message>
        <message>
            <source>Lift the tea out</source>
            <translation>Sacar el té</translation>
        </message>
        <message>
            <source>Like vinegar</source>
            <translation>Como vinagre</translation>
        </message>
        <message>
            <source>Look</source>
            <translation>Revisión</translation>
        </message>
        <message>
            <source>Looked at</source>
            <translation>Revisado</translation>
        </message>
        <message>
            <source>Lost</source>
            <translation>Perdido</translation>
        </message>
        <message>
            <source>Merged from others</source>
            <translation>Unión de otros</translation>
        </message>
        <message>
            <source>Meter</source>
            <translation>Medidor</translation>
        </message>
        <message>
            <source>Mixed teas</source>
            <translation>Tés mezclados</translation>
        </message>
        <message>
            <source>Mold</source>
            <translation>Moho</translation>
        </message>
        <message>
            <source>Narrow neck</source>
            <translation>Cuello estrecho</translation>
        </message>
        <message>
            <source>Not sure</source>
            <translation>Sin certeza</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Nothing suspicious</source>
            <translation>Nada sospechoso</translation>
        </message>
        <message>
            <source>Oolong tea</source>
            <translation>Té oolong</translation>
        </message>
        <message>
            <source>Opened</source>
            <translation>Abierta</translation>
        </message>
        <message>
            <source>Other</source>
            <translation>Otro</translation>
        </message>
        <message>
            <source>Other plastic</source>
            <translation>Otro plástico</translation>
        </message>
        <message>
            <source>Paused</source>
            <translation>En pausa</translation>
        </message>
        <message>
            <source>Pellicle thickness</source>
            <translation>Grosor de la película</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>Planned</source>
            <translation>Planificado</translation>
        </message>
        <message>
            <source>Pour in the starter</source>
            <translation>Verter el iniciador</translation>
        </message>
        <message>
            <source>Poured away</source>
            <translation>Tirado</translation>
        </message>
        <message>
            <source>Poured together</source>
            <translation>Juntado</translation>
        </message>
        <message>
            <source>Put in the culture</source>
            <translation>Meter el cultivo</translation>
        </message>
        <message>
            <source>Rated by its maker</source>
            <translation>Indicada por su fabricante</translation>
        </message>
        <message>
            <source>Refractometer</source>
            <translation>Refractómetro</translation>
        </message>
        <message>
            <source>Resting</source>
            <translation>En reposo</translation>
        </message>
        <message>
            <source>Retired</source>
            <translation>Retirado</translation>
        </message>
        <message>
            <source>Ruler</source>
            <translation>Regla</translation>
        </message>
        <message>
            <source>Sample</source>
            <translation>Muestra</translation>
        </message>
        <message>
            <source>Share of starter</source>
            <translation>Proporción de iniciador</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Otra cosa</translation>
        </message>
        <message>
            <source>Sour</source>
            <translation>Ácido</translation>
        </message>
        <message>
            <source>Souring</source>
            <translation>Acidificación</translation>
        </message>
        <message>
            <source>Specific gravity</source>
            <translation>Densidad relativa</translation>
        </message>
        <message>
            <source>Split from another</source>
            <translation>Separado de otro</translation>
        </message>
        <message>
            <source>Spoiled or broken</source>
            <translation>Estropeado o roto</translation>
        </message>
        <message>
            <source>Stainless steel</source>
            <translation>Acero inoxidable</translation>
        </message>
        <message>
            <source>Starter</source>
            <translation>Iniciador</translation>
        </message>
        <message>
            <source>Starter taken</source>
            <translation>Iniciador tomado</translation>
        </message>
        <message>
            <source>Steep the tea</source>
            <translation>Infusionar el té</translation>
        </message>
        <message>
            <source>Still sweet</source>
            <translation>Aún dulce</translation>
        </message>
        <message>
            <source>Stir in the sugar</source>
            <translation>Disolver el azúcar</translation>
        </message>
        <message>
            <source>Straight-sided</source>
            <translation>Paredes rectas</translation>
        </message>
        <message>
            <source>Strength of the tea</source>
            <translation>Fuerza del té</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Sweet and sour</source>
            <translation>Dulce y ácido</translation>
        </message>
        <message>
            <source>Syrup</source>
            <translation>Jarabe</translation>
        </message>
        <message>
            <source>Table sugar</source>
            <translation>Azúcar de mesa</translation>
        </message>
        <message>
            <source>Taste</source>
            <translation>Sabor</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>Temperature</source>
            <translation>Temperatura</translation>
        </message>
        <message>
            <source>Test strip</source>
            <translation>Tira de prueba</translation>
        </message>
        <message>
            <source>Thermometer</source>
            <translation>Termómetro</translation>
        </message>
        <message>
            <source>Titratable acidity</source>
            <translation>Acidez titulable</translation>
        </message>
        <message>
            <source>Titration</source>
            <translation>Titulación</translation>
        </message>
        <message>
            <source>To do</source>
            <translation>Por hacer</translation>
        </message>
        <message>
            <source>To drink</source>
            <translation>Para beber</translation>
        </message>
        <message>
            <source>To grow a culture</source>
            <translation>Para criar un cultivo</translation>
        </message>
        <message>
            <source>Tongue</source>
            <translation>Lengua</translation>
        </message>
        <message>
            <source>Too sour</source>
            <translation>Demasiado ácido</translation>
        </message>
        <message>
            <source>Too sweet</source>
            <translation>Demasiado dulce</translation>
        </message>
        <message>
            <source>Topped up</source>
            <translation>Rellenado</translation>
        </message>
        <message>
            <source>Under way</source>
            <translation>En marcha</translation>
        </message>
        <message>
            <source>Used otherwise</source>
            <translation>Usado para otra cosa</translation>
        </message>
        <message>
            <source>Vented</source>
            <translation>Presión liberada</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Recipiente</translation>
        </message>
        <message>
            <source>White tea</source>
            <translation>Té blanco</translation>
        </message>
        <message>
            <source>Wider at the rim</source>
            <translation>Más ancho en el borde</translation>
        </message>
        <message>
            <source>Wood</source>
            <translation>Madera</translation>
        </message>
        <message>
            <source>ended</source>
            <translation>terminado</translation>
        </message>
        <message>
            <source>firm</source>
            <translation>firme</translation>
        </message>
        <message>
            <source>given up</source>
            <translation>abandonado</translation>
        </message>
        <message>
            <source>hard</source>
            <translation>dura</translation>
        </message>
        <message>
            <source>it gushed</source>
            <translation>se desbordó</translation>
        </message>
        <message>
            <source>just right</source>
            <translation>justo bien</translation>
        </message>
        <message>
            <source>pH</source>
            <translation>pH</translation>
        </message>
        <message>
            <source>planned</source>
            <translation>planificado</translation>
        </message>
        <message>
            <source>running</source>
            <translation>en marcha</translation>
        </message>
        <message>
            <source>soft</source>
            <translation>blanda</translation>
        </message>
        <message>
            <source>too flat</source>
            <translation>con poco gas</translation>
        </message>
    </context>
    <context>
        <name>StartDialog</name>
        <message>
            <source>Fill each to</source>
            <translation>Llenar cada uno hasta</translation>
        </message>
        <message>
            <source>Plan {count} batches</source>
            <translation>Planificar {count} lotes</translation>
        </message>
        <message>
            <source>Start {name}</source>
            <translation>Empezar {name}</translation>
        </message>
        <message>
            <source>Starter, percent</source>
            <translation>Iniciador, por ciento</translation>
        </message>
        <message>
            <source>Sugar in a litre</source>
            <translation>Azúcar en un litro</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>Tea in a litre</source>
            <translation>Té en un litro</translation>
        </message>
        <message>
            <source>The recipe all jars share. What the trial is about is set by each jar's level. The batches stand on the shelf as plans then, named by their codes; brew them on one day if you can. One undo takes all of them back.</source>
            <translation>La receta que comparten todos los frascos. Aquello de lo que trata el ensayo lo fija el nivel de cada frasco. Los lotes quedan entonces en el estante como planes, con sus códigos por nombre; prepáralos el mismo día si puedes. Un solo deshacer los quita todos.</translation>
        </message>
        <message>
            <source>each to its working volume</source>
            <translation>cada uno a su volumen de trabajo</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>desconocido</translation>
        </message>
        <message>
            <source>pH of the starter, the same for all</source>
            <translation>pH del iniciador, el mismo para todos</translation>
        </message>
    </context>
    <context>
        <name>Starting</name>
        <message>
            <source>The folder for your pantry cannot be made, so nothing was begun:
{folder}

Please check its rights, and that nothing else has its name.</source>
            <translation>No se puede crear la carpeta para tu despensa, así que no se empezó nada:
{folder}

Comprueba sus permisos y que nada más lleve su nombre.</translation>
        </message>
        <message>
            <source>The place was chosen by {what}.</source>
            <translation>El lugar lo eligió {what}.</translation>
        </message>
        <message>
            <source>This is your pantry as it was backed up on {when}.</source>
            <translation>Esta es tu despensa tal como se copió el {when}.</translation>
        </message>
        <message>
            <source>This pantry is already open in another window, and that window does not answer. Close it, or wait a moment, and start again.</source>
            <translation>Esta despensa ya está abierta en otra ventana, y esa ventana no responde. Ciérrala, o espera un momento, y vuelve a iniciar.</translation>
        </message>
        <message>
            <source>This pantry is open on another computer, {host}. Two programs at once would spoil it. Please close it there first.

If it is certainly not open there any more, after that computer broke down for example, delete this file and start again:
{lock}</source>
            <translation>Esta despensa está abierta en otro equipo, {host}. Dos programas a la vez la estropearían. Ciérrala allí primero.

Si seguro que ya no está abierta allí, por ejemplo porque ese equipo se averió, borra este archivo y vuelve a iniciar:
{lock}</translation>
        </message>
        <message>
            <source>This pantry may not be written to, so it is open to be looked at only: nothing you enter can be kept, and reminders cannot be ticked off. Everything can be copied to another folder (Pantry menu).</source>
            <translation>No se puede escribir en esta despensa, así que está abierta solo para mirar: nada de lo que anotes se puede guardar, y los recordatorios no se pueden marcar. Todo se puede copiar a otra carpeta (menú Despensa).</translation>
        </message>
        <message>
            <source>What was here is set aside as {path}.</source>
            <translation>Lo que había aquí se apartó como {path}.</translation>
        </message>
        <message>
            <source>brewdesk did not end in order last time. Everything that was saved is here; what was only typed is not.</source>
            <translation>brewdesk no terminó bien la última vez. Todo lo que se guardó está aquí; lo que solo se escribió, no.</translation>
        </message>
    </context>
    <context>
        <name>StepGate</name>
        <message>
            <source>Put it in all the same</source>
            <translation>Ponerlo de todos modos</translation>
        </message>
        <message>
            <source>Put it in on my word</source>
            <translation>Ponerlo bajo mi palabra</translation>
        </message>
        <message>
            <source>Your reason, kept with the batch</source>
            <translation>Tu motivo, que se guardará con el lote</translation>
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
            <translation>Hecho</translation>
        </message>
        <message>
            <source>Go on</source>
            <translation>Continuar</translation>
        </message>
        <message>
            <source>One minute more</source>
            <translation>Un minuto más</translation>
        </message>
        <message>
            <source>Pause</source>
            <translation>Pausar</translation>
        </message>
        <message>
            <source>Start {time}</source>
            <translation>Empezar {time}</translation>
        </message>
        <message>
            <source>Step {number}: {title}, {state}</source>
            <translation>Paso {number}: {title}, {state}</translation>
        </message>
        <message>
            <source>Temperature of the sweet tea</source>
            <translation>Temperatura del té azucarado</translation>
        </message>
        <message>
            <source>Time left</source>
            <translation>Tiempo restante</translation>
        </message>
        <message>
            <source>done {time}</source>
            <translation>hecho {time}</translation>
        </message>
        <message>
            <source>paused</source>
            <translation>en pausa</translation>
        </message>
        <message>
            <source>{temperature}, done {time}</source>
            <translation>{temperature}, hecho {time}</translation>
        </message>
    </context>
    <context>
        <name>StepWords</name>
        <message>
            <source>Add {cold} of cold water ({cold_measure}).</source>
            <translation>Añade {cold} de agua fría ({cold_measure}).</translation>
        </message>
        <message>
            <source>Bring {hot} of water ({hot_measure}) to a rolling boil.</source>
            <translation>Lleva {hot} de agua ({hot_measure}) a ebullición fuerte.</translation>
        </message>
        <message>
            <source>Cover with a tightly woven cloth and tie it down.</source>
            <translation>Cubre con una tela de trama cerrada y átala.</translation>
        </message>
        <message>
            <source>Let it stand covered until it is at {limit} or below, then measure.</source>
            <translation>Déjalo tapado hasta que esté a {limit} o menos, y luego mide.</translation>
        </message>
        <message>
            <source>Lift the tea out and let it drip off.</source>
            <translation>Saca el té y deja que escurra.</translation>
        </message>
        <message>
            <source>Pour in {starter} of starter ({starter_measure}) and stir once.</source>
            <translation>Vierte {starter} de iniciador ({starter_measure}) y remueve una vez.</translation>
        </message>
        <message>
            <source>Pour the {hot} of boiling water on {tea} of tea ({kind}, {bags}).</source>
            <translation>Vierte los {hot} de agua hirviendo sobre {tea} de té ({kind}, {bags}).</translation>
        </message>
        <message>
            <source>Slide the culture in with clean hands.</source>
            <translation>Desliza dentro el cultivo con las manos limpias.</translation>
        </message>
        <message>
            <source>Stir in {sugar} of sugar ({sugar_measure}) until no grain is left.</source>
            <translation>Disuelve {sugar} de azúcar ({sugar_measure}), removiendo hasta que no quede ni un grano.</translation>
        </message>
        <message>
            <source>This batch needs no cold water.</source>
            <translation>Este lote no necesita agua fría.</translation>
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
            <translation>Añadir un artículo…</translation>
        </message>
        <message>
            <source>Add a tea…</source>
            <translation>Añadir un té…</translation>
        </message>
        <message>
            <source>Add something else…</source>
            <translation>Añadir otra cosa…</translation>
        </message>
        <message>
            <source>Add the tea and the sugar you brew with, and what you bought of them for how much. Each brew then takes its share, you see what runs low, and the costs tell what a litre really comes to. Bottles and fruit can follow.</source>
            <translation>Añade el té y el azúcar con que preparas, y qué compraste de ellos y por cuánto. Cada preparación toma luego su parte, ves qué escasea, y los costes dicen lo que de verdad cuesta un litro. Botellas y fruta pueden seguir.</translation>
        </message>
        <message>
            <source>Also what is no longer in use</source>
            <translation>También lo que ya no se usa</translation>
        </message>
        <message>
            <source>The stores are empty</source>
            <translation>Las existencias están vacías</translation>
        </message>
        <message>
            <source>{count} supplies</source>
            <translation>{count} artículos</translation>
        </message>
        <message>
            <source>{count}, {low} low</source>
            <translation>{count}, {low} con poco</translation>
        </message>
    </context>
    <context>
        <name>Stores</name>
        <message>
            <source>1 piece</source>
            <translation>1 pieza</translation>
        </message>
        <message>
            <source>Buy {name}</source>
            <translation>Comprar {name}</translation>
        </message>
        <message>
            <source>Counted: tea, sugar, flavouring, caps, and the wear of the bottles, as far as they came from the stores. Not counted: energy, water, your time, jars and equipment, starter and culture, top-ups and feeding. Lots are used up oldest first.</source>
            <translation>Se cuenta: té, azúcar, saborizantes, tapas y el desgaste de las botellas, en la medida en que salieron de las existencias. No se cuenta: energía, agua, tu tiempo, frascos y equipo, iniciador y cultivo, rellenos y alimentación. Las partidas más antiguas se gastan primero.</translation>
        </message>
        <message>
            <source>Found when the shelf was counted; no price is known.</source>
            <translation>Se encontró al contar el estante; no se conoce ningún precio.</translation>
        </message>
        <message>
            <source>How often a bottle is filled</source>
            <translation>Cuántas veces se llena una botella</translation>
        </message>
        <message>
            <source>Less is left than the mark you set in the stores. Ticked off, it is not asked for again before you have written down a purchase.</source>
            <translation>Queda menos que la marca que fijaste en las existencias. Si lo marcas como hecho, no se vuelve a pedir hasta que anotes una compra.</translation>
        </message>
        <message>
            <source>Low: your mark is {mark}.</source>
            <translation>Poco: tu marca es {mark}.</translation>
        </message>
        <message>
            <source>No price for: {listed}</source>
            <translation>Sin precio: {listed}</translation>
        </message>
        <message>
            <source>None of its bottles are out.</source>
            <translation>Ninguna de sus botellas está fuera.</translation>
        </message>
        <message>
            <source>Nothing bought yet</source>
            <translation>Aún no se compró nada</translation>
        </message>
        <message>
            <source>Plans need {planned}, more than there is.</source>
            <translation>Los planes necesitan {planned}, más de lo que hay.</translation>
        </message>
        <message>
            <source>Plans will take {planned}.</source>
            <translation>Los planes usarán {planned}.</translation>
        </message>
        <message>
            <source>Please keep it shorter.</source>
            <translation>Acórtalo.</translation>
        </message>
        <message>
            <source>Please type a price.</source>
            <translation>Escribe un precio.</translation>
        </message>
        <message>
            <source>Please type more than nothing.</source>
            <translation>Escribe más que cero.</translation>
        </message>
        <message>
            <source>So much is not there: the books say {high}. Count the shelf if they are wrong.</source>
            <translation>No hay tanto: los registros dicen {high}. Cuenta el estante si están mal.</translation>
        </message>
        <message>
            <source>Some is best before {day}.</source>
            <translation>Una parte es de consumo preferente antes del {day}.</translation>
        </message>
        <message>
            <source>Some is past its best-before date, {day}.</source>
            <translation>Una parte pasó su fecha de consumo preferente, {day}.</translation>
        </message>
        <message>
            <source>Some of it is on record already. Add another supply instead.</source>
            <translation>Ya hay registros de él. Añade otro artículo en su lugar.</translation>
        </message>
        <message>
            <source>Some of it was used before that day.</source>
            <translation>Una parte se usó antes de ese día.</translation>
        </message>
        <message>
            <source>Some of it was used, so it stays on record.</source>
            <translation>Una parte se usó, así que queda registrado.</translation>
        </message>
        <message>
            <source>Takes {needed} of {left}.</source>
            <translation>Toma {needed} de {left}.</translation>
        </message>
        <message>
            <source>The amount</source>
            <translation>La cantidad</translation>
        </message>
        <message>
            <source>The bottles are not empty yet by the records.</source>
            <translation>Según los registros, las botellas aún no están vacías.</translation>
        </message>
        <message>
            <source>The mark</source>
            <translation>La marca</translation>
        </message>
        <message>
            <source>The most must not be less than the least.</source>
            <translation>El máximo no debe ser menor que el mínimo.</translation>
        </message>
        <message>
            <source>The price</source>
            <translation>El precio</translation>
        </message>
        <message>
            <source>The rating</source>
            <translation>El límite de presión</translation>
        </message>
        <message>
            <source>The share of sugar</source>
            <translation>La proporción de azúcar</translation>
        </message>
        <message>
            <source>There is no price in “{text}”. Type it as in “3.50” or “3,50”.</source>
            <translation>No hay ningún precio en «{text}». Escríbelo como «3.50» o «3,50».</translation>
        </message>
        <message>
            <source>What is used this way cannot be counted like that.</source>
            <translation>Lo que se usa de esta forma no se puede contar así.</translation>
        </message>
        <message>
            <source>as it stands in your stores</source>
            <translation>tal como figura en tus existencias</translation>
        </message>
        <message>
            <source>at least {money}</source>
            <translation>al menos {money}</translation>
        </message>
        <message>
            <source>at least {money} more than in the shop</source>
            <translation>al menos {money} más que en la tienda</translation>
        </message>
        <message>
            <source>at least {sum}</source>
            <translation>al menos {sum}</translation>
        </message>
        <message>
            <source>at most {money}</source>
            <translation>como máximo {money}</translation>
        </message>
        <message>
            <source>at most {money} saved</source>
            <translation>como máximo {money} de ahorro</translation>
        </message>
        <message>
            <source>last price of a kg</source>
            <translation>último precio del kg</translation>
        </message>
        <message>
            <source>last price of a litre</source>
            <translation>último precio del litro</translation>
        </message>
        <message>
            <source>last price of one</source>
            <translation>último precio por unidad</translation>
        </message>
        <message>
            <source>more than in the shop</source>
            <translation>más que en la tienda</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>desconocido</translation>
        </message>
        <message>
            <source>nothing</source>
            <translation>nada</translation>
        </message>
        <message>
            <source>saved against the shop</source>
            <translation>de ahorro frente a la tienda</translation>
        </message>
        <message>
            <source>{amount} more was used than was written down as bought.</source>
            <translation>Se usaron {amount} más de lo que se anotó como comprado.</translation>
        </message>
        <message>
            <source>{count} are filled or not back yet.</source>
            <translation>{count} están llenas o aún sin devolver.</translation>
        </message>
        <message>
            <source>{count} pieces</source>
            <translation>{count} piezas</translation>
        </message>
        <message>
            <source>{first} and {last}</source>
            <translation>{first} y {last}</translation>
        </message>
        <message>
            <source>{left} left</source>
            <translation>quedan {left}</translation>
        </message>
        <message>
            <source>{left} of {name} left, {needed} needed.</source>
            <translation>Quedan {left} de {name}, hacen falta {needed}.</translation>
        </message>
        <message>
            <source>{low} of it was used already, so it was at least that.</source>
            <translation>Ya se usaron {low}, así que al menos había eso.</translation>
        </message>
        <message>
            <source>{money} a kg</source>
            <translation>{money} el kg</translation>
        </message>
        <message>
            <source>{money} a litre</source>
            <translation>{money} el litro</translation>
        </message>
        <message>
            <source>{money} each</source>
            <translation>{money} por unidad</translation>
        </message>
        <message>
            <source>{money} more than in the shop</source>
            <translation>{money} más que en la tienda</translation>
        </message>
        <message>
            <source>{money} saved</source>
            <translation>{money} de ahorro</translation>
        </message>
        <message>
            <source>{value} is no longer on the list of the stores.</source>
            <translation>{value} ya no está en la lista de existencias.</translation>
        </message>
        <message>
            <source>{value} is not for that.</source>
            <translation>{value} no es para eso.</translation>
        </message>
        <message>
            <source>{value} is planned with it. Change that plan first.</source>
            <translation>{value} está planificado con ello. Cambia antes ese plan.</translation>
        </message>
        <message>
            <source>“{part}” can be read in more than one way. Type it without grouping.</source>
            <translation>«{part}» se puede leer de más de una manera. Escríbelo sin separar los miles.</translation>
        </message>
        <message>
            <source>“{part}” has more decimals than the currency has coins, or a grouping sign.</source>
            <translation>«{part}» tiene más decimales de los que usa la moneda, o un separador de miles.</translation>
        </message>
        <message>
            <source>“{part}” is more than can be kept here.</source>
            <translation>«{part}» es más de lo que se puede guardar aquí.</translation>
        </message>
        <message>
            <source>“{part}” is no currency known here. Use a code such as EUR or USD.</source>
            <translation>«{part}» no es una moneda conocida aquí. Usa un código como EUR o USD.</translation>
        </message>
    </context>
    <context>
        <name>StoresActs</name>
        <message>
            <source>Purchase of {amount} of {name} taken out</source>
            <translation>Compra de {amount} de {name} quitada</translation>
        </message>
        <message>
            <source>Purchase of {name} corrected: {amount}</source>
            <translation>Compra de {name} corregida: {amount}</translation>
        </message>
        <message>
            <source>Purchase of {name} corrected: {amount} for {price}</source>
            <translation>Compra de {name} corregida: {amount} por {price}</translation>
        </message>
        <message>
            <source>{amount} of {name} bought</source>
            <translation>{amount} de {name}: comprado</translation>
        </message>
        <message>
            <source>{amount} of {name} bought for {price}</source>
            <translation>{amount} de {name} por {price}: comprado</translation>
        </message>
        <message>
            <source>{amount} of {name} spoiled or broken</source>
            <translation>{amount} de {name}: estropeado o roto</translation>
        </message>
        <message>
            <source>{amount} of {name} used otherwise</source>
            <translation>{amount} de {name}: usado para otra cosa</translation>
        </message>
        <message>
            <source>{count} bottles of {name} back in the stores</source>
            <translation>{count} botellas de {name} de vuelta en las existencias</translation>
        </message>
        <message>
            <source>{name} back on the list of the stores</source>
            <translation>{name} de vuelta en la lista de existencias</translation>
        </message>
        <message>
            <source>{name} counted: {amount}</source>
            <translation>{name} contado: {amount}</translation>
        </message>
        <message>
            <source>{name} in the stores changed</source>
            <translation>{name} cambiado en las existencias</translation>
        </message>
        <message>
            <source>{name} put on the list of the stores</source>
            <translation>{name} puesto en la lista de existencias</translation>
        </message>
        <message>
            <source>{name} taken off the list of the stores</source>
            <translation>{name} quitado de la lista de existencias</translation>
        </message>
        <message>
            <source>{old_name} in the stores renamed {name}</source>
            <translation>{old_name} renombrado {name} en las existencias</translation>
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
            <translation>En el estante</translation>
        </message>
        <message>
            <source>Stores</source>
            <translation>Existencias</translation>
        </message>
        <message>
            <source>What it costs</source>
            <translation>Lo que cuesta</translation>
        </message>
        <message>
            <source>What there is, and what it costs</source>
            <translation>Lo que hay, y lo que cuesta</translation>
        </message>
    </context>
    <context>
        <name>SuppliesModel</name>
        <message>
            <source>Amount</source>
            <translation>Cantidad</translation>
        </message>
        <message>
            <source>Bought</source>
            <translation>Comprado</translation>
        </message>
        <message>
            <source>For</source>
            <translation>Para</translation>
        </message>
        <message>
            <source>From</source>
            <translation>De</translation>
        </message>
        <message>
            <source>Left</source>
            <translation>Queda</translation>
        </message>
        <message>
            <source>Price</source>
            <translation>Precio</translation>
        </message>
        <message>
            <source>Supply</source>
            <translation>Artículo</translation>
        </message>
        <message>
            <source>When</source>
            <translation>Cuándo</translation>
        </message>
        <message>
            <source>Why</source>
            <translation>Por qué</translation>
        </message>
        <message>
            <source>best before {day}</source>
            <translation>consumo preferente {day}</translation>
        </message>
        <message>
            <source>not on the books</source>
            <translation>sin registrar</translation>
        </message>
        <message>
            <source>past its date, {day}</source>
            <translation>fecha pasada, {day}</translation>
        </message>
        <message>
            <source>{kind}, no longer in use</source>
            <translation>{kind}, ya sin uso</translation>
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
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>Add to the stores</source>
            <translation>Añadir a las existencias</translation>
        </message>
        <message>
            <source>Allergens</source>
            <translation>Alérgenos</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Change a supply</source>
            <translation>Cambiar un artículo</translation>
        </message>
        <message>
            <source>Choose what it is, or “Something else” and type its share of sugar.</source>
            <translation>Elige qué es, o «Otra cosa» y escribe su proporción de azúcar.</translation>
        </message>
        <message>
            <source>How it is &amp;counted</source>
            <translation>Cómo se &amp;cuenta</translation>
        </message>
        <message>
            <source>Ingredients, as on its label</source>
            <translation>Ingredientes, según etiqueta</translation>
        </message>
        <message>
            <source>It stays so: some of it is on record.</source>
            <translation>Queda así: hay registros de él.</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Note when less is &amp;left than</source>
            <translation>Avisar si &amp;queda menos de</translation>
        </message>
        <message>
            <source>Please choose</source>
            <translation>Elige</translation>
        </message>
        <message>
            <source>Rating, over the air's</source>
            <translation>Límite manométrico</translation>
        </message>
        <message>
            <source>Save</source>
            <translation>Guardar</translation>
        </message>
        <message>
            <source>Something else</source>
            <translation>Otra cosa</translation>
        </message>
        <message>
            <source>Sugar, at least</source>
            <translation>Azúcar, como mínimo</translation>
        </message>
        <message>
            <source>Sugar, at most</source>
            <translation>Azúcar, como máximo</translation>
        </message>
        <message>
            <source>Volume to the brim</source>
            <translation>Volumen hasta el borde</translation>
        </message>
        <message>
            <source>What is known of them</source>
            <translation>Qué se sabe de ellas</translation>
        </message>
        <message>
            <source>What it is</source>
            <translation>Qué es</translation>
        </message>
        <message>
            <source>What it is &amp;for</source>
            <translation>&amp;Para qué es</translation>
        </message>
        <message>
            <source>Which &amp;tea</source>
            <translation>Qué &amp;té</translation>
        </message>
        <message>
            <source>not known</source>
            <translation>desconocido</translation>
        </message>
    </context>
    <context>
        <name>SupplyList</name>
        <message>
            <source>What is in the stores</source>
            <translation>Lo que hay en existencias</translation>
        </message>
    </context>
    <context>
        <name>SupplySheet</name>
        <message>
            <source>Allergens: {text}</source>
            <translation>Alérgenos: {text}</translation>
        </message>
        <message>
            <source>Bought…</source>
            <translation>Comprado…</translation>
        </message>
        <message>
            <source>Change…</source>
            <translation>Cambiar…</translation>
        </message>
        <message>
            <source>Correct…</source>
            <translation>Corregir…</translation>
        </message>
        <message>
            <source>Counted…</source>
            <translation>Contado…</translation>
        </message>
        <message>
            <source>Ingredients: {text}</source>
            <translation>Ingredientes: {text}</translation>
        </message>
        <message>
            <source>More for this supply</source>
            <translation>Más para este artículo</translation>
        </message>
        <message>
            <source>Purchases</source>
            <translation>Compras</translation>
        </message>
        <message>
            <source>Put it back on the list</source>
            <translation>Devolverlo a la lista</translation>
        </message>
        <message>
            <source>Sugar: {low:.3g} to {high:.3g} %.</source>
            <translation>Azúcar: {low:.3g} a {high:.3g} %.</translation>
        </message>
        <message>
            <source>Take it off the list</source>
            <translation>Quitarlo de la lista</translation>
        </message>
        <message>
            <source>Take out</source>
            <translation>Quitar</translation>
        </message>
        <message>
            <source>Taken out…</source>
            <translation>Sacado…</translation>
        </message>
        <message>
            <source>Washed, and back</source>
            <translation>Lavadas y de vuelta</translation>
        </message>
        <message>
            <source>What left, and what came back</source>
            <translation>Lo que salió, y lo que volvió</translation>
        </message>
        <message>
            <source>left</source>
            <translation>queda</translation>
        </message>
        <message>
            <source>no longer in use</source>
            <translation>ya sin uso</translation>
        </message>
        <message>
            <source>your mark</source>
            <translation>tu marca</translation>
        </message>
        <message>
            <source>{count} bottles of {name} are washed and back</source>
            <translation>{count} botellas de {name} están lavadas y de vuelta</translation>
        </message>
        <message>
            <source>{count} emptied bottles of {name}</source>
            <translation>{count} botellas vaciadas de {name}</translation>
        </message>
    </context>
    <context>
        <name>TableChoices</name>
        <message>
            <source>Bar |</source>
            <translation>Barra |</translation>
        </message>
        <message>
            <source>Column {number}</source>
            <translation>Columna {number}</translation>
        </message>
        <message>
            <source>Columns are parted by</source>
            <translation>Columnas separadas por</translation>
        </message>
        <message>
            <source>Comma ,</source>
            <translation>Coma ,</translation>
        </message>
        <message>
            <source>Date and time</source>
            <translation>Fecha y hora</translation>
        </message>
        <message>
            <source>Dates</source>
            <translation>Fechas</translation>
        </message>
        <message>
            <source>Day first</source>
            <translation>Primero el día</translation>
        </message>
        <message>
            <source>In the dates</source>
            <translation>En las fechas</translation>
        </message>
        <message>
            <source>Letters are written as</source>
            <translation>Codificación del texto</translation>
        </message>
        <message>
            <source>Month first</source>
            <translation>Primero el mes</translation>
        </message>
        <message>
            <source>Semicolon ;</source>
            <translation>Punto y coma ;</translation>
        </message>
        <message>
            <source>Tab</source>
            <translation>Tabulador</translation>
        </message>
        <message>
            <source>Temperatures in</source>
            <translation>Temperaturas en</translation>
        </message>
        <message>
            <source>The times are in</source>
            <translation>Las horas están en</translation>
        </message>
        <message>
            <source>Time of day, if apart</source>
            <translation>Hora del día, si va aparte</translation>
        </message>
        <message>
            <source>UTC</source>
            <translation>UTC</translation>
        </message>
        <message>
            <source>in the same column</source>
            <translation>en la misma columna</translation>
        </message>
        <message>
            <source>your own time ({zone})</source>
            <translation>tu propia hora ({zone})</translation>
        </message>
        <message>
            <source>{zone}, as the file says</source>
            <translation>{zone}, como dice el archivo</translation>
        </message>
    </context>
    <context>
        <name>TableFileDialog</name>
        <message>
            <source>All files (*)</source>
            <translation>Todos los archivos (*)</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Choose a file…</source>
            <translation>Elegir un archivo…</translation>
        </message>
        <message>
            <source>Keep them</source>
            <translation>Conservarlas</translation>
        </message>
        <message>
            <source>No file chosen yet.</source>
            <translation>Ningún archivo elegido.</translation>
        </message>
        <message>
            <source>Read it otherwise</source>
            <translation>Leerlo de otra forma</translation>
        </message>
        <message>
            <source>Read the file</source>
            <translation>Leer el archivo</translation>
        </message>
        <message>
            <source>Tables as text ({endings})</source>
            <translation>Tablas como texto ({endings})</translation>
        </message>
    </context>
    <context>
        <name>TastingDialog</name>
        <message>
            <source>Enter the tasting</source>
            <translation>Anotar la cata</translation>
        </message>
        <message>
            <source>Taste in this order, a sip of water in between. Discard, untasted, whatever shows mold. Leave empty what you did not taste.</source>
            <translation>Cata en este orden, con un sorbo de agua entre medias. Desecha, sin catarlo, lo que muestre moho. Deja vacío lo que no cataste.</translation>
        </message>
        <message>
            <source>Taste {name}</source>
            <translation>Catar {name}</translation>
        </message>
        <message>
            <source>There is nothing to taste yet.</source>
            <translation>Aún no hay nada que catar.</translation>
        </message>
        <message>
            <source>Who tastes (optional)</source>
            <translation>Quién cata (opcional)</translation>
        </message>
        <message>
            <source>{code} is not to be tasted.</source>
            <translation>{code} no se debe catar.</translation>
        </message>
    </context>
    <context>
        <name>TastingRow</name>
        <message>
            <source>Liking</source>
            <translation>Valoración</translation>
        </message>
        <message>
            <source>Liking of {code}, 0 to 10</source>
            <translation>Valoración de {code}, de 0 a 10</translation>
        </message>
        <message>
            <source>Verdict on {code}</source>
            <translation>Veredicto sobre {code}</translation>
        </message>
        <message>
            <source>Words on {code}</source>
            <translation>Palabras sobre {code}</translation>
        </message>
        <message>
            <source>glass {number}</source>
            <translation>vaso {number}</translation>
        </message>
        <message>
            <source>in your words (optional)</source>
            <translation>en tus palabras (opcional)</translation>
        </message>
    </context>
    <context>
        <name>TeaStrengthEdit</name>
        <message>
            <source>How much tea</source>
            <translation>Cuánto té</translation>
        </message>
        <message>
            <source>Tea counted in</source>
            <translation>Té contado en</translation>
        </message>
        <message>
            <source>bags/L</source>
            <translation>bolsitas/L</translation>
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
            <translation>1 línea</translation>
        </message>
        <message>
            <source>Batch</source>
            <translation>Lote</translation>
        </message>
        <message>
            <source>Came due, not ticked off: {reminder}</source>
            <translation>Venció sin marcarse: {reminder}</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Photo</source>
            <translation>Foto</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>The newest {shown} of {total} lines</source>
            <translation>Las {shown} líneas más recientes de {total}</translation>
        </message>
        <message>
            <source>Today</source>
            <translation>Hoy</translation>
        </message>
        <message>
            <source>Vessel</source>
            <translation>Recipiente</translation>
        </message>
        <message>
            <source>Yesterday</source>
            <translation>Ayer</translation>
        </message>
        <message>
            <source>d MMM yyyy</source>
            <translation>d MMM yyyy</translation>
        </message>
        <message>
            <source>dddd d MMMM yyyy</source>
            <translation>dddd d 'de' MMMM 'de' yyyy</translation>
        </message>
        <message>
            <source>entered {when}</source>
            <translation>anotado el {when}</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>{batch} poured over from {old} into {new}</source>
            <translation>{batch} trasvasado de {old} a {new}</translation>
        </message>
        <message>
            <source>{count} temperatures in {file} end here</source>
            <translation>{count} temperaturas de {file} terminan aquí</translation>
        </message>
        <message>
            <source>{name} came to be: {origin}</source>
            <translation>{name} nació: {origin}</translation>
        </message>
        <message>
            <source>{sentence}: {words}</source>
            <translation>{sentence}: {words}</translation>
        </message>
        <message>
            <source>{temperature} read</source>
            <translation>{temperature} leídos</translation>
        </message>
        <message>
            <source>{total} lines</source>
            <translation>{total} líneas</translation>
        </message>
        <message>
            <source>{what}, {volume}</source>
            <translation>{what}, {volume}</translation>
        </message>
        <message>
            <source>“{words}”</source>
            <translation>«{words}»</translation>
        </message>
    </context>
    <context>
        <name>TimelineList</name>
        <message>
            <source>Time line, newest first</source>
            <translation>Línea de tiempo, primero lo más reciente</translation>
        </message>
    </context>
    <context>
        <name>TimelineModel</name>
        <message>
            <source>What happened</source>
            <translation>Qué pasó</translation>
        </message>
    </context>
    <context>
        <name>TimerCard</name>
        <message>
            <source>Open the run sheet</source>
            <translation>Abrir la hoja de trabajo</translation>
        </message>
        <message>
            <source>Open the run sheet of {batch}</source>
            <translation>Abrir la hoja de trabajo de {batch}</translation>
        </message>
        <message>
            <source>Time left</source>
            <translation>Tiempo restante</translation>
        </message>
    </context>
    <context>
        <name>TopUpDialog</name>
        <message>
            <source>A guess without measuring: between {low} and {high} may have evaporated since it was last noted.</source>
            <translation>Una suposición sin medir: entre {low} y {high} pueden haberse evaporado desde la última anotación.</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>How much</source>
            <translation>Cuánto</translation>
        </message>
        <message>
            <source>How much sugar is left in it is not known yet.</source>
            <translation>Aún no se sabe cuánto azúcar queda dentro.</translation>
        </message>
        <message>
            <source>How much sweet tea</source>
            <translation>Cuánto té azucarado</translation>
        </message>
        <message>
            <source>How much sweet tea, room for {room}</source>
            <translation>Cuánto té azucarado, cabe {room}</translation>
        </message>
        <message>
            <source>How warm it is now</source>
            <translation>Qué temperatura tiene ahora</translation>
        </message>
        <message>
            <source>How warm it is now, at most {limit}</source>
            <translation>Temperatura ahora, como máximo {limit}</translation>
        </message>
        <message>
            <source>Leaf per litre of it</source>
            <translation>Té en hoja por litro</translation>
        </message>
        <message>
            <source>No pH of it is known, so what it becomes is not known either.</source>
            <translation>No se conoce su pH, así que tampoco en qué se convierte.</translation>
        </message>
        <message>
            <source>Note the topping up</source>
            <translation>Anotar el relleno</translation>
        </message>
        <message>
            <source>Pour it in</source>
            <translation>Verterlo</translation>
        </message>
        <message>
            <source>Sugar from about {before} to about {after}</source>
            <translation>Azúcar de cerca de {before} a cerca de {after}</translation>
        </message>
        <message>
            <source>Sugar per litre of it</source>
            <translation>Azúcar por litro</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>Top up</source>
            <translation>Rellenar</translation>
        </message>
        <message>
            <source>Top up {name}</source>
            <translation>Rellenar {name}</translation>
        </message>
        <message>
            <source>Top up {name} with fresh sweet tea</source>
            <translation>Rellenar {name} con té azucarado fresco</translation>
        </message>
        <message>
            <source>Type an amount to see what it does.</source>
            <translation>Escribe una cantidad para ver qué hace.</translation>
        </message>
        <message>
            <source>Use ripe, unflavoured kombucha, so that the pellicle stays covered and sour.</source>
            <translation>Usa kombucha madura y sin sabores, para que la película quede cubierta y ácida.</translation>
        </message>
        <message>
            <source>Why it goes in all the same</source>
            <translation>Por qué va dentro de todos modos</translation>
        </message>
        <message>
            <source>pH from about {before} to {after}</source>
            <translation>pH de cerca de {before} a {after}</translation>
        </message>
        <message>
            <source>{before} + {poured} = {after}, with {sugar} of sugar and {tea} of tea</source>
            <translation>{before} + {poured} = {after}, con {sugar} de azúcar y {tea} de té</translation>
        </message>
    </context>
    <context>
        <name>Tray</name>
        <message>
            <source>Due: {title}</source>
            <translation>Pendiente: {title}</translation>
        </message>
        <message>
            <source>Nothing to do</source>
            <translation>Nada que hacer</translation>
        </message>
        <message>
            <source>Quit</source>
            <translation>Salir</translation>
        </message>
        <message>
            <source>Show the shelf</source>
            <translation>Mostrar el estante</translation>
        </message>
        <message>
            <source>brewdesk: 1 thing is due</source>
            <translation>brewdesk: 1 pendiente</translation>
        </message>
        <message>
            <source>brewdesk: nothing is due</source>
            <translation>brewdesk: nada pendiente</translation>
        </message>
        <message>
            <source>brewdesk: {count} things are due</source>
            <translation>brewdesk: {count} pendientes</translation>
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
            <translation>Abandonar</translation>
        </message>
        <message>
            <source>Put it back where it was (Escape)</source>
            <translation>Devolverlo adonde estaba (Escape)</translation>
        </message>
    </context>
    <context>
        <name>TrialActs</name>
        <message>
            <source>Codes of the trial {name} opened</source>
            <translation>Códigos del ensayo {name} abiertos</translation>
        </message>
        <message>
            <source>Tasting of {code} in the trial {name} taken out</source>
            <translation>Cata de {code} en el ensayo {name} quitada</translation>
        </message>
        <message>
            <source>Trial {name} changed</source>
            <translation>Ensayo {name} cambiado</translation>
        </message>
        <message>
            <source>Trial {name} ended</source>
            <translation>Ensayo {name} terminado</translation>
        </message>
        <message>
            <source>Trial {name} given up</source>
            <translation>Ensayo {name} abandonado</translation>
        </message>
        <message>
            <source>Trial {name} planned, {jars} jars</source>
            <translation>Ensayo {name} planificado, {jars} frascos</translation>
        </message>
        <message>
            <source>Trial {name} started: {jars} batches planned</source>
            <translation>Ensayo {name} empezado: {jars} lotes planificados</translation>
        </message>
        <message>
            <source>Trial {old_name} renamed {name}</source>
            <translation>Ensayo {old_name} renombrado {name}</translation>
        </message>
        <message>
            <source>{batch} taken into the trial {name}</source>
            <translation>{batch} incluido en el ensayo {name}</translation>
        </message>
        <message>
            <source>{code} counted again in the trial {name}</source>
            <translation>{code} vuelve a contar en el ensayo {name}</translation>
        </message>
        <message>
            <source>{code} left out of the trial {name}: {reason}</source>
            <translation>{code} excluido del ensayo {name}: {reason}</translation>
        </message>
        <message>
            <source>{jars} jars of the trial {name} tasted</source>
            <translation>{jars} frascos del ensayo {name} catados</translation>
        </message>
    </context>
    <context>
        <name>TrialChart</name>
        <message>
            <source>No pH was read yet. Once readings of the jars are entered on the shelf, their curves lie here over each other.</source>
            <translation>Aún no se leyó ningún pH. En cuanto se anoten en el estante lecturas de los frascos, sus curvas se superponen aquí.</translation>
        </message>
        <message>
            <source>The table below has the same in figures.</source>
            <translation>La tabla de abajo dice lo mismo en cifras.</translation>
        </message>
        <message>
            <source>pH by day since each jar began</source>
            <translation>pH por día desde que empezó cada frasco</translation>
        </message>
        <message>
            <source>pH of the jars over time</source>
            <translation>pH de los frascos a lo largo del tiempo</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>{code} · day {day} · pH {ph}</source>
            <translation>{code} · día {day} · pH {ph}</translation>
        </message>
    </context>
    <context>
        <name>TrialDialog</name>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>Choose at least one vessel for each level.</source>
            <translation>Elige al menos un recipiente para cada nivel.</translation>
        </message>
        <message>
            <source>Draw lots and plan it</source>
            <translation>Sortear y planificarlo</translation>
        </message>
        <message>
            <source>I say myself which vessel gets which level</source>
            <translation>Yo mismo digo qué recipiente recibe qué nivel</translation>
        </message>
        <message>
            <source>Its levels</source>
            <translation>Sus niveles</translation>
        </message>
        <message>
            <source>No vessel chosen: batches that there are already can be taken in later. What differs between them is listed then.</source>
            <translation>Ningún recipiente elegido: los lotes que ya hay se pueden incluir después. Entonces se muestra en qué difieren.</translation>
        </message>
        <message>
            <source>One jar of a level cannot be told from the level itself. Take several of each, if you can.</source>
            <translation>Un solo frasco de un nivel no se puede distinguir del propio nivel. Toma varios de cada uno, si puedes.</translation>
        </message>
        <message>
            <source>Plan a trial</source>
            <translation>Planificar un ensayo</translation>
        </message>
        <message>
            <source>Taste blind: codes on jars and page until they are opened</source>
            <translation>Catar a ciegas: códigos en frascos y página hasta que se abran</translation>
        </message>
        <message>
            <source>The one thing in which the jars &amp;differ</source>
            <translation>Lo único en que los frascos &amp;difieren</translation>
        </message>
        <message>
            <source>Vessels, alike if possible</source>
            <translation>Recipientes, iguales si es posible</translation>
        </message>
        <message>
            <source>What you want to &amp;know</source>
            <translation>Qué quieres &amp;saber</translation>
        </message>
        <message>
            <source>{jars} jars, dealt out evenly.</source>
            <translation>{jars} frascos, repartidos por igual.</translation>
        </message>
        <message>
            <source>{jars} jars: an interval, but no more than a hint. From {count} of each on, a difference can be shown.</source>
            <translation>{jars} frascos: un intervalo, pero solo un indicio. A partir de {count} de cada uno se puede mostrar una diferencia.</translation>
        </message>
    </context>
    <context>
        <name>TrialJarsModel</name>
        <message>
            <source>Acidity</source>
            <translation>Acidez</translation>
        </message>
        <message>
            <source>Code</source>
            <translation>Código</translation>
        </message>
        <message>
            <source>Jar</source>
            <translation>Frasco</translation>
        </message>
        <message>
            <source>Level</source>
            <translation>Nivel</translation>
        </message>
        <message>
            <source>Liking</source>
            <translation>Valoración</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Película</translation>
        </message>
        <message>
            <source>State</source>
            <translation>Estado</translation>
        </message>
        <message>
            <source>closed</source>
            <translation>cerrado</translation>
        </message>
        <message>
            <source>left out: {reason}</source>
            <translation>excluido: {reason}</translation>
        </message>
        <message>
            <source>no batch yet</source>
            <translation>aún sin lote</translation>
        </message>
        <message>
            <source>pH 3.2 passed</source>
            <translation>pH 3.2 superado</translation>
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
            <translation>Acidez</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Empezado</translation>
        </message>
        <message>
            <source>Differences</source>
            <translation>Diferencias</translation>
        </message>
        <message>
            <source>Each line is a single jar.</source>
            <translation>Cada línea es un solo frasco.</translation>
        </message>
        <message>
            <source>Jar</source>
            <translation>Frasco</translation>
        </message>
        <message>
            <source>Jars</source>
            <translation>Frascos</translation>
        </message>
        <message>
            <source>Jars counted</source>
            <translation>Frascos contados</translation>
        </message>
        <message>
            <source>Jars differ in</source>
            <translation>Los frascos difieren en</translation>
        </message>
        <message>
            <source>Left out</source>
            <translation>Excluidos</translation>
        </message>
        <message>
            <source>Level</source>
            <translation>Nivel</translation>
        </message>
        <message>
            <source>Liking</source>
            <translation>Valoración</translation>
        </message>
        <message>
            <source>Made from the maker's own entries; brewdesk cannot check them. A trial at home tells of its own jars. It says nothing of safety; local rules come first.</source>
            <translation>Hecho con las anotaciones de quien lo elaboró; brewdesk no puede comprobarlas. Un ensayo casero habla de sus propios frascos. No dice nada sobre seguridad; las normas locales van primero.</translation>
        </message>
        <message>
            <source>Page {page} of {pages}</source>
            <translation>Página {page} de {pages}</translation>
        </message>
        <message>
            <source>Pellicle</source>
            <translation>Película</translation>
        </message>
        <message>
            <source>Tasted blind</source>
            <translation>Catado a ciegas</translation>
        </message>
        <message>
            <source>Taster</source>
            <translation>Catador</translation>
        </message>
        <message>
            <source>Tastings</source>
            <translation>Catas</translation>
        </message>
        <message>
            <source>The bar holds the difference in 95 of 100 such trials; where it crosses the line, there may be none.</source>
            <translation>La barra contiene la diferencia en 95 de 100 ensayos así; donde cruza la línea, puede que no haya ninguna.</translation>
        </message>
        <message>
            <source>The maker's conclusion</source>
            <translation>La conclusión de quien lo elaboró</translation>
        </message>
        <message>
            <source>Thin lines are single jars, thick ones the mean of a level.</source>
            <translation>Las líneas finas son frascos sueltos, las gruesas la media de un nivel.</translation>
        </message>
        <message>
            <source>Trial report</source>
            <translation>Informe del ensayo</translation>
        </message>
        <message>
            <source>What else differs</source>
            <translation>Qué más difiere</translation>
        </message>
        <message>
            <source>What these jars show</source>
            <translation>Lo que muestran estos frascos</translation>
        </message>
        <message>
            <source>Words</source>
            <translation>Palabras</translation>
        </message>
        <message>
            <source>day since each jar began</source>
            <translation>día desde que empezó cada frasco</translation>
        </message>
        <message>
            <source>left out: {reason}</source>
            <translation>excluido: {reason}</translation>
        </message>
        <message>
            <source>no</source>
            <translation>no</translation>
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
            <translation>pH {ph} superado</translation>
        </message>
        <message>
            <source>yes</source>
            <translation>sí</translation>
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
            <translation>Imágenes PNG (*.png)</translation>
        </message>
        <message>
            <source>SVG pictures (*.svg)</source>
            <translation>Imágenes SVG (*.svg)</translation>
        </message>
        <message>
            <source>Save as picture</source>
            <translation>Guardar como imagen</translation>
        </message>
        <message>
            <source>Save as picture…</source>
            <translation>Guardar como imagen…</translation>
        </message>
        <message>
            <source>Save the trial report as PDF</source>
            <translation>Guardar el informe del ensayo como PDF</translation>
        </message>
        <message>
            <source>With names of jars and tasters</source>
            <translation>Con nombres de frascos y catadores</translation>
        </message>
    </context>
    <context>
        <name>TrialSheet</name>
        <message>
            <source>Change name and question…</source>
            <translation>Cambiar nombre y pregunta…</translation>
        </message>
        <message>
            <source>Count it again</source>
            <translation>Volver a contarlo</translation>
        </message>
        <message>
            <source>End…</source>
            <translation>Terminar…</translation>
        </message>
        <message>
            <source>Give the trial up…</source>
            <translation>Abandonar el ensayo…</translation>
        </message>
        <message>
            <source>Go to the jar</source>
            <translation>Ir al frasco</translation>
        </message>
        <message>
            <source>How far apart</source>
            <translation>Distancia entre niveles</translation>
        </message>
        <message>
            <source>Jars</source>
            <translation>Frascos</translation>
        </message>
        <message>
            <source>Jars of the trial</source>
            <translation>Frascos del ensayo</translation>
        </message>
        <message>
            <source>Leave out…</source>
            <translation>Excluir…</translation>
        </message>
        <message>
            <source>More</source>
            <translation>Más</translation>
        </message>
        <message>
            <source>Open the codes</source>
            <translation>Abrir los códigos</translation>
        </message>
        <message>
            <source>Report…</source>
            <translation>Informe…</translation>
        </message>
        <message>
            <source>Sheet of the trial</source>
            <translation>Hoja del ensayo</translation>
        </message>
        <message>
            <source>Start…</source>
            <translation>Empezar…</translation>
        </message>
        <message>
            <source>Take a batch in…</source>
            <translation>Incluir un lote…</translation>
        </message>
        <message>
            <source>Taste…</source>
            <translation>Catar…</translation>
        </message>
        <message>
            <source>What else differs</source>
            <translation>Qué más difiere</translation>
        </message>
        <message>
            <source>Your conclusion: {words}</source>
            <translation>Tu conclusión: {words}</translation>
        </message>
        <message>
            <source>codes closed</source>
            <translation>códigos cerrados</translation>
        </message>
        <message>
            <source>since {date}</source>
            <translation>desde el {date}</translation>
        </message>
        <message>
            <source>{count} jars</source>
            <translation>{count} frascos</translation>
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
            <translation>1 de 100 ensayos</translation>
        </message>
        <message>
            <source>A level</source>
            <translation>Un nivel</translation>
        </message>
        <message>
            <source>A level must lie between {low} and {high}.</source>
            <translation>Un nivel debe estar entre {low} y {high}.</translation>
        </message>
        <message>
            <source>A name of a level has at most {high} letters.</source>
            <translation>El nombre de un nivel tiene como máximo {high} letras.</translation>
        </message>
        <message>
            <source>A trial compares at least two levels.</source>
            <translation>Un ensayo compara al menos dos niveles.</translation>
        </message>
        <message>
            <source>A vessel can hold one jar of the trial only.</source>
            <translation>Un recipiente solo puede contener un frasco del ensayo.</translation>
        </message>
        <message>
            <source>At most {high} jars fit into one trial.</source>
            <translation>En un ensayo caben como máximo {high} frascos.</translation>
        </message>
        <message>
            <source>At most {high} letters fit here.</source>
            <translation>Aquí caben como máximo {high} letras.</translation>
        </message>
        <message>
            <source>At most {high} levels fit into one trial.</source>
            <translation>En un ensayo caben como máximo {high} niveles.</translation>
        </message>
        <message>
            <source>Begun</source>
            <translation>Empezado</translation>
        </message>
        <message>
            <source>Beside {factor}, the levels differ in something else as a whole. What that does cannot be told from what {factor} does:</source>
            <translation>Además de {factor}, los niveles difieren por completo en otra cosa. Lo que eso hace no se puede distinguir de lo que hace {factor}:</translation>
        </message>
        <message>
            <source>Chance alone does as much in {chance}, allowing for the {count} comparisons made.</source>
            <translation>El azar solo hace otro tanto en {chance}, teniendo en cuenta las {count} comparaciones hechas.</translation>
        </message>
        <message>
            <source>Chance alone does as much in {chance}.</source>
            <translation>El azar solo hace otro tanto en {chance}.</translation>
        </message>
        <message>
            <source>Choose at least one vessel for each level.</source>
            <translation>Elige al menos un recipiente para cada nivel.</translation>
        </message>
        <message>
            <source>Choose or type the level of each.</source>
            <translation>Elige o escribe el nivel de cada uno.</translation>
        </message>
        <message>
            <source>Culture</source>
            <translation>Cultivo</translation>
        </message>
        <message>
            <source>Days to pH {ph}</source>
            <translation>Días hasta pH {ph}</translation>
        </message>
        <message>
            <source>Dealing the same jars out by lot parts them as far in {chance}.</source>
            <translation>Repartir los mismos frascos por sorteo los separa otro tanto en {chance}.</translation>
        </message>
        <message>
            <source>Does green tea sour faster than black? Two jars side by side cannot say: two jars of the same tea differ as well. Start several jars alike but for one thing, draw lots for which gets what, and taste them by code. The program lays the curves over each other and says what the jars show, with its doubt, and what they do not.</source>
            <translation>¿Se acidifica más rápido el té verde que el negro? Dos frascos lado a lado no pueden decirlo: dos frascos del mismo té también difieren. Empieza varios frascos iguales salvo en una cosa, sortea a cuáles les toca qué, y cátalos por código. El programa superpone las curvas y dice lo que los frascos muestran, con su duda, y lo que no.</translation>
        </message>
        <message>
            <source>Every jar of this trial has its batch already.</source>
            <translation>Todos los frascos de este ensayo tienen ya su lote.</translation>
        </message>
        <message>
            <source>Filled to</source>
            <translation>Llenado hasta</translation>
        </message>
        <message>
            <source>Give each level a name.</source>
            <translation>Pon nombre a cada nivel.</translation>
        </message>
        <message>
            <source>Half of {arm} had by day {day}.</source>
            <translation>La mitad de {arm} lo había hecho para el día {day}.</translation>
        </message>
        <message>
            <source>How far do like jars lie apart? No trial of yours tells it yet; the figure here is only a guess. Two or three jars of one kind would show it.</source>
            <translation>¿Cuánto distan los frascos iguales? Ningún ensayo tuyo lo dice aún; la cifra de aquí es solo una suposición. Dos o tres frascos de un tipo lo mostrarían.</translation>
        </message>
        <message>
            <source>It holds for these jars, this culture and this recipe. Intervals are of 95 %, and take jars of one kind to scatter evenly around their mean.</source>
            <translation>Vale para estos frascos, este cultivo y esta receta. Los intervalos son del 95 %, y suponen que los frascos de un mismo tipo se dispersan por igual alrededor de su media.</translation>
        </message>
        <message>
            <source>It takes at least two jars of each that differ a little, to see how jars scatter.</source>
            <translation>Hacen falta al menos dos frascos de cada uno que difieran un poco, para ver cómo se dispersan los frascos.</translation>
        </message>
        <message>
            <source>Like jars of your trials scattered by {amount} ({count} jars).</source>
            <translation>Los frascos iguales de tus ensayos se dispersaron {amount} ({count} frascos).</translation>
        </message>
        <message>
            <source>Liking</source>
            <translation>Valoración</translation>
        </message>
        <message>
            <source>Material of the vessel</source>
            <translation>Material del recipiente</translation>
        </message>
        <message>
            <source>More than a thousand jars of each: a difference of {gap} drowns in a scatter of {scatter}.</source>
            <translation>Más de mil frascos de cada uno: una diferencia de {gap} se ahoga en una dispersión de {scatter}.</translation>
        </message>
        <message>
            <source>No jar counts yet.</source>
            <translation>Aún no cuenta ningún frasco.</translation>
        </message>
        <message>
            <source>Not measured in both</source>
            <translation>No medido en ambos</translation>
        </message>
        <message>
            <source>Not settled either, though it stands out: {others}.</source>
            <translation>Tampoco está resuelto, aunque destaca: {others}.</translation>
        </message>
        <message>
            <source>Not told apart</source>
            <translation>Sin distinción</translation>
        </message>
        <message>
            <source>Nothing can be compared yet: it needs readings of jars of each level.</source>
            <translation>Aún no se puede comparar nada: hacen falta lecturas de frascos de cada nivel.</translation>
        </message>
        <message>
            <source>Nothing is settled: these jars do not tell the levels apart. That is no proof that there is no difference; it may be smaller than so few jars can show.</source>
            <translation>No hay nada resuelto: estos frascos no distinguen los niveles. Eso no prueba que no haya diferencia; puede ser menor de lo que tan pocos frascos pueden mostrar.</translation>
        </message>
        <message>
            <source>One jar each</source>
            <translation>Un frasco de cada</translation>
        </message>
        <message>
            <source>One jar each cannot tell {factor} from the jar.</source>
            <translation>Un frasco de cada no puede distinguir {factor} del frasco.</translation>
        </message>
        <message>
            <source>One jar each: the curves can be laid side by side, but nobody can say whether it was {factor} or the jar.</source>
            <translation>Un frasco de cada: las curvas se pueden poner lado a lado, pero nadie puede decir si fue {factor} o el frasco.</translation>
        </message>
        <message>
            <source>Place</source>
            <translation>Lugar</translation>
        </message>
        <message>
            <source>Points to it, not settled</source>
            <translation>Apunta a ello, sin resolver</translation>
        </message>
        <message>
            <source>Say for each vessel which level it gets.</source>
            <translation>Di para cada recipiente qué nivel recibe.</translation>
        </message>
        <message>
            <source>Say something of at least one jar.</source>
            <translation>Di algo de al menos un frasco.</translation>
        </message>
        <message>
            <source>Shape of the vessel</source>
            <translation>Forma del recipiente</translation>
        </message>
        <message>
            <source>Share of starter</source>
            <translation>Proporción de iniciador</translation>
        </message>
        <message>
            <source>Shown in these jars</source>
            <translation>Mostrado en estos frascos</translation>
        </message>
        <message>
            <source>So far these jars do not tell them apart.</source>
            <translation>Hasta ahora estos frascos no los distinguen.</translation>
        </message>
        <message>
            <source>Strength of the tea</source>
            <translation>Fuerza del té</translation>
        </message>
        <message>
            <source>Sugar</source>
            <translation>Azúcar</translation>
        </message>
        <message>
            <source>Tea</source>
            <translation>Té</translation>
        </message>
        <message>
            <source>Temperature of the place</source>
            <translation>Temperatura del lugar</translation>
        </message>
        <message>
            <source>That points to a difference, but does not settle it.</source>
            <translation>Eso apunta a una diferencia, pero no la resuelve.</translation>
        </message>
        <message>
            <source>The codes are closed. Which jar is which, and how the levels compare, is shown when they are opened.</source>
            <translation>Los códigos están cerrados. Qué frasco es cuál, y cómo se comparan los niveles, se muestra cuando se abren.</translation>
        </message>
        <message>
            <source>The codes of this trial are open already.</source>
            <translation>Los códigos de este ensayo ya están abiertos.</translation>
        </message>
        <message>
            <source>The conclusion has at most {high} letters.</source>
            <translation>La conclusión tiene como máximo {high} letras.</translation>
        </message>
        <message>
            <source>The difference</source>
            <translation>La diferencia</translation>
        </message>
        <message>
            <source>The jars differ in more than {factor}:</source>
            <translation>Los frascos difieren en más que {factor}:</translation>
        </message>
        <message>
            <source>The jars differ in nothing else that is entered.</source>
            <translation>Los frascos no difieren en nada más de lo anotado.</translation>
        </message>
        <message>
            <source>The liking</source>
            <translation>La valoración</translation>
        </message>
        <message>
            <source>The marks are too few for an interval; nothing follows from them yet.</source>
            <translation>Hay muy pocas notas para un intervalo; aún no se puede concluir nada de ellas.</translation>
        </message>
        <message>
            <source>The pellicle of {second} was {gap} than that of {first} around day {day}</source>
            <translation>La película de {second} tenía {gap} que la de {first} hacia el día {day}</translation>
        </message>
        <message>
            <source>The plan of its batch was given up.</source>
            <translation>Se abandonó el plan de su lote.</translation>
        </message>
        <message>
            <source>The question has at most {high} letters.</source>
            <translation>La pregunta tiene como máximo {high} letras.</translation>
        </message>
        <message>
            <source>The scatter</source>
            <translation>La dispersión</translation>
        </message>
        <message>
            <source>The share of starter, from 0 to 1,</source>
            <translation>La proporción de iniciador, de 0 a 1,</translation>
        </message>
        <message>
            <source>The taster's name has at most {high} letters.</source>
            <translation>El nombre del catador tiene como máximo {high} letras.</translation>
        </message>
        <message>
            <source>The waits differ, also when jars not there yet are counted as watched.</source>
            <translation>Las esperas difieren, también si los frascos que aún no han llegado se cuentan por lo observado.</translation>
        </message>
        <message>
            <source>These jars do not tell {second} from {first} in {outcome} ({jars}): the difference may be {range}. That is no proof that there is none.</source>
            <translation>Estos frascos no distinguen {second} de {first} en {outcome} ({jars}): la diferencia puede ser {range}. Eso no prueba que no haya ninguna.</translation>
        </message>
        <message>
            <source>These jars point to it but do not settle it: {lead} ({jars}). The difference may be {range}.</source>
            <translation>Estos frascos apuntan a ello, pero no lo resuelven: {lead} ({jars}). La diferencia puede ser {range}.</translation>
        </message>
        <message>
            <source>Thickness of the pellicle</source>
            <translation>Grosor de la película</translation>
        </message>
        <message>
            <source>This batch is in a trial already.</source>
            <translation>Este lote ya está en un ensayo.</translation>
        </message>
        <message>
            <source>This jar belongs to another trial.</source>
            <translation>Este frasco pertenece a otro ensayo.</translation>
        </message>
        <message>
            <source>This level belongs to another trial.</source>
            <translation>Este nivel pertenece a otro ensayo.</translation>
        </message>
        <message>
            <source>This program calls a difference shown only from four jars of each on: with fewer, even the clearest order of the jars comes about by chance too often. With just four it asks besides that no jar of one kind lies among those of the other.</source>
            <translation>Este programa da una diferencia por mostrada solo a partir de cuatro frascos de cada uno: con menos, hasta el orden más claro de los frascos se da demasiado a menudo por azar. Con solo cuatro exige además que ningún frasco de un tipo quede entre los del otro.</translation>
        </message>
        <message>
            <source>This trial has ended. Undo brings it back.</source>
            <translation>Este ensayo ha terminado. Deshacer lo recupera.</translation>
        </message>
        <message>
            <source>Titratable acidity</source>
            <translation>Acidez titulable</translation>
        </message>
        <message>
            <source>Too few jars</source>
            <translation>Muy pocos frascos</translation>
        </message>
        <message>
            <source>Two levels are the same. Give each its own name and level.</source>
            <translation>Hay dos niveles iguales. Da a cada uno su propio nombre y nivel.</translation>
        </message>
        <message>
            <source>What grows a culture is no jar of a trial.</source>
            <translation>Lo que hace crecer un cultivo no es un frasco de ensayo.</translation>
        </message>
        <message>
            <source>Whoever brews the jars knows what is in them: let somebody else pour, or taste by the codes alone. Warnings about a jar are always shown.</source>
            <translation>Quien prepara los frascos sabe qué llevan: deja que sirva otra persona, o cata solo por códigos. Las advertencias sobre un frasco se muestran siempre.</translation>
        </message>
        <message>
            <source>Width of the vessel</source>
            <translation>Anchura del recipiente</translation>
        </message>
        <message>
            <source>With so few jars even the clearest order comes about by chance in {chance}.</source>
            <translation>Con tan pocos frascos, hasta el orden más claro se da por azar en {chance}.</translation>
        </message>
        <message>
            <source>With {count} comparisons made, one is apt to stand out by chance alone.</source>
            <translation>Con {count} comparaciones hechas, es fácil que una destaque solo por azar.</translation>
        </message>
        <message>
            <source>acidity</source>
            <translation>la acidez</translation>
        </message>
        <message>
            <source>anywhere from {low} to {high}</source>
            <translation>cualquier valor de {low} a {high}</translation>
        </message>
        <message>
            <source>before day {day}</source>
            <translation>antes del día {day}</translation>
        </message>
        <message>
            <source>between {near} and {far}</source>
            <translation>entre {near} y {far}</translation>
        </message>
        <message>
            <source>day {day} ({low} to {high})</source>
            <translation>día {day} ({low} a {high})</translation>
        </message>
        <message>
            <source>fewer than 1 of 100 trials</source>
            <translation>menos de 1 de 100 ensayos</translation>
        </message>
        <message>
            <source>liking</source>
            <translation>la valoración</translation>
        </message>
        <message>
            <source>no pH yet</source>
            <translation>aún sin pH</translation>
        </message>
        <message>
            <source>no reason given</source>
            <translation>sin motivo indicado</translation>
        </message>
        <message>
            <source>none, starter liquid only</source>
            <translation>ninguno, solo líquido iniciador</translation>
        </message>
        <message>
            <source>not by day {day}</source>
            <translation>no para el día {day}</translation>
        </message>
        <message>
            <source>pH of the starter</source>
            <translation>pH del iniciador</translation>
        </message>
        <message>
            <source>the culture</source>
            <translation>el cultivo</translation>
        </message>
        <message>
            <source>the kind of vessel</source>
            <translation>el tipo de recipiente</translation>
        </message>
        <message>
            <source>the place</source>
            <translation>el lugar</translation>
        </message>
        <message>
            <source>the share of starter</source>
            <translation>la proporción de iniciador</translation>
        </message>
        <message>
            <source>the strength of the tea</source>
            <translation>la fuerza del té</translation>
        </message>
        <message>
            <source>the sugar</source>
            <translation>el azúcar</translation>
        </message>
        <message>
            <source>the tea</source>
            <translation>el té</translation>
        </message>
        <message>
            <source>the thickness of the pellicle</source>
            <translation>el grosor de la película</translation>
        </message>
        <message>
            <source>the time to pH {ph}</source>
            <translation>el tiempo hasta pH {ph}</translation>
        </message>
        <message>
            <source>what was changed</source>
            <translation>lo que se cambió</translation>
        </message>
        <message>
            <source>{amount} earlier</source>
            <translation>{amount} antes</translation>
        </message>
        <message>
            <source>{amount} higher</source>
            <translation>{amount} más</translation>
        </message>
        <message>
            <source>{amount} later</source>
            <translation>{amount} más tarde</translation>
        </message>
        <message>
            <source>{amount} less acid</source>
            <translation>{amount} menos de acidez</translation>
        </message>
        <message>
            <source>{amount} lower</source>
            <translation>{amount} menos</translation>
        </message>
        <message>
            <source>{amount} more acid</source>
            <translation>{amount} más de acidez</translation>
        </message>
        <message>
            <source>{amount} thicker</source>
            <translation>{amount} más de grosor</translation>
        </message>
        <message>
            <source>{amount} thinner</source>
            <translation>{amount} menos de grosor</translation>
        </message>
        <message>
            <source>{code} was discarded ({reason}). What was read of it still counts: leave it out, with the reason, if it went wrong.</source>
            <translation>{code} se desechó ({reason}). Lo que se leyó de él sigue contando: exclúyelo, con el motivo, si salió mal.</translation>
        </message>
        <message>
            <source>{count} comparisons were made. Each is judged more strictly for it (Holm 1979); the intervals are drawn for each alone.</source>
            <translation>Se hicieron {count} comparaciones. Por eso cada una se juzga con más rigor (Holm 1979); los intervalos se trazan para cada una por separado.</translation>
        </message>
        <message>
            <source>{count} of 100 trials</source>
            <translation>{count} de 100 ensayos</translation>
        </message>
        <message>
            <source>{count} {mark}</source>
            <translation>{count} {mark}</translation>
        </message>
        <message>
            <source>{done_second} of {second_count} jars of {second} and {done_first} of {first_count} of {first} have passed pH {ph}; the others are still waited for.</source>
            <translation>{done_second} de {second_count} frascos de {second} y {done_first} de {first_count} de {first} han superado pH {ph}; a los demás aún se los espera.</translation>
        </message>
        <message>
            <source>{jars} jars of each see it in {share} of 100 trials. The smallest difference that they see in 80 of 100 is {smallest}.</source>
            <translation>{jars} frascos de cada uno la ven en {share} de 100 ensayos. La menor diferencia que ven en 80 de 100 es {smallest}.</translation>
        </message>
        <message>
            <source>{jars} jars of each, {all} in all. Then at least {share} of 100 such trials see a difference of {gap}, if like jars scatter by {scatter} and if only this is compared.</source>
            <translation>{jars} frascos de cada uno, {all} en total. Entonces al menos {share} de 100 ensayos así ven una diferencia de {gap}, si los frascos iguales se dispersan {scatter} y si solo se compara esto.</translation>
        </message>
        <message>
            <source>{jars}, compared within like vessels</source>
            <translation>{jars}, comparados entre recipientes iguales</translation>
        </message>
        <message>
            <source>{lead} ({jars}). The difference of such jars is likely to be {range}.</source>
            <translation>{lead} ({jars}). La diferencia de frascos así es probablemente {range}.</translation>
        </message>
        <message>
            <source>{number} %</source>
            <translation>{number} %</translation>
        </message>
        <message>
            <source>{number} days</source>
            <translation>{number} días</translation>
        </message>
        <message>
            <source>{number} mm</source>
            <translation>{number} mm</translation>
        </message>
        <message>
            <source>{number} points</source>
            <translation>{number} puntos</translation>
        </message>
        <message>
            <source>{outcome} ({second})</source>
            <translation>{outcome} ({second})</translation>
        </message>
        <message>
            <source>{outcome}: not both jars are there yet. {cannot}</source>
            <translation>{outcome}: aún no han llegado ambos frascos. {cannot}</translation>
        </message>
        <message>
            <source>{outcome}: not measured yet in jars of both.</source>
            <translation>{outcome}: aún no se midió en frascos de ambos.</translation>
        </message>
        <message>
            <source>{second} against {first} jars</source>
            <translation>{second} frente a {first} frascos</translation>
        </message>
        <message>
            <source>{second} was marked {gap} than {first}</source>
            <translation>{second} recibió {gap} que {first}</translation>
        </message>
        <message>
            <source>{second} was {gap} at pH {ph} than {first}</source>
            <translation>{second} llegó a pH {ph} {gap} que {first}</translation>
        </message>
        <message>
            <source>{second} was {gap} than {first} around day {day}</source>
            <translation>{second} tenía {gap} que {first} hacia el día {day}</translation>
        </message>
        <message>
            <source>{told}; by the forecast about day {day} ({low} to {high})</source>
            <translation>{told}; según el pronóstico, hacia el día {day} ({low} a {high})</translation>
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
            <translation>{words}, desde el inicio calculado</translation>
        </message>
    </context>
    <context>
        <name>TrialsPage</name>
        <message>
            <source>How many jars?</source>
            <translation>¿Cuántos frascos?</translation>
        </message>
        <message>
            <source>No trial yet</source>
            <translation>Aún no hay ensayos</translation>
        </message>
        <message>
            <source>Plan a trial…</source>
            <translation>Planificar un ensayo…</translation>
        </message>
        <message>
            <source>Trials</source>
            <translation>Ensayos</translation>
        </message>
        <message>
            <source>Trials, the newest first</source>
            <translation>Ensayos, primero los más recientes</translation>
        </message>
        <message>
            <source>codes closed</source>
            <translation>códigos cerrados</translation>
        </message>
    </context>
    <context>
        <name>VerdictCard</name>
        <message>
            <source>Careful</source>
            <translation>Cuidado</translation>
        </message>
        <message>
            <source>Note</source>
            <translation>Nota</translation>
        </message>
        <message>
            <source>Stop</source>
            <translation>Detener</translation>
        </message>
    </context>
    <context>
        <name>Verdicts</name>
        <message>
            <source>A chipped, scratched or cracked bottle must not be put under pressure.</source>
            <translation>Una botella desportillada, rayada o agrietada no debe someterse a presión.</translation>
        </message>
        <message>
            <source>A drink that warms up swells. Below {least_share} it may squeeze what gas there is to a high pressure.</source>
            <translation>Una bebida que se calienta se dilata. Por debajo de {least_share} puede comprimir el gas que haya a una presión alta.</translation>
        </message>
        <message>
            <source>A drink without gas above it does not yield; any bottle then gives way.</source>
            <translation>Una bebida sin gas encima no se comprime; entonces cualquier botella acaba cediendo.</translation>
        </message>
        <message>
            <source>A pellicle of {value_mm} would be unusual.</source>
            <translation>Una película de {value_mm} sería rara.</translation>
        </message>
        <message>
            <source>A strip that reads pH {ph} is not enough to go by.</source>
            <translation>Una tira que marca pH {ph} no basta para decidir.</translation>
        </message>
        <message>
            <source>A taste is no measurement.</source>
            <translation>Un sabor no es una medición.</translation>
        </message>
        <message>
            <source>A test strip or the water supplier's report tells it.</source>
            <translation>Una tira de prueba o el informe del proveedor de agua la dice.</translation>
        </message>
        <message>
            <source>Above {high_c} it sours fast and may taste harsh.</source>
            <translation>Por encima de {high_c} se acidifica rápido y puede saber áspero.</translation>
        </message>
        <message>
            <source>Above {limit_c} it goes on fermenting: pressure, acid and alcohol rise.</source>
            <translation>Por encima de {limit_c} sigue fermentando: suben presión, ácido y alcohol.</translation>
        </message>
        <message>
            <source>Above {limit} a rule for sour foods asks for a meter; a strip is too coarse there. It is used here as a guide.</source>
            <translation>Por encima de {limit} una norma para alimentos ácidos pide un medidor; ahí una tira es demasiado imprecisa. Aquí se usa como orientación.</translation>
        </message>
        <message>
            <source>Above {most_share} much of the gas stays out of the drink, and much air is closed in.</source>
            <translation>Por encima de {most_share} mucho gas queda fuera de la bebida, y se encierra mucho aire.</translation>
        </message>
        <message>
            <source>Above {most} it does no harm, but it sours fast and leaves less sweet tea to ferment.</source>
            <translation>Por encima de {most} no hace daño, pero se acidifica rápido y deja menos té azucarado por fermentar.</translation>
        </message>
        <message>
            <source>After about {limit_days} days it is often sourer than people should drink much of, and it holds more alcohol.</source>
            <translation>Después de unos {limit_days} días suele estar más ácido de lo que conviene beber en cantidad, y tiene más alcohol.</translation>
        </message>
        <message>
            <source>After about {limit_days} days the acid can be too much to drink.</source>
            <translation>Después de unos {limit_days} días el ácido puede ser demasiado para beberlo.</translation>
        </message>
        <message>
            <source>Aim for less fizz, chill early, and stand the bottles in a closed box. </source>
            <translation>Busca menos gas, enfría pronto y pon las botellas en una caja cerrada. </translation>
        </message>
        <message>
            <source>Aim for less fizz, keep the bottles colder, or use bottles with a higher rating.</source>
            <translation>Busca menos gas, ten las botellas más frías o usa botellas con un límite mayor.</translation>
        </message>
        <message>
            <source>Alcohol may also rise further in the bottle.</source>
            <translation>El alcohol también puede subir más en la botella.</translation>
        </message>
        <message>
            <source>Alcohol was found to rise over two months, in the cold too. The mark is a cautious choice, not a published one.</source>
            <translation>Se vio que el alcohol subía durante dos meses, también en frío. La marca es una elección prudente, no una publicada.</translation>
        </message>
        <message>
            <source>Alcohol, acids and split sugar count in too, and no single instrument can tell them from sugar.</source>
            <translation>También cuentan alcohol, ácidos y azúcar desdoblado, y ningún instrumento por sí solo puede distinguirlos del azúcar.</translation>
        </message>
        <message>
            <source>As a starter that does no harm.</source>
            <translation>Como iniciador eso no hace daño.</translation>
        </message>
        <message>
            <source>At pH {ph} it is sourer than anybody should drink.</source>
            <translation>Con pH {ph} está más ácido de lo que nadie debería beber.</translation>
        </message>
        <message>
            <source>At pH {ph} this is no starter.</source>
            <translation>Con pH {ph} esto no es un iniciador.</translation>
        </message>
        <message>
            <source>At the warmest, the drink would swell until the bottle is full.</source>
            <translation>A la temperatura más alta, la bebida se dilataría hasta llenar la botella.</translation>
        </message>
        <message>
            <source>At the warmest, this fizz could come to {highest_bar}, at {volumes} volumes.</source>
            <translation>A la temperatura más alta, este gas podría llegar a {highest_bar}, con {volumes} volúmenes.</translation>
        </message>
        <message>
            <source>At the warmest, this fizz is reckoned to stay below {highest_bar}, at {volumes} volumes.</source>
            <translation>A la temperatura más alta, se calcula que este gas queda por debajo de {highest_bar}, con {volumes} volúmenes.</translation>
        </message>
        <message>
            <source>At the warmest, this fizz would come to over 8 bar.</source>
            <translation>A la temperatura más alta, este gas llegaría a más de 8 bar.</translation>
        </message>
        <message>
            <source>At {limit_c} or below it ferments and sours slowly, and most germs grow slowly too.</source>
            <translation>A {limit_c} o menos fermenta y se acidifica despacio, y la mayoría de los gérmenes también crecen despacio.</translation>
        </message>
        <message>
            <source>At {temperature_c} it is too warm for starter and culture.</source>
            <translation>{temperature_c} es demasiado calor para el iniciador y el cultivo.</translation>
        </message>
        <message>
            <source>At {temperature_c} the culture would be harmed.</source>
            <translation>A {temperature_c} el cultivo sufriría daños.</translation>
        </message>
        <message>
            <source>Before the culture has worked there is nearly nothing else in it that counts.</source>
            <translation>Antes de que el cultivo haya trabajado, casi no hay nada más que cuente.</translation>
        </message>
        <message>
            <source>Below {low_c} it sours slowly, and mold has more time to take hold.</source>
            <translation>Por debajo de {low_c} se acidifica despacio, y el moho tiene más tiempo para asentarse.</translation>
        </message>
        <message>
            <source>Between {low_c} and {high_c} it sours at a usual pace.</source>
            <translation>Entre {low_c} y {high_c} se acidifica a un ritmo normal.</translation>
        </message>
        <message>
            <source>Bottles under pressure have cost people their eyes: when moved, when dropped, and by the flying cap.</source>
            <translation>Las botellas a presión le han costado los ojos a más de uno: al moverlas, al caerse y por el tapón que sale disparado.</translation>
        </message>
        <message>
            <source>Bring the drink to the meter's temperature, or tell the meter that of the drink.</source>
            <translation>Lleva la bebida a la temperatura del medidor, o indícale al medidor la de la bebida.</translation>
        </message>
        <message>
            <source>By day {deadline_days} it has to be at {limit} or below for certain, and this reading does not settle it.</source>
            <translation>Para el día {deadline_days} tiene que estar con certeza a {limit} o menos, y esta lectura no lo aclara.</translation>
        </message>
        <message>
            <source>By these figures it would be {height_cm} high and {inner_diameter_cm} wide.</source>
            <translation>Según estas cifras tendría {height_cm} de alto y {inner_diameter_cm} de ancho.</translation>
        </message>
        <message>
            <source>Calibrate again before a reading that matters.</source>
            <translation>Calibra de nuevo antes de una lectura importante.</translation>
        </message>
        <message>
            <source>Calibrate before you rely on a reading.</source>
            <translation>Calibra antes de fiarte de una lectura.</translation>
        </message>
        <message>
            <source>Calibrate it on each day of use.</source>
            <translation>Calíbralo cada día que lo uses.</translation>
        </message>
        <message>
            <source>Calibrating on each day of use is common practice.</source>
            <translation>Calibrar cada día de uso es la práctica habitual.</translation>
        </message>
        <message>
            <source>Carbon dioxide would have been counted as acid.</source>
            <translation>El dióxido de carbono se habría contado como ácido.</translation>
        </message>
        <message>
            <source>Ceramic is only as good as its maker's word.</source>
            <translation>Una cerámica vale lo que la palabra de su fabricante.</translation>
        </message>
        <message>
            <source>Chill in time. </source>
            <translation>Enfría a tiempo. </translation>
        </message>
        <message>
            <source>Chill one bottle through, open it with care, and chill the others once it is right.</source>
            <translation>Enfría bien una botella, ábrela con cuidado, y enfría las demás cuando esté en su punto.</translation>
        </message>
        <message>
            <source>Clean it, soak it, use fresh buffers and calibrate again; replace it if that does not help.</source>
            <translation>Límpialo, ponlo en remojo, usa tampones frescos y calibra otra vez; cámbialo si eso no ayuda.</translation>
        </message>
        <message>
            <source>Compensation corrects the electrode's slope, and nothing else.</source>
            <translation>La compensación corrige la pendiente del electrodo, y nada más.</translation>
        </message>
        <message>
            <source>Consider softer water or a sourer starter. </source>
            <translation>Considera un agua más blanda o un iniciador más ácido. </translation>
        </message>
        <message>
            <source>Day {days} in the bottle: chill now.</source>
            <translation>Día {days} en la botella: enfría ya.</translation>
        </message>
        <message>
            <source>Day {days} in the bottle: it is likely not fizzy yet.</source>
            <translation>Día {days} en la botella: probablemente aún no tiene gas.</translation>
        </message>
        <message>
            <source>Day {days} in the bottle: it may be fizzy enough.</source>
            <translation>Día {days} en la botella: puede que ya tenga gas suficiente.</translation>
        </message>
        <message>
            <source>Decorative and square bottles and canning jars burst at pressures that a little sugar can make, and glass flies.</source>
            <translation>Las botellas decorativas y cuadradas y los frascos de conserva estallan con presiones que puede crear un poco de azúcar, y el vidrio sale volando.</translation>
        </message>
        <message>
            <source>Discard everything, wash the vessel with hot water and soap and let it dry. Take no culture over from it. </source>
            <translation>Desecha todo, lava el recipiente con agua caliente y jabón y deja que se seque. No aproveches ningún cultivo de ahí. </translation>
        </message>
        <message>
            <source>Discard it and brew it fresh. </source>
            <translation>Deséchalo y prepáralo de nuevo. </translation>
        </message>
        <message>
            <source>Do not drink it as it is; it makes strong starter. </source>
            <translation>No lo bebas tal cual; da un iniciador fuerte. </translation>
        </message>
        <message>
            <source>Do not drink or bottle it yet. Measure again, with a calibrated meter if you can. </source>
            <translation>No lo bebas ni lo embotelles aún. Mide otra vez, si puedes con un medidor calibrado. </translation>
        </message>
        <message>
            <source>Do not go below the least share that published advice gives.</source>
            <translation>No bajes de la menor proporción que dan los consejos publicados.</translation>
        </message>
        <message>
            <source>Do not serve it as it is. It makes strong starter. </source>
            <translation>No lo sirvas tal cual. Da un iniciador fuerte. </translation>
        </message>
        <message>
            <source>Do not serve it.</source>
            <translation>No lo sirvas.</translation>
        </message>
        <message>
            <source>Drink less if you are new to it, and ask a doctor if you are in doubt.</source>
            <translation>Bebe menos si eres nuevo en esto, y consulta a un médico si tienes dudas.</translation>
        </message>
        <message>
            <source>Drink less of it at once, or use less leaf next time.</source>
            <translation>Bebe menos de una vez, o usa menos hoja la próxima vez.</translation>
        </message>
        <message>
            <source>Each {co2_g_per_l} of carbon dioxide adds {adds_g_per_l}.</source>
            <translation>Cada {co2_g_per_l} de dióxido de carbono suma {adds_g_per_l}.</translation>
        </message>
        <message>
            <source>Even lively yeasts would need longer, as far as their pace is known.</source>
            <translation>Hasta unas levaduras vivas necesitarían más tiempo, hasta donde se conoce su ritmo.</translation>
        </message>
        <message>
            <source>Fill a little less.</source>
            <translation>Llena un poco menos.</translation>
        </message>
        <message>
            <source>Fill a little more if you like.</source>
            <translation>Llena un poco más si quieres.</translation>
        </message>
        <message>
            <source>Fill it at once, hot, into clean bottles that stand heat. </source>
            <translation>Llénalo enseguida, caliente, en botellas limpias que aguanten el calor. </translation>
        </message>
        <message>
            <source>Fill one plastic bottle too and feel it daily: hard means chill. </source>
            <translation>Llena también una botella de plástico y pálpala a diario: dura significa enfriar. </translation>
        </message>
        <message>
            <source>Find a cooler place, or taste earlier.</source>
            <translation>Busca un lugar más fresco, o cata antes.</translation>
        </message>
        <message>
            <source>Find a warmer place, and take the pH early.</source>
            <translation>Busca un lugar más cálido, y mide pronto el pH.</translation>
        </message>
        <message>
            <source>Food-grade plastic will do.</source>
            <translation>Vale el plástico alimentario.</translation>
        </message>
        <message>
            <source>For healthy adults {once_mg} at once and {day_mg} a day raise no concern; in pregnancy it is {once_mg} a day.</source>
            <translation>Para adultos sanos, {once_mg} de una vez y {day_mg} al día no preocupan; en el embarazo son {once_mg} al día.</translation>
        </message>
        <message>
            <source>Fresh juice or fruit can bring germs in again.</source>
            <translation>El jugo o la fruta frescos pueden volver a traer gérmenes.</translation>
        </message>
        <message>
            <source>From about {harm_c} upward its yeasts and bacteria die. The liquid would then stand sweet and unprotected.</source>
            <translation>A partir de unos {harm_c} mueren sus levaduras y bacterias. El líquido quedaría entonces dulce y sin protección.</translation>
        </message>
        <message>
            <source>From {limit_volumes} on little is left for a warm day or an old bottle.</source>
            <translation>A partir de {limit_volumes} queda poco margen para un día caluroso o una botella vieja.</translation>
        </message>
        <message>
            <source>Gas in the sample counts as acid.</source>
            <translation>El gas de la muestra cuenta como ácido.</translation>
        </message>
        <message>
            <source>Germs may have grown in it that souring does not undo.</source>
            <translation>Puede que hayan crecido en él gérmenes que la acidificación no elimina.</translation>
        </message>
        <message>
            <source>Glass breaks from its flaws, and every scratch weakens it.</source>
            <translation>El vidrio se rompe por sus defectos, y cada rayón lo debilita.</translation>
        </message>
        <message>
            <source>Glass is a good choice.</source>
            <translation>El vidrio es una buena elección.</translation>
        </message>
        <message>
            <source>Guidance for home brewing asks for {limit} or less before it is drunk.</source>
            <translation>Las guías de elaboración casera piden {limit} o menos antes de beberlo.</translation>
        </message>
        <message>
            <source>Hard water can take twice as much starter as soft water.</source>
            <translation>El agua dura puede necesitar el doble de iniciador que la blanda.</translation>
        </message>
        <message>
            <source>Heat it further, stir, and measure again. </source>
            <translation>Caliéntalo más, remueve y mide otra vez. </translation>
        </message>
        <message>
            <source>Heated drink ferments no longer; its culture is gone too.</source>
            <translation>La bebida calentada ya no fermenta; su cultivo también se ha perdido.</translation>
        </message>
        <message>
            <source>Herbal tea may not feed the culture.</source>
            <translation>La infusión de hierbas puede no alimentar el cultivo.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_brix} to {high_brix}.</source>
            <translation>Aquí casi nunca está fuera de {low_brix} a {high_brix}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_c} to {high_c}.</source>
            <translation>Aquí casi nunca está fuera de {low_c} a {high_c}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_g_per_l} to {high_g_per_l}.</source>
            <translation>Aquí casi nunca está fuera de {low_g_per_l} a {high_g_per_l}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_mm} to {high_mm}.</source>
            <translation>Aquí casi nunca está fuera de {low_mm} a {high_mm}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low_sg} to {high_sg}.</source>
            <translation>Aquí casi nunca está fuera de {low_sg} a {high_sg}.</translation>
        </message>
        <message>
            <source>Here it hardly ever lies outside {low} to {high}.</source>
            <translation>Aquí casi nunca está fuera de {low} a {high}.</translation>
        </message>
        <message>
            <source>How far an electrode has drifted by then is not known well.</source>
            <translation>No se sabe bien cuánto ha derivado un electrodo para entonces.</translation>
        </message>
        <message>
            <source>If all the sugar fermented, the bottles could come to {highest_bar}.</source>
            <translation>Si fermentara todo el azúcar, las botellas podrían llegar a {highest_bar}.</translation>
        </message>
        <message>
            <source>If all the sugar fermented, the bottles would come to over 8 bar.</source>
            <translation>Si fermentara todo el azúcar, las botellas llegarían a más de 8 bar.</translation>
        </message>
        <message>
            <source>In trials, germs from juice lived on for two weeks in cold, sour kombucha.</source>
            <translation>En ensayos, gérmenes del jugo sobrevivieron dos semanas en kombucha fría y ácida.</translation>
        </message>
        <message>
            <source>It also takes the longest to cool.</source>
            <translation>También es lo que más tarda en enfriarse.</translation>
        </message>
        <message>
            <source>It does not turn the pH of a cold drink into that of a warm one; in an acid drink the two hardly differ.</source>
            <translation>No convierte el pH de una bebida fría en el de una caliente; en una bebida ácida los dos apenas difieren.</translation>
        </message>
        <message>
            <source>It goes on changing slowly, in the cold too; {limit_days} days are a cautious mark, not a published one.</source>
            <translation>Sigue cambiando despacio, también en frío; {limit_days} días son una marca prudente, no una publicada.</translation>
        </message>
        <message>
            <source>It has been kept for {days} days, longer than {limit_days}.</source>
            <translation>Lleva guardado {days} días, más de {limit_days}.</translation>
        </message>
        <message>
            <source>It has been kept for {days} days.</source>
            <translation>Lleva guardado {days} días.</translation>
        </message>
        <message>
            <source>It has been souring for {day} days.</source>
            <translation>Lleva {day} días acidificándose.</translation>
        </message>
        <message>
            <source>It holds up to about {high_mg} of caffeine.</source>
            <translation>Contiene hasta cerca de {high_mg} de cafeína.</translation>
        </message>
        <message>
            <source>It is advised against in pregnancy, for small children and with weak immunity. Ask a doctor if you take medicines or have to avoid alcohol. </source>
            <translation>Se desaconseja en el embarazo, para niños pequeños y con las defensas bajas. Consulta a un médico si tomas medicinas o tienes que evitar el alcohol. </translation>
        </message>
        <message>
            <source>It is alive, sour, and holds caffeine and some alcohol.</source>
            <translation>Está viva, es ácida, y lleva cafeína y algo de alcohol.</translation>
        </message>
        <message>
            <source>It is day {day}, and no pH shows that the batch is sour enough.</source>
            <translation>Es el día {day}, y ningún pH muestra que el lote esté lo bastante ácido.</translation>
        </message>
        <message>
            <source>It is dirty, dry or worn, or a buffer is not what its bottle says.</source>
            <translation>Está sucio, seco o gastado, o un tampón no es lo que dice su frasco.</translation>
        </message>
        <message>
            <source>It is not even as sour as a finished drink has to be, so it cannot protect a new batch.</source>
            <translation>Ni siquiera es tan ácido como debe ser una bebida terminada, así que no puede proteger un lote nuevo.</translation>
        </message>
        <message>
            <source>It is not known whether the liquid is cool enough.</source>
            <translation>No se sabe si el líquido está lo bastante frío.</translation>
        </message>
        <message>
            <source>It is not sour enough for that, as far as it is known.</source>
            <translation>No es lo bastante ácido para eso, por lo que se sabe.</translation>
        </message>
        <message>
            <source>It is reckoned to come out at about {mixed_c}; your limit is {limit_c}.</source>
            <translation>Se calcula que quedará a cerca de {mixed_c}; tu límite es {limit_c}.</translation>
        </message>
        <message>
            <source>It is reckoned to start at about pH {ph}, above {wanted}.</source>
            <translation>Se calcula que empezará cerca de pH {ph}, por encima de {wanted}.</translation>
        </message>
        <message>
            <source>It is reckoned to start at about pH {ph}.</source>
            <translation>Se calcula que empezará cerca de pH {ph}.</translation>
        </message>
        <message>
            <source>It is within what laboratories accept, but no longer like new.</source>
            <translation>Está dentro de lo que aceptan los laboratorios, pero ya no como nuevo.</translation>
        </message>
        <message>
            <source>It lacks what tea leaves give, its sourness is less well known here, and some herbs hinder the culture.</source>
            <translation>Le falta lo que dan las hojas de té, su acidez se conoce peor aquí, y algunas hierbas frenan el cultivo.</translation>
        </message>
        <message>
            <source>It likely holds less alcohol than the {threshold_abv} you chose.</source>
            <translation>Probablemente tiene menos alcohol que los {threshold_abv} que elegiste.</translation>
        </message>
        <message>
            <source>It likely holds more alcohol than the {threshold_abv} you chose.</source>
            <translation>Probablemente tiene más alcohol que los {threshold_abv} que elegiste.</translation>
        </message>
        <message>
            <source>It may hold as much as {high_mg} of caffeine.</source>
            <translation>Puede contener hasta {high_mg} de cafeína.</translation>
        </message>
        <message>
            <source>It may hold more alcohol than the {threshold_abv} you chose.</source>
            <translation>Puede tener más alcohol que los {threshold_abv} que elegiste.</translation>
        </message>
        <message>
            <source>It may start above pH {limit}.</source>
            <translation>Puede empezar por encima de pH {limit}.</translation>
        </message>
        <message>
            <source>It scratches, and scratches are hard to clean; it may also give off a taste over weeks.</source>
            <translation>Se raya, y los rayones son difíciles de limpiar; además, en semanas puede dar sabor.</translation>
        </message>
        <message>
            <source>It should be at {limit} or below by day {deadline_days}. A cold place or weak starter slows it.</source>
            <translation>Debería estar a {limit} o menos para el día {deadline_days}. Un lugar frío o un iniciador débil lo frenan.</translation>
        </message>
        <message>
            <source>It should have been sour enough by day {deadline_days}. Sweet, hardly sour liquid that stands for days lets harmful germs grow.</source>
            <translation>Debería haber estado lo bastante ácido para el día {deadline_days}. Un líquido dulce y apenas ácido que está días así deja crecer gérmenes dañinos.</translation>
        </message>
        <message>
            <source>It still brings sugar, and may raise the pH.</source>
            <translation>Aun así aporta azúcar, y puede subir el pH.</translation>
        </message>
        <message>
            <source>It takes a lot of it to make sweet tea sour enough.</source>
            <translation>Hace falta mucho para acidificar lo suficiente el té azucarado.</translation>
        </message>
        <message>
            <source>It would make the tea sour enough, but it brings fewer live cells.</source>
            <translation>Acidificaría el té lo suficiente, pero aporta menos células vivas.</translation>
        </message>
        <message>
            <source>Its pores hold on to what lived in it before, mold included.</source>
            <translation>Sus poros retienen lo que vivió antes en ella, moho incluido.</translation>
        </message>
        <message>
            <source>Its pressure climbs steeply with the heat, and hot glass bursts.</source>
            <translation>Su presión sube mucho con el calor, y el vidrio caliente estalla.</translation>
        </message>
        <message>
            <source>Keep a second culture on real tea, and measure the pH more often.</source>
            <translation>Mantén un segundo cultivo en té de verdad, y mide el pH más a menudo.</translation>
        </message>
        <message>
            <source>Keep away until they are cold: cover them, cool the room, and do not move them warm. Wear goggles and gloves. </source>
            <translation>Mantente lejos hasta que estén frías: cúbrelas, enfría la habitación y no las muevas calientes. Usa gafas protectoras y guantes. </translation>
        </message>
        <message>
            <source>Keep it there until it is drunk; fizz and alcohol still rise a little.</source>
            <translation>Mantenlo ahí hasta que se beba; gas y alcohol aún suben un poco.</translation>
        </message>
        <message>
            <source>Keep the jar apart, use nothing from it for another, and look again tomorrow. When in doubt, throw it out. </source>
            <translation>Mantén el frasco aparte, no uses nada de él para otro, y vuelve a mirar mañana. Ante la duda, deséchalo. </translation>
        </message>
        <message>
            <source>Keep the maker's written word that the glaze is free of lead and made for sour food. Without it, please use glass.</source>
            <translation>Guarda por escrito la palabra del fabricante de que el esmalte no lleva plomo y está hecho para alimentos ácidos. Sin ella, usa vidrio.</translation>
        </message>
        <message>
            <source>Keep them cold, in a closed box, and do not shake them. Chill before you open one, and hold the cap away from faces. </source>
            <translation>Mantenlas frías, en una caja cerrada, y no las agites. Enfría antes de abrir una, y aparta el tapón de las caras. </translation>
        </message>
        <message>
            <source>Leave it and measure again in a day or two. Do not drink it yet.</source>
            <translation>Déjalo y mide otra vez en uno o dos días. No lo bebas aún.</translation>
        </message>
        <message>
            <source>Leave more headspace, and fill nothing ice-cold to the brim.</source>
            <translation>Deja más espacio de cabeza, y no llenes hasta el borde nada helado.</translation>
        </message>
        <message>
            <source>Let it cool, covered, and measure before starter and culture go in. More cold water and less hot would shorten the wait.</source>
            <translation>Deja que se enfríe, tapado, y mide antes de que entren iniciador y cultivo. Más agua fría y menos caliente acortaría la espera.</translation>
        </message>
        <message>
            <source>Let it go flat and heat the drink in an open pot, or keep it cold instead.</source>
            <translation>Deja que pierda el gas y calienta la bebida en una olla abierta, o guárdala en frío.</translation>
        </message>
        <message>
            <source>Let it sour further, or use another starter.</source>
            <translation>Deja que se acidifique más, o usa otro iniciador.</translation>
        </message>
        <message>
            <source>Let the vessel dry in the air: what is left of it harms the culture.</source>
            <translation>Deja que el recipiente se seque al aire: lo que quede de ella daña el cultivo.</translation>
        </message>
        <message>
            <source>Liquid warmer than {limit_c} harms the culture, and it looks no different.</source>
            <translation>Un líquido a más de {limit_c} daña el cultivo, y este no cambia de aspecto.</translation>
        </message>
        <message>
            <source>Little of it makes the tea sour, but little also brings few live cells.</source>
            <translation>Con poco basta para acidificar el té, pero poco también aporta pocas células vivas.</translation>
        </message>
        <message>
            <source>Lively yeasts could have brought the bottles to their limit by day {chill_by_days}.</source>
            <translation>Unas levaduras vivas podrían haber llevado las botellas a su límite para el día {chill_by_days}.</translation>
        </message>
        <message>
            <source>Look again tomorrow.</source>
            <translation>Vuelve a mirar mañana.</translation>
        </message>
        <message>
            <source>Look at the bottles daily all the same.</source>
            <translation>Mira las botellas a diario de todos modos.</translation>
        </message>
        <message>
            <source>Look for rust now and then.</source>
            <translation>Busca óxido de vez en cuando.</translation>
        </message>
        <message>
            <source>Lukewarm and sweet, it is a feast for germs; from {warn_hours} h on they may have begun to grow.</source>
            <translation>Tibio y dulce, es un banquete para los gérmenes; a partir de {warn_hours} h pueden haber empezado a crecer.</translation>
        </message>
        <message>
            <source>Make less, or choose a larger vessel.</source>
            <translation>Haz menos, o elige un recipiente mayor.</translation>
        </message>
        <message>
            <source>Makers of electrodes call such a slope good; that is from memory.</source>
            <translation>Los fabricantes de electrodos llaman buena a una pendiente así; esto es de memoria.</translation>
        </message>
        <message>
            <source>Makers usually need no more than an ordinary share of it; that is common practice, without a source.</source>
            <translation>Normalmente basta con la proporción habitual; es la práctica habitual, sin fuente.</translation>
        </message>
        <message>
            <source>Makers usually take a little more of such a one; that is common practice, without a source.</source>
            <translation>De uno así se suele tomar un poco más; es la práctica habitual, sin fuente.</translation>
        </message>
        <message>
            <source>Measure again after anything is added. </source>
            <translation>Mide otra vez después de añadir cualquier cosa. </translation>
        </message>
        <message>
            <source>Measure again with a calibrated meter today. If it is above {limit}, or you cannot measure it better, discard it. </source>
            <translation>Mide otra vez hoy con un medidor calibrado. Si está por encima de {limit}, o no puedes medirlo mejor, deséchalo. </translation>
        </message>
        <message>
            <source>Measure again, with a calibrated meter if you can. It has until day {deadline_days}.</source>
            <translation>Mide otra vez, si puedes con un medidor calibrado. Tiene hasta el día {deadline_days}.</translation>
        </message>
        <message>
            <source>Measure beside the jar. If that is so, find a cooler place, or taste earlier.</source>
            <translation>Mide junto al frasco. Si es así, busca un lugar más fresco, o cata antes.</translation>
        </message>
        <message>
            <source>Measure beside the jar. If that is so, find a warmer place, and take the pH early.</source>
            <translation>Mide junto al frasco. Si es así, busca un lugar más cálido, y mide pronto el pH.</translation>
        </message>
        <message>
            <source>Measure both again before you rely on them.</source>
            <translation>Vuelve a medir ambos antes de fiarte de ellos.</translation>
        </message>
        <message>
            <source>Measure both again.</source>
            <translation>Vuelve a medir ambos.</translation>
        </message>
        <message>
            <source>Measure both again. </source>
            <translation>Vuelve a medir ambos. </translation>
        </message>
        <message>
            <source>Measure it after mixing if you can: the figure is an estimate.</source>
            <translation>Mídelo después de mezclar si puedes: la cifra es una estimación.</translation>
        </message>
        <message>
            <source>Measure the liquid and enter its temperature. If you have no thermometer, wait until the vessel feels cool to your hand, and write that down as your reason.</source>
            <translation>Mide el líquido y anota su temperatura. Si no tienes termómetro, espera hasta que el recipiente se note fresco al tacto, y anótalo como tu motivo.</translation>
        </message>
        <message>
            <source>Measure the pH after mixing.</source>
            <translation>Mide el pH después de mezclar.</translation>
        </message>
        <message>
            <source>Measure the pH afterwards: the same limit applies again.</source>
            <translation>Mide el pH después: vuelve a valer el mismo límite.</translation>
        </message>
        <message>
            <source>Measure the pH once it is mixed.</source>
            <translation>Mide el pH una vez mezclado.</translation>
        </message>
        <message>
            <source>Measure the pH today, before you taste. </source>
            <translation>Mide el pH hoy, antes de catar. </translation>
        </message>
        <message>
            <source>Measure with a calibrated meter, or let it sour for longer.</source>
            <translation>Mide con un medidor calibrado, o deja que se acidifique más tiempo.</translation>
        </message>
        <message>
            <source>Mixed, the sweet tea will be too warm for the culture at first.</source>
            <translation>Mezclado, el té azucarado estará al principio demasiado caliente para el cultivo.</translation>
        </message>
        <message>
            <source>Mold can leave poisons in the liquid, and its threads reach further than its patch. Dry, fuzzy spots on top are mold; wet, brown strings below are yeast.</source>
            <translation>El moho puede dejar toxinas en el líquido, y sus hilos llegan más lejos que su mancha. Las manchas secas y peludas arriba son moho; los hilos marrones y húmedos abajo son levadura.</translation>
        </message>
        <message>
            <source>Mold grows from day to day, a young film only thickens. A day tells them apart.</source>
            <translation>El moho crece de un día a otro; una película joven solo se engrosa. Un día los distingue.</translation>
        </message>
        <message>
            <source>More or sourer starter would help. Measure after mixing.</source>
            <translation>Ayudaría más iniciador o uno más ácido. Mide después de mezclar.</translation>
        </message>
        <message>
            <source>More than {most_ph} off the line means that one of them is stale or mistaken.</source>
            <translation>Más de {most_ph} fuera de la recta significa que uno de ellos está pasado o confundido.</translation>
        </message>
        <message>
            <source>Move it into the refrigerator. </source>
            <translation>Ponlo en el refrigerador. </translation>
        </message>
        <message>
            <source>Move it somewhere warmer, look closely for mold, and measure again tomorrow. Do not drink it yet.</source>
            <translation>Llévalo a un sitio más cálido, busca moho de cerca y mide otra vez mañana. No lo bebas aún.</translation>
        </message>
        <message>
            <source>Never heat a closed bottle that ferments.</source>
            <translation>Nunca calientes una botella cerrada que fermenta.</translation>
        </message>
        <message>
            <source>No buffer is as sour as the drink.</source>
            <translation>Ningún tampón es tan ácido como la bebida.</translation>
        </message>
        <message>
            <source>No pH was taken of this batch since it began.</source>
            <translation>No se tomó el pH de este lote desde que empezó.</translation>
        </message>
        <message>
            <source>Not even this starter by itself reaches pH {target_ph}.</source>
            <translation>Ni siquiera este iniciador por sí solo llega a pH {target_ph}.</translation>
        </message>
        <message>
            <source>On day {day} the pH is {ph}, still above {limit}.</source>
            <translation>El día {day} el pH es {ph}, aún por encima de {limit}.</translation>
        </message>
        <message>
            <source>On day {day} the pH reads {ph}, but the reading may be off by {sd}.</source>
            <translation>El día {day} el pH marca {ph}, pero la lectura puede desviarse {sd}.</translation>
        </message>
        <message>
            <source>On day {day} the reading is only apparent.</source>
            <translation>El día {day} la lectura es solo aparente.</translation>
        </message>
        <message>
            <source>One of the two readings may be off, and then so is the reckoned start.</source>
            <translation>Una de las dos lecturas puede estar desviada, y entonces también el inicio calculado.</translation>
        </message>
        <message>
            <source>One of the two readings may be off.</source>
            <translation>Una de las dos lecturas puede estar desviada.</translation>
        </message>
        <message>
            <source>Only a laboratory can settle it. Before you give or sell it as a drink without alcohol, have it measured, and follow your local rules.</source>
            <translation>Solo un laboratorio puede aclararlo. Antes de darla o venderla como bebida sin alcohol, haz que la midan, y sigue tus normas locales.</translation>
        </message>
        <message>
            <source>Only chilling in time stops it; cold slows the yeasts and does not end them.</source>
            <translation>Solo enfriar a tiempo lo detiene; el frío frena las levaduras, pero no las para.</translation>
        </message>
        <message>
            <source>Open it cold and with care; look, smell and measure the pH before you taste. </source>
            <translation>Ábrela fría y con cuidado; mira, huele y mide el pH antes de catar. </translation>
        </message>
        <message>
            <source>Pasteurised juice or heated fruit is the better choice.</source>
            <translation>El jugo pasteurizado o la fruta calentada es la mejor elección.</translation>
        </message>
        <message>
            <source>Plastic that is not made for food is not safe here.</source>
            <translation>El plástico que no está hecho para alimentos no es seguro aquí.</translation>
        </message>
        <message>
            <source>Please check both figures and their units.</source>
            <translation>Comprueba ambas cifras y sus unidades.</translation>
        </message>
        <message>
            <source>Please check the figure and the instrument. It will be kept as you type it.</source>
            <translation>Comprueba la cifra y el instrumento. Se guardará tal como la escribas.</translation>
        </message>
        <message>
            <source>Please discard it. Do not taste it, and start again with more or sourer starter. Where your local rules ask for more, follow them.</source>
            <translation>Deséchalo. No lo pruebes, y empieza de nuevo con más iniciador o uno más ácido. Donde tus normas locales pidan más, síguelas.</translation>
        </message>
        <message>
            <source>Please use glass, or another vessel meant for sour food.</source>
            <translation>Usa vidrio, u otro recipiente pensado para alimentos ácidos.</translation>
        </message>
        <message>
            <source>Pour slowly, into a vessel that stands heat: thick glass can crack.</source>
            <translation>Vierte despacio, en un recipiente que aguante el calor: el vidrio grueso puede agrietarse.</translation>
        </message>
        <message>
            <source>Published guidance advises against drinking kombucha this sour.</source>
            <translation>Las guías publicadas desaconsejan beber kombucha tan ácida.</translation>
        </message>
        <message>
            <source>Published guidance asks for pH 4.2 or below within {deadline_days} days. Without a reading nobody can tell.</source>
            <translation>Las guías publicadas piden pH 4.2 o menos en {deadline_days} días. Sin una lectura nadie puede saberlo.</translation>
        </message>
        <message>
            <source>Published guidance asks for this within {deadline_days} days. It is needed, but it does not prove that a drink is safe.</source>
            <translation>Las guías publicadas piden esto en {deadline_days} días. Hace falta, pero no prueba que una bebida sea segura.</translation>
        </message>
        <message>
            <source>Published guidance asks for water of at least {least_c}: cooler water leaves more alive that came with the leaves.</source>
            <translation>Las guías publicadas piden agua de al menos {least_c}: un agua más fría deja vivo más de lo que vino con las hojas.</translation>
        </message>
        <message>
            <source>Published guidance asks for {limit_c}, and the thermometer may be a little off.</source>
            <translation>Las guías publicadas piden {limit_c}, y el termómetro puede desviarse un poco.</translation>
        </message>
        <message>
            <source>Published guidance for clean vessels is {limit_ppm}. More of it is left on the vessel, and it does not clean better.</source>
            <translation>Lo publicado para recipientes limpios es {limit_ppm}. Con más, queda más en el recipiente, y no limpia mejor.</translation>
        </message>
        <message>
            <source>Published guidance for clean vessels is {limit_ppm}; bleach loses strength with age.</source>
            <translation>Lo publicado para recipientes limpios es {limit_ppm}; la lejía pierde fuerza con el tiempo.</translation>
        </message>
        <message>
            <source>Published guidance uses about {least}. With less, the liquid stays sweet and unprotected for longer.</source>
            <translation>Las guías publicadas usan cerca de {least}. Con menos, el líquido queda más tiempo dulce y sin protección.</translation>
        </message>
        <message>
            <source>Put all bottles in the cold now. Open none warm, and none to let gas out. </source>
            <translation>Pon ahora todas las botellas en frío. No abras ninguna caliente, ni ninguna para dejar salir gas. </translation>
        </message>
        <message>
            <source>Put the starter in as soon as it is cool enough.</source>
            <translation>Pon el iniciador en cuanto esté lo bastante frío.</translation>
        </message>
        <message>
            <source>SG {value_sg} would be unusual.</source>
            <translation>Una SG de {value_sg} sería rara.</translation>
        </message>
        <message>
            <source>Some glazes hold lead, which the acid draws out. Kombucha from such pots has poisoned people.</source>
            <translation>Algunos esmaltes llevan plomo, que el ácido extrae. La kombucha de esas vasijas ha envenenado a personas.</translation>
        </message>
        <message>
            <source>Some health offices advise at most {limit_l} a day, after two grave cases whose cause was never proven; most name no amount.</source>
            <translation>Algunas autoridades sanitarias aconsejan como máximo {limit_l} al día, tras dos casos graves cuya causa nunca se probó; la mayoría no da ninguna cantidad.</translation>
        </message>
        <message>
            <source>Some health offices advise at most {limit_l} a day; most name no amount.</source>
            <translation>Algunas autoridades sanitarias aconsejan como máximo {limit_l} al día; la mayoría no da ninguna cantidad.</translation>
        </message>
        <message>
            <source>Something on the surface is not clear yet.</source>
            <translation>Algo en la superficie aún no está claro.</translation>
        </message>
        <message>
            <source>Sort it out, and use a sound one.</source>
            <translation>Descártala y usa una en buen estado.</translation>
        </message>
        <message>
            <source>Sour liquid dissolves copper, brass, aluminium, iron and zinc; the drink can make you ill and the culture suffers.</source>
            <translation>El líquido ácido disuelve cobre, latón, aluminio, hierro y zinc; la bebida puede hacerte enfermar y el cultivo sufre.</translation>
        </message>
        <message>
            <source>Sour liquid takes nothing out of plain glass.</source>
            <translation>El líquido ácido no extrae nada del vidrio corriente.</translation>
        </message>
        <message>
            <source>Sour liquid that stands for weeks can draw things out of it.</source>
            <translation>Un líquido ácido que está semanas ahí puede extraer cosas de él.</translation>
        </message>
        <message>
            <source>Stainless steel is a good choice if it is made for sour food.</source>
            <translation>El acero inoxidable es una buena elección si está hecho para alimentos ácidos.</translation>
        </message>
        <message>
            <source>Take a buffer near pH 4 as well.</source>
            <translation>Usa también un tampón cercano a pH 4.</translation>
        </message>
        <message>
            <source>Take a reading first. </source>
            <translation>Toma antes una lectura. </translation>
        </message>
        <message>
            <source>Take the usual amount all the same.</source>
            <translation>Usa la cantidad habitual de todos modos.</translation>
        </message>
        <message>
            <source>Take the usual amount.</source>
            <translation>Usa la cantidad habitual.</translation>
        </message>
        <message>
            <source>Taste early.</source>
            <translation>Cata pronto.</translation>
        </message>
        <message>
            <source>Taste, measure and draw it off, or keep it as starter.</source>
            <translation>Cata, mide y extráelo, o guárdalo como iniciador.</translation>
        </message>
        <message>
            <source>That is beyond what can be reckoned, and beyond {ceiling_bar}, the most for these bottles.</source>
            <translation>Va más allá de lo que se puede calcular, y más allá de {ceiling_bar}, lo máximo para estas botellas.</translation>
        </message>
        <message>
            <source>That is close to {ceiling_bar}, the most for these bottles; a warm day or an old bottle takes up the rest.</source>
            <translation>Está cerca de {ceiling_bar}, lo máximo para estas botellas; un día caluroso o una botella vieja agotan el resto.</translation>
        </message>
        <message>
            <source>That is common practice, without a source.</source>
            <translation>Es la práctica habitual, sin fuente.</translation>
        </message>
        <message>
            <source>That is needed, but it does not prove that a drink is safe.</source>
            <translation>Hace falta, pero no prueba que una bebida sea segura.</translation>
        </message>
        <message>
            <source>That is no proof, and alcohol may still rise in the bottle.</source>
            <translation>No es ninguna prueba, y el alcohol aún puede subir en la botella.</translation>
        </message>
        <message>
            <source>That is plenty of fizz. It must not pass {ceiling_bar}, and it goes on rising.</source>
            <translation>Es mucho gas. No debe pasar de {ceiling_bar}, y sigue subiendo.</translation>
        </message>
        <message>
            <source>That is usual in the first days; it has until day {deadline_days}.</source>
            <translation>Es normal en los primeros días; tiene hasta el día {deadline_days}.</translation>
        </message>
        <message>
            <source>That is within the {warn_hours} h in which it should get its starter.</source>
            <translation>Está dentro de las {warn_hours} h en que debería recibir su iniciador.</translation>
        </message>
        <message>
            <source>The acid draws lead out of lead crystal and of many glazes. Kombucha from such pots has poisoned people.</source>
            <translation>El ácido extrae plomo del cristal de plomo y de muchos esmaltes. La kombucha de esas vasijas ha envenenado a personas.</translation>
        </message>
        <message>
            <source>The buffers disagree by {residual_ph} in pH.</source>
            <translation>Los tampones discrepan en {residual_ph} de pH.</translation>
        </message>
        <message>
            <source>The calibration is fresh.</source>
            <translation>La calibración es reciente.</translation>
        </message>
        <message>
            <source>The calibration is {age_days} days old, more than {old_days}.</source>
            <translation>La calibración tiene {age_days} días, más de {old_days}.</translation>
        </message>
        <message>
            <source>The calibration is {age_days} days old.</source>
            <translation>La calibración tiene {age_days} días.</translation>
        </message>
        <message>
            <source>The cold water goes in as it is.</source>
            <translation>El agua fría entra tal cual.</translation>
        </message>
        <message>
            <source>The culture needs air above it, and room to rise.</source>
            <translation>El cultivo necesita aire por encima y sitio para subir.</translation>
        </message>
        <message>
            <source>The electrode drifts a little every day; the range allows for it.</source>
            <translation>El electrodo deriva un poco cada día; el intervalo lo tiene en cuenta.</translation>
        </message>
        <message>
            <source>The electrode is good: {slope_percent} of the ideal slope, {offset_mv} off.</source>
            <translation>El electrodo es bueno: {slope_percent} de la pendiente ideal, {offset_mv} de desvío.</translation>
        </message>
        <message>
            <source>The electrode is outside what laboratories accept: {slope_percent} of the ideal slope, {offset_mv} off.</source>
            <translation>El electrodo está fuera de lo que aceptan los laboratorios: {slope_percent} de la pendiente ideal, {offset_mv} de desvío.</translation>
        </message>
        <message>
            <source>The electrode is usable: {slope_percent} of the ideal slope, {offset_mv} off.</source>
            <translation>El electrodo es utilizable: {slope_percent} de la pendiente ideal, {offset_mv} de desvío.</translation>
        </message>
        <message>
            <source>The estimate is {ph}, but it may be as high as {high}. Above {limit} harmful germs can grow in sweet tea.</source>
            <translation>La estimación es {ph}, pero puede llegar hasta {high}. Por encima de {limit} pueden crecer gérmenes dañinos en el té azucarado.</translation>
        </message>
        <message>
            <source>The gas was driven out first, as it should be.</source>
            <translation>El gas se eliminó antes, como debe ser.</translation>
        </message>
        <message>
            <source>The gauge shows {gauge_bar}.</source>
            <translation>El manómetro muestra {gauge_bar}.</translation>
        </message>
        <message>
            <source>The glass trade advises against more than {largest_l}: the same pressure pulls harder on a wider wall.</source>
            <translation>El sector del vidrio desaconseja más de {largest_l}: la misma presión tira más de una pared más ancha.</translation>
        </message>
        <message>
            <source>The glass trade's figures, read with care, end below {limit_volumes}; one warm day would be enough.</source>
            <translation>Las cifras del sector del vidrio, leídas con cuidado, terminan por debajo de {limit_volumes}; bastaría un día caluroso.</translation>
        </message>
        <message>
            <source>The height follows from the volume to the brim and the inner diameter; few vessels look like this.</source>
            <translation>La altura resulta del volumen hasta el borde y el diámetro interior; pocos recipientes son así.</translation>
        </message>
        <message>
            <source>The latest temperature of its place, {temperature_c}, is cold for a culture.</source>
            <translation>La última temperatura de su lugar, {temperature_c}, es fría para un cultivo.</translation>
        </message>
        <message>
            <source>The latest temperature of its place, {temperature_c}, is warm for a culture.</source>
            <translation>La última temperatura de su lugar, {temperature_c}, es cálida para un cultivo.</translation>
        </message>
        <message>
            <source>The lowest has pH {lowest_ph}; below it the line is only continued.</source>
            <translation>El más bajo tiene pH {lowest_ph}; por debajo la recta solo se prolonga.</translation>
        </message>
        <message>
            <source>The meter takes the liquid for warmer or colder than it is.</source>
            <translation>El medidor cree que el líquido está más caliente o más frío de lo que está.</translation>
        </message>
        <message>
            <source>The pace is hardly known beforehand; it may take from {low_days} to {high_days} days.</source>
            <translation>El ritmo apenas se conoce de antemano; puede tardar de {low_days} a {high_days} días.</translation>
        </message>
        <message>
            <source>The reading is that of sugar.</source>
            <translation>La lectura es la del azúcar.</translation>
        </message>
        <message>
            <source>The sourer the start, the less time mold and other unwanted guests have. The estimate runs from {low} to {high}.</source>
            <translation>Cuanto más ácido el inicio, menos tiempo tienen el moho y otros huéspedes indeseados. La estimación va de {low} a {high}.</translation>
        </message>
        <message>
            <source>The starter is still needed: it brings the live culture.</source>
            <translation>El iniciador sigue haciendo falta: aporta el cultivo vivo.</translation>
        </message>
        <message>
            <source>The sweet tea has stood for {hours} h without starter.</source>
            <translation>El té azucarado lleva {hours} h sin iniciador.</translation>
        </message>
        <message>
            <source>The sweet tea has stood for {hours} h.</source>
            <translation>El té azucarado lleva {hours} h en espera.</translation>
        </message>
        <message>
            <source>The sweet tea stood {hours} h without starter, longer than {limit_hours} h.</source>
            <translation>El té azucarado estuvo {hours} h sin iniciador, más de {limit_hours} h.</translation>
        </message>
        <message>
            <source>The tea alone is already at pH {target_ph} or below.</source>
            <translation>El té solo ya está a pH {target_ph} o menos.</translation>
        </message>
        <message>
            <source>The two readings go together.</source>
            <translation>Las dos lecturas encajan.</translation>
        </message>
        <message>
            <source>The two readings hardly go together.</source>
            <translation>Las dos lecturas apenas encajan.</translation>
        </message>
        <message>
            <source>The usual kitchen grade stands the acid; scratched or cheap steel may rust.</source>
            <translation>La calidad habitual de cocina aguanta el ácido; el acero rayado o barato puede oxidarse.</translation>
        </message>
        <message>
            <source>The water's alkalinity is not known, so it is assumed.</source>
            <translation>No se conoce la alcalinidad del agua, así que se supone.</translation>
        </message>
        <message>
            <source>The water's alkalinity or a weak starter asks for it.</source>
            <translation>Lo exige la alcalinidad del agua o un iniciador débil.</translation>
        </message>
        <message>
            <source>These bottles must not pass {ceiling_bar}.</source>
            <translation>Estas botellas no deben pasar de {ceiling_bar}.</translation>
        </message>
        <message>
            <source>These bottles must not pass {ceiling_bar}. No bottle promises to hold even that: glass ages.</source>
            <translation>Estas botellas no deben pasar de {ceiling_bar}. Ninguna botella garantiza ni siquiera eso: el vidrio envejece.</translation>
        </message>
        <message>
            <source>These bottles must not pass {ceiling_bar}. The figure holds only if they are chilled in time, and it promises nothing about an old bottle.</source>
            <translation>Estas botellas no deben pasar de {ceiling_bar}. La cifra solo vale si se enfrían a tiempo, y no garantiza nada sobre una botella vieja.</translation>
        </message>
        <message>
            <source>They must not pass {ceiling_bar}. </source>
            <translation>No deben pasar de {ceiling_bar}. </translation>
        </message>
        <message>
            <source>They must not pass {ceiling_bar}. Nearly every sweet kombucha could break nearly every bottle. </source>
            <translation>No deben pasar de {ceiling_bar}. Casi cualquier kombucha dulce podría romper casi cualquier botella. </translation>
        </message>
        <message>
            <source>They show {excess_meq_per_l} more strong cations than anions, which tea and water can give.</source>
            <translation>Muestran {excess_meq_per_l} más de cationes fuertes que de aniones, algo que té y agua pueden dar.</translation>
        </message>
        <message>
            <source>They show {excess_meq_per_l} of strong ions; tea and water usually give {low} to {high}. Another acid, or a reading that is off, may be behind it.</source>
            <translation>Muestran {excess_meq_per_l} de iones fuertes; té y agua suelen dar de {low} a {high}. Detrás puede haber otro ácido, o una lectura desviada.</translation>
        </message>
        <message>
            <source>This bottle is not made for pressure.</source>
            <translation>Esta botella no está hecha para presión.</translation>
        </message>
        <message>
            <source>This drink is not for everyone.</source>
            <translation>Esta bebida no es para todo el mundo.</translation>
        </message>
        <message>
            <source>This is an estimate from {low_abv} to {high_abv}; neither sugar nor two simple instruments can tell such amounts apart. </source>
            <translation>Es una estimación de {low_abv} a {high_abv}; ni el azúcar ni dos instrumentos sencillos pueden distinguir esas cantidades. </translation>
        </message>
        <message>
            <source>This metal does not stand the acid.</source>
            <translation>Este metal no aguanta el ácido.</translation>
        </message>
        <message>
            <source>This rinse holds about {chlorine_ppm} of chlorine, which is strong.</source>
            <translation>Este enjuague lleva cerca de {chlorine_ppm} de cloro, y es fuerte.</translation>
        </message>
        <message>
            <source>This rinse holds about {chlorine_ppm} of chlorine.</source>
            <translation>Este enjuague lleva cerca de {chlorine_ppm} de cloro.</translation>
        </message>
        <message>
            <source>This starter is good: about {ta_g_per_l} of acid.</source>
            <translation>Este iniciador es bueno: cerca de {ta_g_per_l} de ácido.</translation>
        </message>
        <message>
            <source>This starter is mild: about {ta_g_per_l} of acid.</source>
            <translation>Este iniciador es suave: cerca de {ta_g_per_l} de ácido.</translation>
        </message>
        <message>
            <source>This starter is vinegary: about {ta_g_per_l} of acid.</source>
            <translation>Este iniciador es avinagrado: cerca de {ta_g_per_l} de ácido.</translation>
        </message>
        <message>
            <source>This starter is weak: about {ta_g_per_l} of acid.</source>
            <translation>Este iniciador es débil: cerca de {ta_g_per_l} de ácido.</translation>
        </message>
        <message>
            <source>This starter, as far as it is known, is not sour enough for the pH you asked for.</source>
            <translation>Este iniciador, por lo que se sabe, no es lo bastante ácido para el pH que pediste.</translation>
        </message>
        <message>
            <source>This vessel may give off lead.</source>
            <translation>Este recipiente puede soltar plomo.</translation>
        </message>
        <message>
            <source>Tongues differ, and sugar hides acid. Neither pH nor acidity of this starter is known.</source>
            <translation>Las lenguas difieren, y el azúcar tapa el ácido. No se conoce ni el pH ni la acidez de este iniciador.</translation>
        </message>
        <message>
            <source>Treat every closed bottle as if it might burst.</source>
            <translation>Trata cada botella cerrada como si pudiera estallar.</translation>
        </message>
        <message>
            <source>Use a sourer starter, or choose a higher pH to start at.</source>
            <translation>Usa un iniciador más ácido, o elige un pH inicial más alto.</translation>
        </message>
        <message>
            <source>Use bottles made for fizzy drinks, glass or plastic, or drink it flat.</source>
            <translation>Usa botellas hechas para bebidas con gas, de vidrio o plástico, o bébela sin gas.</translation>
        </message>
        <message>
            <source>Use fresh buffers and calibrate again.</source>
            <translation>Usa tampones frescos y calibra otra vez.</translation>
        </message>
        <message>
            <source>Use hotter water.</source>
            <translation>Usa agua más caliente.</translation>
        </message>
        <message>
            <source>Use it only if it is made for sour food, and replace it once scratched.</source>
            <translation>Úsalo solo si está hecho para alimentos ácidos, y cámbialo en cuanto se raye.</translation>
        </message>
        <message>
            <source>Use it to see how things move, not for how much sugar is left.</source>
            <translation>Úsala para ver cómo van las cosas, no para saber cuánto azúcar queda.</translation>
        </message>
        <message>
            <source>Use less bleach, never mix it with acid, and rinse with good water. </source>
            <translation>Usa menos lejía, nunca la mezcles con ácido, y enjuaga con agua buena. </translation>
        </message>
        <message>
            <source>Use less sugar unless you know this recipe.</source>
            <translation>Usa menos azúcar, salvo que conozcas esta receta.</translation>
        </message>
        <message>
            <source>Use less tea unless you know this recipe.</source>
            <translation>Usa menos té, salvo que conozcas esta receta.</translation>
        </message>
        <message>
            <source>Use more of it, or let it sour further first. </source>
            <translation>Usa más, o deja antes que se acidifique más. </translation>
        </message>
        <message>
            <source>Use more or sourer starter, and measure after mixing.</source>
            <translation>Usa más iniciador o uno más ácido, y mide después de mezclar.</translation>
        </message>
        <message>
            <source>Use more starter. </source>
            <translation>Usa más iniciador. </translation>
        </message>
        <message>
            <source>Use more sugar unless you know this recipe.</source>
            <translation>Usa más azúcar, salvo que conozcas esta receta.</translation>
        </message>
        <message>
            <source>Use more tea unless you know this recipe.</source>
            <translation>Usa más té, salvo que conozcas esta receta.</translation>
        </message>
        <message>
            <source>Use only a barrel made for drinks, and look for mold more often.</source>
            <translation>Usa solo un barril hecho para bebidas, y busca moho más a menudo.</translation>
        </message>
        <message>
            <source>Use pasteurised juice, or heat the fruit first. Measure the pH afterwards: the same limit applies again. </source>
            <translation>Usa jugo pasteurizado, o calienta antes la fruta. Mide el pH después: vuelve a valer el mismo límite. </translation>
        </message>
        <message>
            <source>Use smaller bottles, or plastic made for fizzy drinks.</source>
            <translation>Usa botellas más pequeñas, o de plástico hecho para bebidas con gas.</translation>
        </message>
        <message>
            <source>Use sourer starter, or more of it. </source>
            <translation>Usa un iniciador más ácido, o más cantidad. </translation>
        </message>
        <message>
            <source>Use water that is good to drink, or boil it first and let it cool.</source>
            <translation>Usa agua apta para beber, o hiérvela antes y deja que se enfríe.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. More of it stays in the drink, and more alcohol can form.</source>
            <translation>Las recetas habituales llevan de {low} a {high}. Queda más en la bebida, y puede formarse más alcohol.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. Strong tea is bitter and sours more slowly.</source>
            <translation>Las recetas habituales llevan de {low} a {high}. El té fuerte es amargo y se acidifica más despacio.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. The culture also lives on what the leaves give.</source>
            <translation>Las recetas habituales llevan de {low} a {high}. El cultivo también vive de lo que dan las hojas.</translation>
        </message>
        <message>
            <source>Usual recipes have {low} to {high}. The sugar feeds the culture; with too little it sours weakly.</source>
            <translation>Las recetas habituales llevan de {low} a {high}. El azúcar alimenta el cultivo; con muy poco se acidifica débilmente.</translation>
        </message>
        <message>
            <source>Wait until it is at {limit_c} or below, then measure again.</source>
            <translation>Espera a que esté a {limit_c} o menos, y mide otra vez.</translation>
        </message>
        <message>
            <source>Warm or stir the sample until it is flat, and titrate again.</source>
            <translation>Calienta o remueve la muestra hasta que no tenga gas, y titula otra vez.</translation>
        </message>
        <message>
            <source>Water at {hot_c} scalds.</source>
            <translation>El agua a {hot_c} quema.</translation>
        </message>
        <message>
            <source>Whatever lives in it meets sweet tea before it is sour.</source>
            <translation>Lo que viva en él llega al té azucarado antes de que esté ácido.</translation>
        </message>
        <message>
            <source>Where your local rules ask for more, follow them.</source>
            <translation>Donde tus normas locales pidan más, síguelas.</translation>
        </message>
        <message>
            <source>With its doubt that is above {ceiling_bar}, the most for these bottles.</source>
            <translation>Con su duda está por encima de {ceiling_bar}, lo máximo para estas botellas.</translation>
        </message>
        <message>
            <source>With mold, all of it has to go: drink, starter and culture.</source>
            <translation>Con moho hay que desecharlo todo: bebida, iniciador y cultivo.</translation>
        </message>
        <message>
            <source>With that doubt it is not certain that it is sour enough.</source>
            <translation>Con esa duda no es seguro que esté lo bastante ácido.</translation>
        </message>
        <message>
            <source>With the doubt of {sd} it may lie above {limit}, where harmful germs can grow. Sweet or fresh additions raise it.</source>
            <translation>Con la duda de {sd} puede estar por encima de {limit}, donde pueden crecer gérmenes dañinos. Los añadidos dulces o frescos lo suben.</translation>
        </message>
        <message>
            <source>With the uncertainty it lies between {low} and {high}, which is below {limit}, where unwanted germs grow less easily.</source>
            <translation>Con la incertidumbre está entre {low} y {high}, por debajo de {limit}, donde los gérmenes indeseados crecen con menos facilidad.</translation>
        </message>
        <message>
            <source>With {share} starter it will start at about pH {ph}, not {target}.</source>
            <translation>Con {share} de iniciador empezará cerca de pH {ph}, no {target}.</translation>
        </message>
        <message>
            <source>Without compensation this reading is off by {error_without_ph}.</source>
            <translation>Sin compensación esta lectura se desvía {error_without_ph}.</translation>
        </message>
        <message>
            <source>Wood is hard to keep clean.</source>
            <translation>La madera es difícil de mantener limpia.</translation>
        </message>
        <message>
            <source>Your limit is {limit_c}.</source>
            <translation>Tu límite es {limit_c}.</translation>
        </message>
        <message>
            <source>Your limit is {limit_c}. Heat weakens the culture, and a weak culture sours too slowly to keep mold away.</source>
            <translation>Tu límite es {limit_c}. El calor debilita el cultivo, y un cultivo débil se acidifica demasiado despacio para mantener lejos el moho.</translation>
        </message>
        <message>
            <source>pH {ph} and {ta_g_per_l} of acid do not go together in a usual starter.</source>
            <translation>pH {ph} y {ta_g_per_l} de ácido no encajan en un iniciador normal.</translation>
        </message>
        <message>
            <source>pH {ph} does not show that the drink is sour enough.</source>
            <translation>pH {ph} no muestra que la bebida esté lo bastante ácida.</translation>
        </message>
        <message>
            <source>pH {ph} is at {limit} or below, with the doubt of the reading counted in.</source>
            <translation>pH {ph} está a {limit} o menos, con la duda de la lectura incluida.</translation>
        </message>
        <message>
            <source>pH {ph} is close to {limit}, and the reading may be off by {sd}.</source>
            <translation>pH {ph} está cerca de {limit}, y la lectura puede desviarse {sd}.</translation>
        </message>
        <message>
            <source>pH {ph} is very sour, below {limit}.</source>
            <translation>pH {ph} es muy ácido, por debajo de {limit}.</translation>
        </message>
        <message>
            <source>pH {ph} is very sour: with the doubt of {sd} it may lie below {limit}.</source>
            <translation>pH {ph} es muy ácido: con la duda de {sd} puede estar por debajo de {limit}.</translation>
        </message>
        <message>
            <source>pH {ph} on day {day} is below {limit}, with the doubt of the reading counted in.</source>
            <translation>pH {ph} el día {day} está por debajo de {limit}, con la duda de la lectura incluida.</translation>
        </message>
        <message>
            <source>pH {ph} on day {day} is late.</source>
            <translation>pH {ph} el día {day} es tarde.</translation>
        </message>
        <message>
            <source>pH {ph} on day {day} is still above {limit}.</source>
            <translation>pH {ph} el día {day} sigue por encima de {limit}.</translation>
        </message>
        <message>
            <source>pH {value} would be unusual.</source>
            <translation>Un pH de {value} sería raro.</translation>
        </message>
        <message>
            <source>{bar} bar ({psi} psi)</source>
            <translation>{bar} bar ({psi} psi)</translation>
        </message>
        <message>
            <source>{brim_l} is large for glass under pressure.</source>
            <translation>{brim_l} es grande para vidrio a presión.</translation>
        </message>
        <message>
            <source>{drunk_l} a day is more than the most cautious advice.</source>
            <translation>{drunk_l} al día es más que el consejo más prudente.</translation>
        </message>
        <message>
            <source>{drunk_l} a day is within the most cautious advice.</source>
            <translation>{drunk_l} al día está dentro del consejo más prudente.</translation>
        </message>
        <message>
            <source>{fill_l} is more than the {working_l} you usually fill in.</source>
            <translation>{fill_l} es más que los {working_l} que sueles llenar.</translation>
        </message>
        <message>
            <source>{g_per_l} of sugar is a lot.</source>
            <translation>{g_per_l} de azúcar es mucho.</translation>
        </message>
        <message>
            <source>{g_per_l} of sugar is little.</source>
            <translation>{g_per_l} de azúcar es poco.</translation>
        </message>
        <message>
            <source>{g_per_l} of tea is a lot.</source>
            <translation>{g_per_l} de té es mucho.</translation>
        </message>
        <message>
            <source>{g_per_l} of tea is little.</source>
            <translation>{g_per_l} de té es poco.</translation>
        </message>
        <message>
            <source>{hot_c} is cool for steeping.</source>
            <translation>{hot_c} es poco calor para infusionar.</translation>
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
            <translation>{share} es más o menos lo que se suele tomar.</translation>
        </message>
        <message>
            <source>{share} is less than makers usually take.</source>
            <translation>{share} es menos de lo que se suele tomar.</translation>
        </message>
        <message>
            <source>{share} is more than makers usually take.</source>
            <translation>{share} es más de lo que se suele tomar.</translation>
        </message>
        <message>
            <source>{share} of headspace is a lot.</source>
            <translation>{share} de espacio de cabeza es mucho.</translation>
        </message>
        <message>
            <source>{share} of headspace is little.</source>
            <translation>{share} de espacio de cabeza es poco.</translation>
        </message>
        <message>
            <source>{share} starter is a lot.</source>
            <translation>{share} de iniciador es mucho.</translation>
        </message>
        <message>
            <source>{share} starter is little.</source>
            <translation>{share} de iniciador es poco.</translation>
        </message>
        <message>
            <source>{temperature_c} is cold enough to keep it.</source>
            <translation>{temperature_c} es lo bastante frío para conservarlo.</translation>
        </message>
        <message>
            <source>{temperature_c} is cold for the culture.</source>
            <translation>{temperature_c} es frío para el cultivo.</translation>
        </message>
        <message>
            <source>{temperature_c} is cool enough for starter and culture.</source>
            <translation>{temperature_c} es lo bastante fresco para iniciador y cultivo.</translation>
        </message>
        <message>
            <source>{temperature_c} is too warm to keep it.</source>
            <translation>{temperature_c} es demasiado calor para conservarlo.</translation>
        </message>
        <message>
            <source>{temperature_c} is warm for the culture.</source>
            <translation>{temperature_c} es cálido para el cultivo.</translation>
        </message>
        <message>
            <source>{temperature_c} may not end the fermenting.</source>
            <translation>{temperature_c} puede no parar la fermentación.</translation>
        </message>
        <message>
            <source>{temperature_c} meets the published {limit_c}.</source>
            <translation>{temperature_c} cumple los {limit_c} publicados.</translation>
        </message>
        <message>
            <source>{temperature_c} suits the culture.</source>
            <translation>{temperature_c} le va bien al cultivo.</translation>
        </message>
        <message>
            <source>{value_brix} would be unusual.</source>
            <translation>{value_brix} sería raro.</translation>
        </message>
        <message>
            <source>{value_c} would be unusual.</source>
            <translation>{value_c} sería raro.</translation>
        </message>
        <message>
            <source>{value_g_per_l} of acid would be unusual.</source>
            <translation>{value_g_per_l} de ácido sería raro.</translation>
        </message>
        <message>
            <source>{volumes} volumes are a lot of fizz for bottles of unknown rating.</source>
            <translation>{volumes} volúmenes es mucho gas para botellas de límite desconocido.</translation>
        </message>
        <message>
            <source>{volumes} volumes are too much fizz for bottles of unknown rating.</source>
            <translation>{volumes} volúmenes es demasiado gas para botellas de límite desconocido.</translation>
        </message>
    </context>
    <context>
        <name>VesselDialog</name>
        <message>
            <source>&amp;Inner diameter</source>
            <translation>Diámetro &amp;interior</translation>
        </message>
        <message>
            <source>&amp;Material</source>
            <translation>&amp;Material</translation>
        </message>
        <message>
            <source>&amp;Name</source>
            <translation>&amp;Nombre</translation>
        </message>
        <message>
            <source>Add a vessel</source>
            <translation>Añadir un recipiente</translation>
        </message>
        <message>
            <source>Cancel</source>
            <translation>Cancelar</translation>
        </message>
        <message>
            <source>Edit vessel</source>
            <translation>Editar recipiente</translation>
        </message>
        <message>
            <source>Give a volume, and the vessel is drawn here.</source>
            <translation>Indica un volumen, y el recipiente se dibuja aquí.</translation>
        </message>
        <message>
            <source>Give the vessel a name you will know it by.</source>
            <translation>Ponle al recipiente un nombre por el que lo reconozcas.</translation>
        </message>
        <message>
            <source>Holds up to the &amp;brim</source>
            <translation>Contiene hasta el &amp;borde</translation>
        </message>
        <message>
            <source>Save vessel</source>
            <translation>Guardar recipiente</translation>
        </message>
        <message>
            <source>Shape</source>
            <translation>Forma</translation>
        </message>
        <message>
            <source>Tall jar</source>
            <translation>Frasco alto</translation>
        </message>
        <message>
            <source>The diameter is a guess: measure it when you can.</source>
            <translation>El diámetro es una suposición: mídelo cuando puedas.</translation>
        </message>
        <message>
            <source>These figures fit no vessel of this shape.</source>
            <translation>Estas cifras no encajan con ningún recipiente de esta forma.</translation>
        </message>
        <message>
            <source>Where it &amp;stands</source>
            <translation>Dónde &amp;está</translation>
        </message>
        <message>
            <source>You &amp;fill it to</source>
            <translation>Lo &amp;llenas hasta</translation>
        </message>
        <message>
            <source>{height} high inside, {width} at the widest.</source>
            <translation>{height} de alto por dentro, {width} en lo más ancho.</translation>
        </message>
    </context>
    <context>
        <name>VesselPicks</name>
        <message>
            <source>Level of {vessel}</source>
            <translation>Nivel de {vessel}</translation>
        </message>
        <message>
            <source>No vessel is free. You can plan the trial without, and take batches in later.</source>
            <translation>No hay recipiente libre. Puedes planificar el ensayo sin él e incluir lotes después.</translation>
        </message>
        <message>
            <source>{volume}, {width} wide</source>
            <translation>{volume}, {width} de ancho</translation>
        </message>
    </context>
    <context>
        <name>Vessels</name>
        <message>
            <source>Pantry</source>
            <translation>Despensa</translation>
        </message>
    </context>
    <context>
        <name>WhatIfPanel</name>
        <message>
            <source>As it is</source>
            <translation>Tal como está</translation>
        </message>
        <message>
            <source>Move a slider: the dashed line shows how it would go then.</source>
            <translation>Mueve un control: la línea de trazos muestra cómo iría entonces.</translation>
        </message>
        <message>
            <source>See how it would go otherwise</source>
            <translation>Ver cómo iría de otro modo</translation>
        </message>
        <message>
            <source>The jar, from the start</source>
            <translation>El frasco, desde el inicio</translation>
        </message>
        <message>
            <source>The place, from now on</source>
            <translation>El lugar, a partir de ahora</translation>
        </message>
        <message>
            <source>The starter, from the start</source>
            <translation>El iniciador, desde el inicio</translation>
        </message>
        <message>
            <source>What if, in words</source>
            <translation>Y si, en palabras</translation>
        </message>
        <message>
            <source>What if…</source>
            <translation>Y si…</translation>
        </message>
        <message>
            <source>{length} across</source>
            <translation>{length} de ancho</translation>
        </message>
        <message>
            <source>{share} % of the jar</source>
            <translation>{share} % del frasco</translation>
        </message>
    </context>
    <context>
        <name>WhenEdit</name>
        <message>
            <source>Now</source>
            <translation>Ahora</translation>
        </message>
        <message>
            <source>Set the time to now</source>
            <translation>Poner la hora actual</translation>
        </message>
        <message>
            <source>d MMM yyyy, HH:mm</source>
            <translation>d MMM yyyy, HH:mm</translation>
        </message>
    </context>
    <context>
        <name>WindowFrame</name>
        <message>
            <source>Bottles</source>
            <translation>Botellas</translation>
        </message>
        <message>
            <source>Cultures</source>
            <translation>Cultivos</translation>
        </message>
        <message>
            <source>Due</source>
            <translation>Pendiente</translation>
        </message>
        <message>
            <source>History</source>
            <translation>Historial</translation>
        </message>
        <message>
            <source>Labels</source>
            <translation>Etiquetas</translation>
        </message>
        <message>
            <source>Plan</source>
            <translation>Plan</translation>
        </message>
        <message>
            <source>Reckon</source>
            <translation>Cálculo</translation>
        </message>
        <message>
            <source>Settings</source>
            <translation>Ajustes</translation>
        </message>
        <message>
            <source>Shelf</source>
            <translation>Estante</translation>
        </message>
        <message>
            <source>Stores</source>
            <translation>Existencias</translation>
        </message>
        <message>
            <source>This pantry is invented, to look around in. Its jars and readings are made up and kept in a file of their own.</source>
            <translation>Esta despensa es inventada, para curiosear. Sus frascos y lecturas son inventados y se guardan en un archivo propio.</translation>
        </message>
        <message>
            <source>Trials</source>
            <translation>Ensayos</translation>
        </message>
    </context>
    <context>
        <name>_CopiesDelegate</name>
        <message>
            <source>Copies</source>
            <translation>Copias</translation>
        </message>
    </context>
    <context>
        <name>_StripLine</name>
        <message>
            <source>{title}, {when}. Opens the due list.</source>
            <translation>{title}, {when}. Abre la lista de pendientes.</translation>
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
            <translation>&amp;Acerca de brewdesk</translation>
        </message>
        <message>
            <source>&amp;Change the vessel…</source>
            <translation>&amp;Cambiar el recipiente…</translation>
        </message>
        <message>
            <source>&amp;Cultures</source>
            <translation>&amp;Cultivos</translation>
        </message>
        <message>
            <source>&amp;Draw it off…</source>
            <translation>E&amp;xtraerlo…</translation>
        </message>
        <message>
            <source>&amp;Due</source>
            <translation>Pe&amp;ndiente</translation>
        </message>
        <message>
            <source>&amp;Edit</source>
            <translation>&amp;Editar</translation>
        </message>
        <message>
            <source>&amp;Find an act, and its keys…</source>
            <translation>&amp;Buscar una acción y sus teclas…</translation>
        </message>
        <message>
            <source>&amp;Find in everything</source>
            <translation>&amp;Buscar en todo</translation>
        </message>
        <message>
            <source>&amp;Help</source>
            <translation>&amp;Ayuda</translation>
        </message>
        <message>
            <source>&amp;History</source>
            <translation>&amp;Historial</translation>
        </message>
        <message>
            <source>&amp;Jar</source>
            <translation>&amp;Frasco</translation>
        </message>
        <message>
            <source>&amp;Keep starter back…</source>
            <translation>&amp;Guardar iniciador…</translation>
        </message>
        <message>
            <source>&amp;Labels</source>
            <translation>E&amp;tiquetas</translation>
        </message>
        <message>
            <source>&amp;Pantry</source>
            <translation>&amp;Despensa</translation>
        </message>
        <message>
            <source>&amp;Plan</source>
            <translation>&amp;Plan</translation>
        </message>
        <message>
            <source>&amp;Plan a batch…</source>
            <translation>&amp;Planificar un lote…</translation>
        </message>
        <message>
            <source>&amp;Print the run sheet…</source>
            <translation>&amp;Imprimir la hoja de trabajo…</translation>
        </message>
        <message>
            <source>&amp;Quit</source>
            <translation>Sal&amp;ir</translation>
        </message>
        <message>
            <source>&amp;Reckon</source>
            <translation>Cálcu&amp;lo</translation>
        </message>
        <message>
            <source>&amp;Redo</source>
            <translation>&amp;Rehacer</translation>
        </message>
        <message>
            <source>&amp;Retired vessels…</source>
            <translation>Recipientes re&amp;tirados…</translation>
        </message>
        <message>
            <source>&amp;Safety, and where the limits come from</source>
            <translation>&amp;Seguridad, y de dónde vienen los límites</translation>
        </message>
        <message>
            <source>&amp;Shelf</source>
            <translation>&amp;Estante</translation>
        </message>
        <message>
            <source>&amp;Undo</source>
            <translation>&amp;Deshacer</translation>
        </message>
        <message>
            <source>&amp;View</source>
            <translation>&amp;Ver</translation>
        </message>
        <message>
            <source>Add a &amp;culture…</source>
            <translation>Añadir un &amp;cultivo…</translation>
        </message>
        <message>
            <source>Add a &amp;reading</source>
            <translation>Añadir una &amp;lectura</translation>
        </message>
        <message>
            <source>Add a &amp;vessel…</source>
            <translation>Añadir un &amp;recipiente…</translation>
        </message>
        <message>
            <source>B&amp;atch report…</source>
            <translation>Infor&amp;me del lote…</translation>
        </message>
        <message>
            <source>B&amp;ottle it…</source>
            <translation>Em&amp;botellarlo…</translation>
        </message>
        <message>
            <source>B&amp;ottles</source>
            <translation>&amp;Botellas</translation>
        </message>
        <message>
            <source>Bac&amp;kups…</source>
            <translation>Copias de &amp;seguridad…</translation>
        </message>
        <message>
            <source>Back up no&amp;w</source>
            <translation>&amp;Hacer copia ahora</translation>
        </message>
        <message>
            <source>Bring in an expor&amp;t…</source>
            <translation>I&amp;ncorporar una exportación…</translation>
        </message>
        <message>
            <source>Carr&amp;y</source>
            <translation>Lle&amp;var</translation>
        </message>
        <message>
            <source>Copy ever&amp;ything to a folder…</source>
            <translation>Copiar to&amp;do a una carpeta…</translation>
        </message>
        <message>
            <source>D&amp;iscard it…</source>
            <translation>&amp;Desecharlo…</translation>
        </message>
        <message>
            <source>Draw off par&amp;t…</source>
            <translation>Extraer &amp;una parte…</translation>
        </message>
        <message>
            <source>Due list as a &amp;calendar file…</source>
            <translation>Pendientes como archi&amp;vo de calendario…</translation>
        </message>
        <message>
            <source>E&amp;xport everything…</source>
            <translation>&amp;Exportar todo…</translation>
        </message>
        <message>
            <source>It is already in the &amp;jar…</source>
            <translation>&amp;Ya está en el frasco…</translation>
        </message>
        <message>
            <source>Look &amp;back</source>
            <translation>B&amp;alance</translation>
        </message>
        <message>
            <source>Open the &amp;invented pantry</source>
            <translation>A&amp;brir la despensa inventada</translation>
        </message>
        <message>
            <source>P&amp;laces and how warm they are…</source>
            <translation>&amp;Lugares y su temperatura…</translation>
        </message>
        <message>
            <source>Past &amp;batches…</source>
            <translation>Lotes &amp;anteriores…</translation>
        </message>
        <message>
            <source>Pour &amp;over into another vessel…</source>
            <translation>Trasvasar a &amp;otro recipiente…</translation>
        </message>
        <message>
            <source>Pour to&amp;gether with another batch…</source>
            <translation>&amp;Juntar con otro lote…</translation>
        </message>
        <message>
            <source>Pr&amp;ocess log…</source>
            <translation>Registr&amp;o del proceso…</translation>
        </message>
        <message>
            <source>Print a &amp;label…</source>
            <translation>Imprimir e&amp;tiqueta…</translation>
        </message>
        <message>
            <source>R&amp;etire the vessel</source>
            <translation>Retir&amp;ar el recipiente</translation>
        </message>
        <message>
            <source>Read in readi&amp;ngs…</source>
            <translation>Im&amp;portar lecturas…</translation>
        </message>
        <message>
            <source>Se&amp;ttings</source>
            <translation>A&amp;justes</translation>
        </message>
        <message>
            <source>Show its &amp;history</source>
            <translation>Mostrar su &amp;historial</translation>
        </message>
        <message>
            <source>Start &amp;brewing</source>
            <translation>&amp;Empezar a preparar</translation>
        </message>
        <message>
            <source>Stor&amp;es</source>
            <translation>E&amp;xistencias</translation>
        </message>
        <message>
            <source>T&amp;rials</source>
            <translation>Ensay&amp;os</translation>
        </message>
        <message>
            <source>Top &amp;up…</source>
            <translation>&amp;Rellenar…</translation>
        </message>
    </context>
    <context>
        <name>limits</name>
        <message>
            <source>% alcohol by volume</source>
            <translation>% de alcohol en volumen</translation>
        </message>
        <message>
            <source>A cautious choice of this program.</source>
            <translation>Una elección prudente de este programa.</translation>
        </message>
        <message>
            <source>A place's temperature says something of today for</source>
            <translation>La temperatura de un lugar dice algo del presente durante</translation>
        </message>
        <message>
            <source>A souring jar's place, at least</source>
            <translation>Lugar de un frasco en acidificación, como mínimo</translation>
        </message>
        <message>
            <source>A souring jar's place, at most</source>
            <translation>Lugar de un frasco en acidificación, como máximo</translation>
        </message>
        <message>
            <source>Accuracy that a pH meter for food should have</source>
            <translation>Exactitud que debe tener un medidor de pH para alimentos</translation>
        </message>
        <message>
            <source>Australia and New Zealand: brewed soft drink, at most</source>
            <translation>Australia y Nueva Zelanda: refresco fermentado, como máximo</translation>
        </message>
        <message>
            <source>Australia and New Zealand: strength is stated above</source>
            <translation>Australia y Nueva Zelanda: la graduación se indica por encima de</translation>
        </message>
        <message>
            <source>Bottle for fizzy drinks of unknown rating: pressure on a gauge, at most</source>
            <translation>Botella para bebidas con gas de límite desconocido: presión manométrica, como máximo</translation>
        </message>
        <message>
            <source>Bottle for fizzy drinks of unknown rating: volumes of carbon dioxide, below</source>
            <translation>Botella para bebidas con gas de límite desconocido: volúmenes de dióxido de carbono, por debajo de</translation>
        </message>
        <message>
            <source>British Columbia and Ontario: controlled above</source>
            <translation>Columbia Británica y Ontario: controlado por encima de</translation>
        </message>
        <message>
            <source>Caffeine at once, and in a day of pregnancy, at most</source>
            <translation>Cafeína de una vez, y en un día de embarazo, como máximo</translation>
        </message>
        <message>
            <source>Caffeine in a day, adults, at most</source>
            <translation>Cafeína en un día, adultos, como máximo</translation>
        </message>
        <message>
            <source>Called close to that fizz from</source>
            <translation>Se llama cercano a ese gas desde</translation>
        </message>
        <message>
            <source>Called close to that pressure from</source>
            <translation>Se llama cercana a esa presión desde</translation>
        </message>
        <message>
            <source>Called long when souring for</source>
            <translation>Se llama larga una acidificación de</translation>
        </message>
        <message>
            <source>Called over-long when souring for</source>
            <translation>Se llama demasiado larga una acidificación de</translation>
        </message>
        <message>
            <source>Called slow when not reached by</source>
            <translation>Se llama lento si no se alcanza en</translation>
        </message>
        <message>
            <source>Canada, most provinces: controlled above</source>
            <translation>Canadá, la mayoría de las provincias: controlado por encima de</translation>
        </message>
        <message>
            <source>Canada: strength is declared from</source>
            <translation>Canadá: la graduación se declara desde</translation>
        </message>
        <message>
            <source>Chlorine in water for rinsing vessels, at most</source>
            <translation>Cloro en el agua para enjuagar recipientes, como máximo</translation>
        </message>
        <message>
            <source>Cold storage of the drink, at most</source>
            <translation>Almacenamiento en frío de la bebida, como máximo</translation>
        </message>
        <message>
            <source>Common practice, without a source.</source>
            <translation>Práctica habitual, sin fuente.</translation>
        </message>
        <message>
            <source>Derived from the figures named.</source>
            <translation>Derivado de las cifras nombradas.</translation>
        </message>
        <message>
            <source>Drunk in a day, most cautious advice read</source>
            <translation>Bebido en un día, el consejo más prudente leído</translation>
        </message>
        <message>
            <source>European Union: strength is stated above</source>
            <translation>Unión Europea: la graduación se indica por encima de</translation>
        </message>
        <message>
            <source>From memory, not confirmed.</source>
            <translation>De memoria, sin confirmar.</translation>
        </message>
        <message>
            <source>Glass for fizzy drinks: the trade's own figure, at most</source>
            <translation>Vidrio para bebidas con gas: la cifra del propio sector, como máximo</translation>
        </message>
        <message>
            <source>Glass under pressure: size, at most</source>
            <translation>Vidrio a presión: tamaño, como máximo</translation>
        </message>
        <message>
            <source>Headspace of a bottle, at least</source>
            <translation>Espacio de cabeza de una botella, como mínimo</translation>
        </message>
        <message>
            <source>Headspace of a bottle, called large above</source>
            <translation>Espacio de cabeza de una botella, llamado grande por encima de</translation>
        </message>
        <message>
            <source>Headspace of a bottle, usual</source>
            <translation>Espacio de cabeza de una botella, habitual</translation>
        </message>
        <message>
            <source>Heating to end fermenting, in an open pot, at least</source>
            <translation>Calentar para parar la fermentación, en olla abierta, como mínimo</translation>
        </message>
        <message>
            <source>Keeping the drink cold, at most</source>
            <translation>Conservar fría la bebida, como máximo</translation>
        </message>
        <message>
            <source>Liquid a culture goes into, at most</source>
            <translation>Líquido en que entra un cultivo, como máximo</translation>
        </message>
        <message>
            <source>Liquid that harms a culture, from</source>
            <translation>Líquido que daña un cultivo, desde</translation>
        </message>
        <message>
            <source>Offset of a pH meter in the neutral buffer, at most</source>
            <translation>Desfase de un medidor de pH en el tampón neutro, como máximo</translation>
        </message>
        <message>
            <source>Rated bottle: careful from this part of its rating</source>
            <translation>Botella con límite: cuidado desde esta parte de su límite</translation>
        </message>
        <message>
            <source>Read in the source itself.</source>
            <translation>Leído en la propia fuente.</translation>
        </message>
        <message>
            <source>Read only as others quote it.</source>
            <translation>Leído solo según lo citan otros.</translation>
        </message>
        <message>
            <source>Share of starter, at least</source>
            <translation>Proporción de iniciador, como mínimo</translation>
        </message>
        <message>
            <source>Share of starter, at most</source>
            <translation>Proporción de iniciador, como máximo</translation>
        </message>
        <message>
            <source>Share of starter, lowest advice read</source>
            <translation>Proporción de iniciador, el consejo más bajo leído</translation>
        </message>
        <message>
            <source>Slope of a pH meter, at least</source>
            <translation>Pendiente de un medidor de pH, como mínimo</translation>
        </message>
        <message>
            <source>Slope of a pH meter, at most</source>
            <translation>Pendiente de un medidor de pH, como máximo</translation>
        </message>
        <message>
            <source>Slope of a pH meter, called good from</source>
            <translation>Pendiente de un medidor de pH, llamada buena desde</translation>
        </message>
        <message>
            <source>Slope of a pH meter, called good up to</source>
            <translation>Pendiente de un medidor de pH, llamada buena hasta</translation>
        </message>
        <message>
            <source>Steeping time</source>
            <translation>Tiempo de infusión</translation>
        </message>
        <message>
            <source>Sweet tea standing without starter: at most</source>
            <translation>Té azucarado sin iniciador: como máximo</translation>
        </message>
        <message>
            <source>Sweet tea standing without starter: careful after</source>
            <translation>Té azucarado sin iniciador: cuidado después de</translation>
        </message>
        <message>
            <source>Time to chill when a gauge shows</source>
            <translation>Momento de enfriar cuando un manómetro marca</translation>
        </message>
        <message>
            <source>Time to reach that pH</source>
            <translation>Tiempo para alcanzar ese pH</translation>
        </message>
        <message>
            <source>US fl oz</source>
            <translation>US fl oz</translation>
        </message>
        <message>
            <source>United Kingdom: called low alcohol, at most</source>
            <translation>Reino Unido: llamado bajo en alcohol, como máximo</translation>
        </message>
        <message>
            <source>United States: an alcohol beverage from, at any time</source>
            <translation>Estados Unidos: bebida alcohólica desde, en cualquier momento</translation>
        </message>
        <message>
            <source>Water for steeping, at least</source>
            <translation>Agua para infusionar, como mínimo</translation>
        </message>
        <message>
            <source>days</source>
            <translation>días</translation>
        </message>
        <message>
            <source>hours</source>
            <translation>horas</translation>
        </message>
        <message>
            <source>mg/L</source>
            <translation>mg/L</translation>
        </message>
        <message>
            <source>minutes</source>
            <translation>minutos</translation>
        </message>
        <message>
            <source>pH of a finished drink, at least</source>
            <translation>pH de una bebida terminada, como mínimo</translation>
        </message>
        <message>
            <source>pH of a finished drink, at most</source>
            <translation>pH de una bebida terminada, como máximo</translation>
        </message>
        <message>
            <source>pH of the blend at the start, at most</source>
            <translation>pH de la mezcla al inicio, como máximo</translation>
        </message>
        <message>
            <source>pH of the blend at the start, wanted</source>
            <translation>pH de la mezcla al inicio, deseado</translation>
        </message>
        <message>
            <source>pH strips are trusted up to</source>
            <translation>Se confía en las tiras de pH hasta</translation>
        </message>
        <message>
            <source>volumes</source>
            <translation>volúmenes</translation>
        </message>
    </context>
    <context>
        <name>moments</name>
        <message>
            <source>ddd d MMM</source>
            <translation>ddd d MMM</translation>
        </message>
        <message>
            <source>on {date}</source>
            <translation>el {date}</translation>
        </message>
        <message>
            <source>since yesterday</source>
            <translation>desde ayer</translation>
        </message>
        <message>
            <source>since {date}</source>
            <translation>desde el {date}</translation>
        </message>
        <message>
            <source>today {time}</source>
            <translation>hoy {time}</translation>
        </message>
        <message>
            <source>tomorrow</source>
            <translation>mañana</translation>
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
            <translation>En preparación</translation>
        </message>
        <message>
            <source>Brew it next</source>
            <translation>Toca prepararlo</translation>
        </message>
        <message>
            <source>Check the pH</source>
            <translation>Comprobar el pH</translation>
        </message>
        <message>
            <source>Day {n}</source>
            <translation>Día {n}</translation>
        </message>
        <message>
            <source>Draw it off</source>
            <translation>Extraerlo</translation>
        </message>
        <message>
            <source>Drawn off</source>
            <translation>Extraído</translation>
        </message>
        <message>
            <source>Drawn off at pH {ph}</source>
            <translation>Extraído a pH {ph}</translation>
        </message>
        <message>
            <source>Empty · {volume}</source>
            <translation>Vacío · {volume}</translation>
        </message>
        <message>
            <source>Feed it</source>
            <translation>Alimentarlo</translation>
        </message>
        <message>
            <source>Follow the run sheet</source>
            <translation>Seguir la hoja de trabajo</translation>
        </message>
        <message>
            <source>Look for dryness</source>
            <translation>Ver si se seca</translation>
        </message>
        <message>
            <source>Look for mold</source>
            <translation>Buscar moho</translation>
        </message>
        <message>
            <source>Look for the film</source>
            <translation>Buscar la película</translation>
        </message>
        <message>
            <source>May carry mold</source>
            <translation>Puede tener moho</translation>
        </message>
        <message>
            <source>Mold was seen</source>
            <translation>Se vio moho</translation>
        </message>
        <message>
            <source>Planned</source>
            <translation>Planificado</translation>
        </message>
        <message>
            <source>Ready for a batch</source>
            <translation>Listo para un lote</translation>
        </message>
        <message>
            <source>Taste it</source>
            <translation>Catarlo</translation>
        </message>
        <message>
            <source>Your reminder</source>
            <translation>Tu recordatorio</translation>
        </message>
        <message>
            <source>needs attention</source>
            <translation>requiere atención</translation>
        </message>
        <message>
            <source>no pH yet</source>
            <translation>aún sin pH</translation>
        </message>
        <message>
            <source>now</source>
            <translation>ahora</translation>
        </message>
        <message>
            <source>pH about {ph}</source>
            <translation>pH cerca de {ph}</translation>
        </message>
        <message>
            <source>pH {ph}</source>
            <translation>pH {ph}</translation>
        </message>
        <message>
            <source>pellicle {mm} mm</source>
            <translation>película {mm} mm</translation>
        </message>
        <message>
            <source>time is up</source>
            <translation>se acabó el tiempo</translation>
        </message>
        <message>
            <source>timer until {time}</source>
            <translation>temporizador hasta {time}</translation>
        </message>
        <message>
            <source>{culture} at rest</source>
            <translation>{culture} en reposo</translation>
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
