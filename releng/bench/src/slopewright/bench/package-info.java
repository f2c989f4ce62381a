/** Measures speed and memory; run by releng/bench/run. */
package slopewright.bench;
