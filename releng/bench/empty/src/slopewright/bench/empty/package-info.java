/** A workbench with nothing in it: what the platform takes to start. */
package slopewright.bench.empty;
