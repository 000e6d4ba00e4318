<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_BR" sourcelanguage="en">
<context>
    <name>DayPresenter</name>
    <message>
        <source>%1, line %2: %3</source>
        <translation>%1, linha %2: %3</translation>
    </message>
    <message>
        <source>%1, closed</source>
        <translation>%1, fechado</translation>
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
    <message>
        <source>%1 to %2</source>
        <comment>a range with a minus in it</comment>
        <translation>de %1 a %2</translation>
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
    <name>ImportPreview</name>
    <message>
        <source>%1: %2</source>
        <comment>column, what is asked</comment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) in the file</source>
        <translation>
            <numerusform>%n linha no arquivo</numerusform>
            <numerusform>%n linhas no arquivo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entry(ies) would be recorded</source>
        <translation>
            <numerusform>%n registro seria feito</numerusform>
            <numerusform>%n registros seriam feitos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are there already</source>
        <translation>
            <numerusform>%n linha já está lá</numerusform>
            <numerusform>%n linhas já estão lá</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) stand twice in the file</source>
        <translation>
            <numerusform>%n linha aparece duas vezes no arquivo</numerusform>
            <numerusform>%n linhas aparecem duas vezes no arquivo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) void a ticket or are voided</source>
        <translation>
            <numerusform>%n linha anula um bilhete ou está anulada</numerusform>
            <numerusform>%n linhas anulam um bilhete ou estão anuladas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) are sums at the foot</source>
        <translation>
            <numerusform>%n linha é soma no rodapé</numerusform>
            <numerusform>%n linhas são somas no rodapé</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) set aside earlier can be read now</source>
        <translation>
            <numerusform>%n linha posta de lado antes agora pode ser lida</numerusform>
            <numerusform>%n linhas postas de lado antes agora podem ser lidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) cannot be used and are set aside:</source>
        <translation>
            <numerusform>%n linha não pode ser usada e é posta de lado:</numerusform>
            <numerusform>%n linhas não podem ser usadas e são postas de lado:</numerusform>
        </translation>
    </message>
    <message>
        <source>Tickets of a scale</source>
        <translation>Bilhetes de uma balança</translation>
    </message>
    <message>
        <source>What each tractor did</source>
        <translation>O que cada trator fez</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Matéria seca</translation>
    </message>
    <message>
        <source>Heights of the silo</source>
        <translation>Alturas do silo</translation>
    </message>
    <message>
        <source>Layers as spread</source>
        <translation>Camadas espalhadas</translation>
    </message>
    <message>
        <source>Cores</source>
        <translation>Amostras com sonda</translation>
    </message>
    <message>
        <source>Sieve tests</source>
        <translation>Testes de peneira</translation>
    </message>
    <message>
        <source>Kernel tests</source>
        <translation>Testes de grãos</translation>
    </message>
    <message>
        <source>Daily temperatures</source>
        <translation>Temperaturas diárias</translation>
    </message>
    <message>
        <source>Visits to fields</source>
        <translation>Visitas aos talhões</translation>
    </message>
    <message>
        <source>Settings of the harvester</source>
        <translation>Regulagens da colhedora</translation>
    </message>
    <message>
        <source>What was fed out</source>
        <translation>O que foi retirado</translation>
    </message>
    <message>
        <source>Temperatures of the face</source>
        <translation>Temperaturas do painel</translation>
    </message>
    <message>
        <source>Ticket number</source>
        <translation>Número do bilhete</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Data</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Caminhão</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Talhão</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Gross weight</source>
        <translation>Peso bruto</translation>
    </message>
    <message>
        <source>Empty weight</source>
        <translation>Tara</translation>
    </message>
    <message>
        <source>Net weight</source>
        <translation>Peso líquido</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidade</translation>
    </message>
    <message>
        <source>Status</source>
        <translation>Situação</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Balança</translation>
    </message>
    <message>
        <source>Line %1: the load tapped in with %2 weighs %3</source>
        <comment>line, mass, mass</comment>
        <translation>Linha %1: a carga anotada com %2 pesa %3</translation>
    </message>
    <message>
        <source>To be answered before it can be read:</source>
        <translation>A responder antes que possa ser lido:</translation>
    </message>
    <message>
        <source>Line %1: %2</source>
        <comment>line, what is to be noted</comment>
        <translation>Linha %1: %2</translation>
    </message>
    <message>
        <source>The column &quot;%1&quot; says nothing here and is not read</source>
        <translation>A coluna &quot;%1&quot; não diz nada aqui e não é lida</translation>
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
    <name>Notices</name>
    <message>
        <source>Now</source>
        <translation>Agora</translation>
    </message>
    <message>
        <source>Makes the answer surer</source>
        <translation>Torna a resposta mais certa</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Falta</translation>
    </message>
    <message>
        <source>Assumed</source>
        <translation>Suposto</translation>
    </message>
    <message>
        <source>What came of advice</source>
        <translation>O que resultou dos conselhos</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Cuidados</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Conhecido</translation>
    </message>
    <message>
        <source>%1 done: %2, %3 → %4 expected</source>
        <comment>time, advice, density before and after</comment>
        <translation>%1 feito: %2, esperado %3 → %4</translation>
    </message>
    <message>
        <source>%1 declined: %2, %3 → %4 expected</source>
        <comment>time, advice, density before and after</comment>
        <translation>%1 recusado: %2, esperado %3 → %4</translation>
    </message>
    <message>
        <source>%1; %2 at %3</source>
        <comment>what was said, the density then, time</comment>
        <translation>%1; %2 às %3</translation>
    </message>
    <message>
        <source>%1; shows from %2</source>
        <comment>what was said, time</comment>
        <translation>%1; aparece a partir das %2</translation>
    </message>
</context>
<context>
    <name>Pages</name>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>Fill</source>
        <translation>Enchimento</translation>
    </message>
    <message>
        <source>Samples</source>
        <translation>Amostras</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Treino</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Dia</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Painel</translation>
    </message>
</context>
<context>
    <name>PracticePresenter</name>
    <message>
        <source>not run yet</source>
        <translation>ainda não feita</translation>
    </message>
    <message numerus="yes">
        <source>best %1 of 100, %n run(s)</source>
        <translation>
            <numerusform>melhor %1 de 100, %n execução</numerusform>
            <numerusform>melhor %1 de 100, %n execuções</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>The lesson is over.</source>
        <translation>A lição acabou.</translation>
    </message>
    <message>
        <source>Somebody is on foot: stand still until nobody is.</source>
        <translation>Há alguém a pé: fiquem parados até não haver ninguém.</translation>
    </message>
    <message>
        <source>Load %1 of %2 comes in %3.</source>
        <translation>A carga %1 de %2 chega em %3.</translation>
    </message>
    <message>
        <source>All loads are in.</source>
        <translation>Todas as cargas chegaram.</translation>
    </message>
    <message>
        <source>No crop lies on the pad yet.</source>
        <translation>Ainda não há forragem no silo.</translation>
    </message>
    <message>
        <source>%1 of 100</source>
        <translation>%1 de 100</translation>
    </message>
    <message>
        <source>%1 of %2: %3</source>
        <comment>points, most and why</comment>
        <translation>%1 de %2: %3</translation>
    </message>
    <message>
        <source>Nothing that this lesson looks for.</source>
        <translation>Nada do que esta lição procura.</translation>
    </message>
</context>
<context>
    <name>Radio</name>
    <message>
        <source>Nobody packs</source>
        <translation>Ninguém compacta</translation>
    </message>
    <message>
        <source>%1 packing</source>
        <comment>names of tractors</comment>
        <translation>%1 na compactação</translation>
    </message>
    <message>
        <source>%1 spreading</source>
        <comment>names of tractors</comment>
        <translation>%1 espalhando</translation>
    </message>
    <message>
        <source>pause</source>
        <translation>pausa</translation>
    </message>
    <message>
        <source>%1 (%2), target %3, chance %4</source>
        <comment>density, its band, target, chance of it</comment>
        <translation>%1 (%2), meta %3, chance %4</translation>
    </message>
</context>
<context>
    <name>SamplesPresenter</name>
    <message>
        <source>no field named</source>
        <translation>sem talhão</translation>
    </message>
    <message>
        <source>No sieve test today.</source>
        <translation>Nenhum teste de peneiras hoje.</translation>
    </message>
    <message numerus="yes">
        <source>By day: %1 over %n day(s)</source>
        <translation>
            <numerusform>Por dia: %1 em %n dia</numerusform>
            <numerusform>Por dia: %1 em %n dias</numerusform>
        </translation>
    </message>
    <message>
        <source>, 80 % band %1</source>
        <translation>, faixa de 80 % %1</translation>
    </message>
    <message>
        <source>No kernels counted today.</source>
        <translation>Nenhum grão contado hoje.</translation>
    </message>
    <message>
        <source>%1 in a cup (%2 to %3), %4: %5</source>
        <comment>mean, low, high, material, how good</comment>
        <translation>%1 por copo (%2 a %3), %4: %5</translation>
    </message>
    <message>
        <source>Score %1 of the starch, %2: %3</source>
        <translation>Índice %1 do amido, %2: %3</translation>
    </message>
    <message>
        <source>Nobody has told how the harvester is set.</source>
        <translation>Ninguém informou a regulagem da colhedora.</translation>
    </message>
    <message>
        <source>cut %1</source>
        <translation>corte %1</translation>
    </message>
    <message>
        <source>roll gap %1</source>
        <translation>folga dos rolos %1</translation>
    </message>
    <message>
        <source>stubble %1</source>
        <translation>resteva %1</translation>
    </message>
    <message>
        <source>no processor</source>
        <translation>sem processador</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>rolos</translation>
    </message>
    <message>
        <source>rolls for a long cut</source>
        <translation>rolos para corte longo</translation>
    </message>
    <message>
        <source>No field has been visited.</source>
        <translation>Nenhum talhão foi visitado.</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresca</translation>
    </message>
    <message>
        <source>fermented</source>
        <translation>fermentada</translation>
    </message>
    <message>
        <source>No dry matter measured yet.</source>
        <translation>Nenhuma matéria seca medida ainda.</translation>
    </message>
    <message>
        <source>The next load: %1</source>
        <translation>A próxima carga: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s) today: %1</source>
        <translation>
            <numerusform>%n amostra hoje: %1</numerusform>
            <numerusform>%n amostras hoje: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>; enough for a point</source>
        <translation>; bastam para um ponto</translation>
    </message>
    <message numerus="yes">
        <source>; %n more give it to a point</source>
        <translation>
            <numerusform>; mais %n dá a precisão de um ponto</numerusform>
            <numerusform>; mais %n dão a precisão de um ponto</numerusform>
        </translation>
    </message>
    <message>
        <source>Drift %1 an hour, 80 % band %2</source>
        <translation>Tendência de %1 por hora, faixa de 80 % %2</translation>
    </message>
    <message>
        <source>%1: none is seen</source>
        <translation>%1: nenhuma se vê</translation>
    </message>
    <message>
        <source>Came in today: %1</source>
        <translation>Chegou hoje: %1</translation>
    </message>
    <message>
        <source>In %1: %2</source>
        <translation>Em %1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n test(s)</source>
        <translation>
            <numerusform>%1, %n teste</numerusform>
            <numerusform>%1, %n testes</numerusform>
        </translation>
    </message>
    <message>
        <source>; %1 %2</source>
        <comment>method, mean length</comment>
        <translation>; %1 %2</translation>
    </message>
    <message>
        <source>, spread %1</source>
        <translation>, dispersão %1</translation>
    </message>
    <message>
        <source>log-normal line</source>
        <translation>reta log-normal</translation>
    </message>
    <message>
        <source>one screen</source>
        <translation>uma peneira</translation>
    </message>
    <message>
        <source>milk line %1</source>
        <translation>linha do leite %1</translation>
    </message>
    <message>
        <source>dries %1 (+-%2)</source>
        <translation>seca %1 (+-%2)</translation>
    </message>
    <message>
        <source>in the goal %1 to %2</source>
        <translation>na meta de %1 a %2</translation>
    </message>
    <message>
        <source>by warmth %1</source>
        <translation>pelo calor %1</translation>
    </message>
    <message>
        <source>by planting %1 to %2</source>
        <translation>pelo plantio %1 a %2</translation>
    </message>
    <message>
        <source>out of reach</source>
        <translation>fora de alcance</translation>
    </message>
    <message>
        <source>well processed</source>
        <translation>bem processados</translation>
    </message>
    <message>
        <source>adequate</source>
        <translation>adequados</translation>
    </message>
    <message>
        <source>inadequate</source>
        <translation>insuficientes</translation>
    </message>
    <message>
        <source>yesterday %1</source>
        <translation>ontem %1</translation>
    </message>
</context>
<context>
    <name>Trial</name>
    <message>
        <source>What if? Move a tractor or record a layer: it is only tried.</source>
        <translation>E se? Mova um trator ou registre uma camada: só se experimenta.</translation>
    </message>
    <message>
        <source>What if: not enough is known to say.</source>
        <translation>E se: não se sabe o bastante para dizer.</translation>
    </message>
    <message>
        <source>What if: %1: %2</source>
        <comment>what is tried and what it would come to</comment>
        <translation>E se: %1: %2</translation>
    </message>
</context>
<context>
    <name>treadwell::CopiesDialog</name>
    <message>
        <source>Make a copy now</source>
        <translation>Fazer uma cópia agora</translation>
    </message>
    <message>
        <source>Make no more copies</source>
        <translation>Não fazer mais cópias</translation>
    </message>
    <message>
        <source>Copies after the day&apos;s close</source>
        <translation>Cópias depois do fechamento do dia</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Fechar</translation>
    </message>
    <message>
        <source>A folder for the copies, such as a stick</source>
        <translation>Uma pasta para as cópias, como um pen drive</translation>
    </message>
    <message>
        <source>Choose another folder…</source>
        <translation>Escolher outra pasta…</translation>
    </message>
    <message>
        <source>Choose a folder…</source>
        <translation>Escolher uma pasta…</translation>
    </message>
</context>
<context>
    <name>treadwell::MainWindow</name>
    <message>
        <source>Take in a file of tickets or readings…</source>
        <translation>Importar um arquivo de bilhetes ou leituras…</translation>
    </message>
    <message>
        <source>Tickets or readings</source>
        <translation>Bilhetes ou leituras</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Listas (*.csv *.txt *.tsv);;Todos os arquivos (*)</translation>
    </message>
    <message>
        <source>take in a file of tickets or readings</source>
        <translation>importar um arquivo de bilhetes ou leituras</translation>
    </message>
    <message>
        <source>Copies after the day&apos;s close…</source>
        <translation>Cópias depois do fechamento do dia…</translation>
    </message>
    <message>
        <source>&amp;Season</source>
        <translation>&amp;Safra</translation>
    </message>
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
    <message>
        <source>&amp;Pages</source>
        <translation>&amp;Páginas</translation>
    </message>
</context>
<context>
    <name>treadwell::SeasonBanner</name>
    <message>
        <source>Write here from now on</source>
        <translation>Gravar aqui de agora em diante</translation>
    </message>
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
    <message>
        <source>It is this time</source>
        <translation>É esta a hora</translation>
    </message>
    <message>
        <source>The right day</source>
        <translation>O dia certo</translation>
    </message>
    <message>
        <source>The right time</source>
        <translation>A hora certa</translation>
    </message>
</context>
<context>
    <name>treadwell::day_page::ClosingPanel</name>
    <message numerus="yes">
        <source>%n point(s) to see to: answer each, or leave it open.</source>
        <translation>
            <numerusform>%n ponto a ver: responda, ou deixe em aberto.</numerusform>
            <numerusform>%n pontos a ver: responda cada um, ou deixe em aberto.</numerusform>
        </translation>
    </message>
    <message>
        <source>What is left open stands on the sheet.</source>
        <translation>O que fica em aberto consta da folha.</translation>
    </message>
    <message>
        <source>Say who closes the day.</source>
        <translation>Diga quem fecha o dia.</translation>
    </message>
    <message>
        <source>Say why the day is opened again: it is a correction and stands in the history.</source>
        <translation>Diga por que o dia é reaberto: é uma correção e fica no histórico.</translation>
    </message>
    <message>
        <source>The day&apos;s close</source>
        <translation>Fechamento do dia</translation>
    </message>
    <message>
        <source>For the next shift</source>
        <translation>Para o próximo turno</translation>
    </message>
    <message>
        <source>Takes over</source>
        <translation>Assume</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>Passar o turno</translation>
    </message>
    <message>
        <source>Closes it</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Close the day</source>
        <translation>Fechar o dia</translation>
    </message>
    <message>
        <source>A closed day is changed by a correction alone. Why is it opened again?</source>
        <translation>Um dia fechado só muda por correção. Por que é reaberto?</translation>
    </message>
    <message>
        <source>Open it again</source>
        <translation>Reabrir</translation>
    </message>
    <message>
        <source>Say first, at the top, whether the clock is right.</source>
        <translation>Diga primeiro, no alto, se o relógio está certo.</translation>
    </message>
</context>
<context>
    <name>treadwell::day_page::DayPage</name>
    <message>
        <source>The day is open again.</source>
        <translation>O dia está aberto de novo.</translation>
    </message>
    <message>
        <source>The season, its days side by side</source>
        <translation>A safra, os dias lado a lado</translation>
    </message>
    <message>
        <source>Nothing is recorded yet.</source>
        <translation>Nada foi registrado ainda.</translation>
    </message>
    <message>
        <source>Not recorded: %1</source>
        <translation>Não registrado: %1</translation>
    </message>
    <message>
        <source>The words for the next shift are recorded.</source>
        <translation>O recado para o próximo turno está registrado.</translation>
    </message>
    <message>
        <source>Handed over to %1.</source>
        <translation>Passado para %1.</translation>
    </message>
    <message>
        <source>The day is closed.</source>
        <translation>O dia está fechado.</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>A impressora não aceitou a folha.</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Salvar a folha</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Salvo: %1</translation>
    </message>
    <message>
        <source>The day&apos;s sum is copied: paste it into a message.</source>
        <translation>O resumo do dia está copiado: cole em uma mensagem.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Dia</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Imprimir</translation>
    </message>
    <message>
        <source>Copy message</source>
        <translation>Copiar mensagem</translation>
    </message>
    <message>
        <source>Save %1</source>
        <translation>Salvar %1</translation>
    </message>
    <message>
        <source>Alt+Left, Alt+Right</source>
        <translation>Alt+Esquerda, Alt+Direita</translation>
    </message>
    <message>
        <source>The day before, the day after</source>
        <translation>O dia anterior, o dia seguinte</translation>
    </message>
    <message>
        <source>Print the sheet</source>
        <translation>Imprimir a folha</translation>
    </message>
    <message>
        <source>Save it as a PDF</source>
        <translation>Salvar como PDF</translation>
    </message>
    <message>
        <source>Copy its sum for a message</source>
        <translation>Copiar o resumo para uma mensagem</translation>
    </message>
</context>
<context>
    <name>treadwell::day_page::StepRow</name>
    <message>
        <source>Leave it open</source>
        <translation>Deixar em aberto</translation>
    </message>
    <message>
        <source>Away from then</source>
        <translation>Fora desde então</translation>
    </message>
    <message>
        <source>Ended then</source>
        <translation>Terminou então</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Fica em aberto</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Quando</translation>
    </message>
    <message>
        <source>Read the heights</source>
        <translation>Ler as alturas</translation>
    </message>
    <message>
        <source>Taken at</source>
        <translation>Tirada às</translation>
    </message>
    <message>
        <source>Enter a sample</source>
        <translation>Informar uma amostra</translation>
    </message>
    <message>
        <source>Enter the layer</source>
        <translation>Informar a camada</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Massa</translation>
    </message>
    <message>
        <source>Cost an hour</source>
        <translation>Custo por hora</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Registrar</translation>
    </message>
    <message>
        <source>Enter a number above 0.</source>
        <translation>Informe um número acima de 0.</translation>
    </message>
    <message>
        <source>It is nothing</source>
        <translation>Não é nada</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::CoreForm</name>
    <message>
        <source>Loose, from the loader&apos;s bucket</source>
        <translation>Solto, da carregadeira</translation>
    </message>
    <message>
        <source>Block, cut by machine</source>
        <translation>Bloco, cortado por máquina</translation>
    </message>
    <message>
        <source>Corer on a machine</source>
        <translation>Sonda em máquina</translation>
    </message>
    <message>
        <source>Face balance over days</source>
        <translation>Balanço do painel em dias</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>From the back wall</source>
        <translation>Da parede do fundo</translation>
    </message>
    <message>
        <source>From the left wall</source>
        <translation>Da parede esquerda</translation>
    </message>
    <message>
        <source>Below the surface</source>
        <translation>Abaixo da superfície</translation>
    </message>
    <message>
        <source>Corer, inside</source>
        <translation>Sonda, por dentro</translation>
    </message>
    <message>
        <source>Hole, deep</source>
        <translation>Furo, fundo</translation>
    </message>
    <message>
        <source>Block</source>
        <translation>Bloco</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Pesado</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Matéria seca</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidade</translation>
    </message>
    <message>
        <source>Record the core</source>
        <translation>Registrar a amostra</translation>
    </message>
    <message>
        <source>Loose material tells dry matter and chop, no density.</source>
        <translation>Material solto diz matéria seca e picado, não densidade.</translation>
    </message>
    <message>
        <source>Position, then what gives the density.</source>
        <translation>A posição, depois o que dá a densidade.</translation>
    </message>
    <message>
        <source>It makes %1.</source>
        <translation>Dá %1.</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::FacePage</name>
    <message>
        <source>of the newest core</source>
        <translation>da amostra mais nova</translation>
    </message>
    <message>
        <source>The farm has no silo yet.</source>
        <translation>A fazenda ainda não tem silo.</translation>
    </message>
    <message>
        <source>Not recorded: %1</source>
        <translation>Não registrado: %1</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Painel</translation>
    </message>
    <message>
        <source>Before anybody goes near</source>
        <translation>Antes que alguém se aproxime</translation>
    </message>
    <message>
        <source>Core</source>
        <translation>Amostra</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Retirado</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>The face</source>
        <translation>O painel</translation>
    </message>
    <message>
        <source>Feeding out</source>
        <translation>Retirada</translation>
    </message>
    <message>
        <source>A core, what was fed, temperatures, the plan</source>
        <translation>Uma amostra, o que foi retirado, temperaturas, o plano</translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation>Setas</translation>
    </message>
    <message>
        <source>From place to place on the face</source>
        <translation>De lugar em lugar no painel</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>The next field of the form; at the last one record</source>
        <translation>O próximo campo do formulário; no último, registrar</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::PlanBox</name>
    <message>
        <source>First day</source>
        <translation>Primeiro dia</translation>
    </message>
    <message>
        <source>Fed each day</source>
        <translation>Retirado por dia</translation>
    </message>
    <message>
        <source>Its dry matter</source>
        <translation>Sua matéria seca</translation>
    </message>
    <message>
        <source>Lost until fed</source>
        <translation>Perda até retirar</translation>
    </message>
    <message>
        <source>The face, from the back wall</source>
        <translation>O painel, da parede do fundo</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Semana desde</translation>
    </message>
    <message>
        <source>What is left at nothing is taken from what was fed so far. The plan is not recorded.</source>
        <translation>O que fica em nada vem do que já foi retirado. O plano não é registrado.</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::RemovalForm</name>
    <message>
        <source>Fed since the last time</source>
        <translation>Retirado desde a última vez</translation>
    </message>
    <message>
        <source>Its dry matter</source>
        <translation>Sua matéria seca</translation>
    </message>
    <message>
        <source>The face now, from the back wall</source>
        <translation>Painel até o fundo, agora</translation>
    </message>
    <message>
        <source>All is out</source>
        <translation>Tudo foi retirado</translation>
    </message>
    <message>
        <source>Record what was fed</source>
        <translation>Registrar a retirada</translation>
    </message>
    <message>
        <source>What is left at nothing was not measured.</source>
        <translation>O que fica em nada não foi medido.</translation>
    </message>
</context>
<context>
    <name>treadwell::face_page::WarmthForm</name>
    <message>
        <source>20 cm behind the face</source>
        <translation>20 cm atrás do painel</translation>
    </message>
    <message>
        <source>In the core</source>
        <translation>No núcleo</translation>
    </message>
    <message>
        <source>From the left wall</source>
        <translation>Da parede esquerda</translation>
    </message>
    <message>
        <source>Above the floor</source>
        <translation>Acima do piso</translation>
    </message>
    <message>
        <source>Record the temperatures</source>
        <translation>Registrar as temperaturas</translation>
    </message>
    <message>
        <source>read both temperatures</source>
        <translation>leia as duas temperaturas</translation>
    </message>
    <message>
        <source>More than 5 °C above the core and the face heats.</source>
        <translation>Mais de 5 °C acima do núcleo e o painel aquece.</translation>
    </message>
    <message>
        <source>More than 5 °C above the core: the face heats.</source>
        <translation>Mais de 5 °C acima do núcleo: o painel aquece.</translation>
    </message>
    <message>
        <source>Not more than 5 °C above the core.</source>
        <translation>Não mais de 5 °C acima do núcleo.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::CatchUpDialog</name>
    <message>
        <source>Loads to catch up with</source>
        <translation>Cargas a recuperar</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Até</translation>
    </message>
    <message>
        <source>several, or not known</source>
        <translation>vários, ou não se sabe</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Caminhão</translation>
    </message>
    <message>
        <source>Mass of each load</source>
        <translation>Massa de cada carga</translation>
    </message>
    <message>
        <source>Mass of each</source>
        <translation>Massa de cada</translation>
    </message>
    <message>
        <source>Record the loads</source>
        <translation>Registrar as cargas</translation>
    </message>
    <message>
        <source>This time has not come yet.</source>
        <translation>Essa hora ainda não chegou.</translation>
    </message>
    <message>
        <source>The first time must come before the last.</source>
        <translation>A primeira hora tem de vir antes da última.</translation>
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
    <name>treadwell::fill::DayLoads</name>
    <message>
        <source>caught up</source>
        <translation>recuperada</translation>
    </message>
    <message>
        <source>usual load</source>
        <translation>carga usual</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>cerca de %1</translation>
    </message>
    <message>
        <source>Correct the load of %1</source>
        <translation>Corrigir a carga de %1</translation>
    </message>
    <message>
        <source>Take back the load of %1</source>
        <translation>Retirar a carga de %1</translation>
    </message>
    <message>
        <source>Loads of the day</source>
        <translation>Cargas do dia</translation>
    </message>
    <message>
        <source>No load yet today.</source>
        <translation>Nenhuma carga hoje ainda.</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>Less mass for the load of %1</source>
        <translation>Menos massa para a carga de %1</translation>
    </message>
    <message>
        <source>More mass for the load of %1</source>
        <translation>Mais massa para a carga de %1</translation>
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
        <translation>Em %</translation>
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
    <name>treadwell::fill::FillHeader</name>
    <message>
        <source>An accident, or nearly one, a breakdown, a spill</source>
        <translation>Um acidente, ou quase, uma quebra, um vazamento</translation>
    </message>
    <message>
        <source>Incident</source>
        <translation>Ocorrência</translation>
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
        <source>Field</source>
        <translation>Talhão</translation>
    </message>
    <message>
        <source>Radio</source>
        <translation>Rádio</translation>
    </message>
    <message>
        <source>Copies a sentence for the radio or a message, and shows it</source>
        <translation>Copia uma frase para o rádio ou uma mensagem e a mostra</translation>
    </message>
    <message>
        <source>name erased</source>
        <translation>nome apagado</translation>
    </message>
    <message>
        <source>Who is here?</source>
        <translation>Quem está?</translation>
    </message>
    <message>
        <source>Who holds the tablet: %1</source>
        <translation>Quem está com o tablet: %1</translation>
    </message>
    <message>
        <source>Português</source>
        <comment>the other language, in itself</comment>
        <translation>English</translation>
    </message>
    <message>
        <source>Changes the language of the screen</source>
        <translation>Muda o idioma da tela</translation>
    </message>
    <message>
        <source>%1 h %2</source>
        <comment>hours and minutes on shift</comment>
        <translation>%1 h %2</translation>
    </message>
    <message>
        <source>on shift for %1</source>
        <translation>em turno há %1</translation>
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
    <message>
        <source>try something: what if</source>
        <translation>experimentar algo: e se</translation>
    </message>
    <message>
        <source>the day&apos;s loads, or the trucks again</source>
        <translation>as cargas do dia, ou de novo os caminhões</translation>
    </message>
    <message>
        <source>catch up with loads</source>
        <translation>recuperar cargas</translation>
    </message>
    <message>
        <source>a hired machine is here</source>
        <translation>chegou uma máquina alugada</translation>
    </message>
    <message>
        <source>pause, or go on</source>
        <translation>pausar, ou continuar</translation>
    </message>
    <message>
        <source>next silo</source>
        <translation>próximo silo</translation>
    </message>
    <message>
        <source>next field</source>
        <translation>próximo talhão</translation>
    </message>
    <message>
        <source>who holds the tablet</source>
        <translation>quem está com o tablet</translation>
    </message>
    <message>
        <source>words for the radio</source>
        <translation>palavras para o rádio</translation>
    </message>
    <message>
        <source>the other language</source>
        <translation>o outro idioma</translation>
    </message>
    <message>
        <source>share of its time that it packs</source>
        <translation>parte do tempo em que compacta</translation>
    </message>
    <message>
        <source>mass of the chosen tractor</source>
        <translation>massa do trator escolhido</translation>
    </message>
    <message>
        <source>The loads</source>
        <translation>As cargas</translation>
    </message>
    <message>
        <source>The hired machine</source>
        <translation>A máquina alugada</translation>
    </message>
    <message>
        <source>The mass</source>
        <translation>A massa</translation>
    </message>
    <message>
        <source>The shift</source>
        <translation>O turno</translation>
    </message>
    <message>
        <source>The pause</source>
        <translation>A pausa</translation>
    </message>
    <message>
        <source>Copied: %1</source>
        <translation>Copiado: %1</translation>
    </message>
    <message>
        <source>The incident</source>
        <translation>A ocorrência</translation>
    </message>
    <message>
        <source>something happened</source>
        <translation>aconteceu algo</translation>
    </message>
    <message>
        <source>Say first, at the top, whether the clock is right: this sheet writes times.</source>
        <translation>Diga primeiro, no alto, se o relógio está certo: esta folha grava horas.</translation>
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
    <name>treadwell::fill::HireDialog</name>
    <message>
        <source>Medium tractor</source>
        <translation>Trator médio</translation>
    </message>
    <message>
        <source>Large tractor</source>
        <translation>Trator grande</translation>
    </message>
    <message>
        <source>Heavy tractor</source>
        <translation>Trator pesado</translation>
    </message>
    <message>
        <source>Articulated tractor</source>
        <translation>Trator articulado</translation>
    </message>
    <message>
        <source>Wheel loader</source>
        <translation>Pá-carregadeira</translation>
    </message>
    <message>
        <source>Small trailer</source>
        <translation>Carreta pequena</translation>
    </message>
    <message>
        <source>Trailer</source>
        <translation>Carreta</translation>
    </message>
    <message>
        <source>Large trailer</source>
        <translation>Carreta grande</translation>
    </message>
    <message>
        <source>Lorry</source>
        <translation>Caminhão</translation>
    </message>
    <message>
        <source>A hired machine is here</source>
        <translation>Chegou uma máquina alugada</translation>
    </message>
    <message>
        <source>Hired %1</source>
        <translation>Alugado %1</translation>
    </message>
    <message>
        <source>Hired truck %1</source>
        <translation>Caminhão alugado %1</translation>
    </message>
    <message>
        <source>Tractor</source>
        <translation>Trator</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Caminhão</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nome</translation>
    </message>
    <message>
        <source>It is here</source>
        <translation>Chegou</translation>
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
%2 por carga</translation>
    </message>
    <message>
        <source>Give it a name by which it is known in the yard.</source>
        <translation>Dê-lhe um nome pelo qual seja conhecida no pátio.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::IncidentDialog</name>
    <message>
        <source>Something happened</source>
        <translation>Aconteceu algo</translation>
    </message>
    <message>
        <source>A person</source>
        <translation>Uma pessoa</translation>
    </message>
    <message>
        <source>A machine</source>
        <translation>Uma máquina</translation>
    </message>
    <message>
        <source>The place</source>
        <translation>O local</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>none, or not known</source>
        <translation>nenhum, ou não se sabe</translation>
    </message>
    <message>
        <source>Tractor</source>
        <translation>Trator</translation>
    </message>
    <message>
        <source>may stay empty; no names</source>
        <translation>pode ficar vazio; sem nomes</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>Em palavras</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Registrar</translation>
    </message>
    <message>
        <source>Say in a few words what happened.</source>
        <translation>Diga em poucas palavras o que aconteceu.</translation>
    </message>
    <message>
        <source>This time has not come yet.</source>
        <translation>Essa hora ainda não chegou.</translation>
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
        <source>the usual load of this truck from now on</source>
        <translation>a carga usual deste caminhão daqui em diante</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Correct the load</source>
        <translation>Corrigir a carga</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Caminhão</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>This time has not come yet.</source>
        <translation>Essa hora ainda não chegou.</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::MassDialog</name>
    <message>
        <source>Mass of %1</source>
        <translation>Massa de %1</translation>
    </message>
    <message>
        <source>Mass with ballast and blade</source>
        <translation>Massa com lastro e lâmina</translation>
    </message>
    <message>
        <source>Record the mass</source>
        <translation>Registrar a massa</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::Sheet</name>
    <message>
        <source>Leave it</source>
        <translation>Deixar</translation>
    </message>
</context>
<context>
    <name>treadwell::fill::TabletDialog</name>
    <message>
        <source>Who holds the tablet?</source>
        <translation>Quem está com o tablet?</translation>
    </message>
    <message>
        <source>Known</source>
        <translation>Conhecido</translation>
    </message>
    <message>
        <source>New name</source>
        <translation>Nome novo</translation>
    </message>
    <message>
        <source>My shift ends</source>
        <translation>Meu turno acaba</translation>
    </message>
    <message>
        <source>I hold the tablet</source>
        <translation>Estou com o tablet</translation>
    </message>
    <message>
        <source>Touch a name, or write one.</source>
        <translation>Toque um nome, ou escreva um.</translation>
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
    <message>
        <source>none sieved today</source>
        <translation>hoje ainda sem peneiração</translation>
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
    <name>treadwell::fill::YardTools</name>
    <message>
        <source>Loads today</source>
        <translation>Cargas de hoje</translation>
    </message>
    <message>
        <source>Shows the day&apos;s loads in place of the trucks</source>
        <translation>Mostra as cargas do dia no lugar dos caminhões</translation>
    </message>
    <message>
        <source>Catch up</source>
        <translation>Recuperar</translation>
    </message>
    <message>
        <source>Enters loads that came while nobody logged them</source>
        <translation>Registra cargas que vieram sem que ninguém anotasse</translation>
    </message>
    <message>
        <source>Hired</source>
        <translation>Alugado</translation>
    </message>
    <message>
        <source>A truck or tractor that the farm does not know yet</source>
        <translation>Um caminhão ou trator que a fazenda ainda não conhece</translation>
    </message>
    <message>
        <source>Go on (%1)</source>
        <comment>the pause since</comment>
        <translation>Continuar (%1)</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Deliveries stand still, or go on</source>
        <translation>As entregas param, ou continuam</translation>
    </message>
</context>
<context>
    <name>treadwell::intake_page::ImportDialog</name>
    <message>
        <source>Take in %1</source>
        <translation>Importar %1</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letras</translation>
    </message>
    <message>
        <source>Columns are parted by</source>
        <translation>Separador das colunas</translation>
    </message>
    <message>
        <source>Comma</source>
        <translation>Vírgula</translation>
    </message>
    <message>
        <source>Semicolon</source>
        <translation>Ponto e vírgula</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tabulação</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Barra</translation>
    </message>
    <message>
        <source>Decimal sign</source>
        <translation>Sinal decimal</translation>
    </message>
    <message>
        <source>Point: 12.4</source>
        <translation>Ponto: 12.4</translation>
    </message>
    <message>
        <source>Comma: 12,4</source>
        <translation>Vírgula: 12,4</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Datas</translation>
    </message>
    <message>
        <source>Day first: 16/09</source>
        <translation>Dia primeiro: 16/09</translation>
    </message>
    <message>
        <source>Month first: 09/16</source>
        <translation>Mês primeiro: 09/16</translation>
    </message>
    <message>
        <source>Weights without a unit</source>
        <translation>Pesos sem unidade</translation>
    </message>
    <message>
        <source>ton of 2,000 lb</source>
        <translation>ton curta de 2.000 lb</translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation>O que resulta</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Registrar</translation>
    </message>
    <message>
        <source>It holds</source>
        <translation>Contém</translation>
    </message>
    <message>
        <source>are set aside</source>
        <translation>são postas de lado</translation>
    </message>
    <message>
        <source>Rows without a silo</source>
        <translation>Linhas sem silo</translation>
    </message>
    <message>
        <source>to be answered</source>
        <translation>a responder</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Coluna</translation>
    </message>
    <message>
        <source>Means</source>
        <translation>Significa</translation>
    </message>
    <message>
        <source>Columns</source>
        <translation>Colunas</translation>
    </message>
    <message>
        <source>%1, read in %2</source>
        <translation>%1, lido em %2</translation>
    </message>
    <message>
        <source>nothing here</source>
        <translation>nada aqui</translation>
    </message>
</context>
<context>
    <name>treadwell::plots::DryMatterChart</name>
    <message>
        <source>Dry matter of the day</source>
        <translation>Matéria seca do dia</translation>
    </message>
    <message>
        <source>dry matter, %</source>
        <translation>matéria seca, %</translation>
    </message>
    <message>
        <source>loads</source>
        <translation>cargas</translation>
    </message>
    <message>
        <source>80 % band</source>
        <translation>faixa de 80 %</translation>
    </message>
    <message>
        <source>samples</source>
        <translation>amostras</translation>
    </message>
    <message>
        <source>goal</source>
        <translation>meta</translation>
    </message>
    <message numerus="yes">
        <source>%n sample(s).</source>
        <translation>
            <numerusform>%n amostra.</numerusform>
            <numerusform>%n amostras.</numerusform>
        </translation>
    </message>
    <message>
        <source>The last load is taken for %1 (+-%2).</source>
        <translation>A última carga é tomada por %1 (+-%2).</translation>
    </message>
    <message>
        <source>Goal %1.</source>
        <translation>Meta %1.</translation>
    </message>
</context>
<context>
    <name>treadwell::plots::SieveChart</name>
    <message>
        <source>Where the sample lies between the sieves</source>
        <translation>Onde a amostra fica entre as peneiras</translation>
    </message>
    <message>
        <source>passes, %</source>
        <translation>passa, %</translation>
    </message>
    <message>
        <source>this sample</source>
        <translation>esta amostra</translation>
    </message>
    <message>
        <source>what should pass</source>
        <translation>o que deve passar</translation>
    </message>
    <message>
        <source>No sieve test yet.</source>
        <translation>Nenhum teste de peneiras ainda.</translation>
    </message>
    <message>
        <source>on 19 mm</source>
        <translation>em 19 mm</translation>
    </message>
    <message>
        <source>on 8 mm</source>
        <translation>em 8 mm</translation>
    </message>
    <message>
        <source>on 4 mm</source>
        <translation>em 4 mm</translation>
    </message>
    <message>
        <source>below</source>
        <translation>abaixo</translation>
    </message>
    <message>
        <source>%1 %2, should be %3</source>
        <comment>where, part, range</comment>
        <translation>%1 %2, deve ser %3</translation>
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
    <name>treadwell::practice_page::CutView</name>
    <message>
        <source>Cut %1 from the back wall, up to %2 high</source>
        <translation>Corte a %1 da parede do fundo, até %2 de altura</translation>
    </message>
    <message>
        <source>goal %1</source>
        <translation>meta %1</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PadView</name>
    <message>
        <source>No lesson is chosen.</source>
        <translation>Nenhuma lição escolhida.</translation>
    </message>
    <message>
        <source>%1 is %2 from the back wall and %3 from the left wall.</source>
        <comment>tractor and distances</comment>
        <translation>%1 está a %2 da parede do fundo e a %3 da parede esquerda.</translation>
    </message>
    <message>
        <source>No tractor is on the pad.</source>
        <translation>Não há trator no silo.</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PlanForm</name>
    <message>
        <source>Layer</source>
        <translation>Camada</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidade</translation>
    </message>
    <message>
        <source>To the wall</source>
        <translation>Até a parede</translation>
    </message>
    <message>
        <source>Ramp</source>
        <translation>Rampa</translation>
    </message>
    <message>
        <source>Tracks</source>
        <translation>Passadas</translation>
    </message>
    <message>
        <source>whole width</source>
        <translation>toda a largura</translation>
    </message>
    <message>
        <source>the middle</source>
        <translation>o meio</translation>
    </message>
    <message>
        <source>as it comes</source>
        <translation>como vier</translation>
    </message>
    <message>
        <source>Agreed who drives where</source>
        <translation>Combinado quem anda onde</translation>
    </message>
    <message>
        <source>Agree who drives where</source>
        <translation>Combinar quem anda onde</translation>
    </message>
    <message>
        <source>All stand while somebody is on foot</source>
        <translation>Todos param com gente a pé</translation>
    </message>
    <message>
        <source>Let all stand while somebody is on foot</source>
        <translation>Mandar parar com gente a pé</translation>
    </message>
    <message>
        <source>All lights are on</source>
        <translation>Todas as luzes acesas</translation>
    </message>
    <message>
        <source>Switch on all lights</source>
        <translation>Acender todas as luzes</translation>
    </message>
    <message>
        <source>Called at %1</source>
        <translation>Chamado às %1</translation>
    </message>
    <message>
        <source>Call the next tractor</source>
        <translation>Chamar o próximo trator</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PracticePage</name>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Once more</source>
        <translation>De novo</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Começar</translation>
    </message>
    <message>
        <source>Result: %1</source>
        <translation>Resultado: %1</translation>
    </message>
    <message>
        <source>So far: %1</source>
        <translation>Até agora: %1</translation>
    </message>
    <message>
        <source>Open a lesson</source>
        <translation>Abrir uma lição</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Certificado</translation>
    </message>
    <message>
        <source>From the start</source>
        <translation>Do começo</translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation>Lições</translation>
    </message>
    <message>
        <source>Plan of the practice pad</source>
        <translation>Planta do silo de treino</translation>
    </message>
    <message>
        <source>The pad cut from wall to wall</source>
        <translation>O silo cortado de parede a parede</translation>
    </message>
    <message>
        <source>Pace</source>
        <translation>Ritmo</translation>
    </message>
    <message>
        <source>%1 ×</source>
        <comment>times as fast</comment>
        <translation>%1 ×</translation>
    </message>
    <message>
        <source>Start lets the tractors follow the plan. Touch the pad, or use the arrow keys on it, to drive the first one yourself; the space bar lets it stand.</source>
        <translation>Começar faz os tratores seguirem o plano. Toque no silo, ou use as setas sobre ele, para conduzir você mesmo o primeiro; a barra de espaço o faz parar.</translation>
    </message>
    <message>
        <source>What went wrong, and where</source>
        <translation>O que deu errado, e onde</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Cuidados</translation>
    </message>
    <message>
        <source>The certificate lies in %1</source>
        <translation>O certificado está em %1</translation>
    </message>
    <message>
        <source>Certificate of practice</source>
        <translation>Certificado de prática</translation>
    </message>
    <message>
        <source>Drive the first tractor to the back wall, to the mouth</source>
        <translation>Conduzir o primeiro trator à parede do fundo, à boca</translation>
    </message>
    <message>
        <source>Change its track while it drives</source>
        <translation>Mudar a sua faixa enquanto anda</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espaço</translation>
    </message>
    <message>
        <source>Let it stand</source>
        <translation>Fazê-lo parar</translation>
    </message>
    <message>
        <source>A real day</source>
        <translation>Um dia real</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::TraineeBar</name>
    <message>
        <source>Nobody named</source>
        <translation>Sem nome</translation>
    </message>
    <message>
        <source>Who practises</source>
        <translation>Quem treina</translation>
    </message>
    <message>
        <source>The name stays on this machine until it is deleted.</source>
        <translation>O nome fica nesta máquina até ser apagado.</translation>
    </message>
    <message>
        <source>Delete progress</source>
        <translation>Apagar progresso</translation>
    </message>
    <message>
        <source>Delete %1 and all that was practised, for good?</source>
        <translation>Apagar %1 e tudo o que foi treinado, para sempre?</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Apagar</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Novo</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::DryMatterForm</name>
    <message>
        <source>Dish, dried in an oven</source>
        <translation>Prato, seco em estufa</translation>
    </message>
    <message>
        <source>Microwave, step by step</source>
        <translation>Micro-ondas, passo a passo</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Medidor</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Como</translation>
    </message>
    <message>
        <source>Empty dish</source>
        <translation>Prato vazio</translation>
    </message>
    <message>
        <source>With the fresh sample</source>
        <translation>Com a amostra fresca</translation>
    </message>
    <message>
        <source>After this step</source>
        <translation>Depois deste passo</translation>
    </message>
    <message>
        <source>After drying</source>
        <translation>Depois de seco</translation>
    </message>
    <message>
        <source>The meter reads</source>
        <translation>O medidor mostra</translation>
    </message>
    <message>
        <source>Record the sample</source>
        <translation>Registrar a amostra</translation>
    </message>
    <message>
        <source>the sample is not dry yet: %1</source>
        <translation>a amostra ainda não está seca: %1</translation>
    </message>
    <message>
        <source>Weigh the dish, then the fresh sample in it.</source>
        <translation>Pese o prato e depois a amostra fresca nele.</translation>
    </message>
    <message>
        <source>%1 fresh</source>
        <translation>%1 frescos</translation>
    </message>
    <message>
        <source>%1, dry matter %2</source>
        <translation>%1, matéria seca %2</translation>
    </message>
    <message>
        <source>Weigh the dish, then about 100 g of fresh sample in it.</source>
        <translation>Pese o prato e depois cerca de 100 g de amostra fresca nele.</translation>
    </message>
    <message>
        <source>Dry: %1 dry matter. Record it.</source>
        <translation>Seca: %1 de matéria seca. Registre.</translation>
    </message>
    <message>
        <source>Step %1: heat for %2 s, weigh, press Enter.</source>
        <translation>Passo %1: aqueça por %2 s, pese, tecle Enter.</translation>
    </message>
    <message>
        <source>At most %1 so far.</source>
        <translation>No máximo %1 até aqui.</translation>
    </message>
    <message>
        <source>The last step took %1 off.</source>
        <translation>O último passo tirou %1.</translation>
    </message>
    <message>
        <source>Less than 80 g: the last gram counts for more than a point.</source>
        <translation>Menos de 80 g: o último grama vale mais de um ponto.</translation>
    </message>
    <message>
        <source>No dish was taken beside the meter yet: it may be off by %1.</source>
        <translation>Ainda não se secou um prato ao lado do medidor: ele pode errar por %1.</translation>
    </message>
    <message numerus="yes">
        <source>It reads %1 (+-%2) too much, by %n dish(es) beside it.</source>
        <translation>
            <numerusform>Ele mostra %1 (+-%2) a mais, por %n prato ao lado.</numerusform>
            <numerusform>Ele mostra %1 (+-%2) a mais, por %n pratos ao lado.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 The crop has %2.</source>
        <translation>%1 A forragem tem %2.</translation>
    </message>
    <message>
        <source>the field, no load in particular</source>
        <translation>o talhão em geral</translation>
    </message>
    <message>
        <source>Taken from</source>
        <translation>Tirada de</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::Form</name>
    <message>
        <source>Not recorded: %1</source>
        <translation>Não registrado: %1</translation>
    </message>
    <message>
        <source>no field here waits for a weight</source>
        <translation>nenhum campo aqui espera um peso</translation>
    </message>
    <message>
        <source>the scale shows less than nothing: set it to zero</source>
        <translation>a balança mostra menos que nada: zere-a</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::KernelForm</name>
    <message>
        <source>Counted in a cup of 0.95 L</source>
        <translation>Contados em um copo de 0,95 L</translation>
    </message>
    <message>
        <source>Processing score, on 4.75 mm</source>
        <translation>Índice de processamento, em 4,75 mm</translation>
    </message>
    <message>
        <source>Fresh</source>
        <translation>Fresca</translation>
    </message>
    <message>
        <source>Fermented</source>
        <translation>Fermentada</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Como</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Forragem</translation>
    </message>
    <message>
        <source>Whole and half kernels</source>
        <translation>Grãos inteiros e meios</translation>
    </message>
    <message>
        <source>Dried sample</source>
        <translation>Amostra seca</translation>
    </message>
    <message>
        <source>Its starch</source>
        <translation>O amido dela</translation>
    </message>
    <message>
        <source>Stays on 4.75 mm</source>
        <translation>Fica em 4,75 mm</translation>
    </message>
    <message>
        <source>Starch of that</source>
        <translation>O amido disso</translation>
    </message>
    <message>
        <source>Record the kernels</source>
        <translation>Registrar os grãos</translation>
    </message>
    <message>
        <source>This cup: %1. Count several loads.</source>
        <translation>Este copo: %1. Conte em várias cargas.</translation>
    </message>
    <message>
        <source>Weigh the dried sample, sieve it on 4.75 mm, and weigh what stays.</source>
        <translation>Pese a amostra seca, peneire em 4,75 mm e pese o que fica.</translation>
    </message>
    <message>
        <source>Score %1 of the starch: %2.</source>
        <translation>Índice %1 do amido: %2.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::LinesPanel</name>
    <message>
        <source>Caution</source>
        <translation>Cuidado</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::SamplesPage</name>
    <message>
        <source>Order</source>
        <translation>Ordem</translation>
    </message>
    <message>
        <source>Nothing is weighed here.</source>
        <translation>Aqui nada se pesa.</translation>
    </message>
    <message>
        <source>Dry matter, chop, kernels, the cut, a visit to a field, their order</source>
        <translation>Matéria seca, picado, grãos, o corte, uma visita ao talhão, a ordem deles</translation>
    </message>
    <message>
        <source>Field</source>
        <translation>Talhão</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Seca</translation>
    </message>
    <message>
        <source>Chop</source>
        <translation>Picado</translation>
    </message>
    <message>
        <source>Kernels</source>
        <translation>Grãos</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>What the last sample changed</source>
        <translation>O que a última amostra mudou</translation>
    </message>
    <message>
        <source>Dry matter</source>
        <translation>Matéria seca</translation>
    </message>
    <message>
        <source>The harvester</source>
        <translation>A colhedora</translation>
    </message>
    <message>
        <source>Standing fields</source>
        <translation>Talhões em pé</translation>
    </message>
    <message>
        <source>any, or none named</source>
        <translation>qualquer um, ou nenhum</translation>
    </message>
    <message>
        <source>The sample is not recorded: %1</source>
        <translation>A amostra não foi registrada: %1</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>The next field of the form; at the last one record</source>
        <translation>O próximo campo do formulário; no último, registrar</translation>
    </message>
    <message>
        <source>Take the weight from the scale</source>
        <translation>Usar o peso da balança</translation>
    </message>
    <message>
        <source>What the samples say</source>
        <translation>O que as amostras dizem</translation>
    </message>
    <message>
        <source>What is entered</source>
        <translation>O que se registra</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::ScaleDialog</name>
    <message>
        <source>A scale on a wire</source>
        <translation>Uma balança ligada por cabo</translation>
    </message>
    <message>
        <source>Device, or host and port</source>
        <translation>Dispositivo, ou host e porta</translation>
    </message>
    <message>
        <source>It writes</source>
        <translation>Ela envia</translation>
    </message>
    <message>
        <source>Baud</source>
        <translation>Baud</translation>
    </message>
    <message>
        <source>Characters</source>
        <translation>Caracteres</translation>
    </message>
    <message>
        <source>Listen to it</source>
        <translation>Escutar a balança</translation>
    </message>
    <message>
        <source>Say where it is, as /dev/ttyUSB0 or 127.0.0.1:4001.</source>
        <translation>Diga onde ela está, como /dev/ttyUSB0 ou 127.0.0.1:4001.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::ScaleRow</name>
    <message>
        <source>Scale …</source>
        <translation>Balança …</translation>
    </message>
    <message>
        <source>Choose a scale on a wire</source>
        <translation>Escolher uma balança ligada por cabo</translation>
    </message>
    <message>
        <source>Take it (F8)</source>
        <translation>Usar (F8)</translation>
    </message>
    <message>
        <source>Take the weight into the field in hand</source>
        <translation>Levar o peso para o campo em uso</translation>
    </message>
    <message>
        <source>%1, stands still</source>
        <translation>%1, parado</translation>
    </message>
    <message>
        <source>%1, moves</source>
        <translation>%1, oscila</translation>
    </message>
    <message>
        <source>nothing heard yet</source>
        <translation>nada recebido ainda</translation>
    </message>
    <message>
        <source>no scale on a wire</source>
        <translation>nenhuma balança ligada</translation>
    </message>
    <message>
        <source>The scale: %1</source>
        <translation>A balança: %1</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::SettingForm</name>
    <message>
        <source>No processor</source>
        <translation>Sem processador</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rolos</translation>
    </message>
    <message>
        <source>Rolls for a long cut</source>
        <translation>Rolos para corte longo</translation>
    </message>
    <message>
        <source>Length of cut</source>
        <translation>Comprimento de corte</translation>
    </message>
    <message>
        <source>Gap of the rolls</source>
        <translation>Folga dos rolos</translation>
    </message>
    <message>
        <source>Stubble</source>
        <translation>Altura da resteva</translation>
    </message>
    <message>
        <source>Processor</source>
        <translation>Processador</translation>
    </message>
    <message>
        <source>Record the setting</source>
        <translation>Registrar a regulagem</translation>
    </message>
    <message>
        <source>give a length of cut, a gap or the stubble</source>
        <translation>informe o comprimento de corte, a folga ou a resteva</translation>
    </message>
    <message>
        <source>What is left at nothing stays as it was. Stubble of 15 to 20 cm is common practice.</source>
        <translation>O que fica em branco continua como estava. Resteva de 15 a 20 cm é prática comum.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::SieveForm</name>
    <message>
        <source>What it should be …</source>
        <translation>Como deve ser …</translation>
    </message>
    <message>
        <source>19, 8, 4 mm and pan</source>
        <translation>19, 8, 4 mm e fundo</translation>
    </message>
    <message>
        <source>19, 8, 1.18 mm and pan</source>
        <translation>19, 8, 1,18 mm e fundo</translation>
    </message>
    <message>
        <source>Five screens and pan</source>
        <translation>Cinco peneiras e fundo</translation>
    </message>
    <message>
        <source>Other sieves</source>
        <translation>Outras peneiras</translation>
    </message>
    <message>
        <source>Weights</source>
        <translation>Pesos</translation>
    </message>
    <message>
        <source>Percent</source>
        <translation>Em %</translation>
    </message>
    <message>
        <source>Sieves</source>
        <translation>Peneiras</translation>
    </message>
    <message>
        <source>Openings in mm, widest first</source>
        <translation>Aberturas em mm, da maior</translation>
    </message>
    <message>
        <source>Given as</source>
        <translation>Dados em</translation>
    </message>
    <message>
        <source>Sample before sieving</source>
        <translation>Amostra antes</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Em %1</translation>
    </message>
    <message>
        <source>In the pan</source>
        <translation>No fundo</translation>
    </message>
    <message>
        <source>Length on the top sieve</source>
        <translation>Comprimento na de cima</translation>
    </message>
    <message>
        <source>Wet from rain or dew</source>
        <translation>Molhada de chuva ou orvalho</translation>
    </message>
    <message>
        <source>Record the sieve test</source>
        <translation>Registrar as peneiras</translation>
    </message>
    <message>
        <source>Give the openings from the widest down, as 19 8 4.</source>
        <translation>Informe as aberturas da maior para a menor, como 19 8 4.</translation>
    </message>
    <message>
        <source>Together %1.</source>
        <translation>Ao todo %1.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::VisitForm</name>
    <message>
        <source>Whole plants</source>
        <translation>Plantas inteiras</translation>
    </message>
    <message>
        <source>Milk line from the crown</source>
        <translation>Linha do leite desde a coroa</translation>
    </message>
    <message>
        <source>Planted</source>
        <translation>Plantado</translation>
    </message>
    <message>
        <source>Silked</source>
        <translation>Espigado</translation>
    </message>
    <message>
        <source>Days of the hybrid</source>
        <translation>Dias do híbrido</translation>
    </message>
    <message>
        <source>Record the visit</source>
        <translation>Registrar a visita</translation>
    </message>
    <message>
        <source>choose the field above</source>
        <translation>escolha o talhão acima</translation>
    </message>
    <message>
        <source>What is left at nothing stays as it was seen before.</source>
        <translation>O que fica em branco continua como foi visto antes.</translation>
    </message>
    <message>
        <source>Sample whole plants now: the line alone does not tell the dry matter.</source>
        <translation>Amostre plantas inteiras agora: a linha sozinha não diz a matéria seca.</translation>
    </message>
    <message>
        <source>Below a third: too early to sample.</source>
        <translation>Abaixo de um terço: cedo demais para amostrar.</translation>
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
    <message>
        <source>What if</source>
        <translation>E se</translation>
    </message>
    <message>
        <source>Tractors and layer are tried, and nothing is recorded</source>
        <translation>Tratores e camada são experimentados e nada é registrado</translation>
    </message>
    <message>
        <source>Move the tractors so, and record the decision</source>
        <translation>Move os tratores assim e registra a decisão</translation>
    </message>
</context>
<context>
    <name>treadwell::widgets::AttentionPanel</name>
    <message>
        <source>Source: %1</source>
        <translation>Fonte: %1</translation>
    </message>
    <message>
        <source>Put away: %1</source>
        <translation>Dispensar: %1</translation>
    </message>
    <message>
        <source>Put away</source>
        <translation>Dispensar</translation>
    </message>
    <message>
        <source>What matters now</source>
        <translation>O que importa agora</translation>
    </message>
    <message>
        <source>Nothing to say from what is known now.</source>
        <translation>Nada a dizer com o que se sabe agora.</translation>
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
    <name>treadwell::widgets::FaceMapView</name>
    <message>
        <source>No core yet.</source>
        <translation>Nenhuma amostra ainda.</translation>
    </message>
    <message numerus="yes">
        <source>The face at %1 from the back wall, %n core(s). Point at a place.</source>
        <translation>
            <numerusform>O painel a %1 da parede do fundo, %n amostra. Aponte um lugar.</numerusform>
            <numerusform>O painel a %1 da parede do fundo, %n amostras. Aponte um lugar.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, 80 % band %2</source>
        <translation>%1, faixa de 80 % %2</translation>
    </message>
    <message>
        <source>%1 from the left wall, %2 up</source>
        <translation>%1 da parede esquerda, %2 acima do piso</translation>
    </message>
    <message>
        <source>%1: by the cores %2; predicted %3</source>
        <translation>%1: pelas amostras %2; previsto %3</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>The opened face</source>
        <translation>O painel aberto</translation>
    </message>
    <message>
        <source>By the cores</source>
        <translation>Pelas amostras</translation>
    </message>
    <message>
        <source>Half of its band, %1</source>
        <translation>Metade da faixa, %1</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>Previsto</translation>
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
    <name>treadwell::widgets::StepField</name>
    <message>
        <source>%1: less</source>
        <translation>%1: menos</translation>
    </message>
    <message>
        <source>%1: more</source>
        <translation>%1: mais</translation>
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
        <translation>%1: mais</translation>
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
    <message>
        <source>Drag to another zone, or click and then click the zone; arrow keys move too; hold for its mass</source>
        <translation>Arraste para outra zona, ou clique e depois clique na zona; as setas também movem; segure para a massa</translation>
    </message>
    <message>
        <source>about %1</source>
        <comment>a mass known by its class alone</comment>
        <translation>cerca de %1</translation>
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
<context>
    <name>PlanNumbers</name>
    <message>
        <source>Dry matter</source>
        <translation>Matéria seca</translation>
    </message>
    <message>
        <source>Layer as spread</source>
        <translation>Camada espalhada</translation>
    </message>
    <message>
        <source>Working day</source>
        <translation>Jornada</translation>
    </message>
    <message>
        <source>Harvester while it chops</source>
        <translation>Colhedora enquanto pica</translation>
    </message>
    <message>
        <source>Part of the time that it chops</source>
        <translation>Parte do tempo em que pica</translation>
    </message>
    <message>
        <source>Load of a truck</source>
        <translation>Carga de um caminhão</translation>
    </message>
    <message>
        <source>Speed on the road</source>
        <translation>Velocidade na estrada</translation>
    </message>
    <message>
        <source>Tipping</source>
        <translation>Descarga</translation>
    </message>
    <message>
        <source>Weighing, gates, turning</source>
        <translation>Pesagem, porteiras, manobras</translation>
    </message>
    <message>
        <source>What is spread in an hour</source>
        <translation>O que se espalha em uma hora</translation>
    </message>
    <message>
        <source>Least density</source>
        <translation>Densidade mínima</translation>
    </message>
    <message>
        <source>A tonne of dry matter</source>
        <translation>Uma tonelada de matéria seca</translation>
    </message>
    <message>
        <source>A litre of fuel</source>
        <translation>Um litro de combustível</translation>
    </message>
    <message>
        <source>A driver&apos;s hour</source>
        <translation>Hora de um motorista</translation>
    </message>
    <message>
        <source>The harvester&apos;s hour</source>
        <translation>Hora da colhedora</translation>
    </message>
    <message>
        <source>A truck&apos;s hour, driver included</source>
        <translation>Hora de um caminhão, com motorista</translation>
    </message>
    <message>
        <source>The farm&apos;s own loss</source>
        <translation>Perda própria da fazenda</translation>
    </message>
    <message>
        <source>at a density of</source>
        <translation>com densidade de</translation>
    </message>
    <message>
        <source>Width of a sheet</source>
        <translation>Largura de uma lona</translation>
    </message>
    <message>
        <source>Overlap of sheets</source>
        <translation>Sobreposição das lonas</translation>
    </message>
    <message>
        <source>Lap over walls and edges</source>
        <translation>Dobra sobre paredes e bordas</translation>
    </message>
    <message>
        <source>Tyres a square metre</source>
        <translation>Pneus por metro quadrado</translation>
    </message>
    <message>
        <source>Litres of treatment a square metre</source>
        <translation>Litros de tratamento por metro quadrado</translation>
    </message>
    <message>
        <source>People in the crew</source>
        <translation>Pessoas na equipe</translation>
    </message>
    <message>
        <source>Minutes of one person a square metre</source>
        <translation>Minutos de uma pessoa por metro quadrado</translation>
    </message>
    <message>
        <source>The herd&apos;s dry matter a day</source>
        <translation>Matéria seca do rebanho por dia</translation>
    </message>
    <message>
        <source>Face a day in summer, at least</source>
        <translation>Painel por dia no verão, no mínimo</translation>
    </message>
    <message>
        <source>Face a day in winter, at least</source>
        <translation>Painel por dia no inverno, no mínimo</translation>
    </message>
    <message>
        <source>First month of summer</source>
        <translation>Primeiro mês do verão</translation>
    </message>
    <message>
        <source>Last month of summer</source>
        <translation>Último mês do verão</translation>
    </message>
    <message>
        <source>Days closed before opening</source>
        <translation>Dias fechado antes de abrir</translation>
    </message>
    <message>
        <source>Crop on it</source>
        <translation>Forragem nele</translation>
    </message>
    <message>
        <source>Road to the silo</source>
        <translation>Estrada até o silo</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Largura</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Comprimento</translation>
    </message>
    <message>
        <source>Height in the middle when full</source>
        <translation>Altura no meio quando cheio</translation>
    </message>
    <message>
        <source>Height of the walls</source>
        <translation>Altura das paredes</translation>
    </message>
    <message>
        <source>Slope of the ramp, run for one of rise</source>
        <translation>Rampa: avanço para um de subida</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Massa</translation>
    </message>
    <message>
        <source>Part of the time that it packs</source>
        <translation>Parte do tempo em que compacta</translation>
    </message>
    <message>
        <source>List price</source>
        <translation>Preço de tabela</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pago</translation>
    </message>
    <message>
        <source>Years of life</source>
        <translation>Anos de vida</translation>
    </message>
    <message>
        <source>Hours a year</source>
        <translation>Horas por ano</translation>
    </message>
    <message>
        <source>Interest a year</source>
        <translation>Juros ao ano</translation>
    </message>
    <message>
        <source>Power in kW</source>
        <translation>Potência em kW</translation>
    </message>
    <message>
        <source>Load of the engine</source>
        <translation>Carga do motor</translation>
    </message>
    <message>
        <source>Repairs and tyres an hour</source>
        <translation>Reparos e pneus por hora</translation>
    </message>
</context>
<context>
    <name>PlanPresenter</name>
    <message numerus="yes">
        <source>%1: %n truck(s) keep the harvester busy there; with fixed times it would be %2.</source>
        <translation>
            <numerusform>%1: %n caminhão mantém a colhedora ocupada ali; com tempos fixos seria %2.</numerusform>
            <numerusform>%1: %n caminhões mantêm a colhedora ocupada ali; com tempos fixos seriam %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: no number of trucks keeps the harvester busy there.</source>
        <translation>%1: nenhum número de caminhões mantém a colhedora ocupada ali.</translation>
    </message>
    <message>
        <source>%1: if one truck breaks, %2 loads an hour come, and the harvester waits %3.</source>
        <translation>%1: se um caminhão quebra, chegam %2 cargas por hora, e a colhedora espera %3.</translation>
    </message>
    <message>
        <source>%1: the tractors pack %2 (%3) and pass %4 times over each layer.</source>
        <translation>%1: os tratores compactam %2 (%3) e passam %4 vezes sobre cada camada.</translation>
    </message>
    <message>
        <source>%1: density %2; the chance of the %3 target is %4.</source>
        <translation>%1: densidade %2; a chance da meta de %3 é %4.</translation>
    </message>
    <message numerus="yes">
        <source>%1 and %n truck(s)</source>
        <comment>tractors</comment>
        <translation>
            <numerusform>%1 e %n caminhão</numerusform>
            <numerusform>%1 e %n caminhões</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 loads an hour; the harvester waits %3 of the day, a truck %4 min a load; %5 days of harvest.</source>
        <comment>field, band, band, band, days</comment>
        <translation>%1: %2 cargas por hora; a colhedora espera %3 do dia, um caminhão %4 min por carga; %5 dias de colheita.</translation>
    </message>
    <message>
        <source>Planned: %1. The hour costs %2; expected loss %3 at %4; %5 are left of a tonne of dry matter.</source>
        <translation>Planejado: %1. A hora custa %2; perda esperada %3 com %4; sobram %5 de uma tonelada de matéria seca.</translation>
    </message>
    <message numerus="yes">
        <source>No other of %n fleet(s) leaves more.</source>
        <translation>
            <numerusform>Nenhuma outra de %n frota deixa mais.</numerusform>
            <numerusform>Nenhuma outra de %n frotas deixa mais.</numerusform>
        </translation>
    </message>
    <message>
        <source>The best of those compared: %1. The hour costs %2; expected loss %3 at %4; %5 are left.</source>
        <translation>O melhor dos comparados: %1. A hora custa %2; perda esperada %3 com %4; sobram %5.</translation>
    </message>
    <message>
        <source>%1 costs %2, which is %3 of the crop&apos;s dry matter or %4 of density; it brings %5.</source>
        <translation>%1 custa %2, o que é %3 da matéria seca ou %4 de densidade; traz %5.</translation>
    </message>
    <message>
        <source>It pays from %1 on.</source>
        <translation>Compensa a partir de %1.</translation>
    </message>
    <message>
        <source>It does not pay at any delivery.</source>
        <translation>Não compensa em nenhuma entrega.</translation>
    </message>
    <message>
        <source>not reckoned</source>
        <translation>não calculado</translation>
    </message>
    <message>
        <source>%1 chance of room</source>
        <translation>chance de caber %1</translation>
    </message>
    <message>
        <source>slowest: %1</source>
        <translation>limita: %1</translation>
    </message>
    <message>
        <source>differs by field</source>
        <translation>varia por talhão</translation>
    </message>
    <message>
        <source>%1 a t DM left</source>
        <translation>%1 por t MS</translation>
    </message>
    <message>
        <source>%1 of film</source>
        <translation>%1 de filme</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 dias</translation>
    </message>
    <message>
        <source>Does it fit?</source>
        <translation>Cabe?</translation>
    </message>
    <message>
        <source>Does it flow?</source>
        <translation>Flui?</translation>
    </message>
    <message>
        <source>Does it pay?</source>
        <translation>Compensa?</translation>
    </message>
    <message>
        <source>How is it sealed?</source>
        <translation>Como se veda?</translation>
    </message>
    <message>
        <source>How is it fed?</source>
        <translation>Como se trata?</translation>
    </message>
    <message>
        <source>harvester</source>
        <translation>colhedora</translation>
    </message>
    <message>
        <source>trucks</source>
        <translation>caminhões</translation>
    </message>
    <message>
        <source>tipping</source>
        <translation>descarga</translation>
    </message>
    <message>
        <source>spreading</source>
        <translation>espalhamento</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>compactação</translation>
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
            <numerusform>%1 de forragem em %n talhão; a chance de que tudo caiba é %2.</numerusform>
            <numerusform>%1 de forragem em %n talhões; a chance de que tudo caiba é %2.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 holds %3 (%4) at the density that this fleet reaches, %5.</source>
        <comment>silo, volume, mass, band of mass, density with band</comment>
        <translation>%1: %2 guarda %3 (%4) na densidade que esta frota alcança, %5.</translation>
    </message>
    <message>
        <source>%1 up to %2</source>
        <comment>volume, height</comment>
        <translation>%1 até %2</translation>
    </message>
    <message>
        <source>%1 from %2 go into %3.</source>
        <comment>mass, field, silo</comment>
        <translation>%1 de %2 vão para %3.</translation>
    </message>
    <message>
        <source>Left over: %1 (%2).</source>
        <translation>Sobram: %1 (%2).</translation>
    </message>
    <message>
        <source>Nothing is left over.</source>
        <translation>Nada sobra.</translation>
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
            <numerusform>%1 está cheio em %2. Cubra então, com %n peça de filme barreira e uma de lona preta e branca por cima, %3 de cada; %4 de lonas laterais; %5 pneus.</numerusform>
            <numerusform>%1 está cheio em %2. Cubra então, com %n peças de filme barreira e outras tantas de lona preta e branca por cima, %3 de cada; %4 de lonas laterais; %5 pneus.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 of treatment on the surface.</source>
        <comment>silo, litres</comment>
        <translation>%1: %2 de tratamento na superfície.</translation>
    </message>
    <message>
        <source>%1: the crew of %2 is at it for %3. A day&apos;s wait costs about %4, %5.</source>
        <comment>silo, people, time, mass, money</comment>
        <translation>%1: a equipe de %2 leva %3. Um dia de espera custa cerca de %4, %5.</translation>
    </message>
    <message>
        <source>%1: %2, feed for %3 days; opened on %4, and the next must be open by %5.</source>
        <comment>silo, mass, days, day, day</comment>
        <translation>%1: %2, trato para %3 dias; aberto em %4, e o próximo tem de estar aberto até %5.</translation>
    </message>
    <message>
        <source>%1: the herd moves the face of %2 by %3 a day. At this height it may be %4 wide in summer and %5 in winter.</source>
        <comment>silo, area, length, width, width</comment>
        <translation>%1: o rebanho avança o painel de %2 em %3 por dia. Nesta altura pode ter %4 de largura no verão e %5 no inverno.</translation>
    </message>
    <message numerus="yes">
        <source>%1: on %n day(s) of feed that is too little for the season: the face heats.</source>
        <translation>
            <numerusform>%1: em %n dia de trato isso é pouco para a estação: o painel esquenta.</numerusform>
            <numerusform>%1: em %n dias de trato isso é pouco para a estação: o painel esquenta.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: silo gas until %2 at the earliest, 21 days after the last load.</source>
        <translation>%1: gás do silo pelo menos até %2, 21 dias após a última carga.</translation>
    </message>
    <message>
        <source>%1: %2 of effluent run out: have room for it.</source>
        <translation>%1: escorrem %2 de efluente: tenha lugar para ele.</translation>
    </message>
    <message numerus="yes">
        <source>On %n day(s) no silo is ripe to be opened.</source>
        <translation>
            <numerusform>Em %n dia nenhum silo pode ainda ser aberto.</numerusform>
            <numerusform>Em %n dias nenhum silo pode ainda ser aberto.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::ChainBand</name>
    <message>
        <source>%1: each link alone could carry: %2. The slowest is %3; %4 come in with fixed times.</source>
        <comment>field, links, link, rate</comment>
        <translation>%1: cada elo sozinho poderia levar: %2. O mais lento é %3; entram %4 com tempos fixos.</translation>
    </message>
    <message>
        <source>The chain from the field to the silo</source>
        <translation>A cadeia do talhão ao silo</translation>
    </message>
    <message>
        <source>%1: the channel is as wide as each link could carry; the crop fills it</source>
        <translation>%1: o canal tem a largura do que cada elo poderia levar; a forragem o enche</translation>
    </message>
    <message>
        <source>slowest</source>
        <translation>mais lento</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::Decisions</name>
    <message>
        <source>%1, packs %2 of the time</source>
        <translation>%1, compacta %2 do tempo</translation>
    </message>
    <message>
        <source>%1, %2 of road</source>
        <translation>%1, %2 de estrada</translation>
    </message>
    <message>
        <source>%1 by %2, %3 high</source>
        <translation>%1 por %2, %3 de altura</translation>
    </message>
    <message>
        <source>%1 counts</source>
        <translation>%1 conta</translation>
    </message>
    <message>
        <source>%1 is left out</source>
        <translation>%1 fica de fora</translation>
    </message>
    <message>
        <source>%1; one has to stay</source>
        <translation>%1; um tem de ficar</translation>
    </message>
    <message>
        <source>Change %1</source>
        <translation>Mudar %1</translation>
    </message>
    <message>
        <source>Tractors that pack</source>
        <translation>Tratores que compactam</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Talhões</translation>
    </message>
    <message>
        <source>Silos</source>
        <translation>Silos</translation>
    </message>
    <message>
        <source>Trucks</source>
        <translation>Caminhões</translation>
    </message>
    <message>
        <source>What is decided</source>
        <translation>O que se decide</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::PlanPage</name>
    <message>
        <source>Try another</source>
        <translation>Outro</translation>
    </message>
    <message>
        <source>A copy to change</source>
        <translation>Uma cópia para mudar</translation>
    </message>
    <message>
        <source>One truck fewer</source>
        <translation>Um caminhão a menos</translation>
    </message>
    <message>
        <source>Two more trucks</source>
        <translation>Mais dois caminhões</translation>
    </message>
    <message>
        <source>Without the lightest tractor</source>
        <translation>Sem o trator mais leve</translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>Tirar</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Voltar</translation>
    </message>
    <message>
        <source>Crop and work</source>
        <translation>Forragem e trabalho</translation>
    </message>
    <message>
        <source>Prices</source>
        <translation>Preços</translation>
    </message>
    <message>
        <source>Prices, in the farm&apos;s own currency</source>
        <translation>Preços, na moeda da fazenda</translation>
    </message>
    <message>
        <source>Sealing</source>
        <translation>Vedação</translation>
    </message>
    <message>
        <source>Feeding</source>
        <translation>Trato</translation>
    </message>
    <message>
        <source>The step is not recorded: %1</source>
        <translation>O passo não foi registrado: %1</translation>
    </message>
    <message>
        <source>Surface treatment</source>
        <translation>Tratamento de superfície</translation>
    </message>
    <message>
        <source>Reckoning …</source>
        <translation>Calculando …</translation>
    </message>
    <message>
        <source>Side by side</source>
        <translation>Lado a lado</translation>
    </message>
    <message numerus="yes">
        <source>%n plan(s)</source>
        <translation>
            <numerusform>%n plano</numerusform>
            <numerusform>%n planos</numerusform>
        </translation>
    </message>
    <message>
        <source>Plans side by side</source>
        <translation>Planos lado a lado</translation>
    </message>
    <message>
        <source>side sheets</source>
        <translation>lonas laterais</translation>
    </message>
    <message>
        <source>surface treatment</source>
        <translation>tratamento de superfície</translation>
    </message>
    <message>
        <source>barrier film</source>
        <translation>filme barreira</translation>
    </message>
    <message>
        <source>black-and-white sheet</source>
        <translation>lona preta e branca</translation>
    </message>
    <message>
        <source>weights</source>
        <translation>pesos</translation>
    </message>
    <message>
        <source>edges sealed</source>
        <translation>bordas vedadas</translation>
    </message>
    <message>
        <source>%1: %2, by %3</source>
        <comment>silo, step, day</comment>
        <translation>%1: %2, até %3</translation>
    </message>
    <message numerus="yes">
        <source>%n tyre(s)</source>
        <translation>
            <numerusform>%n pneu</numerusform>
            <numerusform>%n pneus</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 done, last on %2 at %3</source>
        <comment>part, day, time</comment>
        <translation>%1 feito, por último em %2 às %3</translation>
    </message>
    <message>
        <source>The five questions: fits, flows, pays, seals, feeds</source>
        <translation>As cinco perguntas: cabe, flui, compensa, veda, trata</translation>
    </message>
    <message>
        <source>The plans side by side</source>
        <translation>Os planos lado a lado</translation>
    </message>
    <message>
        <source>Ctrl+N</source>
        <translation>Ctrl+N</translation>
    </message>
    <message>
        <source>Try another plan beside this one</source>
        <translation>Tentar outro plano ao lado deste</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>Take the last change of the plans back</source>
        <translation>Desfazer a última mudança dos planos</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Enter</translation>
    </message>
    <message>
        <source>Adopt this plan as the season&apos;s</source>
        <translation>Adotar este plano para a safra</translation>
    </message>
    <message>
        <source>The plan is not adopted: %1</source>
        <translation>O plano não foi adotado: %1</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>Step by step: a touch records when it was done</source>
        <translation>Passo a passo: um toque registra quando foi feito</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>A copy</source>
        <translation>Uma cópia</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::PlanSheet</name>
    <message>
        <source>Take it over</source>
        <translation>Assumir</translation>
    </message>
    <message>
        <source>Name of the plan</source>
        <translation>Nome do plano</translation>
    </message>
    <message>
        <source>A plan has a name.</source>
        <translation>Um plano tem nome.</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::ScenarioCards</name>
    <message>
        <source>%1 come in, %2 days of harvest</source>
        <comment>rate, days</comment>
        <translation>entram %1, %2 dias de colheita</translation>
    </message>
    <message>
        <source>Density %1</source>
        <comment>median and band</comment>
        <translation>Densidade %1</translation>
    </message>
    <message>
        <source>Chance of the target %1</source>
        <translation>Chance da meta %1</translation>
    </message>
    <message>
        <source>Chance of room %1, left over %2</source>
        <comment>chance, mass</comment>
        <translation>Chance de caber %1, sobram %2</translation>
    </message>
    <message>
        <source>Expected loss %1</source>
        <translation>Perda esperada %1</translation>
    </message>
    <message>
        <source>The hour costs %1; %2 are left of a t DM</source>
        <comment>cost, money</comment>
        <translation>A hora custa %1; sobram %2 por t MS</translation>
    </message>
    <message>
        <source>Plans side by side</source>
        <translation>Planos lado a lado</translation>
    </message>
    <message>
        <source>This is the season&apos;s plan.</source>
        <translation>Este é o plano da safra.</translation>
    </message>
    <message>
        <source>Against %1:</source>
        <translation>Em relação a %1:</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>button, plan</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation>Olhar</translation>
    </message>
    <message>
        <source>Adopt as the season&apos;s plan</source>
        <translation>Adotar para a safra</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::SealingPanel</name>
    <message>
        <source>Done now</source>
        <translation>Feito agora</translation>
    </message>
    <message>
        <source>Done now: %1</source>
        <translation>Feito agora: %1</translation>
    </message>
</context>
<context>
    <name>treadwell::plan_page::SiloDrawing</name>
    <message>
        <source>%1, a pile of %2 by %3 and %4 high; all its sides rise 1:%5.</source>
        <comment>name, width, length, height, run</comment>
        <translation>%1, uma pilha de %2 por %3 e %4 de altura; todos os lados sobem 1:%5.</translation>
    </message>
    <message numerus="yes">
        <source>%1, %2 wide and %3 long, walls %4, %5 high in the middle; %n ramp(s) of 1:%6.</source>
        <comment>name, width, length, height, height, run</comment>
        <translation>
            <numerusform>%1, %2 de largura e %3 de comprimento, paredes %4, %5 de altura no meio; %n rampa de 1:%6.</numerusform>
            <numerusform>%1, %2 de largura e %3 de comprimento, paredes %4, %5 de altura no meio; %n rampas de 1:%6.</numerusform>
        </translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Cuidado: %1</translation>
    </message>
    <message>
        <source>Drawing of the silo</source>
        <translation>Desenho do silo</translation>
    </message>
    <message>
        <source>from the side and from above, to scale; ramp 1:%1</source>
        <comment>its run</comment>
        <translation>de lado e de cima, em escala; rampa 1:%1</translation>
    </message>
    <message>
        <source>across, larger</source>
        <translation>em corte, maior</translation>
    </message>
    <message>
        <source>%1 long</source>
        <translation>%1 de comprimento</translation>
    </message>
    <message>
        <source>%1 wide, %2 high</source>
        <translation>%1 de largura, %2 de altura</translation>
    </message>
</context>
<context>
    <name>RealDay</name>
    <message>
        <source>%1 to %2</source>
        <comment>at least and at most</comment>
        <translation>%1 a %2</translation>
    </message>
    <message numerus="yes">
        <source>%1, %n load(s)</source>
        <translation>
            <numerusform>%1, %n carga</numerusform>
            <numerusform>%1, %n cargas</numerusform>
        </translation>
    </message>
    <message>
        <source>a tractor that is not known</source>
        <translation>um trator desconhecido</translation>
    </message>
    <message>
        <source>Three passes or more for certain on %1 % of the layer, fewer for certain on %2 %, no tyre on %3 %; on %4 % the positions do not tell.</source>
        <translation>Com certeza três passadas ou mais em %1 % da camada, com certeza menos em %2 %, nenhum pneu em %3 %; em %4 % as posições não dizem.</translation>
    </message>
    <message>
        <source>too few</source>
        <translation>poucas</translation>
    </message>
    <message>
        <source>as advised</source>
        <translation>como se recomenda</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>não se sabe</translation>
    </message>
    <message>
        <source>%1: %2 positions, %3 of them precise enough for wheels, %4 outside the silo</source>
        <translation>%1: %2 posições, %3 delas precisas o bastante para rodas, %4 fora do silo</translation>
    </message>
    <message numerus="yes">
        <source>%n of them left out: damaged, or impossible for a tractor</source>
        <translation>
            <numerusform>%n delas deixada de fora: danificada, ou impossível para um trator</numerusform>
            <numerusform>%n delas deixadas de fora: danificadas, ou impossíveis para um trator</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing that the tracks can tell.</source>
        <translation>Nada que os percursos possam dizer.</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Layer %1</source>
        <translation>Camada %1</translation>
    </message>
    <message numerus="yes">
        <source>%n position(s) of later days are not looked at here</source>
        <translation>
            <numerusform>%n posição de dias posteriores não é vista aqui</numerusform>
            <numerusform>%n posições de dias posteriores não são vistas aqui</numerusform>
        </translation>
    </message>
    <message>
        <source>Layer %1, under way</source>
        <translation>Camada %1, em andamento</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::BandsView</name>
    <message>
        <source>Simulation and regression</source>
        <translation>Simulação e regressão</translation>
    </message>
    <message>
        <source>simulation</source>
        <translation>simulação</translation>
    </message>
    <message>
        <source>regression</source>
        <translation>regressão</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::CoverageView</name>
    <message>
        <source>No track is laid.</source>
        <translation>Nenhum percurso foi colocado.</translation>
    </message>
    <message>
        <source>Passes over the layer</source>
        <translation>Passadas sobre a camada</translation>
    </message>
    <message>
        <source>three passes or more, for certain</source>
        <translation>três passadas ou mais, com certeza</translation>
    </message>
    <message>
        <source>the positions do not tell</source>
        <translation>as posições não dizem</translation>
    </message>
    <message>
        <source>fewer than three, for certain</source>
        <translation>menos de três, com certeza</translation>
    </message>
    <message>
        <source>no tyre</source>
        <translation>nenhum pneu</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::PlaceForm</name>
    <message>
        <source>Where this silo lies is not recorded: the corner of back wall and left wall, seen from the back wall, and the direction of the left wall from there, in degrees from north.</source>
        <translation>Não está registrado onde fica este silo: o canto da parede do fundo com a parede esquerda, visto da parede do fundo, e a direção da parede esquerda a partir dali, em graus desde o norte.</translation>
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
        <translation>Direção</translation>
    </message>
    <message>
        <source>Record the place</source>
        <translation>Registrar o lugar</translation>
    </message>
</context>
<context>
    <name>treadwell::practice_page::RealDayView</name>
    <message>
        <source>Reading the tracks: %1 %</source>
        <translation>Lendo os percursos: %1 %</translation>
    </message>
    <message>
        <source>Reading the tracks</source>
        <translation>Lendo os percursos</translation>
    </message>
    <message>
        <source>The day is being replayed.</source>
        <translation>O dia está sendo repetido.</translation>
    </message>
    <message>
        <source>No crop was tipped here yet: there is no day to look back on.</source>
        <translation>Ainda não se descarregou nada aqui: não há dia para rever.</translation>
    </message>
    <message>
        <source>No track of this day is attached: choose the tractor and attach its file.</source>
        <translation>Nenhum percurso deste dia está anexado: escolha o trator e anexe o arquivo dele.</translation>
    </message>
    <message>
        <source>A track can be laid once it is recorded where the silo lies.</source>
        <translation>Um percurso só cabe depois de registrado onde o silo fica.</translation>
    </message>
    <message>
        <source>No track is chosen.</source>
        <translation>Nenhum percurso está escolhido.</translation>
    </message>
    <message>
        <source>No track lies on a layer of this silo: check where it lies, its direction and the clocks.</source>
        <translation>Nenhum percurso passa por uma camada deste silo: verifique onde ele fica, a direção e os relógios.</translation>
    </message>
    <message>
        <source>Layer %1. %2</source>
        <translation>Camada %1. %2</translation>
    </message>
    <message>
        <source>Full bars: the field regression; hatched: the simulation of every wheel pass; dashed: the density that is wanted. The simulation was fitted to the regression: it is a second opinion on how the passes were spread, no second measurement.</source>
        <translation>Barras cheias: a regressão de campo; tracejadas: a simulação de cada passada de roda; linha interrompida: a densidade desejada. A simulação foi ajustada à regressão: é uma segunda opinião sobre a distribuição das passadas, não uma segunda medição.</translation>
    </message>
    <message>
        <source>Reading %1</source>
        <translation>Lendo %1</translation>
    </message>
    <message>
        <source>Attach a track</source>
        <translation>Anexar um percurso</translation>
    </message>
    <message>
        <source>Tracks (*.gpx *.nmea *.txt *.log);;All files (*)</source>
        <translation>Percursos (*.gpx *.nmea *.txt *.log);;Todos os arquivos (*)</translation>
    </message>
    <message>
        <source>As it was: %1</source>
        <translation>Como foi: %1</translation>
    </message>
    <message>
        <source>A lesson of this day</source>
        <translation>Uma lição deste dia</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Dia</translation>
    </message>
    <message>
        <source>Tracks of the day</source>
        <translation>Percursos do dia</translation>
    </message>
    <message>
        <source>Tractor of the track</source>
        <translation>Trator do percurso</translation>
    </message>
    <message>
        <source>Attach its track</source>
        <translation>Anexar o percurso dele</translation>
    </message>
    <message>
        <source>Passes over each layer</source>
        <translation>Passadas sobre cada camada</translation>
    </message>
    <message>
        <source>Layer</source>
        <translation>Camada</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Passadas</translation>
    </message>
    <message>
        <source>Three or more</source>
        <translation>Três ou mais</translation>
    </message>
    <message>
        <source>No tyre</source>
        <translation>Nenhum pneu</translation>
    </message>
    <message>
        <source>Rule: three</source>
        <translation>Regra: três</translation>
    </message>
    <message>
        <source>What went wrong, and where</source>
        <translation>O que deu errado, e onde</translation>
    </message>
    <message>
        <source>The tracks</source>
        <translation>Os percursos</translation>
    </message>
    <message>
        <source>Simulation beside the regression: %1, with the 80 % band</source>
        <translation>Simulação ao lado da regressão: %1, com a faixa de 80 %</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::OrderPanel</name>
    <message>
        <source>Cut in a day</source>
        <translation>Cortado por dia</translation>
    </message>
    <message>
        <source>Days a change of hybrid costs</source>
        <translation>Dias que custa trocar de híbrido</translation>
    </message>
    <message>
        <source>Days of rain from today on</source>
        <translation>Dias de chuva a partir de hoje</translation>
    </message>
    <message>
        <source>%1 will yield</source>
        <comment>field</comment>
        <translation>%1 vai render</translation>
    </message>
    <message>
        <source>Order of the fields</source>
        <translation>Ordem dos talhões</translation>
    </message>
    <message>
        <source>No whole plants of a field were sampled yet.</source>
        <translation>Ainda não há amostra de plantas inteiras de um talhão.</translation>
    </message>
    <message>
        <source>Give what is cut in a day and what each field will yield.</source>
        <translation>Informe quanto se corta por dia e quanto cada talhão vai render.</translation>
    </message>
    <message>
        <source>%1. %2: %3 to %4, %5</source>
        <comment>place, field, first and last day, dry matter</comment>
        <translation>%1. %2: %3 a %4, %5</translation>
    </message>
    <message>
        <source>At the silo %1 by mass; %2 cut outside the goal.</source>
        <comment>dry matter, mass</comment>
        <translation>No silo %1 pela massa; %2 cortados fora da meta.</translation>
    </message>
    <message>
        <source>More than eight fields: not every order was tried.</source>
        <translation>Mais de oito talhões: nem toda ordem foi tentada.</translation>
    </message>
</context>
<context>
    <name>treadwell::samples_page::RangesDialog</name>
    <message>
        <source>What the chop should be</source>
        <translation>Como o picado deve ser</translation>
    </message>
    <message>
        <source>Crop</source>
        <translation>Cultura</translation>
    </message>
    <message>
        <source>Processor</source>
        <translation>Processador</translation>
    </message>
    <message>
        <source>Maize</source>
        <translation>Milho</translation>
    </message>
    <message>
        <source>Grass</source>
        <translation>Capim</translation>
    </message>
    <message>
        <source>Lucerne</source>
        <translation>Alfafa</translation>
    </message>
    <message>
        <source>No processor</source>
        <translation>Sem processador</translation>
    </message>
    <message>
        <source>Rolls</source>
        <translation>Rolos</translation>
    </message>
    <message>
        <source>Rolls for a long cut</source>
        <translation>Rolos para corte longo</translation>
    </message>
    <message>
        <source>Below %1</source>
        <translation>Abaixo de %1</translation>
    </message>
    <message>
        <source>On %1</source>
        <translation>Sobre %1</translation>
    </message>
    <message>
        <source>%1, at least</source>
        <translation>%1, no mínimo</translation>
    </message>
    <message>
        <source>%1, at most</source>
        <translation>%1, no máximo</translation>
    </message>
    <message>
        <source>Record the ranges</source>
        <translation>Registrar as faixas</translation>
    </message>
</context>
</TS>
