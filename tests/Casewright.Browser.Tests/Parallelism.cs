// One browser at a time: each test plans jobs, and two at once would only wait for one another.
[assembly: Xunit.v3.Parallelization(Mode = Xunit.Sdk.ParallelMode.None)]
