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
    <name>FillPresenter</name>
    <message>
        <source>common practice</source>
        <translation>prática comum</translation>
    </message>
    <message>
        <source>the estimate&apos;s own limits</source>
        <translation>os limites da própria estimativa</translation>
    </message>
    <message>
        <source>load of %1</source>
        <translation>carga de %1</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Estufa</translation>
    </message>
    <message>
        <source>Microwave</source>
        <translation>Micro-ondas</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>By eye</source>
        <translation>A olho</translation>
    </message>
    <message>
        <source>just now</source>
        <translation>agora mesmo</translation>
    </message>
    <message>
        <source>%1 min ago</source>
        <translation>há %1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min ago</source>
        <translation>há %1 h %2 min</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) ago</source>
        <translation>
            <numerusform>há %n dia</numerusform>
            <numerusform>há %n dias</numerusform>
        </translation>
    </message>
    <message>
        <source>No dry matter measured yet.</source>
        <translation>Nenhuma matéria seca medida ainda.</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1 – time for a new sample</source>
        <translation>%1 – hora de uma nova amostra</translation>
    </message>
    <message>
        <source>Not seen yet: %1 assumed</source>
        <translation>Ainda não vista: %1 supostos</translation>
    </message>
    <message>
        <source>%1, seen %2</source>
        <translation>%1, vista %2</translation>
    </message>
    <message>
        <source>No density yet.</source>
        <translation>Nenhuma densidade ainda.</translation>
    </message>
</context>
<context>
    <name>MovementText</name>
    <message>
        <source>Steady for %1 min.</source>
        <translation>Estável há %1 min.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>change, cause</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>In %1 min %2</source>
        <translation>Em %1 min %2</translation>
    </message>
    <message>
        <source>In %1 min %2, first %3</source>
        <translation>Em %1 min %2, primeiro %3</translation>
    </message>
</context>
<context>
    <name>treadwell::MainWindow</name>
    <message>
        <source>Metric: t, kg DM/m³</source>
        <translation>Métrico: t, kg MS/m³</translation>
    </message>
    <message>
        <source>US: ton, lb DM/ft³</source>
        <translation>EUA: ton curta, lb MS/ft³</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Escuro</translation>
    </message>
    <message>
        <source>Outdoor: black on white</source>
        <translation>Ao ar livre: preto no branco</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Tema</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;juda</translation>
    </message>
</context>
<context>
    <name>treadwell::SeasonBanner</name>
    <message numerus="yes">
        <source>%n waiting. %1</source>
        <comment>entries that could not be recorded, and why</comment>
        <translation>
            <numerusform>%n registro à espera. %1</numerusform>
            <numerusform>%n registros à espera. %1</numerusform>
        </translation>
    </message>
    <message>
        <source>The clock is right</source>
        <translation>O relógio está certo</translation>
    </message>
    <message>
        <source>How the season&apos;s file stands</source>
        <translation>Como está o arquivo da safra</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::ChopEntry</name>
    <message>
        <source>No chop sieved yet.</source>
        <translation>Nenhuma peneiração ainda.</translation>
    </message>
    <message>
        <source>Mean length %1, %2</source>
        <translation>Comprimento médio %1, %2</translation>
    </message>
    <message>
        <source>%1 – none sieved today</source>
        <translation>%1 – hoje ainda sem peneiração</translation>
    </message>
    <message>
        <source>The sieve test is not recorded: %1</source>
        <translation>A peneiração não foi registrada: %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>na de %1</translation>
    </message>
    <message>
        <source>in the pan</source>
        <translation>no fundo</translation>
    </message>
    <message>
        <source>Mass %1</source>
        <translation>Massa %1</translation>
    </message>
    <message>
        <source>Record the sieve test</source>
        <translation>Registrar a peneiração</translation>
    </message>
    <message>
        <source>Chop</source>
        <translation>Picado</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::DryMatterEntry</name>
    <message>
        <source>Dry matter</source>
        <translation>Matéria seca</translation>
    </message>
    <message>
        <source>Record the sample</source>
        <translation>Registrar a amostra</translation>
    </message>
    <message>
        <source>Percent</source>
        <translation>Porcentagem</translation>
    </message>
    <message>
        <source>Dish weights</source>
        <translation>Pesos do prato</translation>
    </message>
    <message>
        <source>How the dry matter is entered</source>
        <translation>Como a matéria seca é informada</translation>
    </message>
    <message>
        <source>How the dry matter was measured</source>
        <translation>Como a matéria seca foi medida</translation>
    </message>
    <message>
        <source>Weight before drying</source>
        <translation>Peso antes de secar</translation>
    </message>
    <message>
        <source>Weight after drying</source>
        <translation>Peso depois de secar</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>after drying</source>
        <translation>depois de secar</translation>
    </message>
    <message>
        <source>The dish is not recorded: it must weigh less after drying, and more than nothing</source>
        <translation>O prato não foi registrado: depois de secar deve pesar menos, e mais que nada</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::EntryPanel</name>
    <message>
        <source>%1 is not recorded: %2</source>
        <translation>%1 não foi registrado: %2</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::FillPage</name>
    <message>
        <source>log a load of the truck at this place</source>
        <translation>registrar uma carga do caminhão desta posição</translation>
    </message>
    <message>
        <source>take back the last load</source>
        <translation>desfazer a última carga</translation>
    </message>
    <message>
        <source>enter dry matter</source>
        <translation>informar a matéria seca</translation>
    </message>
    <message>
        <source>enter the layer</source>
        <translation>informar a camada</translation>
    </message>
    <message>
        <source>next reading of the density</source>
        <translation>próxima leitura da densidade</translation>
    </message>
    <message>
        <source>show the working</source>
        <translation>mostrar o cálculo</translation>
    </message>
    <message>
        <source>do what is advised</source>
        <translation>seguir o conselho</translation>
    </message>
    <message>
        <source>decline the advice</source>
        <translation>recusar o conselho</translation>
    </message>
    <message>
        <source>next or previous control</source>
        <translation>próximo controle ou o anterior</translation>
    </message>
    <message>
        <source>move the chosen tractor</source>
        <translation>mover o trator escolhido</translation>
    </message>
    <message>
        <source>The load</source>
        <translation>A carga</translation>
    </message>
    <message>
        <source>The undo</source>
        <translation>O desfazer</translation>
    </message>
    <message>
        <source>The move of the tractor</source>
        <translation>A mudança do trator</translation>
    </message>
    <message>
        <source>The dry matter</source>
        <translation>A matéria seca</translation>
    </message>
    <message>
        <source>The layer</source>
        <translation>A camada</translation>
    </message>
    <message>
        <source>The decision</source>
        <translation>A decisão</translation>
    </message>
    <message>
        <source>The advice shown</source>
        <translation>O conselho mostrado</translation>
    </message>
    <message>
        <source>The caution shown</source>
        <translation>O alerta mostrado</translation>
    </message>
    <message>
        <source>%1 is not saved: %2</source>
        <translation>%1: não foi salvo: %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>não se sabe</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Crop from field</source>
        <translation>Colheita do talhão</translation>
    </message>
    <message>
        <source>Field that the loads come from</source>
        <translation>Talhão de onde vêm as cargas</translation>
    </message>
    <message>
        <source>In charge</source>
        <translation>Responsável</translation>
    </message>
    <message>
        <source>Name of the person in charge</source>
        <translation>Nome do responsável</translation>
    </message>
    <message>
        <source>your name</source>
        <translation>seu nome</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Enchimento</translation>
    </message>
    <message>
        <source>next view: time, section, table, heights, chop</source>
        <translation>próxima vista: tempo, corte, tabela, alturas, picado</translation>
    </message>
    <message>
        <source>enter heights</source>
        <translation>lançar alturas</translation>
    </message>
    <message>
        <source>zoom and move the timeline; Home shows all of it</source>
        <translation>ampliar e mover a linha do tempo; Home mostra tudo</translation>
    </message>
    <message>
        <source>read a moment of the timeline or a place of the section</source>
        <translation>ler um momento da linha do tempo ou um lugar do corte</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::HeightsEntry</name>
    <message>
        <source>The heights are not recorded: %1</source>
        <translation>As alturas não foram registradas: %1</translation>
    </message>
    <message>
        <source>Mean %1 of %2 heights</source>
        <translation>Média %1 de %2 alturas</translation>
    </message>
    <message>
        <source>Staff</source>
        <translation>Régua</translation>
    </message>
    <message>
        <source>Laser</source>
        <translation>Laser</translation>
    </message>
    <message>
        <source>What the heights are read with</source>
        <translation>Com que as alturas são lidas</translation>
    </message>
    <message>
        <source>laser hangs at</source>
        <translation>laser a</translation>
    </message>
    <message>
        <source>Height of the laser above the floor</source>
        <translation>Altura do laser acima do piso</translation>
    </message>
    <message>
        <source>Record the heights</source>
        <translation>Registrar as alturas</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>Distance below the laser, %1 from the back wall</source>
        <translation>Distância abaixo do laser, a %1 da parede do fundo</translation>
    </message>
    <message>
        <source>Height of the crop, %1 from the back wall</source>
        <translation>Altura do material, a %1 da parede do fundo</translation>
    </message>
    <message>
        <source>Heights of the crop</source>
        <translation>Alturas do material</translation>
    </message>
    <message>
        <source>Height at %1: %2 (here it can be %3)</source>
        <translation>Altura a %1: %2 (aqui pode ser %3)</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::LayerEntry</name>
    <message>
        <source>Layer as spread</source>
        <translation>Camada espalhada</translation>
    </message>
    <message>
        <source>Record the layer</source>
        <translation>Registrar a camada</translation>
    </message>
    <message>
        <source>Thickness of the layer</source>
        <translation>Espessura da camada</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::LoadDialog</name>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Load of %1</source>
        <translation>Carga de %1</translation>
    </message>
    <message>
        <source>Mass as fed</source>
        <translation>Massa natural</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>from the box</source>
        <translation>pelo volume da caçamba</translation>
    </message>
    <message>
        <source>usual load</source>
        <translation>carga usual</translation>
    </message>
    <message>
        <source>How the mass is known</source>
        <translation>Como se sabe a massa</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Talhão</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>não se sabe</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Como se sabe</translation>
    </message>
    <message>
        <source>Record the load</source>
        <translation>Registrar a carga</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Deixar</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::ViewStrip</name>
    <message>
        <source>The sieve test</source>
        <translation>A peneiração</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabela</translation>
    </message>
    <message>
        <source>Heights</source>
        <translation>Alturas</translation>
    </message>
    <message>
        <source>Chop</source>
        <translation>Picado</translation>
    </message>
    <message>
        <source>The day as a table</source>
        <translation>O dia em tabela</translation>
    </message>
    <message>
        <source>Views of the filling</source>
        <translation>Vistas do enchimento</translation>
    </message>
    <message>
        <source>The heights</source>
        <translation>As alturas</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::WorkingDialog</name>
    <message>
        <source>The working</source>
        <translation>O cálculo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
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
        <source>target</source>
        <translation>meta</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>conselho</translation>
    </message>
    <message numerus="yes">
        <source>Advice: %n time(s).</source>
        <translation>
            <numerusform>Conselho: %n vez.</numerusform>
            <numerusform>Conselho: %n vezes.</numerusform>
        </translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>carga %1</translation>
    </message>
    <message>
        <source>delivery %1</source>
        <translation>entrega %1</translation>
    </message>
    <message>
        <source>capacity %1</source>
        <translation>capacidade %1</translation>
    </message>
    <message>
        <source>density %1, 80 % band %2</source>
        <translation>densidade %1, faixa de 80 % %2</translation>
    </message>
    <message>
        <source>pause</source>
        <translation>pausa</translation>
    </message>
    <message>
        <source>advice accepted</source>
        <translation>conselho aceito</translation>
    </message>
    <message>
        <source>advice declined</source>
        <translation>conselho recusado</translation>
    </message>
    <message>
        <source>advice shown</source>
        <translation>conselho mostrado</translation>
    </message>
    <message>
        <source>delivery, 60 min</source>
        <translation>entrega, 60 min</translation>
    </message>
    <message>
        <source>capacity</source>
        <translation>capacidade</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidade</translation>
    </message>
    <message>
        <source>80 % band</source>
        <translation>faixa de 80 %</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>matéria seca</translation>
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
        <translation>O que houve</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacidade</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidade</translation>
    </message>
    <message>
        <source>80 % band</source>
        <translation>Faixa de 80 %</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>carga %1</translation>
    </message>
    <message>
        <source>dry matter %1</source>
        <translation>matéria seca %1</translation>
    </message>
    <message>
        <source>pause until %1</source>
        <translation>pausa até %1</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Hora</translation>
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
    <message>
        <source>%1: 80 % band %2</source>
        <translation>%1: faixa de 80 % %2</translation>
    </message>
    <message>
        <source>as it lies now %1 (%2–%3)</source>
        <translation>como está agora %1 (%2–%3)</translation>
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
    <name>treadwell::widgets::SectionView</name>
    <message>
        <source>No load yet.</source>
        <translation>Nenhuma carga ainda.</translation>
    </message>
    <message>
        <source>No section. %1</source>
        <translation>Sem corte. %1</translation>
    </message>
    <message numerus="yes">
        <source>The crop as it lies, %n layer(s). Point at a place.</source>
        <translation>
            <numerusform>O material como está, %n camada. Aponte um lugar.</numerusform>
            <numerusform>O material como está, %n camadas. Aponte um lugar.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 from the back wall, %2 up</source>
        <translation>%1 da parede do fundo, %2 de altura</translation>
    </message>
    <message>
        <source>%1: no crop</source>
        <translation>%1: sem material</translation>
    </message>
    <message>
        <source>%1: layer %2, %3: %4, 80 % band %5</source>
        <translation>%1: camada %2, %3: %4, faixa de 80 % %5</translation>
    </message>
    <message>
        <source>Section of the silo</source>
        <translation>Corte do silo</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>meta %1</translation>
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
        <translation>Parte do tempo em que %1 compacta</translation>
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
