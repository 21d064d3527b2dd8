// @vitest-environment happy-dom
import 'fake-indexeddb/auto';
import { cleanup, render, screen, waitFor } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { changeRig, FIRST_RIG_ID } from '../../src/app/rigs.ts';
import { changeSettings } from '../../src/app/session.ts';
import type { Plan } from '../../src/domain/box/records.ts';
import PlanStage from '../../src/ui/bench/plan/stage.tsx';
import { boxOf, freshLog, length, newBoxOf, PLAN, press, seen, type } from './plan-shop.ts';

const show = async (plan: Plan = PLAN) => {
  const onHand = await newBoxOf(plan);
  render(<PlanStage onHand={onHand} runs={new Map()} />);
  return onHand;
};

beforeEach(() => freshLog('mm'));
afterEach(cleanup);

describe('the plan', () => {
  it('every size of a joint is on it', async () => {
    await show();
    await waitFor(() => screen.getByRole('heading', { name: 'Recess, in the lid' }));
    for (const name of [
      'Mouth to floor',
      'Relief at the floor, out to',
      'Chamfer at the mouth, out to',
      'Length from the shoulder',
      'Relief at the shoulder, down to',
      'Chamfer at the end, down to',
      'Engaged length',
      'Depth of cut, both pieces',
      'Clearance',
      'The season may take',
      'Lean may take',
      'Joint and parting take',
      'Outside, at least',
      'Travel between them',
    ])
      expect(screen.getByText(name), name).toBeTruthy();
    expect(screen.getByRole('img', { name: /recess 50\.00.mm, tenon/ })).toBeTruthy();
    expect(await screen.findByRole('img', { name: /^Section of the joint to be cut/ })).toBeTruthy();
  });

  it('says which usual figures it was calculated with, and where to tell one’s own', async () => {
    await show();
    await seen(/CalculatedBox with a tip flat of 0\.20.mm: you have not told me yours/);
    const links = screen.getAllByRole('link', { name: 'Tell it' }).map((a) => a.getAttribute('href'));
    expect(links).toContain(`#/shop/rig/tipFlat/${FIRST_RIG_ID}`);
  });

  it('a tip flat told while the plan is on screen is used at once', async () => {
    await show();
    await seen(/CalculatedBox with a tip flat/);
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, tipFlat: length(0.15) }));
    await waitFor(() => expect(screen.queryByText(/CalculatedBox with a tip flat/)).toBeNull());
  });

  it('a thin wall is warned of, with the outside that would do', async () => {
    await show({ ...PLAN, outside: length(56) });
    await seen(/The wall is [\d.]+.mm at the relief; under 3\.0.mm/);
  });

  it('a crest just under its least is not said to be as wide as the least', async () => {
    await changeSettings({ unit: 'in' });
    // 1.898 mm deep leaves 0.148 mm of crest, where 0.15 is the least: both 0.006 in.
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, travelPerTurn: length(1.27), tipFlat: length(0.2) }));
    await show({ ...PLAN, aim: { by: 'depth', dialTurns: 1.4947 } });
    const [, crest, least] = /left ([\d.]+).in wide; under ([\d.]+).in/.exec(
      (await seen(/^The crests are left/)).textContent ?? '',
    ) as RegExpExecArray;
    expect(Number(crest)).toBeLessThan(Number(least));
  });

  it('side grain and a short cross-slide are warned of', async () => {
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, slideTravel: length(20), recessDial: 'same' }));
    await show({ ...PLAN, lid: { ...PLAN.lid, grain: 'side' } });
    await seen(/Side grain moves along the thread/);
    await seen(/The cross-slide travels 20\.0.mm; this joint needs/);
  });

  it('a plan that the rig has made impossible says why, and can be changed', async () => {
    const { id } = await show();
    await seen('Depth of cut, both pieces');
    await changeRig(FIRST_RIG_ID, (rig) => ({ ...rig, cutterRadius: length(30) }));
    await seen(/Opening: 50 mm cannot go with this cutter radius/);
    await press('Change the plan');
    await waitFor(() => expect(screen.getByDisplayValue('50 mm')).toBeTruthy());
    await type('Opening', '70');
    await press('Keep the plan');
    await waitFor(async () => expect((await boxOf(id)).box.plan.opening.text).toBe('70 mm'));
  });
});
