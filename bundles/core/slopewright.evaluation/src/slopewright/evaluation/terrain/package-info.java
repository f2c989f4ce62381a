/** The shape of the ground as a model of the terrain has it: what lies under a line, and what it hides. */
package slopewright.evaluation.terrain;
