package org.barsheet.plan.edit;

/**
 * One value of a plan and what it is to be.
 *
 * @param at leads to a text that stands in the plan, possibly an empty one
 * @param now what is to be read there, without line ends
 */
public record Edit(PlanPath at, String now) {}
