/**
 * The arithmetic of a shape, for the working: its plan area as an expression, or, where walls slope, the steps
 * that lead to the volume at a height. Written apart from the code that computes volumes; a test holds every
 * expression against it.
 */
import type { Shape } from '../domain/shape.ts';
import type { Figure } from './figure.ts';
import type { StepParts } from './working-numbers.ts';
import { given } from './working-numbers.ts';

export type Inputs = StepParts['inputs'];

/** Straight walls: the area, after any step that leads to it. */
export interface EvenSolid {
  kind: 'even';
  before: StepParts[];
  inputs: Inputs;
  /** Plan area, mm². */
  areaText: string;
}

/** Known by its water only. */
export interface WaterSolid {
  kind: 'water';
  volume: Figure;
}

/** Walls that slope or curve. */
export interface SlopingSolid {
  kind: 'sloping';
  /** Plan area at the rim, mm². */
  rimInputs: Inputs;
  rimAreaText: string;
  /** Steps to the widths at a height, then the volume's inputs and expression, mm³. */
  fill(
    heightMm: Figure,
    depthMm: Figure,
    prefix: string,
  ): { before: StepParts[]; inputs: Inputs; mm3Text: string };
}

export type Solid = EvenSolid | WaterSolid | SlopingSolid;

export const even = (inputs: Inputs, areaText: string, before: StepParts[] = []): EvenSolid => ({
  kind: 'even',
  before,
  inputs,
  areaText,
});

/** A length as the baker gave it. */
export const length = (lengthMm: number): Figure => given(lengthMm, 'mm');

export type ShapeOf<K extends Shape['kind']> = Extract<Shape, { kind: K }>;
