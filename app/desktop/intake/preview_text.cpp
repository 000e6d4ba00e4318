#include "app/desktop/intake/preview_text.h"

#include "core/intake/tickets.h"

#include <QCoreApplication>
#include <array>

namespace treadwell::intake_page {

namespace {

struct PreviewWords {
    Q_DECLARE_TR_FUNCTIONS(ImportPreview)
};

// In the order of intake::fileKinds().
constexpr std::array kKindNames{QT_TRANSLATE_NOOP("ImportPreview", "Tickets of a scale"),
                                QT_TRANSLATE_NOOP("ImportPreview", "What each tractor did"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Dry matter"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Heights of the silo"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Layers as spread"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Cores"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Sieve tests"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Kernel tests"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Daily temperatures"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Visits to fields"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Settings of the harvester"),
                                QT_TRANSLATE_NOOP("ImportPreview", "What was fed out"),
                                QT_TRANSLATE_NOOP("ImportPreview", "Temperatures of the face")};

// In the order of intake::kTicketColumns.
constexpr std::array kColumnNames{
    QT_TRANSLATE_NOOP("ImportPreview", "Ticket number"), QT_TRANSLATE_NOOP("ImportPreview", "Date"),
    QT_TRANSLATE_NOOP("ImportPreview", "Time"),          QT_TRANSLATE_NOOP("ImportPreview", "Truck"),
    QT_TRANSLATE_NOOP("ImportPreview", "Field"),         QT_TRANSLATE_NOOP("ImportPreview", "Silo"),
    QT_TRANSLATE_NOOP("ImportPreview", "Gross weight"),  QT_TRANSLATE_NOOP("ImportPreview", "Empty weight"),
    QT_TRANSLATE_NOOP("ImportPreview", "Net weight"),    QT_TRANSLATE_NOOP("ImportPreview", "Unit"),
    QT_TRANSLATE_NOOP("ImportPreview", "Status"),        QT_TRANSLATE_NOOP("ImportPreview", "Scale")};
static_assert(kColumnNames.size() == intake::kTicketColumns.size());

QString textOf(const std::string& text) {
    return QString::fromStdString(text);
}

void tellCounts(QStringList& lines, const intake::Intake& intake) {
    const auto add = [&](std::int64_t count, const QString& text) {
        if (count > 0) lines << text;
    };
    const auto number = [](std::int64_t count) { return static_cast<int>(count); };
    const auto size = [](const auto& list) { return static_cast<int>(list.size()); };
    lines << PreviewWords::tr("%n row(s) in the file", "", number(intake.rows));
    lines << PreviewWords::tr("%n entry(ies) would be recorded", "", size(intake.proposals));
    add(intake.alreadyImported,
        PreviewWords::tr("%n row(s) are there already", "", number(intake.alreadyImported)));
    add(intake.duplicates,
        PreviewWords::tr("%n row(s) stand twice in the file", "", number(intake.duplicates)));
    add(intake.voided, PreviewWords::tr("%n row(s) void a ticket or are voided", "", number(intake.voided)));
    add(intake.totals, PreviewWords::tr("%n row(s) are sums at the foot", "", number(intake.totals)));
    add(size(intake.settled),
        PreviewWords::tr("%n row(s) set aside earlier can be read now", "", size(intake.settled)));
    add(size(intake.quarantine),
        PreviewWords::tr("%n row(s) cannot be used and are set aside:", "", size(intake.quarantine)));
}

/// A column that is missing is named; what else is open says so itself.
QString asked(const Error& question, const fill::Speech& speech) {
    const QString text = speech.say(question.message);
    const auto column = enumFromText<intake::Column>(question.field);
    return column && ticketPlace(*column)
               ? PreviewWords::tr("%1: %2", "column, what is asked").arg(columnName(*column), text)
               : text;
}

QString tapped(const intake::Proposal& proposal, const fill::Speech& speech) {
    const auto& load = std::get<entries::Load>(proposal.body);
    return PreviewWords::tr("Line %1: the load tapped in with %2 weighs %3", "line, mass, mass")
        .arg(proposal.line)
        .arg(speech.units().text(proposal.match->mass), speech.units().text(load.mass));
}

}  // namespace

QString kindName(const intake::FileKind& kind) {
    static_assert(kKindNames.size() == 13);
    return PreviewWords::tr(kKindNames[static_cast<std::size_t>(&kind - intake::fileKinds().data())]);
}

std::optional<std::size_t> ticketPlace(intake::Column column) {
    const auto* place = std::ranges::find(intake::kTicketColumns, column);
    if (place == intake::kTicketColumns.end()) return std::nullopt;
    return static_cast<std::size_t>(place - intake::kTicketColumns.begin());
}

QString columnName(intake::Column column) {
    return PreviewWords::tr(kColumnNames[ticketPlace(column).value()]);
}

bool hasNews(const intake::Intake& intake) {
    const auto isNew = [](const intake::Quarantined& row) { return !row.isKnown; };
    return !intake.proposals.empty() || !intake.settled.empty() ||
           std::ranges::any_of(intake.quarantine, isNew);
}

QString previewText(const intake::Preview& preview, const fill::Speech& speech) {
    QStringList lines;
    if (!preview.intake) {
        lines << PreviewWords::tr("To be answered before it can be read:");
        for (const Error& question : preview.open) lines << asked(question, speech);
        return lines.join(u'\n');
    }
    const intake::Intake& intake = *preview.intake;
    tellCounts(lines, intake);
    const auto onLine = [](std::int64_t line, const QString& text) {
        return PreviewWords::tr("Line %1: %2", "line, what is to be noted").arg(line).arg(text);
    };
    for (const intake::Quarantined& row : intake.quarantine) {
        lines << onLine(row.reason.place.line, speech.say(row.reason.message));
        lines << QStringLiteral("    ") + textOf(row.raw);
    }
    for (const intake::Proposal& proposal : intake.proposals) {
        if (proposal.match) lines << tapped(proposal, speech);
        for (const Message& note : proposal.notes) lines << onLine(proposal.line, speech.say(note));
    }
    for (const Message& remark : intake.remarks) lines << speech.say(remark);
    for (const std::string& column : intake.ignoredColumns)
        lines << PreviewWords::tr("The column \"%1\" says nothing here and is not read").arg(textOf(column));
    return lines.join(u'\n');
}

}  // namespace treadwell::intake_page
