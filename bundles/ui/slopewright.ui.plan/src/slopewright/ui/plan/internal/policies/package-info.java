/** What the parts of the plan answer to tools. */
package slopewright.ui.plan.internal.policies;
