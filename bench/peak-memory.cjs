// Loaded into a measured process: tells its peak resident memory when it ends.
process.on('exit', () => process.stderr.write(`peak-kb ${process.resourceUsage().maxRSS}\n`));
