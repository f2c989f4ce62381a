/** The commands of a plan: what menus, keys and the context menu do. */
package slopewright.ui.plan.internal.actions;
