// Plays the tones on a thread of its own: a sound system that is slow or missing never holds up the bench.
#pragma once

#include "app/sound/tones.h"

#include <QObject>
#include <QThread>

namespace stow::sound {

class Speaker : public QObject {
    Q_OBJECT
public:
    explicit Speaker(QObject* parent = nullptr);
    ~Speaker() override; // waits for the tone that sounds

    void play(Tone tone); // returns at once; a tone that cannot be played is left out

signals:
    void played(stow::sound::Tone tone, bool heard); // heard: the sound system took it

private:
    QThread thread_;
    QObject there_; // lives on the thread
};

} // namespace stow::sound
