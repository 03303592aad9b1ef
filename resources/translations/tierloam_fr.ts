<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>Actions</name>
    <message>
        <source>&amp;New household…</source>
        <translation>&amp;Nouveau foyer…</translation>
    </message>
    <message>
        <source>&amp;Open household…</source>
        <translation>&amp;Ouvrir un foyer…</translation>
    </message>
    <message>
        <source>Na&amp;me of the household…</source>
        <translation>No&amp;m du foyer…</translation>
    </message>
    <message>
        <source>&amp;Import a table (CSV)…</source>
        <translation>&amp;Importer un tableau (CSV)…</translation>
    </message>
    <message>
        <source>Import readings of a &amp;logger…</source>
        <translation>Importer les relevés d’un enre&amp;gistreur…</translation>
    </message>
    <message>
        <source>&amp;Export journal (CSV)…</source>
        <translation>&amp;Exporter le journal (CSV)…</translation>
    </message>
    <message>
        <source>Export ca&amp;lendar…</source>
        <translation>Exporter le c&amp;alendrier…</translation>
    </message>
    <message>
        <source>Sa&amp;ve a copy…</source>
        <translation>Enregis&amp;trer une copie…</translation>
    </message>
    <message>
        <source>&amp;Backups…</source>
        <translation>&amp;Sauvegardes…</translation>
    </message>
    <message>
        <source>&amp;Folder for backups…</source>
        <translation>&amp;Dossier des sauvegardes…</translation>
    </message>
    <message>
        <source>Open the &amp;demo household</source>
        <translation>Ouvrir le foyer de démonst&amp;ration</translation>
    </message>
    <message>
        <source>&amp;Close window</source>
        <translation>&amp;Fermer la fenêtre</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>&amp;Deleted entries…</source>
        <translation>Entrées &amp;supprimées…</translation>
    </message>
    <message>
        <source>New &amp;stack…</source>
        <translation>&amp;Nouvelle pile…</translation>
    </message>
    <message>
        <source>Re&amp;cord…</source>
        <translation>N&amp;oter…</translation>
    </message>
    <message>
        <source>What may be &amp;wrong</source>
        <translation>Ce qui peut ne pas a&amp;ller</translation>
    </message>
    <message>
        <source>&amp;Harvest, step by step</source>
        <translation>&amp;Récolte, pas à pas</translation>
    </message>
    <message>
        <source>&amp;Shelf</source>
        <translation>&amp;Étagère</translation>
    </message>
    <message>
        <source>&amp;Trends</source>
        <translation>&amp;Tendances</translation>
    </message>
    <message>
        <source>&amp;Journal</source>
        <translation>&amp;Journal</translation>
    </message>
    <message>
        <source>&amp;Materials</source>
        <translation>&amp;Matières</translation>
    </message>
    <message>
        <source>&amp;Handbook</source>
        <translation>&amp;Guide</translation>
    </message>
    <message>
        <source>R&amp;otation</source>
        <translation>R&amp;otation</translation>
    </message>
    <message>
        <source>Go to the &amp;due list</source>
        <translation>Aller à la liste À &amp;faire</translation>
    </message>
    <message>
        <source>Do the &amp;first thing due</source>
        <translation>Faire la &amp;première chose à faire</translation>
    </message>
    <message>
        <source>&amp;Light colours</source>
        <translation>Couleurs &amp;claires</translation>
    </message>
    <message>
        <source>&amp;Dark colours</source>
        <translation>Couleurs &amp;sombres</translation>
    </message>
    <message>
        <source>Colours &amp;as the system</source>
        <translation>Couleurs du s&amp;ystème</translation>
    </message>
    <message>
        <source>L&amp;arger text</source>
        <translation>Texte plus &amp;grand</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>Texte plus &amp;petit</translation>
    </message>
    <message>
        <source>&amp;Normal text</source>
        <translation>Texte &amp;normal</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>P&amp;lein écran</translation>
    </message>
    <message>
        <source>&amp;Keys and shortcuts</source>
        <translation>&amp;Touches et raccourcis</translation>
    </message>
    <message>
        <source>Copy a &amp;report</source>
        <translation>Copier un &amp;rapport</translation>
    </message>
    <message>
        <source>&amp;About Tierloam</source>
        <translation>À &amp;propos de Tierloam</translation>
    </message>
    <message>
        <source>&amp;Feed the usual</source>
        <translation>&amp;Apport habituel</translation>
    </message>
    <message>
        <source>F&amp;eed…</source>
        <translation>Nou&amp;rrir…</translation>
    </message>
    <message>
        <source>&amp;Water the usual</source>
        <translation>Arrosage &amp;habituel</translation>
    </message>
    <message>
        <source>W&amp;ater…</source>
        <translation>Arros&amp;er…</translation>
    </message>
    <message>
        <source>&amp;Drain the usual</source>
        <translation>&amp;Vidange habituelle</translation>
    </message>
    <message>
        <source>D&amp;rain…</source>
        <translation>V&amp;idanger…</translation>
    </message>
    <message>
        <source>Add a tra&amp;y…</source>
        <translation>A&amp;jouter un plateau…</translation>
    </message>
    <message>
        <source>Add beddin&amp;g…</source>
        <translation>Ajouter de la &amp;litière…</translation>
    </message>
    <message>
        <source>We&amp;igh worms…</source>
        <translation>&amp;Peser des vers…</translation>
    </message>
    <message>
        <source>Co&amp;unt worms…</source>
        <translation>&amp;Compter des vers…</translation>
    </message>
    <message>
        <source>Weig&amp;h a tray…</source>
        <translation>Peser un plat&amp;eau…</translation>
    </message>
    <message>
        <source>&amp;Put worms in…</source>
        <translation>Me&amp;ttre des vers…</translation>
    </message>
    <message>
        <source>&amp;Note…</source>
        <translation>&amp;Note…</translation>
    </message>
    <message>
        <source>Retire the stack…</source>
        <translation>Arrêter la pile…</translation>
    </message>
    <message>
        <source>More…</source>
        <translation>Plus…</translation>
    </message>
    <message>
        <source>A day back</source>
        <translation>Un jour en arrière</translation>
    </message>
    <message>
        <source>A day on</source>
        <translation>Un jour en avant</translation>
    </message>
    <message>
        <source>A week back</source>
        <translation>Une semaine en arrière</translation>
    </message>
    <message>
        <source>A week on</source>
        <translation>Une semaine en avant</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Revenir à aujourd’hui</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 jours</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 jours</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 an</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 ans</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>Stacks together</source>
        <translation>Piles ensemble</translation>
    </message>
    <message>
        <source>As table</source>
        <translation>En tableau</translation>
    </message>
    <message>
        <source>Find</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>Edit…</source>
        <translation>Modifier…</translation>
    </message>
    <message>
        <source>Change together…</source>
        <translation>Modifier ensemble…</translation>
    </message>
    <message>
        <source>Pictures…</source>
        <translation>Photos…</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Tout montrer</translation>
    </message>
    <message>
        <source>Find a material</source>
        <translation>Chercher une matière</translation>
    </message>
    <message>
        <source>New material…</source>
        <translation>Nouvelle matière…</translation>
    </message>
    <message>
        <source>Edit the own material…</source>
        <translation>Modifier la matière personnelle…</translation>
    </message>
    <message>
        <source>Favourite</source>
        <translation>Favori</translation>
    </message>
    <message>
        <source>Put it into the mix</source>
        <translation>Ajouter au mélange</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mélange</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Litière</translation>
    </message>
    <message>
        <source>Use of castings</source>
        <translation>Usage du lombricompost</translation>
    </message>
    <message>
        <source>Use of leachate</source>
        <translation>Usage du lixiviat</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Chercher dans le guide</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Précédent</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Suivant</translation>
    </message>
    <message>
        <source>To the first page</source>
        <translation>À la première page</translation>
    </message>
    <message>
        <source>As they come</source>
        <translation>Comme elles viennent</translation>
    </message>
    <message>
        <source>Spread over the year</source>
        <translation>Réparties sur l’année</translation>
    </message>
    <message>
        <source>Gathered on few days</source>
        <translation>Groupées sur peu de jours</translation>
    </message>
    <message>
        <source>Let it come on its turn</source>
        <translation>La laisser venir à son tour</translation>
    </message>
    <message>
        <source>Steps as table</source>
        <translation>Étapes en tableau</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Partout</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>Sur l’étagère</translation>
    </message>
    <message>
        <source>On the trends page</source>
        <translation>À la page des tendances</translation>
    </message>
    <message>
        <source>In the journal</source>
        <translation>Dans le journal</translation>
    </message>
    <message>
        <source>On the rotation page</source>
        <translation>À la page de rotation</translation>
    </message>
    <message>
        <source>On the materials page</source>
        <translation>À la page des matières</translation>
    </message>
    <message>
        <source>In the handbook</source>
        <translation>Dans le guide</translation>
    </message>
    <message>
        <source>In a form</source>
        <translation>Dans un formulaire</translation>
    </message>
    <message>
        <source>&amp;Print the sheet of a stack…</source>
        <translation>Im&amp;primer la fiche d’une pile…</translation>
    </message>
    <message>
        <source>Labels for &amp;trays…</source>
        <translation>Éti&amp;quettes de plateaux…</translation>
    </message>
    <message>
        <source>Units &amp;as the system</source>
        <translation>Unités &amp;comme le système</translation>
    </message>
    <message>
        <source>&amp;Metric: kg, L, °C</source>
        <translation>&amp;Métriques&#xa0;: kg, L, °C</translation>
    </message>
    <message>
        <source>&amp;US: lb, gal, °F</source>
        <translation>&amp;États-Unis&#xa0;: lb, gal, °F</translation>
    </message>
    <message>
        <source>Language &amp;as the system</source>
        <translation>Langue &amp;comme le système</translation>
    </message>
    <message>
        <source>Less &amp;motion</source>
        <translation>Moins de &amp;mouvement</translation>
    </message>
    <message>
        <source>Move the stack to the left</source>
        <translation>Déplacer la pile vers la gauche</translation>
    </message>
    <message>
        <source>Move the stack to the right</source>
        <translation>Déplacer la pile vers la droite</translation>
    </message>
    <message>
        <source>Drainage added up</source>
        <translation>Drainage cumulé</translation>
    </message>
    <message>
        <source>Yield by year</source>
        <translation>Rendement par an</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation>Essayer un changement</translation>
    </message>
    <message>
        <source>Fewer days</source>
        <translation>Moins de jours</translation>
    </message>
    <message>
        <source>More days</source>
        <translation>Plus de jours</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Tous les jours</translation>
    </message>
    <message>
        <source>Earlier days</source>
        <translation>Jours précédents</translation>
    </message>
    <message>
        <source>Later days</source>
        <translation>Jours suivants</translation>
    </message>
    <message>
        <source>Picture (&amp;PNG)…</source>
        <translation>Image (&amp;PNG)…</translation>
    </message>
    <message>
        <source>Drawing (&amp;SVG)…</source>
        <translation>Dessin (&amp;SVG)…</translation>
    </message>
    <message>
        <source>Pages (P&amp;DF)…</source>
        <translation>Pages (P&amp;DF)…</translation>
    </message>
    <message>
        <source>Figures (&amp;CSV)…</source>
        <translation>Chiffres (&amp;CSV)…</translation>
    </message>
    <message>
        <source>P&amp;rint…</source>
        <translation>Imp&amp;rimer…</translation>
    </message>
    <message>
        <source>One more like it…</source>
        <translation>Une autre pareille…</translation>
    </message>
    <message>
        <source>Record several…</source>
        <translation>En noter plusieurs…</translation>
    </message>
    <message>
        <source>Columns…</source>
        <translation>Colonnes…</translation>
    </message>
    <message>
        <source>&amp;Tell on the desktop what is due today</source>
        <translation>&amp;Annoncer sur le bureau ce qui est à faire aujourd’hui</translation>
    </message>
    <message>
        <source>Warmest in &amp;July, north of the equator</source>
        <translation>Plus chaud en &amp;juillet, au nord de l’équateur</translation>
    </message>
    <message>
        <source>Warmest in J&amp;anuary, south of the equator</source>
        <translation>Plus chaud en j&amp;anvier, au sud de l’équateur</translation>
    </message>
    <message>
        <source>Do what the line says</source>
        <translation>Faire ce que dit la ligne</translation>
    </message>
    <message>
        <source>Another amount or day…</source>
        <translation>Autre quantité ou autre jour…</translation>
    </message>
    <message>
        <source>Answers in their order</source>
        <translation>Les réponses dans leur ordre</translation>
    </message>
    <message>
        <source>Note it as done</source>
        <translation>Noter comme fait</translation>
    </message>
    <message>
        <source>Why, and what if it is left</source>
        <translation>Pourquoi, et sinon quoi</translation>
    </message>
    <message>
        <source>Put it off</source>
        <translation>Remettre à plus tard</translation>
    </message>
    <message>
        <source>Show what was put off</source>
        <translation>Montrer ce qui a été reporté</translation>
    </message>
    <message>
        <source>Feed only what is borne</source>
        <translation>Ne donner que ce qui est supporté</translation>
    </message>
    <message>
        <source>&amp;Cover with the usual</source>
        <translation>&amp;Couverture habituelle</translation>
    </message>
    <message>
        <source>Co&amp;ver…</source>
        <translation>Cou&amp;vrir…</translation>
    </message>
    <message>
        <source>In a line of the due list</source>
        <translation>Dans une ligne de la liste</translation>
    </message>
    <message>
        <source>Compare the change with the usual course</source>
        <translation>Comparer le changement au cours habituel</translation>
    </message>
    <message>
        <source>Another material in the mix</source>
        <translation>Une autre matière dans le mélange</translation>
    </message>
    <message>
        <source>Days of the week for harvests, Monday first</source>
        <translation>Jours de la semaine pour les récoltes, lundi d’abord</translation>
    </message>
    <message>
        <source>Keep this day</source>
        <translation>Garder ce jour</translation>
    </message>
    <message>
        <source>A little each month</source>
        <translation>Un peu chaque mois</translation>
    </message>
    <message>
        <source>What would raise it?</source>
        <translation>Qu’est-ce qui l’augmenterait&#xa0;?</translation>
    </message>
    <message>
        <source>F&amp;lush…</source>
        <translation>R&amp;incer…</translation>
    </message>
    <message>
        <source>Lift the &amp;bottom tray…</source>
        <translation>Monter le plateau du &amp;bas…</translation>
    </message>
    <message>
        <source>Ha&amp;rvest…</source>
        <translation>&amp;Récolte…</translation>
    </message>
    <message>
        <source>L&amp;oosen the castings</source>
        <translation>Aé&amp;rer le lombricompost</translation>
    </message>
    <message>
        <source>Chec&amp;k a tray…</source>
        <translation>Re&amp;garder un plateau…</translation>
    </message>
    <message>
        <source>Readin&amp;g…</source>
        <translation>&amp;Mesure…</translation>
    </message>
    <message>
        <source>T&amp;ake worms out…</source>
        <translation>&amp;Retirer des vers…</translation>
    </message>
    <message>
        <source>&amp;Move worms…</source>
        <translation>&amp;Passer des vers…</translation>
    </message>
    <message>
        <source>U&amp;nwritten routine…</source>
        <translation>&amp;Habitude non notée…</translation>
    </message>
    <message>
        <source>Somet&amp;hing happened…</source>
        <translation>&amp;Quelque chose s’est passé…</translation>
    </message>
    <message>
        <source>&amp;Change the stack…</source>
        <translation>&amp;Modifier la pile…</translation>
    </message>
</context>
<context>
    <name>Advice</name>
    <message>
        <source>The top tray fills to its rim, spent bedding crowds the colony, and it shrinks.</source>
        <translation>Le plateau du haut se remplit jusqu’au bord, la litière usée prend la place de la colonie, et celle-ci diminue.</translation>
    </message>
    <message>
        <source>Nothing is lost: the castings keep where they are.</source>
        <translation>Rien n’est perdu&#xa0;: le lombricompost se garde où il est.</translation>
    </message>
    <message>
        <source>Nothing yet; have bedding at hand for the emptied tray.</source>
        <translation>Rien pour l’instant&#xa0;; ayez de la litière sous la main pour le plateau vidé.</translation>
    </message>
    <message>
        <source>There is no room for food, and the colony goes on shrinking.</source>
        <translation>Il n’y a plus de place pour la nourriture, et la colonie continue de diminuer.</translation>
    </message>
    <message>
        <source>The tray fills to its rim and food no longer fits.</source>
        <translation>Le plateau se remplit jusqu’au bord et la nourriture n’y entre plus.</translation>
    </message>
    <message>
        <source>The worms are spread thin and every step after it comes later; of a tray lifted early much is food, not castings.</source>
        <translation>Les vers sont dispersés et chaque étape suivante vient plus tard&#xa0;; d’un plateau monté trop tôt, une grande part est nourriture, non lombricompost.</translation>
    </message>
    <message>
        <source>After two to three weeks the worms live on bedding and reserves.</source>
        <translation>Après deux à trois semaines, les vers vivent de la litière et de leurs réserves.</translation>
    </message>
    <message>
        <source>The bed heats and smells; below half of full air worms die.</source>
        <translation>Le lit chauffe et sent&#xa0;; sous la moitié du plein air, des vers meurent.</translation>
    </message>
    <message>
        <source>With 80 % the worms assimilate less than they need, little that they can eat lies there, and the bed is warm enough. It is taken back at 60 %.</source>
        <translation>À 80&#xa0;%, les vers assimilent moins que leur besoin, il reste peu qu’ils puissent manger, et le lit est assez chaud. Retiré à 60&#xa0;%.</translation>
    </message>
    <message>
        <source>They stop laying and shrink; some die.</source>
        <translation>Ils cessent de pondre et diminuent&#xa0;; certains meurent.</translation>
    </message>
    <message>
        <source>Food lies against the lid, and the trays above cannot rest on it.</source>
        <translation>La nourriture touche le couvercle, et les plateaux du dessus ne peuvent plus reposer dessus.</translation>
    </message>
    <message>
        <source>Nitrogen is lost as ammonia, which smells and burns worms.</source>
        <translation>De l’azote se perd en ammoniac, qui sent et brûle les vers.</translation>
    </message>
    <message>
        <source>The bed runs short of air, smells, and worms climb out.</source>
        <translation>Le lit manque d’air, sent, et les vers s’échappent.</translation>
    </message>
    <message>
        <source>Worms eat less, below a third they stop and die.</source>
        <translation>Les vers mangent moins&#xa0;; sous un tiers, ils s’arrêtent et meurent.</translation>
    </message>
    <message>
        <source>What comes then runs over on the floor.</source>
        <translation>Ce qui vient ensuite déborde sur le sol.</translation>
    </message>
    <message>
        <source>Twice in a row less was drained than the lower 5 % of what the water balance expects; for 60 days or until a drain fits again.</source>
        <translation>Deux fois de suite, on a vidangé moins que les 5&#xa0;% inférieurs de ce qu’attend le bilan d’eau&#xa0;; pendant 60 jours ou jusqu’à ce qu’une vidange concorde.</translation>
    </message>
    <message>
        <source>Water stands in the trays, or the bed is drier than it looks from above.</source>
        <translation>De l’eau stagne dans les plateaux, ou le lit est plus sec qu’il n’y paraît d’en haut.</translation>
    </message>
    <message>
        <source>Twice in a row more was drained than the upper 5 % of what is expected; or more than {much} a week run through a watered stack (taken back at {much-less}).</source>
        <translation>Deux fois de suite, on a vidangé plus que les 5 % supérieurs de ce qui est attendu ; ou plus de {much} par semaine traversent une pile arrosée (retiré à {much-less}).</translation>
    </message>
    <message>
        <source>Salts and nitrogen leave the castings, and the bed stays wet.</source>
        <translation>Le lombricompost perd sels et azote, et le lit reste détrempé.</translation>
    </message>
    <message>
        <source>The bed is above {hot} now or within 14 days with at least even chances, its own heat and the season included. It is taken back at 30 %.</source>
        <translation>Le lit dépasse {hot} maintenant ou dans les 14 jours avec au moins une chance sur deux, sa propre chaleur et la saison comprises. Retiré à 30&#xa0;%.</translation>
    </message>
    <message>
        <source>At {deadly} 2 worms in 100 die a day, at {deadlier} 15.</source>
        <translation>À {deadly}, 2 vers sur 100 meurent par jour, à {deadlier} 15.</translation>
    </message>
    <message>
        <source>The bed is below {cold} now or within 14 days with at least even chances. It is taken back at 30 %.</source>
        <translation>Le lit est sous {cold} maintenant ou dans les 14 jours avec au moins une chance sur deux. Retiré à 30&#xa0;%.</translation>
    </message>
    <message>
        <source>They stop eating, food rots; near {frost} they die.</source>
        <translation>Ils cessent de manger, la nourriture pourrit&#xa0;; vers {frost} ils meurent.</translation>
    </message>
    <message>
        <source>After at least 2 days in the light at most 5 % of the worms that were in the tray are left. It is taken back above 8 %.</source>
        <translation>Après au moins 2 jours à la lumière, il reste au plus 5&#xa0;% des vers qui étaient dans le plateau. Retiré au-dessus de 8&#xa0;%.</translation>
    </message>
    <message>
        <source>The castings dry out and cocoons in them die.</source>
        <translation>Le lombricompost se dessèche et ses cocons meurent.</translation>
    </message>
    <message>
        <source>The tray has been in the light for more than 10 days.</source>
        <translation>Le plateau est à la lumière depuis plus de 10 jours.</translation>
    </message>
    <message>
        <source>The castings dry hard, and the stack has one tray less meanwhile.</source>
        <translation>Le lombricompost durcit en séchant, et la pile a un plateau de moins pendant ce temps.</translation>
    </message>
    <message>
        <source>Nothing was written for more than 21 days, or for three usual gaps between feedings if that is longer; days away are left out.</source>
        <translation>Rien n’a été noté depuis plus de 21 jours, ou trois intervalles habituels entre apports si c’est plus long&#xa0;; les jours d’absence ne comptent pas.</translation>
    </message>
    <message>
        <source>Every date and amount grows less certain by the week.</source>
        <translation>Chaque date et chaque quantité perd en certitude de semaine en semaine.</translation>
    </message>
    <message>
        <source>Estimates rest on it as it stands.</source>
        <translation>Les estimations s’appuient dessus telle quelle.</translation>
    </message>
    <message>
        <source>Stop feeding, spread the food thin and let air in: the bed heats itself</source>
        <translation>Cesser de nourrir, étaler la nourriture en couche mince et faire entrer l’air&#xa0;: le lit chauffe de lui-même</translation>
    </message>
    <message>
        <source>Move the stack to a cooler place before it heats up: shade, floor, cellar</source>
        <translation>Mettre la pile dans un endroit plus frais avant qu’elle ne chauffe&#xa0;: ombre, sol, cave</translation>
    </message>
    <message>
        <source>Bring the stack in or wrap it, and feed no more until it is warmer. A heater only if it is rated for the place and stands away from water: local electrical code and a licensed electrician first</source>
        <translation>Rentrer la pile ou l’envelopper, et ne plus nourrir jusqu’à ce qu’il fasse plus doux. Un chauffage, seulement s’il est prévu pour le lieu et loin de l’eau&#xa0;: règles électriques locales et électricien agréé d’abord</translation>
    </message>
    <message>
        <source>%1: %2 drained, %3 to %4 expected; %5: %6, %7 to %8 expected</source>
        <translation>%1&#xa0;: %2 vidangés, %3 à %4 attendus&#xa0;; %5&#xa0;: %6, %7 à %8 attendus</translation>
    </message>
    <message>
        <source>See whether the spigot or the holes of the trays are blocked, and whether the bed is dry</source>
        <translation>Voir si le robinet ou les trous des plateaux sont bouchés, et si le lit est sec</translation>
    </message>
    <message>
        <source>Water less, or write down what is poured: more runs out than went in</source>
        <translation>Arroser moins, ou noter ce qui est versé&#xa0;: il en sort plus qu’il n’en est entré</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>Drain the sump: it runs over</source>
        <translation>Vidanger le bac&#xa0;: il déborde</translation>
    </message>
    <message>
        <source>Flush the sump: it runs over</source>
        <translation>Rincer le bac&#xa0;: il déborde</translation>
    </message>
    <message>
        <source>Drain the sump</source>
        <translation>Vidanger le bac</translation>
    </message>
    <message>
        <source>Flush the sump</source>
        <translation>Rincer le bac</translation>
    </message>
    <message>
        <source>in the light for %1; about %2 of its worms are left in it; moisture %3 %</source>
        <translation>à la lumière depuis %1&#xa0;; il y reste environ %2 de ses vers&#xa0;; humidité %3&#xa0;%</translation>
    </message>
    <message>
        <source>Take the castings, or put the lid on: the tray dries out</source>
        <translation>Prélever le lombricompost, ou remettre le couvercle&#xa0;: le plateau se dessèche</translation>
    </message>
    <message>
        <source>Take the castings: the worms have gone down</source>
        <translation>Prélever le lombricompost&#xa0;: les vers sont descendus</translation>
    </message>
    <message>
        <source>Cover the lifted tray and let it work on: it was lifted early</source>
        <translation>Couvrir le plateau monté et le laisser travailler&#xa0;: il a été monté tôt</translation>
    </message>
    <message>
        <source>Feed the tray beneath for now: the new one came early</source>
        <translation>Nourrir pour l’instant le plateau du dessous&#xa0;: le nouveau est venu tôt</translation>
    </message>
    <message>
        <source>right about %1</source>
        <translation>bon moment&#xa0;: %1</translation>
    </message>
    <message>
        <source>; </source>
        <translation>&#xa0;; </translation>
    </message>
    <message>
        <source>Too early for another tray: the worms would be spread thin</source>
        <translation>Trop tôt pour un autre plateau&#xa0;: les vers seraient dispersés</translation>
    </message>
    <message>
        <source>the top tray holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60, filled %4</source>
        <translation>le plateau du haut contient %1 de lombricompost sur les %2 voulus, aliment/compost %3 pour au plus 0,60, rempli %4</translation>
    </message>
    <message>
        <source>The tray is ready but its turn has not come: the colony would lose room</source>
        <translation>Le plateau est prêt mais son tour n’est pas venu&#xa0;: la colonie perdrait de la place</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2; the top tray filled %3</source>
        <translation>aliment/compost %1, prêt %2&#xa0;; plateau du haut rempli %3</translation>
    </message>
    <message>
        <source>Too early to lift: much of it is not castings yet</source>
        <translation>Trop tôt pour le monter&#xa0;: une grande part n’est pas encore lombricompost</translation>
    </message>
    <message>
        <source>feed-to-cast %1 of at most 0.10, ready %2</source>
        <translation>aliment/compost %1 pour au plus 0,10, prêt %2</translation>
    </message>
    <message>
        <source>Too early to take: much of it is not castings yet</source>
        <translation>Trop tôt pour prélever&#xa0;: une grande part n’est pas encore lombricompost</translation>
    </message>
    <message>
        <source>Too early to take: many worms would go with the castings</source>
        <translation>Trop tôt pour prélever&#xa0;: beaucoup de vers partiraient avec le lombricompost</translation>
    </message>
    <message>
        <source>in the light for %1; about %2 of its worms are left in it</source>
        <translation>à la lumière depuis %1&#xa0;; il y reste environ %2 de ses vers</translation>
    </message>
    <message>
        <source>last fed %1 ago, usually every %2; in the tray %3 not yet eaten, dry</source>
        <translation>dernier apport il y a %1, d’habitude tous les %2&#xa0;; dans le plateau %3 pas encore mangés, en sec</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until the castings above are taken</source>
        <translation>Le plateau du haut est plein&#xa0;: nourrir moins jusqu’à ce que le lombricompost du dessus soit prélevé</translation>
    </message>
    <message>
        <source>The top tray is full: add a tray, or feed less</source>
        <translation>Le plateau du haut est plein&#xa0;: ajouter un plateau, ou nourrir moins</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until the bottom tray is lifted</source>
        <translation>Le plateau du haut est plein&#xa0;: nourrir moins jusqu’à ce que celui du bas soit monté</translation>
    </message>
    <message>
        <source>Give no more food until the last is eaten; take out what smells, loosen the bed and mix in dry paper</source>
        <translation>Ne plus rien donner tant que le dernier apport n’est pas mangé&#xa0;; ôter ce qui sent, aérer le lit et y mêler du papier sec</translation>
    </message>
    <message>
        <source>Do not feed this week</source>
        <translation>Ne pas nourrir cette semaine</translation>
    </message>
    <message>
        <source>Feed at most %1 this week</source>
        <translation>Donner au plus %1 cette semaine</translation>
    </message>
    <message>
        <source>air in the bed %1 of full; below 0.7 within 14 days at %2 a week: %3; not yet eaten, dry: %4</source>
        <translation>air dans le lit %1 du plein&#xa0;; sous 0,7 dans les 14 jours à %2 par semaine&#xa0;: %3&#xa0;; pas encore mangé, en sec&#xa0;: %4</translation>
    </message>
    <message>
        <source>Feed %1: the worms live on their reserves</source>
        <translation>Donner %1 : les vers vivent de leurs réserves</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need (%2 to %3); %4 a week would do, up to %5 can be borne</source>
        <translation>ils assimilent %1 de leur besoin (%2 à %3)&#xa0;; %4 par semaine suffiraient, jusqu’à %5 sont supportés</translation>
    </message>
    <message>
        <source>Add %1 of shredded paper to each week&apos;s food</source>
        <translation>Ajouter %1 de papier déchiqueté à la nourriture de chaque semaine</translation>
    </message>
    <message>
        <source>C:N of what was given in the last 8 weeks %1, of the bed %2; 25 to 35 is wanted</source>
        <translation>C:N de ce qui a été donné ces 8 dernières semaines %1, du lit %2&#xa0;; 25 à 35 est voulu</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2</source>
        <translation>aliment/compost %1, prêt %2</translation>
    </message>
    <message>
        <source>its turn for %1</source>
        <translation>à son tour depuis %1</translation>
    </message>
    <message>
        <source>left as it is, the colony falls from %1 to %2 in 60 days</source>
        <translation>sans rien faire, la colonie tombe de %1 à %2 en 60 jours</translation>
    </message>
    <message>
        <source>Look for bits in the bottom tray</source>
        <translation>Chercher des morceaux dans le plateau du bas</translation>
    </message>
    <message>
        <source>Add a tray on top</source>
        <translation>Ajouter un plateau au-dessus</translation>
    </message>
    <message>
        <source>the top tray holds %1 of castings, feed-to-cast %2</source>
        <translation>le plateau du haut contient %1 de lombricompost, aliment/compost %2</translation>
    </message>
    <message>
        <source>The bottom tray is ready, no hurry</source>
        <translation>Le plateau du bas est prêt, rien ne presse</translation>
    </message>
    <message>
        <source>Take the castings of the only tray, and its worms back into new bedding</source>
        <translation>Prélever le lombricompost du seul plateau, et remettre ses vers dans une litière neuve</translation>
    </message>
    <message>
        <source>Lift the bottom tray to the top</source>
        <translation>Monter le plateau du bas</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn comes soon</source>
        <translation>Le tour du plateau du bas vient bientôt</translation>
    </message>
    <message>
        <source>depth of castings</source>
        <translation>épaisseur du lombricompost</translation>
    </message>
    <message>
        <source>still recognisable</source>
        <translation>encore reconnaissable</translation>
    </message>
    <message>
        <source>left of the last feeding</source>
        <translation>reste du dernier apport</translation>
    </message>
    <message>
        <source>worms weighed</source>
        <translation>vers pesés</translation>
    </message>
    <message>
        <source>worms counted</source>
        <translation>vers comptés</translation>
    </message>
    <message>
        <source>worms seen</source>
        <translation>vers vus</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>vidangé</translation>
    </message>
    <message>
        <source>drained in part</source>
        <translation>vidangé en partie</translation>
    </message>
    <message>
        <source>conductivity of the leachate</source>
        <translation>conductivité du lixiviat</translation>
    </message>
    <message>
        <source>weight of the tray</source>
        <translation>poids du plateau</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>squeezed in the hand</source>
        <translation>pressé dans la main</translation>
    </message>
    <message>
        <source>temperature of the bed</source>
        <translation>température du lit</translation>
    </message>
    <message>
        <source>castings taken</source>
        <translation>lombricompost prélevé</translation>
    </message>
    <message>
        <source>worms taken out</source>
        <translation>vers retirés</translation>
    </message>
    <message>
        <source>few</source>
        <translation>peu</translation>
    </message>
    <message>
        <source>some</source>
        <translation>quelques-uns</translation>
    </message>
    <message>
        <source>many</source>
        <translation>beaucoup</translation>
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
        <translation>attendu au plus %1</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>attendu %1</translation>
    </message>
    <message>
        <source>expected %1 to %2</source>
        <translation>attendu %1 à %2</translation>
    </message>
    <message>
        <source>%1 in slot %2</source>
        <translation>%1, niveau %2</translation>
    </message>
    <message>
        <source>Check the entry of %1, or look again</source>
        <translation>Vérifier l’entrée du %1, ou regarder de nouveau</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1&#xa0;: %2&#xa0;; %3</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre %1 et %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>About %n feeding(s) in %1 seem not to have been written down (%2)</source>
        <translation>
            <numerusform>Environ %n apport dans %1 semble ne pas avoir été noté (%2)</numerusform>
            <numerusform>Environ %n apports dans %1 semblent ne pas avoir été notés (%2)</numerusform>
        </translation>
    </message>
    <message>
        <source>usual days without an entry: %1; usually %2 of %3</source>
        <translation>jours habituels sans entrée&#xa0;: %1&#xa0;; d’habitude %2 de %3</translation>
    </message>
    <message>
        <source>Write down what was done since, and look into the top tray</source>
        <translation>Noter ce qui a été fait depuis, et regarder dans le plateau du haut</translation>
    </message>
    <message>
        <source>nothing written for %1; colony anywhere from %2 to %3</source>
        <translation>rien de noté depuis %1&#xa0;; colonie entre %2 et %3</translation>
    </message>
    <message>
        <source>water %1 of what the tray holds (%2 to %3), moisture %4 %</source>
        <translation>eau %1 de ce que retient le plateau (%2 à %3), humidité %4&#xa0;%</translation>
    </message>
    <message>
        <source>Pour %1 of water over the bed</source>
        <translation>Verser %1 d’eau sur le lit</translation>
    </message>
    <message>
        <source>Mix dry shredded paper into the bed, and do not water</source>
        <translation>Mêler du papier déchiqueté sec au lit, et ne pas arroser</translation>
    </message>
    <message>
        <source>over 100 : 1</source>
        <translation>plus de 100&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>%1 : 1</source>
        <translation>%1&#xa0;:&#xa0;1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>not before %1</source>
        <translation>pas avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>pas avant un an</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 – %3)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>The bottom tray is ready at 80 %, but the top tray is not filled yet, or a tray is spare. Once the top tray has stood for 60 days and holds {ready} of castings, it may be lifted all the same.</source>
        <translation>Avec 80 % de probabilité, le plateau du bas est prêt, mais celui du haut n’est pas encore rempli, ou il en reste un de libre. Une fois que celui du haut est là depuis 60 jours et contient {ready} de lombricompost, on peut tout de même le monter.</translation>
    </message>
    <message>
        <source>Feed the usual %1, at most %2 this week</source>
        <translation>Donner comme d’habitude %1, au plus %2 cette semaine</translation>
    </message>
    <message>
        <source>The bottom tray is ready: lift it when you like</source>
        <translation>Le plateau du bas est prêt&#xa0;: montez-le quand vous voulez</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in the top tray</source>
        <translation>Mesurer la profondeur du lombricompost dans le plateau du haut</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in the bottom tray</source>
        <translation>Mesurer la profondeur du lombricompost dans le plateau du bas</translation>
    </message>
    <message>
        <source>Measure how deep the castings lie in this tray</source>
        <translation>Mesurer la profondeur du lombricompost dans ce plateau</translation>
    </message>
    <message>
        <source>Look for bits in this tray</source>
        <translation>Chercher des restes dans ce plateau</translation>
    </message>
    <message>
        <source>See how much of the last feeding is left</source>
        <translation>Voir ce qui reste du dernier apport</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms</source>
        <translation>Voir s’il y a peu, quelques-uns ou beaucoup de vers</translation>
    </message>
    <message>
        <source>Weigh the worms of a part of the bed</source>
        <translation>Peser les vers d’une partie du lit</translation>
    </message>
    <message>
        <source>Count the worms in a measured part of the bed</source>
        <translation>Compter les vers dans une partie mesurée du lit</translation>
    </message>
    <message>
        <source>Weigh the bottom tray</source>
        <translation>Peser le plateau du bas</translation>
    </message>
    <message>
        <source>Weigh this tray</source>
        <translation>Peser ce plateau</translation>
    </message>
    <message>
        <source>Measure the moisture of the bed</source>
        <translation>Mesurer l’humidité du lit</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed</source>
        <translation>Presser une poignée du lit</translation>
    </message>
    <message>
        <source>Read the temperature of the bed</source>
        <translation>Lire la température du lit</translation>
    </message>
    <message>
        <source>Drain the sump into a measure</source>
        <translation>Vider le bac dans une mesure</translation>
    </message>
    <message>
        <source>Put worms in once the bedding has stood for a day, or write down how many are in it</source>
        <translation>Mettez des vers quand la litière a reposé un jour, ou notez combien il y en a</translation>
    </message>
    <message>
        <source>none are left by what is known</source>
        <translation>d’après ce que l’on sait il n’en reste aucun</translation>
    </message>
    <message>
        <source>none are written down; %1 to %2 are usual for a first tray</source>
        <translation>aucun n’est noté ; %1 à %2 sont d’usage pour un premier plateau</translation>
    </message>
    <message>
        <source>The spigot is shut and the sump is full within 7 days by the middle estimate. It is taken back when that is more than 10 days off. Where the day is known to no better than a week, and one case in ten has it full within 14 days, a look comes first; it holds for 5 days.</source>
        <translation>Le robinet est fermé et le bac sera plein dans les 7 jours selon l’estimation médiane. Retiré quand c’est à plus de 10 jours. Si le jour n’est pas connu à une semaine près et que dans un cas sur dix il est plein sous 14 jours, on regarde d’abord ; le regard vaut 5 jours.</translation>
    </message>
    <message>
        <source>See how full the sump is</source>
        <translation>Voir à quel point le bac est plein</translation>
    </message>
    <message>
        <source>standing in the sump</source>
        <translation>contenu du bac</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed: it may be dry</source>
        <translation>Presser une poignée du lit : il est peut-être sec</translation>
    </message>
    <message>
        <source>into the tray beneath the new one, which came early: %1</source>
        <translation>dans le plateau sous le nouveau, venu tôt&#xa0;: %1</translation>
    </message>
    <message>
        <source>The top tray is filled at 80 % ({filled} of castings, feed-to-cast at most 0.60) and a tray is spare. It is taken back after 7 days at 60 % or less, since fresh food is eaten by then, or by a check.</source>
        <translation>Avec 80&#xa0;% de probabilité, le plateau du haut est rempli ({filled} de lombricompost, aliment/compost au plus 0,60) et un plateau est libre. Retiré après 7 jours à 60&#xa0;% ou moins, car la nourriture fraîche est mangée d’ici là, ou par un contrôle.</translation>
    </message>
    <message>
        <source>The usual week&apos;s food does not fit under the rim less {rim}, now or within 7 days. It is taken back when a quarter more fits.</source>
        <translation>La nourriture d’une semaine habituelle ne tient pas sous le bord moins {rim}, maintenant ou dans les 7 jours. Retiré quand un quart de plus y tient.</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until the castings above are taken</source>
        <translation>Le plateau du haut se remplit&#xa0;: nourrir moins jusqu’à ce que le lombricompost au-dessus soit prélevé</translation>
    </message>
    <message>
        <source>The top tray fills up: add a tray, or feed less</source>
        <translation>Le plateau du haut se remplit&#xa0;: ajouter un plateau, ou nourrir moins</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until the bottom tray is lifted</source>
        <translation>Le plateau du haut se remplit&#xa0;: nourrir moins jusqu’à ce que celui du bas soit monté</translation>
    </message>
    <message>
        <source>bed %1 now; below %2: %3</source>
        <translation>lit à %1 maintenant&#xa0;; sous %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>A tray is in the light: take its castings first</source>
        <translation>Un plateau est à la lumière&#xa0;: prélever d’abord son lombricompost</translation>
    </message>
    <message>
        <source>in the light for %1</source>
        <translation>à la lumière depuis %1</translation>
    </message>
    <message>
        <source>fed today, usually every %1; in the tray %2 not yet eaten, dry</source>
        <translation>nourri aujourd’hui, d’habitude tous les %1&#xa0;; dans le plateau %2 pas encore mangés, en sec</translation>
    </message>
    <message>
        <source>The only tray fills up: feed less until its castings are taken</source>
        <translation>Le seul plateau se remplit&#xa0;: nourrir moins jusqu’au prélèvement de son lombricompost</translation>
    </message>
    <message>
        <source>The only tray is full: feed less until its castings are taken</source>
        <translation>Le seul plateau est plein&#xa0;: nourrir moins jusqu’au prélèvement de son lombricompost</translation>
    </message>
    <message>
        <source>The only tray can be emptied soon</source>
        <translation>Le seul plateau pourra bientôt être vidé</translation>
    </message>
    <message>
        <source>The only tray is ready, no hurry</source>
        <translation>Le seul plateau est prêt, rien ne presse</translation>
    </message>
    <message>
        <source>nothing measured of trays or worms for %1; of all looks this tells most of when the bottom tray is ready, for the work</source>
        <translation>rien de mesuré des plateaux ni des vers depuis %1&#xa0;; de tous les contrôles celui-ci en dit le plus, pour le travail, sur le moment où le plateau du bas sera prêt</translation>
    </message>
    <message>
        <source>bed %1 now, %2 by %3; below %4: %5</source>
        <translation>lit à %1 maintenant, %2 (%3)&#xa0;; sous %4&#xa0;: %5</translation>
    </message>
    <message>
        <source>Water less: much runs through</source>
        <translation>Arroser moins&#xa0;: beaucoup passe au travers</translation>
    </message>
    <message>
        <source>%1 a week runs into the sump; %2 a week are poured</source>
        <translation>%1 par semaine arrivent au bac&#xa0;; %2 par semaine sont versés</translation>
    </message>
    <message>
        <source>Feed the usual %1, and no more this week</source>
        <translation>Donner les %1 habituels, et rien de plus cette semaine</translation>
    </message>
    <message>
        <source>the top tray is filled to %1 under its rim</source>
        <translation>le plateau du haut est rempli jusqu’à %1 sous son bord</translation>
    </message>
    <message>
        <source>Cover the tray and put the lid on: it was lifted early and dries out</source>
        <translation>Couvrir le plateau et remettre le couvercle&#xa0;: il a été monté trop tôt et se dessèche</translation>
    </message>
    <message>
        <source>Cool the stack now, and give no food until it is cooler: a cellar, or shade, the lid ajar and frozen bottles on the cover</source>
        <translation>Refroidir la pile maintenant et ne rien donner avant qu’elle soit plus fraîche&#xa0;: une cave, ou de l’ombre, le couvercle entrouvert et des bouteilles gelées sur la couverture</translation>
    </message>
    <message>
        <source>Cool the stack: a cellar, or shade, the lid ajar and frozen bottles on the cover</source>
        <translation>Refroidir la pile&#xa0;: une cave, ou de l’ombre, le couvercle entrouvert et des bouteilles gelées sur la couverture</translation>
    </message>
    <message>
        <source>bed %1 now; above %2: %3</source>
        <translation>lit à %1 maintenant&#xa0;; au-dessus de %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>bed %1 now, %2 by %3; above %4: %5</source>
        <translation>lit à %1 maintenant, %2 (%3)&#xa0;; au-dessus de %4&#xa0;: %5</translation>
    </message>
    <message>
        <source>Wait with food, and look again in a few days</source>
        <translation>Attendre pour nourrir, et revoir dans quelques jours</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>For three days the water is above 1.1 of what the tray holds at 80 %, or it ran when it was squeezed, or the moisture read says so, within 5 days. It is taken back at 60 %.</source>
        <translation>Depuis trois jours l’eau dépasse 1,1 de ce que tient le plateau, à 80 %, ou elle a coulé à la pression, ou l’humidité relevée le dit, dans les 5 jours. Retiré à 60 %.</translation>
    </message>
    <message>
        <source>The tray is lifted too early or too late; food is given to nobody.</source>
        <translation>Le plateau est monté trop tôt ou trop tard&#xa0;; la nourriture n’est pour personne.</translation>
    </message>
    <message>
        <source>hardly any are left by what is known: colony %1</source>
        <translation>d’après ce qu’on sait il n’en reste presque plus&#xa0;: colonie %1</translation>
    </message>
    <message>
        <source>Put worms in, or write down how many are in it; give no food until then</source>
        <translation>Mettre des vers, ou noter combien il y en a&#xa0;; ne pas nourrir d’ici là</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms, and give no food until then</source>
        <translation>Regarder s’il y a peu, quelques-uns ou beaucoup de vers, et ne pas nourrir d’ici là</translation>
    </message>
    <message>
        <source>more does not fit under the rim</source>
        <translation>davantage n’entre pas sous le bord</translation>
    </message>
    <message>
        <source>%1 kg a day and m² are the most</source>
        <translation>%1 kg par jour et m² sont le maximum</translation>
    </message>
    <message>
        <source>with more the chance of a bed above %1 is above 5 %</source>
        <translation>avec plus, la probabilité d’un lit au-dessus de %1 dépasse 5 %</translation>
    </message>
    <message>
        <source>with more the chance of too little air is above 5 %</source>
        <translation>avec plus, la probabilité d’un manque d’air dépasse 5 %</translation>
    </message>
    <message>
        <source>not fed yet; %1</source>
        <translation>pas encore nourri&#xa0;; %1</translation>
    </message>
    <message>
        <source>not fed yet; %1 a week keep the worms that are in it</source>
        <translation>pas encore nourri&#xa0;; %1 par semaine entretiennent les vers qui y sont</translation>
    </message>
    <message>
        <source>Feed %1, at most %2 this week</source>
        <translation>Donner %1, au plus %2 cette semaine</translation>
    </message>
    <message>
        <source>The only tray is full: no food fits until its castings are taken</source>
        <translation>Le seul plateau est plein&#xa0;: rien n’entre avant le prélèvement de son lombricompost</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until the castings above are taken</source>
        <translation>Le plateau du haut est plein&#xa0;: rien n’entre avant le prélèvement du lombricompost au-dessus</translation>
    </message>
    <message>
        <source>The top tray is full: add a tray, then feed</source>
        <translation>Le plateau du haut est plein&#xa0;: ajouter un plateau, puis nourrir</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until the bottom tray is lifted</source>
        <translation>Le plateau du haut est plein&#xa0;: rien n’entre avant que le plateau du bas soit monté</translation>
    </message>
    <message>
        <source>hardly any of it is eaten</source>
        <translation>presque rien n’en est mangé</translation>
    </message>
    <message>
        <source>enough for %1 as the worms eat now</source>
        <translation>de quoi tenir %1 au rythme actuel des vers</translation>
    </message>
    <message>
        <source>food that lies in the tray, dry: %1; %2</source>
        <translation>nourriture dans le plateau, sèche&#xa0;: %1&#xa0;; %2</translation>
    </message>
    <message>
        <source>with any more this week the chance of a bed above %1 is above 5 %; bed %2 now; not yet eaten, dry: %3</source>
        <translation>avec davantage cette semaine, la probabilité d’un lit au-dessus de %1 dépasse 5 %&#xa0;; lit à %2 maintenant&#xa0;; pas encore mangé, sec&#xa0;: %3</translation>
    </message>
    <message>
        <source>with any more this week the chance of too little air in the bed is above 5 %; air %1 of full now; not yet eaten, dry: %2</source>
        <translation>avec davantage cette semaine, la probabilité d’un manque d’air dans le lit dépasse 5 %&#xa0;; air à %1 du plein maintenant&#xa0;; pas encore mangé, sec&#xa0;: %2</translation>
    </message>
    <message>
        <source>nothing measured of trays or worms for %1; it was told before, and no look tells clearly more of when the bottom tray is ready, for the work</source>
        <translation>rien de mesuré des plateaux ni des vers depuis %1&#xa0;; il a déjà été demandé, et aucun contrôle n’en dit nettement plus, pour le travail, sur le moment où le plateau du bas sera prêt</translation>
    </message>
    <message>
        <source>Squeeze a handful of the bed, and water it if it crumbles: it is probably dry</source>
        <translation>Presser une poignée du lit, et arroser si elle s’émiette&#xa0;: il est sans doute sec</translation>
    </message>
    <message>
        <source>The water is below 0.65 of what the tray holds, now or within 7 days, at 50 %, or it crumbled when it was squeezed or the moisture read says so, within 5 days. It is taken back at 30 %. From 20 % on a handful is squeezed first, once in 14 days; above 50 % too, where the range is wider than 0.4.</source>
        <translation>L’eau est sous 0,65 de ce que tient le plateau, maintenant ou d’ici 7 jours, à 50 %, ou la poignée s’est émiettée ou l’humidité relevée le dit, dans les 5 jours. Retiré à 30 %. Dès 20 % on presse d’abord une poignée, une fois en 14 jours&#xa0;; au-dessus de 50 % aussi, là où la fourchette dépasse 0,4.</translation>
    </message>
    <message>
        <source>it was not in the light; about %1 of worms are in it, %2 of the colony</source>
        <translation>il n’a pas été à la lumière&#xa0;; environ %1 de vers y sont, %2 de la colonie</translation>
    </message>
    <message>
        <source>Leave the stack in the cool until the bed is surely below %1</source>
        <translation>Laisser la pile au frais jusqu’à ce que le lit soit sûrement sous %1</translation>
    </message>
    <message>
        <source>The top tray is filled ({filled} of castings, feed-to-cast at most 0.60), no tray is spare, and the bottom tray is ready (feed-to-cast at most 0.10, at least {ready}), both at 80 %. The bottom one is taken back at 60 %; the top one after 7 days of it, since fresh food is eaten by then, or by a check. Where a tray between both is ready and the bottom one is not, its castings are taken instead.</source>
        <translation>Le plateau du haut est rempli ({filled} de lombricompost, aliment/compost d’au plus 0,60), aucun plateau n’est libre, et celui du bas est prêt (aliment/compost d’au plus 0,10, au moins {ready}), les deux à 80 %. Celui du bas est retiré à 60 %&#xa0;; celui du haut après 7 jours ainsi, le temps que la nourriture fraîche soit mangée, ou par un contrôle. Là où un plateau entre les deux est prêt et celui du bas non, c’est son lombricompost que l’on prélève.</translation>
    </message>
    <message>
        <source>The chance that the bottom tray is ready and its turn has come within 14 days is at least 50 %, and no tray is spare. Where its turn has come already, readiness is what is missing.</source>
        <translation>La probabilité que le plateau du bas soit prêt et que son tour vienne en 14 jours est d’au moins 50 %, et aucun plateau n’est libre. Là où son tour est déjà venu, il ne manque plus que la maturité.</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; it is likely to be full already; if so, empty it, else the level tells the day</source>
        <translation>d’après l’estimation il en contient %1 à %2 sur %3&#xa0;; il est sans doute déjà plein&#xa0;; si oui, le vider, sinon le niveau dit le jour</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; with one chance in ten it is full by %4; if that is near, empty it, else the level tells the day</source>
        <translation>d’après l’estimation il en contient %1 à %2 sur %3&#xa0;; avec une chance sur dix il est plein d’ici %4&#xa0;; s’il l’est presque, le vider, sinon le niveau dit le jour</translation>
    </message>
    <message>
        <source>Too early to lift: that it is ready is not sure enough yet</source>
        <translation>Trop tôt pour monter&#xa0;: qu’il soit prêt n’est pas encore assez sûr</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2 of the 80 % that are asked for</source>
        <translation>aliment/compost %1, prêt à %2, on demande 80 %</translation>
    </message>
    <message>
        <source>half of the worms&apos; weight a day is the most, and they are about %1</source>
        <translation>la moitié du poids des vers par jour est le maximum, et ils pèsent environ %1</translation>
    </message>
    <message>
        <source>last fed %1 ago; in the tray %2 not yet eaten, dry</source>
        <translation>dernier apport il y a %1&#xa0;; dans le plateau %2 pas encore mangés, en sec</translation>
    </message>
    <message>
        <source>Take the castings of the tray in slot %1 instead: the bottom one is not ready yet</source>
        <translation>Prélever plutôt le lombricompost du plateau du niveau&#xa0;%1&#xa0;: celui du bas n’est pas encore prêt</translation>
    </message>
    <message>
        <source>%1; the bottom tray %2; the turn has come for %3; about %4 of worms are in it: put them into the top tray and write them down as put in</source>
        <translation>%1&#xa0;; le plateau du bas %2&#xa0;; son tour est venu il y a %3&#xa0;; environ %4 de vers s’y trouvent&#xa0;: les mettre dans le plateau du haut et les noter comme mis</translation>
    </message>
    <message>
        <source>The only tray&apos;s turn has come, it is not ready yet</source>
        <translation>Le tour du seul plateau est venu, il n’est pas encore prêt</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn has come, it is not ready yet</source>
        <translation>Le tour du plateau du bas est venu, il n’est pas encore prêt</translation>
    </message>
    <message>
        <source>The only tray&apos;s turn has come: look for bits in it</source>
        <translation>Le tour du seul plateau est venu&#xa0;: y chercher des restes</translation>
    </message>
    <message>
        <source>The bottom tray&apos;s turn has come: look for bits in it</source>
        <translation>Le tour du plateau du bas est venu&#xa0;: y chercher des restes</translation>
    </message>
    <message>
        <source>filled: %1; castings by the estimate %2, %3 wanted; with more than that, the turn has come; with less, go on as before and look again in a week</source>
        <translation>rempli&#xa0;: %1&#xa0;; lombricompost d’après l’estimation %2, %3 voulus&#xa0;; au-delà, le tour est venu&#xa0;; en deçà, continuer comme avant et regarder de nouveau dans une semaine</translation>
    </message>
    <message>
        <source>%1 (%2 at the earliest, perhaps not within a year)</source>
        <translation>%1 (au plus tôt %2, peut-être pas d’ici un an)</translation>
    </message>
    <message>
        <source>%1 at the earliest, perhaps not within a year</source>
        <translation>au plus tôt %1, peut-être pas d’ici un an</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need (%2 to %3); more than %4 a week would be wanted, and only %5 can be borne</source>
        <translation>ils assimilent %1 de ce qu’il leur faut (%2 à %3)&#xa0;; il faudrait plus de %4 par semaine, et seuls %5 sont supportés</translation>
    </message>
    <message>
        <source>A look is likely to settle whether the bottom tray is ready or the top tray filled, or it narrows the ready date by 14 days after a month without any; no look in the last 7 days. Or hardly any worms are left: less than {few}, after cold or heat less than a tenth of what there was within 60 days, or half of what there was within 120 (taken back at 0.6).</source>
        <translation>Un contrôle dira sans doute si le plateau du bas est prêt ou celui du haut rempli, ou il resserre la date de 14 jours après un mois sans contrôle&#xa0;; aucun dans les 7 derniers jours. Ou il ne reste presque plus de vers&#xa0;: moins de {few}, après le froid ou la chaleur moins d’un dixième de ce qu’il y avait en 60 jours, ou la moitié de ce qu’il y avait en 120 (retiré à 0,6).</translation>
    </message>
    <message>
        <source>colony %1; on %2 it was %3</source>
        <translation>colonie %1&#xa0;; le %2 elle était de %3</translation>
    </message>
    <message>
        <source>See whether there are few, some or many worms: the colony dwindles</source>
        <translation>Regarder s’il y a peu, quelques ou beaucoup de vers&#xa0;: la colonie dépérit</translation>
    </message>
    <message>
        <source>The top tray fills up: feed less until castings are taken</source>
        <translation>Le plateau du haut se remplit&#xa0;: nourrir moins jusqu’au prélèvement</translation>
    </message>
    <message>
        <source>The top tray is full: no food fits until castings are taken</source>
        <translation>Le plateau du haut est plein&#xa0;: rien ne tient avant un prélèvement</translation>
    </message>
    <message>
        <source>The top tray is full: feed less until castings are taken</source>
        <translation>Le plateau du haut est plein&#xa0;: nourrir moins jusqu’au prélèvement</translation>
    </message>
    <message>
        <source>it crumbled when it was squeezed, and moisture was read as %1 %; %2</source>
        <translation>elle s’est émiettée en la pressant, et l’humidité lue est de %1&#xa0;%&#xa0;; %2</translation>
    </message>
    <message>
        <source>it ran when it was squeezed, and moisture was read as %1 %; %2</source>
        <translation>elle a coulé en la pressant, et l’humidité lue est de %1&#xa0;%&#xa0;; %2</translation>
    </message>
    <message>
        <source>Squeeze another handful of the bed: two readings deny each other</source>
        <translation>Presser une autre poignée du lit&#xa0;: deux mesures se contredisent</translation>
    </message>
    <message>
        <source>at %1 worms hardly leave the light: bring it in first, or wait until it is warmer</source>
        <translation>à %1 les vers ne fuient guère la lumière&#xa0;: la rentrer d’abord, ou attendre qu’il fasse plus chaud</translation>
    </message>
    <message>
        <source>by it the tray in slot %1 is filled to %2, and it is %3 high</source>
        <translation>d’après elle le plateau à la place %1 est rempli jusqu’à %2, et il est haut de %3</translation>
    </message>
    <message>
        <source>%1 of worms were put in; these trays carry %2 at most</source>
        <translation>%1 de vers ont été mis&#xa0;; ces plateaux en portent %2 au plus</translation>
    </message>
    <message>
        <source>Check the entry of %1: it may be a slip of the pen</source>
        <translation>Vérifier l’entrée du %1&#xa0;: c’est peut-être une faute de frappe</translation>
    </message>
    <message>
        <source>Correct place or usual temperature in the set-up, or check the entry of %1</source>
        <translation>Corriger le lieu ou la température habituelle dans les données de la pile, ou vérifier l’entrée du %1</translation>
    </message>
    <message>
        <source>%1; read again on %2: %3</source>
        <translation>%1&#xa0;; relu le %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Ready and its turn for 30 days; or the top tray within {rim} of its rim; or the colony falls to 85 % or less in 60 days without a harvest, and not for want of food or in cold or heat.</source>
        <translation>Prêt et à son tour depuis 30 jours&#xa0;; ou le plateau du haut à moins de {rim} du bord&#xa0;; ou la colonie tombe à 85&#xa0;% ou moins en 60 jours sans récolte, et non faute de nourriture ni par le froid ou la chaleur.</translation>
    </message>
    <message>
        <source>A value of the last 60 days lies outside what the record leads to expect; readings of the bed do not fit the set-up; more was put in than a tray holds or its trays carry; usual feedings seem to be missing; or no worms are in a stack that has bedding.</source>
        <translation>Une valeur des 60 derniers jours sort de ce que les notes laissent attendre&#xa0;; des mesures du lit ne vont pas avec les données de la pile&#xa0;; on a mis plus qu’un plateau ne contient ou que ses plateaux ne portent&#xa0;; des apports habituels semblent manquer&#xa0;; ou une pile garnie de litière n’a pas de vers.</translation>
    </message>
    <message>
        <source>nobody is there: %1</source>
        <translation>personne n’est là&#xa0;: %1</translation>
    </message>
    <message>
        <source>A tray was added while the chance that the one beneath is filled was below 50 % and a week&apos;s food still fitted into it, or lifted while the chance that it is ready was below 30 %.</source>
        <translation>Un plateau a été ajouté alors que la probabilité que celui du dessous soit rempli était inférieure à 50 % et que la nourriture d’une semaine y tenait encore, ou monté alors que celle qu’il soit prêt était inférieure à 30 %.</translation>
    </message>
    <message>
        <source>colony %1, two weeks ago %2</source>
        <translation>colonie %1, il y a deux semaines %2</translation>
    </message>
    <message>
        <source>by its own heat %1 warmer</source>
        <translation>plus chaud par sa propre chaleur&#xa0;: %1</translation>
    </message>
    <message>
        <source>they assimilate %1 of what they need</source>
        <translation>ils assimilent %1 de ce qu’il leur faut</translation>
    </message>
    <message>
        <source>on %1 it was %2</source>
        <translation>le %1 elle était de %2</translation>
    </message>
    <message>
        <source>on %1 the colony was %2, now %3</source>
        <translation>le %1 la colonie était de %2, maintenant %3</translation>
    </message>
    <message>
        <source>by the estimate %1 to %2 of %3 stand in it; it may be full already (chance %4); if so, empty it, else the level tells the day</source>
        <translation>d’après l’estimation il en contient %1 à %2 sur %3&#xa0;; il est peut-être déjà plein (probabilité %4)&#xa0;; si oui, le vider, sinon le niveau dit le jour</translation>
    </message>
    <message>
        <source>what comes now runs on the floor</source>
        <translation>ce qui vient maintenant coule sur le sol</translation>
    </message>
    <message>
        <source>full %1</source>
        <translation>plein&#xa0;: %1</translation>
    </message>
    <message>
        <source>C:N of the bed %1, 25 to 35 is wanted: paper and bedding alone hardly feed them</source>
        <translation>C:N du lit %1, on veut 25 à 35&#xa0;: le papier et la litière seuls ne les nourrissent guère</translation>
    </message>
    <message>
        <source>of the usual feeding of %1 only %2: %3 were given within 7 days, and %4 kg a day and m² are the most</source>
        <translation>de la ration habituelle de %1 seulement %2&#xa0;: %3 ont été donnés en 7 jours, et %4 kg par jour et m² sont le maximum</translation>
    </message>
    <message>
        <source>of the usual feeding of %1 only %2 are borne this week: %3</source>
        <translation>de la ration habituelle de %1 seuls %2 sont supportés cette semaine&#xa0;: %3</translation>
    </message>
    <message>
        <source>Feed at most %1 at once and %2 this week</source>
        <translation>Donner au plus %1 en une fois et %2 cette semaine</translation>
    </message>
    <message>
        <source>The top tray fills up: lift the bottom tray, which is ready, or feed less</source>
        <translation>Le plateau du haut se remplit&#xa0;: monter celui du bas, qui est prêt, ou nourrir moins</translation>
    </message>
    <message>
        <source>The top tray is full: lift the bottom tray, which is ready; no food fits until then</source>
        <translation>Le plateau du haut est plein&#xa0;: monter celui du bas, qui est prêt&#xa0;; rien n’entre d’ici là</translation>
    </message>
    <message>
        <source>The top tray is full: lift the bottom tray, which is ready, or feed less</source>
        <translation>Le plateau du haut est plein&#xa0;: monter celui du bas, qui est prêt, ou nourrir moins</translation>
    </message>
    <message>
        <source>by the estimate it is heaped above its %1</source>
        <translation>selon l’estimation il déborde de ses %1</translation>
    </message>
    <message>
        <source>%1 of %2 used</source>
        <translation>%1 sur %2 occupés</translation>
    </message>
    <message>
        <source>no more food fits</source>
        <translation>plus rien n’y entre</translation>
    </message>
    <message>
        <source>%1 of the usual food still fit</source>
        <translation>%1 de la nourriture habituelle tiennent encore</translation>
    </message>
    <message>
        <source>the worms assimilate %1 of what they need</source>
        <translation>les vers assimilent %1 de ce qu’il leur faut</translation>
    </message>
    <message>
        <source>feed-to-cast %1, ready %2 until the last food is eaten</source>
        <translation>aliment/compost %1, prêt %2 jusqu’à ce que la dernière nourriture soit mangée</translation>
    </message>
    <message>
        <source>by the record the top tray holds more castings than fit under its rim at %1: a new tray or a harvest may not be written down, or an entry is wrong; feed-to-cast %2</source>
        <translation>d’après le journal le plateau du haut contient plus de lombricompost qu’il n’en tient sous son bord à %1&#xa0;: un nouveau plateau ou un prélèvement n’est peut-être pas noté, ou une entrée est fausse&#xa0;; aliment/compost %2</translation>
    </message>
    <message>
        <source>if one was added since, write it down</source>
        <translation>si un plateau a été ajouté depuis, le noter</translation>
    </message>
    <message>
        <source>the top tray has had %1 and holds %2 of castings</source>
        <translation>le plateau du haut est là depuis %1 et contient %2 de lombricompost</translation>
    </message>
    <message>
        <source>the top tray is filled to its rim</source>
        <translation>le plateau du haut est rempli jusqu’au bord</translation>
    </message>
    <message>
        <source>a spare tray is left</source>
        <translation>un plateau est encore libre</translation>
    </message>
    <message>
        <source>The bottom tray is ready and its turn comes soon: lift it when you like</source>
        <translation>Le plateau du bas est prêt et son tour vient bientôt&#xa0;: montez-le quand vous voulez</translation>
    </message>
    <message>
        <source>ready and its turn within 14 days: %1</source>
        <translation>prêt et à son tour dans les 14 jours&#xa0;: %1</translation>
    </message>
    <message>
        <source>it narrows the date by less than a day for %1 min of work</source>
        <translation>cela resserre la date de moins d’un jour pour %1 min de travail</translation>
    </message>
    <message>
        <source>it narrows the date by about %1 for %2 min of work, %3 days a minute</source>
        <translation>cela resserre la date d’environ %1 pour %2 min de travail, %3 jours par minute</translation>
    </message>
    <message>
        <source>it narrows the date, %1, by about %2 for %3 min of work, %4 days a minute</source>
        <translation>cela resserre la date, %1, d’environ %2 pour %3 min de travail, %4 jours par minute</translation>
    </message>
    <message>
        <source>fewer than %1 % bits of food or bedding: lift it today</source>
        <translation>moins de %1 % de morceaux de nourriture ou de litière&#xa0;: le monter aujourd’hui</translation>
    </message>
    <message>
        <source>fewer than 1 in %1 bits of food or bedding: lift it today</source>
        <translation>moins de 1 morceau sur %1 de nourriture ou de litière&#xa0;: le monter aujourd’hui</translation>
    </message>
    <message>
        <source>else wait and look again in a week</source>
        <translation>sinon attendre et regarder de nouveau dans une semaine</translation>
    </message>
    <message>
        <source>else wait until about %1</source>
        <translation>sinon attendre jusqu’au %1 environ</translation>
    </message>
    <message>
        <source>else wait and look again in a month</source>
        <translation>sinon attendre et regarder de nouveau dans un mois</translation>
    </message>
    <message>
        <source>chance that it is too dry within a week: %1</source>
        <translation>probabilité qu’il soit trop sec d’ici une semaine&#xa0;: %1</translation>
    </message>
    <message>
        <source>if it crumbles, pour %1, else nothing for two weeks</source>
        <translation>si elle s’émiette, verser %1, sinon rien pendant deux semaines</translation>
    </message>
    <message>
        <source>it crumbled when it was squeezed</source>
        <translation>il s’est émietté à la pression</translation>
    </message>
    <message>
        <source>moisture was read as %1 %</source>
        <translation>humidité relevée&#xa0;: %1 %</translation>
    </message>
    <message>
        <source>in all %1 are wanting: more at once runs through</source>
        <translation>il manque %1 en tout&#xa0;: davantage d’un coup ne fait que traverser</translation>
    </message>
    <message>
        <source>it ran when it was squeezed</source>
        <translation>de l’eau a coulé à la pression</translation>
    </message>
    <message>
        <source>its turn about %1</source>
        <translation>son tour&#xa0;: %1</translation>
    </message>
    <message>
        <source>its turn not before %1</source>
        <translation>son tour pas avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>its turn not within a year</source>
        <translation>son tour pas avant un an</translation>
    </message>
    <message>
        <source>right not before %1</source>
        <translation>bon moment pas avant&#xa0;: %1</translation>
    </message>
    <message>
        <source>not right within a year</source>
        <translation>bon moment pas avant un an</translation>
    </message>
    <message>
        <source>What was given in 8 weeks, cover included, has a C:N below 20 (taken back at 22); up to 25 when that of the bed is below 18 (taken back at 19). Less than {paper} of paper a week is not asked for.</source>
        <translation>Ce qui a été donné en 8 semaines, couverture comprise, a un C:N sous 20 (retiré à 22)&#xa0;; jusqu’à 25 si celui du lit est sous 18 (retiré à 19). Moins de {paper} de papier par semaine ne sont pas demandés.</translation>
    </message>
    <message>
        <source>the tray beneath holds %1 of castings of the %2 wanted, feed-to-cast %3 of at most 0.60; chance that it is filled %4, %5 wanted</source>
        <translation>le plateau du dessous contient %1 de lombricompost sur les %2 voulus, aliment/compost %3 pour au plus 0,60&#xa0;; probabilité qu’il soit rempli&#xa0;: %4, %5 voulus</translation>
    </message>
    <message>
        <source>The usual gap since the last feeding ends within 2 days, and at least {least} can be borne. More than the usual amount is named where that is below 0.7 of what keeps the worms and they assimilate less than 90 % of what they need, until they get all of it.</source>
        <translation>L’intervalle habituel depuis le dernier apport s’achève dans les 2 jours, et au moins {least} sont supportés. Plus que la ration habituelle est nommé là où elle est sous 0,7 de ce qui entretient les vers et où ils assimilent moins de 90&#xa0;% de leur besoin, jusqu’à ce qu’ils l’aient en entier.</translation>
    </message>
    <message>
        <source>The air in a tray is below 0.7 of full, or falls below it within 14 days with at least even chances. It is taken back above 0.8 and below 30 %. Also where what was given within 7 days is more than a quarter above the most. As a hint: food is due and not even {least} is borne, or what lies in the tray would last for more than 45 days as it is eaten now, until it is 30.</source>
        <translation>L’air d’un plateau est sous 0,7 du plein, ou descend dessous en 14 jours avec au moins une chance sur deux. Retiré au-dessus de 0,8 et sous 30&#xa0;%. Aussi lorsque les apports de 7 jours dépassent de plus d’un quart le maximum. En indication&#xa0;: il est temps de nourrir et pas même {least} ne sont supportés, ou ce qui est dans le plateau suffirait pour plus de 45 jours au rythme actuel, jusqu’à ce qu’il en reste 30.</translation>
    </message>
    <message>
        <source>the worms assimilate %1 of what they need; %2 a week keep as many as there are</source>
        <translation>les vers assimilent %1 de leur besoin&#xa0;; %2 par semaine en entretiennent autant qu’il y en a</translation>
    </message>
    <message>
        <source>Feed %1 rather than the usual %2</source>
        <translation>Donner %1 plutôt que les %2 habituels</translation>
    </message>
    <message>
        <source>Give no more food this week; look after a few days, and take out what smells or is warm</source>
        <translation>Ne plus nourrir cette semaine&#xa0;; regarder après quelques jours et retirer ce qui sent ou chauffe</translation>
    </message>
    <message>
        <source>%1 were given within 7 days; half of the worms&apos; weight a day is the most, %2 a week for about %3 of worms</source>
        <translation>%1 ont été donnés en 7 jours&#xa0;; la moitié du poids des vers par jour est le maximum, %2 par semaine pour environ %3 de vers</translation>
    </message>
    <message>
        <source>%1 were given within 7 days; %2 kg a day and m² are the most, %3 a week</source>
        <translation>%1 ont été donnés en 7 jours&#xa0;; %2 kg par jour et m² sont le maximum, %3 par semaine</translation>
    </message>
</context>
<context>
    <name>BedBody</name>
    <message>
        <source>Bedding</source>
        <translation>Litière</translation>
    </message>
    <message>
        <source>Which bedding?</source>
        <translation>Quelle litière&#xa0;?</translation>
    </message>
    <message>
        <source>Amount, dry</source>
        <translation>Quantité, en sec</translation>
    </message>
    <message>
        <source>How much bedding, as it comes to hand?</source>
        <translation>Combien de litière, telle qu’elle vient&#xa0;?</translation>
    </message>
    <message>
        <source>Moisture once laid</source>
        <translation>Humidité une fois posée</translation>
    </message>
    <message>
        <source>wetted like a wrung-out sponge when left empty</source>
        <translation>laissé vide&#xa0;: humidifiée comme une éponge essorée</translation>
    </message>
    <message>
        <source>makes about %1; wet it with %2 of water</source>
        <translation>donne environ %1&#xa0;; l’humidifier avec %2 d’eau</translation>
    </message>
</context>
<context>
    <name>BedFields</name>
    <message>
        <source>Bed temperature now</source>
        <translation>Température du lit maintenant</translation>
    </message>
    <message>
        <source>as a thermometer in the bed shows it today; the mean of the year follows from it, and it from the mean</source>
        <translation>comme un thermomètre dans le lit la montre aujourd’hui&#xa0;; la moyenne de l’année en découle, et elle de la moyenne</translation>
    </message>
    <message>
        <source>Usual bed temperature</source>
        <translation>Température habituelle du lit</translation>
    </message>
    <message>
        <source>the mean of the whole year; the place makes winter and summer of it</source>
        <translation>la moyenne de toute l’année&#xa0;; le lieu en fait l’hiver et l’été</translation>
    </message>
    <message>
        <source>the mean of the whole year; at this place that is about %1 in %2 and %3 in %4</source>
        <comment>temperature, month, temperature, month</comment>
        <translation>la moyenne de toute l’année&#xa0;; à cet endroit cela fait environ %1 en %2 et %3 en %4</translation>
    </message>
    <message>
        <source>; below %1 worms die</source>
        <translation>&#xa0;; sous %1 des vers meurent</translation>
    </message>
    <message>
        <source>; above %1 worms die</source>
        <translation>&#xa0;; au-dessus de %1 des vers meurent</translation>
    </message>
</context>
<context>
    <name>Calendar</name>
    <message>
        <source>about %1 of castings</source>
        <translation>environ %1 de lombricompost</translation>
    </message>
    <message>
        <source>%1: add a tray (tray %2)</source>
        <translation>%1&#xa0;: ajouter un plateau (plateau %2)</translation>
    </message>
    <message>
        <source>%1: lift the bottom tray (tray %2)</source>
        <translation>%1&#xa0;: monter le plateau du bas (plateau %2)</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1&#xa0;; %2</translation>
    </message>
    <message>
        <source>%1: take the castings, lay new bedding (tray %2)</source>
        <translation>%1&#xa0;: prélever le lombricompost, poser une litière neuve (plateau %2)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: take the castings of the only tray, its worms back into new bedding</source>
        <translation>%1&#xa0;: prélever le lombricompost du seul plateau, remettre ses vers dans une litière neuve</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>à faire&#xa0;: %1</translation>
    </message>
    <message>
        <source>due %1 (%2 to %3)</source>
        <translation>à faire&#xa0;: %1 (%2 à %3)</translation>
    </message>
    <message>
        <source>due %1 (from %2 on)</source>
        <translation>à faire&#xa0;: %1 (à partir du %2)</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Leachate: not on leaves that are eaten raw, and never to drink. Wash your hands afterwards.</source>
        <translation>Lixiviat&#xa0;: pas sur des feuilles mangées crues, et jamais à boire. Se laver les mains après.</translation>
    </message>
    <message>
        <source>Worms in the sump are normal: put them back into the top tray.</source>
        <translation>Des vers dans le bac, c’est normal&#xa0;: les remettre dans le plateau du haut.</translation>
    </message>
    <message>
        <source>Tray %1</source>
        <translation>Le plateau %1</translation>
    </message>
    <message>
        <source>The tray</source>
        <translation>Le plateau</translation>
    </message>
    <message>
        <source>Lift it close to the body, knees bent, without a twist; if that is too heavy, in parts or with someone.</source>
        <translation>Le soulever près du corps, genoux pliés, sans se tourner&#xa0;; s’il est trop lourd, en plusieurs fois ou à deux.</translation>
    </message>
    <message>
        <source>%1 weighs about %2.</source>
        <translation>%1 pèse environ %2.</translation>
    </message>
    <message>
        <source>A full tray is heavy.</source>
        <translation>Un plateau plein est lourd.</translation>
    </message>
    <message>
        <source>Worms left in the bottom tray are normal: they go down in the light.</source>
        <translation>Des vers restés dans le plateau du bas, c’est normal&#xa0;: ils descendent à la lumière.</translation>
    </message>
    <message>
        <source>It is normal that cocoons and some young worms leave with the castings; castings without any worm cannot be promised.</source>
        <translation>Il est normal que des cocons et quelques jeunes vers partent avec le lombricompost&#xa0;; on ne peut pas le promettre sans aucun ver.</translation>
    </message>
    <message>
        <source>Against cold: wrap it or bring it in first. A heater only if it is rated for the place and away from water; the local electrical code and a licensed electrician come first.</source>
        <translation>Contre le froid&#xa0;: d’abord l’envelopper ou la rentrer. Un chauffage, seulement s’il est prévu pour le lieu et loin de l’eau&#xa0;; les règles électriques locales et un électricien agréé passent d’abord.</translation>
    </message>
    <message>
        <source>«%1» is best left out. It is recorded all the same.</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: mieux vaut s’en passer. C’est noté quand même.</translation>
    </message>
    <message>
        <source>«%1» only a little at a time.</source>
        <translation>«&#xa0;%1&#xa0;»&#xa0;: seulement un peu à la fois.</translation>
    </message>
    <message>
        <source>Give worms to other bins only. Never release them into woods, fields or water; keep to local rules on species.</source>
        <translation>Ne donner des vers qu’à d’autres lombricomposteurs. Ne jamais les relâcher dans les bois, les champs ou l’eau&#xa0;; respecter les règles locales sur les espèces.</translation>
    </message>
    <message>
        <source>No pesticide or ant bait near worms or food. Against a sour bed calcium carbonate only, never slaked lime.</source>
        <translation>Ni pesticide ni appât à fourmis près des vers ou de la nourriture. Contre un lit acide, seulement du carbonate de calcium, jamais de chaux éteinte.</translation>
    </message>
    <message>
        <source>Wash your hands after each work, keep tools out of the kitchen sink, cover cuts, keep tetanus vaccination up to date. Composts can carry moulds and Legionella. With asthma or weak immunity, or when pregnant, let someone else do the dusty work; see a doctor if you fall ill after it.</source>
        <translation>Se laver les mains après chaque travail, tenir les outils loin de l’évier, couvrir les coupures, tenir à jour la vaccination contre le tétanos. Les composts peuvent porter des moisissures et des Legionella. En cas d’asthme, de défenses affaiblies ou de grossesse, laisser à d’autres le travail poussiéreux&#xa0;; consulter un médecin si l’on tombe malade ensuite.</translation>
    </message>
    <message>
        <source>Never release composting worms into woods, fields or water. Keep to local rules on species, on waste and on selling worms or castings.</source>
        <translation>Ne jamais relâcher des vers de compost dans les bois, les champs ou l’eau. Respecter les règles locales sur les espèces, les déchets et la vente de vers ou de lombricompost.</translation>
    </message>
    <message>
        <source>Local codes and licensed practice come first: for electrical heat, for what may be composted where you live, and for what you may give away or sell.</source>
        <translation>Les règles locales et les professionnels agréés passent d’abord&#xa0;: pour le chauffage électrique, pour ce qu’on peut composter chez vous, et pour ce que vous pouvez donner ou vendre.</translation>
    </message>
    <message>
        <source>Meat, fish, dairy, oily food, pet droppings, glossy paper and treated wood stay out.</source>
        <translation>Viande, poisson, laitages, aliments huileux, déjections d’animaux, papier glacé et bois traité restent dehors.</translation>
    </message>
    <message>
        <source>the household&apos;s own material</source>
        <translation>la matière propre du foyer</translation>
    </message>
    <message>
        <source>Leachate: never to drink, not on leaves eaten raw.</source>
        <translation>Lixiviat : ne jamais le boire, pas sur des feuilles mangées crues.</translation>
    </message>
    <message>
        <source>%1 weighs about %2: lift with knees bent, or in parts.</source>
        <translation>%1 pèse environ %2 : soulever genoux fléchis, ou en plusieurs fois.</translation>
    </message>
    <message>
        <source>A full tray is heavy: lift with knees bent, or in parts.</source>
        <translation>Un plateau plein est lourd : soulever genoux fléchis, ou en plusieurs fois.</translation>
    </message>
    <message>
        <source>Dust of castings and compost can carry moulds and Legionella: keep it moist, your face away, wear a mask and gloves, wash your hands; cover wounds, keep tetanus vaccination up to date. With asthma or weak immunity, let someone else do it; what your doctor or health service says comes first.</source>
        <translation>La poussière de lombricompost et de compost peut porter des moisissures et des légionelles&#xa0;: le garder humide, le visage éloigné, porter masque et gants, se laver les mains&#xa0;; couvrir les plaies, vaccin contre le tétanos à jour. En cas d’asthme ou d’immunité faible, laisser faire quelqu’un d’autre&#xa0;; l’avis du médecin ou des services de santé passe avant.</translation>
    </message>
    <message>
        <source>Dust can carry moulds and Legionella: keep it moist, mask and gloves on, tetanus vaccination up to date; not with asthma or weak immunity.</source>
        <translation>La poussière peut porter moisissures et légionelles&#xa0;: garder humide, masque et gants, vaccin contre le tétanos à jour&#xa0;; pas en cas d’asthme ou d’immunité faible.</translation>
    </message>
    <message>
        <source>Soil and bedding in a wound can bring tetanus: cover wounds, wear gloves, wash your hands, keep the vaccination up to date; what your doctor or health service says comes first.</source>
        <translation>Terre et litière dans une plaie peuvent donner le tétanos&#xa0;: couvrir les plaies, porter des gants, se laver les mains, vaccin à jour&#xa0;; l’avis du médecin ou des services de santé passe avant.</translation>
    </message>
    <message>
        <source>Cover wounds, wear gloves; tetanus vaccination up to date.</source>
        <translation>Couvrir les plaies, mettre des gants&#xa0;; vaccin contre le tétanos à jour.</translation>
    </message>
    <message>
        <source>Manure: only aged, of animals not wormed lately; gloves, tetanus vaccination up to date; never cat or dog waste, not in pregnancy.</source>
        <translation>Fumier&#xa0;: seulement vieilli, d’animaux non vermifugés depuis peu&#xa0;; gants, vaccin contre le tétanos à jour&#xa0;; jamais de crottes de chat ou de chien, pas pendant la grossesse.</translation>
    </message>
    <message>
        <source>Manure: only aged, not of animals wormed lately: what kills their worms kills yours. Wear gloves, cover wounds, tetanus vaccination up to date, wash your hands; never cat or dog waste; in pregnancy or with weak immunity keep away from it.</source>
        <translation>Fumier&#xa0;: seulement vieilli, pas d’animaux vermifugés depuis peu&#xa0;: ce qui tue leurs vers tue les vôtres. Gants, plaies couvertes, vaccin contre le tétanos à jour, mains lavées&#xa0;; jamais de crottes de chat ou de chien&#xa0;; ni enceinte, ni avec une immunité faible.</translation>
    </message>
</context>
<context>
    <name>ChangeWords</name>
    <message>
        <source>not within a year</source>
        <translation>pas avant un an</translation>
    </message>
    <message>
        <source>no day sooner or later</source>
        <translation>ni plus tôt ni plus tard</translation>
    </message>
    <message>
        <source>bottom tray ready</source>
        <translation>plateau du bas prêt</translation>
    </message>
    <message>
        <source>top tray filled</source>
        <translation>plateau du haut rempli</translation>
    </message>
    <message>
        <source>sump full, if shut</source>
        <translation>bac plein, si fermé</translation>
    </message>
    <message>
        <source>colony in 60 days</source>
        <translation>colonie dans 60 jours</translation>
    </message>
    <message>
        <source>colony in a year</source>
        <translation>colonie dans un an</translation>
    </message>
    <message>
        <source>processing, dry</source>
        <translation>traité, en sec</translation>
    </message>
    <message>
        <source>feed %1 with its cover</source>
        <translation>donner %1 avec sa couverture</translation>
    </message>
    <message>
        <source>give no food</source>
        <translation>ne rien donner</translation>
    </message>
    <message>
        <source>pour %1 of water</source>
        <translation>verser %1 d’eau</translation>
    </message>
    <message>
        <source>drain the sump and leave the spigot over a bowl</source>
        <translation>vidanger le bac et laisser le robinet ouvert au-dessus d’un récipient</translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Nobody need come by.</source>
        <translation>Avant de partir (%1)&#xa0;: %2. Personne n’a besoin de passer.</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Let somebody look in half-way.</source>
        <translation>Avant de partir (%1)&#xa0;: %2. Faire passer quelqu’un à mi-chemin.</translation>
    </message>
    <message>
        <source>too dry on the return</source>
        <translation>trop sec au retour</translation>
    </message>
    <message>
        <source>hungry on the return</source>
        <translation>affamés au retour</translation>
    </message>
    <message>
        <source>The stack is not behind: it processes %1, at least 70 % of its best week of the last year.</source>
        <translation>La pile n’est pas en retard&#xa0;: elle traite %1, au moins 70&#xa0;% de sa meilleure semaine de l’année passée.</translation>
    </message>
    <message>
        <source>take the bottom tray&apos;s castings</source>
        <translation>prélever le lombricompost du plateau du bas</translation>
    </message>
    <message>
        <source>lay a new tray</source>
        <translation>poser un nouveau plateau</translation>
    </message>
    <message>
        <source>not within half a year</source>
        <translation>pas avant six mois</translation>
    </message>
    <message>
        <source>The shortest way back: %1. It processes %2 again about %3.</source>
        <translation>Le chemin de retour le plus court&#xa0;: %1. Elle traite de nouveau %2 vers le %3.</translation>
    </message>
    <message>
        <source>back at its former rate</source>
        <translation>revenue à son rythme</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>from %1 on %2</source>
        <comment>day, amount of food a week</comment>
        <translation>à partir du %1, %2</translation>
    </message>
    <message>
        <source>processing, dry, by then</source>
        <translation>transformé d’ici là, sec</translation>
    </message>
    <message>
        <source>air below 0.7 within 14 days</source>
        <translation>air sous 0,7 d’ici 14 jours</translation>
    </message>
    <message numerus="yes">
        <source>None: with fewer worms the stack would not be back at its rate, or its colony at nine tenths, within %n week(s) (%1 then, %2 now).</source>
        <translation>
            <numerusform>Aucun&#xa0;: avec moins de vers la pile ne retrouverait pas son rythme, ou sa colonie neuf dixièmes, en %n semaine (%1 alors, %2 maintenant).</numerusform>
            <numerusform>Aucun&#xa0;: avec moins de vers la pile ne retrouverait pas son rythme, ou sa colonie neuf dixièmes, en %n semaines (%1 alors, %2 maintenant).</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as today again, and its worms are back to nine tenths.</source>
        <translation>
            <numerusform>Jusqu’à %1 de vers peuvent partir (%2 de la colonie)&#xa0;; en %n semaine la pile traite de nouveau autant qu’aujourd’hui, et ses vers sont revenus à neuf dixièmes.</numerusform>
            <numerusform>Jusqu’à %1 de vers peuvent partir (%2 de la colonie)&#xa0;; en %n semaines la pile traite de nouveau autant qu’aujourd’hui, et ses vers sont revenus à neuf dixièmes.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as it would with all of them, which is less than today, and its worms are back to nine tenths.</source>
        <translation>
            <numerusform>Jusqu’à %1 de vers peuvent partir (%2 de la colonie)&#xa0;; en %n semaine la pile traite autant qu’elle le ferait avec tous, ce qui est moins qu’aujourd’hui, et ses vers sont revenus à neuf dixièmes.</numerusform>
            <numerusform>Jusqu’à %1 de vers peuvent partir (%2 de la colonie)&#xa0;; en %n semaines la pile traite autant qu’elle le ferait avec tous, ce qui est moins qu’aujourd’hui, et ses vers sont revenus à neuf dixièmes.</numerusform>
        </translation>
    </message>
    <message>
        <source>colony by then</source>
        <translation>colonie d’ici là</translation>
    </message>
    <message>
        <source>Before you leave for %1: %2. Nobody need come by; towards the end they may live on their reserves: feed them when you are back.</source>
        <translation>Avant de partir pour %1&#xa0;: %2. Personne n’a besoin de passer&#xa0;; vers la fin ils peuvent vivre sur leurs réserves&#xa0;: les nourrir au retour.</translation>
    </message>
    <message>
        <source>already</source>
        <translation>déjà</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is as heavy as without the change.</source>
        <translation>Le plateau du bas est prêt %1&#xa0;; dans 60 jours la colonie est aussi lourde que sans le changement.</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is as heavy as without the change.</source>
        <translation>Le plateau du bas prélevé, dans 60 jours la colonie est aussi lourde que sans le changement.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be what it is today, %2.</source>
        <translation>Si le plateau du bas avait été prélevé le %1, la colonie serait ce qu’elle est aujourd’hui, %2.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be what it is today, %1.</source>
        <translation>Sans cette entrée la colonie serait ce qu’elle est aujourd’hui, %1.</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is %2.</source>
        <translation>Le plateau du bas est prêt %1&#xa0;; dans 60 jours la colonie est %2.</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is %1.</source>
        <translation>Le plateau du bas prélevé, dans 60 jours la colonie est %1.</translation>
    </message>
    <message>
        <source>The bottom tray is ready %1; in 60 days the colony is as heavy as without the change (%2).</source>
        <translation>Le plateau du bas est prêt %1&#xa0;; dans 60 jours la colonie est aussi lourde que sans le changement (%2).</translation>
    </message>
    <message>
        <source>With the bottom tray taken, in 60 days the colony is as heavy as without the change (%1).</source>
        <translation>Le plateau du bas prélevé, dans 60 jours la colonie est aussi lourde que sans le changement (%1).</translation>
    </message>
    <message>
        <source>put %1 of worms in</source>
        <translation>mettre %1 de vers</translation>
    </message>
    <message>
        <source>None of harvest, new tray and more food brings it back by itself. With worms it does: %1. It processes %2 again about %3.</source>
        <translation>Ni prélèvement, ni nouveau plateau, ni plus de nourriture ne suffisent seuls. Avec des vers, oui&#xa0;: %1. Elle traite de nouveau %2 vers %3.</translation>
    </message>
    <message>
        <source>None of harvest, new tray and more food brings it back to %1 within half a year, nor do %2 of worms: begin its bed anew.</source>
        <translation>Ni prélèvement, ni nouveau plateau, ni plus de nourriture ne la ramènent à %1 en six mois, pas plus que %2 de vers&#xa0;: refaire son lit.</translation>
    </message>
    <message>
        <source>%1 a week</source>
        <comment>amount of food</comment>
        <translation>%1 par semaine</translation>
    </message>
    <message>
        <source>Lay %1 of bedding in the new stack&apos;s first tray, put %2 of worms in, and feed it %3.</source>
        <translation>Mettre %1 de litière dans le premier plateau de la nouvelle pile, y mettre %2 de vers, et lui donner %3.</translation>
    </message>
    <message>
        <source>worms at the beginning</source>
        <translation>vers au début</translation>
    </message>
    <message>
        <source>food a week</source>
        <translation>nourriture par semaine</translation>
    </message>
    <message>
        <source>back at its rate</source>
        <translation>rythme retrouvé</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>feed %1</source>
        <comment>amounts a week</comment>
        <translation>donner %1</translation>
    </message>
    <message>
        <source>%1, later up to %2</source>
        <comment>amounts of food a week</comment>
        <translation>%1, plus tard jusqu’à %2</translation>
    </message>
    <message>
        <source>Never release them into wild land, and keep to local rules on species and sale.</source>
        <translation>Ne les relâchez jamais dans la nature, et respectez les règles locales sur les espèces et la vente.</translation>
    </message>
    <message>
        <source>from %1 on: %2 a week</source>
        <comment>day, amount of food</comment>
        <translation>à partir du %1&#xa0;: %2 par semaine</translation>
    </message>
    <message>
        <source>%1 a week at first, step by step %2 from %3 on</source>
        <comment>amount of food, amount, day</comment>
        <translation>d’abord %1 par semaine, puis pas à pas %2 à partir du %3</translation>
    </message>
    <message>
        <source>That is more than it can bear: with %1 the air in the bed falls below 0.7 within 14 days; it heats and smells, and below 0.5 worms die.</source>
        <translation>C’est plus qu’elle ne supporte&#xa0;: avec une probabilité de %1, l’air du lit tombe sous 0,7 d’ici 14 jours&#xa0;; cela chauffe et sent, et sous 0,5 des vers meurent.</translation>
    </message>
    <message>
        <source>Of such a week&apos;s food only about %1 fit into the tray now; what finds no room is left out.</source>
        <translation>De la nourriture d’une telle semaine, seuls %1 environ entrent maintenant dans le plateau&#xa0;; le reste est laissé de côté.</translation>
    </message>
    <message>
        <source>All its trays stand: it takes one more than there are.</source>
        <translation>Tous ses plateaux sont en place&#xa0;: il en faut un de plus.</translation>
    </message>
    <message>
        <source>%1 is the mean of the whole year, and the season goes on around it: at this place the bed has about %2 in %3 and %4 in %5.</source>
        <comment>temperature, temperature, month, temperature, month</comment>
        <translation>%1 est la moyenne de toute l’année, et les saisons continuent autour&#xa0;: à cet endroit, le lit a environ %2 en %3 et %4 en %5.</translation>
    </message>
    <message>
        <source>Below %1 worms die.</source>
        <translation>Sous %1, des vers meurent.</translation>
    </message>
    <message>
        <source>Above %1 worms die.</source>
        <translation>Au-dessus de %1, des vers meurent.</translation>
    </message>
    <message>
        <source>bed, mean of the year</source>
        <translation>lit, moyenne de l’année</translation>
    </message>
    <message>
        <source>bed in %1</source>
        <comment>month</comment>
        <translation>lit en %1</translation>
    </message>
    <message numerus="yes">
        <source>This stack can spare only %1 within %n week(s): give it more weeks, or buy the rest.</source>
        <translation>
            <numerusform>Cette pile ne peut céder que %1 en %n semaine&#xa0;: lui laisser plus de semaines, ou acheter le reste.</numerusform>
            <numerusform>Cette pile ne peut céder que %1 en %n semaines&#xa0;: lui laisser plus de semaines, ou acheter le reste.</numerusform>
        </translation>
    </message>
    <message>
        <source>Its first tray is full, and the next one due: %1. The castings of the first are ready: %2. This stack is back at its rate: %3.</source>
        <translation>Son premier plateau est plein, et le suivant à poser&#xa0;: %1. Le lombricompost du premier est prêt&#xa0;: %2. Cette pile a retrouvé son rythme&#xa0;: %3.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 heavier.</source>
        <translation>Avec le plateau du bas prélevé le %1, la colonie pèserait aujourd’hui %2 au lieu de %3, soit %4 de plus.</translation>
    </message>
    <message>
        <source>With the bottom tray taken on %1 the colony would be %2 today instead of %3, that is %4 lighter.</source>
        <translation>Avec le plateau du bas prélevé le %1, la colonie pèserait aujourd’hui %2 au lieu de %3, soit %4 de moins.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be %1 today instead of %2, that is %3 heavier.</source>
        <translation>Sans cette entrée, la colonie pèserait aujourd’hui %1 au lieu de %2, soit %3 de plus.</translation>
    </message>
    <message>
        <source>Without that entry the colony would be %1 today instead of %2, that is %3 lighter.</source>
        <translation>Sans cette entrée, la colonie pèserait aujourd’hui %1 au lieu de %2, soit %3 de moins.</translation>
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
        <translation>Au %1. Les lignes sont des estimations, les bandes l’intervalle qui tient neuf fois sur dix&#xa0;; ce qui est ombré est la prévision.</translation>
    </message>
    <message>
        <source>%1. Estimates, no measurements: a look into the tray rules over any number here.</source>
        <translation>%1. Des estimations, pas des mesures&#xa0;: un coup d’œil dans le plateau vaut plus que tout nombre ici.</translation>
    </message>
    <message>
        <source>The signs in the charts</source>
        <translation>Les signes des graphiques</translation>
    </message>
</context>
<context>
    <name>CheckBody</name>
    <message>
        <source>Depth of castings</source>
        <translation>Épaisseur du lombricompost</translation>
    </message>
    <message>
        <source>Still recognisable</source>
        <translation>Encore reconnaissable</translation>
    </message>
    <message>
        <source>how much of the tray you still know as food or bedding</source>
        <translation>la part du plateau où l’on reconnaît encore nourriture ou litière</translation>
    </message>
    <message>
        <source>Left of the last feeding</source>
        <translation>Reste du dernier apport</translation>
    </message>
    <message>
        <source>Worms seen</source>
        <translation>Vers vus</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>few</source>
        <translation>peu</translation>
    </message>
    <message>
        <source>some</source>
        <translation>quelques-uns</translation>
    </message>
    <message>
        <source>many</source>
        <translation>beaucoup</translation>
    </message>
    <message>
        <source>Note at least one thing that you saw.</source>
        <translation>Noter au moins une chose vue.</translation>
    </message>
</context>
<context>
    <name>CommandLine</name>
    <message>
        <source>unknown option %1</source>
        <translation>option inconnue&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 takes no value</source>
        <translation>%1 ne prend pas de valeur</translation>
    </message>
    <message>
        <source>%1 needs a value</source>
        <translation>%1 demande une valeur</translation>
    </message>
    <message>
        <source>%1 is given twice</source>
        <translation>%1 est donné deux fois</translation>
    </message>
    <message>
        <source>%1 and %2 cannot be asked for at once</source>
        <translation>%1 et %2 ne peuvent pas être demandés à la fois</translation>
    </message>
    <message>
        <source>--at goes only with --summary, --calendar, --report, --labels and --portrait</source>
        <translation>--at ne va qu’avec --summary, --calendar, --report, --labels et --portrait</translation>
    </message>
    <message>
        <source>%1 goes only with --portrait</source>
        <translation>%1 ne va qu’avec --portrait</translation>
    </message>
    <message>
        <source>--lang goes only with --report, --labels and --portrait</source>
        <translation>--lang ne va qu’avec --report, --labels et --portrait</translation>
    </message>
    <message>
        <source>--out goes only with --report</source>
        <translation>--out ne va qu’avec --report</translation>
    </message>
    <message>
        <source>--demo goes only with the window and --portrait</source>
        <translation>--demo ne va qu’avec la fenêtre et --portrait</translation>
    </message>
    <message>
        <source>only one FILE can be named, not %1 and %2</source>
        <translation>un seul FICHIER peut être nommé, pas %1 et %2</translation>
    </message>
    <message>
        <source>the name of FILE is empty</source>
        <translation>le nom de FICHIER est vide</translation>
    </message>
    <message>
        <source>--demo opens a household of its own, so no FILE can be named</source>
        <translation>--demo ouvre son propre foyer, aucun FICHIER ne peut donc être nommé</translation>
    </message>
    <message>
        <source>the call needs a FILE: tierloam FILE …</source>
        <translation>l’appel demande un FICHIER&#xa0;: tierloam FICHIER …</translation>
    </message>
    <message>
        <source>--at: found «%1»; allowed: a date from 1900 to 2199, such as 2031-05-01</source>
        <translation>--at&#xa0;: trouvé «&#xa0;%1&#xa0;»&#xa0;; admis&#xa0;: une date de 1900 à 2199, comme 2031-05-01</translation>
    </message>
    <message>
        <source>--report needs --out OUT.pdf or --out OUT.html</source>
        <translation>--report demande --out SORTIE.pdf ou --out SORTIE.html</translation>
    </message>
    <message>
        <source>%1: found «%2»; allowed: %3</source>
        <translation>%1&#xa0;: trouvé «&#xa0;%2&#xa0;»&#xa0;; admis&#xa0;: %3</translation>
    </message>
    <message>
        <source>a name that ends in .pdf or .html</source>
        <translation>un nom qui finit en .pdf ou .html</translation>
    </message>
    <message>
        <source>a name that ends in .pdf</source>
        <translation>un nom qui finit en .pdf</translation>
    </message>
    <message>
        <source>a whole number, 100 to 200</source>
        <translation>un nombre entier, de 100 à 200</translation>
    </message>
    <message>
        <source>WIDTHxHEIGHT, each %1 to %2, such as 1440x900</source>
        <translation>LARGEURxHAUTEUR, chacune de %1 à %2, comme 1440x900</translation>
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
        <translation>Tierloam fait avancer les plateaux de chaque pile de lombricomposteurs, tour après tour.

tierloam [FICHIER]                     ouvre la fenêtre sur un fichier de foyer (*.tierloam)
tierloam --demo                        ouvre une copie neuve du foyer de démonstration
tierloam FICHIER --import JOURNAL.csv  ajoute toutes les lignes d’un journal, ou aucune
tierloam FICHIER --record &quot;LIGNE&quot;      ajoute une ligne, affiche son id une fois sûre sur le disque
tierloam FICHIER --export JOURNAL.csv  écrit le journal entier
tierloam FICHIER --summary [--at DATE] estimations et conseils en JSON
tierloam FICHIER --calendar SORTIE.ics [--at DATE]
                                       liste à faire et plan de rotation en iCalendar
tierloam FICHIER --report PILE --out SORTIE.pdf|SORTIE.html [--at DATE] [--lang de]
                                       la fiche d’une pile
tierloam FICHIER --labels SORTIE.pdf [--at DATE] [--lang de]
                                       une étiquette par plateau en place
tierloam FICHIER --portrait DOSSIER    dessine chaque page dans DOSSIER/PAGE.png&#xa0;; aussi avec --demo au lieu de FICHIER
    [--at DATE] [--theme light|dark] [--font-scale 100..200] [--size LARGEURxHAUTEUR] [--lang de]
tierloam --version, tierloam --help

Les colonnes d’un journal&#xa0;: date,stack,action,slot,amount,unit,item,detail,note
FICHIER est créé quand --import ou --record en nomment un qui n’existe pas.

Codes de sortie&#xa0;: 0 fait&#xa0;; 1 le travail a échoué (disque plein&#xa0;; FICHIER absent, abîmé ou occupé plus de 5 s) ;
2 arguments ou données incorrects, et rien n’a été changé.
</translation>
    </message>
    <message>
        <source>this build has no window and draws no pages; it answers --import, --record, --export, --summary and --calendar</source>
        <translation>cette version n’a pas de fenêtre et ne dessine pas de pages&#xa0;; elle répond à --import, --record, --export, --summary et --calendar</translation>
    </message>
    <message>
        <source>tierloam --help lists the calls</source>
        <translation>tierloam --help énumère les appels</translation>
    </message>
    <message>
        <source>%1, also with a country, such as de_AT</source>
        <translation>%1, avec un pays aussi, comme de_AT</translation>
    </message>
</context>
<context>
    <name>CoreCalls</name>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 ne peut pas être lu&#xa0;: %2</translation>
    </message>
    <message>
        <source>another program has changed the journal meanwhile</source>
        <translation>un autre programme a changé le journal entre-temps</translation>
    </message>
    <message>
        <source>what was written is kept, but the answer could not be printed</source>
        <translation>ce qui a été écrit est conservé, mais la réponse n’a pas pu être affichée</translation>
    </message>
    <message>
        <source>the journal</source>
        <translation>le journal</translation>
    </message>
    <message>
        <source>the summary could not be printed</source>
        <translation>le résumé n’a pas pu être affiché</translation>
    </message>
    <message>
        <source>the calendar</source>
        <translation>le calendrier</translation>
    </message>
    <message>
        <source>%1 is the household file itself; name another file for %2</source>
        <translation>%1 est le fichier du foyer lui-même&#xa0;; nommer un autre fichier pour %2</translation>
    </message>
    <message>
        <source>The seasons are those south of the equator, since this machine is set up for there. The window&apos;s menu Household, Seasons, turns them.</source>
        <translation>Les saisons sont celles du sud de l’équateur, puisque cette machine est réglée pour là-bas. Dans la fenêtre, le menu Foyer, Saisons, les inverse.</translation>
    </message>
    <message>
        <source>%1 is not in the journal&apos;s own format, which --import reads. The window reads other tables too (its menu Household, Import a table): it finds out columns, marks and encoding, and asks what it cannot know.</source>
        <translation>%1 n’est pas dans le format propre au journal, que lit --import. La fenêtre lit aussi d’autres tableaux (menu Foyer, Importer un tableau)&#xa0;: elle reconnaît colonnes, séparateurs et codage, et demande ce qu’elle ne peut savoir.</translation>
    </message>
</context>
<context>
    <name>CountBody</name>
    <message>
        <source>Worms counted</source>
        <translation>Vers comptés</translation>
    </message>
    <message>
        <source>How many worms?</source>
        <translation>Combien de vers&#xa0;?</translation>
    </message>
    <message>
        <source>In how much bed</source>
        <translation>Dans combien de lit</translation>
    </message>
    <message>
        <source>the volume that was searched; without it the count says little</source>
        <translation>le volume fouillé&#xa0;; sans lui, le comptage dit peu</translation>
    </message>
</context>
<context>
    <name>CoverBody</name>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>How much paper?</source>
        <translation>Combien de papier&#xa0;?</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>not noted; reckoned as about %1</source>
        <translation>non notée&#xa0;; comptée pour %1 environ</translation>
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
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>tomorrow</source>
        <translation>demain</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>depuis le %1</translation>
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
        <translation>après le %1</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 (%2 or later)</source>
        <translation>%1 (%2 ou plus tard)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n jour</numerusform>
            <numerusform>%n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 d</source>
        <translation>%1 j</translation>
    </message>
</context>
<context>
    <name>DrainBody</name>
    <message>
        <source>Drained</source>
        <translation>Vidangé</translation>
    </message>
    <message>
        <source>The sump</source>
        <translation>Le bac</translation>
    </message>
    <message>
        <source>is empty now</source>
        <translation>est vide maintenant</translation>
    </message>
    <message>
        <source>still holds some</source>
        <translation>en contient encore</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Robinet</translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation>reste comme il est</translation>
    </message>
    <message>
        <source>open from now on</source>
        <translation>ouvert désormais</translation>
    </message>
    <message>
        <source>shut from now on</source>
        <translation>fermé désormais</translation>
    </message>
    <message>
        <source>Give the volume that was drained, or say how the spigot stands from now on.</source>
        <translation>Indiquer le volume vidangé, ou la position du robinet désormais.</translation>
    </message>
    <message>
        <source>it is open on that day</source>
        <translation>il est ouvert ce jour-là</translation>
    </message>
    <message>
        <source>it is shut on that day</source>
        <translation>il est fermé ce jour-là</translation>
    </message>
</context>
<context>
    <name>DrainDoubt</name>
    <message>
        <source>%1 is more than can have run out: the sump holds %2. Is the amount right, and its unit?</source>
        <translation>%1, c’est plus qu’il n’a pu s’écouler&#xa0;: le bac contient %2. La quantité est-elle juste, et son unité&#xa0;?</translation>
    </message>
</context>
<context>
    <name>DueActs</name>
    <message>
        <source>%1: %2</source>
        <comment>stack, what is recorded</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>feed %1</source>
        <comment>amount</comment>
        <translation>nourrir de %1</translation>
    </message>
    <message>
        <source>%1 of paper</source>
        <comment>amount</comment>
        <translation>%1 de papier</translation>
    </message>
    <message>
        <source>water %1</source>
        <comment>amount</comment>
        <translation>arroser de %1</translation>
    </message>
    <message>
        <source>drain %1</source>
        <comment>amount</comment>
        <translation>vider %1</translation>
    </message>
    <message>
        <source>flush with %1</source>
        <comment>amount</comment>
        <translation>rincer avec %1</translation>
    </message>
    <message>
        <source>tray on top, %1 of %2</source>
        <comment>amount, bedding</comment>
        <translation>plateau dessus, %1 de %2</translation>
    </message>
    <message>
        <source>bottom tray lifted to the top, lid off</source>
        <translation>plateau du bas monté en haut, couvercle ôté</translation>
    </message>
    <message>
        <source>It weighs about %1. %2</source>
        <comment>a tray; what is advised for the lift</comment>
        <translation>Il pèse environ %1. %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what was looked for, what was seen</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>none</source>
        <comment>bits</comment>
        <translation>aucun</translation>
    </message>
    <message>
        <source>1 in %1</source>
        <comment>of the tray is bits</comment>
        <translation>1 sur %1</translation>
    </message>
    <message>
        <source>nothing left</source>
        <translation>rien ne reste</translation>
    </message>
    <message>
        <source>a quarter</source>
        <translation>un quart</translation>
    </message>
    <message>
        <source>half</source>
        <translation>la moitié</translation>
    </message>
    <message>
        <source>three quarters</source>
        <translation>trois quarts</translation>
    </message>
    <message>
        <source>few</source>
        <comment>worms</comment>
        <translation>peu</translation>
    </message>
    <message>
        <source>some</source>
        <comment>worms</comment>
        <translation>quelques-uns</translation>
    </message>
    <message>
        <source>many</source>
        <comment>worms</comment>
        <translation>beaucoup</translation>
    </message>
    <message>
        <source>1 crumbles</source>
        <translation>1 s’émiette</translation>
    </message>
    <message>
        <source>2</source>
        <translation>2</translation>
    </message>
    <message>
        <source>3 moist</source>
        <translation>3 humide</translation>
    </message>
    <message>
        <source>4</source>
        <translation>4</translation>
    </message>
    <message>
        <source>5 streams</source>
        <translation>5 ruisselle</translation>
    </message>
    <message>
        <source>noted as done</source>
        <translation>noté comme fait</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <comment>what was advised</comment>
        <translation>Fait : %1</translation>
    </message>
    <message>
        <source>bits of food or bedding</source>
        <translation>morceaux de nourriture ou de litière</translation>
    </message>
    <message>
        <source>left of the last feeding</source>
        <translation>reste du dernier apport</translation>
    </message>
    <message>
        <source>worms seen</source>
        <translation>vers vus</translation>
    </message>
    <message>
        <source>squeezed in the hand</source>
        <translation>pressé dans la main</translation>
    </message>
    <message>
        <source>bed temperature</source>
        <translation>température du lit</translation>
    </message>
    <message>
        <source>depth of castings</source>
        <translation>épaisseur de lombricompost</translation>
    </message>
</context>
<context>
    <name>EventBody</name>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>What happened, in a word?</source>
        <translation>Que s’est-il passé, en un mot&#xa0;?</translation>
    </message>
    <message>
        <source>%1, …</source>
        <translation>%1, …</translation>
    </message>
    <message>
        <source>%1 puts what may be wrong in order, by what is known of this stack</source>
        <translation>%1 classe ce qui peut ne pas aller, d’après ce qu’on sait de cette pile</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Jusqu’à</translation>
    </message>
</context>
<context>
    <name>Events</name>
    <message>
        <source>smell</source>
        <translation>odeur</translation>
    </message>
    <message>
        <source>flies</source>
        <translation>mouches</translation>
    </message>
    <message>
        <source>mites</source>
        <translation>acariens</translation>
    </message>
    <message>
        <source>ants</source>
        <translation>fourmis</translation>
    </message>
    <message>
        <source>escape</source>
        <translation>fuite</translation>
    </message>
    <message>
        <source>dead worms</source>
        <translation>vers morts</translation>
    </message>
    <message>
        <source>mould</source>
        <translation>moisissure</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>chaleur</translation>
    </message>
    <message>
        <source>cold</source>
        <translation>froid</translation>
    </message>
    <message>
        <source>standing water</source>
        <translation>eau stagnante</translation>
    </message>
    <message>
        <source>sour bed</source>
        <translation>lit acide</translation>
    </message>
    <message>
        <source>few worms</source>
        <translation>peu de vers</translation>
    </message>
    <message>
        <source>no castings</source>
        <translation>pas de lombricompost</translation>
    </message>
    <message>
        <source>away</source>
        <translation>absence</translation>
    </message>
    <message>
        <source>second light-drying</source>
        <translation>second séchage à la lumière</translation>
    </message>
    <message>
        <source>bait tray</source>
        <translation>plateau-appât</translation>
    </message>
</context>
<context>
    <name>ExchangeText</name>
    <message>
        <source>a closing quote mark for each opening one</source>
        <translation>un guillemet fermant pour chaque ouvrant</translation>
    </message>
    <message>
        <source>quote marks only around a whole cell, and doubled inside it</source>
        <translation>des guillemets seulement autour d’une cellule entière, et doublés à l’intérieur</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>du texte en UTF-8</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>above %1, at most %2</source>
        <translation>plus de %1, au plus %2</translation>
    </message>
    <message>
        <source>nothing (%1)</source>
        <translation>rien (%1)</translation>
    </message>
    <message>
        <source>%1 has no amount</source>
        <translation>%1 n’a pas de quantité</translation>
    </message>
    <message>
        <source>a plain decimal with a point, such as 0.35</source>
        <translation>un décimal simple avec un point, comme 0.35</translation>
    </message>
    <message>
        <source>a whole number, 0 to %1</source>
        <translation>un nombre entier, de 0 à %1</translation>
    </message>
    <message>
        <source>%1 has no detail</source>
        <translation>%1 n’a pas de détail</translation>
    </message>
    <message>
        <source>key=value with the keys %1</source>
        <translation>clé=valeur avec les clés %1</translation>
    </message>
    <message>
        <source>= and a value</source>
        <translation>= et une valeur</translation>
    </message>
    <message>
        <source>%1 once</source>
        <translation>%1 une seule fois</translation>
    </message>
    <message>
        <source>a whole number, %1 to %2</source>
        <translation>un nombre entier, de %1 à %2</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01</source>
        <translation>une date de 1900 à 2199, comme 2031-05-01</translation>
    </message>
    <message>
        <source>16 digits of 0 to 9 and a to f, as given by an export</source>
        <translation>16 chiffres de 0 à 9 et a à f, tels que donnés par un export</translation>
    </message>
    <message>
        <source>found «%1»; allowed: %2</source>
        <translation>trouvé «&#xa0;%1&#xa0;»&#xa0;; admis&#xa0;: %2</translation>
    </message>
    <message>
        <source>each column once</source>
        <translation>chaque colonne une seule fois</translation>
    </message>
    <message>
        <source>a header with each of %1</source>
        <translation>un en-tête avec chacun de&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 cells: %2; there are %3</source>
        <translation>%1 cellules&#xa0;: %2&#xa0;; il y en a %3</translation>
    </message>
    <message>
        <source>a header with %1</source>
        <translation>un en-tête avec %1</translation>
    </message>
    <message>
        <source>one row</source>
        <translation>une ligne</translation>
    </message>
    <message>
        <source>a date and a time, such as 2031-05-01 18:30</source>
        <translation>une date et une heure, comme 2031-05-01 18:30</translation>
    </message>
    <message>
        <source>a temperature from %1 to %2</source>
        <translation>une température de %1 à %2</translation>
    </message>
    <message>
        <source>a share from 0 to 100 %</source>
        <translation>une part de 0 à 100&#xa0;%</translation>
    </message>
    <message>
        <source>Mean of what a logger read on this day (%1)</source>
        <translation>Moyenne de ce qu’un enregistreur a relevé ce jour (%1)</translation>
    </message>
    <message>
        <source>The entry names no stack.</source>
        <translation>L’entrée ne nomme aucune pile.</translation>
    </message>
    <message>
        <source>%1 has never been set up.</source>
        <translation>%1 n’a jamais été installée.</translation>
    </message>
    <message>
        <source>%1 was first set up on %2; nothing can be dated before that.</source>
        <translation>%1 a été installée le %2&#xa0;; rien ne peut être daté d’avant.</translation>
    </message>
    <message>
        <source>%1 has been retired.</source>
        <translation>%1 est arrêtée.</translation>
    </message>
    <message>
        <source>%1 is the name of a retired stack and cannot be used again.</source>
        <translation>%1 est le nom d’une pile arrêtée et ne peut plus servir.</translation>
    </message>
    <message>
        <source>A stack cannot be called «%1»: no semicolon, no control character, and no blank at either end.</source>
        <translation>Une pile ne peut pas s’appeler «&#xa0;%1&#xa0;»&#xa0;: pas de point-virgule, pas de caractère de contrôle, et pas d’espace au début ou à la fin.</translation>
    </message>
    <message>
        <source>%1 has no slot %2 then; trays that stand: %3.</source>
        <translation>%1 n’a pas de niveau %2 à ce moment&#xa0;; plateaux en place&#xa0;: %3.</translation>
    </message>
    <message>
        <source>No tray of %1 is bedded then.</source>
        <translation>Aucun plateau de %1 n’a de litière à ce moment.</translation>
    </message>
    <message>
        <source>The only tray of %1 is drying in the light then.</source>
        <translation>Le seul plateau de %1 sèche à la lumière à ce moment.</translation>
    </message>
    <message>
        <source>%1 has no tray in storage then; trays that stand: %2.</source>
        <translation>%1 n’a pas de plateau rangé à ce moment&#xa0;; plateaux en place&#xa0;: %2.</translation>
    </message>
    <message>
        <source>A rotation needs two trays or more; trays of %1 that stand then: %2.</source>
        <translation>Une rotation demande deux plateaux ou plus&#xa0;; plateaux de %1 en place à ce moment&#xa0;: %2.</translation>
    </message>
    <message>
        <source>No tray of %1 is drying then, so the harvest must say its slot.</source>
        <translation>Aucun plateau de %1 ne sèche à ce moment, la récolte doit donc dire son niveau.</translation>
    </message>
    <message>
        <source>The tray in slot %2 of %1 is not drying then.</source>
        <translation>Le plateau du niveau %2 de %1 ne sèche pas à ce moment.</translation>
    </message>
    <message>
        <source>No tray of %1 is drying then.</source>
        <translation>Aucun plateau de %1 ne sèche à ce moment.</translation>
    </message>
    <message>
        <source>Fewer trays cannot be owned than stand; trays of %1 that stand then: %2.</source>
        <translation>On ne peut pas posséder moins de plateaux qu’il n’y en a en place&#xa0;; plateaux de %1 en place à ce moment&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Worms cannot be moved from %1 to itself.</source>
        <translation>On ne peut pas passer des vers de %1 à elle-même.</translation>
    </message>
    <message>
        <source>The castings cannot be deeper than the tray, %1.</source>
        <translation>Le lombricompost ne peut pas être plus épais que le plateau, %1.</translation>
    </message>
    <message>
        <source>An own material belongs to the household and to no stack.</source>
        <translation>Une matière personnelle appartient au foyer et à aucune pile.</translation>
    </message>
    <message>
        <source>«%1» is known neither to the table of materials nor as an own material.</source>
        <translation>«&#xa0;%1&#xa0;» n’est ni dans la liste des matières ni une matière personnelle.</translation>
    </message>
    <message>
        <source>The entry is not there any more.</source>
        <translation>L’entrée n’est plus là.</translation>
    </message>
    <message>
        <source>Later entries that now fall to another batch: %1</source>
        <translation>Entrées suivantes qui passent maintenant à un autre lot&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: a second species in this stack; from here on all its worms are reckoned as %2, not %3.</source>
        <translation>%1&#xa0;: une deuxième espèce dans cette pile&#xa0;; dès ici tous ses vers sont calculés comme %2, non comme %3.</translation>
    </message>
    <message>
        <source>1 to %1</source>
        <translation>1 à %1</translation>
    </message>
    <message>
        <source>a stack that has been set up (there is none)</source>
        <translation>une pile installée (il n’y en a pas)</translation>
    </message>
    <message>
        <source>a stack that has been set up: %1</source>
        <translation>une pile installée&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 or later, behind the first setup of %2</source>
        <translation>%1 ou plus tard, après la première installation de %2</translation>
    </message>
    <message>
        <source>a stack that is not retired</source>
        <translation>une pile qui n’est pas arrêtée</translation>
    </message>
    <message>
        <source>a name that no retired stack bears</source>
        <translation>un nom qu’aucune pile arrêtée ne porte</translation>
    </message>
    <message>
        <source>a name without semicolon and control characters, without blanks around it</source>
        <translation>un nom sans point-virgule ni caractère de contrôle, sans espaces autour</translation>
    </message>
    <message>
        <source>1 or nothing</source>
        <translation>1 ou rien</translation>
    </message>
    <message>
        <source>1 to %1, or nothing</source>
        <translation>1 à %1, ou rien</translation>
    </message>
    <message>
        <source>none: no tray of %1 is bedded then</source>
        <translation>aucun&#xa0;: aucun plateau de %1 n’a de litière à ce moment</translation>
    </message>
    <message>
        <source>%1, said in full: the only tray is drying</source>
        <translation>%1, dit expressément&#xa0;: le seul plateau sèche</translation>
    </message>
    <message>
        <source>%1: no tray is in storage</source>
        <translation>%1&#xa0;: aucun plateau n’est rangé</translation>
    </message>
    <message>
        <source>%1, said in full: no tray is drying</source>
        <translation>%1, dit expressément&#xa0;: aucun plateau ne sèche</translation>
    </message>
    <message>
        <source>a step that needs no drying tray: %1</source>
        <translation>une étape qui ne demande pas de plateau en séchage&#xa0;: %1</translation>
    </message>
    <message>
        <source>a step that needs no second tray; trays that stand then: %1</source>
        <translation>une étape qui ne demande pas de deuxième plateau&#xa0;; plateaux en place à ce moment&#xa0;: %1</translation>
    </message>
    <message>
        <source>trays=%1 or more: so many stand then</source>
        <translation>trays=%1 ou plus&#xa0;: autant sont en place</translation>
    </message>
    <message>
        <source>to= and the name of another stack</source>
        <translation>to= et le nom d’une autre pile</translation>
    </message>
    <message>
        <source>depth=0 to %1</source>
        <translation>depth=0 à %1</translation>
    </message>
    <message>
        <source>nothing (an own material is of the household)</source>
        <translation>rien (une matière personnelle est au foyer)</translation>
    </message>
    <message>
        <source>an entry that is there</source>
        <translation>une entrée qui existe</translation>
    </message>
    <message>
        <source>%1 has no item</source>
        <translation>%1 n’a pas de matière</translation>
    </message>
    <message>
        <source>the name of an own material, without blanks around it</source>
        <translation>le nom d’une matière personnelle, sans espaces autour</translation>
    </message>
    <message>
        <source>a volume, or spigot=open or spigot=shut in detail</source>
        <translation>un volume, ou spigot=open ou spigot=shut dans le détail</translation>
    </message>
    <message>
        <source>at least one of depth, bits, left, worms</source>
        <translation>au moins un de depth, bits, left, worms</translation>
    </message>
    <message>
        <source>lid=on, lid=off</source>
        <translation>lid=on, lid=off</translation>
    </message>
    <message>
        <source>a word such as smell, flies, mites, escape, mould, away</source>
        <translation>un mot comme smell, flies, mites, escape, mould, away</translation>
    </message>
    <message>
        <source>a day not before the row&apos;s own date</source>
        <translation>un jour qui ne précède pas la date de la ligne</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texte</translation>
    </message>
    <message>
        <source>text without control characters</source>
        <translation>un texte sans caractères de contrôle</translation>
    </message>
    <message>
        <source>%1 is of the whole stack</source>
        <translation>%1 concerne toute la pile</translation>
    </message>
    <message>
        <source>a whole number from 1 (bottom), or nothing</source>
        <translation>un nombre entier à partir de 1 (bas), ou rien</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01T18:30</source>
        <translation>une date de 1900 à 2199, comme 2031-05-01 ou 2031-05-01T18:30</translation>
    </message>
    <message>
        <source>a row that leaves later entries possible; this one stands against entry %1 (%2): %3</source>
        <translation>une ligne qui laisse possibles les entrées suivantes&#xa0;; celle-ci s’oppose à l’entrée %1 (%2)&#xa0;: %3</translation>
    </message>
    <message>
        <source>This is not a table of text: it holds zero bytes. Save it as CSV and try again.</source>
        <translation>Ceci n’est pas un tableau de texte&#xa0;: il contient des octets nuls. L’enregistrer en CSV et réessayer.</translation>
    </message>
    <message>
        <source>The file is empty.</source>
        <translation>Le fichier est vide.</translation>
    </message>
    <message>
        <source>The first row, which names the columns, cannot be read: its quote marks are not in order.</source>
        <translation>La première ligne, qui nomme les colonnes, ne peut pas être lue&#xa0;: ses guillemets ne sont pas en ordre.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 ne peut pas être lu&#xa0;: %2</translation>
    </message>
    <message>
        <source>it is larger than %1 MB.</source>
        <translation>il dépasse %1 Mo.</translation>
    </message>
    <message>
        <source>UTF-8</source>
        <translation>UTF-8</translation>
    </message>
    <message>
        <source>UTF-8 with a mark</source>
        <translation>UTF-8 avec marque</translation>
    </message>
    <message>
        <source>UTF-16</source>
        <translation>UTF-16</translation>
    </message>
    <message>
        <source>not UTF-8, so read as Latin-1</source>
        <translation>pas UTF-8, donc lu comme Latin-1</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>point-virgule</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulation</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>virgule</translation>
    </message>
    <message>
        <source>date</source>
        <translation>date</translation>
    </message>
    <message>
        <source>time of day</source>
        <translation>heure</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>pile</translation>
    </message>
    <message>
        <source>what was done</source>
        <translation>ce qui a été fait</translation>
    </message>
    <message>
        <source>slot</source>
        <translation>niveau</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>quantité</translation>
    </message>
    <message>
        <source>unit</source>
        <translation>unité</translation>
    </message>
    <message>
        <source>material or word</source>
        <translation>matière ou mot</translation>
    </message>
    <message>
        <source>details</source>
        <translation>détails</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>rows that leave the entries of the journal possible</source>
        <translation>des lignes qui laissent possibles les entrées du journal</translation>
    </message>
    <message>
        <source>line</source>
        <translation>ligne</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>raison</translation>
    </message>
    <message>
        <source>%1 cells, as the first row has; there are %2</source>
        <translation>%1 cellules, comme la première ligne&#xa0;; il y en a %2</translation>
    </message>
    <message>
        <source>a year of four digits, or the answer which century is meant</source>
        <translation>une année à quatre chiffres, ou la réponse sur le siècle voulu</translation>
    </message>
    <message>
        <source>a date that can be read in one way alone, or the answer which of day and month comes first</source>
        <translation>une date lisible d’une seule façon, ou la réponse sur l’ordre du jour et du mois</translation>
    </message>
    <message>
        <source>a date from 1900 to 2199, such as 2031-05-01 or 2031-05-01 18:30</source>
        <translation>une date de 1900 à 2199, comme 2031-05-01 ou 2031-05-01 18:30</translation>
    </message>
    <message>
        <source>the answer whether its mark is a decimal mark</source>
        <translation>la réponse si son signe est le signe décimal</translation>
    </message>
    <message>
        <source>a number with a comma as decimal mark, such as 0,35</source>
        <translation>un nombre à virgule décimale, comme 0,35</translation>
    </message>
    <message>
        <source>a number with a point as decimal mark, such as 0.35</source>
        <translation>un nombre à point décimal, comme 0.35</translation>
    </message>
    <message>
        <source>a unit, or the answer in which unit the amounts are</source>
        <translation>une unité, ou la réponse sur l’unité des quantités</translation>
    </message>
    <message>
        <source>a number, such as 0.35</source>
        <translation>un nombre, comme 0.35</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. What was there before is unchanged.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: %2. Ce qui s’y trouvait avant est inchangé.</translation>
    </message>
    <message>
        <source>%1 was written, but the disk did not confirm it.</source>
        <translation>%1 a été écrit, mais le disque ne l’a pas confirmé.</translation>
    </message>
    <message>
        <source>at least one of bin, air, rh, moisture, squeeze, ph, sump</source>
        <translation>au moins un parmi bin, air, rh, moisture, squeeze, ph, sump</translation>
    </message>
    <message>
        <source>%1 is a household file or another database, and was left as it is. Choose another name.</source>
        <translation>%1 est un fichier de foyer ou une autre base de données, et est resté tel quel. Choisir un autre nom.</translation>
    </message>
    <message>
        <source>an amount, which is missing</source>
        <translation>une quantité&#xa0;; elle manque</translation>
    </message>
    <message>
        <source>«%1» of %2</source>
        <translation>«%1» du %2</translation>
    </message>
    <message>
        <source>«%1» of %2, %3</source>
        <translation>«%1» du %2, %3</translation>
    </message>
    <message>
        <source>%1 would not be possible any more: %2 Delete or change that entry first.</source>
        <translation>%1 ne serait plus possible&#xa0;: %2 Supprimer ou modifier d’abord cette entrée.</translation>
    </message>
    <message>
        <source>today or a day before: this day has not come</source>
        <translation>aujourd’hui ou un jour d’avant&#xa0;: ce jour n’est pas encore venu</translation>
    </message>
    <message>
        <source>Taken as usual, since the imported table does not say it; put right what was otherwise</source>
        <translation>Pris comme d’habitude, le tableau importé ne le disant pas&#xa0;; corriger ce qui était autrement</translation>
    </message>
    <message>
        <source>text in UTF-8; this may be Latin-1</source>
        <translation>un texte en UTF-8&#xa0;; ceci est peut-être du Latin-1</translation>
    </message>
    <message>
        <source>text in UTF-16</source>
        <translation>un texte en UTF-16</translation>
    </message>
    <message>
        <source>cells parted by commas (,); in this file semicolons (;) part them</source>
        <translation>des cellules séparées par des virgules (,)&#xa0;; dans ce fichier ce sont des points-virgules (;)</translation>
    </message>
    <message>
        <source>cells parted by commas (,); in this file tabs part them</source>
        <translation>des cellules séparées par des virgules (,)&#xa0;; dans ce fichier ce sont des tabulations</translation>
    </message>
    <message>
        <source>a header with %1 as the first row; this one is an entry</source>
        <translation>un en-tête avec %1 en première ligne&#xa0;; celle-ci est une entrée</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
</context>
<context>
    <name>FeedBody</name>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>How much was fed?</source>
        <translation>Combien de nourriture&#xa0;?</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Nourriture</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>front</source>
        <translation>devant</translation>
    </message>
    <message>
        <source>back</source>
        <translation>derrière</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>partout</translation>
    </message>
    <message>
        <source>Covered with paper</source>
        <translation>Couvert de papier</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Couverture</translation>
    </message>
    <message>
        <source>How much paper?</source>
        <translation>Combien de papier&#xa0;?</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>about %1 by its bulk</source>
        <translation>environ %1 d’après sa densité</translation>
    </message>
</context>
<context>
    <name>FigureWords</name>
    <message>
        <source>%1 to %2</source>
        <comment>a range of numbers</comment>
        <translation>%1 à %2</translation>
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
        <translation>un jour</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 jours</translation>
    </message>
    <message>
        <source>%1 months</source>
        <translation>%1 mois</translation>
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
        <translation>publié</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>de seconde main</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>mémoire</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>pratique courante</translation>
    </message>
    <message>
        <source>ours</source>
        <translation>nôtre</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>Worms for a first tray</source>
        <translation>Vers pour un premier plateau</translation>
    </message>
    <message>
        <source>Bedding of a new tray, laid</source>
        <translation>Litière d’un nouveau plateau, posée</translation>
    </message>
    <message>
        <source>Days between feedings</source>
        <translation>Jours entre les apports</translation>
    </message>
    <message>
        <source>Fresh food a day, of the mass of the worms</source>
        <translation>Nourriture fraîche par jour, par rapport à la masse des vers</translation>
    </message>
    <message>
        <source>First tray alone</source>
        <translation>Premier plateau seul</translation>
    </message>
    <message>
        <source>Castings before another tray</source>
        <translation>Lombricompost avant un autre plateau</translation>
    </message>
    <message>
        <source>Second tray alone on top, at least</source>
        <translation>Deuxième plateau seul en haut, au moins</translation>
    </message>
    <message>
        <source>First harvest, days from the first bedding</source>
        <translation>Première récolte, jours depuis la première litière</translation>
    </message>
    <message>
        <source>Between later harvests</source>
        <translation>Entre les récoltes suivantes</translation>
    </message>
    <message>
        <source>Water to paper, by weight</source>
        <translation>Eau pour le papier, en poids</translation>
    </message>
    <message>
        <source>Bedding wetted, of what it holds</source>
        <translation>Litière humidifiée, de ce qu’elle retient</translation>
    </message>
    <message>
        <source>Moisture of a bed</source>
        <translation>Humidité d’un lit</translation>
    </message>
    <message>
        <source>Moisture of a bed, best</source>
        <translation>Humidité d’un lit, la meilleure</translation>
    </message>
    <message>
        <source>C:N of what is fed</source>
        <translation>C:N de ce qui est donné</translation>
    </message>
    <message>
        <source>C:N aimed at</source>
        <translation>C:N visé</translation>
    </message>
    <message>
        <source>Comfortable temperatures</source>
        <translation>Températures confortables</translation>
    </message>
    <message>
        <source>Growth stops below</source>
        <translation>La croissance s’arrête sous</translation>
    </message>
    <message>
        <source>Growth is fastest at</source>
        <translation>La croissance est la plus rapide à</translation>
    </message>
    <message>
        <source>Growth stops above</source>
        <translation>La croissance s’arrête au-dessus de</translation>
    </message>
    <message>
        <source>Worms die of heat from</source>
        <translation>Les vers meurent de chaleur à partir de</translation>
    </message>
    <message>
        <source>Worms die of cold near</source>
        <translation>Les vers meurent de froid près de</translation>
    </message>
    <message>
        <source>Weight of a litre of moist castings</source>
        <translation>Poids d’un litre de lombricompost humide</translation>
    </message>
    <message>
        <source>Worms on a floor, best</source>
        <translation>Vers par surface, le mieux</translation>
    </message>
    <message>
        <source>Ready: feed-to-cast at most</source>
        <translation>Prêt&#xa0;: aliment/compost au plus</translation>
    </message>
    <message>
        <source>Ready: castings at least</source>
        <translation>Prêt&#xa0;: lombricompost au moins</translation>
    </message>
    <message>
        <source>Nearly ready: feed-to-cast at most</source>
        <translation>Presque prêt&#xa0;: aliment/compost au plus</translation>
    </message>
    <message>
        <source>Filled: castings at least</source>
        <translation>Rempli&#xa0;: lombricompost au moins</translation>
    </message>
    <message>
        <source>Filled: feed-to-cast at most</source>
        <translation>Rempli&#xa0;: aliment/compost au plus</translation>
    </message>
    <message>
        <source>Room kept under the rim</source>
        <translation>Espace gardé sous le bord</translation>
    </message>
    <message>
        <source>Overdue after turn and ready</source>
        <translation>En retard, une fois prêt et à son tour, après</translation>
    </message>
    <message>
        <source>A tray is told ready at a chance of</source>
        <translation>Un plateau est dit prêt à une probabilité de</translation>
    </message>
    <message>
        <source>and no longer at</source>
        <translation>et ne l’est plus à</translation>
    </message>
    <message>
        <source>Light-drying</source>
        <translation>Séchage à la lumière</translation>
    </message>
    <message>
        <source>Worms left when castings are taken</source>
        <translation>Vers restants au prélèvement du lombricompost</translation>
    </message>
    <message>
        <source>Worms in the sump</source>
        <translation>Vers dans le bac</translation>
    </message>
    <message>
        <source>Days between drainings</source>
        <translation>Jours entre les vidanges</translation>
    </message>
    <message>
        <source>Drain before the sump is filled to</source>
        <translation>Vidanger avant que le bac soit rempli à</translation>
    </message>
    <message>
        <source>A stack can be left alone for</source>
        <translation>Une pile peut rester seule</translation>
    </message>
    <message>
        <source>Of a colony given away at once, at most</source>
        <translation>D’une colonie, donné en une fois, au plus</translation>
    </message>
    <message>
        <source>A colony doubles in</source>
        <translation>Une colonie double en</translation>
    </message>
    <message>
        <source>Dry matter put in for one of castings</source>
        <translation>Matière sèche apportée pour une de lombricompost</translation>
    </message>
    <message>
        <source>Cocoons of a worm in a week</source>
        <translation>Cocons d’un ver par semaine</translation>
    </message>
    <message>
        <source>A cocoon hatches after</source>
        <translation>Un cocon éclot après</translation>
    </message>
    <message>
        <source>Young of a cocoon</source>
        <translation>Jeunes par cocon</translation>
    </message>
    <message>
        <source>Second light-drying after</source>
        <translation>Second séchage à la lumière après</translation>
    </message>
    <message>
        <source>A bait tray stands for</source>
        <translation>Un plateau-appât reste en place</translation>
    </message>
    <message>
        <source>Castings in a potting mix, by volume</source>
        <translation>Lombricompost dans un terreau, en volume</translation>
    </message>
    <message>
        <source>Castings in a potting mix, at most</source>
        <translation>Lombricompost dans un terreau, au plus</translation>
    </message>
    <message>
        <source>Depth of a top-dressing</source>
        <translation>Épaisseur d’un surfaçage</translation>
    </message>
    <message>
        <source>Top-dressing again after</source>
        <translation>Nouveau surfaçage après</translation>
    </message>
    <message>
        <source>Mesh of a sieve</source>
        <translation>Maille d’un tamis</translation>
    </message>
    <message>
        <source>Moisture of stored castings</source>
        <translation>Humidité du lombricompost gardé</translation>
    </message>
    <message>
        <source>Castings keep for</source>
        <translation>Le lombricompost se garde</translation>
    </message>
    <message>
        <source>Bulk of castings, dry</source>
        <translation>Densité du lombricompost, sec</translation>
    </message>
    <message>
        <source>Moisture of castings as taken</source>
        <translation>Humidité du lombricompost au prélèvement</translation>
    </message>
    <message>
        <source>Strength of leachate</source>
        <translation>Force du lixiviat</translation>
    </message>
    <message>
        <source>Strength harmless to worms</source>
        <translation>Force sans danger pour les vers</translation>
    </message>
    <message>
        <source>Strength harmful to worms</source>
        <translation>Force nocive pour les vers</translation>
    </message>
    <message>
        <source>Salts for each mS/cm</source>
        <translation>Sels par mS/cm</translation>
    </message>
    <message>
        <source>Diluted for young plants</source>
        <translation>Dilué pour jeunes plantes</translation>
    </message>
    <message>
        <source>Diluted for grown plants</source>
        <translation>Dilué pour plantes adultes</translation>
    </message>
    <message>
        <source>Strength of tap water</source>
        <translation>Force de l’eau du robinet</translation>
    </message>
    <message>
        <source>Use leachate within</source>
        <translation>Utiliser le lixiviat sous</translation>
    </message>
    <message>
        <source>Lifting: weight at the best posture</source>
        <translation>Soulever&#xa0;: poids dans la meilleure posture</translation>
    </message>
    <message>
        <source>Lifting: reach of the best posture</source>
        <translation>Soulever&#xa0;: portée de la meilleure posture</translation>
    </message>
    <message>
        <source>Lifting: farthest reach</source>
        <translation>Soulever&#xa0;: portée la plus grande</translation>
    </message>
    <message>
        <source>Lifting: height of the best posture</source>
        <translation>Soulever&#xa0;: hauteur de la meilleure posture</translation>
    </message>
    <message>
        <source>Lifting: lost for each cm of height beside it</source>
        <translation>Soulever&#xa0;: perte par cm de hauteur à l’écart de celle-ci</translation>
    </message>
    <message>
        <source>Lifting: greatest height</source>
        <translation>Soulever&#xa0;: hauteur la plus grande</translation>
    </message>
    <message>
        <source>Lifting: least travel reckoned</source>
        <translation>Soulever&#xa0;: plus petit trajet compté</translation>
    </message>
    <message>
        <source>Lifting: share that travel leaves</source>
        <translation>Soulever&#xa0;: part que laisse le trajet</translation>
    </message>
    <message>
        <source>Lifting: travel at which the rest is lost</source>
        <translation>Soulever&#xa0;: trajet où le reste est perdu</translation>
    </message>
    <message>
        <source>Lifting: farthest travel</source>
        <translation>Soulever&#xa0;: trajet le plus grand</translation>
    </message>
    <message>
        <source>Lifting: lost for each degree of twist</source>
        <translation>Soulever&#xa0;: perte par degré de rotation</translation>
    </message>
    <message>
        <source>Lifting: greatest twist</source>
        <translation>Soulever&#xa0;: rotation la plus grande</translation>
    </message>
    <message>
        <source>Lifting: a rim for a grip, held low</source>
        <translation>Soulever&#xa0;: un bord comme prise, tenu bas</translation>
    </message>
    <message>
        <source>Lifting: a poor grip</source>
        <translation>Soulever&#xa0;: une mauvaise prise</translation>
    </message>
    <message>
        <source>Lifting: from the ankles to a box</source>
        <translation>Soulever&#xa0;: des chevilles à une caisse</translation>
    </message>
    <message>
        <source>Weight of an empty tray</source>
        <translation>Poids d’un plateau vide</translation>
    </message>
    <message>
        <source>Sour below a pH of</source>
        <translation>Acide sous un pH de</translation>
    </message>
    <message>
        <source>Calcium carbonate for a sour bed, on a square metre</source>
        <translation>Carbonate de calcium pour un lit acide, par mètre carré</translation>
    </message>
    <message>
        <source>From egg to fly</source>
        <translation>De l’œuf à la mouche</translation>
    </message>
    <message>
        <source>Members of the ensemble</source>
        <translation>Membres de l’ensemble</translation>
    </message>
    <message>
        <source>Share of what is possible that a range holds</source>
        <translation>Part du possible que contient une plage</translation>
    </message>
    <message>
        <source>Time in which parameters go back to their ranges</source>
        <translation>Temps en lequel les paramètres reviennent à leurs plages</translation>
    </message>
    <message>
        <source>How fast a mix softens: temperature of the bed</source>
        <translation>Vitesse de ramollissement d’un mélange : température du lit</translation>
    </message>
    <message>
        <source>How fast a mix softens: worms in the bed</source>
        <translation>Vitesse de ramollissement d’un mélange : vers dans le lit</translation>
    </message>
    <message>
        <source>Mix: moisture this near to the aim will do</source>
        <translation>Mélange : humidité assez proche de l’objectif</translation>
    </message>
    <message>
        <source>Mix: most that is added, times the mix</source>
        <translation>Mélange : ajout maximal, en fois le mélange</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: indoors</source>
        <translation>Un lit au fil de l’année, tel que proposé&#xa0;: à l’intérieur</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: garage, shed or porch</source>
        <translation>Un lit au fil de l’année, tel que proposé&#xa0;: garage, remise ou véranda</translation>
    </message>
    <message>
        <source>A bed through the year, as proposed: outdoors</source>
        <translation>Un lit au fil de l’année, tel que proposé&#xa0;: à l’extérieur</translation>
    </message>
</context>
<context>
    <name>FlushBody</name>
    <message>
        <source>Water poured</source>
        <translation>Eau versée</translation>
    </message>
    <message>
        <source>How much water went through?</source>
        <translation>Combien d’eau a traversé&#xa0;?</translation>
    </message>
    <message>
        <source>spigot shut, water through, everything drained at once</source>
        <translation>robinet fermé, eau au travers, tout vidangé d’un coup</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Vidangé</translation>
    </message>
</context>
<context>
    <name>FoodDoubt</name>
    <message>
        <source>That is %1, and the stack takes no more food today, for what was given these days: it takes more within the week.</source>
        <translation>Cela fait %1, et la pile ne supporte plus de nourriture aujourd’hui, vu ce qu’elle a reçu ces jours-ci&#xa0;: elle en supportera d’ici une semaine.</translation>
    </message>
    <message>
        <source>That is %1, and the stack takes no more food this week.</source>
        <translation>Cela fait %1, et la pile ne supporte plus de nourriture cette semaine.</translation>
    </message>
    <message>
        <source>That is %1. The stack takes at most %2 today, for what was given these days: more within the week.</source>
        <translation>Cela fait %1. La pile supporte au plus %2 aujourd’hui, vu ce qu’elle a reçu ces jours-ci&#xa0;: davantage d’ici une semaine.</translation>
    </message>
    <message>
        <source>That is %1. The stack takes at most %2 this week.</source>
        <translation>Cela fait %1. La pile supporte au plus %2 cette semaine.</translation>
    </message>
    <message>
        <source>That is %1, and nothing more finds room in the tray: look at the amount and its unit.</source>
        <translation>Cela fait %1, et plus rien n’entre dans le plateau&#xa0;: vérifier la quantité et son unité.</translation>
    </message>
    <message>
        <source>That is %1. Only about %2 find room in the tray, which holds %3 in all: look at the amount and its unit.</source>
        <translation>Cela fait %1. Seuls %2 environ entrent dans le plateau, qui contient %3 en tout&#xa0;: vérifier la quantité et son unité.</translation>
    </message>
    <message>
        <source>By the estimates food is better left out now. %1</source>
        <translation>D’après les estimations, mieux vaut ne pas nourrir maintenant. %1</translation>
    </message>
</context>
<context>
    <name>FormKinds</name>
    <message>
        <source>Feed</source>
        <translation>Nourrir</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Couvrir</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Arroser</translation>
    </message>
    <message>
        <source>Unwritten routine</source>
        <translation>Habitude non notée</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Vidanger</translation>
    </message>
    <message>
        <source>Flush</source>
        <translation>Rincer</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Check a tray</source>
        <translation>Regarder un plateau</translation>
    </message>
    <message>
        <source>Weigh worms</source>
        <translation>Peser des vers</translation>
    </message>
    <message>
        <source>Count worms</source>
        <translation>Compter des vers</translation>
    </message>
    <message>
        <source>Weigh a tray</source>
        <translation>Peser un plateau</translation>
    </message>
    <message>
        <source>Lift the bottom tray</source>
        <translation>Monter le plateau du bas</translation>
    </message>
    <message>
        <source>Loosen the castings</source>
        <translation>Aérer le lombricompost</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Couvercle</translation>
    </message>
    <message>
        <source>Harvest</source>
        <translation>Récolte</translation>
    </message>
    <message>
        <source>Add a tray</source>
        <translation>Ajouter un plateau</translation>
    </message>
    <message>
        <source>Add bedding</source>
        <translation>Ajouter de la litière</translation>
    </message>
    <message>
        <source>Put worms in</source>
        <translation>Mettre des vers</translation>
    </message>
    <message>
        <source>Take worms out</source>
        <translation>Retirer des vers</translation>
    </message>
    <message>
        <source>Move worms</source>
        <translation>Passer des vers</translation>
    </message>
    <message>
        <source>Something happened</source>
        <translation>Quelque chose s’est passé</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Retire the stack</source>
        <translation>Arrêter la pile</translation>
    </message>
    <message>
        <source>Change the stack</source>
        <translation>Modifier la pile</translation>
    </message>
    <message>
        <source>Own material</source>
        <translation>Matière personnelle</translation>
    </message>
    <message>
        <source>feeding</source>
        <translation>apport</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>couverture</translation>
    </message>
    <message>
        <source>watering</source>
        <translation>arrosage</translation>
    </message>
    <message>
        <source>routine</source>
        <translation>habitude</translation>
    </message>
    <message>
        <source>drainage</source>
        <translation>vidange</translation>
    </message>
    <message>
        <source>flush</source>
        <translation>rinçage</translation>
    </message>
    <message>
        <source>reading</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>look into a tray</source>
        <translation>regard dans un plateau</translation>
    </message>
    <message>
        <source>weighing of worms</source>
        <translation>pesée de vers</translation>
    </message>
    <message>
        <source>count of worms</source>
        <translation>comptage de vers</translation>
    </message>
    <message>
        <source>weight of a tray</source>
        <translation>poids d’un plateau</translation>
    </message>
    <message>
        <source>lift of the bottom tray</source>
        <translation>montée du plateau du bas</translation>
    </message>
    <message>
        <source>loosening</source>
        <translation>aération</translation>
    </message>
    <message>
        <source>lid</source>
        <translation>couvercle</translation>
    </message>
    <message>
        <source>harvest</source>
        <translation>récolte</translation>
    </message>
    <message>
        <source>new tray</source>
        <translation>nouveau plateau</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>litière</translation>
    </message>
    <message>
        <source>worms put in</source>
        <translation>vers mis</translation>
    </message>
    <message>
        <source>worms taken out</source>
        <translation>vers retirés</translation>
    </message>
    <message>
        <source>worms moved</source>
        <translation>vers passés</translation>
    </message>
    <message>
        <source>event</source>
        <translation>événement</translation>
    </message>
    <message>
        <source>note</source>
        <translation>note</translation>
    </message>
    <message>
        <source>end of the stack</source>
        <translation>fin de la pile</translation>
    </message>
    <message>
        <source>change of the stack</source>
        <translation>modification de la pile</translation>
    </message>
    <message>
        <source>own material</source>
        <translation>matière personnelle</translation>
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
        <translation>%1 sur %2</translation>
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
        <translation>pas encore de lombricompost</translation>
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
        <translation>oz/j</translation>
    </message>
    <message>
        <source>g/d</source>
        <translation>g/j</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, one of it</comment>
        <translation>tasse</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, behind 0.5 or 1.75</comment>
        <translation>tasse</translation>
    </message>
    <message>
        <source>cup</source>
        <comment>unit of volume, behind 2 and more</comment>
        <translation>tasses</translation>
    </message>
</context>
<context>
    <name>GainWords</name>
    <message>
        <source>%1 sooner</source>
        <translation>%1 plus tôt</translation>
    </message>
    <message>
        <source>%1 later</source>
        <translation>%1 plus tard</translation>
    </message>
    <message>
        <source>%1 heavier</source>
        <translation>%1 plus lourde</translation>
    </message>
    <message>
        <source>%1 lighter</source>
        <translation>%1 plus légère</translation>
    </message>
    <message>
        <source>%1 (up to %2)</source>
        <comment>no difference, 3 days sooner</comment>
        <translation>%1 (jusqu’à %2)</translation>
    </message>
    <message>
        <source>%1 (from %2 to %3)</source>
        <comment>3 days sooner, 1 day later, 9 days sooner</comment>
        <translation>%1 (de %2 à %3)</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <comment>10 g lighter, 30 g heavier</comment>
        <translation>de %1 à %2</translation>
    </message>
    <message>
        <source>waiting costs %1 of worms</source>
        <translation>l’attente coûte %1 de vers</translation>
    </message>
    <message>
        <source>waiting leaves %1 more of worms</source>
        <translation>l’attente laisse %1 de vers en plus</translation>
    </message>
    <message>
        <source>from %1 more to %2 fewer</source>
        <comment>amounts of worms</comment>
        <translation>de %1 en plus à %2 en moins</translation>
    </message>
    <message>
        <source>waiting costs %1 of worms (%2)</source>
        <comment>amount, range in words</comment>
        <translation>l’attente coûte %1 de vers (%2)</translation>
    </message>
    <message>
        <source>waiting leaves %1 more of worms (%2)</source>
        <comment>amount, range in words</comment>
        <translation>l’attente laisse %1 de vers en plus (%2)</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of lifting fewer</source>
        <translation>
            <numerusform>%n jour de levage en moins</numerusform>
            <numerusform>%n jours de levage en moins</numerusform>
        </translation>
    </message>
    <message>
        <source>Gathered: %1, for %2 of delay in all; none waits more than %3 for others.</source>
        <translation>Regroupé&#xa0;: %1, pour %2 de retard en tout&#xa0;; aucune n’attend les autres plus de %3.</translation>
    </message>
    <message>
        <source>Gathered: %1, and none waits.</source>
        <translation>Regroupé&#xa0;: %1, et aucune n’attend.</translation>
    </message>
    <message>
        <source>Nothing can be gathered: harvests of two stacks meet, and only one stack has any.</source>
        <translation>Rien à regrouper&#xa0;: il faut des récoltes de deux piles, et une seule en a.</translation>
    </message>
    <message>
        <source>Nothing is left to be gathered: the harvests meet as they come.</source>
        <translation>Il ne reste rien à regrouper&#xa0;: les récoltes tombent déjà ensemble.</translation>
    </message>
    <message>
        <source>Nothing can be gathered: the two harvests that come nearest to each other are %1 apart, and none may wait more than %2.</source>
        <translation>Rien à regrouper&#xa0;: les deux récoltes les plus proches sont à %1 l’une de l’autre, et aucune ne peut attendre plus de %2.</translation>
    </message>
    <message>
        <source>Nothing is gathered: a day saved is worth %1 of delay here, and the wait, with what it holds up in its stack, would come to more.</source>
        <translation>Rien n’est regroupé&#xa0;: un jour épargné vaut ici %1 de retard, et l’attente, avec tout ce qu’elle retarde dans sa pile, en coûterait davantage.</translation>
    </message>
</context>
<context>
    <name>Handbook</name>
    <message>
        <source>A stack is a pile of trays with holes in their floors, over a drainage tray, under a lid. Worms live in all of it. You feed the highest tray; what they have eaten stays behind as castings; when the top tray holds mostly castings, the next tray goes on top, and when there is no tray left, the bottom one is emptied.</source>
        <translation>Une pile est un empilement de plateaux au fond troué, sur un plateau de drainage, sous un couvercle. Les vers vivent partout dedans. On nourrit le plateau le plus haut&#xa0;; ce qu’ils ont mangé reste sous forme de lombricompost&#xa0;; quand le plateau du haut contient surtout du lombricompost, le plateau suivant se pose dessus, et quand il ne reste plus de plateau, celui du bas est vidé.</translation>
    </message>
    <message>
        <source>Everything else follows from one rule: nobody can see inside a tray. What is known is what went in, what ran out and a look now and then. Write these down, and the program says how far each tray is, and how sure it is.</source>
        <translation>Tout le reste découle d’une règle&#xa0;: personne ne voit dans un plateau. Ce qu’on sait, c’est ce qui est entré, ce qui a coulé, et un regard de temps en temps. Notez-le, et le programme dit où en est chaque plateau, et avec quelle certitude.</translation>
    </message>
    <message>
        <source>Where to go from here</source>
        <translation>Où aller ensuite</translation>
    </message>
    <message>
        <source>You have no stack yet: [[start|starting a stack]].</source>
        <translation>Vous n’avez pas encore de pile&#xa0;: [[start|démarrer une pile]].</translation>
    </message>
    <message>
        <source>You have one, and wonder what to do: [[feeding|feeding]], [[bedding|bedding]], [[water|water and drainage]].</source>
        <translation>Vous en avez une et vous demandez quoi faire&#xa0;: [[feeding|nourrir]], [[bedding|litière]], [[water|eau et drainage]].</translation>
    </message>
    <message>
        <source>A tray looks full: [[add-tray|when to add a tray]], [[harvest|rotation and harvest]], [[use|using castings and leachate]].</source>
        <translation>Un plateau a l’air plein&#xa0;: [[add-tray|quand ajouter un plateau]], [[harvest|rotation et récolte]], [[use|utiliser le lombricompost et le lixiviat]].</translation>
    </message>
    <message>
        <source>Something smells, flies or dies: [[symptoms|what may be wrong]], put in order by what is known of your stack.</source>
        <translation>Quelque chose sent, vole ou meurt&#xa0;: [[symptoms|ce qui peut ne pas aller]], classé d’après ce qu’on sait de votre pile.</translation>
    </message>
    <message>
        <source>You want to know how the estimates are made: [[inside|what is inside the model]].</source>
        <translation>Vous voulez savoir comment se font les estimations&#xa0;: [[inside|ce qu’il y a dans le modèle]].</translation>
    </message>
    <message>
        <source>A first tray, some bedding and a few handfuls of worms are enough. Begin with one tray alone; the others wait.</source>
        <translation>Un premier plateau, un peu de litière et quelques poignées de vers suffisent. Commencez avec un seul plateau&#xa0;; les autres attendent.</translation>
    </message>
    <message>
        <source>Stand the drainage tray level, with one tray on it. Leave the spigot open over a jar, or shut it and look at it each week.</source>
        <translation>Poser le plateau de drainage bien à plat, avec un plateau dessus. Laisser le robinet ouvert au-dessus d’un bocal, ou le fermer et le regarder chaque semaine.</translation>
    </message>
    <message>
        <source>Lay bedding {bedding-depth} deep, wetted like a wrung-out sponge. [[bedding|How much that is]].</source>
        <translation>Poser de la litière sur {bedding-depth}, humidifiée comme une éponge essorée. [[bedding|Combien cela fait]].</translation>
    </message>
    <message>
        <source>Put in {stock} of composting worms. They go down by themselves when it is light.</source>
        <translation>Mettre {stock} de vers de compost. Ils descendent d’eux-mêmes quand il fait clair.</translation>
    </message>
    <message>
        <source>Feed a little after a day or two, under paper. Close the lid.</source>
        <translation>Nourrir un peu après un jour ou deux, sous du papier. Fermer le couvercle.</translation>
    </message>
    <message>
        <source>A small stock is no mistake. Everything takes longer: the first tray stays alone for {first-tray-alone}, and with few worms nearer to the end of that.</source>
        <translation>Commencer avec peu de vers n’est pas une erreur. Tout prend plus de temps&#xa0;: le premier plateau reste seul {first-tray-alone}, et avec peu de vers plus près de la fin de ce délai.</translation>
    </message>
    <message>
        <source>The first weeks</source>
        <translation>Les premières semaines</translation>
    </message>
    <message>
        <source>Some worms climb the walls in the first nights. Leave a light on and the lid closed; they settle.</source>
        <translation>Quelques vers grimpent aux parois les premières nuits. Laisser une lampe allumée et le couvercle fermé&#xa0;; ils s’installent.</translation>
    </message>
    <message>
        <source>Nothing much seems to happen. Food has to soften before worms can eat it, and it softens faster the more worms there are.</source>
        <translation>Il ne semble pas se passer grand-chose. La nourriture doit ramollir avant que les vers puissent la manger, et elle ramollit d’autant plus vite qu’ils sont nombreux.</translation>
    </message>
    <message>
        <source>Bits of bedding stay visible for months. That is how it should be.</source>
        <translation>Des morceaux de litière restent visibles pendant des mois. C’est normal.</translation>
    </message>
    <message>
        <source>Feed every {feed-every} or so, in the highest tray, no more than is nearly gone by the next time. Cover each feeding with paper.</source>
        <translation>Nourrir tous les {feed-every} environ, dans le plateau le plus haut, pas plus que ce qui aura presque disparu la fois suivante. Couvrir chaque apport de papier.</translation>
    </message>
    <message>
        <source>Composting worms eat about {feed-share} of their own mass of fresh food a day when they have time to get at it. A new stack eats less: the colony is small, and what it eats has to soften first. The program reckons from your journal what each stack can take this week.</source>
        <translation>Les vers de compost mangent par jour environ {feed-share} de leur propre masse de nourriture fraîche, quand ils ont le temps de l’atteindre. Une pile neuve mange moins&#xa0;: la colonie est petite, et ce qu’elle mange doit d’abord ramollir. Le programme calcule d’après votre journal ce que chaque pile peut prendre cette semaine.</translation>
    </message>
    <message>
        <source>How to feed</source>
        <translation>Comment nourrir</translation>
    </message>
    <message>
        <source>Lift the paper and look. If most of the last feeding still lies there, wait.</source>
        <translation>Soulever le papier et regarder. S’il reste presque tout le dernier apport, attendre.</translation>
    </message>
    <message>
        <source>Put the food in one place, in a flat layer, and change the side from time to time.</source>
        <translation>Mettre la nourriture à un seul endroit, en couche plate, et changer de côté de temps en temps.</translation>
    </message>
    <message>
        <source>Cover it with a sheet or a handful of shredded paper. It keeps flies out, takes up wet and gives carbon.</source>
        <translation>La couvrir d’une feuille ou d’une poignée de papier déchiqueté. Il éloigne les mouches, absorbe l’eau et donne du carbone.</translation>
    </message>
    <message>
        <source>Write it down: one click on Feed takes the usual amount, for today.</source>
        <translation>Le noter&#xa0;: un clic sur Nourrir note la quantité habituelle, pour aujourd’hui.</translation>
    </message>
    <message>
        <source>What to feed</source>
        <translation>Que donner</translation>
    </message>
    <message>
        <source>Vegetable and fruit scraps, coffee grounds, tea leaves, crushed eggshell. Cut or frozen and thawed scraps soften faster. The whole list, each with its reason, is on the Materials page.</source>
        <translation>Restes de légumes et de fruits, marc de café, feuilles de thé, coquilles d’œuf écrasées. Coupés, ou congelés puis décongelés, les restes ramollissent plus vite. La liste entière, avec chaque raison, est à la page Matières.</translation>
    </message>
    <message>
        <source>Too much food harms in three ways: it takes the air while it rots, it heats, and it sinks together and holds water. A stack that was fed too little loses nothing but time.</source>
        <translation>Trop de nourriture nuit de trois façons&#xa0;: elle prend l’air en pourrissant, elle chauffe, et elle se tasse et retient l’eau. Une pile trop peu nourrie ne perd que du temps.</translation>
    </message>
    <message>
        <source>A bed gone sour (a sharp smell, pH below {sour-below}): stop feeding, loosen it, and strew {lime} of calcium carbonate or crushed eggshell over a square metre, once.</source>
        <translation>Un lit devenu acide (odeur piquante, pH sous {sour-below})&#xa0;: cesser de nourrir, l’aérer, et répandre une fois {lime} de carbonate de calcium ou de coquilles d’œuf écrasées par mètre carré.</translation>
    </message>
    <message>
        <source>Bedding is the house of the worms and half of their food: shredded cardboard or paper, leaves, coir, shavings. A new tray takes a layer of {bedding-depth}.</source>
        <translation>La litière est la maison des vers et la moitié de leur nourriture&#xa0;: carton ou papier déchiqueté, feuilles, fibre de coco, copeaux. Un nouveau plateau en reçoit une couche de {bedding-depth}.</translation>
    </message>
    <message>
        <source>Shred it to finger width; whole sheets lie like a roof and let nothing through.</source>
        <translation>La déchirer à la largeur d’un doigt&#xa0;; des feuilles entières font un toit et ne laissent rien passer.</translation>
    </message>
    <message>
        <source>Wet it until a handful, pressed hard, gives a few drops. Paper takes about {paper-water} of water by weight.</source>
        <translation>L’humidifier jusqu’à ce qu’une poignée, pressée fort, donne quelques gouttes. Le papier prend environ {paper-water} d’eau en poids.</translation>
    </message>
    <message>
        <source>Lay it loosely. It settles to half its height in a week.</source>
        <translation>La poser sans tasser. Elle s’affaisse de moitié en une semaine.</translation>
    </message>
    <message>
        <source>The Materials page reckons from floor and depth how much dry bedding and how many litres of water that is, for a tray of your stack.</source>
        <translation>La page Matières calcule, d’après la surface et l’épaisseur, combien de litière sèche et de litres d’eau il faut pour un plateau de votre pile.</translation>
    </message>
    <message>
        <source>Which one</source>
        <translation>Laquelle</translation>
    </message>
    <message>
        <source>Cardboard and paper soften within months and turn into castings.</source>
        <translation>Le carton et le papier ramollissent en quelques mois et deviennent lombricompost.</translation>
    </message>
    <message>
        <source>Leaves, straw: much the same, and they bring life of their own.</source>
        <translation>Feuilles, paille&#xa0;: à peu près pareil, et elles apportent leur propre vie.</translation>
    </message>
    <message>
        <source>Coir and shavings hold air and water, and most of them stay: use them as they are or sift them out.</source>
        <translation>La fibre de coco et les copeaux gardent l’air et l’eau, et la plupart restent&#xa0;: les utiliser tels quels ou les tamiser.</translation>
    </message>
    <message>
        <source>A good bed is wet and drips not: moisture of {moisture-range}, best {moisture-best}. Scraps are mostly water and often enough; coir and cardboard in a warm room need some.</source>
        <translation>Un bon lit est mouillé et ne goutte pas&#xa0;: humidité de {moisture-range}, au mieux {moisture-best}. Les restes sont surtout de l’eau et suffisent souvent&#xa0;; la fibre de coco et le carton dans une pièce chaude en demandent un peu.</translation>
    </message>
    <message>
        <source>How wet is it</source>
        <translation>Est-il assez mouillé</translation>
    </message>
    <message>
        <source>Press a handful hard. Nothing comes: too dry. A few drops: right. A stream: too wet.</source>
        <translation>Presser fort une poignée. Rien ne vient&#xa0;: trop sec. Quelques gouttes&#xa0;: bien. Un filet&#xa0;: trop mouillé.</translation>
    </message>
    <message>
        <source>Dry, pale paper under the cover: too dry. Worms in the lid, a sour smell, a shining surface: too wet.</source>
        <translation>Du papier sec et pâle sous la couverture&#xa0;: trop sec. Des vers au couvercle, une odeur aigre, une surface luisante&#xa0;: trop mouillé.</translation>
    </message>
    <message>
        <source>Watering</source>
        <translation>Arroser</translation>
    </message>
    <message>
        <source>Pour slowly and all over. What is poured beyond what the trays hold runs into the sump within the hour, and the sump then says nothing about the bed.</source>
        <translation>Verser lentement et partout. Ce qui dépasse ce que retiennent les plateaux arrive au bac dans l’heure, et le bac ne dit alors rien du lit.</translation>
    </message>
    <message>
        <source>Better little and often than a flood.</source>
        <translation>Mieux vaut peu et souvent qu’une inondation.</translation>
    </message>
    <message>
        <source>Drainage</source>
        <translation>Drainage</translation>
    </message>
    <message>
        <source>With the spigot shut, drain every {drain-every}, and before the sump is at {full-sump}. With it open, empty the jar.</source>
        <translation>Robinet fermé, vidanger tous les {drain-every}, et avant que le bac soit à {full-sump}. Robinet ouvert, vider le bocal.</translation>
    </message>
    <message>
        <source>Write down how much. What ran out is one of the few things that can be measured without digging.</source>
        <translation>Noter combien. Ce qui a coulé est l’une des rares choses qu’on mesure sans fouiller.</translation>
    </message>
    <message>
        <source>Some worms swim in the sump, about {worms-in-sump} of them. That is normal: put them back into the top tray.</source>
        <translation>Quelques vers nagent dans le bac, environ {worms-in-sump} d’entre eux. C’est normal&#xa0;: les remettre dans le plateau du haut.</translation>
    </message>
    <message>
        <source>If it smells or hardly runs, flush: spigot shut, water through, everything drained at once.</source>
        <translation>S’il sent ou coule à peine, rincer&#xa0;: robinet fermé, eau au travers, tout vidangé d’un coup.</translation>
    </message>
    <message>
        <source>What runs out is leachate, no brewed tea. What it can be used for, and how far to dilute it, stands under [[use|using castings and leachate]].</source>
        <translation>Ce qui coule est du lixiviat, pas une infusion. À quoi il peut servir et combien le diluer se trouve sous [[use|utiliser le lombricompost et le lixiviat]].</translation>
    </message>
    <message>
        <source>The stack in one page</source>
        <translation>La pile en une page</translation>
    </message>
    <message>
        <source>overview basics worms trays begin</source>
        <translation>aperçu bases vers plateaux commencer</translation>
    </message>
    <message>
        <source>Starting a stack</source>
        <translation>Démarrer une pile</translation>
    </message>
    <message>
        <source>new first tray stock worms place</source>
        <translation>nouveau premier plateau départ vers endroit</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Nourrir</translation>
    </message>
    <message>
        <source>food scraps amount how much cover overfed hungry</source>
        <translation>nourriture restes quantité combien couverture excès faim</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Litière</translation>
    </message>
    <message>
        <source>paper cardboard coir shavings leaves carbon C:N</source>
        <translation>papier carton coco copeaux feuilles carbone C:N</translation>
    </message>
    <message>
        <source>Water and drainage</source>
        <translation>Eau et drainage</translation>
    </message>
    <message>
        <source>moisture wet dry sump spigot drain flush squeeze</source>
        <translation>humidité mouillé sec bac robinet vidange rincer presser</translation>
    </message>
    <message>
        <source>Behind the pages runs a model of the colony and its trays: food softens, worms eat what has softened, grow, lay and die, castings stay, water seeps down, the bed warms and breathes. It runs not once but {members} times, each with other parameters from the ranges below. What you write down weighs these members: those that agree with your journal count for more.</source>
        <translation>Derrière les pages tourne un modèle de la colonie et de ses plateaux&#xa0;: la nourriture ramollit, les vers mangent ce qui a ramolli, grandissent, pondent et meurent, le lombricompost reste, l’eau s’infiltre, le lit chauffe et respire. Il tourne non pas une fois mais {members}, chacune avec d’autres paramètres pris dans les plages ci-dessous. Ce que vous notez pèse ces membres&#xa0;: ceux qui s’accordent avec votre journal comptent davantage.</translation>
    </message>
    <message>
        <source>So every figure has a range. It holds {band-share} of what is still possible. A wide range is no fault of the page: it says that nobody can know it better from what was written down, and a look would narrow it.</source>
        <translation>Chaque chiffre a donc une plage. Elle contient {band-share} de ce qui est encore possible. Une plage large n’est pas un défaut de la page&#xa0;: elle dit que personne ne peut mieux savoir d’après ce qui a été noté, et qu’un regard la resserrerait.</translation>
    </message>
    <message>
        <source>How far to trust it</source>
        <translation>Jusqu’où s’y fier</translation>
    </message>
    <message>
        <source>The order of things, and which tray is ahead: well.</source>
        <translation>L’ordre des choses, et quel plateau est en avance&#xa0;: bien.</translation>
    </message>
    <message>
        <source>Dates months ahead: as a season, not as a day. Softening is known to a factor of two.</source>
        <translation>Les dates à des mois d’ici&#xa0;: comme saison, non comme jour. Le ramollissement est connu à un facteur deux près.</translation>
    </message>
    <message>
        <source>Numbers of worms: within a factor, unless you weigh some.</source>
        <translation>Le nombre de vers&#xa0;: à un facteur près, sauf si vous en pesez.</translation>
    </message>
    <message>
        <source>What it does not know: rot without air in a corner, mites, birds, a lid left open. Write such things down as events.</source>
        <translation>Ce qu’il ne sait pas&#xa0;: une pourriture sans air dans un coin, des acariens, des oiseaux, un couvercle resté ouvert. Noter ces choses comme événements.</translation>
    </message>
    <message>
        <source>A household&apos;s habits drift; parameters go back to their ranges with a time constant of {drift-days}, so that old years do not rule the new.</source>
        <translation>Les habitudes d’un foyer changent&#xa0;; les paramètres reviennent à leurs plages avec une constante de temps de {drift-days}, pour que les vieilles années ne dictent pas les nouvelles.</translation>
    </message>
    <message>
        <source>Track record</source>
        <translation>Bilan des estimations</translation>
    </message>
    <message>
        <source>Parameters, their ranges and what they rest on</source>
        <translation>Les paramètres, leurs plages et ce qui les fonde</translation>
    </message>
    <message>
        <source>Batch: one life of a tray, from its bedding to its harvest.</source>
        <translation>Lot&#xa0;: une vie d’un plateau, de sa litière à sa récolte.</translation>
    </message>
    <message>
        <source>Bed: all that lies in the trays.</source>
        <translation>Lit&#xa0;: tout ce qui se trouve dans les plateaux.</translation>
    </message>
    <message>
        <source>Bedding: what a tray is begun with, paper, cardboard, coir, leaves.</source>
        <translation>Litière&#xa0;: ce avec quoi un plateau commence, papier, carton, fibre de coco, feuilles.</translation>
    </message>
    <message>
        <source>Castings: what the worms leave behind; what you harvest.</source>
        <translation>Lombricompost&#xa0;: ce que les vers laissent&#xa0;; ce que vous récoltez.</translation>
    </message>
    <message>
        <source>C:N: parts of carbon to one of nitrogen, by mass.</source>
        <translation>C:N&#xa0;: parts de carbone pour une d’azote, en masse.</translation>
    </message>
    <message>
        <source>Cocoon: the egg case of a worm; lemon-shaped, small as a pinhead.</source>
        <translation>Cocon&#xa0;: l’enveloppe des œufs d’un ver&#xa0;; en forme de citron, petit comme une tête d’épingle.</translation>
    </message>
    <message>
        <source>Colony: all worms of a stack.</source>
        <translation>Colonie&#xa0;: tous les vers d’une pile.</translation>
    </message>
    <message>
        <source>Conductivity: how well water carries a current; it rises with salts, in mS/cm.</source>
        <translation>Conductivité&#xa0;: la facilité avec laquelle l’eau conduit le courant&#xa0;; elle monte avec les sels, en mS/cm.</translation>
    </message>
    <message>
        <source>Cover: paper laid on each feeding.</source>
        <translation>Couverture&#xa0;: papier posé sur chaque apport.</translation>
    </message>
    <message>
        <source>Dry matter: what is left when all water is gone.</source>
        <translation>Matière sèche&#xa0;: ce qui reste quand toute l’eau est partie.</translation>
    </message>
    <message>
        <source>Feed-to-cast ratio: what could still be eaten in a tray, to its castings, both dry.</source>
        <translation>Rapport aliment/compost&#xa0;: ce qui pourrait encore être mangé dans un plateau, par rapport à son lombricompost, tous deux en sec.</translation>
    </message>
    <message>
        <source>Field capacity: the water that stays when the rest has drained off.</source>
        <translation>Capacité au champ&#xa0;: l’eau qui reste quand le surplus s’est écoulé.</translation>
    </message>
    <message>
        <source>Input-to-cast yield: dry matter put into a batch, to castings that came of it.</source>
        <translation>Rendement&#xa0;: matière sèche apportée à un lot, par rapport au lombricompost qui en est sorti.</translation>
    </message>
    <message>
        <source>Leachate: what has run through the trays into the sump.</source>
        <translation>Lixiviat&#xa0;: ce qui a traversé les plateaux jusqu’au bac.</translation>
    </message>
    <message>
        <source>Light-drying: a tray raised to the top, lid off, so that its worms go down.</source>
        <translation>Séchage à la lumière&#xa0;: un plateau monté en haut, sans couvercle, pour que ses vers descendent.</translation>
    </message>
    <message>
        <source>Member: one of the many runs of the model that the estimates are made of.</source>
        <translation>Membre&#xa0;: l’un des nombreux passages du modèle dont sont faites les estimations.</translation>
    </message>
    <message>
        <source>Ration: what the colony takes up, to what it needs to keep itself; above one it grows.</source>
        <translation>Ration&#xa0;: ce que la colonie prend, par rapport à ce qu’il lui faut pour se maintenir&#xa0;; au-dessus de un, elle croît.</translation>
    </message>
    <message>
        <source>Reckoning: what the model and your journal make of each other.</source>
        <translation>Calcul&#xa0;: ce que le modèle et votre journal donnent ensemble.</translation>
    </message>
    <message>
        <source>Slot: a place in a stack; slot one is the bottom.</source>
        <translation>Niveau&#xa0;: une place dans une pile&#xa0;; le niveau un est en bas.</translation>
    </message>
    <message>
        <source>Spigot: the tap of the drainage tray.</source>
        <translation>Robinet&#xa0;: celui du plateau de drainage.</translation>
    </message>
    <message>
        <source>Stack: trays over a drainage tray under a lid.</source>
        <translation>Pile&#xa0;: des plateaux sur un plateau de drainage, sous un couvercle.</translation>
    </message>
    <message>
        <source>Sump: the drainage tray and what stands in it.</source>
        <translation>Bac&#xa0;: le plateau de drainage et ce qu’il contient.</translation>
    </message>
    <message>
        <source>Turn: the moment when the top tray is filled, so that a tray is to be added or the bottom one harvested.</source>
        <translation>Tour&#xa0;: le moment où le plateau du haut est rempli, de sorte qu’il faut en ajouter un ou récolter celui du bas.</translation>
    </message>
    <message>
        <source>The cautions that stand at the work itself, all in one place. They are the usual ones; local codes, your doctor and licensed trades come first. This program gives no medical advice.</source>
        <translation>Les précautions qui se trouvent au travail même, toutes au même endroit. Ce sont les habituelles&#xa0;; les règles locales, votre médecin et les métiers agréés passent d’abord. Ce programme ne donne pas de conseil médical.</translation>
    </message>
    <message>
        <source>Every number of the handbook and of the sums on the Materials page is a row here. Published means that it was read in that source or in its abstract; memory means that it was not looked up; common practice has no source, it is what people do; ours is a judgement or a rule of this program.</source>
        <translation>Chaque nombre du manuel et des calculs de la page Matières est une ligne ici. Publié veut dire qu’il a été lu dans cette source ou dans son résumé&#xa0;; mémoire, qu’il n’a pas été vérifié&#xa0;; une pratique courante n’a pas de source, c’est ce que font les gens&#xa0;; nôtre est un jugement ou une règle de ce programme.</translation>
    </message>
    <message>
        <source>Materials name the source of each row on their own page; parameters of the model stand under [[inside|what is inside the model]].</source>
        <translation>Les matières nomment la source de chaque ligne sur leur propre page&#xa0;; les paramètres du modèle se trouvent sous [[inside|ce qu’il y a dans le modèle]].</translation>
    </message>
    <message>
        <source>What is inside the model</source>
        <translation>Ce qu’il y a dans le modèle</translation>
    </message>
    <message>
        <source>estimate uncertainty range trust parameters ensemble filter how</source>
        <translation>estimation incertitude plage confiance paramètres ensemble filtre comment</translation>
    </message>
    <message>
        <source>Words</source>
        <translation>Mots</translation>
    </message>
    <message>
        <source>glossary terms meaning</source>
        <translation>glossaire termes sens</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>safety health lifting electricity children pregnancy asthma</source>
        <translation>sécurité santé soulever électricité enfants grossesse asthme</translation>
    </message>
    <message>
        <source>Figures and sources</source>
        <translation>Chiffres et sources</translation>
    </message>
    <message>
        <source>literature reference numbers memory</source>
        <translation>littérature référence nombres mémoire</translation>
    </message>
    <message>
        <source>The next tray goes on when the present one holds at least {castings-before-tray} of castings and most of its food is worked. Not earlier: worms follow food, and a colony spread thin over two trays finishes neither.</source>
        <translation>Le plateau suivant se pose quand l’actuel contient au moins {castings-before-tray} de lombricompost et que presque toute sa nourriture est travaillée. Pas plus tôt&#xa0;: les vers suivent la nourriture, et une colonie dispersée sur deux plateaux n’en finit aucun.</translation>
    </message>
    <message>
        <source>Look at the top tray: is there a finger&apos;s breadth of castings under the food?</source>
        <translation>Regarder le plateau du haut&#xa0;: y a-t-il un doigt de lombricompost sous la nourriture&#xa0;?</translation>
    </message>
    <message>
        <source>Level the surface, so that it touches the holes of the new tray.</source>
        <translation>Aplanir la surface, pour qu’elle touche les trous du nouveau plateau.</translation>
    </message>
    <message>
        <source>Lay bedding in the new tray, wet, and set it on top.</source>
        <translation>Poser de la litière mouillée dans le nouveau plateau et le mettre au-dessus.</translation>
    </message>
    <message>
        <source>Feed only there from now on. What is below goes on by itself.</source>
        <translation>Ne nourrir que là désormais. Ce qui est dessous continue tout seul.</translation>
    </message>
    <message>
        <source>The usual pace: the first tray alone for {first-tray-alone}, the second alone on top for at least {second-tray-alone}. The program says a tray is filled at {filled-castings} of castings and {filled-ratio} of unprocessed matter to castings or less.</source>
        <translation>Le rythme habituel&#xa0;: le premier plateau seul {first-tray-alone}, le deuxième seul en haut au moins {second-tray-alone}. Le programme dit un plateau rempli à {filled-castings} de lombricompost et {filled-ratio} ou moins de matière non traitée par rapport au lombricompost.</translation>
    </message>
    <message>
        <source>A tray whose contents come within {under-rim} of the rim is full, whatever else holds: there must be air under the next floor.</source>
        <translation>Un plateau dont le contenu arrive à {under-rim} du bord est plein, quoi qu’il en soit&#xa0;: il faut de l’air sous le fond suivant.</translation>
    </message>
    <message>
        <source>When the top tray is filled and no tray is spare, the bottom one has its turn. It is raised to the top, its worms go down out of the light, and what they leave is yours.</source>
        <translation>Quand le plateau du haut est rempli et qu’aucun n’est libre, celui du bas a son tour. On le monte en haut, ses vers descendent loin de la lumière, et ce qu’ils laissent est à vous.</translation>
    </message>
    <message>
        <source>Is it ready?</source>
        <translation>Est-il prêt&#xa0;?</translation>
    </message>
    <message>
        <source>A tray is ready when its feed-to-cast ratio (what could still be eaten, to castings, both dry) is {ready} or below and it holds {ready-castings} or more of castings; nearly at {nearly}. The program gives the chance that it is so, tells you at {alert-raised}, and takes that back at {alert-withdrawn}.</source>
        <translation>Un plateau est prêt quand son rapport aliment/compost (ce qui pourrait encore être mangé, par rapport au lombricompost, tous deux en sec) est de {ready} ou moins et qu’il contient {ready-castings} ou plus de lombricompost&#xa0;; presque prêt à {nearly}. Le programme donne la probabilité qu’il en soit ainsi, vous prévient à {alert-raised}, et le retire à {alert-withdrawn}.</translation>
    </message>
    <message>
        <source>Worms left in the bottom tray are normal and never a reason to wait: they go down in the light.</source>
        <translation>Des vers restés dans le plateau du bas sont normaux et jamais une raison d’attendre&#xa0;: ils descendent à la lumière.</translation>
    </message>
    <message>
        <source>The usual first harvest comes after {first-harvest}, later ones {later-harvests} apart. After {overdue-after} of waiting a harvest is overdue: spent bedding and crowding shrink a colony.</source>
        <translation>La première récolte vient d’habitude après {first-harvest}, les suivantes tous les {later-harvests}. Après {overdue-after} d’attente, une récolte est en retard&#xa0;: la litière usée et le manque de place font diminuer une colonie.</translation>
    </message>
    <message>
        <source>The sequence</source>
        <translation>Les étapes</translation>
    </message>
    <message>
        <source>For one of your stacks, with the weight of its trays and a card for each day: [[harvest-now|harvest, step by step]].</source>
        <translation>Pour une de vos piles, avec le poids de ses plateaux et une fiche par jour&#xa0;: [[harvest-now|récolte, pas à pas]].</translation>
    </message>
    <message>
        <source>Lid off. Set the upper trays aside, in their order, on a sheet.</source>
        <translation>Ôter le couvercle. Mettre les plateaux du dessus de côté, dans leur ordre, sur une bâche.</translation>
    </message>
    <message>
        <source>Lift the bottom tray out, close to the body, and set it down.</source>
        <translation>Sortir le plateau du bas, près du corps, et le poser.</translation>
    </message>
    <message>
        <source>Put the upper trays back, each one slot lower.</source>
        <translation>Remettre les plateaux du dessus, chacun un niveau plus bas.</translation>
    </message>
    <message>
        <source>Put the lifted tray on top. Loosen the castings with your fingers, in ridges. Leave the lid off, under a lamp or in a bright place, not in the sun.</source>
        <translation>Mettre le plateau sorti en haut. Aérer le lombricompost avec les doigts, en crêtes. Laisser le couvercle ôté, sous une lampe ou dans un endroit clair, pas au soleil.</translation>
    </message>
    <message>
        <source>For {light-drying}: loosen once a day. Feed only the tray below. Too wet to crumble? Loosen again and give it a day more.</source>
        <translation>Pendant {light-drying}&#xa0;: aérer une fois par jour. Ne nourrir que le plateau du dessous. Trop mouillé pour s’émietter&#xa0;? Aérer encore et lui donner un jour de plus.</translation>
    </message>
    <message>
        <source>When about {left-after-drying} of its worms are left, take the castings, weigh or measure them, and write that down.</source>
        <translation>Quand il reste environ {left-after-drying} de ses vers, prélever le lombricompost, le peser ou le mesurer, et le noter.</translation>
    </message>
    <message>
        <source>Lay new bedding in the empty tray; it goes on top again, or waits in storage.</source>
        <translation>Poser une litière neuve dans le plateau vide&#xa0;; il retourne en haut, ou attend rangé.</translation>
    </message>
    <message>
        <source>What to expect</source>
        <translation>À quoi s’attendre</translation>
    </message>
    <message>
        <source>One part of castings, dry, comes of {yield} parts of dry food and bedding; the rest was breathed. Much less: the tray was not finished, or much of the food was water. Much more: bedding that stays is in it.</source>
        <translation>Une part de lombricompost, en sec, vient de {yield} parts de nourriture et de litière sèches&#xa0;; le reste a été respiré. Beaucoup moins&#xa0;: le plateau n’était pas fini, ou une grande part de la nourriture était de l’eau. Beaucoup plus&#xa0;: il contient de la litière qui reste.</translation>
    </message>
    <message>
        <source>Cocoons and worms that leave with it</source>
        <translation>Cocons et vers qui partent avec</translation>
    </message>
    <message>
        <source>Some always do; no method takes all of them out, and castings without any worm cannot be promised. A grown worm lays about {cocoons-weekly} cocoons a week; a cocoon takes about {cocoon-hatch} in the warmth and gives {young} young.</source>
        <translation>Il y en a toujours&#xa0;; aucune méthode ne les retire tous, et on ne peut pas promettre de lombricompost sans aucun ver. Un ver adulte pond environ {cocoons-weekly} cocons par semaine&#xa0;; un cocon met environ {cocoon-hatch} au chaud et donne {young} jeunes.</translation>
    </message>
    <message>
        <source>A second light-drying after {second-drying} brings out what has hatched meanwhile.</source>
        <translation>Un second séchage à la lumière après {second-drying} fait sortir ce qui a éclos entre-temps.</translation>
    </message>
    <message>
        <source>A bait tray: lay melon or pumpkin under damp paper on the stored castings for {bait-days}, and carry it back with all that sits in it.</source>
        <translation>Un plateau-appât&#xa0;: poser du melon ou de la courge sous du papier humide sur le lombricompost gardé pendant {bait-days}, et le rapporter avec tout ce qui s’y trouve.</translation>
    </message>
    <message>
        <source>Choose the stack: the page follows its harvest from the weight of the trays before they are lifted to what became of the castings. Why each step is done stands under [[harvest|rotation and harvest]].</source>
        <translation>Choisissez la pile&#xa0;: la page suit sa récolte, du poids des plateaux avant de les soulever à ce que le lombricompost est devenu. Le pourquoi de chaque étape se trouve sous [[harvest|rotation et récolte]].</translation>
    </message>
    <message>
        <source>Lid off. Set the upper trays aside, in their order.</source>
        <translation>Ôter le couvercle. Mettre les plateaux du dessus de côté, dans leur ordre.</translation>
    </message>
    <message>
        <source>Lift the bottom tray out and set it down.</source>
        <translation>Sortir le plateau du bas et le poser.</translation>
    </message>
    <message>
        <source>Put the lifted tray on top, loosen its castings in ridges, leave the lid off.</source>
        <translation>Mettre le plateau sorti en haut, aérer son lombricompost en crêtes, laisser le couvercle ôté.</translation>
    </message>
    <message>
        <source>Castings are no soil. A litre of them weighs {bed-litre} while moist. They pack, hold salts and are rich; a little of them goes a long way. The Materials page reckons the amounts for a batch.</source>
        <translation>Le lombricompost n’est pas de la terre. Un litre pèse {bed-litre} quand il est humide. Il se tasse, contient des sels et est riche&#xa0;; un peu suffit pour longtemps. La page Matières calcule les quantités pour un lot.</translation>
    </message>
    <message>
        <source>Potting mix</source>
        <translation>Terreau</translation>
    </message>
    <message>
        <source>By volume, {potting-share} of a mix has been tested and helped; more than {potting-most} is not advised, and never castings alone.</source>
        <translation>En volume, {potting-share} d’un mélange ont été essayés et ont aidé&#xa0;; plus de {potting-most} n’est pas conseillé, et jamais de lombricompost seul.</translation>
    </message>
    <message>
        <source>Top-dressing</source>
        <translation>Surfaçage</translation>
    </message>
    <message>
        <source>A layer of {top-dressing} around the plant, scratched in and watered; again after {top-dressing-again}.</source>
        <translation>Une couche de {top-dressing} autour de la plante, griffée et arrosée&#xa0;; de nouveau après {top-dressing-again}.</translation>
    </message>
    <message>
        <source>Sifting</source>
        <translation>Tamiser</translation>
    </message>
    <message>
        <source>Through a mesh of {sieve}, when dry enough to crumble. What stays on it (shell, stones, wood, cocoons) goes into the next bedding.</source>
        <translation>À une maille de {sieve}, quand il est assez sec pour s’émietter. Ce qui reste dessus (coquilles, pierres, bois, cocons) va dans la prochaine litière.</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Garder</translation>
    </message>
    <message>
        <source>Vented, cool, in the shade, near {storage-moisture} moisture, for {storage-months}. Shut tightly they go sour; bone dry they are dust.</source>
        <translation>Aéré, frais, à l’ombre, près de {storage-moisture} d’humidité, pendant {storage-months}. Bien fermé, il aigrit&#xa0;; tout sec, il est poussière.</translation>
    </message>
    <message>
        <source>Leachate</source>
        <translation>Lixiviat</translation>
    </message>
    <message>
        <source>What ran out at the spigot is salty water that met everything in the trays. It is no brewed tea, and nobody knows what it holds unless it is measured. Published strengths are around {leachate-strength}; for worms {leachate-harmless} is harmless and about {leachate-harmful} harmful. One mS/cm stands for about {salt-per-conductivity} of salts.</source>
        <translation>Ce qui a coulé au robinet est de l’eau salée qui a rencontré tout ce qu’il y a dans les plateaux. Ce n’est pas une infusion, et nul ne sait ce qu’il contient sans le mesurer. Les forces publiées sont autour de {leachate-strength}&#xa0;; pour les vers, {leachate-harmless} est sans danger et environ {leachate-harmful} nocif. Un mS/cm correspond à environ {salt-per-conductivity} de sels.</translation>
    </message>
    <message>
        <source>Dilute it to {target-seedlings} for young plants, {target-grown} for grown ones. Tap water itself has about {tap-water}. The Materials page says how many parts of water that takes, for the strong end of what the leachate may be.</source>
        <translation>Le diluer à {target-seedlings} pour les jeunes plantes, à {target-grown} pour les adultes. L’eau du robinet a déjà environ {tap-water}. La page Matières dit combien de parts d’eau il faut, pour la valeur forte de ce que le lixiviat peut être.</translation>
    </message>
    <message>
        <source>Use it within {leachate-keeps}, on soil, or pour it back over the top tray when the bed is dry.</source>
        <translation>L’utiliser sous {leachate-keeps}, sur la terre, ou le reverser sur le plateau du haut quand le lit est sec.</translation>
    </message>
    <message>
        <source>When to add a tray</source>
        <translation>Quand ajouter un plateau</translation>
    </message>
    <message>
        <source>second third next turn too early full rim</source>
        <translation>deuxième troisième suivant tour trop tôt plein bord</translation>
    </message>
    <message>
        <source>Rotation and harvest</source>
        <translation>Rotation et récolte</translation>
    </message>
    <message>
        <source>lift light-drying castings ready cocoons loosen yield bottom tray</source>
        <translation>monter séchage lumière lombricompost prêt cocons aérer rendement plateau du bas</translation>
    </message>
    <message>
        <source>Harvest, step by step</source>
        <translation>Récolte, pas à pas</translation>
    </message>
    <message>
        <source>guided weight drying day yield take castings now</source>
        <translation>guidée poids séchage jour rendement prélever lombricompost maintenant</translation>
    </message>
    <message>
        <source>Using castings and leachate</source>
        <translation>Utiliser le lombricompost et le lixiviat</translation>
    </message>
    <message>
        <source>potting soil top-dressing storage dilution strength sieve garden plants</source>
        <translation>terreau terre surfaçage garder dilution force tamis jardin plantes</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Chaleur</translation>
    </message>
    <message>
        <source>From {heat-death} in the bed worms begin to die. Carry the stack to a cooler room first; then shade, an open lid under a cloth, less food.</source>
        <translation>À partir de {heat-death} dans le lit, des vers commencent à mourir. Porter d’abord la pile dans une pièce plus fraîche&#xa0;; puis ombre, couvercle ouvert sous un linge, moins de nourriture.</translation>
    </message>
    <message>
        <source>A bed heats by itself when much is fed at once. Stop feeding, spread the food flat, loosen the tray.</source>
        <translation>Un lit chauffe de lui-même quand on donne beaucoup d’un coup. Cesser de nourrir, étaler la nourriture, aérer le plateau.</translation>
    </message>
    <message>
        <source>A frozen bottle of water, wrapped, on the top bedding buys a day.</source>
        <translation>Une bouteille d’eau gelée, enveloppée, sur la litière du haut fait gagner un jour.</translation>
    </message>
    <message>
        <source>Cold</source>
        <translation>Froid</translation>
    </message>
    <message>
        <source>Near {frost-death} worms die. Bring the stack in, or wrap sides and lid and stand it off the ground; feed little, since what is not eaten rots when it warms.</source>
        <translation>Près de {frost-death}, des vers meurent. Rentrer la pile, ou envelopper côtés et couvercle et l’isoler du sol&#xa0;; nourrir peu, car ce qui n’est pas mangé pourrit au retour de la douceur.</translation>
    </message>
    <message>
        <source>In a cold room everything takes longer; the dates of the program know that when you write down the bed&apos;s temperature now and then.</source>
        <translation>Dans une pièce froide, tout prend plus de temps&#xa0;; les dates du programme le savent quand vous notez de temps en temps la température du lit.</translation>
    </message>
    <message>
        <source>A stack can be left alone for {away} without any care, longer in the cold. Bedding is food as well.</source>
        <translation>Une pile peut rester seule {away} sans aucun soin, plus longtemps au froid. La litière aussi est une nourriture.</translation>
    </message>
    <message>
        <source>A few days before: feed the usual, not more. A heap of food rots; it does not keep.</source>
        <translation>Quelques jours avant&#xa0;: donner comme d’habitude, pas plus. Un tas de nourriture pourrit&#xa0;; il ne se garde pas.</translation>
    </message>
    <message>
        <source>On the last day: water to a wrung-out sponge, cover with a thick layer of wet paper, close the lid.</source>
        <translation>Le dernier jour&#xa0;: arroser comme une éponge essorée, couvrir d’une couche épaisse de papier mouillé, fermer le couvercle.</translation>
    </message>
    <message>
        <source>Empty the sump and leave the spigot open over a large jar.</source>
        <translation>Vider le bac et laisser le robinet ouvert au-dessus d’un grand bocal.</translation>
    </message>
    <message>
        <source>Write it down as an event, away, with the day of your return: the estimates then expect no feeding.</source>
        <translation>Le noter comme événement, absence, avec le jour du retour&#xa0;: les estimations n’attendent alors pas d’apport.</translation>
    </message>
    <message>
        <source>The rotation plan can be asked what two weeks away would change.</source>
        <translation>On peut demander au plan de rotation ce que changeraient deux semaines d’absence.</translation>
    </message>
    <message>
        <source>Moving a stack</source>
        <translation>Déplacer une pile</translation>
    </message>
    <message>
        <source>Empty the sump, shut the spigot.</source>
        <translation>Vider le bac, fermer le robinet.</translation>
    </message>
    <message>
        <source>Carry tray by tray, the heaviest last and shortest, and stack them again in the same order.</source>
        <translation>Porter plateau par plateau, le plus lourd en dernier et au plus court, et les rempiler dans le même ordre.</translation>
    </message>
    <message>
        <source>Splitting</source>
        <translation>Diviser</translation>
    </message>
    <message>
        <source>A colony that is crowded, beyond about {best-density} of floor, or a household with more scraps than a stack can take, is ready to be split.</source>
        <translation>Une colonie à l’étroit, au-delà d’environ {best-density} de surface, ou un foyer avec plus de restes qu’une pile n’en prend, est prêt pour une division.</translation>
    </message>
    <message>
        <source>Set up the new stack with one bedded tray.</source>
        <translation>Installer la nouvelle pile avec un plateau garni de litière.</translation>
    </message>
    <message>
        <source>Take worms with a part of their bed out of the old stack, at most {give-at-most} of the colony, so that the old one keeps its pace.</source>
        <translation>Retirer de l’ancienne pile des vers avec une part de leur lit, au plus {give-at-most} de la colonie, pour que l’ancienne garde son rythme.</translation>
    </message>
    <message>
        <source>Record it as moved worms: both stacks know it then.</source>
        <translation>Le noter comme vers passés&#xa0;: les deux piles le savent alors.</translation>
    </message>
    <message>
        <source>Worms double in {doubling} under good care, so there is something to give. Give worms with a handful of their own bedding; they settle better.</source>
        <translation>Les vers doublent en {doubling} si l’on en prend soin, il y a donc de quoi donner. Donnez-les avec une poignée de leur propre litière&#xa0;; ils s’installent mieux.</translation>
    </message>
    <message>
        <source>Weigh them, or count some and weigh those; take at most {give-at-most} of the colony, from the top tray, where most of them are.</source>
        <translation>Les peser, ou en compter quelques-uns et peser ceux-là&#xa0;; prendre au plus {give-at-most} de la colonie, dans le plateau du haut, où sont la plupart.</translation>
    </message>
    <message>
        <source>{stock} makes a start for a first tray.</source>
        <translation>{stock} suffisent pour démarrer un premier plateau.</translation>
    </message>
    <message>
        <source>Pack them in damp bedding in a vented box, cool, for a day at most.</source>
        <translation>Les mettre dans de la litière humide, dans une boîte aérée, au frais, un jour au plus.</translation>
    </message>
    <message>
        <source>Record the worms as taken away: the estimate of your colony follows.</source>
        <translation>Noter les vers comme retirés&#xa0;: l’estimation de votre colonie suit.</translation>
    </message>
    <message>
        <source>Choose the stack and what you notice. Each cause has its chance, from what the estimates say of this stack, its evidence in numbers, the look that would tell it from the others, and what to do.</source>
        <translation>Choisissez la pile et ce que vous remarquez. Chaque cause a sa probabilité, d’après ce que les estimations disent de cette pile, ses indices en nombres, le regard qui la distinguerait des autres, et ce qu’il faut faire.</translation>
    </message>
    <message>
        <source>What may be wrong</source>
        <translation>Ce qui peut ne pas aller</translation>
    </message>
    <message>
        <source>smell flies mites ants escape dying mould sour heat standing water help problem</source>
        <translation>odeur mouches acariens fourmis fuite mort moisissure acide chaleur eau stagnante aide problème</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Saisons</translation>
    </message>
    <message>
        <source>summer winter heat cold frost temperature</source>
        <translation>été hiver chaleur froid gel température</translation>
    </message>
    <message>
        <source>Going away</source>
        <translation>Partir en voyage</translation>
    </message>
    <message>
        <source>holiday travel weeks absence</source>
        <translation>vacances voyage semaines absence</translation>
    </message>
    <message>
        <source>Moving and splitting</source>
        <translation>Déplacer et diviser</translation>
    </message>
    <message>
        <source>carry transport divide new stack crowded</source>
        <translation>porter transport diviser nouvelle pile étroit</translation>
    </message>
    <message>
        <source>Giving worms</source>
        <translation>Donner des vers</translation>
    </message>
    <message>
        <source>share neighbours school release</source>
        <translation>partager voisins école relâcher</translation>
    </message>
    <message>
        <source>Choose a place that stays at {comfortable} all year, out of the sun, where the spigot can be reached and a full tray can be lifted.</source>
        <translation>Choisir un endroit qui reste à {comfortable} toute l’année, hors du soleil, où le robinet est accessible et où l’on peut soulever un plateau plein.</translation>
    </message>
    <message>
        <source>Bedding is carbon. Scraps alone hold too little of it: a mix of {cn-range} carbon to nitrogen keeps, with more nitrogen it smells, with more carbon it stands still. Averaging ratios by parts is wrong; the mix on the Materials page reckons it by mass.</source>
        <translation>La litière est du carbone. Les déchets seuls en ont trop peu&#xa0;: un mélange à {cn-range} de carbone pour azote se tient, avec plus d’azote il sent, avec plus de carbone il stagne. Faire la moyenne des rapports par parts est faux&#xa0;; le mélange de la page Matières calcule par masse.</translation>
    </message>
    <message>
        <source>Worms grow fastest near {growth-best}. A bed of {comfortable} is warm enough, and leaves room for the heat of a feeding. They hardly grow below {coldest}, and not at all at {hottest}.</source>
        <translation>Les vers grandissent le plus vite vers {growth-best}. Un lit à {comfortable} est assez chaud, et laisse de la marge pour la chaleur d’un repas. Sous {coldest} ils ne grandissent guère, à {hottest} plus du tout.</translation>
    </message>
    <message>
        <source>A stack that has long been at work: write down its worms and the bedding of each tray, then look into each tray on the first day and note how deep the castings lie and how many bits there are. What lies there is then taken as it was found.</source>
        <translation>Une pile qui travaille depuis longtemps&#xa0;: noter ses vers et la litière de chaque plateau, puis regarder dans chacun le premier jour et noter l’épaisseur du lombricompost et la part de restes. Ce qui s’y trouve est alors pris tel quel.</translation>
    </message>
    <message>
        <source>The temperature of the bed: from the set-up, whose usual temperature is the mean of the year, and the season of the place ([[seasons|Seasons]]); readings move it for some weeks.</source>
        <translation>La température du lit&#xa0;: d’après les données de la pile, dont la température habituelle est la moyenne de l’année, et la saison du lieu ([[seasons|saisons]])&#xa0;; les relevés la déplacent pour quelques semaines.</translation>
    </message>
    <message>
        <source>The usual temperature of the set-up</source>
        <translation>La température habituelle dans les données de la pile</translation>
    </message>
    <message>
        <source>It is the mean of the whole year, not what a thermometer shows today: the program makes winter and summer of it, little indoors, more in a garage, most outdoors. What it proposes is a bed of {year-indoors} through the year indoors, {year-garage} in a garage, shed or porch, {year-outdoors} outdoors.</source>
        <translation>C’est la moyenne de toute l’année, non ce qu’un thermomètre montre aujourd’hui&#xa0;: le programme en fait l’hiver et l’été, peu à l’intérieur, davantage dans un garage, le plus à l’extérieur. Ce qu’il propose est au fil de l’année un lit de {year-indoors} à l’intérieur, {year-garage} dans un garage, une remise ou une véranda, {year-outdoors} à l’extérieur.</translation>
    </message>
    <message>
        <source>Hold a thermometer in the bed and type into the set-up what it shows now: the mean follows from it, by place and season. Beneath stands what the coldest and the warmest month will be.</source>
        <translation>Tenir un thermomètre dans le lit et taper dans les données de la pile ce qu’il montre maintenant&#xa0;: la moyenne en découle, selon le lieu et la saison. En dessous est dit ce que seront le mois le plus froid et le plus chaud.</translation>
    </message>
    <message>
        <source>When readings of the bed stay off to one side, correct the set-up; a reading alone moves the estimate for some weeks only.</source>
        <translation>Quand les relevés du lit restent à côté du même côté, corriger les données de la pile&#xa0;; un relevé seul ne déplace l’estimation que pour quelques semaines.</translation>
    </message>
    <message>
        <source>Write a change of place into the stack&apos;s set-up, with the temperature that a thermometer shows in the bed there.</source>
        <translation>Noter un changement de lieu dans les données de la pile, avec la température qu’un thermomètre montre là dans le lit.</translation>
    </message>
    <message>
        <source>The order is computed. Each member of the ensemble is one possible stack that agrees with your journal; a cause is likely when many of them are in the state that brings such a symptom about. Something else keeps its share, and where the record shows none of the causes, that is what is said. A look written down changes the order.</source>
        <translation>L’ordre est calculé. Chaque membre de l’ensemble est une pile possible qui s’accorde avec votre journal&#xa0;; une cause est probable quand beaucoup d’entre eux sont dans l’état qui provoque un tel symptôme. Une part reste à autre chose, et là où le journal ne montre aucune des causes, c’est ce qui est dit. Une observation notée change l’ordre.</translation>
    </message>
</context>
<context>
    <name>HandbookHtml</name>
    <message>
        <source>Caution: %1</source>
        <translation>Précaution&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>HarvestBody</name>
    <message>
        <source>Taken</source>
        <translation>Prélevé</translation>
    </message>
    <message>
        <source>the whole tray</source>
        <translation>tout le plateau</translation>
    </message>
    <message>
        <source>a part; the batch goes on</source>
        <translation>une partie&#xa0;; le lot continue</translation>
    </message>
    <message>
        <source>Share taken</source>
        <translation>Part prélevée</translation>
    </message>
    <message>
        <source>Which share of the tray?</source>
        <translation>Quelle part du plateau&#xa0;?</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Lombricompost</translation>
    </message>
    <message>
        <source>How much was taken? By mass or by volume.</source>
        <translation>Combien a été prélevé&#xa0;? En masse ou en volume.</translation>
    </message>
    <message>
        <source>Their moisture</source>
        <translation>Son humidité</translation>
    </message>
    <message>
        <source>of wet mass, if measured</source>
        <translation>de la masse humide, si mesurée</translation>
    </message>
    <message>
        <source>expected: about %1, or %2</source>
        <translation>attendu&#xa0;: environ %1, ou %2</translation>
    </message>
</context>
<context>
    <name>HouseholdText</name>
    <message>
        <source>%1, %2: found «%3»; allowed: %4</source>
        <translation>%1, %2&#xa0;: trouvé «&#xa0;%3&#xa0;»&#xa0;; admis&#xa0;: %4</translation>
    </message>
    <message>
        <source>%1 is there already. It was left as it is.</source>
        <translation>%1 existe déjà. Il a été laissé tel quel.</translation>
    </message>
    <message>
        <source>%1 is open for reading only: there is no permission to write to it or to its folder. Nothing can be recorded until that is changed.</source>
        <translation>%1 est ouvert en lecture seule&#xa0;: il n’y a pas de droit d’écriture sur lui ou sur son dossier. Rien ne peut être noté tant que cela n’est pas changé.</translation>
    </message>
    <message>
        <source>Rename the household</source>
        <translation>Renommer le foyer</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Dossier des sauvegardes</translation>
    </message>
    <message>
        <source>%1 was moved or removed. Nothing more is written until it is back; what is in a form stays there.</source>
        <translation>%1 a été déplacé ou enlevé. Plus rien n’est écrit jusqu’à son retour&#xa0;; ce qui est dans un formulaire y reste.</translation>
    </message>
    <message>
        <source>%1 is back. It takes entries again.</source>
        <translation>%1 est de retour. Il reprend des entrées.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.</source>
        <translation>%1 a été déplacé ou enlevé pendant qu’il était ouvert. Rien n’a été écrit&#xa0;; le remettre en place, ou l’ouvrir là où il est maintenant.</translation>
    </message>
    <message>
        <source>%1 was written by a newer release and can only be read. Nothing was written.</source>
        <translation>%1 a été écrit par une version plus récente et ne peut qu’être lu. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>%1 is open for reading only. Nothing was written.</source>
        <translation>%1 est ouvert en lecture seule. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>The entry is still being written. Nothing was changed; try again in a moment.</source>
        <translation>L’entrée est encore en cours d’écriture. Rien n’a été changé&#xa0;; réessayer dans un instant.</translation>
    </message>
    <message>
        <source>%1 cannot be used as a picture: %2</source>
        <translation>%1 ne peut pas servir de photo&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 cannot be used as a picture: it could not be made smaller.</source>
        <translation>%1 ne peut pas servir de photo&#xa0;: elle n’a pas pu être réduite.</translation>
    </message>
    <message numerus="yes">
        <source>Another program changed this household. %n step(s) that could be undone touched what it changed and can no longer be undone.</source>
        <translation>
            <numerusform>Un autre programme a modifié ce foyer. %n étape annulable touchait à ce qu’il a changé et ne peut plus être annulée.</numerusform>
            <numerusform>Un autre programme a modifié ce foyer. %n étapes annulables touchaient à ce qu’il a changé et ne peuvent plus être annulées.</numerusform>
        </translation>
    </message>
    <message>
        <source>Another program has changed the entry meanwhile. What it wrote was kept, and nothing was written.</source>
        <translation>Un autre programme a modifié l’entrée entre-temps. Ce qu’il a écrit a été gardé, et rien n’a été écrit.</translation>
    </message>
    <message>
        <source>The estimates could not be made this time. What you record is kept all the same; they are tried again after the next change.</source>
        <translation>Les estimations n’ont pas pu être faites cette fois. Ce que vous notez est gardé tout de même&#xa0;; un nouvel essai suit la prochaine modification.</translation>
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
        <translation>à gauche</translation>
    </message>
    <message>
        <source>on the right</source>
        <translation>à droite</translation>
    </message>
    <message>
        <source>at the front</source>
        <translation>devant</translation>
    </message>
    <message>
        <source>at the back</source>
        <translation>derrière</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>partout</translation>
    </message>
    <message>
        <source>indoors</source>
        <translation>à l’intérieur</translation>
    </message>
    <message>
        <source>in a garage</source>
        <translation>dans un garage</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>à l’extérieur</translation>
    </message>
    <message>
        <source>on legs</source>
        <translation>sur pieds</translation>
    </message>
    <message>
        <source>on a base</source>
        <translation>sur un socle</translation>
    </message>
    <message>
        <source>on the floor</source>
        <translation>au sol</translation>
    </message>
    <message>
        <source>spigot open</source>
        <translation>robinet ouvert</translation>
    </message>
    <message>
        <source>spigot shut</source>
        <translation>robinet fermé</translation>
    </message>
    <message>
        <source>strength %1 mS/cm</source>
        <translation>force %1 mS/cm</translation>
    </message>
    <message numerus="yes">
        <source>%n worm(s) put back</source>
        <translation>
            <numerusform>%n ver remis</numerusform>
            <numerusform>%n vers remis</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 deep</source>
        <translation>%1 de haut</translation>
    </message>
    <message numerus="yes">
        <source>%n tray(s)</source>
        <translation>
            <numerusform>%n plateau</numerusform>
            <numerusform>%n plateaux</numerusform>
        </translation>
    </message>
    <message>
        <source>sump %1</source>
        <translation>bac de %1</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>d’habitude %1</translation>
    </message>
    <message>
        <source>moisture %1</source>
        <translation>humidité %1</translation>
    </message>
    <message>
        <source>nitrogen %1 %</source>
        <translation>azote %1&#xa0;%</translation>
    </message>
    <message>
        <source>C:N %1</source>
        <translation>C:N %1</translation>
    </message>
    <message numerus="yes">
        <source>%n counted</source>
        <translation>
            <numerusform>%n compté</numerusform>
            <numerusform>%n comptés</numerusform>
        </translation>
    </message>
    <message>
        <source>wetted to %1</source>
        <translation>humidifiée à %1</translation>
    </message>
    <message>
        <source>water</source>
        <translation>eau</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>couverture</translation>
    </message>
    <message>
        <source>%1: no longer</source>
        <translation>%1&#xa0;: plus maintenant</translation>
    </message>
    <message numerus="yes">
        <source>%1: %2, every %n day(s)</source>
        <translation>
            <numerusform>%1&#xa0;: %2, chaque jour</numerusform>
            <numerusform>%1&#xa0;: %2, tous les %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>not emptied</source>
        <translation>non vidé</translation>
    </message>
    <message>
        <source>%1 poured through</source>
        <translation>%1 versés au travers</translation>
    </message>
    <message>
        <source>%1 ran out</source>
        <translation>%1 ont coulé</translation>
    </message>
    <message>
        <source>bed %1</source>
        <translation>lit %1</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>air %1</translation>
    </message>
    <message>
        <source>air humidity %1</source>
        <translation>humidité de l’air %1</translation>
    </message>
    <message>
        <source>squeeze %1 of 5</source>
        <translation>pression %1 sur 5</translation>
    </message>
    <message>
        <source>pH %1</source>
        <translation>pH %1</translation>
    </message>
    <message>
        <source>castings %1 deep</source>
        <translation>lombricompost&#xa0;: %1 d’épaisseur</translation>
    </message>
    <message>
        <source>%1 still recognisable</source>
        <translation>%1 encore reconnaissable</translation>
    </message>
    <message>
        <source>%1 of the last feeding left</source>
        <translation>%1 du dernier apport restent</translation>
    </message>
    <message>
        <source>few worms</source>
        <translation>peu de vers</translation>
    </message>
    <message>
        <source>some worms</source>
        <translation>quelques vers</translation>
    </message>
    <message>
        <source>many worms</source>
        <translation>beaucoup de vers</translation>
    </message>
    <message>
        <source>in %1 of the bed</source>
        <translation>dans %1 du lit</translation>
    </message>
    <message>
        <source>%1 worms</source>
        <translation>%1 vers</translation>
    </message>
    <message>
        <source>in %1 of bed</source>
        <translation>dans %1 de lit</translation>
    </message>
    <message>
        <source>empty tray %1</source>
        <translation>plateau vide %1</translation>
    </message>
    <message>
        <source>bottom tray to the top, to dry in the light</source>
        <translation>plateau du bas monté en haut, à sécher à la lumière</translation>
    </message>
    <message>
        <source>the drying castings</source>
        <translation>le lombricompost en séchage</translation>
    </message>
    <message>
        <source>put on</source>
        <translation>mis</translation>
    </message>
    <message>
        <source>taken off</source>
        <translation>ôté</translation>
    </message>
    <message>
        <source>%1 of the tray</source>
        <translation>%1 du plateau</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 vers %2</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>jusqu’au %1</translation>
    </message>
    <message>
        <source>Set up</source>
        <translation>Installation</translation>
    </message>
    <message>
        <source>Own material</source>
        <translation>Matière personnelle</translation>
    </message>
    <message>
        <source>Worms put in</source>
        <translation>Vers mis</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Litière</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Apport</translation>
    </message>
    <message>
        <source>Covered</source>
        <translation>Couverture</translation>
    </message>
    <message>
        <source>Watered</source>
        <translation>Arrosage</translation>
    </message>
    <message>
        <source>Routine</source>
        <translation>Habitude</translation>
    </message>
    <message>
        <source>Drained</source>
        <translation>Vidangé</translation>
    </message>
    <message>
        <source>Flushed</source>
        <translation>Rinçage</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Mesure</translation>
    </message>
    <message>
        <source>Looked</source>
        <translation>Regard</translation>
    </message>
    <message>
        <source>Worms weighed</source>
        <translation>Vers pesés</translation>
    </message>
    <message>
        <source>Worms counted</source>
        <translation>Vers comptés</translation>
    </message>
    <message>
        <source>Tray weighed</source>
        <translation>Plateau pesé</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Montée</translation>
    </message>
    <message>
        <source>Loosened</source>
        <translation>Aération</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Couvercle</translation>
    </message>
    <message>
        <source>Castings taken</source>
        <translation>Lombricompost prélevé</translation>
    </message>
    <message>
        <source>Worms taken away</source>
        <translation>Vers retirés</translation>
    </message>
    <message>
        <source>Worms moved</source>
        <translation>Vers passés</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Événement</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Retired</source>
        <translation>Arrêt</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>welcome: %1</source>
        <translation>bienvenu : %1</translation>
    </message>
    <message>
        <source>%1 in the sump</source>
        <translation>%1 dans le bac</translation>
    </message>
    <message>
        <source>tray %1</source>
        <comment>its area</comment>
        <translation>plateau de %1</translation>
    </message>
    <message>
        <source>amount not noted</source>
        <translation>quantité non notée</translation>
    </message>
</context>
<context>
    <name>Labels</name>
    <message>
        <source>%1, %2 × %3 labels of %4 × %5 mm</source>
        <translation>%1, %2 × %3 étiquettes de %4 × %5 mm</translation>
    </message>
    <message>
        <source>Tray %1 · batch %2</source>
        <translation>Plateau %1 · lot %2</translation>
    </message>
    <message>
        <source>Bedded %1</source>
        <comment>a day</comment>
        <translation>Garni le %1</translation>
    </message>
    <message>
        <source>Lifted ______________  Taken ______________</source>
        <translation>Monté ______________  Prélevé ______________</translation>
    </message>
    <message>
        <source>Labels for trays</source>
        <translation>Étiquettes de plateaux</translation>
    </message>
    <message>
        <source>The labels could not be drawn.</source>
        <translation>Les étiquettes n’ont pas pu être dessinées.</translation>
    </message>
    <message>
        <source>%1, %2 × %3 labels of %4 × %5 in</source>
        <translation>%1, %2 × %3 étiquettes de %4 × %5 in</translation>
    </message>
</context>
<context>
    <name>Lanes</name>
    <message>
        <source>tray %1</source>
        <translation>plateau %1</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>monter le plateau du bas</translation>
    </message>
    <message>
        <source>take the castings, lay new bedding</source>
        <translation>prélever le lombricompost, poser une litière neuve</translation>
    </message>
    <message>
        <source>add a tray</source>
        <translation>ajouter un plateau</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>in the light</source>
        <translation>à la lumière</translation>
    </message>
    <message>
        <source>planned (dashed)</source>
        <translation>prévu (tirets)</translation>
    </message>
    <message>
        <source>nobody is there</source>
        <translation>personne n’est là</translation>
    </message>
    <message>
        <source>day chosen by hand</source>
        <translation>jour choisi à la main</translation>
    </message>
    <message>
        <source>ready: 10 %, 50 % and 90 % sure</source>
        <translation>prêt&#xa0;: sûr à 10&#xa0;%, 50&#xa0;% et 90&#xa0;%</translation>
    </message>
    <message>
        <source>ready already</source>
        <translation>déjà prêt</translation>
    </message>
    <message>
        <source>due: 10 %, 50 % and 90 % sure</source>
        <translation>à faire&#xa0;: sûr à 10 %, 50 % et 90 %</translation>
    </message>
</context>
<context>
    <name>Legend</name>
    <message>
        <source>Age of batch</source>
        <translation>Âge du lot</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neuf</translation>
    </message>
    <message>
        <source>%1 mo</source>
        <comment>short for months</comment>
        <translation>%1 mois</translation>
    </message>
    <message>
        <source>castings, by age</source>
        <translation>lombricompost, selon l’âge</translation>
    </message>
    <message>
        <source>softened</source>
        <translation>ramolli</translation>
    </message>
    <message>
        <source>food</source>
        <translation>nourriture</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>litière</translation>
    </message>
    <message>
        <source>one for each %1 of worms</source>
        <translation>un pour %1 de vers</translation>
    </message>
    <message>
        <source>0.07 : 1 = unprocessed to castings, dry</source>
        <translation>0,07&#xa0;: 1 = non traité / lombricompost, en sec</translation>
    </message>
    <message>
        <source>Depths to one scale; sump levels twice as tall, a mark a litre</source>
        <translation>Épaisseurs à une échelle ; bac deux fois plus haut, un trait par litre</translation>
    </message>
    <message>
        <source>Bars: drained; marks: expected; bands: 90 % range</source>
        <translation>Barres : vidangé ; traits : attendu ; bandes : 90 %</translation>
    </message>
    <message>
        <source>Ring: chance in % that the tray is ready</source>
        <translation>Anneau : probabilité en % que le plateau soit prêt</translation>
    </message>
    <message>
        <source>Depths to one scale; sump levels twice as tall, a mark a quarter of a gallon</source>
        <translation>Profondeurs à une même échelle&#xa0;; niveaux du bac deux fois plus hauts, un trait par quart de gallon</translation>
    </message>
</context>
<context>
    <name>LidBody</name>
    <message>
        <source>The lid is</source>
        <translation>Le couvercle est</translation>
    </message>
    <message>
        <source>on</source>
        <translation>mis</translation>
    </message>
    <message>
        <source>off</source>
        <translation>ôté</translation>
    </message>
</context>
<context>
    <name>Lists</name>
    <message>
        <source>Parameter</source>
        <translation>Paramètre</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Centre</translation>
    </message>
    <message>
        <source>90 % range</source>
        <translation>Plage à 90&#xa0;%</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unité</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Fondé sur</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Chiffre</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Base</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Précaution</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matière</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Convient</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Noticed</source>
        <translation>Remarqué</translation>
    </message>
    <message>
        <source>Causes, the usual ones first</source>
        <translation>Causes, les habituelles d’abord</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>Within its 90 % range</source>
        <translation>Dans sa plage à 90&#xa0;%</translation>
    </message>
    <message>
        <source>The latest: came, expected</source>
        <translation>Le dernier&#xa0;: venu, attendu</translation>
    </message>
    <message>
        <source>Once there are drainings and harvests in the journal, what came stands here beside what was expected.</source>
        <translation>Dès qu’il y a des vidanges et des récoltes dans le journal, ce qui est venu se trouve ici à côté de ce qui était attendu.</translation>
    </message>
    <message>
        <source>drainings</source>
        <translation>vidanges</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>harvests, by weight</source>
        <translation>récoltes, en poids</translation>
    </message>
    <message>
        <source>lifted %1, before it was said to be ready (%2)</source>
        <translation>levé %1, avant d’être dit prêt (%2)</translation>
    </message>
    <message>
        <source>said to be ready from %1, lifted %2 (%3)</source>
        <translation>dit prêt à partir de %1, levé %2 (%3)</translation>
    </message>
    <message>
        <source>ready dates</source>
        <translation>dates de maturité</translation>
    </message>
    <message>
        <source>%1 of %2 lifted when ready</source>
        <translation>%1 sur %2 levés une fois prêts</translation>
    </message>
</context>
<context>
    <name>LoggerWords</name>
    <message>
        <source>time|date|stamp</source>
        <translation>heure|date|horodatage</translation>
    </message>
    <message>
        <source>temp|°c|°f|celsius|fahrenheit|degrees|(c)|(f)|[c]|[f]</source>
        <translation>temp|°c|°f|celsius|fahrenheit|degrés|degres|(c)|(f)|[c]|[f]</translation>
    </message>
    <message>
        <source>air|ambient|room|outside|outdoor</source>
        <translation>air|ambiant|ambiante|pièce|extérieur|exterieur|dehors</translation>
    </message>
    <message>
        <source>humid|rh</source>
        <translation>humidité relative|humidite relative|humidité de l’air|humidité de l&apos;air|hygrométrie|hygrometrie|(hr)|hr %</translation>
    </message>
    <message>
        <source>moist|water content|vwc</source>
        <translation>humidité du lit|humidité de la litière|humidité du sol|humidite du sol|teneur en eau</translation>
    </message>
</context>
<context>
    <name>MaterialNames</name>
    <message>
        <source>corrugated cardboard shredded</source>
        <translation>carton ondulé déchiqueté</translation>
    </message>
    <message>
        <source>newspaper shredded</source>
        <translation>papier journal déchiqueté</translation>
    </message>
    <message>
        <source>office paper shredded</source>
        <translation>papier de bureau déchiqueté</translation>
    </message>
    <message>
        <source>paper egg tray</source>
        <translation>boîte à œufs en papier</translation>
    </message>
    <message>
        <source>pine shavings</source>
        <translation>copeaux de pin</translation>
    </message>
    <message>
        <source>sawdust</source>
        <translation>sciure</translation>
    </message>
    <message>
        <source>coconut coir (from a dry brick)</source>
        <translation>fibre de coco (d’une brique sèche)</translation>
    </message>
    <message>
        <source>leaves fallen</source>
        <translation>feuilles mortes</translation>
    </message>
    <message>
        <source>wheat straw chopped</source>
        <translation>paille de blé hachée</translation>
    </message>
    <message>
        <source>peat</source>
        <translation>tourbe</translation>
    </message>
    <message>
        <source>grass clippings</source>
        <translation>tontes de gazon</translation>
    </message>
    <message>
        <source>coffee grounds</source>
        <translation>marc de café</translation>
    </message>
    <message>
        <source>tea leaves spent</source>
        <translation>feuilles de thé usagées</translation>
    </message>
    <message>
        <source>fruit waste mixed</source>
        <translation>restes de fruits mélangés</translation>
    </message>
    <message>
        <source>vegetable scraps mixed</source>
        <translation>restes de légumes mélangés</translation>
    </message>
    <message>
        <source>kitchen mix</source>
        <translation>mélange de cuisine</translation>
    </message>
    <message>
        <source>banana peel</source>
        <translation>peau de banane</translation>
    </message>
    <message>
        <source>eggshell crushed</source>
        <translation>coquille d’œuf écrasée</translation>
    </message>
    <message>
        <source>horse manure aged</source>
        <translation>fumier de cheval vieilli</translation>
    </message>
    <message>
        <source>rabbit manure</source>
        <translation>fumier de lapin</translation>
    </message>
    <message>
        <source>apple, with skin</source>
        <translation>pomme, avec la peau</translation>
    </message>
    <message>
        <source>banana flesh</source>
        <translation>banane, sans la peau</translation>
    </message>
    <message>
        <source>orange flesh</source>
        <translation>orange, sans l’écorce</translation>
    </message>
    <message>
        <source>orange peel</source>
        <translation>écorce d’orange</translation>
    </message>
    <message>
        <source>lemon peel</source>
        <translation>écorce de citron</translation>
    </message>
    <message>
        <source>watermelon flesh</source>
        <translation>chair de pastèque</translation>
    </message>
    <message>
        <source>cantaloupe</source>
        <translation>melon</translation>
    </message>
    <message>
        <source>pineapple</source>
        <translation>ananas</translation>
    </message>
    <message>
        <source>strawberry</source>
        <translation>fraise</translation>
    </message>
    <message>
        <source>grapes</source>
        <translation>raisin</translation>
    </message>
    <message>
        <source>pear</source>
        <translation>poire</translation>
    </message>
    <message>
        <source>peach</source>
        <translation>pêche</translation>
    </message>
    <message>
        <source>avocado flesh</source>
        <translation>chair d’avocat</translation>
    </message>
    <message>
        <source>lettuce, green leaf</source>
        <translation>laitue à feuilles vertes</translation>
    </message>
    <message>
        <source>lettuce, iceberg</source>
        <translation>laitue iceberg</translation>
    </message>
    <message>
        <source>spinach</source>
        <translation>épinard</translation>
    </message>
    <message>
        <source>kale</source>
        <translation>chou kale</translation>
    </message>
    <message>
        <source>cabbage</source>
        <translation>chou</translation>
    </message>
    <message>
        <source>broccoli</source>
        <translation>brocoli</translation>
    </message>
    <message>
        <source>carrot</source>
        <translation>carotte</translation>
    </message>
    <message>
        <source>potato, flesh+skin</source>
        <translation>pomme de terre, avec la peau</translation>
    </message>
    <message>
        <source>potato skin</source>
        <translation>épluchure de pomme de terre</translation>
    </message>
    <message>
        <source>beet root</source>
        <translation>betterave</translation>
    </message>
    <message>
        <source>tomato</source>
        <translation>tomate</translation>
    </message>
    <message>
        <source>cucumber with peel</source>
        <translation>concombre avec la peau</translation>
    </message>
    <message>
        <source>summer squash</source>
        <translation>courgette</translation>
    </message>
    <message>
        <source>pumpkin</source>
        <translation>citrouille</translation>
    </message>
    <message>
        <source>green pepper</source>
        <translation>poivron vert</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>céleri</translation>
    </message>
    <message>
        <source>onion</source>
        <translation>oignon</translation>
    </message>
    <message>
        <source>garlic</source>
        <translation>ail</translation>
    </message>
    <message>
        <source>snap beans</source>
        <translation>haricots verts</translation>
    </message>
    <message>
        <source>green peas</source>
        <translation>petits pois</translation>
    </message>
    <message>
        <source>sweet corn</source>
        <translation>maïs doux</translation>
    </message>
    <message>
        <source>mushroom, white</source>
        <translation>champignon blanc</translation>
    </message>
    <message>
        <source>bread, white</source>
        <translation>pain blanc</translation>
    </message>
    <message>
        <source>bread, whole wheat</source>
        <translation>pain complet</translation>
    </message>
    <message>
        <source>rice, white, cooked</source>
        <translation>riz blanc cuit</translation>
    </message>
    <message>
        <source>pasta, cooked</source>
        <translation>pâtes cuites</translation>
    </message>
    <message>
        <source>oats, dry</source>
        <translation>flocons d’avoine secs</translation>
    </message>
    <message>
        <source>egg (contents)</source>
        <translation>œuf (sans coquille)</translation>
    </message>
    <message>
        <source>meat</source>
        <translation>viande</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>poisson</translation>
    </message>
    <message>
        <source>cheese</source>
        <translation>fromage</translation>
    </message>
    <message>
        <source>milk and yogurt</source>
        <translation>lait et yaourt</translation>
    </message>
    <message>
        <source>oily food</source>
        <translation>aliments gras</translation>
    </message>
    <message>
        <source>salty leftovers</source>
        <translation>restes salés</translation>
    </message>
    <message>
        <source>chilli pepper</source>
        <translation>piment</translation>
    </message>
    <message>
        <source>tea bags</source>
        <translation>sachets de thé</translation>
    </message>
    <message>
        <source>weeds with seeds</source>
        <translation>mauvaises herbes en graines</translation>
    </message>
    <message>
        <source>manure of animals wormed lately</source>
        <translation>fumier d’animaux vermifugés récemment</translation>
    </message>
    <message>
        <source>chicken manure</source>
        <translation>fiente de poule</translation>
    </message>
    <message>
        <source>cat or dog droppings</source>
        <translation>crottes de chat ou de chien</translation>
    </message>
    <message>
        <source>glossy paper</source>
        <translation>papier glacé</translation>
    </message>
    <message>
        <source>till receipts</source>
        <translation>tickets de caisse</translation>
    </message>
    <message>
        <source>treated or painted wood</source>
        <translation>bois traité ou peint</translation>
    </message>
    <message>
        <source>wood ash</source>
        <translation>cendre de bois</translation>
    </message>
    <message>
        <source>garden lime (calcium carbonate)</source>
        <translation>chaux de jardin (carbonate de calcium)</translation>
    </message>
    <message>
        <source>slaked or quick lime</source>
        <translation>chaux éteinte ou vive</translation>
    </message>
    <message>
        <source>compostable plastic</source>
        <translation>plastique compostable</translation>
    </message>
</context>
<context>
    <name>MaterialWords</name>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>un peu</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Acid, and its peel keeps worms off until it has rotted: much of it sours the bed.</source>
        <translation>Acide, et sa peau éloigne les vers jusqu’à ce qu’elle pourrisse&#xa0;: en quantité, elle aigrit le lit.</translation>
    </message>
    <message>
        <source>Its sharp oils keep worms off, and it smells while it rots.</source>
        <translation>Ses huiles piquantes éloignent les vers, et cela sent en pourrissant.</translation>
    </message>
    <message>
        <source>Starch in a lump ferments, heats and draws mites; a little, spread thin and covered, is fine.</source>
        <translation>L’amidon en bloc fermente, chauffe et attire les acariens&#xa0;; un peu, étalé et couvert, convient.</translation>
    </message>
    <message>
        <source>Salt stays in the trays and dries worms out through their skin.</source>
        <translation>Le sel reste dans les plateaux et dessèche les vers par la peau.</translation>
    </message>
    <message>
        <source>Oil shuts the air out, turns rancid and draws flies and rats.</source>
        <translation>L’huile bloque l’air, rancit et attire mouches et rats.</translation>
    </message>
    <message>
        <source>It rots without air, smells, and draws flies, rats and mice.</source>
        <translation>Cela pourrit sans air, sent, et attire mouches, rats et souris.</translation>
    </message>
    <message>
        <source>It sours, smells, and draws flies, rats and mice.</source>
        <translation>Cela aigrit, sent, et attire mouches, rats et souris.</translation>
    </message>
    <message>
        <source>It can carry germs and worm eggs that make people ill, and a worm bin does not get hot enough to kill them.</source>
        <translation>Cela peut porter des germes et des œufs de parasites qui rendent malade, et un lombricomposteur ne chauffe pas assez pour les tuer.</translation>
    </message>
    <message>
        <source>What was given against the animal&apos;s worms kills these too; let manure age, and ask when the animals were last treated.</source>
        <translation>Ce qu’on a donné contre les vers de l’animal tue aussi ceux-ci&#xa0;; laisser vieillir le fumier, et demander quand les animaux ont été traités.</translation>
    </message>
    <message>
        <source>So rich in nitrogen that it heats and gives off ammonia; only aged, and little.</source>
        <translation>Si riche en azote qu’il chauffe et dégage de l’ammoniac&#xa0;; seulement vieilli, et peu.</translation>
    </message>
    <message>
        <source>In a thick layer it mats, heats and shuts the air out; wilted and spread thin it is fine.</source>
        <translation>En couche épaisse, cela se tasse, chauffe et bloque l’air&#xa0;; fané et étalé, cela convient.</translation>
    </message>
    <message>
        <source>Seeds stay alive in a worm bin and come up where the castings go.</source>
        <translation>Les graines restent vivantes dans un lombricomposteur et lèvent là où va le lombricompost.</translation>
    </message>
    <message>
        <source>Many bags hold plastic that stays in the castings; tear them open and give the leaves.</source>
        <translation>Beaucoup de sachets contiennent du plastique qui reste dans le lombricompost&#xa0;; les ouvrir et donner les feuilles.</translation>
    </message>
    <message>
        <source>Coatings, glossy inks and colour developers stay in the castings.</source>
        <translation>Les revêtements, encres brillantes et révélateurs de couleur restent dans le lombricompost.</translation>
    </message>
    <message>
        <source>Preservatives and paint can hold metals that harm worms and stay in the castings.</source>
        <translation>Les produits de conservation et la peinture peuvent contenir des métaux qui nuisent aux vers et restent dans le lombricompost.</translation>
    </message>
    <message>
        <source>Caustic: it burns worms and skin. Against a sour bed use calcium carbonate only.</source>
        <translation>Caustique&#xa0;: cela brûle les vers et la peau. Contre un lit acide, seulement du carbonate de calcium.</translation>
    </message>
    <message>
        <source>It softens in hot piles only; in a worm bin it stays for years.</source>
        <translation>Cela ne ramollit que dans un tas chaud&#xa0;; dans un lombricomposteur, cela reste des années.</translation>
    </message>
    <message>
        <source>It works, but it is dug from peatland; paper, cardboard and leaves serve as well.</source>
        <translation>Cela marche, mais vient de tourbières&#xa0;; papier, carton et feuilles servent aussi bien.</translation>
    </message>
    <message>
        <source>soft fruit and leaves</source>
        <translation>fruits tendres et feuilles</translation>
    </message>
    <message>
        <source>mixed kitchen scraps</source>
        <translation>restes de cuisine mêlés</translation>
    </message>
    <message>
        <source>grounds, grain and bread</source>
        <translation>marc, grains et pain</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papier</translation>
    </message>
    <message>
        <source>cardboard, straw and leaves</source>
        <translation>carton, paille et feuilles</translation>
    </message>
    <message>
        <source>wood; it stays</source>
        <translation>bois&#xa0;; reste</translation>
    </message>
    <message>
        <source>coir and peat; it stays</source>
        <translation>fibre de coco et tourbe&#xa0;; reste</translation>
    </message>
    <message>
        <source>shell and grit; it stays</source>
        <translation>coquille et gravier&#xa0;; reste</translation>
    </message>
    <message>
        <source>food</source>
        <translation>nourriture</translation>
    </message>
    <message>
        <source>bedding</source>
        <translation>litière</translation>
    </message>
    <message>
        <source>mineral</source>
        <translation>minéral</translation>
    </message>
    <message>
        <source>cup (US)</source>
        <translation>tasse (US)</translation>
    </message>
    <message>
        <source>tablespoon</source>
        <translation>cuillère à soupe</translation>
    </message>
    <message>
        <source>handful</source>
        <translation>poignée</translation>
    </message>
    <message>
        <source>bucket (%1)</source>
        <translation>seau (%1)</translation>
    </message>
    <message>
        <source>none</source>
        <comment>caution</comment>
        <translation>aucune</translation>
    </message>
    <message>
        <source>acid</source>
        <translation>acide</translation>
    </message>
    <message>
        <source>sharp oils</source>
        <translation>huiles piquantes</translation>
    </message>
    <message>
        <source>starch in lumps</source>
        <translation>amidon en paquets</translation>
    </message>
    <message>
        <source>salty</source>
        <translation>salé</translation>
    </message>
    <message>
        <source>oily</source>
        <translation>huileux</translation>
    </message>
    <message>
        <source>meat or fish</source>
        <translation>viande ou poisson</translation>
    </message>
    <message>
        <source>dairy</source>
        <translation>produit laitier</translation>
    </message>
    <message>
        <source>pet droppings</source>
        <translation>déjections d’animaux domestiques</translation>
    </message>
    <message>
        <source>wormed animals</source>
        <translation>animaux vermifugés</translation>
    </message>
    <message>
        <source>rich in nitrogen</source>
        <translation>riche en azote</translation>
    </message>
    <message>
        <source>heats in a layer</source>
        <translation>chauffe en couche</translation>
    </message>
    <message>
        <source>seeds</source>
        <translation>graines</translation>
    </message>
    <message>
        <source>plastic in bags</source>
        <translation>plastique dans les sachets</translation>
    </message>
    <message>
        <source>coated or glossy</source>
        <translation>couché ou glacé</translation>
    </message>
    <message>
        <source>treated or painted</source>
        <translation>traité ou peint</translation>
    </message>
    <message>
        <source>caustic</source>
        <translation>caustique</translation>
    </message>
    <message>
        <source>compostable plastic</source>
        <translation>plastique compostable</translation>
    </message>
    <message>
        <source>from peatland</source>
        <translation>de tourbière</translation>
    </message>
</context>
<context>
    <name>MoveBody</name>
    <message>
        <source>Worms</source>
        <translation>Vers</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Combien pèsent les vers&#xa0;?</translation>
    </message>
    <message>
        <source>Into</source>
        <translation>Vers la pile</translation>
    </message>
    <message>
        <source>Choose the stack that they go to.</source>
        <translation>Choisir la pile où ils vont.</translation>
    </message>
    <message>
        <source>of a colony of about %1</source>
        <translation>d’une colonie d’environ %1</translation>
    </message>
</context>
<context>
    <name>NewStack</name>
    <message>
        <source>The stack</source>
        <translation>La pile</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>Give it a name, such as where it stands.</source>
        <translation>Lui donner un nom, par exemple celui de l’endroit.</translation>
    </message>
    <message>
        <source>Scullery, Shed, Balcony, …</source>
        <translation>Buanderie, Remise, Balcon, …</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>How warm is it there, usually?</source>
        <translation>Quelle température y fait-il d’habitude&#xa0;?</translation>
    </message>
    <message>
        <source>Floor of a tray</source>
        <translation>Surface d’un plateau</translation>
    </message>
    <message>
        <source>How large is a tray?</source>
        <translation>Quelle taille a un plateau&#xa0;?</translation>
    </message>
    <message>
        <source>Height of a tray</source>
        <translation>Hauteur d’un plateau</translation>
    </message>
    <message>
        <source>How high is a tray?</source>
        <translation>Quelle hauteur a un plateau&#xa0;?</translation>
    </message>
    <message>
        <source>Trays owned</source>
        <translation>Plateaux possédés</translation>
    </message>
    <message>
        <source>How many trays are there?</source>
        <translation>Combien y a-t-il de plateaux&#xa0;?</translation>
    </message>
    <message>
        <source>Sump holds</source>
        <translation>Le bac contient</translation>
    </message>
    <message>
        <source>How much does the drainage tray hold?</source>
        <translation>Combien contient le plateau de drainage&#xa0;?</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Robinet</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Posée sur</translation>
    </message>
    <message>
        <source>The first bedding</source>
        <translation>La première litière</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Litière</translation>
    </message>
    <message>
        <source>Which bedding?</source>
        <translation>Quelle litière&#xa0;?</translation>
    </message>
    <message>
        <source>Depth once laid</source>
        <translation>Épaisseur une fois posée</translation>
    </message>
    <message>
        <source>How deep? %1 to %2 is common.</source>
        <translation>Quelle épaisseur&#xa0;? %1 à %2 est courant.</translation>
    </message>
    <message>
        <source>Amount, dry</source>
        <translation>Quantité, en sec</translation>
    </message>
    <message>
        <source>How much bedding, as it comes to hand?</source>
        <translation>Combien de litière, telle qu’elle vient&#xa0;?</translation>
    </message>
    <message>
        <source>The worms</source>
        <translation>Les vers</translation>
    </message>
    <message>
        <source>Worms put in</source>
        <translation>Vers mis</translation>
    </message>
    <message>
        <source>%1 to %2 is common for a first tray; empty if they come later</source>
        <translation>%1 à %2 est courant pour un premier plateau&#xa0;; vide s’ils viennent plus tard</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Espèce</translation>
    </message>
    <message>
        <source>First feeding</source>
        <translation>Premier apport</translation>
    </message>
    <message>
        <source>a handful of kitchen mix at most; empty to wait</source>
        <translation>au plus une poignée de mélange de cuisine&#xa0;; vide pour attendre</translation>
    </message>
    <message>
        <source>More water</source>
        <translation>Eau en plus</translation>
    </message>
    <message>
        <source>beyond what wets the bedding; usually empty</source>
        <translation>en plus de ce qui humidifie la litière&#xa0;; d’habitude vide</translation>
    </message>
    <message>
        <source>Started on</source>
        <translation>Démarrée le</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>Quel jour&#xa0;?</translation>
    </message>
    <message>
        <source>Put in %1 of «%2» and %3 of water: it makes about %4, as wet as a wrung-out sponge. Let it stand for a day before the worms go in.</source>
        <translation>Mettre %1 de «&#xa0;%2&#xa0;» et %3 d’eau&#xa0;: cela donne environ %4, humide comme une éponge essorée. Laisser reposer un jour avant d’y mettre les vers.</translation>
    </message>
    <message>
        <source>A retired stack bears that name; choose another.</source>
        <translation>Une pile arrêtée porte ce nom&#xa0;; en choisir un autre.</translation>
    </message>
    <message>
        <source>There is a stack of that name already.</source>
        <translation>Une pile porte déjà ce nom.</translation>
    </message>
    <message>
        <source>A name cannot hold a semicolon.</source>
        <translation>Un nom ne peut pas contenir de point-virgule.</translation>
    </message>
    <message>
        <source>%1 of worms is more than a tray of this floor can carry, about %2. Is the amount right, and its unit?</source>
        <translation>%1 de vers, c’est plus que ce qu’un plateau de cette surface peut porter, environ %2. La quantité et l’unité sont-elles justes&#xa0;?</translation>
    </message>
    <message>
        <source>%1 of food is more than the whole tray holds, about %2. Is the amount right, and its unit?</source>
        <translation>%1 de nourriture, c’est plus que ce que contient tout le plateau, environ %2. La quantité et l’unité sont-elles justes&#xa0;?</translation>
    </message>
    <message>
        <source>%1 of bedding would lie %2 deep in a tray that is %3 high. Is the amount right, and its unit?</source>
        <translation>%1 de litière auraient %2 d’épaisseur dans un plateau haut de %3. La quantité et l’unité sont-elles justes&#xa0;?</translation>
    </message>
</context>
<context>
    <name>OwnMaterialBody</name>
    <message>
        <source>Name</source>
        <translation>Nom</translation>
    </message>
    <message>
        <source>What is it called?</source>
        <translation>Comment s’appelle-t-elle&#xa0;?</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Ramollit comme</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>non précisé</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation>Azote</translation>
    </message>
    <message>
        <source>% of dry matter</source>
        <translation>% de matière sèche</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>Bulk, loose</source>
        <translation>Densité, en vrac</translation>
    </message>
    <message>
        <source>Water it holds</source>
        <translation>Eau qu’elle retient</translation>
    </message>
    <message>
        <source>by weight of dry</source>
        <translation>par poids sec</translation>
    </message>
    <message>
        <source>Welcome in a bin</source>
        <translation>Bienvenu dans le bac à vers</translation>
    </message>
    <message>
        <source>Reason against it</source>
        <translation>Raison contre</translation>
    </message>
</context>
<context>
    <name>PageFlow</name>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
</context>
<context>
    <name>Parameters</name>
    <message>
        <source>ingestion of a worm of 1 g</source>
        <translation>ingestion d’un ver de 1 g</translation>
    </message>
    <message>
        <source>half-saturation of ingestion</source>
        <translation>demi-saturation de l’ingestion</translation>
    </message>
    <message>
        <source>assimilated share</source>
        <translation>part assimilée</translation>
    </message>
    <message>
        <source>maintenance of a worm of 1 g at 25 C</source>
        <translation>entretien d’un ver de 1 g à 25 C</translation>
    </message>
    <message>
        <source>mobilisation of the reserve</source>
        <translation>mobilisation de la réserve</translation>
    </message>
    <message>
        <source>share of the surplus to laying</source>
        <translation>part de l’excédent pour la ponte</translation>
    </message>
    <message>
        <source>cocoons that hatch</source>
        <translation>cocons qui éclosent</translation>
    </message>
    <message>
        <source>young of a cocoon that hatches</source>
        <translation>jeunes d’un cocon qui éclot</translation>
    </message>
    <message>
        <source>incubation</source>
        <translation>incubation</translation>
    </message>
    <message>
        <source>death</source>
        <translation>mort</translation>
    </message>
    <message>
        <source>crowding that halves the greatest mass</source>
        <translation>densité qui réduit de moitié la masse maximale</translation>
    </message>
    <message>
        <source>crowding that slows laying</source>
        <translation>densité qui freine la ponte</translation>
    </message>
    <message>
        <source>softening of food, scale</source>
        <translation>ramollissement de la nourriture, échelle</translation>
    </message>
    <message>
        <source>softening of paper, cardboard and slower, scale</source>
        <translation>ramollissement du papier, du carton et plus lents, échelle</translation>
    </message>
    <message>
        <source>worms&apos; help in softening</source>
        <translation>aide des vers au ramollissement</translation>
    </message>
    <message>
        <source>respiration that halves the air</source>
        <translation>respiration qui réduit l’air de moitié</translation>
    </message>
    <message>
        <source>respired in softening</source>
        <translation>respiré au ramollissement</translation>
    </message>
    <message>
        <source>respiration of castings</source>
        <translation>respiration du lombricompost</translation>
    </message>
    <message>
        <source>coldest for growth</source>
        <translation>minimum pour croître</translation>
    </message>
    <message>
        <source>best for growth</source>
        <translation>optimum pour croître</translation>
    </message>
    <message>
        <source>hottest for growth</source>
        <translation>maximum pour croître</translation>
    </message>
    <message>
        <source>field capacity, scale</source>
        <translation>capacité au champ, échelle</translation>
    </message>
    <message>
        <source>poured water that runs through at once</source>
        <translation>eau versée qui passe aussitôt au travers</translation>
    </message>
    <message>
        <source>evaporation under the lid</source>
        <translation>évaporation sous le couvercle</translation>
    </message>
    <message>
        <source>time constant of light-drying</source>
        <translation>constante de temps du séchage à la lumière</translation>
    </message>
    <message>
        <source>salts formed of what is eaten</source>
        <translation>sels formés de ce qui est mangé</translation>
    </message>
    <message>
        <source>worms bought, true mass to mass written</source>
        <translation>vers achetés, masse réelle sur masse notée</translation>
    </message>
    <message>
        <source>household&apos;s scale, true mass to mass read</source>
        <translation>balance du foyer, masse réelle sur masse lue</translation>
    </message>
    <message>
        <source>empty tray</source>
        <translation>plateau vide</translation>
    </message>
    <message>
        <source>worms found in a search</source>
        <translation>vers trouvés en cherchant</translation>
    </message>
    <message>
        <source>what is called some or many worms, log shift</source>
        <translation>ce qu’on appelle quelques ou beaucoup de vers, décalage log</translation>
    </message>
    <message>
        <source>usual feedings not written down</source>
        <translation>apports habituels non notés</translation>
    </message>
</context>
<context>
    <name>PartStories</name>
    <message>
        <source>food, fresh, a week</source>
        <translation>nourriture fraîche par semaine</translation>
    </message>
    <message>
        <source>none</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>%1 of food in %2</source>
        <comment>an amount; so many feedings</comment>
        <translation>%1 de nourriture en %2</translation>
    </message>
    <message numerus="yes">
        <source>%n feeding(s)</source>
        <translation>
            <numerusform>%n apport</numerusform>
            <numerusform>%n apports</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of bedding</source>
        <translation>%1 de litière</translation>
    </message>
    <message>
        <source>%1 of paper over it</source>
        <translation>%1 de papier par-dessus</translation>
    </message>
    <message>
        <source>Put in, as it came</source>
        <translation>Mis, tel quel</translation>
    </message>
    <message>
        <source>Lifting</source>
        <translation>En le soulevant</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>that a step would be too early, and why</comment>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1: not while it stands alone; the worms go down into the tray beneath.</source>
        <translation>%1&#xa0;: pas tant qu’il est seul&#xa0;; les vers descendent dans le plateau du dessous.</translation>
    </message>
    <message>
        <source>%1: only the tray in slot 1; this one comes down with each harvest.</source>
        <translation>%1&#xa0;: seulement le plateau au niveau 1&#xa0;; celui-ci descend à chaque récolte.</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a ratio and a day</comment>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Les estimations se font.</translation>
    </message>
    <message>
        <source>Feed-to-cast: %1. Ready at 0.10 or below.</source>
        <translation>Aliment/compost&#xa0;: %1. Prêt à 0,10 ou moins.</translation>
    </message>
    <message>
        <source>castings, dry</source>
        <translation>lombricompost, en sec</translation>
    </message>
    <message>
        <source>feed-to-cast</source>
        <translation>aliment/compost</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>prêt</translation>
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
        <translation>contenu</translation>
    </message>
    <message>
        <source>full</source>
        <translation>plein</translation>
    </message>
    <message>
        <source>drained a week; mark: expected</source>
        <translation>vidangé par semaine&#xa0;; trait&#xa0;: attendu</translation>
    </message>
    <message>
        <source>%1 flushed %2</source>
        <comment>an amount, a day</comment>
        <translation>%1 de rinçage le %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>an amount, a day</comment>
        <translation>%1 le %2</translation>
    </message>
    <message>
        <source>Drained last</source>
        <translation>Dernière vidange</translation>
    </message>
    <message>
        <source>never yet</source>
        <translation>jamais encore</translation>
    </message>
    <message>
        <source>Level %1 of %2. Drained last: %3.</source>
        <translation>Contenu %1 sur %2. Dernière vidange&#xa0;: %3.</translation>
    </message>
    <message numerus="yes">
        <source>%1: no tray is spare; all %n stand.</source>
        <translation>
            <numerusform>%1&#xa0;: aucun plateau libre&#xa0;; %n est en place.</numerusform>
            <numerusform>%1&#xa0;: aucun plateau libre&#xa0;; les %n sont en place.</numerusform>
        </translation>
    </message>
    <message>
        <source>Here stands a bar for each week&apos;s food.</source>
        <translation>Ici, une barre par semaine de nourriture.</translation>
    </message>
    <message>
        <source>Here grows a line of its castings.</source>
        <translation>Ici montera la courbe du lombricompost.</translation>
    </message>
    <message>
        <source>Here falls a line until it is ready.</source>
        <translation>Ici descendra une courbe jusqu’à maturité.</translation>
    </message>
    <message>
        <source>Here stands a bar for each drain.</source>
        <translation>Ici, une barre par vidange.</translation>
    </message>
    <message>
        <source>Here rises a line of its level.</source>
        <translation>Ici montera la courbe du niveau.</translation>
    </message>
    <message>
        <source>highest %1</source>
        <translation>maximum %1</translation>
    </message>
    <message>
        <source>The spigot is open: it runs out as it comes.</source>
        <translation>Le robinet est ouvert&#xa0;: tout s’écoule à mesure.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>No household is open.</source>
        <translation>Aucun foyer n’est ouvert.</translation>
    </message>
    <message>
        <source>The estimates did not come.</source>
        <translation>Les estimations ne sont pas venues.</translation>
    </message>
    <message>
        <source>The page %1 could not be drawn.</source>
        <translation>La page %1 n’a pas pu être dessinée.</translation>
    </message>
    <message>
        <source>The folder %1 cannot be made.</source>
        <translation>Le dossier %1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>This build holds no demo household.</source>
        <translation>Cette version ne contient pas de foyer de démonstration.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 dans %2</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
</context>
<context>
    <name>ReadingBody</name>
    <message>
        <source>In the bed</source>
        <translation>Dans le lit</translation>
    </message>
    <message>
        <source>Air around</source>
        <translation>Air autour</translation>
    </message>
    <message>
        <source>Air humidity</source>
        <translation>Humidité de l’air</translation>
    </message>
    <message>
        <source>Moisture of the bed</source>
        <translation>Humidité du lit</translation>
    </message>
    <message>
        <source>of wet mass</source>
        <translation>de la masse humide</translation>
    </message>
    <message>
        <source>Squeezed in the hand</source>
        <translation>Pressé dans la main</translation>
    </message>
    <message>
        <source>not noted</source>
        <translation>non noté</translation>
    </message>
    <message>
        <source>1: crumbles, dry</source>
        <translation>1&#xa0;: s’émiette, sec</translation>
    </message>
    <message>
        <source>2: holds together, no shine</source>
        <translation>2&#xa0;: se tient, sans brillance</translation>
    </message>
    <message>
        <source>3: like a wrung-out sponge</source>
        <translation>3&#xa0;: comme une éponge essorée</translation>
    </message>
    <message>
        <source>4: drops fall</source>
        <translation>4&#xa0;: des gouttes tombent</translation>
    </message>
    <message>
        <source>5: water runs</source>
        <translation>5&#xa0;: l’eau coule</translation>
    </message>
    <message>
        <source>pH</source>
        <translation>pH</translation>
    </message>
    <message>
        <source>Give at least one reading.</source>
        <translation>Donner au moins une mesure.</translation>
    </message>
    <message>
        <source>Standing in the sump</source>
        <translation>Contenu du bac</translation>
    </message>
    <message>
        <source>read with a ruler or at its marks; nothing is drained</source>
        <translation>lu à la règle ou à ses repères ; rien n’est vidangé</translation>
    </message>
    <message>
        <source>read with a ruler or at its marks; it holds %1</source>
        <translation>lu à la règle ou à ses repères ; il contient %1 au plus</translation>
    </message>
</context>
<context>
    <name>ReadingsView</name>
    <message>
        <source>nothing, left out</source>
        <translation>rien, laissé de côté</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>date et heure</translation>
    </message>
    <message>
        <source>time of day, beside the date</source>
        <translation>heure, à côté de la date</translation>
    </message>
    <message>
        <source>temperature of the bed, °C</source>
        <translation>température du lit, °C</translation>
    </message>
    <message>
        <source>temperature of the bed, °F</source>
        <translation>température du lit, °F</translation>
    </message>
    <message>
        <source>temperature of the bed: °C or °F?</source>
        <translation>température du lit&#xa0;: °C ou °F&#xa0;?</translation>
    </message>
    <message>
        <source>temperature of the air, °C</source>
        <translation>température de l’air, °C</translation>
    </message>
    <message>
        <source>temperature of the air, °F</source>
        <translation>température de l’air, °F</translation>
    </message>
    <message>
        <source>temperature of the air: °C or °F?</source>
        <translation>température de l’air&#xa0;: °C ou °F&#xa0;?</translation>
    </message>
    <message>
        <source>moisture of the bed, %</source>
        <translation>humidité du lit, %</translation>
    </message>
    <message>
        <source>humidity of the air, %</source>
        <translation>humidité de l’air, %</translation>
    </message>
</context>
<context>
    <name>RemoveBody</name>
    <message>
        <source>Worms</source>
        <translation>Vers</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Combien pèsent les vers&#xa0;?</translation>
    </message>
    <message>
        <source>of a colony of about %1</source>
        <translation>d’une colonie d’environ %1</translation>
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
        <translation>eau</translation>
    </message>
    <message>
        <source>paper cover</source>
        <translation>couverture de papier</translation>
    </message>
    <message>
        <source>Each time</source>
        <translation>À chaque fois</translation>
    </message>
    <message>
        <source>How much each time? 0 ends the routine.</source>
        <translation>Combien à chaque fois&#xa0;? 0 met fin à l’habitude.</translation>
    </message>
    <message>
        <source>done without being written down, until changed; 0 ends it</source>
        <translation>fait sans être noté, jusqu’à nouvel ordre&#xa0;; 0 y met fin</translation>
    </message>
    <message>
        <source>Every so many days</source>
        <translation>Tous les combien de jours</translation>
    </message>
</context>
<context>
    <name>RowsAtFault</name>
    <message>
        <source>%1 rows at fault</source>
        <translation>%1 lignes en faute</translation>
    </message>
    <message>
        <source>Save the rows at fault</source>
        <translation>Enregistrer les lignes en faute</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>The rows at fault were written to %1.</source>
        <translation>Les lignes en faute ont été écrites dans %1.</translation>
    </message>
</context>
<context>
    <name>SaidAhead</name>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>Ready %1; feed-to-cast %2.</source>
        <translation>Prêt %1&#xa0;; aliment/compost %2.</translation>
    </message>
    <message>
        <source>%1 of worms is more than the trays here can carry, about %2. Is the amount right, and its unit?</source>
        <translation>%1 de vers, c’est plus que ce que les plateaux d’ici peuvent porter, environ %2. La quantité et l’unité sont-elles justes&#xa0;?</translation>
    </message>
</context>
<context>
    <name>SetupBody</name>
    <message>
        <source>Place</source>
        <translation>Lieu</translation>
    </message>
    <message>
        <source>Trays owned</source>
        <translation>Plateaux possédés</translation>
    </message>
    <message>
        <source>Floor of a tray</source>
        <translation>Surface d’un plateau</translation>
    </message>
    <message>
        <source>Height of a tray</source>
        <translation>Hauteur d’un plateau</translation>
    </message>
    <message>
        <source>Sump holds</source>
        <translation>Le bac contient</translation>
    </message>
    <message>
        <source>Spigot</source>
        <translation>Robinet</translation>
    </message>
    <message>
        <source>Stands on</source>
        <translation>Posée sur</translation>
    </message>
    <message>
        <source>This cannot be left out.</source>
        <translation>Ceci ne peut pas être omis.</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Rien n’est encore changé.</translation>
    </message>
</context>
<context>
    <name>SetupChoices</name>
    <message>
        <source>indoors</source>
        <translation>à l’intérieur</translation>
    </message>
    <message>
        <source>garage, shed or porch</source>
        <translation>garage, remise ou véranda</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>à l’extérieur</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>des pieds</translation>
    </message>
    <message>
        <source>a base</source>
        <translation>un socle</translation>
    </message>
    <message>
        <source>the floor</source>
        <translation>le sol</translation>
    </message>
    <message>
        <source>open, over a jar</source>
        <translation>ouvert, au-dessus d’un bocal</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>fermé</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>%1 · as of %2 · %3</source>
        <translation>%1 · au %2 · %3</translation>
    </message>
    <message>
        <source>%1 · %2. Estimates, no measurements: a look into the tray rules over any number here.</source>
        <translation>%1 · %2. Des estimations, pas des mesures&#xa0;: ce qu’on voit dans le plateau l’emporte sur tout nombre ici.</translation>
    </message>
    <message>
        <source>This stack has ended. What follows is its story.</source>
        <translation>Cette pile est finie. Ce qui suit est son histoire.</translation>
    </message>
    <message>
        <source>How it stands</source>
        <translation>Où elle en est</translation>
    </message>
    <message>
        <source>The estimates are not there yet: this sheet holds only what the journal knows.</source>
        <translation>Les estimations ne sont pas encore là&#xa0;: cette fiche ne contient que ce que sait le journal.</translation>
    </message>
    <message>
        <source>The story of its batches</source>
        <translation>L’histoire de ses lots</translation>
    </message>
    <message>
        <source>No tray has been bedded yet.</source>
        <translation>Aucun plateau n’a encore reçu de litière.</translation>
    </message>
    <message>
        <source>Charts of the past year and the forecast under usual care</source>
        <translation>Graphiques de l’année passée et prévision avec les soins habituels</translation>
    </message>
    <message>
        <source>Lines are estimates, bands the range that holds nine times in ten; what is shaded, with a dashed line, is the forecast. Signs stand for what was written down.</source>
        <translation>Les lignes sont des estimations, les bandes la plage vraie neuf fois sur dix&#xa0;; ce qui est ombré, avec une ligne en tirets, est la prévision. Les signes marquent ce qui a été noté.</translation>
    </message>
    <message>
        <source>The signs in the charts</source>
        <translation>Les signes des graphiques</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>The pages could not be drawn.</source>
        <translation>Les pages n’ont pas pu être dessinées.</translation>
    </message>
</context>
<context>
    <name>SheetSentence</name>
    <message numerus="yes">
        <source>%n row(s), %1.</source>
        <translation>
            <numerusform>%n ligne, %1.</numerusform>
            <numerusform>%n lignes, %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The first %n row(s), %1; the others are being read.</source>
        <translation>
            <numerusform>La première ligne, %1&#xa0;; les autres sont en cours de lecture.</numerusform>
            <numerusform>Les %n premières lignes, %1&#xa0;; les autres sont en cours de lecture.</numerusform>
        </translation>
    </message>
    <message>
        <source>What parts the cells is not certain: look at the columns below.</source>
        <translation>Ce qui sépare les cellules n’est pas certain&#xa0;: regarder les colonnes ci-dessous.</translation>
    </message>
    <message>
        <source>No row names the columns: say below what each holds.</source>
        <translation>Aucune ligne ne nomme les colonnes&#xa0;: indiquer ci-dessous ce que contient chacune.</translation>
    </message>
    <message>
        <source>The columns are named in line %1; what stands above it is left out.</source>
        <translation>Les colonnes sont nommées à la ligne %1&#xa0;; ce qui est au-dessus est laissé de côté.</translation>
    </message>
    <message>
        <source>No column holds the date. Choose the one that does in the first row of the table.</source>
        <translation>Aucune colonne ne contient la date. Choisir celle qui la contient dans la première ligne du tableau.</translation>
    </message>
    <message>
        <source>Looking at the rows…</source>
        <translation>Examen des lignes…</translation>
    </message>
    <message>
        <source>Please answer what is asked above; then you see what becomes of each row.</source>
        <translation>Répondez à ce qui est demandé ci-dessus&#xa0;; vous verrez alors ce que devient chaque ligne.</translation>
    </message>
    <message>
        <source>There are no rows beneath the names of the columns: nothing to import.</source>
        <translation>Il n’y a aucune ligne sous les noms des colonnes&#xa0;: rien à importer.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) will be added, as one step that can be undone.</source>
        <translation>
            <numerusform>%n entrée sera ajoutée, en une étape qui peut s’annuler.</numerusform>
            <numerusform>%n entrées seront ajoutées, en une étape qui peut s’annuler.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing will be added.</source>
        <translation>Rien ne sera ajouté.</translation>
    </message>
    <message numerus="yes">
        <source>%n of them begin(s) what is a new stack.</source>
        <translation>
            <numerusform>%n d’entre elles commence une nouvelle pile.</numerusform>
            <numerusform>%n d’entre elles commencent une nouvelle pile.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) at fault: not added.</source>
        <translation>
            <numerusform>%n ligne en faute&#xa0;: non ajoutée.</numerusform>
            <numerusform>%n lignes en faute&#xa0;: non ajoutées.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) left out as answered.</source>
        <translation>
            <numerusform>%n ligne laissée de côté selon la réponse.</numerusform>
            <numerusform>%n lignes laissées de côté selon la réponse.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) already there: left out.</source>
        <translation>
            <numerusform>%n ligne déjà là&#xa0;: laissée de côté.</numerusform>
            <numerusform>%n lignes déjà là&#xa0;: laissées de côté.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) said before: left out.</source>
        <translation>
            <numerusform>%n ligne répétée&#xa0;: laissée de côté.</numerusform>
            <numerusform>%n lignes répétées&#xa0;: laissées de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>No household is open: you are asked for the name of a new one, which keeps your answers too.</source>
        <translation>Aucun foyer n’est ouvert&#xa0;: le nom d’un nouveau est demandé, qui garde aussi les réponses.</translation>
    </message>
    <message>
        <source>The rest of the file is being read; more may be asked then.</source>
        <translation>Le reste du fichier est en cours de lecture&#xa0;; d’autres questions peuvent suivre.</translation>
    </message>
</context>
<context>
    <name>SheetWords</name>
    <message>
        <source>date|day|when|date and time|date time|datetime|timestamp</source>
        <translation>date|jour|quand|date et heure|date heure|horodatage</translation>
    </message>
    <message>
        <source>time|time of day|clock|hour</source>
        <translation>heure|heure du jour|horloge</translation>
    </message>
    <message>
        <source>stack|bin|worm bin|name of the stack|stack name|bin name</source>
        <translation>pile|bac|lombricomposteur|composteur|vermicomposteur|nom de la pile|nom</translation>
    </message>
    <message>
        <source>action|activity|what was done|done|task|work|kind|type</source>
        <translation>action|activité|activite|ce qui a été fait|fait|tâche|tache|travail|genre|type</translation>
    </message>
    <message>
        <source>slot|tray|place|level|tray from below</source>
        <translation>niveau|plateau|place|étage|etage|plateau depuis le bas</translation>
    </message>
    <message>
        <source>amount|quantity|qty|how much|weight|mass|volume|number</source>
        <translation>quantité|quantite|qté|qte|combien|poids|masse|volume|nombre</translation>
    </message>
    <message>
        <source>unit|units|measure</source>
        <translation>unité|unite|unités|unites|mesure</translation>
    </message>
    <message>
        <source>item|material|food|feed|scraps|bedding|what|of what|species</source>
        <translation>matière|matiere|nourriture|aliment|restes|déchets|dechets|litière|litiere|quoi|de quoi|espèce|espece|article</translation>
    </message>
    <message>
        <source>detail|details</source>
        <translation>détail|detail|détails|details</translation>
    </message>
    <message>
        <source>note|notes|remark|remarks|comment|comments|observation|observations|description</source>
        <translation>note|notes|remarque|remarques|commentaire|commentaires|observation|observations|description</translation>
    </message>
    <message>
        <source>setup|set up|new stack|stack set up</source>
        <translation>installation|installer|nouvelle pile|pile installée|pile installee</translation>
    </message>
    <message>
        <source>stock|stocked|stocking|worms in|worms put in|worms added|added worms</source>
        <translation>vers mis|mettre des vers|vers ajoutés|vers ajoutes|ajout de vers|nouveaux vers</translation>
    </message>
    <message>
        <source>bed|bedded|bedding|bedding laid|tray added|added tray|new tray</source>
        <translation>litière|litiere|litière posée|litiere posee|plateau ajouté|plateau ajoute|ajout de plateau|nouveau plateau</translation>
    </message>
    <message>
        <source>feed|fed|feeding|food|scraps</source>
        <translation>nourrir|nourri|apport|apports|nourriture|restes|alimentation</translation>
    </message>
    <message>
        <source>cover|covered|covering|paper</source>
        <translation>couverture|couvrir|couvert|papier</translation>
    </message>
    <message>
        <source>water|watered|watering|misted</source>
        <translation>eau|arroser|arrosé|arrose|arrosage|brumisé|brumise</translation>
    </message>
    <message>
        <source>drain|drained|draining|leachate|sump emptied|emptied</source>
        <translation>vidange|vidanger|vidangé|vidange du bac|lixiviat|vidé|vide|vider|bac vidé</translation>
    </message>
    <message>
        <source>flush|flushed|flushing|rinsed</source>
        <translation>rincer|rincé|rince|rinçage|rincage</translation>
    </message>
    <message>
        <source>reading|readings|measured|measurement</source>
        <translation>relevé|releve|relevés|releves|mesure|mesures|mesuré|lecture</translation>
    </message>
    <message>
        <source>check|checked|look|looked|inspection|inspected</source>
        <translation>regard|regarder|regardé|contrôle|controle|contrôlé|inspection|inspecté</translation>
    </message>
    <message>
        <source>weigh|weighed|worms weighed|weighing</source>
        <translation>peser|pesé|pese|pesée|pesee|vers pesés|vers peses|pesée de vers</translation>
    </message>
    <message>
        <source>count|counted|worms counted</source>
        <translation>compter|compté|compte|comptage|vers comptés|vers comptes</translation>
    </message>
    <message>
        <source>trayweight|tray weight|tray weighed|weight of a tray</source>
        <translation>poids du plateau|poids d’un plateau|poids d&apos;un plateau|plateau pesé|plateau pese|pesée du plateau</translation>
    </message>
    <message>
        <source>rotate|rotated|rotation|lifted to the top</source>
        <translation>rotation|tourner|monter|monté|montée|montee|monté en haut</translation>
    </message>
    <message>
        <source>loosen|loosened</source>
        <translation>aérer|aere|aéré|aération|aeration|ameublir</translation>
    </message>
    <message>
        <source>harvest|harvested|castings taken</source>
        <translation>récolte|recolte|récolter|récolté|lombricompost prélevé|lombricompost preleve</translation>
    </message>
    <message>
        <source>remove|removed|worms taken|worms out|worms given away</source>
        <translation>retirer|retiré|retire|vers retirés|vers retires|vers sortis|vers donnés|vers donnes</translation>
    </message>
    <message>
        <source>event|problem|something odd</source>
        <translation>événement|evenement|évènement|problème|probleme|quelque chose d’étrange</translation>
    </message>
    <message>
        <source>note|noted|remark|comment</source>
        <translation>note|noté|remarque|commentaire</translation>
    </message>
    <message>
        <source>retire|retired|given up</source>
        <translation>arrêt|arret|arrêter|arrêtée|arretee|abandonnée|abandonnee</translation>
    </message>
    <message>
        <source>g|gr|gram|grams|gramme|grammes</source>
        <translation>g|gr|gramme|grammes</translation>
    </message>
    <message>
        <source>kg|kgs|kilo|kilos|kilogram|kilograms|kilogramme|kilogrammes</source>
        <translation>kg|kgs|kilo|kilos|kilogramme|kilogrammes</translation>
    </message>
    <message>
        <source>oz|ounce|ounces</source>
        <translation>oz|once|onces</translation>
    </message>
    <message>
        <source>lb|lbs|pound|pounds</source>
        <translation>lb|lbs|livre|livres</translation>
    </message>
    <message>
        <source>ml|millilitre|millilitres|milliliter|milliliters</source>
        <translation>ml|millilitre|millilitres</translation>
    </message>
    <message>
        <source>l|litre|litres|liter|liters</source>
        <translation>l|litre|litres</translation>
    </message>
    <message>
        <source>cup|cups</source>
        <translation>tasse|tasses</translation>
    </message>
    <message>
        <source>gal|gallon|gallons</source>
        <translation>gal|gallon|gallons</translation>
    </message>
    <message>
        <source>floz|fl oz|fluid ounce|fluid ounces</source>
        <translation>floz|fl oz|once liquide|onces liquides</translation>
    </message>
    <message>
        <source>count|pieces|worms|pcs</source>
        <translation>nombre|pièces|pieces|vers|pcs</translation>
    </message>
    <message>
        <source>Good to know</source>
        <translation>Bon à savoir</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>À faire</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Bientôt</translation>
    </message>
    <message>
        <source>Urgent</source>
        <translation>Urgent</translation>
    </message>
    <message>
        <source>What is due</source>
        <translation>Ce qui est à faire</translation>
    </message>
    <message>
        <source>Nothing is due.</source>
        <translation>Rien n’est à faire.</translation>
    </message>
    <message>
        <source>Estimates of the whole stack, with the range that holds nine times in ten</source>
        <translation>Estimations de toute la pile, avec la plage vraie neuf fois sur dix</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Estimate</source>
        <translation>Estimation</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonie</translation>
    </message>
    <message>
        <source>Worms</source>
        <translation>Vers</translation>
    </message>
    <message>
        <source>Adults among them</source>
        <translation>Dont adultes</translation>
    </message>
    <message>
        <source>Processing, dry matter</source>
        <translation>Traitement, matière sèche</translation>
    </message>
    <message>
        <source>Food taken up over what keeps them (above 1 the colony grows)</source>
        <translation>Nourriture prise par rapport à ce qui les maintient (au-dessus de 1 la colonie croît)</translation>
    </message>
    <message>
        <source>Bed temperature</source>
        <translation>Température du lit</translation>
    </message>
    <message>
        <source>Fresh food next week: least, usual, most</source>
        <translation>Nourriture fraîche la semaine prochaine&#xa0;: minimum, habituel, maximum</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>Runs into the sump next week</source>
        <translation>Entre dans le bac la semaine prochaine</translation>
    </message>
    <message>
        <source>Top tray filled</source>
        <translation>Plateau du haut rempli</translation>
    </message>
    <message>
        <source>Sump full, if nobody drains</source>
        <translation>Bac plein, si personne ne vidange</translation>
    </message>
    <message>
        <source>All batches</source>
        <translation>Tous les lots</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Lot</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Plateau</translation>
    </message>
    <message>
        <source>Bedded</source>
        <translation>Garni</translation>
    </message>
    <message>
        <source>Fed, fresh</source>
        <translation>Donné, frais</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Regards</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Monté</translation>
    </message>
    <message>
        <source>Ended</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Jours</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Prélevé</translation>
    </message>
    <message numerus="yes">
        <source>%1 in %n feeding(s)</source>
        <translation>
            <numerusform>%1 en %n apport</numerusform>
            <numerusform>%1 en %n apports</numerusform>
        </translation>
    </message>
    <message>
        <source>stands</source>
        <translation>en cours</translation>
    </message>
    <message>
        <source>Batch %1, in tray %2, %3 old</source>
        <translation>Lot %1, dans le plateau %2, âge&#xa0;: %3</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Done or seen</source>
        <translation>Fait ou vu</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Whole harvests by mass, beside what was expected of them</source>
        <translation>Récoltes entières en masse, à côté de ce qui en était attendu</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Attendu</translation>
    </message>
    <message>
        <source>Within the range</source>
        <translation>Dans la plage</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Précaution&#xa0;: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>with the stack, %1</source>
        <translation>avec la pile, %1</translation>
    </message>
    <message>
        <source>Batch %1, in tray %2, %3 old when the stack ended</source>
        <translation>Lot %1, dans le plateau %2, âgé de %3 à la fin de la pile</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>urgency, what</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <comment>urgency, when, what</comment>
        <translation>%1 (%2)&#xa0;: %3</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message numerus="yes">
        <source>%n tray(s)</source>
        <translation>
            <numerusform>%n plateau</numerusform>
            <numerusform>%n plateaux</numerusform>
        </translation>
    </message>
    <message>
        <source>lid on</source>
        <translation>couvercle mis</translation>
    </message>
    <message>
        <source>lid off</source>
        <translation>couvercle ôté</translation>
    </message>
    <message>
        <source>The file is open for reading only: nothing can be written down.</source>
        <translation>Le fichier est ouvert en lecture seule&#xa0;: rien ne peut être noté.</translation>
    </message>
    <message>
        <source>Go back to today to record with one click; “…” records on the day shown.</source>
        <translation>Revenir à aujourd’hui pour noter d’un clic&#xa0;; «&#xa0;…&#xa0;» note au jour affiché.</translation>
    </message>
    <message>
        <source>No tray stands that takes food.</source>
        <translation>Aucun plateau en place n’accepte de nourriture.</translation>
    </message>
    <message>
        <source>Feed %1</source>
        <translation>Repas %1</translation>
    </message>
    <message>
        <source>Water %1</source>
        <translation>Arroser %1</translation>
    </message>
    <message>
        <source>Drain %1</source>
        <translation>Vidanger %1</translation>
    </message>
    <message>
        <source>saving…</source>
        <translation>enregistrement…</translation>
    </message>
    <message>
        <source>updating…</source>
        <translation>mise à jour…</translation>
    </message>
    <message>
        <source>silent for %1</source>
        <translation>rien de noté&#xa0;: %1</translation>
    </message>
    <message>
        <source>no tray stands</source>
        <translation>aucun plateau en place</translation>
    </message>
    <message>
        <source>As it stood on %1, the past</source>
        <translation>Telle qu’au %1, le passé</translation>
    </message>
    <message>
        <source>%1 · estimating…</source>
        <translation>%1 · estimation…</translation>
    </message>
    <message>
        <source>%1 · usual feeding about %2 a week</source>
        <translation>%1 · d’habitude environ %2 par semaine</translation>
    </message>
    <message>
        <source>at most %1</source>
        <comment>food that is borne this week</comment>
        <translation>max. %1</translation>
    </message>
    <message>
        <source>%1 One click writes down %2, with its cover.</source>
        <translation>%1 Un clic inscrit %2, avec sa couverture.</translation>
    </message>
    <message>
        <source>no food now</source>
        <comment>beside the feeding button</comment>
        <translation>rien à donner</translation>
    </message>
    <message>
        <source>The most that is borne this week: more does not fit under the rim of the tray being fed.</source>
        <translation>Le plus qui soit supporté cette semaine&#xa0;: davantage ne tient pas sous le bord du plateau qu’on nourrit.</translation>
    </message>
    <message>
        <source>The most that is borne this week: a tray takes at most %1 a day.</source>
        <translation>Le plus qui soit supporté cette semaine&#xa0;: un plateau prend au plus %1 par jour.</translation>
    </message>
    <message>
        <source>The most that is borne this week: with more, the chance of too little air in the bed is above 5 %.</source>
        <translation>Le plus qui soit supporté cette semaine&#xa0;: avec plus, la probabilité de trop peu d’air dans le lit dépasse 5&#xa0;%.</translation>
    </message>
    <message>
        <source>The most that is borne this week: with more, the chance of too warm a bed is above 5 %.</source>
        <translation>Le plus qui soit supporté cette semaine&#xa0;: avec plus, la probabilité d’un lit trop chaud dépasse 5&#xa0;%.</translation>
    </message>
    <message>
        <source>Cover %1</source>
        <translation>Couvrir %1</translation>
    </message>
    <message>
        <source>The most that is borne today: %1 were given within these 7 days, and %2 is the most within any seven.</source>
        <translation>Le maximum supporté aujourd’hui&#xa0;: %1 ont été donnés ces 7 jours, et %2 est le maximum sur sept.</translation>
    </message>
    <message>
        <source>The most that is borne this week: half of the worms&apos; weight a day, and they are about %1.</source>
        <translation>Le maximum supporté cette semaine&#xa0;: la moitié du poids des vers par jour, et ils pèsent environ %1.</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 %2, and %3 of paper over it</source>
        <translation>Note pour aujourd’hui, d’un clic&#xa0;: %1 %2, et %3 de papier par-dessus</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 %2</source>
        <translation>Note pour aujourd’hui, d’un clic&#xa0;: %1 %2</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 of %2 over the tray being fed</source>
        <translation>Note pour aujourd’hui, d’un clic&#xa0;: %1 de %2 sur le plateau qu’on nourrit</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 of water into the tray being fed</source>
        <translation>Note pour aujourd’hui, d’un clic&#xa0;: %1 d’eau dans le plateau qu’on nourrit</translation>
    </message>
    <message>
        <source>Writes down for today, at one click: %1 drained. Not for leaves eaten raw, never drunk; wash your hands. A few worms in it are normal: put them back.</source>
        <translation>Note pour aujourd’hui, d’un clic&#xa0;: %1 vidangés. Pas sur des feuilles mangées crues, jamais à boire&#xa0;; se laver les mains. Quelques vers dedans, c’est normal&#xa0;: les remettre.</translation>
    </message>
    <message>
        <source>%1 will do</source>
        <comment>food that keeps the worms, where no feeding is usual</comment>
        <translation>%1 suffit</translation>
    </message>
    <message>
        <source>No feeding is usual here: %1 keeps the worms, at most %2 is borne.</source>
        <translation>Aucun apport n’est habituel ici&#xa0;: %1 suffit aux vers, %2 au plus est supporté.</translation>
    </message>
    <message>
        <source>Feed…</source>
        <translation>Nourrir…</translation>
    </message>
    <message>
        <source>Nothing more fits under the rim of the tray being fed, with its cover over it.</source>
        <translation>Plus rien ne tient sous le bord du plateau nourri, avec sa couverture par-dessus.</translation>
    </message>
    <message>
        <source>Only %1 of the usual %2 fit under the rim of the tray being fed, with the cover over it.</source>
        <translation>Seuls %1 des %2 habituels tiennent sous le bord du plateau nourri, avec la couverture par-dessus.</translation>
    </message>
    <message>
        <source>%1 The form records what was given all the same.</source>
        <translation>%1 Le formulaire note ce qui a été donné malgré tout.</translation>
    </message>
    <message>
        <source>nothing fits</source>
        <comment>beside the feeding button: under the rim of the tray</comment>
        <translation>plus rien ne tient</translation>
    </message>
    <message>
        <source>no more fits</source>
        <comment>beside the feeding button: under the rim of the tray</comment>
        <translation>pas davantage</translation>
    </message>
    <message>
        <source>Feed %1 today</source>
        <comment>a button: what is borne today, less than usual</comment>
        <translation>Nourrir %1 ce jour</translation>
    </message>
    <message>
        <source>could take %1 today</source>
        <comment>food that is borne at most</comment>
        <translation>peut prendre %1 ce jour</translation>
    </message>
</context>
<context>
    <name>ShelfStrips</name>
    <message>
        <source>processing, dry</source>
        <translation>traité, en sec</translation>
    </message>
    <message>
        <source>drained</source>
        <translation>vidangé</translation>
    </message>
    <message>
        <source>colony</source>
        <translation>colonie</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Les estimations se font.</translation>
    </message>
    <message>
        <source>(%1)</source>
        <translation>(%1)</translation>
    </message>
    <message>
        <source>Processing %1, dry matter. Runs into the sump %2. Colony %3.</source>
        <translation>Traitement %1, matière sèche. Entre dans le bac %2. Colonie %3.</translation>
    </message>
    <message>
        <source>Here grows a line of what is eaten.</source>
        <translation>Ici, la courbe de ce qui est mangé.</translation>
    </message>
    <message>
        <source>Here stands a bar for each drain.</source>
        <translation>Ici, une barre par vidange.</translation>
    </message>
    <message>
        <source>Here grows a line of the worms&apos; mass.</source>
        <translation>Ici, la courbe de la masse des vers.</translation>
    </message>
</context>
<context>
    <name>ShelfVerdict</name>
    <message>
        <source>Worms in the bottom tray are normal: they go down in the light.</source>
        <translation>Des vers dans le plateau du bas, c’est normal&#xa0;: ils descendent à la lumière.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <comment>what to do, and why</comment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Bottom tray is ready</source>
        <translation>Le plateau du bas est prêt</translation>
    </message>
    <message>
        <source>Ready, no hurry</source>
        <translation>Prêt, rien ne presse</translation>
    </message>
    <message>
        <source>Ready soon</source>
        <translation>Bientôt prêt</translation>
    </message>
    <message>
        <source>Harvest is overdue</source>
        <translation>La récolte est en retard</translation>
    </message>
    <message>
        <source>Time for another tray</source>
        <translation>Temps d’un autre plateau</translation>
    </message>
    <message>
        <source>A step came early</source>
        <translation>Une étape est venue tôt</translation>
    </message>
    <message>
        <source>Feeding is due</source>
        <translation>C’est l’heure de nourrir</translation>
    </message>
    <message>
        <source>Overfed</source>
        <translation>Trop nourrie</translation>
    </message>
    <message>
        <source>Hungry</source>
        <translation>Affamée</translation>
    </message>
    <message>
        <source>Short of paper</source>
        <translation>Manque de papier</translation>
    </message>
    <message>
        <source>Too wet</source>
        <translation>Trop mouillée</translation>
    </message>
    <message>
        <source>Too dry</source>
        <translation>Trop sèche</translation>
    </message>
    <message>
        <source>Little runs out</source>
        <translation>Il coule peu</translation>
    </message>
    <message>
        <source>Much runs out</source>
        <translation>Il coule beaucoup</translation>
    </message>
    <message>
        <source>It gets too hot</source>
        <translation>Il fait trop chaud</translation>
    </message>
    <message>
        <source>It gets too cold</source>
        <translation>Il fait trop froid</translation>
    </message>
    <message>
        <source>Light-drying is done</source>
        <translation>Séchage à la lumière fini</translation>
    </message>
    <message>
        <source>Cocoons and some young always stay in the castings.</source>
        <translation>Des cocons et quelques jeunes restent toujours dans le lombricompost.</translation>
    </message>
    <message>
        <source>Drying for long</source>
        <translation>Sèche depuis longtemps</translation>
    </message>
    <message>
        <source>The record is silent</source>
        <translation>Rien de noté depuis longtemps</translation>
    </message>
    <message>
        <source>Top tray is full</source>
        <translation>Le plateau du haut est plein</translation>
    </message>
    <message>
        <source>Drain the sump</source>
        <translation>Vidanger le bac</translation>
    </message>
    <message>
        <source>A few worms in the sump are normal: put them back.</source>
        <translation>Quelques vers dans le bac, c’est normal&#xa0;: les remettre.</translation>
    </message>
    <message>
        <source>A look would tell</source>
        <translation>Un regard trancherait</translation>
    </message>
    <message>
        <source>The record does not fit</source>
        <translation>Les notes ne concordent pas</translation>
    </message>
    <message>
        <source>About %1 of its worms are still in it.</source>
        <translation>Il y reste environ %1 de ses vers.</translation>
    </message>
    <message>
        <source>Take the castings.</source>
        <translation>Prélever le lombricompost.</translation>
    </message>
    <message>
        <source>Leave it in the light; most worms go down in 2 to 7 days.</source>
        <translation>Le laisser à la lumière&#xa0;; la plupart des vers descendent en 2 à 7 jours.</translation>
    </message>
    <message>
        <source>Light-drying is done, day %1</source>
        <translation>Séchage à la lumière fini, jour %1</translation>
    </message>
    <message>
        <source>Light-drying, day %1</source>
        <translation>Séchage à la lumière, jour %1</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Feed-to-cast %1, ready with %2&#xa0;%.</source>
        <translation>Aliment/compost %1, prêt à %2&#xa0;%.</translation>
    </message>
    <message>
        <source>Ready about %1.</source>
        <translation>Prêt&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Bottom tray is nearly ready</source>
        <translation>Le plateau du bas est presque prêt</translation>
    </message>
    <message>
        <source>Young stack</source>
        <translation>Jeune pile</translation>
    </message>
    <message>
        <source>Castings %1 deep so far; another tray at %2. %3</source>
        <translation>Lombricompost&#xa0;: %1 d’épaisseur pour l’instant&#xa0;; un autre plateau à %2. %3</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Au travail</translation>
    </message>
    <message>
        <source>No tray stands</source>
        <translation>Aucun plateau en place</translation>
    </message>
    <message>
        <source>Lay bedding in a tray to begin.</source>
        <translation>Poser de la litière dans un plateau pour commencer.</translation>
    </message>
    <message>
        <source>Estimating…</source>
        <translation>Estimation…</translation>
    </message>
    <message>
        <source>Trays are drawn from the journal; depths follow in a moment.</source>
        <translation>Les plateaux sont dessinés d’après le journal&#xa0;; les épaisseurs suivent dans un instant.</translation>
    </message>
    <message>
        <source>No entry for %1</source>
        <translation>Aucune entrée depuis %1</translation>
    </message>
    <message>
        <source>No worms in it</source>
        <translation>Pas de vers dedans</translation>
    </message>
    <message>
        <source>Tray in slot %1 is ready</source>
        <translation>Plateau du niveau %1 prêt</translation>
    </message>
    <message>
        <source>The estimates take it that hardly any food and no water were given since, but by a routine. Write down what was done since, or look into a tray.</source>
        <translation>Les estimations supposent que depuis, presque aucune nourriture ni eau n’ont été données, sauf par une habitude. Notez ce qui a été fait depuis, ou regardez dans un plateau.</translation>
    </message>
</context>
<context>
    <name>ShelfWords</name>
    <message>
        <source>new</source>
        <comment>a tray without castings</comment>
        <translation>neuf</translation>
    </message>
    <message>
        <source>Tray, batch %1</source>
        <translation>Plateau, lot %1</translation>
    </message>
    <message>
        <source>Bottom tray, slot 1 of %1, batch %2</source>
        <translation>Plateau du bas, niveau 1 sur %1, lot %2</translation>
    </message>
    <message>
        <source>Top tray, slot %1 of %1, batch %2</source>
        <translation>Plateau du haut, niveau %1 sur %1, lot %2</translation>
    </message>
    <message>
        <source>Tray in slot %1 of %2, batch %3</source>
        <translation>Plateau au niveau %1 sur %2, lot %3</translation>
    </message>
    <message>
        <source>castings %1</source>
        <translation>lombricompost %1</translation>
    </message>
    <message>
        <source>softened %1</source>
        <translation>ramolli %1</translation>
    </message>
    <message>
        <source>food %1</source>
        <translation>nourriture %1</translation>
    </message>
    <message>
        <source>bedding %1</source>
        <translation>litière %1</translation>
    </message>
    <message>
        <source>nothing in it</source>
        <translation>rien dedans</translation>
    </message>
    <message>
        <source>from the floor up: %1</source>
        <translation>du fond vers le haut&#xa0;: %1</translation>
    </message>
    <message>
        <source>light-drying, day %1</source>
        <translation>séchage à la lumière, jour %1</translation>
    </message>
    <message>
        <source>food goes in here</source>
        <translation>la nourriture va ici</translation>
    </message>
    <message>
        <source>working</source>
        <translation>au travail</translation>
    </message>
    <message>
        <source>nearly</source>
        <translation>presque</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>prêt</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>en retard</translation>
    </message>
    <message>
        <source>drying</source>
        <translation>en séchage</translation>
    </message>
    <message>
        <source>estimating…</source>
        <translation>estimation…</translation>
    </message>
    <message>
        <source>being fed</source>
        <translation>nourri</translation>
    </message>
    <message>
        <source>chance %1</source>
        <comment>that a tray is ready</comment>
        <translation>probabilité %1</translation>
    </message>
    <message>
        <source>%1; since about %2</source>
        <translation>%1&#xa0;; depuis&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1; about %2</source>
        <translation>%1&#xa0;; date&#xa0;: %2</translation>
    </message>
    <message>
        <source>Feed-to-cast</source>
        <translation>Aliment/compost</translation>
    </message>
    <message>
        <source>%1; ready at 0.10 or below</source>
        <translation>%1&#xa0;; prêt à 0,10 ou moins</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Prêt</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Lombricompost</translation>
    </message>
    <message>
        <source>%1 deep, %2 dry</source>
        <translation>%1 d’épaisseur, %2 en sec</translation>
    </message>
    <message>
        <source>Put in, dry</source>
        <translation>Mis, en sec</translation>
    </message>
    <message>
        <source>Worms in it</source>
        <translation>Vers dedans</translation>
    </message>
    <message>
        <source>Cocoons</source>
        <translation>Cocons</translation>
    </message>
    <message>
        <source>Weight, tray and all</source>
        <translation>Poids, plateau compris</translation>
    </message>
    <message>
        <source>Bulk that stays</source>
        <translation>Matière qui reste</translation>
    </message>
    <message>
        <source>%1 dry: use as it is, or sift</source>
        <translation>%1 en sec&#xa0;: à utiliser telle quelle, ou à tamiser</translation>
    </message>
    <message>
        <source>%1 old</source>
        <translation>âge&#xa0;: %1</translation>
    </message>
    <message>
        <source>Bedded</source>
        <translation>Garni</translation>
    </message>
    <message>
        <source>%1, %2 ago; tray %3</source>
        <comment>a day, how long ago, the tray&apos;s number</comment>
        <translation>%1, il y a %2&#xa0;; plateau %3</translation>
    </message>
    <message>
        <source>estimating</source>
        <translation>estimation</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Les estimations se font.</translation>
    </message>
    <message>
        <source>feed-to-cast %1</source>
        <translation>aliment/compost %1</translation>
    </message>
    <message>
        <source>%1, chance %2</source>
        <translation>%1, probabilité %2</translation>
    </message>
    <message>
        <source>worms %1</source>
        <translation>vers %1</translation>
    </message>
    <message>
        <source>Worms in the bottom tray are normal: they go down in the light.</source>
        <translation>Des vers dans le plateau du bas, c’est normal&#xa0;: ils descendent à la lumière.</translation>
    </message>
    <message>
        <source>Most worms leave in 2 to 7 days; cocoons and some young go with the castings.</source>
        <translation>La plupart des vers partent en 2 à 7 jours&#xa0;; des cocons et quelques jeunes vont avec le lombricompost.</translation>
    </message>
    <message>
        <source>sump of %1</source>
        <translation>bac de %1</translation>
    </message>
    <message>
        <source>spigot open</source>
        <translation>robinet ouvert</translation>
    </message>
    <message>
        <source>spigot shut</source>
        <translation>robinet fermé</translation>
    </message>
    <message>
        <source>Sump</source>
        <translation>Bac</translation>
    </message>
    <message>
        <source>holds up to %1; %2; estimating</source>
        <translation>contient jusqu’à %1&#xa0;; %2&#xa0;; estimation</translation>
    </message>
    <message>
        <source>%1 in it, room for %2; %3</source>
        <translation>%1 dedans, place pour %2&#xa0;; %3</translation>
    </message>
    <message>
        <source>In it</source>
        <translation>Dedans</translation>
    </message>
    <message>
        <source>%1, of %2; %3</source>
        <translation>%1, sur %2&#xa0;; %3</translation>
    </message>
    <message>
        <source>Full about</source>
        <translation>Plein</translation>
    </message>
    <message>
        <source>Runs in now</source>
        <translation>Y entre maintenant</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Force</translation>
    </message>
    <message>
        <source>about %1 mS/cm</source>
        <translation>environ %1 mS/cm</translation>
    </message>
    <message>
        <source>A few worms in the sump are normal: put them back.</source>
        <translation>Quelques vers dans le bac, c’est normal&#xa0;: les remettre.</translation>
    </message>
    <message>
        <source>colony %1 · %2</source>
        <translation>colonie %1 · %2</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>fed %1 %2</source>
        <comment>an amount and a day</comment>
        <translation>apport %1 %2</translation>
    </message>
    <message>
        <source>drained %1</source>
        <comment>a day</comment>
        <translation>vidé %1</translation>
    </message>
</context>
<context>
    <name>SlotChoices</name>
    <message>
        <source>the one being fed (slot %1)</source>
        <translation>celui qu’on nourrit (niveau %1)</translation>
    </message>
    <message>
        <source>the one being fed</source>
        <translation>celui qu’on nourrit</translation>
    </message>
    <message>
        <source>the whole stack</source>
        <translation>toute la pile</translation>
    </message>
    <message>
        <source>the top one</source>
        <translation>celui du haut</translation>
    </message>
    <message>
        <source>the drying one (slot %1)</source>
        <translation>celui qui sèche (niveau %1)</translation>
    </message>
    <message>
        <source>slot %1: tray %2, %3</source>
        <translation>niveau %1&#xa0;: plateau %2, %3</translation>
    </message>
    <message>
        <source>slot %1, which is not there that day</source>
        <translation>niveau %1, absent ce jour-là</translation>
    </message>
</context>
<context>
    <name>Sources</name>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>memory, weak</source>
        <translation>de mémoire, peu sûr</translation>
    </message>
    <message>
        <source>second hand</source>
        <translation>de seconde main</translation>
    </message>
    <message>
        <source>read</source>
        <translation>lu</translation>
    </message>
    <message>
        <source>read in abstract</source>
        <translation>lu dans le résumé</translation>
    </message>
    <message>
        <source>abstract</source>
        <translation>résumé</translation>
    </message>
    <message>
        <source>abstracts</source>
        <translation>résumés</translation>
    </message>
    <message>
        <source>about</source>
        <translation>environ</translation>
    </message>
    <message>
        <source>our judgement</source>
        <translation>notre jugement</translation>
    </message>
    <message>
        <source>judgement</source>
        <translation>jugement</translation>
    </message>
    <message>
        <source>a rule of this program</source>
        <translation>une règle de ce programme</translation>
    </message>
    <message>
        <source>this program&apos;s estimate</source>
        <translation>l’estimation de ce programme</translation>
    </message>
    <message>
        <source>local code rules</source>
        <translation>les règles locales priment</translation>
    </message>
    <message>
        <source>rest memory</source>
        <translation>le reste de mémoire</translation>
    </message>
    <message>
        <source>loose bulk and water memory</source>
        <translation>densité en vrac et eau de mémoire</translation>
    </message>
    <message>
        <source>N and C:N memory</source>
        <translation>N et C:N de mémoire</translation>
    </message>
    <message>
        <source>C:N from 50 % carbon</source>
        <translation>C:N d’après 50 % de carbone</translation>
    </message>
    <message>
        <source>kept for completeness</source>
        <translation>pour être complet</translation>
    </message>
    <message>
        <source>not recommended (peatland)</source>
        <translation>déconseillée (tourbières)</translation>
    </message>
    <message>
        <source>ours: an assumed mixture, not for checks</source>
        <translation>la nôtre : un mélange supposé, pas pour vérifier</translation>
    </message>
    <message>
        <source>not a carbon source</source>
        <translation>pas une source de carbone</translation>
    </message>
    <message>
        <source>check for dewormers</source>
        <translation>attention aux vermifuges</translation>
    </message>
    <message>
        <source>N = protein/6.25, C = (100-ash)/1.8 of dry matter</source>
        <translation>N = protéines/6,25, C = (100 − cendres)/1,8 de la matière sèche</translation>
    </message>
    <message>
        <source>softening class, bulk, water held and welcome</source>
        <translation>classe de ramollissement, densité, eau retenue et accueil</translation>
    </message>
    <message>
        <source>softening class, bulk and water held</source>
        <translation>classe de ramollissement, densité et eau retenue</translation>
    </message>
    <message>
        <source>kept out</source>
        <translation>à exclure</translation>
    </message>
    <message>
        <source>round figures from memory of the USDA National Nutrient Database</source>
        <translation>chiffres ronds de la USDA National Nutrient Database, de mémoire</translation>
    </message>
    <message>
        <source>composition</source>
        <translation>composition</translation>
    </message>
    <message>
        <source>composition as of spent tea</source>
        <translation>composition comme celle du thé infusé</translation>
    </message>
    <message>
        <source>composition as of horse manure</source>
        <translation>composition comme celle du fumier de cheval</translation>
    </message>
    <message>
        <source>composition as of office paper</source>
        <translation>composition comme celle du papier de bureau</translation>
    </message>
    <message>
        <source>composition as of shavings</source>
        <translation>composition comme celle des copeaux</translation>
    </message>
    <message>
        <source>that many bags hold plastic</source>
        <translation>que beaucoup de sachets contiennent du plastique</translation>
    </message>
    <message>
        <source>that they carry a colour developer</source>
        <translation>qu’ils portent un révélateur de couleur</translation>
    </message>
    <message>
        <source>a third of it clay and size</source>
        <translation>un tiers d’argile et de colle</translation>
    </message>
    <message>
        <source>welcome</source>
        <translation>accueil</translation>
    </message>
    <message>
        <source>caustic, it burns worms and skin</source>
        <translation>caustique, brûle les vers et la peau</translation>
    </message>
    <message>
        <source>the only lime for a sour bed, never slaked or quick lime</source>
        <translation>la seule chaux pour une litière acide, jamais éteinte ni vive</translation>
    </message>
    <message>
        <source>softens in hot piles, not in a worm bin</source>
        <translation>ramollit dans un tas chaud, pas dans un lombricomposteur</translation>
    </message>
    <message>
        <source>bulk 21-36 kg/m3 and 3 parts water to 1 paper</source>
        <translation>densité 21-36 kg/m³ et 3 parts d’eau pour 1 de papier</translation>
    </message>
    <message>
        <source>about 94 % CaCO3</source>
        <translation>environ 94 % de CaCO3</translation>
    </message>
    <message>
        <source>C:N 40-80 read</source>
        <translation>C:N 40-80 lu</translation>
    </message>
    <message>
        <source>C:N 20 NRAES-54 second hand</source>
        <translation>C:N 20 selon NRAES-54, de seconde main</translation>
    </message>
    <message>
        <source>C:N 19 second hand</source>
        <translation>C:N 19 de seconde main</translation>
    </message>
    <message>
        <source>Golueke 1972 read</source>
        <translation>Golueke 1972, lu</translation>
    </message>
    <message>
        <source>40-80 kg/m3 dry</source>
        <translation>40-80 kg/m³ à sec</translation>
    </message>
    <message>
        <source>holds 7.5-11</source>
        <translation>retient 7,5-11</translation>
    </message>
    <message>
        <source>water Spiehs et al. 2013 (3.6 g/g when fine)</source>
        <translation>eau Spiehs et al. 2013 (3,6 g/g si fine)</translation>
    </message>
    <message>
        <source>NRAES-54 nitrogen</source>
        <translation>NRAES-54, azote</translation>
    </message>
    <message>
        <source>NRAES-54 table A.1</source>
        <translation>NRAES-54, tableau A.1</translation>
    </message>
    <message>
        <source>NRAES-54 softwood 212-1313</source>
        <translation>NRAES-54, bois tendre 212-1313</translation>
    </message>
    <message>
        <source>NRAES-54 C:N range 398-852</source>
        <translation>NRAES-54, C:N 398-852</translation>
    </message>
    <message>
        <source>NRAES-54 broiler and layer manure (N 1.6-10, C:N 3-14)</source>
        <translation>NRAES-54, fumier de poulets et de pondeuses (N 1,6-10, C:N 3-14)</translation>
    </message>
    <message>
        <source>NRAES-54 vegetable produce</source>
        <translation>NRAES-54, légumes</translation>
    </message>
    <message>
        <source>fresh food a day for their own mass of worms</source>
        <translation>nourriture fraîche par jour pour la même masse de vers</translation>
    </message>
    <message>
        <source>parts of water for one of paper</source>
        <translation>parts d’eau pour une de papier</translation>
    </message>
    <message>
        <source>common practice (a wrung-out sponge), no source</source>
        <translation>pratique courante (une éponge essorée), sans source</translation>
    </message>
    <message>
        <source>the share itself is ours</source>
        <translation>la part elle-même est de nous</translation>
    </message>
    <message>
        <source>for composting</source>
        <translation>pour le compostage</translation>
    </message>
    <message>
        <source>the middle of Cooperband 2002</source>
        <translation>le milieu de Cooperband 2002</translation>
    </message>
    <message>
        <source>as fitted for the model</source>
        <translation>tel qu’ajusté pour le modèle</translation>
    </message>
    <message>
        <source>a litre of moist castings</source>
        <translation>un litre de lombricompost humide</translation>
    </message>
    <message>
        <source>at 25 °C</source>
        <translation>à 25 °C</translation>
    </message>
    <message>
        <source>Lalander et al. 2015 and Zziwa et al. 2021</source>
        <translation>Lalander et al. 2015 et Zziwa et al. 2021</translation>
    </message>
    <message>
        <source>46 to 60 % lost</source>
        <translation>46 à 60 % perdus</translation>
    </message>
    <message>
        <source>after the hatching time of Venter &amp; Reinecke 1988</source>
        <translation>d’après le temps d’éclosion de Venter &amp; Reinecke 1988</translation>
    </message>
    <message>
        <source>a journal&apos;s abstract</source>
        <translation>résumé d’une revue</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>matière sèche</translation>
    </message>
    <message>
        <source>the same as in the reckoning</source>
        <translation>la même que dans le calcul</translation>
    </message>
    <message>
        <source>where the entry names none</source>
        <translation>si l’entrée n’en dit rien</translation>
    </message>
    <message>
        <source>it differs from place to place: measure yours</source>
        <translation>elle varie d’un lieu à l’autre : mesurez la vôtre</translation>
    </message>
    <message>
        <source>an empty tray, where none was weighed</source>
        <translation>un plateau vide, si aucun n’a été pesé</translation>
    </message>
    <message>
        <source>for a square metre, once</source>
        <translation>pour un mètre carré, une fois</translation>
    </message>
    <message>
        <source>from egg to fly in a warm room</source>
        <translation>de l’œuf à la mouche dans une pièce chaude</translation>
    </message>
    <message>
        <source>revised NIOSH lifting equation</source>
        <translation>équation de levage NIOSH révisée</translation>
    </message>
    <message>
        <source>NIOSH lifting equation</source>
        <translation>équation de levage NIOSH</translation>
    </message>
    <message>
        <source>the tray&apos;s weight</source>
        <translation>le poids du plateau</translation>
    </message>
    <message>
        <source>moulds</source>
        <translation>moisissures</translation>
    </message>
    <message>
        <source>Queensland WorkSafe and New Zealand health pages</source>
        <translation>Queensland WorkSafe et pages de santé de Nouvelle-Zélande</translation>
    </message>
    <message>
        <source>dewormers</source>
        <translation>vermifuges</translation>
    </message>
    <message>
        <source>cat and dog waste</source>
        <translation>déjections de chat et de chien</translation>
    </message>
    <message>
        <source>tetanus and pregnancy</source>
        <translation>tétanos et grossesse</translation>
    </message>
    <message>
        <source>fitted within the range to measured pots</source>
        <translation>ajusté dans la plage sur des pots mesurés</translation>
    </message>
    <message>
        <source>0.70 g/d fresh x M^(2/3)</source>
        <translation>0,70 g/j frais × M^(2/3)</translation>
    </message>
    <message>
        <source>0.25 to 0.5 of their mass a day, fresh</source>
        <translation>0,25 à 0,5 de leur masse par jour, frais</translation>
    </message>
    <message>
        <source>worm yield 3.5 to 10 % of DM</source>
        <translation>rendement en vers 3,5 à 10 % de la matière sèche</translation>
    </message>
    <message>
        <source>0.0036: 58 J/d at 1 g, 25 C; 16 kJ/g DM</source>
        <translation>0,0036 : 58 J/j à 1 g, 25 °C ; 16 kJ/g de matière sèche</translation>
    </message>
    <message>
        <source>2.45 cocoons a week, peak 4.9</source>
        <translation>2,45 cocons par semaine, maximum 4,9</translation>
    </message>
    <message>
        <source>23 d at 25 C</source>
        <translation>23 j à 25 °C</translation>
    </message>
    <message>
        <source>mean life 590 d</source>
        <translation>vie moyenne 590 j</translation>
    </message>
    <message>
        <source>Michon 1954 through a review</source>
        <translation>Michon 1954 d’après une synthèse</translation>
    </message>
    <message>
        <source>1.6 best</source>
        <translation>1,6 au mieux</translation>
    </message>
    <message>
        <source>x1.5 to 3.8 on decay</source>
        <translation>×1,5 à 3,8 sur la décomposition</translation>
    </message>
    <message>
        <source>a thesis of Makerere University</source>
        <translation>une thèse de la Makerere University</translation>
    </message>
    <message>
        <source>whole-bin loss 0.46 to 0.60</source>
        <translation>perte de l’ensemble 0,46 à 0,60</translation>
    </message>
    <message>
        <source>within its range for the timing of the trade</source>
        <translation>dans sa plage selon les délais d’usage</translation>
    </message>
    <message>
        <source>leachate 2.6 mS/cm</source>
        <translation>lixiviat 2,6 mS/cm</translation>
    </message>
    <message>
        <source>1.5 to 3 harmless</source>
        <translation>1,5 à 3 sans danger</translation>
    </message>
    <message>
        <source>Beta(2, 18) as a logit-normal of the same median and 90 % range</source>
        <translation>Beta(2, 18) en logit-normale de même médiane et plage à 90 %</translation>
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
        <translation>robinet ouvert</translation>
    </message>
    <message>
        <source>sump</source>
        <translation>bac</translation>
    </message>
    <message>
        <source>ready: castings</source>
        <translation>prêt&#xa0;: lombricompost</translation>
    </message>
    <message>
        <source>working</source>
        <translation>au travail</translation>
    </message>
    <message>
        <source>fed here</source>
        <translation>on nourrit ici</translation>
    </message>
    <message>
        <source>bedding and worms</source>
        <translation>litière et vers</translation>
    </message>
    <message>
        <source>The first day: one tray of wet bedding over the sump, worms in it, the spigot open.</source>
        <translation>Le premier jour&#xa0;: un plateau de litière mouillée sur le bac, des vers dedans, le robinet ouvert.</translation>
    </message>
    <message>
        <source>castings</source>
        <translation>lombricompost</translation>
    </message>
    <message>
        <source>fresh bedding</source>
        <translation>litière fraîche</translation>
    </message>
    <message>
        <source>A new tray of bedding on top of one that is filled.</source>
        <translation>Un nouveau plateau de litière sur un plateau rempli.</translation>
    </message>
    <message>
        <source>food under cover</source>
        <translation>nourriture sous couverture</translation>
    </message>
    <message>
        <source>A feeding lies flat under the cover; castings gather at the floor.</source>
        <translation>Un apport est à plat sous la couverture&#xa0;; le lombricompost s’amasse au fond.</translation>
    </message>
    <message>
        <source>drips through</source>
        <translation>goutte au travers</translation>
    </message>
    <message>
        <source>What the tray does not hold runs into the sump: this one wants draining.</source>
        <translation>Ce que le plateau ne retient pas coule dans le bac&#xa0;: celui-ci demande une vidange.</translation>
    </message>
    <message>
        <source>filled</source>
        <translation>rempli</translation>
    </message>
    <message>
        <source>The first tray is filled, the second is fed from now on.</source>
        <translation>Le premier plateau est rempli, on nourrit désormais le deuxième.</translation>
    </message>
    <message>
        <source>A stack in full work: oldest castings at the bottom, food at the top.</source>
        <translation>Une pile en plein travail&#xa0;: le lombricompost le plus vieux en bas, la nourriture en haut.</translation>
    </message>
    <message>
        <source>drying, lid off</source>
        <translation>séchage, sans couvercle</translation>
    </message>
    <message>
        <source>The bottom tray stands on top, lid off, loosened: its worms go down from the light. Feed only the tray below it.</source>
        <translation>Le plateau du bas est en haut, sans couvercle, aéré&#xa0;: ses vers descendent loin de la lumière. Ne nourrir que le plateau du dessous.</translation>
    </message>
    <message>
        <source>bedded anew</source>
        <translation>litière neuve</translation>
    </message>
    <message>
        <source>The castings are taken; the tray is bedded anew and stands on top.</source>
        <translation>Le lombricompost est prélevé&#xa0;; le plateau est regarni de litière et placé en haut.</translation>
    </message>
    <message>
        <source>Two stacks of one: each goes on with a part of the colony.</source>
        <translation>Deux piles d’une seule&#xa0;: chacune continue avec une partie de la colonie.</translation>
    </message>
    <message>
        <source>new stack</source>
        <translation>nouvelle pile</translation>
    </message>
</context>
<context>
    <name>StockBody</name>
    <message>
        <source>Worms</source>
        <translation>Vers</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Combien pèsent les vers&#xa0;?</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>Comptés</translation>
    </message>
    <message>
        <source>only if you counted them; else a mixed colony is taken</source>
        <translation>seulement si vous les avez comptés&#xa0;; sinon une colonie mêlée est supposée</translation>
    </message>
    <message>
        <source>Species</source>
        <translation>Espèce</translation>
    </message>
    <message>
        <source>%1 (usual)</source>
        <translation>%1 (habituel)</translation>
    </message>
    <message>
        <source>this stack was stocked with another species before; the latest rules its reckoning</source>
        <translation>une autre espèce a été mise auparavant dans cette pile&#xa0;; la dernière décide de son calcul</translation>
    </message>
</context>
<context>
    <name>StoreText</name>
    <message>
        <source>%1 could not be written: the disk is full. Nothing of it was kept.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: le disque est plein. Rien n’en a été conservé.</translation>
    </message>
    <message>
        <source>%1 could not be written: the household file is damaged. Nothing of it was kept.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: le fichier du foyer est abîmé. Rien n’en a été conservé.</translation>
    </message>
    <message>
        <source>%1 could not be written: there is no permission for its folder, or no such folder.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: pas de droit sur son dossier, ou pas de tel dossier.</translation>
    </message>
    <message>
        <source>%1 could not be written. Nothing of it was kept. The reason given: %2.</source>
        <translation>%1 n’a pas pu être écrit. Rien n’en a été conservé. Raison indiquée&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 could not be written: what the disk gave back is not what was written. Nothing of it was kept.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: ce que le disque a rendu n’est pas ce qui a été écrit. Rien n’en a été conservé.</translation>
    </message>
    <message>
        <source>%1 is there already. It was left as it is.</source>
        <translation>%1 existe déjà. Il a été laissé tel quel.</translation>
    </message>
    <message>
        <source>Called off. Nothing of %1 was kept.</source>
        <translation>Interrompu. Rien de %1 n’a été conservé.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2. Nothing of it was kept.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: %2. Rien n’en a été conservé.</translation>
    </message>
    <message>
        <source>%1 could not be written: its folder could not be put on the disk. Nothing of it was kept.</source>
        <translation>%1 n’a pas pu être écrit&#xa0;: son dossier n’a pas pu être inscrit sur le disque. Rien n’en a été conservé.</translation>
    </message>
    <message>
        <source>The folder chosen for backups is not there: %1.</source>
        <translation>Le dossier choisi pour les sauvegardes n’est pas là&#xa0;: %1.</translation>
    </message>
    <message>
        <source>No backup could be made; what you record is kept all the same. %1</source>
        <translation>Aucune sauvegarde n’a pu être faite&#xa0;; ce que vous notez est conservé quand même. %1</translation>
    </message>
    <message>
        <source>The backup was made elsewhere, in %1. %2</source>
        <translation>La sauvegarde a été faite ailleurs, dans %1. %2</translation>
    </message>
    <message>
        <source>Entry %1 has meanwhile been changed or deleted. Nothing was written; look at the journal and try again.</source>
        <translation>L’entrée %1 a été changée ou supprimée entre-temps. Rien n’a été écrit&#xa0;; regarder le journal et réessayer.</translation>
    </message>
    <message>
        <source>An entry holds something that is not a number in %1. Nothing was written.</source>
        <translation>Une entrée contient autre chose qu’un nombre dans %1. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Entry %1 cannot be read: %2 makes no sense to this release.</source>
        <translation>L’entrée %1 ne peut pas être lue&#xa0;: %2 n’a pas de sens pour cette version.</translation>
    </message>
    <message>
        <source>%1 is not there. Nothing was made; check the name and the folder.</source>
        <translation>%1 n’est pas là. Rien n’a été créé&#xa0;; vérifier le nom et le dossier.</translation>
    </message>
    <message>
        <source>%1 is not a household file. It was left as it is; choose another file.</source>
        <translation>%1 n’est pas un fichier de foyer. Il a été laissé tel quel&#xa0;; choisir un autre fichier.</translation>
    </message>
    <message>
        <source>%1 is damaged: it was cut short or changed by something else. It was left as it is; restore a backup.</source>
        <translation>%1 est abîmé&#xa0;: il a été tronqué ou changé par autre chose. Il a été laissé tel quel&#xa0;; restaurer une sauvegarde.</translation>
    </message>
    <message>
        <source>%1 was written by a newer release. It was left as it is and can only be read; update the program to write to it.</source>
        <translation>%1 a été écrit par une version plus récente. Il a été laissé tel quel et ne peut qu’être lu&#xa0;; mettre à jour le programme pour y écrire.</translation>
    </message>
    <message>
        <source>%1 cannot be opened: there is no permission for the file or its folder. It was left as it is; change its permissions.</source>
        <translation>%1 ne peut pas être ouvert&#xa0;: pas de droit sur le fichier ou son dossier. Il a été laissé tel quel&#xa0;; changer ses droits.</translation>
    </message>
    <message>
        <source>%1 is in use by another program. It was left as it is; try again when that program is done.</source>
        <translation>%1 est occupé par un autre programme. Il a été laissé tel quel&#xa0;; réessayer quand ce programme aura fini.</translation>
    </message>
    <message>
        <source>The disk with %1 is full. Nothing was written; make room and try again.</source>
        <translation>Le disque de %1 est plein. Rien n’a été écrit&#xa0;; faire de la place et réessayer.</translation>
    </message>
    <message>
        <source>%1 cannot be opened. It was left as it is.</source>
        <translation>%1 ne peut pas être ouvert. Il a été laissé tel quel.</translation>
    </message>
    <message>
        <source>The reason given: %1.</source>
        <translation>Raison indiquée&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The disk with %1 did not confirm the write. See that the disk is in order, then look whether the entry is there before it is recorded again. The reason given: %2.</source>
        <translation>Le disque de %1 n’a pas confirmé l’écriture. Vérifier que le disque est en ordre, puis regarder si l’entrée y est avant de la noter de nouveau. Raison indiquée&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 was moved or removed while it was open. Nothing was written; put it back, or open it where it is now.</source>
        <translation>%1 a été déplacé ou enlevé pendant qu’il était ouvert. Rien n’a été écrit&#xa0;; le remettre en place, ou l’ouvrir là où il est maintenant.</translation>
    </message>
    <message>
        <source>%1 is in use by another program. Nothing was written; try again when that program is done.</source>
        <translation>%1 est occupé par un autre programme. Rien n’a été écrit&#xa0;; réessayer quand ce programme aura fini.</translation>
    </message>
    <message>
        <source>%1 is damaged. Nothing was written; restore a backup.</source>
        <translation>%1 est abîmé. Rien n’a été écrit&#xa0;; restaurer une sauvegarde.</translation>
    </message>
    <message>
        <source>%1 cannot be written to: there is no permission for the file or its folder. Nothing was written.</source>
        <translation>On ne peut pas écrire dans %1&#xa0;: pas de droit sur le fichier ou son dossier. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>%1 could not be read or written. Nothing was changed. The reason given: %2.</source>
        <translation>%1 n’a pas pu être lu ou écrit. Rien n’a été changé. Raison indiquée&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 is open for reading only. Nothing was written.</source>
        <translation>%1 est ouvert en lecture seule. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>A reading is not a number. Nothing was written.</source>
        <translation>Un relevé n’est pas un nombre. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Called off. Nothing was written.</source>
        <translation>Interrompu. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>The readings have meanwhile been changed by another program. Nothing was written.</source>
        <translation>Les relevés ont été changés entre-temps par un autre programme. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>A reading cannot be read: its day or kind makes no sense to this release.</source>
        <translation>Un relevé ne peut pas être lu&#xa0;: son jour ou sa sorte n’a pas de sens pour cette version.</translation>
    </message>
    <message>
        <source>The entry of this picture is not there any more. Nothing was written.</source>
        <translation>L’entrée de cette photo n’est plus là. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>The picture has meanwhile been changed or deleted. Nothing was written.</source>
        <translation>La photo a été changée ou supprimée entre-temps. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>%1 is not there, but %2 beside it holds the last writes of a household that was. Nothing was made; put the household back beside it, or move it away.</source>
        <translation>%1 n’est pas là, mais %2, à côté, contient les dernières écritures d’un foyer passé. Rien n’a été créé&#xa0;; remettre le foyer à côté, ou déplacer ce fichier.</translation>
    </message>
    <message>
        <source>%1 was written by an older release and has to be brought up to date, but the backup that is made before could not be. It was left as it is and can be read. %2</source>
        <translation>%1 a été écrit par une version plus ancienne et doit être mis à jour, mais la sauvegarde préalable n’a pas pu être faite. Il a été laissé tel quel et peut être lu. %2</translation>
    </message>
    <message>
        <source>The step before this one could not be written, so this one was not tried. Nothing of it was written.</source>
        <translation>L’étape précédente n’a pas pu être écrite, celle-ci n’a donc pas été tentée. Rien n’en a été écrit.</translation>
    </message>
    <message>
        <source>Another program has changed this meanwhile. What it wrote was kept, and nothing was written.</source>
        <translation>Un autre programme a changé cela entre-temps. Ce qu’il a écrit a été gardé, et rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while this was written. Nothing was written; close that program and try again.</source>
        <translation>Un autre programme a supprimé le journal d’écriture de %1 pendant que ceci s’écrivait. Rien n’a été écrit&#xa0;; fermer ce programme et réessayer.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while it was open here. The file was opened anew; nothing that was recorded is missing.</source>
        <translation>Un autre programme a supprimé le journal d’écriture de %1 pendant que le fichier était ouvert ici. Le fichier a été rouvert&#xa0;; rien de ce qui a été noté ne manque.</translation>
    </message>
    <message>
        <source>Another program removed the log of %1 while it was open here, and entries with it or out of the file. Look at the journal, and at the backups for what is missing.</source>
        <translation>Un autre programme a supprimé le journal d’écriture de %1 pendant que le fichier était ouvert ici, et des entrées avec lui ou dans le fichier. Regarder le journal, et les sauvegardes pour ce qui manque.</translation>
    </message>
</context>
<context>
    <name>SumpFields</name>
    <message>
        <source>Conductivity</source>
        <translation>Conductivité</translation>
    </message>
    <message>
        <source>mS/cm</source>
        <translation>mS/cm</translation>
    </message>
    <message>
        <source>Worms put back</source>
        <translation>Vers remis</translation>
    </message>
</context>
<context>
    <name>SymptomWords</name>
    <message>
        <source>It smells</source>
        <translation>Cela sent</translation>
    </message>
    <message>
        <source>Flies</source>
        <translation>Mouches</translation>
    </message>
    <message>
        <source>Mites</source>
        <translation>Acariens</translation>
    </message>
    <message>
        <source>Ants</source>
        <translation>Fourmis</translation>
    </message>
    <message>
        <source>Worms leave</source>
        <translation>Des vers s’en vont</translation>
    </message>
    <message>
        <source>Worms die</source>
        <translation>Des vers meurent</translation>
    </message>
    <message>
        <source>Mould</source>
        <translation>Moisissure</translation>
    </message>
    <message>
        <source>Sour bed</source>
        <translation>Lit acide</translation>
    </message>
    <message>
        <source>It is hot inside</source>
        <translation>Il fait chaud dedans</translation>
    </message>
    <message>
        <source>Standing water</source>
        <translation>Eau stagnante</translation>
    </message>
    <message>
        <source>Too few worms</source>
        <translation>Trop peu de vers</translation>
    </message>
    <message>
        <source>No castings</source>
        <translation>Pas de lombricompost</translation>
    </message>
    <message>
        <source>More food than the worms and the air can take</source>
        <translation>Plus de nourriture que n’en supportent les vers et l’air</translation>
    </message>
    <message>
        <source>The bed is too wet</source>
        <translation>Le lit est trop mouillé</translation>
    </message>
    <message>
        <source>The bed is too dry</source>
        <translation>Le lit est trop sec</translation>
    </message>
    <message>
        <source>The sump is full</source>
        <translation>Le bac est plein</translation>
    </message>
    <message>
        <source>The bed is too hot</source>
        <translation>Le lit est trop chaud</translation>
    </message>
    <message>
        <source>The bed is too cold</source>
        <translation>Le lit est trop froid</translation>
    </message>
    <message>
        <source>The worms are hungry</source>
        <translation>Les vers ont faim</translation>
    </message>
    <message>
        <source>Food that does not belong in</source>
        <translation>De la nourriture qui n’a pas sa place</translation>
    </message>
    <message>
        <source>Food lies open</source>
        <translation>De la nourriture est à découvert</translation>
    </message>
    <message>
        <source>Too much nitrogen, too little carbon</source>
        <translation>Trop d’azote, trop peu de carbone</translation>
    </message>
    <message>
        <source>The stack is still young</source>
        <translation>La pile est encore jeune</translation>
    </message>
    <message>
        <source>Crowded, or castings left in too long</source>
        <translation>À l’étroit, ou lombricompost laissé trop longtemps</translation>
    </message>
    <message>
        <source>The worms are new here, or were moved</source>
        <translation>Les vers sont nouveaux ici, ou ont été déplacés</translation>
    </message>
    <message>
        <source>wettest tray (slot %1) holds %2 of the water it can hold</source>
        <translation>le plateau le plus mouillé (niveau %1) contient %2 de l’eau qu’il peut retenir</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>driest tray (slot %1) holds %2 of the water it can hold</source>
        <translation>le plateau le plus sec (niveau %1) contient %2 de l’eau qu’il peut retenir</translation>
    </message>
    <message>
        <source>pressed in the hand: %1 on the scale from one, dry, to five, streaming</source>
        <translation>pressé dans la main&#xa0;: %1 sur l’échelle de un, sec, à cinq, ruisselant</translation>
    </message>
    <message>
        <source>air in the worst tray %1, where one is all that worms want</source>
        <translation>air dans le pire plateau %1, où un est tout ce que veulent les vers</translation>
    </message>
    <message>
        <source>fed %1 of the worms&apos; own mass a day, in two weeks</source>
        <translation>donné par jour %1 de la masse des vers, en deux semaines</translation>
    </message>
    <message>
        <source>%1 of softened food waits in slot %2</source>
        <translation>%1 de nourriture ramollie attendent au niveau %2</translation>
    </message>
    <message>
        <source>the sump is filled to %1</source>
        <translation>le bac est rempli à %1</translation>
    </message>
    <message>
        <source>bed estimated at %1</source>
        <translation>lit estimé à %1</translation>
    </message>
    <message>
        <source>bed read at %1</source>
        <translation>lit relevé à %1</translation>
    </message>
    <message numerus="yes">
        <source>last feeding written down %n day(s) ago</source>
        <translation>
            <numerusform>dernier apport noté il y a %n jour</numerusform>
            <numerusform>dernier apport noté il y a %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>they take up %1 of what they need</source>
        <translation>ils prennent %1 de leur besoin</translation>
    </message>
    <message>
        <source>%1 of what was fed in a month is doubtful</source>
        <translation>%1 de ce qui a été donné en un mois est douteux</translation>
    </message>
    <message>
        <source>%1 of the feedings of three weeks have no cover written down</source>
        <translation>%1 des apports de trois semaines n’ont pas de couverture notée</translation>
    </message>
    <message>
        <source>C:N of what was fed in three weeks %1, wished %2</source>
        <translation>C:N de ce qui a été donné en trois semaines %1, souhaité %2</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) since the first bedding</source>
        <translation>
            <numerusform>%n jour depuis la première litière</numerusform>
            <numerusform>%n jours depuis la première litière</numerusform>
        </translation>
    </message>
    <message>
        <source>worms %1, best %2</source>
        <translation>vers %1, au mieux %2</translation>
    </message>
    <message numerus="yes">
        <source>the bottom tray has stood for %n day(s)</source>
        <translation>
            <numerusform>le plateau du bas est en place depuis %n jour</numerusform>
            <numerusform>le plateau du bas est en place depuis %n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>worms put in, moved or lifted %n day(s) ago</source>
        <translation>
            <numerusform>vers mis, passés ou montés il y a %n jour</numerusform>
            <numerusform>vers mis, passés ou montés il y a %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>Lift the cover: is much of the last feeding still there, matted and wet?</source>
        <translation>Soulever la couverture&#xa0;: reste-t-il beaucoup du dernier apport, tassé et mouillé&#xa0;?</translation>
    </message>
    <message>
        <source>Press a handful hard: does it stream?</source>
        <translation>Presser fort une poignée&#xa0;: ruisselle-t-elle&#xa0;?</translation>
    </message>
    <message>
        <source>Press a handful from the middle hard: does nothing come?</source>
        <translation>Presser fort une poignée du milieu&#xa0;: ne vient-il rien&#xa0;?</translation>
    </message>
    <message>
        <source>Open the spigot over a jar: how much runs out?</source>
        <translation>Ouvrir le robinet au-dessus d’un bocal&#xa0;: combien coule-t-il&#xa0;?</translation>
    </message>
    <message>
        <source>Put a thermometer a hand deep into the bed.</source>
        <translation>Enfoncer un thermomètre d’une main dans le lit.</translation>
    </message>
    <message>
        <source>Put a thermometer a hand deep into the bed, in the morning.</source>
        <translation>Enfoncer un thermomètre d’une main dans le lit, le matin.</translation>
    </message>
    <message>
        <source>Lift the cover: is nothing left of the last feeding?</source>
        <translation>Soulever la couverture&#xa0;: ne reste-t-il rien du dernier apport&#xa0;?</translation>
    </message>
    <message>
        <source>Smell at the places of the last feedings: is it one of them, and which?</source>
        <translation>Sentir aux endroits des derniers apports&#xa0;: est-ce l’un d’eux, et lequel&#xa0;?</translation>
    </message>
    <message>
        <source>Look before you lift anything: does food lie open?</source>
        <translation>Regarder avant de rien soulever&#xa0;: de la nourriture est-elle à découvert&#xa0;?</translation>
    </message>
    <message>
        <source>Smell: sharp, like ammonia? And is there hardly any paper left in the top tray?</source>
        <translation>Sentir&#xa0;: piquant, comme l’ammoniac&#xa0;? Et ne reste-t-il guère de papier dans le plateau du haut&#xa0;?</translation>
    </message>
    <message>
        <source>Dig to the floor of the tray: is there a dark, crumbly layer, however thin?</source>
        <translation>Creuser jusqu’au fond du plateau&#xa0;: y a-t-il une couche sombre et friable, si mince soit-elle&#xa0;?</translation>
    </message>
    <message>
        <source>Weigh the worms of a part of the bed: it tells how crowded they are.</source>
        <translation>Peser les vers d’une partie du lit&#xa0;: cela dit s’ils sont à l’étroit.</translation>
    </message>
    <message>
        <source>Wait two nights with a light on: do they stay then?</source>
        <translation>Attendre deux nuits avec une lampe allumée&#xa0;: restent-ils alors&#xa0;?</translation>
    </message>
    <message>
        <source>Stop feeding until most of it is gone. Spread what lies there flat, loosen it, and lay dry shredded paper or cardboard on it.</source>
        <translation>Cesser de nourrir jusqu’à ce que presque tout ait disparu. Étaler ce qui s’y trouve, l’aérer, et poser dessus du papier ou du carton déchiqueté sec.</translation>
    </message>
    <message>
        <source>Drain the sump and leave the spigot open. Loosen the bed and work dry shredded cardboard in. No water until a pressed handful gives only a few drops.</source>
        <translation>Vidanger le bac et laisser le robinet ouvert. Aérer le lit et y mêler du carton déchiqueté sec. Pas d’eau jusqu’à ce qu’une poignée pressée ne donne que quelques gouttes.</translation>
    </message>
    <message>
        <source>Pour slowly, all over, in two or three goes, until a pressed handful gives a few drops. Cover with wet paper.</source>
        <translation>Verser lentement, partout, en deux ou trois fois, jusqu’à ce qu’une poignée pressée donne quelques gouttes. Couvrir de papier mouillé.</translation>
    </message>
    <message>
        <source>Drain it now and leave the spigot open over a jar. Put worms that swim in it back into the top tray.</source>
        <translation>Le vidanger maintenant et laisser le robinet ouvert au-dessus d’un bocal. Remettre dans le plateau du haut les vers qui y nagent.</translation>
    </message>
    <message>
        <source>Carry the stack to a cooler place, tray by tray. No food for now; spread what heats. Lid open under a cloth; a wrapped bottle of frozen water on top buys a day.</source>
        <translation>Porter la pile dans un endroit plus frais, plateau par plateau. Pas de nourriture pour l’instant&#xa0;; étaler ce qui chauffe. Couvercle ouvert sous un linge&#xa0;; une bouteille d’eau gelée, enveloppée, en haut fait gagner un jour.</translation>
    </message>
    <message>
        <source>Bring the stack in, or wrap sides and lid and stand it off the ground. Feed little until it is warmer.</source>
        <translation>Rentrer la pile, ou envelopper côtés et couvercle et l’isoler du sol. Nourrir peu jusqu’à ce qu’il fasse plus doux.</translation>
    </message>
    <message>
        <source>Feed the usual amount and cover it. If there are few worms, feed little: they multiply by themselves.</source>
        <translation>Donner la quantité habituelle et la couvrir. S’il y a peu de vers, donner peu&#xa0;: ils se multiplient d’eux-mêmes.</translation>
    </message>
    <message>
        <source>Take out what can be taken out, with gloves, and put it into the household waste. Cover the rest thickly.</source>
        <translation>Ôter ce qui peut l’être, avec des gants, et le mettre aux ordures ménagères. Couvrir le reste en couche épaisse.</translation>
    </message>
    <message>
        <source>Bury the food a little and cover it with paper, now and with each feeding. Flies that are there are gone in {fly-days} if nothing new lies open.</source>
        <translation>Enfouir un peu la nourriture et la couvrir de papier, maintenant et à chaque apport. Les mouches présentes disparaissent en {fly-days} si rien de nouveau n’est à découvert.</translation>
    </message>
    <message>
        <source>Work dry shredded cardboard into the top tray, and feed less of grounds and greens for some weeks.</source>
        <translation>Mêler du carton déchiqueté sec au plateau du haut, et donner moins de marc et de verts pendant quelques semaines.</translation>
    </message>
    <message>
        <source>Wait. Food has to soften first, and a first tray takes {first-tray-alone}. Feed a little and keep the bed moist.</source>
        <translation>Attendre. La nourriture doit d’abord ramollir, et un premier plateau prend {first-tray-alone}. Nourrir un peu et garder le lit humide.</translation>
    </message>
    <message>
        <source>Leave a light on and the lid closed for some nights. They settle; it is no sign of a bad bed.</source>
        <translation>Laisser une lampe allumée et le couvercle fermé quelques nuits. Ils s’installent&#xa0;; ce n’est pas le signe d’un mauvais lit.</translation>
    </message>
    <message>
        <source>Record the cover…</source>
        <translation>Noter la couverture…</translation>
    </message>
    <message>
        <source>Record the water…</source>
        <translation>Noter l’arrosage…</translation>
    </message>
    <message>
        <source>Record the draining…</source>
        <translation>Noter la vidange…</translation>
    </message>
    <message>
        <source>Record the feeding…</source>
        <translation>Noter l’apport…</translation>
    </message>
    <message>
        <source>Record the lifting…</source>
        <translation>Noter la montée…</translation>
    </message>
    <message>
        <source>Record the temperature…</source>
        <translation>Noter la température…</translation>
    </message>
    <message>
        <source>Record what you saw…</source>
        <translation>Noter ce que vous avez vu…</translation>
    </message>
    <message>
        <source>Record the reading…</source>
        <translation>Noter la mesure…</translation>
    </message>
    <message>
        <source>Record how much ran out…</source>
        <translation>Noter combien a coulé…</translation>
    </message>
    <message>
        <source>Record the weighing…</source>
        <translation>Noter la pesée…</translation>
    </message>
    <message>
        <source>Record the look…</source>
        <translation>Noter ce qui a été vu…</translation>
    </message>
    <message>
        <source>Record the worms taken out…</source>
        <translation>Noter les vers retirés…</translation>
    </message>
    <message>
        <source>smell at the lid, at each tray, at the sump and at what stands beside the stack. Where does it come from?</source>
        <translation>sentir le couvercle, chaque plateau, le bac et ce qui se trouve à côté de la pile. D’où cela vient-il&#xa0;?</translation>
    </message>
    <message>
        <source>see where they sit: in the bed, in the sump, or beside the stack on fruit and flower pots. Their eggs come in with peel.</source>
        <translation>voir où elles se tiennent&#xa0;: dans le lit, dans le bac, ou à côté de la pile sur des fruits et des pots de fleurs. Leurs œufs arrivent avec les épluchures.</translation>
    </message>
    <message>
        <source>see where they sit. On one piece of food alone they are usual and do no harm: take that piece out.</source>
        <translation>voir où ils se tiennent. Sur un seul morceau de nourriture, ils sont courants et sans danger&#xa0;: retirer ce morceau.</translation>
    </message>
    <message>
        <source>follow their trail back. The nest may lie beneath the stand or in a pot beside it.</source>
        <translation>remonter leur piste. Le nid peut se trouver sous le support ou dans un pot à côté.</translation>
    </message>
    <message>
        <source>see when and from where they go: on a stormy night, when a light went out, from one tray alone?</source>
        <translation>voir quand et d’où ils partent&#xa0;: une nuit d’orage, après l’extinction d’une lumière, d’un seul plateau&#xa0;?</translation>
    </message>
    <message>
        <source>see what came in last: treated peel, salt, cleaning agents, paint? Take it out with gloves.</source>
        <translation>voir ce qui a été mis en dernier&#xa0;: épluchures traitées, sel, produits d’entretien, peinture&#xa0;? Le retirer avec des gants.</translation>
    </message>
    <message>
        <source>see how far it goes. White threads on fresh food are usual and gone in some days.</source>
        <translation>voir jusqu’où elle s’étend. Des filaments blancs sur de la nourriture fraîche sont courants et disparaissent en quelques jours.</translation>
    </message>
    <message>
        <source>smell at a handful from several places. One heap of food may be sour and the rest of the bed sound.</source>
        <translation>sentir une poignée prise à plusieurs endroits. Un seul tas de nourriture peut être aigre et le reste du lit sain.</translation>
    </message>
    <message>
        <source>feel each tray. One alone is warm from its food; all of them are warm from sun, stove or pipe.</source>
        <translation>toucher chaque plateau. Un seul est chaud à cause de sa nourriture&#xa0;; tous le sont à cause du soleil, d’un poêle ou d’un tuyau.</translation>
    </message>
    <message>
        <source>see where it comes from: holes that are clogged, a lid that lets rain in, a stack that is not level?</source>
        <translation>voir d’où elle vient&#xa0;: des trous bouchés, un couvercle qui laisse entrer la pluie, une pile qui penche&#xa0;?</translation>
    </message>
    <message>
        <source>look under the cover, in each tray and in the sump. They may sit elsewhere than where you looked.</source>
        <translation>regarder sous la couverture, dans chaque plateau et dans le bac. Ils sont peut-être ailleurs que là où vous avez regardé.</translation>
    </message>
    <message>
        <source>dig to the floor of the bottom tray. Castings lie there first, beneath food and bedding.</source>
        <translation>creuser jusqu’au fond du plateau du bas. Le lombricompost s’y trouve d’abord, sous la nourriture et la litière.</translation>
    </message>
    <message>
        <source>Give them room: a further tray if one is spare, or a harvest of the bottom one once its castings are ready. Or give some worms away, or begin another stack with them.</source>
        <translation>Donnez-leur de la place&#xa0;: un plateau de plus s’il en reste un libre, ou une récolte de celui du bas dès que son lombricompost est prêt. Ou donnez des vers, ou commencez avec eux une autre pile.</translation>
    </message>
</context>
<context>
    <name>TrayLifts</name>
    <message>
        <source>Out of a safe reach: take it out in parts, or with someone.</source>
        <translation>Hors d’une portée sûre&#xa0;: le vider en plusieurs fois, ou s’y mettre à deux.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: fine for most people.</source>
        <translation>Pour ce levage, jusqu’à %1 est conseillé&#xa0;: bien pour la plupart des gens.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: heavy, so in parts or with someone.</source>
        <translation>Pour ce levage, jusqu’à %1 est conseillé&#xa0;: lourd, donc en plusieurs fois ou à deux.</translation>
    </message>
    <message>
        <source>For this lift up to %1 is advised: far too heavy, take it out in parts.</source>
        <translation>Pour ce levage, jusqu’à %1 est conseillé&#xa0;: bien trop lourd, le vider en plusieurs fois.</translation>
    </message>
</context>
<context>
    <name>TrayWeightBody</name>
    <message>
        <source>Tray with contents</source>
        <translation>Plateau avec son contenu</translation>
    </message>
    <message>
        <source>What does the scale show?</source>
        <translation>Qu’indique la balance&#xa0;?</translation>
    </message>
    <message>
        <source>Empty tray</source>
        <translation>Plateau vide</translation>
    </message>
    <message>
        <source>The empty tray cannot weigh more than the tray with its contents.</source>
        <translation>Le plateau vide ne peut pas peser plus que le plateau avec son contenu.</translation>
    </message>
</context>
<context>
    <name>TrayWords</name>
    <message>
        <source>tray %1 in slot %2, batch %3 bedded on %4</source>
        <translation>plateau %1 au niveau %2, lot %3 garni le %4</translation>
    </message>
    <message>
        <source>Tray %1 goes from the bottom to slot %2 and dries in the light, uncovered; the others move down.</source>
        <translation>Le plateau %1 passe du bas au niveau %2 et sèche à la lumière, découvert&#xa0;; les autres descendent.</translation>
    </message>
    <message>
        <source>Ends batch %1: tray %2 leaves slot %3 for storage.</source>
        <translation>Finit le lot %1&#xa0;: le plateau %2 quitte le niveau %3 pour être rangé.</translation>
    </message>
    <message>
        <source>Begins batch %1: tray %2 goes on top, into slot %3.</source>
        <translation>Commence le lot %1&#xa0;: le plateau %2 va en haut, au niveau %3.</translation>
    </message>
    <message>
        <source>Worms leave the whole stack and go into the fed tray of %1.</source>
        <translation>Les vers quittent toute la pile et vont dans le plateau qu’on nourrit de %1.</translation>
    </message>
    <message>
        <source>The stack ends with that day. Its record stays; its name cannot be used again.</source>
        <translation>La pile finit ce jour-là. Ses notes restent&#xa0;; son nom ne peut plus servir.</translation>
    </message>
    <message>
        <source>Falls to %1.</source>
        <translation>Revient au %1.</translation>
    </message>
    <message>
        <source>It ends the light-drying of that tray.</source>
        <translation>Cela finit le séchage à la lumière de ce plateau.</translation>
    </message>
</context>
<context>
    <name>TrendWords</name>
    <message>
        <source>It has held since %1.</source>
        <translation>Stable depuis le %1.</translation>
    </message>
    <message>
        <source>Up from %1 on %2.</source>
        <translation>En hausse depuis %1 le %2.</translation>
    </message>
    <message>
        <source>Down from %1 on %2.</source>
        <translation>En baisse depuis %1 le %2.</translation>
    </message>
    <message>
        <source>The estimates are being made.</source>
        <translation>Les estimations se font.</translation>
    </message>
    <message>
        <source>Here stands what the worms eat each day, from the first bedding on.</source>
        <translation>Ici se trouve ce que les vers mangent chaque jour, dès la première litière.</translation>
    </message>
    <message>
        <source>Here stand the litres you drain each week, as bars, and what is to be expected, from the first bedding on.</source>
        <translation>Ici se trouvent les litres que vous vidangez chaque semaine, en barres, et ce qui est attendu, dès la première litière.</translation>
    </message>
    <message>
        <source>Here stands the mass of the worms, from the first bedding on.</source>
        <translation>Ici se trouve la masse des vers, dès la première litière.</translation>
    </message>
    <message>
        <source>Here stands the temperature of the bed, from the first bedding on, and what was read.</source>
        <translation>Ici se trouve la température du lit, dès la première litière, et ce qui a été relevé.</translation>
    </message>
    <message>
        <source>Here stands the moisture of the tray that is fed, from the first bedding on, and what was read.</source>
        <translation>Ici se trouve l’humidité du plateau qu’on nourrit, dès la première litière, et ce qui a été relevé.</translation>
    </message>
    <message>
        <source>Processing rate</source>
        <translation>Rythme de traitement</translation>
    </message>
    <message>
        <source>Drainage</source>
        <translation>Drainage</translation>
    </message>
    <message>
        <source>Colony</source>
        <translation>Colonie</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Température</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>dry matter that the worms eat, %1</source>
        <translation>matière sèche que mangent les vers, %1</translation>
    </message>
    <message>
        <source>bars: drained, %1 a week, each over four weeks; line: to be expected</source>
        <translation>barres&#xa0;: vidangé, %1 par semaine, chacune sur quatre semaines&#xa0;; ligne&#xa0;: attendu</translation>
    </message>
    <message>
        <source>bars: drained, %1 a week; line: to be expected</source>
        <translation>barres&#xa0;: vidangé, %1 par semaine&#xa0;; ligne&#xa0;: attendu</translation>
    </message>
    <message>
        <source>live worms, %1; crosses: weighed</source>
        <translation>vers vivants, %1&#xa0;; croix&#xa0;: pesés</translation>
    </message>
    <message>
        <source>of the bed, %1; strokes: a day&apos;s lowest to highest by a logger</source>
        <translation>du lit, %1&#xa0;; traits&#xa0;: minimum et maximum du jour par un enregistreur</translation>
    </message>
    <message>
        <source>of the tray that is fed, % water; strokes: a day&apos;s lowest to highest by a logger</source>
        <translation>du plateau qu’on nourrit, % d’eau&#xa0;; traits&#xa0;: minimum et maximum du jour par un enregistreur</translation>
    </message>
    <message>
        <source>30 days</source>
        <translation>30 jours</translation>
    </message>
    <message>
        <source>90 days</source>
        <translation>90 jours</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 an</translation>
    </message>
    <message>
        <source>2 years</source>
        <translation>2 ans</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Tout</translation>
    </message>
    <message>
        <source>g/d</source>
        <translation>g/j</translation>
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
        <translation>relevé %1 à %2, moyenne %3</translation>
    </message>
    <message numerus="yes">
        <source>Drained %1 in %n week(s).</source>
        <translation>
            <numerusform>Vidangé %1 en %n semaine.</numerusform>
            <numerusform>Vidangé %1 en %n semaines.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing was drained in this time.</source>
        <translation>Rien n’a été vidangé pendant ce temps.</translation>
    </message>
    <message>
        <source>The worms eat %1 of dry matter.</source>
        <translation>Les vers mangent %1 de matière sèche.</translation>
    </message>
    <message>
        <source>To be expected: %1.</source>
        <translation>Attendu&#xa0;: %1.</translation>
    </message>
    <message>
        <source>The worms weigh %1.</source>
        <translation>Les vers pèsent %1.</translation>
    </message>
    <message>
        <source>The bed is at %1.</source>
        <translation>Le lit est à %1.</translation>
    </message>
    <message>
        <source>The tray that is fed holds %1 of water.</source>
        <translation>Le plateau qu’on nourrit contient %1 d’eau.</translation>
    </message>
    <message>
        <source>A logger read %1 at the lowest, %2 at the highest.</source>
        <translation>Un enregistreur a lu %1 au plus bas, %2 au plus haut.</translation>
    </message>
    <message>
        <source>drained %1</source>
        <translation>vidangé %1</translation>
    </message>
    <message>
        <source>no estimate</source>
        <translation>pas d’estimation</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>fed</source>
        <translation>apport</translation>
    </message>
    <message>
        <source>bedding laid</source>
        <translation>litière posée</translation>
    </message>
    <message>
        <source>lifted to the top</source>
        <translation>monté en haut</translation>
    </message>
    <message>
        <source>castings taken</source>
        <translation>lombricompost prélevé</translation>
    </message>
    <message>
        <source>worms in or out</source>
        <translation>vers mis ou retirés</translation>
    </message>
    <message>
        <source>worms weighed</source>
        <translation>vers pesés</translation>
    </message>
    <message>
        <source>watered</source>
        <translation>arrosé</translation>
    </message>
    <message>
        <source>read by hand</source>
        <translation>relevé à la main</translation>
    </message>
    <message>
        <source>It is ready, more likely than not.</source>
        <translation>Il est plus probablement prêt que non.</translation>
    </message>
    <message>
        <source>The forecast reaches it about %1.</source>
        <translation>La prévision l’atteint vers %1.</translation>
    </message>
    <message>
        <source>The forecast that is shown does not reach it.</source>
        <translation>La prévision montrée ne l’atteint pas.</translation>
    </message>
    <message>
        <source>Here stands how much unprocessed food and bedding the bottom tray holds beside its castings, from the first bedding on, with the line at which it is ready.</source>
        <translation>Ici se voit combien d’aliments et de litière non transformés le plateau du bas contient à côté de son lombricompost, depuis la première litière, avec la ligne où il est prêt.</translation>
    </message>
    <message>
        <source>Here stands a bar for each harvest, once castings are taken and weighed, beside what was expected.</source>
        <translation>Ici se tient une barre par récolte, une fois le lombricompost prélevé et pesé, à côté de ce qui était attendu.</translation>
    </message>
    <message>
        <source>Feed-to-cast</source>
        <translation>Aliment/compost</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Rendement</translation>
    </message>
    <message>
        <source>added up, %1; steps: drained; line: to be expected, its range as if every week erred to the same side</source>
        <translation>cumulé, %1&#xa0;; marches&#xa0;: vidangé&#xa0;; ligne&#xa0;: attendu, son intervalle comme si chaque semaine se trompait du même côté</translation>
    </message>
    <message>
        <source>unprocessed dry matter to castings in the bottom tray, on a log scale; each batch has its own line</source>
        <translation>matière sèche non transformée par rapport au lombricompost dans le plateau du bas, échelle logarithmique&#xa0;; chaque lot a sa ligne</translation>
    </message>
    <message>
        <source>castings taken in a year, %1; upright stroke: to be expected</source>
        <translation>lombricompost prélevé dans l’année, %1&#xa0;; trait vertical&#xa0;: attendu</translation>
    </message>
    <message>
        <source>castings of each harvest, %1; upright stroke: to be expected</source>
        <translation>lombricompost de chaque récolte, %1&#xa0;; trait vertical&#xa0;: attendu</translation>
    </message>
    <message>
        <source>%1 taken</source>
        <translation>%1 pris</translation>
    </message>
    <message>
        <source>%1; %2 expected of %3 of it</source>
        <translation>%1&#xa0;; %2 attendus pour %3 de cela</translation>
    </message>
    <message>
        <source>%1, %2 expected</source>
        <translation>%1, %2 attendus</translation>
    </message>
    <message numerus="yes">
        <source>%1 of castings in %n harvest(s).</source>
        <translation>
            <numerusform>%1 de lombricompost en %n récolte.</numerusform>
            <numerusform>%1 de lombricompost en %n récoltes.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>%1 of %2 bars lie within what was expected.</source>
        <translation>%1 barres sur %2 sont dans l’attendu.</translation>
    </message>
    <message numerus="yes">
        <source>%n harvest(s) measured by volume: marked, without a bar.</source>
        <translation>
            <numerusform>%n récolte mesurée en volume&#xa0;: marquée, sans barre.</numerusform>
            <numerusform>%n récoltes mesurées en volume&#xa0;: marquées, sans barre.</numerusform>
        </translation>
    </message>
    <message>
        <source>Drained %1 in all since %2.</source>
        <translation>Vidé %1 en tout depuis %2.</translation>
    </message>
    <message>
        <source>Of the bottom tray: %1. It is ready at %2.</source>
        <translation>Du plateau du bas&#xa0;: %1. Il est prêt à %2.</translation>
    </message>
    <message>
        <source>On %1: %2.</source>
        <translation>Le %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>With the change: %1 on %2.</source>
        <translation>Avec le changement&#xa0;: %1 le %2.</translation>
    </message>
    <message>
        <source>drained %1 in all</source>
        <translation>vidé %1 en tout</translation>
    </message>
    <message>
        <source>in all of %1: %2</source>
        <translation>en tout %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>with the change %1</source>
        <translation>avec le changement %1</translation>
    </message>
    <message>
        <source>nothing taken</source>
        <translation>rien pris</translation>
    </message>
    <message>
        <source>something seen</source>
        <translation>quelque chose de vu</translation>
    </message>
    <message>
        <source>less drained than expected, twice: blocked, or a dry bed?</source>
        <translation>moins vidangé qu’attendu, deux fois de suite&#xa0;: bouché, ou lit sec&#xa0;?</translation>
    </message>
    <message>
        <source>more drained than expected, twice: too much water?</source>
        <translation>plus vidangé qu’attendu, deux fois de suite&#xa0;: trop d’eau&#xa0;?</translation>
    </message>
    <message>
        <source>blocked?</source>
        <translation>bouché&#xa0;?</translation>
    </message>
    <message>
        <source>too much water?</source>
        <translation>trop d’eau&#xa0;?</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>prêt</translation>
    </message>
    <message>
        <source>oz/d</source>
        <translation>oz/j</translation>
    </message>
    <message>
        <source>As on %1, and between %2 and %3 since.</source>
        <translation>Comme le %1, et entre %2 et %3 depuis.</translation>
    </message>
    <message>
        <source>As on %1, and between %2 and %3 in the meantime.</source>
        <translation>Comme le %1, et entre %2 et %3 dans l’intervalle.</translation>
    </message>
    <message>
        <source>It had held since %1.</source>
        <translation>C’était stable depuis le %1.</translation>
    </message>
    <message>
        <source>It was ready, more likely than not.</source>
        <translation>Il était prêt, plus probablement que non.</translation>
    </message>
    <message>
        <source>It was not ready then, more likely than not.</source>
        <translation>Il n’était pas encore prêt, plus probablement que si.</translation>
    </message>
    <message>
        <source>On %1 the worms ate %2 of dry matter.</source>
        <translation>Le %1, les vers mangeaient %2 de matière sèche.</translation>
    </message>
    <message>
        <source>To be expected on %1: %2.</source>
        <translation>À attendre le %1&#xa0;: %2.</translation>
    </message>
    <message>
        <source>On %1 the worms weighed %2.</source>
        <translation>Le %1, les vers pesaient %2.</translation>
    </message>
    <message>
        <source>On %1 the bed was at %2.</source>
        <translation>Le %1, le lit était à %2.</translation>
    </message>
    <message>
        <source>On %1 the tray that was fed held %2 of water.</source>
        <translation>Le %1, le plateau nourri contenait %2 d’eau.</translation>
    </message>
    <message>
        <source>Of the bottom tray on %1: %2. A tray is ready at %3.</source>
        <translation>Du plateau du bas le %1&#xa0;: %2. Un plateau est prêt à %3.</translation>
    </message>
    <message>
        <source>Nothing had been drained until then.</source>
        <translation>Rien n’avait encore été vidangé.</translation>
    </message>
    <message>
        <source>Drained %1 in all from %2 to %3.</source>
        <translation>Vidangé en tout&#xa0;: %1 du %2 au %3.</translation>
    </message>
    <message numerus="yes">
        <source>Drained %1 in %n week(s) to %2.</source>
        <translation>
            <numerusform>Vidangé&#xa0;: %1 en %n semaine jusqu’au %2.</numerusform>
            <numerusform>Vidangé&#xa0;: %1 en %n semaines jusqu’au %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>No castings were taken from %1 to %2.</source>
        <translation>Aucun lombricompost n’a été prélevé du %1 au %2.</translation>
    </message>
    <message>
        <source>From %1 to %2 there is nothing to show.</source>
        <translation>Du %1 au %2, il n’y a rien à montrer.</translation>
    </message>
    <message>
        <source>Forecast for %1, fed as usual, no tray lifted: %2.</source>
        <translation>Prévision pour le %1, nourrie comme d’habitude, aucun plateau monté&#xa0;: %2.</translation>
    </message>
</context>
<context>
    <name>UsualActs</name>
    <message>
        <source>Feed %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Nourrir %1, %2</translation>
    </message>
    <message>
        <source>Water %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Arroser %1, %2</translation>
    </message>
    <message>
        <source>Drain %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Vidanger %1, %2</translation>
    </message>
    <message>
        <source>Cover %1, %2</source>
        <comment>amount, stack</comment>
        <translation>Couvrir %1, %2</translation>
    </message>
</context>
<context>
    <name>WaterBody</name>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>How much water?</source>
        <translation>Combien d’eau&#xa0;?</translation>
    </message>
</context>
<context>
    <name>WeighBody</name>
    <message>
        <source>Worms</source>
        <translation>Vers</translation>
    </message>
    <message>
        <source>What do the worms weigh?</source>
        <translation>Combien pèsent les vers&#xa0;?</translation>
    </message>
    <message>
        <source>Share of the bed searched</source>
        <translation>Part du lit fouillée</translation>
    </message>
    <message>
        <source>all of it when left empty</source>
        <translation>tout, si laissé vide</translation>
    </message>
</context>
<context>
    <name>WindowPaper</name>
    <message>
        <source>--report: there is no stack on that day</source>
        <translation>--report&#xa0;: il n’y a pas de pile ce jour-là</translation>
    </message>
    <message>
        <source>--report: found «%1»; allowed: %2</source>
        <translation>--report&#xa0;: trouvé «&#xa0;%1&#xa0;»&#xa0;; admis&#xa0;: %2</translation>
    </message>
    <message>
        <source>the sheet</source>
        <translation>la fiche</translation>
    </message>
    <message>
        <source>the labels</source>
        <translation>les étiquettes</translation>
    </message>
    <message>
        <source>no tray stands on that day, so there is nothing to label</source>
        <translation>aucun plateau n’est en place ce jour-là, il n’y a donc rien à étiqueter</translation>
    </message>
</context>
<context>
    <name>WindowStart</name>
    <message>
        <source>there is no display; --portrait DIR draws the pages without one</source>
        <translation>il n’y a pas d’écran&#xa0;; --portrait DOSSIER dessine les pages sans lui</translation>
    </message>
</context>
<context>
    <name>YearLanes</name>
    <message>
        <source>nothing within a year</source>
        <translation>rien d’ici un an</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>monter le plateau du bas</translation>
    </message>
    <message>
        <source>take the castings</source>
        <translation>prélever le lombricompost</translation>
    </message>
    <message>
        <source>add a tray</source>
        <translation>ajouter un plateau</translation>
    </message>
    <message>
        <source>%1 (from %2 on)</source>
        <translation>%1 (à partir du %2)</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2: %3 (tray %4)</source>
        <translation>%1, %2&#xa0;: %3 (plateau %4)</translation>
    </message>
    <message>
        <source>ready on that day %1</source>
        <translation>prêt ce jour-là&#xa0;: %1</translation>
    </message>
    <message>
        <source>about %1 of castings</source>
        <translation>environ %1 de lombricompost</translation>
    </message>
    <message>
        <source>day chosen by hand</source>
        <translation>jour choisi à la main</translation>
    </message>
    <message>
        <source>%1 (pinned)</source>
        <translation>%1 (fixée)</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Plateau</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Lombricompost</translation>
    </message>
    <message>
        <source>tray %1 ready, %2</source>
        <translation>plateau %1 prêt, %2</translation>
    </message>
    <message>
        <source>tray %1 ready %2; today %3</source>
        <comment>number, dates, chance</comment>
        <translation>plateau %1 prêt&#xa0;: %2&#xa0;; aujourd’hui %3</translation>
    </message>
    <message>
        <source>tray %1 ready about now; today %2</source>
        <comment>number, chance</comment>
        <translation>plateau %1 prêt à peu près maintenant&#xa0;; aujourd’hui %2</translation>
    </message>
    <message>
        <source>tray %1 ready from %2 on; today %3</source>
        <comment>number, day, chance</comment>
        <translation>plateau %1 prêt à partir du %2&#xa0;; aujourd’hui %3</translation>
    </message>
    <message>
        <source>being reckoned…</source>
        <translation>en cours de calcul…</translation>
    </message>
    <message>
        <source>what follows from it is being reckoned</source>
        <translation>ce qui en découle est en cours de calcul</translation>
    </message>
    <message>
        <source>whether it is due is not sure; a look decides</source>
        <translation>rien ne dit sûrement que c’est à faire&#xa0;; un contrôle décide</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>à faire&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 after it is due</source>
        <translation>%1 après la date due</translation>
    </message>
    <message>
        <source>%1 before it is due</source>
        <translation>%1 avant la date due</translation>
    </message>
    <message>
        <source>Due, 80 % range</source>
        <translation>À faire, plage à 80 %</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::JournalSheetView</name>
    <message>
        <source>Import into the journal</source>
        <translation>Importer dans le journal</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>Importer %1</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>Cells parted by %1</source>
        <translation>Cellules séparées par %1</translation>
    </message>
    <message>
        <source>What parts the cells</source>
        <translation>Ce qui sépare les cellules</translation>
    </message>
    <message>
        <source>Rows that are shown</source>
        <translation>Lignes montrées</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importer</translation>
    </message>
    <message>
        <source>&amp;Save the rows at fault…</source>
        <translation>&amp;Enregistrer les lignes en faute…</translation>
    </message>
    <message>
        <source>These are &amp;readings of a logger…</source>
        <translation>Ce sont des re&amp;levés d’un enregistreur…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Left out, since they are no columns of the journal: %1</source>
        <translation>Laissées de côté, car elles ne sont pas des colonnes du journal&#xa0;: %1</translation>
    </message>
    <message>
        <source>Leave out what the journal holds already (%1)</source>
        <translation>Laisser de côté ce que le journal contient déjà (%1)</translation>
    </message>
    <message>
        <source>Leave out what the journal holds already</source>
        <translation>Laisser de côté ce que le journal contient déjà</translation>
    </message>
    <message>
        <source>Leave out what an earlier row of the file says too (%1)</source>
        <translation>Laisser de côté ce qu’une ligne précédente du fichier dit déjà (%1)</translation>
    </message>
    <message>
        <source>Leave out what an earlier row of the file says too</source>
        <translation>Laisser de côté ce qu’une ligne précédente du fichier dit déjà</translation>
    </message>
    <message>
        <source>The first rows</source>
        <translation>Les premières lignes</translation>
    </message>
    <message>
        <source>Rows at fault (%1)</source>
        <translation>Lignes en faute (%1)</translation>
    </message>
    <message>
        <source>Rows that are there already (%1)</source>
        <translation>Lignes déjà là (%1)</translation>
    </message>
    <message>
        <source>Rows said before (%1)</source>
        <translation>Lignes répétées (%1)</translation>
    </message>
    <message>
        <source>Imported</source>
        <translation>Importé</translation>
    </message>
    <message numerus="yes">
        <source>&amp;Import %n entry(ies)</source>
        <translation>
            <numerusform>&amp;Importer %n entrée</numerusform>
            <numerusform>&amp;Importer %n entrées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The other rows have been imported. %n row(s) at fault: save them, put them right and import them again.</source>
        <translation>
            <numerusform>Les autres lignes ont été importées. %n ligne en faute&#xa0;: l’enregistrer, la corriger et l’importer de nouveau.</numerusform>
            <numerusform>Les autres lignes ont été importées. %n lignes en faute&#xa0;: les enregistrer, les corriger et les importer de nouveau.</numerusform>
        </translation>
    </message>
    <message>
        <source>Remember the words of %1</source>
        <translation>Retenir les mots de %1</translation>
    </message>
    <message>
        <source>Rows left out as answered (%1)</source>
        <translation>Lignes laissées de côté selon la réponse (%1)</translation>
    </message>
    <message>
        <source>This household is open for reading only: nothing can be imported into it.</source>
        <translation>Ce foyer est ouvert en lecture seule&#xa0;: rien ne peut y être importé.</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::LoggerColumns</name>
    <message>
        <source>column %1</source>
        <translation>colonne %1</translation>
    </message>
    <message>
        <source>Column «%1» holds</source>
        <translation>La colonne «&#xa0;%1&#xa0;» contient</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::MissingBox</name>
    <message>
        <source>Please choose</source>
        <translation>À choisir</translation>
    </message>
    <message>
        <source>What was done, where a row does not say it:</source>
        <translation>Ce qui a été fait, là où une ligne ne le dit pas&#xa0;:</translation>
    </message>
    <message>
        <source>The stack, where a row names none:</source>
        <translation>La pile, là où une ligne n’en nomme aucune&#xa0;:</translation>
    </message>
    <message>
        <source>The unit of amounts without one:</source>
        <translation>L’unité des quantités qui n’en ont pas&#xa0;:</translation>
    </message>
    <message>
        <source>Each is: %1</source>
        <translation>Chacune est&#xa0;: %1</translation>
    </message>
    <message>
        <source>A new stack, «%1»</source>
        <translation>Une nouvelle pile, «&#xa0;%1&#xa0;»</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::QuestionsBox</name>
    <message>
        <source>Please choose</source>
        <translation>À choisir</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>non lu</translation>
    </message>
    <message>
        <source>The comma is the decimal mark: «%1» in line %2 can mean nothing else.</source>
        <translation>La virgule est le signe décimal&#xa0;: «&#xa0;%1&#xa0;» à la ligne %2 ne peut rien vouloir dire d’autre.</translation>
    </message>
    <message>
        <source>The point is the decimal mark: «%1» in line %2 can mean nothing else.</source>
        <translation>Le point est le signe décimal&#xa0;: «&#xa0;%1&#xa0;» à la ligne %2 ne peut rien vouloir dire d’autre.</translation>
    </message>
    <message>
        <source>The day comes before the month: «%1» in line %2 can mean nothing else.</source>
        <translation>Le jour vient avant le mois&#xa0;: «&#xa0;%1&#xa0;» à la ligne %2 ne peut rien vouloir dire d’autre.</translation>
    </message>
    <message>
        <source>The month comes before the day: «%1» in line %2 can mean nothing else.</source>
        <translation>Le mois vient avant le jour&#xa0;: «&#xa0;%1&#xa0;» à la ligne %2 ne peut rien vouloir dire d’autre.</translation>
    </message>
    <message>
        <source>Some numbers can only have a point as decimal mark, others only a comma («%1» in line %2). Which is meant? Rows of the other kind will be at fault.</source>
        <translation>Certains nombres ne peuvent avoir qu’un point comme signe décimal, d’autres qu’une virgule («&#xa0;%1&#xa0;» à la ligne %2). Lequel est voulu&#xa0;? Les lignes de l’autre sorte seront en faute.</translation>
    </message>
    <message>
        <source>What does «%1» in line %2 mean?</source>
        <translation>Que veut dire «&#xa0;%1&#xa0;» à la ligne %2&#xa0;?</translation>
    </message>
    <message>
        <source>The comma is the decimal mark</source>
        <translation>La virgule est le signe décimal</translation>
    </message>
    <message>
        <source>The point is the decimal mark</source>
        <translation>Le point est le signe décimal</translation>
    </message>
    <message>
        <source>%1: this is %2</source>
        <translation>%1&#xa0;: c’est %2</translation>
    </message>
    <message>
        <source>Some dates can only have the day first, others only the month («%1» in line %2). Which is meant? Rows of the other kind will be at fault.</source>
        <translation>Certaines dates ne peuvent avoir que le jour d’abord, d’autres que le mois («&#xa0;%1&#xa0;» à la ligne %2). Lequel est voulu&#xa0;? Les lignes de l’autre sorte seront en faute.</translation>
    </message>
    <message>
        <source>Which day is «%1» in line %2?</source>
        <translation>Quel jour est «&#xa0;%1&#xa0;» à la ligne %2&#xa0;?</translation>
    </message>
    <message>
        <source>The day comes first</source>
        <translation>Le jour vient d’abord</translation>
    </message>
    <message>
        <source>The month comes first</source>
        <translation>Le mois vient d’abord</translation>
    </message>
    <message>
        <source>Years have two digits. Which are meant?</source>
        <translation>Les années ont deux chiffres. Lesquelles sont voulues&#xa0;?</translation>
    </message>
    <message>
        <source>2000 to 2099</source>
        <translation>2000 à 2099</translation>
    </message>
    <message>
        <source>1900 to 1999</source>
        <translation>1900 à 1999</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::ReadingsView</name>
    <message>
        <source>Import readings of a logger</source>
        <translation>Importer les relevés d’un enregistreur</translation>
    </message>
    <message>
        <source>Readings in %1</source>
        <translation>Relevés de %1</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Lecture…</translation>
    </message>
    <message>
        <source>The logger lies in or beside</source>
        <translation>L’enregistreur est dans ou à côté de</translation>
    </message>
    <message>
        <source>Stack in or beside which the logger lies</source>
        <translation>Pile dans laquelle ou près de laquelle est l’enregistreur</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Avancement</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Importer</translation>
    </message>
    <message>
        <source>Call &amp;off</source>
        <translation>&amp;Interrompre</translation>
    </message>
    <message>
        <source>&amp;Save the rows at fault…</source>
        <translation>&amp;Enregistrer les lignes en faute…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Please choose</source>
        <translation>À choisir</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) imported from %1.</source>
        <translation>
            <numerusform>%Ln relevé importé de %1.</numerusform>
            <numerusform>%Ln relevés importés de %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The journal has their mean of %Ln day(s).</source>
        <translation>
            <numerusform>Le journal a leur moyenne de %Ln jour.</numerusform>
            <numerusform>Le journal a leurs moyennes de %Ln jours.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s), %1, cells parted by %2.</source>
        <translation>
            <numerusform>%Ln ligne, %1, cellules séparées par %2.</numerusform>
            <numerusform>%Ln lignes, %1, cellules séparées par %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Columns as you chose them for the last file with these columns.</source>
        <translation>%1 Colonnes choisies comme pour le dernier fichier ayant ces colonnes.</translation>
    </message>
    <message>
        <source>Reading the file…</source>
        <translation>Lecture du fichier…</translation>
    </message>
    <message>
        <source>Writing the readings…</source>
        <translation>Écriture des relevés…</translation>
    </message>
    <message>
        <source>Remember the columns of %1</source>
        <translation>Retenir les colonnes de %1</translation>
    </message>
    <message>
        <source>Called off. Nothing was written.</source>
        <translation>Interrompu. Rien n’a été écrit.</translation>
    </message>
    <message>
        <source>Writing; until the end nothing is kept.</source>
        <translation>Écriture en cours&#xa0;; jusqu’à la fin, rien n’est conservé.</translation>
    </message>
    <message>
        <source>There is no stack that the readings could belong to. Start one first.</source>
        <translation>Il n’y a pas de pile à laquelle les relevés pourraient appartenir. Démarrez-en une d’abord.</translation>
    </message>
    <message>
        <source>No column holds the date and time. Choose the one that does.</source>
        <translation>Aucune colonne ne contient la date et l’heure. Choisir celle qui les contient.</translation>
    </message>
    <message>
        <source>No column holds a temperature or moisture. Choose the ones that do.</source>
        <translation>Aucune colonne ne contient de température ou d’humidité. Choisir celles qui en contiennent.</translation>
    </message>
    <message>
        <source>Choose whether the temperature is in °C or °F.</source>
        <translation>Choisir si la température est en °C ou en °F.</translation>
    </message>
    <message>
        <source>Answer the question above.</source>
        <translation>Répondre à la question ci-dessus.</translation>
    </message>
    <message>
        <source>No row holds a reading.</source>
        <translation>Aucune ligne ne contient de relevé.</translation>
    </message>
    <message>
        <source>Choose the stack that the logger belongs to.</source>
        <translation>Choisir la pile à laquelle appartient l’enregistreur.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln reading(s) from %1 to %2 will be kept in full.</source>
        <translation>
            <numerusform>%Ln relevé du %1 au %2 sera conservé en entier.</numerusform>
            <numerusform>%Ln relevés du %1 au %2 seront conservés en entier.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The journal gets the mean of %Ln day(s), an entry each. One undo takes all of it back.</source>
        <translation>
            <numerusform>Le journal reçoit la moyenne de %Ln jour, en une entrée. Une seule annulation reprend le tout.</numerusform>
            <numerusform>Le journal reçoit la moyenne de %Ln jours, une entrée chacun. Une seule annulation reprend le tout.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 are there already and left out.</source>
        <translation>%1 sont déjà là et laissés de côté.</translation>
    </message>
    <message>
        <source>%1 are of days on which the stack did not stand, and left out.</source>
        <translation>%1 sont de jours où la pile n’existait pas, et laissés de côté.</translation>
    </message>
    <message numerus="yes">
        <source>%Ln row(s) at fault, the first in line %1: %2</source>
        <translation>
            <numerusform>%Ln ligne en faute, la première à la ligne %1&#xa0;: %2</numerusform>
            <numerusform>%Ln lignes en faute, la première à la ligne %1&#xa0;: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 Choose the stack again to try once more.</source>
        <translation>%1 Choisir la pile une nouvelle fois pour réessayer.</translation>
    </message>
    <message>
        <source>%1 There are more; the first %2 are in it.</source>
        <translation>%1 Il y en a davantage&#xa0;; les %2 premières y sont.</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::SheetPreview</name>
    <message>
        <source>added</source>
        <translation>ajoutée</translation>
    </message>
    <message>
        <source>there already, left out</source>
        <translation>déjà là, laissée de côté</translation>
    </message>
    <message>
        <source>said before, left out</source>
        <translation>répétée, laissée de côté</translation>
    </message>
    <message>
        <source>waits for an answer</source>
        <translation>attend une réponse</translation>
    </message>
    <message>
        <source>at fault: %1</source>
        <translation>en faute&#xa0;: %1</translation>
    </message>
    <message>
        <source>The column holds</source>
        <translation>La colonne contient</translation>
    </message>
    <message>
        <source>What becomes of it</source>
        <translation>Ce qu’elle devient</translation>
    </message>
    <message>
        <source>left out as answered</source>
        <translation>laissée de côté selon la réponse</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::SheetTable</name>
    <message>
        <source>Rows of the file</source>
        <translation>Lignes du fichier</translation>
    </message>
    <message>
        <source>In the first row the content of each column is chosen</source>
        <translation>Dans la première ligne se choisit le contenu de chaque colonne</translation>
    </message>
    <message>
        <source>nothing, left out</source>
        <translation>rien, laissé de côté</translation>
    </message>
    <message>
        <source>Column «%1» holds</source>
        <translation>La colonne «&#xa0;%1&#xa0;» contient</translation>
    </message>
</context>
<context>
    <name>tierloam::exchange_view::WordsBox</name>
    <message>
        <source>Leave out all that is &amp;not answered</source>
        <translation>Laisser de côté ce qui est sa&amp;ns réponse</translation>
    </message>
    <message>
        <source>These names are none of the stacks here. Which stacks are they?</source>
        <translation>Aucune pile ne porte ces noms ici. Quelles piles sont-ce&#xa0;?</translation>
    </message>
    <message>
        <source>What was done is not clear from these words. What do they mean?</source>
        <translation>Ces mots ne disent pas clairement ce qui a été fait. Que veulent-ils dire&#xa0;?</translation>
    </message>
    <message>
        <source>These are none of the materials here. Which come nearest?</source>
        <translation>Ce ne sont pas des matières connues ici. Lesquelles s’en rapprochent le plus&#xa0;?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold the stack?</source>
        <translation>Il y en a %1. La pile est-elle dans une autre colonne&#xa0;?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold what was done?</source>
        <translation>Il y en a %1. Ce qui a été fait est-il dans une autre colonne&#xa0;?</translation>
    </message>
    <message>
        <source>There are %1 of them. Does another column hold the material?</source>
        <translation>Il y en a %1. La matière est-elle dans une autre colonne&#xa0;?</translation>
    </message>
    <message>
        <source>Only the first %1 are asked here; the rows of the others are at fault.</source>
        <translation>Seuls les %1 premiers sont demandés ici&#xa0;; les lignes des autres sont en faute.</translation>
    </message>
    <message>
        <source>«%1»</source>
        <translation>«&#xa0;%1&#xa0;»</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>ligne %1</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s), the first in line %1</source>
        <translation>
            <numerusform>%n ligne, la première&#xa0;: %1</numerusform>
            <numerusform>%n lignes, la première&#xa0;: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Please choose</source>
        <translation>À choisir</translation>
    </message>
    <message>
        <source>a new stack</source>
        <translation>une nouvelle pile</translation>
    </message>
    <message>
        <source>leave out</source>
        <translation>laisser de côté</translation>
    </message>
    <message>
        <source>Stack that %1 means</source>
        <translation>Pile que désigne %1</translation>
    </message>
    <message>
        <source>What %1 means</source>
        <translation>Ce que veut dire %1</translation>
    </message>
    <message>
        <source>Material that %1 means</source>
        <translation>Matière que désigne %1</translation>
    </message>
    <message>
        <source>A new stack is set up with the usual sizes on the day of its first row, with the usual bedding where no row lays any. Look at those entries afterwards; worms that no row puts in have to be recorded too.</source>
        <translation>Une nouvelle pile est installée aux mesures habituelles le jour de sa première ligne, avec la litière habituelle si aucune ligne n’en met. Revoir ces entrées ensuite&#xa0;; les vers qu’aucune ligne ne met sont encore à noter.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::ActionForm</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be recorded.</source>
        <translation>Ce foyer est ouvert en lecture seule&#xa0;; rien ne peut être noté.</translation>
    </message>
    <message>
        <source>Nothing was recorded; what you typed is still here. %1</source>
        <translation>Rien n’a été noté&#xa0;; ce que vous avez saisi est toujours là. %1</translation>
    </message>
    <message>
        <source>This cannot be recorded. %1</source>
        <translation>Ceci ne peut pas être noté. %1</translation>
    </message>
    <message>
        <source>Recording…</source>
        <translation>Enregistrement…</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::CautionCard</name>
    <message>
        <source>Caution: %1</source>
        <translation>Précaution&#xa0;: %1</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Précautions</translation>
    </message>
    <message>
        <source>More</source>
        <comment>the whole text of cautions</comment>
        <translation>Plus</translation>
    </message>
    <message>
        <source>Less</source>
        <comment>the cautions in few words</comment>
        <translation>Moins</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::EntryEditor</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>This entry is no longer in the journal.</source>
        <translation>Cette entrée n’est plus dans le journal.</translation>
    </message>
    <message>
        <source>Edit: %1</source>
        <translation>Modifier&#xa0;: %1</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Enregistrer</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Takes the entry out of the journal; undo brings it back</source>
        <translation>Ôte l’entrée du journal&#xa0;; annuler la rétablit</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be changed.</source>
        <translation>Ce foyer est ouvert en lecture seule&#xa0;; rien ne peut être changé.</translation>
    </message>
    <message>
        <source>Nothing was changed; what you typed is still here. %1</source>
        <translation>Rien n’a été changé&#xa0;; ce que vous avez saisi est toujours là. %1</translation>
    </message>
    <message>
        <source>This cannot be saved. %1</source>
        <translation>Ceci ne peut pas être enregistré. %1</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Enregistrement…</translation>
    </message>
    <message>
        <source>edit of %1</source>
        <translation>modification de %1</translation>
    </message>
    <message>
        <source>This entry cannot be taken out. %1</source>
        <translation>Cette entrée ne peut pas être ôtée. %1</translation>
    </message>
    <message>
        <source>Deleting…</source>
        <translation>Suppression…</translation>
    </message>
    <message>
        <source>deletion of %1</source>
        <translation>suppression de %1</translation>
    </message>
    <message>
        <source>Not saved yet: this entry has been changed elsewhere meanwhile, in what you have changed too. What you typed is still here; save once more to put it in its place, or leave it as it is now with Esc.</source>
        <translation>Pas encore enregistré&#xa0;: cette entrée a été modifiée ailleurs entre-temps, y compris dans ce que vous avez changé. Votre saisie est toujours là&#xa0;; enregistrez encore une fois pour la mettre à la place, ou laissez l’entrée telle quelle avec Échap.</translation>
    </message>
    <message>
        <source>This entry has been taken out of the journal meanwhile. What you typed is still here: undo or redo brings the entry back, Esc gives it up.</source>
        <translation>Cette entrée a été retirée du journal entre-temps. Ce que vous avez saisi est encore là&#xa0;: annuler ou rétablir fait revenir l’entrée, Échap abandonne.</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::EntrySheet</name>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>What is there to note?</source>
        <translation>Qu’y a-t-il à noter&#xa0;?</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Plateau</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>On which day?</source>
        <translation>Quel jour&#xa0;?</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>Not possible so: %1</source>
        <translation>Impossible ainsi&#xa0;: %1</translation>
    </message>
    <message>
        <source>Make it %1</source>
        <translation>Mettre %1</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::FormShell</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Noter</translation>
    </message>
    <message>
        <source>Look again: %1</source>
        <translation>À revoir&#xa0;: %1</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::NewStack</name>
    <message>
        <source>New stack</source>
        <translation>Nouvelle pile</translation>
    </message>
    <message>
        <source>What is not known can stay as it is; everything can be changed later.</source>
        <translation>Ce qui n’est pas connu peut rester tel quel&#xa0;; tout peut être changé plus tard.</translation>
    </message>
    <message>
        <source>Start the stack</source>
        <translation>Démarrer la pile</translation>
    </message>
    <message>
        <source>This household was opened for reading only; nothing can be recorded.</source>
        <translation>Ce foyer est ouvert en lecture seule&#xa0;; rien ne peut être noté.</translation>
    </message>
    <message>
        <source>Nothing was recorded; what you typed is still here. %1</source>
        <translation>Rien n’a été noté&#xa0;; ce que vous avez saisi est toujours là. %1</translation>
    </message>
    <message>
        <source>This cannot be recorded. %1</source>
        <translation>Ceci ne peut pas être noté. %1</translation>
    </message>
    <message>
        <source>Recording…</source>
        <translation>Enregistrement…</translation>
    </message>
    <message>
        <source>%1: new stack</source>
        <translation>%1&#xa0;: nouvelle pile</translation>
    </message>
    <message>
        <source>Nothing is recorded yet. If it is meant so, press «%1» once more.</source>
        <translation>Rien n’est encore noté. Si c’est bien ce qui est voulu, appuyer encore une fois sur «&#xa0;%1&#xa0;».</translation>
    </message>
</context>
<context>
    <name>tierloam::forms::Welcome</name>
    <message>
        <source>A journal for your worm bins</source>
        <translation>Un journal pour vos lombricomposteurs</translation>
    </message>
    <message>
        <source>Write down what goes in and what runs out. The program reckons, with its uncertainty, how the worms fare, when each bottom tray is ready and what is due this week. Nothing leaves this machine.</source>
        <translation>Notez ce qui entre et ce qui coule. Le programme calcule, avec son incertitude, comment vont les vers, quand chaque plateau du bas est prêt et ce qui est à faire cette semaine. Rien ne quitte cette machine.</translation>
    </message>
    <message>
        <source>Answer a few questions; you are told how much bedding and water to put in. The record is kept among your documents.</source>
        <translation>Répondez à quelques questions&#xa0;; on vous dit combien de litière et d’eau mettre. Les notes sont conservées parmi vos documents.</translation>
    </message>
    <message>
        <source>A household of our own invention with three stacks and two years of record, in a copy that is yours to play with.</source>
        <translation>Un foyer de notre invention avec trois piles et deux ans de notes, dans une copie à vous pour essayer.</translation>
    </message>
    <message>
        <source>A file that was kept before.</source>
        <translation>Un fichier conservé auparavant.</translation>
    </message>
    <message>
        <source>A journal or a list of your own as CSV, into a new household. You see what becomes of each row first.</source>
        <translation>Un journal ou une liste à vous en CSV, dans un nouveau foyer. Vous voyez d’abord ce que devient chaque ligne.</translation>
    </message>
    <message>
        <source>Before you begin</source>
        <translation>Avant de commencer</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source&#xa0;: %1</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Bienvenue</translation>
    </message>
    <message>
        <source>Opened lately</source>
        <translation>Ouverts récemment</translation>
    </message>
    <message>
        <source>Start my first stack…</source>
        <translation>Démarrer ma première pile…</translation>
    </message>
    <message>
        <source>Look at the demo</source>
        <translation>Voir la démonstration</translation>
    </message>
    <message>
        <source>Open a household…</source>
        <translation>Ouvrir un foyer…</translation>
    </message>
    <message>
        <source>Import a table…</source>
        <translation>Importer un tableau…</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HandbookPage</name>
    <message>
        <source>Handbook</source>
        <translation>Guide</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Chercher (%1)</translation>
    </message>
    <message>
        <source>Find in the handbook</source>
        <translation>Chercher dans le guide</translation>
    </message>
    <message>
        <source>All words must be on the page</source>
        <translation>Tous les mots doivent être dans la page</translation>
    </message>
    <message>
        <source>Pages of the handbook</source>
        <translation>Pages du guide</translation>
    </message>
    <message>
        <source>How each step is done, why, and the usual cautions. Everything is on this machine.</source>
        <translation>Comment se fait chaque étape, pourquoi, et les précautions habituelles. Tout est sur cette machine.</translation>
    </message>
    <message>
        <source>No page holds all of these words.</source>
        <translation>Aucune page ne contient tous ces mots.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) found</source>
        <translation>
            <numerusform>%n page trouvée</numerusform>
            <numerusform>%n pages trouvées</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::HandbookView</name>
    <message>
        <source>Page of the handbook</source>
        <translation>Page du guide</translation>
    </message>
    <message>
        <source>Handbook: %1</source>
        <translation>Guide&#xa0;: %1</translation>
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
        <translation>moins que d’habitude&#xa0;: une partie n’était pas finie, ou est encore dans le bac et les plateaux</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>comme d’habitude</translation>
    </message>
    <message>
        <source>more than usual: bedding that stays, or water, is in it</source>
        <translation>plus que d’habitude&#xa0;: il contient de la litière qui reste, ou de l’eau</translation>
    </message>
    <message>
        <source>Your reach while lifting, from the ankles forward to the hands (may be left empty: then it is taken from the tray&apos;s size):</source>
        <translation>Votre portée en soulevant, des chevilles vers l’avant jusqu’aux mains (peut rester vide&#xa0;: elle est alors prise de la taille du plateau)&#xa0;:</translation>
    </message>
    <message>
        <source>Your reach</source>
        <translation>Votre portée</translation>
    </message>
    <message>
        <source>There is no stack yet to harvest.</source>
        <translation>Il n’y a pas encore de pile à récolter.</translation>
    </message>
    <message>
        <source>The estimates of this stack are being made.</source>
        <translation>Les estimations de cette pile se font.</translation>
    </message>
    <message>
        <source>A tray of %1 is drying in the light.</source>
        <translation>Un plateau de %1 sèche à la lumière.</translation>
    </message>
    <message>
        <source>%1 has one tray. Nothing can be lifted over it: add a tray first, and its worms move up to the fresh food.</source>
        <translation>%1 a un seul plateau. Rien ne peut être monté par-dessus&#xa0;: ajoutez d’abord un plateau, et ses vers monteront vers la nourriture fraîche.</translation>
    </message>
    <message>
        <source>The bottom tray of %1: ready %2, feed-to-cast %3.</source>
        <translation>Le plateau du bas de %1&#xa0;: prêt %2, aliment/compost %3.</translation>
    </message>
    <message>
        <source>Before you lift</source>
        <translation>Avant de soulever</translation>
    </message>
    <message>
        <source>Slot %1: about %2. %3</source>
        <translation>Niveau %1&#xa0;: environ %2. %3</translation>
    </message>
    <message>
        <source>The sequence</source>
        <translation>Les étapes</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <comment>number, step</comment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>It stands on top: record the lifting…</source>
        <translation>Il est en haut&#xa0;: noter la montée…</translation>
    </message>
    <message>
        <source>Look into the bottom tray first…</source>
        <translation>Regarder d’abord dans le plateau du bas…</translation>
    </message>
    <message>
        <source>Day %1 in the light, %2</source>
        <translation>Jour %1 à la lumière, %2</translation>
    </message>
    <message>
        <source>Worms left: %1 of those that were in it; moisture %2.</source>
        <translation>Vers restants&#xa0;: %1 de ceux qui y étaient&#xa0;; humidité %2.</translation>
    </message>
    <message>
        <source>Food went into the drying tray: that keeps worms in it.</source>
        <translation>De la nourriture est allée dans le plateau qui sèche&#xa0;: cela y retient des vers.</translation>
    </message>
    <message>
        <source>Too wet that day.</source>
        <translation>Trop mouillé ce jour-là.</translation>
    </message>
    <message>
        <source>Too wet: worms stay where it is wet. Loosen it again, in ridges, and give it another day.</source>
        <translation>Trop mouillé&#xa0;: les vers restent là où c’est mouillé. L’aérer de nouveau, en crêtes, et lui donner un jour de plus.</translation>
    </message>
    <message>
        <source>Few worms are left: take the castings when they crumble.</source>
        <translation>Il reste peu de vers&#xa0;: prélever le lombricompost quand il s’émiette.</translation>
    </message>
    <message>
        <source>Loosen it once today; the usual time is %1.</source>
        <translation>L’aérer une fois aujourd’hui&#xa0;; la durée habituelle est de %1.</translation>
    </message>
    <message>
        <source>Feed only the tray below. Lid off, bright, out of the sun.</source>
        <translation>Ne nourrir que le plateau du dessous. Sans couvercle, au clair, à l’abri du soleil.</translation>
    </message>
    <message>
        <source>Loosened: record it…</source>
        <translation>Aéré&#xa0;: le noter…</translation>
    </message>
    <message>
        <source>Taken: weigh or measure…</source>
        <translation>Prélevé&#xa0;: le peser ou le mesurer…</translation>
    </message>
    <message>
        <source>There is no estimate of these days yet.</source>
        <translation>Il n’y a pas encore d’estimation de ces jours.</translation>
    </message>
    <message>
        <source>The last harvest, %1</source>
        <translation>La dernière récolte, %1</translation>
    </message>
    <message>
        <source>Taken: %1, about %2, dry %3</source>
        <translation>Prélevé&#xa0;: %1, environ %2, en sec %3</translation>
    </message>
    <message>
        <source>%1 at an assumed moisture of %2</source>
        <translation>%1 à une humidité supposée de %2</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>Expected before it was weighed: %1.</source>
        <translation>Attendu avant la pesée&#xa0;: %1.</translation>
    </message>
    <message>
        <source>Of %1 dry put in, %2 to %3 dry is usual (%4): this is %5.</source>
        <translation>Sur %1 apportés en sec, %2 à %3 en sec sont habituels (%4)&#xa0;: ceci est %5.</translation>
    </message>
    <message>
        <source>With it went about %1 worms and %2 cocoons, by the estimate. That is normal; castings without any worm cannot be promised.</source>
        <translation>Avec lui sont partis environ %1 vers et %2 cocons, selon l’estimation. C’est normal&#xa0;; on ne peut pas promettre de lombricompost sans aucun ver.</translation>
    </message>
    <message>
        <source>To keep them: a second light-drying of the castings between %1, when what was in the cocoons has hatched; or a bait tray of melon or pumpkin under damp paper for %2, carried back with all that sits in it.</source>
        <translation>Pour les garder&#xa0;: un second séchage du lombricompost à la lumière (%1), quand ce qui était dans les cocons a éclos&#xa0;; ou un plateau-appât de melon ou de courge sous du papier humide pendant %2, rapporté avec tout ce qui s’y trouve.</translation>
    </message>
    <message>
        <source>Afterwards</source>
        <translation>Ensuite</translation>
    </message>
    <message>
        <source>What you take, weighed or measured, is compared here with what was expected. Some cocoons and young worms leave with it: a second light-drying after %1 or a bait tray keeps many of them.</source>
        <translation>Ce que vous prélevez, pesé ou mesuré, est comparé ici à ce qui était attendu. Quelques cocons et jeunes vers partent avec&#xa0;: un second séchage à la lumière après %1 ou un plateau-appât en garde beaucoup.</translation>
    </message>
    <message>
        <source>Bed a tray anew…</source>
        <translation>Regarnir un plateau de litière…</translation>
    </message>
    <message>
        <source>In the light again since %1: loosen once a day, the stored castings in a flat layer on a sheet; what gathers under it goes back into the stack. The usual time is %2.</source>
        <translation>De nouveau à la lumière depuis %1&#xa0;: ameublir une fois par jour, le lombricompost gardé en couche plate sur une feuille&#xa0;; ce qui se rassemble dessous retourne dans la pile. La durée habituelle est de %2.</translation>
    </message>
    <message>
        <source>It is time for the second light-drying now.</source>
        <translation>C’est le moment du second séchage à la lumière.</translation>
    </message>
    <message>
        <source>Bait laid on %1: keep it damp, look in a few days; carry it back by %2 at the latest.</source>
        <translation>Appât posé le %1&#xa0;: le garder humide, regarder dans quelques jours&#xa0;; le rapporter le %2 au plus tard.</translation>
    </message>
    <message>
        <source>Bait laid on %1: carry it back now, before it dries.</source>
        <translation>Appât posé le %1&#xa0;: le rapporter maintenant, avant qu’il ne sèche.</translation>
    </message>
    <message>
        <source>Worms were put back on %1.</source>
        <translation>Des vers ont été remis le %1.</translation>
    </message>
    <message>
        <source>Spread in the light again: record it…</source>
        <translation>Étalé de nouveau à la lumière&#xa0;: le noter…</translation>
    </message>
    <message>
        <source>Bait laid: record it…</source>
        <translation>Appât posé&#xa0;: le noter…</translation>
    </message>
    <message>
        <source>Worms carried back: weigh and record them…</source>
        <translation>Vers rapportés&#xa0;: les peser et les noter…</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::StackChoice</name>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
</context>
<context>
    <name>tierloam::handbook::SymptomView</name>
    <message>
        <source>What do you notice?</source>
        <translation>Que remarquez-vous&#xa0;?</translation>
    </message>
    <message>
        <source>Write down that you noticed it…</source>
        <translation>Noter que vous l’avez remarqué…</translation>
    </message>
    <message>
        <source>There is no stack yet that anything could be wrong with.</source>
        <translation>Il n’y a pas encore de pile où quelque chose pourrait ne pas aller.</translation>
    </message>
    <message>
        <source>The estimates of this stack are being made.</source>
        <translation>Les estimations de cette pile se font.</translation>
    </message>
    <message>
        <source>One click puts the causes in order, by what is known of this stack.</source>
        <translation>Un clic classe les causes, d’après ce qu’on sait de cette pile.</translation>
    </message>
    <message>
        <source>%1 in %2: causes by what the estimates and the journal say today.</source>
        <translation>%1 dans %2&#xa0;: causes d’après ce que disent aujourd’hui les estimations et le journal.</translation>
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
        <translation>le journal n’en dit rien</translation>
    </message>
    <message>
        <source>● speaks for this cause, ○ does not</source>
        <translation>● parle pour cette cause, ○ non</translation>
    </message>
    <message>
        <source>To be sure: %1</source>
        <translation>Pour en être sûr&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 – %2: %3</source>
        <comment>cause, its chance, evidence</comment>
        <translation>%1 – %2&#xa0;: %3</translation>
    </message>
    <message>
        <source>Hardly, by the record:</source>
        <translation>Peu probable d’après le journal&#xa0;:</translation>
    </message>
    <message>
        <source>The record shows none of the usual causes – %1</source>
        <translation>Le journal ne montre aucune des causes habituelles – %1</translation>
    </message>
    <message>
        <source>Something else – %1</source>
        <translation>Autre chose – %1</translation>
    </message>
    <message>
        <source>To look at by hand: %1</source>
        <translation>À regarder soi-même&#xa0;: %1</translation>
    </message>
    <message>
        <source>In case the record lacks something: %1</source>
        <translation>Au cas où il manquerait quelque chose au journal&#xa0;: %1</translation>
    </message>
    <message>
        <source>Record the look…</source>
        <translation>Noter ce qui a été vu…</translation>
    </message>
    <message>
        <source>Something else</source>
        <translation>Autre chose</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::BulkView</name>
    <message>
        <source>Change together</source>
        <translation>Modifier ensemble</translation>
    </message>
    <message numerus="yes">
        <source>Change %n entry(ies) together</source>
        <translation>
            <numerusform>Modifier %n entrée</numerusform>
            <numerusform>Modifier ensemble %n entrées</numerusform>
        </translation>
    </message>
    <message>
        <source>Material, species or word</source>
        <translation>Matière, espèce ou mot</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Tray (slot)</source>
        <translation>Plateau (niveau)</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Ce qui change</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>À</translation>
    </message>
    <message>
        <source>What will change</source>
        <translation>Ce qui changera</translation>
    </message>
    <message>
        <source>&amp;Change</source>
        <translation>&amp;Modifier</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
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
            <numerusform>%n entrée changera.</numerusform>
            <numerusform>%n entrées changeront.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n chosen entry(ies) with another value: left alone.</source>
        <translation>
            <numerusform>%n entrée choisie a une autre valeur&#xa0;: laissée telle quelle.</numerusform>
            <numerusform>%n entrées choisies ont une autre valeur&#xa0;: laissées telles quelles.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2&#xa0;: %3 %4</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::EntrySeries</name>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Enter records and opens the next; Esc ends.</source>
        <translation>Entrée note et ouvre la suivante&#xa0;; Échap termine.</translation>
    </message>
    <message>
        <source>There is no stack yet; start one on the shelf.</source>
        <translation>Il n’y a pas encore de pile&#xa0;; commencez-en une sur l’étagère.</translation>
    </message>
    <message>
        <source>One more like the chosen entry, dated today.</source>
        <translation>Une autre comme l’entrée choisie, datée d’aujourd’hui.</translation>
    </message>
    <message numerus="yes">
        <source>%n recorded; Enter records the next, Esc ends.</source>
        <translation>
            <numerusform>%n notée&#xa0;; Entrée note la suivante, Échap termine.</numerusform>
            <numerusform>%n notées&#xa0;; Entrée note la suivante, Échap termine.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::JournalModel</name>
    <message>
        <source>slot %1</source>
        <translation>niveau %1</translation>
    </message>
    <message>
        <source>slot %1 · tray %2 · batch %3</source>
        <translation>niveau %1 · plateau %2 · lot %3</translation>
    </message>
    <message>
        <source>%1 · being saved</source>
        <translation>%1 · enregistrement</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quand</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Combien</translation>
    </message>
    <message>
        <source>Tray</source>
        <translation>Plateau</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::JournalPage</name>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Chercher (%1)</translation>
    </message>
    <message>
        <source>Find in the journal</source>
        <translation>Chercher dans le journal</translation>
    </message>
    <message>
        <source>All words must be in the row</source>
        <translation>Tous les mots doivent être dans la ligne</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Period</source>
        <translation>Période</translation>
    </message>
    <message>
        <source>Edit the chosen entry</source>
        <translation>Modifier l’entrée choisie</translation>
    </message>
    <message>
        <source>Take the chosen entries out of the journal</source>
        <translation>Ôter du journal les entrées choisies</translation>
    </message>
    <message>
        <source>Change the chosen entries together</source>
        <translation>Modifier ensemble les entrées choisies</translation>
    </message>
    <message>
        <source>Pictures of the chosen entry</source>
        <translation>Photos de l’entrée choisie</translation>
    </message>
    <message>
        <source>All days</source>
        <translation>Tous les jours</translation>
    </message>
    <message>
        <source>Last 30 days</source>
        <translation>30 derniers jours</translation>
    </message>
    <message>
        <source>Last 90 days</source>
        <translation>90 derniers jours</translation>
    </message>
    <message>
        <source>Last year</source>
        <translation>Dernière année</translation>
    </message>
    <message>
        <source>Last 2 years</source>
        <translation>2 dernières années</translation>
    </message>
    <message>
        <source>All actions</source>
        <translation>Toutes les actions</translation>
    </message>
    <message>
        <source>Enter edits the chosen entry, Delete takes it out</source>
        <translation>Entrée modifie l’entrée choisie, Suppr l’ôte</translation>
    </message>
    <message>
        <source>All stacks</source>
        <translation>Toutes les piles</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies)</source>
        <translation>
            <numerusform>%n entrée</numerusform>
            <numerusform>%n entrées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n entry(ies)</source>
        <translation>
            <numerusform>%1 sur %n entrée</numerusform>
            <numerusform>%1 sur %n entrées</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2 chosen</source>
        <translation>%1, %2 choisies</translation>
    </message>
    <message>
        <source>Here stands every feeding, look and harvest, newest first, once the first one is recorded.</source>
        <translation>Ici se trouve chaque apport, regard et récolte, le plus récent d’abord, dès que le premier est noté.</translation>
    </message>
    <message>
        <source>No entry is like that. %1 shows all again.</source>
        <translation>Aucune entrée n’est ainsi. %1 les remontre toutes.</translation>
    </message>
    <message>
        <source>Delete “%1”</source>
        <translation>Supprimer «&#xa0;%1&#xa0;»</translation>
    </message>
    <message numerus="yes">
        <source>Delete %n entry(ies)</source>
        <translation>
            <numerusform>Supprimer %n entrée</numerusform>
            <numerusform>Supprimer %n entrées</numerusform>
        </translation>
    </message>
    <message>
        <source>Record several entries one after the other</source>
        <translation>Noter plusieurs entrées l’une après l’autre</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Colonnes</translation>
    </message>
</context>
<context>
    <name>tierloam::journal_page::PictureStrip</name>
    <message>
        <source>Pictures of the chosen entry</source>
        <translation>Photos de l’entrée choisie</translation>
    </message>
    <message>
        <source>Enter shows them in full</source>
        <translation>Entrée les montre en entier</translation>
    </message>
    <message>
        <source>Picture %1</source>
        <translation>Photo %1</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::BeddingBench</name>
    <message>
        <source>For</source>
        <translation>Pour</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Surface</translation>
    </message>
    <message>
        <source>Depth, laid</source>
        <translation>Épaisseur une fois posée</translation>
    </message>
    <message>
        <source>usual: %1 (%2)</source>
        <translation>d’habitude&#xa0;: %1 (%2)</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>De</translation>
    </message>
    <message>
        <source>Bedding is wetted like a wrung-out sponge: to %1 of what it holds (%2). Press a handful: a few drops may come, no stream.</source>
        <translation>La litière est humidifiée comme une éponge essorée&#xa0;: à %1 de ce qu’elle retient (%2). Presser une poignée&#xa0;: quelques gouttes peuvent tomber, pas un filet.</translation>
    </message>
    <message>
        <source>another tray</source>
        <translation>un autre plateau</translation>
    </message>
    <message>
        <source>Add this tray to %1…</source>
        <translation>Ajouter ce plateau à %1…</translation>
    </message>
    <message>
        <source>Floor, depth and material make the amounts.</source>
        <translation>Surface, épaisseur et matière donnent les quantités.</translation>
    </message>
    <message>
        <source>%1 of bedding, dry as it comes, and %2 of water.</source>
        <translation>%1 de litière, sèche telle qu’elle vient, et %2 d’eau.</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>En vrac</translation>
    </message>
    <message>
        <source>%1 before it is wetted</source>
        <translation>%1 avant d’être humidifiée</translation>
    </message>
    <message>
        <source>Laid</source>
        <translation>Posée</translation>
    </message>
    <message>
        <source>%1 at %2 moisture, of it %3 dry</source>
        <translation>%1 à %2 d’humidité, dont %3 en sec</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Convient</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
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
        <translation>Lombricompost de</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Share of a potting mix</source>
        <translation>Part dans un terreau</translation>
    </message>
    <message>
        <source>Depth of a top-dressing</source>
        <translation>Épaisseur d’un surfaçage</translation>
    </message>
    <message>
        <source>Tested in potting mixes: %1; at most %2; never alone: it packs, and is too salty for seedlings. Top-dressing: %3, again after %4.</source>
        <translation>Essayé dans des terreaux&#xa0;: %1&#xa0;; au plus %2&#xa0;; jamais seul&#xa0;: il se tasse et est trop salé pour les semis. Surfaçage&#xa0;: %3, de nouveau après %4.</translation>
    </message>
    <message>
        <source>Sift through a mesh of %1; what stays on it goes back into a tray. Store vented and cool, shaded, near %2 moisture, for %3. Castings from a worm bin always hold some cocoons and young worms.</source>
        <translation>Tamiser à une maille de %1&#xa0;; ce qui reste dessus retourne dans un plateau. Garder aéré et frais, à l’ombre, près de %2 d’humidité, pendant %3. Le lombricompost contient toujours quelques cocons et jeunes vers.</translation>
    </message>
    <message>
        <source>an amount of my own</source>
        <translation>une quantité à moi</translation>
    </message>
    <message>
        <source>taken on %1</source>
        <translation>prélevé le %1</translation>
    </message>
    <message>
        <source>an estimate of what lies in the bottom tray</source>
        <translation>estimation de ce que contient le plateau du bas</translation>
    </message>
    <message>
        <source>Castings</source>
        <translation>Lombricompost</translation>
    </message>
    <message>
        <source>%1, about %2</source>
        <translation>%1, environ %2</translation>
    </message>
    <message>
        <source>%1 of mix: with %2 of potting soil, coir or compost</source>
        <translation>%1 de mélange&#xa0;: avec %2 de terreau, de fibre de coco ou de compost</translation>
    </message>
    <message>
        <source>%1 – reckoned with %2, the most that is advised</source>
        <translation>%1 – calculé avec %2, le plus qui soit conseillé</translation>
    </message>
    <message>
        <source>Potting mix</source>
        <translation>Terreau</translation>
    </message>
    <message>
        <source>Top-dressing</source>
        <translation>Surfaçage</translation>
    </message>
    <message>
        <source>covers %1</source>
        <translation>couvre %1</translation>
    </message>
    <message>
        <source>To store it</source>
        <translation>Pour le garder</translation>
    </message>
    <message>
        <source>let %1 of water dry off, in the shade</source>
        <translation>laisser s’évaporer %1 d’eau, à l’ombre</translation>
    </message>
    <message>
        <source>dry enough; keep it vented</source>
        <translation>assez sec&#xa0;; le garder aéré</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::Gauge</name>
    <message>
        <source>nothing yet</source>
        <translation>rien encore</translation>
    </message>
    <message>
        <source>%1; %2</source>
        <translation>%1&#xa0;; %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
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
        <translation>Vidangé</translation>
    </message>
    <message>
        <source>Measured strength</source>
        <translation>Force mesurée</translation>
    </message>
    <message>
        <source>left empty: the estimate of the stack</source>
        <translation>laissé vide&#xa0;: l’estimation de la pile</translation>
    </message>
    <message>
        <source>Wished strength</source>
        <translation>Force souhaitée</translation>
    </message>
    <message>
        <source>young plants %1, grown ones %2</source>
        <translation>jeunes plantes %1, adultes %2</translation>
    </message>
    <message>
        <source>Your water</source>
        <translation>Votre eau</translation>
    </message>
    <message>
        <source>tap water about %1</source>
        <translation>eau du robinet, environ %1</translation>
    </message>
    <message>
        <source>Leachate is what ran through the trays: salty water with whatever it met. It is no brewed tea and no plant food of known content; it may hold germs and the juice of unfinished scraps. Use it within %1, on soil around plants that are not eaten raw, or pour it back over the top tray.</source>
        <translation>Le lixiviat est ce qui a traversé les plateaux&#xa0;: de l’eau salée avec ce qu’elle a rencontré. Ce n’est ni une infusion ni un engrais de contenu connu&#xa0;; il peut contenir des germes et le jus de restes inachevés. L’utiliser sous %1, sur la terre autour de plantes qui ne se mangent pas crues, ou le reverser sur le plateau du haut.</translation>
    </message>
    <message>
        <source>Published: %1; harmless to worms %2; harmful about %3. One mS/cm is about %4 of salts.</source>
        <translation>Publié&#xa0;: %1&#xa0;; sans danger pour les vers %2&#xa0;; nocif vers %3. Un mS/cm correspond à environ %4 de sels.</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Force</translation>
    </message>
    <message>
        <source>%1 mS/cm, %2</source>
        <translation>%1 mS/cm, %2</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>telle que mesurée</translation>
    </message>
    <message>
        <source>estimated, with its 90 % range</source>
        <translation>estimée, avec sa plage à 90&#xa0;%</translation>
    </message>
    <message>
        <source>published values</source>
        <translation>valeurs publiées</translation>
    </message>
    <message>
        <source>Salts</source>
        <translation>Sels</translation>
    </message>
    <message>
        <source>The strength that is wished and that of your water make the dilution.</source>
        <translation>La force souhaitée et celle de votre eau donnent la dilution.</translation>
    </message>
    <message>
        <source>One part of leachate to %1 parts of water, to be on the safe side of the range.</source>
        <translation>Une part de lixiviat pour %1 parts d’eau, pour rester du côté sûr de la plage.</translation>
    </message>
    <message>
        <source>Water, in parts</source>
        <translation>Eau, en parts</translation>
    </message>
    <message>
        <source>Makes</source>
        <translation>Donne</translation>
    </message>
    <message>
        <source>It is no stronger than wished; it still is leachate, with the cautions above.</source>
        <translation>Il n’est pas plus fort que souhaité&#xa0;; cela reste du lixiviat, avec les précautions ci-dessus.</translation>
    </message>
    <message>
        <source>Your water is as strong as what is wished: with it no dilution gets there. Take rain water, or wish for more.</source>
        <translation>Votre eau est aussi forte que ce qui est souhaité&#xa0;: avec elle, aucune dilution n’y arrive. Prenez de l’eau de pluie, ou souhaitez davantage.</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialCard</name>
    <message>
        <source>No material is chosen.</source>
        <translation>Aucune matière n’est choisie.</translation>
    </message>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (personnelle)</translation>
    </message>
    <message>
        <source>welcome</source>
        <translation>convient</translation>
    </message>
    <message>
        <source>only a little at a time</source>
        <translation>seulement un peu à la fois</translation>
    </message>
    <message>
        <source>keep it out</source>
        <translation>à ne pas mettre</translation>
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
        <translation>aucun&#xa0;: pas une source de carbone</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Carbon, nitrogen</source>
        <translation>Carbone, azote</translation>
    </message>
    <message>
        <source>%1 and %2 of the dry matter</source>
        <translation>%1 et %2 de la matière sèche</translation>
    </message>
    <message>
        <source>Bulk</source>
        <translation>Densité</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Retient</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Ramollit comme</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Source</translation>
    </message>
    <message>
        <source>none noted; what was left out is that of kitchen mix</source>
        <translation>aucune notée&#xa0;; ce qui manquait est pris du mélange de cuisine</translation>
    </message>
    <message>
        <source>★ Favourite</source>
        <translation>★ Favori</translation>
    </message>
    <message>
        <source>☆ Make it a favourite</source>
        <translation>☆ En faire un favori</translation>
    </message>
    <message>
        <source>your own, taken as welcome</source>
        <translation>la vôtre, tenue pour bienvenue</translation>
    </message>
    <message>
        <source>%1, loose</source>
        <translation>%1, en vrac</translation>
    </message>
    <message>
        <source>%1 of water for one of dry matter, by weight</source>
        <translation>%1 d’eau pour un de matière sèche, en poids</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialsModel</name>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (personnelle)</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>favourite</source>
        <translation>favori</translation>
    </message>
    <message>
        <source>no favourite</source>
        <translation>pas favori</translation>
    </message>
    <message>
        <source>Favourite</source>
        <translation>Favori</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matière</translation>
    </message>
    <message>
        <source>Welcome in a worm bin, and how much of it</source>
        <translation>Si elle convient à un lombricomposteur, et en quelle quantité</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Convient</translation>
    </message>
    <message>
        <source>Carbon to nitrogen, by mass</source>
        <translation>Carbone pour azote, en masse</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>Water in the fresh mass</source>
        <translation>Eau dans la masse fraîche</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>Carbon in the dry matter</source>
        <translation>Carbone dans la matière sèche</translation>
    </message>
    <message>
        <source>Carbon</source>
        <translation>Carbone</translation>
    </message>
    <message>
        <source>Nitrogen in the dry matter</source>
        <translation>Azote dans la matière sèche</translation>
    </message>
    <message>
        <source>Nitrogen</source>
        <translation>Azote</translation>
    </message>
    <message>
        <source>Fresh and loose, in %1</source>
        <translation>Frais et en vrac, en %1</translation>
    </message>
    <message>
        <source>Softens like</source>
        <translation>Ramollit comme</translation>
    </message>
    <message>
        <source>Water held by one part of dry matter</source>
        <translation>Eau que retient une part de matière sèche</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Retient</translation>
    </message>
</context>
<context>
    <name>tierloam::materials_page::MaterialsPage</name>
    <message>
        <source>Materials</source>
        <translation>Matières</translation>
    </message>
    <message>
        <source>Find (%1)</source>
        <translation>Chercher (%1)</translation>
    </message>
    <message>
        <source>Find a material</source>
        <translation>Chercher une matière</translation>
    </message>
    <message>
        <source>All words must be in its name, reason or source</source>
        <translation>Tous les mots doivent être dans son nom, sa raison ou sa source</translation>
    </message>
    <message>
        <source>Which materials are shown</source>
        <translation>Quelles matières sont montrées</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Toutes</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Nourriture</translation>
    </message>
    <message>
        <source>Bedding</source>
        <translation>Litière</translation>
    </message>
    <message>
        <source>Minerals</source>
        <translation>Minéraux</translation>
    </message>
    <message>
        <source>Favourites</source>
        <translation>Favoris</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Personnelles</translation>
    </message>
    <message>
        <source>Not, or only a little</source>
        <translation>Non, ou seulement un peu</translation>
    </message>
    <message>
        <source>Enter puts the chosen material into the mix</source>
        <translation>Entrée met la matière choisie dans le mélange</translation>
    </message>
    <message numerus="yes">
        <source>%n material(s); what each holds, whether it is welcome, and sums with them</source>
        <translation>
            <numerusform>%n matière&#xa0;; ce qu’elle contient, si elle convient, et des calculs avec elle</numerusform>
            <numerusform>%n matières&#xa0;; ce que chacune contient, si elle convient, et des calculs avec elles</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n material(s)</source>
        <translation>
            <numerusform>%1 sur %n matière</numerusform>
            <numerusform>%1 sur %n matières</numerusform>
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
        <translation>pas de C:N</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1&#xa0;%</translation>
    </message>
    <message>
        <source>+ another material</source>
        <translation>+ une autre matière</translation>
    </message>
    <message>
        <source>Another material in the mix</source>
        <translation>Une autre matière dans le mélange</translation>
    </message>
    <message>
        <source>Aim at C:N</source>
        <translation>Viser C:N</translation>
    </message>
    <message>
        <source>and moisture</source>
        <translation>et une humidité de</translation>
    </message>
    <message>
        <source>by adding</source>
        <translation>en ajoutant</translation>
    </message>
    <message>
        <source>Put it into the mix</source>
        <translation>Ajouter au mélange</translation>
    </message>
    <message>
        <source>%1 %2 (%3)</source>
        <comment>what, figure, source</comment>
        <translation>%1 %2 (%3)</translation>
    </message>
    <message>
        <source>Aims: C:N</source>
        <translation>Objectifs&#xa0;: C:N</translation>
    </message>
    <message>
        <source>moisture</source>
        <translation>humidité</translation>
    </message>
    <message>
        <source>best</source>
        <translation>au mieux</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Matière</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantité</translation>
    </message>
    <message>
        <source>Measured in</source>
        <translation>Mesuré en</translation>
    </message>
    <message>
        <source>Take it out of the mix</source>
        <translation>L’ôter du mélange</translation>
    </message>
    <message>
        <source>Choose materials and how much of each: the mix is reckoned from their water, carbon and nitrogen.</source>
        <translation>Choisissez des matières et la quantité de chacune&#xa0;: le mélange est calculé d’après leur eau, leur carbone et leur azote.</translation>
    </message>
    <message>
        <source>Choose a material that may be added.</source>
        <translation>Choisir une matière qui peut être ajoutée.</translation>
    </message>
    <message>
        <source>then %1</source>
        <translation>alors %1</translation>
    </message>
    <message>
        <source>C:N</source>
        <translation>C:N</translation>
    </message>
    <message>
        <source>good: %1</source>
        <translation>bien&#xa0;: %1</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humidité</translation>
    </message>
    <message>
        <source>good: %1, best %2</source>
        <translation>bien&#xa0;: %1, au mieux %2</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Poids</translation>
    </message>
    <message>
        <source>%1, of it %2 dry</source>
        <translation>%1, dont %2 en sec</translation>
    </message>
    <message>
        <source>Room, loose</source>
        <translation>Volume, en vrac</translation>
    </message>
    <message>
        <source>Softens</source>
        <translation>Ramollit</translation>
    </message>
    <message>
        <source>Stays</source>
        <translation>Reste</translation>
    </message>
    <message>
        <source>%1 of the dry matter: use as it is, or sift</source>
        <translation>%1 de la matière sèche&#xa0;: à utiliser telle quelle, ou à tamiser</translation>
    </message>
    <message>
        <source>Poured</source>
        <translation>Versé</translation>
    </message>
    <message>
        <source>%1 (%2): %3</source>
        <translation>%1 (%2)&#xa0;: %3</translation>
    </message>
    <message>
        <source>Welcome</source>
        <translation>Convient</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 d’eau</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <comment>two things to add</comment>
        <translation>%1 et %2</translation>
    </message>
    <message>
        <source>C:N %1, moisture %2</source>
        <translation>C:N %1, humidité %2</translation>
    </message>
    <message>
        <source>Add %1: then it has %2.</source>
        <translation>Ajouter %1&#xa0;: il a alors %2.</translation>
    </message>
    <message>
        <source>It is as wished: %1.</source>
        <translation>Il est comme souhaité&#xa0;: %1.</translation>
    </message>
    <message>
        <source>C:N %1 and moisture %2 cannot both be reached with %3.</source>
        <translation>C:N %1 et humidité %2 ne peuvent pas être atteints tous deux avec %3.</translation>
    </message>
    <message>
        <source>There is no carbon or no nitrogen in the mix, so that it has no C:N to be brought anywhere.</source>
        <translation>Il n’y a pas de carbone ou pas d’azote dans le mélange, il n’a donc pas de C:N à amener quelque part.</translation>
    </message>
    <message>
        <source>At that C:N the mix would be at %1, and water cannot be taken out.</source>
        <translation>À ce C:N le mélange serait à %1, et on ne peut pas retirer d’eau.</translation>
    </message>
    <message>
        <source>The mix has C:N %1, and %2 with C:N %3 leads away from the aim.</source>
        <translation>Le mélange a un C:N de %1, et %2 avec un C:N de %3 l’éloigne de l’objectif.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>Even %1 times as much of it as of the mix does not get there.</source>
        <translation>Même %1 fois la quantité du mélange n’y suffit pas.</translation>
    </message>
    <message>
        <source>The nearest mix: add %1; then it has %2.</source>
        <translation>Le mélange le plus proche&#xa0;: ajouter %1&#xa0;; il a alors %2.</translation>
    </message>
    <message>
        <source>The nearest mix is the one you have: %1.</source>
        <translation>Le mélange le plus proche est celui que vous avez&#xa0;: %1.</translation>
    </message>
    <message>
        <source>With %1 it can be done: %2.</source>
        <translation>Avec %1, c’est possible&#xa0;: %2.</translation>
    </message>
    <message>
        <source>No welcome material of the table does it alone; a drier or a milder aim can be reached.</source>
        <translation>Aucune matière de la liste qui convient n’y arrive seule&#xa0;; un objectif plus sec ou plus modéré peut être atteint.</translation>
    </message>
    <message>
        <source>half in %1, nine tenths in %2 (bed at %3, worms %4)</source>
        <translation>moitié en %1, neuf dixièmes en %2 (lit à %3, vers %4)</translation>
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
        <translation>Étiquettes de plateaux</translation>
    </message>
    <message>
        <source>%1, tray %2, batch %3</source>
        <translation>%1, plateau %2, lot %3</translation>
    </message>
    <message>
        <source>Trays</source>
        <translation>Plateaux</translation>
    </message>
    <message>
        <source>Each that is ticked gets a label</source>
        <translation>Chacun de ceux qui sont cochés reçoit une étiquette</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Planche</translation>
    </message>
    <message>
        <source>First free place on the sheet</source>
        <translation>Première place libre de la planche</translation>
    </message>
    <message>
        <source>Counted in the direction of reading; those before it stay empty</source>
        <translation>Compté dans le sens de la lecture&#xa0;; celles d’avant restent vides</translation>
    </message>
    <message>
        <source>&amp;Trays:</source>
        <translation>&amp;Plateaux&#xa0;:</translation>
    </message>
    <message>
        <source>S&amp;heet:</source>
        <translation>P&amp;lanche&#xa0;:</translation>
    </message>
    <message>
        <source>&amp;First free place:</source>
        <translation>Première place li&amp;bre&#xa0;:</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Étiquettes</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::PaperView</name>
    <message>
        <source>The pages</source>
        <translation>Les pages</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimer…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Enregistrer en P&amp;DF…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Enregistrer en PDF</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Écrit dans %1.</translation>
    </message>
    <message>
        <source>The printer took nothing.</source>
        <translation>L’imprimante n’a rien pris.</translation>
    </message>
    <message>
        <source>Handed to the printer.</source>
        <translation>Transmis à l’imprimante.</translation>
    </message>
</context>
<context>
    <name>tierloam::paper::SheetView</name>
    <message>
        <source>Sheet of a stack</source>
        <translation>Fiche d’une pile</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>&amp;Stack:</source>
        <translation>P&amp;ile&#xa0;:</translation>
    </message>
    <message>
        <source>Save as &amp;HTML…</source>
        <translation>Enregistrer en &amp;HTML…</translation>
    </message>
    <message>
        <source>Save as HTML</source>
        <translation>Enregistrer en HTML</translation>
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
        <translation>Comparer</translation>
    </message>
    <message>
        <source>Try a change</source>
        <translation>Essayer un changement</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Changement</translation>
    </message>
    <message>
        <source>feed so much a week</source>
        <translation>donner tant par semaine</translation>
    </message>
    <message>
        <source>be away</source>
        <translation>être absent</translation>
    </message>
    <message>
        <source>add a tray on</source>
        <translation>ajouter un plateau le</translation>
    </message>
    <message>
        <source>take the bottom tray on</source>
        <translation>prélever le plateau du bas le</translation>
    </message>
    <message>
        <source>give worms away</source>
        <translation>donner des vers</translation>
    </message>
    <message>
        <source>start another stack from it</source>
        <translation>en tirer une autre pile</translation>
    </message>
    <message>
        <source>the shortest way back</source>
        <translation>le chemin de retour le plus court</translation>
    </message>
    <message>
        <source>if an entry had not been</source>
        <translation>si une entrée n’avait pas eu lieu</translation>
    </message>
    <message>
        <source>Fresh food a week</source>
        <translation>Nourriture fraîche par semaine</translation>
    </message>
    <message>
        <source>Usual temperature of the bed</source>
        <translation>Température habituelle du lit</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Du</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Au</translation>
    </message>
    <message>
        <source>Weeks until it is back</source>
        <translation>Semaines jusqu’au rétablissement</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Entrée</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Comparaison…</translation>
    </message>
    <message>
        <source>It cannot have been so: later entries rest on that one.</source>
        <translation>Cela n’a pas pu se passer ainsi&#xa0;: des entrées suivantes s’appuient sur celle-là.</translation>
    </message>
    <message>
        <source>The estimates hold no members to ask; wait until they are made anew.</source>
        <translation>Les estimations n’ont pas de membres à interroger&#xa0;; attendre qu’elles soient refaites.</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>comme d’habitude</translation>
    </message>
    <message>
        <source>with the change</source>
        <translation>avec le changement</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <comment>day, what was done, how much of what</comment>
        <translation>%1&#xa0;: %2, %3</translation>
    </message>
    <message>
        <source>food a week</source>
        <translation>nourriture par semaine</translation>
    </message>
    <message>
        <source>if the bottom tray had been taken on</source>
        <translation>si le plateau du bas avait été pris le</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Jour</translation>
    </message>
    <message>
        <source>Nothing stood there on that day, or it is not past yet.</source>
        <translation>Rien ne se trouvait là ce jour-là, ou il n’est pas encore passé.</translation>
    </message>
    <message>
        <source>It cannot have been so: later entries rest on that tray.</source>
        <translation>Cela n’a pas pu être ainsi : des entrées ultérieures reposent sur ce plateau.</translation>
    </message>
    <message>
        <source>That day is not ahead: take tomorrow or a later one.</source>
        <translation>Ce jour n’est pas à venir&#xa0;: choisir demain ou plus tard.</translation>
    </message>
    <message>
        <source>The estimates reach to %1.</source>
        <translation>Les estimations vont jusqu’au %1.</translation>
    </message>
    <message>
        <source>That is before the first day.</source>
        <translation>C’est avant le premier jour.</translation>
    </message>
    <message>
        <source>day</source>
        <translation>jour</translation>
    </message>
    <message>
        <source>the new stack</source>
        <translation>la nouvelle pile</translation>
    </message>
    <message>
        <source>–</source>
        <translation>–</translation>
    </message>
    <message>
        <source>keep the bed warmer or colder</source>
        <translation>garder le lit plus chaud ou plus froid</translation>
    </message>
    <message>
        <source>the mean of the whole year; the place makes winter and summer of it</source>
        <translation>la moyenne de toute l’année&#xa0;; l’endroit en fait l’hiver et l’été</translation>
    </message>
    <message>
        <source>mean of the year: about %1 in %2, %3 in %4</source>
        <comment>temperature, month, temperature, month</comment>
        <translation>moyenne de l’année&#xa0;: environ %1 en %2, %3 en %4</translation>
    </message>
    <message>
        <source>All go on without lifting a tray; the plan of the year lifts them when they are due. The new stack gets its second tray when the first is full.</source>
        <translation>Toutes continuent sans monter de plateau&#xa0;; le plan de l’année les monte quand c’est à faire. La nouvelle pile reçoit son deuxième plateau quand le premier est plein.</translation>
    </message>
    <message>
        <source>Both go on without lifting a tray; the plan of the year lifts them when they are due.</source>
        <translation>Les deux continuent sans monter de plateau&#xa0;; le plan de l’année les monte quand c’est à faire.</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::ClockCard</name>
    <message>
        <source>no difference</source>
        <translation>aucune différence</translation>
    </message>
    <message>
        <source>%1 warmer: %2</source>
        <translation>%1 de plus&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 more a week: %2</source>
        <translation>%1 de plus par semaine&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 more worms: %2</source>
        <translation>%1 de vers en plus&#xa0;: %2</translation>
    </message>
    <message>
        <source>half the bedding in the top tray: %1</source>
        <translation>moitié moins de litière dans le plateau du haut&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 of water: %2</source>
        <translation>%1 d’eau&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>not within a year</source>
        <translation>pas avant un an</translation>
    </message>
    <message>
        <source>Cold holds it back.</source>
        <translation>Le froid la freine.</translation>
    </message>
    <message>
        <source>Food holds it back.</source>
        <translation>La nourriture la freine.</translation>
    </message>
    <message>
        <source>Too few worms hold it back.</source>
        <translation>Trop peu de vers la freinent.</translation>
    </message>
    <message>
        <source>Bedding that is not softened holds it back.</source>
        <translation>De la litière non ramollie la freine.</translation>
    </message>
    <message>
        <source>Dryness holds it back.</source>
        <translation>La sécheresse la freine.</translation>
    </message>
    <message>
        <source>Nothing holds it back much.</source>
        <translation>Rien ne la freine beaucoup.</translation>
    </message>
    <message numerus="yes">
        <source>Of %n stack(s) these are the first %1 on the shelf: each takes a while to foresee.</source>
        <translation>
            <numerusform>Sur %n pile voici les %1 premières de l’étagère&#xa0;: chacune prend un moment à prévoir.</numerusform>
            <numerusform>Sur %n piles voici les %1 premières de l’étagère&#xa0;: chacune prend un moment à prévoir.</numerusform>
        </translation>
    </message>
    <message>
        <source>By what is known it has hardly any worms: nothing but worms brings it on.</source>
        <translation>D’après ce qu’on sait, il n’y a presque pas de vers&#xa0;: seuls des vers la font avancer.</translation>
    </message>
    <message>
        <source>Next step of each stack</source>
        <translation>Prochaine étape de chaque pile</translation>
    </message>
    <message>
        <source>Next tray to be added or lifted, and what would bring it forward</source>
        <translation>Prochain plateau à ajouter ou à monter, et ce qui l’avancerait</translation>
    </message>
    <message>
        <source>castings in the light, taken about %1; the next step due %2</source>
        <translation>lombricompost à la lumière, prélevé vers le %1&#xa0;; étape suivante&#xa0;: %2</translation>
    </message>
    <message>
        <source>due now</source>
        <translation>à faire maintenant</translation>
    </message>
    <message>
        <source>due about now; the list says so once it is 80 % sure</source>
        <translation>à faire à peu près maintenant&#xa0;; la liste l’annonce quand c’est sûr à 80 %</translation>
    </message>
    <message>
        <source>It would be due: %1.</source>
        <translation>Ce serait à faire&#xa0;: %1.</translation>
    </message>
    <message>
        <source>There is no stack yet whose next step could be foreseen.</source>
        <translation>Il n’y a pas encore de pile dont l’étape suivante puisse être prévue.</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::FeedingCard</name>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>front</source>
        <translation>devant</translation>
    </message>
    <message>
        <source>back</source>
        <translation>derrière</translation>
    </message>
    <message>
        <source>all over</source>
        <translation>partout</translation>
    </message>
    <message>
        <source>%1 of water</source>
        <translation>%1 d’eau</translation>
    </message>
    <message>
        <source>its usual cover</source>
        <translation>sa couverture habituelle</translation>
    </message>
    <message>
        <source>Feeding this week</source>
        <translation>Nourriture de cette semaine</translation>
    </message>
    <message>
        <source>What the kitchen gives in a week</source>
        <translation>Ce que la cuisine donne en une semaine</translation>
    </message>
    <message>
        <source>From the kitchen</source>
        <translation>De la cuisine</translation>
    </message>
    <message>
        <source>Supply of the kitchen</source>
        <translation>Restes de la cuisine</translation>
    </message>
    <message>
        <source>Learned from the journal: %1 a week over all stacks, the middle week of the last eight. Leave it empty to follow the journal.</source>
        <translation>Appris du journal&#xa0;: %1 par semaine pour toutes les piles, la semaine médiane des huit dernières. Laisser vide pour suivre le journal.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>no tray takes food</source>
        <translation>aucun plateau n’accepte de nourriture</translation>
    </message>
    <message>
        <source>it can bear %1 this week</source>
        <translation>elle supporte %1 cette semaine</translation>
    </message>
    <message>
        <source>No stack takes food yet.</source>
        <translation>Aucune pile n’accepte encore de nourriture.</translation>
    </message>
    <message>
        <source>%1 more than the stacks can bear as they stand: keep it until they have eaten, freeze it for a week with less, or put it on a compost heap. Given all the same, it heats and smells.</source>
        <translation>%1 de plus que ce que les piles supportent en l’état&#xa0;: à garder jusqu’à ce qu’elles aient mangé, à congeler pour une semaine plus maigre, ou à mettre sur un tas de compost. Donné quand même, cela chauffe et sent.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>amount and material of a cover</comment>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>no water</source>
        <translation>pas d’eau</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>tray %1, %2; with it: %3. At most %4</source>
        <translation>plateau %1, %2&#xa0;; avec&#xa0;: %3. Au plus %4</translation>
    </message>
    <message>
        <source>all of it from %1 on, since the days before count; tray %2, %3; with it: %4. At most %5</source>
        <translation>le tout à partir de %1, car les jours d’avant comptent&#xa0;; plateau %2, %3&#xa0;; avec&#xa0;: %4. Au plus %5</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::LanesView</name>
    <message>
        <source>no step chosen</source>
        <translation>aucune étape choisie</translation>
    </message>
    <message numerus="yes">
        <source>Year of %n stack(s): %1</source>
        <translation>
            <numerusform>Année de %n pile&#xa0;: %1</numerusform>
            <numerusform>Année de %n piles&#xa0;: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>Arrow keys choose a step or another stack; Shift with Left or Right moves a harvest by a day, Ctrl and Shift by a week; Enter keeps it on its day</source>
        <translation>Les flèches choisissent une étape ou une autre pile&#xa0;; Maj avec Gauche ou Droite déplace une récolte d’un jour, Ctrl et Maj d’une semaine&#xa0;; Entrée la garde à son jour</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>stack, when its bottom tray is ready</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>nobody is there: %1</source>
        <translation>personne n’est là&#xa0;: %1</translation>
    </message>
    <message>
        <source>nobody is there for this stack: %1</source>
        <translation>personne n’est là pour cette pile&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1: nobody is there for it, %2</source>
        <comment>stack, days</comment>
        <translation>%1&#xa0;: personne n’est là pour elle, %2</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::RotationPage</name>
    <message>
        <source>Rotation</source>
        <translation>Rotation</translation>
    </message>
    <message>
        <source>Steps of the coming year</source>
        <translation>Étapes de l’année à venir</translation>
    </message>
    <message>
        <source>Harvest on %1</source>
        <translation>Récolte le %1</translation>
    </message>
    <message>
        <source>Days for harvests</source>
        <translation>Jours pour les récoltes</translation>
    </message>
    <message>
        <source>Pin a harvest</source>
        <translation>Fixer une récolte</translation>
    </message>
    <message>
        <source>%1 · the year is being planned</source>
        <translation>%1 · l’année se planifie</translation>
    </message>
    <message>
        <source>The year is being planned; it stands here in a moment.</source>
        <translation>L’année se planifie&#xa0;; elle sera ici dans un instant.</translation>
    </message>
    <message numerus="yes">
        <source>%n harvest(s) in the coming year</source>
        <translation>
            <numerusform>%n récolte dans l’année à venir</numerusform>
            <numerusform>%n récoltes dans l’année à venir</numerusform>
        </translation>
    </message>
    <message>
        <source>about %1 of castings</source>
        <translation>environ %1 de lombricompost</translation>
    </message>
    <message numerus="yes">
        <source>on %n day(s)</source>
        <translation>
            <numerusform>sur %n jour</numerusform>
            <numerusform>sur %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>put off by %1 in all</source>
        <translation>report de %1 en tout</translation>
    </message>
    <message>
        <source>no better choice of days exists</source>
        <translation>il n’existe pas de meilleur choix de jours</translation>
    </message>
    <message>
        <source>a good choice of days, not proved to be the best</source>
        <translation>un bon choix de jours, sans preuve que ce soit le meilleur</translation>
    </message>
    <message>
        <source>Choose a step with the mouse or the arrow keys. A harvest is moved by dragging it, or with Shift and the arrow keys; what that costs is shown here.</source>
        <translation>Choisissez une étape à la souris ou avec les flèches. Une récolte se déplace en la faisant glisser, ou avec Maj et les flèches&#xa0;; ce que cela coûte est montré ici.</translation>
    </message>
    <message>
        <source>a day of lifting saved counts as %1 of delay</source>
        <translation>un jour de montée épargné compte comme %1 de retard</translation>
    </message>
    <message>
        <source>two harvests close together count as %1 of delay</source>
        <translation>deux récoltes rapprochées comptent comme %1 de retard</translation>
    </message>
    <message>
        <source>On that day much of the tray is likely not castings yet.</source>
        <translation>Ce jour-là, une grande part du plateau n’est sans doute pas encore du lombricompost.</translation>
    </message>
    <message numerus="yes">
        <source>none waits more than %n day(s)</source>
        <translation>
            <numerusform>aucune n’attend plus de %n jour</numerusform>
            <numerusform>aucune n’attend plus de %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>How long a harvest may wait for others</source>
        <translation>Combien de temps une récolte peut attendre les autres</translation>
    </message>
    <message>
        <source>How long a harvest may wait</source>
        <translation>Combien de temps une récolte peut attendre</translation>
    </message>
    <message>
        <source>Let a harvest come when it is due</source>
        <translation>Laisser une récolte venir à sa date</translation>
    </message>
    <message>
        <source>Once a stack stands, its coming year appears here: when each tray is ready, added, lifted and taken, what to feed it this week, what would bring its next step forward, and what a change would do.</source>
        <translation>Dès qu’une pile est en place, son année à venir apparaît ici&#xa0;: quand chaque plateau est prêt, ajouté, monté et prélevé, de quoi le nourrir cette semaine, ce qui avancerait sa prochaine étape et ce que ferait un changement.</translation>
    </message>
    <message>
        <source>No stack holds a tray whose next step could be foreseen.</source>
        <translation>Aucune pile n’a de plateau dont l’étape suivante puisse être prévue.</translation>
    </message>
    <message>
        <source>each when it is due, they would give %1</source>
        <translation>chacune à sa date, elles donneraient %1</translation>
    </message>
    <message>
        <source>In this stack: harvests %1 later in all; castings in the year %2, each when it is due %3; colony at its end %4, usually %5.</source>
        <translation>Dans cette pile&#xa0;: récoltes %1 plus tard en tout&#xa0;; lombricompost dans l’année %2, chacune à sa date %3&#xa0;; colonie à la fin %4, d’habitude %5.</translation>
    </message>
    <message numerus="yes">
        <source>%n more would come within the year if none waited</source>
        <translation>
            <numerusform>%n de plus viendrait dans l’année si aucune n’attendait</numerusform>
            <numerusform>%n de plus viendraient dans l’année si aucune n’attendait</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::StepReadout</name>
    <message>
        <source>Keep this day</source>
        <translation>Garder ce jour</translation>
    </message>
    <message>
        <source>The chosen step</source>
        <translation>L’étape choisie</translation>
    </message>
    <message>
        <source>Keep the chosen harvest on its day</source>
        <translation>Garder la récolte choisie à son jour</translation>
    </message>
    <message>
        <source>Enter does the same in the lanes</source>
        <translation>Entrée fait de même dans les pistes</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::TrackCard</name>
    <message>
        <source>add a tray</source>
        <translation>ajouter un plateau</translation>
    </message>
    <message>
        <source>lift the bottom tray</source>
        <translation>monter le plateau du bas</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; still due</source>
        <translation>%1, %2, conseillé&#xa0;: %3&#xa0;; encore à faire</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; done %4 later</source>
        <translation>%1, %2, conseillé&#xa0;: %3&#xa0;; fait %4 plus tard</translation>
    </message>
    <message>
        <source>%1, %2: advised to %3; taken back after %4</source>
        <translation>%1, %2, conseillé&#xa0;: %3&#xa0;; retiré après %4</translation>
    </message>
    <message>
        <source>Diary of advice</source>
        <translation>Journal des conseils</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; done the same day</source>
        <comment>day, stack, what was advised</comment>
        <translation>%1, %2&#xa0;: «&#xa0;%3&#xa0;»&#xa0;; fait le jour même</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; done %4 later</source>
        <comment>day, stack, what was advised, days</comment>
        <translation>%1, %2&#xa0;: «&#xa0;%3&#xa0;»&#xa0;; fait après %4</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; still due</source>
        <comment>day, stack, what was advised</comment>
        <translation>%1, %2&#xa0;: «&#xa0;%3&#xa0;»&#xa0;; encore à faire</translation>
    </message>
    <message>
        <source>%1, %2: “%3”; not done, taken back after %4</source>
        <comment>day, stack, what was advised, days</comment>
        <translation>%1, %2&#xa0;: «&#xa0;%3&#xa0;»&#xa0;; pas fait, retiré après %4</translation>
    </message>
    <message>
        <source>harvests weighed: %1, within what was foreseen: %2 (9 in 10 should be); lifted as ready: %3, of these within: %4</source>
        <translation>récoltes pesées&#xa0;: %1, dans ce qui était prévu&#xa0;: %2 (9 sur 10 devraient l’être)&#xa0;; montés comme prêts&#xa0;: %3, dont dans la prévision&#xa0;: %4</translation>
    </message>
    <message>
        <source>feedings due in the last 90 days: %1, given within 3 days: %2</source>
        <translation>apports dus des 90 derniers jours&#xa0;: %1, donnés en 3 jours&#xa0;: %2</translation>
    </message>
    <message>
        <source>other advice in that time: %1, followed: %2</source>
        <translation>autres conseils dans ce temps&#xa0;: %1, suivis&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3 weighed, %4 foreseen, ready %5 when lifted</source>
        <translation>%1, %2&#xa0;: %3 pesés, %4 prévus, prêt %5 à la montée</translation>
    </message>
    <message>
        <source>%1, %2: %3 weighed, %4 foreseen</source>
        <translation>%1, %2&#xa0;: %3 pesés, %4 prévus</translation>
    </message>
    <message numerus="yes">
        <source>Feedings and other advice are counted of the first %1 of %n stack(s) on the shelf.</source>
        <translation>
            <numerusform>Les apports et autres conseils sont comptés des %1 premières piles sur %n de l’étagère.</numerusform>
            <numerusform>Les apports et autres conseils sont comptés des %1 premières piles sur %n de l’étagère.</numerusform>
        </translation>
    </message>
    <message>
        <source>What was advised, what was done and how right it was stands here once a step was due.</source>
        <translation>Ce qui a été conseillé, ce qui a été fait et si c’était juste se trouve ici dès qu’une étape a été à faire.</translation>
    </message>
    <message>
        <source>steps advised: %1, followed: %2</source>
        <translation>étapes conseillées&#xa0;: %1, suivies&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::TwoCourses</name>
    <message>
        <source>Colony of the coming year, as usual and with the change: the figures stand in the table above</source>
        <translation>Colonie de l’année à venir, comme d’habitude et avec le changement&#xa0;: les chiffres sont dans le tableau ci-dessus</translation>
    </message>
    <message>
        <source>colony, as usual</source>
        <translation>colonie, comme d’habitude</translation>
    </message>
    <message>
        <source>colony, with the change</source>
        <translation>colonie, avec le changement</translation>
    </message>
    <message>
        <source>up to %1</source>
        <translation>jusqu’à %1</translation>
    </message>
    <message>
        <source>Colony of the coming year, as usual, with the change, and of the new stack: the figures stand in the table above</source>
        <translation>Colonie de l’année à venir, comme d’habitude, avec le changement, et celle de la nouvelle pile&#xa0;: les chiffres sont dans le tableau ci-dessus</translation>
    </message>
    <message>
        <source>colony, the new stack</source>
        <translation>colonie, la nouvelle pile</translation>
    </message>
</context>
<context>
    <name>tierloam::rotation::WishCard</name>
    <message>
        <source>a little each month</source>
        <translation>un peu chaque mois</translation>
    </message>
    <message>
        <source>What would raise it?</source>
        <translation>Qu’est-ce qui l’augmenterait&#xa0;?</translation>
    </message>
    <message>
        <source>The garden&apos;s wish</source>
        <translation>Le souhait du jardin</translation>
    </message>
    <message>
        <source>Castings wished for</source>
        <translation>Lombricompost souhaité</translation>
    </message>
    <message>
        <source>Wished for by</source>
        <translation>Souhaité pour</translation>
    </message>
    <message>
        <source>by</source>
        <translation>pour le</translation>
    </message>
    <message>
        <source>Say how much is wished for, and by when.</source>
        <translation>Dire combien est souhaité, et pour quand.</translation>
    </message>
    <message>
        <source>Chance %1. By %2 the plan gives %3.</source>
        <translation>Probabilité %1. D’ici le %2, le plan donne %3.</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <comment>what is changed, chance, litres</comment>
        <translation>%1&#xa0;: %2 (%3)</translation>
    </message>
    <message>
        <source>%1 more food a week in each stack</source>
        <translation>%1 de nourriture de plus par semaine dans chaque pile</translation>
    </message>
    <message>
        <source>the beds %1 warmer</source>
        <translation>les lits plus chauds de %1</translation>
    </message>
    <message>
        <source>one tray more in each stack</source>
        <translation>un plateau de plus dans chaque pile</translation>
    </message>
    <message>
        <source>Comparing…</source>
        <translation>Comparaison…</translation>
    </message>
    <message>
        <source>Not raised by: %1.</source>
        <translation>Pas augmentée par&#xa0;: %1.</translation>
    </message>
    <message numerus="yes">
        <source>wanted %n day(s) later</source>
        <translation>
            <numerusform>souhaité %n jour plus tard</numerusform>
            <numerusform>souhaité %n jours plus tard</numerusform>
        </translation>
    </message>
    <message>
        <source>more food, which no stack can bear as they stand</source>
        <translation>plus de nourriture, qu’aucune pile ne supporte en l’état</translation>
    </message>
    <message>
        <source>up to %1 more food a week in each stack, as far as it can bear it</source>
        <translation>jusqu’à %1 de nourriture en plus par semaine dans chaque pile, autant qu’elle en supporte</translation>
    </message>
    <message>
        <source>Something comes in each month.</source>
        <translation>Il en vient chaque mois.</translation>
    </message>
    <message numerus="yes">
        <source>In %n month(s) until then nothing is taken.</source>
        <translation>
            <numerusform>Pendant %n mois d’ici là, rien n’est prélevé.</numerusform>
            <numerusform>Pendant %n mois d’ici là, rien n’est prélevé.</numerusform>
        </translation>
    </message>
    <message>
        <source>each harvest on the day it is due</source>
        <translation>chaque récolte au jour dû</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::DateBar</name>
    <message>
        <source>Today</source>
        <translation>Aujourd’hui</translation>
    </message>
    <message>
        <source>Day shown</source>
        <translation>Jour affiché</translation>
    </message>
    <message>
        <source>Shows the shelf as it stood on any day. Left and right: a day; page up and down: a week.</source>
        <translation>Montre l’étagère telle qu’elle était à n’importe quel jour. Gauche et droite&#xa0;: un jour&#xa0;; page haut et bas&#xa0;: une semaine.</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Revenir à aujourd’hui</translation>
    </message>
    <message>
        <source>%1 – the past</source>
        <translation>%1 – le passé</translation>
    </message>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::PartPanel</name>
    <message>
        <source>%1: %2</source>
        <comment>a stack and one of its trays</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1: everything that can be recorded</source>
        <translation>%1&#xa0;: tout ce qui peut être noté</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Close (Esc)</source>
        <translation>Fermer (Échap)</translation>
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
        <translation>Plus…</translation>
    </message>
    <message numerus="yes">
        <source>%n more act(s) for it</source>
        <translation>
            <numerusform>%n action de plus</numerusform>
            <numerusform>%n actions de plus</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::ShelfBoard</name>
    <message>
        <source>Shelf</source>
        <translation>Étagère</translation>
    </message>
    <message>
        <source>Start a stack…</source>
        <translation>Démarrer une pile…</translation>
    </message>
    <message>
        <source>No stack stood on this day</source>
        <translation>Aucune pile n’existait ce jour-là</translation>
    </message>
    <message>
        <source>The first one was started later. Move the slider on, or go back to today.</source>
        <translation>La première a été démarrée plus tard. Avancez le curseur, ou revenez à aujourd’hui.</translation>
    </message>
    <message>
        <source>No stack stands any more</source>
        <translation>Il n’y a plus de pile</translation>
    </message>
    <message>
        <source>All stacks are retired. Their journal is kept, and the slider still shows them as they stood.</source>
        <translation>Toutes les piles sont arrêtées. Leur journal est conservé, et le curseur les montre encore telles qu’elles étaient.</translation>
    </message>
    <message>
        <source>No stack stands here yet</source>
        <translation>Il n’y a pas encore de pile ici</translation>
    </message>
    <message>
        <source>Once a stack is started, it is drawn here from the side: its trays with what lies in them, its worms and its sump, and under it what to do next.</source>
        <translation>Dès qu’une pile est démarrée, elle est dessinée ici de côté&#xa0;: ses plateaux avec leur contenu, ses vers et son bac, et dessous ce qu’il faut faire ensuite.</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::ShelfPage</name>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>%1: not written down. %2</source>
        <translation>%1&#xa0;: non noté. %2</translation>
    </message>
    <message>
        <source>%1: not written down. %2 Nothing else was changed; try again when that is put right.</source>
        <translation>%1&#xa0;: non noté. %2 Rien d’autre n’a été changé&#xa0;; réessayer quand ce sera réglé.</translation>
    </message>
    <message>
        <source>Place of %1 on the shelf</source>
        <translation>Place de %1 sur l’étagère</translation>
    </message>
    <message>
        <source>No stack was chosen, and nothing is written down yet. %1 has the focus now: press again for it, or go to another one with Left and Right.</source>
        <translation>Aucune pile n’était choisie, et rien n’est encore noté. %1 a maintenant le focus&#xa0;: appuyez de nouveau pour elle, ou passez à une autre avec Gauche et Droite.</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StackCanvas</name>
    <message>
        <source>%1: %2</source>
        <comment>a name and its value</comment>
        <translation>%1&#xa0;: %2</translation>
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
        <translation>Tout le reste qui peut être noté pour %1</translation>
    </message>
    <message>
        <source>More for %1</source>
        <translation>Plus pour %1</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StoryCharts</name>
    <message>
        <source>Charts over its time</source>
        <translation>Graphiques sur toute sa vie</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::StripsView</name>
    <message>
        <source>Small charts of %1</source>
        <translation>Petits graphiques de %1</translation>
    </message>
</context>
<context>
    <name>tierloam::shelf::VerdictBox</name>
    <message>
        <source>%1: %2</source>
        <comment>name of a stack, state</comment>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::MeasureSection</name>
    <message>
        <source>%1 as table</source>
        <translation>%1 en tableau</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, stacks together</source>
        <translation>%1, piles ensemble</translation>
    </message>
    <message>
        <source>No stack is chosen. Choose one above, and its chart stands here.</source>
        <translation>Aucune pile n’est choisie. Choisissez-en une ci-dessus, et son graphique se trouvera ici.</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::SignKey</name>
    <message>
        <source>estimate and its 90 % range</source>
        <translation>estimation et sa plage à 90&#xa0;%</translation>
    </message>
    <message>
        <source>with the change that is tried</source>
        <translation>avec le changement essayé</translation>
    </message>
    <message>
        <source>expected yield and its 90 % range</source>
        <translation>rendement attendu et son intervalle à 90 %</translation>
    </message>
    <message>
        <source>forecast: fed as usual, no tray lifted</source>
        <translation>prévision&#xa0;: nourrie comme d’habitude, aucun plateau monté</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::StackChips</name>
    <message>
        <source>Show stack %1</source>
        <translation>Montrer la pile %1</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::TrendTable</name>
    <message>
        <source>%1 (today)</source>
        <translation>%1 (aujourd’hui)</translation>
    </message>
    <message>
        <source>%1 (forecast)</source>
        <translation>%1 (prévision)</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>%1, read by a logger</source>
        <translation>%1, lu par un enregistreur</translation>
    </message>
    <message>
        <source>%1, estimate</source>
        <translation>%1, estimation</translation>
    </message>
    <message>
        <source>%1, drained</source>
        <translation>%1, vidangé</translation>
    </message>
    <message>
        <source>%1, to be expected</source>
        <translation>%1, attendu</translation>
    </message>
    <message>
        <source>%1 of %2 of it</source>
        <translation>%1 pour %2 de cela</translation>
    </message>
    <message>
        <source>%1, with the change</source>
        <translation>%1, avec le changement</translation>
    </message>
    <message>
        <source>%1, castings taken</source>
        <translation>%1, lombricompost pris</translation>
    </message>
</context>
<context>
    <name>tierloam::trends::TrendsPage</name>
    <message>
        <source>Trends</source>
        <translation>Tendances</translation>
    </message>
    <message>
        <source>Show %1</source>
        <translation>Montrer %1</translation>
    </message>
    <message>
        <source>Charts stand here once there is a stack.</source>
        <translation>Les graphiques se trouvent ici dès qu’il y a une pile.</translation>
    </message>
    <message>
        <source>%1 · estimates are being made anew</source>
        <translation>%1 · les estimations se refont</translation>
    </message>
    <message>
        <source>Save or print</source>
        <translation>Enregistrer ou imprimer</translation>
    </message>
    <message>
        <source>What the charts show now, as a picture, a drawing, pages or figures</source>
        <translation>Ce que les graphiques montrent, en image, dessin, pages ou chiffres</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::AmountField</name>
    <message>
        <source>«%1» is not a unit that fits here.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une unité qui convient ici.</translation>
    </message>
    <message>
        <source>«%1» is not a number.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre.</translation>
    </message>
    <message>
        <source>An amount cannot be below zero.</source>
        <translation>Une quantité ne peut pas être inférieure à zéro.</translation>
    </message>
    <message>
        <source>The amount must be more than zero.</source>
        <translation>La quantité doit être supérieure à zéro.</translation>
    </message>
    <message>
        <source>A count is a whole number.</source>
        <translation>Un comptage est un nombre entier.</translation>
    </message>
    <message>
        <source>At most %1.</source>
        <translation>Au plus %1.</translation>
    </message>
    <message>
        <source>At most %1 in one entry.</source>
        <translation>Au plus %1 par entrée.</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Unité de %1</translation>
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
        <translation>Indiquer aussi la longueur.</translation>
    </message>
    <message>
        <source>Width and length must be more than zero.</source>
        <translation>La largeur et la longueur doivent être supérieures à zéro.</translation>
    </message>
    <message>
        <source>That is %1; a tray has from %2 to %3.</source>
        <translation>Cela fait %1&#xa0;; un plateau a de %2 à %3.</translation>
    </message>
    <message>
        <source>Give the width as well.</source>
        <translation>Indiquer aussi la largeur.</translation>
    </message>
    <message>
        <source>%1: width</source>
        <translation>%1&#xa0;: largeur</translation>
    </message>
    <message>
        <source>%1: length</source>
        <translation>%1&#xa0;: longueur</translation>
    </message>
    <message>
        <source>%1: how it is given</source>
        <translation>%1&#xa0;: manière de l’indiquer</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::DateField</name>
    <message>
        <source>today</source>
        <translation>aujourd’hui</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>«%1» is not a date from 1900 to 2199; write it like %2 or %3.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une date de 1900 à 2199&#xa0;; l’écrire comme %2 ou %3.</translation>
    </message>
    <message>
        <source>«%1» is not a time of day; write it like 18:30.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas une heure&#xa0;; l’écrire comme 18:30.</translation>
    </message>
    <message>
        <source>+ time</source>
        <translation>+ heure</translation>
    </message>
    <message>
        <source>Note the time of day as well</source>
        <translation>Noter aussi l’heure</translation>
    </message>
    <message>
        <source>Time of day</source>
        <translation>Heure</translation>
    </message>
    <message>
        <source>Choose the date from a calendar</source>
        <translation>Choisir la date dans un calendrier</translation>
    </message>
    <message>
        <source>Calendar</source>
        <translation>Calendrier</translation>
    </message>
    <message>
        <source>%1, today</source>
        <translation>%1, aujourd’hui</translation>
    </message>
    <message>
        <source>%1, yesterday</source>
        <translation>%1, hier</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n days ago</source>
        <translation>
            <numerusform>%1, il y a %n jour</numerusform>
            <numerusform>%1, il y a %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, tomorrow</source>
        <translation>%1, demain</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n days from now</source>
        <translation>
            <numerusform>%1, dans %n jour</numerusform>
            <numerusform>%1, dans %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 has not come yet. What is recorded has been done: today at the latest.</source>
        <translation>%1 n’est pas encore venu. On note ce qui est fait&#xa0;: aujourd’hui au plus tard.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::FactList</name>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::Field</name>
    <message>
        <source>«%1» is not a number.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas un nombre.</translation>
    </message>
    <message>
        <source>«%1» could be read in two ways: write it without a thousands mark.</source>
        <translation>«&#xa0;%1&#xa0;» peut se lire de deux façons&#xa0;: l’écrire sans séparateur de milliers.</translation>
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
        <translation>«&#xa0;%1&#xa0;» n’est pas parmi les matières.</translation>
    </message>
    <message>
        <source>«%1» is not among the materials; the nearest are %2.</source>
        <translation>«&#xa0;%1&#xa0;» n’est pas parmi les matières&#xa0;; les plus proches sont %2.</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::NumberField</name>
    <message>
        <source>A whole number is wanted here.</source>
        <translation>Il faut ici un nombre entier.</translation>
    </message>
    <message>
        <source>From %1 to %2.</source>
        <translation>De %1 à %2.</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Unit of %1</source>
        <translation>Unité de %1</translation>
    </message>
</context>
<context>
    <name>tierloam::ui::TextField</name>
    <message>
        <source>It holds a character that cannot be printed; type it again.</source>
        <translation>Il contient un caractère qui ne s’imprime pas&#xa0;; le saisir de nouveau.</translation>
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
        <translation>Ce qu’il fait</translation>
    </message>
    <message>
        <source>It keeps the journal of stacked-tray worm bins and estimates what goes on inside them, each figure with its range. Estimates are no measurements: a look into the tray decides. Local codes and licensed practice come first.</source>
        <translation>Il tient le journal de lombricomposteurs à plateaux empilés et estime ce qui s’y passe, chaque chiffre avec sa plage. Les estimations ne sont pas des mesures&#xa0;: c’est ce qu’on voit dans le plateau qui décide. Les règles locales et les professionnels agréés passent d’abord.</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Licence</translation>
    </message>
    <message>
        <source>Made with</source>
        <translation>Fait avec</translation>
    </message>
    <message>
        <source>Sources of the materials table</source>
        <translation>Sources des données sur les matières</translation>
    </message>
    <message>
        <source>&amp;Read the licence</source>
        <translation>&amp;Lire la licence</translation>
    </message>
    <message>
        <source>Copyright of its authors. Free software under the GNU General Public License, version 3 or later; it comes with no warranty.</source>
        <translation>Droits de ses auteurs. Logiciel libre sous la GNU General Public License, version 3 ou ultérieure&#xa0;; il est fourni sans aucune garantie.</translation>
    </message>
    <message>
        <source>Qt 6 (LGPL-3) with Qt Charts (GPL-3), SQLite (public domain), the C++ standard library (GPL-3 with its runtime exception), and on paper the DejaVu fonts (their own free licence). Drawings and icon are the program&apos;s own. Nothing is sent over a network.</source>
        <translation>Qt 6 (LGPL-3) avec Qt Charts (GPL-3), SQLite (domaine public), la bibliothèque standard de C++ (GPL-3 avec son exception d’exécution) et, sur papier, les polices DejaVu (sous leur propre licence libre). Les dessins et l’icône sont ceux du programme. Rien n’est envoyé sur un réseau.</translation>
    </message>
    <message>
        <source>Sources of numbers</source>
        <translation>Sources des nombres</translation>
    </message>
    <message>
        <source>Each figure of the handbook and each parameter of the model names what it rests on: the handbook lists them. What the trade says without a source, and what rests on memory or judgement, is marked so.</source>
        <translation>Chaque chiffre du manuel et chaque paramètre du modèle dit sur quoi il repose&#xa0;: le manuel en donne la liste. Ce que le métier dit sans source, et ce qui repose sur la mémoire ou le jugement, est marqué ainsi.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::BackupsView</name>
    <message>
        <source>of the day</source>
        <translation>du jour</translation>
    </message>
    <message>
        <source>before an import</source>
        <translation>avant une importation</translation>
    </message>
    <message>
        <source>before the file was brought up to date</source>
        <translation>avant la mise à jour du fichier</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sauvegardes</translation>
    </message>
    <message>
        <source>Backups of %1</source>
        <translation>Sauvegardes de %1</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Recherche…</translation>
    </message>
    <message>
        <source>Made on</source>
        <translation>Faite le</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Motif</translation>
    </message>
    <message>
        <source>Entries</source>
        <translation>Entrées</translation>
    </message>
    <message>
        <source>Last entry</source>
        <translation>Dernière entrée</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Fichier</translation>
    </message>
    <message>
        <source>Choose the one to be restored</source>
        <translation>Choisir celle qui sera restaurée</translation>
    </message>
    <message>
        <source>How far the restoring is</source>
        <translation>Avancement de la restauration</translation>
    </message>
    <message>
        <source>&amp;Restore to a new file…</source>
        <translation>&amp;Restaurer dans un nouveau fichier…</translation>
    </message>
    <message>
        <source>Call &amp;off</source>
        <translation>&amp;Interrompre</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>There are none yet. One is made with the first change of each day.</source>
        <translation>Il n’y en a pas encore. Une est faite avec le premier changement de chaque jour.</translation>
    </message>
    <message numerus="yes">
        <source>%n backup(s). A restored one goes into a new file; the household&apos;s own file stays as it is.</source>
        <translation>
            <numerusform>%n sauvegarde. Restaurée, elle va dans un nouveau fichier&#xa0;; celui du foyer reste tel quel.</numerusform>
            <numerusform>%n sauvegardes. Une fois restaurée, une sauvegarde va dans un nouveau fichier&#xa0;; celui du foyer reste tel quel.</numerusform>
        </translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>illisible</translation>
    </message>
    <message>
        <source>%1 as of %2</source>
        <translation>%1 au %2</translation>
    </message>
    <message>
        <source>Restore to a new file</source>
        <translation>Restaurer dans un nouveau fichier</translation>
    </message>
    <message>
        <source>Households (*.tierloam)</source>
        <translation>Foyers (*.tierloam)</translation>
    </message>
    <message>
        <source>Restoring to %1…</source>
        <translation>Restauration dans %1…</translation>
    </message>
    <message>
        <source>&amp;Look again</source>
        <translation>&amp;Regarder de nouveau</translation>
    </message>
    <message>
        <source>Another &amp;folder…</source>
        <translation>Autre &amp;dossier…</translation>
    </message>
    <message>
        <source>The folder chosen for backups is not there now: %1. Plug in or connect what it lies on, then look again. Until then backups are made beside the household&apos;s file.</source>
        <translation>Le dossier choisi pour les sauvegardes n’est pas là maintenant&#xa0;: %1. Brancher ou connecter ce qui le porte, puis regarder de nouveau. D’ici là, les sauvegardes sont faites à côté du fichier du foyer.</translation>
    </message>
    <message>
        <source>There is no permission to read the folder chosen for backups: %1. Backups in it cannot be shown.</source>
        <translation>Le dossier choisi pour les sauvegardes ne peut être lu, faute de permission&#xa0;: %1. Ses sauvegardes ne peuvent être montrées.</translation>
    </message>
    <message>
        <source>Beside the household&apos;s file there are none.</source>
        <translation>À côté du fichier du foyer il n’y en a aucune.</translation>
    </message>
</context>
<context>
    <name>tierloam::window::BinView</name>
    <message>
        <source>Deleted entries</source>
        <translation>Entrées supprimées</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Recherche…</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Pile</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Ce qui a été fait</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Détails</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Deleted on</source>
        <translation>Supprimée le</translation>
    </message>
    <message>
        <source>Choose those to be put back</source>
        <translation>Choisir celles à rétablir</translation>
    </message>
    <message>
        <source>&amp;Put back</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Nothing has been deleted.</source>
        <translation>Rien n’a été supprimé.</translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) deleted. What is put back takes its old place, and that can be undone.</source>
        <translation>
            <numerusform>%n entrée supprimée. Ce qui est rétabli reprend sa place, et cela peut s’annuler.</numerusform>
            <numerusform>%n entrées supprimées. Ce qui est rétabli reprend sa place, et cela peut s’annuler.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put back %n entry(ies)</source>
        <translation>
            <numerusform>Rétablir %n entrée</numerusform>
            <numerusform>Rétablir %n entrées</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::window::Desk</name>
    <message>
        <source>Wrong?</source>
        <translation>Un souci&#xa0;?</translation>
    </message>
    <message>
        <source>Read only</source>
        <translation>Lecture seule</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Enregistrement…</translation>
    </message>
    <message>
        <source>Saved %1</source>
        <translation>Enregistré à %1</translation>
    </message>
    <message>
        <source>All saved</source>
        <translation>Enregistré</translation>
    </message>
    <message numerus="yes">
        <source>%n stack(s)</source>
        <translation>
            <numerusform>%n pile</numerusform>
            <numerusform>%n piles</numerusform>
        </translation>
    </message>
    <message>
        <source>Due (%1)</source>
        <translation>À faire (%1)</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>À faire</translation>
    </message>
    <message>
        <source>Estimates: %1 of %2</source>
        <translation>Estimations&#xa0;: %1 sur %2</translation>
    </message>
    <message>
        <source>%1: not written down. %2</source>
        <translation>%1&#xa0;: non noté. %2</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Précaution&#xa0;: %1</translation>
    </message>
    <message>
        <source>Saved %1: %2</source>
        <comment>time of day, what was done and to which stack</comment>
        <translation>Enregistré à %1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Kept in %1</source>
        <translation>Conservé dans %1</translation>
    </message>
</context>
<context>
    <name>tierloam::window::DueList</name>
    <message>
        <source>Due</source>
        <translation>À faire</translation>
    </message>
    <message>
        <source>Due list</source>
        <translation>À faire</translation>
    </message>
    <message>
        <source>Shows what was put off</source>
        <translation>Montre ce qui a été reporté</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Prélever</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Monter</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Regarder</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Couvrir</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Nourrir</translation>
    </message>
    <message>
        <source>Paper</source>
        <comment>shredded, to be put in</comment>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Arroser</translation>
    </message>
    <message>
        <source>Drain</source>
        <translation>Vidanger</translation>
    </message>
    <message>
        <source>Write</source>
        <comment>what was poured into the journal</comment>
        <translation>Noter</translation>
    </message>
    <message>
        <source>Read</source>
        <comment>a thermometer</comment>
        <translation>Relever</translation>
    </message>
    <message>
        <source>Write</source>
        <comment>a feeding into the journal</comment>
        <translation>Noter</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Vérifier</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Pourquoi</translation>
    </message>
    <message>
        <source>Why %1</source>
        <translation>Pourquoi&#xa0;: %1</translation>
    </message>
    <message>
        <source>Put off %1</source>
        <translation>Reporter&#xa0;: %1</translation>
    </message>
    <message>
        <source>%1 If it is left: %2</source>
        <translation>%1 Si rien n’est fait&#xa0;: %2</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message numerus="yes">
        <source>%n this week</source>
        <translation>
            <numerusform>%n cette semaine</numerusform>
            <numerusform>%n cette semaine</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n put off: show</source>
        <translation>
            <numerusform>%n chose reportée&#xa0;: montrer</numerusform>
            <numerusform>%n choses reportées&#xa0;: montrer</numerusform>
        </translation>
    </message>
    <message>
        <source>What is to be done stands here, with its reason, once there is a stack.</source>
        <translation>Ce qui est à faire se trouve ici, avec sa raison, dès qu’il y a une pile.</translation>
    </message>
    <message>
        <source>The estimates are being made; then what is due stands here.</source>
        <translation>Les estimations se font&#xa0;; ensuite, ce qui est à faire se trouve ici.</translation>
    </message>
    <message>
        <source>Nothing is due this week.</source>
        <translation>Rien à faire cette semaine.</translation>
    </message>
    <message>
        <source>Put off: %1</source>
        <translation>Reporté&#xa0;: %1</translation>
    </message>
    <message>
        <source>Show what was put off</source>
        <translation>Montrer ce qui a été reporté</translation>
    </message>
    <message>
        <source>…</source>
        <comment>opens the form of what is due</comment>
        <translation>…</translation>
    </message>
    <message>
        <source>Another amount or day: opens the form</source>
        <translation>Autre quantité ou autre jour&#xa0;: ouvre le formulaire</translation>
    </message>
    <message>
        <source>Other amount or day for %1</source>
        <translation>Autre quantité ou autre jour pour %1</translation>
    </message>
    <message>
        <source>%1 %2. Writes down at one click: %3</source>
        <translation>%1 %2. Note en un clic&#xa0;: %3</translation>
    </message>
    <message>
        <source>Writes down at one click: %1</source>
        <translation>Note en un clic&#xa0;: %1</translation>
    </message>
    <message>
        <source>Stock</source>
        <comment>worms, to be put in</comment>
        <translation>Mettre</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fait</translation>
    </message>
    <message>
        <source>Writes a note that it is done, at one click</source>
        <translation>Écrit d’un clic une note disant que c’est fait</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Fait : %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>what is asked, an answer</comment>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Up and Down go from line to line, Home and End to the first and the last one</source>
        <translation>Haut et Bas vont de ligne en ligne, Début et Fin à la première et à la dernière</translation>
    </message>
    <message numerus="yes">
        <source>In %n day(s)</source>
        <comment>put off by so many</comment>
        <translation>
            <numerusform>Dans %n jour</numerusform>
            <numerusform>Dans %n jours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Not told again for %n day(s); for another time: right click, or the menu key</source>
        <translation>
            <numerusform>Pas redit pendant %n jour&#xa0;; pour une autre durée&#xa0;: clic droit, ou la touche menu</numerusform>
            <numerusform>Pas redit pendant %n jours&#xa0;; pour une autre durée&#xa0;: clic droit, ou la touche menu</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Put off by %n day(s)</source>
        <translation>
            <numerusform>Reporter de %n jour</numerusform>
            <numerusform>Reporter de %n jours</numerusform>
        </translation>
    </message>
    <message>
        <source>Written down. The estimates are being made anew.</source>
        <translation>C’est noté. Les estimations sont refaites.</translation>
    </message>
    <message>
        <source>The estimates are being made anew: they do not know the latest entries yet.</source>
        <translation>Les estimations sont refaites&#xa0;: elles ne connaissent pas encore les dernières entrées.</translation>
    </message>
    <message>
        <source>From %1 on: today %2 is the most, for what was given these days.</source>
        <translation>À partir de %1&#xa0;: aujourd’hui %2 est le maximum, vu ce qui a été donné ces jours-ci.</translation>
    </message>
    <message>
        <source>Urgent. %1</source>
        <translation>Urgent. %1</translation>
    </message>
    <message>
        <source>Correct</source>
        <comment>the set-up of a stack</comment>
        <translation>Corriger</translation>
    </message>
</context>
<context>
    <name>tierloam::window::DueNotice</name>
    <message>
        <source>%1: %2</source>
        <comment>stack, what to do</comment>
        <translation>%1 : %2</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) due today</source>
        <translation>
            <numerusform>%n chose à faire aujourd’hui</numerusform>
            <numerusform>%n choses à faire aujourd’hui</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>et %n de plus</numerusform>
            <numerusform>et %n de plus</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>tierloam::window::LicenceView</name>
    <message>
        <source>GNU General Public License, version 3</source>
        <translation>GNU General Public License, version 3</translation>
    </message>
</context>
<context>
    <name>tierloam::window::MainWindow</name>
    <message>
        <source>Not recorded yet</source>
        <translation>Pas encore noté</translation>
    </message>
    <message>
        <source>A form holds something that has not been recorded. It is lost when you go on.</source>
        <translation>Un formulaire contient quelque chose qui n’a pas été noté. Cela se perd si vous continuez.</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Continuer</translation>
    </message>
    <message>
        <source>This household is opened for reading only; nothing can be recorded.</source>
        <translation>Ce foyer est ouvert en lecture seule&#xa0;; rien ne peut être noté.</translation>
    </message>
    <message>
        <source>%1 is already open in another window, which has been brought to the front.</source>
        <translation>%1 est déjà ouvert dans une autre fenêtre, qui a été mise devant.</translation>
    </message>
    <message>
        <source>%1 is already there. Nothing was replaced: choose another name, or open it.</source>
        <translation>%1 existe déjà. Rien n’a été remplacé&#xa0;: choisir un autre nom, ou l’ouvrir.</translation>
    </message>
    <message>
        <source>The demo household could not be made: %1</source>
        <translation>Le foyer de démonstration n’a pas pu être créé&#xa0;: %1</translation>
    </message>
    <message>
        <source>My worm bins</source>
        <translation>Mes lombricomposteurs</translation>
    </message>
    <message>
        <source>My worm bins %1</source>
        <translation>Mes lombricomposteurs %1</translation>
    </message>
    <message>
        <source>Your household is kept in %1.</source>
        <translation>Votre foyer est conservé dans %1.</translation>
    </message>
    <message>
        <source>New household</source>
        <translation>Nouveau foyer</translation>
    </message>
    <message>
        <source>Household</source>
        <translation>Foyer</translation>
    </message>
    <message>
        <source>Households (*.tierloam)</source>
        <translation>Foyers (*.tierloam)</translation>
    </message>
    <message>
        <source>Name of the household</source>
        <translation>Nom du foyer</translation>
    </message>
    <message>
        <source>%1 – Tierloam</source>
        <translation>%1 – Tierloam</translation>
    </message>
    <message>
        <source>The calendar was not written: the estimates are still being made. Try again in a moment.</source>
        <translation>Le calendrier n’a pas été écrit&#xa0;: les estimations se font encore. Réessayer dans un instant.</translation>
    </message>
    <message numerus="yes">
        <source>%n event(s) were written to %1.</source>
        <translation>
            <numerusform>%n événement a été écrit dans %1.</numerusform>
            <numerusform>%n événements ont été écrits dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>New household for the imported journal</source>
        <translation>Nouveau foyer pour le journal importé</translation>
    </message>
    <message>
        <source>Nothing was imported: there is no household yet that could hold it.</source>
        <translation>Rien n’a été importé&#xa0;: il n’y a pas encore de foyer qui puisse le recevoir.</translation>
    </message>
    <message numerus="yes">
        <source>Import %n entry(ies)</source>
        <translation>
            <numerusform>Importer %n entrée</numerusform>
            <numerusform>Importer %n entrées</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) imported from %1.</source>
        <translation>
            <numerusform>%n entrée importée de %1.</numerusform>
            <numerusform>%n entrées importées de %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Readings of a logger belong to a stack. Open a household or start one first.</source>
        <translation>Les relevés d’un enregistreur appartiennent à une pile. Ouvrez ou créez d’abord un foyer.</translation>
    </message>
    <message>
        <source>The journal was written to %1.</source>
        <translation>Le journal a été écrit dans %1.</translation>
    </message>
    <message>
        <source>Open household</source>
        <translation>Ouvrir un foyer</translation>
    </message>
    <message>
        <source>Households (*.tierloam);;All files (*)</source>
        <translation>Foyers (*.tierloam);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Import a table</source>
        <translation>Importer un tableau</translation>
    </message>
    <message>
        <source>Tables (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tableaux (*.csv *.tsv *.txt);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Import readings of a logger</source>
        <translation>Importer les relevés d’un enregistreur</translation>
    </message>
    <message>
        <source>Export journal</source>
        <translation>Exporter le journal</translation>
    </message>
    <message>
        <source>Journals (*.csv)</source>
        <translation>Journaux (*.csv)</translation>
    </message>
    <message>
        <source>Export calendar</source>
        <translation>Exporter le calendrier</translation>
    </message>
    <message>
        <source>Calendars (*.ics)</source>
        <translation>Calendriers (*.ics)</translation>
    </message>
    <message>
        <source>A report for somebody who wants to help is on the clipboard: versions, sizes, the last lines of the program&apos;s own log. Nothing of your journal is in it.</source>
        <translation>Un rapport pour qui veut aider est dans le presse-papiers&#xa0;: versions, tailles, dernières lignes de l’historique du programme. Rien de votre journal n’y est.</translation>
    </message>
    <message>
        <source>H&amp;ousehold</source>
        <translation>&amp;Foyer</translation>
    </message>
    <message>
        <source>&amp;Recent</source>
        <translation>Ouverts &amp;récemment</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Édition</translation>
    </message>
    <message>
        <source>&amp;Stack</source>
        <translation>&amp;Pile</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>&amp;Couleurs</translation>
    </message>
    <message>
        <source>&amp;Text size</source>
        <translation>&amp;Taille du texte</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>Aid&amp;e</translation>
    </message>
    <message>
        <source>%1 copy</source>
        <translation>%1 copie</translation>
    </message>
    <message>
        <source>Save a copy</source>
        <translation>Enregistrer une copie</translation>
    </message>
    <message>
        <source>Writing a copy…</source>
        <translation>Écriture d’une copie…</translation>
    </message>
    <message>
        <source>Call off</source>
        <translation>Interrompre</translation>
    </message>
    <message>
        <source>A copy was written to %1.</source>
        <translation>Une copie a été écrite dans %1.</translation>
    </message>
    <message>
        <source>The backup was restored to %1, which is open now. The file before it was not changed.</source>
        <translation>La sauvegarde a été restaurée dans %1, qui est ouvert maintenant. Le fichier précédent n’a pas été changé.</translation>
    </message>
    <message>
        <source>Folder for backups</source>
        <translation>Dossier des sauvegardes</translation>
    </message>
    <message>
        <source>Backups will be kept in %1.</source>
        <translation>Les sauvegardes seront conservées dans %1.</translation>
    </message>
    <message>
        <source>There is no stack yet that a sheet could be made of.</source>
        <translation>Il n’y a pas encore de pile dont faire une fiche.</translation>
    </message>
    <message>
        <source>No tray stands yet that could get a label.</source>
        <translation>Aucun plateau en place ne peut encore recevoir d’étiquette.</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unités</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Lan&amp;gue</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Images (*.png)</translation>
    </message>
    <message>
        <source>Drawings (*.svg)</source>
        <translation>Dessins (*.svg)</translation>
    </message>
    <message>
        <source>Pages (*.pdf)</source>
        <translation>Pages (*.pdf)</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tableaux (*.csv)</translation>
    </message>
    <message>
        <source>Save what the charts show</source>
        <translation>Enregistrer ce que montrent les graphiques</translation>
    </message>
    <message>
        <source>%1 trends</source>
        <translation>%1 évolution</translation>
    </message>
    <message>
        <source>The picture is too large to be drawn.</source>
        <translation>L’image est trop grande pour être dessinée.</translation>
    </message>
    <message>
        <source>What the charts show was written to %1.</source>
        <translation>Ce que montrent les graphiques a été écrit dans %1.</translation>
    </message>
    <message>
        <source>Print what the charts show</source>
        <translation>Imprimer ce que montrent les graphiques</translation>
    </message>
    <message>
        <source>The printer does not take the pages.</source>
        <translation>L’imprimante n’accepte pas les pages.</translation>
    </message>
    <message numerus="yes">
        <source>%n page(s) went to the printer.</source>
        <translation>
            <numerusform>%n page est allée à l’imprimante.</numerusform>
            <numerusform>%n pages sont allées à l’imprimante.</numerusform>
        </translation>
    </message>
    <message>
        <source>Seaso&amp;ns</source>
        <translation>Saiso&amp;ns</translation>
    </message>
    <message>
        <source>Seasons</source>
        <translation>Saisons</translation>
    </message>
    <message>
        <source>The seasons are those south of the equator, warmest in January, since this machine is set up for there. The menu Household, Seasons, turns them.</source>
        <translation>Les saisons sont celles du sud de l’équateur, le plus chaud en janvier, car cette machine est réglée pour là-bas. Le menu Foyer, Saisons, les inverse.</translation>
    </message>
    <message>
        <source>%1 stays open: what was recorded last could not be written and is not in it. Record it again, or go on once more without it.</source>
        <translation>%1 reste ouvert&#xa0;: ce qui a été noté en dernier n’a pas pu être écrit et n’y est pas. Notez-le de nouveau, ou continuez encore une fois sans cela.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Réessayer</translation>
    </message>
    <message>
        <source>Close the form</source>
        <translation>Fermer le formulaire</translation>
    </message>
    <message>
        <source>It is open for writing now.</source>
        <translation>On peut y écrire maintenant.</translation>
    </message>
    <message>
        <source>Backups of which household?</source>
        <translation>Sauvegardes de quel foyer&#xa0;?</translation>
    </message>
    <message>
        <source>A copy is being written</source>
        <translation>Une copie est en cours d’écriture</translation>
    </message>
    <message>
        <source>It is called off when you go on, and nothing of it is kept.</source>
        <translation>Elle est interrompue si vous continuez, et rien n’en est conservé.</translation>
    </message>
    <message>
        <source>The form «%1» holds something that has not been recorded. It is lost when the form is closed.</source>
        <translation>Le formulaire «&#xa0;%1&#xa0;» contient quelque chose qui n’est pas enregistré. Il est perdu quand le formulaire est fermé.</translation>
    </message>
    <message>
        <source>It is kept in %1. Its name:</source>
        <translation>Il est conservé dans %1. Son nom&#xa0;:</translation>
    </message>
    <message>
        <source>&amp;Feed and cover</source>
        <translation>&amp;Nourrir et couvrir</translation>
    </message>
    <message>
        <source>&amp;Water and drain</source>
        <translation>&amp;Arroser et vidanger</translation>
    </message>
    <message>
        <source>&amp;Trays and castings</source>
        <translation>&amp;Plateaux et lombricompost</translation>
    </message>
    <message>
        <source>&amp;Look and measure</source>
        <translation>&amp;Regarder et mesurer</translation>
    </message>
    <message>
        <source>W&amp;orms</source>
        <translation>&amp;Vers</translation>
    </message>
    <message>
        <source>&amp;Notes and routines</source>
        <translation>N&amp;otes et habitudes</translation>
    </message>
    <message>
        <source>Set-&amp;up and place</source>
        <translation>Mon&amp;tage et place</translation>
    </message>
    <message>
        <source>&amp;Day shown</source>
        <translation>&amp;Jour affiché</translation>
    </message>
    <message>
        <source>Copies and &amp;backups</source>
        <translation>Copies et sau&amp;vegardes</translation>
    </message>
</context>
<context>
    <name>tierloam::window::Notices</name>
    <message>
        <source>Not done: %1</source>
        <translation>Non fait&#xa0;: %1</translation>
    </message>
    <message>
        <source>Dismiss</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Dismiss this message</source>
        <translation>Fermer ce message</translation>
    </message>
</context>
<context>
    <name>tierloam::window::PhotosView</name>
    <message>
        <source>Pictures</source>
        <translation>Photos</translation>
    </message>
    <message>
        <source>%1, %2: %3 %4</source>
        <translation>%1, %2&#xa0;: %3 %4</translation>
    </message>
    <message>
        <source>Looking…</source>
        <translation>Recherche…</translation>
    </message>
    <message>
        <source>Pictures of this entry</source>
        <translation>Photos de cette entrée</translation>
    </message>
    <message>
        <source>The chosen picture</source>
        <translation>La photo choisie</translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation>&amp;Ajouter…</translation>
    </message>
    <message>
        <source>&amp;Take out</source>
        <translation>Ô&amp;ter</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fermer</translation>
    </message>
    <message>
        <source>Picture %1</source>
        <translation>Photo %1</translation>
    </message>
    <message>
        <source>No pictures yet. One that is added is kept at most 1600 pixels wide or high, without the place where it was taken.</source>
        <translation>Pas encore de photos. Une photo ajoutée est conservée à 1600 pixels au plus de large ou de haut, sans le lieu où elle a été prise.</translation>
    </message>
    <message numerus="yes">
        <source>%n picture(s), kept in the household file.</source>
        <translation>
            <numerusform>%n photo, conservée dans le fichier du foyer.</numerusform>
            <numerusform>%n photos, conservées dans le fichier du foyer.</numerusform>
        </translation>
    </message>
    <message>
        <source>Add a picture</source>
        <translation>Ajouter une photo</translation>
    </message>
    <message>
        <source>Pictures (*.jpg *.jpeg *.png *.webp);;All files (*)</source>
        <translation>Photos (*.jpg *.jpeg *.png *.webp);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Take out a picture</source>
        <translation>Ôter une photo</translation>
    </message>
</context>
<context>
    <name>tierloam::window::ShortcutsView</name>
    <message>
        <source>Keys and shortcuts</source>
        <translation>Touches et raccourcis</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1&#xa0;: %2</translation>
    </message>
    <message>
        <source>Walking</source>
        <translation>Se déplacer</translation>
    </message>
    <message>
        <source>Tab and Shift+Tab go from one thing to the next. On the shelf the arrow keys walk from stack to stack and from tray to tray, and Enter opens what has the focus. On a chart Left and Right walk by a day, with Ctrl by a week. Esc leaves a form.</source>
        <translation>Tab et Maj+Tab passent d’une chose à la suivante. Sur l’étagère, les flèches vont de pile en pile et de plateau en plateau, et Entrée ouvre ce qui a le focus. Sur un graphique, Gauche et Droite avancent d’un jour, avec Ctrl d’une semaine. Échap quitte un formulaire.</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <comment>two keys that do the same</comment>
        <translation>%1 ou %2</translation>
    </message>
</context>
</TS>
