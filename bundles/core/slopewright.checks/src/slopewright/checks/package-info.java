/** Rules, their catalogue and runner, and the outcomes they give. */
package slopewright.checks;
