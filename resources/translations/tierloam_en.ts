<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
    <context>
        <name>Advice</name>
        <message numerus="yes">
            <source>%n day(s)</source>
            <translation>
                <numerusform>%n day</numerusform>
                <numerusform>%n days</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>About %n feeding(s) in %1 seem not to have been written down (%2)</source>
            <translation>
                <numerusform>About %n feeding in %1 seems not to have been written down (%2)</numerusform>
                <numerusform>About %n feedings in %1 seem not to have been written down (%2)</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>ChangeWords</name>
        <message numerus="yes">
            <source>None: with fewer worms the stack would not be back at its rate, or its colony at nine tenths, within %n week(s) (%1 then, %2 now).</source>
            <translation>
                <numerusform>None: with fewer worms the stack would not be back at its rate, or its colony at nine tenths, within %n week (%1 then, %2 now).</numerusform>
                <numerusform>None: with fewer worms the stack would not be back at its rate, or its colony at nine tenths, within %n weeks (%1 then, %2 now).</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as today again, and its worms are back to nine tenths.</source>
            <translation>
                <numerusform>Up to %1 of worms can go (%2 of the colony); within %n week the stack processes as much as today again, and its worms are back to nine tenths.</numerusform>
                <numerusform>Up to %1 of worms can go (%2 of the colony); within %n weeks the stack processes as much as today again, and its worms are back to nine tenths.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Up to %1 of worms can go (%2 of the colony); within %n week(s) the stack processes as much as it would with all of them, which is less than today, and its worms are back to nine tenths.</source>
            <translation>
                <numerusform>Up to %1 of worms can go (%2 of the colony); within %n week the stack processes as much as it would with all of them, which is less than today, and its worms are back to nine tenths.</numerusform>
                <numerusform>Up to %1 of worms can go (%2 of the colony); within %n weeks the stack processes as much as it would with all of them, which is less than today, and its worms are back to nine tenths.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>This stack can spare only %1 within %n week(s): give it more weeks, or buy the rest.</source>
            <translation>
                <numerusform>This stack can spare only %1 within %n week: give it more weeks, or buy the rest.</numerusform>
                <numerusform>This stack can spare only %1 within %n weeks: give it more weeks, or buy the rest.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Dates</name>
        <message numerus="yes">
            <source>%n day(s)</source>
            <translation>
                <numerusform>%n day</numerusform>
                <numerusform>%n days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>GainWords</name>
        <message numerus="yes">
            <source>%n day(s) of lifting fewer</source>
            <translation>
                <numerusform>%n day of lifting fewer</numerusform>
                <numerusform>%n days of lifting fewer</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>HouseholdText</name>
        <message numerus="yes">
            <source>Another program changed this household. %n step(s) that could be undone touched what it changed and can no longer be undone.</source>
            <translation>
                <numerusform>Another program changed this household. %n step that could be undone touched what it changed and can no longer be undone.</numerusform>
                <numerusform>Another program changed this household. %n steps that could be undone touched what it changed and can no longer be undone.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>JournalWords</name>
        <message numerus="yes">
            <source>%n worm(s) put back</source>
            <translation>
                <numerusform>%n worm put back</numerusform>
                <numerusform>%n worms put back</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n tray(s)</source>
            <translation>
                <numerusform>%n tray</numerusform>
                <numerusform>%n trays</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n counted</source>
            <translation>
                <numerusform>%n counted</numerusform>
                <numerusform>%n counted</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: %2, every %n day(s)</source>
            <translation>
                <numerusform>%1: %2, every %n day</numerusform>
                <numerusform>%1: %2, every %n days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>PartStories</name>
        <message numerus="yes">
            <source>%n feeding(s)</source>
            <translation>
                <numerusform>%n feeding</numerusform>
                <numerusform>%n feedings</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1: no tray is spare; all %n stand.</source>
            <translation>
                <numerusform>%1: no tray is spare; the one there is stands.</numerusform>
                <numerusform>%1: no tray is spare; all %n stand.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SheetSentence</name>
        <message numerus="yes">
            <source>%n row(s), %1.</source>
            <translation>
                <numerusform>%n row, %1.</numerusform>
                <numerusform>%n rows, %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>The first %n row(s), %1; the others are being read.</source>
            <translation>
                <numerusform>The first row, %1; the others are being read.</numerusform>
                <numerusform>The first %n rows, %1; the others are being read.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n entry(ies) will be added, as one step that can be undone.</source>
            <translation>
                <numerusform>%n entry will be added, as one step that can be undone.</numerusform>
                <numerusform>%n entries will be added, as one step that can be undone.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n of them begin(s) what is a new stack.</source>
            <translation>
                <numerusform>%n of them begins a new stack.</numerusform>
                <numerusform>%n of them begin new stacks.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n row(s) at fault: not added.</source>
            <translation>
                <numerusform>%n row at fault: not added.</numerusform>
                <numerusform>%n rows at fault: not added.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n row(s) left out as answered.</source>
            <translation>
                <numerusform>%n row left out as answered.</numerusform>
                <numerusform>%n rows left out as answered.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n row(s) already there: left out.</source>
            <translation>
                <numerusform>%n row already there: left out.</numerusform>
                <numerusform>%n rows already there: left out.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n row(s) said before: left out.</source>
            <translation>
                <numerusform>%n row said before: left out.</numerusform>
                <numerusform>%n rows said before: left out.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SheetWords</name>
        <message numerus="yes">
            <source>%1 in %n feeding(s)</source>
            <translation>
                <numerusform>%1 in %n feeding</numerusform>
                <numerusform>%1 in %n feedings</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>Shelf</name>
        <message numerus="yes">
            <source>%n tray(s)</source>
            <translation>
                <numerusform>%n tray</numerusform>
                <numerusform>%n trays</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>SymptomWords</name>
        <message numerus="yes">
            <source>last feeding written down %n day(s) ago</source>
            <translation>
                <numerusform>last feeding written down %n day ago</numerusform>
                <numerusform>last feeding written down %n days ago</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n day(s) since the first bedding</source>
            <translation>
                <numerusform>%n day since the first bedding</numerusform>
                <numerusform>%n days since the first bedding</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>the bottom tray has stood for %n day(s)</source>
            <translation>
                <numerusform>the bottom tray has stood for %n day</numerusform>
                <numerusform>the bottom tray has stood for %n days</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>worms put in, moved or lifted %n day(s) ago</source>
            <translation>
                <numerusform>worms put in, moved or lifted %n day ago</numerusform>
                <numerusform>worms put in, moved or lifted %n days ago</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>TrendWords</name>
        <message numerus="yes">
            <source>Drained %1 in %n week(s).</source>
            <translation>
                <numerusform>Drained %1 in %n week.</numerusform>
                <numerusform>Drained %1 in %n weeks.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of castings in %n harvest(s).</source>
            <translation>
                <numerusform>%1 of castings in %n harvest.</numerusform>
                <numerusform>%1 of castings in %n harvests.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n harvest(s) measured by volume: marked, without a bar.</source>
            <translation>
                <numerusform>%n harvest measured by volume: marked, without a bar.</numerusform>
                <numerusform>%n harvests measured by volume: marked, without a bar.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Drained %1 in %n week(s) to %2.</source>
            <translation>
                <numerusform>Drained %1 in %n week to %2.</numerusform>
                <numerusform>Drained %1 in %n weeks to %2.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::exchange_view::JournalSheetView</name>
        <message numerus="yes">
            <source>&amp;Import %n entry(ies)</source>
            <translation>
                <numerusform>&amp;Import %n entry</numerusform>
                <numerusform>&amp;Import %n entries</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>The other rows have been imported. %n row(s) at fault: save them, put them right and import them again.</source>
            <translation>
                <numerusform>The other rows have been imported. %n row at fault: save them, put them right and import them again.</numerusform>
                <numerusform>The other rows have been imported. %n rows at fault: save them, put them right and import them again.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::exchange_view::ReadingsView</name>
        <message numerus="yes">
            <source>%Ln reading(s) imported from %1.</source>
            <translation>
                <numerusform>%Ln reading imported from %1.</numerusform>
                <numerusform>%Ln readings imported from %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>The journal has their mean of %Ln day(s).</source>
            <translation>
                <numerusform>The journal has their mean of %Ln day.</numerusform>
                <numerusform>The journal has their mean of %Ln days.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s), %1, cells parted by %2.</source>
            <translation>
                <numerusform>%Ln row, %1, cells parted by %2.</numerusform>
                <numerusform>%Ln rows, %1, cells parted by %2.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln reading(s) from %1 to %2 will be kept in full.</source>
            <translation>
                <numerusform>%Ln reading from %1 to %2 will be kept in full.</numerusform>
                <numerusform>%Ln readings from %1 to %2 will be kept in full.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>The journal gets the mean of %Ln day(s), an entry each. One undo takes all of it back.</source>
            <translation>
                <numerusform>The journal gets the mean of %Ln day, an entry each. One undo takes all of it back.</numerusform>
                <numerusform>The journal gets the mean of %Ln days, an entry each. One undo takes all of it back.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%Ln row(s) at fault, the first in line %1: %2</source>
            <translation>
                <numerusform>%Ln row at fault, the first in line %1: %2</numerusform>
                <numerusform>%Ln rows at fault, the first in line %1: %2</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::exchange_view::WordsBox</name>
        <message numerus="yes">
            <source>%n row(s), the first in line %1</source>
            <translation>
                <numerusform>%n row, in line %1</numerusform>
                <numerusform>%n rows, the first in line %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::handbook::HandbookPage</name>
        <message numerus="yes">
            <source>%n page(s) found</source>
            <translation>
                <numerusform>%n page found</numerusform>
                <numerusform>%n pages found</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::journal_page::BulkView</name>
        <message numerus="yes">
            <source>Change %n entry(ies) together</source>
            <translation>
                <numerusform>Change %n entry together</numerusform>
                <numerusform>Change %n entries together</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>and %n more</source>
            <translation>
                <numerusform>and %n more</numerusform>
                <numerusform>and %n more</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n entry(ies) will change.</source>
            <translation>
                <numerusform>%n entry will change.</numerusform>
                <numerusform>%n entries will change.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n chosen entry(ies) with another value: left alone.</source>
            <translation>
                <numerusform>%n chosen entry with another value: left alone.</numerusform>
                <numerusform>%n chosen entries with another value: left alone.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::journal_page::EntrySeries</name>
        <message numerus="yes">
            <source>%n recorded; Enter records the next, Esc ends.</source>
            <translation>
                <numerusform>%n recorded; Enter records the next, Esc ends.</numerusform>
                <numerusform>%n recorded; Enter records the next, Esc ends.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::journal_page::JournalPage</name>
        <message numerus="yes">
            <source>%n entry(ies)</source>
            <translation>
                <numerusform>%n entry</numerusform>
                <numerusform>%n entries</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n entry(ies)</source>
            <translation>
                <numerusform>%1 of %n entry</numerusform>
                <numerusform>%1 of %n entries</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Delete %n entry(ies)</source>
            <translation>
                <numerusform>Delete %n entry</numerusform>
                <numerusform>Delete %n entries</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::materials_page::MaterialsPage</name>
        <message numerus="yes">
            <source>%n material(s); what each holds, whether it is welcome, and sums with them</source>
            <translation>
                <numerusform>%n material; what each holds, whether it is welcome, and sums with them</numerusform>
                <numerusform>%n materials; what each holds, whether it is welcome, and sums with them</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1 of %n material(s)</source>
            <translation>
                <numerusform>%1 of %n material</numerusform>
                <numerusform>%1 of %n materials</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::rotation::ClockCard</name>
        <message numerus="yes">
            <source>Of %n stack(s) these are the first %1 on the shelf: each takes a while to foresee.</source>
            <translation>
                <numerusform>Of %n stack these are the first %1 on the shelf: each takes a while to foresee.</numerusform>
                <numerusform>Of %n stacks these are the first %1 on the shelf: each takes a while to foresee.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::rotation::LanesView</name>
        <message numerus="yes">
            <source>Year of %n stack(s): %1</source>
            <translation>
                <numerusform>Year of %n stack: %1</numerusform>
                <numerusform>Year of %n stacks: %1</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::rotation::RotationPage</name>
        <message numerus="yes">
            <source>%n harvest(s) in the coming year</source>
            <translation>
                <numerusform>%n harvest in the coming year</numerusform>
                <numerusform>%n harvests in the coming year</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>on %n day(s)</source>
            <translation>
                <numerusform>on %n day</numerusform>
                <numerusform>on %n days</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>none waits more than %n day(s)</source>
            <translation>
                <numerusform>none waits more than %n day</numerusform>
                <numerusform>none waits more than %n days</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n more would come within the year if none waited</source>
            <translation>
                <numerusform>%n more would come within the year if none waited</numerusform>
                <numerusform>%n more would come within the year if none waited</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::rotation::TrackCard</name>
        <message numerus="yes">
            <source>Feedings and other advice are counted of the first %1 of %n stack(s) on the shelf.</source>
            <translation>
                <numerusform>Feedings and other advice are counted of the first %1 of %n stack on the shelf.</numerusform>
                <numerusform>Feedings and other advice are counted of the first %1 of %n stacks on the shelf.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::rotation::WishCard</name>
        <message numerus="yes">
            <source>wanted %n day(s) later</source>
            <translation>
                <numerusform>wanted %n day later</numerusform>
                <numerusform>wanted %n days later</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>In %n month(s) until then nothing is taken.</source>
            <translation>
                <numerusform>In %n month until then nothing is taken.</numerusform>
                <numerusform>In %n months until then nothing is taken.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::shelf::PartPanel</name>
        <message numerus="yes">
            <source>%n more act(s) for it</source>
            <translation>
                <numerusform>%n more act for it</numerusform>
                <numerusform>%n more acts for it</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::ui::DateField</name>
        <message numerus="yes">
            <source>%1, %n days ago</source>
            <translation>
                <numerusform>%1, %n days ago</numerusform>
                <numerusform>%1, %n days ago</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%1, %n days from now</source>
            <translation>
                <numerusform>%1, %n days from now</numerusform>
                <numerusform>%1, %n days from now</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::BackupsView</name>
        <message numerus="yes">
            <source>%n backup(s). A restored one goes into a new file; the household's own file stays as it is.</source>
            <translation>
                <numerusform>%n backup. A restored one goes into a new file; the household's own file stays as it is.</numerusform>
                <numerusform>%n backups. A restored one goes into a new file; the household's own file stays as it is.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::BinView</name>
        <message numerus="yes">
            <source>%n entry(ies) deleted. What is put back takes its old place, and that can be undone.</source>
            <translation>
                <numerusform>%n entry deleted. What is put back takes its old place, and that can be undone.</numerusform>
                <numerusform>%n entries deleted. What is put back takes its old place, and that can be undone.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Put back %n entry(ies)</source>
            <translation>
                <numerusform>Put back %n entry</numerusform>
                <numerusform>Put back %n entries</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::Desk</name>
        <message numerus="yes">
            <source>%n stack(s)</source>
            <translation>
                <numerusform>%n stack</numerusform>
                <numerusform>%n stacks</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::DueList</name>
        <message numerus="yes">
            <source>%n this week</source>
            <translation>
                <numerusform>%n this week</numerusform>
                <numerusform>%n this week</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n put off: show</source>
            <translation>
                <numerusform>%n put off: show</numerusform>
                <numerusform>%n put off: show</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>In %n day(s)</source>
            <comment>put off by so many</comment>
            <translation>
                <numerusform>In %n day</numerusform>
                <numerusform>In %n days</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Not told again for %n day(s); for another time: right click, or the menu key</source>
            <translation>
                <numerusform>Not told again for %n day; for another time: right click, or the menu key</numerusform>
                <numerusform>Not told again for %n days; for another time: right click, or the menu key</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>Put off by %n day(s)</source>
            <translation>
                <numerusform>Put off by %n day</numerusform>
                <numerusform>Put off by %n days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::DueNotice</name>
        <message numerus="yes">
            <source>%n thing(s) due today</source>
            <translation>
                <numerusform>%n thing due today</numerusform>
                <numerusform>%n things due today</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>and %n more</source>
            <translation>
                <numerusform>and %n more</numerusform>
                <numerusform>and %n more</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::MainWindow</name>
        <message numerus="yes">
            <source>Import %n entry(ies)</source>
            <translation>
                <numerusform>Import %n entry</numerusform>
                <numerusform>Import %n entries</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n entry(ies) imported from %1.</source>
            <translation>
                <numerusform>%n entry imported from %1.</numerusform>
                <numerusform>%n entries imported from %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n event(s) were written to %1.</source>
            <translation>
                <numerusform>%n event were written to %1.</numerusform>
                <numerusform>%n events were written to %1.</numerusform>
            </translation>
        </message>
        <message numerus="yes">
            <source>%n page(s) went to the printer.</source>
            <translation>
                <numerusform>%n page went to the printer.</numerusform>
                <numerusform>%n pages went to the printer.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::PhotosView</name>
        <message numerus="yes">
            <source>%n picture(s), kept in the household file.</source>
            <translation>
                <numerusform>%n picture, kept in the household file.</numerusform>
                <numerusform>%n pictures, kept in the household file.</numerusform>
            </translation>
        </message>
    </context>
</TS>
