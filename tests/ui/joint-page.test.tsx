// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, fireEvent, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { changeBox } from '../../src/app/boxes.ts';
import { changeRig, FIRST_RIG_ID } from '../../src/app/rigs.ts';
import { changeSettings } from '../../src/app/session.ts';
import JobCard from '../../src/ui/joint/job-card.tsx';
import Joint from '../../src/ui/joint/joint.tsx';
import { magnifiedTo, sectionScale, TO_FIT } from '../../src/ui/joint/section-scale.ts';
import { boxOf, freshLog, length, newBoxOf, press, seen } from './plan-shop.ts';

beforeEach(() => freshLog('mm'));
afterEach(cleanup);

const show = async () => {
  const onHand = await newBoxOf();
  render(<Joint id={onHand.id} />);
  await waitFor(() => screen.getByRole('img'));
  return onHand;
};
const slide = (name: string | RegExp, value: number) =>
  fireEvent.input(screen.getByRole('slider', { name }), { target: { value: String(value) } });
const sentence = () => screen.getByRole('img').getAttribute('aria-label') ?? '';
const play = () => Number(/end play of ([\d.]+)/.exec(sentence())?.[1]);

describe('the joint', () => {
  it('is drawn and told: sizes, play, both crest gaps, engagement by both conventions', async () => {
    await show();
    expect(sentence()).toMatch(/recess 50\.00.mm, cut .*; tenon 52\.\d\d.mm, cut/);
    expect(sentence()).toMatch(/Gap over the tenon’s crests of [\d.]+.mm, under the recess’s crests of/);
    expect(screen.getByText('As planned: nothing is measured yet.')).toBeTruthy();
    expect(screen.getByText('of 0.75 H (American National)')).toBeTruthy();
    expect(screen.getByText(/of 0\.625 H \(Unified, ISO\)/)).toBeTruthy();
    expect(screen.getByText('Clearance')).toBeTruthy();
    expect(screen.getByText('It goes on easily.')).toBeTruthy();
  });

  it('says what was measured once it is', async () => {
    const { id } = await show();
    await changeBox(id, (box) => ({
      ...box,
      bore: [{ id: 'b', seq: 1, where: 'mouth', along: length(50.1), across: null, overCrests: false }],
    }));
    await seen(/As measured: bore\. As planned: recess’s cut, tenon and tenon’s cut\./);
    expect(sentence()).toMatch(/recess 50\.10.mm/);
  });

  it('what if: a slider redraws at once, says so, and leaves the record alone', async () => {
    const { id } = await show();
    const before = await boxOf(id);
    const [asItIs, drawn] = [play(), document.querySelector('.tenon')?.getAttribute('points')];
    slide(/Depth of the tenon/, 5);
    await seen(/What if\. As it is:/);
    // Five steps of 0.02 mm deeper are 0.2 mm of clearance, and that is 0.2 tan 30 of play.
    expect(play()).toBeCloseTo(asItIs + 0.2 * Math.tan(Math.PI / 6), 2);
    expect(document.querySelector('.tenon')?.getAttribute('points')).not.toBe(drawn);
    expect(await boxOf(id)).toEqual(before);
    await press('Back to how it is');
    expect(play()).toBe(asItIs);
    expect(document.querySelector('.tenon')?.getAttribute('points')).toBe(drawn);
  });

  it('lean: the play shrinks or not by the dial sense of the rig', async () => {
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, jigSide: 'front', recessDial: 'other' }));
    await show();
    const asItIs = play();
    slide(/^Lean of the jig/, 2);
    await waitFor(() => expect(play()).toBeLessThan(asItIs - 0.1));
    expect(sentence()).toMatch(/its grooves leaning 2°/);
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, recessDial: 'same' }));
    await seen(/On this rig equal leans cancel/);
    await waitFor(() => expect(play()).toBeGreaterThan(asItIs - 0.02));
  });

  it('a pair that binds is named, and by how much', async () => {
    await show();
    slide(/^Clearance/, -16);
    slide(/Depth of the tenon/, -12);
    await seen('It will not go on: the flanks meet.');
    await seen(/the flanks overlap by so much/);
  });

  it('life-size and enlarged are offered once the screen is measured', async () => {
    vi.spyOn(HTMLElement.prototype, 'clientWidth', 'get').mockReturnValue(362);
    await show();
    expect(screen.queryByRole('radio', { name: 'Life-size' })).toBeNull();
    expect(screen.getByText(/hold a card to the glass once/)).toBeTruthy();
    await changeSettings({ pxPerMm: 6.3 });
    fireEvent.click(await waitFor(() => screen.getByRole('radio', { name: 'Life-size' })));
    await seen('Life-size on this screen.');
    vi.restoreAllMocks();
  });

  it('a box that is not there says so', async () => {
    render(<Joint id="none" />);
    await seen('There is no such box in this log.');
    cleanup();
    render(<Joint id={null} />);
    await seen('There is no box on the bench.');
  });
});

describe('magnification', () => {
  it('is exact: a pitch on the glass is the pitch so many times', () => {
    for (const { times, threads, width } of magnifiedTo(2.54, 6.3, 362)) {
      const shown = { threads, share: 354 / 362 };
      expect(sectionScale(shown, 2.54, width)).toBeCloseTo(times * 6.3, 9);
      expect(width).toBeLessThanOrEqual(362);
    }
    expect(magnifiedTo(2.54, 6.3, 362).map(({ times }) => times)).toEqual([1, 5, 10]);
    expect(magnifiedTo(6.35, 8, 300).map(({ times }) => times)).toEqual([1]);
    expect(sectionScale(TO_FIT, 2.54, 362)).toBeCloseTo(222 / 7.62, 9);
  });
});

describe('the job card', () => {
  it('carries sizes with letters, passes with the dial, the stop, cautions and both drawings', async () => {
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, travelPerTurn: length(1.27), marksPerTurn: 50 }));
    const { id } = await newBoxOf();
    render(<JobCard id={id} />);
    await seen('Recess, in the lid');
    expect(screen.getAllByText(/^[A-H]$/, { selector: 'dt' }).map((dt) => dt.textContent)).toEqual([
      ...'ABCDEFGH',
    ]);
    for (const part of ['recess', 'tenon'])
      expect(screen.getByText(`Passes, ${part}: dial from touch-off`)).toBeTruthy();
    expect(screen.getAllByText(/1.turn, [\d /]+.marks/)).toHaveLength(2);
    expect(screen.getAllByText('Stop at')).toHaveLength(2);
    expect(screen.getByText(/Off at the wall while you set up/)).toBeTruthy();
    expect(screen.getAllByRole('img')).toHaveLength(2);
    const print = vi.fn();
    vi.stubGlobal('print', print);
    await press('Print');
    expect(print).toHaveBeenCalledOnce();
    vi.unstubAllGlobals();
  });

  it('warns a left-hand rig of running forward with the lid on, not of reverse', async () => {
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, hand: 'left' }));
    const { id } = await newBoxOf();
    render(<JobCard id={id} />);
    const cautions = (await seen(/Off at the wall while you set up/)).textContent;
    expect(cautions).toMatch(/never run forward, a left-hand thread unscrews/);
    expect(cautions).not.toMatch(/right-hand/);
  });

  it('draws the joint that its passes will make, once the tenon is measured', async () => {
    const { id } = await newBoxOf();
    await changeBox(id, (box) => ({
      ...box,
      bore: [{ id: 'b', seq: 1, where: 'mouth', along: length(50), across: null, overCrests: false }],
      tenon: [{ id: 't', seq: 2, where: 'end', diameter: length(52.8), overCrests: false }],
    }));
    render(<JobCard id={id} />);
    const drawn = await waitFor(() => screen.getByRole('img', { name: /^Section of the joint to be cut/ }));
    expect(drawn.getAttribute('aria-label')).toMatch(/recess 50\.00.mm, tenon 52\.80.mm, end play 0\.2/);
    const [recess, tenon] = ['recess', 'tenon'].map((part) =>
      screen.getByText(`Passes, ${part}: dial from touch-off`).closest('section'),
    );
    const lastPass = (of: Element | null | undefined) =>
      Number(/Pass 2, to ([\d.]+)/.exec(of?.textContent ?? '')?.[1]);
    expect(lastPass(tenon)).toBeGreaterThan(lastPass(recess));
    expect(drawn.textContent).toContain(`${lastPass(tenon).toFixed(2)}\u00a0mm deep`);
  });

  it('draws no joint where the tenon is no bigger than the recess', async () => {
    const { id } = await newBoxOf();
    await changeBox(id, (box) => ({
      ...box,
      tenon: [{ id: 't', seq: 2, where: 'end', diameter: length(49.9), overCrests: false }],
    }));
    render(<JobCard id={id} />);
    await seen('Recess, in the lid');
    expect(screen.queryByRole('img', { name: /^Section of the joint/ })).toBeNull();
    expect(screen.getAllByRole('img')).toHaveLength(1);
  });

  it('without a known cross-slide it says what is missing instead of a number', async () => {
    const { id } = await newBoxOf();
    render(<JobCard id={id} />);
    await seen('Recess, in the lid');
    expect(screen.getAllByText(/Tell the rig its cross-slide/).length).toBeGreaterThan(0);
  });
});
