import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { changeSettings, settings } from '../../../app/session.ts';
import { distanceOf } from '../../../platform/look.ts';
import { speak, type Voice } from '../../../platform/speech.ts';
import { Choice } from '../../parts/choice.tsx';
import { Switches } from '../../parts/switches.tsx';
import { hrefTo } from '../../shell/route.ts';
import { voiceWords } from '../../words/voice.ts';
import { shopWords } from '../words.ts';
import { CardToGlass } from './card-to-glass.tsx';

const words = shopWords.reading;

/** How this phone shows and says things. */
const Reading = () => {
  const now = settings.value;
  const sample = useRef<HTMLParagraphElement>(null);
  /** How far this glass can be read, when that falls short of what is asked. */
  const [reach, setReach] = useState<number | null>(null);
  useLayoutEffect(() => {
    if (!sample.current) return;
    const shown = distanceOf(Number.parseFloat(getComputedStyle(sample.current).fontSize), now.pxPerMm);
    setReach(shown < now.distanceCm - 1 ? Math.floor(shown) : null);
  }, [now.distanceCm, now.pxPerMm]);
  return (
    <main class="page shop">
      <a href={hrefTo('shop')}>{shopWords.back}</a>
      <h1>{words.title}</h1>
      <Choice
        legend={words.unit}
        options={[
          { value: 'in', word: words.units.in },
          { value: 'mm', word: words.units.mm },
        ]}
        chosen={now.unit}
        onChoose={(unit) => changeSettings({ unit })}
      />
      <p class="soft">{words.unitHint}</p>
      <section>
        <label for="distance">
          <b>{words.distance(now.distanceCm)}</b>
        </label>
        <input
          id="distance"
          type="range"
          min="40"
          max="100"
          step="5"
          value={now.distanceCm}
          onInput={(event) => changeSettings({ distanceCm: Number(event.currentTarget.value) })}
        />
        <p class="sample" ref={sample}>
          {words.sample}
        </p>
        <p class="soft" role="status">
          {reach === null ? words.sampleSmall : words.reach(reach)}
        </p>
        <CardToGlass />
      </section>
      <Choice
        legend={words.look}
        options={[
          { value: 'auto', word: words.looks.auto },
          { value: 'day', word: words.looks.day },
          { value: 'night', word: words.looks.night },
        ]}
        chosen={now.look}
        onChoose={(look) => changeSettings({ look })}
      />
      <Switches
        switches={[
          { word: words.sound, on: now.sound, set: (sound) => changeSettings({ sound }) },
          { word: words.vibration, on: now.vibration, set: (vibration) => changeSettings({ vibration }) },
          { word: words.clock, on: now.clock, set: (clock) => changeSettings({ clock }) },
          { word: words.speech, on: now.speech, set: (speech) => changeSettings({ speech }) },
          { word: words.letters, on: now.letters, set: (letters) => changeSettings({ letters }) },
        ]}
      />
      {now.speech && <VoiceNote />}
    </main>
  );
};

/** Speaks a sample when the spoken steps are switched on, and says so when this phone cannot. */
const VoiceNote = () => {
  const state = useSignal<Voice | null>(null);
  useEffect(() => {
    speak(voiceWords.sample).then((found) => {
      state.value = found;
    });
  }, []);
  return state.value && <p role="status">{voiceWords[state.value]}</p>;
};

export default Reading;
