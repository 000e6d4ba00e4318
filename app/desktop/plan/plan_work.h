#pragma once

#include "core/plan/adoption.h"
#include "core/plan/compare.h"
#include "core/plan/feeds.h"
#include "core/plan/flows.h"
#include "core/plan/pays.h"
#include "core/plan/seals.h"

#include <QObject>
#include <QThread>
#include <memory>
#include <mutex>

namespace treadwell::plan_page {

/// A plan and what follows from it.
struct Answers {
    plan::Inputs inputs;
    Result<plan::Fit> fit;
    Result<plan::Flow> flow;
    Result<plan::Pay> pay;
    Result<std::vector<plan::Seal>> seals;
    Result<plan::FeedPlan> feeds;
};

/// Plans side by side, in the order in which they were asked for.
struct Compared {
    std::vector<plan::Inputs> inputs;
    std::vector<Result<plan::Summary>> summaries;
};

/// Reckons on a thread of its own. What was asked last is answered; an older question that is not answered
/// yet is dropped, in the middle of its work at the next step.
class PlanWork final : public QObject {
    Q_OBJECT

  public:
    explicit PlanWork(QObject* parent = nullptr);
    ~PlanWork() override;

    /// answered() follows for `current`, then compared() for all of them.
    void ask(plan::Inputs current, std::vector<plan::Inputs> scenarios);
    /// adoptionReady() follows in any case.
    void askForAdoption(plan::Inputs inputs);

  signals:
    void answered(std::shared_ptr<const treadwell::plan_page::Answers> answers);
    void compared(std::shared_ptr<const treadwell::plan_page::Compared> compared);
    void adoptionReady(std::shared_ptr<const treadwell::Result<treadwell::entries::PlanAdopted>> plan);

  private:
    struct Question {
        plan::Inputs current;
        std::vector<plan::Inputs> scenarios;
    };
    /// On the thread.
    void work();
    [[nodiscard]] bool isDropped() const;
    [[nodiscard]] std::shared_ptr<const Answers> answersTo(const plan::Inputs& inputs) const;
    [[nodiscard]] std::shared_ptr<const Compared> compare(const std::vector<plan::Inputs>& scenarios);

    mutable std::mutex m_lock;
    std::optional<Question> m_next;                                       ///< guarded by the lock
    bool m_ending = false;                                                ///< guarded by the lock
    std::vector<std::pair<plan::Inputs, Result<plan::Summary>>> m_known;  ///< the thread's alone
    QThread m_thread;
    QObject* m_worker;  ///< lives on the thread; what is asked is queued to it
};

}  // namespace treadwell::plan_page
