/** How numbers are shown and typed: metres or feet, decimal degrees or degrees and minutes. */
package slopewright.ui.units;
