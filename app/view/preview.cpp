#include "app/view/preview.h"

#include <algorithm>

namespace stow::view {

QStringList PreviewController::papers() const
{
    QStringList names;
    for (const DraftPaper& draft : drafts_) names += draft.name;
    return names;
}

void PreviewController::setPaper(int paper)
{
    if (paper < 0 || paper >= static_cast<int>(drafts_.size())) return;
    paper_ = static_cast<std::size_t>(paper);
    page_ = 0;
    lower_ = false;
    document_ = std::make_shared<const papers::Document>(drafts_[paper_].document);
    emit changed();
}

QString PreviewController::title() const
{
    return open() ? shown()->name : QString();
}

int PreviewController::pages() const
{
    return open() ? static_cast<int>(shown()->document.pages.size()) : 0;
}

QString PreviewController::where() const
{
    if (!open()) return {};
    const QString words = tr("Page %1 of %2").arg(page()).arg(pages());
    if (!in_halves()) return words;
    return words + QStringLiteral(", ") + (lower_ ? tr("lower half") : tr("upper half"));
}

bool PreviewController::in_halves() const
{
    if (!open() || !large_) return false;
    const papers::Extent extent = shown()->document.pages[page_].extent;
    return extent.height > extent.width;
}

void PreviewController::setLarge(bool large)
{
    large_ = large;
    lower_ = false;
    emit changed();
}

bool PreviewController::last() const
{
    return page() >= pages() && paper_ + 1 >= drafts_.size() && (lower_ || !in_halves());
}

QString PreviewController::warning() const
{
    return open() ? shown()->warning : QString();
}

QString PreviewController::printWords() const
{
    return open() ? shown()->print_words : QString();
}

PageScene PreviewController::scene() const
{
    if (!open()) return {};
    using Part = PageScene::Part;
    const Part part = !in_halves() ? Part::whole : lower_ ? Part::lower : Part::upper;
    return {document_, page_, part, shown()->palette, title() + QStringLiteral(": ") + where()};
}

bool PreviewController::show(std::vector<DraftPaper> drafts)
{
    const auto no_page = [](const DraftPaper& draft) { return draft.document.pages.empty(); };
    drafts.erase(std::remove_if(drafts.begin(), drafts.end(), no_page), drafts.end());
    drafts_ = std::move(drafts);
    if (drafts_.empty()) {
        close();
        return false;
    }
    setPaper(0);
    emit opened();
    return true;
}

void PreviewController::nextPage()
{
    if (in_halves() && !lower_) {
        lower_ = true;
    } else if (page() < pages()) {
        ++page_;
        lower_ = false;
    } else {
        return setPaper(paper() + 1);
    }
    emit changed();
}

void PreviewController::previousPage()
{
    if (lower_) {
        lower_ = false;
    } else {
        if (page_ > 0) {
            --page_;
        } else {
            if (paper_ == 0) return;
            setPaper(paper() - 1);
            page_ = static_cast<std::size_t>(pages()) - 1;
        }
        lower_ = in_halves();
    }
    emit changed();
}

void PreviewController::print()
{
    if (!open()) return;
    const std::function<void()> print = shown()->print;
    close();
    print();
}

void PreviewController::close()
{
    drafts_.clear();
    document_.reset();
    paper_ = page_ = 0;
    lower_ = false;
    emit changed();
}

} // namespace stow::view
