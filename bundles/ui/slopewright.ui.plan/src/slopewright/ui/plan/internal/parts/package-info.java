/** Parts of the plan. */
package slopewright.ui.plan.internal.parts;
