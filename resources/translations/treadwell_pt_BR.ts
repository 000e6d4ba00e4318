<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pt_BR">
<context>
    <name>Phrase</name>
    <message>
        <source>Give a core its depth below the surface or its height above the floor, one of the two</source>
        <translation>Informe de cada amostra a profundidade abaixo da superfície ou a altura acima do piso, uma das duas</translation>
    </message>
    <message>
        <source>Give a core one way to its density: dry matter and mass with diameter and length, or with the volume, or the density itself</source>
        <translation>Informe um só caminho para a densidade da amostra: matéria seca e massa com diâmetro e comprimento, ou com o volume, ou a própria densidade</translation>
    </message>
    <message>
        <source>Cores narrowed the band: {1} of them, from +-{2} to +-{3}</source>
        <translation>As amostras estreitaram a faixa: {1} delas, de +-{2} para +-{3}</translation>
    </message>
    <message>
        <source>Measurements narrowed the band from +-{4} to +-{5}: cores {1}, face balances {2}, height surveys {3}</source>
        <translation>As medições estreitaram a faixa de +-{4} para +-{5}: amostras do painel {1}, balanços do painel {2}, levantamentos de altura {3}</translation>
    </message>
    <message>
        <source>The measurements ({1}) differ by more than was taken for usual: the band went from +-{2} to +-{3}</source>
        <translation>As medições ({1}) diferem mais do que se tinha por usual: a faixa passou de +-{2} para +-{3}</translation>
    </message>
    <message>
        <source>Loose material from the loader gives dry matter, chop and feed value, no density: cut a block, or core by machine</source>
        <translation>Material solto da carregadeira dá matéria seca, picado e valor nutritivo, não densidade: corte um bloco ou amostre com máquina</translation>
    </message>
    <message>
        <source>Nothing recorded lies where this core came from: check its position and the loads</source>
        <translation>Nada do que foi registrado está onde esta amostra foi tirada: confira a posição e as cargas</translation>
    </message>
    <message>
        <source>Not recorded in the season: {1}. What was entered is kept in this program alone: leave it open until the season can be written</source>
        <translation>Não gravado na safra: {1}. O que foi registrado está guardado só neste programa: deixe-o aberto até que a safra possa ser escrita</translation>
    </message>
    <message>
        <source>Entries that could not be recorded earlier wait in {1}, and line {2} cannot be read: mend the line, or move the file away and enter them anew</source>
        <translation>Registros que não puderam ser gravados antes esperam em {1}, e a linha {2} não pode ser lida: conserte a linha, ou mova o arquivo e registre-os de novo</translation>
    </message>
    <message>
        <source>{1} holds no entry: start the season in a new file</source>
        <translation>{1} não contém nenhum registro: comece a safra em um arquivo novo</translation>
    </message>
    <message>
        <source>The entry {1} has been taken back: enter it anew</source>
        <translation>O registro {1} foi anulado: registre-o de novo</translation>
    </message>
    <message>
        <source>An entry of the kind {1} cannot be corrected by one of the kind {2}: take it back and enter the other</source>
        <translation>Um registro do tipo {1} não pode ser corrigido por um do tipo {2}: anule-o e registre o outro</translation>
    </message>
    <message>
        <source>{1} is an older copy: entries that this machine has written since are missing in it; look for the newer file. This machine goes on in it as a new device</source>
        <translation>{1} é uma cópia mais antiga: faltam nela registros que esta máquina fez depois; procure o arquivo mais novo. Esta máquina continua nela como um novo aparelho</translation>
    </message>
    <message>
        <source>The content of entry {2} of device {1} cannot be read: it is kept and not counted; compare the file with a backup</source>
        <translation>O conteúdo da entrada {2} do aparelho {1} não pode ser lido: ela é guardada e não entra na conta; compare o arquivo com uma cópia de segurança</translation>
    </message>
    <message>
        <source>Not recorded in the season: {2}. What was entered is kept in {1} and will be recorded as soon as the season can be written</source>
        <translation>Não gravado na safra: {2}. O que foi registrado está guardado em {1} e será gravado assim que a safra puder ser escrita</translation>
    </message>
    <message>
        <source>Not recorded in the season yet: first say whether this machine&apos;s clock is right. What was entered is kept in {1} and will get the right time</source>
        <translation>Ainda não gravado na safra: diga primeiro se o relógio desta máquina está certo. O que foi registrado está guardado em {1} e receberá a hora certa</translation>
    </message>
    <message>
        <source>Some of the entries recorded now were made before this program was started again, while the clock was in question: they stand at the latest times they can have; correct those that were earlier</source>
        <translation>Alguns dos registros gravados agora foram feitos antes de este programa ser iniciado de novo, com o relógio em dúvida: estão nas horas mais tardias que podem ter; corrija os que foram antes</translation>
    </message>
    <message>
        <source>Entries that could not be recorded earlier are recorded now ({1}): look them through</source>
        <translation>Registros que não puderam ser gravados antes estão gravados agora ({1}): confira-os</translation>
    </message>
    <message>
        <source>{1} is there already: choose another name, or move it away</source>
        <translation>{1} já existe: escolha outro nome ou mova esse arquivo</translation>
    </message>
    <message>
        <source>{1} is not a season of Treadwell: choose another file</source>
        <translation>{1} não é uma safra do Treadwell: escolha outro arquivo</translation>
    </message>
    <message>
        <source>{1} is damaged ({2}): keep it, and open its latest backup</source>
        <translation>{1} está danificado ({2}): guarde-o e abra a cópia de segurança mais recente</translation>
    </message>
    <message>
        <source>{1} is of layout {2} and this version writes {3}: open for reading only; a newer version of Treadwell writes it</source>
        <translation>{1} tem o formato {2} e esta versão grava o {3}: aberto somente para leitura; uma versão mais nova do Treadwell pode gravá-lo</translation>
    </message>
    <message>
        <source>{1} is of layout {2} and this version knows up to {3}: open it with a newer version of Treadwell</source>
        <translation>{1} tem o formato {2} e esta versão conhece até o {3}: abra-o com uma versão mais nova do Treadwell</translation>
    </message>
    <message>
        <source>{5} (process {2} on {3}) has been writing {1} since {4}: open for reading only; close it there to write here</source>
        <translation>{5} (processo {2} em {3}) grava {1} desde {4}: aberto só para leitura; feche lá para gravar aqui</translation>
    </message>
    <message>
        <source>{1} or its folder cannot be written: open for reading only; copy it to this machine to write</source>
        <translation>{1} ou sua pasta não pode ser gravada: aberto somente para leitura; copie-o para esta máquina para gravar</translation>
    </message>
    <message>
        <source>Entries of {1} still lie in the file beside it that ends in -wal, and the folder cannot be written: copy both together into a folder of this machine and open it there</source>
        <translation>Há registros de {1} ainda no arquivo ao lado que termina em -wal, e a pasta não pode ser gravada: copie os dois juntos para uma pasta desta máquina e abra-o lá</translation>
    </message>
    <message>
        <source>Nothing is recorded: {1} is open for reading only</source>
        <translation>Nada foi registrado: {1} está aberto somente para leitura</translation>
    </message>
    <message>
        <source>The entry is not recorded: {1} cannot be written ({2}); check the disk and its free space</source>
        <translation>O registro não foi gravado: {1} não pode ser escrito ({2}); confira o disco e o espaço livre</translation>
    </message>
    <message>
        <source>Entries of {1} still lie in the file beside it that ends in -wal, on a network drive: open it once for writing, or copy both together into a folder of this machine</source>
        <translation>Registros de {1} ainda estão no arquivo ao lado que termina em -wal, em uma unidade de rede: abra-o uma vez para gravar, ou copie os dois juntos para uma pasta desta máquina</translation>
    </message>
    <message>
        <source>{1} is damaged: open for reading only, with all that can be read, and left as it is; check it, and go on in a restored backup</source>
        <translation>{1} está danificado: aberto só para leitura, com tudo o que pode ser lido, e deixado como está; verifique-o e continue em uma cópia de segurança restaurada</translation>
    </message>
    <message>
        <source>{1} is not the file that was open before: entries that were recorded are missing in it; put the right file back</source>
        <translation>{1} não é o arquivo que estava aberto antes: faltam nele registros que já estavam gravados; devolva o arquivo certo</translation>
    </message>
    <message>
        <source>Row {1} (entry {3} of device {2}) is not as it was written, or one before it is not: something was changed outside Treadwell; compare it with a backup</source>
        <translation>A linha {1} (registro {3} do aparelho {2}) não está como foi escrita, ou uma anterior não está: algo foi mudado fora do Treadwell; compare com uma cópia de segurança</translation>
    </message>
    <message>
        <source>Entries of device {2} are missing before row {1}, its entry {3}: something was lost outside Treadwell; compare it with a backup</source>
        <translation>Faltam registros do aparelho {2} antes da linha {1}, o seu registro {3}: algo se perdeu fora do Treadwell; compare com uma cópia de segurança</translation>
    </message>
    <message>
        <source>Row {1} cannot be read ({2}): the file is damaged from there on; compare it with a backup</source>
        <translation>A linha {1} não pode ser lida ({2}): o arquivo está danificado a partir dali; compare com uma cópia de segurança</translation>
    </message>
    <message>
        <source>Every entry is whole, but the file&apos;s structure is damaged ({1}): make a backup, and go on in it once it has been checked</source>
        <translation>Todos os registros estão inteiros, mas a estrutura do arquivo está danificada ({1}): faça uma cópia de segurança e continue nela depois de verificada</translation>
    </message>
    <message>
        <source>No copy is made after a day&apos;s close</source>
        <translation>Nenhuma cópia é feita depois do fechamento do dia</translation>
    </message>
    <message>
        <source>After each day&apos;s close a copy goes into {1}</source>
        <translation>Depois do fechamento de cada dia uma cópia vai para {1}</translation>
    </message>
    <message>
        <source>After each day&apos;s close a copy goes into {1}; the newest there was made {2}</source>
        <translation>Depois do fechamento de cada dia uma cópia vai para {1}; a mais nova ali foi feita {2}</translation>
    </message>
    <message>
        <source>After each day&apos;s close a copy goes into {1}; none of this season lies there yet</source>
        <translation>Depois do fechamento de cada dia uma cópia vai para {1}; ainda não há ali nenhuma desta safra</translation>
    </message>
    <message>
        <source>After each day&apos;s close a copy is to go into {1}, which is not there now: plug it in, or choose another place</source>
        <translation>Depois do fechamento de cada dia uma cópia deve ir para {1}, que não está lá agora: conecte-o, ou escolha outro lugar</translation>
    </message>
    <message>
        <source>After each day&apos;s close a copy is to go into {1}, where nothing can be written: free it for writing, or choose another place</source>
        <translation>Depois do fechamento de cada dia uma cópia deve ir para {1}, onde nada pode ser gravado: libere a gravação, ou escolha outro lugar</translation>
    </message>
    <message>
        <source>The program that was writing {1} has ended: open for reading only still; take over to write here</source>
        <translation>O programa que estava gravando {1} terminou: ainda aberto só para leitura; assuma para gravar aqui</translation>
    </message>
    <message>
        <source>This machine&apos;s clock shows {1}, before the last entry at {2}: is the clock right? What is entered without a time waits for the answer; what is recorded stays in its order</source>
        <translation>O relógio desta máquina marca {1}, antes do último registro às {2}: o relógio está certo? O que for registrado sem hora espera a resposta; o que está gravado fica na sua ordem</translation>
    </message>
    <message>
        <source>This machine&apos;s clock was moved by {1} while the season was open: is it right now? What is entered without a time waits for the answer; what is recorded stays in its order</source>
        <translation>O relógio desta máquina foi mudado em {1} com a safra aberta: está certo agora? O que for registrado sem hora espera a resposta; o que está gravado fica na sua ordem</translation>
    </message>
    <message>
        <source>The copy at the day&apos;s close could not be put into {1} ({2}): the season itself is recorded; check the place and make the copy again</source>
        <translation>A cópia do fechamento do dia não pôde ser posta em {1} ({2}): a safra em si está gravada; verifique o lugar e faça a cópia de novo</translation>
    </message>
    <message>
        <source>Entry {2} of device {1} does not follow the last one here: the entries between them, or the right copy of the file, are needed</source>
        <translation>A entrada {2} do aparelho {1} não segue a última daqui: faltam as entradas entre elas, ou a cópia certa do arquivo</translation>
    </message>
    <message>
        <source>The file is written in UTF-16: save it as text in UTF-8</source>
        <translation>O arquivo está em UTF-16: salve-o como texto em UTF-8</translation>
    </message>
    <message>
        <source>A character of this file is &quot;{1}&quot; in one encoding and &quot;{2}&quot; in another: say which it uses (encoding: windows1252 or latin9)</source>
        <translation>Um caractere deste arquivo é &quot;{1}&quot; numa codificação e &quot;{2}&quot; noutra: diga qual ele usa (encoding: windows1252 ou latin9)</translation>
    </message>
    <message>
        <source>The file is not UTF-8: say which encoding it uses (encoding: windows1252 or latin9)</source>
        <translation>O arquivo não é UTF-8: diga que codificação ele usa (encoding: windows1252 ou latin9)</translation>
    </message>
    <message>
        <source>The columns may be parted by {1} or by {2}: say which (delimiter: comma, semicolon, tab or bar)</source>
        <translation>As colunas podem estar separadas por {1} ou por {2}: diga qual (delimiter: comma, semicolon, tab ou bar)</translation>
    </message>
    <message>
        <source>The file has no header row: its first line must name the columns</source>
        <translation>O arquivo não tem linha de cabeçalho: a primeira linha deve dar nome às colunas</translation>
    </message>
    <message>
        <source>A quotation mark opens here and never closes: check the quotation marks from this line on</source>
        <translation>Aqui abre uma aspa que nunca fecha: confira as aspas desta linha em diante</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; can be read in two ways: say which decimal sign the file uses (decimalSign: point or comma)</source>
        <translation>&quot;{1}&quot; pode ser lido de duas maneiras: diga que sinal decimal o arquivo usa (decimalSign: point ou comma)</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; has a point and &quot;{2}&quot; a comma as decimal sign: say which the file uses (decimalSign: point or comma)</source>
        <translation>&quot;{1}&quot; usa ponto e &quot;{2}&quot; usa vírgula como sinal decimal: diga qual o arquivo usa (decimalSign: point ou comma)</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no frame of this scale: check the profile, the baud rate and the parity</source>
        <translation>&quot;{1}&quot; não é um quadro desta balança: confira o perfil, a velocidade e a paridade da linha</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; may be the rest of a frame: the next one is awaited</source>
        <translation>&quot;{1}&quot; pode ser o resto de um quadro: o próximo é esperado</translation>
    </message>
    <message>
        <source>No end of a frame came within {1} characters: check the profile, the baud rate and the parity</source>
        <translation>Nenhum fim de quadro chegou em {1} caracteres: confira o perfil, a velocidade e a paridade da linha</translation>
    </message>
    <message>
        <source>The sum of the frame &quot;{1}&quot; is wrong: check the wire</source>
        <translation>A soma do quadro &quot;{1}&quot; está errada: confira o cabo</translation>
    </message>
    <message>
        <source>The GPX file breaks off or is damaged here ({1}): export it anew</source>
        <translation>O arquivo GPX termina antes da hora ou está danificado aqui ({1}): exporte-o de novo</translation>
    </message>
    <message>
        <source>The file declares a document type, which no GPX file needs and which could bring in other files: export it anew</source>
        <translation>O arquivo declara um tipo de documento, de que nenhum GPX precisa e que poderia trazer outros arquivos: exporte-o de novo</translation>
    </message>
    <message>
        <source>This is no GPX file but XML that begins with &quot;{1}&quot;: choose the track&apos;s file</source>
        <translation>Isto não é um arquivo GPX, e sim XML que começa com &quot;{1}&quot;: escolha o arquivo da trilha</translation>
    </message>
    <message>
        <source>Too few loads yet for a pace: {1} of {2}</source>
        <translation>Ainda poucas cargas para um ritmo: {1} de {2}</translation>
    </message>
    <message>
        <source>No load has come yet</source>
        <translation>Nenhuma carga chegou ainda</translation>
    </message>
    <message>
        <source>This silo is not defined: define it first</source>
        <translation>Este silo não está definido: defina-o primeiro</translation>
    </message>
    <message>
        <source>The entry's content cannot be read ({1})</source>
        <translation>O conteúdo do registro não pode ser lido ({1})</translation>
    </message>
    <message>
        <source>This field is missing: add it</source>
        <translation>Falta este campo: inclua-o</translation>
    </message>
    <message>
        <source>This field holds a value of the wrong sort: correct it</source>
        <translation>Este campo contém um valor do tipo errado: corrija-o</translation>
    </message>
    <message>
        <source>The entry that is meant, {1}, is not in this season</source>
        <translation>O registro indicado, {1}, não está nesta safra</translation>
    </message>
    <message>
        <source>There are no readings: enter at least one</source>
        <translation>Não há leituras: registre ao menos uma</translation>
    </message>
    <message>
        <source>The end must lie after the begin, {1}</source>
        <translation>O fim deve vir depois do início, {1}</translation>
    </message>
    <message>
        <source>{1} is entered, but the dish gives {2}: check the weights</source>
        <translation>Foi informado {1}, mas a amostra dá {2}: confira os pesos</translation>
    </message>
    <message>
        <source>The stretch must end beyond its begin, {1}: measure both from the back wall</source>
        <translation>O trecho deve terminar depois do seu início, {1}: meça ambos a partir da parede do fundo</translation>
    </message>
    <message>
        <source>This is no JSON document that can be read ({1}): export the season again</source>
        <translation>Este não é um documento JSON legível ({1}): exporte a safra de novo</translation>
    </message>
    <message>
        <source>This JSON document is not of a season of Treadwell: choose another file</source>
        <translation>Este documento JSON não é de uma safra do Treadwell: escolha outro arquivo</translation>
    </message>
    <message>
        <source>The document has version {1}, and this program reads up to {2}: use a newer program</source>
        <translation>O documento tem a versão {1}, e este programa lê até a {2}: use um programa mais novo</translation>
    </message>
    <message>
        <source>It has no name: give one</source>
        <translation>Falta o nome: dê um</translation>
    </message>
    <message>
        <source>A crown of {1} does not fit a width of {2}: six times the crown must fit</source>
        <translation>Um abaulamento de {1} não cabe na largura de {2}: seis vezes ele deve caber</translation>
    </message>
    <message>
        <source>The ramps take {1} of a silo {2} long: check the slope and the length</source>
        <translation>As rampas ocupam {1} de um silo de {2}: confira a inclinação e o comprimento</translation>
    </message>
    <message>
        <source>A pile {1} high needs {2} for its two slopes and has {3}: lower it, or make it wider</source>
        <translation>Um monte de {1} de altura precisa de {2} para as duas rampas e tem {3}: abaixe-o ou alargue-o</translation>
    </message>
    <message>
        <source>The plan lists none: give at least one</source>
        <translation>O plano não lista nenhum: informe ao menos um</translation>
    </message>
    <message>
        <source>The plan has two called {1}: give each a name of its own</source>
        <translation>O plano tem dois com o nome {1}: dê um nome próprio a cada um</translation>
    </message>
    <message>
        <source>A round to {1} takes {2}, more than half a working day of {3}: check the distance and the speed</source>
        <translation>Uma volta até {1} leva {2}, mais de meia jornada de {3}: confira a distância e a velocidade</translation>
    </message>
    <message>
        <source>{1}: no difference worth naming</source>
        <translation>{1}: nenhuma diferença que valha mencionar</translation>
    </message>
    <message>
        <source>{1}: a margin of {2} for a tonne of dry matter instead of {3}</source>
        <translation>{1}: uma margem de {2} por tonelada de matéria seca em vez de {3}</translation>
    </message>
    <message>
        <source>{1}: {2} instead of {3} for machines and drivers</source>
        <translation>{1}: {2} em vez de {3} para máquinas e operadores</translation>
    </message>
    <message>
        <source>{1}: {2} left over instead of {3}</source>
        <translation>{1}: sobram {2} em vez de {3}</translation>
    </message>
    <message>
        <source>{1}: {2} days of harvest instead of {3}</source>
        <translation>{1}: {2} dias de colheita em vez de {3}</translation>
    </message>
    <message>
        <source>{1}: {2} instead of {3}, chance of the target {4} instead of {5}</source>
        <translation>{1}: {2} em vez de {3}, chance da meta {4} em vez de {5}</translation>
    </message>
    <message>
        <source>Days on which no silo is yet to be opened: {1}</source>
        <translation>Dias em que nenhum silo deve ainda ser aberto: {1}</translation>
    </message>
    <message>
        <source>{1}: the face moves {2} a day, too little on {3} days of feed; at this height it may be {4} wide in summer, {5} in winter</source>
        <translation>{1}: o painel avança {2} por dia, pouco em {3} dias de trato; nesta altura pode ter {4} de largura no verão e {5} no inverno</translation>
    </message>
    <message>
        <source>Waiting four days costs up to 11 % of what lies exposed; a day is counted as a quarter of that</source>
        <translation>Esperar quatro dias custa até 11 % do que fica exposto; um dia conta como um quarto disso</translation>
    </message>
    <message>
        <source>In this order: treatment, side sheets over the top, barrier film, sheet, weights, twice as many on the laps</source>
        <translation>Nesta ordem: tratamento, lonas laterais sobre o topo, filme de barreira, lona, pesos, o dobro nas sobreposições</translation>
    </message>
    <message>
        <source>{1} does not pay up to {2}</source>
        <translation>{1} não se paga até {2}</translation>
    </message>
    <message>
        <source>Expected loss: the level that was set, and the slope of the published rows; densities beyond the rows count as their ends</source>
        <translation>Perda esperada: o nível informado e a inclinação das linhas publicadas; densidades além das linhas contam como as pontas delas</translation>
    </message>
    <message>
        <source>Fleets compared: {1}; money in the farm's own currency</source>
        <translation>Frotas comparadas: {1}; valores na moeda da fazenda</translation>
    </message>
    <message>
        <source>{1}: simulated days on which no load arrived, left out of packing and density: {2}</source>
        <translation>{1}: dias simulados em que nenhuma carga chegou, fora de compactação e densidade: {2}</translation>
    </message>
    <message>
        <source>{1} brings {2}, and the tractors reach the target up to {3}: add packing time, or let the density fall short</source>
        <translation>{1} traz {2}, e os tratores atingem a meta até {3}: acrescente compactação, ou a densidade fica aquém</translation>
    </message>
    <message>
        <source>Cautions for {1}:</source>
        <translation>Cuidados para {1}:</translation>
    </message>
    <message>
        <source>Nothing is given here: give a value</source>
        <translation>Nada foi informado aqui: informe um valor</translation>
    </message>
    <message>
        <source>This is not a finite number: give a plain number</source>
        <translation>Isto não é um número finito: informe um número comum</translation>
    </message>
    <message>
        <source>{1} is outside {2} to {3}: check the value and its unit</source>
        <translation>{1} está fora de {2} a {3}: confira o valor e a unidade</translation>
    </message>
    <message>
        <source>Nothing is written here: fill it in</source>
        <translation>Nada está escrito aqui: preencha</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a number with a unit: write it with a point as decimal sign, like 3.5</source>
        <translation>&quot;{1}&quot; não é um número com unidade: escreva com ponto decimal, como 3.5</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; has no unit: add one of {2}</source>
        <translation>&quot;{1}&quot; está sem unidade: acrescente uma destas: {2}</translation>
    </message>
    <message>
        <source>The unit of &quot;{1}&quot; is not one of those known here: use {2}</source>
        <translation>A unidade de &quot;{1}&quot; não é uma das conhecidas aqui: use {2}</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a time: write it like 2026-09-15T14:25:30-03:00</source>
        <translation>&quot;{1}&quot; não é um horário: escreva como 2026-09-15T14:25:30-03:00</translation>
    </message>
    <message>
        <source>No time zone is called &quot;{1}&quot;: use a name like America/Sao_Paulo</source>
        <translation>Nenhum fuso horário se chama &quot;{1}&quot;: use um nome como America/Sao_Paulo</translation>
    </message>
    <message>
        <source>{1} cannot be read ({2}): check the name and the rights to it</source>
        <translation>{1} não pode ser lido ({2}): confira o nome e as permissões</translation>
    </message>
    <message>
        <source>{1} cannot be written ({2}): check the folder, its rights and the free space</source>
        <translation>{1} não pode ser gravado ({2}): confira a pasta, as permissões e o espaço livre</translation>
    </message>
    <message>
        <source>{1} at {2} dry matter is more than the pore-free {3}: check both</source>
        <translation>{1} com {2} de matéria seca é mais que o valor sem poros, {3}: confira ambos</translation>
    </message>
    <message>
        <source>{1} packing times for {2} machines: give one for each machine</source>
        <translation>{1} tempos de compactação para {2} máquinas: informe um para cada máquina</translation>
    </message>
    <message>
        <source>Layer not seen: {1} assumed</source>
        <translation>Camada não observada: suposta {1}</translation>
    </message>
    <message>
        <source>A layer of {1} is outside the equation: counted as {2}</source>
        <translation>Uma camada de {1} está fora da equação: contada como {2}</translation>
    </message>
    <message>
        <source>Dry matter {1} is outside the survey&apos;s {2} to {3}</source>
        <translation>A matéria seca de {1} está fora dos {2} a {3} do levantamento</translation>
    </message>
    <message>
        <source>No machine</source>
        <translation>Nenhuma máquina</translation>
    </message>
    <message>
        <source>No machine is packing</source>
        <translation>Nenhuma máquina está compactando</translation>
    </message>
    <message>
        <source>Machine {1} ({2}) adds nothing by this equation; it serves better at spreading</source>
        <translation>A máquina {1} ({2}) não acrescenta nada por esta equação; serve melhor espalhando</translation>
    </message>
    <message>
        <source>Saturated at {1}: more packing does not help; expect effluent</source>
        <translation>Saturado em {1}: compactar mais não ajuda; espere efluente</translation>
    </message>
    <message>
        <source>No saturation limit is known at {1} (known from {2} to {3})</source>
        <translation>Não se conhece limite de saturação em {1} (conhecido de {2} a {3})</translation>
    </message>
    <message>
        <source>The wanted {1} cannot be reached; the limit is {2}</source>
        <translation>Os {1} desejados não podem ser alcançados; o limite é {2}</translation>
    </message>
    <message>
        <source>{1} is outside the survey&apos;s {2} to {3}</source>
        <translation>{1} está fora dos {2} a {3} do levantamento</translation>
    </message>
    <message>
        <source>The yardsticks disagree. Met: {1}. Not met: {2}</source>
        <translation>As medidas de referência discordam. Atendidas: {1}. Não atendidas: {2}</translation>
    </message>
    <message>
        <source>the packing mass of North America, as fed</source>
        <translation>a massa de compactação da América do Norte, matéria natural</translation>
    </message>
    <message>
        <source>a third of the hourly mass, as fed</source>
        <translation>um terço da massa por hora, matéria natural</translation>
    </message>
    <message>
        <source>a quarter of the hourly mass, as fed</source>
        <translation>um quarto da massa por hora, matéria natural</translation>
    </message>
    <message>
        <source>the packing mass of France, in dry matter</source>
        <translation>a massa de compactação da França, matéria seca</translation>
    </message>
    <message>
        <source>the packing mass of Brittany, in dry matter</source>
        <translation>a massa de compactação da Bretanha, matéria seca</translation>
    </message>
    <message>
        <source>three passes over each layer</source>
        <translation>três passadas sobre cada camada</translation>
    </message>
    <message>
        <source>the target, by the estimate</source>
        <translation>a meta, pela estimativa</translation>
    </message>
    <message>
        <source>{1} at {2}, tractors packing: {3}</source>
        <translation>{1} a {2}, tratores compactando: {3}</translation>
    </message>
    <message>
        <source>Nobody packed it</source>
        <translation>Ninguém compactou</translation>
    </message>
    <message>
        <source>Packed {1}; all of the silo {2}</source>
        <translation>Compactado {1}; o silo todo, {2}</translation>
    </message>
    <message>
        <source>By tractors of {1}; all of the silo by {2}</source>
        <translation>Por tratores de {1}; o silo todo, de {2}</translation>
    </message>
    <message>
        <source>Spread {1} thick; all of the silo {2}</source>
        <translation>Espalhado com {1}; o silo todo, {2}</translation>
    </message>
    <message>
        <source>Crop of {1} dry matter; all of the silo {2}</source>
        <translation>Forragem com {1} de matéria seca; o silo todo, {2}</translation>
    </message>
    <message>
        <source>On average only {1} below the surface</source>
        <translation>Em média só {1} abaixo da superfície</translation>
    </message>
    <message>
        <source>Layer {1}</source>
        <translation>Camada {1}</translation>
    </message>
    <message>
        <source>Packing time {1} counted, {2} in all; {3} of {4} machines count</source>
        <translation>Tempo de compactação {1} contado, {2} no total; {3} de {4} máquinas contam</translation>
    </message>
    <message>
        <source>Packing factor {1} (US {2}) at {3} dry matter</source>
        <translation>Fator de compactação {1} (EUA {2}) com {3} de matéria seca</translation>
    </message>
    <message>
        <source>First bracket {1}</source>
        <translation>Primeiro parêntese {1}</translation>
    </message>
    <message>
        <source>Layer number {1}: {2}, tipped from {3} to {4}</source>
        <translation>Camada número {1}: {2}, descarregada de {3} a {4}</translation>
    </message>
    <message>
        <source>{1} layers: {2} in {3}; they even out like {4} of equal size</source>
        <translation>{1} camadas: {2} em {3}; compensam-se como {4} de igual tamanho</translation>
    </message>
    <message>
        <source>Depth factor {2} at {1} below the surface of the full silo</source>
        <translation>Fator de profundidade {2} a {1} abaixo da superfície do silo cheio</translation>
    </message>
    <message>
        <source>Depth factor {2} at {1} below the surface of today</source>
        <translation>Fator de profundidade {2} a {1} abaixo da superfície de hoje</translation>
    </message>
    <message>
        <source>Depth factor at {1}: {2}</source>
        <translation>Fator de profundidade em {1}: {2}</translation>
    </message>
    <message>
        <source>Saturation {1} at {2}</source>
        <translation>Saturação {1} em {2}</translation>
    </message>
    <message>
        <source>Pore-free {1} at {2}</source>
        <translation>Sem poros {1} em {2}</translation>
    </message>
    <message>
        <source>Site level x {1}</source>
        <translation>Nível do local x {1}</translation>
    </message>
    <message>
        <source>Estimate {1}</source>
        <translation>Estimativa {1}</translation>
    </message>
    <message>
        <source>80 % band {1} to {2}, s = {3}</source>
        <translation>Faixa de 80 %: {1} a {2}, s = {3}</translation>
    </message>
    <message>
        <source>Target {1} (minimum {2}, porosity {3}, limit {4})</source>
        <translation>Meta {1} (mínimo {2}, porosidade {3}, limite {4})</translation>
    </message>
    <message>
        <source>Chance of the target {1}</source>
        <translation>Chance de atingir a meta {1}</translation>
    </message>
    <message>
        <source>Two tractors are called {1}: give each a name of its own</source>
        <translation>Há dois tratores com o nome {1}: dê a cada um o seu</translation>
    </message>
    <message>
        <source>Go on as now</source>
        <translation>Continuar como agora</translation>
    </message>
    <message>
        <source>Let {1} pack all the time</source>
        <translation>Ponha {1} a compactar o tempo todo</translation>
    </message>
    <message>
        <source>Let {1} pack {2} of its time</source>
        <translation>Ponha {1} a compactar {2} do tempo</translation>
    </message>
    <message>
        <source>Let {1} spread</source>
        <translation>Ponha {1} a espalhar</translation>
    </message>
    <message>
        <source>Let {1} go</source>
        <translation>Dispense {1}</translation>
    </message>
    <message>
        <source>Spread layers of {1}</source>
        <translation>Espalhe camadas de {1}</translation>
    </message>
    <message>
        <source>Slow the delivery to {1}</source>
        <translation>Reduza a chegada para {1}</translation>
    </message>
    <message>
        <source>{1} -&gt; {2}, chance of {3} from {4} to {5}</source>
        <translation>{1} -&gt; {2}, chance de {3} de {4} para {5}</translation>
    </message>
    <message>
        <source>{1} -&gt; {2} passes over each layer; by the equation up to {3}, of which nothing is counted</source>
        <translation>{1} -&gt; {2} passadas por camada; pela equação até {3}, do que nada é contado</translation>
    </message>
    <message>
        <source>costs {1} more</source>
        <translation>custa {1} a mais</translation>
    </message>
    <message>
        <source>saves {1}</source>
        <translation>economiza {1}</translation>
    </message>
    <message>
        <source>the chance of {1} is then still {2}</source>
        <translation>a chance de {1} ainda será {2}</translation>
    </message>
    <message>
        <source>The chance of {1} is {2}, {3} wanted: nothing to change</source>
        <translation>A chance de {1} é {2}, desejada {3}: nada a mudar</translation>
    </message>
    <message>
        <source>The pores are full at {1}: more packing does not help</source>
        <translation>Os poros estão cheios em {1}: compactar mais não ajuda</translation>
    </message>
    <message>
        <source>the closest that can be had to a chance of {1}</source>
        <translation>o mais perto que se chega de uma chance de {1}</translation>
    </message>
    <message>
        <source>The chance of {1} is {2}, and nothing at hand brings it closer</source>
        <translation>A chance de {1} é {2}, e nada disponível a aumenta</translation>
    </message>
    <message>
        <source>The chance of {1} is {2}, and nothing at hand raises it by as much as {3}</source>
        <translation>A chance de {1} é {2}, e nada disponível a aumenta em {3} ou mais</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Escolhido</translation>
    </message>
    <message>
        <source>Changes nothing</source>
        <translation>Não muda nada</translation>
    </message>
    <message>
        <source>{1} is less than half of the present {2}</source>
        <translation>{1} é menos da metade dos atuais {2}</translation>
    </message>
    <message>
        <source>The chance stays at {1}, {2} wanted</source>
        <translation>A chance fica em {1}, desejada {2}</translation>
    </message>
    <message>
        <source>{1} passes over each layer, at least {2} asked</source>
        <translation>{1} passadas por camada, pedidas ao menos {2}</translation>
    </message>
    <message>
        <source>Would do too, at more cost or with more change</source>
        <translation>Também serve, com mais custo ou mais mudanças</translation>
    </message>
    <message>
        <source>Not needed for the target</source>
        <translation>Não é preciso para a meta</translation>
    </message>
    <message>
        <source>Packing slope: not steeper than {1}</source>
        <translation>Rampa de compactação: não mais íngreme que {1}</translation>
    </message>
    <message>
        <source>The ramp of {1} is steeper than {2}: machines can tip or slide</source>
        <translation>A rampa de {1} é mais íngreme que {2}: as máquinas podem tombar ou escorregar</translation>
    </message>
    <message>
        <source>Slope across the direction of travel: not steeper than {1}</source>
        <translation>Inclinação transversal ao sentido de marcha: não mais íngreme que {1}</translation>
    </message>
    <message>
        <source>The crown falls to the walls at {1}, steeper than {2} across the direction of travel: machines can tip over the wall</source>
        <translation>O topo cai para as paredes a {1}, mais íngreme que {2} transversal à marcha: as máquinas podem tombar sobre a parede</translation>
    </message>
    <message>
        <source>Fill {1} above the wall, where the limit is {2}: walls can give way and machines go over the edge</source>
        <translation>Enchimento {1} acima da parede, com limite de {2}: as paredes podem ceder e as máquinas cair pela borda</translation>
    </message>
    <message>
        <source>Working width at the top: at least {1} machine widths, duals included</source>
        <translation>Largura de trabalho no topo: ao menos {1} larguras de máquina, com rodado duplo</translation>
    </message>
    <message>
        <source>A width of {1} is less than {3} times the {2} of the widest machine</source>
        <translation>A largura de {1} é menos de {3} vezes os {2} da máquina mais larga</translation>
    </message>
    <message>
        <source>Stay back from the face {1} times its height, here {2}: it can fall without warning</source>
        <translation>Fique longe do painel {1} vezes a sua altura, aqui {2}: ele pode desabar sem aviso</translation>
    </message>
    <message>
        <source>No person takes cores at the face: sample what a loader has taken down</source>
        <translation>Ninguém retira amostras junto ao painel: amostre o que a carregadeira retirou</translation>
    </message>
    <message>
        <source>Nobody on foot while machines pack; a spotter has no other duty and wears high-visibility clothing</source>
        <translation>Ninguém a pé enquanto as máquinas compactam; o sinalizador não tem outra tarefa e usa roupa de alta visibilidade</translation>
    </message>
    <message>
        <source>Silo gas: day {1} after the last load, it is expected for {2} days; it can kill before it is seen or smelled</source>
        <translation>Gás de silo: dia {1} após a última carga, esperado por {2} dias; pode matar antes de ser visto ou sentido</translation>
    </message>
    <message>
        <source>{1} h at work, where the limit is {2} h: tired drivers have more accidents</source>
        <translation>{1} h de trabalho, com limite de {2} h: motoristas cansados têm mais acidentes</translation>
    </message>
    <message>
        <source>Power lines: raised bodies keep {1} away up to 50 kV and {2} more for each 10 kV beyond; the local rule comes first</source>
        <translation>Redes elétricas: caçambas erguidas ficam a {1} até 50 kV e {2} a mais a cada 10 kV acima; vale antes a regra local</translation>
    </message>
    <message>
        <source>Drivers of packing tractors: at least {1} years old; local law comes first</source>
        <translation>Motoristas de tratores de compactação: ao menos {1} anos; vale antes a lei local</translation>
    </message>
    <message>
        <source>No limit of the walls is entered: copy it from their plate or the designer's letter; nobody can judge a wall by eye</source>
        <translation>Nenhum limite das paredes foi informado: copie-o da placa ou da carta do projetista; ninguém avalia uma parede a olho</translation>
    </message>
    <message>
        <source>Dry matter {1}, above {2}: silage this dry can heat and burn</source>
        <translation>Matéria seca {1}, acima de {2}: silagem tão seca pode aquecer e pegar fogo</translation>
    </message>
    <message>
        <source>General published precautions: they do not replace a risk assessment, local law and codes, the machine's manual or a licensed engineer or safety professional. If anything looks wrong, stop work.</source>
        <translation>Precauções gerais publicadas: não substituem a avaliação de riscos, as leis e normas locais, o manual da máquina nem um engenheiro ou profissional de segurança habilitado. Se algo parecer errado, pare o trabalho.</translation>
    </message>
    <message>
        <source>No column tells this; the columns are {1}: name one after it</source>
        <translation>Nenhuma coluna traz isto; as colunas são {1}: dê a uma delas esse nome</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; and &quot;{2}&quot; both tell this: rename the one that does not</source>
        <translation>&quot;{1}&quot; e &quot;{2}&quot; trazem a mesma coisa: renomeie a que não traz</translation>
    </message>
    <message>
        <source>No column is called &quot;{1}&quot;; the columns are {2}: write one of these</source>
        <translation>Nenhuma coluna se chama &quot;{1}&quot;; as colunas são {2}: escreva uma destas</translation>
    </message>
    <message>
        <source>The row has {1} cells and the header {2}: check its delimiters and quotation marks</source>
        <translation>A linha tem {1} células e o cabeçalho {2}: confira os separadores e as aspas</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a number in this file: write digits and the file&apos;s decimal sign alone</source>
        <translation>&quot;{1}&quot; não é um número neste arquivo: escreva só algarismos e o sinal decimal do arquivo</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a word known here: use one of {2}</source>
        <translation>&quot;{1}&quot; não é uma palavra conhecida aqui: use uma destas: {2}</translation>
    </message>
    <message>
        <source>Nothing on this farm is called &quot;{1}&quot;: define it, or correct the name</source>
        <translation>Nada nesta fazenda se chama &quot;{1}&quot;: cadastre-o ou corrija o nome</translation>
    </message>
    <message>
        <source>Several things on this farm are called &quot;{1}&quot;: give them names that differ</source>
        <translation>Várias coisas nesta fazenda se chamam &quot;{1}&quot;: dê-lhes nomes diferentes</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a date and time: write it like 15.09.2026 14:25 or 2026-09-15 14:25:30</source>
        <translation>&quot;{1}&quot; não é data e hora: escreva como 15.09.2026 14:25 ou 2026-09-15 14:25:30</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; can be read day first or month first: say which (dateOrder: dayFirst or monthFirst)</source>
        <translation>&quot;{1}&quot; pode ser lido com o dia ou com o mês primeiro: diga qual (dateOrder: dayFirst ou monthFirst)</translation>
    </message>
    <message>
        <source>The clocks changed then: the first time that fits, {1}, is taken</source>
        <translation>O relógio mudou nessa hora: vale o primeiro horário possível, {1}</translation>
    </message>
    <message>
        <source>The weights have no unit: put it into the header, like net_kg, or say it (massUnit: kg, t, lb or ton)</source>
        <translation>Os pesos não têm unidade: ponha-a no cabeçalho, como net_kg, ou informe-a (massUnit: kg, t, lb ou ton)</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is not a unit for a truck&apos;s weight: use kg, t, lb or ton</source>
        <translation>&quot;{1}&quot; não é unidade de peso de caminhão: use kg, t, lb ou ton</translation>
    </message>
    <message>
        <source>Gross {1} is less than tare {2}: check whether the two are swapped</source>
        <translation>O bruto {1} é menor que a tara {2}: confira se os dois estão trocados</translation>
    </message>
    <message>
        <source>Gross {1} and tare {2} stood in each other&apos;s column; the net weight bears it out</source>
        <translation>O bruto {1} e a tara {2} estavam um na coluna do outro; o peso líquido confirma</translation>
    </message>
    <message>
        <source>The net weight is {1}, but gross less tare is {2}: check the ticket</source>
        <translation>O peso líquido é {1}, mas bruto menos tara dá {2}: confira o bilhete</translation>
    </message>
    <message>
        <source>Ticket {1} is there already on that day, with other figures: correct the load that is recorded, or leave this row out</source>
        <translation>O bilhete {1} já existe nesse dia com outros valores: corrija a carga registrada ou deixe esta linha de fora</translation>
    </message>
    <message>
        <source>This is the load tapped in at {1} with {2}: it becomes {3}; the times lie {4} apart</source>
        <translation>Esta é a carga anotada às {1} com {2}: passa a {3}; os horários distam {4}</translation>
    </message>
    <message>
        <source>The load of {2} tapped in at {1} has no ticket in this file: look for its ticket, or take the load back</source>
        <translation>A carga de {2} anotada às {1} não tem bilhete neste arquivo: procure o bilhete ou anule a carga</translation>
    </message>
    <message>
        <source>The sum in line {1} says {2}, and the tickets above it come to {3}, {4} apart: look for rows that are missing, voided or set aside</source>
        <translation>A soma na linha {1} diz {2}, e os bilhetes acima dela dão {3}, uma diferença de {4}: procure linhas que faltam, anuladas ou postas de lado</translation>
    </message>
    <message>
        <source>What is remembered of earlier files in {1} cannot be read: mend the file or move it away; it was not overwritten</source>
        <translation>O que se guardou de arquivos anteriores em {1} não pode ser lido: corrija o arquivo ou retire-o; ele não foi substituído</translation>
    </message>
    <message>
        <source>The scale shows a tare of {1}, not a load: switch it to gross or net</source>
        <translation>A balança mostra uma tara de {1}, não uma carga: passe-a para bruto ou líquido</translation>
    </message>
    <message>
        <source>Nothing tells the net weight behind {1}: give the truck&apos;s empty weight, or 0 where the scale shows the net weight</source>
        <translation>Nada diz o peso líquido por trás de {1}: dê o peso vazio do caminhão, ou 0 se a balança mostra o peso líquido</translation>
    </message>
    <message>
        <source>The net weight would be {1}: full and empty truck may have been weighed the wrong way round</source>
        <translation>O peso líquido seria {1}: o caminhão cheio e o vazio podem ter sido pesados em ordem trocada</translation>
    </message>
    <message>
        <source>The scale at {1} cannot be reached ({2}): check the cable, the name and the rights to it</source>
        <translation>A balança em {1} não pode ser alcançada ({2}): confira o cabo, o nome e as permissões</translation>
    </message>
    <message>
        <source>The line to the scale at {1} was cut: check the cable and start anew</source>
        <translation>A linha com a balança em {1} foi cortada: confira o cabo e recomece</translation>
    </message>
    <message>
        <source>Nothing came from the scale at {1} within {2}: check that it sends, or ask it</source>
        <translation>Nada veio da balança em {1} em {2}: confira se ela transmite, ou pergunte a ela</translation>
    </message>
    <message>
        <source>No steady weight came from {1} within {2}; frames: {3}, unreadable: {4}</source>
        <translation>Nenhum peso estável veio de {1} em {2}; quadros: {3}, ilegíveis: {4}</translation>
    </message>
    <message>
        <source>A dish cannot weigh {1} wet and {2} dry: check the weights</source>
        <translation>Uma amostra não pode pesar {1} úmida e {2} seca: confira os pesos</translation>
    </message>
    <message>
        <source>No field of this name is known here: correct the name or take it out</source>
        <translation>Nenhum campo com este nome é conhecido aqui: corrija o nome ou retire-o</translation>
    </message>
    <message>
        <source>The farm file is of version {1}; this program reads version 1</source>
        <translation>O arquivo da fazenda é da versão {1}; este programa lê a versão 1</translation>
    </message>
    <message>
        <source>Nothing is recorded on {1}: choose a day of the season</source>
        <translation>Nada foi registrado em {1}: escolha um dia da safra</translation>
    </message>
    <message>
        <source>Day sheet of {1}, {2}</source>
        <translation>Ficha do dia de {1}, {2}</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Situação</translation>
    </message>
    <message>
        <source>Closed at {1}</source>
        <translation>Fechado em {1}</translation>
    </message>
    <message>
        <source>The day is not closed; figures up to {1}</source>
        <translation>O dia não está fechado; números até {1}</translation>
    </message>
    <message>
        <source>Nothing recorded</source>
        <translation>Nada registrado</translation>
    </message>
    <message>
        <source>(not named)</source>
        <translation>(sem nome)</translation>
    </message>
    <message>
        <source>Total</source>
        <translation>Total</translation>
    </message>
    <message>
        <source>goes on</source>
        <translation>continua</translation>
    </message>
    <message>
        <source>What came in</source>
        <translation>O que chegou</translation>
    </message>
    <message>
        <source>Dry-matter samples</source>
        <translation>Amostras de matéria seca</translation>
    </message>
    <message>
        <source>Mean of what came in, by mass: {1} (+-{2}), on {3} samples</source>
        <translation>Média do que chegou, por massa: {1} (+-{2}), em {3} amostras</translation>
    </message>
    <message>
        <source>Tractors</source>
        <translation>Tratores</translation>
    </message>
    <message>
        <source>Density when full, at opening</source>
        <translation>Densidade com o silo cheio, na abertura</translation>
    </message>
    <message>
        <source>Of {1}:</source>
        <translation>Sobre {1}:</translation>
    </message>
    <message>
        <source>No estimate for: {1}</source>
        <translation>Sem estimativa para: {1}</translation>
    </message>
    <message>
        <source>the day's crop</source>
        <translation>o que chegou no dia</translation>
    </message>
    <message>
        <source>all in the silo</source>
        <translation>tudo no silo</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Recomendações</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>mostrada</translation>
    </message>
    <message>
        <source>taken</source>
        <translation>aceita</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>recusada</translation>
    </message>
    <message>
        <source>Pauses</source>
        <translation>Pausas</translation>
    </message>
    <message>
        <source>Layers laid, their density when full</source>
        <translation>Camadas feitas, densidade com o silo cheio</translation>
    </message>
    <message>
        <source>{1} to {2}</source>
        <translation>{1} a {2}</translation>
    </message>
    <message>
        <source>The loosest layers of those hours</source>
        <translation>As camadas menos densas dessas horas</translation>
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
        <source>Layers seen</source>
        <translation>Camadas vistas</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>by loads to cover</source>
        <translation>por cargas para cobrir</translation>
    </message>
    <message>
        <source>Heights</source>
        <translation>Alturas</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Anotações</translation>
    </message>
    <message>
        <source>Cautions shown</source>
        <translation>Alertas mostrados</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>Ainda em aberto</translation>
    </message>
    <message>
        <source>No open question</source>
        <translation>Nenhuma pendência</translation>
    </message>
    <message>
        <source>oven</source>
        <translation>estufa</translation>
    </message>
    <message>
        <source>microwave</source>
        <translation>micro-ondas</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>medidor</translation>
    </message>
    <message>
        <source>by eye</source>
        <translation>a olho</translation>
    </message>
    <message>
        <source>Silo</source>
        <translation>Silo</translation>
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
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To, along</source>
        <translation>Até, ao longo</translation>
    </message>
    <message>
        <source>Sort</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>O que aconteceu</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Produto</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Quantidade</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volume</translation>
    </message>
    <message>
        <source>g a tonne</source>
        <translation>g por tonelada</translation>
    </message>
    <message>
        <source>L a tonne</source>
        <translation>L por tonelada</translation>
    </message>
    <message>
        <source>Duty</source>
        <translation>Função</translation>
    </message>
    <message>
        <source>Tablet</source>
        <translation>Tablet</translation>
    </message>
    <message>
        <source>Hours on shift</source>
        <translation>Horas no turno</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatura</translation>
    </message>
    <message>
        <source>Sky</source>
        <translation>Céu</translation>
    </message>
    <message>
        <source>Rain</source>
        <translation>Chuva</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Vento</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>From, along</source>
        <translation>De, ao longo</translation>
    </message>
    <message>
        <source>As fed</source>
        <translation>Matéria natural</translation>
    </message>
    <message>
        <source>Dry</source>
        <translation>Seca</translation>
    </message>
    <message>
        <source>DM</source>
        <translation>MS</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Chegada</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Tractor</source>
        <translation>Trator</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Massa</translation>
    </message>
    <message>
        <source>Packing, h</source>
        <translation>Compactando, h</translation>
    </message>
    <message>
        <source>Spreading, h</source>
        <translation>Espalhando, h</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Custo</translation>
    </message>
    <message>
        <source>Reading</source>
        <translation>Leitura</translation>
    </message>
    <message>
        <source>Density</source>
        <translation>Densidade</translation>
    </message>
    <message>
        <source>80 % from</source>
        <translation>80 % de</translation>
    </message>
    <message>
        <source>80 % to</source>
        <translation>80 % até</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Meta</translation>
    </message>
    <message>
        <source>Chance of the target</source>
        <translation>Chance da meta</translation>
    </message>
    <message>
        <source>Porosity</source>
        <translation>Porosidade</translation>
    </message>
    <message>
        <source>Porosity, 80 % from</source>
        <translation>Porosidade, 80 % de</translation>
    </message>
    <message>
        <source>Porosity, 80 % to</source>
        <translation>Porosidade, 80 % até</translation>
    </message>
    <message>
        <source>Packing time</source>
        <translation>Tempo de compactação</translation>
    </message>
    <message>
        <source>What</source>
        <translation>O quê</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Decisão</translation>
    </message>
    <message>
        <source>Density before</source>
        <translation>Densidade antes</translation>
    </message>
    <message>
        <source>Density after</source>
        <translation>Densidade depois</translation>
    </message>
    <message>
        <source>Chance before</source>
        <translation>Chance antes</translation>
    </message>
    <message>
        <source>Chance after</source>
        <translation>Chance depois</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Início</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Fim</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espessura</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>Leituras</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>Mínima</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Média</translation>
    </message>
    <message>
        <source>Highest</source>
        <translation>Máxima</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Anotação</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Alerta</translation>
    </message>
    <message>
        <source>{1} of {2} loads were not weighed: add their tickets, or weigh some of each truck</source>
        <translation>{1} de {2} cargas não foram pesadas: inclua os tíquetes ou pese algumas de cada caminhão</translation>
    </message>
    <message>
        <source>{1} of {2} loads name no field</source>
        <translation>{1} de {2} cargas não indicam o talhão</translation>
    </message>
    <message>
        <source>{1} of {2} loads stand on an assumed dry matter: take a sample</source>
        <translation>{1} de {2} cargas usam matéria seca suposta: colha uma amostra</translation>
    </message>
    <message>
        <source>{1} without a dry-matter sample while crop came in, {2} asked at most</source>
        <translation>{1} sem amostra de matéria seca durante a chegada, pedidos no máximo {2}</translation>
    </message>
    <message>
        <source>No layer was seen in {1} this day: measure one</source>
        <translation>Nenhuma camada foi vista em {1} neste dia: meça uma</translation>
    </message>
    <message>
        <source>{1} is still at work in the records: enter when it stopped</source>
        <translation>{1} ainda consta trabalhando: informe quando parou</translation>
    </message>
    <message>
        <source>The mass of {1}, {2}, is the usual one of its class: weigh it</source>
        <translation>A massa de {1}, {2}, é a usual da classe: pese-o</translation>
    </message>
    <message>
        <source>{1} has no cost an hour: enter it</source>
        <translation>{1} não tem custo por hora: informe-o</translation>
    </message>
    <message>
        <source>{1} entries are of kinds that this version does not know: they are kept and not counted</source>
        <translation>{1} registros são de tipos que esta versão não conhece: são guardados e não contados</translation>
    </message>
    <message>
        <source>{1} rows of imported files could not be read: look them through</source>
        <translation>{1} linhas de arquivos importados não puderam ser lidas: examine-as</translation>
    </message>
    <message>
        <source>{1} corrections wait for the entry they speak of</source>
        <translation>{1} correções esperam o registro a que se referem</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Additives and treatments</source>
        <translation>Aditivos e tratamentos</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Cobertura</translation>
    </message>
    <message>
        <source>Incidents</source>
        <translation>Ocorrências</translation>
    </message>
    <message>
        <source>Shifts</source>
        <translation>Turnos</translation>
    </message>
    <message>
        <source>A shift that began {1} has not ended: enter its end</source>
        <translation>Um turno que começou {1} não terminou: informe o fim</translation>
    </message>
    <message>
        <source>A shift ended {1} that nothing says began: enter its begin, or take the end back</source>
        <translation>Um turno terminou {1} e nada diz que começou: informe o começo, ou desfaça o fim</translation>
    </message>
    <message>
        <source>A height was read at {1}, and the silo ends at {2}: correct the place, or the silo's dimensions</source>
        <translation>Uma altura foi lida em {1}, e o silo termina em {2}: corrija o lugar ou as dimensões do silo</translation>
    </message>
    <message>
        <source>A height of {1} was read, and wall and crown end at {2}: correct the reading, or the silo's dimensions</source>
        <translation>Foi lida uma altura de {1}, e parede e coroamento terminam em {2}: corrija a leitura ou as dimensões do silo</translation>
    </message>
    <message>
        <source>No height shows any crop: read the heights where crop lies</source>
        <translation>Nenhuma altura mostra forragem: leia as alturas onde há forragem</translation>
    </message>
    <message>
        <source>Heights were read, but no load came before them</source>
        <translation>Há alturas lidas, mas nenhuma carga chegou antes delas</translation>
    </message>
    <message>
        <source>{1} came since the heights before, and the surface has not risen: check both readings and the loads</source>
        <translation>Chegaram {1} desde as alturas anteriores, e a superfície não subiu: confira as duas leituras e as cargas</translation>
    </message>
    <message>
        <source>{2} in {3} would be {1}, outside {4} to {5}: check the heights and the loads</source>
        <translation>{2} em {3} dariam {1}, fora de {4} a {5}: confira as alturas e as cargas</translation>
    </message>
    <message>
        <source>{1} after {2}: a sample gains no weight while it dries; weigh it again</source>
        <translation>{1} depois de {2}: uma amostra não ganha peso ao secar; pese-a de novo</translation>
    </message>
    <message>
        <source>Slightly wet: {1} dry matter, the goal is {2} to {3}</source>
        <translation>Um pouco úmido: {1} de matéria seca, a meta é de {2} a {3}</translation>
    </message>
    <message>
        <source>Wet: {1} dry matter, the goal is {2} to {3}; expect effluent, and cut a drier field first if there is one</source>
        <translation>Úmido: {1} de matéria seca, a meta é de {2} a {3}; conte com efluente e, se houver, corte antes um campo mais seco</translation>
    </message>
    <message>
        <source>Dry: {1} dry matter, the goal is {2} to {3}; chop shorter, spread thinner and pack longer</source>
        <translation>Seco: {1} de matéria seca, a meta é de {2} a {3}; pique mais curto, espalhe mais fino e compacte por mais tempo</translation>
    </message>
    <message>
        <source>Far too dry: {1} dry matter, the goal is {2} to {3}; it packs badly and heats. Chop shorter, pack every layer longer, cover at once, and cut wetter fields between</source>
        <translation>Seco demais: {1} de matéria seca, a meta é de {2} a {3}; compacta mal e esquenta. Pique mais curto, compacte cada camada por mais tempo, cubra logo e intercale campos mais úmidos</translation>
    </message>
    <message>
        <source>A sieve of {1} stands below one of {2}: list the sieves from the widest down</source>
        <translation>Uma peneira de {1} está abaixo de uma de {2}: liste as peneiras da mais larga para baixo</translation>
    </message>
    <message>
        <source>{1} readings for {2} sieves: give one for each sieve and one for the pan</source>
        <translation>{1} leituras para {2} peneiras: dê uma para cada peneira e uma para o fundo</translation>
    </message>
    <message>
        <source>Nothing lay on the sieve of {1}: it is left out of the fit</source>
        <translation>Nada ficou na peneira de {1}: ela fica fora do ajuste</translation>
    </message>
    <message>
        <source>Nothing lay in the pan</source>
        <translation>Nada ficou no fundo</translation>
    </message>
    <message>
        <source>All sieves are empty: weigh what lies on each</source>
        <translation>Todas as peneiras estão vazias: pese o que ficou em cada uma</translation>
    </message>
    <message>
        <source>{1} of the sample is missing after sieving, usual is up to {2}: weigh again, or sieve a new sample</source>
        <translation>Faltam {1} da amostra depois da peneira, o usual é até {2}: pese de novo ou peneire uma nova amostra</translation>
    </message>
    <message>
        <source>The sample weighed {1} before and {2} after: check the weights and the empty sieves</source>
        <translation>A amostra pesava {1} antes e {2} depois: confira os pesos e as peneiras vazias</translation>
    </message>
    <message>
        <source>The sample was wet from rain or dew: fine parts stick to coarse ones, and it looks coarser than it is</source>
        <translation>A amostra estava molhada de chuva ou orvalho: partes finas grudam nas grossas, e ela parece mais grossa do que é</translation>
    </message>
    <message>
        <source>The parts make {1} %: they must make 100</source>
        <translation>As partes somam {1} %: devem somar 100</translation>
    </message>
    <message>
        <source>These tests were made with other sieves: pool only those of one stack</source>
        <translation>Estes testes foram feitos com outras peneiras: junte somente os de um mesmo jogo</translation>
    </message>
    <message>
        <source>Something lies on the top sieve of {1}: measure its mean length and give it</source>
        <translation>Há material na peneira de cima, de {1}: meça o comprimento médio e informe-o</translation>
    </message>
    <message>
        <source>{1} sieves say something: a line needs two of them, with more passing the wider one</source>
        <translation>{1} peneiras dizem algo: uma reta precisa de duas, e mais deve passar pela mais larga</translation>
    </message>
    <message>
        <source>The stack has no sieve of {1}: this figure cannot be read from it</source>
        <translation>O jogo não tem peneira de {1}: este número não pode ser tirado dele</translation>
    </message>
    <message>
        <source>The chop lies within its ranges</source>
        <translation>O picado está dentro das suas faixas</translation>
    </message>
    <message>
        <source>Fine: {1} below {2}, the most is {3}</source>
        <translation>Fino: {1} abaixo de {2}, o máximo é {3}</translation>
    </message>
    <message>
        <source>{1} below the last bound, the most is {2}</source>
        <translation>{1} abaixo do último limite, o máximo é {2}</translation>
    </message>
    <message>
        <source>Coarse: {1} above {2}, the most is {3}</source>
        <translation>Grosso: {1} acima de {2}, o máximo é {3}</translation>
    </message>
    <message>
        <source>Both too fine and too coarse: the cut is uneven, and another length does not mend it</source>
        <translation>Fino demais e grosso demais ao mesmo tempo: o corte está irregular, e outro comprimento não resolve</translation>
    </message>
    <message>
        <source>Lengthen the cut from {1} to {2}</source>
        <translation>Alongue o corte de {1} para {2}</translation>
    </message>
    <message>
        <source>Shorten the cut from {1} to {2}</source>
        <translation>Encurte o corte de {1} para {2}</translation>
    </message>
    <message>
        <source>Check the knives and the shear bar</source>
        <translation>Confira as facas e a contrafaca</translation>
    </message>
    <message>
        <source>The coarse part holds {1} starch and the whole {2}: more than there is; check both</source>
        <translation>A parte grossa tem {1} de amido e o todo {2}: mais do que existe; confira os dois</translation>
    </message>
    <message>
        <source>The kernels are broken as they should be</source>
        <translation>Os grãos estão quebrados como devem</translation>
    </message>
    <message>
        <source>Kernels from the silo are not broken enough: bear it in mind for feeding; nothing at the harvester mends it now</source>
        <translation>Os grãos do silo não estão quebrados o bastante: leve isso em conta ao alimentar; nada na colhedora resolve agora</translation>
    </message>
    <message>
        <source>Too many whole kernels: narrow the gap of the rolls</source>
        <translation>Grãos inteiros demais: reduza a folga dos rolos</translation>
    </message>
    <message>
        <source>Too many whole kernels: narrow the gap of the rolls from {1} to {2}</source>
        <translation>Grãos inteiros demais: reduza a folga dos rolos de {1} para {2}</translation>
    </message>
    <message>
        <source>Too many whole kernels at a gap of {1}: check the rolls for wear, their difference in speed, and the throughput</source>
        <translation>Grãos inteiros demais com folga de {1}: confira o desgaste dos rolos, a diferença de rotação e o fluxo</translation>
    </message>
    <message>
        <source>The low of {1} is above the high of {2}: check whether the two are swapped</source>
        <translation>A mínima de {1} é maior que a máxima de {2}: confira se as duas estão trocadas</translation>
    </message>
    <message>
        <source>{1} stands here twice: keep one</source>
        <translation>{1} aparece duas vezes: deixe uma</translation>
    </message>
    <message>
        <source>{2} lies before {1}: check both days</source>
        <translation>{2} fica antes de {1}: confira os dois dias</translation>
    </message>
    <message>
        <source>{1} are not reached within {2} days: check the temperatures and the day of silking</source>
        <translation>{1} não são atingidos em {2} dias: confira as temperaturas e o dia do espigamento</translation>
    </message>
    <message>
        <source>The fields are not cut within {1} days: check the capacity and the days of rain</source>
        <translation>Os campos não são cortados em {1} dias: confira a capacidade e os dias de chuva</translation>
    </message>
    <message>
        <source>The order must name each of the {1} fields once</source>
        <translation>A ordem deve citar cada um dos {1} campos uma vez</translation>
    </message>
    <message>
        <source>{1} of the doubt: how this farm differs from the farms of the survey</source>
        <translation>{1} da dúvida: quanto esta fazenda difere das do levantamento</translation>
    </message>
    <message>
        <source>{1} of the doubt: how this silo differs from the farm's others</source>
        <translation>{1} da dúvida: quanto este silo difere dos outros da fazenda</translation>
    </message>
    <message>
        <source>{1} of the doubt: how this face differs from its silo</source>
        <translation>{1} da dúvida: quanto este painel difere do seu silo</translation>
    </message>
    <message>
        <source>{1} of the doubt: how this layer differs from its silo</source>
        <translation>{1} da dúvida: quanto esta camada difere do seu silo</translation>
    </message>
    <message>
        <source>{1} of the doubt: how density grows with depth</source>
        <translation>{1} da dúvida: quanto a densidade cresce com a profundidade</translation>
    </message>
    <message>
        <source>{1} of the doubt: the masses of the tractors</source>
        <translation>{1} da dúvida: as massas dos tratores</translation>
    </message>
    <message>
        <source>{1} of the doubt: the thickness of the layer, which nobody has seen</source>
        <translation>{1} da dúvida: a espessura da camada, que ninguém viu</translation>
    </message>
    <message>
        <source>{1} of the doubt: the thickness of the layer seen at {2}</source>
        <translation>{1} da dúvida: a espessura da camada vista em {2}</translation>
    </message>
    <message>
        <source>{1} of the doubt: the thickness of the layer</source>
        <translation>{1} da dúvida: a espessura da camada</translation>
    </message>
    <message>
        <source>{1} of the doubt: the mass of the loads</source>
        <translation>{1} da dúvida: a massa das cargas</translation>
    </message>
    <message>
        <source>{1} of the doubt: the minutes packed on each tonne</source>
        <translation>{1} da dúvida: os minutos de compactação por tonelada</translation>
    </message>
    <message>
        <source>{1} of the doubt: the dry-matter sample of {2}</source>
        <translation>{1} da dúvida: a amostra de matéria seca de {2}</translation>
    </message>
    <message>
        <source>{1} of the doubt: the dry matter</source>
        <translation>{1} da dúvida: a matéria seca</translation>
    </message>
    <message>
        <source>{1} of the doubt: other errors that the survey's entries had</source>
        <translation>{1} da dúvida: outros erros que tinham os registros do levantamento</translation>
    </message>
    <message>
        <source>Read {1} heights on the crop: +-{2} -&gt; +-{3}</source>
        <translation>Leia {1} alturas sobre a forragem: +-{2} -&gt; +-{3}</translation>
    </message>
    <message>
        <source>Take a dry-matter sample: +-{1} -&gt; +-{2}</source>
        <translation>Tire uma amostra de matéria seca: +-{1} -&gt; +-{2}</translation>
    </message>
    <message>
        <source>Measure the thickness of the layer as spread: +-{1} -&gt; +-{2}</source>
        <translation>Meça a espessura da camada como espalhada: +-{1} -&gt; +-{2}</translation>
    </message>
    <message>
        <source>Weigh the tractors: +-{1} -&gt; +-{2}</source>
        <translation>Pese os tratores: +-{1} -&gt; +-{2}</translation>
    </message>
    <message>
        <source>Weigh {1} loads of the trucks that are not weighed: +-{2} -&gt; +-{3}</source>
        <translation>Pese {1} cargas dos caminhões que não são pesados: +-{2} -&gt; +-{3}</translation>
    </message>
    <message>
        <source>The heights read at {1} moved the silo from {2} to {3}</source>
        <translation>As alturas lidas em {1} levaram o silo de {2} a {3}</translation>
    </message>
    <message>
        <source>What was measured in the farm's other silos moved this one from {1} to {2}</source>
        <translation>O que foi medido nos outros silos da fazenda levou este de {1} a {2}</translation>
    </message>
    <message>
        <source>By the evenings' heights density grows by {1} (+-{2}) for each metre of depth; the equation says {3} (+-{4})</source>
        <translation>Pelas alturas de cada tarde a densidade cresce {1} (+-{2}) por metro de profundidade; a equação diz {3} (+-{4})</translation>
    </message>
    <message>
        <source>{2} at {1}, 80 % band {3} to {4}</source>
        <translation>{2} em {1}, faixa de 80 % de {3} a {4}</translation>
    </message>
    <message>
        <source>What came since the heights before: {1}, 80 % band {2} to {3}</source>
        <translation>O que chegou desde as alturas anteriores: {1}, faixa de 80 % de {2} a {3}</translation>
    </message>
    <message>
        <source>loads came faster, the last {1} of them: {2} -&gt; {3}</source>
        <translation>as cargas vieram mais depressa, as últimas {1}: {2} -&gt; {3}</translation>
    </message>
    <message>
        <source>loads came slower, the last {1} of them: {2} -&gt; {3}</source>
        <translation>as cargas vieram mais devagar, as últimas {1}: {2} -&gt; {3}</translation>
    </message>
    <message>
        <source>no load came: {1} -&gt; {2}</source>
        <translation>não veio carga: {1} -&gt; {2}</translation>
    </message>
    <message>
        <source>minutes packed on each tonne: {1} -&gt; {2}</source>
        <translation>minutos de compactação por tonelada: {1} -&gt; {2}</translation>
    </message>
    <message>
        <source>mean mass of the tractors that pack: {1} -&gt; {2}</source>
        <translation>massa média dos tratores que compactam: {1} -&gt; {2}</translation>
    </message>
    <message>
        <source>layer as spread: {1} -&gt; {2}</source>
        <translation>camada espalhada: {1} -&gt; {2}</translation>
    </message>
    <message>
        <source>new sample of {1} at {2}: the crop counts as {4}, it was {3}</source>
        <translation>nova amostra de {1} às {2}: o material conta com {4}, antes {3}</translation>
    </message>
    <message>
        <source>dry matter of the crop: {1} -&gt; {2}</source>
        <translation>matéria seca do material: {1} -&gt; {2}</translation>
    </message>
    <message>
        <source>mean depth of the crop: {1} -&gt; {2}</source>
        <translation>profundidade média do material: {1} -&gt; {2}</translation>
    </message>
    <message>
        <source>the heights read at {1}</source>
        <translation>as alturas lidas às {1}</translation>
    </message>
    <message>
        <source>what was measured in the silos</source>
        <translation>o que se mediu nos silos</translation>
    </message>
    <message>
        <source>the saturation limit: {1} -&gt; {2}</source>
        <translation>o limite de saturação: {1} -&gt; {2}</translation>
    </message>
    <message>
        <source>all else together</source>
        <translation>todo o resto</translation>
    </message>
    <message>
        <source>This entry has no such field: its fields are {1}</source>
        <translation>Este lançamento não tem esse campo: os campos são {1}</translation>
    </message>
    <message>
        <source>This field is given twice: give it once</source>
        <translation>Este campo foi informado duas vezes: informe-o uma vez</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is no kind of entry: use one of {2}</source>
        <translation>&quot;{1}&quot; não é um tipo de lançamento: use um destes: {2}</translation>
    </message>
    <message>
        <source>Somebody is called &quot;{1}&quot; already: add what tells the two apart</source>
        <translation>Já há alguém chamado &quot;{1}&quot;: acrescente o que distingue os dois</translation>
    </message>
    <message>
        <source>The document says its head is {1}, but its entries give {2}: some are missing or changed; export the season again</source>
        <translation>O documento diz que sua cabeça é {1}, mas os registros dão {2}: alguns faltam ou mudaram; exporte a safra de novo</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>The header gives no unit for this temperature: write C or F behind its name, like low_c</source>
        <translation>O cabeçalho não diz a unidade desta temperatura: escreva C ou F depois do nome, como low_c</translation>
    </message>
    <message>
        <source>No published warmth from silking for a hybrid of {1} days: only 96 to 115 are known</source>
        <translation>Não há soma térmica publicada do espigamento para um híbrido de {1} dias: só se conhecem de 96 a 115</translation>
    </message>
    <message>
        <source>Temperatures of {1} days are missing: those days count as the mean of the others</source>
        <translation>Faltam as temperaturas de {1} dias: eles contam como a média dos outros</translation>
    </message>
    <message>
        <source>The warmth since silking cannot be reckoned: import the daily temperatures from silking on</source>
        <translation>A soma térmica desde o espigamento não pode ser calculada: importe as temperaturas diárias a partir do espigamento</translation>
    </message>
    <message>
        <source>The milk line has come {1} of the way: sample whole plants now, the line alone does not tell the dry matter</source>
        <translation>A linha do leite já percorreu {1}: amostre plantas inteiras agora, só a linha não diz a matéria seca</translation>
    </message>
    <message>
        <source>Chop and kernels</source>
        <translation>Picado e grãos</translation>
    </message>
    <message>
        <source>Tests</source>
        <translation>Testes</translation>
    </message>
    <message>
        <source>Mean length</source>
        <translation>Comprimento médio</translation>
    </message>
    <message>
        <source>On 19 mm</source>
        <translation>Em 19 mm</translation>
    </message>
    <message>
        <source>On 8 mm</source>
        <translation>Em 8 mm</translation>
    </message>
    <message>
        <source>On 4 mm</source>
        <translation>Em 4 mm</translation>
    </message>
    <message>
        <source>Below 4 mm</source>
        <translation>Abaixo de 4 mm</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Kernels in a cup</source>
        <translation>Grãos por copo</translation>
    </message>
    <message>
        <source>Starch through 4.75 mm</source>
        <translation>Amido que passa por 4,75 mm</translation>
    </message>
    <message>
        <source>Processing</source>
        <translation>Processamento</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>fermented</source>
        <translation>fermentado</translation>
    </message>
    <message>
        <source>optimal</source>
        <translation>ótimo</translation>
    </message>
    <message>
        <source>adequate</source>
        <translation>adequado</translation>
    </message>
    <message>
        <source>inadequate</source>
        <translation>insuficiente</translation>
    </message>
    <message>
        <source>The first sample: the next loads are taken for {1} dry matter (+-{2})</source>
        <translation>A primeira amostra: as próximas cargas são tomadas por {1} de matéria seca (+-{2})</translation>
    </message>
    <message>
        <source>The next loads: {1} (+-{2}) dry matter before, {3} (+-{4}) now</source>
        <translation>As próximas cargas: {1} (+-{2}) de matéria seca antes, {3} (+-{4}) agora</translation>
    </message>
    <message>
        <source>No sample is left: the next loads are taken for the middle of the goal</source>
        <translation>Não resta nenhuma amostra: as próximas cargas são tomadas pelo meio da meta</translation>
    </message>
    <message>
        <source>Their target goes from {1} to {2}, their loose density from {3} to {4}</source>
        <translation>A meta delas passa de {1} para {2}, a densidade solta de {3} para {4}</translation>
    </message>
    <message>
        <source>{1} of the loads tipped before are taken for another dry matter now</source>
        <translation>{1} das cargas já descarregadas passam a ser tomadas por outra matéria seca</translation>
    </message>
    <message>
        <source>The silo goes from {1} to {2}, 80 % band {3} to {4}; its chance of the target from {5} to {6}</source>
        <translation>O silo passa de {1} para {2}, faixa de 80 % de {3} a {4}; a chance de atingir a meta passa de {5} para {6}</translation>
    </message>
    <message>
        <source>{1} loads cannot be caught up at once: give 1 to {2}</source>
        <translation>{1} cargas não podem ser lançadas de uma vez: informe de 1 a {2}</translation>
    </message>
    <message>
        <source>Loads cannot be spread from {1} to {2}: the first time comes before the last, at most a day</source>
        <translation>As cargas não podem ser distribuídas de {1} a {2}: a primeira hora vem antes da última, no máximo um dia</translation>
    </message>
    <message>
        <source>{1} has not come yet: give times that are past</source>
        <translation>{1} ainda não chegou: informe horas passadas</translation>
    </message>
    <message>
        <source>Packing falls behind: {1} come in, {2} can be packed to the target</source>
        <translation>A compactação fica para trás: entram {1}, dá para compactar {2} até a meta</translation>
    </message>
    <message>
        <source>The layers are {1} thick, at most {2} wanted</source>
        <translation>As camadas têm {1}, no máximo {2} desejados</translation>
    </message>
    <message>
        <source>The silo is nearly full: {1} of what it is planned to hold</source>
        <translation>O silo está quase cheio: {1} do que se planejou</translation>
    </message>
    <message>
        <source>The dry matter is {1} old: time for a new sample</source>
        <translation>A matéria seca tem {1}: hora de uma nova amostra</translation>
    </message>
    <message>
        <source>Loads come and no dry matter has been measured: take a sample</source>
        <translation>Chegam cargas e nenhuma matéria seca foi medida: tire uma amostra</translation>
    </message>
    <message>
        <source>Somebody has been at work for {1}</source>
        <translation>Alguém está trabalhando há {1}</translation>
    </message>
    <message>
        <source>The back {1} of the silo stand at their height: cover them soon</source>
        <translation>Os {1} do fundo do silo estão na altura final: cubra logo</translation>
    </message>
    <message>
        <source>Dry matter: {1}, measured at {2}</source>
        <translation>Matéria seca: {1}, medida às {2}</translation>
    </message>
    <message>
        <source>Dry matter: the middle of the goal, {1}, until a sample is taken</source>
        <translation>Matéria seca: o meio da meta, {1}, até haver uma amostra</translation>
    </message>
    <message>
        <source>Dry matter: {1} of another field, at {2}</source>
        <translation>Matéria seca: {1} de outro talhão, às {2}</translation>
    </message>
    <message>
        <source>Layer: {1}, seen at {2}</source>
        <translation>Camada: {1}, vista às {2}</translation>
    </message>
    <message>
        <source>Layer: {1}, as nobody has seen it</source>
        <translation>Camada: {1}, pois ninguém a viu</translation>
    </message>
    <message>
        <source>Loads: all {1} weighed or by their box</source>
        <translation>Cargas: todas as {1} pesadas ou pela caixa</translation>
    </message>
    <message>
        <source>Loads: {1} of {2} at the usual load of their truck</source>
        <translation>Cargas: {1} de {2} com a carga usual do caminhão</translation>
    </message>
    <message>
        <source>Mass of {1}: that of its class, {2}</source>
        <translation>Massa de {1}: a de sua classe, {2}</translation>
    </message>
    <message>
        <source>Masses of the tractors at work: as entered</source>
        <translation>Massas dos tratores no trabalho: como informadas</translation>
    </message>
    <message>
        <source>Heights: read at {1}</source>
        <translation>Alturas: lidas às {1}</translation>
    </message>
    <message>
        <source>Heights: none read in this silo</source>
        <translation>Alturas: nenhuma lida neste silo</translation>
    </message>
    <message>
        <source>Pace: {1} loads today, {2} are needed</source>
        <translation>Ritmo: {1} cargas hoje, são necessárias {2}</translation>
    </message>
    <message>
        <source>Let {1} pack part of its time</source>
        <translation>Deixe {1} compactar parte do tempo</translation>
    </message>
    <message>
        <source>Spread thinner layers</source>
        <translation>Espalhe camadas mais finas</translation>
    </message>
    <message>
        <source>Slow the deliveries</source>
        <translation>Diminua o ritmo das entregas</translation>
        <source>Closed by {1}</source>
        <translation>Encerrado por {1}</translation>
    </message>
    <message>
        <source>The file at this print: {1}</source>
        <translation>O arquivo nesta impressão: {1}</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>Em resumo</translation>
    </message>
    <message>
        <source>No load came in</source>
        <translation>Nenhuma carga entrou</translation>
    </message>
    <message>
        <source>{1} loads, {2} as fed, {3}; dry matter {4}</source>
        <translation>{1} cargas, {2} de matéria natural, {3}; matéria seca {4}</translation>
    </message>
    <message>
        <source>{1}, the day's crop when full: {2}, 80 % between {3} and {4}; target {5}, chance {6}</source>
        <translation>{1}, a colheita do dia com o silo cheio: {2}, 80 % entre {3} e {4}; meta {5}, chance {6}</translation>
    </message>
    <message>
        <source>{1}, loosest from {2} to {3}: {4}</source>
        <translation>{1}, mais solto de {2} a {3}: {4}</translation>
    </message>
    <message>
        <source>Packed for {1} in all, {2}</source>
        <translation>Compactado por {1} ao todo, {2}</translation>
    </message>
    <message>
        <source>Still open: {1}</source>
        <translation>Ainda em aberto: {1}</translation>
    </message>
    <message>
        <source>Weak places and why</source>
        <translation>Pontos fracos e por quê</translation>
    </message>
    <message>
        <source>Cause</source>
        <translation>Causa</translation>
    </message>
    <message>
        <source>Against the day before</source>
        <translation>Em relação ao dia anterior</translation>
    </message>
    <message>
        <source>No day with loads came before</source>
        <translation>Nenhum dia com cargas antes deste</translation>
    </message>
    <message>
        <source>difference</source>
        <translation>diferença</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Dia</translation>
    </message>
    <message>
        <source>The hour before and the hour after; other things changed too</source>
        <translation>A hora antes e a hora depois; outras coisas também mudaram</translation>
    </message>
    <message>
        <source>Packing time, hour before</source>
        <translation>Tempo de compactação, hora antes</translation>
    </message>
    <message>
        <source>Packing time, hour after</source>
        <translation>Tempo de compactação, hora depois</translation>
    </message>
    <message>
        <source>Laid in the hour before</source>
        <translation>Colocado na hora antes</translation>
    </message>
    <message>
        <source>Laid in the hour after</source>
        <translation>Colocado na hora depois</translation>
    </message>
    <message>
        <source>Share packing</source>
        <translation>Parte compactando</translation>
    </message>
    <message>
        <source>Samples from {1} to {2}</source>
        <translation>Amostras de {1} a {2}</translation>
    </message>
    <message>
        <source>Spread of lengths</source>
        <translation>Dispersão dos comprimentos</translation>
    </message>
    <message>
        <source>{1} cores at this face, {2} are the fewest for a map: take more, spread over width and height</source>
        <translation>{1} amostras neste painel, um mapa pede ao menos {2}: tire mais, distribuídas na largura e na altura</translation>
    </message>
    <message>
        <source>No core tells where it came from and how dense it was, so there is no map of a face</source>
        <translation>Nenhuma amostra diz de onde veio e quão densa era, portanto não há mapa do painel</translation>
    </message>
    <message>
        <source>Face of {1}, {2}</source>
        <translation>Painel de {1}, {2}</translation>
    </message>
    <message>
        <source>Cores beside what was predicted</source>
        <translation>Amostras ao lado do previsto</translation>
    </message>
    <message>
        <source>What was measured, and what it did to the silo's band</source>
        <translation>O que foi medido e o que isso fez com a faixa do silo</translation>
    </message>
    <message>
        <source>The face between its cores</source>
        <translation>O painel entre as amostras</translation>
    </message>
    <message>
        <source>At an open silo</source>
        <translation>No silo aberto</translation>
    </message>
    <message>
        <source>{1} from the back wall, {2} cores</source>
        <translation>A {1} da parede de fundo, {2} amostras</translation>
    </message>
    <message>
        <source>Cores resemble each other over {1}; the face varies by {2}, a single core by {3} more</source>
        <translation>As amostras se parecem ao longo de {1}; o painel varia {2}, uma amostra isolada mais {3}</translation>
    </message>
    <message>
        <source>The fit has not settled: take the map as a sketch</source>
        <translation>O ajuste não se estabilizou: tome o mapa como esboço</translation>
    </message>
    <message>
        <source>Each core foretold by the others: off by {1}; {2} of {3} within the 80 % band</source>
        <translation>Cada amostra prevista pelas outras: erro de {1}; {2} de {3} dentro da faixa de 80 %</translation>
    </message>
    <message>
        <source>Along</source>
        <translation>Ao longo</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Na largura</translation>
    </message>
    <message>
        <source>Above the floor</source>
        <translation>Acima do piso</translation>
    </message>
    <message>
        <source>Origin</source>
        <translation>Origem</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Medido</translation>
    </message>
    <message>
        <source>Predicted</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>Measured is denser by</source>
        <translation>Medido é mais denso em</translation>
    </message>
    <message>
        <source>After all cores and heights</source>
        <translation>Após amostras e alturas</translation>
    </message>
    <message>
        <source>Feeding out of {1}, {2}</source>
        <translation>Retirada de {1}, {2}</translation>
    </message>
    <message>
        <source>Until when there is feed</source>
        <translation>Até quando há alimento</translation>
    </message>
    <message>
        <source>What the faces of the week cut</source>
        <translation>O que os painéis da semana cortam</translation>
    </message>
    <message>
        <source>Temperature behind the face</source>
        <translation>Temperatura atrás do painel</translation>
    </message>
    <message>
        <source>{1} tipped; {2} to feed, {3} of the dry matter lost until then</source>
        <translation>{1} descarregadas; {2} a fornecer, {3} da matéria seca perdida até lá</translation>
    </message>
    <message>
        <source>The loss is yours to judge: {1} to {2} taken</source>
        <translation>A perda é sua a julgar: tomada de {1} a {2}</translation>
    </message>
    <message>
        <source>The loss is {1} to {2} by the density, after a survey of lucerne in bunkers (Ruppel 1992); well-sealed maize loses less: give your own</source>
        <translation>A perda é de {1} a {2} pela densidade, segundo um levantamento de alfafa em trincheiras (Ruppel 1992); milho bem vedado perde menos: informe a sua</translation>
    </message>
    <message>
        <source>The last day with feed is {1}; 80 % between {2} and {3}</source>
        <translation>O último dia com alimento é {1}; 80 % entre {2} e {3}</translation>
    </message>
    <message>
        <source>The face gives way by less than {1} a day: in warm weather it heats. Feed from a narrower face or from one silo</source>
        <translation>O painel recua menos de {1} por dia: em tempo quente ele aquece. Retire de um painel mais estreito ou de um só silo</translation>
    </message>
    <message>
        <source>{1} behind the face, {2} in the core, more than 5 K apart: the face heats. Take more each day, and look at its cover (Borreani &amp; Tabacco 2010)</source>
        <translation>{1} atrás do painel, {2} no núcleo, mais de 5 K de diferença: o painel aquece. Retire mais por dia e veja a cobertura (Borreani &amp; Tabacco 2010)</translation>
    </message>
    <message>
        <source>{1} behind the face, {2} in the core; heating is taken from more than 5 K on (Borreani &amp; Tabacco 2010)</source>
        <translation>{1} atrás do painel, {2} no núcleo; considera-se aquecimento a partir de mais de 5 K (Borreani &amp; Tabacco 2010)</translation>
    </message>
    <message>
        <source>Face in the morning</source>
        <translation>Painel de manhã</translation>
    </message>
    <message>
        <source>Face in the evening</source>
        <translation>Painel à noite</translation>
    </message>
    <message>
        <source>Advance</source>
        <translation>Avanço</translation>
    </message>
    <message>
        <source>Laid on</source>
        <translation>Colocado em</translation>
    </message>
    <message>
        <source>Loosest</source>
        <translation>Mais solto</translation>
    </message>
    <message>
        <source>{1} was closed at {2}: take that entry back to open the day again</source>
        <translation>{1} foi encerrado em {2}: desfaça esse registro para reabrir o dia</translation>
    </message>
    <message>
        <source>{1} has not begun: close it when it is over</source>
        <translation>{1} ainda não começou: encerre quando terminar</translation>
    </message>
    <message>
        <source>The heights of {1} were not read this day: read them while the surface lies open</source>
        <translation>As alturas de {1} não foram lidas neste dia: leia-as enquanto a superfície está aberta</translation>
    </message>
    <message>
        <source>Season of {1}, up to {2}</source>
        <translation>Safra de {1}, até {2}</translation>
    </message>
    <message>
        <source>Day by day</source>
        <translation>Dia a dia</translation>
    </message>
    <message>
        <source>Silo by silo, when full</source>
        <translation>Silo a silo, quando cheio</translation>
    </message>
    <message>
        <source>Measured by heights beside what was estimated before</source>
        <translation>Medido pelas alturas ao lado do estimado antes</translation>
    </message>
    <message>
        <source>{1} evenings: measured denser by {2} on average; one evening is off by {3}</source>
        <translation>{1} noites: medido mais denso em {2} na média; uma noite erra {3}</translation>
    </message>
    <message>
        <source>What one more tractor would have brought</source>
        <translation>O que mais um trator teria trazido</translation>
    </message>
    <message>
        <source>One as heavy as the farm's heaviest, packing as long as the longest did that day; by the field regression, whose effects are taken to be 40 % uncertain</source>
        <translation>Um tão pesado quanto o mais pesado da fazenda, compactando tanto quanto o que mais compactou no dia; pela regressão de campo, cujos efeitos se tomam com 40 % de incerteza</translation>
    </message>
    <message>
        <source>Estimated</source>
        <translation>Estimado</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Mudança</translation>
    </message>
    <message>
        <source>This lesson is of version {1}, which is not known here: update the program, or make the lesson anew</source>
        <translation>Esta lição é da versão {1}, que não se conhece aqui: atualize o programa ou refaça a lição</translation>
    </message>
    <message>
        <source>The lesson has no English title: add a text with the language &quot;en&quot;</source>
        <translation>A lição não tem título em inglês: acrescente um texto com o idioma &quot;en&quot;</translation>
    </message>
    <message>
        <source>Loads must be there, each no earlier than the one before: put them in order</source>
        <translation>É preciso haver cargas, nenhuma antes da anterior: ponha-as em ordem</translation>
    </message>
    <message>
        <source>Layers of {1} are thicker than {2}: the wheels press the top and the lower part stays loose. Spread thinner</source>
        <translation>Camadas de {1} são mais grossas que {2}: as rodas apertam o topo e a parte de baixo fica solta. Espalhe mais fino</translation>
    </message>
    <message>
        <source>Within {3} of the left wall it is {1}, in the middle {2}: the outer tyre stayed too far away. Drive along the wall on every layer</source>
        <translation>A até {3} da parede esquerda há {1}, no meio {2}: o pneu de fora ficou longe demais. Passe junto à parede em cada camada</translation>
    </message>
    <message>
        <source>Within {3} of the right wall it is {1}, in the middle {2}: the outer tyre stayed too far away. Drive along the wall on every layer</source>
        <translation>A até {3} da parede direita há {1}, no meio {2}: o pneu de fora ficou longe demais. Passe junto à parede em cada camada</translation>
    </message>
    <message>
        <source>{1} of the surface was touched by no tyre: the tracks ran over the same places. Step over by the width of a tyre each time</source>
        <translation>{1} da superfície não foi tocada por nenhum pneu: os rastros caíram nos mesmos lugares. Avance a largura de um pneu a cada vez</translation>
    </message>
    <message>
        <source>{1} passes over each layer are fewer than {2}: slow the delivery, or pack with more tractors</source>
        <translation>{1} passadas por camada são menos que {2}: reduza a entrega ou compacte com mais tratores</translation>
    </message>
    <message>
        <source>At {1} the wheels press too briefly: about {2} is usual</source>
        <translation>A {1} as rodas apertam por tempo curto demais: o usual é cerca de {2}</translation>
    </message>
    <message>
        <source>The ramp was {1}, steeper than {2}: machines can tip or slide. Push crop forward to make it flatter</source>
        <translation>A rampa tinha {1}, mais íngreme que {2}: as máquinas podem tombar ou deslizar. Empurre material para a frente para deixá-la mais suave</translation>
    </message>
    <message>
        <source>{1} tractors crossed each other&apos;s way: they wait, turn and can collide. Agree who drives on which side and who reverses</source>
        <translation>{1} tratores cruzaram o caminho um do outro: esperam, manobram e podem colidir. Combine quem anda de que lado e quem dá ré</translation>
    </message>
    <message>
        <source>For {1} you drove in the way of another tractor: keep to your own side, and wait until it has passed</source>
        <translation>Por {1} você andou no caminho de outro trator: fique do seu lado e espere até ele passar</translation>
    </message>
    <message>
        <source>The first layers got {1} passes, the last ones {2}: deliveries outran the tractors. Call the next tractor as soon as the rate rises</source>
        <translation>As primeiras camadas tiveram {1} passadas, as últimas {2}: a entrega superou os tratores. Chame o próximo trator assim que o ritmo subir</translation>
    </message>
    <message>
        <source>Only {1} of the way was measured well enough to tell where tyres went: the rest tells how long tractors were where. Use a receiver with RTK</source>
        <translation>Só {1} do caminho foi medido bem o bastante para dizer onde os pneus passaram: o resto diz quanto tempo os tratores ficaram onde. Use um receptor com RTK</translation>
    </message>
    <message>
        <source>Tractors rolled for {1} while somebody was on foot: stop everything until nobody is</source>
        <translation>Os tratores rodaram {1} com alguém a pé: pare tudo até não haver ninguém</translation>
    </message>
    <message>
        <source>The pad was dark: switch on all lights, and look for people before every reverse</source>
        <translation>O silo estava escuro: acenda todas as luzes e procure pessoas antes de cada ré</translation>
    </message>
    <message>
        <source>Density {1}, wanted {2}</source>
        <translation>Densidade {1}, desejada {2}</translation>
    </message>
    <message>
        <source>Three passes over {1} of the surface, wanted {2}</source>
        <translation>Três passadas em {1} da superfície, desejado {2}</translation>
    </message>
    <message>
        <source>Density varies by {1}, wanted at most {2}</source>
        <translation>A densidade varia {1}, desejado no máximo {2}</translation>
    </message>
    <message>
        <source>Rolled for {1}, {2} passes over each layer</source>
        <translation>Rodagem de {1}, {2} passadas por camada</translation>
    </message>
    <message>
        <source>Cautions not kept: {1}</source>
        <translation>Cuidados não mantidos: {1}</translation>
    </message>
    <message>
        <source>Practice of packing: {1}</source>
        <translation>Prática de compactação: {1}</translation>
    </message>
    <message>
        <source>This shows practice on a simulated pad. It is not a licence, gives no permission to drive any machine and says nothing about health or age. Who may drive is for the law, the owner of the machine and a licensed instructor to say</source>
        <translation>Isto mostra prática em um silo simulado. Não é uma habilitação, não dá permissão para dirigir máquina alguma e nada diz sobre saúde ou idade. Quem pode dirigir cabe à lei, ao dono da máquina e a um instrutor habilitado dizer</translation>
    </message>
    <message>
        <source>{1} ran {2} of {3} lessons to the end, as of {4}</source>
        <translation>{1} fez {2} de {3} lições até o fim, até {4}</translation>
    </message>
    <message>
        <source>The best run of each lesson</source>
        <translation>A melhor execução de cada lição</translation>
    </message>
    <message>
        <source>Points of 100: density 30, coverage 25, evenness 15, minutes 10, cautions kept 20</source>
        <translation>Pontos de 100: densidade 30, cobertura 25, uniformidade 15, minutos 10, cuidados mantidos 20</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Lição</translation>
    </message>
    <message>
        <source>Best, of 100</source>
        <translation>Melhor, de 100</translation>
    </message>
    <message>
        <source>Runs</source>
        <translation>Execuções</translation>
    </message>
    <message>
        <source>Driven</source>
        <translation>Condução</translation>
    </message>
    <message>
        <source>by hand</source>
        <translation>à mão</translation>
    </message>
    <message>
        <source>by a plan</source>
        <translation>por um plano</translation>
        <source>Handed over</source>
        <translation>Passagem do turno</translation>
    </message>
    <message>
        <source>For the next shift</source>
        <translation>Para o próximo turno</translation>
    </message>
    <message>
        <source>Fed and how warm</source>
        <translation>Retirado e temperaturas</translation>
    </message>
    <message>
        <source>Fed</source>
        <translation>Retirado</translation>
    </message>
    <message>
        <source>20 cm behind the face</source>
        <translation>20 cm atrás do painel</translation>
    </message>
    <message>
        <source>In the core</source>
        <translation>No núcleo</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Combustível</translation>
    </message>
    <message>
        <source>Fuel cost</source>
        <translation>Custo do combustível</translation>
    </message>
    <message>
        <source>What limited density</source>
        <translation>O que limitou a densidade</translation>
    </message>
    <message>
        <source>Limited by</source>
        <translation>Limitada por</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>few minutes a tonne</source>
        <translation>poucos minutos por tonelada</translation>
    </message>
    <message>
        <source>light tractors</source>
        <translation>tratores leves</translation>
    </message>
    <message>
        <source>thick layers</source>
        <translation>camadas espessas</translation>
    </message>
    <message>
        <source>wet crop</source>
        <translation>forragem úmida</translation>
    </message>
    <message>
        <source>little crop above it</source>
        <translation>pouca forragem acima</translation>
    </message>
    <message>
        <source>nobody packed</source>
        <translation>ninguém compactou</translation>
    </message>
    <message>
        <source>nothing beside the silo's mean</source>
        <translation>nada, comparada à média do silo</translation>
    </message>
    <message>
        <source>{1}, the day at {2}: a further tractor {3} (80 % band {4} to {5})</source>
        <translation>{1}, o dia em {2}: um trator a mais {3} (faixa de 80 % de {4} a {5})</translation>
    </message>
    <message>
        <source>Shifts side by side</source>
        <translation>Turnos lado a lado</translation>
    </message>
    <message>
        <source>First load</source>
        <translation>Primeira carga</translation>
    </message>
    <message>
        <source>Last load</source>
        <translation>Última carga</translation>
    </message>
    <message>
        <source>What was fed</source>
        <translation>O que foi retirado</translation>
    </message>
    <message>
        <source>In against out</source>
        <translation>Entrada contra saída</translation>
    </message>
    <message>
        <source>What is fed each day, its dry matter and a first day are not known: give them, or record what is fed</source>
        <translation>Não se sabe quanto se retira por dia, a matéria seca nem o primeiro dia: informe-os, ou registre o que se retira</translation>
    </message>
    <message>
        <source>A loss above {1} is seldom real: see whether a removal is missing from the log, or a weight or dry matter is wrong</source>
        <translation>Perda acima de {1} raramente é real: veja se falta uma retirada no registro, ou se um peso ou uma matéria seca está errado</translation>
    </message>
    <message>
        <source>As fed: {1} in, {2} out, shrink {3}</source>
        <translation>Matéria natural: entraram {1}, saíram {2}, quebra {3}</translation>
    </message>
    <message>
        <source>Dry matter: {1} in, {2} out, loss {3}</source>
        <translation>Matéria seca: entraram {1}, saíram {2}, perda {3}</translation>
    </message>
    <message>
        <source>In: the part before the face as it was last seen, by the predicted densities</source>
        <translation>Entrada: a parte à frente do painel como visto por último, pelas densidades previstas</translation>
    </message>
    <message>
        <source>Where the face stands is not recorded, so what was fed cannot be held against what was laid: record the removal with the place of the face</source>
        <translation>Não está registrado onde o painel está, e o que foi retirado não pode ser comparado ao que foi posto: registre a retirada com o lugar do painel</translation>
    </message>
    <message>
        <source>No removal tells its dry matter, so the loss of dry matter is not known: sample what is fed</source>
        <translation>Nenhuma retirada informa a matéria seca, e a perda de matéria seca não é conhecida: amostre o que se retira</translation>
    </message>
    <message>
        <source>Let no more come than now, {1}</source>
        <translation>Não deixe chegar mais do que agora, {1}</translation>
    </message>
    <message>
        <source>Dry matter: the mean of last season, {1}, until a sample is taken</source>
        <translation>Matéria seca: a média da última safra, {1}, até que se tire uma amostra</translation>
    </message>
    <message>
        <source>The farm has no silo called {1}: name it so in the plan, or define it</source>
        <translation>A fazenda não tem silo chamado {1}: dê esse nome no plano ou cadastre-o</translation>
    </message>
    <message>
        <source>Let no more come than now, {1}</source>
        <translation>Não deixe chegar mais do que agora, {1}</translation>
    </message>
    <message>
        <source>Dry matter: the mean of last season, {1}, until a sample is taken</source>
        <translation>Matéria seca: a média da última safra, {1}, até que se tire uma amostra</translation>
    </message>
    <message>
        <source>The days of a plan follow each other: {1} stands too late</source>
        <translation>Os dias de um plano seguem um ao outro: {1} está tarde demais</translation>
    </message>
    <message>
        <source>The harvest would take more than {1} days: check the crop, the trucks and the working day</source>
        <translation>A colheita levaria mais de {1} dias: confira a forragem, os caminhões e a jornada</translation>
    </message>
    <message>
        <source>Against the plan</source>
        <translation>Em relação ao plano</translation>
    </message>
    <message>
        <source>No plan was adopted for this season</source>
        <translation>Nenhum plano foi adotado para esta safra</translation>
    </message>
    <message>
        <source>The plan {1}, adopted on {2}</source>
        <translation>O plano {1}, adotado em {2}</translation>
    </message>
    <message>
        <source>The plan had no crop for this day</source>
        <translation>O plano não previa forragem para este dia</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>planejado</translation>
    </message>
    <message>
        <source>this day</source>
        <translation>este dia</translation>
    </message>
    <message>
        <source>{1} came in, {2} were planned: the day fell short</source>
        <translation>Entraram {1}, o plano previa {2}: o dia ficou abaixo</translation>
    </message>
    <message>
        <source>{1} came in, {2} were planned: the day brought more</source>
        <translation>Entraram {1}, o plano previa {2}: o dia trouxe mais</translation>
    </message>
    <message>
        <source>From the first load to the last, pauses left out, {1} came in and {2} were planned: slower</source>
        <translation>Da primeira à última carga, sem as pausas, entraram {1} e o plano previa {2}: mais devagar</translation>
    </message>
    <message>
        <source>From the first load to the last, pauses left out, {1} came in and {2} were planned: faster, and packing had less time</source>
        <translation>Da primeira à última carga, sem as pausas, entraram {1} e o plano previa {2}: mais rápido, e a compactação teve menos tempo</translation>
    </message>
    <message>
        <source>The tractors packed for {1} together, {2} were planned</source>
        <translation>Os tratores compactaram {1} ao todo, o plano previa {2}</translation>
    </message>
    <message>
        <source>The tractors packed for {1} together, more than the {2} planned</source>
        <translation>Os tratores compactaram {1} ao todo, mais que {2} do plano</translation>
    </message>
    <message>
        <source>Layers were spread {1} thick, thinner than the {2} planned</source>
        <translation>As camadas foram espalhadas com {1}, mais finas que {2} do plano</translation>
    </message>
    <message>
        <source>Layers were spread {1} thick, thicker than the {2} planned</source>
        <translation>As camadas foram espalhadas com {1}, mais grossas que {2} do plano</translation>
    </message>
    <message>
        <source>{1}: {2} ({3} to {4}) for the day's crop, looser than the {5} ({6} to {7}) planned</source>
        <translation>{1}: {2} ({3} a {4}) na forragem do dia, mais solta que {5} ({6} a {7}) do plano</translation>
    </message>
    <message>
        <source>{1}: {2} ({3} to {4}) for the day's crop, denser than the {5} ({6} to {7}) planned</source>
        <translation>{1}: {2} ({3} a {4}) na forragem do dia, mais densa que {5} ({6} a {7}) do plano</translation>
    </message>
    <message>
        <source>The day kept to the plan, to a twentieth in each figure</source>
        <translation>O dia seguiu o plano, a um vigésimo em cada número</translation>
    </message>
    <message>
        <source>Since {1} {2} came in, and {3} were planned by this day's end</source>
        <translation>Desde {1} entraram {2}, e o plano previa {3} até o fim deste dia</translation>
    </message>
    <message>
        <source>This season has no plan: adopt one first</source>
        <translation>Esta safra não tem plano: adote um primeiro</translation>
    </message>
    <message>
        <source>The farm has no silo called {1}: name it so in the plan, or define it</source>
        <translation>A fazenda não tem silo chamado {1}: dê esse nome no plano ou cadastre-o</translation>
    </message>
    <message>
        <source>{1} holds no position with a time: choose the track of a tractor, NMEA or GPX</source>
        <translation>Não há em {1} nenhuma posição com hora: escolha o percurso de um trator, NMEA ou GPX</translation>
    </message>
    <message>
        <source>{1} is attached already: nothing is to be done</source>
        <translation>{1} já está anexado: não há nada a fazer</translation>
    </message>
    <message>
        <source>{1} no longer lies in {2}: put it back there, or attach it again from where it lies now</source>
        <translation>{1} não está mais em {2}: devolva-o para lá, ou anexe-o de novo de onde ele está agora</translation>
    </message>
    <message>
        <source>{1} in {2} is no longer the file that was attached, its content has changed: put the attached one back there, or attach this one as a track of its own</source>
        <translation>{1} em {2} não é mais o arquivo que foi anexado, o conteúdo mudou: devolva para lá o que foi anexado, ou anexe este como outro percurso</translation>
    </message>
    <message>
        <source>{1} is the track of a tractor that this farm does not know: correct the entry that attached it</source>
        <translation>{1} é o percurso de um trator que esta fazenda não conhece: corrija o registro que o anexou</translation>
    </message>
    <message>
        <source>Where {1} lies on Earth is not recorded, so that no track can be laid on it: record the corner of back wall and left wall and the direction of the left wall</source>
        <translation>Não está registrado onde {1} fica na Terra, e por isso nenhum percurso cabe nele: registre o canto da parede do fundo com a parede esquerda e a direção da parede esquerda</translation>
    </message>
</context>
<context>
    <name>Unit</name>
    <message>
        <source>t DM</source>
        <translation>t MS</translation>
    </message>
    <message>
        <source>ton DM</source>
        <translation>ton curta MS</translation>
    </message>
    <message>
        <source>kg DM/m3</source>
        <translation>kg MS/m3</translation>
    </message>
    <message>
        <source>lb DM/ft3</source>
        <translation>lb MS/ft3</translation>
    </message>
    <message>
        <source>t DM/h</source>
        <translation>t MS/h</translation>
    </message>
    <message>
        <source>ton DM/h</source>
        <translation>ton curta MS/h</translation>
    </message>
    <message>
        <source>kg per t/h</source>
        <translation>kg por t/h</translation>
    </message>
    <message>
        <source>lb per ton/h</source>
        <translation>lb por ton curta/h</translation>
    </message>
    <message>
        <source>ton</source>
        <translation>ton curta</translation>
    </message>
    <message>
        <source>ton/h</source>
        <translation>ton curta/h</translation>
    </message>
    <message>
        <source>min/ton</source>
        <translation>min/ton curta</translation>
    </message>
</context>
<context>
    <name>Field</name>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>error</source>
        <translation>erro</translation>
    </message>
    <message>
        <source>face</source>
        <translation>frente</translation>
    </message>
    <message>
        <source>inputs</source>
        <translation>entradas</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>layers</source>
        <translation>camadas</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>predicted</source>
        <translation>prevista</translation>
    </message>
    <message>
        <source>across</source>
        <translation>na largura</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>atividade</translation>
    </message>
    <message>
        <source>additive</source>
        <translation>aditivo</translation>
    </message>
    <message>
        <source>advice</source>
        <translation>recomendação</translation>
    </message>
    <message>
        <source>advice decided</source>
        <translation>recomendação decidida</translation>
    </message>
    <message>
        <source>after</source>
        <translation>depois</translation>
    </message>
    <message>
        <source>along</source>
        <translation>no comprimento</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>begin</source>
        <translation>início</translation>
    </message>
    <message>
        <source>begins</source>
        <translation>começa</translation>
    </message>
    <message>
        <source>box volume</source>
        <translation>volume da caçamba</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>alerta</translation>
    </message>
    <message>
        <source>caution shown</source>
        <translation>alerta mostrado</translation>
    </message>
    <message>
        <source>chance after</source>
        <translation>chance depois</translation>
    </message>
    <message>
        <source>chance before</source>
        <translation>chance antes</translation>
    </message>
    <message>
        <source>code</source>
        <translation>código</translation>
    </message>
    <message>
        <source>column</source>
        <translation>coluna</translation>
    </message>
    <message>
        <source>core</source>
        <translation>amostra de cilindro</translation>
    </message>
    <message>
        <source>cover</source>
        <translation>cobertura</translation>
    </message>
    <message>
        <source>crop</source>
        <translation>cultura</translation>
    </message>
    <message>
        <source>crown</source>
        <translation>abaulamento</translation>
    </message>
    <message>
        <source>day</source>
        <translation>dia</translation>
    </message>
    <message>
        <source>day closed</source>
        <translation>dia fechado</translation>
    </message>
    <message>
        <source>decision</source>
        <translation>decisão</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidade</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profundidade</translation>
    </message>
    <message>
        <source>diameter</source>
        <translation>diâmetro</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>dry matter</source>
        <translation>matéria seca</translation>
    </message>
    <message>
        <source>dry matter high</source>
        <translation>matéria seca máxima</translation>
    </message>
    <message>
        <source>dry matter low</source>
        <translation>matéria seca mínima</translation>
    </message>
    <message>
        <source>dry matter sample</source>
        <translation>amostra de matéria seca</translation>
    </message>
    <message>
        <source>duty</source>
        <translation>função</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fim</translation>
    </message>
    <message>
        <source>evidence</source>
        <translation>evidência</translation>
    </message>
    <message>
        <source>farm</source>
        <translation>fazenda</translation>
    </message>
    <message>
        <source>field</source>
        <translation>talhão</translation>
    </message>
    <message>
        <source>field defined</source>
        <translation>talhão definido</translation>
    </message>
    <message>
        <source>file</source>
        <translation>arquivo</translation>
    </message>
    <message>
        <source>filling</source>
        <translation>enchimento</translation>
    </message>
    <message>
        <source>filling density</source>
        <translation>densidade de enchimento</translation>
    </message>
    <message>
        <source>from</source>
        <translation>de</translation>
    </message>
    <message>
        <source>head</source>
        <translation>cabeça</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>height survey</source>
        <translation>levantamento de alturas</translation>
    </message>
    <message>
        <source>holds tablet</source>
        <translation>está com o tablet</translation>
    </message>
    <message>
        <source>hourly cost</source>
        <translation>custo por hora</translation>
    </message>
    <message>
        <source>id</source>
        <translation>identificador</translation>
    </message>
    <message>
        <source>incident</source>
        <translation>ocorrência</translation>
    </message>
    <message>
        <source>layer seen</source>
        <translation>camada vista</translation>
    </message>
    <message>
        <source>length</source>
        <translation>comprimento</translation>
    </message>
    <message>
        <source>line</source>
        <translation>linha</translation>
    </message>
    <message>
        <source>list</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>load</source>
        <translation>carga</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>massa</translation>
    </message>
    <message>
        <source>mass known</source>
        <translation>massa conhecida</translation>
    </message>
    <message>
        <source>maximum layer</source>
        <translation>camada máxima</translation>
    </message>
    <message>
        <source>method</source>
        <translation>método</translation>
    </message>
    <message>
        <source>minimum density</source>
        <translation>densidade mínima</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nome</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>origin</source>
        <translation>procedência</translation>
    </message>
    <message>
        <source>packing share</source>
        <translation>parte do tempo compactando</translation>
    </message>
    <message>
        <source>pause</source>
        <translation>pausa</translation>
    </message>
    <message>
        <source>person</source>
        <translation>pessoa</translation>
    </message>
    <message>
        <source>planned depth</source>
        <translation>altura planejada</translation>
    </message>
    <message>
        <source>porosity goal</source>
        <translation>meta de porosidade</translation>
    </message>
    <message>
        <source>product</source>
        <translation>produto</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>chuva</translation>
    </message>
    <message>
        <source>ramp</source>
        <translation>rampa</translation>
    </message>
    <message>
        <source>ramp ends</source>
        <translation>pontas com rampa</translation>
    </message>
    <message>
        <source>rate window</source>
        <translation>janela da taxa</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>leituras</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>motivo</translation>
    </message>
    <message>
        <source>row set aside</source>
        <translation>linha separada</translation>
    </message>
    <message>
        <source>rules set</source>
        <translation>regras definidas</translation>
    </message>
    <message>
        <source>sample interval</source>
        <translation>intervalo de amostras</translation>
    </message>
    <message>
        <source>season</source>
        <translation>safra</translation>
    </message>
    <message>
        <source>season carried</source>
        <translation>safra trazida</translation>
    </message>
    <message>
        <source>season started</source>
        <translation>safra iniciada</translation>
    </message>
    <message>
        <source>shift</source>
        <translation>turno</translation>
    </message>
    <message>
        <source>silo</source>
        <translation>silo</translation>
    </message>
    <message>
        <source>silo defined</source>
        <translation>silo definido</translation>
    </message>
    <message>
        <source>sky</source>
        <translation>céu</translation>
    </message>
    <message>
        <source>sort</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>source</source>
        <translation>origem</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>velocidade</translation>
    </message>
    <message>
        <source>step</source>
        <translation>etapa</translation>
    </message>
    <message>
        <source>surface treatment</source>
        <translation>tratamento da superfície</translation>
    </message>
    <message>
        <source>temperature</source>
        <translation>temperatura</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texto</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>espessura</translation>
    </message>
    <message>
        <source>ticket</source>
        <translation>tíquete</translation>
    </message>
    <message>
        <source>time spread</source>
        <translation>incerteza da hora</translation>
    </message>
    <message>
        <source>track width</source>
        <translation>largura de rodagem</translation>
    </message>
    <message>
        <source>tractor</source>
        <translation>trator</translation>
    </message>
    <message>
        <source>tractor defined</source>
        <translation>trator definido</translation>
    </message>
    <message>
        <source>tractor work</source>
        <translation>trabalho do trator</translation>
    </message>
    <message>
        <source>truck</source>
        <translation>caminhão</translation>
    </message>
    <message>
        <source>truck defined</source>
        <translation>caminhão definido</translation>
    </message>
    <message>
        <source>usual load</source>
        <translation>carga usual</translation>
    </message>
    <message>
        <source>usual role</source>
        <translation>papel usual</translation>
    </message>
    <message>
        <source>void</source>
        <translation>anulação</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>wall height</source>
        <translation>altura da parede</translation>
    </message>
    <message>
        <source>wanted chance</source>
        <translation>chance desejada</translation>
    </message>
    <message>
        <source>weather seen</source>
        <translation>tempo observado</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>úmido</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largura</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>vento</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>fuso horário</translation>
    </message>
    <message>
        <source>below 4 mm high</source>
        <translation>abaixo de 4 mm, máximo</translation>
    </message>
    <message>
        <source>below 4 mm low</source>
        <translation>abaixo de 4 mm, mínimo</translation>
    </message>
    <message>
        <source>chop ranges set</source>
        <translation>faixas de picado definidas</translation>
    </message>
    <message>
        <source>chop set</source>
        <translation>picado ajustado</translation>
    </message>
    <message>
        <source>coarse</source>
        <translation>grosso</translation>
    </message>
    <message>
        <source>coarse starch</source>
        <translation>amido do grosso</translation>
    </message>
    <message>
        <source>cutting height</source>
        <translation>altura de corte</translation>
    </message>
    <message>
        <source>days</source>
        <translation>dias</translation>
    </message>
    <message>
        <source>field observed</source>
        <translation>talhão observado</translation>
    </message>
    <message>
        <source>high</source>
        <translation>máxima</translation>
    </message>
    <message>
        <source>hybrid</source>
        <translation>híbrido</translation>
    </message>
    <message>
        <source>hybrid days</source>
        <translation>dias do híbrido</translation>
    </message>
    <message>
        <source>kernel test</source>
        <translation>teste de grãos</translation>
    </message>
    <message>
        <source>kernels</source>
        <translation>grãos</translation>
    </message>
    <message>
        <source>low</source>
        <translation>mínima</translation>
    </message>
    <message>
        <source>masses</source>
        <translation>massas</translation>
    </message>
    <message>
        <source>material</source>
        <translation>material</translation>
    </message>
    <message>
        <source>milk line</source>
        <translation>linha do leite</translation>
    </message>
    <message>
        <source>on 19 mm high</source>
        <translation>sobre 19 mm, máximo</translation>
    </message>
    <message>
        <source>on 19 mm low</source>
        <translation>sobre 19 mm, mínimo</translation>
    </message>
    <message>
        <source>on 4 mm high</source>
        <translation>sobre 4 mm, máximo</translation>
    </message>
    <message>
        <source>on 4 mm low</source>
        <translation>sobre 4 mm, mínimo</translation>
    </message>
    <message>
        <source>on 8 mm high</source>
        <translation>sobre 8 mm, máximo</translation>
    </message>
    <message>
        <source>on 8 mm low</source>
        <translation>sobre 8 mm, mínimo</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>aberturas</translation>
    </message>
    <message>
        <source>parts</source>
        <translation>partes</translation>
    </message>
    <message>
        <source>planted</source>
        <translation>plantado</translation>
    </message>
    <message>
        <source>processor</source>
        <translation>processador</translation>
    </message>
    <message>
        <source>roll gap</source>
        <translation>folga dos rolos</translation>
    </message>
    <message>
        <source>sieve loss</source>
        <translation>perda na peneira</translation>
    </message>
    <message>
        <source>sieve test</source>
        <translation>teste de peneiras</translation>
    </message>
    <message>
        <source>silked</source>
        <translation>embonecado</translation>
    </message>
    <message>
        <source>temperatures</source>
        <translation>temperaturas</translation>
    </message>
    <message>
        <source>top length</source>
        <translation>comprimento de cima</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>inteiro</translation>
    </message>
    <message>
        <source>whole starch</source>
        <translation>amido do inteiro</translation>
    </message>
    <message>
        <source>behind face</source>
        <translation>atrás do painel</translation>
    </message>
    <message>
        <source>cost</source>
        <translation>custo</translation>
    </message>
    <message>
        <source>hand over</source>
        <translation>passagem do turno</translation>
    </message>
    <message>
        <source>feed removed</source>
        <translation>silagem retirada</translation>
    </message>
    <message>
        <source>face temperature</source>
        <translation>temperatura do painel</translation>
    </message>
    <message>
        <source>fuel taken</source>
        <translation>combustível abastecido</translation>
    </message>
    <message>
        <source>plan adopted</source>
        <translation>plano adotado</translation>
    </message>
    <message>
        <source>inputs</source>
        <translation>bases</translation>
    </message>
    <message>
        <source>layer</source>
        <translation>camada</translation>
    </message>
    <message>
        <source>chance of room</source>
        <translation>chance de caber</translation>
    </message>
    <message>
        <source>chance of target</source>
        <translation>chance da meta</translation>
    </message>
    <message>
        <source>delivery</source>
        <translation>entrega</translation>
    </message>
    <message>
        <source>density high80</source>
        <translation>densidade alta</translation>
    </message>
    <message>
        <source>density low80</source>
        <translation>densidade baixa</translation>
    </message>
    <message>
        <source>expected loss</source>
        <translation>perda esperada</translation>
    </message>
    <message>
        <source>harvest days</source>
        <translation>dias de colheita</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>sobra</translation>
    </message>
    <message>
        <source>margin per t dm</source>
        <translation>margem por t de MS</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>compactação</translation>
    </message>
    <message>
        <source>silo placed</source>
        <translation>lugar do silo</translation>
    </message>
    <message>
        <source>track attached</source>
        <translation>percurso anexado</translation>
    </message>
    <message>
        <source>bearing</source>
        <translation>direção</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitude</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitude</translation>
    </message>
    <message>
        <source>bytes</source>
        <translation>bytes</translation>
    </message>
    <message>
        <source>fixes</source>
        <translation>posições</translation>
    </message>
    <message>
        <source>sha256</source>
        <translation>SHA-256</translation>
    </message>
</context>
<context>
    <name>Word</name>
    <message>
        <source>core</source>
        <translation>amostra de cilindro</translation>
    </message>
    <message>
        <source>survey</source>
        <translation>alturas</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceita</translation>
    </message>
    <message>
        <source>away</source>
        <translation>ausente</translation>
    </message>
    <message>
        <source>barrier film</source>
        <translation>filme de barreira</translation>
    </message>
    <message>
        <source>block cut</source>
        <translation>bloco cortado</translation>
    </message>
    <message>
        <source>box</source>
        <translation>caçamba</translation>
    </message>
    <message>
        <source>breakdown</source>
        <translation>quebra</translation>
    </message>
    <message>
        <source>chopping</source>
        <translation>colhendo</translation>
    </message>
    <message>
        <source>collision</source>
        <translation>colisão</translation>
    </message>
    <message>
        <source>covering</source>
        <translation>cobrindo</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>danificada</translation>
    </message>
    <message>
        <source>declined</source>
        <translation>recusada</translation>
    </message>
    <message>
        <source>edges sealed</source>
        <translation>bordas vedadas</translation>
    </message>
    <message>
        <source>estimate</source>
        <translation>estimativa</translation>
    </message>
    <message>
        <source>face balance</source>
        <translation>balanço da frente</translation>
    </message>
    <message>
        <source>fair</source>
        <translation>bom</translation>
    </message>
    <message>
        <source>fire</source>
        <translation>fogo</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>neblina</translation>
    </message>
    <message>
        <source>gas</source>
        <translation>gás</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>capim</translation>
    </message>
    <message>
        <source>hauling</source>
        <translation>transportando</translation>
    </message>
    <message>
        <source>injury</source>
        <translation>ferimento</translation>
    </message>
    <message>
        <source>lifts</source>
        <translation>camadas planas</translation>
    </message>
    <message>
        <source>loader removed</source>
        <translation>retirada pela carregadeira</translation>
    </message>
    <message>
        <source>loads per cover</source>
        <translation>cargas por passada</translation>
    </message>
    <message>
        <source>lucerne</source>
        <translation>alfafa</translation>
    </message>
    <message>
        <source>machine corer</source>
        <translation>amostrador de máquina</translation>
    </message>
    <message>
        <source>maize</source>
        <translation>milho</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>medido</translation>
    </message>
    <message>
        <source>mended</source>
        <translation>remendada</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>medidor</translation>
    </message>
    <message>
        <source>microwave</source>
        <translation>micro-ondas</translation>
    </message>
    <message>
        <source>near miss</source>
        <translation>quase acidente</translation>
    </message>
    <message>
        <source>no</source>
        <translation>não</translation>
    </message>
    <message>
        <source>other</source>
        <translation>outro</translation>
    </message>
    <message>
        <source>oven</source>
        <translation>estufa</translation>
    </message>
    <message>
        <source>overcast</source>
        <translation>encoberto</translation>
    </message>
    <message>
        <source>packing</source>
        <translation>compactando</translation>
    </message>
    <message>
        <source>rain</source>
        <translation>chuva</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>lona</translation>
    </message>
    <message>
        <source>showers</source>
        <translation>pancadas</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>mostrada</translation>
    </message>
    <message>
        <source>slid</source>
        <translation>deslizou</translation>
    </message>
    <message>
        <source>spreading</source>
        <translation>espalhando</translation>
    </message>
    <message>
        <source>stuck</source>
        <translation>atolado</translation>
    </message>
    <message>
        <source>supervising</source>
        <translation>coordenando</translation>
    </message>
    <message>
        <source>tipped over</source>
        <translation>tombou</translation>
    </message>
    <message>
        <source>usual</source>
        <translation>usual</translation>
    </message>
    <message>
        <source>wall moved</source>
        <translation>parede cedeu</translation>
    </message>
    <message>
        <source>wall sheets</source>
        <translation>lonas das paredes</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation>cunha</translation>
    </message>
    <message>
        <source>weighed</source>
        <translation>pesada</translation>
    </message>
    <message>
        <source>weights</source>
        <translation>pesos</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sim</translation>
    </message>
    <message>
        <source>fermented</source>
        <translation>fermentado</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>long chop</source>
        <translation>picado longo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>nenhum</translation>
    </message>
    <message>
        <source>rolls</source>
        <translation>rolos</translation>
    </message>
    <message>
        <source>spill</source>
        <translation>vazamento</translation>
    </message>
</context>
</TS>
