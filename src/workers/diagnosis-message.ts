import type { Diagnosis } from '../domain/diagnosis/diagnosis.ts';
import type { DiagnosisView } from '../domain/diagnosis/view.ts';
import type { Result } from '../domain/result.ts';

export interface DiagnosisQuestion {
  readonly id: number;
  readonly view: DiagnosisView;
}

export interface DiagnosisAnswer {
  readonly id: number;
  readonly diagnosis: Result<Diagnosis>;
}
