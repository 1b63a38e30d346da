/**
 * The command line. A command reads its options, asks the core or a service, prints; it computes nothing itself.
 */
@NullMarked
package org.strawblue.app.cli;

import org.jspecify.annotations.NullMarked;
