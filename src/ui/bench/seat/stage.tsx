import '../dock.css';
import './style.css';
import { useSignal } from '@preact/signals';
import { IN_LINE, recordSeat, takeBackSeat } from '../../../app/after-fit.ts';
import type { Seat } from '../../../domain/box/records.ts';
import { useAct } from '../../parts/use-act.ts';
import { goInstead, hrefTo } from '../../shell/route.ts';
import type { StageProps } from '../stage-props.ts';
import { EarlierTries, TakeBack } from '../trial/earlier-tries.tsx';
import { SeatAdvice } from './advice.tsx';
import { SeatForm } from './form.tsx';
import { seatWords as words } from './words.ts';

/** One tap when lid and base are in line and flush; else where it is open and how far the grain has to go. */
const SeatStage = ({ onHand }: StageProps) => {
  const { id, box } = onHand;
  const doneWith = useSignal<string | null>(null);
  const last = box.seats.at(-1);
  const shown = last && last.degreesToGo !== 0 && last.id !== doneWith.value ? last : null;

  const inLine = useAct(async (fresh) => {
    const saved = await recordSeat(id, fresh, IN_LINE);
    if (saved) goInstead('bench');
    return saved;
  });
  const close = (
    <button type="button" class="main in-line" disabled={inLine.busy} onClick={() => inLine.act()}>
      {words.flush}
    </button>
  );

  if (shown)
    return (
      <>
        <SeatAdvice onHand={onHand} seat={shown} />
        <div class="dock">
          <button
            type="button"
            class="main"
            onClick={() => {
              doneWith.value = shown.id;
            }}
          >
            {words.tried}
          </button>
        </div>
        <a class="act" href={hrefTo('bench', 'close')}>
          {words.leave}
        </a>
        <TakeBack word={words.undo} onTap={() => takeBackSeat(id, shown.id)} />
        <EarlierTries title={words.earlier} lines={linesOf(box.seats.slice(0, -1))} />
      </>
    );
  return (
    <>
      {close}
      <h3>{words.else}</h3>
      <SeatForm key={box.seats.length} onHand={onHand} />
      <a class="act" href={hrefTo('bench', 'close')}>
        {words.leave}
      </a>
      <EarlierTries title={words.earlier} lines={linesOf(box.seats)} />
      {last && <TakeBack word={words.undo} onTap={() => takeBackSeat(id, last.id)} />}
    </>
  );
};
export default SeatStage;

const linesOf = (seats: readonly Seat[]) => seats.map((seat) => ({ id: seat.id, line: words.line(seat) }));
