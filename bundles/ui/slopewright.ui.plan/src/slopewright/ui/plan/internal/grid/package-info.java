/** The grid of a plan in the frame of a runway, and what things snap to while they are dragged. */
package slopewright.ui.plan.internal.grid;
