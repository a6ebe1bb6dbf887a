package org.barsheet.plan;

/**
 * Something a person should know about how their plan was read; nothing is wrong with it.
 *
 * @param where its place in the plan's files
 * @param sentence what was done
 */
public record PlanNote(Where where, String sentence) {}
