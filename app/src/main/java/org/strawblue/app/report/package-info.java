/** The job card for people and programs: terminal, HTML page, PDF and JSON, all written from one {@code JobCard}. */
@NullMarked
package org.strawblue.app.report;

import org.jspecify.annotations.NullMarked;
