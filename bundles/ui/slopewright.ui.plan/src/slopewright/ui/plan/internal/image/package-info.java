/** Pictures under the plan: how they are read, where they lie and how they are scaled by two points. */
package slopewright.ui.plan.internal.image;
