#include "app/desktop/plan/plan_work.h"

#include <algorithm>

namespace treadwell::plan_page {

PlanWork::PlanWork(QObject* parent) : QObject{parent}, m_worker{new QObject} {
    m_worker->moveToThread(&m_thread);
    connect(&m_thread, &QThread::finished, m_worker, &QObject::deleteLater);
    m_thread.start();
}

PlanWork::~PlanWork() {
    {
        const std::lock_guard hold{m_lock};
        m_ending = true;
    }
    m_thread.quit();
    m_thread.wait();
}

void PlanWork::ask(plan::Inputs current, std::vector<plan::Inputs> scenarios) {
    {
        const std::lock_guard hold{m_lock};
        m_next = Question{std::move(current), std::move(scenarios)};
    }
    QMetaObject::invokeMethod(
        m_worker, [this] { work(); }, Qt::QueuedConnection);
}

void PlanWork::askForAdoption(plan::Inputs inputs) {
    QMetaObject::invokeMethod(
        m_worker,
        [this, inputs = std::move(inputs)] {
            const auto plan = std::make_shared<const Result<entries::PlanAdopted>>(plan::adoptionOf(inputs));
            QMetaObject::invokeMethod(this, [this, plan] { emit adoptionReady(plan); });
        },
        Qt::QueuedConnection);
}

bool PlanWork::isDropped() const {
    const std::lock_guard hold{m_lock};
    return m_ending || m_next.has_value();
}

void PlanWork::work() {
    std::optional<Question> question;
    {
        const std::lock_guard hold{m_lock};
        if (m_ending) return;
        std::swap(question, m_next);
    }
    if (!question) return;  // an earlier call has taken it
    const auto answers = answersTo(question->current);
    if (answers == nullptr) return;
    // Signals leave on the thread of the page.
    QMetaObject::invokeMethod(this, [this, answers] { emit answered(answers); });
    const auto beside = compare(question->scenarios);
    if (beside == nullptr) return;
    QMetaObject::invokeMethod(this, [this, beside] { emit compared(beside); });
}

std::shared_ptr<const Answers> PlanWork::answersTo(const plan::Inputs& inputs) const {
    auto fit = plan::fitOf(inputs);
    auto seals = plan::sealsOf(inputs);
    auto feeds = plan::feedsOf(inputs);
    if (isDropped()) return nullptr;
    auto flow = plan::flowOf(inputs);
    if (isDropped()) return nullptr;
    return std::make_shared<const Answers>(Answers{inputs, std::move(fit), std::move(flow),
                                                   plan::payOf(inputs), std::move(seals), std::move(feeds)});
}

std::shared_ptr<const Compared> PlanWork::compare(const std::vector<plan::Inputs>& scenarios) {
    auto beside = std::make_shared<Compared>();
    beside->inputs = scenarios;
    for (const plan::Inputs& inputs : scenarios) {
        if (isDropped()) return nullptr;
        auto known = std::find_if(m_known.begin(), m_known.end(),
                                  [&](const auto& pair) { return pair.first == inputs; });
        if (known == m_known.end()) {
            m_known.emplace_back(inputs, plan::summaryOf(inputs));
            known = std::prev(m_known.end());
        }
        beside->summaries.push_back(known->second);
    }
    std::erase_if(m_known, [&](const auto& pair) {
        return std::find(scenarios.begin(), scenarios.end(), pair.first) == scenarios.end();
    });
    return beside;
}

}  // namespace treadwell::plan_page
