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
        <name>Dates</name>
        <message numerus="yes">
            <source>%n day(s)</source>
            <translation type="unfinished">
                <numerusform>%n day</numerusform>
                <numerusform>%n days</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>HouseholdText</name>
        <message numerus="yes">
            <source>Another program changed entries of this household. %n step(s) that could be undone touched them and can no longer be undone.</source>
            <translation>
                <numerusform>Another program changed entries of this household. %n step that could be undone touched them and can no longer be undone.</numerusform>
                <numerusform>Another program changed entries of this household. %n steps that could be undone touched them and can no longer be undone.</numerusform>
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
            <translation type="unfinished">
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
        <name>TrendWords</name>
        <message numerus="yes">
            <source>Drained %1 in %n week(s).</source>
            <translation>
                <numerusform>Drained %1 in %n week.</numerusform>
                <numerusform>Drained %1 in %n weeks.</numerusform>
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
    </context>
    <context>
        <name>tierloam::window::FaultsView</name>
        <message numerus="yes">
            <source>Nothing was added: %n row(s) of %1 at fault. Put right what is listed and import again.</source>
            <translation>
                <numerusform>Nothing was added: %n row of %1 at fault. Put right what is listed and import again.</numerusform>
                <numerusform>Nothing was added: %n rows of %1 at fault. Put right what is listed and import again.</numerusform>
            </translation>
        </message>
    </context>
    <context>
        <name>tierloam::window::MainWindow</name>
        <message numerus="yes">
            <source>Nothing was imported from %1: %n row(s) at fault.</source>
            <translation>
                <numerusform>Nothing was imported from %1: %n row at fault.</numerusform>
                <numerusform>Nothing was imported from %1: %n rows at fault.</numerusform>
            </translation>
        </message>
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
