/** Single-line diagrams of the circuits that feed indicators. */
package slopewright.drawing.circuit;
