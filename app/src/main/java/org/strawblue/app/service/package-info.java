/**
 * Questions a person asks at the bench, each answered by the core as a {@link org.strawblue.app.service.Sheet}. Every
 * shell (command line, table, pages) asks here, so that all give the same answer.
 */
@NullMarked
package org.strawblue.app.service;

import org.jspecify.annotations.NullMarked;
