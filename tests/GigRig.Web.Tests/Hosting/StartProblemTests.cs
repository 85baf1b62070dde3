using GigRig.Web.Hosting;
using Microsoft.AspNetCore.Connections;
using Xunit;

namespace GigRig.Web.Tests.Hosting;

public sealed class StartProblemTests
{
    [Fact]
    public void A_port_in_use_is_explained_with_what_to_type() =>
        Assert.Contains("--urls http://localhost:5081", StartProblem.Explain(new IOException("Failed to bind.", new AddressInUseException("In use."))));

    [Fact]
    public void What_we_do_not_know_keeps_its_stack_trace() => Assert.Null(StartProblem.Explain(new InvalidOperationException("A bug.")));
}
