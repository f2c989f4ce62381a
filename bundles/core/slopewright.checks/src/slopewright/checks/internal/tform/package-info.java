/** Rules about T forms. */
package slopewright.checks.internal.tform;
