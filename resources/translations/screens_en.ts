<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
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
        <source>delivery, last 60 min</source>
        <translation>delivery, last 60 min</translation>
    </message>
    <message>
        <source>packing capacity</source>
        <translation>packing capacity</translation>
    </message>
    <message>
        <source>density, median</source>
        <translation>density, median</translation>
    </message>
    <message>
        <source>its 80 % band</source>
        <translation>its 80 % band</translation>
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
        <source>dry-matter sample</source>
        <translation>dry-matter sample</translation>
    </message>
    <message>
        <source>delivery and capacity, %1</source>
        <translation>delivery and capacity, %1</translation>
    </message>
    <message>
        <source>density, %1</source>
        <translation>density, %1</translation>
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
        <source>Record that the advice is followed</source>
        <translation>Record that the advice is followed</translation>
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
</context>
<context>
    <name>treadwell::widgets::CautionPanel</name>
    <message>
        <source>Cautions</source>
        <translation>Cautions</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Source: %1</translation>
    </message>
    <message>
        <source>No cautions from what is known now.</source>
        <translation>No cautions from what is known now.</translation>
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
        <source>80 % band %1</source>
        <translation>80 % band %1</translation>
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
        <source>Drag to another zone, or click and then click the zone; arrow keys move too</source>
        <translation>Drag to another zone, or click and then click the zone; arrow keys move too</translation>
    </message>
    <message>
        <source>Less of its time packing: %1</source>
        <translation>Less of its time packing: %1</translation>
    </message>
    <message>
        <source>More of its time packing: %1</source>
        <translation>More of its time packing: %1</translation>
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
</TS>
