using Xunit.Sdk;
using Xunit.v3;

// One app and one browser at a time: what two cores can answer for.
[assembly: Parallelization(Mode = ParallelMode.None)]
