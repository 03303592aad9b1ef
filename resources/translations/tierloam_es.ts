<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;New household…</source>
        <translation>&amp;Nuevo hogar…</translation>
    </message>
    <message>
        <source>&amp;Open household…</source>
        <translation>&amp;Abrir hogar…</translation>
    </message>
    <message>
        <source>Na&amp;me of the household…</source>
        <translation>Nom&amp;bre del hogar…</translation>
    </message>
    <message>
        <source>&amp;Import a table (CSV)…</source>
        <translation>&amp;Importar una tabla (CSV)…</translation>
    </message>
    <message>
        <source>Import readings of a &amp;logger…</source>
        <translation>Importar lecturas de un &amp;registrador…</translation>
    </message>
    <message>
        <source>&amp;Export journal (CSV)…</source>
        <translation>&amp;Exportar el diario (CSV)…</translation>
    </message>
    <message>
        <source>Export ca&amp;lendar…</source>
        <translation>Exportar el &amp;calendario…</translation>
    </message>
    <message>
        <source>Sa&amp;ve a copy…</source>
        <translation>&amp;Guardar una copia…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>Copias de &amp;seguridad…</translation>
    </message>
    <message>
        <source>&amp;Folder for backups…</source>
        <translation>Car&amp;peta de copias de seguridad…</translation>
    </message>
    <message>
        <source>Open the &amp;demo household</source>
        <translation>Abrir el hogar de &amp;demostración</translation>
    </message>
    <message>
        <source>&amp;Close window</source>
        <translation>Cerrar la &amp;ventana</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Sa&amp;lir</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Deleted entries…</source>
        <translation>Anotaciones &amp;borradas…</translation>
    </message>
    <message>
        <source>New &amp;stack…</source>
        <translation>&amp;Nueva torre…</translation>
    </message>
    <message>
        <source>Re&amp;cord…</source>
        <translation>An&amp;otar…</translation>
    </message>
    <message>
        <source>What may be &amp;wrong</source>
        <translation>Qué puede ir &amp;mal</translation>
    </message>
    <message>
        <source>&amp;Harvest, step by step</source>
        <translation>&amp;Cosecha, paso a paso</translation>
    </message>
    <message>
        <source>&amp;Shelf</source>
        <translation>&amp;Estante</translation>
    </message>
    <message>
        <source>&amp;Trends</source>
        <translation>&amp;Tendencias</translation>
    </message>
    <message>
        <source>&amp;Journal</source>
        <translation>&amp;Diario</translation>
    </message>
    <message>
        <source>&amp;Materials</source>
        <translation>&amp;Materiales</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>Ma&amp;nual</translation>
    </message>
    <message>
        <source>R&amp;otation</source>
        <translation>R&amp;otación</translation>
    </message>
    <message>
        <source>Go to the &amp;due list</source>
        <translation>Ir a las &amp;tareas</translation>
    </message>
    <message>
        <source>Do the &amp;first thing due</source>
        <translation>Hacer la p&amp;rimera tarea</translation>
    </message>
    <message>
        <source>&amp;Light colours</source>
        <translation>Colores &amp;claros</translation>
    </message>
    <message>
        <source>&amp;Dark colours</source>
        <translation>Colores &amp;oscuros</translation>
    </message>
    <message>
        <source>Colours &amp;as the system</source>
        <translation>Colores &amp;del sistema</translation>
    </message>
    <message>
        <source>L&amp;arger text</source>
        <translation>Texto más &amp;grande</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>Texto más &amp;pequeño</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>Texto &amp;normal</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>Pantalla com&amp;pleta</translation>
    </message>
    <message>
        <source>&amp;Keys and shortcuts</source>
        <translation>&amp;Teclas y atajos</translation>
    </message>
    <message>
        <source>Copy a &amp;report</source>
        <translation>Copiar un &amp;informe</translation>
    </message>
    <message>
        <source>&amp;About Tierloam</source>
        <translation>&amp;Acerca de Tierloam</translation>
    </message>
    <message>
        <source>&amp;Feed the usual</source>
        <translation>&amp;Alimento habitual</translation>
    </message>
    <message>
        <source>F&amp;eed…</source>
        <translation>A&amp;limentar…</translation>
    </message>
    <message>
        <source>&amp;Water the usual</source>
        <translation>Rie&amp;go habitual</translation>
    </message>
    <message>
        <source>W&amp;ater…</source>
        <translation>&amp;Regar…</translation>
    </message>
    <message>
        <source>&amp;Drain the usual</source>
        <translation>&amp;Drenaje habitual</translation>
    </message>
    <message>
        <source>D&amp;rain…</source>
        <translation>Dr&amp;enar…</translation>
    </message>
    <message>
        <source>Add a tra&amp;y…</source>
        <translation>Añadir una bande&amp;ja…</translation>
    </message>
    <message>
        <source>Add beddin&amp;g…</source>
        <translation>Añadir cam&amp;a…</translation>
    </message>
    <message>
        <source>We&amp;igh worms…</source>
        <translation>&amp;Pesar lombrices…</translation>
    </message>
    <message>
        <source>Co&amp;unt worms…</source>
        <translation>Con&amp;tar lombrices…</translation>
    </message>
    <message>
        <source>Weig&amp;h a tray…</source>
        <translation>Pesar una ban&amp;deja…</translation>
    </message>
    <message>
        <source>&amp;Put worms in…</source>
        <translation>&amp;Meter lombrices…</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>&amp;Nota…</translation>
    </message>
    <message>
        <source>Retire the stack…</source>
        <translation>Dar de baja la torre…</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Más…</translation>
    </message>
    <message>
        <source>A day back</source>
        <translation>Un día atrás</translation>
    </message>
    <message>
        <source>A day on</source>
        <translation>Un día adelante</translation>
    </message>
    <message>
        <source>A week back</source>
        <translation>Una semana atrás</translation>
    </message>
    <message>
        <source>A week on</source>
        <translation>Una semana adelante</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Volver a hoy</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 días</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 días</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 año</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 años</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Stacks together</source>
        <translation>Torres juntas</translation>
    </message>
    <message>
        <source>As table</source>
        <translation>Como tabla</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Editar…</translation>
    </message>
    <message>
        <source>Change together…</source>
        <translation>Cambiar juntas…</translation>
    </message>
    <message>
        <source>Pictures…</source>
        <translation>Fotos…</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Mostrar todo</translation>
    </message>
    <message>
        <source>Find a material</source>
        <translation>Buscar un material</translation>
    </message>
    <message>
        <source>New material…</source>
        <translation>Nuevo material…</translation>
    </message>
    <message>
        <source>Edit the own material…</source>
        <translation>Editar el material propio…</translation>
    </message>
    <message>
        <source>Favourite</source>
        <translation>Favorito</translation>
    </message>
    <message>
        <source>Put it into the mix</source>
        <translation>Añadir a la mezcla</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mezcla</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Cama</translation>
    </message>
    <message>
        <source>Use of castings</source>
        <translation>Uso del humus</translation>
    </message>
    <message>
        <source>Use of leachate</source>
        <translation>Uso del lixiviado</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Buscar en el manual</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Adelante</translation>
    </message>
    <message>
        <source>To the first page</source>
        <translation>A la primera página</translation>
    </message>
    <message>
        <source>As they come</source>
        <translation>Según vengan</translation>
    </message>
    <message>
        <source>Spread over the year</source>
        <translation>Repartidas en el año</translation>
    </message>
    <message>
        <source>Gathered on few days</source>
        <translation>Reunidas en pocos días</translation>
    </message>
    <message>
        <source>Let it come on its turn</source>
        <translation>Dejarla para su turno</translation>
    </message>
    <message>
        <source>Steps as table</source>
        <translation>Pasos como tabla</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>En el estante</translation>
    </message>
    <message>
        <source>On the trends page</source>
        <translation>En la página de tendencias</translation>
    </message>
    <message>
        <source>In the journal</source>
        <translation>En el diario</translation>
    </message>
    <message>
        <source>On the rotation page</source>
        <translation>En la página de rotación</translation>
    </message>
    <message>
        <source>On the materials page</source>
        <translation>En la página de materiales</translation>
    </message>
    <message>
        <source>In the handbook</source>
        <translation>En el manual</translation>
    </message>
    <message>
        <source>In a form</source>
        <translation>En un formulario</translation>
    </message>
    <message>
        <source>&amp;Print the sheet of a stack…</source>
        <translation>Im&amp;primir la hoja de una torre…</translation>
    </message>
    <message>
        <source>Labels for &amp;trays…</source>
        <translation>Etiquetas de bande&amp;jas…</translation>
    </message>
    <message>
        <source>Units &amp;as the system</source>
        <translation>Unidades &amp;como el sistema</translation>
    </message>
    <message>
        <source>&amp;Metric: kg, L, °C</source>
        <translation>&amp;Métricas: kg, L, °C</translation>
    </message>
    <message>
        <source>&amp;US: lb, gal, °F</source>
        <translation>&amp;EE. UU.: lb, gal, °F</translation>
    </message>
    <message>
        <source>Language &amp;as the system</source>
        <translation>Idioma &amp;como el sistema</translation>
    </message>
    <message>
        <source>Less &amp;motion</source>
        <translation>Menos &amp;movimiento</translation>
    </message>
    <message>
        <source>Move the stack to the left</source>
        <translation>Mover la torre a la izquierda</translation>
    </message>
    <message>
        <source>Move the stack to the right</source>
        <translation>Mover la torre a la derecha</translation>
    </message>
    <message>
        <source>Drainage added up</source>
        <translation>Drenaje acumulado</translation>
    </message>
    <message>
        <source>Yield by year</source>
        <translation>Rendimiento por año</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation>Probar un cambio</translation>
    </message>
    <message>
        <source>Fewer days</source>
        <translation>Menos días</translation>
    </message>
    <message>
        <source>More days</source>
        <translation>Más días</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Todos los días</translation>
    </message>
    <message>
        <source>Earlier days</source>
        <translation>Días anteriores</translation>
    </message>
    <message>
        <source>Later days</source>
        <translation>Días posteriores</translation>
    </message>
    <message>
        <source>Picture (&amp;PNG)…</source>
        <translation>Imagen (&amp;PNG)…</translation>
    </message>
    <message>
        <source>Drawing (&amp;SVG)…</source>
        <translation>Dibujo (&amp;SVG)…</translation>
    </message>
    <message>
        <source>Pages (P&amp;DF)…</source>
        <translation>Páginas (P&amp;DF)…</translation>
    </message>
    <message>
        <source>Figures (&amp;CSV)…</source>
        <translation>Cifras (&amp;CSV)…</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>Imp&amp;rimir…</translation>
    </message>
    <message>
        <source>One more like it…</source>
        <translation>Otra igual…</translation>
    </message>
    <message>
        <source>Record several…</source>
        <translation>Anotar varias…</translation>
    </message>
    <message>
        <source>Columns…</source>
        <translation>Columnas…</translation>
    </message>
    <message>
        <source>&amp;Tell on the desktop what is due today</source>
        <translation>&amp;Avisar en el escritorio de lo que toca hoy</translation>
    </message>
    <message>
        <source>Warmest in &amp;July, north of the equator</source>
        <translation>Más calor en &amp;julio, al norte del ecuador</translation>
    </message>
    <message>
        <source>Warmest in J&amp;anuary, south of the equator</source>
        <translation>Más calor en &amp;enero, al sur del ecuador</translation>
    </message>
    <message>
        <source>Do what the line says</source>
        <translation>Hacer lo que dice la línea</translation>
    </message>
    <message>
        <source>Another amount or day…</source>
        <translation>Otra cantidad u otro día…</translation>
    </message>
    <message>
        <source>Answers in their order</source>
        <translation>Respuestas por su orden</translation>
    </message>
    <message>
        <source>Note it as done</source>
        <translation>Anotar como hecho</translation>
    </message>
    <message>
        <source>Why, and what if it is left</source>
        <translation>Por qué, y qué pasa si no</translation>
    </message>
    <message>
        <source>Put it off</source>
        <translation>Aplazar</translation>
    </message>
    <message>
        <source>Show what was put off</source>
        <translation>Mostrar lo aplazado</translation>
    </message>
    <message>
        <source>Feed only what is borne</source>
        <translation>Dar solo lo que se tolera</translation>
    </message>
    <message>
        <source>&amp;Cover with the usual</source>
        <translation>&amp;Cubierta habitual</translation>
    </message>
    <message>
        <source>Co&amp;ver…</source>
        <translation>Cu&amp;brir…</translation>
    </message>
    <message>
        <source>In a line of the due list</source>
        <translation>En una línea de la lista</translation>
    </message>
    <message>
        <source>Compare the change with the usual course</source>
        <translation>Comparar el cambio con el curso habitual</translation>
    </message>
    <message>
        <source>Another material in the mix</source>
        <translation>Otro material en la mezcla</translation>
    </message>
    <message>
        <source>Days of the week for harvests, Monday first</source>
        <translation>Días de la semana para las cosechas, el lunes primero</translation>
    </message>
    <message>
        <source>Keep this day</source>
        <translation>Mantener este día</translation>
    </message>
    <message>
        <source>A little each month</source>
        <translation>Un poco cada mes</translation>
    </message>
    <message>
        <source>What would raise it?</source>
        <translation>¿Qué la aumentaría?</translation>
    </message>
    <message>
        <source>F&amp;lush…</source>
        <translation>&amp;Enjuagar…</translation>
    </message>
    <message>
        <source>Lift the &amp;bottom tray…</source>
        <translation>Su&amp;bir la bandeja inferior…</translation>
    </message>
    <message>
        <source>Ha&amp;rvest…</source>
        <translation>&amp;Cosecha…</translation>
    </message>
    <message>
        <source>L&amp;oosen the castings</source>
        <translation>A&amp;flojar el humus</translation>
    </message>
    <message>
        <source>Chec&amp;k a tray…</source>
        <translation>Mirar una ban&amp;deja…</translation>
    </message>
    <message>
        <source>Readin&amp;g…</source>
        <translation>&amp;Lectura…</translation>
    </message>
    <message>
        <source>T&amp;ake worms out…</source>
        <translation>&amp;Sacar lombrices…</translation>
    </message>
    <message>
        <source>&amp;Move worms…</source>
        <translation>&amp;Pasar lombrices…</translation>
    </message>
    <message>
        <source>U&amp;nwritten routine…</source>
        <translation>&amp;Rutina sin anotar…</translation>
    </message>
    <message>
        <source>Somet&amp;hing happened…</source>
        <translation>P&amp;asó algo…</translation>
    </message>
    <message>
        <source>&amp;Change the stack…</source>
        <translation>&amp;Cambiar la torre…</translation>
    </message>
</context>
<context>
    <name>Advice</name>
    <message>
        <source>The top tray fills to its rim, spent bedding crowds the colony, and it shrinks.</source>
        <translation>La bandeja superior se llena hasta el borde, la cama gastada quita sitio a la colonia y esta mengua.</translation>
    </message>
    <message>
        <source>Nothing is lost: the castings keep where they are.</source>
        <translation>No se pierde nada: el humus se conserva donde está.</translation>
    </message>
    <message>
        <source>Nothing yet; have bedding at hand for the emptied tray.</source>
        <translation>Nada por ahora; ten cama a mano para la bandeja que se vacíe.</translation>
    </message>
    <message>
        <source>There is no room for food, and the colony goes on shrinking.</source>
        <translation>No hay sitio para el alimento y la colonia sigue menguando.</translation>
    </message>
    <message>
        <source>The tray fills to its rim and food no longer fits.</source>
        <translation>La bandeja se llena hasta el borde y el alimento ya no cabe.</translation>
    </message>
    <message>
        <source>The worms are spread thin and every step after it comes later; of a tray lifted early much is food, not castings.</source>
        <translation>Las lombrices quedan dispersas y cada paso posterior se retrasa; en una bandeja subida pronto hay mucho alimento y poco humus.</translation>
    </message>
    <message>
        <source>After two to three weeks the worms live on bedding and reserves.</source>
        <translation>Pasadas dos o tres semanas, las lombrices viven de la cama y de sus reservas.</translation>
    </message>
    <message>
        <source>The bed heats and smells; below half of full air worms die.</source>
        <translation>El lecho se calienta y huele; con menos de la mitad del aire mueren lombrices.</translation>
    </message>
    <message>
        <source>With 80 % the worms assimilate less than they need, little that they can eat lies there, and the bed is warm enough. It is taken back at 60 %.</source>
        <translation>Al 80&#xa0;%, las lombrices asimilan menos de lo que necesitan, queda poco que puedan comer y el lecho está lo bastante templado. Se retira al 60&#xa0;%.</translation>
    </message>
    <message>
        <source>They stop laying and shrink; some die.</source>
        <translation>Dejan de poner capullos y menguan; algunas mueren.</translation>
    </message>
    <message>
        <source>Food lies against the lid, and the trays above cannot rest on it.</source>
        <translation>El alimento toca la tapa y las bandejas de arriba no pueden apoyarse.</translation>
    </message>
    <message>
        <source>Nitrogen is lost as ammonia, which smells and burns worms.</source>
        <translation>Se pierde nitrógeno como amoníaco, que huele y quema a las lombrices.</translation>
    </message>
    <message>
        <source>The bed runs short of air, smells, and worms climb out.</source>
        <translation>Al lecho le falta aire, huele y las lombrices se escapan.</translation>
    </message>
    <message>
        <source>Worms eat less, below a third they stop and die.</source>
        <translation>Las lombrices comen menos; por debajo de un tercio paran y mueren.</translation>
    </message>
    <message>
        <source>What comes then runs over on the floor.</source>
        <translation>Lo que llegue después rebosa al suelo.</translation>
    </message>
    <message>
        <source>Twice in a row less was drained than the lower 5 % of what the water balance expects; for 60 days or until a drain fits again.</source>
        <translation>Dos veces seguidas se drenó menos que el 5&#xa0;% inferior de lo que espera el balance de agua; durante 60 días o hasta que un drenaje vuelva a cuadrar.</translation>
    </message>
    <message>
        <source>Water stands in the trays, or the bed is drier than it looks from above.</source>
        <translation>Hay agua parada en las bandejas, o el lecho está más seco de lo que parece desde arriba.</translation>
    </message>
    <message>
        <source>Twice in a row more was drained than the upper 5 % of what is expected; or more than {much} a week run through a watered stack (taken back at {much-less}).</source>
        <translation>Dos veces seguidas se drenó más que el 5 % superior de lo esperado; o pasan más de {much} por semana en una torre que se riega (se retira a {much-less}).</translation>
    </message>
    <message>
        <source>Salts and nitrogen leave the castings, and the bed stays wet.</source>
        <translation>El humus pierde sales y nitrógeno, y el lecho sigue mojado.</translation>
    </message>
    <message>
        <source>The bed is above {hot} now or within 14 days with at least even chances, its own heat and the season included. It is taken back at 30 %.</source>
        <translation>El lecho pasa de {hot} ahora o en 14 días con una probabilidad de al menos la mitad, contando su propio calor y la estación. Se retira al 30&#xa0;%.</translation>
    </message>
    <message>
        <source>At {deadly} 2 worms in 100 die a day, at {deadlier} 15.</source>
        <translation>A {deadly} mueren 2 de cada 100 lombrices al día; a {deadlier}, 15.</translation>
    </message>
    <message>
        <source>The bed is below {cold} now or within 14 days with at least even chances. It is taken back at 30 %.</source>
        <translation>El lecho baja de {cold} ahora o en 14 días con una probabilidad de al menos la mitad. Se retira al 30&#xa0;%.</translation>
    </message>
    <message>
        <source>They stop eating, food rots; near {frost} they die.</source>
        <translation>Dejan de comer y el alimento se pudre; cerca de {frost} mueren.</translation>
    </message>
    <message>
        <source>After at least 2 days in the light at most 5 % of the worms that were in the tray are left. It is taken back above 8 %.</source>
        <translation>Tras al menos 2 días a la luz queda como mucho el 5&#xa0;% de las lombrices que había en la bandeja. Se retira por encima del 8&#xa0;%.</translation>
    </message>
    <message>
        <source>The castings dry out and cocoons in them die.</source>
        <translation>El humus se reseca y sus capullos mueren.</translation>
    </message>
    <message>
        <source>The tray has been in the light for more than 10 days.</source>
        <translation>La bandeja lleva más de 10 días a la luz.</translation>
    </message>
    <message>
        <source>The castings dry hard, and the stack has one tray less meanwhile.</source>
        <translation>El humus se endurece al secarse y, mientras tanto, la torre tiene una bandeja menos.</translation>
    </message>
    <message>
        <source>Nothing was written for more than 21 days, or for three usual gaps between feedings if that is longer; days away are left out.</source>
        <translation>No se anotó nada durante más de 21 días, o tres intervalos habituales entre aportes si es más; los días de ausencia no cuentan.</translation>
    </message>
    <message>
        <source>Every date and amount grows less certain by the week.</source>
        <translation>Cada fecha y cada cantidad pierden certeza semana a semana.</translation>
    </message>
    <message>
        <source>Estimates rest on it as it stands.</source>
        <translation>Las estimaciones se apoyan en él tal como está.</translation>
    </message>
    <message>
        <source>Stop feeding, spread the food thin and let air in: the bed heats itself</source>
        <translation>Deja de alimentar, extiende el alimento en capa fina y deja entrar aire: el lecho se calienta solo</translation>
    </message>
    <message>
        <source>Move the stack to a cooler place before it heats up: shade, floor, cellar</source>
        <translation>Lleva la torre a un lugar más fresco antes de que se caliente: sombra, suelo, sótano</translation>
    </message>
    <message>
        <source>Bring the stack in or wrap it, and feed no more until it is warmer. A heater only if it is rated for the place and stands away from water: local electrical code and a licensed electrician first</source>
        <translation>Mete la torre dentro o envuélvela, y no alimentes más hasta que haga menos frío. Un calefactor, solo si es apto para el lugar y está lejos del agua: primero la normativa eléctrica local y un electricista autorizado</translation>
    </message>
    <message>
        <source>%1: %2 drained, %3 to %4 expected; %5: %6, %7 to %8 expected</source>
        <translation>%1: %2 drenados, se esperaba de %3 a %4; %5: %6, se esperaba de %7 a %8</translation>
    </message>
    <message>
        <source>See whether the spigot or the holes of the trays are blocked, and whether the bed is dry</source>
        <translation>Mira si el grifo o los agujeros de las bandejas están obstruidos, y si el lecho está seco</translation>
    </message>
    <message>
        <source>Water less, or write down what is poured: more runs out than went in</source>
        <translation>Riega menos, o anota lo que viertes: sale más de lo que entró</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Drain the sump: it runs over</source>
        <translation>Drena el depósito: rebosa</translation>
    </message>
    <message>
        <source>Flush the sump: it runs over</source>
        <translation>Enjuaga el depósito: rebosa</translation>
    </message>
    <message>
        <source>Drain the sump</source>
        <translation>Drena el depósito</translation>
    </message>
    <message>
        <source>Flush the sump</source>
        <translation>Enjuaga el depósito</translation>
    </message>
    <message>
        <source>in the light for %1; about %2 of its worms are left in it; moisture %3 %</source>
        <translation>a la luz desde hace %1; queda en ella un %2 de sus lombrices; humedad %3&#xa0;%</translation>
    </message>
    <message>
        <source>Take the castings, or put the lid on: the tray dries out</source>
        <translation>Retira el humus o pon la tapa: la bandeja se reseca</translation>
    </message>
    <message>
        <source>Take the castings: the worms have gone down</source>
        <translation>Retira el humus: las lombrices ya han bajado</translation>
    </message>
    <message>
        <source>Cover the lifted tray and let it work on: it was lifted early</source>
        <translation>Cubre la bandeja subida y déjala trabajar: se subió pronto</translation>
    </message>
    <message>
        <source>Feed the tray beneath for now: the new one came early</source>
        <translation>Alimenta por ahora la bandeja de debajo: la nueva llegó pronto</translation>
    </message>
    <message>
        <source>right about %1</source>
        <translation>su momento: %1</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>Too early for another tray: the worms would be spread thin</source>
        <translation>Es pronto para otra bandeja: las lombrices quedarían dispersas</translation>
    </message>
    <message>
        <source>the top tray holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60, filled %4</source>
        <translation>la bandeja superior tiene %1 de humus de los %2 deseados; alimento/humus %3, y debe ser 0,60 como máximo; completa %4</translation>
    </message>
    <message>
        <source>The tray is ready but its turn has not come: the colony would lose room</source>
        <translation>La bandeja está lista, pero no le toca el turno: la colonia perdería sitio</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2; the top tray filled %3</source>
        <translation>alimento/humus %1, lista %2; bandeja superior completa %3</translation>
    </message>
    <message>
        <source>Too early to lift: much of it is not castings yet</source>
        <translation>Es pronto para subirla: gran parte aún no es humus</translation>
    </message>
    <message>
        <source>feed-to-cast %1 of at most 0.10, ready %2</source>
        <translation>alimento/humus %1, y debe ser 0,10 como máximo; lista %2</translation>
    </message>
    <message>
        <source>Too early to take: much of it is not castings yet</source>
        <translation>Es pronto para retirarlo: gran parte aún no es humus</translation>
    </message>
    <message>
        <source>Too early to take: many worms would go with the castings</source>
        <translation>Es pronto para retirarlo: muchas lombrices se irían con el humus</translation>
    </message>
    <message>
        <source>in the light for %1; about %2 of its worms are left in it</source>
        <translation>a la luz desde hace %1; queda en ella un %2 de sus lombrices</translation>
    </message>
    <message>
        <source>last fed %1 ago, usually every %2; in the tray %3 not yet eaten, dry</source>
        <translation>último aporte hace %1, lo habitual es cada %2; en la bandeja, %3 sin comer, en seco</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until the castings above are taken</source>
        <translation>La bandeja superior está llena: alimenta menos hasta retirar el humus de arriba</translation>
    </message>
    <message>
        <source>The top tray is full: add a tray, or feed less</source>
        <translation>La bandeja superior está llena: añade una bandeja o alimenta menos</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until the bottom tray is lifted</source>
        <translation>La bandeja superior está llena: alimenta menos hasta subir la inferior</translation>
    </message>
    <message>
        <source>Give no more food until the last is eaten; take out what smells, loosen the bed and mix in dry paper</source>
        <translation>No des más alimento hasta que se coman lo último; saca lo que huela, afloja el lecho y mezcla papel seco</translation>
    </message>
    <message>
        <source>Do not feed this week</source>
        <translation>No alimentes esta semana</translation>
    </message>
    <message>
        <source>Feed at most %1 this week</source>
        <translation>Aporta como máximo %1 esta semana</translation>
    </message>
    <message>
        <source>air in the bed %1 of full; below 0.7 within 14 days at %2 a week: %3; not yet eaten, dry: %4</source>
        <translation>aire en el lecho, %1 del total; por debajo de 0,7 en 14 días a %2 por semana: %3; sin comer, en seco: %4</translation>
    </message>
    <message>
        <source>Feed %1: the worms live on their reserves</source>
        <translation>Aporta %1: las lombrices viven de sus reservas</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need (%2 to %3); %4 a week would do, up to %5 can be borne</source>
        <translation>asimilan %1 de lo que necesitan (de %2 a %3); bastaría con %4 por semana, se toleran hasta %5</translation>
    </message>
    <message>
        <source>Add %1 of shredded paper to each week&apos;s food</source>
        <translation>Añade %1 de papel triturado al alimento de cada semana</translation>
    </message>
    <message>
        <source>C:N of what was given in the last 8 weeks %1, of the bed %2; 25 to 35 is wanted</source>
        <translation>C:N de lo aportado en las últimas 8 semanas, %1; del lecho, %2; se busca de 25 a 35</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2</source>
        <translation>alimento/humus %1, lista %2</translation>
    </message>
    <message>
        <source>its turn for %1</source>
        <translation>con turno desde hace %1</translation>
    </message>
    <message>
        <source>left as it is, the colony falls from %1 to %2 in 60 days</source>
        <translation>si se deja así, la colonia baja de %1 a %2 en 60 días</translation>
    </message>
    <message>
        <source>Look for bits in the bottom tray</source>
        <translation>Busca trozos en la bandeja inferior</translation>
    </message>
    <message>
        <source>Add a tray on top</source>
        <translation>Añade una bandeja encima</translation>
    </message>
    <message>
        <source>the top tray holds %1 of castings, feed-to-cast %2</source>
        <translation>la bandeja superior tiene %1 de humus, alimento/humus %2</translation>
    </message>
    <message>
        <source>The bottom tray is ready, no hurry</source>
        <translation>La bandeja inferior está lista, sin prisa</translation>
    </message>
    <message>
        <source>Take the castings of the only tray, and its worms back into new bedding</source>
        <translation>Retira el humus de la única bandeja y devuelve sus lombrices a una cama nueva</translation>
    </message>
    <message>
        <source>Lift the bottom tray to the top</source>
        <translation>Sube la bandeja inferior</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn comes soon</source>
        <translation>A la bandeja inferior le tocará pronto el turno</translation>
    </message>
    <message>
        <source>depth of castings</source>
        <translation>espesor del humus</translation>
    </message>
    <message>
        <source>still recognisable</source>
        <translation>aún reconocible</translation>
    </message>
    <message>
        <source>left of the last feeding</source>
        <translation>queda del último aporte</translation>
    </message>
    <message>
        <source>worms weighed</source>
        <translation>lombrices pesadas</translation>
    </message>
    <message>
        <source>worms counted</source>
        <translation>lombrices contadas</translation>
    </message>
    <message>
        <source>worms seen</source>
        <translation>lombrices vistas</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>drenado</translation>
    </message>
    <message>
        <source>drained in part</source>
        <translation>drenado en parte</translation>
    </message>
    <message>
        <source>conductivity of the leachate</source>
        <translation>conductividad del lixiviado</translation>
    </message>
    <message>
        <source>weight of the tray</source>
        <translation>peso de la bandeja</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>squeezed in the hand</source>
        <translation>apretado en la mano</translation>
    </message>
    <message>
        <source>temperature of the bed</source>
        <translation>temperatura del lecho</translation>
    </message>
    <message>
        <source>castings taken</source>
        <translation>humus retirado</translation>
    </message>
    <message>
        <source>worms taken out</source>
        <translation>lombrices sacadas</translation>
    </message>
    <message>
        <source>few</source>
        <translation>pocas</translation>
    </message>
    <message>
        <source>some</source>
        <translation>algunas</translation>
    </message>
    <message>
        <source>many</source>
        <translation>muchas</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1 mS/cm</source>
        <translation>%1 mS/cm</translation>
    </message>
    <message>
        <source>expected at most %1</source>
        <translation>se esperaba como máximo %1</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>se esperaba %1</translation>
    </message>
    <message>
        <source>expected %1 to %2</source>
        <translation>se esperaba de %1 a %2</translation>
    </message>
    <message>
        <source>%1 in slot %2</source>
        <translation>%1, nivel %2</translation>
    </message>
    <message>
        <source>Check the entry of %1, or look again</source>
        <translation>Revisa la anotación del %1 o vuelve a mirar</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre %1 y %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>About %n feeding(s) in %1 seem not to have been written down (%2)</source>
        <translation>
            <numerusform>Parece que %n aporte en %1 no se anotó (%2)</numerusform>
            <numerusform>Parece que unos %n aportes en %1 no se anotaron (%2)</numerusform>
        </translation>
    </message>
    <message>
        <source>usual days without an entry: %1; usually %2 of %3</source>
        <translation>días habituales sin anotación: %1; lo habitual, %2 de %3</translation>
    </message>
    <message>
        <source>Write down what was done since, and look into the top tray</source>
        <translation>Anota lo hecho desde entonces y mira en la bandeja superior</translation>
    </message>
    <message>
        <source>nothing written for %1; colony anywhere from %2 to %3</source>
        <translation>nada anotado desde hace %1; la colonia puede estar entre %2 y %3</translation>
    </message>
    <message>
        <source>water %1 of what the tray holds (%2 to %3), moisture %4 %</source>
        <translation>agua, %1 de lo que retiene la bandeja (de %2 a %3); humedad %4&#xa0;%</translation>
    </message>
    <message>
        <source>Pour %1 of water over the bed</source>
        <translation>Vierte %1 de agua sobre el lecho</translation>
    </message>
    <message>
        <source>Mix dry shredded paper into the bed, and do not water</source>
        <translation>Mezcla papel triturado seco con el lecho y no riegues</translation>
    </message>
    <message>
        <source>over 100 : 1</source>
        <translation>más de 100&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation>no antes de: %1</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>no antes de un año</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 – %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>The bottom tray is ready at 80 %, but the top tray is not filled yet, or a tray is spare. Once the top tray has stood for 60 days and holds {ready} of castings, it may be lifted all the same.</source>
        <translation>Con un 80 % de probabilidad la bandeja inferior está lista, pero la superior aún no está completa, o hay una libre. Cuando la superior lleva 60 días y tiene {ready} de humus, se puede subir igualmente.</translation>
    </message>
    <message>
        <source>Feed the usual %1, at most %2 this week</source>
        <translation>Aporta lo usual, %1; como máximo %2 esta semana</translation>
    </message>
    <message>
        <source>The bottom tray is ready: lift it when you like</source>
        <translation>La bandeja inferior está lista: súbela cuando quieras</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in the top tray</source>
        <translation>Medir qué profundidad tiene el humus en la bandeja superior</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in the bottom tray</source>
        <translation>Medir qué profundidad tiene el humus en la bandeja inferior</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in this tray</source>
        <translation>Medir qué profundidad tiene el humus en esta bandeja</translation>
    </message>
    <message>
        <source>Look for bits in this tray</source>
        <translation>Buscar restos en esta bandeja</translation>
    </message>
    <message>
        <source>See how much of the last feeding is left</source>
        <translation>Mirar cuánto queda del último aporte</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms</source>
        <translation>Mirar si hay pocas, algunas o muchas lombrices</translation>
    </message>
    <message>
        <source>Weigh the worms of a part of the bed</source>
        <translation>Pesar las lombrices de una parte del lecho</translation>
    </message>
    <message>
        <source>Count the worms in a measured part of the bed</source>
        <translation>Contar las lombrices en una parte medida del lecho</translation>
    </message>
    <message>
        <source>Weigh the bottom tray</source>
        <translation>Pesar la bandeja inferior</translation>
    </message>
    <message>
        <source>Weigh this tray</source>
        <translation>Pesar esta bandeja</translation>
    </message>
    <message>
        <source>Measure the moisture of the bed</source>
        <translation>Medir la humedad del lecho</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed</source>
        <translation>Apretar un puñado del lecho</translation>
    </message>
    <message>
        <source>Read the temperature of the bed</source>
        <translation>Leer la temperatura del lecho</translation>
    </message>
    <message>
        <source>Drain the sump into a measure</source>
        <translation>Vaciar el depósito en una medida</translation>
    </message>
    <message>
        <source>Put worms in once the bedding has stood for a day, or write down how many are in it</source>
        <translation>Pon lombrices cuando la cama haya reposado un día, o anota cuántas hay</translation>
    </message>
    <message>
        <source>none are left by what is known</source>
        <translation>por lo que se sabe no queda ninguna</translation>
    </message>
    <message>
        <source>none are written down; %1 to %2 are usual for a first tray</source>
        <translation>no hay ninguna anotada; lo usual son de %1 a %2 para una primera bandeja</translation>
    </message>
    <message>
        <source>The spigot is shut and the sump is full within 7 days by the middle estimate. It is taken back when that is more than 10 days off. Where the day is known to no better than a week, and one case in ten has it full within 14 days, a look comes first; it holds for 5 days.</source>
        <translation>El grifo está cerrado y el depósito se llenará en 7 días según la estimación central. Se retira cuando faltan más de 10 días. Si el día no se conoce con menos de una semana de margen y en uno de cada diez casos se llena en 14 días, primero se mira; la mirada vale 5 días.</translation>
    </message>
    <message>
        <source>See how full the sump is</source>
        <translation>Mira cuánto hay en el depósito</translation>
    </message>
    <message>
        <source>standing in the sump</source>
        <translation>nivel del depósito</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed: it may be dry</source>
        <translation>Aprieta un puñado del lecho: puede estar seco</translation>
    </message>
    <message>
        <source>into the tray beneath the new one, which came early: %1</source>
        <translation>en la bandeja bajo la nueva, que llegó pronto: %1</translation>
    </message>
    <message>
        <source>The top tray is filled at 80 % ({filled} of castings, feed-to-cast at most 0.60) and a tray is spare. It is taken back after 7 days at 60 % or less, since fresh food is eaten by then, or by a check.</source>
        <translation>Con un 80&#xa0;% de probabilidad la bandeja superior está completa ({filled} de humus, alimento/humus 0,60 como máximo) y queda una bandeja libre. Se retira tras 7 días al 60&#xa0;% o menos, pues para entonces el alimento fresco ya está comido, o por una revisión.</translation>
    </message>
    <message>
        <source>The usual week&apos;s food does not fit under the rim less {rim}, now or within 7 days. It is taken back when a quarter more fits.</source>
        <translation>El alimento habitual de una semana no cabe bajo el borde menos {rim}, ahora o en 7 días. Se retira cuando cabe una cuarta parte más.</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until the castings above are taken</source>
        <translation>La bandeja superior se llena: alimenta menos hasta retirar el humus de encima</translation>
    </message>
    <message>
        <source>The top tray fills up: add a tray, or feed less</source>
        <translation>La bandeja superior se llena: añade una bandeja o alimenta menos</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until the bottom tray is lifted</source>
        <translation>La bandeja superior se llena: alimenta menos hasta subir la inferior</translation>
    </message>
    <message>
        <source>bed %1 now; below %2: %3</source>
        <translation>lecho a %1 ahora; por debajo de %2: %3</translation>
    </message>
    <message>
        <source>A tray is in the light: take its castings first</source>
        <translation>Hay una bandeja a la luz: retira primero su humus</translation>
    </message>
    <message>
        <source>in the light for %1</source>
        <translation>a la luz desde hace %1</translation>
    </message>
    <message>
        <source>fed today, usually every %1; in the tray %2 not yet eaten, dry</source>
        <translation>con aporte hoy, normalmente cada %1; en la bandeja %2 aún sin comer, en seco</translation>
    </message>
    <message>
        <source>The only tray fills up: feed less until its castings are taken</source>
        <translation>La única bandeja se llena: alimenta menos hasta retirar su humus</translation>
    </message>
    <message>
        <source>The only tray is full: feed less until its castings are taken</source>
        <translation>La única bandeja está llena: alimenta menos hasta retirar su humus</translation>
    </message>
    <message>
        <source>The only tray can be emptied soon</source>
        <translation>La única bandeja podrá vaciarse pronto</translation>
    </message>
    <message>
        <source>The only tray is ready, no hurry</source>
        <translation>La única bandeja está lista, sin prisa</translation>
    </message>
    <message>
        <source>nothing measured of trays or worms for %1; of all looks this tells most of when the bottom tray is ready, for the work</source>
        <translation>nada medido en bandejas o lombrices desde hace %1; de todas las revisiones esta dice más, por su trabajo, de cuándo estará lista la bandeja inferior</translation>
    </message>
    <message>
        <source>bed %1 now, %2 by %3; below %4: %5</source>
        <translation>lecho a %1 ahora, %2 (%3); por debajo de %4: %5</translation>
    </message>
    <message>
        <source>Water less: much runs through</source>
        <translation>Riega menos: mucho pasa de largo</translation>
    </message>
    <message>
        <source>%1 a week runs into the sump; %2 a week are poured</source>
        <translation>%1 por semana llegan al depósito; se vierten %2 por semana</translation>
    </message>
    <message>
        <source>Feed the usual %1, and no more this week</source>
        <translation>Da los %1 habituales, y nada más esta semana</translation>
    </message>
    <message>
        <source>the top tray is filled to %1 under its rim</source>
        <translation>la bandeja superior está llena hasta %1 bajo su borde</translation>
    </message>
    <message>
        <source>Cover the tray and put the lid on: it was lifted early and dries out</source>
        <translation>Cubre la bandeja y pon la tapa: se subió pronto y se seca</translation>
    </message>
    <message>
        <source>Cool the stack now, and give no food until it is cooler: a cellar, or shade, the lid ajar and frozen bottles on the cover</source>
        <translation>Enfría la torre ahora y no des alimento hasta que esté más fresca: un sótano, o sombra, la tapa entreabierta y botellas congeladas sobre la cubierta</translation>
    </message>
    <message>
        <source>Cool the stack: a cellar, or shade, the lid ajar and frozen bottles on the cover</source>
        <translation>Enfría la torre: un sótano, o sombra, la tapa entreabierta y botellas congeladas sobre la cubierta</translation>
    </message>
    <message>
        <source>bed %1 now; above %2: %3</source>
        <translation>lecho a %1 ahora; por encima de %2: %3</translation>
    </message>
    <message>
        <source>bed %1 now, %2 by %3; above %4: %5</source>
        <translation>lecho a %1 ahora, %2 (%3); por encima de %4: %5</translation>
    </message>
    <message>
        <source>Wait with food, and look again in a few days</source>
        <translation>Espera para alimentar y vuelve a mirar dentro de unos días</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>For three days the water is above 1.1 of what the tray holds at 80 %, or it ran when it was squeezed, or the moisture read says so, within 5 days. It is taken back at 60 %.</source>
        <translation>Desde hace tres días el agua supera 1,1 de lo que retiene la bandeja, al 80 %, o corrió al apretar, o lo dice la humedad leída, en 5 días. Se retira al 60 %.</translation>
    </message>
    <message>
        <source>The tray is lifted too early or too late; food is given to nobody.</source>
        <translation>La bandeja se sube demasiado pronto o tarde; se da alimento para nadie.</translation>
    </message>
    <message>
        <source>hardly any are left by what is known: colony %1</source>
        <translation>por lo que se sabe apenas queda ninguna: colonia %1</translation>
    </message>
    <message>
        <source>Put worms in, or write down how many are in it; give no food until then</source>
        <translation>Pon lombrices, o anota cuántas hay; no des alimento hasta entonces</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms, and give no food until then</source>
        <translation>Mira si hay pocas, algunas o muchas lombrices, y no des alimento hasta entonces</translation>
    </message>
    <message>
        <source>more does not fit under the rim</source>
        <translation>más no cabe bajo el borde</translation>
    </message>
    <message>
        <source>%1 kg a day and m² are the most</source>
        <translation>%1 kg por día y m² son el máximo</translation>
    </message>
    <message>
        <source>with more the chance of a bed above %1 is above 5 %</source>
        <translation>con más, la probabilidad de un lecho por encima de %1 supera el 5 %</translation>
    </message>
    <message>
        <source>with more the chance of too little air is above 5 %</source>
        <translation>con más, la probabilidad de falta de aire supera el 5 %</translation>
    </message>
    <message>
        <source>not fed yet; %1</source>
        <translation>aún sin alimentar; %1</translation>
    </message>
    <message>
        <source>not fed yet; %1 a week keep the worms that are in it</source>
        <translation>aún sin alimentar; %1 por semana mantienen las lombrices que hay</translation>
    </message>
    <message>
        <source>Feed %1, at most %2 this week</source>
        <translation>Da %1, como máximo %2 esta semana</translation>
    </message>
    <message>
        <source>The only tray is full: no food fits until its castings are taken</source>
        <translation>La única bandeja está llena: no cabe alimento hasta retirar su humus</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until the castings above are taken</source>
        <translation>La bandeja superior está llena: no cabe alimento hasta retirar el humus de encima</translation>
    </message>
    <message>
        <source>The top tray is full: add a tray, then feed</source>
        <translation>La bandeja superior está llena: añade una bandeja y luego alimenta</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until the bottom tray is lifted</source>
        <translation>La bandeja superior está llena: no cabe alimento hasta subir la bandeja inferior</translation>
    </message>
    <message>
        <source>hardly any of it is eaten</source>
        <translation>apenas se come nada de ello</translation>
    </message>
    <message>
        <source>enough for %1 as the worms eat now</source>
        <translation>suficiente para %1 al ritmo actual de las lombrices</translation>
    </message>
    <message>
        <source>food that lies in the tray, dry: %1; %2</source>
        <translation>alimento en la bandeja, en seco: %1; %2</translation>
    </message>
    <message>
        <source>with any more this week the chance of a bed above %1 is above 5 %; bed %2 now; not yet eaten, dry: %3</source>
        <translation>con más esta semana, la probabilidad de un lecho por encima de %1 supera el 5 %; lecho a %2 ahora; aún sin comer, en seco: %3</translation>
    </message>
    <message>
        <source>with any more this week the chance of too little air in the bed is above 5 %; air %1 of full now; not yet eaten, dry: %2</source>
        <translation>con más esta semana, la probabilidad de falta de aire en el lecho supera el 5 %; aire a %1 del pleno ahora; aún sin comer, en seco: %2</translation>
    </message>
    <message>
        <source>nothing measured of trays or worms for %1; it was told before, and no look tells clearly more of when the bottom tray is ready, for the work</source>
        <translation>nada medido en bandejas o lombrices desde hace %1; ya se pidió, y ninguna revisión dice claramente más, por su trabajo, de cuándo estará lista la bandeja inferior</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed, and water it if it crumbles: it is probably dry</source>
        <translation>Aprieta un puñado del lecho, y riega si se desmenuza: probablemente está seco</translation>
    </message>
    <message>
        <source>The water is below 0.65 of what the tray holds, now or within 7 days, at 50 %, or it crumbled when it was squeezed or the moisture read says so, within 5 days. It is taken back at 30 %. From 20 % on a handful is squeezed first, once in 14 days; above 50 % too, where the range is wider than 0.4.</source>
        <translation>El agua está por debajo de 0,65 de lo que retiene la bandeja, ahora o en 7 días, al 50 %, o se desmenuzó al apretar o lo dice la humedad leída, en 5 días. Se retira al 30 %. Desde el 20 % primero se aprieta un puñado, una vez en 14 días; por encima del 50 % también, donde el margen supera 0,4.</translation>
    </message>
    <message>
        <source>it was not in the light; about %1 of worms are in it, %2 of the colony</source>
        <translation>no ha estado a la luz; hay en ella unos %1 de lombrices, %2 de la colonia</translation>
    </message>
    <message>
        <source>Leave the stack in the cool until the bed is surely below %1</source>
        <translation>Deja la torre al fresco hasta que el lecho esté con seguridad por debajo de %1</translation>
    </message>
    <message>
        <source>The top tray is filled ({filled} of castings, feed-to-cast at most 0.60), no tray is spare, and the bottom tray is ready (feed-to-cast at most 0.10, at least {ready}), both at 80 %. The bottom one is taken back at 60 %; the top one after 7 days of it, since fresh food is eaten by then, or by a check. Where a tray between both is ready and the bottom one is not, its castings are taken instead.</source>
        <translation>La bandeja superior está completa ({filled} de humus, alimento/humus de 0,60 como máximo), no queda ninguna libre y la inferior está lista (alimento/humus de 0,10 como máximo, al menos {ready}), ambas al 80 %. La inferior se retira al 60 %; la superior tras 7 días así, cuando el alimento fresco ya está comido, o por una revisión. Donde una bandeja intermedia está lista y la inferior no, se retira el humus de aquella.</translation>
    </message>
    <message>
        <source>The chance that the bottom tray is ready and its turn has come within 14 days is at least 50 %, and no tray is spare. Where its turn has come already, readiness is what is missing.</source>
        <translation>La probabilidad de que la bandeja inferior esté lista y le llegue el turno en 14 días es de al menos el 50 %, y no queda ninguna libre. Donde el turno ya ha llegado, solo falta que esté lista.</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; it is likely to be full already; if so, empty it, else the level tells the day</source>
        <translation>según la estimación contiene de %1 a %2 de %3; probablemente ya está lleno; si es así, vacíalo, si no el nivel dice el día</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; with one chance in ten it is full by %4; if that is near, empty it, else the level tells the day</source>
        <translation>según la estimación contiene de %1 a %2 de %3; en uno de cada diez casos está lleno para %4; si le falta poco, vacíalo, si no el nivel dice el día</translation>
    </message>
    <message>
        <source>Too early to lift: that it is ready is not sure enough yet</source>
        <translation>Demasiado pronto para subirla: aún no es bastante seguro que esté lista</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2 of the 80 % that are asked for</source>
        <translation>alimento/humus %1, lista al %2, se pide el 80 %</translation>
    </message>
    <message>
        <source>half of the worms&apos; weight a day is the most, and they are about %1</source>
        <translation>la mitad del peso de las lombrices al día es el máximo, y pesan unos %1</translation>
    </message>
    <message>
        <source>last fed %1 ago; in the tray %2 not yet eaten, dry</source>
        <translation>último aporte hace %1; en la bandeja %2 aún sin comer, en seco</translation>
    </message>
    <message>
        <source>Take the castings of the tray in slot %1 instead: the bottom one is not ready yet</source>
        <translation>Retira en su lugar el humus de la bandeja del nivel %1: la inferior aún no está lista</translation>
    </message>
    <message>
        <source>%1; the bottom tray %2; the turn has come for %3; about %4 of worms are in it: put them into the top tray and write them down as put in</source>
        <translation>%1; la bandeja inferior %2; el turno llegó hace %3; hay dentro unos %4 de lombrices: ponlas en la bandeja superior y anótalas como puestas</translation>
    </message>
    <message>
        <source>The only tray&apos;s turn has come, it is not ready yet</source>
        <translation>Ha llegado el turno de la única bandeja, aún no está lista</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn has come, it is not ready yet</source>
        <translation>Ha llegado el turno de la bandeja inferior, aún no está lista</translation>
    </message>
    <message>
        <source>The only tray&apos;s turn has come: look for bits in it</source>
        <translation>Ha llegado el turno de la única bandeja: busca restos en ella</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn has come: look for bits in it</source>
        <translation>Ha llegado el turno de la bandeja inferior: busca restos en ella</translation>
    </message>
    <message>
        <source>filled: %1; castings by the estimate %2, %3 wanted; with more than that, the turn has come; with less, go on as before and look again in a week</source>
        <translation>completa: %1; humus según la estimación %2, se quieren %3; con más, ha llegado el turno; con menos, sigue igual y mira de nuevo en una semana</translation>
    </message>
    <message>
        <source>%1 (%2 at the earliest, perhaps not within a year)</source>
        <translation>%1 (como pronto %2, quizá no en un año)</translation>
    </message>
    <message>
        <source>%1 at the earliest, perhaps not within a year</source>
        <translation>como pronto %1, quizá no en un año</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need (%2 to %3); more than %4 a week would be wanted, and only %5 can be borne</source>
        <translation>asimilan %1 de lo que necesitan (%2 a %3); harían falta más de %4 por semana, y solo se toleran %5</translation>
    </message>
    <message>
        <source>A look is likely to settle whether the bottom tray is ready or the top tray filled, or it narrows the ready date by 14 days after a month without any; no look in the last 7 days. Or hardly any worms are left: less than {few}, after cold or heat less than a tenth of what there was within 60 days, or half of what there was within 120 (taken back at 0.6).</source>
        <translation>Una revisión dirá probablemente si la bandeja inferior está lista o la superior llena, o estrecha la fecha 14 días tras un mes sin ninguna; ninguna en los últimos 7 días. O apenas quedan lombrices: menos de {few}, tras frío o calor menos de un décimo de lo que hubo en 60 días, o la mitad de lo que hubo en 120 (se retira en 0,6).</translation>
    </message>
    <message>
        <source>colony %1; on %2 it was %3</source>
        <translation>colonia %1; el %2 era de %3</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms: the colony dwindles</source>
        <translation>Mira si hay pocas, algunas o muchas lombrices: la colonia mengua</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until castings are taken</source>
        <translation>La bandeja superior se llena: da menos alimento hasta retirar humus</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until castings are taken</source>
        <translation>La bandeja superior está llena: no cabe alimento hasta retirar humus</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until castings are taken</source>
        <translation>La bandeja superior está llena: da menos alimento hasta retirar humus</translation>
    </message>
    <message>
        <source>it crumbled when it was squeezed, and moisture was read as %1 %; %2</source>
        <translation>se desmenuzó al apretarla, y la humedad leída es del %1&#xa0;%; %2</translation>
    </message>
    <message>
        <source>it ran when it was squeezed, and moisture was read as %1 %; %2</source>
        <translation>chorreó al apretarla, y la humedad leída es del %1&#xa0;%; %2</translation>
    </message>
    <message>
        <source>Squeeze another handful of the bed: two readings deny each other</source>
        <translation>Aprieta otro puñado del lecho: dos lecturas se contradicen</translation>
    </message>
    <message>
        <source>at %1 worms hardly leave the light: bring it in first, or wait until it is warmer</source>
        <translation>a %1 las lombrices apenas huyen de la luz: métela primero a cubierto o espera a que haga más calor</translation>
    </message>
    <message>
        <source>by it the tray in slot %1 is filled to %2, and it is %3 high</source>
        <translation>según ella la bandeja del nivel %1 está llena hasta %2, y mide %3 de alto</translation>
    </message>
    <message>
        <source>%1 of worms were put in; these trays carry %2 at most</source>
        <translation>se pusieron %1 de lombrices; estas bandejas admiten %2 como máximo</translation>
    </message>
    <message>
        <source>Check the entry of %1: it may be a slip of the pen</source>
        <translation>Comprueba la anotación del %1: puede ser un error al escribir</translation>
    </message>
    <message>
        <source>Correct place or usual temperature in the set-up, or check the entry of %1</source>
        <translation>Corrige el lugar o la temperatura habitual en los datos de la torre, o revisa la anotación del %1</translation>
    </message>
    <message>
        <source>%1; read again on %2: %3</source>
        <translation>%1; leída de nuevo el %2: %3</translation>
    </message>
    <message>
        <source>Ready and its turn for 30 days; or the top tray within {rim} of its rim; or the colony falls to 85 % or less in 60 days without a harvest, and not for want of food or in cold or heat.</source>
        <translation>Lista y con turno desde hace 30 días; o la bandeja superior a menos de {rim} del borde; o la colonia baja al 85&#xa0;% o menos en 60 días sin cosecha, y no por falta de alimento ni por frío o calor.</translation>
    </message>
    <message>
        <source>A value of the last 60 days lies outside what the record leads to expect; readings of the bed do not fit the set-up; more was put in than a tray holds or its trays carry; usual feedings seem to be missing; or no worms are in a stack that has bedding.</source>
        <translation>Un valor de los últimos 60 días queda fuera de lo que cabe esperar por lo anotado; las lecturas del lecho no casan con los datos de la torre; se puso más de lo que cabe en una bandeja o de lo que admiten sus bandejas; parece que faltan aportes habituales; o en una torre con cama no hay lombrices.</translation>
    </message>
    <message>
        <source>nobody is there: %1</source>
        <translation>no hay nadie: %1</translation>
    </message>
    <message>
        <source>A tray was added while the chance that the one beneath is filled was below 50 % and a week&apos;s food still fitted into it, or lifted while the chance that it is ready was below 30 %.</source>
        <translation>Se añadió una bandeja cuando la probabilidad de que la de abajo estuviera completa era menor del 50 % y aún cabía en ella el alimento de una semana, o se subió una cuando la de que estuviera lista era menor del 30 %.</translation>
    </message>
    <message>
        <source>colony %1, two weeks ago %2</source>
        <translation>colonia %1, hace dos semanas %2</translation>
    </message>
    <message>
        <source>by its own heat %1 warmer</source>
        <translation>más caliente por su propio calor: %1</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need</source>
        <translation>asimilan %1 de lo que necesitan</translation>
    </message>
    <message>
        <source>on %1 it was %2</source>
        <translation>el %1 era de %2</translation>
    </message>
    <message>
        <source>on %1 the colony was %2, now %3</source>
        <translation>el %1 la colonia era de %2, ahora %3</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; it may be full already (chance %4); if so, empty it, else the level tells the day</source>
        <translation>según la estimación contiene de %1 a %2 de %3; puede estar ya lleno (probabilidad %4); si es así, vacíalo, si no el nivel dice el día</translation>
    </message>
    <message>
        <source>what comes now runs on the floor</source>
        <translation>lo que llegue ahora cae al suelo</translation>
    </message>
    <message>
        <source>full %1</source>
        <translation>lleno: %1</translation>
    </message>
    <message>
        <source>C:N of the bed %1, 25 to 35 is wanted: paper and bedding alone hardly feed them</source>
        <translation>C:N del lecho %1, se desea de 25 a 35: solo papel y cama apenas las alimentan</translation>
    </message>
    <message>
        <source>of the usual feeding of %1 only %2: %3 were given within 7 days, and %4 kg a day and m² are the most</source>
        <translation>de la ración habitual de %1 solo %2: se dieron %3 en 7 días, y %4 kg por día y m² son el máximo</translation>
    </message>
    <message>
        <source>of the usual feeding of %1 only %2 are borne this week: %3</source>
        <translation>de la ración habitual de %1 esta semana solo se toleran %2: %3</translation>
    </message>
    <message>
        <source>Feed at most %1 at once and %2 this week</source>
        <translation>Aporta como máximo %1 de una vez y %2 esta semana</translation>
    </message>
    <message>
        <source>The top tray fills up: lift the bottom tray, which is ready, or feed less</source>
        <translation>La bandeja superior se llena: sube la inferior, que está lista, o alimenta menos</translation>
    </message>
    <message>
        <source>The top tray is full: lift the bottom tray, which is ready; no food fits until then</source>
        <translation>La bandeja superior está llena: sube la inferior, que está lista; hasta entonces no cabe alimento</translation>
    </message>
    <message>
        <source>The top tray is full: lift the bottom tray, which is ready, or feed less</source>
        <translation>La bandeja superior está llena: sube la inferior, que está lista, o alimenta menos</translation>
    </message>
    <message>
        <source>by the estimate it is heaped above its %1</source>
        <translation>según la estimación rebosa sus %1</translation>
    </message>
    <message>
        <source>%1 of %2 used</source>
        <translation>%1 de %2 ocupados</translation>
    </message>
    <message>
        <source>no more food fits</source>
        <translation>ya no cabe más alimento</translation>
    </message>
    <message>
        <source>%1 of the usual food still fit</source>
        <translation>aún caben %1 del alimento habitual</translation>
    </message>
    <message>
        <source>the worms assimilate %1 of what they need</source>
        <translation>las lombrices asimilan %1 de lo que necesitan</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2 until the last food is eaten</source>
        <translation>alimento/humus %1, lista %2 hasta que se coma el último alimento</translation>
    </message>
    <message>
        <source>by the record the top tray holds more castings than fit under its rim at %1: a new tray or a harvest may not be written down, or an entry is wrong; feed-to-cast %2</source>
        <translation>según el diario la bandeja superior tiene más humus del que cabe bajo su borde a %1: quizá no se anotó una bandeja nueva o una cosecha, o hay una anotación errónea; alimento/humus %2</translation>
    </message>
    <message>
        <source>if one was added since, write it down</source>
        <translation>si se añadió una desde entonces, anótala</translation>
    </message>
    <message>
        <source>the top tray has had %1 and holds %2 of castings</source>
        <translation>la bandeja superior lleva %1 y tiene %2 de humus</translation>
    </message>
    <message>
        <source>the top tray is filled to its rim</source>
        <translation>la bandeja superior está llena hasta el borde</translation>
    </message>
    <message>
        <source>a spare tray is left</source>
        <translation>queda una bandeja libre</translation>
    </message>
    <message>
        <source>The bottom tray is ready and its turn comes soon: lift it when you like</source>
        <translation>La bandeja inferior está lista y le tocará pronto el turno: súbela cuando quieras</translation>
    </message>
    <message>
        <source>ready and its turn within 14 days: %1</source>
        <translation>lista y con turno en 14 días: %1</translation>
    </message>
    <message>
        <source>it narrows the date by less than a day for %1 min of work</source>
        <translation>estrecha la fecha menos de un día por %1 min de trabajo</translation>
    </message>
    <message>
        <source>it narrows the date by about %1 for %2 min of work, %3 days a minute</source>
        <translation>estrecha la fecha unos %1 por %2 min de trabajo, %3 días por minuto</translation>
    </message>
    <message>
        <source>it narrows the date, %1, by about %2 for %3 min of work, %4 days a minute</source>
        <translation>estrecha la fecha, %1, unos %2 por %3 min de trabajo, %4 días por minuto</translation>
    </message>
    <message>
        <source>fewer than %1 % bits of food or bedding: lift it today</source>
        <translation>menos de un %1 % de trozos de alimento o cama: súbela hoy</translation>
    </message>
    <message>
        <source>fewer than 1 in %1 bits of food or bedding: lift it today</source>
        <translation>menos de 1 de cada %1 trozos de alimento o cama: súbela hoy</translation>
    </message>
    <message>
        <source>else wait and look again in a week</source>
        <translation>si no, espera y mira otra vez dentro de una semana</translation>
    </message>
    <message>
        <source>else wait until about %1</source>
        <translation>si no, espera hasta el %1, más o menos</translation>
    </message>
    <message>
        <source>else wait and look again in a month</source>
        <translation>si no, espera y vuelve a mirar dentro de un mes</translation>
    </message>
    <message>
        <source>chance that it is too dry within a week: %1</source>
        <translation>probabilidad de que esté demasiado seco en una semana: %1</translation>
    </message>
    <message>
        <source>if it crumbles, pour %1, else nothing for two weeks</source>
        <translation>si se desmenuza, vierte %1, si no nada en dos semanas</translation>
    </message>
    <message>
        <source>it crumbled when it was squeezed</source>
        <translation>se desmigajó al apretarlo</translation>
    </message>
    <message>
        <source>moisture was read as %1 %</source>
        <translation>humedad leída: %1 %</translation>
    </message>
    <message>
        <source>in all %1 are wanting: more at once runs through</source>
        <translation>en total faltan %1: lo que se vierte de golpe en exceso se escurre</translation>
    </message>
    <message>
        <source>it ran when it was squeezed</source>
        <translation>escurrió al apretarlo</translation>
    </message>
    <message>
        <source>its turn about %1</source>
        <translation>su turno: %1</translation>
    </message>
    <message>
        <source>its turn not before %1</source>
        <translation>su turno no antes de: %1</translation>
    </message>
    <message>
        <source>its turn not within a year</source>
        <translation>su turno no antes de un año</translation>
    </message>
    <message>
        <source>right not before %1</source>
        <translation>su momento no antes de: %1</translation>
    </message>
    <message>
        <source>not right within a year</source>
        <translation>su momento no antes de un año</translation>
    </message>
    <message>
        <source>What was given in 8 weeks, cover included, has a C:N below 20 (taken back at 22); up to 25 when that of the bed is below 18 (taken back at 19). Less than {paper} of paper a week is not asked for.</source>
        <translation>Lo dado en 8 semanas, cubierta incluida, tiene un C:N inferior a 20 (se retira a 22); hasta 25 si el del lecho está por debajo de 18 (se retira a 19). No se piden menos de {paper} de papel por semana.</translation>
    </message>
    <message>
        <source>the tray beneath holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60; chance that it is filled %4, %5 wanted</source>
        <translation>la bandeja de debajo tiene %1 de humus de los %2 deseados; alimento/humus %3, y debe ser 0,60 como máximo; probabilidad de que esté completa: %4, se desea %5</translation>
    </message>
    <message>
        <source>The usual gap since the last feeding ends within 2 days, and at least {least} can be borne. More than the usual amount is named where that is below 0.7 of what keeps the worms and they assimilate less than 90 % of what they need, until they get all of it.</source>
        <translation>El intervalo habitual desde el último aporte termina en 2 días y se toleran al menos {least}. Se nombra más que lo habitual donde esto es menos de 0,7 de lo que mantiene a las lombrices y asimilan menos del 90&#xa0;% de lo que necesitan, hasta que lo reciben todo.</translation>
    </message>
    <message>
        <source>The air in a tray is below 0.7 of full, or falls below it within 14 days with at least even chances. It is taken back above 0.8 and below 30 %. Also where what was given within 7 days is more than a quarter above the most. As a hint: food is due and not even {least} is borne, or what lies in the tray would last for more than 45 days as it is eaten now, until it is 30.</source>
        <translation>El aire de una bandeja está por debajo de 0,7 del pleno, o baja de ahí en 14 días con al menos una probabilidad de la mitad. Se retira por encima de 0,8 y por debajo del 30&#xa0;%. También donde lo dado en 7 días supera en más de un cuarto el máximo. Como indicación: toca alimentar y no se toleran ni {least}, o lo que hay en la bandeja duraría más de 45 días al ritmo actual, hasta que sean 30.</translation>
    </message>
    <message>
        <source>the worms assimilate %1 of what they need; %2 a week keep as many as there are</source>
        <translation>las lombrices asimilan %1 de lo que necesitan; %2 por semana mantienen a tantas como hay</translation>
    </message>
    <message>
        <source>Feed %1 rather than the usual %2</source>
        <translation>Aporta %1 en vez de los %2 habituales</translation>
    </message>
    <message>
        <source>Give no more food this week; look after a few days, and take out what smells or is warm</source>
        <translation>No des más alimento esta semana; mira a los pocos días y saca lo que huela o esté caliente</translation>
    </message>
    <message>
        <source>%1 were given within 7 days; half of the worms&apos; weight a day is the most, %2 a week for about %3 of worms</source>
        <translation>se dieron %1 en 7 días; la mitad del peso de las lombrices al día es el máximo, %2 por semana para unos %3 de lombrices</translation>
    </message>
    <message>
        <source>%1 were given within 7 days; %2 kg a day and m² are the most, %3 a week</source>
        <translation>se dieron %1 en 7 días; %2 kg por día y m² son el máximo, %3 por semana</translation>
    </message>
</context>
<context>
    <name>BedBody</name>
    <message>
        <source>Bedding</source>
        <translation>Cama</translation>
    </message>
    <message>
        <source>Which bedding?</source>
        <translation>¿Qué cama?</translation>
    </message>
    <message>
        <source>Amount, dry</source>
        <translation>Cantidad, en seco</translation>
    </message>
    <message>
        <source>How much bedding, as it comes to hand?</source>
        <translation>¿Cuánta cama, tal como viene?</translation>
    </message>
    <message>
        <source>Moisture once laid</source>
        <translation>Humedad una vez puesta</translation>
    </message>
    <message>
        <source>wetted like a wrung-out sponge when left empty</source>
        <translation>si se deja vacío: mojada como una esponja escurrida</translation>
    </message>
    <message>
        <source>makes about %1; wet it with %2 of water</source>
        <translation>da unos %1; mójala con %2 de agua</translation>
    </message>
</context>
<context>
    <name>BedFields</name>
    <message>
        <source>Bed temperature now</source>
        <translation>Temperatura del lecho ahora</translation>
    </message>
    <message>
        <source>as a thermometer in the bed shows it today; the mean of the year follows from it, and it from the mean</source>
        <translation>como la muestra hoy un termómetro en el lecho; de ella sale la media del año, y ella de la media</translation>
    </message>
    <message>
        <source>Usual bed temperature</source>
        <translation>Temperatura habitual del lecho</translation>
    </message>
    <message>
        <source>the mean of the whole year; the place makes winter and summer of it</source>
        <translation>la media de todo el año; el lugar hace de ella invierno y verano</translation>
    </message>
    <message>
        <source>the mean of the whole year; at this place that is about %1 in %2 and %3 in %4</source>
        <comment>temperature, month, temperature, month</comment>
        <translation>la media de todo el año; en este lugar son unos %1 en %2 y %3 en %4</translation>
    </message>
    <message>
        <source>; below %1 worms die</source>
        <translation>; por debajo de %1 mueren lombrices</translation>
    </message>
    <message>
        <source>; above %1 worms die</source>
        <translation>; por encima de %1 mueren lombrices</translation>
    </message>
</context>
<context>
    <name>Calendar</name>
    <message>
        <source>about %1 of castings</source>
        <translation>unos %1 de humus</translation>
    </message>
    <message>
        <source>%1: add a tray (tray %2)</source>
        <translation>%1: añadir una bandeja (bandeja %2)</translation>
    </message>
    <message>
        <source>%1: lift the bottom tray (tray %2)</source>
        <translation>%1: subir la bandeja inferior (bandeja %2)</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1: take the castings, lay new bedding (tray %2)</source>
        <translation>%1: retirar el humus, poner cama nueva (bandeja %2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: take the castings of the only tray, its worms back into new bedding</source>
        <translation>%1: retirar el humus de la única bandeja, sus lombrices de vuelta a una cama nueva</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>toca: %1</translation>
    </message>
    <message>
        <source>due %1 (%2 to %3)</source>
        <translation>toca: %1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>due %1 (from %2 on)</source>
        <translation>toca: %1 (desde %2)</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Leachate: not on leaves that are eaten raw, and never to drink. Wash your hands afterwards.</source>
        <translation>Lixiviado: no en hojas que se comen crudas, y nunca para beber. Lávate las manos después.</translation>
    </message>
    <message>
        <source>Worms in the sump are normal: put them back into the top tray.</source>
        <translation>Es normal que haya lombrices en el depósito: devuélvelas a la bandeja superior.</translation>
    </message>
    <message>
        <source>Tray %1</source>
        <translation>La bandeja %1</translation>
    </message>
    <message>
        <source>The tray</source>
        <translation>La bandeja</translation>
    </message>
    <message>
        <source>Lift it close to the body, knees bent, without a twist; if that is too heavy, in parts or with someone.</source>
        <translation>Levántala cerca del cuerpo, con las rodillas dobladas y sin girar; si pesa demasiado, por partes o con ayuda.</translation>
    </message>
    <message>
        <source>%1 weighs about %2.</source>
        <translation>%1 pesa unos %2.</translation>
    </message>
    <message>
        <source>A full tray is heavy.</source>
        <translation>Una bandeja llena pesa mucho.</translation>
    </message>
    <message>
        <source>Worms left in the bottom tray are normal: they go down in the light.</source>
        <translation>Es normal que queden lombrices en la bandeja inferior: bajan con la luz.</translation>
    </message>
    <message>
        <source>It is normal that cocoons and some young worms leave with the castings; castings without any worm cannot be promised.</source>
        <translation>Es normal que con el humus se vayan capullos y algunas lombrices jóvenes; no se puede prometer humus sin ninguna lombriz.</translation>
    </message>
    <message>
        <source>Against cold: wrap it or bring it in first. A heater only if it is rated for the place and away from water; the local electrical code and a licensed electrician come first.</source>
        <translation>Contra el frío: primero envuélvela o métela dentro. Un calefactor, solo si es apto para el lugar y está lejos del agua; la normativa eléctrica local y un electricista autorizado van primero.</translation>
    </message>
    <message>
        <source>«%1» is best left out. It is recorded all the same.</source>
        <translation>«%1» es mejor no echarlo. Se anota igualmente.</translation>
    </message>
    <message>
        <source>«%1» only a little at a time.</source>
        <translation>«%1»: solo un poco cada vez.</translation>
    </message>
    <message>
        <source>Give worms to other bins only. Never release them into woods, fields or water; keep to local rules on species.</source>
        <translation>Da lombrices solo a otras vermicomposteras. No las sueltes nunca en bosques, campos o aguas; respeta las normas locales sobre especies.</translation>
    </message>
    <message>
        <source>No pesticide or ant bait near worms or food. Against a sour bed calcium carbonate only, never slaked lime.</source>
        <translation>Ni plaguicidas ni cebos para hormigas cerca de las lombrices o del alimento. Contra un lecho ácido, solo carbonato de calcio, nunca cal apagada.</translation>
    </message>
    <message>
        <source>Wash your hands after each work, keep tools out of the kitchen sink, cover cuts, keep tetanus vaccination up to date. Composts can carry moulds and Legionella. With asthma or weak immunity, or when pregnant, let someone else do the dusty work; see a doctor if you fall ill after it.</source>
        <translation>Lávate las manos después de cada tarea, no lleves las herramientas al fregadero, cubre los cortes, ten al día la vacuna del tétanos. El compost puede llevar mohos y Legionella. Con asma, defensas bajas o en el embarazo, que otra persona haga lo que levanta polvo; si enfermas después, ve al médico.</translation>
    </message>
    <message>
        <source>Never release composting worms into woods, fields or water. Keep to local rules on species, on waste and on selling worms or castings.</source>
        <translation>No sueltes nunca lombrices de compost en bosques, campos o aguas. Respeta las normas locales sobre especies, sobre residuos y sobre la venta de lombrices o humus.</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first: for electrical heat, for what may be composted where you live, and for what you may give away or sell.</source>
        <translation>Las normas locales y los profesionales autorizados van primero: para la calefacción eléctrica, para lo que se puede compostar donde vives y para lo que puedes regalar o vender.</translation>
    </message>
    <message>
        <source>Meat, fish, dairy, oily food, pet droppings, glossy paper and treated wood stay out.</source>
        <translation>Fuera la carne, el pescado, los lácteos, los alimentos aceitosos, los excrementos de mascotas, el papel satinado y la madera tratada.</translation>
    </message>
    <message>
        <source>the household&apos;s own material</source>
        <translation>el material propio del hogar</translation>
    </message>
    <message>
        <source>Leachate: never to drink, not on leaves eaten raw.</source>
        <translation>Lixiviado: nunca beberlo, no sobre hojas que se comen crudas.</translation>
    </message>
    <message>
        <source>%1 weighs about %2: lift with knees bent, or in parts.</source>
        <translation>%1 pesa unos %2: levantar con las rodillas dobladas, o por partes.</translation>
    </message>
    <message>
        <source>A full tray is heavy: lift with knees bent, or in parts.</source>
        <translation>Una bandeja llena pesa: levantarla con las rodillas dobladas, o por partes.</translation>
    </message>
    <message>
        <source>Dust of castings and compost can carry moulds and Legionella: keep it moist, your face away, wear a mask and gloves, wash your hands; cover wounds, keep tetanus vaccination up to date. With asthma or weak immunity, let someone else do it; what your doctor or health service says comes first.</source>
        <translation>El polvo de humus y compost puede llevar mohos y legionela: mantenlo húmedo, la cara lejos, ponte mascarilla y guantes, lávate las manos; cubre las heridas, ten al día la vacuna del tétanos. Con asma o defensas bajas, que lo haga otra persona; lo que diga tu médico o tu servicio de salud va primero.</translation>
    </message>
    <message>
        <source>Dust can carry moulds and Legionella: keep it moist, mask and gloves on, tetanus vaccination up to date; not with asthma or weak immunity.</source>
        <translation>El polvo puede llevar mohos y legionela: mantenlo húmedo, mascarilla y guantes, vacuna del tétanos al día; no con asma o defensas bajas.</translation>
    </message>
    <message>
        <source>Soil and bedding in a wound can bring tetanus: cover wounds, wear gloves, wash your hands, keep the vaccination up to date; what your doctor or health service says comes first.</source>
        <translation>La tierra y la cama en una herida pueden traer el tétanos: cubre las heridas, ponte guantes, lávate las manos, ten la vacuna al día; lo que diga tu médico o tu servicio de salud va primero.</translation>
    </message>
    <message>
        <source>Cover wounds, wear gloves; tetanus vaccination up to date.</source>
        <translation>Cubre las heridas, ponte guantes; vacuna del tétanos al día.</translation>
    </message>
    <message>
        <source>Manure: only aged, not of animals wormed lately: what kills their worms kills yours. Wear gloves, cover wounds, tetanus vaccination up to date, wash your hands; never cat or dog waste; in pregnancy or with weak immunity keep away from it.</source>
        <translation>Estiércol: solo envejecido, no de animales desparasitados hace poco: lo que mata sus gusanos mata los tuyos. Guantes, heridas cubiertas, vacuna del tétanos al día, manos lavadas; nunca heces de gato o perro; ni en el embarazo ni con defensas bajas.</translation>
    </message>
    <message>
        <source>Manure: only aged, of animals not wormed lately; gloves, tetanus vaccination up to date; never cat or dog waste, not in pregnancy.</source>
        <translation>Estiércol: solo envejecido, de animales no desparasitados hace poco; guantes, vacuna del tétanos al día; nunca heces de gato o perro, ni en el embarazo.</translation>
    </message>
</context>
<context>
    <name>ChangeWords</name>
    <message>
        <source>not within a year</source>
        <translation>no antes de un año</translation>
    </message>
    <message>
        <source>no day sooner or later</source>
        <translation>ni antes ni después</translation>
    </message>
    <message>
        <source>bottom tray ready</source>
        <translation>bandeja inferior lista</translation>
    </message>
    <message>
        <source>top tray filled</source>
        <translation>bandeja superior completa</translation>
    </message>
    <message>
        <source>sump full, if shut</source>
        <translation>depósito lleno, si está cerrado</translation>
    </message>
    <message>
        <source>colony in 60 days</source>
        <translation>colonia en 60 días</translation>
    </message>
    <message>
        <source>colony in a year</source>
        <translation>colonia en un año</translation>
    </message>
    <message>
        <source>processing, dry</source>
        <translation>procesado, en seco</translation>
    </message>
    <message>
        <source>feed %1 with its cover</source>
        <translation>aporta %1 con su cubierta</translation>
    </message>
    <message>
        <source>give no food</source>
        <translation>no des alimento</translation>
    </message>
    <message>
        <source>pour %1 of water</source>
        <translation>vierte %1 de agua</translation>
    </message>
    <message>
        <source>drain the sump and leave the spigot over a bowl</source>
        <translation>drena el depósito y deja el grifo abierto sobre un recipiente</translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Nobody need come by.</source>
        <translation>Antes de irte (%1): %2. No hace falta que venga nadie.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Let somebody look in half-way.</source>
        <translation>Antes de irte (%1): %2. Que alguien eche un vistazo a mitad de camino.</translation>
    </message>
    <message>
        <source>too dry on the return</source>
        <translation>demasiado seca a la vuelta</translation>
    </message>
    <message>
        <source>hungry on the return</source>
        <translation>con hambre a la vuelta</translation>
    </message>
    <message>
        <source>The stack is not behind: it processes %1, at least 70 % of its best week of the last year.</source>
        <translation>La torre no va atrasada: procesa %1, al menos el 70&#xa0;% de su mejor semana del último año.</translation>
    </message>
    <message>
        <source>take the bottom tray&apos;s castings</source>
        <translation>retirar el humus de la bandeja inferior</translation>
    </message>
    <message>
        <source>lay a new tray</source>
        <translation>poner una bandeja nueva</translation>
    </message>
    <message>
        <source>not within half a year</source>
        <translation>no antes de medio año</translation>
    </message>
    <message>
        <source>The shortest way back: %1. It processes %2 again about %3.</source>
        <translation>El camino más corto de vuelta: %1. Vuelve a procesar %2 hacia el %3.</translation>
    </message>
    <message>
        <source>back at its former rate</source>
        <translation>de vuelta a su ritmo anterior</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>from %1 on %2</source>
        <comment>day, amount of food a week</comment>
        <translation>desde el %1, %2</translation>
    </message>
    <message>
        <source>processing, dry, by then</source>
        <translation>procesado para entonces, en seco</translation>
    </message>
    <message>
        <source>air below 0.7 within 14 days</source>
        <translation>aire por debajo de 0,7 en 14 días</translation>
    </message>
    <message numerus="yes">
        <source>None: with fewer worms the stack would not be back at its rate, or its colony at nine tenths, within %n week(s) (%1 then, %2 now).</source>
        <translation>
            <numerusform>Ninguna: con menos lombrices la torre no recuperaría su ritmo, o su colonia nueve décimos, en %n semana (%1 entonces, %2 ahora).</numerusform>
            <numerusform>Ninguna: con menos lombrices la torre no recuperaría su ritmo, o su colonia nueve décimos, en %n semanas (%1 entonces, %2 ahora).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as today again, and its worms are back to nine tenths.</source>
        <translation>
            <numerusform>Hasta %1 de lombrices pueden irse (%2 de la colonia); en %n semana la torre procesa de nuevo tanto como hoy, y sus lombrices vuelven a nueve décimos.</numerusform>
            <numerusform>Hasta %1 de lombrices pueden irse (%2 de la colonia); en %n semanas la torre procesa de nuevo tanto como hoy, y sus lombrices vuelven a nueve décimos.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as it would with all of them, which is less than today, and its worms are back to nine tenths.</source>
        <translation>
            <numerusform>Hasta %1 de lombrices pueden irse (%2 de la colonia); en %n semana la torre procesa tanto como lo haría con todas, que es menos que hoy, y sus lombrices vuelven a nueve décimos.</numerusform>
            <numerusform>Hasta %1 de lombrices pueden irse (%2 de la colonia); en %n semanas la torre procesa tanto como lo haría con todas, que es menos que hoy, y sus lombrices vuelven a nueve décimos.</numerusform>
        </translation>
    </message>
    <message>
        <source>colony by then</source>
        <translation>colonia para entonces</translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Nobody need come by; towards the end they may live on their reserves: feed them when you are back.</source>
        <translation>Antes de salir para %1: %2. Nadie tiene que pasar; hacia el final pueden vivir de sus reservas: aliméntalas al volver.</translation>
    </message>
    <message>
        <source>already</source>
        <translation>ya</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is as heavy as without the change.</source>
        <translation>La bandeja inferior está lista %1; en 60 días la colonia pesa lo mismo que sin el cambio.</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is as heavy as without the change.</source>
        <translation>Con la bandeja inferior retirada, en 60 días la colonia pesa lo mismo que sin el cambio.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be what it is today, %2.</source>
        <translation>Si la bandeja inferior se hubiera retirado el %1, la colonia sería la de hoy, %2.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be what it is today, %1.</source>
        <translation>Sin esa anotación la colonia sería la de hoy, %1.</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is %2.</source>
        <translation>La bandeja inferior está lista %1; en 60 días la colonia pesa %2.</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is %1.</source>
        <translation>Con la bandeja inferior retirada, en 60 días la colonia pesa %1.</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is as heavy as without the change (%2).</source>
        <translation>La bandeja inferior está lista %1; en 60 días la colonia pesa lo mismo que sin el cambio (%2).</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is as heavy as without the change (%1).</source>
        <translation>Con la bandeja inferior retirada, en 60 días la colonia pesa lo mismo que sin el cambio (%1).</translation>
    </message>
    <message>
        <source>put %1 of worms in</source>
        <translation>pon %1 de lombrices</translation>
    </message>
    <message>
        <source>None of harvest, new tray and more food brings it back by itself. With worms it does: %1. It processes %2 again about %3.</source>
        <translation>Ni la cosecha, ni una bandeja nueva, ni más alimento bastan por sí solos. Con lombrices sí: %1. Vuelve a procesar %2 hacia %3.</translation>
    </message>
    <message>
        <source>None of harvest, new tray and more food brings it back to %1 within half a year, nor do %2 of worms: begin its bed anew.</source>
        <translation>Ni la cosecha, ni una bandeja nueva, ni más alimento la devuelven a %1 en medio año, ni tampoco %2 de lombrices: empieza su lecho de nuevo.</translation>
    </message>
    <message>
        <source>%1 a week</source>
        <comment>amount of food</comment>
        <translation>%1 por semana</translation>
    </message>
    <message>
        <source>Lay %1 of bedding in the new stack&apos;s first tray, put %2 of worms in, and feed it %3.</source>
        <translation>Pon %1 de cama en la primera bandeja de la torre nueva, mete %2 de lombrices y dale %3.</translation>
    </message>
    <message>
        <source>worms at the beginning</source>
        <translation>lombrices al comienzo</translation>
    </message>
    <message>
        <source>food a week</source>
        <translation>alimento por semana</translation>
    </message>
    <message>
        <source>back at its rate</source>
        <translation>ritmo recuperado</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>feed %1</source>
        <comment>amounts a week</comment>
        <translation>aportar %1</translation>
    </message>
    <message>
        <source>%1, later up to %2</source>
        <comment>amounts of food a week</comment>
        <translation>%1, después hasta %2</translation>
    </message>
    <message>
        <source>Never release them into wild land, and keep to local rules on species and sale.</source>
        <translation>No las sueltes nunca en la naturaleza y respeta las normas locales sobre especies y venta.</translation>
    </message>
    <message>
        <source>from %1 on: %2 a week</source>
        <comment>day, amount of food</comment>
        <translation>desde el %1: %2 por semana</translation>
    </message>
    <message>
        <source>%1 a week at first, step by step %2 from %3 on</source>
        <comment>amount of food, amount, day</comment>
        <translation>primero %1 por semana, paso a paso %2 desde el %3</translation>
    </message>
    <message>
        <source>That is more than it can bear: with %1 the air in the bed falls below 0.7 within 14 days; it heats and smells, and below 0.5 worms die.</source>
        <translation>Es más de lo que tolera: con una probabilidad de %1, el aire del lecho baja de 0,7 en 14 días; se calienta y huele, y por debajo de 0,5 mueren lombrices.</translation>
    </message>
    <message>
        <source>Of such a week&apos;s food only about %1 fit into the tray now; what finds no room is left out.</source>
        <translation>Del alimento de tal semana solo caben ahora unos %1 en la bandeja; lo que no cabe se deja fuera.</translation>
    </message>
    <message>
        <source>All its trays stand: it takes one more than there are.</source>
        <translation>Todas sus bandejas están puestas: hace falta una más.</translation>
    </message>
    <message>
        <source>%1 is the mean of the whole year, and the season goes on around it: at this place the bed has about %2 in %3 and %4 in %5.</source>
        <comment>temperature, temperature, month, temperature, month</comment>
        <translation>%1 es la media de todo el año, y las estaciones siguen en torno a ella: en este lugar el lecho tiene unos %2 en %3 y %4 en %5.</translation>
    </message>
    <message>
        <source>Below %1 worms die.</source>
        <translation>Por debajo de %1 mueren lombrices.</translation>
    </message>
    <message>
        <source>Above %1 worms die.</source>
        <translation>Por encima de %1 mueren lombrices.</translation>
    </message>
    <message>
        <source>bed, mean of the year</source>
        <translation>lecho, media del año</translation>
    </message>
    <message>
        <source>bed in %1</source>
        <comment>month</comment>
        <translation>lecho en %1</translation>
    </message>
    <message numerus="yes">
        <source>This stack can spare only %1 within %n week(s): give it more weeks, or buy the rest.</source>
        <translation>
            <numerusform>Esta torre solo puede ceder %1 en %n semana: dale más semanas, o compra el resto.</numerusform>
            <numerusform>Esta torre solo puede ceder %1 en %n semanas: dale más semanas, o compra el resto.</numerusform>
        </translation>
    </message>
    <message>
        <source>Its first tray is full, and the next one due: %1. The castings of the first are ready: %2. This stack is back at its rate: %3.</source>
        <translation>Su primera bandeja está llena y toca la siguiente: %1. El humus de la primera está listo: %2. Esta torre recupera su ritmo: %3.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 heavier.</source>
        <translation>Con la bandeja inferior retirada el %1, la colonia pesaría hoy %2 en vez de %3, o sea %4 más.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 lighter.</source>
        <translation>Con la bandeja inferior retirada el %1, la colonia pesaría hoy %2 en vez de %3, o sea %4 menos.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be %1 today instead of %2, that is %3 heavier.</source>
        <translation>Sin esa anotación la colonia pesaría hoy %1 en vez de %2, o sea %3 más.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be %1 today instead of %2, that is %3 lighter.</source>
        <translation>Sin esa anotación la colonia pesaría hoy %1 en vez de %2, o sea %3 menos.</translation>
    </message>
</context>
<context>
    <name>Charts</name>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>As of %1. Lines are estimates, bands the range that holds nine times in ten; what is shaded is the forecast.</source>
        <translation>A %1. Las líneas son estimaciones, las bandas el intervalo que se cumple nueve de cada diez veces; lo sombreado es la previsión.</translation>
    </message>
    <message>
        <source>%1. Estimates, no measurements: a look into the tray rules over any number here.</source>
        <translation>%1. Estimaciones, no medidas: una mirada a la bandeja vale más que cualquier número de aquí.</translation>
    </message>
    <message>
        <source>The signs in the charts</source>
        <translation>Los signos de los gráficos</translation>
    </message>
</context>
<context>
    <name>CheckBody</name>
    <message>
        <source>Depth of castings</source>
        <translation>Espesor del humus</translation>
    </message>
    <message>
        <source>Still recognisable</source>
        <translation>Aún reconocible</translation>
    </message>
    <message>
        <source>how much of the tray you still know as food or bedding</source>
        <translation>qué parte de la bandeja reconoces aún como alimento o cama</translation>
    </message>
    <message>
        <source>Left of the last feeding</source>
        <translation>Queda del último aporte</translation>
    </message>
    <message>
        <source>Worms seen</source>
        <translation>Lombrices vistas</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>few</source>
        <translation>pocas</translation>
    </message>
    <message>
        <source>some</source>
        <translation>algunas</translation>
    </message>
    <message>
        <source>many</source>
        <translation>muchas</translation>
    </message>
    <message>
        <source>Note at least one thing that you saw.</source>
        <translation>Anota al menos una cosa que hayas visto.</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>unknown option %1</source>
        <translation>opción desconocida: %1</translation>
    </message>
    <message>
        <source>%1 takes no value</source>
        <translation>%1 no lleva valor</translation>
    </message>
    <message>
        <source>%1 needs a value</source>
        <translation>%1 necesita un valor</translation>
    </message>
    <message>
        <source>%1 is given twice</source>
        <translation>%1 aparece dos veces</translation>
    </message>
    <message>
        <source>%1 and %2 cannot be asked for at once</source>
        <translation>%1 y %2 no se pueden pedir a la vez</translation>
    </message>
    <message>
        <source>%1 goes only with --portrait</source>
        <translation>%1 solo va con --portrait</translation>
    </message>
    <message>
        <source>--demo goes only with the window and --portrait</source>
        <translation>--demo solo va con la ventana y con --portrait</translation>
    </message>
    <message>
        <source>only one FILE can be named, not %1 and %2</source>
        <translation>solo se puede nombrar un ARCHIVO, no %1 y %2</translation>
    </message>
    <message>
        <source>the name of FILE is empty</source>
        <translation>el nombre de ARCHIVO está vacío</translation>
    </message>
    <message>
        <source>--demo opens a household of its own, so no FILE can be named</source>
        <translation>--demo abre un hogar propio, así que no se puede nombrar un ARCHIVO</translation>
    </message>
    <message>
        <source>the call needs a FILE: tierloam FILE …</source>
        <translation>la orden necesita un ARCHIVO: tierloam ARCHIVO …</translation>
    </message>
    <message>
        <source>--at: found «%1»; allowed: a date from 1900 to 2199, such as 2031-05-01</source>
        <translation>--at: se encontró «%1»; se admite: una fecha de 1900 a 2199, como 2031-05-01</translation>
    </message>
    <message>
        <source>%1: found «%2»; allowed: %3</source>
        <translation>%1: se encontró «%2»; se admite: %3</translation>
    </message>
    <message>
        <source>a whole number, 100 to 200</source>
        <translation>un número entero, de 100 a 200</translation>
    </message>
    <message>
        <source>WIDTHxHEIGHT, each %1 to %2, such as 1440x900</source>
        <translation>ANCHOxALTO, cada uno de %1 a %2, como 1440x900</translation>
    </message>
    <message>
        <source>this build has no window and draws no pages; it answers --import, --record, --export, --summary and --calendar</source>
        <translation>esta compilación no tiene ventana ni dibuja páginas; responde a --import, --record, --export, --summary y --calendar</translation>
    </message>
    <message>
        <source>tierloam --help lists the calls</source>
        <translation>tierloam --help muestra las órdenes</translation>
    </message>
    <message>
        <source>--at goes only with --summary, --calendar, --report, --labels and --portrait</source>
        <translation>--at solo va con --summary, --calendar, --report, --labels y --portrait</translation>
    </message>
    <message>
        <source>--lang goes only with --report, --labels and --portrait</source>
        <translation>--lang solo va con --report, --labels y --portrait</translation>
    </message>
    <message>
        <source>--out goes only with --report</source>
        <translation>--out solo va con --report</translation>
    </message>
    <message>
        <source>--report needs --out OUT.pdf or --out OUT.html</source>
        <translation>--report necesita --out SALIDA.pdf o --out SALIDA.html</translation>
    </message>
    <message>
        <source>a name that ends in .pdf or .html</source>
        <translation>un nombre que termine en .pdf o .html</translation>
    </message>
    <message>
        <source>a name that ends in .pdf</source>
        <translation>un nombre que termine en .pdf</translation>
    </message>
    <message>
        <source>Tierloam keeps the trays of every stack of worm bins moving through their turns.

tierloam [FILE]                        opens the window on a household file (*.tierloam)
tierloam --demo                        opens a fresh copy of the demo household
tierloam FILE --import JOURNAL.csv     adds all rows of a journal, or none
tierloam FILE --record &quot;ROW&quot;           adds one row, prints its id once it is safe on disk
tierloam FILE --export JOURNAL.csv     writes the whole journal
tierloam FILE --summary [--at DATE]    estimates and advice as JSON
tierloam FILE --calendar OUT.ics [--at DATE]
                                       due list and rotation plan as iCalendar
tierloam FILE --report STACK --out OUT.pdf|OUT.html [--at DATE] [--lang de]
                                       the sheet of one stack
tierloam FILE --labels OUT.pdf [--at DATE] [--lang de]
                                       a label for each tray that stands
tierloam FILE --portrait DIR           draws each page to DIR/PAGE.png; also with --demo for FILE
    [--at DATE] [--theme light|dark] [--font-scale 100..200] [--size WxH] [--lang de]
tierloam --version, tierloam --help

The columns of a journal: date,stack,action,slot,amount,unit,item,detail,note
FILE is created when --import or --record names one that is not there.

Exit codes: 0 done; 1 the work failed (disk full; FILE absent, damaged, or in use for more than 5 s);
2 bad arguments or input, and nothing was changed.
</source>
        <translation>Tierloam mantiene en marcha los turnos de las bandejas de todas tus torres de lombrices.

tierloam [ARCHIVO]                     abre la ventana con un archivo de hogar (*.tierloam)
tierloam --demo                        abre una copia nueva del hogar de demostración
tierloam ARCHIVO --import DIARIO.csv   añade todas las filas de un diario, o ninguna
tierloam ARCHIVO --record &quot;FILA&quot;       añade una fila y escribe su id cuando está a salvo en el disco
tierloam ARCHIVO --export DIARIO.csv   escribe el diario entero
tierloam ARCHIVO --summary [--at FECHA]
                                       estimaciones y consejos como JSON
tierloam ARCHIVO --calendar SALIDA.ics [--at FECHA]
                                       tareas y plan de rotación como iCalendar
tierloam ARCHIVO --report TORRE --out SALIDA.pdf|SALIDA.html [--at FECHA] [--lang de]
                                       la hoja de una torre
tierloam ARCHIVO --labels SALIDA.pdf [--at FECHA] [--lang de]
                                       una etiqueta por cada bandeja puesta
tierloam ARCHIVO --portrait CARPETA    dibuja cada página en CARPETA/PÁGINA.png; también con --demo en vez de ARCHIVO
    [--at FECHA] [--theme light|dark] [--font-scale 100..200] [--size ANCHOxALTO] [--lang de]
tierloam --version, tierloam --help

Las columnas de un diario: date,stack,action,slot,amount,unit,item,detail,note
ARCHIVO se crea cuando --import o --record nombran uno que no existe.

Códigos de salida: 0 hecho; 1 el trabajo falló (disco lleno; ARCHIVO ausente, dañado o en uso durante más de 5 s);
2 argumentos o datos incorrectos, y no se cambió nada.
</translation>
    </message>
    <message>
        <source>%1, also with a country, such as de_AT</source>
        <translation>%1, también con un país, como de_AT</translation>
    </message>
</context>
<context>
    <name>CoreCalls</name>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 no se puede leer: %2</translation>
    </message>
    <message>
        <source>another program has changed the journal meanwhile</source>
        <translation>otro programa ha cambiado el diario entretanto</translation>
    </message>
    <message>
        <source>what was written is kept, but the answer could not be printed</source>
        <translation>lo escrito se conserva, pero no se pudo mostrar la respuesta</translation>
    </message>
    <message>
        <source>the summary could not be printed</source>
        <translation>no se pudo mostrar el resumen</translation>
    </message>
    <message>
        <source>the journal</source>
        <translation>el diario</translation>
    </message>
    <message>
        <source>the calendar</source>
        <translation>el calendario</translation>
    </message>
    <message>
        <source>%1 is the household file itself; name another file for %2</source>
        <translation>%1 es el propio archivo del hogar; nombra otro archivo para %2</translation>
    </message>
    <message>
        <source>The seasons are those south of the equator, since this machine is set up for there. The window&apos;s menu Household, Seasons, turns them.</source>
        <translation>Las estaciones son las del sur del ecuador, pues este equipo está configurado para allí. En la ventana, el menú Hogar, Estaciones, las invierte.</translation>
    </message>
    <message>
        <source>%1 is not in the journal&apos;s own format, which --import reads. The window reads other tables too (its menu Household, Import a table): it finds out columns, marks and encoding, and asks what it cannot know.</source>
        <translation>%1 no está en el formato propio del diario, que lee --import. La ventana lee también otras tablas (menú Hogar, Importar una tabla): averigua columnas, separadores y codificación, y pregunta lo que no puede saber.</translation>
    </message>
</context>
<context>
    <name>CountBody</name>
    <message>
        <source>Worms counted</source>
        <translation>Lombrices contadas</translation>
    </message>
    <message>
        <source>How many worms?</source>
        <translation>¿Cuántas lombrices?</translation>
    </message>
    <message>
        <source>In how much bed</source>
        <translation>En cuánto lecho</translation>
    </message>
    <message>
        <source>the volume that was searched; without it the count says little</source>
        <translation>el volumen revisado; sin él, el recuento dice poco</translation>
    </message>
</context>
<context>
    <name>CoverBody</name>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>How much paper?</source>
        <translation>¿Cuánto papel?</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>not noted; reckoned as about %1</source>
        <translation>no anotada; se calcula con unos %1</translation>
    </message>
</context>
<context>
    <name>Dates</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>mañana</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde el %1</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>después del %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2 or later)</source>
        <translation>%1 (%2 o después)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 d</source>
        <translation>%1 d</translation>
    </message>
</context>
<context>
    <name>DrainBody</name>
    <message>
        <source>Drained</source>
        <translation>Drenado</translation>
    </message>
    <message>
        <source>The sump</source>
        <translation>El depósito</translation>
    </message>
    <message>
        <source>is empty now</source>
        <translation>queda vacío</translation>
    </message>
    <message>
        <source>still holds some</source>
        <translation>aún contiene algo</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Grifo</translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation>sigue como está</translation>
    </message>
    <message>
        <source>open from now on</source>
        <translation>abierto desde ahora</translation>
    </message>
    <message>
        <source>shut from now on</source>
        <translation>cerrado desde ahora</translation>
    </message>
    <message>
        <source>Give the volume that was drained, or say how the spigot stands from now on.</source>
        <translation>Indica el volumen drenado, o cómo queda el grifo desde ahora.</translation>
    </message>
    <message>
        <source>it is open on that day</source>
        <translation>ese día está abierto</translation>
    </message>
    <message>
        <source>it is shut on that day</source>
        <translation>ese día está cerrado</translation>
    </message>
</context>
<context>
    <name>DrainDoubt</name>
    <message>
        <source>%1 is more than can have run out: the sump holds %2. Is the amount right, and its unit?</source>
        <translation>%1 es más de lo que puede haber salido: en el depósito caben %2. ¿Es correcta la cantidad, y su unidad?</translation>
    </message>
</context>
<context>
    <name>DueActs</name>
    <message>
        <source>%1: %2</source>
        <comment>stack, what is recorded</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>feed %1</source>
        <comment>amount</comment>
        <translation>alimentar con %1</translation>
    </message>
    <message>
        <source>%1 of paper</source>
        <comment>amount</comment>
        <translation>%1 de papel</translation>
    </message>
    <message>
        <source>water %1</source>
        <comment>amount</comment>
        <translation>regar con %1</translation>
    </message>
    <message>
        <source>drain %1</source>
        <comment>amount</comment>
        <translation>vaciar %1</translation>
    </message>
    <message>
        <source>flush with %1</source>
        <comment>amount</comment>
        <translation>enjuagar con %1</translation>
    </message>
    <message>
        <source>tray on top, %1 of %2</source>
        <comment>amount, bedding</comment>
        <translation>bandeja encima, %1 de %2</translation>
    </message>
    <message>
        <source>bottom tray lifted to the top, lid off</source>
        <translation>bandeja inferior subida arriba, sin tapa</translation>
    </message>
    <message>
        <source>It weighs about %1. %2</source>
        <comment>a tray; what is advised for the lift</comment>
        <translation>Pesa unos %1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what was looked for, what was seen</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>none</source>
        <comment>bits</comment>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <comment>of the tray is bits</comment>
        <translation>1 de cada %1</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>no queda nada</translation>
    </message>
    <message>
        <source>a quarter</source>
        <translation>un cuarto</translation>
    </message>
    <message>
        <source>half</source>
        <translation>la mitad</translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation>tres cuartos</translation>
    </message>
    <message>
        <source>few</source>
        <comment>worms</comment>
        <translation>pocas</translation>
    </message>
    <message>
        <source>some</source>
        <comment>worms</comment>
        <translation>algunas</translation>
    </message>
    <message>
        <source>many</source>
        <comment>worms</comment>
        <translation>muchas</translation>
    </message>
    <message>
        <source>1 crumbles</source>
        <translation>1 se desmenuza</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>3 moist</source>
        <translation>3 húmedo</translation>
    </message>
    <message>
        <source>4</source>
        <translation>4</translation>
    </message>
    <message>
        <source>5 streams</source>
        <translation>5 chorrea</translation>
    </message>
    <message>
        <source>noted as done</source>
        <translation>anotado como hecho</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <comment>what was advised</comment>
        <translation>Hecho: %1</translation>
    </message>
    <message>
        <source>bits of food or bedding</source>
        <translation>trozos de alimento o cama</translation>
    </message>
    <message>
        <source>left of the last feeding</source>
        <translation>lo que queda del último aporte</translation>
    </message>
    <message>
        <source>worms seen</source>
        <translation>lombrices vistas</translation>
    </message>
    <message>
        <source>squeezed in the hand</source>
        <translation>apretado en la mano</translation>
    </message>
    <message>
        <source>bed temperature</source>
        <translation>temperatura del lecho</translation>
    </message>
    <message>
        <source>depth of castings</source>
        <translation>profundidad del humus</translation>
    </message>
</context>
<context>
    <name>EventBody</name>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>What happened, in a word?</source>
        <translation>¿Qué pasó, en una palabra?</translation>
    </message>
    <message>
        <source>%1, …</source>
        <translation>%1, …</translation>
    </message>
    <message>
        <source>%1 puts what may be wrong in order, by what is known of this stack</source>
        <translation>%1 ordena lo que puede ir mal según lo que se sabe de esta torre</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
</context>
<context>
    <name>Events</name>
    <message>
        <source>smell</source>
        <translation>olor</translation>
    </message>
    <message>
        <source>flies</source>
        <translation>moscas</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>ácaros</translation>
    </message>
    <message>
        <source>ants</source>
        <translation>hormigas</translation>
    </message>
    <message>
        <source>escape</source>
        <translation>fuga</translation>
    </message>
    <message>
        <source>dead worms</source>
        <translation>lombrices muertas</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>moho</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>calor</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>frío</translation>
    </message>
    <message>
        <source>standing water</source>
        <translation>agua parada</translation>
    </message>
    <message>
        <source>sour bed</source>
        <translation>lecho ácido</translation>
    </message>
    <message>
        <source>few worms</source>
        <translation>pocas lombrices</translation>
    </message>
    <message>
        <source>no castings</source>
        <translation>sin humus</translation>
    </message>
    <message>
        <source>away</source>
        <translation>ausencia</translation>
    </message>
    <message>
        <source>second light-drying</source>
        <translation>segundo secado a la luz</translation>
    </message>
    <message>
        <source>bait tray</source>
        <translation>bandeja con cebo</translation>
    </message>
</context>
<context>
    <name>ExchangeText</name>
    <message>
        <source>a closing quote mark for each opening one</source>
        <translation>una comilla de cierre por cada una de apertura</translation>
    </message>
    <message>
        <source>quote marks only around a whole cell, and doubled inside it</source>
        <translation>comillas solo alrededor de una celda entera, y dobladas dentro</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>texto en UTF-8</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>above %1, at most %2</source>
        <translation>más de %1, como máximo %2</translation>
    </message>
    <message>
        <source>nothing (%1)</source>
        <translation>nada (%1)</translation>
    </message>
    <message>
        <source>%1 has no amount</source>
        <translation>%1 no lleva cantidad</translation>
    </message>
    <message>
        <source>a plain decimal with a point, such as 0.35</source>
        <translation>un decimal simple con punto, como 0.35</translation>
    </message>
    <message>
        <source>a whole number, 0 to %1</source>
        <translation>un número entero, de 0 a %1</translation>
    </message>
    <message>
        <source>%1 has no detail</source>
        <translation>%1 no lleva detalle</translation>
    </message>
    <message>
        <source>key=value with the keys %1</source>
        <translation>clave=valor con las claves %1</translation>
    </message>
    <message>
        <source>= and a value</source>
        <translation>= y un valor</translation>
    </message>
    <message>
        <source>%1 once</source>
        <translation>%1 una sola vez</translation>
    </message>
    <message>
        <source>a whole number, %1 to %2</source>
        <translation>un número entero, de %1 a %2</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01</source>
        <translation>una fecha de 1900 a 2199, como 2031-05-01</translation>
    </message>
    <message>
        <source>16 digits of 0 to 9 and a to f, as given by an export</source>
        <translation>16 cifras de 0 a 9 y de a a f, tal como las da una exportación</translation>
    </message>
    <message>
        <source>found «%1»; allowed: %2</source>
        <translation>se encontró «%1»; se admite: %2</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>cada columna una sola vez</translation>
    </message>
    <message>
        <source>a header with each of %1</source>
        <translation>un encabezado con cada una de: %1</translation>
    </message>
    <message>
        <source>%1 cells: %2; there are %3</source>
        <translation>%1 celdas: %2; hay %3</translation>
    </message>
    <message>
        <source>a header with %1</source>
        <translation>un encabezado con %1</translation>
    </message>
    <message>
        <source>one row</source>
        <translation>una fila</translation>
    </message>
    <message>
        <source>a date and a time, such as 2031-05-01 18:30</source>
        <translation>una fecha y una hora, como 2031-05-01 18:30</translation>
    </message>
    <message>
        <source>a temperature from %1 to %2</source>
        <translation>una temperatura de %1 a %2</translation>
    </message>
    <message>
        <source>a share from 0 to 100 %</source>
        <translation>una proporción de 0 a 100&#xa0;%</translation>
    </message>
    <message>
        <source>Mean of what a logger read on this day (%1)</source>
        <translation>Media de lo que leyó un registrador este día (%1)</translation>
    </message>
    <message>
        <source>The entry names no stack.</source>
        <translation>La anotación no nombra ninguna torre.</translation>
    </message>
    <message>
        <source>%1 has never been set up.</source>
        <translation>%1 nunca se ha montado.</translation>
    </message>
    <message>
        <source>%1 was first set up on %2; nothing can be dated before that.</source>
        <translation>%1 se montó el %2; no se puede fechar nada antes.</translation>
    </message>
    <message>
        <source>%1 has been retired.</source>
        <translation>%1 está dada de baja.</translation>
    </message>
    <message>
        <source>%1 is the name of a retired stack and cannot be used again.</source>
        <translation>%1 es el nombre de una torre dada de baja y no se puede volver a usar.</translation>
    </message>
    <message>
        <source>A stack cannot be called «%1»: no semicolon, no control character, and no blank at either end.</source>
        <translation>Una torre no puede llamarse «%1»: sin punto y coma, sin caracteres de control y sin espacios al principio o al final.</translation>
    </message>
    <message>
        <source>%1 has no slot %2 then; trays that stand: %3.</source>
        <translation>%1 no tiene entonces el nivel %2; bandejas puestas: %3.</translation>
    </message>
    <message>
        <source>No tray of %1 is bedded then.</source>
        <translation>Ninguna bandeja de %1 tiene cama entonces.</translation>
    </message>
    <message>
        <source>The only tray of %1 is drying in the light then.</source>
        <translation>La única bandeja de %1 se está secando a la luz entonces.</translation>
    </message>
    <message>
        <source>%1 has no tray in storage then; trays that stand: %2.</source>
        <translation>%1 no tiene entonces bandejas guardadas; bandejas puestas: %2.</translation>
    </message>
    <message>
        <source>A rotation needs two trays or more; trays of %1 that stand then: %2.</source>
        <translation>Una rotación necesita dos bandejas o más; bandejas de %1 puestas entonces: %2.</translation>
    </message>
    <message>
        <source>No tray of %1 is drying then, so the harvest must say its slot.</source>
        <translation>Ninguna bandeja de %1 se está secando entonces, así que la cosecha debe indicar su nivel.</translation>
    </message>
    <message>
        <source>The tray in slot %2 of %1 is not drying then.</source>
        <translation>La bandeja del nivel %2 de %1 no se está secando entonces.</translation>
    </message>
    <message>
        <source>No tray of %1 is drying then.</source>
        <translation>Ninguna bandeja de %1 se está secando entonces.</translation>
    </message>
    <message>
        <source>Fewer trays cannot be owned than stand; trays of %1 that stand then: %2.</source>
        <translation>No se pueden tener menos bandejas de las que hay puestas; bandejas de %1 puestas entonces: %2.</translation>
    </message>
    <message>
        <source>Worms cannot be moved from %1 to itself.</source>
        <translation>No se pueden pasar lombrices de %1 a sí misma.</translation>
    </message>
    <message>
        <source>The castings cannot be deeper than the tray, %1.</source>
        <translation>El humus no puede ser más profundo que la bandeja, %1.</translation>
    </message>
    <message>
        <source>An own material belongs to the household and to no stack.</source>
        <translation>Un material propio es del hogar y no de una torre.</translation>
    </message>
    <message>
        <source>«%1» is known neither to the table of materials nor as an own material.</source>
        <translation>«%1» no está en la tabla de materiales ni entre los propios.</translation>
    </message>
    <message>
        <source>The entry is not there any more.</source>
        <translation>La anotación ya no está.</translation>
    </message>
    <message>
        <source>Later entries that now fall to another batch: %1</source>
        <translation>Anotaciones posteriores que ahora pasan a otro lote: %1</translation>
    </message>
    <message>
        <source>%1: a second species in this stack; from here on all its worms are reckoned as %2, not %3.</source>
        <translation>%1: una segunda especie en esta torre; desde aquí todas sus lombrices se calculan como %2, no como %3.</translation>
    </message>
    <message>
        <source>1 to %1</source>
        <translation>de 1 a %1</translation>
    </message>
    <message>
        <source>a stack that has been set up (there is none)</source>
        <translation>una torre ya montada (no hay ninguna)</translation>
    </message>
    <message>
        <source>a stack that has been set up: %1</source>
        <translation>una torre ya montada: %1</translation>
    </message>
    <message>
        <source>%1 or later, behind the first setup of %2</source>
        <translation>%1 o después, tras el primer montaje de %2</translation>
    </message>
    <message>
        <source>a stack that is not retired</source>
        <translation>una torre que no esté dada de baja</translation>
    </message>
    <message>
        <source>a name that no retired stack bears</source>
        <translation>un nombre que no lleve ninguna torre dada de baja</translation>
    </message>
    <message>
        <source>a name without semicolon and control characters, without blanks around it</source>
        <translation>un nombre sin punto y coma ni caracteres de control, sin espacios alrededor</translation>
    </message>
    <message>
        <source>1 or nothing</source>
        <translation>1 o nada</translation>
    </message>
    <message>
        <source>1 to %1, or nothing</source>
        <translation>de 1 a %1, o nada</translation>
    </message>
    <message>
        <source>none: no tray of %1 is bedded then</source>
        <translation>ninguno: ninguna bandeja de %1 tiene cama entonces</translation>
    </message>
    <message>
        <source>%1, said in full: the only tray is drying</source>
        <translation>%1, dicho expresamente: la única bandeja se está secando</translation>
    </message>
    <message>
        <source>%1: no tray is in storage</source>
        <translation>%1: no hay bandejas guardadas</translation>
    </message>
    <message>
        <source>%1, said in full: no tray is drying</source>
        <translation>%1, dicho expresamente: ninguna bandeja se está secando</translation>
    </message>
    <message>
        <source>a step that needs no drying tray: %1</source>
        <translation>un paso que no necesite una bandeja en secado: %1</translation>
    </message>
    <message>
        <source>a step that needs no second tray; trays that stand then: %1</source>
        <translation>un paso que no necesite una segunda bandeja; bandejas puestas entonces: %1</translation>
    </message>
    <message>
        <source>trays=%1 or more: so many stand then</source>
        <translation>trays=%1 o más: tantas hay puestas</translation>
    </message>
    <message>
        <source>to= and the name of another stack</source>
        <translation>to= y el nombre de otra torre</translation>
    </message>
    <message>
        <source>depth=0 to %1</source>
        <translation>depth=de 0 a %1</translation>
    </message>
    <message>
        <source>nothing (an own material is of the household)</source>
        <translation>nada (un material propio es del hogar)</translation>
    </message>
    <message>
        <source>an entry that is there</source>
        <translation>una anotación que exista</translation>
    </message>
    <message>
        <source>%1 has no item</source>
        <translation>%1 no lleva material</translation>
    </message>
    <message>
        <source>the name of an own material, without blanks around it</source>
        <translation>el nombre de un material propio, sin espacios alrededor</translation>
    </message>
    <message>
        <source>a volume, or spigot=open or spigot=shut in detail</source>
        <translation>un volumen, o spigot=open o spigot=shut en el detalle</translation>
    </message>
    <message>
        <source>at least one of depth, bits, left, worms</source>
        <translation>al menos uno de depth, bits, left, worms</translation>
    </message>
    <message>
        <source>lid=on, lid=off</source>
        <translation>lid=on, lid=off</translation>
    </message>
    <message>
        <source>a word such as smell, flies, mites, escape, mould, away</source>
        <translation>una palabra como smell, flies, mites, escape, mould, away</translation>
    </message>
    <message>
        <source>a day not before the row&apos;s own date</source>
        <translation>un día no anterior a la fecha de la propia fila</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>text without control characters</source>
        <translation>texto sin caracteres de control</translation>
    </message>
    <message>
        <source>%1 is of the whole stack</source>
        <translation>%1 es de toda la torre</translation>
    </message>
    <message>
        <source>a whole number from 1 (bottom), or nothing</source>
        <translation>un número entero desde 1 (abajo), o nada</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01T18:30</source>
        <translation>una fecha de 1900 a 2199, como 2031-05-01 o 2031-05-01T18:30</translation>
    </message>
    <message>
        <source>a row that leaves later entries possible; this one stands against entry %1 (%2): %3</source>
        <translation>una fila que deje posibles las anotaciones posteriores; esta choca con la anotación %1 (%2): %3</translation>
    </message>
    <message>
        <source>This is not a table of text: it holds zero bytes. Save it as CSV and try again.</source>
        <translation>Esto no es una tabla de texto: contiene bytes nulos. Guárdala como CSV y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>El archivo está vacío.</translation>
    </message>
    <message>
        <source>The first row, which names the columns, cannot be read: its quote marks are not in order.</source>
        <translation>La primera fila, que nombra las columnas, no se puede leer: sus comillas no cuadran.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 no se puede leer: %2</translation>
    </message>
    <message>
        <source>it is larger than %1 MB.</source>
        <translation>ocupa más de %1 MB.</translation>
    </message>
    <message>
        <source>UTF-8</source>
        <translation>UTF-8</translation>
    </message>
    <message>
        <source>UTF-8 with a mark</source>
        <translation>UTF-8 con marca</translation>
    </message>
    <message>
        <source>UTF-16</source>
        <translation>UTF-16</translation>
    </message>
    <message>
        <source>not UTF-8, so read as Latin-1</source>
        <translation>no es UTF-8, así que se leyó como Latin-1</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>torre</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>qué se hizo</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>nivel</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unidad</translation>
    </message>
    <message>
        <source>material or word</source>
        <translation>material o palabra</translation>
    </message>
    <message>
        <source>details</source>
        <translation>detalles</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>rows that leave the entries of the journal possible</source>
        <translation>filas que dejen posibles las anotaciones del diario</translation>
    </message>
    <message>
        <source>line</source>
        <translation>línea</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>%1 cells, as the first row has; there are %2</source>
        <translation>%1 celdas, como la primera fila; hay %2</translation>
    </message>
    <message>
        <source>a year of four digits, or the answer which century is meant</source>
        <translation>un año de cuatro cifras, o decir de qué siglo se trata</translation>
    </message>
    <message>
        <source>a date that can be read in one way alone, or the answer which of day and month comes first</source>
        <translation>una fecha que se lea de una sola manera, o decir si va primero el día o el mes</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01 18:30</source>
        <translation>una fecha de 1900 a 2199, como 2031-05-01 o 2031-05-01 18:30</translation>
    </message>
    <message>
        <source>the answer whether its mark is a decimal mark</source>
        <translation>decir si su signo es el decimal</translation>
    </message>
    <message>
        <source>a number with a comma as decimal mark, such as 0,35</source>
        <translation>un número con coma decimal, como 0,35</translation>
    </message>
    <message>
        <source>a number with a point as decimal mark, such as 0.35</source>
        <translation>un número con punto decimal, como 0.35</translation>
    </message>
    <message>
        <source>a unit, or the answer in which unit the amounts are</source>
        <translation>una unidad, o decir en qué unidad están las cantidades</translation>
    </message>
    <message>
        <source>a number, such as 0.35</source>
        <translation>un número, como 0.35</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. What was there before is unchanged.</source>
        <translation>%1 no se pudo escribir: %2. Lo que había antes no cambia.</translation>
    </message>
    <message>
        <source>%1 was written, but the disk did not confirm it.</source>
        <translation>%1 se escribió, pero el disco no lo confirmó.</translation>
    </message>
    <message>
        <source>at least one of bin, air, rh, moisture, squeeze, ph, sump</source>
        <translation>al menos uno de bin, air, rh, moisture, squeeze, ph, sump</translation>
    </message>
    <message>
        <source>%1 is a household file or another database, and was left as it is. Choose another name.</source>
        <translation>%1 es un archivo de hogar u otra base de datos, y quedó como estaba. Elige otro nombre.</translation>
    </message>
    <message>
        <source>an amount, which is missing</source>
        <translation>una cantidad; falta</translation>
    </message>
    <message>
        <source>«%1» of %2</source>
        <translation>«%1» del %2</translation>
    </message>
    <message>
        <source>«%1» of %2, %3</source>
        <translation>«%1» del %2, %3</translation>
    </message>
    <message>
        <source>%1 would not be possible any more: %2 Delete or change that entry first.</source>
        <translation>%1 ya no sería posible: %2 Borra o cambia primero esa entrada.</translation>
    </message>
    <message>
        <source>today or a day before: this day has not come</source>
        <translation>hoy o un día anterior: ese día aún no ha llegado</translation>
    </message>
    <message>
        <source>Taken as usual, since the imported table does not say it; put right what was otherwise</source>
        <translation>Se toma lo habitual, pues la tabla importada no lo dice; corrige lo que fuera distinto</translation>
    </message>
    <message>
        <source>text in UTF-8; this may be Latin-1</source>
        <translation>texto en UTF-8; esto puede ser Latin-1</translation>
    </message>
    <message>
        <source>text in UTF-16</source>
        <translation>texto en UTF-16</translation>
    </message>
    <message>
        <source>cells parted by commas (,); in this file semicolons (;) part them</source>
        <translation>celdas separadas por comas (,); en este archivo las separan puntos y comas (;)</translation>
    </message>
    <message>
        <source>cells parted by commas (,); in this file tabs part them</source>
        <translation>celdas separadas por comas (,); en este archivo las separan tabuladores</translation>
    </message>
    <message>
        <source>a header with %1 as the first row; this one is an entry</source>
        <translation>una cabecera con %1 como primera fila; esta es una anotación</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
</context>
<context>
    <name>FeedBody</name>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>How much was fed?</source>
        <translation>¿Cuánto alimento?</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimento</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>back</source>
        <translation>detrás</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>por todas partes</translation>
    </message>
    <message>
        <source>Covered with paper</source>
        <translation>Cubierto con papel</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Cubierta</translation>
    </message>
    <message>
        <source>How much paper?</source>
        <translation>¿Cuánto papel?</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>about %1 by its bulk</source>
        <translation>unos %1 según su densidad</translation>
    </message>
</context>
<context>
    <name>FigureWords</name>
    <message>
        <source>%1 to %2</source>
        <comment>a range of numbers</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1 cm</source>
        <translation>%1 cm</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>one day</source>
        <translation>un día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 meses</translation>
    </message>
    <message>
        <source>%1 °C</source>
        <translation>%1 °C</translation>
    </message>
    <message>
        <source>%1 mS/cm</source>
        <translation>%1 mS/cm</translation>
    </message>
    <message>
        <source>%1 kg/m²</source>
        <translation>%1 kg/m²</translation>
    </message>
    <message>
        <source>%1 kg/m³</source>
        <translation>%1 kg/m³</translation>
    </message>
    <message>
        <source>%1 g/L</source>
        <translation>%1 g/L</translation>
    </message>
    <message>
        <source>%1°</source>
        <translation>%1°</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>segunda mano</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>memoria</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>propio</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>Worms for a first tray</source>
        <translation>Lombrices para una primera bandeja</translation>
    </message>
    <message>
        <source>Bedding of a new tray, laid</source>
        <translation>Cama de una bandeja nueva, puesta</translation>
    </message>
    <message>
        <source>Days between feedings</source>
        <translation>Días entre aportes</translation>
    </message>
    <message>
        <source>Fresh food a day, of the mass of the worms</source>
        <translation>Alimento fresco al día, respecto a la masa de las lombrices</translation>
    </message>
    <message>
        <source>First tray alone</source>
        <translation>Primera bandeja sola</translation>
    </message>
    <message>
        <source>Castings before another tray</source>
        <translation>Humus antes de otra bandeja</translation>
    </message>
    <message>
        <source>Second tray alone on top, at least</source>
        <translation>Segunda bandeja sola arriba, al menos</translation>
    </message>
    <message>
        <source>First harvest, days from the first bedding</source>
        <translation>Primera cosecha, días desde la primera cama</translation>
    </message>
    <message>
        <source>Between later harvests</source>
        <translation>Entre cosechas posteriores</translation>
    </message>
    <message>
        <source>Water to paper, by weight</source>
        <translation>Agua por papel, en peso</translation>
    </message>
    <message>
        <source>Bedding wetted, of what it holds</source>
        <translation>Cama mojada, de lo que retiene</translation>
    </message>
    <message>
        <source>Moisture of a bed</source>
        <translation>Humedad de un lecho</translation>
    </message>
    <message>
        <source>Moisture of a bed, best</source>
        <translation>Humedad de un lecho, la mejor</translation>
    </message>
    <message>
        <source>C:N of what is fed</source>
        <translation>C:N de lo que se aporta</translation>
    </message>
    <message>
        <source>C:N aimed at</source>
        <translation>C:N buscada</translation>
    </message>
    <message>
        <source>Comfortable temperatures</source>
        <translation>Temperaturas cómodas</translation>
    </message>
    <message>
        <source>Growth stops below</source>
        <translation>El crecimiento se detiene por debajo de</translation>
    </message>
    <message>
        <source>Growth is fastest at</source>
        <translation>El crecimiento es más rápido a</translation>
    </message>
    <message>
        <source>Growth stops above</source>
        <translation>El crecimiento se detiene por encima de</translation>
    </message>
    <message>
        <source>Worms die of heat from</source>
        <translation>Las lombrices mueren de calor desde</translation>
    </message>
    <message>
        <source>Worms die of cold near</source>
        <translation>Las lombrices mueren de frío cerca de</translation>
    </message>
    <message>
        <source>Weight of a litre of moist castings</source>
        <translation>Peso de un litro de humus húmedo</translation>
    </message>
    <message>
        <source>Worms on a floor, best</source>
        <translation>Lombrices por superficie, lo mejor</translation>
    </message>
    <message>
        <source>Ready: feed-to-cast at most</source>
        <translation>Lista: alimento/humus como máximo</translation>
    </message>
    <message>
        <source>Ready: castings at least</source>
        <translation>Lista: humus al menos</translation>
    </message>
    <message>
        <source>Nearly ready: feed-to-cast at most</source>
        <translation>Casi lista: alimento/humus como máximo</translation>
    </message>
    <message>
        <source>Filled: castings at least</source>
        <translation>Completa: humus al menos</translation>
    </message>
    <message>
        <source>Filled: feed-to-cast at most</source>
        <translation>Completa: alimento/humus como máximo</translation>
    </message>
    <message>
        <source>Room kept under the rim</source>
        <translation>Espacio libre bajo el borde</translation>
    </message>
    <message>
        <source>Overdue after turn and ready</source>
        <translation>Atrasada tras estar lista y con turno</translation>
    </message>
    <message>
        <source>A tray is told ready at a chance of</source>
        <translation>Una bandeja se da por lista con probabilidad de</translation>
    </message>
    <message>
        <source>and no longer at</source>
        <translation>y deja de darse por lista con</translation>
    </message>
    <message>
        <source>Light-drying</source>
        <translation>Secado a la luz</translation>
    </message>
    <message>
        <source>Worms left when castings are taken</source>
        <translation>Lombrices que quedan al retirar el humus</translation>
    </message>
    <message>
        <source>Worms in the sump</source>
        <translation>Lombrices en el depósito</translation>
    </message>
    <message>
        <source>Days between drainings</source>
        <translation>Días entre drenajes</translation>
    </message>
    <message>
        <source>Drain before the sump is filled to</source>
        <translation>Drenar antes de que el depósito esté lleno al</translation>
    </message>
    <message>
        <source>A stack can be left alone for</source>
        <translation>Una torre puede quedarse sola durante</translation>
    </message>
    <message>
        <source>Of a colony given away at once, at most</source>
        <translation>De una colonia, regalado de una vez, como máximo</translation>
    </message>
    <message>
        <source>A colony doubles in</source>
        <translation>Una colonia se duplica en</translation>
    </message>
    <message>
        <source>Dry matter put in for one of castings</source>
        <translation>Materia seca aportada por una de humus</translation>
    </message>
    <message>
        <source>Cocoons of a worm in a week</source>
        <translation>Capullos de una lombriz por semana</translation>
    </message>
    <message>
        <source>A cocoon hatches after</source>
        <translation>Un capullo eclosiona a los</translation>
    </message>
    <message>
        <source>Young of a cocoon</source>
        <translation>Crías por capullo</translation>
    </message>
    <message>
        <source>Second light-drying after</source>
        <translation>Segundo secado a la luz tras</translation>
    </message>
    <message>
        <source>A bait tray stands for</source>
        <translation>Una bandeja con cebo se deja</translation>
    </message>
    <message>
        <source>Castings in a potting mix, by volume</source>
        <translation>Humus en un sustrato, en volumen</translation>
    </message>
    <message>
        <source>Castings in a potting mix, at most</source>
        <translation>Humus en un sustrato, como máximo</translation>
    </message>
    <message>
        <source>Depth of a top-dressing</source>
        <translation>Espesor de la capa superficial</translation>
    </message>
    <message>
        <source>Top-dressing again after</source>
        <translation>Nueva capa superficial tras</translation>
    </message>
    <message>
        <source>Mesh of a sieve</source>
        <translation>Malla de un tamiz</translation>
    </message>
    <message>
        <source>Moisture of stored castings</source>
        <translation>Humedad del humus guardado</translation>
    </message>
    <message>
        <source>Castings keep for</source>
        <translation>El humus se conserva</translation>
    </message>
    <message>
        <source>Bulk of castings, dry</source>
        <translation>Densidad del humus, en seco</translation>
    </message>
    <message>
        <source>Moisture of castings as taken</source>
        <translation>Humedad del humus al retirarlo</translation>
    </message>
    <message>
        <source>Strength of leachate</source>
        <translation>Fuerza del lixiviado</translation>
    </message>
    <message>
        <source>Strength harmless to worms</source>
        <translation>Fuerza inocua para las lombrices</translation>
    </message>
    <message>
        <source>Strength harmful to worms</source>
        <translation>Fuerza dañina para las lombrices</translation>
    </message>
    <message>
        <source>Salts for each mS/cm</source>
        <translation>Sales por cada mS/cm</translation>
    </message>
    <message>
        <source>Diluted for young plants</source>
        <translation>Diluido para plantas jóvenes</translation>
    </message>
    <message>
        <source>Diluted for grown plants</source>
        <translation>Diluido para plantas adultas</translation>
    </message>
    <message>
        <source>Strength of tap water</source>
        <translation>Fuerza del agua del grifo</translation>
    </message>
    <message>
        <source>Use leachate within</source>
        <translation>Usar el lixiviado en</translation>
    </message>
    <message>
        <source>Lifting: weight at the best posture</source>
        <translation>Levantar: peso en la mejor postura</translation>
    </message>
    <message>
        <source>Lifting: reach of the best posture</source>
        <translation>Levantar: alcance de la mejor postura</translation>
    </message>
    <message>
        <source>Lifting: farthest reach</source>
        <translation>Levantar: alcance máximo</translation>
    </message>
    <message>
        <source>Lifting: height of the best posture</source>
        <translation>Levantar: altura de la mejor postura</translation>
    </message>
    <message>
        <source>Lifting: lost for each cm of height beside it</source>
        <translation>Levantar: pérdida por cada cm de altura fuera de ella</translation>
    </message>
    <message>
        <source>Lifting: greatest height</source>
        <translation>Levantar: altura máxima</translation>
    </message>
    <message>
        <source>Lifting: least travel reckoned</source>
        <translation>Levantar: recorrido mínimo calculado</translation>
    </message>
    <message>
        <source>Lifting: share that travel leaves</source>
        <translation>Levantar: parte que deja el recorrido</translation>
    </message>
    <message>
        <source>Lifting: travel at which the rest is lost</source>
        <translation>Levantar: recorrido en que se pierde el resto</translation>
    </message>
    <message>
        <source>Lifting: farthest travel</source>
        <translation>Levantar: recorrido máximo</translation>
    </message>
    <message>
        <source>Lifting: lost for each degree of twist</source>
        <translation>Levantar: pérdida por cada grado de giro</translation>
    </message>
    <message>
        <source>Lifting: greatest twist</source>
        <translation>Levantar: giro máximo</translation>
    </message>
    <message>
        <source>Lifting: a rim for a grip, held low</source>
        <translation>Levantar: borde como agarre, sujeto abajo</translation>
    </message>
    <message>
        <source>Lifting: a poor grip</source>
        <translation>Levantar: agarre malo</translation>
    </message>
    <message>
        <source>Lifting: from the ankles to a box</source>
        <translation>Levantar: de los tobillos a una caja</translation>
    </message>
    <message>
        <source>Weight of an empty tray</source>
        <translation>Peso de una bandeja vacía</translation>
    </message>
    <message>
        <source>Sour below a pH of</source>
        <translation>Ácido con un pH menor de</translation>
    </message>
    <message>
        <source>Calcium carbonate for a sour bed, on a square metre</source>
        <translation>Carbonato de calcio para un lecho ácido, por metro cuadrado</translation>
    </message>
    <message>
        <source>From egg to fly</source>
        <translation>De huevo a mosca</translation>
    </message>
    <message>
        <source>Members of the ensemble</source>
        <translation>Miembros del conjunto</translation>
    </message>
    <message>
        <source>Share of what is possible that a range holds</source>
        <translation>Parte de lo posible que abarca un intervalo</translation>
    </message>
    <message>
        <source>Time in which parameters go back to their ranges</source>
        <translation>Tiempo en que los parámetros vuelven a sus intervalos</translation>
    </message>
    <message>
        <source>How fast a mix softens: temperature of the bed</source>
        <translation>Cuánto tarda en ablandarse una mezcla: temperatura del lecho</translation>
    </message>
    <message>
        <source>How fast a mix softens: worms in the bed</source>
        <translation>Cuánto tarda en ablandarse una mezcla: lombrices en el lecho</translation>
    </message>
    <message>
        <source>Mix: moisture this near to the aim will do</source>
        <translation>Mezcla: basta con que la humedad esté así de cerca del objetivo</translation>
    </message>
    <message>
        <source>Mix: most that is added, times the mix</source>
        <translation>Mezcla: lo máximo que se añade, veces la mezcla</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: indoors</source>
        <translation>Un lecho a lo largo del año, como se propone: dentro de casa</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: garage, shed or porch</source>
        <translation>Un lecho a lo largo del año, como se propone: garaje, cobertizo o porche</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: outdoors</source>
        <translation>Un lecho a lo largo del año, como se propone: al aire libre</translation>
    </message>
</context>
<context>
    <name>FlushBody</name>
    <message>
        <source>Water poured</source>
        <translation>Agua vertida</translation>
    </message>
    <message>
        <source>How much water went through?</source>
        <translation>¿Cuánta agua pasó?</translation>
    </message>
    <message>
        <source>spigot shut, water through, everything drained at once</source>
        <translation>grifo cerrado, agua a través, todo drenado de una vez</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Drenado</translation>
    </message>
</context>
<context>
    <name>FoodDoubt</name>
    <message>
        <source>That is %1, and the stack takes no more food today, for what was given these days: it takes more within the week.</source>
        <translation>Son %1, y la torre no tolera hoy más alimento, por lo que recibió estos días: tolerará más dentro de la semana.</translation>
    </message>
    <message>
        <source>That is %1, and the stack takes no more food this week.</source>
        <translation>Son %1, y la torre no tolera más alimento esta semana.</translation>
    </message>
    <message>
        <source>That is %1. The stack takes at most %2 today, for what was given these days: more within the week.</source>
        <translation>Son %1. La torre tolera hoy como máximo %2, por lo que recibió estos días: más dentro de la semana.</translation>
    </message>
    <message>
        <source>That is %1. The stack takes at most %2 this week.</source>
        <translation>Son %1. La torre tolera esta semana como máximo %2.</translation>
    </message>
    <message>
        <source>That is %1, and nothing more finds room in the tray: look at the amount and its unit.</source>
        <translation>Son %1, y no cabe nada más en la bandeja: revisa la cantidad y su unidad.</translation>
    </message>
    <message>
        <source>That is %1. Only about %2 find room in the tray, which holds %3 in all: look at the amount and its unit.</source>
        <translation>Son %1. Solo caben unos %2 en la bandeja, que tiene %3 en total: revisa la cantidad y su unidad.</translation>
    </message>
    <message>
        <source>By the estimates food is better left out now. %1</source>
        <translation>Según las estimaciones es mejor no dar alimento ahora. %1</translation>
    </message>
</context>
<context>
    <name>FormKinds</name>
    <message>
        <source>Feed</source>
        <translation>Alimentar</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Cubrir</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Regar</translation>
    </message>
    <message>
        <source>Unwritten routine</source>
        <translation>Rutina sin anotar</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drenar</translation>
    </message>
    <message>
        <source>Flush</source>
        <translation>Enjuagar</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Check a tray</source>
        <translation>Mirar una bandeja</translation>
    </message>
    <message>
        <source>Weigh worms</source>
        <translation>Pesar lombrices</translation>
    </message>
    <message>
        <source>Count worms</source>
        <translation>Contar lombrices</translation>
    </message>
    <message>
        <source>Weigh a tray</source>
        <translation>Pesar una bandeja</translation>
    </message>
    <message>
        <source>Lift the bottom tray</source>
        <translation>Subir la bandeja inferior</translation>
    </message>
    <message>
        <source>Loosen the castings</source>
        <translation>Aflojar el humus</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Tapa</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Cosecha</translation>
    </message>
    <message>
        <source>Add a tray</source>
        <translation>Añadir una bandeja</translation>
    </message>
    <message>
        <source>Add bedding</source>
        <translation>Añadir cama</translation>
    </message>
    <message>
        <source>Put worms in</source>
        <translation>Meter lombrices</translation>
    </message>
    <message>
        <source>Take worms out</source>
        <translation>Sacar lombrices</translation>
    </message>
    <message>
        <source>Move worms</source>
        <translation>Pasar lombrices</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Pasó algo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Retire the stack</source>
        <translation>Dar de baja la torre</translation>
    </message>
    <message>
        <source>Change the stack</source>
        <translation>Cambiar la torre</translation>
    </message>
    <message>
        <source>Own material</source>
        <translation>Material propio</translation>
    </message>
    <message>
        <source>feeding</source>
        <translation>aporte</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>watering</source>
        <translation>riego</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>rutina</translation>
    </message>
    <message>
        <source>drainage</source>
        <translation>drenaje</translation>
    </message>
    <message>
        <source>flush</source>
        <translation>enjuague</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>lectura</translation>
    </message>
    <message>
        <source>look into a tray</source>
        <translation>mirada a una bandeja</translation>
    </message>
    <message>
        <source>weighing of worms</source>
        <translation>pesada de lombrices</translation>
    </message>
    <message>
        <source>count of worms</source>
        <translation>recuento de lombrices</translation>
    </message>
    <message>
        <source>weight of a tray</source>
        <translation>peso de una bandeja</translation>
    </message>
    <message>
        <source>lift of the bottom tray</source>
        <translation>subida de la bandeja inferior</translation>
    </message>
    <message>
        <source>loosening</source>
        <translation>aflojado</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>tapa</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>cosecha</translation>
    </message>
    <message>
        <source>new tray</source>
        <translation>bandeja nueva</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>worms put in</source>
        <translation>lombrices metidas</translation>
    </message>
    <message>
        <source>worms taken out</source>
        <translation>lombrices sacadas</translation>
    </message>
    <message>
        <source>worms moved</source>
        <translation>lombrices pasadas</translation>
    </message>
    <message>
        <source>event</source>
        <translation>suceso</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>end of the stack</source>
        <translation>fin de la torre</translation>
    </message>
    <message>
        <source>change of the stack</source>
        <translation>cambio de la torre</translation>
    </message>
    <message>
        <source>own material</source>
        <translation>material propio</translation>
    </message>
</context>
<context>
    <name>Formats</name>
    <message>
        <source>%1&#xa0;%2</source>
        <translation>%1&#xa0;%2</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>fl oz</source>
        <translation>fl oz</translation>
    </message>
    <message>
        <source>%1–%2</source>
        <translation>%1–%2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>%1&#xa0;%</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1/wk</source>
        <translation>%1/sem</translation>
    </message>
    <message>
        <source>no castings yet</source>
        <translation>aún sin humus</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>sq ft</translation>
    </message>
    <message>
        <source>m²</source>
        <translation>m²</translation>
    </message>
    <message>
        <source>L/m²</source>
        <translation>L/m²</translation>
    </message>
    <message>
        <source>gal/sq ft</source>
        <translation>gal/sq ft</translation>
    </message>
    <message>
        <source>lb/cu ft</source>
        <translation>lb/cu ft</translation>
    </message>
    <message>
        <source>kg/m³</source>
        <translation>kg/m³</translation>
    </message>
    <message>
        <source>lb/sq ft</source>
        <translation>lb/sq ft</translation>
    </message>
    <message>
        <source>kg/m²</source>
        <translation>kg/m²</translation>
    </message>
    <message>
        <source>oz/gal</source>
        <translation>oz/gal</translation>
    </message>
    <message>
        <source>g/L</source>
        <translation>g/L</translation>
    </message>
    <message>
        <source>oz/d</source>
        <translation>oz/d</translation>
    </message>
    <message>
        <source>g/d</source>
        <translation>g/d</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, one of it</comment>
        <translation>taza</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, behind 0.5 or 1.75</comment>
        <translation>tazas</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, behind 2 and more</comment>
        <translation>tazas</translation>
    </message>
</context>
<context>
    <name>GainWords</name>
    <message>
        <source>%1 sooner</source>
        <translation>%1 antes</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 después</translation>
    </message>
    <message>
        <source>%1 heavier</source>
        <translation>%1 más</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 menos</translation>
    </message>
    <message>
        <source>%1 (up to %2)</source>
        <comment>no difference, 3 days sooner</comment>
        <translation>%1 (hasta %2)</translation>
    </message>
    <message>
        <source>%1 (from %2 to %3)</source>
        <comment>3 days sooner, 1 day later, 9 days sooner</comment>
        <translation>%1 (de %2 a %3)</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>10 g lighter, 30 g heavier</comment>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>waiting costs %1 of worms</source>
        <translation>la espera cuesta %1 de lombrices</translation>
    </message>
    <message>
        <source>waiting leaves %1 more of worms</source>
        <translation>la espera deja %1 más de lombrices</translation>
    </message>
    <message>
        <source>from %1 more to %2 fewer</source>
        <comment>amounts of worms</comment>
        <translation>de %1 más a %2 menos</translation>
    </message>
    <message>
        <source>waiting costs %1 of worms (%2)</source>
        <comment>amount, range in words</comment>
        <translation>la espera cuesta %1 de lombrices (%2)</translation>
    </message>
    <message>
        <source>waiting leaves %1 more of worms (%2)</source>
        <comment>amount, range in words</comment>
        <translation>la espera deja %1 más de lombrices (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of lifting fewer</source>
        <translation>
            <numerusform>%n día de subir bandejas menos</numerusform>
            <numerusform>%n días de subir bandejas menos</numerusform>
        </translation>
    </message>
    <message>
        <source>Gathered: %1, for %2 of delay in all; none waits more than %3 for others.</source>
        <translation>Agrupadas: %1, con %2 de retraso en total; ninguna espera a las demás más de %3.</translation>
    </message>
    <message>
        <source>Gathered: %1, and none waits.</source>
        <translation>Agrupadas: %1, y ninguna espera.</translation>
    </message>
    <message>
        <source>Nothing can be gathered: harvests of two stacks meet, and only one stack has any.</source>
        <translation>No hay nada que agrupar: se juntan cosechas de dos torres, y solo una las tiene.</translation>
    </message>
    <message>
        <source>Nothing is left to be gathered: the harvests meet as they come.</source>
        <translation>No queda nada que agrupar: las cosechas ya coinciden.</translation>
    </message>
    <message>
        <source>Nothing can be gathered: the two harvests that come nearest to each other are %1 apart, and none may wait more than %2.</source>
        <translation>No hay nada que agrupar: las dos cosechas más cercanas distan %1, y ninguna puede esperar más de %2.</translation>
    </message>
    <message>
        <source>Nothing is gathered: a day saved is worth %1 of delay here, and the wait, with what it holds up in its stack, would come to more.</source>
        <translation>No se agrupa nada: un día ahorrado vale aquí %1 de retraso, y la espera, con todo lo que retrasa en su torre, costaría más.</translation>
    </message>
</context>
<context>
    <name>Handbook</name>
    <message>
        <source>A stack is a pile of trays with holes in their floors, over a drainage tray, under a lid. Worms live in all of it. You feed the highest tray; what they have eaten stays behind as castings; when the top tray holds mostly castings, the next tray goes on top, and when there is no tray left, the bottom one is emptied.</source>
        <translation>Una torre es una pila de bandejas con agujeros en el suelo, sobre una bandeja de drenaje y bajo una tapa. En toda ella viven lombrices. Se alimenta la bandeja más alta; lo que han comido queda como humus; cuando la superior tiene sobre todo humus, se pone encima la siguiente, y cuando ya no quedan bandejas, se vacía la de abajo.</translation>
    </message>
    <message>
        <source>Everything else follows from one rule: nobody can see inside a tray. What is known is what went in, what ran out and a look now and then. Write these down, and the program says how far each tray is, and how sure it is.</source>
        <translation>Todo lo demás sale de una regla: nadie puede ver dentro de una bandeja. Se sabe lo que entró, lo que salió y lo que se vio al mirar de vez en cuando. Anótalo, y el programa dice por dónde va cada bandeja y con qué seguridad.</translation>
    </message>
    <message>
        <source>Where to go from here</source>
        <translation>Por dónde seguir</translation>
    </message>
    <message>
        <source>You have no stack yet: [[start|starting a stack]].</source>
        <translation>Aún no tienes torre: [[start|empezar una torre]].</translation>
    </message>
    <message>
        <source>You have one, and wonder what to do: [[feeding|feeding]], [[bedding|bedding]], [[water|water and drainage]].</source>
        <translation>Tienes una y no sabes qué hacer: [[feeding|alimentar]], [[bedding|cama]], [[water|agua y drenaje]].</translation>
    </message>
    <message>
        <source>A tray looks full: [[add-tray|when to add a tray]], [[harvest|rotation and harvest]], [[use|using castings and leachate]].</source>
        <translation>Una bandeja parece llena: [[add-tray|cuándo añadir una bandeja]], [[harvest|rotación y cosecha]], [[use|usar el humus y el lixiviado]].</translation>
    </message>
    <message>
        <source>Something smells, flies or dies: [[symptoms|what may be wrong]], put in order by what is known of your stack.</source>
        <translation>Algo huele, vuela o muere: [[symptoms|qué puede ir mal]], ordenado según lo que se sabe de tu torre.</translation>
    </message>
    <message>
        <source>You want to know how the estimates are made: [[inside|what is inside the model]].</source>
        <translation>Quieres saber cómo se hacen las estimaciones: [[inside|qué hay dentro del modelo]].</translation>
    </message>
    <message>
        <source>A first tray, some bedding and a few handfuls of worms are enough. Begin with one tray alone; the others wait.</source>
        <translation>Bastan una primera bandeja, algo de cama y unos puñados de lombrices. Empieza con una sola bandeja; las demás esperan.</translation>
    </message>
    <message>
        <source>Stand the drainage tray level, with one tray on it. Leave the spigot open over a jar, or shut it and look at it each week.</source>
        <translation>Pon la bandeja de drenaje nivelada, con una bandeja encima. Deja el grifo abierto sobre un frasco, o ciérralo y míralo cada semana.</translation>
    </message>
    <message>
        <source>Lay bedding {bedding-depth} deep, wetted like a wrung-out sponge. [[bedding|How much that is]].</source>
        <translation>Pon cama con un espesor de {bedding-depth}, mojada como una esponja escurrida. [[bedding|Cuánta es]].</translation>
    </message>
    <message>
        <source>Put in {stock} of composting worms. They go down by themselves when it is light.</source>
        <translation>Mete {stock} de lombrices de compost. Bajan solas cuando hay luz.</translation>
    </message>
    <message>
        <source>Feed a little after a day or two, under paper. Close the lid.</source>
        <translation>Alimenta un poco pasados uno o dos días, bajo papel. Cierra la tapa.</translation>
    </message>
    <message>
        <source>A small stock is no mistake. Everything takes longer: the first tray stays alone for {first-tray-alone}, and with few worms nearer to the end of that.</source>
        <translation>Empezar con pocas lombrices no es un error. Todo tarda más: la primera bandeja está sola {first-tray-alone}, y con pocas lombrices más cerca del final de ese plazo.</translation>
    </message>
    <message>
        <source>The first weeks</source>
        <translation>Las primeras semanas</translation>
    </message>
    <message>
        <source>Some worms climb the walls in the first nights. Leave a light on and the lid closed; they settle.</source>
        <translation>Algunas lombrices trepan por las paredes las primeras noches. Deja una luz encendida y la tapa cerrada; se calman.</translation>
    </message>
    <message>
        <source>Nothing much seems to happen. Food has to soften before worms can eat it, and it softens faster the more worms there are.</source>
        <translation>No parece que pase gran cosa. El alimento tiene que ablandarse antes de que las lombrices puedan comerlo, y se ablanda más deprisa cuantas más haya.</translation>
    </message>
    <message>
        <source>Bits of bedding stay visible for months. That is how it should be.</source>
        <translation>Los trozos de cama se ven durante meses. Así debe ser.</translation>
    </message>
    <message>
        <source>Feed every {feed-every} or so, in the highest tray, no more than is nearly gone by the next time. Cover each feeding with paper.</source>
        <translation>Alimenta cada {feed-every} más o menos, en la bandeja más alta, no más de lo que casi desaparezca para la vez siguiente. Cubre cada aporte con papel.</translation>
    </message>
    <message>
        <source>Composting worms eat about {feed-share} of their own mass of fresh food a day when they have time to get at it. A new stack eats less: the colony is small, and what it eats has to soften first. The program reckons from your journal what each stack can take this week.</source>
        <translation>Las lombrices de compost comen al día alrededor de {feed-share} de su propia masa en alimento fresco, cuando les da tiempo. Una torre nueva come menos: la colonia es pequeña y lo que come tiene que ablandarse primero. El programa calcula con tu diario cuánto admite cada torre esta semana.</translation>
    </message>
    <message>
        <source>How to feed</source>
        <translation>Cómo alimentar</translation>
    </message>
    <message>
        <source>Lift the paper and look. If most of the last feeding still lies there, wait.</source>
        <translation>Levanta el papel y mira. Si queda casi todo el último aporte, espera.</translation>
    </message>
    <message>
        <source>Put the food in one place, in a flat layer, and change the side from time to time.</source>
        <translation>Pon el alimento en un solo sitio, en capa plana, y cambia de lado de vez en cuando.</translation>
    </message>
    <message>
        <source>Cover it with a sheet or a handful of shredded paper. It keeps flies out, takes up wet and gives carbon.</source>
        <translation>Cúbrelo con una hoja o un puñado de papel triturado. Evita moscas, absorbe humedad y da carbono.</translation>
    </message>
    <message>
        <source>Write it down: one click on Feed takes the usual amount, for today.</source>
        <translation>Anótalo: un clic en Alimentar anota la cantidad habitual, hoy.</translation>
    </message>
    <message>
        <source>What to feed</source>
        <translation>Qué dar</translation>
    </message>
    <message>
        <source>Vegetable and fruit scraps, coffee grounds, tea leaves, crushed eggshell. Cut or frozen and thawed scraps soften faster. The whole list, each with its reason, is on the Materials page.</source>
        <translation>Restos de verdura y fruta, posos de café, hojas de té, cáscara de huevo machacada. Los restos cortados, o congelados y descongelados, se ablandan antes. La lista entera, con sus razones, está en la página Materiales.</translation>
    </message>
    <message>
        <source>Too much food harms in three ways: it takes the air while it rots, it heats, and it sinks together and holds water. A stack that was fed too little loses nothing but time.</source>
        <translation>Demasiado alimento daña de tres maneras: al pudrirse gasta el aire, se calienta, y se apelmaza y retiene agua. Una torre que recibió poco solo pierde tiempo.</translation>
    </message>
    <message>
        <source>A bed gone sour (a sharp smell, pH below {sour-below}): stop feeding, loosen it, and strew {lime} of calcium carbonate or crushed eggshell over a square metre, once.</source>
        <translation>Un lecho que se ha vuelto ácido (olor penetrante, pH menor de {sour-below}): deja de alimentar, aflójalo y esparce una vez {lime} de carbonato de calcio o cáscara de huevo machacada por metro cuadrado.</translation>
    </message>
    <message>
        <source>Bedding is the house of the worms and half of their food: shredded cardboard or paper, leaves, coir, shavings. A new tray takes a layer of {bedding-depth}.</source>
        <translation>La cama es la casa de las lombrices y la mitad de su alimento: cartón o papel triturado, hojas, fibra de coco, virutas. Una bandeja nueva lleva una capa de {bedding-depth}.</translation>
    </message>
    <message>
        <source>Shred it to finger width; whole sheets lie like a roof and let nothing through.</source>
        <translation>Tritúrala al ancho de un dedo; las hojas enteras hacen de tejado y no dejan pasar nada.</translation>
    </message>
    <message>
        <source>Wet it until a handful, pressed hard, gives a few drops. Paper takes about {paper-water} of water by weight.</source>
        <translation>Mójala hasta que un puñado bien apretado suelte unas gotas. El papel toma alrededor de {paper-water} de agua en peso.</translation>
    </message>
    <message>
        <source>Lay it loosely. It settles to half its height in a week.</source>
        <translation>Ponla suelta. En una semana baja a la mitad de su altura.</translation>
    </message>
    <message>
        <source>The Materials page reckons from floor and depth how much dry bedding and how many litres of water that is, for a tray of your stack.</source>
        <translation>La página Materiales calcula, con la superficie y el espesor, cuánta cama seca y cuántos litros de agua son, para una bandeja de tu torre.</translation>
    </message>
    <message>
        <source>Which one</source>
        <translation>Cuál</translation>
    </message>
    <message>
        <source>Cardboard and paper soften within months and turn into castings.</source>
        <translation>El cartón y el papel se ablandan en unos meses y se vuelven humus.</translation>
    </message>
    <message>
        <source>Leaves, straw: much the same, and they bring life of their own.</source>
        <translation>Hojas, paja: casi lo mismo, y traen vida propia.</translation>
    </message>
    <message>
        <source>Coir and shavings hold air and water, and most of them stay: use them as they are or sift them out.</source>
        <translation>La fibra de coco y las virutas guardan aire y agua, y casi todas se quedan: úsalas como están o tamízalas.</translation>
    </message>
    <message>
        <source>A good bed is wet and drips not: moisture of {moisture-range}, best {moisture-best}. Scraps are mostly water and often enough; coir and cardboard in a warm room need some.</source>
        <translation>Un buen lecho está mojado y no gotea: humedad de {moisture-range}, la mejor {moisture-best}. Los restos son casi todo agua y suelen bastar; la fibra de coco y el cartón en un cuarto templado necesitan algo más.</translation>
    </message>
    <message>
        <source>How wet is it</source>
        <translation>Cómo saber si está mojado</translation>
    </message>
    <message>
        <source>Press a handful hard. Nothing comes: too dry. A few drops: right. A stream: too wet.</source>
        <translation>Aprieta fuerte un puñado. No sale nada: demasiado seco. Unas gotas: bien. Un chorro: demasiado mojado.</translation>
    </message>
    <message>
        <source>Dry, pale paper under the cover: too dry. Worms in the lid, a sour smell, a shining surface: too wet.</source>
        <translation>Papel seco y pálido bajo la cubierta: demasiado seco. Lombrices en la tapa, olor ácido, superficie brillante: demasiado mojado.</translation>
    </message>
    <message>
        <source>Watering</source>
        <translation>Regar</translation>
    </message>
    <message>
        <source>Pour slowly and all over. What is poured beyond what the trays hold runs into the sump within the hour, and the sump then says nothing about the bed.</source>
        <translation>Vierte despacio y por todas partes. Lo que sobra de lo que retienen las bandejas llega al depósito en una hora, y entonces el depósito no dice nada del lecho.</translation>
    </message>
    <message>
        <source>Better little and often than a flood.</source>
        <translation>Mejor poco y a menudo que una inundación.</translation>
    </message>
    <message>
        <source>Drainage</source>
        <translation>Drenaje</translation>
    </message>
    <message>
        <source>With the spigot shut, drain every {drain-every}, and before the sump is at {full-sump}. With it open, empty the jar.</source>
        <translation>Con el grifo cerrado, drena cada {drain-every}, y antes de que el depósito esté al {full-sump}. Con el grifo abierto, vacía el frasco.</translation>
    </message>
    <message>
        <source>Write down how much. What ran out is one of the few things that can be measured without digging.</source>
        <translation>Anota cuánto. Lo que salió es de lo poco que se puede medir sin escarbar.</translation>
    </message>
    <message>
        <source>Some worms swim in the sump, about {worms-in-sump} of them. That is normal: put them back into the top tray.</source>
        <translation>En el depósito nadan algunas lombrices, alrededor del {worms-in-sump} de ellas. Es normal: devuélvelas a la bandeja superior.</translation>
    </message>
    <message>
        <source>If it smells or hardly runs, flush: spigot shut, water through, everything drained at once.</source>
        <translation>Si huele o apenas sale, enjuaga: grifo cerrado, agua a través, todo drenado de una vez.</translation>
    </message>
    <message>
        <source>What runs out is leachate, no brewed tea. What it can be used for, and how far to dilute it, stands under [[use|using castings and leachate]].</source>
        <translation>Lo que sale es lixiviado, no un té preparado. Para qué sirve y cuánto diluirlo está en [[use|usar el humus y el lixiviado]].</translation>
    </message>
    <message>
        <source>The stack in one page</source>
        <translation>La torre en una página</translation>
    </message>
    <message>
        <source>overview basics worms trays begin</source>
        <translation>resumen bases lombrices bandejas empezar</translation>
    </message>
    <message>
        <source>Starting a stack</source>
        <translation>Empezar una torre</translation>
    </message>
    <message>
        <source>new first tray stock worms place</source>
        <translation>nueva primera bandeja inicio lombrices lugar</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Alimentar</translation>
    </message>
    <message>
        <source>food scraps amount how much cover overfed hungry</source>
        <translation>comida restos cantidad cuánto cubierta exceso hambre</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Cama</translation>
    </message>
    <message>
        <source>paper cardboard coir shavings leaves carbon C:N</source>
        <translation>papel cartón coco virutas hojas carbono C:N</translation>
    </message>
    <message>
        <source>Water and drainage</source>
        <translation>Agua y drenaje</translation>
    </message>
    <message>
        <source>moisture wet dry sump spigot drain flush squeeze</source>
        <translation>humedad mojado seco depósito grifo drenar enjuagar apretar</translation>
    </message>
    <message>
        <source>Behind the pages runs a model of the colony and its trays: food softens, worms eat what has softened, grow, lay and die, castings stay, water seeps down, the bed warms and breathes. It runs not once but {members} times, each with other parameters from the ranges below. What you write down weighs these members: those that agree with your journal count for more.</source>
        <translation>Detrás de las páginas funciona un modelo de la colonia y sus bandejas: el alimento se ablanda, las lombrices comen lo ablandado, crecen, ponen capullos y mueren, el humus queda, el agua se filtra, el lecho se calienta y respira. No se calcula una vez sino {members}, cada una con otros parámetros dentro de los intervalos de abajo. Lo que anotas pesa estos miembros: los que concuerdan con tu diario cuentan más.</translation>
    </message>
    <message>
        <source>So every figure has a range. It holds {band-share} of what is still possible. A wide range is no fault of the page: it says that nobody can know it better from what was written down, and a look would narrow it.</source>
        <translation>Por eso cada cifra tiene un intervalo. Abarca {band-share} de lo que aún es posible. Un intervalo ancho no es un fallo de la página: dice que con lo anotado nadie puede saberlo mejor y que mirar lo estrecharía.</translation>
    </message>
    <message>
        <source>How far to trust it</source>
        <translation>Hasta dónde fiarse</translation>
    </message>
    <message>
        <source>The order of things, and which tray is ahead: well.</source>
        <translation>El orden de las cosas y qué bandeja va delante: bien.</translation>
    </message>
    <message>
        <source>Dates months ahead: as a season, not as a day. Softening is known to a factor of two.</source>
        <translation>Fechas a meses vista: como estación, no como día. El ablandamiento se conoce con un factor de dos.</translation>
    </message>
    <message>
        <source>Numbers of worms: within a factor, unless you weigh some.</source>
        <translation>Número de lombrices: dentro de un factor, salvo que peses algunas.</translation>
    </message>
    <message>
        <source>What it does not know: rot without air in a corner, mites, birds, a lid left open. Write such things down as events.</source>
        <translation>Lo que no sabe: podredumbre sin aire en un rincón, ácaros, pájaros, una tapa que quedó abierta. Anota esas cosas como sucesos.</translation>
    </message>
    <message>
        <source>A household&apos;s habits drift; parameters go back to their ranges with a time constant of {drift-days}, so that old years do not rule the new.</source>
        <translation>Las costumbres de un hogar cambian; los parámetros vuelven a sus intervalos con una constante de tiempo de {drift-days}, para que los años viejos no manden sobre los nuevos.</translation>
    </message>
    <message>
        <source>Track record</source>
        <translation>Aciertos</translation>
    </message>
    <message>
        <source>Parameters, their ranges and what they rest on</source>
        <translation>Parámetros, sus intervalos y en qué se apoyan</translation>
    </message>
    <message>
        <source>Batch: one life of a tray, from its bedding to its harvest.</source>
        <translation>Lote: una vida de una bandeja, de su cama a su cosecha.</translation>
    </message>
    <message>
        <source>Bed: all that lies in the trays.</source>
        <translation>Lecho: todo lo que hay en las bandejas.</translation>
    </message>
    <message>
        <source>Bedding: what a tray is begun with, paper, cardboard, coir, leaves.</source>
        <translation>Cama: con lo que se empieza una bandeja: papel, cartón, fibra de coco, hojas.</translation>
    </message>
    <message>
        <source>Castings: what the worms leave behind; what you harvest.</source>
        <translation>Humus: lo que dejan las lombrices; lo que cosechas.</translation>
    </message>
    <message>
        <source>C:N: parts of carbon to one of nitrogen, by mass.</source>
        <translation>C:N: partes de carbono por una de nitrógeno, en masa.</translation>
    </message>
    <message>
        <source>Cocoon: the egg case of a worm; lemon-shaped, small as a pinhead.</source>
        <translation>Capullo: la cápsula de huevos de una lombriz; con forma de limón, pequeño como la cabeza de un alfiler.</translation>
    </message>
    <message>
        <source>Colony: all worms of a stack.</source>
        <translation>Colonia: todas las lombrices de una torre.</translation>
    </message>
    <message>
        <source>Conductivity: how well water carries a current; it rises with salts, in mS/cm.</source>
        <translation>Conductividad: lo bien que el agua conduce la corriente; sube con las sales, en mS/cm.</translation>
    </message>
    <message>
        <source>Cover: paper laid on each feeding.</source>
        <translation>Cubierta: papel que se pone sobre cada aporte.</translation>
    </message>
    <message>
        <source>Dry matter: what is left when all water is gone.</source>
        <translation>Materia seca: lo que queda cuando se va toda el agua.</translation>
    </message>
    <message>
        <source>Feed-to-cast ratio: what could still be eaten in a tray, to its castings, both dry.</source>
        <translation>Relación alimento/humus: lo que aún se podría comer en una bandeja, frente a su humus, ambos en seco.</translation>
    </message>
    <message>
        <source>Field capacity: the water that stays when the rest has drained off.</source>
        <translation>Capacidad de campo: el agua que queda cuando el resto ha escurrido.</translation>
    </message>
    <message>
        <source>Input-to-cast yield: dry matter put into a batch, to castings that came of it.</source>
        <translation>Rendimiento: materia seca aportada a un lote, frente al humus que salió de él.</translation>
    </message>
    <message>
        <source>Leachate: what has run through the trays into the sump.</source>
        <translation>Lixiviado: lo que ha atravesado las bandejas hasta el depósito.</translation>
    </message>
    <message>
        <source>Light-drying: a tray raised to the top, lid off, so that its worms go down.</source>
        <translation>Secado a la luz: una bandeja subida arriba, sin tapa, para que sus lombrices bajen.</translation>
    </message>
    <message>
        <source>Member: one of the many runs of the model that the estimates are made of.</source>
        <translation>Miembro: una de las muchas pasadas del modelo con que se hacen las estimaciones.</translation>
    </message>
    <message>
        <source>Ration: what the colony takes up, to what it needs to keep itself; above one it grows.</source>
        <translation>Ración: lo que toma la colonia, frente a lo que necesita para mantenerse; por encima de uno, crece.</translation>
    </message>
    <message>
        <source>Reckoning: what the model and your journal make of each other.</source>
        <translation>Cálculo: lo que resulta de juntar el modelo y tu diario.</translation>
    </message>
    <message>
        <source>Slot: a place in a stack; slot one is the bottom.</source>
        <translation>Nivel: un lugar en una torre; el nivel uno es el de abajo.</translation>
    </message>
    <message>
        <source>Spigot: the tap of the drainage tray.</source>
        <translation>Grifo: la llave de la bandeja de drenaje.</translation>
    </message>
    <message>
        <source>Stack: trays over a drainage tray under a lid.</source>
        <translation>Torre: bandejas sobre una bandeja de drenaje y bajo una tapa.</translation>
    </message>
    <message>
        <source>Sump: the drainage tray and what stands in it.</source>
        <translation>Depósito: la bandeja de drenaje y lo que hay en ella.</translation>
    </message>
    <message>
        <source>Turn: the moment when the top tray is filled, so that a tray is to be added or the bottom one harvested.</source>
        <translation>Turno: el momento en que la bandeja superior está completa, así que toca añadir una o cosechar la inferior.</translation>
    </message>
    <message>
        <source>The cautions that stand at the work itself, all in one place. They are the usual ones; local codes, your doctor and licensed trades come first. This program gives no medical advice.</source>
        <translation>Las precauciones que aparecen junto a cada tarea, todas en un sitio. Son las habituales; las normas locales, tu médico y los oficios autorizados van primero. Este programa no da consejo médico.</translation>
    </message>
    <message>
        <source>Every number of the handbook and of the sums on the Materials page is a row here. Published means that it was read in that source or in its abstract; memory means that it was not looked up; common practice has no source, it is what people do; ours is a judgement or a rule of this program.</source>
        <translation>Cada número del manual y de los cálculos de la página Materiales es una fila de aquí. Publicado: se leyó en esa fuente o en su resumen; memoria: no se consultó; práctica común: no tiene fuente, es lo que hace la gente; propio: un juicio o una regla de este programa.</translation>
    </message>
    <message>
        <source>Materials name the source of each row on their own page; parameters of the model stand under [[inside|what is inside the model]].</source>
        <translation>Los materiales nombran la fuente de cada fila en su propia página; los parámetros del modelo están en [[inside|qué hay dentro del modelo]].</translation>
    </message>
    <message>
        <source>What is inside the model</source>
        <translation>Qué hay dentro del modelo</translation>
    </message>
    <message>
        <source>estimate uncertainty range trust parameters ensemble filter how</source>
        <translation>estimación incertidumbre intervalo confianza parámetros conjunto filtro cómo</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Palabras</translation>
    </message>
    <message>
        <source>glossary terms meaning</source>
        <translation>glosario términos significado</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>safety health lifting electricity children pregnancy asthma</source>
        <translation>seguridad salud levantar electricidad niños embarazo asma</translation>
    </message>
    <message>
        <source>Figures and sources</source>
        <translation>Cifras y fuentes</translation>
    </message>
    <message>
        <source>literature reference numbers memory</source>
        <translation>bibliografía referencia números memoria</translation>
    </message>
    <message>
        <source>The next tray goes on when the present one holds at least {castings-before-tray} of castings and most of its food is worked. Not earlier: worms follow food, and a colony spread thin over two trays finishes neither.</source>
        <translation>La bandeja siguiente se pone cuando la actual tiene al menos {castings-before-tray} de humus y casi todo su alimento está trabajado. No antes: las lombrices siguen al alimento, y una colonia repartida en dos bandejas no acaba ninguna.</translation>
    </message>
    <message>
        <source>Look at the top tray: is there a finger&apos;s breadth of castings under the food?</source>
        <translation>Mira la bandeja superior: ¿hay un dedo de humus bajo el alimento?</translation>
    </message>
    <message>
        <source>Level the surface, so that it touches the holes of the new tray.</source>
        <translation>Nivela la superficie para que toque los agujeros de la bandeja nueva.</translation>
    </message>
    <message>
        <source>Lay bedding in the new tray, wet, and set it on top.</source>
        <translation>Pon cama mojada en la bandeja nueva y colócala encima.</translation>
    </message>
    <message>
        <source>Feed only there from now on. What is below goes on by itself.</source>
        <translation>Desde ahora alimenta solo ahí. Lo de abajo sigue por sí mismo.</translation>
    </message>
    <message>
        <source>The usual pace: the first tray alone for {first-tray-alone}, the second alone on top for at least {second-tray-alone}. The program says a tray is filled at {filled-castings} of castings and {filled-ratio} of unprocessed matter to castings or less.</source>
        <translation>El ritmo habitual: la primera bandeja sola durante {first-tray-alone}, la segunda sola arriba al menos {second-tray-alone}. El programa da una bandeja por completa con {filled-castings} de humus y {filled-ratio} o menos de materia sin procesar frente a humus.</translation>
    </message>
    <message>
        <source>A tray whose contents come within {under-rim} of the rim is full, whatever else holds: there must be air under the next floor.</source>
        <translation>Una bandeja cuyo contenido llega a {under-rim} del borde está llena, pase lo que pase: debe quedar aire bajo el suelo siguiente.</translation>
    </message>
    <message>
        <source>When the top tray is filled and no tray is spare, the bottom one has its turn. It is raised to the top, its worms go down out of the light, and what they leave is yours.</source>
        <translation>Cuando la bandeja superior está completa y no hay ninguna libre, le toca el turno a la inferior. Se sube arriba, sus lombrices bajan huyendo de la luz, y lo que dejan es tuyo.</translation>
    </message>
    <message>
        <source>Is it ready?</source>
        <translation>¿Está lista?</translation>
    </message>
    <message>
        <source>A tray is ready when its feed-to-cast ratio (what could still be eaten, to castings, both dry) is {ready} or below and it holds {ready-castings} or more of castings; nearly at {nearly}. The program gives the chance that it is so, tells you at {alert-raised}, and takes that back at {alert-withdrawn}.</source>
        <translation>Una bandeja está lista cuando su relación alimento/humus (lo que aún se podría comer, frente al humus, ambos en seco) es {ready} o menos y tiene {ready-castings} o más de humus; casi lista con {nearly}. El programa da la probabilidad de que sea así, te avisa con {alert-raised} y retira el aviso con {alert-withdrawn}.</translation>
    </message>
    <message>
        <source>Worms left in the bottom tray are normal and never a reason to wait: they go down in the light.</source>
        <translation>Es normal que queden lombrices en la bandeja inferior y nunca es motivo para esperar: bajan con la luz.</translation>
    </message>
    <message>
        <source>The usual first harvest comes after {first-harvest}, later ones {later-harvests} apart. After {overdue-after} of waiting a harvest is overdue: spent bedding and crowding shrink a colony.</source>
        <translation>La primera cosecha suele llegar tras {first-harvest}; las siguientes, con {later-harvests} de separación. Tras {overdue-after} de espera, la cosecha va atrasada: la cama gastada y la falta de sitio encogen una colonia.</translation>
    </message>
    <message>
        <source>The sequence</source>
        <translation>Los pasos</translation>
    </message>
    <message>
        <source>For one of your stacks, with the weight of its trays and a card for each day: [[harvest-now|harvest, step by step]].</source>
        <translation>Para una de tus torres, con el peso de sus bandejas y una ficha por día: [[harvest-now|cosecha, paso a paso]].</translation>
    </message>
    <message>
        <source>Lid off. Set the upper trays aside, in their order, on a sheet.</source>
        <translation>Quita la tapa. Aparta las bandejas de arriba, en su orden, sobre una lona.</translation>
    </message>
    <message>
        <source>Lift the bottom tray out, close to the body, and set it down.</source>
        <translation>Saca la bandeja inferior, cerca del cuerpo, y déjala en el suelo.</translation>
    </message>
    <message>
        <source>Put the upper trays back, each one slot lower.</source>
        <translation>Vuelve a poner las bandejas de arriba, cada una un nivel más abajo.</translation>
    </message>
    <message>
        <source>Put the lifted tray on top. Loosen the castings with your fingers, in ridges. Leave the lid off, under a lamp or in a bright place, not in the sun.</source>
        <translation>Pon arriba la bandeja levantada. Afloja el humus con los dedos, en crestas. Deja la tapa quitada, bajo una lámpara o en un lugar claro, no al sol.</translation>
    </message>
    <message>
        <source>For {light-drying}: loosen once a day. Feed only the tray below. Too wet to crumble? Loosen again and give it a day more.</source>
        <translation>Durante {light-drying}: afloja una vez al día. Alimenta solo la bandeja de debajo. ¿Demasiado mojado para desmigajarse? Afloja otra vez y dale un día más.</translation>
    </message>
    <message>
        <source>When about {left-after-drying} of its worms are left, take the castings, weigh or measure them, and write that down.</source>
        <translation>Cuando quede alrededor del {left-after-drying} de sus lombrices, retira el humus, pésalo o mídelo, y anótalo.</translation>
    </message>
    <message>
        <source>Lay new bedding in the empty tray; it goes on top again, or waits in storage.</source>
        <translation>Pon cama nueva en la bandeja vacía; vuelve arriba o espera guardada.</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>Qué esperar</translation>
    </message>
    <message>
        <source>One part of castings, dry, comes of {yield} parts of dry food and bedding; the rest was breathed. Much less: the tray was not finished, or much of the food was water. Much more: bedding that stays is in it.</source>
        <translation>Una parte de humus, en seco, sale de {yield} partes de alimento y cama secos; el resto se respiró. Mucho menos: la bandeja no estaba acabada, o gran parte del alimento era agua. Mucho más: lleva cama de la que se queda.</translation>
    </message>
    <message>
        <source>Cocoons and worms that leave with it</source>
        <translation>Capullos y lombrices que se van con él</translation>
    </message>
    <message>
        <source>Some always do; no method takes all of them out, and castings without any worm cannot be promised. A grown worm lays about {cocoons-weekly} cocoons a week; a cocoon takes about {cocoon-hatch} in the warmth and gives {young} young.</source>
        <translation>Siempre se van algunas; ningún método las saca todas, y no se puede prometer humus sin ninguna lombriz. Una lombriz adulta pone alrededor de {cocoons-weekly} capullos por semana; un capullo tarda unos {cocoon-hatch} con calor y da {young} crías.</translation>
    </message>
    <message>
        <source>A second light-drying after {second-drying} brings out what has hatched meanwhile.</source>
        <translation>Un segundo secado a la luz tras {second-drying} saca lo que ha eclosionado entretanto.</translation>
    </message>
    <message>
        <source>A bait tray: lay melon or pumpkin under damp paper on the stored castings for {bait-days}, and carry it back with all that sits in it.</source>
        <translation>Una bandeja con cebo: pon melón o calabaza bajo papel húmedo sobre el humus guardado durante {bait-days}, y devuélvelo a la torre con todo lo que tenga dentro.</translation>
    </message>
    <message>
        <source>Choose the stack: the page follows its harvest from the weight of the trays before they are lifted to what became of the castings. Why each step is done stands under [[harvest|rotation and harvest]].</source>
        <translation>Elige la torre: la página sigue su cosecha, desde el peso de las bandejas antes de levantarlas hasta lo que fue del humus. El porqué de cada paso está en [[harvest|rotación y cosecha]].</translation>
    </message>
    <message>
        <source>Lid off. Set the upper trays aside, in their order.</source>
        <translation>Quita la tapa. Aparta las bandejas de arriba, en su orden.</translation>
    </message>
    <message>
        <source>Lift the bottom tray out and set it down.</source>
        <translation>Saca la bandeja inferior y déjala en el suelo.</translation>
    </message>
    <message>
        <source>Put the lifted tray on top, loosen its castings in ridges, leave the lid off.</source>
        <translation>Pon arriba la bandeja levantada, afloja su humus en crestas, deja la tapa quitada.</translation>
    </message>
    <message>
        <source>Castings are no soil. A litre of them weighs {bed-litre} while moist. They pack, hold salts and are rich; a little of them goes a long way. The Materials page reckons the amounts for a batch.</source>
        <translation>El humus no es tierra. Un litro pesa {bed-litre} cuando está húmedo. Se apelmaza, lleva sales y es rico; un poco da para mucho. La página Materiales calcula las cantidades de un lote.</translation>
    </message>
    <message>
        <source>Potting mix</source>
        <translation>Sustrato de macetas</translation>
    </message>
    <message>
        <source>By volume, {potting-share} of a mix has been tested and helped; more than {potting-most} is not advised, and never castings alone.</source>
        <translation>En volumen, se ha ensayado {potting-share} de una mezcla y ayudó; más de {potting-most} no se aconseja, y nunca humus solo.</translation>
    </message>
    <message>
        <source>Top-dressing</source>
        <translation>Capa superficial</translation>
    </message>
    <message>
        <source>A layer of {top-dressing} around the plant, scratched in and watered; again after {top-dressing-again}.</source>
        <translation>Una capa de {top-dressing} alrededor de la planta, removida y regada; de nuevo tras {top-dressing-again}.</translation>
    </message>
    <message>
        <source>Sifting</source>
        <translation>Tamizar</translation>
    </message>
    <message>
        <source>Through a mesh of {sieve}, when dry enough to crumble. What stays on it (shell, stones, wood, cocoons) goes into the next bedding.</source>
        <translation>Con una malla de {sieve}, cuando está lo bastante seco para desmigajarse. Lo que queda (cáscara, piedras, madera, capullos) va a la siguiente cama.</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Vented, cool, in the shade, near {storage-moisture} moisture, for {storage-months}. Shut tightly they go sour; bone dry they are dust.</source>
        <translation>Ventilado, fresco, a la sombra, cerca de {storage-moisture} de humedad, durante {storage-months}. Bien cerrado se agria; seco del todo se vuelve polvo.</translation>
    </message>
    <message>
        <source>Leachate</source>
        <translation>Lixiviado</translation>
    </message>
    <message>
        <source>What ran out at the spigot is salty water that met everything in the trays. It is no brewed tea, and nobody knows what it holds unless it is measured. Published strengths are around {leachate-strength}; for worms {leachate-harmless} is harmless and about {leachate-harmful} harmful. One mS/cm stands for about {salt-per-conductivity} of salts.</source>
        <translation>Lo que sale por el grifo es agua salada que pasó por todo lo que hay en las bandejas. No es un té preparado, y nadie sabe lo que lleva si no se mide. Las fuerzas publicadas rondan {leachate-strength}; para las lombrices, {leachate-harmless} es inocuo y alrededor de {leachate-harmful}, dañino. Un mS/cm equivale a unos {salt-per-conductivity} de sales.</translation>
    </message>
    <message>
        <source>Dilute it to {target-seedlings} for young plants, {target-grown} for grown ones. Tap water itself has about {tap-water}. The Materials page says how many parts of water that takes, for the strong end of what the leachate may be.</source>
        <translation>Dilúyelo a {target-seedlings} para plantas jóvenes y a {target-grown} para adultas. El agua del grifo ya tiene unos {tap-water}. La página Materiales dice cuántas partes de agua hacen falta, para el extremo fuerte de lo que puede ser el lixiviado.</translation>
    </message>
    <message>
        <source>Use it within {leachate-keeps}, on soil, or pour it back over the top tray when the bed is dry.</source>
        <translation>Úsalo en el plazo de {leachate-keeps}, sobre tierra, o viértelo de nuevo en la bandeja superior cuando el lecho esté seco.</translation>
    </message>
    <message>
        <source>When to add a tray</source>
        <translation>Cuándo añadir una bandeja</translation>
    </message>
    <message>
        <source>second third next turn too early full rim</source>
        <translation>segunda tercera siguiente turno pronto llena borde</translation>
    </message>
    <message>
        <source>Rotation and harvest</source>
        <translation>Rotación y cosecha</translation>
    </message>
    <message>
        <source>lift light-drying castings ready cocoons loosen yield bottom tray</source>
        <translation>subir secado a la luz humus lista capullos aflojar rendimiento bandeja inferior</translation>
    </message>
    <message>
        <source>Harvest, step by step</source>
        <translation>Cosecha, paso a paso</translation>
    </message>
    <message>
        <source>guided weight drying day yield take castings now</source>
        <translation>guiada peso secado día rendimiento retirar humus ahora</translation>
    </message>
    <message>
        <source>Using castings and leachate</source>
        <translation>Usar el humus y el lixiviado</translation>
    </message>
    <message>
        <source>potting soil top-dressing storage dilution strength sieve garden plants</source>
        <translation>sustrato macetas tierra capa superficial guardar dilución fuerza tamiz jardín plantas</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>From {heat-death} in the bed worms begin to die. Carry the stack to a cooler room first; then shade, an open lid under a cloth, less food.</source>
        <translation>Desde {heat-death} en el lecho empiezan a morir lombrices. Lleva primero la torre a un cuarto más fresco; luego sombra, tapa abierta bajo una tela, menos alimento.</translation>
    </message>
    <message>
        <source>A bed heats by itself when much is fed at once. Stop feeding, spread the food flat, loosen the tray.</source>
        <translation>Un lecho se calienta solo cuando se da mucho de golpe. Deja de alimentar, extiende el alimento, afloja la bandeja.</translation>
    </message>
    <message>
        <source>A frozen bottle of water, wrapped, on the top bedding buys a day.</source>
        <translation>Una botella de agua congelada, envuelta, sobre la cama de arriba da un día de margen.</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Frío</translation>
    </message>
    <message>
        <source>Near {frost-death} worms die. Bring the stack in, or wrap sides and lid and stand it off the ground; feed little, since what is not eaten rots when it warms.</source>
        <translation>Cerca de {frost-death} mueren lombrices. Mete la torre dentro, o envuelve los lados y la tapa y sepárala del suelo; alimenta poco, porque lo que no se come se pudre al templarse.</translation>
    </message>
    <message>
        <source>In a cold room everything takes longer; the dates of the program know that when you write down the bed&apos;s temperature now and then.</source>
        <translation>En un cuarto frío todo tarda más; las fechas del programa lo tienen en cuenta si anotas de vez en cuando la temperatura del lecho.</translation>
    </message>
    <message>
        <source>A stack can be left alone for {away} without any care, longer in the cold. Bedding is food as well.</source>
        <translation>Una torre puede quedarse sola {away} sin ningún cuidado, y más con frío. La cama también es alimento.</translation>
    </message>
    <message>
        <source>A few days before: feed the usual, not more. A heap of food rots; it does not keep.</source>
        <translation>Unos días antes: da lo habitual, no más. Un montón de alimento se pudre; no se conserva.</translation>
    </message>
    <message>
        <source>On the last day: water to a wrung-out sponge, cover with a thick layer of wet paper, close the lid.</source>
        <translation>El último día: agua hasta quedar como una esponja escurrida, cubre con una capa gruesa de papel mojado, cierra la tapa.</translation>
    </message>
    <message>
        <source>Empty the sump and leave the spigot open over a large jar.</source>
        <translation>Vacía el depósito y deja el grifo abierto sobre un frasco grande.</translation>
    </message>
    <message>
        <source>Write it down as an event, away, with the day of your return: the estimates then expect no feeding.</source>
        <translation>Anótalo como suceso, ausencia, con el día de tu vuelta: así las estimaciones no esperan aportes.</translation>
    </message>
    <message>
        <source>The rotation plan can be asked what two weeks away would change.</source>
        <translation>Al plan de rotación se le puede preguntar qué cambiarían dos semanas fuera.</translation>
    </message>
    <message>
        <source>Moving a stack</source>
        <translation>Trasladar una torre</translation>
    </message>
    <message>
        <source>Empty the sump, shut the spigot.</source>
        <translation>Vacía el depósito, cierra el grifo.</translation>
    </message>
    <message>
        <source>Carry tray by tray, the heaviest last and shortest, and stack them again in the same order.</source>
        <translation>Llévala bandeja a bandeja, la más pesada al final y por el camino más corto, y apílalas en el mismo orden.</translation>
    </message>
    <message>
        <source>Splitting</source>
        <translation>Dividir</translation>
    </message>
    <message>
        <source>A colony that is crowded, beyond about {best-density} of floor, or a household with more scraps than a stack can take, is ready to be split.</source>
        <translation>Una colonia apretada, con más de unos {best-density} de superficie, o un hogar con más restos de los que admite una torre, está lista para dividirse.</translation>
    </message>
    <message>
        <source>Set up the new stack with one bedded tray.</source>
        <translation>Monta la torre nueva con una bandeja con cama.</translation>
    </message>
    <message>
        <source>Take worms with a part of their bed out of the old stack, at most {give-at-most} of the colony, so that the old one keeps its pace.</source>
        <translation>Saca de la torre vieja lombrices con parte de su lecho, como máximo {give-at-most} de la colonia, para que la vieja mantenga su ritmo.</translation>
    </message>
    <message>
        <source>Record it as moved worms: both stacks know it then.</source>
        <translation>Anótalo como lombrices pasadas: así lo saben las dos torres.</translation>
    </message>
    <message>
        <source>Worms double in {doubling} under good care, so there is something to give. Give worms with a handful of their own bedding; they settle better.</source>
        <translation>Las lombrices se duplican en {doubling} si se cuidan bien, así que hay para regalar. Dalas con un puñado de su propia cama; se adaptan mejor.</translation>
    </message>
    <message>
        <source>Weigh them, or count some and weigh those; take at most {give-at-most} of the colony, from the top tray, where most of them are.</source>
        <translation>Pésalas, o cuenta algunas y pésalas; saca como máximo {give-at-most} de la colonia, de la bandeja superior, donde están casi todas.</translation>
    </message>
    <message>
        <source>{stock} makes a start for a first tray.</source>
        <translation>{stock} bastan para empezar una primera bandeja.</translation>
    </message>
    <message>
        <source>Pack them in damp bedding in a vented box, cool, for a day at most.</source>
        <translation>Ponlas en cama húmeda en una caja ventilada, al fresco, un día como máximo.</translation>
    </message>
    <message>
        <source>Record the worms as taken away: the estimate of your colony follows.</source>
        <translation>Anota las lombrices como sacadas: la estimación de tu colonia lo sigue.</translation>
    </message>
    <message>
        <source>Choose the stack and what you notice. Each cause has its chance, from what the estimates say of this stack, its evidence in numbers, the look that would tell it from the others, and what to do.</source>
        <translation>Elige la torre y lo que notas. Cada causa tiene su probabilidad, según lo que dicen las estimaciones de esta torre, sus indicios en números, lo que hay que mirar para distinguirla de las otras, y qué hacer.</translation>
    </message>
    <message>
        <source>What may be wrong</source>
        <translation>Qué puede ir mal</translation>
    </message>
    <message>
        <source>smell flies mites ants escape dying mould sour heat standing water help problem</source>
        <translation>olor moscas ácaros hormigas fuga muerte moho ácido calor agua parada ayuda problema</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Estaciones</translation>
    </message>
    <message>
        <source>summer winter heat cold frost temperature</source>
        <translation>verano invierno calor frío helada temperatura</translation>
    </message>
    <message>
        <source>Going away</source>
        <translation>Irse de viaje</translation>
    </message>
    <message>
        <source>holiday travel weeks absence</source>
        <translation>vacaciones viaje semanas ausencia</translation>
    </message>
    <message>
        <source>Moving and splitting</source>
        <translation>Trasladar y dividir</translation>
    </message>
    <message>
        <source>carry transport divide new stack crowded</source>
        <translation>llevar transporte dividir torre nueva apretada</translation>
    </message>
    <message>
        <source>Giving worms</source>
        <translation>Regalar lombrices</translation>
    </message>
    <message>
        <source>share neighbours school release</source>
        <translation>compartir vecinos escuela soltar</translation>
    </message>
    <message>
        <source>Choose a place that stays at {comfortable} all year, out of the sun, where the spigot can be reached and a full tray can be lifted.</source>
        <translation>Elige un lugar que se mantenga a {comfortable} todo el año, sin sol, donde se alcance el grifo y se pueda levantar una bandeja llena.</translation>
    </message>
    <message>
        <source>Bedding is carbon. Scraps alone hold too little of it: a mix of {cn-range} carbon to nitrogen keeps, with more nitrogen it smells, with more carbon it stands still. Averaging ratios by parts is wrong; the mix on the Materials page reckons it by mass.</source>
        <translation>La cama es carbono. Los restos solos tienen muy poco: una mezcla de {cn-range} de carbono a nitrógeno se mantiene, con más nitrógeno huele, con más carbono se para. Promediar relaciones por partes es un error; la mezcla de la página Materiales calcula por masa.</translation>
    </message>
    <message>
        <source>Worms grow fastest near {growth-best}. A bed of {comfortable} is warm enough, and leaves room for the heat of a feeding. They hardly grow below {coldest}, and not at all at {hottest}.</source>
        <translation>Las lombrices crecen más rápido cerca de {growth-best}. Un lecho a {comfortable} es bastante cálido, y deja margen para el calor de una ración. Por debajo de {coldest} apenas crecen, y a {hottest} nada.</translation>
    </message>
    <message>
        <source>A stack that has long been at work: write down its worms and the bedding of each tray, then look into each tray on the first day and note how deep the castings lie and how many bits there are. What lies there is then taken as it was found.</source>
        <translation>Una torre que lleva tiempo trabajando: anota sus lombrices y la cama de cada bandeja, luego mira en cada una el primer día y apunta qué grosor tiene el humus y cuántos restos hay. Lo que hay se toma entonces tal como se encontró.</translation>
    </message>
    <message>
        <source>The temperature of the bed: from the set-up, whose usual temperature is the mean of the year, and the season of the place ([[seasons|Seasons]]); readings move it for some weeks.</source>
        <translation>La temperatura del lecho: de los datos de la torre, cuya temperatura habitual es la media del año, y de la estación del lugar ([[seasons|estaciones]]); las lecturas la mueven durante unas semanas.</translation>
    </message>
    <message>
        <source>The usual temperature of the set-up</source>
        <translation>La temperatura habitual en los datos de la torre</translation>
    </message>
    <message>
        <source>It is the mean of the whole year, not what a thermometer shows today: the program makes winter and summer of it, little indoors, more in a garage, most outdoors. What it proposes is a bed of {year-indoors} through the year indoors, {year-garage} in a garage, shed or porch, {year-outdoors} outdoors.</source>
        <translation>Es la media de todo el año, no lo que hoy muestra un termómetro: el programa hace de ella invierno y verano, poco dentro de casa, más en un garaje, lo que más al aire libre. Lo que propone es a lo largo del año un lecho de {year-indoors} dentro de casa, {year-garage} en un garaje, cobertizo o porche, {year-outdoors} al aire libre.</translation>
    </message>
    <message>
        <source>Hold a thermometer in the bed and type into the set-up what it shows now: the mean follows from it, by place and season. Beneath stands what the coldest and the warmest month will be.</source>
        <translation>Pon un termómetro en el lecho y escribe en los datos de la torre lo que muestra ahora: la media sale de ello, según el lugar y la estación. Debajo se dice cómo serán el mes más frío y el más cálido.</translation>
    </message>
    <message>
        <source>When readings of the bed stay off to one side, correct the set-up; a reading alone moves the estimate for some weeks only.</source>
        <translation>Si las lecturas del lecho se desvían siempre hacia el mismo lado, corrige los datos de la torre; una lectura sola mueve la estimación solo unas semanas.</translation>
    </message>
    <message>
        <source>Write a change of place into the stack&apos;s set-up, with the temperature that a thermometer shows in the bed there.</source>
        <translation>Anota un cambio de lugar en los datos de la torre, con la temperatura que allí muestra un termómetro en el lecho.</translation>
    </message>
    <message>
        <source>The order is computed. Each member of the ensemble is one possible stack that agrees with your journal; a cause is likely when many of them are in the state that brings such a symptom about. Something else keeps its share, and where the record shows none of the causes, that is what is said. A look written down changes the order.</source>
        <translation>El orden se calcula. Cada miembro del conjunto es una torre posible que concuerda con tu diario; una causa es probable cuando muchos de ellos están en el estado que provoca tal síntoma. Siempre queda una parte para otra cosa, y donde el diario no muestra ninguna de las causas, eso es lo que se dice. Una observación anotada cambia el orden.</translation>
    </message>
</context>
<context>
    <name>HandbookHtml</name>
    <message>
        <source>Caution: %1</source>
        <translation>Precaución: %1</translation>
    </message>
</context>
<context>
    <name>HarvestBody</name>
    <message>
        <source>Taken</source>
        <translation>Retirado</translation>
    </message>
    <message>
        <source>the whole tray</source>
        <translation>la bandeja entera</translation>
    </message>
    <message>
        <source>a part; the batch goes on</source>
        <translation>una parte; el lote sigue</translation>
    </message>
    <message>
        <source>Share taken</source>
        <translation>Parte retirada</translation>
    </message>
    <message>
        <source>Which share of the tray?</source>
        <translation>¿Qué parte de la bandeja?</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>How much was taken? By mass or by volume.</source>
        <translation>¿Cuánto se retiró? En masa o en volumen.</translation>
    </message>
    <message>
        <source>Their moisture</source>
        <translation>Su humedad</translation>
    </message>
    <message>
        <source>of wet mass, if measured</source>
        <translation>de la masa húmeda, si se midió</translation>
    </message>
    <message>
        <source>expected: about %1, or %2</source>
        <translation>se espera: unos %1, o %2</translation>
    </message>
</context>
<context>
    <name>HouseholdText</name>
    <message>
        <source>%1, %2: found «%3»; allowed: %4</source>
        <translation>%1, %2: se encontró «%3»; se admite: %4</translation>
    </message>
    <message>
        <source>%1 is there already. It was left as it is.</source>
        <translation>%1 ya existe. Se dejó como está.</translation>
    </message>
    <message>
        <source>%1 is open for reading only: there is no permission to write to it or to its folder. Nothing can be recorded until that is changed.</source>
        <translation>%1 está abierto solo para lectura: no hay permiso para escribir en él o en su carpeta. No se puede anotar nada hasta que eso cambie.</translation>
    </message>
    <message>
        <source>Rename the household</source>
        <translation>Cambiar el nombre del hogar</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Carpeta de copias de seguridad</translation>
    </message>
    <message>
        <source>%1 was moved or removed. Nothing more is written until it is back; what is in a form stays there.</source>
        <translation>%1 se movió o se quitó. No se escribe nada más hasta que vuelva; lo que hay en un formulario se queda ahí.</translation>
    </message>
    <message>
        <source>%1 is back. It takes entries again.</source>
        <translation>%1 ha vuelto. Ya admite anotaciones.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.</source>
        <translation>%1 se movió o se quitó mientras estaba abierto. No se escribió nada; devuélvelo, o ábrelo donde está ahora.</translation>
    </message>
    <message>
        <source>%1 was written by a newer release and can only be read. Nothing was written.</source>
        <translation>%1 lo escribió una versión más nueva y solo se puede leer. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 is open for reading only. Nothing was written.</source>
        <translation>%1 está abierto solo para lectura. No se escribió nada.</translation>
    </message>
    <message>
        <source>The entry is still being written. Nothing was changed; try again in a moment.</source>
        <translation>La anotación aún se está escribiendo. No se cambió nada; vuelve a intentarlo en un momento.</translation>
    </message>
    <message>
        <source>%1 cannot be used as a picture: %2</source>
        <translation>%1 no sirve como foto: %2</translation>
    </message>
    <message>
        <source>%1 cannot be used as a picture: it could not be made smaller.</source>
        <translation>%1 no sirve como foto: no se pudo reducir.</translation>
    </message>
    <message numerus="yes">
        <source>Another program changed this household. %n step(s) that could be undone touched what it changed and can no longer be undone.</source>
        <translation>
            <numerusform>Otro programa cambió este hogar. %n paso que se podía deshacer tocaba lo cambiado y ya no se puede deshacer.</numerusform>
            <numerusform>Otro programa cambió este hogar. %n pasos que se podían deshacer tocaban lo cambiado y ya no se pueden deshacer.</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program has changed the entry meanwhile. What it wrote was kept, and nothing was written.</source>
        <translation>Otro programa cambió la anotación entretanto. Lo que escribió se conservó, y no se escribió nada.</translation>
    </message>
    <message>
        <source>The estimates could not be made this time. What you record is kept all the same; they are tried again after the next change.</source>
        <translation>Esta vez no se pudieron hacer las estimaciones. Lo que anotas se conserva de todos modos; se intenta de nuevo tras el próximo cambio.</translation>
    </message>
</context>
<context>
    <name>JournalWords</name>
    <message>
        <source>%1 %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>on the left</source>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>on the right</source>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>at the front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>at the back</source>
        <translation>detrás</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>por todas partes</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>dentro de casa</translation>
    </message>
    <message>
        <source>in a garage</source>
        <translation>en un garaje</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>al aire libre</translation>
    </message>
    <message>
        <source>on legs</source>
        <translation>sobre patas</translation>
    </message>
    <message>
        <source>on a base</source>
        <translation>sobre una base</translation>
    </message>
    <message>
        <source>on the floor</source>
        <translation>en el suelo</translation>
    </message>
    <message>
        <source>spigot open</source>
        <translation>grifo abierto</translation>
    </message>
    <message>
        <source>spigot shut</source>
        <translation>grifo cerrado</translation>
    </message>
    <message>
        <source>strength %1 mS/cm</source>
        <translation>fuerza %1 mS/cm</translation>
    </message>
    <message numerus="yes">
        <source>%n worm(s) put back</source>
        <translation>
            <numerusform>%n lombriz devuelta</numerusform>
            <numerusform>%n lombrices devueltas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 de altura</translation>
    </message>
    <message numerus="yes">
        <source>%n tray(s)</source>
        <translation>
            <numerusform>%n bandeja</numerusform>
            <numerusform>%n bandejas</numerusform>
        </translation>
    </message>
    <message>
        <source>sump %1</source>
        <translation>depósito de %1</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>normalmente %1</translation>
    </message>
    <message>
        <source>moisture %1</source>
        <translation>humedad %1</translation>
    </message>
    <message>
        <source>nitrogen %1 %</source>
        <translation>nitrógeno %1&#xa0;%</translation>
    </message>
    <message>
        <source>C:N %1</source>
        <translation>C:N %1</translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation>
            <numerusform>%n contada</numerusform>
            <numerusform>%n contadas</numerusform>
        </translation>
    </message>
    <message>
        <source>wetted to %1</source>
        <translation>mojada hasta %1</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cubierta</translation>
    </message>
    <message>
        <source>%1: no longer</source>
        <translation>%1: ya no</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2, every %n day(s)</source>
        <translation>
            <numerusform>%1: %2, cada %n día</numerusform>
            <numerusform>%1: %2, cada %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>not emptied</source>
        <translation>sin vaciar</translation>
    </message>
    <message>
        <source>%1 poured through</source>
        <translation>%1 pasados</translation>
    </message>
    <message>
        <source>%1 ran out</source>
        <translation>salieron %1</translation>
    </message>
    <message>
        <source>bed %1</source>
        <translation>lecho %1</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>aire %1</translation>
    </message>
    <message>
        <source>air humidity %1</source>
        <translation>humedad del aire %1</translation>
    </message>
    <message>
        <source>squeeze %1 of 5</source>
        <translation>apretón %1 de 5</translation>
    </message>
    <message>
        <source>pH %1</source>
        <translation>pH %1</translation>
    </message>
    <message>
        <source>castings %1 deep</source>
        <translation>humus: %1 de espesor</translation>
    </message>
    <message>
        <source>%1 still recognisable</source>
        <translation>%1 aún reconocible</translation>
    </message>
    <message>
        <source>%1 of the last feeding left</source>
        <translation>queda %1 del último aporte</translation>
    </message>
    <message>
        <source>few worms</source>
        <translation>pocas lombrices</translation>
    </message>
    <message>
        <source>some worms</source>
        <translation>algunas lombrices</translation>
    </message>
    <message>
        <source>many worms</source>
        <translation>muchas lombrices</translation>
    </message>
    <message>
        <source>in %1 of the bed</source>
        <translation>en %1 del lecho</translation>
    </message>
    <message>
        <source>%1 worms</source>
        <translation>%1 lombrices</translation>
    </message>
    <message>
        <source>in %1 of bed</source>
        <translation>en %1 de lecho</translation>
    </message>
    <message>
        <source>empty tray %1</source>
        <translation>bandeja vacía %1</translation>
    </message>
    <message>
        <source>bottom tray to the top, to dry in the light</source>
        <translation>bandeja inferior arriba, a secarse a la luz</translation>
    </message>
    <message>
        <source>the drying castings</source>
        <translation>el humus en secado</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>quitada</translation>
    </message>
    <message>
        <source>%1 of the tray</source>
        <translation>%1 de la bandeja</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Montaje</translation>
    </message>
    <message>
        <source>Own material</source>
        <translation>Material propio</translation>
    </message>
    <message>
        <source>Worms put in</source>
        <translation>Lombrices metidas</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Cama</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Aporte</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>Cubierta</translation>
    </message>
    <message>
        <source>Watered</source>
        <translation>Riego</translation>
    </message>
    <message>
        <source>Routine</source>
        <translation>Rutina</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Drenado</translation>
    </message>
    <message>
        <source>Flushed</source>
        <translation>Enjuague</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Lectura</translation>
    </message>
    <message>
        <source>Looked</source>
        <translation>Mirada</translation>
    </message>
    <message>
        <source>Worms weighed</source>
        <translation>Lombrices pesadas</translation>
    </message>
    <message>
        <source>Worms counted</source>
        <translation>Lombrices contadas</translation>
    </message>
    <message>
        <source>Tray weighed</source>
        <translation>Bandeja pesada</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Loosened</source>
        <translation>Aflojado</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Tapa</translation>
    </message>
    <message>
        <source>Castings taken</source>
        <translation>Humus retirado</translation>
    </message>
    <message>
        <source>Worms taken away</source>
        <translation>Lombrices sacadas</translation>
    </message>
    <message>
        <source>Worms moved</source>
        <translation>Lombrices pasadas</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Suceso</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Baja</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>welcome: %1</source>
        <translation>bienvenido: %1</translation>
    </message>
    <message>
        <source>%1 in the sump</source>
        <translation>%1 en el depósito</translation>
    </message>
    <message>
        <source>tray %1</source>
        <comment>its area</comment>
        <translation>bandeja de %1</translation>
    </message>
    <message>
        <source>amount not noted</source>
        <translation>cantidad no anotada</translation>
    </message>
</context>
<context>
    <name>Labels</name>
    <message>
        <source>%1, %2 × %3 labels of %4 × %5 mm</source>
        <translation>%1, %2 × %3 etiquetas de %4 × %5 mm</translation>
    </message>
    <message>
        <source>Tray %1 · batch %2</source>
        <translation>Bandeja %1 · lote %2</translation>
    </message>
    <message>
        <source>Bedded %1</source>
        <comment>a day</comment>
        <translation>Cama puesta el %1</translation>
    </message>
    <message>
        <source>Lifted ______________  Taken ______________</source>
        <translation>Subida ______________  Retirada ______________</translation>
    </message>
    <message>
        <source>Labels for trays</source>
        <translation>Etiquetas de bandejas</translation>
    </message>
    <message>
        <source>The labels could not be drawn.</source>
        <translation>No se pudieron dibujar las etiquetas.</translation>
    </message>
    <message>
        <source>%1, %2 × %3 labels of %4 × %5 in</source>
        <translation>%1, %2 × %3 etiquetas de %4 × %5 in</translation>
    </message>
</context>
<context>
    <name>Lanes</name>
    <message>
        <source>tray %1</source>
        <translation>bandeja %1</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>subir la bandeja inferior</translation>
    </message>
    <message>
        <source>take the castings, lay new bedding</source>
        <translation>retirar el humus, poner cama nueva</translation>
    </message>
    <message>
        <source>add a tray</source>
        <translation>añadir una bandeja</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>in the light</source>
        <translation>a la luz</translation>
    </message>
    <message>
        <source>planned (dashed)</source>
        <translation>previsto (a trazos)</translation>
    </message>
    <message>
        <source>nobody is there</source>
        <translation>no hay nadie</translation>
    </message>
    <message>
        <source>day chosen by hand</source>
        <translation>día elegido a mano</translation>
    </message>
    <message>
        <source>ready: 10 %, 50 % and 90 % sure</source>
        <translation>lista: con 10&#xa0;%, 50&#xa0;% y 90&#xa0;% de certeza</translation>
    </message>
    <message>
        <source>ready already</source>
        <translation>ya lista</translation>
    </message>
    <message>
        <source>due: 10 %, 50 % and 90 % sure</source>
        <translation>toca: con 10 %, 50 % y 90 % de certeza</translation>
    </message>
</context>
<context>
    <name>Legend</name>
    <message>
        <source>Age of batch</source>
        <translation>Edad del lote</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nuevo</translation>
    </message>
    <message>
        <source>%1 mo</source>
        <comment>short for months</comment>
        <translation>%1 m.</translation>
    </message>
    <message>
        <source>castings, by age</source>
        <translation>humus, por edad</translation>
    </message>
    <message>
        <source>softened</source>
        <translation>ablandado</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>one for each %1 of worms</source>
        <translation>una por cada %1 de lombrices</translation>
    </message>
    <message>
        <source>0.07 : 1 = unprocessed to castings, dry</source>
        <translation>0,07 : 1 = sin procesar a humus, en seco</translation>
    </message>
    <message>
        <source>Depths to one scale; sump levels twice as tall, a mark a litre</source>
        <translation>Espesores a una escala; depósito al doble de altura, una marca por litro</translation>
    </message>
    <message>
        <source>Bars: drained; marks: expected; bands: 90 % range</source>
        <translation>Barras: drenado; marcas: esperado; bandas: 90 %</translation>
    </message>
    <message>
        <source>Ring: chance in % that the tray is ready</source>
        <translation>Anillo: probabilidad en % de estar lista</translation>
    </message>
    <message>
        <source>Depths to one scale; sump levels twice as tall, a mark a quarter of a gallon</source>
        <translation>Profundidades a una escala; niveles del depósito el doble de altos, una marca por cuarto de galón</translation>
    </message>
</context>
<context>
    <name>LidBody</name>
    <message>
        <source>The lid is</source>
        <translation>La tapa está</translation>
    </message>
    <message>
        <source>on</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>off</source>
        <translation>quitada</translation>
    </message>
</context>
<context>
    <name>Lists</name>
    <message>
        <source>Parameter</source>
        <translation>Parámetro</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Centro</translation>
    </message>
    <message>
        <source>90 % range</source>
        <translation>Intervalo del 90&#xa0;%</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Se apoya en</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Cifra</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Apto</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Se nota</translation>
    </message>
    <message>
        <source>Causes, the usual ones first</source>
        <translation>Causas, primero las habituales</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>Within its 90 % range</source>
        <translation>Dentro de su intervalo del 90&#xa0;%</translation>
    </message>
    <message>
        <source>The latest: came, expected</source>
        <translation>Lo último: real, esperado</translation>
    </message>
    <message>
        <source>Once there are drainings and harvests in the journal, what came stands here beside what was expected.</source>
        <translation>En cuanto haya drenajes y cosechas en el diario, aparece aquí lo que salió junto a lo que se esperaba.</translation>
    </message>
    <message>
        <source>drainings</source>
        <translation>drenajes</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>harvests, by weight</source>
        <translation>cosechas, en peso</translation>
    </message>
    <message>
        <source>lifted %1, before it was said to be ready (%2)</source>
        <translation>subida %1, antes de darse por lista (%2)</translation>
    </message>
    <message>
        <source>said to be ready from %1, lifted %2 (%3)</source>
        <translation>dada por lista desde %1, subida %2 (%3)</translation>
    </message>
    <message>
        <source>ready dates</source>
        <translation>fechas en que está lista</translation>
    </message>
    <message>
        <source>%1 of %2 lifted when ready</source>
        <translation>%1 de %2 levantadas ya listas</translation>
    </message>
</context>
<context>
    <name>LoggerWords</name>
    <message>
        <source>time|date|stamp</source>
        <translation>hora|fecha|momento|marca de tiempo</translation>
    </message>
    <message>
        <source>temp|°c|°f|celsius|fahrenheit|degrees|(c)|(f)|[c]|[f]</source>
        <translation>temp|°c|°f|celsius|fahrenheit|grados|(c)|(f)|[c]|[f]</translation>
    </message>
    <message>
        <source>air|ambient|room|outside|outdoor</source>
        <translation>aire|ambiente|habitación|habitacion|fuera|exterior</translation>
    </message>
    <message>
        <source>humid|rh</source>
        <translation>humedad relativa|humedad rel|humedad del aire|humedad ambiente|(hr)|hr %</translation>
    </message>
    <message>
        <source>moist|water content|vwc</source>
        <translation>humedad del lecho|humedad de la cama|humedad del suelo|humedad del sustrato|contenido de agua</translation>
    </message>
</context>
<context>
    <name>MaterialNames</name>
    <message>
        <source>corrugated cardboard shredded</source>
        <translation>cartón ondulado triturado</translation>
    </message>
    <message>
        <source>newspaper shredded</source>
        <translation>papel de periódico triturado</translation>
    </message>
    <message>
        <source>office paper shredded</source>
        <translation>papel de oficina triturado</translation>
    </message>
    <message>
        <source>paper egg tray</source>
        <translation>cartón de huevos</translation>
    </message>
    <message>
        <source>pine shavings</source>
        <translation>virutas de pino</translation>
    </message>
    <message>
        <source>sawdust</source>
        <translation>serrín</translation>
    </message>
    <message>
        <source>coconut coir (from a dry brick)</source>
        <translation>fibra de coco (de un bloque seco)</translation>
    </message>
    <message>
        <source>leaves fallen</source>
        <translation>hojas caídas</translation>
    </message>
    <message>
        <source>wheat straw chopped</source>
        <translation>paja de trigo picada</translation>
    </message>
    <message>
        <source>peat</source>
        <translation>turba</translation>
    </message>
    <message>
        <source>grass clippings</source>
        <translation>césped cortado</translation>
    </message>
    <message>
        <source>coffee grounds</source>
        <translation>posos de café</translation>
    </message>
    <message>
        <source>tea leaves spent</source>
        <translation>hojas de té usadas</translation>
    </message>
    <message>
        <source>fruit waste mixed</source>
        <translation>restos de fruta mezclados</translation>
    </message>
    <message>
        <source>vegetable scraps mixed</source>
        <translation>restos de verdura mezclados</translation>
    </message>
    <message>
        <source>kitchen mix</source>
        <translation>mezcla de cocina</translation>
    </message>
    <message>
        <source>banana peel</source>
        <translation>piel de plátano</translation>
    </message>
    <message>
        <source>eggshell crushed</source>
        <translation>cáscara de huevo triturada</translation>
    </message>
    <message>
        <source>horse manure aged</source>
        <translation>estiércol de caballo envejecido</translation>
    </message>
    <message>
        <source>rabbit manure</source>
        <translation>estiércol de conejo</translation>
    </message>
    <message>
        <source>apple, with skin</source>
        <translation>manzana, con piel</translation>
    </message>
    <message>
        <source>banana flesh</source>
        <translation>plátano, sin piel</translation>
    </message>
    <message>
        <source>orange flesh</source>
        <translation>naranja, sin piel</translation>
    </message>
    <message>
        <source>orange peel</source>
        <translation>piel de naranja</translation>
    </message>
    <message>
        <source>lemon peel</source>
        <translation>piel de limón</translation>
    </message>
    <message>
        <source>watermelon flesh</source>
        <translation>pulpa de sandía</translation>
    </message>
    <message>
        <source>cantaloupe</source>
        <translation>melón</translation>
    </message>
    <message>
        <source>pineapple</source>
        <translation>piña</translation>
    </message>
    <message>
        <source>strawberry</source>
        <translation>fresa</translation>
    </message>
    <message>
        <source>grapes</source>
        <translation>uvas</translation>
    </message>
    <message>
        <source>pear</source>
        <translation>pera</translation>
    </message>
    <message>
        <source>peach</source>
        <translation>melocotón</translation>
    </message>
    <message>
        <source>avocado flesh</source>
        <translation>pulpa de aguacate</translation>
    </message>
    <message>
        <source>lettuce, green leaf</source>
        <translation>lechuga de hoja verde</translation>
    </message>
    <message>
        <source>lettuce, iceberg</source>
        <translation>lechuga iceberg</translation>
    </message>
    <message>
        <source>spinach</source>
        <translation>espinaca</translation>
    </message>
    <message>
        <source>kale</source>
        <translation>col rizada</translation>
    </message>
    <message>
        <source>cabbage</source>
        <translation>repollo</translation>
    </message>
    <message>
        <source>broccoli</source>
        <translation>brócoli</translation>
    </message>
    <message>
        <source>carrot</source>
        <translation>zanahoria</translation>
    </message>
    <message>
        <source>potato, flesh+skin</source>
        <translation>patata, con piel</translation>
    </message>
    <message>
        <source>potato skin</source>
        <translation>piel de patata</translation>
    </message>
    <message>
        <source>beet root</source>
        <translation>remolacha</translation>
    </message>
    <message>
        <source>tomato</source>
        <translation>tomate</translation>
    </message>
    <message>
        <source>cucumber with peel</source>
        <translation>pepino con piel</translation>
    </message>
    <message>
        <source>summer squash</source>
        <translation>calabacín</translation>
    </message>
    <message>
        <source>pumpkin</source>
        <translation>calabaza</translation>
    </message>
    <message>
        <source>green pepper</source>
        <translation>pimiento verde</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>apio</translation>
    </message>
    <message>
        <source>onion</source>
        <translation>cebolla</translation>
    </message>
    <message>
        <source>garlic</source>
        <translation>ajo</translation>
    </message>
    <message>
        <source>snap beans</source>
        <translation>judías verdes</translation>
    </message>
    <message>
        <source>green peas</source>
        <translation>guisantes</translation>
    </message>
    <message>
        <source>sweet corn</source>
        <translation>maíz dulce</translation>
    </message>
    <message>
        <source>mushroom, white</source>
        <translation>champiñón blanco</translation>
    </message>
    <message>
        <source>bread, white</source>
        <translation>pan blanco</translation>
    </message>
    <message>
        <source>bread, whole wheat</source>
        <translation>pan integral</translation>
    </message>
    <message>
        <source>rice, white, cooked</source>
        <translation>arroz blanco cocido</translation>
    </message>
    <message>
        <source>pasta, cooked</source>
        <translation>pasta cocida</translation>
    </message>
    <message>
        <source>oats, dry</source>
        <translation>avena seca</translation>
    </message>
    <message>
        <source>egg (contents)</source>
        <translation>huevo (sin cáscara)</translation>
    </message>
    <message>
        <source>meat</source>
        <translation>carne</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>pescado</translation>
    </message>
    <message>
        <source>cheese</source>
        <translation>queso</translation>
    </message>
    <message>
        <source>milk and yogurt</source>
        <translation>leche y yogur</translation>
    </message>
    <message>
        <source>oily food</source>
        <translation>alimentos grasos</translation>
    </message>
    <message>
        <source>salty leftovers</source>
        <translation>sobras saladas</translation>
    </message>
    <message>
        <source>chilli pepper</source>
        <translation>guindilla</translation>
    </message>
    <message>
        <source>tea bags</source>
        <translation>bolsitas de té</translation>
    </message>
    <message>
        <source>weeds with seeds</source>
        <translation>malas hierbas con semillas</translation>
    </message>
    <message>
        <source>manure of animals wormed lately</source>
        <translation>estiércol de animales desparasitados hace poco</translation>
    </message>
    <message>
        <source>chicken manure</source>
        <translation>gallinaza</translation>
    </message>
    <message>
        <source>cat or dog droppings</source>
        <translation>excrementos de gato o perro</translation>
    </message>
    <message>
        <source>glossy paper</source>
        <translation>papel satinado</translation>
    </message>
    <message>
        <source>till receipts</source>
        <translation>tiques de caja</translation>
    </message>
    <message>
        <source>treated or painted wood</source>
        <translation>madera tratada o pintada</translation>
    </message>
    <message>
        <source>wood ash</source>
        <translation>ceniza de madera</translation>
    </message>
    <message>
        <source>garden lime (calcium carbonate)</source>
        <translation>cal agrícola (carbonato de calcio)</translation>
    </message>
    <message>
        <source>slaked or quick lime</source>
        <translation>cal apagada o viva</translation>
    </message>
    <message>
        <source>compostable plastic</source>
        <translation>plástico compostable</translation>
    </message>
</context>
<context>
    <name>MaterialWords</name>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>un poco</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Acid, and its peel keeps worms off until it has rotted: much of it sours the bed.</source>
        <translation>Ácido, y su piel aparta a las lombrices hasta que se pudre: en cantidad agria el lecho.</translation>
    </message>
    <message>
        <source>Its sharp oils keep worms off, and it smells while it rots.</source>
        <translation>Sus aceites fuertes apartan a las lombrices, y huele al pudrirse.</translation>
    </message>
    <message>
        <source>Starch in a lump ferments, heats and draws mites; a little, spread thin and covered, is fine.</source>
        <translation>El almidón en bloque fermenta, se calienta y atrae ácaros; un poco, extendido y cubierto, va bien.</translation>
    </message>
    <message>
        <source>Salt stays in the trays and dries worms out through their skin.</source>
        <translation>La sal se queda en las bandejas y reseca a las lombrices por la piel.</translation>
    </message>
    <message>
        <source>Oil shuts the air out, turns rancid and draws flies and rats.</source>
        <translation>El aceite impide el paso del aire, se enrancia y atrae moscas y ratas.</translation>
    </message>
    <message>
        <source>It rots without air, smells, and draws flies, rats and mice.</source>
        <translation>Se pudre sin aire, huele y atrae moscas, ratas y ratones.</translation>
    </message>
    <message>
        <source>It sours, smells, and draws flies, rats and mice.</source>
        <translation>Se agria, huele y atrae moscas, ratas y ratones.</translation>
    </message>
    <message>
        <source>It can carry germs and worm eggs that make people ill, and a worm bin does not get hot enough to kill them.</source>
        <translation>Puede llevar gérmenes y huevos de parásitos que enferman a las personas, y una vermicompostera no se calienta lo bastante para matarlos.</translation>
    </message>
    <message>
        <source>What was given against the animal&apos;s worms kills these too; let manure age, and ask when the animals were last treated.</source>
        <translation>Lo que se dio contra los parásitos del animal mata también a las lombrices; deja madurar el estiércol y pregunta cuándo se trató a los animales por última vez.</translation>
    </message>
    <message>
        <source>So rich in nitrogen that it heats and gives off ammonia; only aged, and little.</source>
        <translation>Tan rico en nitrógeno que se calienta y suelta amoníaco; solo maduro, y poco.</translation>
    </message>
    <message>
        <source>In a thick layer it mats, heats and shuts the air out; wilted and spread thin it is fine.</source>
        <translation>En capa gruesa se apelmaza, se calienta e impide el paso del aire; marchito y extendido va bien.</translation>
    </message>
    <message>
        <source>Seeds stay alive in a worm bin and come up where the castings go.</source>
        <translation>Las semillas siguen vivas en una vermicompostera y brotan donde vaya el humus.</translation>
    </message>
    <message>
        <source>Many bags hold plastic that stays in the castings; tear them open and give the leaves.</source>
        <translation>Muchas bolsitas llevan plástico que se queda en el humus; ábrelas y echa las hojas.</translation>
    </message>
    <message>
        <source>Coatings, glossy inks and colour developers stay in the castings.</source>
        <translation>Los recubrimientos, las tintas brillantes y los reveladores de color se quedan en el humus.</translation>
    </message>
    <message>
        <source>Preservatives and paint can hold metals that harm worms and stay in the castings.</source>
        <translation>Los conservantes y la pintura pueden llevar metales que dañan a las lombrices y se quedan en el humus.</translation>
    </message>
    <message>
        <source>Caustic: it burns worms and skin. Against a sour bed use calcium carbonate only.</source>
        <translation>Cáustico: quema a las lombrices y la piel. Contra un lecho ácido usa solo carbonato de calcio.</translation>
    </message>
    <message>
        <source>It softens in hot piles only; in a worm bin it stays for years.</source>
        <translation>Solo se ablanda en montones calientes; en una vermicompostera se queda años.</translation>
    </message>
    <message>
        <source>It works, but it is dug from peatland; paper, cardboard and leaves serve as well.</source>
        <translation>Funciona, pero se extrae de turberas; el papel, el cartón y las hojas sirven igual.</translation>
    </message>
    <message>
        <source>soft fruit and leaves</source>
        <translation>fruta blanda y hojas</translation>
    </message>
    <message>
        <source>mixed kitchen scraps</source>
        <translation>restos de cocina variados</translation>
    </message>
    <message>
        <source>grounds, grain and bread</source>
        <translation>posos, grano y pan</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>cardboard, straw and leaves</source>
        <translation>cartón, paja y hojas</translation>
    </message>
    <message>
        <source>wood; it stays</source>
        <translation>madera; se queda</translation>
    </message>
    <message>
        <source>coir and peat; it stays</source>
        <translation>fibra de coco y turba; se queda</translation>
    </message>
    <message>
        <source>shell and grit; it stays</source>
        <translation>cáscara y arenilla; se queda</translation>
    </message>
    <message>
        <source>food</source>
        <translation>alimento</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>cama</translation>
    </message>
    <message>
        <source>mineral</source>
        <translation>mineral</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>taza (EE. UU.)</translation>
    </message>
    <message>
        <source>tablespoon</source>
        <translation>cucharada</translation>
    </message>
    <message>
        <source>handful</source>
        <translation>puñado</translation>
    </message>
    <message>
        <source>bucket (%1)</source>
        <translation>cubo (%1)</translation>
    </message>
    <message>
        <source>none</source>
        <comment>caution</comment>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>ácido</translation>
    </message>
    <message>
        <source>sharp oils</source>
        <translation>aceites picantes</translation>
    </message>
    <message>
        <source>starch in lumps</source>
        <translation>almidón en grumos</translation>
    </message>
    <message>
        <source>salty</source>
        <translation>salado</translation>
    </message>
    <message>
        <source>oily</source>
        <translation>aceitoso</translation>
    </message>
    <message>
        <source>meat or fish</source>
        <translation>carne o pescado</translation>
    </message>
    <message>
        <source>dairy</source>
        <translation>lácteo</translation>
    </message>
    <message>
        <source>pet droppings</source>
        <translation>excrementos de mascotas</translation>
    </message>
    <message>
        <source>wormed animals</source>
        <translation>animales desparasitados</translation>
    </message>
    <message>
        <source>rich in nitrogen</source>
        <translation>rico en nitrógeno</translation>
    </message>
    <message>
        <source>heats in a layer</source>
        <translation>se calienta en capa</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation>semillas</translation>
    </message>
    <message>
        <source>plastic in bags</source>
        <translation>plástico en bolsitas</translation>
    </message>
    <message>
        <source>coated or glossy</source>
        <translation>recubierto o brillante</translation>
    </message>
    <message>
        <source>treated or painted</source>
        <translation>tratado o pintado</translation>
    </message>
    <message>
        <source>caustic</source>
        <translation>cáustico</translation>
    </message>
    <message>
        <source>compostable plastic</source>
        <translation>plástico compostable</translation>
    </message>
    <message>
        <source>from peatland</source>
        <translation>de turbera</translation>
    </message>
</context>
<context>
    <name>MoveBody</name>
    <message>
        <source>Worms</source>
        <translation>Lombrices</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>¿Cuánto pesan las lombrices?</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Choose the stack that they go to.</source>
        <translation>Elige la torre a la que van.</translation>
    </message>
    <message>
        <source>of a colony of about %1</source>
        <translation>de una colonia de unos %1</translation>
    </message>
</context>
<context>
    <name>NewStack</name>
    <message>
        <source>The stack</source>
        <translation>La torre</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Give it a name, such as where it stands.</source>
        <translation>Dale un nombre, por ejemplo el del lugar donde está.</translation>
    </message>
    <message>
        <source>Scullery, Shed, Balcony, …</source>
        <translation>Lavadero, Cobertizo, Balcón, …</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>How warm is it there, usually?</source>
        <translation>¿Qué temperatura suele haber allí?</translation>
    </message>
    <message>
        <source>Floor of a tray</source>
        <translation>Superficie de una bandeja</translation>
    </message>
    <message>
        <source>How large is a tray?</source>
        <translation>¿Qué tamaño tiene una bandeja?</translation>
    </message>
    <message>
        <source>Height of a tray</source>
        <translation>Altura de una bandeja</translation>
    </message>
    <message>
        <source>How high is a tray?</source>
        <translation>¿Qué altura tiene una bandeja?</translation>
    </message>
    <message>
        <source>Trays owned</source>
        <translation>Bandejas que tienes</translation>
    </message>
    <message>
        <source>How many trays are there?</source>
        <translation>¿Cuántas bandejas hay?</translation>
    </message>
    <message>
        <source>Sump holds</source>
        <translation>El depósito contiene</translation>
    </message>
    <message>
        <source>How much does the drainage tray hold?</source>
        <translation>¿Cuánto contiene la bandeja de drenaje?</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Grifo</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Se apoya en</translation>
    </message>
    <message>
        <source>The first bedding</source>
        <translation>La primera cama</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Cama</translation>
    </message>
    <message>
        <source>Which bedding?</source>
        <translation>¿Qué cama?</translation>
    </message>
    <message>
        <source>Depth once laid</source>
        <translation>Espesor una vez puesta</translation>
    </message>
    <message>
        <source>How deep? %1 to %2 is common.</source>
        <translation>¿Qué espesor? Lo común es de %1 a %2.</translation>
    </message>
    <message>
        <source>Amount, dry</source>
        <translation>Cantidad, en seco</translation>
    </message>
    <message>
        <source>How much bedding, as it comes to hand?</source>
        <translation>¿Cuánta cama, tal como viene?</translation>
    </message>
    <message>
        <source>The worms</source>
        <translation>Las lombrices</translation>
    </message>
    <message>
        <source>Worms put in</source>
        <translation>Lombrices metidas</translation>
    </message>
    <message>
        <source>%1 to %2 is common for a first tray; empty if they come later</source>
        <translation>Lo común para una primera bandeja es de %1 a %2; vacío si llegan después</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Especie</translation>
    </message>
    <message>
        <source>First feeding</source>
        <translation>Primer aporte</translation>
    </message>
    <message>
        <source>a handful of kitchen mix at most; empty to wait</source>
        <translation>como mucho un puñado de mezcla de cocina; vacío para esperar</translation>
    </message>
    <message>
        <source>More water</source>
        <translation>Más agua</translation>
    </message>
    <message>
        <source>beyond what wets the bedding; usually empty</source>
        <translation>además de la que moja la cama; normalmente vacío</translation>
    </message>
    <message>
        <source>Started on</source>
        <translation>Empezada el</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>¿Qué día?</translation>
    </message>
    <message>
        <source>Put in %1 of «%2» and %3 of water: it makes about %4, as wet as a wrung-out sponge. Let it stand for a day before the worms go in.</source>
        <translation>Pon %1 de «%2» y %3 de agua: da unos %4, mojada como una esponja escurrida. Déjala reposar un día antes de meter las lombrices.</translation>
    </message>
    <message>
        <source>A retired stack bears that name; choose another.</source>
        <translation>Una torre dada de baja lleva ese nombre; elige otro.</translation>
    </message>
    <message>
        <source>There is a stack of that name already.</source>
        <translation>Ya hay una torre con ese nombre.</translation>
    </message>
    <message>
        <source>A name cannot hold a semicolon.</source>
        <translation>Un nombre no puede llevar punto y coma.</translation>
    </message>
    <message>
        <source>%1 of worms is more than a tray of this floor can carry, about %2. Is the amount right, and its unit?</source>
        <translation>%1 de lombrices es más de lo que puede sostener una bandeja de esta superficie, unos %2. ¿Es correcta la cantidad, y su unidad?</translation>
    </message>
    <message>
        <source>%1 of food is more than the whole tray holds, about %2. Is the amount right, and its unit?</source>
        <translation>%1 de alimento es más de lo que cabe en toda la bandeja, unos %2. ¿Es correcta la cantidad, y su unidad?</translation>
    </message>
    <message>
        <source>%1 of bedding would lie %2 deep in a tray that is %3 high. Is the amount right, and its unit?</source>
        <translation>%1 de cama tendrían %2 de grosor en una bandeja de %3 de alto. ¿Es correcta la cantidad, y su unidad?</translation>
    </message>
</context>
<context>
    <name>OwnMaterialBody</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <translation>¿Cómo se llama?</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Se ablanda como</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation>Nitrógeno</translation>
    </message>
    <message>
        <source>% of dry matter</source>
        <translation>% de materia seca</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>Bulk, loose</source>
        <translation>Densidad, suelto</translation>
    </message>
    <message>
        <source>Water it holds</source>
        <translation>Agua que retiene</translation>
    </message>
    <message>
        <source>by weight of dry</source>
        <translation>por peso seco</translation>
    </message>
    <message>
        <source>Welcome in a bin</source>
        <translation>Bienvenido en el cajón</translation>
    </message>
    <message>
        <source>Reason against it</source>
        <translation>Motivo en contra</translation>
    </message>
</context>
<context>
    <name>PageFlow</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Página %1 de %2</translation>
    </message>
</context>
<context>
    <name>Parameters</name>
    <message>
        <source>ingestion of a worm of 1 g</source>
        <translation>ingestión de una lombriz de 1 g</translation>
    </message>
    <message>
        <source>half-saturation of ingestion</source>
        <translation>semisaturación de la ingestión</translation>
    </message>
    <message>
        <source>assimilated share</source>
        <translation>parte asimilada</translation>
    </message>
    <message>
        <source>maintenance of a worm of 1 g at 25 C</source>
        <translation>mantenimiento de una lombriz de 1 g a 25 °C</translation>
    </message>
    <message>
        <source>mobilisation of the reserve</source>
        <translation>movilización de la reserva</translation>
    </message>
    <message>
        <source>share of the surplus to laying</source>
        <translation>parte del excedente para la puesta</translation>
    </message>
    <message>
        <source>cocoons that hatch</source>
        <translation>capullos que eclosionan</translation>
    </message>
    <message>
        <source>young of a cocoon that hatches</source>
        <translation>crías de un capullo que eclosiona</translation>
    </message>
    <message>
        <source>incubation</source>
        <translation>incubación</translation>
    </message>
    <message>
        <source>death</source>
        <translation>muerte</translation>
    </message>
    <message>
        <source>crowding that halves the greatest mass</source>
        <translation>apretura que reduce a la mitad la masa máxima</translation>
    </message>
    <message>
        <source>crowding that slows laying</source>
        <translation>apretura que frena la puesta</translation>
    </message>
    <message>
        <source>softening of food, scale</source>
        <translation>ablandamiento del alimento, escala</translation>
    </message>
    <message>
        <source>softening of paper, cardboard and slower, scale</source>
        <translation>ablandamiento de papel, cartón y más lentos, escala</translation>
    </message>
    <message>
        <source>worms&apos; help in softening</source>
        <translation>ayuda de las lombrices al ablandamiento</translation>
    </message>
    <message>
        <source>respiration that halves the air</source>
        <translation>respiración que reduce a la mitad el aire</translation>
    </message>
    <message>
        <source>respired in softening</source>
        <translation>respirado al ablandarse</translation>
    </message>
    <message>
        <source>respiration of castings</source>
        <translation>respiración del humus</translation>
    </message>
    <message>
        <source>coldest for growth</source>
        <translation>mínima para crecer</translation>
    </message>
    <message>
        <source>best for growth</source>
        <translation>óptima para crecer</translation>
    </message>
    <message>
        <source>hottest for growth</source>
        <translation>máxima para crecer</translation>
    </message>
    <message>
        <source>field capacity, scale</source>
        <translation>capacidad de campo, escala</translation>
    </message>
    <message>
        <source>poured water that runs through at once</source>
        <translation>agua vertida que pasa de largo</translation>
    </message>
    <message>
        <source>evaporation under the lid</source>
        <translation>evaporación bajo la tapa</translation>
    </message>
    <message>
        <source>time constant of light-drying</source>
        <translation>constante de tiempo del secado a la luz</translation>
    </message>
    <message>
        <source>salts formed of what is eaten</source>
        <translation>sales formadas de lo comido</translation>
    </message>
    <message>
        <source>worms bought, true mass to mass written</source>
        <translation>lombrices compradas, masa real frente a la anotada</translation>
    </message>
    <message>
        <source>household&apos;s scale, true mass to mass read</source>
        <translation>báscula del hogar, masa real frente a la leída</translation>
    </message>
    <message>
        <source>empty tray</source>
        <translation>bandeja vacía</translation>
    </message>
    <message>
        <source>worms found in a search</source>
        <translation>lombrices halladas al buscar</translation>
    </message>
    <message>
        <source>what is called some or many worms, log shift</source>
        <translation>lo que se llama algunas o muchas lombrices, desplazamiento log</translation>
    </message>
    <message>
        <source>usual feedings not written down</source>
        <translation>aportes habituales sin anotar</translation>
    </message>
</context>
<context>
    <name>PartStories</name>
    <message>
        <source>food, fresh, a week</source>
        <translation>alimento fresco por semana</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1 of food in %2</source>
        <comment>an amount; so many feedings</comment>
        <translation>%1 de alimento en %2</translation>
    </message>
    <message numerus="yes">
        <source>%n feeding(s)</source>
        <translation>
            <numerusform>%n aporte</numerusform>
            <numerusform>%n aportes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of bedding</source>
        <translation>%1 de cama</translation>
    </message>
    <message>
        <source>%1 of paper over it</source>
        <translation>%1 de papel encima</translation>
    </message>
    <message>
        <source>Put in, as it came</source>
        <translation>Metido, tal como vino</translation>
    </message>
    <message>
        <source>Lifting</source>
        <translation>Al levantar</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>that a step would be too early, and why</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: not while it stands alone; the worms go down into the tray beneath.</source>
        <translation>%1: no mientras esté sola; las lombrices bajan a la bandeja de debajo.</translation>
    </message>
    <message>
        <source>%1: only the tray in slot 1; this one comes down with each harvest.</source>
        <translation>%1: solo la bandeja del nivel 1; esta baja con cada cosecha.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a ratio and a day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Se están haciendo las estimaciones.</translation>
    </message>
    <message>
        <source>Feed-to-cast: %1. Ready at 0.10 or below.</source>
        <translation>Alimento/humus: %1. Lista con 0,10 o menos.</translation>
    </message>
    <message>
        <source>castings, dry</source>
        <translation>humus, en seco</translation>
    </message>
    <message>
        <source>feed-to-cast</source>
        <translation>alimento/humus</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>(%1)</source>
        <translation>(%1)</translation>
    </message>
    <message>
        <source>level</source>
        <translation>nivel</translation>
    </message>
    <message>
        <source>full</source>
        <translation>lleno</translation>
    </message>
    <message>
        <source>drained a week; mark: expected</source>
        <translation>drenado por semana; marca: esperado</translation>
    </message>
    <message>
        <source>%1 flushed %2</source>
        <comment>an amount, a day</comment>
        <translation>%1 de enjuague el %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>an amount, a day</comment>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>Drained last</source>
        <translation>Último drenaje</translation>
    </message>
    <message>
        <source>never yet</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>Level %1 of %2. Drained last: %3.</source>
        <translation>Contenido: %1 de %2. Último drenaje: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1: no tray is spare; all %n stand.</source>
        <translation>
            <numerusform>%1: no hay bandeja libre; %n está puesta.</numerusform>
            <numerusform>%1: no hay bandeja libre; las %n están puestas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Here stands a bar for each week&apos;s food.</source>
        <translation>Aquí habrá una barra por semana de alimento.</translation>
    </message>
    <message>
        <source>Here grows a line of its castings.</source>
        <translation>Aquí crecerá la línea de su humus.</translation>
    </message>
    <message>
        <source>Here falls a line until it is ready.</source>
        <translation>Aquí bajará una línea hasta estar lista.</translation>
    </message>
    <message>
        <source>Here stands a bar for each drain.</source>
        <translation>Aquí habrá una barra por drenaje.</translation>
    </message>
    <message>
        <source>Here rises a line of its level.</source>
        <translation>Aquí subirá la línea del nivel.</translation>
    </message>
    <message>
        <source>highest %1</source>
        <translation>máximo %1</translation>
    </message>
    <message>
        <source>The spigot is open: it runs out as it comes.</source>
        <translation>El grifo está abierto: sale según llega.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>No household is open.</source>
        <translation>No hay ningún hogar abierto.</translation>
    </message>
    <message>
        <source>The estimates did not come.</source>
        <translation>Las estimaciones no llegaron.</translation>
    </message>
    <message>
        <source>The page %1 could not be drawn.</source>
        <translation>No se pudo dibujar la página %1.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>No se puede crear la carpeta %1.</translation>
    </message>
    <message>
        <source>This build holds no demo household.</source>
        <translation>Esta compilación no incluye el hogar de demostración.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>ReadingBody</name>
    <message>
        <source>In the bed</source>
        <translation>En el lecho</translation>
    </message>
    <message>
        <source>Air around</source>
        <translation>Aire alrededor</translation>
    </message>
    <message>
        <source>Air humidity</source>
        <translation>Humedad del aire</translation>
    </message>
    <message>
        <source>Moisture of the bed</source>
        <translation>Humedad del lecho</translation>
    </message>
    <message>
        <source>of wet mass</source>
        <translation>de la masa húmeda</translation>
    </message>
    <message>
        <source>Squeezed in the hand</source>
        <translation>Apretado en la mano</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>no anotado</translation>
    </message>
    <message>
        <source>1: crumbles, dry</source>
        <translation>1: se desmigaja, seco</translation>
    </message>
    <message>
        <source>2: holds together, no shine</source>
        <translation>2: se mantiene unido, sin brillo</translation>
    </message>
    <message>
        <source>3: like a wrung-out sponge</source>
        <translation>3: como una esponja escurrida</translation>
    </message>
    <message>
        <source>4: drops fall</source>
        <translation>4: caen gotas</translation>
    </message>
    <message>
        <source>5: water runs</source>
        <translation>5: sale agua</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Give at least one reading.</source>
        <translation>Da al menos una lectura.</translation>
    </message>
    <message>
        <source>Standing in the sump</source>
        <translation>Hay en el depósito</translation>
    </message>
    <message>
        <source>read with a ruler or at its marks; nothing is drained</source>
        <translation>leído con una regla o en sus marcas; no se drena nada</translation>
    </message>
    <message>
        <source>read with a ruler or at its marks; it holds %1</source>
        <translation>leído con una regla o en sus marcas; caben %1</translation>
    </message>
</context>
<context>
    <name>ReadingsView</name>
    <message>
        <source>nothing, left out</source>
        <translation>nada, se omite</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>fecha y hora</translation>
    </message>
    <message>
        <source>time of day, beside the date</source>
        <translation>hora, aparte de la fecha</translation>
    </message>
    <message>
        <source>temperature of the bed, °C</source>
        <translation>temperatura del lecho, °C</translation>
    </message>
    <message>
        <source>temperature of the bed, °F</source>
        <translation>temperatura del lecho, °F</translation>
    </message>
    <message>
        <source>temperature of the bed: °C or °F?</source>
        <translation>temperatura del lecho: ¿°C o °F?</translation>
    </message>
    <message>
        <source>temperature of the air, °C</source>
        <translation>temperatura del aire, °C</translation>
    </message>
    <message>
        <source>temperature of the air, °F</source>
        <translation>temperatura del aire, °F</translation>
    </message>
    <message>
        <source>temperature of the air: °C or °F?</source>
        <translation>temperatura del aire: ¿°C o °F?</translation>
    </message>
    <message>
        <source>moisture of the bed, %</source>
        <translation>humedad del lecho, %</translation>
    </message>
    <message>
        <source>humidity of the air, %</source>
        <translation>humedad del aire, %</translation>
    </message>
</context>
<context>
    <name>RemoveBody</name>
    <message>
        <source>Worms</source>
        <translation>Lombrices</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>¿Cuánto pesan las lombrices?</translation>
    </message>
    <message>
        <source>of a colony of about %1</source>
        <translation>de una colonia de unos %1</translation>
    </message>
</context>
<context>
    <name>RoutineBody</name>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>water</source>
        <translation>agua</translation>
    </message>
    <message>
        <source>paper cover</source>
        <translation>cubierta de papel</translation>
    </message>
    <message>
        <source>Each time</source>
        <translation>Cada vez</translation>
    </message>
    <message>
        <source>How much each time? 0 ends the routine.</source>
        <translation>¿Cuánto cada vez? 0 termina la rutina.</translation>
    </message>
    <message>
        <source>done without being written down, until changed; 0 ends it</source>
        <translation>se hace sin anotarlo, hasta que cambie; 0 la termina</translation>
    </message>
    <message>
        <source>Every so many days</source>
        <translation>Cada cuántos días</translation>
    </message>
</context>
<context>
    <name>RowsAtFault</name>
    <message>
        <source>%1 rows at fault</source>
        <translation>%1 filas con errores</translation>
    </message>
    <message>
        <source>Save the rows at fault</source>
        <translation>Guardar las filas con errores</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>The rows at fault were written to %1.</source>
        <translation>Las filas con errores se escribieron en %1.</translation>
    </message>
</context>
<context>
    <name>SaidAhead</name>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Ready %1; feed-to-cast %2.</source>
        <translation>Lista %1; alimento/humus %2.</translation>
    </message>
    <message>
        <source>%1 of worms is more than the trays here can carry, about %2. Is the amount right, and its unit?</source>
        <translation>%1 de lombrices es más de lo que pueden sostener las bandejas de aquí, unos %2. ¿Es correcta la cantidad, y su unidad?</translation>
    </message>
</context>
<context>
    <name>SetupBody</name>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Trays owned</source>
        <translation>Bandejas que tienes</translation>
    </message>
    <message>
        <source>Floor of a tray</source>
        <translation>Superficie de una bandeja</translation>
    </message>
    <message>
        <source>Height of a tray</source>
        <translation>Altura de una bandeja</translation>
    </message>
    <message>
        <source>Sump holds</source>
        <translation>El depósito contiene</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Grifo</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Se apoya en</translation>
    </message>
    <message>
        <source>This cannot be left out.</source>
        <translation>Esto no se puede omitir.</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Aún no se ha cambiado nada.</translation>
    </message>
</context>
<context>
    <name>SetupChoices</name>
    <message>
        <source>indoors</source>
        <translation>dentro de casa</translation>
    </message>
    <message>
        <source>garage, shed or porch</source>
        <translation>garaje, cobertizo o porche</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>al aire libre</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>patas</translation>
    </message>
    <message>
        <source>a base</source>
        <translation>una base</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation>el suelo</translation>
    </message>
    <message>
        <source>open, over a jar</source>
        <translation>abierto, sobre un frasco</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>cerrado</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>%1 · as of %2 · %3</source>
        <translation>%1 · a fecha de %2 · %3</translation>
    </message>
    <message>
        <source>%1 · %2. Estimates, no measurements: a look into the tray rules over any number here.</source>
        <translation>%1 · %2. Estimaciones, no mediciones: lo que se ve en la bandeja manda sobre cualquier cifra de aquí.</translation>
    </message>
    <message>
        <source>This stack has ended. What follows is its story.</source>
        <translation>Esta torre ha terminado. Lo que sigue es su historia.</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Cómo está</translation>
    </message>
    <message>
        <source>The estimates are not there yet: this sheet holds only what the journal knows.</source>
        <translation>Las estimaciones aún no están: esta hoja solo contiene lo que sabe el diario.</translation>
    </message>
    <message>
        <source>The story of its batches</source>
        <translation>La historia de sus lotes</translation>
    </message>
    <message>
        <source>No tray has been bedded yet.</source>
        <translation>Aún no se ha puesto cama en ninguna bandeja.</translation>
    </message>
    <message>
        <source>Charts of the past year and the forecast under usual care</source>
        <translation>Gráficos del último año y la previsión con el cuidado habitual</translation>
    </message>
    <message>
        <source>Lines are estimates, bands the range that holds nine times in ten; what is shaded, with a dashed line, is the forecast. Signs stand for what was written down.</source>
        <translation>Las líneas son estimaciones; las bandas, el intervalo que se cumple nueve de cada diez veces; lo sombreado, con línea de trazos, es la previsión. Los signos señalan lo anotado.</translation>
    </message>
    <message>
        <source>The signs in the charts</source>
        <translation>Los signos de los gráficos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The pages could not be drawn.</source>
        <translation>No se pudieron dibujar las páginas.</translation>
    </message>
</context>
<context>
    <name>SheetSentence</name>
    <message numerus="yes">
        <source>%n row(s), %1.</source>
        <translation>
            <numerusform>%n fila, %1.</numerusform>
            <numerusform>%n filas, %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The first %n row(s), %1; the others are being read.</source>
        <translation>
            <numerusform>La primera fila, %1; las demás se están leyendo.</numerusform>
            <numerusform>Las primeras %n filas, %1; las demás se están leyendo.</numerusform>
        </translation>
    </message>
    <message>
        <source>What parts the cells is not certain: look at the columns below.</source>
        <translation>No es seguro qué separa las celdas: mira las columnas de abajo.</translation>
    </message>
    <message>
        <source>No row names the columns: say below what each holds.</source>
        <translation>Ninguna fila nombra las columnas: indica abajo qué contiene cada una.</translation>
    </message>
    <message>
        <source>The columns are named in line %1; what stands above it is left out.</source>
        <translation>Las columnas se nombran en la línea %1; lo que hay encima se omite.</translation>
    </message>
    <message>
        <source>No column holds the date. Choose the one that does in the first row of the table.</source>
        <translation>Ninguna columna contiene la fecha. Elige la que la tiene en la primera fila de la tabla.</translation>
    </message>
    <message>
        <source>Looking at the rows…</source>
        <translation>Revisando las filas…</translation>
    </message>
    <message>
        <source>Please answer what is asked above; then you see what becomes of each row.</source>
        <translation>Responde a lo que se pregunta arriba; luego verás qué pasa con cada fila.</translation>
    </message>
    <message>
        <source>There are no rows beneath the names of the columns: nothing to import.</source>
        <translation>Debajo de los nombres de las columnas no hay filas: nada que importar.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) will be added, as one step that can be undone.</source>
        <translation>
            <numerusform>Se añadirá %n anotación, como un solo paso que se puede deshacer.</numerusform>
            <numerusform>Se añadirán %n anotaciones, como un solo paso que se puede deshacer.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing will be added.</source>
        <translation>No se añadirá nada.</translation>
    </message>
    <message numerus="yes">
        <source>%n of them begin(s) what is a new stack.</source>
        <translation>
            <numerusform>%n de ellas empieza una torre nueva.</numerusform>
            <numerusform>%n de ellas empiezan una torre nueva.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) at fault: not added.</source>
        <translation>
            <numerusform>%n fila con errores: no se añade.</numerusform>
            <numerusform>%n filas con errores: no se añaden.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) left out as answered.</source>
        <translation>
            <numerusform>%n fila omitida según la respuesta.</numerusform>
            <numerusform>%n filas omitidas según la respuesta.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) already there: left out.</source>
        <translation>
            <numerusform>%n fila ya estaba: se omite.</numerusform>
            <numerusform>%n filas ya estaban: se omiten.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) said before: left out.</source>
        <translation>
            <numerusform>%n fila repetida: se omite.</numerusform>
            <numerusform>%n filas repetidas: se omiten.</numerusform>
        </translation>
    </message>
    <message>
        <source>No household is open: you are asked for the name of a new one, which keeps your answers too.</source>
        <translation>No hay ningún hogar abierto: se pide el nombre de uno nuevo, que guarda también las respuestas.</translation>
    </message>
    <message>
        <source>The rest of the file is being read; more may be asked then.</source>
        <translation>El resto del archivo se está leyendo; entonces puede haber más preguntas.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>date|day|when|date and time|date time|datetime|timestamp</source>
        <translation>fecha|día|dia|cuándo|cuando|fecha y hora|fecha hora|marca de tiempo</translation>
    </message>
    <message>
        <source>time|time of day|clock|hour</source>
        <translation>hora|hora del día|hora del dia|reloj</translation>
    </message>
    <message>
        <source>stack|bin|worm bin|name of the stack|stack name|bin name</source>
        <translation>torre|pila|vermicompostera|compostera|lombricompostera|lombricera|nombre de la torre|nombre</translation>
    </message>
    <message>
        <source>action|activity|what was done|done|task|work|kind|type</source>
        <translation>acción|accion|actividad|qué se hizo|que se hizo|hecho|tarea|trabajo|clase|tipo</translation>
    </message>
    <message>
        <source>slot|tray|place|level|tray from below</source>
        <translation>nivel|bandeja|lugar|posición|posicion|piso|bandeja desde abajo</translation>
    </message>
    <message>
        <source>amount|quantity|qty|how much|weight|mass|volume|number</source>
        <translation>cantidad|cuánto|cuanto|peso|masa|volumen|número|numero</translation>
    </message>
    <message>
        <source>unit|units|measure</source>
        <translation>unidad|unidades|medida</translation>
    </message>
    <message>
        <source>item|material|food|feed|scraps|bedding|what|of what|species</source>
        <translation>material|alimento|comida|restos|cama|qué|que|de qué|de que|especie|artículo|articulo</translation>
    </message>
    <message>
        <source>detail|details</source>
        <translation>detalle|detalles</translation>
    </message>
    <message>
        <source>note|notes|remark|remarks|comment|comments|observation|observations|description</source>
        <translation>nota|notas|apunte|apuntes|comentario|comentarios|observación|observacion|observaciones|descripción|descripcion</translation>
    </message>
    <message>
        <source>setup|set up|new stack|stack set up</source>
        <translation>montaje|montar|torre nueva|nueva torre|torre montada</translation>
    </message>
    <message>
        <source>stock|stocked|stocking|worms in|worms put in|worms added|added worms</source>
        <translation>lombrices metidas|meter lombrices|lombrices añadidas|añadir lombrices|lombrices nuevas</translation>
    </message>
    <message>
        <source>bed|bedded|bedding|bedding laid|tray added|added tray|new tray</source>
        <translation>cama|poner cama|cama puesta|cama nueva|bandeja añadida|añadir bandeja|bandeja nueva|nueva bandeja</translation>
    </message>
    <message>
        <source>feed|fed|feeding|food|scraps</source>
        <translation>alimentar|alimentado|alimentación|alimentacion|aporte|aportes|comida|restos|alimento</translation>
    </message>
    <message>
        <source>cover|covered|covering|paper</source>
        <translation>cubierta|cubrir|cubierto|papel|tapar con papel</translation>
    </message>
    <message>
        <source>water|watered|watering|misted</source>
        <translation>agua|regar|regado|riego|rociar|rociado</translation>
    </message>
    <message>
        <source>drain|drained|draining|leachate|sump emptied|emptied</source>
        <translation>drenar|drenado|drenaje|lixiviado|vaciar|vaciado|depósito vaciado|deposito vaciado</translation>
    </message>
    <message>
        <source>flush|flushed|flushing|rinsed</source>
        <translation>enjuagar|enjuague|enjuagado|aclarado</translation>
    </message>
    <message>
        <source>reading|readings|measured|measurement</source>
        <translation>lectura|lecturas|medido|medición|medicion|medida</translation>
    </message>
    <message>
        <source>check|checked|look|looked|inspection|inspected</source>
        <translation>mirar|mirada|mirado|revisar|revisado|revisión|revision|inspección|inspeccion</translation>
    </message>
    <message>
        <source>weigh|weighed|worms weighed|weighing</source>
        <translation>pesar|pesado|pesar lombrices|lombrices pesadas|pesada</translation>
    </message>
    <message>
        <source>count|counted|worms counted</source>
        <translation>contar|contado|contar lombrices|lombrices contadas|recuento</translation>
    </message>
    <message>
        <source>trayweight|tray weight|tray weighed|weight of a tray</source>
        <translation>peso de bandeja|peso de la bandeja|bandeja pesada|pesar bandeja</translation>
    </message>
    <message>
        <source>rotate|rotated|rotation|lifted to the top</source>
        <translation>rotar|rotado|rotación|rotacion|subir|subida|subida arriba|bandeja subida</translation>
    </message>
    <message>
        <source>loosen|loosened</source>
        <translation>aflojar|aflojado</translation>
    </message>
    <message>
        <source>harvest|harvested|castings taken</source>
        <translation>cosecha|cosechar|cosechado|humus retirado|retirar humus</translation>
    </message>
    <message>
        <source>remove|removed|worms taken|worms out|worms given away</source>
        <translation>sacar|sacado|sacar lombrices|lombrices sacadas|lombrices fuera|lombrices regaladas</translation>
    </message>
    <message>
        <source>event|problem|something odd</source>
        <translation>suceso|evento|problema|algo extraño</translation>
    </message>
    <message>
        <source>note|noted|remark|comment</source>
        <translation>nota|anotado|apunte|comentario</translation>
    </message>
    <message>
        <source>retire|retired|given up</source>
        <translation>baja|dar de baja|dada de baja|retirar torre|abandonada</translation>
    </message>
    <message>
        <source>g|gr|gram|grams|gramme|grammes</source>
        <translation>g|gr|gramo|gramos</translation>
    </message>
    <message>
        <source>kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes</source>
        <translation>kg|kgs|kilo|kilos|kilogramo|kilogramos</translation>
    </message>
    <message>
        <source>oz|ounce|ounces</source>
        <translation>oz|onza|onzas</translation>
    </message>
    <message>
        <source>lb|lbs|pound|pounds</source>
        <translation>lb|lbs|libra|libras</translation>
    </message>
    <message>
        <source>ml|millilitre|millilitres|milliliter|milliliters</source>
        <translation>ml|mililitro|mililitros</translation>
    </message>
    <message>
        <source>l|litre|litres|liter|liters</source>
        <translation>l|litro|litros</translation>
    </message>
    <message>
        <source>cup|cups</source>
        <translation>taza|tazas</translation>
    </message>
    <message>
        <source>gal|gallon|gallons</source>
        <translation>gal|galón|galon|galones</translation>
    </message>
    <message>
        <source>floz|fl oz|fluid ounce|fluid ounces</source>
        <translation>floz|fl oz|onza líquida|onza liquida|onzas líquidas|onzas liquidas</translation>
    </message>
    <message>
        <source>count|pieces|worms|pcs</source>
        <translation>recuento|piezas|unidades|lombrices|uds|ud</translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation>Bueno saberlo</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <source>Urgent</source>
        <translation>Urgente</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Lo pendiente</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>No hay nada pendiente.</translation>
    </message>
    <message>
        <source>Estimates of the whole stack, with the range that holds nine times in ten</source>
        <translation>Estimaciones de toda la torre, con el intervalo que se cumple nueve de cada diez veces</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Estimación</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonia</translation>
    </message>
    <message>
        <source>Worms</source>
        <translation>Lombrices</translation>
    </message>
    <message>
        <source>Adults among them</source>
        <translation>De ellas, adultas</translation>
    </message>
    <message>
        <source>Processing, dry matter</source>
        <translation>Procesado, materia seca</translation>
    </message>
    <message>
        <source>Food taken up over what keeps them (above 1 the colony grows)</source>
        <translation>Alimento tomado frente al que las mantiene (por encima de 1 la colonia crece)</translation>
    </message>
    <message>
        <source>Bed temperature</source>
        <translation>Temperatura del lecho</translation>
    </message>
    <message>
        <source>Fresh food next week: least, usual, most</source>
        <translation>Alimento fresco la próxima semana: mínimo, habitual, máximo</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Runs into the sump next week</source>
        <translation>Entra en el depósito la próxima semana</translation>
    </message>
    <message>
        <source>Top tray filled</source>
        <translation>Bandeja superior completa</translation>
    </message>
    <message>
        <source>Sump full, if nobody drains</source>
        <translation>Depósito lleno, si nadie drena</translation>
    </message>
    <message>
        <source>All batches</source>
        <translation>Todos los lotes</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Bandeja</translation>
    </message>
    <message>
        <source>Bedded</source>
        <translation>Cama puesta</translation>
    </message>
    <message>
        <source>Fed, fresh</source>
        <translation>Aportado, fresco</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Miradas</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Retirado</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n feeding(s)</source>
        <translation>
            <numerusform>%1 en %n aporte</numerusform>
            <numerusform>%1 en %n aportes</numerusform>
        </translation>
    </message>
    <message>
        <source>stands</source>
        <translation>en curso</translation>
    </message>
    <message>
        <source>Batch %1, in tray %2, %3 old</source>
        <translation>Lote %1, en la bandeja %2, edad: %3</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Done or seen</source>
        <translation>Hecho o visto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Whole harvests by mass, beside what was expected of them</source>
        <translation>Cosechas enteras en masa, junto a lo que se esperaba de ellas</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Esperado</translation>
    </message>
    <message>
        <source>Within the range</source>
        <translation>Dentro del intervalo</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Precaución: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>with the stack, %1</source>
        <translation>con la torre, %1</translation>
    </message>
    <message>
        <source>Batch %1, in tray %2, %3 old when the stack ended</source>
        <translation>Lote %1, en la bandeja %2, con %3 cuando la torre terminó</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>urgency, what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <comment>urgency, when, what</comment>
        <translation>%1 (%2): %3</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message numerus="yes">
        <source>%n tray(s)</source>
        <translation>
            <numerusform>%n bandeja</numerusform>
            <numerusform>%n bandejas</numerusform>
        </translation>
    </message>
    <message>
        <source>lid on</source>
        <translation>con tapa</translation>
    </message>
    <message>
        <source>lid off</source>
        <translation>sin tapa</translation>
    </message>
    <message>
        <source>The file is open for reading only: nothing can be written down.</source>
        <translation>El archivo está abierto solo para lectura: no se puede anotar nada.</translation>
    </message>
    <message>
        <source>Go back to today to record with one click; “…” records on the day shown.</source>
        <translation>Vuelve a hoy para anotar con un clic; «…» anota en el día mostrado.</translation>
    </message>
    <message>
        <source>No tray stands that takes food.</source>
        <translation>No hay ninguna bandeja que admita alimento.</translation>
    </message>
    <message>
        <source>Feed %1</source>
        <translation>Dar %1</translation>
    </message>
    <message>
        <source>Water %1</source>
        <translation>Regar %1</translation>
    </message>
    <message>
        <source>Drain %1</source>
        <translation>Drenar %1</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation>guardando…</translation>
    </message>
    <message>
        <source>updating…</source>
        <translation>actualizando…</translation>
    </message>
    <message>
        <source>silent for %1</source>
        <translation>sin anotar %1</translation>
    </message>
    <message>
        <source>no tray stands</source>
        <translation>ninguna bandeja puesta</translation>
    </message>
    <message>
        <source>As it stood on %1, the past</source>
        <translation>Como estaba el %1, el pasado</translation>
    </message>
    <message>
        <source>%1 · estimating…</source>
        <translation>%1 · estimando…</translation>
    </message>
    <message>
        <source>%1 · usual feeding about %2 a week</source>
        <translation>%1 · lo habitual, unos %2 por semana</translation>
    </message>
    <message>
        <source>at most %1</source>
        <comment>food that is borne this week</comment>
        <translation>máx. %1</translation>
    </message>
    <message>
        <source>%1 One click writes down %2, with its cover.</source>
        <translation>%1 Un clic anota %2, con su cubierta.</translation>
    </message>
    <message>
        <source>no food now</source>
        <comment>beside the feeding button</comment>
        <translation>sin alimento ahora</translation>
    </message>
    <message>
        <source>The most that is borne this week: more does not fit under the rim of the tray being fed.</source>
        <translation>Lo máximo que se tolera esta semana: más no cabe bajo el borde de la bandeja que recibe alimento.</translation>
    </message>
    <message>
        <source>The most that is borne this week: a tray takes at most %1 a day.</source>
        <translation>Lo máximo que se tolera esta semana: una bandeja admite como máximo %1 al día.</translation>
    </message>
    <message>
        <source>The most that is borne this week: with more, the chance of too little air in the bed is above 5 %.</source>
        <translation>Lo máximo que se tolera esta semana: con más, la probabilidad de que falte aire en el lecho supera el 5 %.</translation>
    </message>
    <message>
        <source>The most that is borne this week: with more, the chance of too warm a bed is above 5 %.</source>
        <translation>Lo máximo que se tolera esta semana: con más, la probabilidad de un lecho demasiado caliente supera el 5 %.</translation>
    </message>
    <message>
        <source>Cover %1</source>
        <translation>Cubrir %1</translation>
    </message>
    <message>
        <source>The most that is borne today: %1 were given within these 7 days, and %2 is the most within any seven.</source>
        <translation>Lo máximo que se tolera hoy: en estos 7 días se dieron %1, y %2 es lo máximo en siete.</translation>
    </message>
    <message>
        <source>The most that is borne this week: half of the worms&apos; weight a day, and they are about %1.</source>
        <translation>Lo máximo que se tolera esta semana: la mitad del peso de las lombrices al día, y pesan unos %1.</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 %2, and %3 of paper over it</source>
        <translation>Anota para hoy, con un clic: %1 %2, y %3 de papel encima</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 %2</source>
        <translation>Anota para hoy, con un clic: %1 %2</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 of %2 over the tray being fed</source>
        <translation>Anota para hoy, con un clic: %1 de %2 sobre la bandeja que recibe alimento</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 of water into the tray being fed</source>
        <translation>Anota para hoy, con un clic: %1 de agua en la bandeja que recibe alimento</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 drained. Not for leaves eaten raw, never drunk; wash your hands. A few worms in it are normal: put them back.</source>
        <translation>Anota para hoy, con un clic: %1 drenados. No en hojas que se comen crudas, nunca para beber; lávate las manos. Es normal que haya unas pocas lombrices: devuélvelas.</translation>
    </message>
    <message>
        <source>%1 will do</source>
        <comment>food that keeps the worms, where no feeding is usual</comment>
        <translation>basta %1</translation>
    </message>
    <message>
        <source>No feeding is usual here: %1 keeps the worms, at most %2 is borne.</source>
        <translation>Aquí no hay aporte habitual: %1 mantiene a las lombrices, se tolera %2 como máximo.</translation>
    </message>
    <message>
        <source>Feed…</source>
        <translation>Alimentar…</translation>
    </message>
    <message>
        <source>Nothing more fits under the rim of the tray being fed, with its cover over it.</source>
        <translation>Ya no cabe nada bajo el borde de la bandeja que se alimenta, con su capa encima.</translation>
    </message>
    <message>
        <source>Only %1 of the usual %2 fit under the rim of the tray being fed, with the cover over it.</source>
        <translation>Solo %1 de los %2 habituales caben bajo el borde de la bandeja que se alimenta, con la capa encima.</translation>
    </message>
    <message>
        <source>%1 The form records what was given all the same.</source>
        <translation>%1 El formulario anota lo que se dio de todos modos.</translation>
    </message>
    <message>
        <source>nothing fits</source>
        <comment>beside the feeding button: under the rim of the tray</comment>
        <translation>no cabe nada</translation>
    </message>
    <message>
        <source>no more fits</source>
        <comment>beside the feeding button: under the rim of the tray</comment>
        <translation>no cabe más</translation>
    </message>
    <message>
        <source>Feed %1 today</source>
        <comment>a button: what is borne today, less than usual</comment>
        <translation>Dar %1 hoy</translation>
    </message>
    <message>
        <source>could take %1 today</source>
        <comment>food that is borne at most</comment>
        <translation>admite %1 hoy</translation>
    </message>
</context>
<context>
    <name>ShelfStrips</name>
    <message>
        <source>processing, dry</source>
        <translation>procesado, en seco</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>drenado</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonia</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Se están haciendo las estimaciones.</translation>
    </message>
    <message>
        <source>(%1)</source>
        <translation>(%1)</translation>
    </message>
    <message>
        <source>Processing %1, dry matter. Runs into the sump %2. Colony %3.</source>
        <translation>Procesado %1, materia seca. Entra en el depósito %2. Colonia %3.</translation>
    </message>
    <message>
        <source>Here grows a line of what is eaten.</source>
        <translation>Aquí crecerá la línea de lo comido.</translation>
    </message>
    <message>
        <source>Here stands a bar for each drain.</source>
        <translation>Aquí habrá una barra por drenaje.</translation>
    </message>
    <message>
        <source>Here grows a line of the worms&apos; mass.</source>
        <translation>Aquí crecerá la línea de su masa.</translation>
    </message>
</context>
<context>
    <name>ShelfVerdict</name>
    <message>
        <source>Worms in the bottom tray are normal: they go down in the light.</source>
        <translation>Es normal que haya lombrices en la bandeja inferior: bajan con la luz.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>what to do, and why</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Bottom tray is ready</source>
        <translation>La bandeja inferior está lista</translation>
    </message>
    <message>
        <source>Ready, no hurry</source>
        <translation>Lista, sin prisa</translation>
    </message>
    <message>
        <source>Ready soon</source>
        <translation>Lista pronto</translation>
    </message>
    <message>
        <source>Harvest is overdue</source>
        <translation>La cosecha va atrasada</translation>
    </message>
    <message>
        <source>Time for another tray</source>
        <translation>Hora de otra bandeja</translation>
    </message>
    <message>
        <source>A step came early</source>
        <translation>Un paso llegó pronto</translation>
    </message>
    <message>
        <source>Feeding is due</source>
        <translation>Toca alimentar</translation>
    </message>
    <message>
        <source>Overfed</source>
        <translation>Demasiado alimento</translation>
    </message>
    <message>
        <source>Hungry</source>
        <translation>Con hambre</translation>
    </message>
    <message>
        <source>Short of paper</source>
        <translation>Falta papel</translation>
    </message>
    <message>
        <source>Too wet</source>
        <translation>Demasiado mojada</translation>
    </message>
    <message>
        <source>Too dry</source>
        <translation>Demasiado seca</translation>
    </message>
    <message>
        <source>Little runs out</source>
        <translation>Sale poco</translation>
    </message>
    <message>
        <source>Much runs out</source>
        <translation>Sale mucho</translation>
    </message>
    <message>
        <source>It gets too hot</source>
        <translation>Se calienta demasiado</translation>
    </message>
    <message>
        <source>It gets too cold</source>
        <translation>Se enfría demasiado</translation>
    </message>
    <message>
        <source>Light-drying is done</source>
        <translation>Secado a la luz terminado</translation>
    </message>
    <message>
        <source>Cocoons and some young always stay in the castings.</source>
        <translation>En el humus siempre quedan capullos y algunas crías.</translation>
    </message>
    <message>
        <source>Drying for long</source>
        <translation>Lleva mucho secándose</translation>
    </message>
    <message>
        <source>The record is silent</source>
        <translation>Hace mucho sin anotar</translation>
    </message>
    <message>
        <source>Top tray is full</source>
        <translation>La bandeja superior está llena</translation>
    </message>
    <message>
        <source>Drain the sump</source>
        <translation>Drena el depósito</translation>
    </message>
    <message>
        <source>A few worms in the sump are normal: put them back.</source>
        <translation>Es normal que haya unas pocas lombrices en el depósito: devuélvelas.</translation>
    </message>
    <message>
        <source>A look would tell</source>
        <translation>Mirar lo aclararía</translation>
    </message>
    <message>
        <source>The record does not fit</source>
        <translation>Lo anotado no cuadra</translation>
    </message>
    <message>
        <source>About %1 of its worms are still in it.</source>
        <translation>Queda en ella un %1 de sus lombrices.</translation>
    </message>
    <message>
        <source>Take the castings.</source>
        <translation>Retira el humus.</translation>
    </message>
    <message>
        <source>Leave it in the light; most worms go down in 2 to 7 days.</source>
        <translation>Déjala a la luz; la mayoría de las lombrices baja en 2 a 7 días.</translation>
    </message>
    <message>
        <source>Light-drying is done, day %1</source>
        <translation>Secado a la luz terminado, día %1</translation>
    </message>
    <message>
        <source>Light-drying, day %1</source>
        <translation>Secado a la luz, día %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Feed-to-cast %1, ready with %2&#xa0;%.</source>
        <translation>Alimento/humus %1, lista con %2&#xa0;%.</translation>
    </message>
    <message>
        <source>Ready about %1.</source>
        <translation>Lista: %1.</translation>
    </message>
    <message>
        <source>Bottom tray is nearly ready</source>
        <translation>La bandeja inferior está casi lista</translation>
    </message>
    <message>
        <source>Young stack</source>
        <translation>Torre joven</translation>
    </message>
    <message>
        <source>Castings %1 deep so far; another tray at %2. %3</source>
        <translation>Humus: %1 de espesor por ahora; otra bandeja con %2. %3</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Trabajando</translation>
    </message>
    <message>
        <source>No tray stands</source>
        <translation>Ninguna bandeja puesta</translation>
    </message>
    <message>
        <source>Lay bedding in a tray to begin.</source>
        <translation>Pon cama en una bandeja para empezar.</translation>
    </message>
    <message>
        <source>Estimating…</source>
        <translation>Estimando…</translation>
    </message>
    <message>
        <source>Trays are drawn from the journal; depths follow in a moment.</source>
        <translation>Las bandejas se dibujan según el diario; los espesores llegan enseguida.</translation>
    </message>
    <message>
        <source>No entry for %1</source>
        <translation>Sin anotaciones desde hace %1</translation>
    </message>
    <message>
        <source>No worms in it</source>
        <translation>Sin lombrices</translation>
    </message>
    <message>
        <source>Tray in slot %1 is ready</source>
        <translation>Bandeja del nivel %1 lista</translation>
    </message>
    <message>
        <source>The estimates take it that hardly any food and no water were given since, but by a routine. Write down what was done since, or look into a tray.</source>
        <translation>Las estimaciones suponen que desde entonces no se dio agua ni apenas alimento, salvo por una rutina. Anota lo hecho desde entonces, o mira en una bandeja.</translation>
    </message>
</context>
<context>
    <name>ShelfWords</name>
    <message>
        <source>new</source>
        <comment>a tray without castings</comment>
        <translation>nueva</translation>
    </message>
    <message>
        <source>Tray, batch %1</source>
        <translation>Bandeja, lote %1</translation>
    </message>
    <message>
        <source>Bottom tray, slot 1 of %1, batch %2</source>
        <translation>Bandeja inferior, nivel 1 de %1, lote %2</translation>
    </message>
    <message>
        <source>Top tray, slot %1 of %1, batch %2</source>
        <translation>Bandeja superior, nivel %1 de %1, lote %2</translation>
    </message>
    <message>
        <source>Tray in slot %1 of %2, batch %3</source>
        <translation>Bandeja en el nivel %1 de %2, lote %3</translation>
    </message>
    <message>
        <source>castings %1</source>
        <translation>humus %1</translation>
    </message>
    <message>
        <source>softened %1</source>
        <translation>ablandado %1</translation>
    </message>
    <message>
        <source>food %1</source>
        <translation>alimento %1</translation>
    </message>
    <message>
        <source>bedding %1</source>
        <translation>cama %1</translation>
    </message>
    <message>
        <source>nothing in it</source>
        <translation>nada en ella</translation>
    </message>
    <message>
        <source>from the floor up: %1</source>
        <translation>desde el fondo: %1</translation>
    </message>
    <message>
        <source>light-drying, day %1</source>
        <translation>secado a la luz, día %1</translation>
    </message>
    <message>
        <source>food goes in here</source>
        <translation>aquí va el alimento</translation>
    </message>
    <message>
        <source>working</source>
        <translation>trabajando</translation>
    </message>
    <message>
        <source>nearly</source>
        <translation>casi lista</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>atrasada</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>secándose</translation>
    </message>
    <message>
        <source>estimating…</source>
        <translation>estimando…</translation>
    </message>
    <message>
        <source>being fed</source>
        <translation>se alimenta</translation>
    </message>
    <message>
        <source>%1 old</source>
        <translation>edad: %1</translation>
    </message>
    <message>
        <source>estimating</source>
        <translation>estimando</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Se están haciendo las estimaciones.</translation>
    </message>
    <message>
        <source>feed-to-cast %1</source>
        <translation>alimento/humus %1</translation>
    </message>
    <message>
        <source>%1, chance %2</source>
        <translation>%1, probabilidad %2</translation>
    </message>
    <message>
        <source>worms %1</source>
        <translation>lombrices %1</translation>
    </message>
    <message>
        <source>Worms in the bottom tray are normal: they go down in the light.</source>
        <translation>Es normal que haya lombrices en la bandeja inferior: bajan con la luz.</translation>
    </message>
    <message>
        <source>Most worms leave in 2 to 7 days; cocoons and some young go with the castings.</source>
        <translation>La mayoría de las lombrices se va en 2 a 7 días; los capullos y algunas crías se van con el humus.</translation>
    </message>
    <message>
        <source>sump of %1</source>
        <translation>depósito de %1</translation>
    </message>
    <message>
        <source>spigot open</source>
        <translation>grifo abierto</translation>
    </message>
    <message>
        <source>spigot shut</source>
        <translation>grifo cerrado</translation>
    </message>
    <message>
        <source>Sump</source>
        <translation>Depósito</translation>
    </message>
    <message>
        <source>holds up to %1; %2; estimating</source>
        <translation>contiene hasta %1; %2; estimando</translation>
    </message>
    <message>
        <source>%1 in it, room for %2; %3</source>
        <translation>%1 dentro, caben %2; %3</translation>
    </message>
    <message>
        <source>A few worms in the sump are normal: put them back.</source>
        <translation>Es normal que haya unas pocas lombrices en el depósito: devuélvelas.</translation>
    </message>
    <message>
        <source>colony %1 · %2</source>
        <translation>colonia %1 · %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>fed %1 %2</source>
        <comment>an amount and a day</comment>
        <translation>aporte %1 %2</translation>
    </message>
    <message>
        <source>drained %1</source>
        <comment>a day</comment>
        <translation>drenaje %1</translation>
    </message>
    <message>
        <source>chance %1</source>
        <comment>that a tray is ready</comment>
        <translation>probabilidad %1</translation>
    </message>
    <message>
        <source>%1; since about %2</source>
        <translation>%1; desde: %2</translation>
    </message>
    <message>
        <source>%1; about %2</source>
        <translation>%1; fecha: %2</translation>
    </message>
    <message>
        <source>Feed-to-cast</source>
        <translation>Alimento/humus</translation>
    </message>
    <message>
        <source>%1; ready at 0.10 or below</source>
        <translation>%1; lista con 0,10 o menos</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>%1 deep, %2 dry</source>
        <translation>%1 de espesor, %2 en seco</translation>
    </message>
    <message>
        <source>Put in, dry</source>
        <translation>Metido, en seco</translation>
    </message>
    <message>
        <source>Worms in it</source>
        <translation>Lombrices en ella</translation>
    </message>
    <message>
        <source>Cocoons</source>
        <translation>Capullos</translation>
    </message>
    <message>
        <source>Weight, tray and all</source>
        <translation>Peso, con bandeja y todo</translation>
    </message>
    <message>
        <source>Bulk that stays</source>
        <translation>Material que se queda</translation>
    </message>
    <message>
        <source>%1 dry: use as it is, or sift</source>
        <translation>%1 en seco: úsalo como está o tamízalo</translation>
    </message>
    <message>
        <source>Bedded</source>
        <translation>Cama puesta</translation>
    </message>
    <message>
        <source>%1, %2 ago; tray %3</source>
        <comment>a day, how long ago, the tray&apos;s number</comment>
        <translation>%1, hace %2; bandeja %3</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Dentro</translation>
    </message>
    <message>
        <source>%1, of %2; %3</source>
        <translation>%1, de %2; %3</translation>
    </message>
    <message>
        <source>Full about</source>
        <translation>Lleno</translation>
    </message>
    <message>
        <source>Runs in now</source>
        <translation>Entra ahora</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>about %1 mS/cm</source>
        <translation>unos %1 mS/cm</translation>
    </message>
</context>
<context>
    <name>SlotChoices</name>
    <message>
        <source>the one being fed (slot %1)</source>
        <translation>la que recibe alimento (nivel %1)</translation>
    </message>
    <message>
        <source>the one being fed</source>
        <translation>la que recibe alimento</translation>
    </message>
    <message>
        <source>the whole stack</source>
        <translation>toda la torre</translation>
    </message>
    <message>
        <source>the top one</source>
        <translation>la superior</translation>
    </message>
    <message>
        <source>the drying one (slot %1)</source>
        <translation>la que se seca (nivel %1)</translation>
    </message>
    <message>
        <source>slot %1: tray %2, %3</source>
        <translation>nivel %1: bandeja %2, %3</translation>
    </message>
    <message>
        <source>slot %1, which is not there that day</source>
        <translation>nivel %1, que no existe ese día</translation>
    </message>
</context>
<context>
    <name>Sources</name>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>memory, weak</source>
        <translation>de memoria, poco seguro</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>de segunda mano</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>read in abstract</source>
        <translation>leído en el resumen</translation>
    </message>
    <message>
        <source>abstract</source>
        <translation>resumen</translation>
    </message>
    <message>
        <source>abstracts</source>
        <translation>resúmenes</translation>
    </message>
    <message>
        <source>about</source>
        <translation>aproximado</translation>
    </message>
    <message>
        <source>our judgement</source>
        <translation>juicio propio</translation>
    </message>
    <message>
        <source>judgement</source>
        <translation>juicio</translation>
    </message>
    <message>
        <source>a rule of this program</source>
        <translation>una regla de este programa</translation>
    </message>
    <message>
        <source>this program&apos;s estimate</source>
        <translation>la estimación de este programa</translation>
    </message>
    <message>
        <source>local code rules</source>
        <translation>mandan las normas locales</translation>
    </message>
    <message>
        <source>rest memory</source>
        <translation>el resto de memoria</translation>
    </message>
    <message>
        <source>loose bulk and water memory</source>
        <translation>densidad suelta y agua de memoria</translation>
    </message>
    <message>
        <source>N and C:N memory</source>
        <translation>N y C:N de memoria</translation>
    </message>
    <message>
        <source>C:N from 50 % carbon</source>
        <translation>C:N a partir de un 50 % de carbono</translation>
    </message>
    <message>
        <source>kept for completeness</source>
        <translation>por completitud</translation>
    </message>
    <message>
        <source>not recommended (peatland)</source>
        <translation>no recomendada (turberas)</translation>
    </message>
    <message>
        <source>ours: an assumed mixture, not for checks</source>
        <translation>nuestra: una mezcla supuesta, no para comprobar</translation>
    </message>
    <message>
        <source>not a carbon source</source>
        <translation>no aporta carbono</translation>
    </message>
    <message>
        <source>check for dewormers</source>
        <translation>atención a los antiparasitarios</translation>
    </message>
    <message>
        <source>N = protein/6.25, C = (100-ash)/1.8 of dry matter</source>
        <translation>N = proteína/6,25, C = (100 − ceniza)/1,8 de la materia seca</translation>
    </message>
    <message>
        <source>softening class, bulk, water held and welcome</source>
        <translation>clase de ablandamiento, densidad, agua retenida y si es bienvenido</translation>
    </message>
    <message>
        <source>softening class, bulk and water held</source>
        <translation>clase de ablandamiento, densidad y agua retenida</translation>
    </message>
    <message>
        <source>kept out</source>
        <translation>se deja fuera</translation>
    </message>
    <message>
        <source>round figures from memory of the USDA National Nutrient Database</source>
        <translation>cifras redondas de la USDA National Nutrient Database, de memoria</translation>
    </message>
    <message>
        <source>composition</source>
        <translation>composición</translation>
    </message>
    <message>
        <source>composition as of spent tea</source>
        <translation>composición como la del té usado</translation>
    </message>
    <message>
        <source>composition as of horse manure</source>
        <translation>composición como la del estiércol de caballo</translation>
    </message>
    <message>
        <source>composition as of office paper</source>
        <translation>composición como la del papel de oficina</translation>
    </message>
    <message>
        <source>composition as of shavings</source>
        <translation>composición como la de las virutas</translation>
    </message>
    <message>
        <source>that many bags hold plastic</source>
        <translation>que muchas bolsitas llevan plástico</translation>
    </message>
    <message>
        <source>that they carry a colour developer</source>
        <translation>que llevan un revelador de color</translation>
    </message>
    <message>
        <source>a third of it clay and size</source>
        <translation>un tercio es arcilla y cola</translation>
    </message>
    <message>
        <source>welcome</source>
        <translation>si es bienvenido</translation>
    </message>
    <message>
        <source>caustic, it burns worms and skin</source>
        <translation>cáustica, quema lombrices y piel</translation>
    </message>
    <message>
        <source>the only lime for a sour bed, never slaked or quick lime</source>
        <translation>la única cal para una cama ácida, nunca cal apagada ni viva</translation>
    </message>
    <message>
        <source>softens in hot piles, not in a worm bin</source>
        <translation>se ablanda en pilas calientes, no en una vermicompostera</translation>
    </message>
    <message>
        <source>bulk 21-36 kg/m3 and 3 parts water to 1 paper</source>
        <translation>densidad 21-36 kg/m³ y 3 partes de agua por 1 de papel</translation>
    </message>
    <message>
        <source>about 94 % CaCO3</source>
        <translation>alrededor de un 94 % de CaCO3</translation>
    </message>
    <message>
        <source>C:N 40-80 read</source>
        <translation>C:N 40-80 leído</translation>
    </message>
    <message>
        <source>C:N 20 NRAES-54 second hand</source>
        <translation>C:N 20 según NRAES-54, de segunda mano</translation>
    </message>
    <message>
        <source>C:N 19 second hand</source>
        <translation>C:N 19 de segunda mano</translation>
    </message>
    <message>
        <source>Golueke 1972 read</source>
        <translation>Golueke 1972, leído</translation>
    </message>
    <message>
        <source>40-80 kg/m3 dry</source>
        <translation>40-80 kg/m³ en seco</translation>
    </message>
    <message>
        <source>holds 7.5-11</source>
        <translation>retiene 7,5-11</translation>
    </message>
    <message>
        <source>water Spiehs et al. 2013 (3.6 g/g when fine)</source>
        <translation>agua Spiehs et al. 2013 (3,6 g/g si es fina)</translation>
    </message>
    <message>
        <source>NRAES-54 nitrogen</source>
        <translation>NRAES-54, nitrógeno</translation>
    </message>
    <message>
        <source>NRAES-54 table A.1</source>
        <translation>NRAES-54, tabla A.1</translation>
    </message>
    <message>
        <source>NRAES-54 softwood 212-1313</source>
        <translation>NRAES-54, madera blanda 212-1313</translation>
    </message>
    <message>
        <source>NRAES-54 C:N range 398-852</source>
        <translation>NRAES-54, C:N 398-852</translation>
    </message>
    <message>
        <source>NRAES-54 broiler and layer manure (N 1.6-10, C:N 3-14)</source>
        <translation>NRAES-54, gallinaza de engorde y de puesta (N 1,6-10, C:N 3-14)</translation>
    </message>
    <message>
        <source>NRAES-54 vegetable produce</source>
        <translation>NRAES-54, hortalizas</translation>
    </message>
    <message>
        <source>fresh food a day for their own mass of worms</source>
        <translation>alimento fresco al día por la misma masa de lombrices</translation>
    </message>
    <message>
        <source>parts of water for one of paper</source>
        <translation>partes de agua por una de papel</translation>
    </message>
    <message>
        <source>common practice (a wrung-out sponge), no source</source>
        <translation>práctica común (una esponja escurrida), sin fuente</translation>
    </message>
    <message>
        <source>the share itself is ours</source>
        <translation>la proporción es juicio propio</translation>
    </message>
    <message>
        <source>for composting</source>
        <translation>para compostar</translation>
    </message>
    <message>
        <source>the middle of Cooperband 2002</source>
        <translation>el punto medio de Cooperband 2002</translation>
    </message>
    <message>
        <source>as fitted for the model</source>
        <translation>tal como se ajustó al modelo</translation>
    </message>
    <message>
        <source>a litre of moist castings</source>
        <translation>un litro de humus húmedo</translation>
    </message>
    <message>
        <source>at 25 °C</source>
        <translation>a 25 °C</translation>
    </message>
    <message>
        <source>Lalander et al. 2015 and Zziwa et al. 2021</source>
        <translation>Lalander et al. 2015 y Zziwa et al. 2021</translation>
    </message>
    <message>
        <source>46 to 60 % lost</source>
        <translation>se pierde del 46 al 60 %</translation>
    </message>
    <message>
        <source>after the hatching time of Venter &amp; Reinecke 1988</source>
        <translation>según el tiempo de eclosión de Venter &amp; Reinecke 1988</translation>
    </message>
    <message>
        <source>a journal&apos;s abstract</source>
        <translation>resumen en una revista</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>materia seca</translation>
    </message>
    <message>
        <source>the same as in the reckoning</source>
        <translation>la misma que en el cálculo</translation>
    </message>
    <message>
        <source>where the entry names none</source>
        <translation>si la anotación no la indica</translation>
    </message>
    <message>
        <source>it differs from place to place: measure yours</source>
        <translation>varía de un lugar a otro: mide la tuya</translation>
    </message>
    <message>
        <source>an empty tray, where none was weighed</source>
        <translation>una bandeja vacía, si no se pesó ninguna</translation>
    </message>
    <message>
        <source>for a square metre, once</source>
        <translation>por metro cuadrado, una vez</translation>
    </message>
    <message>
        <source>from egg to fly in a warm room</source>
        <translation>de huevo a mosca en un cuarto cálido</translation>
    </message>
    <message>
        <source>revised NIOSH lifting equation</source>
        <translation>ecuación de levantamiento NIOSH revisada</translation>
    </message>
    <message>
        <source>NIOSH lifting equation</source>
        <translation>ecuación de levantamiento NIOSH</translation>
    </message>
    <message>
        <source>the tray&apos;s weight</source>
        <translation>el peso de la bandeja</translation>
    </message>
    <message>
        <source>moulds</source>
        <translation>mohos</translation>
    </message>
    <message>
        <source>Queensland WorkSafe and New Zealand health pages</source>
        <translation>Queensland WorkSafe y páginas de salud de Nueva Zelanda</translation>
    </message>
    <message>
        <source>dewormers</source>
        <translation>antiparasitarios</translation>
    </message>
    <message>
        <source>cat and dog waste</source>
        <translation>excrementos de gato y perro</translation>
    </message>
    <message>
        <source>tetanus and pregnancy</source>
        <translation>tétanos y embarazo</translation>
    </message>
    <message>
        <source>fitted within the range to measured pots</source>
        <translation>ajustado dentro del intervalo a macetas medidas</translation>
    </message>
    <message>
        <source>0.70 g/d fresh x M^(2/3)</source>
        <translation>0,70 g/d en fresco × M^(2/3)</translation>
    </message>
    <message>
        <source>0.25 to 0.5 of their mass a day, fresh</source>
        <translation>0,25 a 0,5 de su masa al día, en fresco</translation>
    </message>
    <message>
        <source>worm yield 3.5 to 10 % of DM</source>
        <translation>rendimiento de lombrices 3,5 a 10 % de la materia seca</translation>
    </message>
    <message>
        <source>0.0036: 58 J/d at 1 g, 25 C; 16 kJ/g DM</source>
        <translation>0,0036: 58 J/d a 1 g, 25 °C; 16 kJ/g de materia seca</translation>
    </message>
    <message>
        <source>2.45 cocoons a week, peak 4.9</source>
        <translation>2,45 capullos por semana, máximo 4,9</translation>
    </message>
    <message>
        <source>23 d at 25 C</source>
        <translation>23 d a 25 °C</translation>
    </message>
    <message>
        <source>mean life 590 d</source>
        <translation>vida media 590 d</translation>
    </message>
    <message>
        <source>Michon 1954 through a review</source>
        <translation>Michon 1954 según una revisión</translation>
    </message>
    <message>
        <source>1.6 best</source>
        <translation>1,6 lo mejor</translation>
    </message>
    <message>
        <source>x1.5 to 3.8 on decay</source>
        <translation>×1,5 a 3,8 sobre la descomposición</translation>
    </message>
    <message>
        <source>a thesis of Makerere University</source>
        <translation>una tesis de la Makerere University</translation>
    </message>
    <message>
        <source>whole-bin loss 0.46 to 0.60</source>
        <translation>pérdida del conjunto 0,46 a 0,60</translation>
    </message>
    <message>
        <source>within its range for the timing of the trade</source>
        <translation>dentro de su intervalo según los plazos habituales</translation>
    </message>
    <message>
        <source>leachate 2.6 mS/cm</source>
        <translation>lixiviado 2,6 mS/cm</translation>
    </message>
    <message>
        <source>1.5 to 3 harmless</source>
        <translation>de 1,5 a 3 inocuo</translation>
    </message>
    <message>
        <source>Beta(2, 18) as a logit-normal of the same median and 90 % range</source>
        <translation>Beta(2, 18) como logit-normal de igual mediana e intervalo del 90 %</translation>
    </message>
    <message>
        <source>tetanus</source>
        <translation>tétanos</translation>
    </message>
</context>
<context>
    <name>Stages</name>
    <message>
        <source>spigot open</source>
        <translation>grifo abierto</translation>
    </message>
    <message>
        <source>sump</source>
        <translation>depósito</translation>
    </message>
    <message>
        <source>ready: castings</source>
        <translation>lista: humus</translation>
    </message>
    <message>
        <source>working</source>
        <translation>trabajando</translation>
    </message>
    <message>
        <source>fed here</source>
        <translation>aquí se alimenta</translation>
    </message>
    <message>
        <source>bedding and worms</source>
        <translation>cama y lombrices</translation>
    </message>
    <message>
        <source>The first day: one tray of wet bedding over the sump, worms in it, the spigot open.</source>
        <translation>El primer día: una bandeja de cama mojada sobre el depósito, lombrices dentro, el grifo abierto.</translation>
    </message>
    <message>
        <source>castings</source>
        <translation>humus</translation>
    </message>
    <message>
        <source>fresh bedding</source>
        <translation>cama fresca</translation>
    </message>
    <message>
        <source>A new tray of bedding on top of one that is filled.</source>
        <translation>Una bandeja nueva de cama sobre una completa.</translation>
    </message>
    <message>
        <source>food under cover</source>
        <translation>alimento cubierto</translation>
    </message>
    <message>
        <source>A feeding lies flat under the cover; castings gather at the floor.</source>
        <translation>Un aporte queda plano bajo la cubierta; el humus se junta en el fondo.</translation>
    </message>
    <message>
        <source>drips through</source>
        <translation>gotea</translation>
    </message>
    <message>
        <source>What the tray does not hold runs into the sump: this one wants draining.</source>
        <translation>Lo que la bandeja no retiene llega al depósito: a este le toca drenar.</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>completa</translation>
    </message>
    <message>
        <source>The first tray is filled, the second is fed from now on.</source>
        <translation>La primera bandeja está completa; desde ahora se alimenta la segunda.</translation>
    </message>
    <message>
        <source>A stack in full work: oldest castings at the bottom, food at the top.</source>
        <translation>Una torre a pleno trabajo: el humus más viejo abajo, el alimento arriba.</translation>
    </message>
    <message>
        <source>drying, lid off</source>
        <translation>secándose, sin tapa</translation>
    </message>
    <message>
        <source>The bottom tray stands on top, lid off, loosened: its worms go down from the light. Feed only the tray below it.</source>
        <translation>La bandeja inferior está arriba, sin tapa, aflojada: sus lombrices bajan huyendo de la luz. Alimenta solo la bandeja de debajo.</translation>
    </message>
    <message>
        <source>bedded anew</source>
        <translation>con cama nueva</translation>
    </message>
    <message>
        <source>The castings are taken; the tray is bedded anew and stands on top.</source>
        <translation>El humus está retirado; la bandeja tiene cama nueva y está arriba.</translation>
    </message>
    <message>
        <source>Two stacks of one: each goes on with a part of the colony.</source>
        <translation>Dos torres de una: cada una sigue con una parte de la colonia.</translation>
    </message>
    <message>
        <source>new stack</source>
        <translation>torre nueva</translation>
    </message>
</context>
<context>
    <name>StockBody</name>
    <message>
        <source>Worms</source>
        <translation>Lombrices</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>¿Cuánto pesan las lombrices?</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Contadas</translation>
    </message>
    <message>
        <source>only if you counted them; else a mixed colony is taken</source>
        <translation>solo si las contaste; si no, se supone una colonia mixta</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Especie</translation>
    </message>
    <message>
        <source>%1 (usual)</source>
        <translation>%1 (habitual)</translation>
    </message>
    <message>
        <source>this stack was stocked with another species before; the latest rules its reckoning</source>
        <translation>antes se metió otra especie en esta torre; la última manda en su cálculo</translation>
    </message>
</context>
<context>
    <name>StoreText</name>
    <message>
        <source>%1 could not be written: the disk is full. Nothing of it was kept.</source>
        <translation>%1 no se pudo escribir: el disco está lleno. No se conservó nada de ello.</translation>
    </message>
    <message>
        <source>%1 could not be written: the household file is damaged. Nothing of it was kept.</source>
        <translation>%1 no se pudo escribir: el archivo del hogar está dañado. No se conservó nada de ello.</translation>
    </message>
    <message>
        <source>%1 could not be written: there is no permission for its folder, or no such folder.</source>
        <translation>%1 no se pudo escribir: no hay permiso para su carpeta, o no existe esa carpeta.</translation>
    </message>
    <message>
        <source>%1 could not be written. Nothing of it was kept. The reason given: %2.</source>
        <translation>%1 no se pudo escribir. No se conservó nada de ello. El motivo indicado: %2.</translation>
    </message>
    <message>
        <source>%1 could not be written: what the disk gave back is not what was written. Nothing of it was kept.</source>
        <translation>%1 no se pudo escribir: lo que devolvió el disco no es lo que se escribió. No se conservó nada de ello.</translation>
    </message>
    <message>
        <source>%1 is there already. It was left as it is.</source>
        <translation>%1 ya existe. Se dejó como está.</translation>
    </message>
    <message>
        <source>Called off. Nothing of %1 was kept.</source>
        <translation>Interrumpido. No se conservó nada de %1.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Nothing of it was kept.</source>
        <translation>%1 no se pudo escribir: %2. No se conservó nada de ello.</translation>
    </message>
    <message>
        <source>%1 could not be written: its folder could not be put on the disk. Nothing of it was kept.</source>
        <translation>%1 no se pudo escribir: su carpeta no se pudo asegurar en el disco. No se conservó nada de ello.</translation>
    </message>
    <message>
        <source>The folder chosen for backups is not there: %1.</source>
        <translation>La carpeta elegida para copias de seguridad no está: %1.</translation>
    </message>
    <message>
        <source>No backup could be made; what you record is kept all the same. %1</source>
        <translation>No se pudo hacer ninguna copia de seguridad; lo que anotas se conserva igualmente. %1</translation>
    </message>
    <message>
        <source>The backup was made elsewhere, in %1. %2</source>
        <translation>La copia de seguridad se hizo en otro lugar, en %1. %2</translation>
    </message>
    <message>
        <source>Entry %1 has meanwhile been changed or deleted. Nothing was written; look at the journal and try again.</source>
        <translation>La anotación %1 se cambió o se borró entretanto. No se escribió nada; mira el diario y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>An entry holds something that is not a number in %1. Nothing was written.</source>
        <translation>Una anotación contiene algo que no es un número en %1. No se escribió nada.</translation>
    </message>
    <message>
        <source>Entry %1 cannot be read: %2 makes no sense to this release.</source>
        <translation>La anotación %1 no se puede leer: %2 no tiene sentido para esta versión.</translation>
    </message>
    <message>
        <source>%1 is not there. Nothing was made; check the name and the folder.</source>
        <translation>%1 no está. No se creó nada; revisa el nombre y la carpeta.</translation>
    </message>
    <message>
        <source>%1 is not a household file. It was left as it is; choose another file.</source>
        <translation>%1 no es un archivo de hogar. Se dejó como está; elige otro archivo.</translation>
    </message>
    <message>
        <source>%1 is damaged: it was cut short or changed by something else. It was left as it is; restore a backup.</source>
        <translation>%1 está dañado: se cortó o algo lo cambió. Se dejó como está; restaura una copia de seguridad.</translation>
    </message>
    <message>
        <source>%1 was written by a newer release. It was left as it is and can only be read; update the program to write to it.</source>
        <translation>%1 lo escribió una versión más nueva. Se dejó como está y solo se puede leer; actualiza el programa para escribir en él.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: there is no permission for the file or its folder. It was left as it is; change its permissions.</source>
        <translation>%1 no se puede abrir: no hay permiso para el archivo o su carpeta. Se dejó como está; cambia sus permisos.</translation>
    </message>
    <message>
        <source>%1 is in use by another program. It was left as it is; try again when that program is done.</source>
        <translation>%1 está en uso por otro programa. Se dejó como está; vuelve a intentarlo cuando ese programa acabe.</translation>
    </message>
    <message>
        <source>The disk with %1 is full. Nothing was written; make room and try again.</source>
        <translation>El disco de %1 está lleno. No se escribió nada; haz sitio y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>%1 cannot be opened. It was left as it is.</source>
        <translation>%1 no se puede abrir. Se dejó como está.</translation>
    </message>
    <message>
        <source>The reason given: %1.</source>
        <translation>El motivo indicado: %1.</translation>
    </message>
    <message>
        <source>The disk with %1 did not confirm the write. See that the disk is in order, then look whether the entry is there before it is recorded again. The reason given: %2.</source>
        <translation>El disco de %1 no confirmó la escritura. Comprueba que el disco está bien y mira si la anotación está antes de volver a anotarla. El motivo indicado: %2.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.</source>
        <translation>%1 se movió o se quitó mientras estaba abierto. No se escribió nada; devuélvelo, o ábrelo donde está ahora.</translation>
    </message>
    <message>
        <source>%1 is in use by another program. Nothing was written; try again when that program is done.</source>
        <translation>%1 está en uso por otro programa. No se escribió nada; vuelve a intentarlo cuando ese programa acabe.</translation>
    </message>
    <message>
        <source>%1 is damaged. Nothing was written; restore a backup.</source>
        <translation>%1 está dañado. No se escribió nada; restaura una copia de seguridad.</translation>
    </message>
    <message>
        <source>%1 cannot be written to: there is no permission for the file or its folder. Nothing was written.</source>
        <translation>No se puede escribir en %1: no hay permiso para el archivo o su carpeta. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 could not be read or written. Nothing was changed. The reason given: %2.</source>
        <translation>%1 no se pudo leer o escribir. No se cambió nada. El motivo indicado: %2.</translation>
    </message>
    <message>
        <source>%1 is open for reading only. Nothing was written.</source>
        <translation>%1 está abierto solo para lectura. No se escribió nada.</translation>
    </message>
    <message>
        <source>A reading is not a number. Nothing was written.</source>
        <translation>Una lectura no es un número. No se escribió nada.</translation>
    </message>
    <message>
        <source>Called off. Nothing was written.</source>
        <translation>Interrumpido. No se escribió nada.</translation>
    </message>
    <message>
        <source>The readings have meanwhile been changed by another program. Nothing was written.</source>
        <translation>Otro programa cambió las lecturas entretanto. No se escribió nada.</translation>
    </message>
    <message>
        <source>A reading cannot be read: its day or kind makes no sense to this release.</source>
        <translation>Una lectura no se puede leer: su día o su clase no tiene sentido para esta versión.</translation>
    </message>
    <message>
        <source>The entry of this picture is not there any more. Nothing was written.</source>
        <translation>La anotación de esta foto ya no está. No se escribió nada.</translation>
    </message>
    <message>
        <source>The picture has meanwhile been changed or deleted. Nothing was written.</source>
        <translation>La foto se cambió o se borró entretanto. No se escribió nada.</translation>
    </message>
    <message>
        <source>%1 is not there, but %2 beside it holds the last writes of a household that was. Nothing was made; put the household back beside it, or move it away.</source>
        <translation>%1 no está, pero %2, a su lado, guarda lo último que escribió un hogar que existió. No se creó nada; vuelve a poner el hogar a su lado, o llévate ese archivo.</translation>
    </message>
    <message>
        <source>%1 was written by an older release and has to be brought up to date, but the backup that is made before could not be. It was left as it is and can be read. %2</source>
        <translation>%1 lo escribió una versión anterior y hay que actualizarlo, pero no se pudo hacer la copia de seguridad previa. Se dejó como está y se puede leer. %2</translation>
    </message>
    <message>
        <source>The step before this one could not be written, so this one was not tried. Nothing of it was written.</source>
        <translation>El paso anterior a este no se pudo escribir, así que este no se intentó. No se escribió nada de él.</translation>
    </message>
    <message>
        <source>Another program has changed this meanwhile. What it wrote was kept, and nothing was written.</source>
        <translation>Otro programa cambió esto entretanto. Lo que escribió se conservó, y no se escribió nada.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while this was written. Nothing was written; close that program and try again.</source>
        <translation>Otro programa quitó el registro de escritura de %1 mientras se escribía esto. No se escribió nada; cierra ese programa y vuelve a intentarlo.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while it was open here. The file was opened anew; nothing that was recorded is missing.</source>
        <translation>Otro programa quitó el registro de escritura de %1 mientras el archivo estaba abierto aquí. El archivo se abrió de nuevo; no falta nada de lo anotado.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while it was open here, and entries with it or out of the file. Look at the journal, and at the backups for what is missing.</source>
        <translation>Otro programa quitó el registro de escritura de %1 mientras el archivo estaba abierto aquí, y con él o del archivo, entradas. Mira el diario, y las copias de seguridad para lo que falte.</translation>
    </message>
</context>
<context>
    <name>SumpFields</name>
    <message>
        <source>Conductivity</source>
        <translation>Conductividad</translation>
    </message>
    <message>
        <source>mS/cm</source>
        <translation>mS/cm</translation>
    </message>
    <message>
        <source>Worms put back</source>
        <translation>Lombrices devueltas</translation>
    </message>
</context>
<context>
    <name>SymptomWords</name>
    <message>
        <source>It smells</source>
        <translation>Huele</translation>
    </message>
    <message>
        <source>Flies</source>
        <translation>Moscas</translation>
    </message>
    <message>
        <source>Mites</source>
        <translation>Ácaros</translation>
    </message>
    <message>
        <source>Ants</source>
        <translation>Hormigas</translation>
    </message>
    <message>
        <source>Worms leave</source>
        <translation>Las lombrices se van</translation>
    </message>
    <message>
        <source>Worms die</source>
        <translation>Mueren lombrices</translation>
    </message>
    <message>
        <source>Mould</source>
        <translation>Moho</translation>
    </message>
    <message>
        <source>Sour bed</source>
        <translation>Lecho ácido</translation>
    </message>
    <message>
        <source>It is hot inside</source>
        <translation>Hace calor dentro</translation>
    </message>
    <message>
        <source>Standing water</source>
        <translation>Agua parada</translation>
    </message>
    <message>
        <source>Too few worms</source>
        <translation>Muy pocas lombrices</translation>
    </message>
    <message>
        <source>No castings</source>
        <translation>Sin humus</translation>
    </message>
    <message>
        <source>More food than the worms and the air can take</source>
        <translation>Más alimento del que admiten las lombrices y el aire</translation>
    </message>
    <message>
        <source>The bed is too wet</source>
        <translation>El lecho está demasiado mojado</translation>
    </message>
    <message>
        <source>The bed is too dry</source>
        <translation>El lecho está demasiado seco</translation>
    </message>
    <message>
        <source>The sump is full</source>
        <translation>El depósito está lleno</translation>
    </message>
    <message>
        <source>The bed is too hot</source>
        <translation>El lecho está demasiado caliente</translation>
    </message>
    <message>
        <source>The bed is too cold</source>
        <translation>El lecho está demasiado frío</translation>
    </message>
    <message>
        <source>The worms are hungry</source>
        <translation>Las lombrices tienen hambre</translation>
    </message>
    <message>
        <source>Food that does not belong in</source>
        <translation>Alimento que no debe ir dentro</translation>
    </message>
    <message>
        <source>Food lies open</source>
        <translation>Hay alimento al descubierto</translation>
    </message>
    <message>
        <source>Too much nitrogen, too little carbon</source>
        <translation>Demasiado nitrógeno, poco carbono</translation>
    </message>
    <message>
        <source>The stack is still young</source>
        <translation>La torre es todavía joven</translation>
    </message>
    <message>
        <source>Crowded, or castings left in too long</source>
        <translation>Falta sitio, o el humus lleva demasiado tiempo dentro</translation>
    </message>
    <message>
        <source>The worms are new here, or were moved</source>
        <translation>Las lombrices son nuevas aquí o se han movido</translation>
    </message>
    <message>
        <source>wettest tray (slot %1) holds %2 of the water it can hold</source>
        <translation>la bandeja más mojada (nivel %1) tiene %2 del agua que puede retener</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>driest tray (slot %1) holds %2 of the water it can hold</source>
        <translation>la bandeja más seca (nivel %1) tiene %2 del agua que puede retener</translation>
    </message>
    <message>
        <source>pressed in the hand: %1 on the scale from one, dry, to five, streaming</source>
        <translation>apretado en la mano: %1 en la escala de uno, seco, a cinco, chorreando</translation>
    </message>
    <message>
        <source>air in the worst tray %1, where one is all that worms want</source>
        <translation>aire en la peor bandeja %1, donde uno es todo lo que quieren las lombrices</translation>
    </message>
    <message>
        <source>fed %1 of the worms&apos; own mass a day, in two weeks</source>
        <translation>aporte de %1 de la masa de las lombrices al día, en dos semanas</translation>
    </message>
    <message>
        <source>%1 of softened food waits in slot %2</source>
        <translation>%1 de alimento ablandado esperan en el nivel %2</translation>
    </message>
    <message>
        <source>the sump is filled to %1</source>
        <translation>el depósito está lleno al %1</translation>
    </message>
    <message>
        <source>bed estimated at %1</source>
        <translation>lecho estimado a %1</translation>
    </message>
    <message>
        <source>bed read at %1</source>
        <translation>lecho leído a %1</translation>
    </message>
    <message numerus="yes">
        <source>last feeding written down %n day(s) ago</source>
        <translation>
            <numerusform>último aporte anotado hace %n día</numerusform>
            <numerusform>último aporte anotado hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>they take up %1 of what they need</source>
        <translation>toman %1 de lo que necesitan</translation>
    </message>
    <message>
        <source>%1 of what was fed in a month is doubtful</source>
        <translation>%1 de lo aportado en un mes es dudoso</translation>
    </message>
    <message>
        <source>%1 of the feedings of three weeks have no cover written down</source>
        <translation>%1 de los aportes de tres semanas no tienen cubierta anotada</translation>
    </message>
    <message>
        <source>C:N of what was fed in three weeks %1, wished %2</source>
        <translation>C:N de lo aportado en tres semanas %1, deseada %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) since the first bedding</source>
        <translation>
            <numerusform>%n día desde la primera cama</numerusform>
            <numerusform>%n días desde la primera cama</numerusform>
        </translation>
    </message>
    <message>
        <source>worms %1, best %2</source>
        <translation>lombrices %1, lo mejor %2</translation>
    </message>
    <message numerus="yes">
        <source>the bottom tray has stood for %n day(s)</source>
        <translation>
            <numerusform>la bandeja inferior lleva puesta %n día</numerusform>
            <numerusform>la bandeja inferior lleva puesta %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>worms put in, moved or lifted %n day(s) ago</source>
        <translation>
            <numerusform>lombrices metidas, pasadas o subidas hace %n día</numerusform>
            <numerusform>lombrices metidas, pasadas o subidas hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Lift the cover: is much of the last feeding still there, matted and wet?</source>
        <translation>Levanta la cubierta: ¿queda mucho del último aporte, apelmazado y mojado?</translation>
    </message>
    <message>
        <source>Press a handful hard: does it stream?</source>
        <translation>Aprieta fuerte un puñado: ¿chorrea?</translation>
    </message>
    <message>
        <source>Press a handful from the middle hard: does nothing come?</source>
        <translation>Aprieta fuerte un puñado del centro: ¿no sale nada?</translation>
    </message>
    <message>
        <source>Open the spigot over a jar: how much runs out?</source>
        <translation>Abre el grifo sobre un frasco: ¿cuánto sale?</translation>
    </message>
    <message>
        <source>Put a thermometer a hand deep into the bed.</source>
        <translation>Mete un termómetro un palmo en el lecho.</translation>
    </message>
    <message>
        <source>Put a thermometer a hand deep into the bed, in the morning.</source>
        <translation>Mete un termómetro un palmo en el lecho, por la mañana.</translation>
    </message>
    <message>
        <source>Lift the cover: is nothing left of the last feeding?</source>
        <translation>Levanta la cubierta: ¿no queda nada del último aporte?</translation>
    </message>
    <message>
        <source>Smell at the places of the last feedings: is it one of them, and which?</source>
        <translation>Huele los sitios de los últimos aportes: ¿es uno de ellos, y cuál?</translation>
    </message>
    <message>
        <source>Look before you lift anything: does food lie open?</source>
        <translation>Mira antes de levantar nada: ¿hay alimento al descubierto?</translation>
    </message>
    <message>
        <source>Smell: sharp, like ammonia? And is there hardly any paper left in the top tray?</source>
        <translation>Huele: ¿fuerte, como amoníaco? ¿Y apenas queda papel en la bandeja superior?</translation>
    </message>
    <message>
        <source>Dig to the floor of the tray: is there a dark, crumbly layer, however thin?</source>
        <translation>Escarba hasta el fondo de la bandeja: ¿hay una capa oscura y desmenuzable, por fina que sea?</translation>
    </message>
    <message>
        <source>Weigh the worms of a part of the bed: it tells how crowded they are.</source>
        <translation>Pesa las lombrices de una parte del lecho: dice lo apretadas que están.</translation>
    </message>
    <message>
        <source>Wait two nights with a light on: do they stay then?</source>
        <translation>Espera dos noches con una luz encendida: ¿se quedan entonces?</translation>
    </message>
    <message>
        <source>Stop feeding until most of it is gone. Spread what lies there flat, loosen it, and lay dry shredded paper or cardboard on it.</source>
        <translation>Deja de alimentar hasta que desaparezca casi todo. Extiende lo que haya, aflójalo y pon encima papel o cartón triturado seco.</translation>
    </message>
    <message>
        <source>Drain the sump and leave the spigot open. Loosen the bed and work dry shredded cardboard in. No water until a pressed handful gives only a few drops.</source>
        <translation>Drena el depósito y deja el grifo abierto. Afloja el lecho y mezcla cartón triturado seco. Nada de agua hasta que un puñado apretado suelte solo unas gotas.</translation>
    </message>
    <message>
        <source>Pour slowly, all over, in two or three goes, until a pressed handful gives a few drops. Cover with wet paper.</source>
        <translation>Vierte despacio, por todas partes, en dos o tres veces, hasta que un puñado apretado suelte unas gotas. Cubre con papel mojado.</translation>
    </message>
    <message>
        <source>Drain it now and leave the spigot open over a jar. Put worms that swim in it back into the top tray.</source>
        <translation>Drénalo ahora y deja el grifo abierto sobre un frasco. Devuelve a la bandeja superior las lombrices que naden en él.</translation>
    </message>
    <message>
        <source>Carry the stack to a cooler place, tray by tray. No food for now; spread what heats. Lid open under a cloth; a wrapped bottle of frozen water on top buys a day.</source>
        <translation>Lleva la torre a un lugar más fresco, bandeja a bandeja. Por ahora, nada de alimento; extiende lo que se calienta. Tapa abierta bajo una tela; una botella de agua congelada y envuelta encima da un día de margen.</translation>
    </message>
    <message>
        <source>Bring the stack in, or wrap sides and lid and stand it off the ground. Feed little until it is warmer.</source>
        <translation>Mete la torre dentro, o envuelve los lados y la tapa y sepárala del suelo. Alimenta poco hasta que haga menos frío.</translation>
    </message>
    <message>
        <source>Feed the usual amount and cover it. If there are few worms, feed little: they multiply by themselves.</source>
        <translation>Da la cantidad habitual y cúbrela. Si hay pocas lombrices, da poco: se multiplican solas.</translation>
    </message>
    <message>
        <source>Take out what can be taken out, with gloves, and put it into the household waste. Cover the rest thickly.</source>
        <translation>Saca lo que se pueda, con guantes, y tíralo a la basura. Cubre el resto con una capa gruesa.</translation>
    </message>
    <message>
        <source>Bury the food a little and cover it with paper, now and with each feeding. Flies that are there are gone in {fly-days} if nothing new lies open.</source>
        <translation>Entierra un poco el alimento y cúbrelo con papel, ahora y en cada aporte. Las moscas que haya desaparecen en {fly-days} si no queda nada nuevo al descubierto.</translation>
    </message>
    <message>
        <source>Work dry shredded cardboard into the top tray, and feed less of grounds and greens for some weeks.</source>
        <translation>Mezcla cartón triturado seco en la bandeja superior y da menos posos y verdes durante unas semanas.</translation>
    </message>
    <message>
        <source>Wait. Food has to soften first, and a first tray takes {first-tray-alone}. Feed a little and keep the bed moist.</source>
        <translation>Espera. El alimento tiene que ablandarse primero, y una primera bandeja tarda {first-tray-alone}. Alimenta un poco y mantén húmedo el lecho.</translation>
    </message>
    <message>
        <source>Leave a light on and the lid closed for some nights. They settle; it is no sign of a bad bed.</source>
        <translation>Deja una luz encendida y la tapa cerrada unas noches. Se calman; no es señal de mal lecho.</translation>
    </message>
    <message>
        <source>Record the cover…</source>
        <translation>Anotar la cubierta…</translation>
    </message>
    <message>
        <source>Record the water…</source>
        <translation>Anotar el riego…</translation>
    </message>
    <message>
        <source>Record the draining…</source>
        <translation>Anotar el drenaje…</translation>
    </message>
    <message>
        <source>Record the feeding…</source>
        <translation>Anotar el aporte…</translation>
    </message>
    <message>
        <source>Record the lifting…</source>
        <translation>Anotar la subida…</translation>
    </message>
    <message>
        <source>Record the temperature…</source>
        <translation>Anotar la temperatura…</translation>
    </message>
    <message>
        <source>Record what you saw…</source>
        <translation>Anotar lo que viste…</translation>
    </message>
    <message>
        <source>Record the reading…</source>
        <translation>Anotar la lectura…</translation>
    </message>
    <message>
        <source>Record how much ran out…</source>
        <translation>Anotar cuánto salió…</translation>
    </message>
    <message>
        <source>Record the weighing…</source>
        <translation>Anotar la pesada…</translation>
    </message>
    <message>
        <source>Record the look…</source>
        <translation>Anotar lo que miraste…</translation>
    </message>
    <message>
        <source>Record the worms taken out…</source>
        <translation>Anotar las lombrices retiradas…</translation>
    </message>
    <message>
        <source>smell at the lid, at each tray, at the sump and at what stands beside the stack. Where does it come from?</source>
        <translation>huele la tapa, cada bandeja, el depósito y lo que hay junto a la torre. ¿De dónde viene?</translation>
    </message>
    <message>
        <source>see where they sit: in the bed, in the sump, or beside the stack on fruit and flower pots. Their eggs come in with peel.</source>
        <translation>mira dónde se posan: en el lecho, en el depósito o junto a la torre, en fruta y macetas. Sus huevos entran con las mondas.</translation>
    </message>
    <message>
        <source>see where they sit. On one piece of food alone they are usual and do no harm: take that piece out.</source>
        <translation>mira dónde están. En un solo trozo de alimento son normales y no hacen daño: saca ese trozo.</translation>
    </message>
    <message>
        <source>follow their trail back. The nest may lie beneath the stand or in a pot beside it.</source>
        <translation>sigue su rastro. El nido puede estar bajo el soporte o en una maceta al lado.</translation>
    </message>
    <message>
        <source>see when and from where they go: on a stormy night, when a light went out, from one tray alone?</source>
        <translation>mira cuándo y de dónde se van: ¿en una noche de tormenta, al apagarse una luz, de una sola bandeja?</translation>
    </message>
    <message>
        <source>see what came in last: treated peel, salt, cleaning agents, paint? Take it out with gloves.</source>
        <translation>mira qué entró lo último: ¿mondas tratadas, sal, productos de limpieza, pintura? Sácalo con guantes.</translation>
    </message>
    <message>
        <source>see how far it goes. White threads on fresh food are usual and gone in some days.</source>
        <translation>mira hasta dónde llega. Los hilos blancos sobre alimento fresco son normales y desaparecen en unos días.</translation>
    </message>
    <message>
        <source>smell at a handful from several places. One heap of food may be sour and the rest of the bed sound.</source>
        <translation>huele un puñado de varios sitios. Un montón de alimento puede estar agrio y el resto del lecho sano.</translation>
    </message>
    <message>
        <source>feel each tray. One alone is warm from its food; all of them are warm from sun, stove or pipe.</source>
        <translation>toca cada bandeja. Una sola está caliente por su alimento; todas lo están por el sol, una estufa o una tubería.</translation>
    </message>
    <message>
        <source>see where it comes from: holes that are clogged, a lid that lets rain in, a stack that is not level?</source>
        <translation>mira de dónde viene: ¿agujeros obstruidos, una tapa que deja entrar la lluvia, una torre desnivelada?</translation>
    </message>
    <message>
        <source>look under the cover, in each tray and in the sump. They may sit elsewhere than where you looked.</source>
        <translation>mira bajo la cubierta, en cada bandeja y en el depósito. Pueden estar en otro sitio del que miraste.</translation>
    </message>
    <message>
        <source>dig to the floor of the bottom tray. Castings lie there first, beneath food and bedding.</source>
        <translation>cava hasta el fondo de la bandeja inferior. El humus aparece primero allí, bajo el alimento y la cama.</translation>
    </message>
    <message>
        <source>Give them room: a further tray if one is spare, or a harvest of the bottom one once its castings are ready. Or give some worms away, or begin another stack with them.</source>
        <translation>Deles sitio: una bandeja más si hay una libre, o una cosecha de la de abajo en cuanto su humus esté listo. O regale lombrices, o empiece con ellas otra torre.</translation>
    </message>
</context>
<context>
    <name>TrayLifts</name>
    <message>
        <source>Out of a safe reach: take it out in parts, or with someone.</source>
        <translation>Fuera de un alcance seguro: vacíala por partes, o con ayuda.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: fine for most people.</source>
        <translation>Para este levantamiento se aconsejan hasta %1: bien para la mayoría.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: heavy, so in parts or with someone.</source>
        <translation>Para este levantamiento se aconsejan hasta %1: es pesada, así que por partes o con ayuda.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: far too heavy, take it out in parts.</source>
        <translation>Para este levantamiento se aconsejan hasta %1: es demasiado pesada, vacíala por partes.</translation>
    </message>
</context>
<context>
    <name>TrayWeightBody</name>
    <message>
        <source>Tray with contents</source>
        <translation>Bandeja con contenido</translation>
    </message>
    <message>
        <source>What does the scale show?</source>
        <translation>¿Qué marca la báscula?</translation>
    </message>
    <message>
        <source>Empty tray</source>
        <translation>Bandeja vacía</translation>
    </message>
    <message>
        <source>The empty tray cannot weigh more than the tray with its contents.</source>
        <translation>La bandeja vacía no puede pesar más que la bandeja con su contenido.</translation>
    </message>
</context>
<context>
    <name>TrayWords</name>
    <message>
        <source>tray %1 in slot %2, batch %3 bedded on %4</source>
        <translation>bandeja %1 en el nivel %2, lote %3 con cama del %4</translation>
    </message>
    <message>
        <source>Tray %1 goes from the bottom to slot %2 and dries in the light, uncovered; the others move down.</source>
        <translation>La bandeja %1 pasa de abajo al nivel %2 y se seca a la luz, sin cubrir; las demás bajan.</translation>
    </message>
    <message>
        <source>Ends batch %1: tray %2 leaves slot %3 for storage.</source>
        <translation>Termina el lote %1: la bandeja %2 deja el nivel %3 y se guarda.</translation>
    </message>
    <message>
        <source>Begins batch %1: tray %2 goes on top, into slot %3.</source>
        <translation>Empieza el lote %1: la bandeja %2 va arriba, al nivel %3.</translation>
    </message>
    <message>
        <source>Worms leave the whole stack and go into the fed tray of %1.</source>
        <translation>Las lombrices salen de toda la torre y van a la bandeja que recibe alimento de %1.</translation>
    </message>
    <message>
        <source>The stack ends with that day. Its record stays; its name cannot be used again.</source>
        <translation>La torre termina ese día. Lo anotado se conserva; su nombre no se puede volver a usar.</translation>
    </message>
    <message>
        <source>Falls to %1.</source>
        <translation>Corresponde a la %1.</translation>
    </message>
    <message>
        <source>It ends the light-drying of that tray.</source>
        <translation>Termina el secado a la luz de esa bandeja.</translation>
    </message>
</context>
<context>
    <name>TrendWords</name>
    <message>
        <source>It has held since %1.</source>
        <translation>Se mantiene desde el %1.</translation>
    </message>
    <message>
        <source>Up from %1 on %2.</source>
        <translation>Sube desde %1 el %2.</translation>
    </message>
    <message>
        <source>Down from %1 on %2.</source>
        <translation>Baja desde %1 el %2.</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Se están haciendo las estimaciones.</translation>
    </message>
    <message>
        <source>Here stands what the worms eat each day, from the first bedding on.</source>
        <translation>Aquí aparece lo que comen las lombrices cada día, desde la primera cama.</translation>
    </message>
    <message>
        <source>Here stand the litres you drain each week, as bars, and what is to be expected, from the first bedding on.</source>
        <translation>Aquí aparecen los litros que drenas cada semana, como barras, y lo que cabe esperar, desde la primera cama.</translation>
    </message>
    <message>
        <source>Here stands the mass of the worms, from the first bedding on.</source>
        <translation>Aquí aparece la masa de las lombrices, desde la primera cama.</translation>
    </message>
    <message>
        <source>Here stands the temperature of the bed, from the first bedding on, and what was read.</source>
        <translation>Aquí aparece la temperatura del lecho, desde la primera cama, y lo que se leyó.</translation>
    </message>
    <message>
        <source>Here stands the moisture of the tray that is fed, from the first bedding on, and what was read.</source>
        <translation>Aquí aparece la humedad de la bandeja que recibe alimento, desde la primera cama, y lo que se leyó.</translation>
    </message>
    <message>
        <source>Processing rate</source>
        <translation>Ritmo de procesado</translation>
    </message>
    <message>
        <source>Drainage</source>
        <translation>Drenaje</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonia</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>dry matter that the worms eat, %1</source>
        <translation>materia seca que comen las lombrices, %1</translation>
    </message>
    <message>
        <source>bars: drained, %1 a week, each over four weeks; line: to be expected</source>
        <translation>barras: drenado, %1 por semana, cada una de cuatro semanas; línea: lo esperado</translation>
    </message>
    <message>
        <source>bars: drained, %1 a week; line: to be expected</source>
        <translation>barras: drenado, %1 por semana; línea: lo esperado</translation>
    </message>
    <message>
        <source>live worms, %1; crosses: weighed</source>
        <translation>lombrices vivas, %1; cruces: pesadas</translation>
    </message>
    <message>
        <source>of the bed, %1; strokes: a day&apos;s lowest to highest by a logger</source>
        <translation>del lecho, %1; trazos: mínimo y máximo del día según un registrador</translation>
    </message>
    <message>
        <source>of the tray that is fed, % water; strokes: a day&apos;s lowest to highest by a logger</source>
        <translation>de la bandeja que recibe alimento, % de agua; trazos: mínimo y máximo del día según un registrador</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 días</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 días</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 año</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 años</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>g/d</source>
        <translation>g/d</translation>
    </message>
    <message>
        <source>gal</source>
        <translation>gal</translation>
    </message>
    <message>
        <source>L</source>
        <translation>L</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>kg</source>
        <translation>kg</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>%1 (%2–%3)</source>
        <translation>%1 (%2–%3)</translation>
    </message>
    <message>
        <source>read %1 to %2, mean %3</source>
        <translation>leído de %1 a %2, media %3</translation>
    </message>
    <message numerus="yes">
        <source>Drained %1 in %n week(s).</source>
        <translation>
            <numerusform>Drenado %1 en %n semana.</numerusform>
            <numerusform>Drenado %1 en %n semanas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was drained in this time.</source>
        <translation>No se drenó nada en este tiempo.</translation>
    </message>
    <message>
        <source>The worms eat %1 of dry matter.</source>
        <translation>Las lombrices comen %1 de materia seca.</translation>
    </message>
    <message>
        <source>To be expected: %1.</source>
        <translation>Lo esperado: %1.</translation>
    </message>
    <message>
        <source>The worms weigh %1.</source>
        <translation>Las lombrices pesan %1.</translation>
    </message>
    <message>
        <source>The bed is at %1.</source>
        <translation>El lecho está a %1.</translation>
    </message>
    <message>
        <source>The tray that is fed holds %1 of water.</source>
        <translation>La bandeja que recibe alimento tiene %1 de agua.</translation>
    </message>
    <message>
        <source>A logger read %1 at the lowest, %2 at the highest.</source>
        <translation>Un registrador leyó %1 como mínimo, %2 como máximo.</translation>
    </message>
    <message>
        <source>drained %1</source>
        <translation>drenado %1</translation>
    </message>
    <message>
        <source>no estimate</source>
        <translation>sin estimación</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>fed</source>
        <translation>aporte</translation>
    </message>
    <message>
        <source>bedding laid</source>
        <translation>cama puesta</translation>
    </message>
    <message>
        <source>lifted to the top</source>
        <translation>subida arriba</translation>
    </message>
    <message>
        <source>castings taken</source>
        <translation>humus retirado</translation>
    </message>
    <message>
        <source>worms in or out</source>
        <translation>lombrices metidas o sacadas</translation>
    </message>
    <message>
        <source>worms weighed</source>
        <translation>lombrices pesadas</translation>
    </message>
    <message>
        <source>watered</source>
        <translation>riego</translation>
    </message>
    <message>
        <source>read by hand</source>
        <translation>leído a mano</translation>
    </message>
    <message>
        <source>It is ready, more likely than not.</source>
        <translation>Es más probable que esté lista que no.</translation>
    </message>
    <message>
        <source>The forecast reaches it about %1.</source>
        <translation>La previsión lo alcanza hacia %1.</translation>
    </message>
    <message>
        <source>The forecast that is shown does not reach it.</source>
        <translation>La previsión mostrada no lo alcanza.</translation>
    </message>
    <message>
        <source>Here stands how much unprocessed food and bedding the bottom tray holds beside its castings, from the first bedding on, with the line at which it is ready.</source>
        <translation>Aquí se ve cuánto alimento y cuánta cama sin procesar tiene la bandeja inferior junto a su humus, desde la primera cama, con la línea en que está lista.</translation>
    </message>
    <message>
        <source>Here stands a bar for each harvest, once castings are taken and weighed, beside what was expected.</source>
        <translation>Aquí hay una barra por cosecha, en cuanto se retira y se pesa humus, junto a lo esperado.</translation>
    </message>
    <message>
        <source>Feed-to-cast</source>
        <translation>Alimento/humus</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>added up, %1; steps: drained; line: to be expected, its range as if every week erred to the same side</source>
        <translation>acumulado, %1; escalones: drenado; línea: lo esperado, su intervalo como si cada semana errara al mismo lado</translation>
    </message>
    <message>
        <source>unprocessed dry matter to castings in the bottom tray, on a log scale; each batch has its own line</source>
        <translation>materia seca sin procesar frente a humus en la bandeja inferior, en escala logarítmica; cada lote tiene su línea</translation>
    </message>
    <message>
        <source>castings taken in a year, %1; upright stroke: to be expected</source>
        <translation>humus retirado en un año, %1; trazo vertical: lo esperado</translation>
    </message>
    <message>
        <source>castings of each harvest, %1; upright stroke: to be expected</source>
        <translation>humus de cada cosecha, %1; trazo vertical: lo esperado</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation>%1 tomados</translation>
    </message>
    <message>
        <source>%1; %2 expected of %3 of it</source>
        <translation>%1; %2 esperados de %3 de ello</translation>
    </message>
    <message>
        <source>%1, %2 expected</source>
        <translation>%1, %2 esperados</translation>
    </message>
    <message numerus="yes">
        <source>%1 of castings in %n harvest(s).</source>
        <translation>
            <numerusform>%1 de humus en %n cosecha.</numerusform>
            <numerusform>%1 de humus en %n cosechas.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1 of %2 bars lie within what was expected.</source>
        <translation>%1 de %2 barras están dentro de lo esperado.</translation>
    </message>
    <message numerus="yes">
        <source>%n harvest(s) measured by volume: marked, without a bar.</source>
        <translation>
            <numerusform>%n cosecha medida por volumen: marcada, sin barra.</numerusform>
            <numerusform>%n cosechas medidas por volumen: marcadas, sin barra.</numerusform>
        </translation>
    </message>
    <message>
        <source>Drained %1 in all since %2.</source>
        <translation>Drenado %1 en total desde %2.</translation>
    </message>
    <message>
        <source>Of the bottom tray: %1. It is ready at %2.</source>
        <translation>De la bandeja inferior: %1. Está lista con %2.</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <translation>El %1: %2.</translation>
    </message>
    <message>
        <source>With the change: %1 on %2.</source>
        <translation>Con el cambio: %1 el %2.</translation>
    </message>
    <message>
        <source>drained %1 in all</source>
        <translation>drenado %1 en total</translation>
    </message>
    <message>
        <source>in all of %1: %2</source>
        <translation>en todo %1: %2</translation>
    </message>
    <message>
        <source>with the change %1</source>
        <translation>con el cambio %1</translation>
    </message>
    <message>
        <source>nothing taken</source>
        <translation>nada tomado</translation>
    </message>
    <message>
        <source>something seen</source>
        <translation>algo visto</translation>
    </message>
    <message>
        <source>less drained than expected, twice: blocked, or a dry bed?</source>
        <translation>drenado menos de lo esperado dos veces seguidas: ¿obstruido o lecho seco?</translation>
    </message>
    <message>
        <source>more drained than expected, twice: too much water?</source>
        <translation>drenado más de lo esperado dos veces seguidas: ¿demasiada agua?</translation>
    </message>
    <message>
        <source>blocked?</source>
        <translation>¿obstruido?</translation>
    </message>
    <message>
        <source>too much water?</source>
        <translation>¿demasiada agua?</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>oz/d</source>
        <translation>oz/d</translation>
    </message>
    <message>
        <source>As on %1, and between %2 and %3 since.</source>
        <translation>Como el %1, y entre %2 y %3 desde entonces.</translation>
    </message>
    <message>
        <source>As on %1, and between %2 and %3 in the meantime.</source>
        <translation>Como el %1, y entre %2 y %3 entretanto.</translation>
    </message>
    <message>
        <source>It had held since %1.</source>
        <translation>Se había mantenido desde el %1.</translation>
    </message>
    <message>
        <source>It was ready, more likely than not.</source>
        <translation>Estaba lista, más probablemente que no.</translation>
    </message>
    <message>
        <source>It was not ready then, more likely than not.</source>
        <translation>Aún no estaba lista, más probablemente que sí.</translation>
    </message>
    <message>
        <source>On %1 the worms ate %2 of dry matter.</source>
        <translation>El %1 las lombrices comían %2 de materia seca.</translation>
    </message>
    <message>
        <source>To be expected on %1: %2.</source>
        <translation>De esperar el %1: %2.</translation>
    </message>
    <message>
        <source>On %1 the worms weighed %2.</source>
        <translation>El %1 las lombrices pesaban %2.</translation>
    </message>
    <message>
        <source>On %1 the bed was at %2.</source>
        <translation>El %1 el lecho estaba a %2.</translation>
    </message>
    <message>
        <source>On %1 the tray that was fed held %2 of water.</source>
        <translation>El %1 la bandeja que recibía alimento tenía %2 de agua.</translation>
    </message>
    <message>
        <source>Of the bottom tray on %1: %2. A tray is ready at %3.</source>
        <translation>De la bandeja inferior el %1: %2. Una bandeja está lista a %3.</translation>
    </message>
    <message>
        <source>Nothing had been drained until then.</source>
        <translation>Hasta entonces no se había drenado nada.</translation>
    </message>
    <message>
        <source>Drained %1 in all from %2 to %3.</source>
        <translation>Drenado en total: %1 del %2 al %3.</translation>
    </message>
    <message numerus="yes">
        <source>Drained %1 in %n week(s) to %2.</source>
        <translation>
            <numerusform>Drenado: %1 en %n semana hasta el %2.</numerusform>
            <numerusform>Drenado: %1 en %n semanas hasta el %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>No castings were taken from %1 to %2.</source>
        <translation>No se retiró humus del %1 al %2.</translation>
    </message>
    <message>
        <source>From %1 to %2 there is nothing to show.</source>
        <translation>Del %1 al %2 no hay nada que mostrar.</translation>
    </message>
    <message>
        <source>Forecast for %1, fed as usual, no tray lifted: %2.</source>
        <translation>Previsión para el %1, alimentada como siempre, sin subir ninguna bandeja: %2.</translation>
    </message>
</context>
<context>
    <name>UsualActs</name>
    <message>
        <source>Feed %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Alimentar %1, %2</translation>
    </message>
    <message>
        <source>Water %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Regar %1, %2</translation>
    </message>
    <message>
        <source>Drain %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Drenar %1, %2</translation>
    </message>
    <message>
        <source>Cover %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Cubrir %1, %2</translation>
    </message>
</context>
<context>
    <name>WaterBody</name>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>How much water?</source>
        <translation>¿Cuánta agua?</translation>
    </message>
</context>
<context>
    <name>WeighBody</name>
    <message>
        <source>Worms</source>
        <translation>Lombrices</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>¿Cuánto pesan las lombrices?</translation>
    </message>
    <message>
        <source>Share of the bed searched</source>
        <translation>Parte del lecho revisada</translation>
    </message>
    <message>
        <source>all of it when left empty</source>
        <translation>todo, si se deja vacío</translation>
    </message>
</context>
<context>
    <name>WindowPaper</name>
    <message>
        <source>--report: there is no stack on that day</source>
        <translation>--report: no hay ninguna torre ese día</translation>
    </message>
    <message>
        <source>--report: found «%1»; allowed: %2</source>
        <translation>--report: se encontró «%1»; se admite: %2</translation>
    </message>
    <message>
        <source>the sheet</source>
        <translation>la hoja</translation>
    </message>
    <message>
        <source>the labels</source>
        <translation>las etiquetas</translation>
    </message>
    <message>
        <source>no tray stands on that day, so there is nothing to label</source>
        <translation>no hay ninguna bandeja puesta ese día, así que no hay nada que etiquetar</translation>
    </message>
</context>
<context>
    <name>WindowStart</name>
    <message>
        <source>there is no display; --portrait DIR draws the pages without one</source>
        <translation>no hay pantalla; --portrait CARPETA dibuja las páginas sin ella</translation>
    </message>
</context>
<context>
    <name>YearLanes</name>
    <message>
        <source>nothing within a year</source>
        <translation>nada en un año</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>subir la bandeja inferior</translation>
    </message>
    <message>
        <source>take the castings</source>
        <translation>retirar el humus</translation>
    </message>
    <message>
        <source>add a tray</source>
        <translation>añadir una bandeja</translation>
    </message>
    <message>
        <source>%1 (from %2 on)</source>
        <translation>%1 (desde %2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2: %3 (tray %4)</source>
        <translation>%1, %2: %3 (bandeja %4)</translation>
    </message>
    <message>
        <source>ready on that day %1</source>
        <translation>lista ese día %1</translation>
    </message>
    <message>
        <source>about %1 of castings</source>
        <translation>unos %1 de humus</translation>
    </message>
    <message>
        <source>day chosen by hand</source>
        <translation>día elegido a mano</translation>
    </message>
    <message>
        <source>%1 (pinned)</source>
        <translation>%1 (fijada)</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Bandeja</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>tray %1 ready, %2</source>
        <translation>bandeja %1 lista, %2</translation>
    </message>
    <message>
        <source>tray %1 ready %2; today %3</source>
        <comment>number, dates, chance</comment>
        <translation>bandeja %1 lista: %2; hoy %3</translation>
    </message>
    <message>
        <source>tray %1 ready about now; today %2</source>
        <comment>number, chance</comment>
        <translation>bandeja %1 lista más o menos ahora; hoy %2</translation>
    </message>
    <message>
        <source>tray %1 ready from %2 on; today %3</source>
        <comment>number, day, chance</comment>
        <translation>bandeja %1 lista a partir del %2; hoy %3</translation>
    </message>
    <message>
        <source>being reckoned…</source>
        <translation>calculándose…</translation>
    </message>
    <message>
        <source>what follows from it is being reckoned</source>
        <translation>lo que resulta de ello se está calculando</translation>
    </message>
    <message>
        <source>whether it is due is not sure; a look decides</source>
        <translation>no es seguro que toque; una revisión decide</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>toca: %1</translation>
    </message>
    <message>
        <source>%1 after it is due</source>
        <translation>%1 después de cuando toca</translation>
    </message>
    <message>
        <source>%1 before it is due</source>
        <translation>%1 antes de cuando toca</translation>
    </message>
    <message>
        <source>Due, 80 % range</source>
        <translation>Toca, intervalo del 80 %</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::JournalSheetView</name>
    <message>
        <source>Import into the journal</source>
        <translation>Importar al diario</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>Importar %1</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>Cells parted by %1</source>
        <translation>Celdas separadas por %1</translation>
    </message>
    <message>
        <source>What parts the cells</source>
        <translation>Qué separa las celdas</translation>
    </message>
    <message>
        <source>Rows that are shown</source>
        <translation>Filas que se muestran</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importar</translation>
    </message>
    <message>
        <source>&amp;Save the rows at fault…</source>
        <translation>&amp;Guardar las filas con errores…</translation>
    </message>
    <message>
        <source>These are &amp;readings of a logger…</source>
        <translation>Son &amp;lecturas de un registrador…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Left out, since they are no columns of the journal: %1</source>
        <translation>Se omiten por no ser columnas del diario: %1</translation>
    </message>
    <message>
        <source>Leave out what the journal holds already (%1)</source>
        <translation>Omitir lo que el diario ya tiene (%1)</translation>
    </message>
    <message>
        <source>Leave out what the journal holds already</source>
        <translation>Omitir lo que el diario ya tiene</translation>
    </message>
    <message>
        <source>Leave out what an earlier row of the file says too (%1)</source>
        <translation>Omitir lo que ya dice una fila anterior del archivo (%1)</translation>
    </message>
    <message>
        <source>Leave out what an earlier row of the file says too</source>
        <translation>Omitir lo que ya dice una fila anterior del archivo</translation>
    </message>
    <message>
        <source>The first rows</source>
        <translation>Las primeras filas</translation>
    </message>
    <message>
        <source>Rows at fault (%1)</source>
        <translation>Filas con errores (%1)</translation>
    </message>
    <message>
        <source>Rows that are there already (%1)</source>
        <translation>Filas que ya están (%1)</translation>
    </message>
    <message>
        <source>Rows said before (%1)</source>
        <translation>Filas repetidas (%1)</translation>
    </message>
    <message>
        <source>Imported</source>
        <translation>Importado</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Import %n entry(ies)</source>
        <translation>
            <numerusform>&amp;Importar %n anotación</numerusform>
            <numerusform>&amp;Importar %n anotaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The other rows have been imported. %n row(s) at fault: save them, put them right and import them again.</source>
        <translation>
            <numerusform>Las demás filas se han importado. %n fila con errores: guárdala, corrígela y vuelve a importarla.</numerusform>
            <numerusform>Las demás filas se han importado. %n filas con errores: guárdalas, corrígelas y vuelve a importarlas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remember the words of %1</source>
        <translation>Recordar las palabras de %1</translation>
    </message>
    <message>
        <source>Rows left out as answered (%1)</source>
        <translation>Filas omitidas según la respuesta (%1)</translation>
    </message>
    <message>
        <source>This household is open for reading only: nothing can be imported into it.</source>
        <translation>Este hogar está abierto solo para leer: no se puede importar nada en él.</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::LoggerColumns</name>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
    <message>
        <source>Column «%1» holds</source>
        <translation>La columna «%1» contiene</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::MissingBox</name>
    <message>
        <source>Please choose</source>
        <translation>Elige, por favor</translation>
    </message>
    <message>
        <source>What was done, where a row does not say it:</source>
        <translation>Qué se hizo, donde una fila no lo dice:</translation>
    </message>
    <message>
        <source>The stack, where a row names none:</source>
        <translation>La torre, donde una fila no nombra ninguna:</translation>
    </message>
    <message>
        <source>The unit of amounts without one:</source>
        <translation>La unidad de las cantidades que no la llevan:</translation>
    </message>
    <message>
        <source>Each is: %1</source>
        <translation>Cada una es: %1</translation>
    </message>
    <message>
        <source>A new stack, «%1»</source>
        <translation>Una torre nueva, «%1»</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::QuestionsBox</name>
    <message>
        <source>Please choose</source>
        <translation>Elige, por favor</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>sin leer</translation>
    </message>
    <message>
        <source>The comma is the decimal mark: «%1» in line %2 can mean nothing else.</source>
        <translation>La coma es el signo decimal: «%1» en la línea %2 no puede significar otra cosa.</translation>
    </message>
    <message>
        <source>The point is the decimal mark: «%1» in line %2 can mean nothing else.</source>
        <translation>El punto es el signo decimal: «%1» en la línea %2 no puede significar otra cosa.</translation>
    </message>
    <message>
        <source>The day comes before the month: «%1» in line %2 can mean nothing else.</source>
        <translation>El día va antes del mes: «%1» en la línea %2 no puede significar otra cosa.</translation>
    </message>
    <message>
        <source>The month comes before the day: «%1» in line %2 can mean nothing else.</source>
        <translation>El mes va antes del día: «%1» en la línea %2 no puede significar otra cosa.</translation>
    </message>
    <message>
        <source>Some numbers can only have a point as decimal mark, others only a comma («%1» in line %2). Which is meant? Rows of the other kind will be at fault.</source>
        <translation>Algunos números solo pueden llevar punto decimal y otros solo coma («%1» en la línea %2). ¿Cuál vale? Las filas del otro tipo quedarán con errores.</translation>
    </message>
    <message>
        <source>What does «%1» in line %2 mean?</source>
        <translation>¿Qué significa «%1» en la línea %2?</translation>
    </message>
    <message>
        <source>The comma is the decimal mark</source>
        <translation>La coma es el signo decimal</translation>
    </message>
    <message>
        <source>The point is the decimal mark</source>
        <translation>El punto es el signo decimal</translation>
    </message>
    <message>
        <source>%1: this is %2</source>
        <translation>%1: es %2</translation>
    </message>
    <message>
        <source>Some dates can only have the day first, others only the month («%1» in line %2). Which is meant? Rows of the other kind will be at fault.</source>
        <translation>Algunas fechas solo pueden llevar primero el día y otras solo el mes («%1» en la línea %2). ¿Cuál vale? Las filas del otro tipo quedarán con errores.</translation>
    </message>
    <message>
        <source>Which day is «%1» in line %2?</source>
        <translation>¿Qué día es «%1» en la línea %2?</translation>
    </message>
    <message>
        <source>The day comes first</source>
        <translation>Primero va el día</translation>
    </message>
    <message>
        <source>The month comes first</source>
        <translation>Primero va el mes</translation>
    </message>
    <message>
        <source>Years have two digits. Which are meant?</source>
        <translation>Los años tienen dos cifras. ¿De qué siglo son?</translation>
    </message>
    <message>
        <source>2000 to 2099</source>
        <translation>de 2000 a 2099</translation>
    </message>
    <message>
        <source>1900 to 1999</source>
        <translation>de 1900 a 1999</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::ReadingsView</name>
    <message>
        <source>Import readings of a logger</source>
        <translation>Importar lecturas de un registrador</translation>
    </message>
    <message>
        <source>Readings in %1</source>
        <translation>Lecturas en %1</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>The logger lies in or beside</source>
        <translation>El registrador está dentro o al lado de</translation>
    </message>
    <message>
        <source>Stack in or beside which the logger lies</source>
        <translation>Torre en la que está o junto a la que está el registrador</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importar</translation>
    </message>
    <message>
        <source>Call &amp;off</source>
        <translation>&amp;Interrumpir</translation>
    </message>
    <message>
        <source>&amp;Save the rows at fault…</source>
        <translation>&amp;Guardar las filas con errores…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Please choose</source>
        <translation>Elige, por favor</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) imported from %1.</source>
        <translation>
            <numerusform>%Ln lectura importada de %1.</numerusform>
            <numerusform>%Ln lecturas importadas de %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The journal has their mean of %Ln day(s).</source>
        <translation>
            <numerusform>El diario tiene su media de %Ln día.</numerusform>
            <numerusform>El diario tiene sus medias de %Ln días.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s), %1, cells parted by %2.</source>
        <translation>
            <numerusform>%Ln fila, %1, celdas separadas por %2.</numerusform>
            <numerusform>%Ln filas, %1, celdas separadas por %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Columns as you chose them for the last file with these columns.</source>
        <translation>%1 Columnas como las elegiste para el último archivo con estas columnas.</translation>
    </message>
    <message>
        <source>Reading the file…</source>
        <translation>Leyendo el archivo…</translation>
    </message>
    <message>
        <source>Writing the readings…</source>
        <translation>Escribiendo las lecturas…</translation>
    </message>
    <message>
        <source>Remember the columns of %1</source>
        <translation>Recordar las columnas de %1</translation>
    </message>
    <message>
        <source>Called off. Nothing was written.</source>
        <translation>Interrumpido. No se escribió nada.</translation>
    </message>
    <message>
        <source>Writing; until the end nothing is kept.</source>
        <translation>Escribiendo; hasta el final no se guarda nada.</translation>
    </message>
    <message>
        <source>There is no stack that the readings could belong to. Start one first.</source>
        <translation>No hay ninguna torre a la que puedan corresponder las lecturas. Empieza antes una.</translation>
    </message>
    <message>
        <source>No column holds the date and time. Choose the one that does.</source>
        <translation>Ninguna columna contiene la fecha y la hora. Elige la que las tiene.</translation>
    </message>
    <message>
        <source>No column holds a temperature or moisture. Choose the ones that do.</source>
        <translation>Ninguna columna contiene temperatura o humedad. Elige las que las tienen.</translation>
    </message>
    <message>
        <source>Choose whether the temperature is in °C or °F.</source>
        <translation>Elige si la temperatura está en °C o en °F.</translation>
    </message>
    <message>
        <source>Answer the question above.</source>
        <translation>Responde a la pregunta de arriba.</translation>
    </message>
    <message>
        <source>No row holds a reading.</source>
        <translation>Ninguna fila contiene una lectura.</translation>
    </message>
    <message>
        <source>Choose the stack that the logger belongs to.</source>
        <translation>Elige la torre a la que corresponde el registrador.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) from %1 to %2 will be kept in full.</source>
        <translation>
            <numerusform>Se guardará entera %Ln lectura del %1 al %2.</numerusform>
            <numerusform>Se guardarán enteras %Ln lecturas del %1 al %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The journal gets the mean of %Ln day(s), an entry each. One undo takes all of it back.</source>
        <translation>
            <numerusform>El diario recibe la media de %Ln día, como una anotación. Un solo deshacer la quita del todo.</numerusform>
            <numerusform>El diario recibe la media de %Ln días, una anotación por día. Un solo deshacer las quita todas.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 are there already and left out.</source>
        <translation>%1 ya están y se omiten.</translation>
    </message>
    <message>
        <source>%1 are of days on which the stack did not stand, and left out.</source>
        <translation>%1 son de días en que la torre no existía, y se omiten.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) at fault, the first in line %1: %2</source>
        <translation>
            <numerusform>%Ln fila con errores, la primera en la línea %1: %2</numerusform>
            <numerusform>%Ln filas con errores, la primera en la línea %1: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Choose the stack again to try once more.</source>
        <translation>%1 Elige la torre otra vez para intentarlo de nuevo.</translation>
    </message>
    <message>
        <source>%1 There are more; the first %2 are in it.</source>
        <translation>%1 Hay más; contiene las primeras %2.</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::SheetPreview</name>
    <message>
        <source>added</source>
        <translation>se añade</translation>
    </message>
    <message>
        <source>there already, left out</source>
        <translation>ya estaba, se omite</translation>
    </message>
    <message>
        <source>said before, left out</source>
        <translation>repetida, se omite</translation>
    </message>
    <message>
        <source>waits for an answer</source>
        <translation>espera una respuesta</translation>
    </message>
    <message>
        <source>at fault: %1</source>
        <translation>con errores: %1</translation>
    </message>
    <message>
        <source>The column holds</source>
        <translation>La columna contiene</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Qué pasa con ella</translation>
    </message>
    <message>
        <source>left out as answered</source>
        <translation>omitida según la respuesta</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::SheetTable</name>
    <message>
        <source>Rows of the file</source>
        <translation>Filas del archivo</translation>
    </message>
    <message>
        <source>In the first row the content of each column is chosen</source>
        <translation>En la primera fila se elige el contenido de cada columna</translation>
    </message>
    <message>
        <source>nothing, left out</source>
        <translation>nada, se omite</translation>
    </message>
    <message>
        <source>Column «%1» holds</source>
        <translation>La columna «%1» contiene</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::WordsBox</name>
    <message>
        <source>Leave out all that is &amp;not answered</source>
        <translation>Omitir todo lo &amp;no respondido</translation>
    </message>
    <message>
        <source>These names are none of the stacks here. Which stacks are they?</source>
        <translation>Ninguna torre lleva aquí estos nombres. ¿Qué torres son?</translation>
    </message>
    <message>
        <source>What was done is not clear from these words. What do they mean?</source>
        <translation>Estas palabras no dicen con claridad qué se hizo. ¿Qué significan?</translation>
    </message>
    <message>
        <source>These are none of the materials here. Which come nearest?</source>
        <translation>No son materiales de aquí. ¿Cuáles se les parecen más?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold the stack?</source>
        <translation>Son %1. ¿Está la torre en otra columna?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold what was done?</source>
        <translation>Son %1. ¿Está en otra columna lo que se hizo?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold the material?</source>
        <translation>Son %1. ¿Está el material en otra columna?</translation>
    </message>
    <message>
        <source>Only the first %1 are asked here; the rows of the others are at fault.</source>
        <translation>Aquí solo se preguntan los primeros %1; las filas de los demás quedan con errores.</translation>
    </message>
    <message>
        <source>«%1»</source>
        <translation>«%1»</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), the first in line %1</source>
        <translation>
            <numerusform>%n fila, la primera: %1</numerusform>
            <numerusform>%n filas, la primera: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Please choose</source>
        <translation>Elige, por favor</translation>
    </message>
    <message>
        <source>a new stack</source>
        <translation>una torre nueva</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>omitir</translation>
    </message>
    <message>
        <source>Stack that %1 means</source>
        <translation>Torre a la que se refiere %1</translation>
    </message>
    <message>
        <source>What %1 means</source>
        <translation>Qué significa %1</translation>
    </message>
    <message>
        <source>Material that %1 means</source>
        <translation>Material al que se refiere %1</translation>
    </message>
    <message>
        <source>A new stack is set up with the usual sizes on the day of its first row, with the usual bedding where no row lays any. Look at those entries afterwards; worms that no row puts in have to be recorded too.</source>
        <translation>Una torre nueva se instala con las medidas habituales el día de su primera fila, con la cama habitual donde ninguna fila la pone. Revisa después esas anotaciones; las lombrices que ninguna fila pone hay que anotarlas también.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::ActionForm</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be recorded.</source>
        <translation>Este hogar se abrió solo para lectura; no se puede anotar nada.</translation>
    </message>
    <message>
        <source>Nothing was recorded; what you typed is still here. %1</source>
        <translation>No se anotó nada; lo que escribiste sigue aquí. %1</translation>
    </message>
    <message>
        <source>This cannot be recorded. %1</source>
        <translation>Esto no se puede anotar. %1</translation>
    </message>
    <message>
        <source>Recording…</source>
        <translation>Anotando…</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::CautionCard</name>
    <message>
        <source>Caution: %1</source>
        <translation>Precaución: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>More</source>
        <comment>the whole text of cautions</comment>
        <translation>Más</translation>
    </message>
    <message>
        <source>Less</source>
        <comment>the cautions in few words</comment>
        <translation>Menos</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::EntryEditor</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>This entry is no longer in the journal.</source>
        <translation>Esta anotación ya no está en el diario.</translation>
    </message>
    <message>
        <source>Edit: %1</source>
        <translation>Editar: %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Takes the entry out of the journal; undo brings it back</source>
        <translation>Quita la anotación del diario; deshacer la devuelve</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be changed.</source>
        <translation>Este hogar se abrió solo para lectura; no se puede cambiar nada.</translation>
    </message>
    <message>
        <source>Nothing was changed; what you typed is still here. %1</source>
        <translation>No se cambió nada; lo que escribiste sigue aquí. %1</translation>
    </message>
    <message>
        <source>This cannot be saved. %1</source>
        <translation>Esto no se puede guardar. %1</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Guardando…</translation>
    </message>
    <message>
        <source>edit of %1</source>
        <translation>edición de %1</translation>
    </message>
    <message>
        <source>This entry cannot be taken out. %1</source>
        <translation>Esta anotación no se puede quitar. %1</translation>
    </message>
    <message>
        <source>Deleting…</source>
        <translation>Borrando…</translation>
    </message>
    <message>
        <source>deletion of %1</source>
        <translation>borrado de %1</translation>
    </message>
    <message>
        <source>Not saved yet: this entry has been changed elsewhere meanwhile, in what you have changed too. What you typed is still here; save once more to put it in its place, or leave it as it is now with Esc.</source>
        <translation>Aún sin guardar: esta anotación se cambió entretanto en otro lugar, también en lo que tú has cambiado. Lo que escribiste sigue aquí; guarda otra vez para ponerlo en su lugar, o déjala como está ahora con Esc.</translation>
    </message>
    <message>
        <source>This entry has been taken out of the journal meanwhile. What you typed is still here: undo or redo brings the entry back, Esc gives it up.</source>
        <translation>Esta anotación se ha quitado del diario entretanto. Lo que escribiste sigue aquí: deshacer o rehacer la devuelve, Esc lo abandona.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::EntrySheet</name>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>What is there to note?</source>
        <translation>¿Qué hay que anotar?</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Bandeja</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>¿Qué día?</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Not possible so: %1</source>
        <translation>Así no es posible: %1</translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation>Poner %1</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::FormShell</name>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Look again: %1</source>
        <translation>Míralo otra vez: %1</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::NewStack</name>
    <message>
        <source>New stack</source>
        <translation>Nueva torre</translation>
    </message>
    <message>
        <source>What is not known can stay as it is; everything can be changed later.</source>
        <translation>Lo que no se sepa puede quedar como está; todo se puede cambiar después.</translation>
    </message>
    <message>
        <source>Start the stack</source>
        <translation>Empezar la torre</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be recorded.</source>
        <translation>Este hogar se abrió solo para lectura; no se puede anotar nada.</translation>
    </message>
    <message>
        <source>Nothing was recorded; what you typed is still here. %1</source>
        <translation>No se anotó nada; lo que escribiste sigue aquí. %1</translation>
    </message>
    <message>
        <source>This cannot be recorded. %1</source>
        <translation>Esto no se puede anotar. %1</translation>
    </message>
    <message>
        <source>Recording…</source>
        <translation>Anotando…</translation>
    </message>
    <message>
        <source>%1: new stack</source>
        <translation>%1: nueva torre</translation>
    </message>
    <message>
        <source>Nothing is recorded yet. If it is meant so, press «%1» once more.</source>
        <translation>Aún no se ha anotado nada. Si es lo que quieres, pulsa «%1» otra vez.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::Welcome</name>
    <message>
        <source>A journal for your worm bins</source>
        <translation>Un diario para tus vermicomposteras</translation>
    </message>
    <message>
        <source>Write down what goes in and what runs out. The program reckons, with its uncertainty, how the worms fare, when each bottom tray is ready and what is due this week. Nothing leaves this machine.</source>
        <translation>Anota lo que entra y lo que sale. El programa calcula, con su incertidumbre, cómo les va a las lombrices, cuándo está lista cada bandeja inferior y qué toca esta semana. Nada sale de este equipo.</translation>
    </message>
    <message>
        <source>Answer a few questions; you are told how much bedding and water to put in. The record is kept among your documents.</source>
        <translation>Responde unas preguntas; se te dice cuánta cama y agua poner. Lo anotado se guarda entre tus documentos.</translation>
    </message>
    <message>
        <source>A household of our own invention with three stacks and two years of record, in a copy that is yours to play with.</source>
        <translation>Un hogar inventado por nosotros, con tres torres y dos años anotados, en una copia tuya para probar.</translation>
    </message>
    <message>
        <source>A file that was kept before.</source>
        <translation>Un archivo guardado antes.</translation>
    </message>
    <message>
        <source>A journal or a list of your own as CSV, into a new household. You see what becomes of each row first.</source>
        <translation>Un diario o una lista tuya como CSV, en un hogar nuevo. Antes ves qué pasa con cada fila.</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Antes de empezar</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fuente: %1</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Bienvenida</translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation>Abiertos hace poco</translation>
    </message>
    <message>
        <source>Start my first stack…</source>
        <translation>Empezar mi primera torre…</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Ver la demostración</translation>
    </message>
    <message>
        <source>Open a household…</source>
        <translation>Abrir un hogar…</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Importar una tabla…</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HandbookPage</name>
    <message>
        <source>Handbook</source>
        <translation>Manual</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Buscar (%1)</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Buscar en el manual</translation>
    </message>
    <message>
        <source>All words must be on the page</source>
        <translation>La página debe contener todas las palabras</translation>
    </message>
    <message>
        <source>Pages of the handbook</source>
        <translation>Páginas del manual</translation>
    </message>
    <message>
        <source>How each step is done, why, and the usual cautions. Everything is on this machine.</source>
        <translation>Cómo se hace cada paso, por qué, y las precauciones habituales. Todo está en este equipo.</translation>
    </message>
    <message>
        <source>No page holds all of these words.</source>
        <translation>Ninguna página contiene todas esas palabras.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) found</source>
        <translation>
            <numerusform>%n página encontrada</numerusform>
            <numerusform>%n páginas encontradas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HandbookView</name>
    <message>
        <source>Page of the handbook</source>
        <translation>Página del manual</translation>
    </message>
    <message>
        <source>Handbook: %1</source>
        <translation>Manual: %1</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HarvestView</name>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>less than usual: some was not finished, or is still in the sump and the trays</source>
        <translation>menos de lo habitual: algo no estaba acabado, o sigue en el depósito y las bandejas</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>como siempre</translation>
    </message>
    <message>
        <source>more than usual: bedding that stays, or water, is in it</source>
        <translation>más de lo habitual: lleva cama de la que se queda, o agua</translation>
    </message>
    <message>
        <source>Your reach while lifting, from the ankles forward to the hands (may be left empty: then it is taken from the tray&apos;s size):</source>
        <translation>Tu alcance al levantar, de los tobillos hacia delante hasta las manos (se puede dejar vacío: entonces se toma del tamaño de la bandeja):</translation>
    </message>
    <message>
        <source>Your reach</source>
        <translation>Tu alcance</translation>
    </message>
    <message>
        <source>There is no stack yet to harvest.</source>
        <translation>Aún no hay ninguna torre que cosechar.</translation>
    </message>
    <message>
        <source>The estimates of this stack are being made.</source>
        <translation>Se están haciendo las estimaciones de esta torre.</translation>
    </message>
    <message>
        <source>A tray of %1 is drying in the light.</source>
        <translation>Una bandeja de %1 se está secando a la luz.</translation>
    </message>
    <message>
        <source>%1 has one tray. Nothing can be lifted over it: add a tray first, and its worms move up to the fresh food.</source>
        <translation>%1 tiene una sola bandeja. No se puede subir nada por encima: añade antes una bandeja, y sus lombrices subirán al alimento fresco.</translation>
    </message>
    <message>
        <source>The bottom tray of %1: ready %2, feed-to-cast %3.</source>
        <translation>La bandeja inferior de %1: lista %2, alimento/humus %3.</translation>
    </message>
    <message>
        <source>Before you lift</source>
        <translation>Antes de levantar</translation>
    </message>
    <message>
        <source>Slot %1: about %2. %3</source>
        <translation>Nivel %1: unos %2. %3</translation>
    </message>
    <message>
        <source>The sequence</source>
        <translation>Los pasos</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number, step</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>It stands on top: record the lifting…</source>
        <translation>Está arriba: anotar la subida…</translation>
    </message>
    <message>
        <source>Look into the bottom tray first…</source>
        <translation>Mirar antes en la bandeja inferior…</translation>
    </message>
    <message>
        <source>Day %1 in the light, %2</source>
        <translation>Día %1 a la luz, %2</translation>
    </message>
    <message>
        <source>Worms left: %1 of those that were in it; moisture %2.</source>
        <translation>Lombrices que quedan: %1 de las que había; humedad %2.</translation>
    </message>
    <message>
        <source>Food went into the drying tray: that keeps worms in it.</source>
        <translation>Entró alimento en la bandeja en secado: eso retiene a las lombrices.</translation>
    </message>
    <message>
        <source>Too wet that day.</source>
        <translation>Demasiado mojado ese día.</translation>
    </message>
    <message>
        <source>Too wet: worms stay where it is wet. Loosen it again, in ridges, and give it another day.</source>
        <translation>Demasiado mojado: las lombrices se quedan donde está mojado. Aflójalo otra vez, en crestas, y dale otro día.</translation>
    </message>
    <message>
        <source>Few worms are left: take the castings when they crumble.</source>
        <translation>Quedan pocas lombrices: retira el humus cuando se desmigaje.</translation>
    </message>
    <message>
        <source>Loosen it once today; the usual time is %1.</source>
        <translation>Aflójalo hoy una vez; el tiempo habitual es %1.</translation>
    </message>
    <message>
        <source>Feed only the tray below. Lid off, bright, out of the sun.</source>
        <translation>Alimenta solo la bandeja de debajo. Sin tapa, con claridad, sin sol directo.</translation>
    </message>
    <message>
        <source>Loosened: record it…</source>
        <translation>Aflojado: anotarlo…</translation>
    </message>
    <message>
        <source>Taken: weigh or measure…</source>
        <translation>Retirado: pesarlo o medirlo…</translation>
    </message>
    <message>
        <source>There is no estimate of these days yet.</source>
        <translation>Aún no hay estimación de estos días.</translation>
    </message>
    <message>
        <source>The last harvest, %1</source>
        <translation>La última cosecha, %1</translation>
    </message>
    <message>
        <source>Taken: %1, about %2, dry %3</source>
        <translation>Retirado: %1, unos %2, en seco %3</translation>
    </message>
    <message>
        <source>%1 at an assumed moisture of %2</source>
        <translation>%1 con una humedad supuesta de %2</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Expected before it was weighed: %1.</source>
        <translation>Se esperaba antes de pesarlo: %1.</translation>
    </message>
    <message>
        <source>Of %1 dry put in, %2 to %3 dry is usual (%4): this is %5.</source>
        <translation>De %1 aportados en seco, lo habitual es de %2 a %3 en seco (%4): esto es %5.</translation>
    </message>
    <message>
        <source>With it went about %1 worms and %2 cocoons, by the estimate. That is normal; castings without any worm cannot be promised.</source>
        <translation>Con él se fueron unas %1 lombrices y unos %2 capullos, según la estimación. Es normal; no se puede prometer humus sin ninguna lombriz.</translation>
    </message>
    <message>
        <source>To keep them: a second light-drying of the castings between %1, when what was in the cocoons has hatched; or a bait tray of melon or pumpkin under damp paper for %2, carried back with all that sits in it.</source>
        <translation>Para conservarlos: un segundo secado del humus a la luz (%1), cuando ha eclosionado lo que había en los capullos; o una bandeja con cebo de melón o calabaza bajo papel húmedo durante %2, que se devuelve con todo lo que tenga dentro.</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>What you take, weighed or measured, is compared here with what was expected. Some cocoons and young worms leave with it: a second light-drying after %1 or a bait tray keeps many of them.</source>
        <translation>Lo que retiras, pesado o medido, se compara aquí con lo esperado. Algunos capullos y lombrices jóvenes se van con ello: un segundo secado a la luz tras %1 o una bandeja con cebo conserva muchos.</translation>
    </message>
    <message>
        <source>Bed a tray anew…</source>
        <translation>Poner cama nueva a una bandeja…</translation>
    </message>
    <message>
        <source>In the light again since %1: loosen once a day, the stored castings in a flat layer on a sheet; what gathers under it goes back into the stack. The usual time is %2.</source>
        <translation>De nuevo a la luz desde %1: aflojar una vez al día, el humus guardado en una capa plana sobre una lámina; lo que se junta debajo vuelve a la torre. El tiempo usual es %2.</translation>
    </message>
    <message>
        <source>It is time for the second light-drying now.</source>
        <translation>Ahora es el momento del segundo secado a la luz.</translation>
    </message>
    <message>
        <source>Bait laid on %1: keep it damp, look in a few days; carry it back by %2 at the latest.</source>
        <translation>Cebo puesto el %1: mantenerlo húmedo, mirar en unos días; devolverlo el %2 como muy tarde.</translation>
    </message>
    <message>
        <source>Bait laid on %1: carry it back now, before it dries.</source>
        <translation>Cebo puesto el %1: devolverlo ahora, antes de que se seque.</translation>
    </message>
    <message>
        <source>Worms were put back on %1.</source>
        <translation>El %1 se devolvieron lombrices.</translation>
    </message>
    <message>
        <source>Spread in the light again: record it…</source>
        <translation>Extendido de nuevo a la luz: anotarlo…</translation>
    </message>
    <message>
        <source>Bait laid: record it…</source>
        <translation>Cebo puesto: anotarlo…</translation>
    </message>
    <message>
        <source>Worms carried back: weigh and record them…</source>
        <translation>Lombrices devueltas: pesarlas y anotarlas…</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::StackChoice</name>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::SymptomView</name>
    <message>
        <source>What do you notice?</source>
        <translation>¿Qué notas?</translation>
    </message>
    <message>
        <source>Write down that you noticed it…</source>
        <translation>Anotar que lo has notado…</translation>
    </message>
    <message>
        <source>There is no stack yet that anything could be wrong with.</source>
        <translation>Aún no hay ninguna torre en la que algo pueda ir mal.</translation>
    </message>
    <message>
        <source>The estimates of this stack are being made.</source>
        <translation>Se están haciendo las estimaciones de esta torre.</translation>
    </message>
    <message>
        <source>One click puts the causes in order, by what is known of this stack.</source>
        <translation>Un clic ordena las causas según lo que se sabe de esta torre.</translation>
    </message>
    <message>
        <source>%1 in %2: causes by what the estimates and the journal say today.</source>
        <translation>%1 en %2: causas según lo que dicen hoy las estimaciones y el diario.</translation>
    </message>
    <message>
        <source>%1 – %2</source>
        <comment>cause, its chance</comment>
        <translation>%1 – %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>mark, evidence</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>the journal says nothing of it</source>
        <translation>el diario no dice nada de ello</translation>
    </message>
    <message>
        <source>● speaks for this cause, ○ does not</source>
        <translation>● habla a favor de esta causa, ○ no</translation>
    </message>
    <message>
        <source>To be sure: %1</source>
        <translation>Para asegurarse: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 – %2: %3</source>
        <comment>cause, its chance, evidence</comment>
        <translation>%1 – %2: %3</translation>
    </message>
    <message>
        <source>Hardly, by the record:</source>
        <translation>Apenas, según el diario:</translation>
    </message>
    <message>
        <source>The record shows none of the usual causes – %1</source>
        <translation>El diario no muestra ninguna de las causas habituales – %1</translation>
    </message>
    <message>
        <source>Something else – %1</source>
        <translation>Otra cosa – %1</translation>
    </message>
    <message>
        <source>To look at by hand: %1</source>
        <translation>Para mirar a mano: %1</translation>
    </message>
    <message>
        <source>In case the record lacks something: %1</source>
        <translation>Por si falta algo en el diario: %1</translation>
    </message>
    <message>
        <source>Record the look…</source>
        <translation>Anotar lo que miraste…</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Otra cosa</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::BulkView</name>
    <message>
        <source>Change together</source>
        <translation>Cambiar juntas</translation>
    </message>
    <message numerus="yes">
        <source>Change %n entry(ies) together</source>
        <translation>
            <numerusform>Cambiar %n anotación</numerusform>
            <numerusform>Cambiar juntas %n anotaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Material, species or word</source>
        <translation>Material, especie o palabra</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Tray (slot)</source>
        <translation>Bandeja (nivel)</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Qué cambia</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>What will change</source>
        <translation>Qué cambiará</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>&amp;Cambiar</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) will change.</source>
        <translation>
            <numerusform>Cambiará %n anotación.</numerusform>
            <numerusform>Cambiarán %n anotaciones.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n chosen entry(ies) with another value: left alone.</source>
        <translation>
            <numerusform>%n anotación elegida con otro valor: no se toca.</numerusform>
            <numerusform>%n anotaciones elegidas con otro valor: no se tocan.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2: %3 %4</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::EntrySeries</name>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Enter records and opens the next; Esc ends.</source>
        <translation>Intro anota y abre la siguiente; Esc termina.</translation>
    </message>
    <message>
        <source>There is no stack yet; start one on the shelf.</source>
        <translation>Aún no hay ninguna torre; empieza una en el estante.</translation>
    </message>
    <message>
        <source>One more like the chosen entry, dated today.</source>
        <translation>Otra como la anotación elegida, con fecha de hoy.</translation>
    </message>
    <message numerus="yes">
        <source>%n recorded; Enter records the next, Esc ends.</source>
        <translation>
            <numerusform>%n anotada; Intro anota la siguiente, Esc termina.</numerusform>
            <numerusform>%n anotadas; Intro anota la siguiente, Esc termina.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::JournalModel</name>
    <message>
        <source>slot %1</source>
        <translation>nivel %1</translation>
    </message>
    <message>
        <source>slot %1 · tray %2 · batch %3</source>
        <translation>nivel %1 · bandeja %2 · lote %3</translation>
    </message>
    <message>
        <source>%1 · being saved</source>
        <translation>%1 · guardando</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Cuánto</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Bandeja</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::JournalPage</name>
    <message>
        <source>Journal</source>
        <translation>Diario</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Buscar (%1)</translation>
    </message>
    <message>
        <source>Find in the journal</source>
        <translation>Buscar en el diario</translation>
    </message>
    <message>
        <source>All words must be in the row</source>
        <translation>La fila debe contener todas las palabras</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Periodo</translation>
    </message>
    <message>
        <source>Edit the chosen entry</source>
        <translation>Editar la anotación elegida</translation>
    </message>
    <message>
        <source>Take the chosen entries out of the journal</source>
        <translation>Quitar del diario las anotaciones elegidas</translation>
    </message>
    <message>
        <source>Change the chosen entries together</source>
        <translation>Cambiar juntas las anotaciones elegidas</translation>
    </message>
    <message>
        <source>Pictures of the chosen entry</source>
        <translation>Fotos de la anotación elegida</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Todos los días</translation>
    </message>
    <message>
        <source>Last 30 days</source>
        <translation>Últimos 30 días</translation>
    </message>
    <message>
        <source>Last 90 days</source>
        <translation>Últimos 90 días</translation>
    </message>
    <message>
        <source>Last year</source>
        <translation>Último año</translation>
    </message>
    <message>
        <source>Last 2 years</source>
        <translation>Últimos 2 años</translation>
    </message>
    <message>
        <source>All actions</source>
        <translation>Todas las acciones</translation>
    </message>
    <message>
        <source>Enter edits the chosen entry, Delete takes it out</source>
        <translation>Intro edita la anotación elegida, Supr la quita</translation>
    </message>
    <message>
        <source>All stacks</source>
        <translation>Todas las torres</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies)</source>
        <translation>
            <numerusform>%n anotación</numerusform>
            <numerusform>%n anotaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n entry(ies)</source>
        <translation>
            <numerusform>%1 de %n anotación</numerusform>
            <numerusform>%1 de %n anotaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 chosen</source>
        <translation>%1, %2 elegidas</translation>
    </message>
    <message>
        <source>Here stands every feeding, look and harvest, newest first, once the first one is recorded.</source>
        <translation>Aquí aparece cada aporte, mirada y cosecha, lo más nuevo primero, en cuanto se anote lo primero.</translation>
    </message>
    <message>
        <source>No entry is like that. %1 shows all again.</source>
        <translation>Ninguna anotación es así. %1 vuelve a mostrarlas todas.</translation>
    </message>
    <message>
        <source>Delete “%1”</source>
        <translation>Borrar «%1»</translation>
    </message>
    <message numerus="yes">
        <source>Delete %n entry(ies)</source>
        <translation>
            <numerusform>Borrar %n anotación</numerusform>
            <numerusform>Borrar %n anotaciones</numerusform>
        </translation>
    </message>
    <message>
        <source>Record several entries one after the other</source>
        <translation>Anotar varias una tras otra</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Columnas</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::PictureStrip</name>
    <message>
        <source>Pictures of the chosen entry</source>
        <translation>Fotos de la anotación elegida</translation>
    </message>
    <message>
        <source>Enter shows them in full</source>
        <translation>Intro las muestra enteras</translation>
    </message>
    <message>
        <source>Picture %1</source>
        <translation>Foto %1</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::BeddingBench</name>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Depth, laid</source>
        <translation>Espesor una vez puesta</translation>
    </message>
    <message>
        <source>usual: %1 (%2)</source>
        <translation>habitual: %1 (%2)</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Bedding is wetted like a wrung-out sponge: to %1 of what it holds (%2). Press a handful: a few drops may come, no stream.</source>
        <translation>La cama se moja como una esponja escurrida: hasta %1 de lo que retiene (%2). Aprieta un puñado: pueden salir unas gotas, no un chorro.</translation>
    </message>
    <message>
        <source>another tray</source>
        <translation>otra bandeja</translation>
    </message>
    <message>
        <source>Add this tray to %1…</source>
        <translation>Añadir esta bandeja a %1…</translation>
    </message>
    <message>
        <source>Floor, depth and material make the amounts.</source>
        <translation>La superficie, el espesor y el material dan las cantidades.</translation>
    </message>
    <message>
        <source>%1 of bedding, dry as it comes, and %2 of water.</source>
        <translation>%1 de cama, seca tal como viene, y %2 de agua.</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Suelta</translation>
    </message>
    <message>
        <source>%1 before it is wetted</source>
        <translation>%1 antes de mojarla</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Puesta</translation>
    </message>
    <message>
        <source>%1 at %2 moisture, of it %3 dry</source>
        <translation>%1 con %2 de humedad, de ello %3 en seco</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Apto</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::CastingsBench</name>
    <message>
        <source>%1 (%2)</source>
        <comment>figure, source</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Castings of</source>
        <translation>Humus de</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Share of a potting mix</source>
        <translation>Parte en un sustrato de macetas</translation>
    </message>
    <message>
        <source>Depth of a top-dressing</source>
        <translation>Espesor de la capa superficial</translation>
    </message>
    <message>
        <source>Tested in potting mixes: %1; at most %2; never alone: it packs, and is too salty for seedlings. Top-dressing: %3, again after %4.</source>
        <translation>Ensayado en sustratos: %1; como máximo %2; nunca solo: se apelmaza y es demasiado salado para plántulas. Capa superficial: %3, de nuevo tras %4.</translation>
    </message>
    <message>
        <source>Sift through a mesh of %1; what stays on it goes back into a tray. Store vented and cool, shaded, near %2 moisture, for %3. Castings from a worm bin always hold some cocoons and young worms.</source>
        <translation>Tamiza con una malla de %1; lo que quede vuelve a una bandeja. Guárdalo ventilado y fresco, a la sombra, cerca de %2 de humedad, durante %3. El humus de una vermicompostera siempre lleva algunos capullos y lombrices jóvenes.</translation>
    </message>
    <message>
        <source>an amount of my own</source>
        <translation>una cantidad propia</translation>
    </message>
    <message>
        <source>taken on %1</source>
        <translation>retirado el %1</translation>
    </message>
    <message>
        <source>an estimate of what lies in the bottom tray</source>
        <translation>estimación de lo que hay en la bandeja inferior</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Humus</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, unos %2</translation>
    </message>
    <message>
        <source>%1 of mix: with %2 of potting soil, coir or compost</source>
        <translation>%1 de mezcla: con %2 de tierra para macetas, fibra de coco o compost</translation>
    </message>
    <message>
        <source>%1 – reckoned with %2, the most that is advised</source>
        <translation>%1 – calculado con %2, lo máximo que se aconseja</translation>
    </message>
    <message>
        <source>Potting mix</source>
        <translation>Sustrato de macetas</translation>
    </message>
    <message>
        <source>Top-dressing</source>
        <translation>Capa superficial</translation>
    </message>
    <message>
        <source>covers %1</source>
        <translation>cubre %1</translation>
    </message>
    <message>
        <source>To store it</source>
        <translation>Para guardarlo</translation>
    </message>
    <message>
        <source>let %1 of water dry off, in the shade</source>
        <translation>deja secar %1 de agua, a la sombra</translation>
    </message>
    <message>
        <source>dry enough; keep it vented</source>
        <translation>bastante seco; mantenlo ventilado</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::Gauge</name>
    <message>
        <source>nothing yet</source>
        <translation>nada aún</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <comment>name of a measure, its value</comment>
        <translation>%1  %2</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::LeachateBench</name>
    <message>
        <source>%1 (%2)</source>
        <comment>figure, source</comment>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Drenado</translation>
    </message>
    <message>
        <source>Measured strength</source>
        <translation>Fuerza medida</translation>
    </message>
    <message>
        <source>left empty: the estimate of the stack</source>
        <translation>si se deja vacío: la estimación de la torre</translation>
    </message>
    <message>
        <source>Wished strength</source>
        <translation>Fuerza deseada</translation>
    </message>
    <message>
        <source>young plants %1, grown ones %2</source>
        <translation>plantas jóvenes %1, adultas %2</translation>
    </message>
    <message>
        <source>Your water</source>
        <translation>Tu agua</translation>
    </message>
    <message>
        <source>tap water about %1</source>
        <translation>el agua del grifo, unos %1</translation>
    </message>
    <message>
        <source>Leachate is what ran through the trays: salty water with whatever it met. It is no brewed tea and no plant food of known content; it may hold germs and the juice of unfinished scraps. Use it within %1, on soil around plants that are not eaten raw, or pour it back over the top tray.</source>
        <translation>El lixiviado es lo que atravesó las bandejas: agua salada con lo que encontró. No es un té preparado ni un abono de contenido conocido; puede llevar gérmenes y jugo de restos sin acabar. Úsalo en el plazo de %1, en la tierra de plantas que no se comen crudas, o viértelo de nuevo en la bandeja superior.</translation>
    </message>
    <message>
        <source>Published: %1; harmless to worms %2; harmful about %3. One mS/cm is about %4 of salts.</source>
        <translation>Publicado: %1; inocuo para las lombrices %2; dañino alrededor de %3. Un mS/cm son unos %4 de sales.</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Fuerza</translation>
    </message>
    <message>
        <source>%1 mS/cm, %2</source>
        <translation>%1 mS/cm, %2</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>tal como se midió</translation>
    </message>
    <message>
        <source>estimated, with its 90 % range</source>
        <translation>estimada, con su intervalo del 90&#xa0;%</translation>
    </message>
    <message>
        <source>published values</source>
        <translation>valores publicados</translation>
    </message>
    <message>
        <source>Salts</source>
        <translation>Sales</translation>
    </message>
    <message>
        <source>The strength that is wished and that of your water make the dilution.</source>
        <translation>La fuerza deseada y la de tu agua dan la dilución.</translation>
    </message>
    <message>
        <source>One part of leachate to %1 parts of water, to be on the safe side of the range.</source>
        <translation>Una parte de lixiviado por %1 partes de agua, para quedar en el lado seguro del intervalo.</translation>
    </message>
    <message>
        <source>Water, in parts</source>
        <translation>Agua, en partes</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Da</translation>
    </message>
    <message>
        <source>It is no stronger than wished; it still is leachate, with the cautions above.</source>
        <translation>No es más fuerte de lo deseado; sigue siendo lixiviado, con las precauciones de arriba.</translation>
    </message>
    <message>
        <source>Your water is as strong as what is wished: with it no dilution gets there. Take rain water, or wish for more.</source>
        <translation>Tu agua es tan fuerte como lo deseado: con ella ninguna dilución llega. Usa agua de lluvia o desea más.</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialCard</name>
    <message>
        <source>No material is chosen.</source>
        <translation>No hay ningún material elegido.</translation>
    </message>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (propio)</translation>
    </message>
    <message>
        <source>welcome</source>
        <translation>apto</translation>
    </message>
    <message>
        <source>only a little at a time</source>
        <translation>solo un poco cada vez</translation>
    </message>
    <message>
        <source>keep it out</source>
        <translation>no lo eches</translation>
    </message>
    <message>
        <source>%1 %2.</source>
        <comment>mark, word</comment>
        <translation>%1 %2.</translation>
    </message>
    <message>
        <source>%1 %2. %3</source>
        <comment>mark, word, reason</comment>
        <translation>%1 %2. %3</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>none: not a source of carbon</source>
        <translation>ninguna: no es fuente de carbono</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Carbon, nitrogen</source>
        <translation>Carbono, nitrógeno</translation>
    </message>
    <message>
        <source>%1 and %2 of the dry matter</source>
        <translation>%1 y %2 de la materia seca</translation>
    </message>
    <message>
        <source>Bulk</source>
        <translation>Densidad</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Retiene</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Se ablanda como</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>none noted; what was left out is that of kitchen mix</source>
        <translation>ninguna anotada; lo que falta se tomó de la mezcla de cocina</translation>
    </message>
    <message>
        <source>★ Favourite</source>
        <translation>★ Favorito</translation>
    </message>
    <message>
        <source>☆ Make it a favourite</source>
        <translation>☆ Hacerlo favorito</translation>
    </message>
    <message>
        <source>your own, taken as welcome</source>
        <translation>propio, se toma como bienvenido</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1, suelto</translation>
    </message>
    <message>
        <source>%1 of water for one of dry matter, by weight</source>
        <translation>%1 de agua por uno de materia seca, en peso</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialsModel</name>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (propio)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>favourite</source>
        <translation>favorito</translation>
    </message>
    <message>
        <source>no favourite</source>
        <translation>no favorito</translation>
    </message>
    <message>
        <source>Favourite</source>
        <translation>Favorito</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Welcome in a worm bin, and how much of it</source>
        <translation>Si es apto para una vermicompostera, y en qué cantidad</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Apto</translation>
    </message>
    <message>
        <source>Carbon to nitrogen, by mass</source>
        <translation>Carbono por nitrógeno, en masa</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>Water in the fresh mass</source>
        <translation>Agua en la masa fresca</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Carbon in the dry matter</source>
        <translation>Carbono en la materia seca</translation>
    </message>
    <message>
        <source>Carbon</source>
        <translation>Carbono</translation>
    </message>
    <message>
        <source>Nitrogen in the dry matter</source>
        <translation>Nitrógeno en la materia seca</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation>Nitrógeno</translation>
    </message>
    <message>
        <source>Fresh and loose, in %1</source>
        <translation>Fresco y suelto, en %1</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Se ablanda como</translation>
    </message>
    <message>
        <source>Water held by one part of dry matter</source>
        <translation>Agua que retiene una parte de materia seca</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Retiene</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialsPage</name>
    <message>
        <source>Materials</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Buscar (%1)</translation>
    </message>
    <message>
        <source>Find a material</source>
        <translation>Buscar un material</translation>
    </message>
    <message>
        <source>All words must be in its name, reason or source</source>
        <translation>Su nombre, razón o fuente debe contener todas las palabras</translation>
    </message>
    <message>
        <source>Which materials are shown</source>
        <translation>Qué materiales se muestran</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todos</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Alimento</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Cama</translation>
    </message>
    <message>
        <source>Minerals</source>
        <translation>Minerales</translation>
    </message>
    <message>
        <source>Favourites</source>
        <translation>Favoritos</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Propios</translation>
    </message>
    <message>
        <source>Not, or only a little</source>
        <translation>No, o solo un poco</translation>
    </message>
    <message>
        <source>Enter puts the chosen material into the mix</source>
        <translation>Intro añade el material elegido a la mezcla</translation>
    </message>
    <message numerus="yes">
        <source>%n material(s); what each holds, whether it is welcome, and sums with them</source>
        <translation>
            <numerusform>%n material; qué contiene, si es apto, y cálculos con él</numerusform>
            <numerusform>%n materiales; qué contiene cada uno, si es apto, y cálculos con ellos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n material(s)</source>
        <translation>
            <numerusform>%1 de %n material</numerusform>
            <numerusform>%1 de %n materiales</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MixBench</name>
    <message>
        <source>%1 : 1</source>
        <translation>%1&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>no C:N</source>
        <translation>sin C:N</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>+ another material</source>
        <translation>+ otro material</translation>
    </message>
    <message>
        <source>Another material in the mix</source>
        <translation>Otro material en la mezcla</translation>
    </message>
    <message>
        <source>Aim at C:N</source>
        <translation>Buscar C:N</translation>
    </message>
    <message>
        <source>and moisture</source>
        <translation>y humedad</translation>
    </message>
    <message>
        <source>by adding</source>
        <translation>añadiendo</translation>
    </message>
    <message>
        <source>Put it into the mix</source>
        <translation>Añadir a la mezcla</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <comment>what, figure, source</comment>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>Aims: C:N</source>
        <translation>Objetivos: C:N</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humedad</translation>
    </message>
    <message>
        <source>best</source>
        <translation>lo mejor</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Measured in</source>
        <translation>Medido en</translation>
    </message>
    <message>
        <source>Take it out of the mix</source>
        <translation>Quitarlo de la mezcla</translation>
    </message>
    <message>
        <source>Choose materials and how much of each: the mix is reckoned from their water, carbon and nitrogen.</source>
        <translation>Elige materiales y cuánto de cada uno: la mezcla se calcula con su agua, carbono y nitrógeno.</translation>
    </message>
    <message>
        <source>Choose a material that may be added.</source>
        <translation>Elige un material que se pueda añadir.</translation>
    </message>
    <message>
        <source>then %1</source>
        <translation>entonces %1</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>good: %1</source>
        <translation>bien: %1</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>good: %1, best %2</source>
        <translation>bien: %1, lo mejor %2</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>%1, of it %2 dry</source>
        <translation>%1, de ello %2 en seco</translation>
    </message>
    <message>
        <source>Room, loose</source>
        <translation>Volumen, suelto</translation>
    </message>
    <message>
        <source>Softens</source>
        <translation>Se ablanda</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Se queda</translation>
    </message>
    <message>
        <source>%1 of the dry matter: use as it is, or sift</source>
        <translation>%1 de la materia seca: úsala como está o tamízala</translation>
    </message>
    <message>
        <source>Poured</source>
        <translation>Vertida</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <translation>%1 (%2): %3</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Apto</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 de agua</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two things to add</comment>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>C:N %1, moisture %2</source>
        <translation>C:N %1, humedad %2</translation>
    </message>
    <message>
        <source>Add %1: then it has %2.</source>
        <translation>Añade %1: entonces tiene %2.</translation>
    </message>
    <message>
        <source>It is as wished: %1.</source>
        <translation>Es como se desea: %1.</translation>
    </message>
    <message>
        <source>C:N %1 and moisture %2 cannot both be reached with %3.</source>
        <translation>C:N %1 y humedad %2 no se alcanzan a la vez con %3.</translation>
    </message>
    <message>
        <source>There is no carbon or no nitrogen in the mix, so that it has no C:N to be brought anywhere.</source>
        <translation>En la mezcla no hay carbono o no hay nitrógeno, así que no tiene una C:N que llevar a ningún sitio.</translation>
    </message>
    <message>
        <source>At that C:N the mix would be at %1, and water cannot be taken out.</source>
        <translation>Con esa C:N la mezcla quedaría a %1, y el agua no se puede quitar.</translation>
    </message>
    <message>
        <source>The mix has C:N %1, and %2 with C:N %3 leads away from the aim.</source>
        <translation>La mezcla tiene C:N %1, y %2 con C:N %3 la aleja del objetivo.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Even %1 times as much of it as of the mix does not get there.</source>
        <translation>Ni con %1 veces la cantidad de la mezcla se llega.</translation>
    </message>
    <message>
        <source>The nearest mix: add %1; then it has %2.</source>
        <translation>La mezcla más cercana: añade %1; entonces tiene %2.</translation>
    </message>
    <message>
        <source>The nearest mix is the one you have: %1.</source>
        <translation>La mezcla más cercana es la que tienes: %1.</translation>
    </message>
    <message>
        <source>With %1 it can be done: %2.</source>
        <translation>Con %1 se puede: %2.</translation>
    </message>
    <message>
        <source>No welcome material of the table does it alone; a drier or a milder aim can be reached.</source>
        <translation>Ningún material apto de la tabla lo logra solo; un objetivo más seco o más suave sí se alcanza.</translation>
    </message>
    <message>
        <source>half in %1, nine tenths in %2 (bed at %3, worms %4)</source>
        <translation>la mitad en %1, nueve décimos en %2 (lecho a %3, lombrices %4)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <comment>volume, weight by volume</comment>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::LabelsView</name>
    <message>
        <source>Labels for trays</source>
        <translation>Etiquetas de bandejas</translation>
    </message>
    <message>
        <source>%1, tray %2, batch %3</source>
        <translation>%1, bandeja %2, lote %3</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Bandejas</translation>
    </message>
    <message>
        <source>Each that is ticked gets a label</source>
        <translation>Cada una marcada recibe una etiqueta</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Pliego</translation>
    </message>
    <message>
        <source>First free place on the sheet</source>
        <translation>Primer sitio libre del pliego</translation>
    </message>
    <message>
        <source>Counted in the direction of reading; those before it stay empty</source>
        <translation>Contado en el sentido de lectura; los anteriores quedan vacíos</translation>
    </message>
    <message>
        <source>&amp;Trays:</source>
        <translation>&amp;Bandejas:</translation>
    </message>
    <message>
        <source>S&amp;heet:</source>
        <translation>P&amp;liego:</translation>
    </message>
    <message>
        <source>&amp;First free place:</source>
        <translation>Primer sitio li&amp;bre:</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::PaperView</name>
    <message>
        <source>The pages</source>
        <translation>Las páginas</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Guardar como P&amp;DF…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Escrito en %1.</translation>
    </message>
    <message>
        <source>The printer took nothing.</source>
        <translation>La impresora no aceptó nada.</translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::SheetView</name>
    <message>
        <source>Sheet of a stack</source>
        <translation>Hoja de una torre</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>&amp;Stack:</source>
        <translation>&amp;Torre:</translation>
    </message>
    <message>
        <source>Save as &amp;HTML…</source>
        <translation>Guardar como &amp;HTML…</translation>
    </message>
    <message>
        <source>Save as HTML</source>
        <translation>Guardar como HTML</translation>
    </message>
    <message>
        <source>HTML (*.html)</source>
        <translation>HTML (*.html)</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::ChangeCard</name>
    <message>
        <source>Compare</source>
        <translation>Comparar</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation>Probar un cambio</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>feed so much a week</source>
        <translation>dar tanto alimento por semana</translation>
    </message>
    <message>
        <source>be away</source>
        <translation>estar fuera</translation>
    </message>
    <message>
        <source>add a tray on</source>
        <translation>añadir una bandeja el</translation>
    </message>
    <message>
        <source>take the bottom tray on</source>
        <translation>retirar la bandeja inferior el</translation>
    </message>
    <message>
        <source>give worms away</source>
        <translation>regalar lombrices</translation>
    </message>
    <message>
        <source>start another stack from it</source>
        <translation>empezar otra torre con ella</translation>
    </message>
    <message>
        <source>the shortest way back</source>
        <translation>el camino más corto de vuelta</translation>
    </message>
    <message>
        <source>if an entry had not been</source>
        <translation>si una anotación no hubiera existido</translation>
    </message>
    <message>
        <source>Fresh food a week</source>
        <translation>Alimento fresco por semana</translation>
    </message>
    <message>
        <source>Usual temperature of the bed</source>
        <translation>Temperatura habitual del lecho</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Weeks until it is back</source>
        <translation>Semanas hasta recuperarse</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Anotación</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Comparando…</translation>
    </message>
    <message>
        <source>It cannot have been so: later entries rest on that one.</source>
        <translation>No pudo ser así: anotaciones posteriores se apoyan en esa.</translation>
    </message>
    <message>
        <source>The estimates hold no members to ask; wait until they are made anew.</source>
        <translation>Las estimaciones no guardan miembros que consultar; espera a que se rehagan.</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>como siempre</translation>
    </message>
    <message>
        <source>with the change</source>
        <translation>con el cambio</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>day, what was done, how much of what</comment>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>food a week</source>
        <translation>alimento por semana</translation>
    </message>
    <message>
        <source>if the bottom tray had been taken on</source>
        <translation>si la bandeja inferior se hubiera retirado el</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Día</translation>
    </message>
    <message>
        <source>Nothing stood there on that day, or it is not past yet.</source>
        <translation>Ese día no había nada ahí, o todavía no ha pasado.</translation>
    </message>
    <message>
        <source>It cannot have been so: later entries rest on that tray.</source>
        <translation>No puede haber sido así: hay anotaciones posteriores que se apoyan en esa bandeja.</translation>
    </message>
    <message>
        <source>That day is not ahead: take tomorrow or a later one.</source>
        <translation>Ese día no está por venir: elige mañana o uno posterior.</translation>
    </message>
    <message>
        <source>The estimates reach to %1.</source>
        <translation>Las estimaciones llegan hasta el %1.</translation>
    </message>
    <message>
        <source>That is before the first day.</source>
        <translation>Eso es antes del primer día.</translation>
    </message>
    <message>
        <source>day</source>
        <translation>día</translation>
    </message>
    <message>
        <source>the new stack</source>
        <translation>la torre nueva</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>keep the bed warmer or colder</source>
        <translation>mantener el lecho más cálido o más frío</translation>
    </message>
    <message>
        <source>the mean of the whole year; the place makes winter and summer of it</source>
        <translation>la media de todo el año; el lugar hace de ella invierno y verano</translation>
    </message>
    <message>
        <source>mean of the year: about %1 in %2, %3 in %4</source>
        <comment>temperature, month, temperature, month</comment>
        <translation>media del año: unos %1 en %2, %3 en %4</translation>
    </message>
    <message>
        <source>All go on without lifting a tray; the plan of the year lifts them when they are due. The new stack gets its second tray when the first is full.</source>
        <translation>Todas siguen sin subir ninguna bandeja; el plan del año las sube cuando toca. La torre nueva recibe su segunda bandeja cuando la primera está llena.</translation>
    </message>
    <message>
        <source>Both go on without lifting a tray; the plan of the year lifts them when they are due.</source>
        <translation>Ambas siguen sin subir ninguna bandeja; el plan del año las sube cuando toca.</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::ClockCard</name>
    <message>
        <source>no difference</source>
        <translation>sin diferencia</translation>
    </message>
    <message>
        <source>%1 warmer: %2</source>
        <translation>%1 más: %2</translation>
    </message>
    <message>
        <source>%1 more a week: %2</source>
        <translation>%1 más por semana: %2</translation>
    </message>
    <message>
        <source>%1 more worms: %2</source>
        <translation>%1 más de lombrices: %2</translation>
    </message>
    <message>
        <source>half the bedding in the top tray: %1</source>
        <translation>la mitad de cama en la bandeja superior: %1</translation>
    </message>
    <message>
        <source>%1 of water: %2</source>
        <translation>%1 de agua: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>no antes de un año</translation>
    </message>
    <message>
        <source>Cold holds it back.</source>
        <translation>La frena el frío.</translation>
    </message>
    <message>
        <source>Food holds it back.</source>
        <translation>La frena el alimento.</translation>
    </message>
    <message>
        <source>Too few worms hold it back.</source>
        <translation>La frenan las pocas lombrices.</translation>
    </message>
    <message>
        <source>Bedding that is not softened holds it back.</source>
        <translation>La frena la cama sin ablandar.</translation>
    </message>
    <message>
        <source>Dryness holds it back.</source>
        <translation>La frena la sequedad.</translation>
    </message>
    <message>
        <source>Nothing holds it back much.</source>
        <translation>Nada la frena mucho.</translation>
    </message>
    <message numerus="yes">
        <source>Of %n stack(s) these are the first %1 on the shelf: each takes a while to foresee.</source>
        <translation>
            <numerusform>De %n torre estas son las %1 primeras del estante: prever cada una lleva un rato.</numerusform>
            <numerusform>De %n torres estas son las %1 primeras del estante: prever cada una lleva un rato.</numerusform>
        </translation>
    </message>
    <message>
        <source>By what is known it has hardly any worms: nothing but worms brings it on.</source>
        <translation>Por lo que se sabe apenas tiene lombrices: solo lombrices la hacen avanzar.</translation>
    </message>
    <message>
        <source>Next step of each stack</source>
        <translation>Próximo paso de cada torre</translation>
    </message>
    <message>
        <source>Next tray to be added or lifted, and what would bring it forward</source>
        <translation>Próxima bandeja que añadir o subir, y qué la adelantaría</translation>
    </message>
    <message>
        <source>castings in the light, taken about %1; the next step due %2</source>
        <translation>humus a la luz, se retira hacia el %1; el siguiente paso, %2</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>toca ahora</translation>
    </message>
    <message>
        <source>due about now; the list says so once it is 80 % sure</source>
        <translation>toca más o menos ahora; la lista lo dice cuando es seguro al 80 %</translation>
    </message>
    <message>
        <source>It would be due: %1.</source>
        <translation>Tocaría: %1.</translation>
    </message>
    <message>
        <source>There is no stack yet whose next step could be foreseen.</source>
        <translation>Aún no hay ninguna torre cuyo próximo paso se pueda prever.</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::FeedingCard</name>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>front</source>
        <translation>delante</translation>
    </message>
    <message>
        <source>back</source>
        <translation>detrás</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>por todas partes</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 de agua</translation>
    </message>
    <message>
        <source>its usual cover</source>
        <translation>su cubierta habitual</translation>
    </message>
    <message>
        <source>Feeding this week</source>
        <translation>Alimento de esta semana</translation>
    </message>
    <message>
        <source>What the kitchen gives in a week</source>
        <translation>Lo que da la cocina en una semana</translation>
    </message>
    <message>
        <source>From the kitchen</source>
        <translation>De la cocina</translation>
    </message>
    <message>
        <source>Supply of the kitchen</source>
        <translation>Restos de la cocina</translation>
    </message>
    <message>
        <source>Learned from the journal: %1 a week over all stacks, the middle week of the last eight. Leave it empty to follow the journal.</source>
        <translation>Aprendido del diario: %1 por semana entre todas las torres, la semana central de las últimas ocho. Déjalo vacío para seguir el diario.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>no tray takes food</source>
        <translation>ninguna bandeja admite alimento</translation>
    </message>
    <message>
        <source>it can bear %1 this week</source>
        <translation>tolera %1 esta semana</translation>
    </message>
    <message>
        <source>No stack takes food yet.</source>
        <translation>Ninguna torre admite alimento aún.</translation>
    </message>
    <message>
        <source>%1 more than the stacks can bear as they stand: keep it until they have eaten, freeze it for a week with less, or put it on a compost heap. Given all the same, it heats and smells.</source>
        <translation>%1 más de lo que toleran las torres tal como están: guárdalo hasta que hayan comido, congélalo para una semana con menos o échalo a un montón de compost. Si se da igualmente, se calienta y huele.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>amount and material of a cover</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>no water</source>
        <translation>sin agua</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>tray %1, %2; with it: %3. At most %4</source>
        <translation>bandeja %1, %2; con ello: %3. Como máximo %4</translation>
    </message>
    <message>
        <source>all of it from %1 on, since the days before count; tray %2, %3; with it: %4. At most %5</source>
        <translation>todo a partir de %1, pues los días anteriores cuentan; bandeja %2, %3; con ello: %4. Como máximo %5</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::LanesView</name>
    <message>
        <source>no step chosen</source>
        <translation>ningún paso elegido</translation>
    </message>
    <message numerus="yes">
        <source>Year of %n stack(s): %1</source>
        <translation>
            <numerusform>Año de %n torre: %1</numerusform>
            <numerusform>Año de %n torres: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Arrow keys choose a step or another stack; Shift with Left or Right moves a harvest by a day, Ctrl and Shift by a week; Enter keeps it on its day</source>
        <translation>Las flechas eligen un paso u otra torre; Mayús con Izquierda o Derecha mueve una cosecha un día; Ctrl y Mayús, una semana; Intro la mantiene en su día</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>stack, when its bottom tray is ready</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>nobody is there: %1</source>
        <translation>no hay nadie: %1</translation>
    </message>
    <message>
        <source>nobody is there for this stack: %1</source>
        <translation>no hay nadie para esta torre: %1</translation>
    </message>
    <message>
        <source>%1: nobody is there for it, %2</source>
        <comment>stack, days</comment>
        <translation>%1: no hay nadie para ella, %2</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::RotationPage</name>
    <message>
        <source>Rotation</source>
        <translation>Rotación</translation>
    </message>
    <message>
        <source>Steps of the coming year</source>
        <translation>Pasos del próximo año</translation>
    </message>
    <message>
        <source>Harvest on %1</source>
        <translation>Cosecha el %1</translation>
    </message>
    <message>
        <source>Days for harvests</source>
        <translation>Días para cosechar</translation>
    </message>
    <message>
        <source>Pin a harvest</source>
        <translation>Fijar una cosecha</translation>
    </message>
    <message>
        <source>%1 · the year is being planned</source>
        <translation>%1 · se está planificando el año</translation>
    </message>
    <message>
        <source>The year is being planned; it stands here in a moment.</source>
        <translation>Se está planificando el año; aparece aquí en un momento.</translation>
    </message>
    <message numerus="yes">
        <source>%n harvest(s) in the coming year</source>
        <translation>
            <numerusform>%n cosecha en el próximo año</numerusform>
            <numerusform>%n cosechas en el próximo año</numerusform>
        </translation>
    </message>
    <message>
        <source>about %1 of castings</source>
        <translation>unos %1 de humus</translation>
    </message>
    <message numerus="yes">
        <source>on %n day(s)</source>
        <translation>
            <numerusform>en %n día</numerusform>
            <numerusform>en %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>put off by %1 in all</source>
        <translation>aplazadas %1 en total</translation>
    </message>
    <message>
        <source>no better choice of days exists</source>
        <translation>no hay mejor elección de días</translation>
    </message>
    <message>
        <source>a good choice of days, not proved to be the best</source>
        <translation>una buena elección de días, sin prueba de que sea la mejor</translation>
    </message>
    <message>
        <source>Choose a step with the mouse or the arrow keys. A harvest is moved by dragging it, or with Shift and the arrow keys; what that costs is shown here.</source>
        <translation>Elige un paso con el ratón o las flechas. Una cosecha se mueve arrastrándola, o con Mayús y las flechas; aquí se muestra lo que cuesta.</translation>
    </message>
    <message>
        <source>a day of lifting saved counts as %1 of delay</source>
        <translation>un día de subida ahorrado cuenta como %1 de retraso</translation>
    </message>
    <message>
        <source>two harvests close together count as %1 of delay</source>
        <translation>dos cosechas muy juntas cuentan como %1 de retraso</translation>
    </message>
    <message>
        <source>On that day much of the tray is likely not castings yet.</source>
        <translation>Ese día gran parte de la bandeja probablemente aún no es humus.</translation>
    </message>
    <message numerus="yes">
        <source>none waits more than %n day(s)</source>
        <translation>
            <numerusform>ninguna espera más de %n día</numerusform>
            <numerusform>ninguna espera más de %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>How long a harvest may wait for others</source>
        <translation>Cuánto puede esperar una cosecha a las demás</translation>
    </message>
    <message>
        <source>How long a harvest may wait</source>
        <translation>Cuánto puede esperar una cosecha</translation>
    </message>
    <message>
        <source>Let a harvest come when it is due</source>
        <translation>Dejar una cosecha para cuando toque</translation>
    </message>
    <message>
        <source>Once a stack stands, its coming year appears here: when each tray is ready, added, lifted and taken, what to feed it this week, what would bring its next step forward, and what a change would do.</source>
        <translation>En cuanto haya una torre, aquí aparece su próximo año: cuándo cada bandeja está lista, se añade, se sube y se retira, qué darle de comer esta semana, qué adelantaría su próximo paso y qué haría un cambio.</translation>
    </message>
    <message>
        <source>No stack holds a tray whose next step could be foreseen.</source>
        <translation>Ninguna torre tiene una bandeja cuyo próximo paso se pueda prever.</translation>
    </message>
    <message>
        <source>each when it is due, they would give %1</source>
        <translation>cada una cuando toca, darían %1</translation>
    </message>
    <message>
        <source>In this stack: harvests %1 later in all; castings in the year %2, each when it is due %3; colony at its end %4, usually %5.</source>
        <translation>En esta torre: cosechas %1 después en total; humus en el año %2, cada una cuando toca %3; colonia al final %4, normalmente %5.</translation>
    </message>
    <message numerus="yes">
        <source>%n more would come within the year if none waited</source>
        <translation>
            <numerusform>%n más llegaría en el año si ninguna esperara</numerusform>
            <numerusform>%n más llegarían en el año si ninguna esperara</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::StepReadout</name>
    <message>
        <source>Keep this day</source>
        <translation>Mantener este día</translation>
    </message>
    <message>
        <source>The chosen step</source>
        <translation>El paso elegido</translation>
    </message>
    <message>
        <source>Keep the chosen harvest on its day</source>
        <translation>Mantener la cosecha elegida en su día</translation>
    </message>
    <message>
        <source>Enter does the same in the lanes</source>
        <translation>Intro hace lo mismo en los carriles</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::TrackCard</name>
    <message>
        <source>add a tray</source>
        <translation>añadir una bandeja</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>subir la bandeja inferior</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; still due</source>
        <translation>%1, %2: se aconsejó %3; aún pendiente</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; done %4 later</source>
        <translation>%1, %2: se aconsejó %3; hecho a los %4</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; taken back after %4</source>
        <translation>%1, %2: se aconsejó %3; retirado a los %4</translation>
    </message>
    <message>
        <source>Diary of advice</source>
        <translation>Diario de consejos</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; done the same day</source>
        <comment>day, stack, what was advised</comment>
        <translation>%1, %2: «%3»; hecho el mismo día</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; done %4 later</source>
        <comment>day, stack, what was advised, days</comment>
        <translation>%1, %2: «%3»; hecho %4 después</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; still due</source>
        <comment>day, stack, what was advised</comment>
        <translation>%1, %2: «%3»; aún pendiente</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; not done, taken back after %4</source>
        <comment>day, stack, what was advised, days</comment>
        <translation>%1, %2: «%3»; no se hizo, retirado tras %4</translation>
    </message>
    <message>
        <source>harvests weighed: %1, within what was foreseen: %2 (9 in 10 should be); lifted as ready: %3, of these within: %4</source>
        <translation>cosechas pesadas: %1, dentro de lo previsto: %2 (deberían serlo 9 de 10); subidas como listas: %3, de ellas dentro: %4</translation>
    </message>
    <message>
        <source>feedings due in the last 90 days: %1, given within 3 days: %2</source>
        <translation>aportes debidos de los últimos 90 días: %1, dados en 3 días: %2</translation>
    </message>
    <message>
        <source>other advice in that time: %1, followed: %2</source>
        <translation>otros consejos en ese tiempo: %1, seguidos: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3 weighed, %4 foreseen, ready %5 when lifted</source>
        <translation>%1, %2: %3 pesados, %4 previstos, lista %5 al subirla</translation>
    </message>
    <message>
        <source>%1, %2: %3 weighed, %4 foreseen</source>
        <translation>%1, %2: %3 pesados, %4 previstos</translation>
    </message>
    <message numerus="yes">
        <source>Feedings and other advice are counted of the first %1 of %n stack(s) on the shelf.</source>
        <translation>
            <numerusform>Los aportes y demás consejos se cuentan de las %1 primeras de %n torre del estante.</numerusform>
            <numerusform>Los aportes y demás consejos se cuentan de las %1 primeras de %n torres del estante.</numerusform>
        </translation>
    </message>
    <message>
        <source>What was advised, what was done and how right it was stands here once a step was due.</source>
        <translation>Qué se aconsejó, qué se hizo y cuánto acertó aparece aquí en cuanto haya tocado un paso.</translation>
    </message>
    <message>
        <source>steps advised: %1, followed: %2</source>
        <translation>pasos aconsejados: %1, seguidos: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::TwoCourses</name>
    <message>
        <source>Colony of the coming year, as usual and with the change: the figures stand in the table above</source>
        <translation>Colonia del próximo año, como siempre y con el cambio: las cifras están en la tabla de arriba</translation>
    </message>
    <message>
        <source>colony, as usual</source>
        <translation>colonia, como siempre</translation>
    </message>
    <message>
        <source>colony, with the change</source>
        <translation>colonia, con el cambio</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>Colony of the coming year, as usual, with the change, and of the new stack: the figures stand in the table above</source>
        <translation>Colonia del próximo año, como siempre, con el cambio, y la de la torre nueva: las cifras están en la tabla de arriba</translation>
    </message>
    <message>
        <source>colony, the new stack</source>
        <translation>colonia, la torre nueva</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::WishCard</name>
    <message>
        <source>a little each month</source>
        <translation>un poco cada mes</translation>
    </message>
    <message>
        <source>What would raise it?</source>
        <translation>¿Qué la aumentaría?</translation>
    </message>
    <message>
        <source>The garden&apos;s wish</source>
        <translation>El deseo del jardín</translation>
    </message>
    <message>
        <source>Castings wished for</source>
        <translation>Humus deseado</translation>
    </message>
    <message>
        <source>Wished for by</source>
        <translation>Deseado para</translation>
    </message>
    <message>
        <source>by</source>
        <translation>para</translation>
    </message>
    <message>
        <source>Say how much is wished for, and by when.</source>
        <translation>Di cuánto se desea y para cuándo.</translation>
    </message>
    <message>
        <source>Chance %1. By %2 the plan gives %3.</source>
        <translation>Probabilidad %1. Hasta el %2 el plan da %3.</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <comment>what is changed, chance, litres</comment>
        <translation>%1: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 more food a week in each stack</source>
        <translation>%1 más de alimento por semana en cada torre</translation>
    </message>
    <message>
        <source>the beds %1 warmer</source>
        <translation>los lechos %1 más calientes</translation>
    </message>
    <message>
        <source>one tray more in each stack</source>
        <translation>una bandeja más en cada torre</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Comparando…</translation>
    </message>
    <message>
        <source>Not raised by: %1.</source>
        <translation>No la aumenta: %1.</translation>
    </message>
    <message numerus="yes">
        <source>wanted %n day(s) later</source>
        <translation>
            <numerusform>deseado %n día después</numerusform>
            <numerusform>deseado %n días después</numerusform>
        </translation>
    </message>
    <message>
        <source>more food, which no stack can bear as they stand</source>
        <translation>más alimento, que ninguna torre tolera tal como están</translation>
    </message>
    <message>
        <source>up to %1 more food a week in each stack, as far as it can bear it</source>
        <translation>hasta %1 más de alimento por semana en cada torre, hasta lo que tolere</translation>
    </message>
    <message>
        <source>Something comes in each month.</source>
        <translation>Cada mes llega algo.</translation>
    </message>
    <message numerus="yes">
        <source>In %n month(s) until then nothing is taken.</source>
        <translation>
            <numerusform>En %n mes hasta entonces no se retira nada.</numerusform>
            <numerusform>En %n meses hasta entonces no se retira nada.</numerusform>
        </translation>
    </message>
    <message>
        <source>each harvest on the day it is due</source>
        <translation>cada cosecha el día que toca</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::DateBar</name>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Day shown</source>
        <translation>Día mostrado</translation>
    </message>
    <message>
        <source>Shows the shelf as it stood on any day. Left and right: a day; page up and down: a week.</source>
        <translation>Muestra el estante tal como estaba cualquier día. Izquierda y derecha: un día; Re Pág y Av Pág: una semana.</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Volver a hoy</translation>
    </message>
    <message>
        <source>%1 – the past</source>
        <translation>%1 – el pasado</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::PartPanel</name>
    <message>
        <source>%1: %2</source>
        <comment>a stack and one of its trays</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: everything that can be recorded</source>
        <translation>%1: todo lo que se puede anotar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Cerrar (Esc)</translation>
    </message>
    <message>
        <source>%1…</source>
        <comment>an act that opens a form</comment>
        <translation>%1…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>an act, and what it is done to</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Más…</translation>
    </message>
    <message numerus="yes">
        <source>%n more act(s) for it</source>
        <translation>
            <numerusform>%n acción más para ella</numerusform>
            <numerusform>%n acciones más para ella</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::ShelfBoard</name>
    <message>
        <source>Shelf</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Start a stack…</source>
        <translation>Empezar una torre…</translation>
    </message>
    <message>
        <source>No stack stood on this day</source>
        <translation>Ese día no había ninguna torre</translation>
    </message>
    <message>
        <source>The first one was started later. Move the slider on, or go back to today.</source>
        <translation>La primera empezó después. Mueve el control hacia delante o vuelve a hoy.</translation>
    </message>
    <message>
        <source>No stack stands any more</source>
        <translation>Ya no queda ninguna torre</translation>
    </message>
    <message>
        <source>All stacks are retired. Their journal is kept, and the slider still shows them as they stood.</source>
        <translation>Todas las torres están dadas de baja. Su diario se conserva, y el control aún las muestra como estaban.</translation>
    </message>
    <message>
        <source>No stack stands here yet</source>
        <translation>Aquí no hay aún ninguna torre</translation>
    </message>
    <message>
        <source>Once a stack is started, it is drawn here from the side: its trays with what lies in them, its worms and its sump, and under it what to do next.</source>
        <translation>En cuanto se empieza una torre, se dibuja aquí de lado: sus bandejas con lo que hay en ellas, sus lombrices y su depósito, y debajo qué hacer a continuación.</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::ShelfPage</name>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>%1: not written down. %2</source>
        <translation>%1: no anotado. %2</translation>
    </message>
    <message>
        <source>%1: not written down. %2 Nothing else was changed; try again when that is put right.</source>
        <translation>%1: no anotado. %2 No se cambió nada más; vuelve a intentarlo cuando esté arreglado.</translation>
    </message>
    <message>
        <source>Place of %1 on the shelf</source>
        <translation>Lugar de %1 en el estante</translation>
    </message>
    <message>
        <source>No stack was chosen, and nothing is written down yet. %1 has the focus now: press again for it, or go to another one with Left and Right.</source>
        <translation>No había ninguna torre elegida y aún no se ha anotado nada. %1 tiene ahora el foco: pulsa otra vez para ella, o ve a otra con Izquierda y Derecha.</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StackCanvas</name>
    <message>
        <source>%1: %2</source>
        <comment>a name and its value</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StackColumn</name>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>what a button does, and the stack</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Everything else that can be recorded for %1</source>
        <translation>Todo lo demás que se puede anotar de %1</translation>
    </message>
    <message>
        <source>More for %1</source>
        <translation>Más de %1</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StoryCharts</name>
    <message>
        <source>Charts over its time</source>
        <translation>Gráficos a lo largo de su vida</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StripsView</name>
    <message>
        <source>Small charts of %1</source>
        <translation>Gráficos pequeños de %1</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::VerdictBox</name>
    <message>
        <source>%1: %2</source>
        <comment>name of a stack, state</comment>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::MeasureSection</name>
    <message>
        <source>%1 as table</source>
        <translation>%1 como tabla</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, stacks together</source>
        <translation>%1, torres juntas</translation>
    </message>
    <message>
        <source>No stack is chosen. Choose one above, and its chart stands here.</source>
        <translation>No hay ninguna torre elegida. Elige una arriba y su gráfico aparecerá aquí.</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::SignKey</name>
    <message>
        <source>estimate and its 90 % range</source>
        <translation>estimación y su intervalo del 90&#xa0;%</translation>
    </message>
    <message>
        <source>with the change that is tried</source>
        <translation>con el cambio que se prueba</translation>
    </message>
    <message>
        <source>expected yield and its 90 % range</source>
        <translation>rendimiento esperado y su intervalo del 90 %</translation>
    </message>
    <message>
        <source>forecast: fed as usual, no tray lifted</source>
        <translation>previsión: alimentada como siempre, sin subir bandejas</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::StackChips</name>
    <message>
        <source>Show stack %1</source>
        <translation>Mostrar la torre %1</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::TrendTable</name>
    <message>
        <source>%1 (today)</source>
        <translation>%1 (hoy)</translation>
    </message>
    <message>
        <source>%1 (forecast)</source>
        <translation>%1 (previsión)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>%1, read by a logger</source>
        <translation>%1, leído por un registrador</translation>
    </message>
    <message>
        <source>%1, estimate</source>
        <translation>%1, estimación</translation>
    </message>
    <message>
        <source>%1, drained</source>
        <translation>%1, drenado</translation>
    </message>
    <message>
        <source>%1, to be expected</source>
        <translation>%1, esperado</translation>
    </message>
    <message>
        <source>%1 of %2 of it</source>
        <translation>%1 de %2 de ello</translation>
    </message>
    <message>
        <source>%1, with the change</source>
        <translation>%1, con el cambio</translation>
    </message>
    <message>
        <source>%1, castings taken</source>
        <translation>%1, humus tomado</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::TrendsPage</name>
    <message>
        <source>Trends</source>
        <translation>Tendencias</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Mostrar %1</translation>
    </message>
    <message>
        <source>Charts stand here once there is a stack.</source>
        <translation>Los gráficos aparecen aquí en cuanto haya una torre.</translation>
    </message>
    <message>
        <source>%1 · estimates are being made anew</source>
        <translation>%1 · se rehacen las estimaciones</translation>
    </message>
    <message>
        <source>Save or print</source>
        <translation>Guardar o imprimir</translation>
    </message>
    <message>
        <source>What the charts show now, as a picture, a drawing, pages or figures</source>
        <translation>Lo que muestran ahora los gráficos, como imagen, dibujo, páginas o cifras</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::AmountField</name>
    <message>
        <source>«%1» is not a unit that fits here.</source>
        <translation>«%1» no es una unidad válida aquí.</translation>
    </message>
    <message>
        <source>«%1» is not a number.</source>
        <translation>«%1» no es un número.</translation>
    </message>
    <message>
        <source>An amount cannot be below zero.</source>
        <translation>Una cantidad no puede ser menor que cero.</translation>
    </message>
    <message>
        <source>The amount must be more than zero.</source>
        <translation>La cantidad debe ser mayor que cero.</translation>
    </message>
    <message>
        <source>A count is a whole number.</source>
        <translation>Un recuento es un número entero.</translation>
    </message>
    <message>
        <source>At most %1.</source>
        <translation>Como máximo %1.</translation>
    </message>
    <message>
        <source>At most %1 in one entry.</source>
        <translation>Como máximo %1 en una anotación.</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Unidad de %1</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::AreaField</name>
    <message>
        <source>in × in</source>
        <translation>in × in</translation>
    </message>
    <message>
        <source>sq ft</source>
        <translation>ft²</translation>
    </message>
    <message>
        <source>Give the length as well.</source>
        <translation>Indica también el largo.</translation>
    </message>
    <message>
        <source>Width and length must be more than zero.</source>
        <translation>El ancho y el largo deben ser mayores que cero.</translation>
    </message>
    <message>
        <source>That is %1; a tray has from %2 to %3.</source>
        <translation>Eso es %1; una bandeja tiene de %2 a %3.</translation>
    </message>
    <message>
        <source>Give the width as well.</source>
        <translation>Indica también el ancho.</translation>
    </message>
    <message>
        <source>%1: width</source>
        <translation>%1: ancho</translation>
    </message>
    <message>
        <source>%1: length</source>
        <translation>%1: largo</translation>
    </message>
    <message>
        <source>%1: how it is given</source>
        <translation>%1: cómo se indica</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::DateField</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>«%1» is not a date from 1900 to 2199; write it like %2 or %3.</source>
        <translation>«%1» no es una fecha de 1900 a 2199; escríbela como %2 o %3.</translation>
    </message>
    <message>
        <source>«%1» is not a time of day; write it like 18:30.</source>
        <translation>«%1» no es una hora; escríbela como 18:30.</translation>
    </message>
    <message>
        <source>+ time</source>
        <translation>+ hora</translation>
    </message>
    <message>
        <source>Note the time of day as well</source>
        <translation>Anotar también la hora</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Choose the date from a calendar</source>
        <translation>Elegir la fecha en un calendario</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1, hoy</translation>
    </message>
    <message>
        <source>%1, yesterday</source>
        <translation>%1, ayer</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n days ago</source>
        <translation>
            <numerusform>%1, hace %n día</numerusform>
            <numerusform>%1, hace %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, tomorrow</source>
        <translation>%1, mañana</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n days from now</source>
        <translation>
            <numerusform>%1, dentro de %n día</numerusform>
            <numerusform>%1, dentro de %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has not come yet. What is recorded has been done: today at the latest.</source>
        <translation>%1 aún no ha llegado. Se anota lo que está hecho: hoy a más tardar.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::FactList</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::Field</name>
    <message>
        <source>«%1» is not a number.</source>
        <translation>«%1» no es un número.</translation>
    </message>
    <message>
        <source>«%1» could be read in two ways: write it without a thousands mark.</source>
        <translation>«%1» se puede leer de dos maneras: escríbelo sin separador de millares.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::LengthField</name>
    <message>
        <source>in</source>
        <translation>in</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::MaterialField</name>
    <message>
        <source>«%1» is not among the materials.</source>
        <translation>«%1» no está entre los materiales.</translation>
    </message>
    <message>
        <source>«%1» is not among the materials; the nearest are %2.</source>
        <translation>«%1» no está entre los materiales; los más parecidos son %2.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::NumberField</name>
    <message>
        <source>A whole number is wanted here.</source>
        <translation>Aquí va un número entero.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>De %1 a %2.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Unidad de %1</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::TextField</name>
    <message>
        <source>It holds a character that cannot be printed; type it again.</source>
        <translation>Contiene un carácter que no se puede imprimir; escríbelo de nuevo.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::AboutView</name>
    <message>
        <source>Tierloam %1</source>
        <translation>Tierloam %1</translation>
    </message>
    <message>
        <source>What it does</source>
        <translation>Qué hace</translation>
    </message>
    <message>
        <source>It keeps the journal of stacked-tray worm bins and estimates what goes on inside them, each figure with its range. Estimates are no measurements: a look into the tray decides. Local codes and licensed practice come first.</source>
        <translation>Lleva el diario de vermicomposteras de bandejas apiladas y estima lo que ocurre dentro, cada cifra con su intervalo. Las estimaciones no son mediciones: decide lo que se ve en la bandeja. Las normas locales y los profesionales autorizados van primero.</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Licencia</translation>
    </message>
    <message>
        <source>Made with</source>
        <translation>Hecho con</translation>
    </message>
    <message>
        <source>Sources of the materials table</source>
        <translation>Fuentes de la tabla de materiales</translation>
    </message>
    <message>
        <source>&amp;Read the licence</source>
        <translation>&amp;Leer la licencia</translation>
    </message>
    <message>
        <source>Copyright of its authors. Free software under the GNU General Public License, version 3 or later; it comes with no warranty.</source>
        <translation>Derechos de sus autores. Software libre bajo la GNU General Public License, versión 3 o posterior; se ofrece sin ninguna garantía.</translation>
    </message>
    <message>
        <source>Qt 6 (LGPL-3) with Qt Charts (GPL-3), SQLite (public domain), the C++ standard library (GPL-3 with its runtime exception), and on paper the DejaVu fonts (their own free licence). Drawings and icon are the program&apos;s own. Nothing is sent over a network.</source>
        <translation>Qt 6 (LGPL-3) con Qt Charts (GPL-3), SQLite (dominio público), la biblioteca estándar de C++ (GPL-3 con su excepción de ejecución) y, en papel, las letras DejaVu (con su propia licencia libre). Los dibujos y el icono son del programa. Nada se envía por la red.</translation>
    </message>
    <message>
        <source>Sources of numbers</source>
        <translation>Fuentes de los números</translation>
    </message>
    <message>
        <source>Each figure of the handbook and each parameter of the model names what it rests on: the handbook lists them. What the trade says without a source, and what rests on memory or judgement, is marked so.</source>
        <translation>Cada cifra del manual y cada parámetro del modelo dice en qué se apoya: el manual los enumera. Lo que se dice en el oficio sin fuente, y lo que se apoya en la memoria o en un juicio, está marcado así.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::BackupsView</name>
    <message>
        <source>of the day</source>
        <translation>del día</translation>
    </message>
    <message>
        <source>before an import</source>
        <translation>antes de importar</translation>
    </message>
    <message>
        <source>before the file was brought up to date</source>
        <translation>antes de actualizar el archivo</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Copias de seguridad</translation>
    </message>
    <message>
        <source>Backups of %1</source>
        <translation>Copias de seguridad de %1</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Buscando…</translation>
    </message>
    <message>
        <source>Made on</source>
        <translation>Hecha el</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Anotaciones</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Última anotación</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Choose the one to be restored</source>
        <translation>Elige la que se va a restaurar</translation>
    </message>
    <message>
        <source>How far the restoring is</source>
        <translation>Avance de la restauración</translation>
    </message>
    <message>
        <source>&amp;Restore to a new file…</source>
        <translation>&amp;Restaurar en un archivo nuevo…</translation>
    </message>
    <message>
        <source>Call &amp;off</source>
        <translation>&amp;Interrumpir</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>There are none yet. One is made with the first change of each day.</source>
        <translation>Aún no hay ninguna. Se hace una con el primer cambio de cada día.</translation>
    </message>
    <message numerus="yes">
        <source>%n backup(s). A restored one goes into a new file; the household&apos;s own file stays as it is.</source>
        <translation>
            <numerusform>%n copia de seguridad. Al restaurarla va a un archivo nuevo; el del hogar queda como está.</numerusform>
            <numerusform>%n copias de seguridad. Al restaurar una va a un archivo nuevo; el del hogar queda como está.</numerusform>
        </translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>%1 as of %2</source>
        <translation>%1 a fecha de %2</translation>
    </message>
    <message>
        <source>Restore to a new file</source>
        <translation>Restaurar en un archivo nuevo</translation>
    </message>
    <message>
        <source>Households (*.tierloam)</source>
        <translation>Hogares (*.tierloam)</translation>
    </message>
    <message>
        <source>Restoring to %1…</source>
        <translation>Restaurando en %1…</translation>
    </message>
    <message>
        <source>&amp;Look again</source>
        <translation>&amp;Mirar de nuevo</translation>
    </message>
    <message>
        <source>Another &amp;folder…</source>
        <translation>Otra &amp;carpeta…</translation>
    </message>
    <message>
        <source>The folder chosen for backups is not there now: %1. Plug in or connect what it lies on, then look again. Until then backups are made beside the household&apos;s file.</source>
        <translation>La carpeta elegida para las copias de seguridad no está ahora: %1. Conecta el dispositivo en que se encuentra y mira de nuevo. Hasta entonces las copias de seguridad se hacen junto al archivo del hogar.</translation>
    </message>
    <message>
        <source>There is no permission to read the folder chosen for backups: %1. Backups in it cannot be shown.</source>
        <translation>No hay permiso para leer la carpeta elegida para las copias de seguridad: %1. Las copias que hay en ella no se pueden mostrar.</translation>
    </message>
    <message>
        <source>Beside the household&apos;s file there are none.</source>
        <translation>Junto al archivo del hogar no hay ninguna.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::BinView</name>
    <message>
        <source>Deleted entries</source>
        <translation>Anotaciones borradas</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Buscando…</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Torre</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Qué se hizo</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Detalles</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Deleted on</source>
        <translation>Borrada el</translation>
    </message>
    <message>
        <source>Choose those to be put back</source>
        <translation>Elige las que se van a recuperar</translation>
    </message>
    <message>
        <source>&amp;Put back</source>
        <translation>&amp;Recuperar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Nothing has been deleted.</source>
        <translation>No se ha borrado nada.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) deleted. What is put back takes its old place, and that can be undone.</source>
        <translation>
            <numerusform>%n anotación borrada. Lo que se recupera vuelve a su sitio, y se puede deshacer.</numerusform>
            <numerusform>%n anotaciones borradas. Lo que se recupera vuelve a su sitio, y se puede deshacer.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put back %n entry(ies)</source>
        <translation>
            <numerusform>Recuperar %n anotación</numerusform>
            <numerusform>Recuperar %n anotaciones</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::window::Desk</name>
    <message>
        <source>Wrong?</source>
        <translation>¿Va mal?</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Solo lectura</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Guardando…</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Guardado %1</translation>
    </message>
    <message>
        <source>All saved</source>
        <translation>Guardado</translation>
    </message>
    <message numerus="yes">
        <source>%n stack(s)</source>
        <translation>
            <numerusform>%n torre</numerusform>
            <numerusform>%n torres</numerusform>
        </translation>
    </message>
    <message>
        <source>Due (%1)</source>
        <translation>Tareas (%1)</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Tareas</translation>
    </message>
    <message>
        <source>Estimates: %1 of %2</source>
        <translation>Estimaciones: %1 de %2</translation>
    </message>
    <message>
        <source>%1: not written down. %2</source>
        <translation>%1: no anotado. %2</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Precaución: %1</translation>
    </message>
    <message>
        <source>Saved %1: %2</source>
        <comment>time of day, what was done and to which stack</comment>
        <translation>Guardado %1: %2</translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Está en %1</translation>
    </message>
</context>
<context>
    <name>tierloam::window::DueList</name>
    <message>
        <source>Due</source>
        <translation>Tareas</translation>
    </message>
    <message>
        <source>Due list</source>
        <translation>Lista de tareas</translation>
    </message>
    <message>
        <source>Shows what was put off</source>
        <translation>Muestra lo aplazado</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Retirar</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Cubrir</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Alimentar</translation>
    </message>
    <message>
        <source>Paper</source>
        <comment>shredded, to be put in</comment>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Regar</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Drenar</translation>
    </message>
    <message>
        <source>Write</source>
        <comment>what was poured into the journal</comment>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Read</source>
        <comment>a thermometer</comment>
        <translation>Leer</translation>
    </message>
    <message>
        <source>Write</source>
        <comment>a feeding into the journal</comment>
        <translation>Anotar</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Why %1</source>
        <translation>Por qué: %1</translation>
    </message>
    <message>
        <source>Put off %1</source>
        <translation>Aplazar: %1</translation>
    </message>
    <message>
        <source>%1 If it is left: %2</source>
        <translation>%1 Si se deja: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n this week</source>
        <translation>
            <numerusform>%n esta semana</numerusform>
            <numerusform>%n esta semana</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n put off: show</source>
        <translation>
            <numerusform>%n aplazado: mostrar</numerusform>
            <numerusform>%n aplazados: mostrar</numerusform>
        </translation>
    </message>
    <message>
        <source>What is to be done stands here, with its reason, once there is a stack.</source>
        <translation>Aquí aparece lo que hay que hacer, con su razón, en cuanto haya una torre.</translation>
    </message>
    <message>
        <source>The estimates are being made; then what is due stands here.</source>
        <translation>Se están haciendo las estimaciones; luego aparece aquí lo pendiente.</translation>
    </message>
    <message>
        <source>Nothing is due this week.</source>
        <translation>Nada pendiente esta semana.</translation>
    </message>
    <message>
        <source>Put off: %1</source>
        <translation>Aplazado: %1</translation>
    </message>
    <message>
        <source>Show what was put off</source>
        <translation>Mostrar lo aplazado</translation>
    </message>
    <message>
        <source>…</source>
        <comment>opens the form of what is due</comment>
        <translation>…</translation>
    </message>
    <message>
        <source>Another amount or day: opens the form</source>
        <translation>Otra cantidad u otro día: abre el formulario</translation>
    </message>
    <message>
        <source>Other amount or day for %1</source>
        <translation>Otra cantidad u otro día para %1</translation>
    </message>
    <message>
        <source>%1 %2. Writes down at one click: %3</source>
        <translation>%1 %2. Anota con un clic: %3</translation>
    </message>
    <message>
        <source>Writes down at one click: %1</source>
        <translation>Anota con un clic: %1</translation>
    </message>
    <message>
        <source>Stock</source>
        <comment>worms, to be put in</comment>
        <translation>Poner</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>Writes a note that it is done, at one click</source>
        <translation>Con un clic escribe una nota de que está hecho</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Hecho: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is asked, an answer</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Up and Down go from line to line, Home and End to the first and the last one</source>
        <translation>Arriba y Abajo van de línea en línea, Inicio y Fin a la primera y a la última</translation>
    </message>
    <message numerus="yes">
        <source>In %n day(s)</source>
        <comment>put off by so many</comment>
        <translation>
            <numerusform>En %n día</numerusform>
            <numerusform>En %n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not told again for %n day(s); for another time: right click, or the menu key</source>
        <translation>
            <numerusform>No se repite durante %n día; para otro plazo: clic derecho o la tecla de menú</numerusform>
            <numerusform>No se repite durante %n días; para otro plazo: clic derecho o la tecla de menú</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put off by %n day(s)</source>
        <translation>
            <numerusform>Aplazar %n día</numerusform>
            <numerusform>Aplazar %n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Written down. The estimates are being made anew.</source>
        <translation>Anotado. Las estimaciones se están rehaciendo.</translation>
    </message>
    <message>
        <source>The estimates are being made anew: they do not know the latest entries yet.</source>
        <translation>Las estimaciones se están rehaciendo: aún no conocen las últimas anotaciones.</translation>
    </message>
    <message>
        <source>From %1 on: today %2 is the most, for what was given these days.</source>
        <translation>A partir de %1: hoy %2 es lo máximo, por lo dado estos días.</translation>
    </message>
    <message>
        <source>Urgent. %1</source>
        <translation>Urgente. %1</translation>
    </message>
    <message>
        <source>Correct</source>
        <comment>the set-up of a stack</comment>
        <translation>Corregir</translation>
    </message>
</context>
<context>
    <name>tierloam::window::DueNotice</name>
    <message>
        <source>%1: %2</source>
        <comment>stack, what to do</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) due today</source>
        <translation>
            <numerusform>%n cosa toca hoy</numerusform>
            <numerusform>%n cosas tocan hoy</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>y %n más</numerusform>
            <numerusform>y %n más</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::window::LicenceView</name>
    <message>
        <source>GNU General Public License, version 3</source>
        <translation>GNU General Public License, versión 3</translation>
    </message>
</context>
<context>
    <name>tierloam::window::MainWindow</name>
    <message>
        <source>Not recorded yet</source>
        <translation>Aún sin anotar</translation>
    </message>
    <message>
        <source>A form holds something that has not been recorded. It is lost when you go on.</source>
        <translation>Un formulario contiene algo que no se ha anotado. Se pierde si sigues.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>This household is opened for reading only; nothing can be recorded.</source>
        <translation>Este hogar está abierto solo para lectura; no se puede anotar nada.</translation>
    </message>
    <message>
        <source>%1 is already open in another window, which has been brought to the front.</source>
        <translation>%1 ya está abierto en otra ventana, que se ha puesto delante.</translation>
    </message>
    <message>
        <source>%1 is already there. Nothing was replaced: choose another name, or open it.</source>
        <translation>%1 ya existe. No se reemplazó nada: elige otro nombre o ábrelo.</translation>
    </message>
    <message>
        <source>The demo household could not be made: %1</source>
        <translation>No se pudo crear el hogar de demostración: %1</translation>
    </message>
    <message>
        <source>My worm bins</source>
        <translation>Mis vermicomposteras</translation>
    </message>
    <message>
        <source>My worm bins %1</source>
        <translation>Mis vermicomposteras %1</translation>
    </message>
    <message>
        <source>Your household is kept in %1.</source>
        <translation>Tu hogar se guarda en %1.</translation>
    </message>
    <message>
        <source>New household</source>
        <translation>Nuevo hogar</translation>
    </message>
    <message>
        <source>Household</source>
        <translation>Hogar</translation>
    </message>
    <message>
        <source>Households (*.tierloam)</source>
        <translation>Hogares (*.tierloam)</translation>
    </message>
    <message>
        <source>Name of the household</source>
        <translation>Nombre del hogar</translation>
    </message>
    <message>
        <source>%1 – Tierloam</source>
        <translation>%1 – Tierloam</translation>
    </message>
    <message>
        <source>The calendar was not written: the estimates are still being made. Try again in a moment.</source>
        <translation>El calendario no se escribió: aún se están haciendo las estimaciones. Vuelve a intentarlo en un momento.</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) were written to %1.</source>
        <translation>
            <numerusform>Se escribió %n evento en %1.</numerusform>
            <numerusform>Se escribieron %n eventos en %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>New household for the imported journal</source>
        <translation>Nuevo hogar para el diario importado</translation>
    </message>
    <message>
        <source>Nothing was imported: there is no household yet that could hold it.</source>
        <translation>No se importó nada: aún no hay ningún hogar que pueda recibirlo.</translation>
    </message>
    <message numerus="yes">
        <source>Import %n entry(ies)</source>
        <translation>
            <numerusform>Importar %n anotación</numerusform>
            <numerusform>Importar %n anotaciones</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) imported from %1.</source>
        <translation>
            <numerusform>%n anotación importada de %1.</numerusform>
            <numerusform>%n anotaciones importadas de %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Readings of a logger belong to a stack. Open a household or start one first.</source>
        <translation>Las lecturas de un registrador son de una torre. Abre antes un hogar o empieza uno.</translation>
    </message>
    <message>
        <source>The journal was written to %1.</source>
        <translation>El diario se escribió en %1.</translation>
    </message>
    <message>
        <source>Open household</source>
        <translation>Abrir hogar</translation>
    </message>
    <message>
        <source>Households (*.tierloam);;All files (*)</source>
        <translation>Hogares (*.tierloam);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Import a table</source>
        <translation>Importar una tabla</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tablas (*.csv *.tsv *.txt);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Import readings of a logger</source>
        <translation>Importar lecturas de un registrador</translation>
    </message>
    <message>
        <source>Export journal</source>
        <translation>Exportar el diario</translation>
    </message>
    <message>
        <source>Journals (*.csv)</source>
        <translation>Diarios (*.csv)</translation>
    </message>
    <message>
        <source>Export calendar</source>
        <translation>Exportar el calendario</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Calendarios (*.ics)</translation>
    </message>
    <message>
        <source>A report for somebody who wants to help is on the clipboard: versions, sizes, the last lines of the program&apos;s own log. Nothing of your journal is in it.</source>
        <translation>En el portapapeles hay un informe para quien quiera ayudar: versiones, tamaños, las últimas líneas del registro del propio programa. No lleva nada de tu diario.</translation>
    </message>
    <message>
        <source>H&amp;ousehold</source>
        <translation>&amp;Hogar</translation>
    </message>
    <message>
        <source>&amp;Recent</source>
        <translation>Recien&amp;tes</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Stack</source>
        <translation>&amp;Torre</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Colores</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>Ta&amp;maño del texto</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>%1 copy</source>
        <translation>%1 copia</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Guardar una copia</translation>
    </message>
    <message>
        <source>Writing a copy…</source>
        <translation>Escribiendo una copia…</translation>
    </message>
    <message>
        <source>Call off</source>
        <translation>Interrumpir</translation>
    </message>
    <message>
        <source>A copy was written to %1.</source>
        <translation>Se escribió una copia en %1.</translation>
    </message>
    <message>
        <source>The backup was restored to %1, which is open now. The file before it was not changed.</source>
        <translation>La copia de seguridad se restauró en %1, que está abierto ahora. El archivo anterior no cambió.</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Carpeta de copias de seguridad</translation>
    </message>
    <message>
        <source>Backups will be kept in %1.</source>
        <translation>Las copias de seguridad se guardarán en %1.</translation>
    </message>
    <message>
        <source>There is no stack yet that a sheet could be made of.</source>
        <translation>Aún no hay ninguna torre de la que hacer una hoja.</translation>
    </message>
    <message>
        <source>No tray stands yet that could get a label.</source>
        <translation>Aún no hay ninguna bandeja puesta que pueda llevar etiqueta.</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Imágenes (*.png)</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Dibujos (*.svg)</translation>
    </message>
    <message>
        <source>Pages (*.pdf)</source>
        <translation>Páginas (*.pdf)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tablas (*.csv)</translation>
    </message>
    <message>
        <source>Save what the charts show</source>
        <translation>Guardar lo que muestran los gráficos</translation>
    </message>
    <message>
        <source>%1 trends</source>
        <translation>%1 evolución</translation>
    </message>
    <message>
        <source>The picture is too large to be drawn.</source>
        <translation>La imagen es demasiado grande para dibujarla.</translation>
    </message>
    <message>
        <source>What the charts show was written to %1.</source>
        <translation>Lo que muestran los gráficos se escribió en %1.</translation>
    </message>
    <message>
        <source>Print what the charts show</source>
        <translation>Imprimir lo que muestran los gráficos</translation>
    </message>
    <message>
        <source>The printer does not take the pages.</source>
        <translation>La impresora no acepta las páginas.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) went to the printer.</source>
        <translation>
            <numerusform>%n página fue a la impresora.</numerusform>
            <numerusform>%n páginas fueron a la impresora.</numerusform>
        </translation>
    </message>
    <message>
        <source>Seaso&amp;ns</source>
        <translation>Estacio&amp;nes</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Estaciones</translation>
    </message>
    <message>
        <source>The seasons are those south of the equator, warmest in January, since this machine is set up for there. The menu Household, Seasons, turns them.</source>
        <translation>Las estaciones son las del sur del ecuador, con más calor en enero, porque este equipo está configurado para allí. El menú Hogar, Estaciones, las cambia.</translation>
    </message>
    <message>
        <source>%1 stays open: what was recorded last could not be written and is not in it. Record it again, or go on once more without it.</source>
        <translation>%1 sigue abierto: lo último anotado no se pudo escribir y no está en él. Anótalo de nuevo, o continúa otra vez sin ello.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar de nuevo</translation>
    </message>
    <message>
        <source>Close the form</source>
        <translation>Cerrar el formulario</translation>
    </message>
    <message>
        <source>It is open for writing now.</source>
        <translation>Ahora se puede escribir en él.</translation>
    </message>
    <message>
        <source>Backups of which household?</source>
        <translation>¿Copias de seguridad de qué hogar?</translation>
    </message>
    <message>
        <source>A copy is being written</source>
        <translation>Se está escribiendo una copia</translation>
    </message>
    <message>
        <source>It is called off when you go on, and nothing of it is kept.</source>
        <translation>Se interrumpe si sigues, y no se conserva nada de ella.</translation>
    </message>
    <message>
        <source>The form «%1» holds something that has not been recorded. It is lost when the form is closed.</source>
        <translation>El formulario «%1» contiene algo que no se ha anotado. Se pierde al cerrar el formulario.</translation>
    </message>
    <message>
        <source>It is kept in %1. Its name:</source>
        <translation>Está en %1. Su nombre:</translation>
    </message>
    <message>
        <source>&amp;Feed and cover</source>
        <translation>&amp;Alimentar y cubrir</translation>
    </message>
    <message>
        <source>&amp;Water and drain</source>
        <translation>&amp;Regar y drenar</translation>
    </message>
    <message>
        <source>&amp;Trays and castings</source>
        <translation>&amp;Bandejas y humus</translation>
    </message>
    <message>
        <source>&amp;Look and measure</source>
        <translation>&amp;Mirar y medir</translation>
    </message>
    <message>
        <source>W&amp;orms</source>
        <translation>&amp;Lombrices</translation>
    </message>
    <message>
        <source>&amp;Notes and routines</source>
        <translation>&amp;Notas y rutinas</translation>
    </message>
    <message>
        <source>Set-&amp;up and place</source>
        <translation>M&amp;ontaje y lugar</translation>
    </message>
    <message>
        <source>&amp;Day shown</source>
        <translation>&amp;Día mostrado</translation>
    </message>
    <message>
        <source>Copies and &amp;backups</source>
        <translation>C&amp;opias y copias de seguridadCopias y respaldo</translation>
    </message>
</context>
<context>
    <name>tierloam::window::Notices</name>
    <message>
        <source>Not done: %1</source>
        <translation>No hecho: %1</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Descartar</translation>
    </message>
    <message>
        <source>Dismiss this message</source>
        <translation>Descartar este mensaje</translation>
    </message>
</context>
<context>
    <name>tierloam::window::PhotosView</name>
    <message>
        <source>Pictures</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2: %3 %4</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Buscando…</translation>
    </message>
    <message>
        <source>Pictures of this entry</source>
        <translation>Fotos de esta anotación</translation>
    </message>
    <message>
        <source>The chosen picture</source>
        <translation>La foto elegida</translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation>&amp;Añadir…</translation>
    </message>
    <message>
        <source>&amp;Take out</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Picture %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>No pictures yet. One that is added is kept at most 1600 pixels wide or high, without the place where it was taken.</source>
        <translation>Aún no hay fotos. La que se añada se guarda con 1600 píxeles como máximo de ancho o alto, sin el lugar donde se tomó.</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s), kept in the household file.</source>
        <translation>
            <numerusform>%n foto, guardada en el archivo del hogar.</numerusform>
            <numerusform>%n fotos, guardadas en el archivo del hogar.</numerusform>
        </translation>
    </message>
    <message>
        <source>Add a picture</source>
        <translation>Añadir una foto</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp);;All files (*)</source>
        <translation>Fotos (*.jpg *.jpeg *.png *.webp);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Take out a picture</source>
        <translation>Quitar una foto</translation>
    </message>
</context>
<context>
    <name>tierloam::window::ShortcutsView</name>
    <message>
        <source>Keys and shortcuts</source>
        <translation>Teclas y atajos</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Walking</source>
        <translation>Moverse</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from one thing to the next. On the shelf the arrow keys walk from stack to stack and from tray to tray, and Enter opens what has the focus. On a chart Left and Right walk by a day, with Ctrl by a week. Esc leaves a form.</source>
        <translation>Tab y Mayús+Tab van de una cosa a la siguiente. En el estante, las flechas van de torre en torre y de bandeja en bandeja, e Intro abre lo que tiene el foco. En un gráfico, Izquierda y Derecha avanzan un día; con Ctrl, una semana. Esc sale de un formulario.</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>two keys that do the same</comment>
        <translation>%1 o %2</translation>
    </message>
</context>
</TS>
