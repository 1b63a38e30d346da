package org.strawblue.app.service;

import org.strawblue.core.evidence.learn.ShopKnowledge;

/** What learning gave: the sheet to be read, and what the shop knows now. */
public record Lesson(Sheet sheet, ShopKnowledge knowledge) {}
