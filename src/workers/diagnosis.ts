import { diagnose } from '../domain/diagnosis/diagnose.ts';
import type { DiagnosisAnswer, DiagnosisQuestion } from './diagnosis-message.ts';

/** Answers each question as it comes: a diagnosis takes longer than a screen may wait for a tap. */
self.addEventListener('message', ({ data: { id, view } }: MessageEvent<DiagnosisQuestion>) => {
  self.postMessage({ id, diagnosis: diagnose(view) } satisfies DiagnosisAnswer);
});
