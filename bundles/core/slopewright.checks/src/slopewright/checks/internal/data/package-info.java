/** Rules about the data of a project. */
package slopewright.checks.internal.data;
