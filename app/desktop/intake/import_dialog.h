#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/fill/sheet.h"
#include "core/intake/preview.h"

#include <filesystem>

class QComboBox;
class QPlainTextEdit;
class QPushButton;
class QTableWidget;

namespace treadwell::intake_page {

/// A file of tickets or readings before it is taken in: what it seems to be, what must be answered before it
/// can be read, and what would be recorded. Nothing is recorded before somebody has agreed. Answers are
/// remembered by the file's header.
class ImportDialog final : public fill::Sheet {
    Q_OBJECT

  public:
    /// `mapsFile` holds what this machine remembers of earlier files.
    ImportDialog(desk::SeasonDesk& desk, const settings::Appearance& appearance, std::string bytes,
                 std::filesystem::path file, std::filesystem::path mapsFile, QWidget* parent);

    /// What would be recorded, or what is asked.
    [[nodiscard]] QString told() const;

  protected:
    void record() override;

  private:
    void addKind();
    void addSilo();
    void addQuestions();
    template <class Answer>
    void addQuestion(const char* name, const QString& row, std::vector<Code> codes,
                     std::optional<Answer> intake::ImportMap::*answer, const QStringList& choices);
    void addColumns();
    [[nodiscard]] const intake::FileKind& kind() const;
    void makeContext();
    void read();
    void showQuestions();
    void showColumns();
    void takeMeaning(std::size_t column, std::optional<intake::Column> meaning);
    void tell();
    void remember();

    desk::SeasonDesk& m_desk;
    std::string m_bytes;
    std::filesystem::path m_file;
    std::filesystem::path m_mapsFile;
    intake::ImportMaps m_maps;
    intake::ImportMap m_answers;  ///< given here
    intake::Context m_context;
    intake::Preview m_preview;
    std::optional<desk::Ticket> m_asked;
    /// A row that is shown only where a file leaves it open.
    struct Question {
        QComboBox* box;
        std::vector<Code> codes;
        std::function<int()> chosen;  ///< 0: nothing
    };
    std::vector<Question> m_questions;
    QComboBox* m_kind;
    QTableWidget* m_columns;
    QPlainTextEdit* m_told;
    QPushButton* m_record;
};

}  // namespace treadwell::intake_page
