/** What the parts of the plan editor share. */
package slopewright.ui.plan.internal;
