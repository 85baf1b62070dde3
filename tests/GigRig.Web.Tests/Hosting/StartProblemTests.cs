using System.Net.Sockets;
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
    public void A_port_that_this_user_may_not_have_is_explained_with_what_to_type()
    {
        var one = new SocketException((int)SocketError.AccessDenied);
        Exception[] asTheServerGivesIt = [one, new IOException("Failed to bind to address http://localhost:81.", new AggregateException(one, one))];

        Assert.All(asTheServerGivesIt, fault => Assert.Contains("such as --urls http://localhost:5080", StartProblem.Explain(fault)));
        Assert.Null(StartProblem.Explain(new IOException("The disk is gone.", new SocketException((int)SocketError.HostDown))));
    }

    [Fact]
    public void A_missing_certificate_is_explained_with_the_way_without() =>
        Assert.EndsWith("--urls http://localhost:5080", StartProblem.Explain(new InvalidOperationException("Unable to configure HTTPS endpoint. No server certificate was specified.")));

    [Fact]
    public void What_we_do_not_know_keeps_its_stack_trace() => Assert.Null(StartProblem.Explain(new InvalidOperationException("A bug.")));
}
