/**
 * Starting and stopping: settings from the environment, the data folder, the embedded PostgreSQL or
 * an outside one, the two database roles, and what is said on the terminal. Nothing here knows the
 * trade, and no other package depends on this one.
 */
package org.barreltally.start;
