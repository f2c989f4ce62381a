/** The outline of a plan: its elements as a tree. */
package slopewright.ui.plan.internal.outline;
