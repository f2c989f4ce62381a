/** Rules about where a family may stand. */
package slopewright.checks.internal.family;
