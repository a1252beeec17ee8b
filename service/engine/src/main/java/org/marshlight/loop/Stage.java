package org.marshlight.loop;

/** What a plan can be asked for. */
public enum Stage {
  DIGESTER,
  WETLAND,
  CROP,
  ETHANOL,
  COMPOST,
  /** All stages that the plan has, with balances, flows and verdicts. */
  LOOP
}
