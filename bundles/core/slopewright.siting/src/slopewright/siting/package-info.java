/** Derived quantities of a siting: positions, settings, eye heights, signals and surfaces, one strategy per family. */
package slopewright.siting;
