// A fitted model of which a test names the figures that matter; all others are 0.
import type { Component } from "../../src/vacuum-decay/curve/component.ts";

export const model = (more: Partial<Component> = {}): Component => ({
  weight: 1,
  fast: -1,
  shape: -1,
  tau: 0,
  line: false,
  constant: 0,
  fast1: 0,
  fast2: 0,
  amplitude: 0,
  slope: 0,
  slopeU: 0,
  amplitudeU: 0,
  ahead: 0,
  aheadU: 0,
  endRate: 0,
  endRateU: 0,
  aicc: 0,
  ...more,
});
