#pragma once

#include "app/desktop/desk/season_desk.h"
#include "app/desktop/face/face_presenter.h"
#include "app/desktop/widgets/message_bar.h"

#include <QTimer>
#include <QWidget>
#include <set>

class QComboBox;
class QLabel;
class QTabWidget;

namespace treadwell::day_page {
class SheetView;
}
namespace treadwell::samples_page {
class LinesPanel;
}

namespace treadwell::face_page {

class PlanBox;
class SiloForm;

/// The page of the opened silo: cores, what is fed and temperatures entered on the left, with the cautions
/// beside the form; on the right the face as its cores and the prediction have it, and what comes next.
class FacePage final : public QWidget {
    Q_OBJECT

  public:
    FacePage(desk::SeasonDesk& desk, const settings::Appearance& appearance, QWidget* parent = nullptr);

    /// Reads season and clock anew.
    void refresh();

  protected:
    void changeEvent(QEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    [[nodiscard]] QWidget* makeForms();
    [[nodiscard]] QWidget* makeViews();
    void fillSilos();
    void showFeeding();
    void fillFaces(const face::Face& face);
    void record(const entries::Body& body);
    void settle(desk::Ticket ticket);
    void fail(desk::Ticket ticket, const Error& error);
    void retranslate();
    [[nodiscard]] std::optional<farm::Silo> chosenSilo() const;
    [[nodiscard]] fill::Speech speech() const;

    desk::SeasonDesk& m_desk;
    const settings::Appearance& m_appearance;
    std::set<desk::Ticket> m_pending;
    desk::SeasonPointer m_silosOf;
    QTimer m_tick;
    QLabel* m_siloTitle;
    QComboBox* m_silo;
    samples_page::LinesPanel* m_cautions;
    QTabWidget* m_tabs;
    std::vector<SiloForm*> m_forms;  ///< in the order of the tabs
    PlanBox* m_plan;
    widgets::MessageBar* m_messages;
    QTabWidget* m_views;
    QLabel* m_faceTitle;
    QComboBox* m_faces;
    widgets::FaceMapView* m_map;
    day_page::SheetView* m_faceSheet;
    day_page::SheetView* m_feedSheet;
};

/// The keys of the Face page and what they do, for the list in the menu.
[[nodiscard]] std::vector<std::pair<QString, QString>> faceKeys();

}  // namespace treadwell::face_page
