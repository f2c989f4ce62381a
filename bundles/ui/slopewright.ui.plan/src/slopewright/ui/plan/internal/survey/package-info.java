/** Imports survey files: what of them is taken, shown in the plan before anything changes. */
package slopewright.ui.plan.internal.survey;
