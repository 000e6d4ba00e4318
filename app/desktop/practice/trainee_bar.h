#pragma once

#include "app/desktop/settings/appearance.h"
#include "core/practice/progress.h"

#include <QThreadPool>
#include <QWidget>
#include <filesystem>

class QComboBox;
class QPushButton;

namespace treadwell::practice_page {

/// Who practises: a name, kept on this machine with what it has done until it is deleted, or nobody. The file
/// is written beside the page's thread.
class TraineeBar final : public QWidget {
    Q_OBJECT

  public:
    TraineeBar(const settings::Appearance& appearance, std::filesystem::path file, QWidget* parent = nullptr);
    ~TraineeBar() override { m_writer.waitForDone(); }

    /// Null where nobody is chosen.
    [[nodiscard]] const practice::Trainee* trainee() const;
    /// Chooses somebody, new or known.
    void choose(const QString& name);
    /// A run of a lesson to its end; nothing where nobody is chosen.
    void note(const std::string& lesson, double score, bool byHand, Instant now);
    void forgetChosen();

  signals:
    /// Somebody else is chosen, or has done more.
    void changed();
    void failed(const treadwell::Error& error);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void retranslate();
    void fill();
    void askName();
    void askForget();
    void write();

    std::filesystem::path m_file;
    practice::Progress m_progress;
    std::optional<Error> m_unreadable;  ///< then nothing is written over it
    std::string m_chosen;
    QThreadPool m_writer;
    QComboBox* m_names;
    QPushButton* m_new;
    QPushButton* m_forget;
};

}  // namespace treadwell::practice_page
