/** What a field party needs to set out every unit. */
package slopewright.exchange.settingout;
