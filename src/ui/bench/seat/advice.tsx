import { useSignal } from '@preact/signals';
import type { BoxOnHand } from '../../../app/boxes.ts';
import { settings } from '../../../app/session.ts';
import { calculate } from '../../../domain/box/calculate.ts';
import type { Seat } from '../../../domain/box/records.ts';
import { measuredRoom } from '../../../domain/box/seat-room.ts';
import { benchStep } from '../../../domain/joint/dial.ts';
import { mostRemoval, planSeat } from '../../../domain/joint/seat.ts';
import { degrees, degreesFromRad, mm, rad, radFromDegrees } from '../../../domain/units/brands.ts';
import { writeDegrees, writeLength } from '../../../domain/units/write-quantity.ts';
import { SeatClock } from '../../drawings/seat-clock.tsx';
import { Choice } from '../../parts/choice.tsx';
import { useGiven } from '../cut/use-given.ts';
import { shoulderWord, seatWords as words } from './words.ts';

/** What to do about a lid that is open somewhere, or whose grain is not yet in line. */
export const SeatAdvice = ({ onHand, seat }: { onHand: BoxOnHand; seat: Seat }) => (
  <>
    {seat.open.length > 0 && <OpenAdvice seat={seat} />}
    {seat.degreesToGo !== null && <GrainAdvice onHand={onHand} seat={seat} toGo={seat.degreesToGo} />}
  </>
);

const OpenAdvice = ({ seat: { open, papers } }: { seat: Seat }) => {
  const rests = open.map((hour) => ((hour + 5) % 12) + 1).filter((hour) => !open.includes(hour));
  return (
    <section class="seat-open">
      <SeatClock open={open} label={words.faceSays(open)} />
      {rests.length === 0 ? (
        <p>{words.allRound}</p>
      ) : (
        <>
          <p>
            <b>
              {words.openTold(
                papers,
                open,
                rests.sort((a, b) => a - b),
              )}
            </b>
          </p>
          <p>{words.openAdvice}</p>
        </>
      )}
    </section>
  );
};

const GrainAdvice = ({ onHand, seat, toGo }: { onHand: BoxOnHand; seat: Seat; toGo: number }) => {
  const match = useSignal<'figure' | 'oval'>('figure');
  const given = useGiven(onHand);
  const { unit } = settings.value;
  if (!given) return <div aria-busy="true" />;
  const calculated = calculate(onHand.box, given);
  if (!calculated.ok) return <p>{words.noPlan}</p>;

  const { pitch, lengths } = { pitch: onHand.box.plan.pitch.mm, lengths: calculated.value.plan.lengths };
  const measured = measuredRoom(onHand.box);
  const bottomGap = measured ?? lengths.bottomGap;
  // Ahead of the tenon lies the relief, into which its thread may run: only the floor stops it.
  const room = { bottomGap, freeThread: bottomGap };
  const at = { toGo: radFromDegrees(degrees(toGo)) };
  const plan = planSeat(pitch, at, match.value, room, benchStep[unit === 'in' ? 'inch' : 'metric']);
  const most = mostRemoval(room);
  const say = (length: number) => writeLength(mm(length), unit);
  return (
    <section aria-label={words.grain}>
      <Choice<'figure' | 'oval'>
        legend={words.match}
        options={[
          { value: 'figure', word: words.figure },
          { value: 'oval', word: words.oval },
        ]}
        chosen={match.value}
        onChoose={(value) => {
          match.value = value;
        }}
      />
      {plan.ok && plan.value.removal > 0 && plan.value.firstStep === 0 ? (
        <>
          <h3>{words.stroke}</h3>
          <p>{words.how}</p>
        </>
      ) : plan.ok && plan.value.removal > 0 ? (
        <>
          <p class="to-take-off">{say(plan.value.removal)}</p>
          <p>{words.takeOff(seat.takenFrom ? shoulderWord[seat.takenFrom] : null)}</p>
          <h3>{words.firstStep(say(plan.value.firstStep))}</h3>
          <p>{words.how}</p>
          <p>{words.short}</p>
        </>
      ) : plan.ok ? (
        <p>{words.nothingToTake}</p>
      ) : plan.error.problem === 'conflict' && plan.error.nearest !== null ? (
        <p role="note">
          {words.tooFar(writeDegrees(degreesFromRad(rad(plan.error.nearest)), { places: 0 }))}
        </p>
      ) : null}
      {most.ok && (
        <p class="soft">
          {words.goesTo(say(most.value.removal), most.value.limitedBy)} {measured === null && words.asPlanned}
        </p>
      )}
    </section>
  );
};
