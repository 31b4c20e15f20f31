// Says at the end of npm test what it did not run.
console.log('Left out: tests in a real browser (npm run test:browser, needs chromium) and long ones (npm run soak).');
