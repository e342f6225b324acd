#!/usr/bin/env node
// A file that is there before a build, so that installing links the command.
import '../dist/main.js';
