/** Plays an invented season into an empty book, over REST as any other program would. */
package org.barreltally.demo;
