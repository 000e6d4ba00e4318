#include "app/desktop/intake/import_dialog.h"

#include "app/desktop/fill/id_box.h"
#include "app/desktop/intake/preview_text.h"
#include "app/desktop/widgets/choice_box.h"
#include "core/formats/codes.h"
#include "core/intake/codes.h"
#include "core/intake/from_season.h"
#include "core/intake/records.h"
#include "core/intake/tickets.h"

#include <QHeaderView>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTableWidget>

namespace treadwell::intake_page {

namespace {

constexpr int kShownColumns = 3;
constexpr int kShownLines = 8;
constexpr double kWidthMillimetres = 190.0;

}  // namespace

ImportDialog::ImportDialog(desk::SeasonDesk& desk, const settings::Appearance& look, std::string bytes,
                           std::filesystem::path file, std::filesystem::path mapsFile, QWidget* parent)
    : Sheet{look, tr("Take in %1").arg(QString::fromStdString(file.filename().string())), parent},
      m_desk{desk},
      m_bytes{std::move(bytes)},
      m_file{std::move(file)},
      m_mapsFile{std::move(mapsFile)},
      m_kind{new widgets::ChoiceBox{look}},
      m_columns{new QTableWidget},
      m_told{new QPlainTextEdit} {
    setMinimumWidth(look.pixels(kWidthMillimetres));
    makeContext();
    addKind();
    addSilo();
    addQuestions();
    addColumns();
    m_told->setObjectName(QStringLiteral("importTold"));
    m_told->setReadOnly(true);
    m_told->setTabChangesFocus(true);
    addRow(tr("What comes of it"), m_told);
    m_told->setMinimumHeight(kShownLines * m_told->fontMetrics().lineSpacing());
    m_record = addDecision(tr("Record it"));
    connect(&desk, &desk::SeasonDesk::committed, this, [this](desk::Ticket ticket) {
        if (ticket == m_asked) remember();
    });
    connect(&desk, &desk::SeasonDesk::failed, this, [this](desk::Ticket ticket, const Error& error) {
        if (ticket != m_asked) return;
        m_asked.reset();
        refuse(fill::Speech{this->look().units(), m_context.zone}.say(error));
        read();
    });
    if (auto maps = intake::ImportMaps::load(m_mapsFile)) {
        m_maps = *std::move(maps);
    } else {
        refuse(fill::Speech{look.units(), m_context.zone}.say(maps.error()));
    }
    {
        const QSignalBlocker quiet{m_kind};  // it is read once, below
        const intake::FileKind& likeliest = intake::likeliestKind(m_bytes, m_context);
        m_kind->setCurrentIndex(static_cast<int>(&likeliest - intake::fileKinds().data()));
    }
    read();
}

QString ImportDialog::told() const {
    return m_told->toPlainText();
}

void ImportDialog::makeContext() {
    const std::optional<farm::SiloId> silo = m_context.silo;
    m_context = intake::contextOf(*m_desk.season());
    if (silo) m_context.silo = silo;
}

void ImportDialog::addKind() {
    m_kind->setObjectName(QStringLiteral("importKind"));
    for (const intake::FileKind& kind : intake::fileKinds()) m_kind->addItem(kindName(kind));
    addRow(tr("It holds"), m_kind);
    connect(m_kind, &QComboBox::currentIndexChanged, this, &ImportDialog::read);
}

void ImportDialog::addSilo() {
    const auto& silos = m_desk.season()->farm().silos;
    if (silos.size() < 2) return;  // the only one is meant anyway
    auto* box = new widgets::ChoiceBox{look()};
    box->setObjectName(QStringLiteral("importSilo"));
    box->addItem(tr("are set aside"));
    fill::fillBox(*box, silos, std::optional<farm::SiloId>{});
    addRow(tr("Rows without a silo"), box);
    connect(box, &QComboBox::currentIndexChanged, this, [this, box] {
        m_context.silo = fill::chosenIn<farm::SiloId>(*box);
        read();
    });
}

template <class Answer>
void ImportDialog::addQuestion(const char* name, const QString& row, std::vector<Code> codes,
                               std::optional<Answer> intake::ImportMap::*answer, const QStringList& choices) {
    auto* box = new widgets::ChoiceBox{look()};
    box->setObjectName(QLatin1String{name});
    box->addItem(tr("to be answered"));
    box->addItems(choices);
    addRow(row, box);
    connect(box, &QComboBox::currentIndexChanged, this, [this, answer](int index) {
        m_answers.*answer = index < 1 ? std::nullopt : std::optional{static_cast<Answer>(index - 1)};
        // Queued: the box that asks for this is set by it.
        QMetaObject::invokeMethod(this, &ImportDialog::read, Qt::QueuedConnection);
    });
    m_questions.push_back({box, std::move(codes), [this, answer] {
                               const auto& given = m_context.map.*answer;
                               return given ? static_cast<int>(*given) + 1 : 0;
                           }});
}

void ImportDialog::addQuestions() {
    using intake::ImportMap;
    addQuestion("importEncoding", tr("Letters"), {code::encodingAmbiguous, code::encodingWrong},
                &ImportMap::encoding,
                {QStringLiteral("UTF-8"), QStringLiteral("Windows-1252"), QStringLiteral("Latin-9")});
    addQuestion("importDelimiter", tr("Columns are parted by"), {code::delimiterAmbiguous},
                &ImportMap::delimiter, {tr("Comma"), tr("Semicolon"), tr("Tab"), tr("Bar")});
    addQuestion("importDecimal", tr("Decimal sign"), {code::decimalAmbiguous, code::decimalMixed},
                &ImportMap::decimalSign, {tr("Point: 12.4"), tr("Comma: 12,4")});
    addQuestion("importDates", tr("Dates"), {code::dateOrderAmbiguous}, &ImportMap::dateOrder,
                {tr("Day first: 16/09"), tr("Month first: 09/16")});
    addQuestion("importUnit", tr("Weights without a unit"), {code::massUnitMissing, code::massUnitUnknown},
                &ImportMap::massUnit,
                {QStringLiteral("kg"), QStringLiteral("t"), QStringLiteral("lb"), tr("ton of 2,000 lb"),
                 QStringLiteral("g")});
}

void ImportDialog::showQuestions() {
    for (const Question& question : m_questions) {
        const bool isOpen = std::ranges::any_of(m_preview.open, [&](const Error& error) {
            return std::ranges::find(question.codes, error.code()) != question.codes.end();
        });
        const int chosen = question.chosen();
        const QSignalBlocker quiet{question.box};
        question.box->setCurrentIndex(chosen);
        showRow(question.box, isOpen || chosen > 0);
    }
}

void ImportDialog::addColumns() {
    m_columns->setObjectName(QStringLiteral("importColumns"));
    m_columns->setColumnCount(2);
    m_columns->setHorizontalHeaderLabels({tr("Column"), tr("Means")});
    m_columns->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    m_columns->verticalHeader()->hide();
    m_columns->setEditTriggers(QAbstractItemView::NoEditTriggers);
    addRow(tr("Columns"), m_columns);
    m_columns->setMinimumHeight((kShownColumns + 1) * look().pixels(settings::kControlMillimetres));
}

const intake::FileKind& ImportDialog::kind() const {
    return intake::fileKinds()[static_cast<std::size_t>(m_kind->currentIndex())];
}

void ImportDialog::read() {
    const auto header = intake::headerFingerprint(m_bytes);
    m_context.map = header ? m_answers.filledFrom(m_maps.find(*header)) : m_answers;
    m_preview = intake::previewOf(kind(), m_bytes, m_context);
    showQuestions();
    showColumns();
    tell();
}

void ImportDialog::showColumns() {
    showRow(m_columns, !m_preview.columns.empty());
    m_columns->setRowCount(static_cast<int>(m_preview.columns.size()));
    for (int row = 0; row < m_columns->rowCount(); ++row) {
        const auto at = static_cast<std::size_t>(row);
        const intake::PreviewColumn& column = m_preview.columns[at];
        const QString header = QString::fromStdString(column.header);
        m_columns->setItem(
            row, 0,
            new QTableWidgetItem{
                column.unit.empty() ? header
                                    : tr("%1, read in %2").arg(header, QString::fromStdString(column.unit))});
        auto* box = qobject_cast<QComboBox*>(m_columns->cellWidget(row, 1));
        if (box == nullptr) {
            box = new widgets::ChoiceBox{look()};
            box->setMinimumHeight(look().pixels(settings::kControlMillimetres));
            box->addItem(tr("nothing here"));
            for (const intake::Column meaning : intake::kTicketColumns) box->addItem(columnName(meaning));
            m_columns->setCellWidget(row, 1, box);
            m_columns->setRowHeight(row, look().pixels(settings::kControlMillimetres));
            connect(box, &QComboBox::currentIndexChanged, this, [this, at](int index) {
                takeMeaning(at, index < 1 ? std::nullopt
                                          : std::optional{
                                                intake::kTicketColumns[static_cast<std::size_t>(index - 1)]});
            });
        }
        box->setAccessibleName(header);
        const QSignalBlocker quiet{box};
        const auto place = column.meaning ? ticketPlace(*column.meaning) : std::nullopt;
        box->setCurrentIndex(place ? static_cast<int>(*place) + 1 : 0);
    }
}

void ImportDialog::takeMeaning(std::size_t column, std::optional<intake::Column> meaning) {
    const std::string header = m_preview.columns[column].header;
    std::erase_if(m_answers.columns, [&](const intake::ColumnName& name) {
        return name.header == header || name.column == meaning;
    });
    if (meaning) m_answers.columns.push_back({*meaning, header});
    // Queued: the box that asks for this is filled anew by it.
    QMetaObject::invokeMethod(this, &ImportDialog::read, Qt::QueuedConnection);
}

void ImportDialog::tell() {
    const fill::Speech speech{look().units(), m_context.zone};
    m_told->setPlainText(previewText(m_preview, speech));
    m_told->verticalScrollBar()->setValue(0);
    m_record->setEnabled(!m_asked && m_preview.intake && hasNews(*m_preview.intake));
}

void ImportDialog::record() {
    makeContext();  // something may have been recorded while this was looked at
    read();
    if (!m_preview.intake || !hasNews(*m_preview.intake)) return;
    const words::Style style = fill::styleOf(look().units(), m_context.zone);
    const auto inWords = [&](const Error& error) { return words::inWords(error.message, style); };
    std::vector<session::Proposal> proposals;
    for (const intake::Proposal& one :
         intake::recordsOf(*m_preview.intake, m_file.filename().string(), kind().name, m_desk.now(), inWords))
        proposals.push_back({one.body, one.happened, one.target, one.evidence});
    m_asked = m_desk.propose(std::move(proposals));
    m_record->setEnabled(false);
}

void ImportDialog::remember() {
    const auto header = intake::headerFingerprint(m_bytes);
    if (header && m_answers != intake::ImportMap{}) {
        m_maps.remember(*header, m_context.map);
        if (const auto kept = m_maps.save(m_mapsFile); !kept) {
            // It is recorded; only the answers will be asked for again.
            return refuse(fill::Speech{look().units(), m_context.zone}.say(kept.error()));
        }
    }
    accept();
}

}  // namespace treadwell::intake_page
