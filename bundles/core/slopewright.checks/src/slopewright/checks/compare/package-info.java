/** What changed between two versions of a project, and what that did to each result. */
package slopewright.checks.compare;
