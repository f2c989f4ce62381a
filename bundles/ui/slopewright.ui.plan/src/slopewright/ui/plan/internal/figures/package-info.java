/** What the elements of an aerodrome look like in plan. */
package slopewright.ui.plan.internal.figures;
