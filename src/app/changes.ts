import { type Signal, signal } from '@preact/signals-core';
import type { Kind } from '../domain/box/records.ts';
import { listen, post } from '../platform/channel.ts';

/** What can change under a screen. */
export type Topic = Kind | 'events' | 'photos' | 'log' | 'device';
export const TOPICS: readonly Topic[] = [
  // First, so that after an import no tab writes on as the old writer.
  'device',
  'box',
  'rig',
  'procedure',
  'instrument',
  'wood',
  'experiment',
  'events',
  'photos',
  'log',
];

/** A counter a topic; a screen that reads one is drawn again when it moves. */
export const changes = Object.fromEntries(TOPICS.map((topic) => [topic, signal(0)])) as Record<
  Topic,
  Signal<number>
>;

/** How often another tab has written events. */
export const eventsElsewhere = signal(0);

const bump = (topic: Topic): void => {
  changes[topic].value += 1;
};

/** Says that something of this topic was written: here and in every other tab. */
export const announce = (topic: Topic): void => {
  bump(topic);
  post({ topic });
};

/** Listens to the other tabs. */
export const followOtherTabs = (): void => {
  listen((message) => {
    const topic = (message as { topic?: Topic }).topic;
    if (topic && TOPICS.includes(topic)) bump(topic);
    if (topic === 'events') eventsElsewhere.value += 1;
  });
};
