/** What cures a penetration of the obstacle surface, computed. */
package slopewright.siting.remedy;
