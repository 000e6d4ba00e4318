<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>DayPresenter</name>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, line %2: %3</translation>
    </message>
    <message>
        <source>%1, closed</source>
        <translation>%1, closed</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>DisplayUnits</name>
    <message>
        <source>DM</source>
        <extracomment>dry matter, as in &quot;kg DM/m³&quot;</extracomment>
        <translation>DM</translation>
    </message>
    <message>
        <source>ton</source>
        <extracomment>the short ton of 2,000 lb, as in &quot;ton/h&quot;; never to be taken for the tonne</extracomment>
        <translation>ton</translation>
    </message>
    <message>
        <source>per</source>
        <extracomment>between two units, as in &quot;kg per t/h&quot;</extracomment>
        <translation>per</translation>
    </message>
    <message>
        <source>under %1</source>
        <comment>a chance</comment>
        <translation>under %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <comment>a chance</comment>
        <translation>over %1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <comment>a range with a minus in it</comment>
        <translation>%1 to %2</translation>
    </message>
</context>
<context>
    <name>FillPresenter</name>
    <message>
        <source>common practice</source>
        <translation>common practice</translation>
    </message>
    <message>
        <source>the estimate&apos;s own limits</source>
        <translation>the estimate&apos;s own limits</translation>
    </message>
    <message>
        <source>load of %1</source>
        <translation>load of %1</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Oven</translation>
    </message>
    <message>
        <source>Microwave</source>
        <translation>Microwave</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>By eye</source>
        <translation>By eye</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>just now</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>%1 min ago</translation>
    </message>
    <message>
        <source>%1 h %2 min ago</source>
        <translation>%1 h %2 min ago</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
    <message>
        <source>No dry matter measured yet.</source>
        <translation>No dry matter measured yet.</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1 – time for a new sample</source>
        <translation>%1 – time for a new sample</translation>
    </message>
    <message>
        <source>Not seen yet: %1 assumed</source>
        <translation>Not seen yet: %1 assumed</translation>
    </message>
    <message>
        <source>%1, seen %2</source>
        <translation>%1, seen %2</translation>
    </message>
    <message>
        <source>No density yet.</source>
        <translation>No density yet.</translation>
    </message>
</context>
<context>
    <name>ImportPreview</name>
    <message>
        <source>%1: %2</source>
        <comment>column, what is asked</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) in the file</source>
        <translation>
            <numerusform>%n row in the file</numerusform>
            <numerusform>%n rows in the file</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) would be recorded</source>
        <translation>
            <numerusform>%n entry would be recorded</numerusform>
            <numerusform>%n entries would be recorded</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are there already</source>
        <translation>
            <numerusform>%n row is there already</numerusform>
            <numerusform>%n rows are there already</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) stand twice in the file</source>
        <translation>
            <numerusform>%n row stands twice in the file</numerusform>
            <numerusform>%n rows stand twice in the file</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) void a ticket or are voided</source>
        <translation>
            <numerusform>%n row voids a ticket or is voided</numerusform>
            <numerusform>%n rows void a ticket or are voided</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are sums at the foot</source>
        <translation>
            <numerusform>%n row is a sum at the foot</numerusform>
            <numerusform>%n rows are sums at the foot</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) set aside earlier can be read now</source>
        <translation>
            <numerusform>%n row set aside earlier can be read now</numerusform>
            <numerusform>%n rows set aside earlier can be read now</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) cannot be used and are set aside:</source>
        <translation>
            <numerusform>%n row cannot be used and is set aside:</numerusform>
            <numerusform>%n rows cannot be used and are set aside:</numerusform>
        </translation>
    </message>
    <message>
        <source>Tickets of a scale</source>
        <translation>Tickets of a scale</translation>
    </message>
    <message>
        <source>What each tractor did</source>
        <translation>What each tractor did</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Dry matter</translation>
    </message>
    <message>
        <source>Heights of the silo</source>
        <translation>Heights of the silo</translation>
    </message>
    <message>
        <source>Layers as spread</source>
        <translation>Layers as spread</translation>
    </message>
    <message>
        <source>Cores</source>
        <translation>Cores</translation>
    </message>
    <message>
        <source>Sieve tests</source>
        <translation>Sieve tests</translation>
    </message>
    <message>
        <source>Kernel tests</source>
        <translation>Kernel tests</translation>
    </message>
    <message>
        <source>Daily temperatures</source>
        <translation>Daily temperatures</translation>
    </message>
    <message>
        <source>Visits to fields</source>
        <translation>Visits to fields</translation>
    </message>
    <message>
        <source>Settings of the harvester</source>
        <translation>Settings of the harvester</translation>
    </message>
    <message>
        <source>What was fed out</source>
        <translation>What was fed out</translation>
    </message>
    <message>
        <source>Temperatures of the face</source>
        <translation>Temperatures of the face</translation>
    </message>
    <message>
        <source>Ticket number</source>
        <translation>Ticket number</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Date</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Time</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Truck</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Field</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Gross weight</source>
        <translation>Gross weight</translation>
    </message>
    <message>
        <source>Empty weight</source>
        <translation>Empty weight</translation>
    </message>
    <message>
        <source>Net weight</source>
        <translation>Net weight</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unit</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Status</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Scale</translation>
    </message>
    <message>
        <source>Line %1: the load tapped in with %2 weighs %3</source>
        <comment>line, mass, mass</comment>
        <translation>Line %1: the load tapped in with %2 weighs %3</translation>
    </message>
    <message>
        <source>To be answered before it can be read:</source>
        <translation>To be answered before it can be read:</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <comment>line, what is to be noted</comment>
        <translation>Line %1: %2</translation>
    </message>
    <message>
        <source>The column &quot;%1&quot; says nothing here and is not read</source>
        <translation>The column &quot;%1&quot; says nothing here and is not read</translation>
    </message>
</context>
<context>
    <name>MovementText</name>
    <message>
        <source>Steady for %1 min.</source>
        <translation>Steady for %1 min.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>change, cause</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>In %1 min %2</source>
        <translation>In %1 min %2</translation>
    </message>
    <message>
        <source>In %1 min %2, first %3</source>
        <translation>In %1 min %2, first %3</translation>
    </message>
</context>
<context>
    <name>Notices</name>
    <message>
        <source>Now</source>
        <translation>Now</translation>
    </message>
    <message>
        <source>Makes the answer surer</source>
        <translation>Makes the answer surer</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Missing</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Assumed</translation>
    </message>
    <message>
        <source>What came of advice</source>
        <translation>What came of advice</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Cautions</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Known</translation>
    </message>
    <message>
        <source>%1 done: %2, %3 → %4 expected</source>
        <comment>time, advice, density before and after</comment>
        <translation>%1 done: %2, %3 → %4 expected</translation>
    </message>
    <message>
        <source>%1 declined: %2, %3 → %4 expected</source>
        <comment>time, advice, density before and after</comment>
        <translation>%1 declined: %2, %3 → %4 expected</translation>
    </message>
    <message>
        <source>%1; %2 at %3</source>
        <comment>what was said, the density then, time</comment>
        <translation>%1; %2 at %3</translation>
    </message>
    <message>
        <source>%1; shows from %2</source>
        <comment>what was said, time</comment>
        <translation>%1; shows from %2</translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Fill</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Samples</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Practice</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Day</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Face</translation>
    </message>
</context>
<context>
    <name>PracticePresenter</name>
    <message>
        <source>not run yet</source>
        <translation>not run yet</translation>
    </message>
    <message numerus="yes">
        <source>best %1 of 100, %n run(s)</source>
        <translation>
            <numerusform>best %1 of 100, %n run</numerusform>
            <numerusform>best %1 of 100, %n runs</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 of %2</translation>
    </message>
    <message>
        <source>The lesson is over.</source>
        <translation>The lesson is over.</translation>
    </message>
    <message>
        <source>Somebody is on foot: stand still until nobody is.</source>
        <translation>Somebody is on foot: stand still until nobody is.</translation>
    </message>
    <message>
        <source>Load %1 of %2 comes in %3.</source>
        <translation>Load %1 of %2 comes in %3.</translation>
    </message>
    <message>
        <source>All loads are in.</source>
        <translation>All loads are in.</translation>
    </message>
    <message>
        <source>No crop lies on the pad yet.</source>
        <translation>No crop lies on the pad yet.</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 of 100</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <comment>points, most and why</comment>
        <translation>%1 of %2: %3</translation>
    </message>
    <message>
        <source>Nothing that this lesson looks for.</source>
        <translation>Nothing that this lesson looks for.</translation>
    </message>
</context>
<context>
    <name>Radio</name>
    <message>
        <source>Nobody packs</source>
        <translation>Nobody packs</translation>
    </message>
    <message>
        <source>%1 packing</source>
        <comment>names of tractors</comment>
        <translation>%1 packing</translation>
    </message>
    <message>
        <source>%1 spreading</source>
        <comment>names of tractors</comment>
        <translation>%1 spreading</translation>
    </message>
    <message>
        <source>pause</source>
        <translation>pause</translation>
    </message>
    <message>
        <source>%1 (%2), target %3, chance %4</source>
        <comment>density, its band, target, chance of it</comment>
        <translation>%1 (%2), target %3, chance %4</translation>
    </message>
</context>
<context>
    <name>SamplesPresenter</name>
    <message>
        <source>no field named</source>
        <translation>no field named</translation>
    </message>
    <message>
        <source>No sieve test today.</source>
        <translation>No sieve test today.</translation>
    </message>
    <message numerus="yes">
        <source>By day: %1 over %n day(s)</source>
        <translation>
            <numerusform>By day: %1 over %n day</numerusform>
            <numerusform>By day: %1 over %n days</numerusform>
        </translation>
    </message>
    <message>
        <source>, 80 % band %1</source>
        <translation>, 80 % band %1</translation>
    </message>
    <message>
        <source>No kernels counted today.</source>
        <translation>No kernels counted today.</translation>
    </message>
    <message>
        <source>%1 in a cup (%2 to %3), %4: %5</source>
        <comment>mean, low, high, material, how good</comment>
        <translation>%1 in a cup (%2 to %3), %4: %5</translation>
    </message>
    <message>
        <source>Score %1 of the starch, %2: %3</source>
        <translation>Score %1 of the starch, %2: %3</translation>
    </message>
    <message>
        <source>Nobody has told how the harvester is set.</source>
        <translation>Nobody has told how the harvester is set.</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>cut %1</translation>
    </message>
    <message>
        <source>roll gap %1</source>
        <translation>roll gap %1</translation>
    </message>
    <message>
        <source>stubble %1</source>
        <translation>stubble %1</translation>
    </message>
    <message>
        <source>no processor</source>
        <translation>no processor</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>rolls</translation>
    </message>
    <message>
        <source>rolls for a long cut</source>
        <translation>rolls for a long cut</translation>
    </message>
    <message>
        <source>No field has been visited.</source>
        <translation>No field has been visited.</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresh</translation>
    </message>
    <message>
        <source>fermented</source>
        <translation>fermented</translation>
    </message>
    <message>
        <source>No dry matter measured yet.</source>
        <translation>No dry matter measured yet.</translation>
    </message>
    <message>
        <source>The next load: %1</source>
        <translation>The next load: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s) today: %1</source>
        <translation>
            <numerusform>%n sample today: %1</numerusform>
            <numerusform>%n samples today: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>; enough for a point</source>
        <translation>; enough for a point</translation>
    </message>
    <message numerus="yes">
        <source>; %n more give it to a point</source>
        <translation>
            <numerusform>; %n more gives it to a point</numerusform>
            <numerusform>; %n more give it to a point</numerusform>
        </translation>
    </message>
    <message>
        <source>Drift %1 an hour, 80 % band %2</source>
        <translation>Drift %1 an hour, 80 % band %2</translation>
    </message>
    <message>
        <source>%1: none is seen</source>
        <translation>%1: none is seen</translation>
    </message>
    <message>
        <source>Came in today: %1</source>
        <translation>Came in today: %1</translation>
    </message>
    <message>
        <source>In %1: %2</source>
        <translation>In %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n test(s)</source>
        <translation>
            <numerusform>%1, %n test</numerusform>
            <numerusform>%1, %n tests</numerusform>
        </translation>
    </message>
    <message>
        <source>; %1 %2</source>
        <comment>method, mean length</comment>
        <translation>; %1 %2</translation>
    </message>
    <message>
        <source>, spread %1</source>
        <translation>, spread %1</translation>
    </message>
    <message>
        <source>log-normal line</source>
        <translation>log-normal line</translation>
    </message>
    <message>
        <source>one screen</source>
        <translation>one screen</translation>
    </message>
    <message>
        <source>milk line %1</source>
        <translation>milk line %1</translation>
    </message>
    <message>
        <source>dries %1 (+-%2)</source>
        <translation>dries %1 (+-%2)</translation>
    </message>
    <message>
        <source>in the goal %1 to %2</source>
        <translation>in the goal %1 to %2</translation>
    </message>
    <message>
        <source>by warmth %1</source>
        <translation>by warmth %1</translation>
    </message>
    <message>
        <source>by planting %1 to %2</source>
        <translation>by planting %1 to %2</translation>
    </message>
    <message>
        <source>out of reach</source>
        <translation>out of reach</translation>
    </message>
    <message>
        <source>well processed</source>
        <translation>well processed</translation>
    </message>
    <message>
        <source>adequate</source>
        <translation>adequate</translation>
    </message>
    <message>
        <source>inadequate</source>
        <translation>inadequate</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>yesterday %1</translation>
    </message>
</context>
<context>
    <name>Trial</name>
    <message>
        <source>What if? Move a tractor or record a layer: it is only tried.</source>
        <translation>What if? Move a tractor or record a layer: it is only tried.</translation>
    </message>
    <message>
        <source>What if: not enough is known to say.</source>
        <translation>What if: not enough is known to say.</translation>
    </message>
    <message>
        <source>What if: %1: %2</source>
        <comment>what is tried and what it would come to</comment>
        <translation>What if: %1: %2</translation>
    </message>
</context>
<context>
    <name>treadwell::CopiesDialog</name>
    <message>
        <source>Make a copy now</source>
        <translation>Make a copy now</translation>
    </message>
    <message>
        <source>Make no more copies</source>
        <translation>Make no more copies</translation>
    </message>
    <message>
        <source>Copies after the day&apos;s close</source>
        <translation>Copies after the day&apos;s close</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Close</translation>
    </message>
    <message>
        <source>A folder for the copies, such as a stick</source>
        <translation>A folder for the copies, such as a stick</translation>
    </message>
    <message>
        <source>Choose another folder…</source>
        <translation>Choose another folder…</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>Choose a folder…</translation>
    </message>
</context>
<context>
    <name>treadwell::MainWindow</name>
    <message>
        <source>Take in a file of tickets or readings…</source>
        <translation>Take in a file of tickets or readings…</translation>
    </message>
    <message>
        <source>Tickets or readings</source>
        <translation>Tickets or readings</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Lists (*.csv *.txt *.tsv);;All files (*)</translation>
    </message>
    <message>
        <source>take in a file of tickets or readings</source>
        <translation>take in a file of tickets or readings</translation>
    </message>
    <message>
        <source>Copies after the day&apos;s close…</source>
        <translation>Copies after the day&apos;s close…</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>&amp;Season</translation>
    </message>
    <message>
        <source>Metric: t, kg DM/m³</source>
        <translation>Metric: t, kg DM/m³</translation>
    </message>
    <message>
        <source>US: ton, lb DM/ft³</source>
        <translation>US: ton, lb DM/ft³</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Light</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dark</translation>
    </message>
    <message>
        <source>Outdoor: black on white</source>
        <translation>Outdoor: black on white</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Keys</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Units</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Language</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Theme</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Help</translation>
    </message>
    <message>
        <source>&amp;Pages</source>
        <translation>&amp;Pages</translation>
    </message>
</context>
<context>
    <name>treadwell::SeasonBanner</name>
    <message>
        <source>Write here from now on</source>
        <translation>Write here from now on</translation>
    </message>
    <message numerus="yes">
        <source>%n waiting. %1</source>
        <comment>entries that could not be recorded, and why</comment>
        <translation>
            <numerusform>%n entry is waiting. %1</numerusform>
            <numerusform>%n entries are waiting. %1</numerusform>
        </translation>
    </message>
    <message>
        <source>The clock is right</source>
        <translation>The clock is right</translation>
    </message>
    <message>
        <source>How the season&apos;s file stands</source>
        <translation>How the season&apos;s file stands</translation>
    </message>
    <message>
        <source>It is this time</source>
        <translation>It is this time</translation>
    </message>
    <message>
        <source>The right day</source>
        <translation>The right day</translation>
    </message>
    <message>
        <source>The right time</source>
        <translation>The right time</translation>
    </message>
</context>
<context>
    <name>treadwell::day_page::ClosingPanel</name>
    <message numerus="yes">
        <source>%n point(s) to see to: answer each, or leave it open.</source>
        <translation>
            <numerusform>%n point to see to: answer it, or leave it open.</numerusform>
            <numerusform>%n points to see to: answer each, or leave it open.</numerusform>
        </translation>
    </message>
    <message>
        <source>What is left open stands on the sheet.</source>
        <translation>What is left open stands on the sheet.</translation>
    </message>
    <message>
        <source>Say who closes the day.</source>
        <translation>Say who closes the day.</translation>
    </message>
    <message>
        <source>Say why the day is opened again: it is a correction and stands in the history.</source>
        <translation>Say why the day is opened again: it is a correction and stands in the history.</translation>
    </message>
    <message>
        <source>The day&apos;s close</source>
        <translation>The day&apos;s close</translation>
    </message>
    <message>
        <source>For the next shift</source>
        <translation>For the next shift</translation>
    </message>
    <message>
        <source>Takes over</source>
        <translation>Takes over</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Hand over</translation>
    </message>
    <message>
        <source>Closes it</source>
        <translation>Closes it</translation>
    </message>
    <message>
        <source>Close the day</source>
        <translation>Close the day</translation>
    </message>
    <message>
        <source>A closed day is changed by a correction alone. Why is it opened again?</source>
        <translation>A closed day is changed by a correction alone. Why is it opened again?</translation>
    </message>
    <message>
        <source>Open it again</source>
        <translation>Open it again</translation>
    </message>
    <message>
        <source>Say first, at the top, whether the clock is right.</source>
        <translation>Say first, at the top, whether the clock is right.</translation>
    </message>
</context>
<context>
    <name>treadwell::day_page::DayPage</name>
    <message>
        <source>The day is open again.</source>
        <translation>The day is open again.</translation>
    </message>
    <message>
        <source>The season, its days side by side</source>
        <translation>The season, its days side by side</translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation>Nothing is recorded yet.</translation>
    </message>
    <message>
        <source>Not recorded: %1</source>
        <translation>Not recorded: %1</translation>
    </message>
    <message>
        <source>The words for the next shift are recorded.</source>
        <translation>The words for the next shift are recorded.</translation>
    </message>
    <message>
        <source>Handed over to %1.</source>
        <translation>Handed over to %1.</translation>
    </message>
    <message>
        <source>The day is closed.</source>
        <translation>The day is closed.</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>The printer did not take the sheet.</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Save the sheet</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Saved: %1</translation>
    </message>
    <message>
        <source>The day&apos;s sum is copied: paste it into a message.</source>
        <translation>The day&apos;s sum is copied: paste it into a message.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Day</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Paper</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Print</translation>
    </message>
    <message>
        <source>Copy message</source>
        <translation>Copy message</translation>
    </message>
    <message>
        <source>Save %1</source>
        <translation>Save %1</translation>
    </message>
    <message>
        <source>Alt+Left, Alt+Right</source>
        <translation>Alt+Left, Alt+Right</translation>
    </message>
    <message>
        <source>The day before, the day after</source>
        <translation>The day before, the day after</translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation>Print the sheet</translation>
    </message>
    <message>
        <source>Save it as a PDF</source>
        <translation>Save it as a PDF</translation>
    </message>
    <message>
        <source>Copy its sum for a message</source>
        <translation>Copy its sum for a message</translation>
    </message>
</context>
<context>
    <name>treadwell::day_page::StepRow</name>
    <message>
        <source>Leave it open</source>
        <translation>Leave it open</translation>
    </message>
    <message>
        <source>Away from then</source>
        <translation>Away from then</translation>
    </message>
    <message>
        <source>Ended then</source>
        <translation>Ended then</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Left open</translation>
    </message>
    <message>
        <source>When</source>
        <translation>When</translation>
    </message>
    <message>
        <source>Read the heights</source>
        <translation>Read the heights</translation>
    </message>
    <message>
        <source>Taken at</source>
        <translation>Taken at</translation>
    </message>
    <message>
        <source>Enter a sample</source>
        <translation>Enter a sample</translation>
    </message>
    <message>
        <source>Enter the layer</source>
        <translation>Enter the layer</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Mass</translation>
    </message>
    <message>
        <source>Cost an hour</source>
        <translation>Cost an hour</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Record</translation>
    </message>
    <message>
        <source>Enter a number above 0.</source>
        <translation>Enter a number above 0.</translation>
    </message>
    <message>
        <source>It is nothing</source>
        <translation>It is nothing</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::CoreForm</name>
    <message>
        <source>Loose, from the loader&apos;s bucket</source>
        <translation>Loose, from the loader&apos;s bucket</translation>
    </message>
    <message>
        <source>Block, cut by machine</source>
        <translation>Block, cut by machine</translation>
    </message>
    <message>
        <source>Corer on a machine</source>
        <translation>Corer on a machine</translation>
    </message>
    <message>
        <source>Face balance over days</source>
        <translation>Face balance over days</translation>
    </message>
    <message>
        <source>From</source>
        <translation>From</translation>
    </message>
    <message>
        <source>From the back wall</source>
        <translation>From the back wall</translation>
    </message>
    <message>
        <source>From the left wall</source>
        <translation>From the left wall</translation>
    </message>
    <message>
        <source>Below the surface</source>
        <translation>Below the surface</translation>
    </message>
    <message>
        <source>Corer, inside</source>
        <translation>Corer, inside</translation>
    </message>
    <message>
        <source>Hole, deep</source>
        <translation>Hole, deep</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Block</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Weighed</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Dry matter</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Density</translation>
    </message>
    <message>
        <source>Record the core</source>
        <translation>Record the core</translation>
    </message>
    <message>
        <source>Loose material tells dry matter and chop, no density.</source>
        <translation>Loose material tells dry matter and chop, no density.</translation>
    </message>
    <message>
        <source>Position, then what gives the density.</source>
        <translation>Position, then what gives the density.</translation>
    </message>
    <message>
        <source>It makes %1.</source>
        <translation>It makes %1.</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::FacePage</name>
    <message>
        <source>of the newest core</source>
        <translation>of the newest core</translation>
    </message>
    <message>
        <source>The farm has no silo yet.</source>
        <translation>The farm has no silo yet.</translation>
    </message>
    <message>
        <source>Not recorded: %1</source>
        <translation>Not recorded: %1</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Face</translation>
    </message>
    <message>
        <source>Before anybody goes near</source>
        <translation>Before anybody goes near</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Core</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Fed</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Warmth</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>The face</source>
        <translation>The face</translation>
    </message>
    <message>
        <source>Feeding out</source>
        <translation>Feeding out</translation>
    </message>
    <message>
        <source>A core, what was fed, temperatures, the plan</source>
        <translation>A core, what was fed, temperatures, the plan</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Arrows</translation>
    </message>
    <message>
        <source>From place to place on the face</source>
        <translation>From place to place on the face</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>The next field of the form; at the last one record</source>
        <translation>The next field of the form; at the last one record</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::PlanBox</name>
    <message>
        <source>First day</source>
        <translation>First day</translation>
    </message>
    <message>
        <source>Fed each day</source>
        <translation>Fed each day</translation>
    </message>
    <message>
        <source>Its dry matter</source>
        <translation>Its dry matter</translation>
    </message>
    <message>
        <source>Lost until fed</source>
        <translation>Lost until fed</translation>
    </message>
    <message>
        <source>The face, from the back wall</source>
        <translation>The face, from the back wall</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Week from</translation>
    </message>
    <message>
        <source>What is left at nothing is taken from what was fed so far. The plan is not recorded.</source>
        <translation>What is left at nothing is taken from what was fed so far. The plan is not recorded.</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::RemovalForm</name>
    <message>
        <source>Fed since the last time</source>
        <translation>Fed since the last time</translation>
    </message>
    <message>
        <source>Its dry matter</source>
        <translation>Its dry matter</translation>
    </message>
    <message>
        <source>The face now, from the back wall</source>
        <translation>The face now, from the back wall</translation>
    </message>
    <message>
        <source>All is out</source>
        <translation>All is out</translation>
    </message>
    <message>
        <source>Record what was fed</source>
        <translation>Record what was fed</translation>
    </message>
    <message>
        <source>What is left at nothing was not measured.</source>
        <translation>What is left at nothing was not measured.</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::WarmthForm</name>
    <message>
        <source>20 cm behind the face</source>
        <translation>20 cm behind the face</translation>
    </message>
    <message>
        <source>In the core</source>
        <translation>In the core</translation>
    </message>
    <message>
        <source>From the left wall</source>
        <translation>From the left wall</translation>
    </message>
    <message>
        <source>Above the floor</source>
        <translation>Above the floor</translation>
    </message>
    <message>
        <source>Record the temperatures</source>
        <translation>Record the temperatures</translation>
    </message>
    <message>
        <source>read both temperatures</source>
        <translation>read both temperatures</translation>
    </message>
    <message>
        <source>More than 5 °C above the core and the face heats.</source>
        <translation>More than 5 °C above the core and the face heats.</translation>
    </message>
    <message>
        <source>More than 5 °C above the core: the face heats.</source>
        <translation>More than 5 °C above the core: the face heats.</translation>
    </message>
    <message>
        <source>Not more than 5 °C above the core.</source>
        <translation>Not more than 5 °C above the core.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::CatchUpDialog</name>
    <message>
        <source>Loads to catch up with</source>
        <translation>Loads to catch up with</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Loads</translation>
    </message>
    <message>
        <source>From</source>
        <translation>From</translation>
    </message>
    <message>
        <source>To</source>
        <translation>To</translation>
    </message>
    <message>
        <source>several, or not known</source>
        <translation>several, or not known</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Truck</translation>
    </message>
    <message>
        <source>Mass of each load</source>
        <translation>Mass of each load</translation>
    </message>
    <message>
        <source>Mass of each</source>
        <translation>Mass of each</translation>
    </message>
    <message>
        <source>Record the loads</source>
        <translation>Record the loads</translation>
    </message>
    <message>
        <source>This time has not come yet.</source>
        <translation>This time has not come yet.</translation>
    </message>
    <message>
        <source>The first time must come before the last.</source>
        <translation>The first time must come before the last.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::ChopEntry</name>
    <message>
        <source>No chop sieved yet.</source>
        <translation>No chop sieved yet.</translation>
    </message>
    <message>
        <source>Mean length %1, %2</source>
        <translation>Mean length %1, %2</translation>
    </message>
    <message>
        <source>%1 – none sieved today</source>
        <translation>%1 – none sieved today</translation>
    </message>
    <message>
        <source>The sieve test is not recorded: %1</source>
        <translation>The sieve test is not recorded: %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>on %1</translation>
    </message>
    <message>
        <source>in the pan</source>
        <translation>in the pan</translation>
    </message>
    <message>
        <source>Mass %1</source>
        <translation>Mass %1</translation>
    </message>
    <message>
        <source>Record the sieve test</source>
        <translation>Record the sieve test</translation>
    </message>
    <message>
        <source>Chop</source>
        <translation>Chop</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::DayLoads</name>
    <message>
        <source>caught up</source>
        <translation>caught up</translation>
    </message>
    <message>
        <source>usual load</source>
        <translation>usual load</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>about %1</translation>
    </message>
    <message>
        <source>Correct the load of %1</source>
        <translation>Correct the load of %1</translation>
    </message>
    <message>
        <source>Take back the load of %1</source>
        <translation>Take back the load of %1</translation>
    </message>
    <message>
        <source>Loads of the day</source>
        <translation>Loads of the day</translation>
    </message>
    <message>
        <source>No load yet today.</source>
        <translation>No load yet today.</translation>
    </message>
    <message>
        <source>load</source>
        <translation>load</translation>
    </message>
    <message>
        <source>Less mass for the load of %1</source>
        <translation>Less mass for the load of %1</translation>
    </message>
    <message>
        <source>More mass for the load of %1</source>
        <translation>More mass for the load of %1</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::DryMatterEntry</name>
    <message>
        <source>Dry matter</source>
        <translation>Dry matter</translation>
    </message>
    <message>
        <source>Record the sample</source>
        <translation>Record the sample</translation>
    </message>
    <message>
        <source>Percent</source>
        <translation>Percent</translation>
    </message>
    <message>
        <source>Dish weights</source>
        <translation>Dish weights</translation>
    </message>
    <message>
        <source>How the dry matter is entered</source>
        <translation>How the dry matter is entered</translation>
    </message>
    <message>
        <source>How the dry matter was measured</source>
        <translation>How the dry matter was measured</translation>
    </message>
    <message>
        <source>Weight before drying</source>
        <translation>Weight before drying</translation>
    </message>
    <message>
        <source>Weight after drying</source>
        <translation>Weight after drying</translation>
    </message>
    <message>
        <source>before</source>
        <translation>before</translation>
    </message>
    <message>
        <source>after drying</source>
        <translation>after drying</translation>
    </message>
    <message>
        <source>The dish is not recorded: it must weigh less after drying, and more than nothing</source>
        <translation>The dish is not recorded: it must weigh less after drying, and more than nothing</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::EntryPanel</name>
    <message>
        <source>%1 is not recorded: %2</source>
        <translation>%1 is not recorded: %2</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::FillHeader</name>
    <message>
        <source>An accident, or nearly one, a breakdown, a spill</source>
        <translation>An accident, or nearly one, a breakdown, a spill</translation>
    </message>
    <message>
        <source>Incident</source>
        <translation>Incident</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>not known</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Field</translation>
    </message>
    <message>
        <source>Radio</source>
        <translation>Radio</translation>
    </message>
    <message>
        <source>Copies a sentence for the radio or a message, and shows it</source>
        <translation>Copies a sentence for the radio or a message, and shows it</translation>
    </message>
    <message>
        <source>name erased</source>
        <translation>name erased</translation>
    </message>
    <message>
        <source>Who is here?</source>
        <translation>Who is here?</translation>
    </message>
    <message>
        <source>Who holds the tablet: %1</source>
        <translation>Who holds the tablet: %1</translation>
    </message>
    <message>
        <source>Português</source>
        <comment>the other language, in itself</comment>
        <translation>Português</translation>
    </message>
    <message>
        <source>Changes the language of the screen</source>
        <translation>Changes the language of the screen</translation>
    </message>
    <message>
        <source>%1 h %2</source>
        <comment>hours and minutes on shift</comment>
        <translation>%1 h %2</translation>
    </message>
    <message>
        <source>on shift for %1</source>
        <translation>on shift for %1</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::FillPage</name>
    <message>
        <source>log a load of the truck at this place</source>
        <translation>log a load of the truck at this place</translation>
    </message>
    <message>
        <source>take back the last load</source>
        <translation>take back the last load</translation>
    </message>
    <message>
        <source>enter dry matter</source>
        <translation>enter dry matter</translation>
    </message>
    <message>
        <source>enter the layer</source>
        <translation>enter the layer</translation>
    </message>
    <message>
        <source>next reading of the density</source>
        <translation>next reading of the density</translation>
    </message>
    <message>
        <source>show the working</source>
        <translation>show the working</translation>
    </message>
    <message>
        <source>do what is advised</source>
        <translation>do what is advised</translation>
    </message>
    <message>
        <source>decline the advice</source>
        <translation>decline the advice</translation>
    </message>
    <message>
        <source>next or previous control</source>
        <translation>next or previous control</translation>
    </message>
    <message>
        <source>move the chosen tractor</source>
        <translation>move the chosen tractor</translation>
    </message>
    <message>
        <source>The load</source>
        <translation>The load</translation>
    </message>
    <message>
        <source>The undo</source>
        <translation>The undo</translation>
    </message>
    <message>
        <source>The move of the tractor</source>
        <translation>The move of the tractor</translation>
    </message>
    <message>
        <source>The dry matter</source>
        <translation>The dry matter</translation>
    </message>
    <message>
        <source>The layer</source>
        <translation>The layer</translation>
    </message>
    <message>
        <source>The decision</source>
        <translation>The decision</translation>
    </message>
    <message>
        <source>The advice shown</source>
        <translation>The advice shown</translation>
    </message>
    <message>
        <source>The caution shown</source>
        <translation>The caution shown</translation>
    </message>
    <message>
        <source>%1 is not saved: %2</source>
        <translation>%1 is not saved: %2</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Filling</translation>
    </message>
    <message>
        <source>next view: time, section, table, heights, chop</source>
        <translation>next view: time, section, table, heights, chop</translation>
    </message>
    <message>
        <source>enter heights</source>
        <translation>enter heights</translation>
    </message>
    <message>
        <source>zoom and move the timeline; Home shows all of it</source>
        <translation>zoom and move the timeline; Home shows all of it</translation>
    </message>
    <message>
        <source>read a moment of the timeline or a place of the section</source>
        <translation>read a moment of the timeline or a place of the section</translation>
    </message>
    <message>
        <source>try something: what if</source>
        <translation>try something: what if</translation>
    </message>
    <message>
        <source>the day&apos;s loads, or the trucks again</source>
        <translation>the day&apos;s loads, or the trucks again</translation>
    </message>
    <message>
        <source>catch up with loads</source>
        <translation>catch up with loads</translation>
    </message>
    <message>
        <source>a hired machine is here</source>
        <translation>a hired machine is here</translation>
    </message>
    <message>
        <source>pause, or go on</source>
        <translation>pause, or go on</translation>
    </message>
    <message>
        <source>next silo</source>
        <translation>next silo</translation>
    </message>
    <message>
        <source>next field</source>
        <translation>next field</translation>
    </message>
    <message>
        <source>who holds the tablet</source>
        <translation>who holds the tablet</translation>
    </message>
    <message>
        <source>words for the radio</source>
        <translation>words for the radio</translation>
    </message>
    <message>
        <source>the other language</source>
        <translation>the other language</translation>
    </message>
    <message>
        <source>share of its time that it packs</source>
        <translation>share of its time that it packs</translation>
    </message>
    <message>
        <source>mass of the chosen tractor</source>
        <translation>mass of the chosen tractor</translation>
    </message>
    <message>
        <source>The loads</source>
        <translation>The loads</translation>
    </message>
    <message>
        <source>The hired machine</source>
        <translation>The hired machine</translation>
    </message>
    <message>
        <source>The mass</source>
        <translation>The mass</translation>
    </message>
    <message>
        <source>The shift</source>
        <translation>The shift</translation>
    </message>
    <message>
        <source>The pause</source>
        <translation>The pause</translation>
    </message>
    <message>
        <source>Copied: %1</source>
        <translation>Copied: %1</translation>
    </message>
    <message>
        <source>something happened</source>
        <translation>something happened</translation>
    </message>
    <message>
        <source>The incident</source>
        <translation>The incident</translation>
    </message>
    <message>
        <source>Say first, at the top, whether the clock is right: this sheet writes times.</source>
        <translation>Say first, at the top, whether the clock is right: this sheet writes times.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::HeightsEntry</name>
    <message>
        <source>The heights are not recorded: %1</source>
        <translation>The heights are not recorded: %1</translation>
    </message>
    <message>
        <source>Mean %1 of %2 heights</source>
        <translation>Mean %1 of %2 heights</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Staff</translation>
    </message>
    <message>
        <source>Laser</source>
        <translation>Laser</translation>
    </message>
    <message>
        <source>What the heights are read with</source>
        <translation>What the heights are read with</translation>
    </message>
    <message>
        <source>laser hangs at</source>
        <translation>laser hangs at</translation>
    </message>
    <message>
        <source>Height of the laser above the floor</source>
        <translation>Height of the laser above the floor</translation>
    </message>
    <message>
        <source>Record the heights</source>
        <translation>Record the heights</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>at %1</translation>
    </message>
    <message>
        <source>Distance below the laser, %1 from the back wall</source>
        <translation>Distance below the laser, %1 from the back wall</translation>
    </message>
    <message>
        <source>Height of the crop, %1 from the back wall</source>
        <translation>Height of the crop, %1 from the back wall</translation>
    </message>
    <message>
        <source>Heights of the crop</source>
        <translation>Heights of the crop</translation>
    </message>
    <message>
        <source>Height at %1: %2 (here it can be %3)</source>
        <translation>Height at %1: %2 (here it can be %3)</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::HireDialog</name>
    <message>
        <source>Medium tractor</source>
        <translation>Medium tractor</translation>
    </message>
    <message>
        <source>Large tractor</source>
        <translation>Large tractor</translation>
    </message>
    <message>
        <source>Heavy tractor</source>
        <translation>Heavy tractor</translation>
    </message>
    <message>
        <source>Articulated tractor</source>
        <translation>Articulated tractor</translation>
    </message>
    <message>
        <source>Wheel loader</source>
        <translation>Wheel loader</translation>
    </message>
    <message>
        <source>Small trailer</source>
        <translation>Small trailer</translation>
    </message>
    <message>
        <source>Trailer</source>
        <translation>Trailer</translation>
    </message>
    <message>
        <source>Large trailer</source>
        <translation>Large trailer</translation>
    </message>
    <message>
        <source>Lorry</source>
        <translation>Lorry</translation>
    </message>
    <message>
        <source>A hired machine is here</source>
        <translation>A hired machine is here</translation>
    </message>
    <message>
        <source>Hired %1</source>
        <translation>Hired %1</translation>
    </message>
    <message>
        <source>Hired truck %1</source>
        <translation>Hired truck %1</translation>
    </message>
    <message>
        <source>Tractor</source>
        <translation>Tractor</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Truck</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>It is here</source>
        <translation>It is here</translation>
    </message>
    <message>
        <source>%1
%2 ± %3</source>
        <comment>class, mass, its error</comment>
        <translation>%1
%2 ± %3</translation>
    </message>
    <message>
        <source>%1
%2 a load</source>
        <comment>class, usual load</comment>
        <translation>%1
%2 a load</translation>
    </message>
    <message>
        <source>Give it a name by which it is known in the yard.</source>
        <translation>Give it a name by which it is known in the yard.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::IncidentDialog</name>
    <message>
        <source>Something happened</source>
        <translation>Something happened</translation>
    </message>
    <message>
        <source>A person</source>
        <translation>A person</translation>
    </message>
    <message>
        <source>A machine</source>
        <translation>A machine</translation>
    </message>
    <message>
        <source>The place</source>
        <translation>The place</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Time</translation>
    </message>
    <message>
        <source>none, or not known</source>
        <translation>none, or not known</translation>
    </message>
    <message>
        <source>Tractor</source>
        <translation>Tractor</translation>
    </message>
    <message>
        <source>may stay empty; no names</source>
        <translation>may stay empty; no names</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In words</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Record it</translation>
    </message>
    <message>
        <source>Say in a few words what happened.</source>
        <translation>Say in a few words what happened.</translation>
    </message>
    <message>
        <source>This time has not come yet.</source>
        <translation>This time has not come yet.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::LayerEntry</name>
    <message>
        <source>Layer as spread</source>
        <translation>Layer as spread</translation>
    </message>
    <message>
        <source>Record the layer</source>
        <translation>Record the layer</translation>
    </message>
    <message>
        <source>Thickness of the layer</source>
        <translation>Thickness of the layer</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::LoadDialog</name>
    <message>
        <source>Load</source>
        <translation>Load</translation>
    </message>
    <message>
        <source>Load of %1</source>
        <translation>Load of %1</translation>
    </message>
    <message>
        <source>Mass as fed</source>
        <translation>Mass as fed</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>weighed</translation>
    </message>
    <message>
        <source>from the box</source>
        <translation>from the box</translation>
    </message>
    <message>
        <source>usual load</source>
        <translation>usual load</translation>
    </message>
    <message>
        <source>How the mass is known</source>
        <translation>How the mass is known</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Field</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>not known</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Known</translation>
    </message>
    <message>
        <source>Record the load</source>
        <translation>Record the load</translation>
    </message>
    <message>
        <source>the usual load of this truck from now on</source>
        <translation>the usual load of this truck from now on</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Time</translation>
    </message>
    <message>
        <source>Correct the load</source>
        <translation>Correct the load</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Truck</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>This time has not come yet.</source>
        <translation>This time has not come yet.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::MassDialog</name>
    <message>
        <source>Mass of %1</source>
        <translation>Mass of %1</translation>
    </message>
    <message>
        <source>Mass with ballast and blade</source>
        <translation>Mass with ballast and blade</translation>
    </message>
    <message>
        <source>Record the mass</source>
        <translation>Record the mass</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::Sheet</name>
    <message>
        <source>Leave it</source>
        <translation>Leave it</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::TabletDialog</name>
    <message>
        <source>Who holds the tablet?</source>
        <translation>Who holds the tablet?</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Known</translation>
    </message>
    <message>
        <source>New name</source>
        <translation>New name</translation>
    </message>
    <message>
        <source>My shift ends</source>
        <translation>My shift ends</translation>
    </message>
    <message>
        <source>I hold the tablet</source>
        <translation>I hold the tablet</translation>
    </message>
    <message>
        <source>Touch a name, or write one.</source>
        <translation>Touch a name, or write one.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::ViewStrip</name>
    <message>
        <source>The sieve test</source>
        <translation>The sieve test</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Time</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Section</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Table</translation>
    </message>
    <message>
        <source>Heights</source>
        <translation>Heights</translation>
    </message>
    <message>
        <source>Chop</source>
        <translation>Chop</translation>
    </message>
    <message>
        <source>The day as a table</source>
        <translation>The day as a table</translation>
    </message>
    <message>
        <source>Views of the filling</source>
        <translation>Views of the filling</translation>
    </message>
    <message>
        <source>The heights</source>
        <translation>The heights</translation>
    </message>
    <message>
        <source>none sieved today</source>
        <translation>none sieved today</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::WorkingDialog</name>
    <message>
        <source>The working</source>
        <translation>The working</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Close</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::YardTools</name>
    <message>
        <source>Loads today</source>
        <translation>Loads today</translation>
    </message>
    <message>
        <source>Shows the day&apos;s loads in place of the trucks</source>
        <translation>Shows the day&apos;s loads in place of the trucks</translation>
    </message>
    <message>
        <source>Catch up</source>
        <translation>Catch up</translation>
    </message>
    <message>
        <source>Enters loads that came while nobody logged them</source>
        <translation>Enters loads that came while nobody logged them</translation>
    </message>
    <message>
        <source>Hired</source>
        <translation>Hired</translation>
    </message>
    <message>
        <source>A truck or tractor that the farm does not know yet</source>
        <translation>A truck or tractor that the farm does not know yet</translation>
    </message>
    <message>
        <source>Go on (%1)</source>
        <comment>the pause since</comment>
        <translation>Go on (%1)</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Deliveries stand still, or go on</source>
        <translation>Deliveries stand still, or go on</translation>
    </message>
</context>
<context>
    <name>treadwell::intake_page::ImportDialog</name>
    <message>
        <source>Take in %1</source>
        <translation>Take in %1</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letters</translation>
    </message>
    <message>
        <source>Columns are parted by</source>
        <translation>Columns are parted by</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Comma</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>Semicolon</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Bar</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Decimal sign</translation>
    </message>
    <message>
        <source>Point: 12.4</source>
        <translation>Point: 12.4</translation>
    </message>
    <message>
        <source>Comma: 12,4</source>
        <translation>Comma: 12,4</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Dates</translation>
    </message>
    <message>
        <source>Day first: 16/09</source>
        <translation>Day first: 16/09</translation>
    </message>
    <message>
        <source>Month first: 09/16</source>
        <translation>Month first: 09/16</translation>
    </message>
    <message>
        <source>Weights without a unit</source>
        <translation>Weights without a unit</translation>
    </message>
    <message>
        <source>ton of 2,000 lb</source>
        <translation>ton of 2,000 lb</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>What comes of it</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Record it</translation>
    </message>
    <message>
        <source>It holds</source>
        <translation>It holds</translation>
    </message>
    <message>
        <source>are set aside</source>
        <translation>are set aside</translation>
    </message>
    <message>
        <source>Rows without a silo</source>
        <translation>Rows without a silo</translation>
    </message>
    <message>
        <source>to be answered</source>
        <translation>to be answered</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Column</translation>
    </message>
    <message>
        <source>Means</source>
        <translation>Means</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Columns</translation>
    </message>
    <message>
        <source>%1, read in %2</source>
        <translation>%1, read in %2</translation>
    </message>
    <message>
        <source>nothing here</source>
        <translation>nothing here</translation>
    </message>
</context>
<context>
    <name>treadwell::plots::DryMatterChart</name>
    <message>
        <source>Dry matter of the day</source>
        <translation>Dry matter of the day</translation>
    </message>
    <message>
        <source>dry matter, %</source>
        <translation>dry matter, %</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>loads</translation>
    </message>
    <message>
        <source>80 % band</source>
        <translation>80 % band</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>samples</translation>
    </message>
    <message>
        <source>goal</source>
        <translation>goal</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s).</source>
        <translation>
            <numerusform>%n sample.</numerusform>
            <numerusform>%n samples.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last load is taken for %1 (+-%2).</source>
        <translation>The last load is taken for %1 (+-%2).</translation>
    </message>
    <message>
        <source>Goal %1.</source>
        <translation>Goal %1.</translation>
    </message>
</context>
<context>
    <name>treadwell::plots::SieveChart</name>
    <message>
        <source>Where the sample lies between the sieves</source>
        <translation>Where the sample lies between the sieves</translation>
    </message>
    <message>
        <source>passes, %</source>
        <translation>passes, %</translation>
    </message>
    <message>
        <source>this sample</source>
        <translation>this sample</translation>
    </message>
    <message>
        <source>what should pass</source>
        <translation>what should pass</translation>
    </message>
    <message>
        <source>No sieve test yet.</source>
        <translation>No sieve test yet.</translation>
    </message>
    <message>
        <source>on 19 mm</source>
        <translation>on 19 mm</translation>
    </message>
    <message>
        <source>on 8 mm</source>
        <translation>on 8 mm</translation>
    </message>
    <message>
        <source>on 4 mm</source>
        <translation>on 4 mm</translation>
    </message>
    <message>
        <source>below</source>
        <translation>below</translation>
    </message>
    <message>
        <source>%1 %2, should be %3</source>
        <comment>where, part, range</comment>
        <translation>%1 %2, should be %3</translation>
    </message>
</context>
<context>
    <name>treadwell::plots::Timeline</name>
    <message>
        <source>Timeline of the filling</source>
        <translation>Timeline of the filling</translation>
    </message>
    <message numerus="yes">
        <source>%1 to %2: %n load(s), %3.</source>
        <comment>from, to, mass</comment>
        <translation>
            <numerusform>%1 to %2: %n load, %3.</numerusform>
            <numerusform>%1 to %2: %n loads, %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>Delivery in the last 60 minutes %1.</source>
        <translation>Delivery in the last 60 minutes %1.</translation>
    </message>
    <message>
        <source>Packing capacity %1.</source>
        <translation>Packing capacity %1.</translation>
    </message>
    <message>
        <source>Density %1, 80 % band %2.</source>
        <translation>Density %1, 80 % band %2.</translation>
    </message>
    <message>
        <source>Target %1.</source>
        <translation>Target %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s).</source>
        <translation>
            <numerusform>%n sample.</numerusform>
            <numerusform>%n samples.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pause(s).</source>
        <translation>
            <numerusform>%n pause.</numerusform>
            <numerusform>%n pauses.</numerusform>
        </translation>
    </message>
    <message>
        <source>target</source>
        <translation>target</translation>
    </message>
    <message>
        <source>load</source>
        <translation>load</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>advice</translation>
    </message>
    <message numerus="yes">
        <source>Advice: %n time(s).</source>
        <translation>
            <numerusform>Advice: %n time.</numerusform>
            <numerusform>Advice: %n times.</numerusform>
        </translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>load %1</translation>
    </message>
    <message>
        <source>delivery %1</source>
        <translation>delivery %1</translation>
    </message>
    <message>
        <source>capacity %1</source>
        <translation>capacity %1</translation>
    </message>
    <message>
        <source>density %1, 80 % band %2</source>
        <translation>density %1, 80 % band %2</translation>
    </message>
    <message>
        <source>pause</source>
        <translation>pause</translation>
    </message>
    <message>
        <source>advice accepted</source>
        <translation>advice accepted</translation>
    </message>
    <message>
        <source>advice declined</source>
        <translation>advice declined</translation>
    </message>
    <message>
        <source>advice shown</source>
        <translation>advice shown</translation>
    </message>
    <message>
        <source>delivery, 60 min</source>
        <translation>delivery, 60 min</translation>
    </message>
    <message>
        <source>capacity</source>
        <translation>capacity</translation>
    </message>
    <message>
        <source>density</source>
        <translation>density</translation>
    </message>
    <message>
        <source>80 % band</source>
        <translation>80 % band</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>dry matter</translation>
    </message>
</context>
<context>
    <name>treadwell::plots::TimelineTable</name>
    <message>
        <source>%1, %2</source>
        <comment>name, unit</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>What happened</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Delivery</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacity</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Density</translation>
    </message>
    <message>
        <source>80 % band</source>
        <translation>80 % band</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>load %1</translation>
    </message>
    <message>
        <source>dry matter %1</source>
        <translation>dry matter %1</translation>
    </message>
    <message>
        <source>pause until %1</source>
        <translation>pause until %1</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Hour</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::CutView</name>
    <message>
        <source>Cut %1 from the back wall, up to %2 high</source>
        <translation>Cut %1 from the back wall, up to %2 high</translation>
    </message>
    <message>
        <source>goal %1</source>
        <translation>goal %1</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PadView</name>
    <message>
        <source>No lesson is chosen.</source>
        <translation>No lesson is chosen.</translation>
    </message>
    <message>
        <source>%1 is %2 from the back wall and %3 from the left wall.</source>
        <comment>tractor and distances</comment>
        <translation>%1 is %2 from the back wall and %3 from the left wall.</translation>
    </message>
    <message>
        <source>No tractor is on the pad.</source>
        <translation>No tractor is on the pad.</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PlanForm</name>
    <message>
        <source>Layer</source>
        <translation>Layer</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Speed</translation>
    </message>
    <message>
        <source>To the wall</source>
        <translation>To the wall</translation>
    </message>
    <message>
        <source>Ramp</source>
        <translation>Ramp</translation>
    </message>
    <message>
        <source>Tracks</source>
        <translation>Tracks</translation>
    </message>
    <message>
        <source>whole width</source>
        <translation>whole width</translation>
    </message>
    <message>
        <source>the middle</source>
        <translation>the middle</translation>
    </message>
    <message>
        <source>as it comes</source>
        <translation>as it comes</translation>
    </message>
    <message>
        <source>Agreed who drives where</source>
        <translation>Agreed who drives where</translation>
    </message>
    <message>
        <source>Agree who drives where</source>
        <translation>Agree who drives where</translation>
    </message>
    <message>
        <source>All stand while somebody is on foot</source>
        <translation>All stand while somebody is on foot</translation>
    </message>
    <message>
        <source>Let all stand while somebody is on foot</source>
        <translation>Let all stand while somebody is on foot</translation>
    </message>
    <message>
        <source>All lights are on</source>
        <translation>All lights are on</translation>
    </message>
    <message>
        <source>Switch on all lights</source>
        <translation>Switch on all lights</translation>
    </message>
    <message>
        <source>Called at %1</source>
        <translation>Called at %1</translation>
    </message>
    <message>
        <source>Call the next tractor</source>
        <translation>Call the next tractor</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PracticePage</name>
    <message>
        <source>Pause</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>Once more</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Result: %1</source>
        <translation>Result: %1</translation>
    </message>
    <message>
        <source>So far: %1</source>
        <translation>So far: %1</translation>
    </message>
    <message>
        <source>Open a lesson</source>
        <translation>Open a lesson</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificate</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>From the start</translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation>Lessons</translation>
    </message>
    <message>
        <source>Plan of the practice pad</source>
        <translation>Plan of the practice pad</translation>
    </message>
    <message>
        <source>The pad cut from wall to wall</source>
        <translation>The pad cut from wall to wall</translation>
    </message>
    <message>
        <source>Pace</source>
        <translation>Pace</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <comment>times as fast</comment>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>Start lets the tractors follow the plan. Touch the pad, or use the arrow keys on it, to drive the first one yourself; the space bar lets it stand.</source>
        <translation>Start lets the tractors follow the plan. Touch the pad, or use the arrow keys on it, to drive the first one yourself; the space bar lets it stand.</translation>
    </message>
    <message>
        <source>What went wrong, and where</source>
        <translation>What went wrong, and where</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Cautions</translation>
    </message>
    <message>
        <source>The certificate lies in %1</source>
        <translation>The certificate lies in %1</translation>
    </message>
    <message>
        <source>Certificate of practice</source>
        <translation>Certificate of practice</translation>
    </message>
    <message>
        <source>Drive the first tractor to the back wall, to the mouth</source>
        <translation>Drive the first tractor to the back wall, to the mouth</translation>
    </message>
    <message>
        <source>Change its track while it drives</source>
        <translation>Change its track while it drives</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Space</translation>
    </message>
    <message>
        <source>Let it stand</source>
        <translation>Let it stand</translation>
    </message>
    <message>
        <source>A real day</source>
        <translation>A real day</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::TraineeBar</name>
    <message>
        <source>Nobody named</source>
        <translation>Nobody named</translation>
    </message>
    <message>
        <source>Who practises</source>
        <translation>Who practises</translation>
    </message>
    <message>
        <source>The name stays on this machine until it is deleted.</source>
        <translation>The name stays on this machine until it is deleted.</translation>
    </message>
    <message>
        <source>Delete progress</source>
        <translation>Delete progress</translation>
    </message>
    <message>
        <source>Delete %1 and all that was practised, for good?</source>
        <translation>Delete %1 and all that was practised, for good?</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Delete</translation>
    </message>
    <message>
        <source>New</source>
        <translation>New</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::DryMatterForm</name>
    <message>
        <source>Dish, dried in an oven</source>
        <translation>Dish, dried in an oven</translation>
    </message>
    <message>
        <source>Microwave, step by step</source>
        <translation>Microwave, step by step</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>How</source>
        <translation>How</translation>
    </message>
    <message>
        <source>Empty dish</source>
        <translation>Empty dish</translation>
    </message>
    <message>
        <source>With the fresh sample</source>
        <translation>With the fresh sample</translation>
    </message>
    <message>
        <source>After this step</source>
        <translation>After this step</translation>
    </message>
    <message>
        <source>After drying</source>
        <translation>After drying</translation>
    </message>
    <message>
        <source>The meter reads</source>
        <translation>The meter reads</translation>
    </message>
    <message>
        <source>Record the sample</source>
        <translation>Record the sample</translation>
    </message>
    <message>
        <source>the sample is not dry yet: %1</source>
        <translation>the sample is not dry yet: %1</translation>
    </message>
    <message>
        <source>Weigh the dish, then the fresh sample in it.</source>
        <translation>Weigh the dish, then the fresh sample in it.</translation>
    </message>
    <message>
        <source>%1 fresh</source>
        <translation>%1 fresh</translation>
    </message>
    <message>
        <source>%1, dry matter %2</source>
        <translation>%1, dry matter %2</translation>
    </message>
    <message>
        <source>Weigh the dish, then about 100 g of fresh sample in it.</source>
        <translation>Weigh the dish, then about 100 g of fresh sample in it.</translation>
    </message>
    <message>
        <source>Dry: %1 dry matter. Record it.</source>
        <translation>Dry: %1 dry matter. Record it.</translation>
    </message>
    <message>
        <source>Step %1: heat for %2 s, weigh, press Enter.</source>
        <translation>Step %1: heat for %2 s, weigh, press Enter.</translation>
    </message>
    <message>
        <source>At most %1 so far.</source>
        <translation>At most %1 so far.</translation>
    </message>
    <message>
        <source>The last step took %1 off.</source>
        <translation>The last step took %1 off.</translation>
    </message>
    <message>
        <source>Less than 80 g: the last gram counts for more than a point.</source>
        <translation>Less than 80 g: the last gram counts for more than a point.</translation>
    </message>
    <message>
        <source>No dish was taken beside the meter yet: it may be off by %1.</source>
        <translation>No dish was taken beside the meter yet: it may be off by %1.</translation>
    </message>
    <message numerus="yes">
        <source>It reads %1 (+-%2) too much, by %n dish(es) beside it.</source>
        <translation>
            <numerusform>It reads %1 (+-%2) too much, by %n dish beside it.</numerusform>
            <numerusform>It reads %1 (+-%2) too much, by %n dishes beside it.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 The crop has %2.</source>
        <translation>%1 The crop has %2.</translation>
    </message>
    <message>
        <source>the field, no load in particular</source>
        <translation>the field, no load in particular</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Taken from</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::Form</name>
    <message>
        <source>Not recorded: %1</source>
        <translation>Not recorded: %1</translation>
    </message>
    <message>
        <source>no field here waits for a weight</source>
        <translation>no field here waits for a weight</translation>
    </message>
    <message>
        <source>the scale shows less than nothing: set it to zero</source>
        <translation>the scale shows less than nothing: set it to zero</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::KernelForm</name>
    <message>
        <source>Counted in a cup of 0.95 L</source>
        <translation>Counted in a cup of 0.95 L</translation>
    </message>
    <message>
        <source>Processing score, on 4.75 mm</source>
        <translation>Processing score, on 4.75 mm</translation>
    </message>
    <message>
        <source>Fresh</source>
        <translation>Fresh</translation>
    </message>
    <message>
        <source>Fermented</source>
        <translation>Fermented</translation>
    </message>
    <message>
        <source>How</source>
        <translation>How</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Crop</translation>
    </message>
    <message>
        <source>Whole and half kernels</source>
        <translation>Whole and half kernels</translation>
    </message>
    <message>
        <source>Dried sample</source>
        <translation>Dried sample</translation>
    </message>
    <message>
        <source>Its starch</source>
        <translation>Its starch</translation>
    </message>
    <message>
        <source>Stays on 4.75 mm</source>
        <translation>Stays on 4.75 mm</translation>
    </message>
    <message>
        <source>Starch of that</source>
        <translation>Starch of that</translation>
    </message>
    <message>
        <source>Record the kernels</source>
        <translation>Record the kernels</translation>
    </message>
    <message>
        <source>This cup: %1. Count several loads.</source>
        <translation>This cup: %1. Count several loads.</translation>
    </message>
    <message>
        <source>Weigh the dried sample, sieve it on 4.75 mm, and weigh what stays.</source>
        <translation>Weigh the dried sample, sieve it on 4.75 mm, and weigh what stays.</translation>
    </message>
    <message>
        <source>Score %1 of the starch: %2.</source>
        <translation>Score %1 of the starch: %2.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::LinesPanel</name>
    <message>
        <source>Caution</source>
        <translation>Caution</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::SamplesPage</name>
    <message>
        <source>Order</source>
        <translation>Order</translation>
    </message>
    <message>
        <source>Nothing is weighed here.</source>
        <translation>Nothing is weighed here.</translation>
    </message>
    <message>
        <source>Dry matter, chop, kernels, the cut, a visit to a field, their order</source>
        <translation>Dry matter, chop, kernels, the cut, a visit to a field, their order</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Field</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Dry</translation>
    </message>
    <message>
        <source>Chop</source>
        <translation>Chop</translation>
    </message>
    <message>
        <source>Kernels</source>
        <translation>Kernels</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Cut</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visit</translation>
    </message>
    <message>
        <source>What the last sample changed</source>
        <translation>What the last sample changed</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Dry matter</translation>
    </message>
    <message>
        <source>The harvester</source>
        <translation>The harvester</translation>
    </message>
    <message>
        <source>Standing fields</source>
        <translation>Standing fields</translation>
    </message>
    <message>
        <source>any, or none named</source>
        <translation>any, or none named</translation>
    </message>
    <message>
        <source>The sample is not recorded: %1</source>
        <translation>The sample is not recorded: %1</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>The next field of the form; at the last one record</source>
        <translation>The next field of the form; at the last one record</translation>
    </message>
    <message>
        <source>What the samples say</source>
        <translation>What the samples say</translation>
    </message>
    <message>
        <source>What is entered</source>
        <translation>What is entered</translation>
    </message>
    <message>
        <source>Take the weight from the scale</source>
        <translation>Take the weight from the scale</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::ScaleDialog</name>
    <message>
        <source>A scale on a wire</source>
        <translation>A scale on a wire</translation>
    </message>
    <message>
        <source>Device, or host and port</source>
        <translation>Device, or host and port</translation>
    </message>
    <message>
        <source>It writes</source>
        <translation>It writes</translation>
    </message>
    <message>
        <source>Baud</source>
        <translation>Baud</translation>
    </message>
    <message>
        <source>Characters</source>
        <translation>Characters</translation>
    </message>
    <message>
        <source>Listen to it</source>
        <translation>Listen to it</translation>
    </message>
    <message>
        <source>Say where it is, as /dev/ttyUSB0 or 127.0.0.1:4001.</source>
        <translation>Say where it is, as /dev/ttyUSB0 or 127.0.0.1:4001.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::ScaleRow</name>
    <message>
        <source>Scale …</source>
        <translation>Scale …</translation>
    </message>
    <message>
        <source>Choose a scale on a wire</source>
        <translation>Choose a scale on a wire</translation>
    </message>
    <message>
        <source>Take it (F8)</source>
        <translation>Take it (F8)</translation>
    </message>
    <message>
        <source>Take the weight into the field in hand</source>
        <translation>Take the weight into the field in hand</translation>
    </message>
    <message>
        <source>%1, stands still</source>
        <translation>%1, stands still</translation>
    </message>
    <message>
        <source>%1, moves</source>
        <translation>%1, moves</translation>
    </message>
    <message>
        <source>nothing heard yet</source>
        <translation>nothing heard yet</translation>
    </message>
    <message>
        <source>no scale on a wire</source>
        <translation>no scale on a wire</translation>
    </message>
    <message>
        <source>The scale: %1</source>
        <translation>The scale: %1</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::SettingForm</name>
    <message>
        <source>No processor</source>
        <translation>No processor</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rolls</translation>
    </message>
    <message>
        <source>Rolls for a long cut</source>
        <translation>Rolls for a long cut</translation>
    </message>
    <message>
        <source>Length of cut</source>
        <translation>Length of cut</translation>
    </message>
    <message>
        <source>Gap of the rolls</source>
        <translation>Gap of the rolls</translation>
    </message>
    <message>
        <source>Stubble</source>
        <translation>Stubble</translation>
    </message>
    <message>
        <source>Processor</source>
        <translation>Processor</translation>
    </message>
    <message>
        <source>Record the setting</source>
        <translation>Record the setting</translation>
    </message>
    <message>
        <source>give a length of cut, a gap or the stubble</source>
        <translation>give a length of cut, a gap or the stubble</translation>
    </message>
    <message>
        <source>What is left at nothing stays as it was. Stubble of 15 to 20 cm is common practice.</source>
        <translation>What is left at nothing stays as it was. Stubble of 15 to 20 cm is common practice.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::SieveForm</name>
    <message>
        <source>What it should be …</source>
        <translation>What it should be …</translation>
    </message>
    <message>
        <source>19, 8, 4 mm and pan</source>
        <translation>19, 8, 4 mm and pan</translation>
    </message>
    <message>
        <source>19, 8, 1.18 mm and pan</source>
        <translation>19, 8, 1.18 mm and pan</translation>
    </message>
    <message>
        <source>Five screens and pan</source>
        <translation>Five screens and pan</translation>
    </message>
    <message>
        <source>Other sieves</source>
        <translation>Other sieves</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Weights</translation>
    </message>
    <message>
        <source>Percent</source>
        <translation>Percent</translation>
    </message>
    <message>
        <source>Sieves</source>
        <translation>Sieves</translation>
    </message>
    <message>
        <source>Openings in mm, widest first</source>
        <translation>Openings in mm, widest first</translation>
    </message>
    <message>
        <source>Given as</source>
        <translation>Given as</translation>
    </message>
    <message>
        <source>Sample before sieving</source>
        <translation>Sample before sieving</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>On %1</translation>
    </message>
    <message>
        <source>In the pan</source>
        <translation>In the pan</translation>
    </message>
    <message>
        <source>Length on the top sieve</source>
        <translation>Length on the top sieve</translation>
    </message>
    <message>
        <source>Wet from rain or dew</source>
        <translation>Wet from rain or dew</translation>
    </message>
    <message>
        <source>Record the sieve test</source>
        <translation>Record the sieve test</translation>
    </message>
    <message>
        <source>Give the openings from the widest down, as 19 8 4.</source>
        <translation>Give the openings from the widest down, as 19 8 4.</translation>
    </message>
    <message>
        <source>Together %1.</source>
        <translation>Together %1.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::VisitForm</name>
    <message>
        <source>Whole plants</source>
        <translation>Whole plants</translation>
    </message>
    <message>
        <source>Milk line from the crown</source>
        <translation>Milk line from the crown</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>Planted</translation>
    </message>
    <message>
        <source>Silked</source>
        <translation>Silked</translation>
    </message>
    <message>
        <source>Days of the hybrid</source>
        <translation>Days of the hybrid</translation>
    </message>
    <message>
        <source>Record the visit</source>
        <translation>Record the visit</translation>
    </message>
    <message>
        <source>choose the field above</source>
        <translation>choose the field above</translation>
    </message>
    <message>
        <source>What is left at nothing stays as it was seen before.</source>
        <translation>What is left at nothing stays as it was seen before.</translation>
    </message>
    <message>
        <source>Sample whole plants now: the line alone does not tell the dry matter.</source>
        <translation>Sample whole plants now: the line alone does not tell the dry matter.</translation>
    </message>
    <message>
        <source>Below a third: too early to sample.</source>
        <translation>Below a third: too early to sample.</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::AdviceLine</name>
    <message>
        <source>No advice now.</source>
        <translation>No advice now.</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>Do it</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Not now</translation>
    </message>
    <message>
        <source>Record that the advice is declined</source>
        <translation>Record that the advice is declined</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Advice</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>What if</translation>
    </message>
    <message>
        <source>Tractors and layer are tried, and nothing is recorded</source>
        <translation>Tractors and layer are tried, and nothing is recorded</translation>
    </message>
    <message>
        <source>Move the tractors so, and record the decision</source>
        <translation>Move the tractors so, and record the decision</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::AttentionPanel</name>
    <message>
        <source>Source: %1</source>
        <translation>Source: %1</translation>
    </message>
    <message>
        <source>Put away: %1</source>
        <translation>Put away: %1</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Put away</translation>
    </message>
    <message>
        <source>What matters now</source>
        <translation>What matters now</translation>
    </message>
    <message>
        <source>Nothing to say from what is known now.</source>
        <translation>Nothing to say from what is known now.</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::DensityGauge</name>
    <message>
        <source>No load yet.</source>
        <translation>No load yet.</translation>
    </message>
    <message>
        <source>Layer now</source>
        <translation>Layer now</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Today</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>%1: no density. %2</source>
        <translation>%1: no density. %2</translation>
    </message>
    <message>
        <source>%1: %2, 80 % band %3, %4 chance of reaching %5</source>
        <translation>%1: %2, 80 % band %3, %4 chance of reaching %5</translation>
    </message>
    <message>
        <source>%1
none yet</source>
        <translation>%1
none yet</translation>
    </message>
    <message>
        <source>%1
%2 (%3–%4)</source>
        <translation>%1
%2 (%3–%4)</translation>
    </message>
    <message>
        <source>%1 chance of %2</source>
        <translation>%1 chance of %2</translation>
    </message>
    <message>
        <source>Show the working</source>
        <translation>Show the working</translation>
    </message>
    <message>
        <source>Packed density</source>
        <translation>Packed density</translation>
    </message>
    <message>
        <source>%1: 80 % band %2</source>
        <translation>%1: 80 % band %2</translation>
    </message>
    <message>
        <source>as it lies now %1 (%2–%3)</source>
        <translation>as it lies now %1 (%2–%3)</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::DistributionView</name>
    <message>
        <source>dry-matter density, %1</source>
        <translation>dry-matter density, %1</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>target %1</translation>
    </message>
    <message>
        <source>porosity asked %1</source>
        <translation>porosity asked %1</translation>
    </message>
    <message>
        <source>saturated %1</source>
        <translation>saturated %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::FaceMapView</name>
    <message>
        <source>No core yet.</source>
        <translation>No core yet.</translation>
    </message>
    <message numerus="yes">
        <source>The face at %1 from the back wall, %n core(s). Point at a place.</source>
        <translation>
            <numerusform>The face at %1 from the back wall, %n core. Point at a place.</numerusform>
            <numerusform>The face at %1 from the back wall, %n cores. Point at a place.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, 80 % band %2</source>
        <translation>%1, 80 % band %2</translation>
    </message>
    <message>
        <source>%1 from the left wall, %2 up</source>
        <translation>%1 from the left wall, %2 up</translation>
    </message>
    <message>
        <source>%1: by the cores %2; predicted %3</source>
        <translation>%1: by the cores %2; predicted %3</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nothing</translation>
    </message>
    <message>
        <source>The opened face</source>
        <translation>The opened face</translation>
    </message>
    <message>
        <source>By the cores</source>
        <translation>By the cores</translation>
    </message>
    <message>
        <source>Half of its band, %1</source>
        <translation>Half of its band, %1</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>Predicted</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::MessageBar</name>
    <message>
        <source>Put away</source>
        <translation>Put away</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Messages</translation>
    </message>
    <message>
        <source>Error: %1</source>
        <translation>Error: %1</translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n times)</source>
        <comment>how often a message came</comment>
        <translation>
            <numerusform>%1 (%n time)</numerusform>
            <numerusform>%1 (%n times)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <comment>messages waiting behind the one shown</comment>
        <translation>
            <numerusform>%n more</numerusform>
            <numerusform>%n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::PadPlan</name>
    <message>
        <source>Packing</source>
        <translation>Packing</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>Spreading</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Away</translation>
    </message>
    <message>
        <source>Plan of the silo pad</source>
        <translation>Plan of the silo pad</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>tractor and share</comment>
        <translation>%1 at %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>none</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>zone and its tractors</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Put here: %1</source>
        <comment>zone</comment>
        <translation>Put here: %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::QuantitySpinBox</name>
    <message>
        <source>“%1” has two decimal signs: write one point or comma</source>
        <translation>“%1” has two decimal signs: write one point or comma</translation>
    </message>
    <message>
        <source>“%1” is not a number</source>
        <translation>“%1” is not a number</translation>
    </message>
    <message>
        <source>“%1” is outside %2</source>
        <translation>“%1” is outside %2</translation>
    </message>
    <message>
        <source>read as %1</source>
        <translation>read as %1</translation>
    </message>
    <message>
        <source>“%1” was not taken: still %2</source>
        <translation>“%1” was not taken: still %2</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::SectionView</name>
    <message>
        <source>No load yet.</source>
        <translation>No load yet.</translation>
    </message>
    <message>
        <source>No section. %1</source>
        <translation>No section. %1</translation>
    </message>
    <message numerus="yes">
        <source>The crop as it lies, %n layer(s). Point at a place.</source>
        <translation>
            <numerusform>The crop as it lies, %n layer. Point at a place.</numerusform>
            <numerusform>The crop as it lies, %n layers. Point at a place.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 from the back wall, %2 up</source>
        <translation>%1 from the back wall, %2 up</translation>
    </message>
    <message>
        <source>%1: no crop</source>
        <translation>%1: no crop</translation>
    </message>
    <message>
        <source>%1: layer %2, %3: %4, 80 % band %5</source>
        <translation>%1: layer %2, %3: %4, 80 % band %5</translation>
    </message>
    <message>
        <source>Section of the silo</source>
        <translation>Section of the silo</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>target %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::StepField</name>
    <message>
        <source>%1: less</source>
        <translation>%1: less</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: more</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::SwitchRow</name>
    <message>
        <source>%1: %2</source>
        <comment>what is switched and to what</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: more</source>
        <comment>what is switched</comment>
        <translation>%1: more</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::TractorChip</name>
    <message>
        <source>%1 at %2, %3</source>
        <translation>%1 at %2, %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <comment>mass and time in the zone</comment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 …</source>
        <comment>a move that is being saved</comment>
        <translation>%1 …</translation>
    </message>
    <message>
        <source>Share of its time that %1 packs</source>
        <translation>Share of its time that %1 packs</translation>
    </message>
    <message>
        <source>Drag to another zone, or click and then click the zone; arrow keys move too; hold for its mass</source>
        <translation>Drag to another zone, or click and then click the zone; arrow keys move too; hold for its mass</translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>a mass known by its class alone</comment>
        <translation>about %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::TruckBoard</name>
    <message>
        <source>Trucks</source>
        <translation>Trucks</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Undo: %1</translation>
    </message>
    <message>
        <source>Nothing to undo</source>
        <translation>Nothing to undo</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::TruckButton</name>
    <message>
        <source>Details of a load of %1</source>
        <translation>Details of a load of %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::TruckFace</name>
    <message>
        <source>Log a load of %1</source>
        <translation>Log a load of %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>usual load and what is being saved</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no usual load known</source>
        <translation>no usual load known</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>usually %1</translation>
    </message>
    <message>
        <source>saving %1</source>
        <comment>loads that wait for their commit</comment>
        <translation>saving %1</translation>
    </message>
</context>
<context>
    <name>PlanNumbers</name>
    <message>
        <source>Dry matter</source>
        <translation>Dry matter</translation>
    </message>
    <message>
        <source>Layer as spread</source>
        <translation>Layer as spread</translation>
    </message>
    <message>
        <source>Working day</source>
        <translation>Working day</translation>
    </message>
    <message>
        <source>Harvester while it chops</source>
        <translation>Harvester while it chops</translation>
    </message>
    <message>
        <source>Part of the time that it chops</source>
        <translation>Part of the time that it chops</translation>
    </message>
    <message>
        <source>Load of a truck</source>
        <translation>Load of a truck</translation>
    </message>
    <message>
        <source>Speed on the road</source>
        <translation>Speed on the road</translation>
    </message>
    <message>
        <source>Tipping</source>
        <translation>Tipping</translation>
    </message>
    <message>
        <source>Weighing, gates, turning</source>
        <translation>Weighing, gates, turning</translation>
    </message>
    <message>
        <source>What is spread in an hour</source>
        <translation>What is spread in an hour</translation>
    </message>
    <message>
        <source>Least density</source>
        <translation>Least density</translation>
    </message>
    <message>
        <source>A tonne of dry matter</source>
        <translation>A tonne of dry matter</translation>
    </message>
    <message>
        <source>A litre of fuel</source>
        <translation>A litre of fuel</translation>
    </message>
    <message>
        <source>A driver&apos;s hour</source>
        <translation>A driver&apos;s hour</translation>
    </message>
    <message>
        <source>The harvester&apos;s hour</source>
        <translation>The harvester&apos;s hour</translation>
    </message>
    <message>
        <source>A truck&apos;s hour, driver included</source>
        <translation>A truck&apos;s hour, driver included</translation>
    </message>
    <message>
        <source>The farm&apos;s own loss</source>
        <translation>The farm&apos;s own loss</translation>
    </message>
    <message>
        <source>at a density of</source>
        <translation>at a density of</translation>
    </message>
    <message>
        <source>Width of a sheet</source>
        <translation>Width of a sheet</translation>
    </message>
    <message>
        <source>Overlap of sheets</source>
        <translation>Overlap of sheets</translation>
    </message>
    <message>
        <source>Lap over walls and edges</source>
        <translation>Lap over walls and edges</translation>
    </message>
    <message>
        <source>Tyres a square metre</source>
        <translation>Tyres a square metre</translation>
    </message>
    <message>
        <source>Litres of treatment a square metre</source>
        <translation>Litres of treatment a square metre</translation>
    </message>
    <message>
        <source>People in the crew</source>
        <translation>People in the crew</translation>
    </message>
    <message>
        <source>Minutes of one person a square metre</source>
        <translation>Minutes of one person a square metre</translation>
    </message>
    <message>
        <source>The herd&apos;s dry matter a day</source>
        <translation>The herd&apos;s dry matter a day</translation>
    </message>
    <message>
        <source>Face a day in summer, at least</source>
        <translation>Face a day in summer, at least</translation>
    </message>
    <message>
        <source>Face a day in winter, at least</source>
        <translation>Face a day in winter, at least</translation>
    </message>
    <message>
        <source>First month of summer</source>
        <translation>First month of summer</translation>
    </message>
    <message>
        <source>Last month of summer</source>
        <translation>Last month of summer</translation>
    </message>
    <message>
        <source>Days closed before opening</source>
        <translation>Days closed before opening</translation>
    </message>
    <message>
        <source>Crop on it</source>
        <translation>Crop on it</translation>
    </message>
    <message>
        <source>Road to the silo</source>
        <translation>Road to the silo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Width</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Length</translation>
    </message>
    <message>
        <source>Height in the middle when full</source>
        <translation>Height in the middle when full</translation>
    </message>
    <message>
        <source>Height of the walls</source>
        <translation>Height of the walls</translation>
    </message>
    <message>
        <source>Slope of the ramp, run for one of rise</source>
        <translation>Slope of the ramp, run for one of rise</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Mass</translation>
    </message>
    <message>
        <source>Part of the time that it packs</source>
        <translation>Part of the time that it packs</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>List price</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Paid</translation>
    </message>
    <message>
        <source>Years of life</source>
        <translation>Years of life</translation>
    </message>
    <message>
        <source>Hours a year</source>
        <translation>Hours a year</translation>
    </message>
    <message>
        <source>Interest a year</source>
        <translation>Interest a year</translation>
    </message>
    <message>
        <source>Power in kW</source>
        <translation>Power in kW</translation>
    </message>
    <message>
        <source>Load of the engine</source>
        <translation>Load of the engine</translation>
    </message>
    <message>
        <source>Repairs and tyres an hour</source>
        <translation>Repairs and tyres an hour</translation>
    </message>
</context>
<context>
    <name>PlanPresenter</name>
    <message numerus="yes">
        <source>%1: %n truck(s) keep the harvester busy there; with fixed times it would be %2.</source>
        <translation>
            <numerusform>%1: %n truck keeps the harvester busy there; with fixed times it would be %2.</numerusform>
            <numerusform>%1: %n trucks keep the harvester busy there; with fixed times it would be %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: no number of trucks keeps the harvester busy there.</source>
        <translation>%1: no number of trucks keeps the harvester busy there.</translation>
    </message>
    <message>
        <source>%1: if one truck breaks, %2 loads an hour come, and the harvester waits %3.</source>
        <translation>%1: if one truck breaks, %2 loads an hour come, and the harvester waits %3.</translation>
    </message>
    <message>
        <source>%1: the tractors pack %2 (%3) and pass %4 times over each layer.</source>
        <translation>%1: the tractors pack %2 (%3) and pass %4 times over each layer.</translation>
    </message>
    <message>
        <source>%1: density %2; the chance of the %3 target is %4.</source>
        <translation>%1: density %2; the chance of the %3 target is %4.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n truck(s)</source>
        <comment>tractors</comment>
        <translation>
            <numerusform>%1 and %n truck</numerusform>
            <numerusform>%1 and %n trucks</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 loads an hour; the harvester waits %3 of the day, a truck %4 min a load; %5 days of harvest.</source>
        <comment>field, band, band, band, days</comment>
        <translation>%1: %2 loads an hour; the harvester waits %3 of the day, a truck %4 min a load; %5 days of harvest.</translation>
    </message>
    <message>
        <source>Planned: %1. The hour costs %2; expected loss %3 at %4; %5 are left of a tonne of dry matter.</source>
        <translation>Planned: %1. The hour costs %2; expected loss %3 at %4; %5 are left of a tonne of dry matter.</translation>
    </message>
    <message numerus="yes">
        <source>No other of %n fleet(s) leaves more.</source>
        <translation>
            <numerusform>No other of %n fleet leaves more.</numerusform>
            <numerusform>No other of %n fleets leaves more.</numerusform>
        </translation>
    </message>
    <message>
        <source>The best of those compared: %1. The hour costs %2; expected loss %3 at %4; %5 are left.</source>
        <translation>The best of those compared: %1. The hour costs %2; expected loss %3 at %4; %5 are left.</translation>
    </message>
    <message>
        <source>%1 costs %2, which is %3 of the crop&apos;s dry matter or %4 of density; it brings %5.</source>
        <translation>%1 costs %2, which is %3 of the crop&apos;s dry matter or %4 of density; it brings %5.</translation>
    </message>
    <message>
        <source>It pays from %1 on.</source>
        <translation>It pays from %1 on.</translation>
    </message>
    <message>
        <source>It does not pay at any delivery.</source>
        <translation>It does not pay at any delivery.</translation>
    </message>
    <message>
        <source>not reckoned</source>
        <translation>not reckoned</translation>
    </message>
    <message>
        <source>%1 chance of room</source>
        <translation>%1 chance of room</translation>
    </message>
    <message>
        <source>slowest: %1</source>
        <translation>slowest: %1</translation>
    </message>
    <message>
        <source>differs by field</source>
        <translation>differs by field</translation>
    </message>
    <message>
        <source>%1 a t DM left</source>
        <translation>%1 a t DM left</translation>
    </message>
    <message>
        <source>%1 of film</source>
        <translation>%1 of film</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 days</translation>
    </message>
    <message>
        <source>Does it fit?</source>
        <translation>Does it fit?</translation>
    </message>
    <message>
        <source>Does it flow?</source>
        <translation>Does it flow?</translation>
    </message>
    <message>
        <source>Does it pay?</source>
        <translation>Does it pay?</translation>
    </message>
    <message>
        <source>How is it sealed?</source>
        <translation>How is it sealed?</translation>
    </message>
    <message>
        <source>How is it fed?</source>
        <translation>How is it fed?</translation>
    </message>
    <message>
        <source>harvester</source>
        <translation>harvester</translation>
    </message>
    <message>
        <source>trucks</source>
        <translation>trucks</translation>
    </message>
    <message>
        <source>tipping</source>
        <translation>tipping</translation>
    </message>
    <message>
        <source>spreading</source>
        <translation>spreading</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>packing</translation>
    </message>
    <message>
        <source>km</source>
        <translation>km</translation>
    </message>
    <message>
        <source>mi</source>
        <translation>mi</translation>
    </message>
    <message numerus="yes">
        <source>%1 of crop stand on %n field(s); the chance that all of it finds room is %2.</source>
        <translation>
            <numerusform>%1 of crop stand on %n field; the chance that all of it finds room is %2.</numerusform>
            <numerusform>%1 of crop stand on %n fields; the chance that all of it finds room is %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 holds %3 (%4) at the density that this fleet reaches, %5.</source>
        <comment>silo, volume, mass, band of mass, density with band</comment>
        <translation>%1: %2 holds %3 (%4) at the density that this fleet reaches, %5.</translation>
    </message>
    <message>
        <source>%1 up to %2</source>
        <comment>volume, height</comment>
        <translation>%1 up to %2</translation>
    </message>
    <message>
        <source>%1 from %2 go into %3.</source>
        <comment>mass, field, silo</comment>
        <translation>%1 from %2 go into %3.</translation>
    </message>
    <message>
        <source>Left over: %1 (%2).</source>
        <translation>Left over: %1 (%2).</translation>
    </message>
    <message>
        <source>Nothing is left over.</source>
        <translation>Nothing is left over.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>silo and caution</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1 is full on %2. Cover it then, with %n sheet(s) of barrier film and as many of black-and-white sheet above, %3 each kind; %4 of side sheets; %5 tyres.</source>
        <comment>silo, day, area, area, count</comment>
        <translation>
            <numerusform>%1 is full on %2. Cover it then, with %n sheet of barrier film and one of black-and-white sheet above, %3 each kind; %4 of side sheets; %5 tyres.</numerusform>
            <numerusform>%1 is full on %2. Cover it then, with %n sheets of barrier film and as many of black-and-white sheet above, %3 each kind; %4 of side sheets; %5 tyres.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 of treatment on the surface.</source>
        <comment>silo, litres</comment>
        <translation>%1: %2 of treatment on the surface.</translation>
    </message>
    <message>
        <source>%1: the crew of %2 is at it for %3. A day&apos;s wait costs about %4, %5.</source>
        <comment>silo, people, time, mass, money</comment>
        <translation>%1: the crew of %2 is at it for %3. A day&apos;s wait costs about %4, %5.</translation>
    </message>
    <message>
        <source>%1: %2, feed for %3 days; opened on %4, and the next must be open by %5.</source>
        <comment>silo, mass, days, day, day</comment>
        <translation>%1: %2, feed for %3 days; opened on %4, and the next must be open by %5.</translation>
    </message>
    <message>
        <source>%1: the herd moves the face of %2 by %3 a day. At this height it may be %4 wide in summer and %5 in winter.</source>
        <comment>silo, area, length, width, width</comment>
        <translation>%1: the herd moves the face of %2 by %3 a day. At this height it may be %4 wide in summer and %5 in winter.</translation>
    </message>
    <message numerus="yes">
        <source>%1: on %n day(s) of feed that is too little for the season: the face heats.</source>
        <translation>
            <numerusform>%1: on %n day of feed that is too little for the season: the face heats.</numerusform>
            <numerusform>%1: on %n days of feed that is too little for the season: the face heats.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: silo gas until %2 at the earliest, 21 days after the last load.</source>
        <translation>%1: silo gas until %2 at the earliest, 21 days after the last load.</translation>
    </message>
    <message>
        <source>%1: %2 of effluent run out: have room for it.</source>
        <translation>%1: %2 of effluent run out: have room for it.</translation>
    </message>
    <message numerus="yes">
        <source>On %n day(s) no silo is ripe to be opened.</source>
        <translation>
            <numerusform>On %n day no silo is ripe to be opened.</numerusform>
            <numerusform>On %n days no silo is ripe to be opened.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::ChainBand</name>
    <message>
        <source>%1: each link alone could carry: %2. The slowest is %3; %4 come in with fixed times.</source>
        <comment>field, links, link, rate</comment>
        <translation>%1: each link alone could carry: %2. The slowest is %3; %4 come in with fixed times.</translation>
    </message>
    <message>
        <source>The chain from the field to the silo</source>
        <translation>The chain from the field to the silo</translation>
    </message>
    <message>
        <source>%1: the channel is as wide as each link could carry; the crop fills it</source>
        <translation>%1: the channel is as wide as each link could carry; the crop fills it</translation>
    </message>
    <message>
        <source>slowest</source>
        <translation>slowest</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::Decisions</name>
    <message>
        <source>%1, packs %2 of the time</source>
        <translation>%1, packs %2 of the time</translation>
    </message>
    <message>
        <source>%1, %2 of road</source>
        <translation>%1, %2 of road</translation>
    </message>
    <message>
        <source>%1 by %2, %3 high</source>
        <translation>%1 by %2, %3 high</translation>
    </message>
    <message>
        <source>%1 counts</source>
        <translation>%1 counts</translation>
    </message>
    <message>
        <source>%1 is left out</source>
        <translation>%1 is left out</translation>
    </message>
    <message>
        <source>%1; one has to stay</source>
        <translation>%1; one has to stay</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Change %1</translation>
    </message>
    <message>
        <source>Tractors that pack</source>
        <translation>Tractors that pack</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Fields</translation>
    </message>
    <message>
        <source>Silos</source>
        <translation>Silos</translation>
    </message>
    <message>
        <source>Trucks</source>
        <translation>Trucks</translation>
    </message>
    <message>
        <source>What is decided</source>
        <translation>What is decided</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::PlanPage</name>
    <message>
        <source>Try another</source>
        <translation>Try another</translation>
    </message>
    <message>
        <source>A copy to change</source>
        <translation>A copy to change</translation>
    </message>
    <message>
        <source>One truck fewer</source>
        <translation>One truck fewer</translation>
    </message>
    <message>
        <source>Two more trucks</source>
        <translation>Two more trucks</translation>
    </message>
    <message>
        <source>Without the lightest tractor</source>
        <translation>Without the lightest tractor</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Drop it</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Back</translation>
    </message>
    <message>
        <source>Crop and work</source>
        <translation>Crop and work</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Prices</translation>
    </message>
    <message>
        <source>Prices, in the farm&apos;s own currency</source>
        <translation>Prices, in the farm&apos;s own currency</translation>
    </message>
    <message>
        <source>Sealing</source>
        <translation>Sealing</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Feeding</translation>
    </message>
    <message>
        <source>The step is not recorded: %1</source>
        <translation>The step is not recorded: %1</translation>
    </message>
    <message>
        <source>Surface treatment</source>
        <translation>Surface treatment</translation>
    </message>
    <message>
        <source>Reckoning …</source>
        <translation>Reckoning …</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Side by side</translation>
    </message>
    <message numerus="yes">
        <source>%n plan(s)</source>
        <translation>
            <numerusform>%n plan</numerusform>
            <numerusform>%n plans</numerusform>
        </translation>
    </message>
    <message>
        <source>Plans side by side</source>
        <translation>Plans side by side</translation>
    </message>
    <message>
        <source>side sheets</source>
        <translation>side sheets</translation>
    </message>
    <message>
        <source>surface treatment</source>
        <translation>surface treatment</translation>
    </message>
    <message>
        <source>barrier film</source>
        <translation>barrier film</translation>
    </message>
    <message>
        <source>black-and-white sheet</source>
        <translation>black-and-white sheet</translation>
    </message>
    <message>
        <source>weights</source>
        <translation>weights</translation>
    </message>
    <message>
        <source>edges sealed</source>
        <translation>edges sealed</translation>
    </message>
    <message>
        <source>%1: %2, by %3</source>
        <comment>silo, step, day</comment>
        <translation>%1: %2, by %3</translation>
    </message>
    <message numerus="yes">
        <source>%n tyre(s)</source>
        <translation>
            <numerusform>%n tyre</numerusform>
            <numerusform>%n tyres</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 done, last on %2 at %3</source>
        <comment>part, day, time</comment>
        <translation>%1 done, last on %2 at %3</translation>
    </message>
    <message>
        <source>The five questions: fits, flows, pays, seals, feeds</source>
        <translation>The five questions: fits, flows, pays, seals, feeds</translation>
    </message>
    <message>
        <source>The plans side by side</source>
        <translation>The plans side by side</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <translation>Ctrl+N</translation>
    </message>
    <message>
        <source>Try another plan beside this one</source>
        <translation>Try another plan beside this one</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>Take the last change of the plans back</source>
        <translation>Take the last change of the plans back</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Enter</translation>
    </message>
    <message>
        <source>Adopt this plan as the season&apos;s</source>
        <translation>Adopt this plan as the season&apos;s</translation>
    </message>
    <message>
        <source>The plan is not adopted: %1</source>
        <translation>The plan is not adopted: %1</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>Step by step: a touch records when it was done</source>
        <translation>Step by step: a touch records when it was done</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>From</source>
        <translation>From</translation>
    </message>
    <message>
        <source>A copy</source>
        <translation>A copy</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::PlanSheet</name>
    <message>
        <source>Take it over</source>
        <translation>Take it over</translation>
    </message>
    <message>
        <source>Name of the plan</source>
        <translation>Name of the plan</translation>
    </message>
    <message>
        <source>A plan has a name.</source>
        <translation>A plan has a name.</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::ScenarioCards</name>
    <message>
        <source>%1 come in, %2 days of harvest</source>
        <comment>rate, days</comment>
        <translation>%1 come in, %2 days of harvest</translation>
    </message>
    <message>
        <source>Density %1</source>
        <comment>median and band</comment>
        <translation>Density %1</translation>
    </message>
    <message>
        <source>Chance of the target %1</source>
        <translation>Chance of the target %1</translation>
    </message>
    <message>
        <source>Chance of room %1, left over %2</source>
        <comment>chance, mass</comment>
        <translation>Chance of room %1, left over %2</translation>
    </message>
    <message>
        <source>Expected loss %1</source>
        <translation>Expected loss %1</translation>
    </message>
    <message>
        <source>The hour costs %1; %2 are left of a t DM</source>
        <comment>cost, money</comment>
        <translation>The hour costs %1; %2 are left of a t DM</translation>
    </message>
    <message>
        <source>Plans side by side</source>
        <translation>Plans side by side</translation>
    </message>
    <message>
        <source>This is the season&apos;s plan.</source>
        <translation>This is the season&apos;s plan.</translation>
    </message>
    <message>
        <source>Against %1:</source>
        <translation>Against %1:</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>button, plan</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Look at it</translation>
    </message>
    <message>
        <source>Adopt as the season&apos;s plan</source>
        <translation>Adopt as the season&apos;s plan</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::SealingPanel</name>
    <message>
        <source>Done now</source>
        <translation>Done now</translation>
    </message>
    <message>
        <source>Done now: %1</source>
        <translation>Done now: %1</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::SiloDrawing</name>
    <message>
        <source>%1, a pile of %2 by %3 and %4 high; all its sides rise 1:%5.</source>
        <comment>name, width, length, height, run</comment>
        <translation>%1, a pile of %2 by %3 and %4 high; all its sides rise 1:%5.</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2 wide and %3 long, walls %4, %5 high in the middle; %n ramp(s) of 1:%6.</source>
        <comment>name, width, length, height, height, run</comment>
        <translation>
            <numerusform>%1, %2 wide and %3 long, walls %4, %5 high in the middle; %n ramp of 1:%6.</numerusform>
            <numerusform>%1, %2 wide and %3 long, walls %4, %5 high in the middle; %n ramps of 1:%6.</numerusform>
        </translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Caution: %1</translation>
    </message>
    <message>
        <source>Drawing of the silo</source>
        <translation>Drawing of the silo</translation>
    </message>
    <message>
        <source>from the side and from above, to scale; ramp 1:%1</source>
        <comment>its run</comment>
        <translation>from the side and from above, to scale; ramp 1:%1</translation>
    </message>
    <message>
        <source>across, larger</source>
        <translation>across, larger</translation>
    </message>
    <message>
        <source>%1 long</source>
        <translation>%1 long</translation>
    </message>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 wide, %2 high</translation>
    </message>
</context>
<context>
    <name>RealDay</name>
    <message>
        <source>%1 to %2</source>
        <comment>at least and at most</comment>
        <translation>%1 to %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n load(s)</source>
        <translation>
            <numerusform>%1, %n load</numerusform>
            <numerusform>%1, %n loads</numerusform>
        </translation>
    </message>
    <message>
        <source>a tractor that is not known</source>
        <translation>a tractor that is not known</translation>
    </message>
    <message>
        <source>Three passes or more for certain on %1 % of the layer, fewer for certain on %2 %, no tyre on %3 %; on %4 % the positions do not tell.</source>
        <translation>Three passes or more for certain on %1 % of the layer, fewer for certain on %2 %, no tyre on %3 %; on %4 % the positions do not tell.</translation>
    </message>
    <message>
        <source>too few</source>
        <translation>too few</translation>
    </message>
    <message>
        <source>as advised</source>
        <translation>as advised</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>not told</translation>
    </message>
    <message>
        <source>%1: %2 positions, %3 of them precise enough for wheels, %4 outside the silo</source>
        <translation>%1: %2 positions, %3 of them precise enough for wheels, %4 outside the silo</translation>
    </message>
    <message numerus="yes">
        <source>%n of them left out: damaged, or impossible for a tractor</source>
        <translation>
            <numerusform>%n of them left out: damaged, or impossible for a tractor</numerusform>
            <numerusform>%n of them left out: damaged, or impossible for a tractor</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing that the tracks can tell.</source>
        <translation>Nothing that the tracks can tell.</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Layer %1</source>
        <translation>Layer %1</translation>
    </message>
    <message numerus="yes">
        <source>%n position(s) of later days are not looked at here</source>
        <translation>
            <numerusform>%n position of later days is not looked at here</numerusform>
            <numerusform>%n positions of later days are not looked at here</numerusform>
        </translation>
    </message>
    <message>
        <source>Layer %1, under way</source>
        <translation>Layer %1, under way</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::BandsView</name>
    <message>
        <source>Simulation and regression</source>
        <translation>Simulation and regression</translation>
    </message>
    <message>
        <source>simulation</source>
        <translation>simulation</translation>
    </message>
    <message>
        <source>regression</source>
        <translation>regression</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::CoverageView</name>
    <message>
        <source>No track is laid.</source>
        <translation>No track is laid.</translation>
    </message>
    <message>
        <source>Passes over the layer</source>
        <translation>Passes over the layer</translation>
    </message>
    <message>
        <source>three passes or more, for certain</source>
        <translation>three passes or more, for certain</translation>
    </message>
    <message>
        <source>the positions do not tell</source>
        <translation>the positions do not tell</translation>
    </message>
    <message>
        <source>fewer than three, for certain</source>
        <translation>fewer than three, for certain</translation>
    </message>
    <message>
        <source>no tyre</source>
        <translation>no tyre</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PlaceForm</name>
    <message>
        <source>Where this silo lies is not recorded: the corner of back wall and left wall, seen from the back wall, and the direction of the left wall from there, in degrees from north.</source>
        <translation>Where this silo lies is not recorded: the corner of back wall and left wall, seen from the back wall, and the direction of the left wall from there, in degrees from north.</translation>
    </message>
    <message>
        <source>Latitude</source>
        <translation>Latitude</translation>
    </message>
    <message>
        <source>Longitude</source>
        <translation>Longitude</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>Direction</translation>
    </message>
    <message>
        <source>Record the place</source>
        <translation>Record the place</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::RealDayView</name>
    <message>
        <source>Reading the tracks: %1 %</source>
        <translation>Reading the tracks: %1 %</translation>
    </message>
    <message>
        <source>Reading the tracks</source>
        <translation>Reading the tracks</translation>
    </message>
    <message>
        <source>The day is being replayed.</source>
        <translation>The day is being replayed.</translation>
    </message>
    <message>
        <source>No crop was tipped here yet: there is no day to look back on.</source>
        <translation>No crop was tipped here yet: there is no day to look back on.</translation>
    </message>
    <message>
        <source>No track of this day is attached: choose the tractor and attach its file.</source>
        <translation>No track of this day is attached: choose the tractor and attach its file.</translation>
    </message>
    <message>
        <source>A track can be laid once it is recorded where the silo lies.</source>
        <translation>A track can be laid once it is recorded where the silo lies.</translation>
    </message>
    <message>
        <source>No track is chosen.</source>
        <translation>No track is chosen.</translation>
    </message>
    <message>
        <source>No track lies on a layer of this silo: check where it lies, its direction and the clocks.</source>
        <translation>No track lies on a layer of this silo: check where it lies, its direction and the clocks.</translation>
    </message>
    <message>
        <source>Layer %1. %2</source>
        <translation>Layer %1. %2</translation>
    </message>
    <message>
        <source>Full bars: the field regression; hatched: the simulation of every wheel pass; dashed: the density that is wanted. The simulation was fitted to the regression: it is a second opinion on how the passes were spread, no second measurement.</source>
        <translation>Full bars: the field regression; hatched: the simulation of every wheel pass; dashed: the density that is wanted. The simulation was fitted to the regression: it is a second opinion on how the passes were spread, no second measurement.</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Reading %1</translation>
    </message>
    <message>
        <source>Attach a track</source>
        <translation>Attach a track</translation>
    </message>
    <message>
        <source>Tracks (*.gpx *.nmea *.txt *.log);;All files (*)</source>
        <translation>Tracks (*.gpx *.nmea *.txt *.log);;All files (*)</translation>
    </message>
    <message>
        <source>As it was: %1</source>
        <translation>As it was: %1</translation>
    </message>
    <message>
        <source>A lesson of this day</source>
        <translation>A lesson of this day</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Day</translation>
    </message>
    <message>
        <source>Tracks of the day</source>
        <translation>Tracks of the day</translation>
    </message>
    <message>
        <source>Tractor of the track</source>
        <translation>Tractor of the track</translation>
    </message>
    <message>
        <source>Attach its track</source>
        <translation>Attach its track</translation>
    </message>
    <message>
        <source>Passes over each layer</source>
        <translation>Passes over each layer</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Layer</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Passes</translation>
    </message>
    <message>
        <source>Three or more</source>
        <translation>Three or more</translation>
    </message>
    <message>
        <source>No tyre</source>
        <translation>No tyre</translation>
    </message>
    <message>
        <source>Rule: three</source>
        <translation>Rule: three</translation>
    </message>
    <message>
        <source>What went wrong, and where</source>
        <translation>What went wrong, and where</translation>
    </message>
    <message>
        <source>The tracks</source>
        <translation>The tracks</translation>
    </message>
    <message>
        <source>Simulation beside the regression: %1, with the 80 % band</source>
        <translation>Simulation beside the regression: %1, with the 80 % band</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::OrderPanel</name>
    <message>
        <source>Cut in a day</source>
        <translation>Cut in a day</translation>
    </message>
    <message>
        <source>Days a change of hybrid costs</source>
        <translation>Days a change of hybrid costs</translation>
    </message>
    <message>
        <source>Days of rain from today on</source>
        <translation>Days of rain from today on</translation>
    </message>
    <message>
        <source>%1 will yield</source>
        <comment>field</comment>
        <translation>%1 will yield</translation>
    </message>
    <message>
        <source>Order of the fields</source>
        <translation>Order of the fields</translation>
    </message>
    <message>
        <source>No whole plants of a field were sampled yet.</source>
        <translation>No whole plants of a field were sampled yet.</translation>
    </message>
    <message>
        <source>Give what is cut in a day and what each field will yield.</source>
        <translation>Give what is cut in a day and what each field will yield.</translation>
    </message>
    <message>
        <source>%1. %2: %3 to %4, %5</source>
        <comment>place, field, first and last day, dry matter</comment>
        <translation>%1. %2: %3 to %4, %5</translation>
    </message>
    <message>
        <source>At the silo %1 by mass; %2 cut outside the goal.</source>
        <comment>dry matter, mass</comment>
        <translation>At the silo %1 by mass; %2 cut outside the goal.</translation>
    </message>
    <message>
        <source>More than eight fields: not every order was tried.</source>
        <translation>More than eight fields: not every order was tried.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::RangesDialog</name>
    <message>
        <source>What the chop should be</source>
        <translation>What the chop should be</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Crop</translation>
    </message>
    <message>
        <source>Processor</source>
        <translation>Processor</translation>
    </message>
    <message>
        <source>Maize</source>
        <translation>Maize</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Grass</translation>
    </message>
    <message>
        <source>Lucerne</source>
        <translation>Lucerne</translation>
    </message>
    <message>
        <source>No processor</source>
        <translation>No processor</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rolls</translation>
    </message>
    <message>
        <source>Rolls for a long cut</source>
        <translation>Rolls for a long cut</translation>
    </message>
    <message>
        <source>Below %1</source>
        <translation>Below %1</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>On %1</translation>
    </message>
    <message>
        <source>%1, at least</source>
        <translation>%1, at least</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, at most</translation>
    </message>
    <message>
        <source>Record the ranges</source>
        <translation>Record the ranges</translation>
    </message>
</context>
</TS>
