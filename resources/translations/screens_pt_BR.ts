<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_BR" sourcelanguage="en">
<context>
    <name>DisplayUnits</name>
    <message>
        <source>DM</source>
        <extracomment>dry matter, as in &quot;kg DM/m³&quot;</extracomment>
        <translation>MS</translation>
    </message>
    <message>
        <source>ton</source>
        <extracomment>the short ton of 2,000 lb, as in &quot;ton/h&quot;; never to be taken for the tonne</extracomment>
        <translation>ton curta</translation>
    </message>
    <message>
        <source>per</source>
        <extracomment>between two units, as in &quot;kg per t/h&quot;</extracomment>
        <translation>por</translation>
    </message>
    <message>
        <source>under %1</source>
        <comment>a chance</comment>
        <translation>menos de %1</translation>
    </message>
    <message>
        <source>over %1</source>
        <comment>a chance</comment>
        <translation>mais de %1</translation>
    </message>
</context>
<context>
    <name>treadwell::plots::Timeline</name>
    <message>
        <source>Timeline of the filling</source>
        <translation>Linha do tempo do enchimento</translation>
    </message>
    <message numerus="yes">
        <source>%1 to %2: %n load(s), %3.</source>
        <comment>from, to, mass</comment>
        <translation>
            <numerusform>Das %1 às %2: %n carga, %3.</numerusform>
            <numerusform>Das %1 às %2: %n cargas, %3.</numerusform>
        </translation>
    </message>
    <message>
        <source>Delivery in the last 60 minutes %1.</source>
        <translation>Entrega nos últimos 60 minutos %1.</translation>
    </message>
    <message>
        <source>Packing capacity %1.</source>
        <translation>Capacidade de compactação %1.</translation>
    </message>
    <message>
        <source>Density %1, 80 % band %2.</source>
        <translation>Densidade %1, faixa de 80 % %2.</translation>
    </message>
    <message>
        <source>Target %1.</source>
        <translation>Meta %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s).</source>
        <translation>
            <numerusform>%n amostra.</numerusform>
            <numerusform>%n amostras.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n pause(s).</source>
        <translation>
            <numerusform>%n pausa.</numerusform>
            <numerusform>%n pausas.</numerusform>
        </translation>
    </message>
    <message>
        <source>delivery, last 60 min</source>
        <translation>entrega, últimos 60 min</translation>
    </message>
    <message>
        <source>packing capacity</source>
        <translation>capacidade de compactação</translation>
    </message>
    <message>
        <source>density, median</source>
        <translation>densidade, mediana</translation>
    </message>
    <message>
        <source>its 80 % band</source>
        <translation>sua faixa de 80 %</translation>
    </message>
    <message>
        <source>target</source>
        <translation>meta</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>dry-matter sample</source>
        <translation>amostra de matéria seca</translation>
    </message>
    <message>
        <source>delivery and capacity, %1</source>
        <translation>entrega e capacidade, %1</translation>
    </message>
    <message>
        <source>density, %1</source>
        <translation>densidade, %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::AdviceLine</name>
    <message>
        <source>No advice now.</source>
        <translation>Nenhum conselho agora.</translation>
    </message>
    <message>
        <source>Do it</source>
        <translation>Fazer</translation>
    </message>
    <message>
        <source>Record that the advice is followed</source>
        <translation>Registrar que o conselho foi seguido</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Agora não</translation>
    </message>
    <message>
        <source>Record that the advice is declined</source>
        <translation>Registrar que o conselho foi recusado</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Conselho</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::CautionPanel</name>
    <message>
        <source>Cautions</source>
        <translation>Cuidados</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Fonte: %1</translation>
    </message>
    <message>
        <source>No cautions from what is known now.</source>
        <translation>Nenhum cuidado a partir do que se sabe agora.</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::DensityGauge</name>
    <message>
        <source>No load yet.</source>
        <translation>Nenhuma carga ainda.</translation>
    </message>
    <message>
        <source>Layer now</source>
        <translation>Camada atual</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoje</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>%1: no density. %2</source>
        <translation>%1: sem densidade. %2</translation>
    </message>
    <message>
        <source>%1: %2, 80 % band %3, %4 chance of reaching %5</source>
        <translation>%1: %2, faixa de 80 % %3, %4 de chance de alcançar %5</translation>
    </message>
    <message>
        <source>%1
none yet</source>
        <translation>%1
ainda nenhuma</translation>
    </message>
    <message>
        <source>%1
%2 (%3–%4)</source>
        <translation>%1
%2 (%3–%4)</translation>
    </message>
    <message>
        <source>80 % band %1</source>
        <translation>faixa de 80 % %1</translation>
    </message>
    <message>
        <source>%1 chance of %2</source>
        <translation>%1 de chance de %2</translation>
    </message>
    <message>
        <source>Show the working</source>
        <translation>Mostrar o cálculo</translation>
    </message>
    <message>
        <source>Packed density</source>
        <translation>Densidade compactada</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::DistributionView</name>
    <message>
        <source>dry-matter density, %1</source>
        <translation>densidade de matéria seca, %1</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>meta %1</translation>
    </message>
    <message>
        <source>porosity asked %1</source>
        <translation>porosidade pedida %1</translation>
    </message>
    <message>
        <source>saturated %1</source>
        <translation>saturado %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::MessageBar</name>
    <message>
        <source>Put away</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Messages</source>
        <translation>Mensagens</translation>
    </message>
    <message>
        <source>Error: %1</source>
        <translation>Erro: %1</translation>
    </message>
    <message numerus="yes">
        <source>%1 (%n times)</source>
        <comment>how often a message came</comment>
        <translation>
            <numerusform>%1 (%n vez)</numerusform>
            <numerusform>%1 (%n vezes)</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <comment>messages waiting behind the one shown</comment>
        <translation>
            <numerusform>mais %n</numerusform>
            <numerusform>mais %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::PadPlan</name>
    <message>
        <source>Packing</source>
        <translation>Compactando</translation>
    </message>
    <message>
        <source>Spreading</source>
        <translation>Espalhando</translation>
    </message>
    <message>
        <source>Away</source>
        <translation>Fora</translation>
    </message>
    <message>
        <source>Plan of the silo pad</source>
        <translation>Planta do silo</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <comment>tractor and share</comment>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nenhum</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <comment>zone and its tractors</comment>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Put here: %1</source>
        <comment>zone</comment>
        <translation>Pôr aqui: %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::QuantitySpinBox</name>
    <message>
        <source>“%1” has two decimal signs: write one point or comma</source>
        <translation>“%1” tem dois sinais decimais: escreva um só ponto ou vírgula</translation>
    </message>
    <message>
        <source>“%1” is not a number</source>
        <translation>“%1” não é um número</translation>
    </message>
    <message>
        <source>“%1” is outside %2</source>
        <translation>“%1” está fora de %2</translation>
    </message>
    <message>
        <source>read as %1</source>
        <translation>lido como %1</translation>
    </message>
    <message>
        <source>“%1” was not taken: still %2</source>
        <translation>“%1” não foi aceito: continua %2</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::TractorChip</name>
    <message>
        <source>%1 at %2, %3</source>
        <translation>%1 a %2, %3</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Drag to another zone, or click and then click the zone; arrow keys move too</source>
        <translation>Arraste para outra zona, ou clique e depois clique na zona; as setas também movem</translation>
    </message>
    <message>
        <source>Less of its time packing: %1</source>
        <translation>Menos tempo compactando: %1</translation>
    </message>
    <message>
        <source>More of its time packing: %1</source>
        <translation>Mais tempo compactando: %1</translation>
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
        <translation>Caminhões</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Desfazer: %1</translation>
    </message>
    <message>
        <source>Nothing to undo</source>
        <translation>Nada a desfazer</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::TruckButton</name>
    <message>
        <source>Details of a load of %1</source>
        <translation>Detalhes de uma carga de %1</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::TruckFace</name>
    <message>
        <source>Log a load of %1</source>
        <translation>Registrar uma carga de %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <comment>usual load and what is being saved</comment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>no usual load known</source>
        <translation>sem carga usual</translation>
    </message>
    <message>
        <source>usually %1</source>
        <translation>usual %1</translation>
    </message>
    <message>
        <source>saving %1</source>
        <comment>loads that wait for their commit</comment>
        <translation>salvando %1</translation>
    </message>
</context>
</TS>
