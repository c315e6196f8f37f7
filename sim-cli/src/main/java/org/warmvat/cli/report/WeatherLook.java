package org.warmvat.cli.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
